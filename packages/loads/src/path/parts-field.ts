/** A load path as it is typed: parts in order, a semicolon between them, each in a few words. */
import type { Field, Reading } from '#working';
import { endingShares } from '../../tables/endings.read-2026-11.ts';
import { ropeBreaking } from '../../tables/fibre-rope.read-2026-11.ts';
import { wireBreaking } from '../../tables/wire-rope.read-2026-11.ts';
import type { Ending } from './ending.ts';
import type { Fibre, Lay, Metal, PartOfPath, PartState, Sign } from './part.ts';
import type { LoadPart } from './part-strength.ts';

const kinds = [
  'rope',
  'lashing',
  'wire',
  'chain',
  'shackle',
  'thimble',
  'ending',
  'block',
  'fitting',
  'pin',
  'rigging-screw',
  'fastenings',
  'winch',
  'hand',
] as const;
const fibres = Object.keys(ropeBreaking) as Fibre[];
const lays = Object.keys(wireBreaking) as Lay[];
const endings = Object.keys(endingShares) as Ending[];
const metals: readonly Metal[] = ['stainless', 'galvanised', 'bronze', 'aluminium', 'plastic'];
const signs: readonly Sign[] = [
  'faded',
  'stiff',
  'chafed',
  'cut strand',
  'broken wires',
  'kinked',
  'rust',
  'pitted',
  'worn',
  'bent',
  'cracked',
];
const fittings = ['anchor', 'pad eye', 'cleat', 'post', 'chain plate', 'ring', 'hook', 'other'] as const;
const dashed = (word: string): string => word.replaceAll(' ', '-');

/** Words of one part, taken as they are understood; the first thing that is wrong is kept. */
interface Words {
  left: string[];
  fault: { readonly wrong: string; readonly right: string } | null;
}

const blame = (words: Words, wrong: string, right: string): void => {
  words.fault ??= { wrong, right };
};

/** Takes the word that is one of the choices; where none is and `required`, that is a fault. */
function choose<T extends string>(words: Words, choices: readonly T[], what: string, required: boolean): T | null {
  for (const choice of choices) {
    const at = words.left.indexOf(dashed(choice));
    if (at >= 0) {
      words.left.splice(at, 1);
      return choice;
    }
  }
  if (required) blame(words, `its ${what} is not said`, `one of: ${choices.map(dashed).join(', ')}`);
  return null;
}
const oneOf = <T extends string>(words: Words, choices: readonly [T, ...T[]] | readonly T[], what: string): T =>
  choose(words, choices, what, true) ?? choices[0]!;

const isNumber = (word: string | undefined): word is string => word !== undefined && /^m?\d+([.,]\d+)?$/.test(word);
const numberOf = (word: string): number => Number(word.replace('m', '').replace(',', '.'));

function inRange(words: Words, value: number, low: number, high: number, what: string): number {
  if (!(value >= low && value <= high)) blame(words, `${what} ${value} is out of range`, `${low} to ${high}`);
  return value;
}

/** Takes the first number that stands by itself: the size a part is called by. */
function size(words: Words, what = 'size in mm', low = 0.5, high = 200): number {
  const at = words.left.findIndex((word) => isNumber(word));
  if (at < 0) {
    blame(words, `its ${what} is not said`, `a number from ${low} to ${high}, as in 8`);
    return low;
  }
  return inRange(words, numberOf(words.left.splice(at, 1)[0]!), low, high, what);
}

/** Takes a number by the word before it, as in `pin 8`; null where the word is not there. */
function named(words: Words, key: string, low: number, high: number): number | null {
  const at = words.left.indexOf(key);
  if (at < 0) return null;
  const [, value] = words.left.splice(at, 2);
  if (!isNumber(value)) {
    blame(words, `no number comes after ‘${key}’`, `as in ${key} ${low}`);
    return null;
  }
  return inRange(words, numberOf(value), low, high, key);
}
const measured = (words: Words, key: string) => named(words, key, 0.1, 1000);

/** Takes `moused` as yes, `not-moused` as no; null where neither is there. */
function seen(words: Words, word: string): boolean | null {
  const found = choose(words, [word, `not-${word}`], word, false);
  return found === null ? null : found === word;
}

function partOf(words: Words, kind: (typeof kinds)[number]): PartOfPath {
  switch (kind) {
    case 'rope':
      return { kind, fibre: oneOf(words, fibres, 'fibre'), size_mm: size(words) };
    case 'lashing': {
      const passes = named(words, 'passes', 1, 50);
      if (passes === null || !Number.isInteger(passes))
        blame(words, 'how often it goes round is not said', 'whole passes, as in passes 3');
      return { kind, fibre: oneOf(words, fibres, 'fibre'), size_mm: size(words), passes: passes ?? 1 };
    }
    case 'wire': {
      const make = choose(words, ['aircraft', '316'], 'make', false) ?? '316';
      return { kind, laid: oneOf(words, lays, 'lay'), make, size_mm: size(words) };
    }
    case 'chain': {
      const inside_mm = measured(words, 'inside');
      const graded = named(words, 'grade', 30, 70);
      const grade =
        graded === null ? null : (['30', '40', '43', '70'] as const).find((each) => Number(each) === graded);
      if (grade === undefined)
        blame(words, `there is no grade ${graded}`, 'grade 30, 40, 43 or 70, or none where it has no mark');
      const metal = choose(words, ['galvanised', 'stainless'], 'metal', true) ?? 'galvanised';
      return { kind, grade: grade ?? null, metal, inside_mm, size_mm: size(words) };
    }
    case 'shackle': {
      const [pin_mm, jaw_mm, moused] = [measured(words, 'pin'), measured(words, 'jaw'), seen(words, 'moused')];
      const make = oneOf(words, ['lifting', 'stainless', 'galvanised'], 'make');
      return { kind, make, pin_mm, jaw_mm, moused, size_mm: size(words) };
    }
    case 'thimble': {
      const opening_mm = measured(words, 'opening');
      return { kind, metal: oneOf(words, metals, 'metal'), opening_mm, size_mm: size(words) };
    }
    case 'ending':
      return { kind, ending: oneOf(words, endings, 'knot, splice or terminal') };
    case 'block': {
      const [sheave_mm, line_mm] = [measured(words, 'sheave'), measured(words, 'line')];
      const turn_deg = named(words, 'turn', 0, 180);
      return { kind, sheave_mm, line_mm, turn_deg, metal: oneOf(words, metals, 'metal') };
    }
    case 'fitting': {
      const [eye_mm, thickness_mm] = [measured(words, 'eye'), measured(words, 'thickness')];
      return {
        kind,
        what: oneOf(words, fittings, 'what it is'),
        metal: oneOf(words, metals, 'metal'),
        eye_mm,
        thickness_mm,
      };
    }
    case 'pin': {
      const secured = seen(words, 'secured');
      return { kind, metal: oneOf(words, metals, 'metal'), secured, size_mm: size(words) };
    }
    case 'rigging-screw': {
      const [pin_mm, jaw_mm, locked] = [measured(words, 'pin'), measured(words, 'jaw'), seen(words, 'locked')];
      const metal = oneOf(words, metals, 'metal');
      return { kind: 'rigging screw', metal, pin_mm, jaw_mm, locked, thread_mm: size(words, 'thread in mm') };
    }
    case 'fastenings': {
      const [count, thickness_mm] = [named(words, 'count', 1, 100), measured(words, 'thickness')];
      if (count === null || !Number.isInteger(count)) blame(words, 'how many they are is not said', 'as in count 4');
      return {
        kind,
        how: oneOf(words, ['screws', 'bolts'], 'kind'),
        count: count ?? 1,
        metal: oneOf(words, metals, 'metal'),
        into: oneOf(words, ['laminate', 'plywood', 'timber', 'aluminium', 'steel'], 'material they go into'),
        thickness_mm,
        backing: choose(words, ['washers', 'plate'], 'backing', false) ?? 'none',
        pulled: oneOf(words, ['out', 'across'], 'pull'),
        size_mm: size(words),
      };
    }
    case 'winch':
      return { kind, ratio: named(words, 'ratio', 1, 200) };
    case 'hand':
      return { kind, how: oneOf(words, ['pull', 'crank'], 'work') };
  }
}

/** What is known of a part besides: `marked 12 kN breaking`, `years 5`, `sound` or what was seen on it. */
function stateOf(words: Words): PartState & { readonly years: number | null } {
  const force_kN = named(words, 'marked', 0.001, 1000);
  const as = choose(words, ['working', 'breaking'], 'mark', force_kN !== null);
  if (as !== null && force_kN === null) blame(words, `‘${as}’ stands without a figure`, `as in marked 12 ${as}`);
  const years = named(words, 'years', 0, 100);
  const sound = choose(words, ['sound'], 'state', false) !== null;
  const found: Sign[] = [];
  for (let sign = choose(words, signs, 'sign', false); sign !== null; sign = choose(words, signs, 'sign', false))
    found.push(sign);
  if (sound && found.length > 0) blame(words, `it cannot be sound and ${found[0]}`, 'one of the two');
  return {
    marked:
      force_kN === null
        ? null
        : { force_kN, as: as === 'working' ? 'working load' : 'breaking load', by: 'marked on it' },
    signs: sound || found.length > 0 ? found : null,
    years,
  };
}

function readPart(text: string): LoadPart | { readonly wrong: string; readonly right: string } {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/(\d)\s*(mm|kn|°)(?=\s|,|$)/g, '$1')
    .replaceAll(/,\s/g, ' ');
  const words: Words = { left: plain.split(/\s+/).filter((word) => word !== ''), fault: null };
  const kind = kinds.find((each) => each === words.left[0]);
  if (kind === undefined)
    return {
      wrong: `‘${text.trim()}’ does not begin with what it is`,
      right: `begin with one of: ${kinds.join(', ')}`,
    };
  words.left.shift();
  const state = stateOf(words);
  const part = partOf(words, kind);
  if (words.left.length > 0)
    blame(words, `‘${words.left.join(' ')}’ says nothing of a ${kind}`, 'leave it out, or see the examples');
  return words.fault ?? { ...part, ...state };
}

const examples = [
  'rope nylon 10, years 3, chafed',
  'ending eye-splice, sound',
  'thimble stainless 10, sound',
  'shackle stainless 8, pin 8, jaw 16, moused, sound',
  'shackle galvanised 8, not-moused',
  'chain galvanised 6, grade 30, years 3, rust',
  'wire 7x19 4, years 2, sound',
  'ending ferrule',
  'lashing polyester 4, passes 3, years 1, sound',
  'block stainless, sheave 40, line 8, turn 90, marked 8 breaking, sound',
  'fitting pad-eye stainless, eye 14, thickness 8, marked 12 breaking, sound',
  'fitting anchor galvanised, eye 14, thickness 10',
  'pin stainless 6, secured',
  'rigging-screw stainless M8, pin 8, jaw 12, locked',
  'fastenings bolts 6, count 4, stainless, laminate, plate, out',
  'winch ratio 8, marked 5 working',
  'hand crank',
] as const;

const unclear = (wrong: string, right: string) => ({ kind: 'not clear', wrong, right }) as const;

/** A field that takes the parts of a load path, 1 to 40 of them, in order. */
export function partsField(): Field<readonly LoadPart[]> {
  const meaning = 'the parts in order, from what pulls to what holds, a semicolon between them';
  const example = 'rope polyester 10, years 2; ending bowline; shackle stainless 8, moused';
  return {
    meaning,
    read: (raw): Reading<readonly LoadPart[]> => {
      const right = `give parts, as in ${example}`;
      if (typeof raw !== 'string') return unclear('no parts are given', right);
      const texts = raw.split(';').filter((each) => each.trim() !== '');
      if (texts.length === 0) return unclear('no parts are given', right);
      if (texts.length > 40) return unclear(`${texts.length} parts are given`, 'give at most 40');
      const parts: LoadPart[] = [];
      for (const [i, text] of texts.entries()) {
        const read = readPart(text);
        if ('wrong' in read) return unclear(`part ${i + 1}, ‘${text.trim()}’: ${read.wrong}`, `give ${read.right}`);
        parts.push(read);
      }
      return { kind: 'read', value: parts };
    },
    control: { control: 'series', each: 'a part', least: 1, most: 40 },
    reference: { meaning, unit: '', takes: `1 to 40 parts, such as: ${examples.join('; ')}`, example },
    raw: (fc) => fc.array(fc.constantFrom(...examples), { minLength: 1, maxLength: 6 }).map((each) => each.join('; ')),
  };
}
