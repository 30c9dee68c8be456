import type { Band } from '#battery';
import type { Span } from '#units';
import { type CircuitDraw, circuitAmps, misstatement, within90Share } from './circuit-draw.ts';
import { circuitSpans, type PowerPlace } from './circuit-times.ts';

/** What one circuit takes out of the battery in a day. */
export interface DailyDraw {
  readonly name: string;
  /** while it is on, its duty counted. [A] */
  readonly amps: number;
  /** in these 24 hours. [h] */
  readonly hours: number;
  readonly perDay_Ah: Band;
}

/**
 * Ampere-hours a day, circuit by circuit and in sum.
 *
 * @param day    24 hours at the place
 * @param volts  at which watts are turned into amps
 * @returns      each with the band of what its label may hide; in the sum the errors of single circuits partly cancel, so its
 *               band is narrower than theirs added up (roots of squares, our derivation)
 */
export function dailyDraw(
  circuits: readonly CircuitDraw[],
  place: PowerPlace,
  day: Span,
  volts: number,
): { readonly circuits: readonly DailyDraw[]; readonly sum_Ah: Band } {
  const rows = circuits.map((circuit): DailyDraw => {
    const on = circuitSpans(circuit.use, place, day).reduce(
      (sum, { start, end }) => sum + (end - start) / 3_600_000,
      0,
    );
    // by hours a day: the amps of `circuitAmps` are spread over the waking hours
    const likely = on * circuitAmps(circuit, volts);
    const amps = (circuit.watts / volts) * (circuit.duty_pct / 100);
    const share = within90Share(circuit.use);
    return {
      name: circuit.name,
      amps,
      hours: amps > 0 ? likely / amps : 0,
      perDay_Ah: { low: likely / share, likely, high: likely * share },
    };
  });
  const likely = rows.reduce((sum, row) => sum + row.perDay_Ah.likely, 0);
  const spread = Math.sqrt(
    rows.reduce((sum, row, i) => sum + (row.perDay_Ah.likely * misstatement(circuits[i]!.use)) ** 2, 0),
  );
  const share = likely > 0 ? Math.exp((1.645 * spread) / likely) : 1;
  return { circuits: rows, sum_Ah: { low: likely / share, likely, high: likely * share } };
}
