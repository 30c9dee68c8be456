import type { Chemistry } from '../chemistry.ts';
import { restCoefficient_V_C, restCurve } from '../rest-charge.ts';
import type { Draws } from './priors.ts';

/** Terminal volts of a 12 V battery are followed down to this at the 20-hour current. [V] Trade: 10.5 to 10.8 for lead. */
export const cutOff_V = (chemistry: Chemistry): number => (chemistry === 'lifepo4' ? 10 : 10.8);

/** What a draw's battery is at an instant. */
export interface State {
  /** how full the well at hand and the other are, 0–1 */
  hand: number;
  rest: number;
  surface_V: number;
}

const steps = 200;
const lowest = -0.1;

/** Rest volts against the fill of the well at hand, read off in even steps, with half the spread that tables leave. */
export interface RestLine {
  readonly volts: Float64Array;
  readonly spread: Float64Array;
  readonly perDegree_V: number;
}

const lines = new Map<Chemistry, RestLine>();

export function restLine(chemistry: Chemistry): RestLine {
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

/** Volts it would come to if it stood as it is now at the plates. */
export function plateVolts(line: RestLine, draws: Draws, n: number, hand: number, battery_C: number): number {
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
    line.perDegree_V * (battery_C - 25) -
    knee_V * Math.exp(-Math.max(-0.02, hand) / kneeFill)
  );
}

const coldOhms = (lead: boolean, battery_C: number) => Math.exp(-(lead ? 0.012 : 0.022) * (battery_C - 25));

/** Volts at the terminals while a current flows, positive out of the battery. */
export function terminalVolts(
  line: RestLine,
  draws: Draws,
  n: number,
  state: State,
  amps: number,
  battery_C: number,
  lead: boolean,
): number {
  const ohms =
    coldOhms(lead, battery_C) * (draws.ohms[n]! + draws.emptyOhms[n]! * (0.1 / (Math.max(0, state.hand) + 0.1)));
  // large currents take off less than in step: the double layer saturates
  const knee = 0.15 * draws.capacity_Ah[n]!;
  const drop = ohms * (0.6 * amps + 0.4 * knee * Math.asinh(amps / knee));
  const charge = (state.hand - draws.stranded[n]!) / (1 - draws.stranded[n]!);
  const full = amps < 0 ? (lead ? 1.2 : 0.9) / (1 + Math.exp(-(charge - 0.97) / (lead ? 0.04 : 0.008))) : 0;
  const rise = full * (1 - Math.exp(amps / (0.03 * draws.capacity_Ah[n]!)));
  const volts = plateVolts(line, draws, n, state.hand, battery_C) - drop + state.surface_V + rise;
  // a regulator holds the volts of a full battery here
  return amps < 0 ? Math.min(volts, lead ? 14.5 : 14.4) : volts;
}

/** Lets a steady current flow for some hours. Exact for the two wells; changes `state`. */
export function flow(
  draws: Draws,
  n: number,
  state: State,
  amps: number,
  hours: number,
  battery_C: number,
  lead: boolean,
): void {
  if (hours <= 0) return;
  const held = draws.held_Ah[n]!;
  const atHand = draws.atHand[n]!;
  let out_A = amps + draws.loss_1_h[n]! * draws.capacity_Ah[n]! * 2 ** ((battery_C - 20) / 10);
  if (amps < 0) out_A = out_A - amps + amps * draws.stored[n]!;
  const rate = draws.rate_1_h[n]! * (lead ? Math.exp(0.02 * (battery_C - 25)) : 1);
  const mean = atHand * state.hand + (1 - atHand) * state.rest;
  const after = mean - (out_A * hours) / held;
  // how far the well at hand lies under the whole: it nears what the current holds it at
  const steady = (out_A * (1 - atHand)) / (held * atHand * rate);
  const fade = Math.exp(-rate * hours);
  const under = (mean - state.hand) * fade + steady * (1 - fade);
  let hand = after - under;
  let rest = after + (under * atHand) / (1 - atHand);
  if (hand > 1) {
    // what the plates do not take at hand goes on to the other well as fast as it follows
    const most = 1 - (1 - state.rest) * Math.exp((-rate * hours) / 1);
    rest = Math.max(state.rest, Math.min(1, Math.min(most, rest + ((hand - 1) * atHand) / (1 - atHand))));
    hand = 1;
  }
  if (rest > 1) {
    hand = Math.min(1, hand + ((rest - 1) * (1 - atHand)) / atHand);
    rest = 1;
  }
  state.hand = Math.max(-0.05, hand);
  state.rest = Math.max(0, rest);
  if (amps < 0) {
    const whole = atHand * state.hand + (1 - atHand) * state.rest;
    const most = draws.surfaceMost_V[n]! / (1 + Math.exp(-(whole - 0.75) / 0.1));
    state.surface_V += (most - state.surface_V) * (1 - Math.exp(-hours / 1.2));
  } else {
    const eaten = amps > 0 ? Math.exp((-amps * hours) / (0.015 * draws.capacity_Ah[n]!)) : 1;
    state.surface_V *= Math.exp(-hours / 3.5) * eaten;
  }
}

/** Fill of the well at hand at which a steady current has brought the terminals to the cut-off. */
function fillAtCutOff(
  line: RestLine,
  draws: Draws,
  n: number,
  amps: number,
  battery_C: number,
  lead: boolean,
  cutOff: number,
): number {
  let low = -0.02;
  let high = 1;
  const state: State = { hand: 0, rest: 0, surface_V: 0 };
  for (let i = 0; i < 24; i++) {
    const middle = (low + high) / 2;
    state.hand = middle;
    if (terminalVolts(line, draws, n, state, amps, battery_C, lead) > cutOff) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Still to come at a steady current down to the cut-off. [Ah] Changes nothing. @param amps > 0 */
export function stillToCome_Ah(
  line: RestLine,
  draws: Draws,
  n: number,
  state: Readonly<State>,
  amps: number,
  battery_C: number,
  lead: boolean,
  cutOff: number,
): number {
  const held = draws.held_Ah[n]!;
  const atHand = draws.atHand[n]!;
  const rate = draws.rate_1_h[n]! * (lead ? Math.exp(0.02 * (battery_C - 25)) : 1);
  const dry = fillAtCutOff(line, draws, n, amps, battery_C, lead, cutOff);
  if (state.hand <= dry) return 0;
  const mean = atHand * state.hand + (1 - atHand) * state.rest;
  const steady = (amps * (1 - atHand)) / (held * atHand * rate);
  const handAfter = (hours: number) => {
    const fade = Math.exp(-rate * hours);
    return mean - (amps * hours) / held - (mean - state.hand) * fade - steady * (1 - fade);
  };
  let low = 0;
  let high = (mean * held) / amps + 1e-6;
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (handAfter(middle) > dry) low = middle;
    else high = middle;
  }
  return amps * low;
}
