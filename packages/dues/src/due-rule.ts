/** What makes a thing fall due: by date, by use, by condition, or on the day printed on it. Plain data. */
import { addDays, addMonths } from '#units';

/** What is counted of a boat's use: each in whole ones, engine running in hours, the road in kilometres. */
export const useKinds = {
  sail: { title: 'sails', one: 'sail', unit: '' },
  tow: { title: 'tows', one: 'tow', unit: '' },
  launch: { title: 'launches', one: 'launch', unit: '' },
  night: { title: 'nights at anchor', one: 'night at anchor', unit: '' },
  'engine-hours': { title: 'engine hours', one: 'engine hour', unit: 'h' },
  'road-km': { title: 'kilometres on the road', one: 'kilometre on the road', unit: 'km' },
} as const;
export type UseKind = keyof typeof useKinds;

export type IntervalUnit = 'days' | 'weeks' | 'months' | 'years';

/** A length of the calendar. `count` is whole and ≥ 1. */
export interface Interval {
  readonly count: number;
  readonly unit: IntervalUnit;
}

/** After so much use since it was last done. `count` > 0, in the kind's unit. */
export interface UseRule {
  readonly use: UseKind;
  readonly count: number;
}

/** A measured figure that comes to its limit. */
export interface ConditionRule {
  /** 'tread', 'zinc left', 'broken strands' */
  readonly measure: string;
  readonly unit: string;
  readonly limit: number;
  /** `falls`: due at the limit or under it; `rises`: due at the limit or over it */
  readonly way: 'falls' | 'rises';
  /** how near it is measured, in its unit. ≥ 0 */
  readonly within: number;
}

/**
 * The rule of one due. Whichever of its parts comes first rules. A printed day stands in the place of `every` and
 * `season`: it may be sooner or later than either, and neither counts beside it.
 */
export interface DueRule {
  /** the last day printed on the thing itself; null: none */
  readonly printed: string | null;
  readonly every: Interval | null;
  /** `MM-DD`: once a year, by this day; null: not by season */
  readonly season: string | null;
  readonly uses: readonly UseRule[];
  readonly condition: ConditionRule | null;
}

/**
 * The day that lies an interval after a day.
 * @throws RangeError where the count is not a whole number of at least 1, or the day lies past the year 2199
 */
export function dayAfter(day: string, { count, unit }: Interval): string {
  if (!Number.isInteger(count) || count < 1)
    throw new RangeError(`an interval is a whole number of ${unit} from 1, got ${count}`);
  switch (unit) {
    case 'days':
      return addDays(day, count);
    case 'weeks':
      return addDays(day, 7 * count);
    case 'months':
      return addMonths(day, count);
    case 'years':
      return addMonths(day, 12 * count);
  }
}

/** 'every 12 months', 'every week' */
export function intervalInWords({ count, unit }: Interval): string {
  return count === 1 ? `every ${unit.slice(0, -1)}` : `every ${count} ${unit}`;
}

/** '8 launches', '1 sail', '100 engine hours' */
export function amountOfUse(use: UseKind, count: number): string {
  const shown = Number.isInteger(count) ? String(count) : count.toFixed(1);
  return `${shown} ${shown === '1' ? useKinds[use].one : useKinds[use].title}`;
}
