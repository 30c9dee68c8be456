/** Names of this boat's own: set-ups, outings, fittings, zones. */
import { type ClaimRule, claim, followedByUnderstood, type LineText, phrase } from './line-text.ts';
import type { Lexicon, Understood } from './read-line-parts.ts';

/** States that different boats call by different words. A word is taken only if its set-up has one of the group. */
const sameStates = [
  ['up', 'raised', 'stepped', 'housed'],
  ['down', 'lowered', 'unstepped', 'dropped'],
  ['on', 'fitted'],
  ['off', 'removed', 'unshipped'],
  ['on the trailer', 'on trailer', 'on her trailer'],
  ['propped', 'on props', 'on stands', 'propped up'],
  ['afloat', 'in the water', 'on the water'],
];

/** Names whose states are said by themselves: `propped`, `on the trailer`. */
const boatNames = ['boat', 'she', 'her', 'hull'];

type SetUpState = { readonly setUp: string; readonly state: string };

/** Set-ups asked for: `mast down`, `with the cover off`, `on the trailer`. Not the work itself: `take the mast down`. */
export function readSetUps(text: LineText, setUps: Lexicon['setUps']): Understood<SetUpState>[] {
  const found: Understood<SetUpState>[] = [];
  // twice, because in talk without commas one is known by the other that follows it
  for (let round = 0; round < 2; round++)
    for (const [setUp, { name, states }] of Object.entries(setUps)) {
      if (found.some((part) => part.value.setUp === setUp)) continue;
      for (const { id, name: stateName } of states) {
        const others = states.filter((each) => each.id !== id).map((each) => plainName(each.name));
        const part = readState(text, plainName(name), plainName(stateName), others, { setUp, state: id });
        if (part) {
          found.push(part);
          break;
        }
      }
    }
  return found.sort((a, b) => a.from - b.from);
}

function readState(
  text: LineText,
  name: string,
  state: string,
  otherStates: readonly string[],
  value: SetUpState,
): Understood<SetUpState> | null {
  const words = [state, ...(sameStates.find((group) => group.includes(state)) ?? [])]
    .filter((word, at, all) => all.indexOf(word) === at && !otherStates.includes(word))
    .sort((a, b) => b.length - a.length)
    .map(escaped)
    .join('|');
  const saidAlone = boatNames.includes(name);
  const subject = saidAlone
    ? '(?:(?:boat|she|her|hull) (?:is |must be |has to be |will have to be |needs to be |wants to be )?)?'
    : `(?:centre|center)?${escaped(name)} (?:is |must be )?`;
  const asking =
    '(?:and )?(?:needs?|wants?|with|when|while|once|if|has to have|must have|has to be|must be|needs to be) (?:the |her )?';
  return (
    claim(text, phrase(`(?:${asking}|the |her )?${subject}(?:${words})`), () => value, { alone: true }) ??
    claim(text, phrase(`${asking}${subject}(?:${words})`), () => value) ??
    // talk without commas: 'rebed the plate mast down ninety minutes'
    claim(
      text,
      phrase(`(?<!(?:the|her|it|take|get|let|bring|put) )${saidAlone ? '' : `${escaped(name)} `}(?:${words})`),
      (match) => (followedByUnderstood(text, match.index! + match[0].length) ? value : null),
    )
  );
}

const plainName = (name: string) => name.trim().toLowerCase();

const generic = new Set(['sail', 'outing', 'trip', 'cruise', 'passage', 'weekend', 'event', 'race', 'regatta']);
const small = new Set(['the', 'a', 'an', 'at', 'of', 'to', 'on', 'in', 'and', 'our', 'for', 'from', 'round', 'next']);

/**
 * The outing it is for: `for the Whit sail`, `before the outer bar`. The words must all stand in one outing's title;
 * `the outing` or `the sail` alone will do where only one lies ahead.
 */
export function readOuting(
  text: LineText,
  { outings, today }: Pick<Lexicon, 'outings' | 'today'>,
): Understood<string> | null {
  const ahead = Object.entries(outings)
    .filter(([, outing]) => outing.date >= today)
    .sort(([, a], [, b]) => (a.date < b.date ? -1 : 1));
  if (ahead.length === 0) return null;
  // longest phrase first
  for (const length of [7, 6, 5, 4, 3, 2, 1]) {
    const found = claim(
      text,
      phrase(
        `(?:(?:needed|due|ready|wanted|fit|in time|done) )?(?:for|before|by) ((?:[\\p{L}\\p{N}']+ ){${length - 1}}[\\p{L}\\p{N}']+)`,
      ),
      (match) => outingCalled(match[1]!, ahead),
    );
    if (found) return found;
  }
  return null;
}

function outingCalled(words: string, ahead: readonly (readonly [string, { readonly title: string }])[]): string | null {
  const said = wordsOf(words).filter((word) => !small.has(word));
  if (said.length === 0) return null;
  // a phrase that ends in a small word belongs to what follows
  if (small.has(wordsOf(words).at(-1)!)) return null;
  const own = said.filter((word) => !generic.has(word));
  if (own.length === 0) return ahead.length === 1 ? ahead[0]![0] : null;
  const fits = ahead.filter(([, { title }]) => {
    const inTitle = new Set(wordsOf(title));
    return own.every((word) => inTitle.has(word));
  });
  return fits.length === 1 ? fits[0]![0] : null;
}

const abbreviations: Readonly<Record<string, string>> = { stbd: 'starboard', 'st-bd': 'starboard', fwd: 'forward' };
const wordsOf = (words: string) =>
  (words.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).map((word) => abbreviations[word] ?? word);

/** The fitting named in the line: its whole name, or all its words within one part of the line. */
export function readFitting(text: LineText, fittings: Lexicon['fittings']): Understood<string> | null {
  const byLength = Object.entries(fittings).sort(([, a], [, b]) => b.name.length - a.name.length);
  for (const [id, { name }] of byLength) {
    const found = claim(text, nameInLine(name), () => id, { keep: true });
    if (found) return found;
  }
  for (const [id, { name }] of byLength) {
    const words = wordsOf(name).filter((word) => !small.has(word));
    if (words.length < 2) continue;
    const any = words.map(wordInLine).join('|');
    const pattern = phrase(`(?:${any})(?:(?:[ -]+(?:the|of|for|on|a|at|in))*[ -]+(?:${any}))+`);
    const found = claim(
      text,
      pattern,
      (match) => {
        const said = new Set(wordsOf(match[0]).map(singular));
        return words.every((word) => said.has(singular(word))) ? id : null;
      },
      { keep: true },
    );
    if (found) return found;
  }
  return null;
}

/** The first zone named in the line, by its name or a word it is also called by; of two at one place the longer. */
export function readZone(text: LineText, zones: Lexicon['zones'], rule: ClaimRule): Understood<string> | null {
  const names = Object.entries(zones)
    .flatMap(([id, zone]) => [zone.name, ...zone.words].map((name) => ({ id, name })))
    .filter(({ name }) => wordsOf(name).length > 0)
    .sort((a, b) => b.name.length - a.name.length);
  if (names.length === 0) return null;
  const any = phrase(names.map(({ name }) => namePattern(name)).join('|'));
  return claim(
    text,
    any,
    (match) =>
      names.find(({ name }) =>
        new RegExp(`^(?:${namePattern(name).replace(/ (?![?*+])/g, ' +')})$`, 'iu').test(match[0]),
      )?.id ?? null,
    rule,
  );
}

const singular = (word: string) =>
  word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;

/** A word with or without its plural s, and `stbd` for starboard. */
function wordInLine(word: string): string {
  if (word === 'starboard') return '(?:starboard|stbd)';
  return `${escaped(singular(word))}s?`;
}

const namePattern = (name: string) => wordsOf(name).map(wordInLine).join('[ -]');
const nameInLine = (name: string) => phrase(namePattern(name));

const escaped = (words: string) => words.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
