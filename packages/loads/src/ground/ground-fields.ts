import { inBase } from '#units';
import { assuming, choice, type Fault, type Field, force, length, type Source } from '#working';
import { rodeFibres } from '../../tables/rode-gear.read-2026-11.ts';
import { lengthOf, type RodePiece } from './rode.ts';
import {
  type ChainSize,
  chainPiece,
  chainSizes,
  type RodeFibre,
  type RopeSize,
  ropePiece,
  ropeSizes,
} from './rode-gear.ts';

const m = (value: number) => inBase('length', value, 'm');
const none = { id: 'none', title: 'none' } as const;
const inMm = <Size extends number>(sizes: readonly Size[]) =>
  sizes.map((size) => ({ id: `${size}` as `${Size}`, title: `${size} mm` }));

/** The fields that questions about a rode share, each made anew. */
export const rodeFields = () => ({
  load: force('N', 1, 50_000, 'level pull at the bow: ask loads.bow-load'),
  depth: length('m', 0.2, 60, 'water at the anchor now'),
  rise: assuming(length('m', 0, 15, 'the tide still to rise'), m(0), '0 m', 'the depth is taken as that of high water'),
  fall: assuming(length('m', 0, 15, 'the tide still to fall'), m(0), '0 m', 'the depth is taken as that of low water'),
  bow: assuming(length('m', 0, 3, 'the bow roller above the water'), m(0.8), '0.8 m', 'a usual small boat'),
  chain: choice([none, ...inMm(chainSizes)], 'chain next to the anchor, by the size of its links') as Field<
    'none' | `${ChainSize}`
  >,
  'chain-length': assuming(length('m', 0, 150, 'of chain'), m(0), '0 m', 'none'),
  rope: choice(
    [none, ...(Object.keys(rodeFibres) as RodeFibre[]).map((id) => ({ id, title: rodeFibres[id].title }))],
    'rope between the chain and the bow',
  ) as Field<'none' | RodeFibre>,
  'rope-size': assuming(
    choice(inMm(ropeSizes), 'rope across, in mm') as Field<`${RopeSize}`>,
    '12',
    '12 mm',
    'usual on boats of 5 to 7 m',
  ),
  'rope-length': assuming(length('m', 0, 300, 'of rope'), m(0), '0 m', 'none'),
});

interface GivenRode {
  readonly depth: number;
  readonly rise: number;
  readonly fall: number;
  readonly bow: number;
  readonly chain: 'none' | `${ChainSize}`;
  readonly 'chain-length': number;
  readonly rope: 'none' | RodeFibre;
  readonly 'rope-size': `${RopeSize}`;
  readonly 'rope-length': number;
}

/** The pieces of a rode that has any, from the anchor up. */
export function piecesOf(given: GivenRode): readonly RodePiece[] {
  const { chain, rope } = given;
  const pieces: RodePiece[] = [];
  if (chain !== 'none' && given['chain-length'] > 0)
    pieces.push(chainPiece({ size_mm: Number(chain) as ChainSize, length_m: given['chain-length'] }));
  if (rope !== 'none' && given['rope-length'] > 0)
    pieces.push(
      ropePiece({ fibre: rope, size_mm: Number(given['rope-size']) as RopeSize, length_m: given['rope-length'] }),
    );
  return pieces;
}

/** From the seabed up to the bow roller, with the tide up and with it out. [m] */
export const heightsOf = ({ depth, rise, fall, bow }: GivenRode) => ({
  high_m: depth + rise + bow,
  low_m: depth - fall + bow,
});

/** What is wrong with a rode and the water it is let go in, or null. */
export function rodeFault(given: GivenRode): Fault | null {
  if (given.fall >= given.depth)
    return {
      where: 'fall',
      wrong: `the tide falls ${metres(given.fall)} where there is ${metres(given.depth)} of water: she takes the ground`,
      right: `give less than ${metres(given.depth)}, or anchor where it is deeper`,
    };
  if (given.chain === 'none' && given['chain-length'] > 0)
    return { where: 'chain', wrong: 'a length of chain, but no size', right: 'say what chain it is' };
  if (given.rope === 'none' && given['rope-length'] > 0)
    return { where: 'rope', wrong: 'a length of rope, but no fibre', right: 'say what rope it is' };
  const pieces = piecesOf(given);
  const rode_m = lengthOf(pieces);
  const { high_m } = heightsOf(given);
  if (rode_m <= high_m)
    return {
      where: given['rope-length'] > 0 ? 'rope-length' : 'chain-length',
      wrong: `${metres(rode_m)} of rode does not reach from the bow to the seabed: that is ${metres(high_m)} at high water`,
      right: `give a rode of more than ${metres(high_m)}; four to seven times that is usual`,
    };
  return null;
}

const metres = (value: number) => `${Math.round(value * 100) / 100} m`;

export const sources = {
  catenary: { title: 'elastic catenary, piece by piece', seen: 'our derivation' },
  method: {
    title: 'catenary of an anchor chain with lifted length and scope (sailingconachair.uk, catenary report)',
    seen: 'read second-hand',
  },
  lead: {
    title: 'greatest lead at the anchor, a sailing magazine (sailmagazine.com, anchoring principles)',
    seen: 'read second-hand',
  },
  chain: {
    title: 'mass of short-link chain, a technical writer’s table of DIN 766 and ISO 4565',
    seen: 'read second-hand',
  },
  steel: { title: 'densities of steel and of sea water, handbooks', seen: 'recalled' },
  fibres: {
    title:
      'specific gravity of rope fibres, a rope maker’s table, and linear densities of the rope standards (recalled)',
    seen: 'read second-hand',
  },
  nylon: {
    title:
      'three-strand nylon 16 % longer at 15 % of its breaking load, a rope maker’s figure (docsbay.net, snubber design)',
    seen: 'read second-hand',
  },
  stretch: { title: 'stretch of polyester and polypropylene rope at 15 % of breaking load', seen: 'recalled' },
  table: { title: 'ABYC H-40 table 1, horizontal load by length or beam', seen: 'read second-hand' },
  drag: {
    title: 'drag ½ρ·C·A·V², velocity pressure (boatdesign.net thread 36864)',
    seen: 'read second-hand',
  },
  shapes: {
    title: 'wind on boats: 1.2 for flat, 1 for round shapes (a maker’s page on anchors)',
    seen: 'read second-hand',
  },
  sheer: {
    title: 'a boat that sheers about pulls 50 to 100 % harder than one that lies quietly (practical-sailor.com)',
    seen: 'read second-hand',
  },
  current: { title: 'UFC 4-159-03 (2005), 4-5.2 current from ahead, equations 15 to 21', seen: 'read second-hand' },
} as const satisfies Record<string, Source>;

export const groundCautions = {
  hands:
    'Keep hands and feet out of the rode while it runs, and never take a turn round a hand; take it to a cleat before it loads.',
  watch:
    'Strength and angle say nothing of the holding: dig the anchor in astern, take bearings, and keep a watch when it blows.',
} as const;

export const groundLimits = [
  'All of the pull is taken to come on the anchor: friction of what lies on the seabed is not counted.',
  'The seabed is taken as level. On one that slopes away the pull is steeper by as much.',
] as const;
