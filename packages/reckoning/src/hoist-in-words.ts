/** The board's hoist in sentences with their numbers. */
import type { LineRecord, TackleRecord, WinchRecord } from '#boat-book';
import {
  type BoardLine,
  type CannotHoist,
  type Handling,
  type HoistChange,
  type HoistFigures,
  isWire,
  type LineUnderLoad,
  rove,
} from '#loads';
import { figureSaid } from './circuits-in-words.ts';

/** `412 N`, `8.3 N`, `7.1 kN` */
export function forceSaid(force_N: number): string {
  if (force_N >= 2000) return `${(force_N / 1000).toFixed(1)} kN`;
  return `${force_N < 10 ? force_N.toFixed(1) : Math.round(force_N)} N`;
}

/** `9.4 times`, `24 times` */
const timesSaid = (times: number): string => `${times < 10 ? times.toFixed(1) : Math.round(times)} times`;

/** Lines by what they are sold as. */
export const lineNames: Readonly<Record<BoardLine, string>> = {
  '1x19': '1x19 wire',
  '7x7': '7x7 wire',
  '7x19': '7x19 wire',
  polyester: 'three-strand polyester',
  nylon: 'three-strand nylon',
  polypropylene: 'three-strand polypropylene',
  'polyester-braid': 'braided polyester',
  'polyethylene-braid': 'high-modulus polyethylene',
};

export const endingNames: Readonly<Record<NonNullable<LineRecord['ending']>, string>> = {
  ferrule: 'pressed ferrule',
  swage: 'swaged terminal',
  cone: 'mechanical cone terminal',
  clips: 'three clips',
  'hand-splice': 'hand splice with thimble',
  socket: 'poured socket',
  wedge: 'wedge socket',
  bowline: 'bowline',
  'figure-eight-loop': 'figure-of-eight loop',
  'anchor-bend': 'anchor bend',
  'round-turn': 'round turn and half hitches',
  'eye-splice': 'eye splice',
};

/** `4 mm 7x19 wire` */
export const lineSaid = ({ of, size_mm }: Pick<LineRecord, 'of' | 'size_mm'>): string =>
  `${figureSaid(size_mm)} mm ${lineNames[of]}`;

export const handlingNames: Readonly<Record<Handling, string>> = {
  hoisting: 'hoisting',
  holding: 'holding',
  lowering: 'lowering',
};

/** `a tackle of 2 parts, plain bearings` */
export function tackleSaid(tackle: TackleRecord): string {
  const way = rove(tackle);
  return way.kind === 'rove'
    ? `a tackle of ${way.parts === 1 ? '1 part' : `${way.parts} parts`} (${tackle.movingSheaves} moving, ${tackle.fixedSheaves} standing), ${bearingSaid(tackle.bearing)}`
    : 'a tackle that does not reeve';
}

export const bearingSaid = (bearing: TackleRecord['bearing']): string =>
  ({ ball: 'ball bearings', plain: 'plain bearings', old: 'stiff' })[bearing];

export const winchSaid = ({ gear, handle_mm, drum_mm }: WinchRecord): string =>
  `a winch, ${gear === 1 ? 'no gears' : `${figureSaid(gear)} to 1`}, ${figureSaid(handle_mm)} mm crank, ${figureSaid(drum_mm)} mm drum`;

/** What is in the hand: the crank, or the line itself. */
export const inHand = (winch: WinchRecord | null): 'crank' | 'fall' => (winch === null ? 'fall' : 'crank');

/** `at 31° below level`, `60 % up` */
export function placeSaid({ down_deg, hauled_pct }: HoistFigures['hand']['hoisting']): string {
  if (down_deg === null) return `${Math.round(hauled_pct)} % up`;
  return Math.abs(down_deg) < 0.5
    ? 'level'
    : `${Math.round(Math.abs(down_deg))}° ${down_deg > 0 ? 'below' : 'above'} level`;
}

/** `holds 9.4 times what comes on it; 5 is asked for`; or what is not known. */
export function lineHoldsSaid({ strength, times, holds, most_N }: LineUnderLoad): string {
  if (strength.kind === 'unknown')
    return `is of a size that no table of ours has (${strength.sizes_mm.map(figureSaid).join(', ')} mm): what it bears is not known`;
  if (times === null) return 'has nothing to bear';
  return `bears ${forceSaid(strength.breaking_N)} as it is made off and bent, ${timesSaid(times)} the ${forceSaid(most_N)} that come on it; ${figureSaid(strength.factor.factor)} times is asked for${holds ? '' : ': not enough'}`;
}

/** What a sheave does to a line, where it is smaller than it should be; null: nothing to say. */
export function bendSaid({ line, strength }: LineUnderLoad): string | null {
  if (strength.kind === 'unknown' || strength.sheaveRatio === null) return null;
  const least = isWire(line.of) ? 20 : 8;
  return strength.sheaveRatio >= least - 1e-9
    ? null
    : `It runs over ${figureSaid(line.sheave_mm ?? 0)} mm, ${figureSaid(Number(strength.sheaveRatio.toFixed(1)))} times its own thickness; ${least} times is wanted, or it tires and breaks strand by strand.`;
}

/** What cannot be hoisted, and what would be right. */
export function cannotSaid(cannot: CannotHoist): { readonly wrong: string; readonly right: string } {
  const where = cannot.kind === 'does not reeve' && cannot.tackle > 0 ? 'Second tackle: ' : '';
  return { wrong: sentenceOf(`${where}${cannot.wrong}`), right: sentenceOf(cannot.right) };
}

/** With a capital and a full stop. */
export const sentenceOf = (words: string): string =>
  `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? '' : '.'}`;

/** What is changed, as a title. */
export function changeSaid(change: HoistChange): string {
  switch (change.kind) {
    case 'wire':
      return `Wire of ${figureSaid(change.to_mm)} mm instead of ${figureSaid(change.from_mm)} mm`;
    case 'cord':
      return `Cord of ${figureSaid(change.to_mm)} mm instead of ${figureSaid(change.from_mm)} mm`;
    case 'better sheaves':
      return 'All sheaves on ball bearings';
    case 'bigger leads':
      return `Lead sheaves of ${figureSaid(change.to_mm)} mm`;
    case 'parts':
      return change.from === 1
        ? `A tackle of ${change.to} parts`
        : `A tackle of ${change.to} parts instead of ${change.from}`;
    case 'second tackle':
      return `A second tackle of ${change.parts} parts on the fall`;
    case 'longer crank':
      return `A crank of ${figureSaid(change.to_mm)} mm`;
  }
}

/** What a change gains and what it costs, each in sentences; empty where there is none of it. */
export function gainAndCost(
  before: HoistFigures,
  after: HoistFigures,
  hand: 'crank' | 'fall',
): { readonly gains: readonly string[]; readonly costs: readonly string[] } {
  const gains: string[] = [];
  const costs: string[] = [];
  const say = (better: boolean, words: string) => (better ? gains : costs).push(words);
  const [was, is] = [before.hand.hoisting.force_N, after.hand.hoisting.force_N];
  if (differs(was, is))
    say(
      is < was,
      `The ${hand} asks ${forceSaid(is)} at the hardest, ${forceSaid(Math.abs(is - was))} ${is < was ? 'less' : 'more'}.`,
    );
  const [held, holds] = [before.hand.lowering.force_N, after.hand.lowering.force_N];
  // less to hold back when lowering is a gain, more a cost: friction no longer helps
  if (differs(held, holds) && Math.abs(holds - held) > 0.5)
    say(
      holds < held,
      `Lowering, ${forceSaid(holds)} is to be held back, ${forceSaid(Math.abs(holds - held))} ${holds < held ? 'less' : 'more'}.`,
    );
  if (differs(before.handLimit_N, after.handLimit_N))
    say(
      after.handLimit_N > before.handLimit_N,
      `A bare hand grips it to ${forceSaid(after.handLimit_N)}, ${after.handLimit_N > before.handLimit_N ? 'before' : 'no longer'} ${forceSaid(before.handLimit_N)}.`,
    );
  for (const which of ['wire', 'cord'] as const) {
    const [old, now] = [before[which], after[which]];
    if (!old || !now || old.times === null || now.times === null) continue;
    if (timesSaid(old.times) === timesSaid(now.times)) continue;
    const short = now.holds === false && old.holds !== false ? ': not enough' : '';
    say(
      now.times > old.times,
      `The ${which} bears ${timesSaid(now.times)} what comes on it, before ${timesSaid(old.times)}${short}.`,
    );
  }
  const [pull, pulls] = [before.travel.toPull, after.travel.toPull];
  if (differs(pull.line_m, pulls.line_m))
    say(
      pulls.line_m < pull.line_m,
      `${figureSaid(Number(pulls.line_m.toFixed(2)))} m to pull, before ${figureSaid(Number(pull.line_m.toFixed(2)))} m.`,
    );
  if (pull.kind === 'crank' && pulls.kind === 'crank' && Math.round(pull.crankTurns) !== Math.round(pulls.crankTurns))
    say(
      pulls.crankTurns < pull.crankTurns,
      `${Math.round(pulls.crankTurns)} turns of the crank, before ${Math.round(pull.crankTurns)}.`,
    );
  if (after.travel.room_m.length > before.travel.room_m.length)
    costs.push(`Its blocks need ${figureSaid(Number(after.travel.room_m.at(-1)!.toFixed(2)))} m of room to travel.`);
  return { gains, costs };
}

/** Less than a hundredth is no difference that is felt. */
const differs = (a: number, b: number): boolean => Math.abs(a - b) > 0.01 * Math.max(Math.abs(a), Math.abs(b));
