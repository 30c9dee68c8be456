/** Which further look at the meter would tell most of what is left. */
import type { Chemistry } from '../chemistry.ts';
import { felt_A, fillAtCutOff, handAfter, heatAt, plateVolts, stillToCome_Ah, terminalVolts } from './circuit-model.ts';
import { Dice } from './dice.ts';
import type { BatteryEstimate, BatteryMembers } from './estimate-battery.ts';
import { quantilesOf } from './weighted-band.ts';

export type NextReadingKind = 'rested' | 'under load' | 'after a full charge' | 'load test' | 'load test from full';

/** What one further reading is worth. */
export interface NextReading {
  readonly kind: NextReadingKind;
  /** how wide the band of nine in ten of the ampere-hours left would be after it, in the mean. [Ah] */
  readonly wide_Ah: number;
  /** and how wide it is without it; after a full charge what is left is another thing than now. [Ah] */
  readonly wideNow_Ah: number;
  /** the load it is read under; null: none */
  readonly amps: number | null;
  /** of a load test: how long it would take, in the middle. [h] */
  readonly hours: number | null;
}

export interface NextReadingAsked {
  readonly chemistry: Chemistry;
  /** on the label */
  readonly nominal_Ah: number;
  readonly nominal_V: 6 | 12 | 24;
  /** air it would be read at. [°C] */
  readonly battery_C: number;
  /** a load test is stopped when the meter shows this under the load. [V] */
  readonly testTo_V: number;
}

/** Assumed: a lamp at hand for this takes this part of the label an hour, and its watts are known to this share (one spread). */
const lampOfLabel_1_h = 0.06;
const lampKnown = 0.07;
/**
 * Assumed: how far a rested reading lies off even the right battery, one spread. [V, 12 V battery] Of lead as in the estimate;
 * LiFePO4 besides lies higher after charging than after use.
 */
const restedOff_V = (chemistry: Chemistry) => (chemistry === 'lifepo4' ? 0.05 : 0.02);
/** Readings that might come, looked at for each kind. */
const outcomes = 60;

/**
 * What each kind of further reading is worth, first the one that narrows the band by the greatest share: for readings as they might come, taken from the draws of the
 * estimate, the draws are weighed anew by how well they go with the reading, and the band of what is left is taken again
 * (preposterior analysis; H. Raiffa and R. Schlaifer, 1961, from memory). No estimate is made anew.
 *
 * @returns widths in the mean of what might be read. 'under load' is twenty minutes after a lamp of 6 % of the label an hour was lit;
 *          'load test' the hours until that lamp has brought the meter to `testTo_V`, from now or from full; after a full charge
 *          what is left is what it holds
 * @throws RangeError where there are no draws
 *
 * Not covered: what flows until the reading is made; that a cell has failed.
 */
export function nextReadings(estimate: BatteryEstimate, asked: NextReadingAsked): NextReading[] {
  const { draws, members } = estimate;
  if (draws.count === 0) throw new RangeError('an estimate without draws says nothing of what to read next');
  const amps = lampOfLabel_1_h * asked.nominal_Ah;
  const full = { ...members, hand: ones(draws.count), rest: ones(draws.count) };
  const rested = seenRested(members, asked);
  const test = seenTest(members, asked, amps);
  const fullTest = seenTest(full, asked, amps);
  const worths: NextReading[] = [
    { kind: 'rested', amps: null, hours: null, ...widths(draws.left_Ah, rested) },
    { kind: 'under load', amps, hours: null, ...widths(draws.left_Ah, seenLoaded(members, asked, amps)) },
    {
      kind: 'after a full charge',
      amps: null,
      hours: null,
      ...widths(draws.capacity_Ah, seenRested(full, asked)),
    },
    { kind: 'load test', amps, hours: middle(test.shows) / amps, ...widths(draws.left_Ah, test) },
    { kind: 'load test from full', amps, hours: middle(fullTest.shows) / amps, ...widths(draws.capacity_Ah, fullTest) },
  ];
  return worths.sort((a, b) => a.wide_Ah / a.wideNow_Ah - b.wide_Ah / b.wideNow_Ah);
}

const middle = (values: Float64Array) => Float64Array.from(values).sort()[values.length >> 1]!;
const ones = (count: number) => new Float64Array(count).fill(1);

/** What each draw would show, and how far a reading of it would lie off that, one spread. */
interface Seen {
  readonly shows: Float64Array;
  readonly off: Float64Array;
}

function seenRested({ draws, hand, rest, meter_V }: BatteryMembers, { chemistry, battery_C }: NextReadingAsked): Seen {
  const heat = heatAt(chemistry, battery_C);
  return {
    shows: hand.map((at, n) => {
      const settled = draws.atHand[n]! * at + (1 - draws.atHand[n]!) * rest[n]!;
      return plateVolts(heat, draws, n, settled) + meter_V[n]!;
    }),
    off: new Float64Array(hand.length).fill(restedOff_V(chemistry)),
  };
}

function seenLoaded(members: BatteryMembers, { chemistry, battery_C }: NextReadingAsked, amps: number): Seen {
  const { draws, hand, rest, meter_V } = members;
  const heat = heatAt(chemistry, battery_C);
  const off = new Float64Array(hand.length);
  const shows = hand.map((at, n) => {
    const after = handAfter(heat, draws, n, at, rest[n]!, amps, 1 / 3);
    off[n] = restedOff_V(chemistry) + 0.2 * amps * draws.ohms[n]!;
    return terminalVolts(heat, draws, n, after, 0, amps, felt_A(draws, n, amps)) + meter_V[n]!;
  });
  return { shows, off };
}

function seenTest(members: BatteryMembers, asked: NextReadingAsked, amps: number): Seen {
  const { draws, hand, rest, meter_V } = members;
  const { chemistry, battery_C, testTo_V, nominal_V, nominal_Ah } = asked;
  const heat = heatAt(chemistry, battery_C);
  const to_V = (12 * testTo_V) / nominal_V;
  const shows = hand.map((at, n) => {
    const dry = fillAtCutOff(heat, draws, n, amps, to_V - meter_V[n]!);
    return stillToCome_Ah(heat, draws, n, at, rest[n]!, amps, dry);
  });
  return { shows, off: shows.map((Ah) => lampKnown * Ah + 0.01 * nominal_Ah) };
}

/** How wide the band of a quantity is, and how wide it would be once the reading came, in the mean of what may come. */
function widths(
  quantity: Float64Array,
  { shows, off }: Seen,
): { readonly wide_Ah: number; readonly wideNow_Ah: number } {
  const count = quantity.length;
  const order = Int32Array.from(quantity.keys()).sort((a, b) => quantity[a]! - quantity[b]!);
  const sorted = Float64Array.from(order, (n) => quantity[n]!);
  const weights = new Float64Array(count).fill(1);
  const wide = () => {
    const [low, high] = quantilesOf(sorted, weights, 0.05, 0.95);
    return high - low;
  };
  const wideNow_Ah = wide();
  const dice = new Dice(1);
  let sum = 0;
  for (let k = 0; k < outcomes; k++) {
    const from = Math.floor(((k + 0.5) * count) / outcomes);
    const said = shows[from]! + off[from]! * dice.normal();
    for (let i = 0; i < count; i++) {
      const n = order[i]!;
      const apart = (said - shows[n]!) / off[n]!;
      weights[i] = Math.exp(-0.5 * apart * apart) / off[n]!;
    }
    sum += wide();
  }
  return { wide_Ah: sum / outcomes, wideNow_Ah };
}
