import type { Flow } from '#battery';
import type { Instant, Span } from '#units';
import { type CircuitDraw, circuitAmps, spansOn, within90Share } from './circuit-draw.ts';
import type { PowerPlace } from './circuit-times.ts';

/** What somebody saw at the switches at one moment. */
export interface SwitchesSeen {
  readonly at: Instant;
  /** names of the circuits that were on, besides those that always are */
  readonly on: readonly string[];
  /** how long before the moment it had been so. [min] */
  readonly since_min: number;
}

/** Assumed: what was on at a reading was on for so long before it, unless somebody says otherwise; and rested, for longer. [min] */
export const assumedSeenFor_min = { on: 30, rested: 180 } as const;

/**
 * What the circuits drew over a stretch of time, as flows out of the battery for its estimate.
 *
 * @param seen  what somebody saw goes before what the use of a circuit says: a cabin light told by hours a day was on, or off
 * @returns     one flow a circuit and span, with the ends of its band; a circuit's flows bear its name, for they are misstated
 *              by one share. In the order of time
 */
export function circuitFlows(
  circuits: readonly CircuitDraw[],
  {
    place,
    span,
    volts,
    aboard,
    seen,
  }: {
    readonly place: PowerPlace;
    readonly span: Span;
    readonly volts: number;
    readonly aboard: readonly Span[] | null;
    readonly seen: readonly SwitchesSeen[];
  },
): Flow[] {
  const flows: Flow[] = [];
  for (const circuit of circuits) {
    const share = within90Share(circuit.use);
    const add = ({ start, end }: Span, amps: number) =>
      flows.push({
        from: start,
        to: end,
        low_A: amps / share,
        likely_A: amps,
        high_A: amps * share,
        source: circuit.name,
      });
    const usual_A = circuitAmps(circuit, volts);
    const isAlways = circuit.use.kind === 'always';
    const told = isAlways ? [] : seen.map((each) => ({ ...each, span: seenSpan(each, span) }));
    const spans = without(
      spansOn(circuit.use, place, span, aboard),
      told.map((each) => each.span),
    );
    for (const each of spans) add(each, usual_A);
    const on_A = (circuit.watts / volts) * (circuit.duty_pct / 100);
    for (const each of told)
      if (each.on.includes(circuit.name) && each.span.end > each.span.start) add(each.span, on_A);
  }
  return flows.sort((a, b) => a.from - b.from || a.to - b.to);
}

const seenSpan = ({ at, since_min }: SwitchesSeen, { start, end }: Span): Span => ({
  start: Math.max(start, at - since_min * 60_000),
  end: Math.min(end, at + 60_000),
});

/** Spans with others taken out of them. */
function without(spans: readonly Span[], taken: readonly Span[]): Span[] {
  let left = [...spans];
  for (const { start, end } of taken) {
    if (end <= start) continue;
    left = left.flatMap((each) =>
      each.end <= start || each.start >= end
        ? [each]
        : [
            { start: each.start, end: Math.min(each.end, start) },
            { start: Math.max(each.start, end), end: each.end },
          ].filter((part) => part.end > part.start),
    );
  }
  return left;
}
