/** What is usual: intervals a keeper may begin from and change. Custom for the most part, not law. */
import { addDays, type Day } from '#units';
import type { Source } from '#working';
import { type UsualRow, usualRows } from '../tables/usual-intervals.read-2026-11.ts';
import type { Interval, UseRule } from './due-rule.ts';

export type UsualId = (typeof usualRows)[number]['id'];

/** A usual interval, or how much of a thing may be gone. */
export type Usual = UsualRow;

/** The usual interval of a thing; null where there is no such id. */
export function usualOf(id: string): Usual | null {
  return usualRows.find((row) => row.id === id) ?? null;
}

/** Every usual interval, in the order of the table. */
export function allUsual(): readonly Usual[] {
  return usualRows;
}

/**
 * The rule a keeper begins with: the short end of the band, because what is left too long can hurt and what is done too
 * soon costs an hour. Null: the band is how much may be gone, and no time.
 */
export function usualRule(usual: Usual): { readonly every: Interval; readonly uses: readonly UseRule[] } | null {
  if (usual.unit === '%') return null;
  return {
    every: { count: usual.low, unit: usual.unit },
    uses: usual.engine_h === null ? [] : [{ use: 'engine-hours', count: usual.engine_h }],
  };
}

/** '12 months', '8 to 15 years', '8 to 10 % gone', '12 months or 100 engine hours' */
export function usualInWords({ low, high, unit, engine_h }: Usual): string {
  const span = low === high ? `${low}` : `${low} to ${high}`;
  if (unit === '%') return `${span} % gone`;
  const words = `${span} ${high === 1 ? unit.slice(0, -1) : unit}`;
  return engine_h === null ? words : `${words} or ${engine_h} engine hours`;
}

/** Where a usual interval is from. */
export const usualSource = ({ source, seen }: Usual): Source => ({ title: source, seen });

/**
 * The day a throw-away extinguisher leaves service by the rule of the United States: the last of its twelfth year, where
 * only the year is stamped on it.
 * @param made  the year on the cylinder. 1950–2180, whole
 * Source: US Coast Guard ACN 002/22.
 */
export function throwAwayExtinguisherOut(made: number): Day {
  if (!Number.isInteger(made) || made < 1950 || made > 2180)
    throw new RangeError(`the year it was made is a whole number from 1950 to 2180, got ${made}`);
  return addDays(`${made + 12}-12-31`, 0);
}

/** What can hurt, or mislead, beside any due. */
export const dueCautions = {
  printed: 'A date printed on the thing itself, its maker and the law where you sail come before any interval here.',
  safety:
    'Looked over is not serviced: cylinders, firing heads, beacons and gas are for those who are trained and have the parts.',
  custom: 'Usual intervals are custom, not law. What you see at the boat comes first: worn is due, whatever the date.',
} as const;
