import type { Chemistry } from '../chemistry.ts';
import { restCoefficient_V_C, restCurve } from '../rest-charge.ts';
import type { Draws } from './priors.ts';

/** Terminal volts of a 12 V battery are followed down to this at the 20-hour current. [V] Trade: 10.5 to 10.8 for lead. */
export const cutOff_V = (chemistry: Chemistry): number => (chemistry === 'lifepo4' ? 10 : 10.8);

const steps = 200;
const lowest = -0.1;

/** Rest volts against the fill of the well at hand, read off in even steps, with half the spread that tables leave. */
interface RestLine {
  readonly volts: Float64Array;
  readonly spread: Float64Array;
  readonly perDegree_V: number;
}

const lines = new Map<Chemistry, RestLine>();

function restLine(chemistry: Chemistry): RestLine {
  const known = lines.get(chemistry);
  if (known) return known;
  const { charge_pct, low, likely, high } = restCurve(chemistry);
  const volts = new Float64Array(steps + 1);
  const spread = new Float64Array(steps + 1);
  let k = 0;
  for (let i = 0; i <= steps; i++) {
    const pct = Math.max(0, 100 * (lowest + ((1 - lowest) * i) / steps));
    while (k < charge_pct.length - 2 && charge_pct[k + 1]! <= pct) k++;
    const share = (pct - charge_pct[k]!) / (charge_pct[k + 1]! - charge_pct[k]!);
    const at = (list: Float64Array) => list[k]! + share * (list[k + 1]! - list[k]!);
    volts[i] = at(likely);
    // the ends of all the tables, and what a battery may lie off them, hold more than nine in ten
    spread[i] = (at(high) - at(low)) / 2 / 1.8;
  }
  const line = { volts, spread, perDegree_V: restCoefficient_V_C(chemistry).likely };
  lines.set(chemistry, line);
  return line;
}

/** Assumed: how far the volts have fallen off the rest curve when the well at hand is dry, and over what fill. [V] */
const knee_V = 0.9;
const kneeFill = 0.02;

/** What the heat of a battery makes of its volts and paces, worked out once for all draws. */
export interface Heat {
  readonly line: RestLine;
  readonly lead: boolean;
  /** over the rest curve at 25 °C */
  readonly lift_V: number;
  /** times the resistance, and the rate of the wells, at 25 °C */
  readonly timesOhms: number;
  readonly timesRate: number;
}

export function heatAt(chemistry: Chemistry, battery_C: number): Heat {
  const line = restLine(chemistry);
  const lead = chemistry !== 'lifepo4';
  return {
    line,
    lead,
    lift_V: line.perDegree_V * (battery_C - 25),
    timesOhms: Math.exp(-(lead ? 0.012 : 0.022) * (battery_C - 25)),
    timesRate: lead ? Math.exp(0.02 * (battery_C - 25)) : 1,
  };
}

/** Volts it would come to if it stood as it is now at the plates. */
export function plateVolts({ line, lift_V }: Heat, draws: Draws, n: number, hand: number): number {
  const charge = (hand - draws.stranded[n]!) / (1 - draws.stranded[n]!);
  const x = Math.max(0, Math.min(steps - 1e-9, ((charge - lowest) / (1 - lowest)) * steps));
  const i = Math.floor(x);
  const share = x - i;
  const middle = line.volts[i]! + share * (line.volts[i + 1]! - line.volts[i]!);
  const spread = line.spread[i]! + share * (line.spread[i + 1]! - line.spread[i]!);
  return (
    middle +
    draws.level_V[n]! * spread +
    draws.slope_V[n]! * (charge - 0.6) +
    lift_V -
    // with a third at hand the knee is a millionth of a volt away
    (hand > 0.33 ? 0 : knee_V * Math.exp(-Math.max(-0.02, hand) / kneeFill))
  );
}

/** What a current counts as where it meets a resistance: large ones take off less than in step, for the double layer saturates. [A] */
export function felt_A(draws: Draws, n: number, amps: number): number {
  const knee = 0.15 * draws.capacity_Ah[n]!;
  return 0.6 * amps + 0.4 * knee * Math.asinh(amps / knee);
}

/** Volts at the terminals while a current flows, positive out of the battery. @param felt see `felt_A` */
export function terminalVolts(
  heat: Heat,
  draws: Draws,
  n: number,
  hand: number,
  surface_V: number,
  amps: number,
  felt: number,
): number {
  const { lead } = heat;
  const ohms = heat.timesOhms * (draws.ohms[n]! + draws.emptyOhms[n]! * (0.1 / (Math.max(0, hand) + 0.1)));
  const drop = ohms * felt;
  const volts = plateVolts(heat, draws, n, hand) - drop + surface_V;
  if (amps >= 0) return volts;
  const charge = (hand - draws.stranded[n]!) / (1 - draws.stranded[n]!);
  const full = (lead ? 1.2 : 0.9) / (1 + Math.exp(-(charge - 0.97) / (lead ? 0.04 : 0.008)));
  const rise = full * (1 - Math.exp(amps / (0.03 * draws.capacity_Ah[n]!)));
  // a regulator holds the volts of a full battery here
  return Math.min(volts + rise, lead ? 14.5 : 14.4);
}

/** What the length and the heat of each stretch make of the paces of a battery, worked out once for all draws. */
export interface Paces {
  readonly hours: Float64Array;
  /** times the loss of itself at 20 °C, and the rate of the wells at 25 °C */
  readonly loss: Float64Array;
  readonly rate: Float64Array;
  /** of surface charge: what is still wanted of it after a stretch of charging, and what is left after one of none */
  readonly wanted: Float64Array;
  readonly left: Float64Array;
}

export function pacesOf(hours: Float64Array, battery_C: Float64Array, heats: readonly Heat[]): Paces {
  return {
    hours,
    loss: battery_C.map((heat) => 2 ** ((heat - 20) / 10)),
    rate: Float64Array.from(heats, ({ timesRate }) => timesRate),
    wanted: hours.map((span) => Math.exp(-span / 1.2)),
    left: hours.map((span) => Math.exp(-span / 3.5)),
  };
}

/** What batteries come to at the end of each stretch: a row of stretches each. */
export interface Courses {
  /** [A], positive out of the battery */
  readonly amps: Float64Array;
  readonly hand: Float64Array;
  readonly rest: Float64Array;
  readonly surface_V: Float64Array;
}

/**
 * Lets the steady currents of row `n` flow through the stretches `from` up to before `to`, on from where the stretch before
 * left it, or from where draw `n` is found at first. Exact for the two wells.
 *
 * @param into  `amps` given, the others filled
 */
export function follow(draws: Draws, n: number, paces: Paces, into: Courses, from: number, to: number): void {
  const held = draws.held_Ah[n]!;
  const atHand = draws.atHand[n]!;
  const capacity = draws.capacity_Ah[n]!;
  const stored = draws.stored[n]!;
  const own_A = draws.loss_1_h[n]! * capacity;
  const ownRate = draws.rate_1_h[n]!;
  const surfaceMost_V = draws.surfaceMost_V[n]!;
  const away = 1 - atHand;
  const restToHand = atHand / away;
  const lag = away / (held * atHand);
  const eats = -1 / (0.015 * capacity);
  const row = n * paces.hours.length;
  let hand = from > 0 ? into.hand[row + from - 1]! : draws.first[n]!;
  let rest = from > 0 ? into.rest[row + from - 1]! : hand;
  let surface_V = from > 0 ? into.surface_V[row + from - 1]! : draws.surfaceFirst_V[n]!;
  for (let s = from; s < to; s++) {
    const hours = paces.hours[s]!;
    if (hours > 0) {
      const now_A = into.amps[row + s]!;
      const out_A = (now_A < 0 ? now_A * stored : now_A) + own_A * paces.loss[s]!;
      const rate = ownRate * paces.rate[s]!;
      const mean = atHand * hand + away * rest;
      const after = mean - (out_A * hours) / held;
      // how far the well at hand lies under the whole: it nears what the current holds it at
      const fade = Math.exp(-rate * hours);
      const under = (mean - hand) * fade + ((out_A * lag) / rate) * (1 - fade);
      hand = after - under;
      const restBefore = rest;
      rest = after + under * restToHand;
      if (hand > 1) {
        // what the plates do not take at hand goes on to the other well as fast as it follows
        const most = 1 - (1 - restBefore) * fade;
        rest = Math.max(restBefore, Math.min(1, most, rest + (hand - 1) * restToHand));
        hand = 1;
      }
      if (rest > 1) {
        hand = Math.min(1, hand + (rest - 1) / restToHand);
        rest = 1;
      }
      if (hand < -0.05) hand = -0.05;
      if (rest < 0) rest = 0;
      if (now_A < 0) {
        const whole = atHand * hand + away * rest;
        const most = surfaceMost_V / (1 + Math.exp(-(whole - 0.75) / 0.1));
        surface_V += (most - surface_V) * (1 - paces.wanted[s]!);
      } else if (surface_V > 1e-4) surface_V *= paces.left[s]! * (now_A > 0 ? Math.exp(now_A * hours * eats) : 1);
      else surface_V = 0;
    }
    into.hand[row + s] = hand;
    into.rest[row + s] = rest;
    into.surface_V[row + s] = surface_V;
  }
}

/** Fill of the well at hand at which a steady current has brought the terminals to the cut-off. */
export function fillAtCutOff(heat: Heat, draws: Draws, n: number, amps: number, cutOff: number): number {
  const felt = felt_A(draws, n, amps);
  let low = -0.02;
  let high = 1;
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2;
    if (terminalVolts(heat, draws, n, middle, 0, amps, felt) > cutOff) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Fill of the well at hand after a steady current out for some hours. */
export function handAfter(
  { timesRate }: Heat,
  draws: Draws,
  n: number,
  hand: number,
  rest: number,
  amps: number,
  hours: number,
): number {
  const held = draws.held_Ah[n]!;
  const atHand = draws.atHand[n]!;
  const rate = draws.rate_1_h[n]! * timesRate;
  const mean = atHand * hand + (1 - atHand) * rest;
  const steady = (amps * (1 - atHand)) / (held * atHand * rate);
  const fade = Math.exp(-rate * hours);
  return mean - (amps * hours) / held - (mean - hand) * fade - steady * (1 - fade);
}

/** Still to come at a steady current down to a fill of the well at hand. [Ah] @param amps > 0 @param dry see `fillAtCutOff` */
export function stillToCome_Ah(
  heat: Heat,
  draws: Draws,
  n: number,
  hand: number,
  rest: number,
  amps: number,
  dry: number,
): number {
  if (hand <= dry) return 0;
  const mean = draws.atHand[n]! * hand + (1 - draws.atHand[n]!) * rest;
  let low = 0;
  let high = (mean * draws.held_Ah[n]!) / amps + 1e-6;
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (handAfter(heat, draws, n, hand, rest, amps, middle) > dry) low = middle;
    else high = middle;
  }
  return amps * low;
}
