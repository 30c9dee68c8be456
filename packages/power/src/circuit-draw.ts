import { type Chemistry, restVolts } from '#battery';
import type { Instant, Span } from '#units';
import { assumedWaking, type CircuitUse, circuitSpans, type PowerPlace } from './circuit-times.ts';

/** What draws on the battery: a lamp, a pump, the regulator's own needs. */
export interface CircuitDraw {
  readonly name: string;
  /** while it is on, as its label says. [W], ≥ 0 */
  readonly watts: number;
  /** share of the time it really draws while it is in use. [%], 0–100 */
  readonly duty_pct: number;
  readonly use: CircuitUse;
}

/**
 * Assumed: what a circuit draws lies within this share of its label in 90 of 100, what is told by hours a day within the
 * wider one; both sides are as likely. LED lamps sold as 2.5 W are met from 1.5 to 5 W, but a keeper who has read the label
 * of one is nearer than that.
 */
export const assumedMisstated = { label: 0.2, hours: 0.5 } as const;
/** Shares of a normal spread that 90 of 100 lie within. */
const within90 = 1.645;

/** Spread of the logarithm of what a circuit draws, round what is stated. [–] */
export function misstatement(use: CircuitUse): number {
  return Math.log(1 + (use.kind === 'hours' ? assumedMisstated.hours : assumedMisstated.label)) / within90;
}

/** The same as a factor either way that 90 of 100 lie within. [–] */
export function within90Share(use: CircuitUse): number {
  return Math.exp(within90 * misstatement(use));
}

/**
 * Volts at which watts are turned into amps: what the tables give for a battery rested at 70 % and 15 °C, where it is most of
 * the time. A lamp with a regulator of its own draws its watts at any volts; a plain one draws less as the volts fall. [V]
 */
export function usualVolts(chemistry: Chemistry, nominal_V: 6 | 12 | 24): number {
  return restVolts(chemistry, 70, 15, nominal_V).likely;
}

/** Amps of a circuit while it is in use, its duty taken into account. [A] @throws RangeError for watts or a duty out of range */
export function circuitAmps(circuit: CircuitDraw, volts: number): number {
  const { name, watts, duty_pct, use } = circuit;
  if (!(watts >= 0 && watts <= 10_000)) throw new RangeError(`${name}: watts must be 0 to 10000, got ${watts} W`);
  if (!(duty_pct >= 0 && duty_pct <= 100))
    throw new RangeError(`${name}: its duty must be 0 to 100 %, got ${duty_pct} %`);
  const hours = use.kind === 'hours' ? use.hours_a_day : assumedWaking.hours;
  if (!(hours >= 0 && hours <= 24)) throw new RangeError(`${name}: hours a day must be 0 to 24, got ${hours} h`);
  return ((watts / volts) * (duty_pct / 100) * hours) / assumedWaking.hours;
}

/** What every circuit draws over a stretch of time, in pieces in which nothing switches. */
export interface LoadPieces {
  readonly circuits: readonly CircuitDraw[];
  /** ends of the pieces in minutes from the start, rising; the last is the end of the stretch */
  readonly ends_min: Float64Array;
  /** amps as stated, piece by piece, one circuit after another within a piece */
  readonly amps: Float64Array;
}

/**
 * The stated draw of circuits by pieces of time.
 *
 * @param aboard  spans in which someone is aboard: a circuit runs only then, unless it always does; null: all the time
 * @param cuts    instants at which a piece must end too (the hours of the sun, the ends of nights)
 */
export function loadPieces(
  circuits: readonly CircuitDraw[],
  {
    place,
    span,
    volts,
    aboard,
    cuts,
  }: {
    readonly place: PowerPlace;
    readonly span: Span;
    readonly volts: number;
    readonly aboard: readonly Span[] | null;
    readonly cuts: readonly Instant[];
  },
): LoadPieces {
  const on = circuits.map((circuit) => spansOn(circuit.use, place, span, aboard));
  const ends = new Set<number>();
  const cut = (at: Instant) => {
    if (at > span.start && at < span.end) ends.add((at - span.start) / 60_000);
  };
  for (const spans of on)
    for (const { start, end } of spans) {
      cut(start);
      cut(end);
    }
  for (const at of cuts) cut(at);
  ends.add((span.end - span.start) / 60_000);
  const ends_min = Float64Array.from([...ends].sort((a, b) => a - b));
  const amps = new Float64Array(ends_min.length * circuits.length);
  circuits.forEach((circuit, c) => {
    const while_on = circuitAmps(circuit, volts);
    let next = 0;
    const spans = on[c]!;
    for (let i = 0; i < ends_min.length; i++) {
      const middle = span.start + ((ends_min[i]! + (i === 0 ? 0 : ends_min[i - 1]!)) / 2) * 60_000;
      while (next < spans.length && spans[next]!.end <= middle) next++;
      if (next < spans.length && spans[next]!.start <= middle) amps[i * circuits.length + c] = while_on;
    }
  });
  return { circuits, ends_min, amps };
}

/** When a circuit is on, with nobody's lamps lit while nobody is aboard. */
export function spansOn(use: CircuitUse, place: PowerPlace, span: Span, aboard: readonly Span[] | null): Span[] {
  if (aboard === null || use.kind === 'always') return circuitSpans(use, place, span);
  return aboard.flatMap(({ start, end }) =>
    circuitSpans(use, place, { start: Math.max(start, span.start), end: Math.min(end, span.end) }),
  );
}
