/** Where the talk goes round the boat: headings, and sentences that open with a place. */
import { lineText } from './line-text.ts';
import { readZone } from './read-boat-words.ts';
import type { Lexicon } from './read-line-parts.ts';

const small =
  /(?<![a-zß-ɏ])(?:right|ok|okay|so|well|now|then|next|first|last|and|the|starting|start|beginning|at|with|from|in|on|to|of|up|down|moving|going|climbing|back|on to|round|inside|outside|over|finally|end|bit|part|area|side|port|starboard|here|we|are|let's|see|look|looking|what|about|too|also|thing|things|again|itself|there|i'm|we're|her|under|er|um|is|are|comes|work|stuff|jobs?|list)(?![a-zß-ɏ])/gi;

/** Usual words for places, for zones that go by them. */
const usual: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^(?:up )?for'?ward$|^front$|^bows?$/, ['bow', 'foredeck']],
  [/^below(?: decks?)?$|^down below$|^interior$|^accommodation$|^saloon$/, ['cabin', 'below']],
  [/^aft$|^stern$|^back$|^outboard$|^rudder$/, ['transom', 'stern', 'rudder']],
  [/^rig$|^rigging$|^spars?$|^mast$|^aloft$/, ['mast', 'rig', 'rigging']],
  [/^hull$|^sides?$|^topsides?$/, ['topsides', 'hull']],
  [/^underneath$|^bottom$|^underwater$/, ['bottom']],
  [
    /^electrics?$|^electrical$|^sails?$|^engine$|^safety(?: gear)?$|^general$|^misc(?:ellaneous)?$|^other(?: things)?$|^ropes?$|^notes?$/,
    [],
  ],
];

/** The zone of a clause that is a heading and no more; 'elsewhere' for one that is no zone's; null: no heading. */
export function headingOf(words: string, zones: Lexicon['zones']): string | 'elsewhere' | null {
  const left = words.replace(small, ' ').replace(/\s+/g, ' ').trim();
  if (left === '' || left.split(' ').length > 3) return null;
  const named = Object.entries(zones).find(([, { name, words: others }]) =>
    [name, ...others].some((each) => same(each, left)),
  );
  if (named) return named[0];
  for (const [pattern, called] of usual) {
    if (!pattern.test(left)) continue;
    for (const wanted of called) {
      const found = Object.entries(zones).find(([, { name, words: others }]) =>
        [name, ...others].some((each) => same(each, wanted) || plain(each).startsWith(`${plain(wanted)} `)),
      );
      if (found) return found[0];
    }
    return 'elsewhere';
  }
  return null;
}

/** The zone that a sentence opens with: 'in the cabin there's mould', 'on the foredeck'. */
export function openingPlace(
  words: string,
  zones: Lexicon['zones'],
): { readonly zone: string; readonly words: string } | null {
  const match =
    /^(?:and |now |then |next )?(?:up |down |back |out )?(?:in|on|at|inside|under|below|round) (?:the |her )?(?:[a-zß-ɏ]+ ){1,3}/.exec(
      `${words} `,
    );
  if (!match) return null;
  const zone = readZone(lineText(match[0].trim()), zones, { keep: true });
  return zone && { zone: zone.value, words: match[0].trim() };
}

const plain = (words: string) => words.toLowerCase().replace(/s\b/g, '').trim();
const same = (a: string, b: string) => plain(a) === plain(b);
