/** A share of strength left as one source prints it; of a range the lower end stands. */
export interface PrintedShare {
  readonly table: string;
  readonly share_pct: number;
  readonly seen: 'read second-hand' | 'recalled';
  readonly source: string;
}
const read = (table: string, share_pct: number, source: string): PrintedShare => ({
  table,
  share_pct,
  seen: 'read second-hand',
  source,
});
const recalled = (table: string, share_pct: number, source: string): PrintedShare => ({
  table,
  share_pct,
  seen: 'recalled',
  source,
});
const crew = 'USCG Boat Crew Seamanship Manual';
const day = 'Day 1970 and Dent 1964';
const knots = 'test series made for a knot book';
const army = 'US Army TM 5-3810-305-10 table 4';

/** What a knot, splice or terminal leaves of the rope or wire it ends. Source: strengths.source.md. */
export const endingShares = {
  bowline: { on: 'rope', title: 'bowline', shares: [read('crew', 63, crew), read('tests', 70, knots)] },
  'figure-eight-loop': { on: 'rope', title: 'figure-of-eight loop', shares: [read('tests', 72, knots)] },
  'figure-eight-end': { on: 'rope', title: 'figure of eight at the end', shares: [read('splicers', 48, day)] },
  'square-knot': {
    on: 'rope',
    title: 'reef (square) knot',
    shares: [read('crew', 54, crew), read('splicers', 45, day)],
  },
  'becket-bend': { on: 'rope', title: 'sheet (becket) bend', shares: [read('crew', 59, crew)] },
  'clove-hitch': { on: 'rope', title: 'clove hitch', shares: [read('crew', 60, crew), read('splicers', 75, day)] },
  'round-turn': { on: 'rope', title: 'round turn and half hitches', shares: [read('crew', 65, crew)] },
  'anchor-bend': { on: 'rope', title: 'anchor bend', shares: [read('splicers', 70, day)] },
  overhand: { on: 'rope', title: 'overhand knot', shares: [read('splicers', 45, day)] },
  'eye-splice': {
    on: 'rope',
    title: 'eye splice',
    shares: [
      read('crew', 90, crew),
      read('mooring', 90, 'Mooring Equipment Guidelines, 2nd edition, table 6.5 note 2'),
    ],
  },
  'short-splice': { on: 'rope', title: 'short splice', shares: [read('splicers', 90, day)] },
  ferrule: {
    on: 'wire',
    title: 'pressed ferrule',
    shares: [recalled('EN', 90, 'EN 13411-3, K_T = 0.9'), read('wire core', 95, army), read('fibre core', 92.5, army)],
  },
  swage: { on: 'wire', title: 'swaged terminal', shares: [read('makers', 90, 'terminal makers')] },
  cone: { on: 'wire', title: 'mechanical cone terminal', shares: [recalled('makers', 95, 'terminal makers')] },
  clips: { on: 'wire', title: 'wire-rope clips, three or more', shares: [read('rigging', 80, 'rigging handbooks')] },
  'hand-splice': {
    on: 'wire',
    title: 'hand-tucked splice with thimble',
    shares: [read('field manual', 70, 'US Army FM 55-501 12-100'), read('stainless', 76, army)],
  },
  socket: { on: 'wire', title: 'poured socket', shares: [read('army', 100, army)] },
  wedge: { on: 'wire', title: 'wedge socket', shares: [read('army', 75, army)] },
} as const satisfies Readonly<
  Record<string, { readonly on: 'rope' | 'wire'; readonly title: string; readonly shares: readonly PrintedShare[] }>
>;

/** What wire keeps over a sheave or pin, by its diameter over the wire’s (a wire-rope handbook, two copies agree). */
export const bendShares = [
  { ratio: 40, share_pct: 95 },
  { ratio: 30, share_pct: 93 },
  { ratio: 15, share_pct: 89 },
  { ratio: 10, share_pct: 86 },
  { ratio: 8, share_pct: 83 },
  { ratio: 6, share_pct: 79 },
  { ratio: 4, share_pct: 75 },
  { ratio: 2, share_pct: 65 },
  { ratio: 1, share_pct: 50 },
] as const;

/** Least sheaves, times the line: wire (Toss); fibre rope 4 to 8 (Toss), the upper end taken. */
export const leastSheave = { wire: 20, rope: 8 } as const;
/** Lost where steel wire rope is bent sharply (Australian Emergency Manual, Disaster Rescue 3.15). */
export const sharpBendLoss = 0.3;
