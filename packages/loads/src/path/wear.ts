/** What age and what a look at a part take from its strength. Tables are for new gear; every share here is stated with whose it is. */
import type { Source } from '#working';
import type { PartOfPath, Sign } from './part.ts';

/** What parts wear alike. */
type Wearing = 'fibre' | 'wire' | 'metal';

export interface Wear {
  /** share of its strength that is left, 0 to 1; null: nothing is to be counted on, replace it */
  readonly share: number | null;
  readonly because: string;
  readonly whose: Source;
}

const ours: Source = { title: 'shares for age, sun and wear on a boat of this size', seen: 'our assumption' };
const practice = (title: string): Source => ({ title, seen: 'common practice' });
const retire: Source = {
  title: 'lifting-trade guidance to BS EN 13889: a tenth of the thickness, or less, retires it',
  seen: 'read second-hand',
};

const left = (share: number, because: string): Wear => ({ share, because, whose: ours });
const gone = (because: string, whose: Source): Wear => ({ share: null, because, whose });

const signsOf: Readonly<Record<Wearing, Readonly<Partial<Record<Sign, Wear>>>>> = {
  fibre: {
    faded: left(0.8, 'faded by the sun'),
    stiff: left(0.7, 'stiff with salt, sun or age'),
    chafed: left(0.75, 'fuzzy all over: outer yarns are cut'),
    worn: left(0.6, 'worn thin in one place'),
    'cut strand': gone('a strand is cut', practice('rope with a cut strand is cut there and spliced, or replaced')),
  },
  wire: {
    rust: left(0.9, 'brown on the surface'),
    pitted: gone('pitted', practice('pitted wire is replaced')),
    'broken wires': gone('wires are broken', practice('one broken wire of a stay retires it')),
    'cut strand': gone('a strand is cut', practice('one broken wire of a stay retires it')),
    kinked: gone('kinked', practice('kinked wire is replaced')),
    worn: gone('worn flat', practice('wire worn flat is replaced')),
  },
  metal: {
    rust: left(0.9, 'rust on the surface'),
    pitted: gone('pitted', practice('pitted fittings are replaced: a crack begins in a pit')),
    worn: gone('worn by about a tenth of its thickness', retire),
    bent: gone('bent', practice('what has bent has been overloaded once')),
    cracked: gone('cracked', practice('a crack is the beginning of the break')),
  },
};

const wearing = (kind: PartOfPath['kind']): Wearing =>
  kind === 'rope' || kind === 'lashing' ? 'fibre' : kind === 'wire' ? 'wire' : 'metal';

/** The signs a look at a part of this kind can show, for the form that asks. */
export function signsFor(kind: PartOfPath['kind']): readonly Sign[] {
  if (kind === 'hand') return [];
  if (kind === 'ending') return ['chafed', 'rust', 'cracked', 'cut strand', 'broken wires', 'worn'];
  return Object.keys(signsOf[wearing(kind)]) as Sign[];
}

/** Of a knot, splice or terminal: it is of fibre or of metal, whichever shows the sign. */
const ofEnding: Readonly<Partial<Record<Sign, Wear>>> = {
  ...signsOf.metal,
  ...signsOf.wire,
  ...signsOf.fibre,
  worn: signsOf.metal.worn!,
  cracked: signsOf.metal.cracked!,
};

/**
 * What one sign takes from a part. A sign that a part of its kind cannot show takes everything: something is wrong
 * with the part that nothing here knows of.
 */
export function wearOf(part: PartOfPath, sign: Sign): Wear {
  const known = part.kind === 'ending' ? ofEnding[sign] : signsOf[wearing(part.kind)][sign];
  return known ?? gone(sign, ours);
}

/** Years of use that take from fibre and wire; metal parts are judged by what is seen on them. */
const ageSteps = {
  fibre: [
    { over_years: 10, share: 0.5 },
    { over_years: 7, share: 0.6 },
    { over_years: 3, share: 0.8 },
  ],
  wire: [{ over_years: 12, share: 0.8 }],
  metal: [],
} as const satisfies Readonly<Record<Wearing, readonly { readonly over_years: number; readonly share: number }[]>>;

/**
 * What its years take from a part, or null where they take nothing.
 *
 * @param years  it has been in use; null: not known, and then it is taken for as old as counts
 */
export function ageOf(part: PartOfPath, years: number | null): Wear | null {
  if (part.kind === 'ending') return null;
  const steps: readonly { readonly over_years: number; readonly share: number }[] = ageSteps[wearing(part.kind)];
  const step = years === null ? steps[0] : steps.find(({ over_years }) => years > over_years);
  if (step === undefined) return null;
  const words =
    years === null ? `age not known: taken as over ${step.over_years} years` : `over ${step.over_years} years in use`;
  return left(step.share, words);
}
