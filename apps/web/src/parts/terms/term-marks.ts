/** Which words of the glossary are marked on the screens: all of them, but for those that are plain English elsewhere. */
import { glossary } from './glossary.ts';

/** A word of the glossary that is looked for on a screen. */
export interface TermMark {
  readonly of: string;
  /** other forms of it, beside the plural */
  readonly also?: readonly string[];
  /** the addresses, after '#/', on which it is a term; missing: on all */
  readonly on?: RegExp;
}

/** Words that stand for plain English far more often than for what the glossary means. */
export const neverMarked: ReadonlySet<string> = new Set([
  // 'by hand', 'on board', 'a picture of', 'what is used', 'free again', 'a sheet', 'to slip', 'is working'
  ...['hand', 'board', 'picture', 'use', 'free', 'sheet', 'slip', 'working', 'needed', 'percent', 'turn'],
  // these two are said in plain words wherever they stand
  ...['job', 'step'],
]);

const plan = /^days/;
const work = /^work\/(job|recipe)/;
const battery = /^boat\/(battery|circuits|readings)/;

/** Words that are terms on some screens, and plain English on the others. */
export const onlyOn: Readonly<Record<string, RegExp>> = {
  // of plans: 'held by a shackle', 'a wide margin', 'its weight of 68 kg'
  ...on(plan, ['held', 'moved', 'bound', 'left out', 'set out', 'clear up', 'window']),
  ...on(/^(days|boat$|work\/recipe)/, ['weight']),
  ...on(/^(days|boat\/battery)/, ['gap']),
  ...on(/^(days|work)/, ['margin', 'wait']),
  // of minutes: 'a low tide'
  ...on(work, ['low', 'likely', 'high', 'proof']),
  // of a battery: 'the cabin floor', 'in charge', 'a sagging rope'
  ...on(battery, ['rested', 'charge', 'floor', 'sag', 'flooded', 'gel', 'there and back', 'light of the sky']),
  ...on(/^boat\/(battery|circuits|loads)/, ['band']),
  // of gear: 'to stay dry', 'a block of hours', 'hoisted sail'
  ...on(/^boat\/loads/, ['stay', 'block', 'hoist']),
  ...on(/^boat\/trailer/, ['give', 'gross']),
  ...on(/^stores/, ['reserved']),
  ...on(/^go/, ['set aside']),
};

const also: Readonly<Record<string, readonly string[]>> = {
  abrade: ['abraded', 'abrading'],
  chafe: ['chafed', 'chafing'],
  cure: ['cured', 'curing'],
  rebed: ['rebedded', 'rebedding'],
  reef: ['reefed', 'reefing'],
  veer: ['veered'],
};

export const termMarks: readonly TermMark[] = [...new Set(glossary.flatMap(({ words }) => words))]
  .filter((of) => !neverMarked.has(of))
  .map((of) => ({ of, ...(also[of] && { also: also[of] }), ...(onlyOn[of] && { on: onlyOn[of] }) }));

function on(path: RegExp, words: readonly string[]): Record<string, RegExp> {
  return Object.fromEntries(words.map((word) => [word, path]));
}
