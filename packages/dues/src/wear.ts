/** A measured figure on its way to its limit. */
import { daysBetween } from '#units';
import type { ConditionRule } from './due-rule.ts';
import { furthestAhead_d } from './use-rate.ts';

/** What was measured on a day, in the unit of the rule. */
export interface Measured {
  readonly on: string;
  readonly value: number;
}

export type Wear =
  /** it was at its limit, or past it, on this day already */
  | { readonly kind: 'at its limit'; readonly since: string; readonly value: number }
  /** days from the last measure until it gets there */
  | {
      readonly kind: 'on its way';
      readonly last: Measured;
      readonly a_year: number;
      readonly days: { readonly low: number; readonly likely: number; readonly high: number };
    }
  /** it does not move toward its limit, as near as it is measured */
  | { readonly kind: 'no wear seen'; readonly last: Measured }
  | { readonly kind: 'one measure'; readonly last: Measured }
  | { readonly kind: 'not measured' };

/**
 * When a figure comes to its limit: in a straight line from the first measure to the last. The band is how near it is
 * measured, at both ends: `low` where the first was read too well and the last too badly, `high` the other way.
 *
 * @param since  what was measured before is of the part it replaced and does not count; null: all counts
 */
export function wearOf(rule: ConditionRule, measured: readonly Measured[], since: string | null): Wear {
  // what is left to the limit: positive while there is room
  const room = (value: number) => (rule.way === 'falls' ? value - rule.limit : rule.limit - value);
  // of the day it was done: what still had room is of the new part, what was at its limit of the old
  const counted = measured
    .filter(({ on, value }) => since === null || on > since || (on === since && room(value) > 0))
    .sort((a, b) => a.on.localeCompare(b.on));
  const last = counted.at(-1);
  if (last === undefined) return { kind: 'not measured' };
  if (room(last.value) <= 0) {
    const before = counted.findLastIndex(({ value }) => room(value) > 0);
    return { kind: 'at its limit', since: counted[before + 1]!.on, value: last.value };
  }
  const first = counted[0]!;
  const days = daysBetween(first.on, last.on);
  if (days === 0) return { kind: 'one measure', last };
  const worn = room(first.value) - room(last.value);
  const daysFor = (wear: number, left: number) =>
    wear <= 0 ? furthestAhead_d : Math.min(furthestAhead_d, (left / wear) * days);
  if (worn <= 0) return { kind: 'no wear seen', last };
  const left = room(last.value);
  return {
    kind: 'on its way',
    last,
    a_year: (worn / days) * 365.25,
    days: {
      low: Math.round(daysFor(worn + 2 * rule.within, Math.max(0, left - rule.within))),
      likely: Math.round(daysFor(worn, left)),
      high: Math.round(daysFor(worn - 2 * rule.within, left + rule.within)),
    },
  };
}
