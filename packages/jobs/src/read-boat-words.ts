/** Names of this boat's own: set-ups, outings, fittings, zones. */
import { type ClaimRule, claim, followedByUnderstood, type LineText, type Phrase, phrase } from './line-text.ts';
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
  const states = setUpStates(setUps).filter(({ words }) => words.some((word) => text.plain.includes(word)));
  // twice, because in talk without commas one is known by the other that follows it
  for (let round = 0; round < 2; round++)
    for (const { value, alone, asked, runOn } of states) {
      if (found.some((part) => part.value.setUp === value.setUp)) continue;
      const part =
        claim(text, alone, () => value, { alone: true }) ??
        claim(text, asked, () => value) ??
        claim(text, runOn, (match) => (followedByUnderstood(text, match.index! + match[0].length) ? value : null));
      if (part) found.push(part);
    }
  return found.sort((a, b) => a.from - b.from);
}

interface StatePatterns {
  readonly value: SetUpState;
  /** the state's name and what else it is called */
  readonly words: readonly string[];
  readonly alone: Phrase;
  readonly asked: Phrase;
  /** talk without commas: 'rebed the plate mast down ninety minutes' */
  readonly runOn: Phrase;
}

const statesOf = new WeakMap<Lexicon['setUps'], readonly StatePatterns[]>();

function setUpStates(setUps: Lexicon['setUps']): readonly StatePatterns[] {
  const before = statesOf.get(setUps);
  if (before) return before;
  const made = Object.entries(setUps).flatMap(([setUp, { name, states }]) =>
    states.map(({ id, name: stateName }) => {
      const others = states.filter((each) => each.id !== id).map((each) => plainName(each.name));
      return statePatterns(plainName(name), plainName(stateName), others, { setUp, state: id });
    }),
  );
  statesOf.set(setUps, made);
  return made;
}

function statePatterns(name: string, state: string, otherStates: readonly string[], value: SetUpState): StatePatterns {
  const words = [state, ...(sameStates.find((group) => group.includes(state)) ?? [])]
    .filter((word, at, all) => all.indexOf(word) === at && !otherStates.includes(word))
    .sort((a, b) => b.length - a.length);
  const said = words.map(escaped).join('|');
  const saidAlone = boatNames.includes(name);
  const subject = saidAlone
    ? '(?:(?:boat|she|her|hull) (?:is |must be |has to be |will have to be |needs to be |wants to be )?)?'
    : `(?:centre|center)?${escaped(name)} (?:is |must be )?`;
  const asking =
    '(?:and )?(?:needs?|wants?|with|when|while|once|if|next time|time|has to have|must have|has to be|must be|needs to be) (?:the |her )?';
  return {
    value,
    words,
    alone: phrase(`(?:${asking}|the |her )?${subject}(?:${said})`),
    asked: phrase(`${asking}${subject}(?:${said})`),
    runOn: phrase(
      saidAlone
        ? `(?<!(?:the|her|it|take|get|let|bring|put) )(?:${said})`
        : `(?<!(?:the|her|take|get|let|bring|put) )${escaped(name)} (?:${said})`,
    ),
  };
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
  if (ahead.length === 0 || !/\b(?:for|before|by)\b/.test(text.plain)) return null;
  // longest phrase first
  for (const length of [7, 6, 5, 4, 3, 2, 1]) {
    const found = claim(
      text,
      phrase(
        `(?:(?:needed|due|ready|wanted|fit|in time|done) )?(?:for|before|by) (?:(?:we|i|she|it) (?:[a-zß-ɏ']+ ){1,3}?(?:to|for|on|off on) )?((?:[a-zß-ɏ0-9']+ ){${length - 1}}[a-zß-ɏ0-9']+)`,
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
  (words.toLowerCase().match(/[a-zß-ɏ0-9]+/g) ?? []).map((word) => abbreviations[word] ?? word);

/** The fitting named in the line: its whole name, or all its words within one part of the line. */
export function readFitting(text: LineText, fittings: Lexicon['fittings']): Understood<string> | null {
  const names = fittingNames(fittings);
  for (const { id, whole } of names) {
    const found = claim(text, whole, () => id, { keep: true });
    if (found) return found;
  }
  for (const { id, words, any } of names) {
    if (any === null) continue;
    const found = claim(
      text,
      any,
      (match) => {
        const said = new Set(wordsOf(match[0]).map(singular));
        return words.every((word) => said.has(singular(word))) ? id : null;
      },
      { keep: true },
    );
    if (found) return found;
  }
  // 'port hub' for the port wheel hub, where no other fitting could be meant
  for (const { words, any } of names) {
    if (any === null || words.length < 3) continue;
    const found = claim(text, any, (match) => onlyFittingWith(wordsOf(match[0]).map(singular), names), { keep: true });
    if (found) return found;
  }
  return null;
}

function onlyFittingWith(said: readonly string[], names: readonly FittingName[]): string | null {
  const fits = names.filter(({ words }) => said.every((word) => small.has(word) || words.map(singular).includes(word)));
  const only = fits.length === 1 ? fits[0]! : null;
  return only && new Set(said).size >= 2 && singular(only.words.at(-1)!) === said.at(-1) ? only.id : null;
}

interface FittingName {
  readonly id: string;
  readonly whole: Phrase;
  readonly words: readonly string[];
  /** its words in any order with small words between them; null for a name of one word */
  readonly any: Phrase | null;
}

const namesOfFittings = new WeakMap<Lexicon['fittings'], readonly FittingName[]>();

/** Names of the fittings, longest first. */
function fittingNames(fittings: Lexicon['fittings']): readonly FittingName[] {
  const before = namesOfFittings.get(fittings);
  if (before) return before;
  const made = Object.entries(fittings)
    .sort(([, a], [, b]) => b.name.length - a.name.length)
    .map(([id, { name }]): FittingName => {
      const words = wordsOf(name).filter((word) => !small.has(word));
      const one = words.map(wordInLine).join('|');
      const any = words.length < 2 ? null : phrase(`(?:${one})(?:(?:[ -]+(?:the|of|for|on|a|at|in))*[ -]+(?:${one}))+`);
      return { id, whole: nameInLine(name), words, any };
    });
  namesOfFittings.set(fittings, made);
  return made;
}

/** The first zone named in the line, by its name or a word it is also called by; of two at one place the longer. */
export function readZone(text: LineText, zones: Lexicon['zones'], rule: ClaimRule): Understood<string> | null {
  const { names, any } = zoneNames(zones);
  if (any === null) return null;
  return claim(text, any, (match) => names.find(({ whole }) => whole.test(match[0]))?.id ?? null, rule);
}

interface ZoneNames {
  readonly names: readonly { readonly id: string; readonly whole: RegExp }[];
  readonly any: Phrase | null;
}

const namesOfZones = new WeakMap<Lexicon['zones'], ZoneNames>();

/** Names and other words of the zones, longest first. */
function zoneNames(zones: Lexicon['zones']): ZoneNames {
  const before = namesOfZones.get(zones);
  if (before) return before;
  const names = Object.entries(zones)
    .flatMap(([id, zone]) => [zone.name, ...zone.words].map((name) => ({ id, name })))
    .filter(({ name }) => wordsOf(name).length > 0)
    .sort((a, b) => b.name.length - a.name.length);
  const made: ZoneNames = {
    names: names.map(({ id, name }) => ({
      id,
      whole: new RegExp(`^(?:${namePattern(name).replace(/ (?![?*+])/g, ' +')})$`, 'i'),
    })),
    any: names.length === 0 ? null : phrase(names.map(({ name }) => namePattern(name)).join('|')),
  };
  namesOfZones.set(zones, made);
  return made;
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
