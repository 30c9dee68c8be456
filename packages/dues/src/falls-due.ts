/** When a thing falls due: whichever of the parts of its rule comes first. */
import { addDays, daysBetween } from '#units';
import { type DueRule, dayAfter, type UseKind, type UseRule } from './due-rule.ts';
import { type DayBand, daysUntilUse, furthestAhead_d, keptUse, type UseAhead, type UseCount } from './use-rate.ts';
import { type Measured, type Wear, wearOf } from './wear.ts';

export interface DueCase {
  readonly rule: DueRule;
  /** the day it was last done, made or fitted: what dates and uses are counted from; null: not known */
  readonly since: string | null;
  readonly today: string;
  /** of the whole boat, in any order */
  readonly uses: readonly UseCount[];
  readonly ahead: readonly UseAhead[];
  readonly measured: readonly Measured[];
}

/** One part of a rule, with the day it makes the thing due, or why it says none. */
export type DuePart =
  | { readonly kind: 'printed'; readonly day: DayBand }
  | { readonly kind: 'every'; readonly day: DayBand }
  | { readonly kind: 'season'; readonly day: DayBand }
  | {
      readonly kind: 'use';
      readonly use: UseKind;
      readonly count: number;
      readonly used: number;
      readonly day: DayBand;
    }
  | { readonly kind: 'condition'; readonly wear: Wear; readonly day: DayBand }
  | {
      readonly kind: 'says nothing';
      readonly part: 'every' | 'season' | 'use' | 'condition';
      readonly because: Silence;
      readonly use: UseRule | null;
      readonly wear: Wear | null;
    };

export type Silence = 'last done not known' | 'no such use kept' | 'not measured' | 'measured once' | 'no wear seen';

/** A part that says a day. */
export type DatedPart = Exclude<DuePart, { readonly kind: 'says nothing' }>;

export interface FallsDue {
  /** the part that comes first; null where none says a day */
  readonly first: DatedPart | null;
  /** the earliest of what the parts say; null where none says a day */
  readonly day: DayBand | null;
  readonly parts: readonly DuePart[];
}

/** A season's day counts as done when it was done no more than this long before it: our judgement. [d] */
export const assumedSeasonAhead_d = 120;

/**
 * When a thing falls due.
 *
 * @throws RangeError for an interval that is no whole number of at least 1, or a day outside 1900 to 2199
 */
export function fallsDue(asked: DueCase): FallsDue {
  const { rule } = asked;
  const parts: DuePart[] = [
    ...(rule.printed === null
      ? [...everyPart(asked), ...seasonPart(asked)]
      : [{ kind: 'printed', day: exactly(rule.printed) } as const]),
    ...rule.uses.map((use) => byUsePart(asked, use)),
    ...(rule.condition === null ? [] : [conditionPart(asked)]),
  ];
  const dated = parts.filter((part): part is DatedPart => part.kind !== 'says nothing');
  const first = dated.reduce<DatedPart | null>(
    (best, part) => (best === null || part.day.likely < best.day.likely ? part : best),
    null,
  );
  const earliest = (end: keyof DayBand) => dated.map(({ day }) => day[end]).sort()[0]!;
  return {
    first,
    day: first === null ? null : { low: earliest('low'), likely: earliest('likely'), high: earliest('high') },
    parts,
  };
}

const exactly = (day: string): DayBand => ({ low: day, likely: day, high: day });

const silent = (
  part: 'every' | 'season' | 'use' | 'condition',
  because: Silence,
  more: { readonly use?: UseRule; readonly wear?: Wear } = {},
): DuePart => ({ kind: 'says nothing', part, because, use: more.use ?? null, wear: more.wear ?? null });

function everyPart({ rule, since }: DueCase): DuePart[] {
  if (rule.every === null) return [];
  if (since === null) return [silent('every', 'last done not known')];
  return [{ kind: 'every', day: exactly(dayAfter(since, rule.every)) }];
}

/** The first day of the season that lies further than `assumedSeasonAhead_d` after it was last done. */
function seasonPart({ rule, since, today }: DueCase): DuePart[] {
  const { season } = rule;
  if (season === null) return [];
  const from = since === null ? today : addDays(since, assumedSeasonAhead_d);
  const year = Number(from.slice(0, 4));
  const day = [year, year + 1].map((each) => seasonDay(each, season)).find((each) => each >= from)!;
  return [{ kind: 'season', day: exactly(day) }];
}

function seasonDay(year: number, season: string): string {
  // 29 February is the 28th where there is none
  const day = season === '02-29' && new Date(Date.UTC(year, 1, 29)).getUTCMonth() !== 1 ? '02-28' : season;
  return addDays(`${year}-${day}`, 0);
}

function byUsePart({ since, today, uses, ahead }: DueCase, rule: UseRule): DuePart {
  if (since === null) return silent('use', 'last done not known', { use: rule });
  const counted = uses.filter(({ use, on }) => use === rule.use && on > since && on <= today);
  const used = counted.reduce((sum, { count }) => sum + count, 0);
  const { use, count } = rule;
  if (used >= count) return { kind: 'use', use, count, used, day: exactly(dayReached(counted, count)) };
  const days = daysUntilUse(count - used, keptUse(use, uses, today), ahead, today);
  if (days === null) return silent('use', 'no such use kept', { use: rule });
  return { kind: 'use', use, count, used, day: fromToday(today, days) };
}

/** The day on which the uses came to the count. */
function dayReached(counted: readonly UseCount[], count: number): string {
  let sum = 0;
  const inOrder = [...counted].sort((a, b) => a.on.localeCompare(b.on));
  return inOrder.find((each) => {
    sum += each.count;
    return sum >= count;
  })!.on;
}

function conditionPart({ rule, since, measured, today }: DueCase): DuePart {
  const wear = wearOf(
    rule.condition!,
    measured.filter(({ on }) => on <= today),
    since,
  );
  switch (wear.kind) {
    case 'at its limit':
      return { kind: 'condition', wear, day: exactly(wear.since) };
    case 'on its way':
      return { kind: 'condition', wear, day: fromToday(wear.last.on, wear.days) };
    case 'no wear seen':
      return silent('condition', 'no wear seen', { wear });
    case 'one measure':
      return silent('condition', 'measured once', { wear });
    case 'not measured':
      return silent('condition', 'not measured', { wear });
  }
}

const fromToday = (day: string, { low, likely, high }: { low: number; likely: number; high: number }): DayBand => ({
  low: addDays(day, Math.min(low, furthestAhead_d)),
  likely: addDays(day, Math.min(likely, furthestAhead_d)),
  high: addDays(day, Math.min(high, furthestAhead_d)),
});

/**
 * - `past`: its likely day is behind us;
 * - `soon`: its likely day comes within the days it takes to plan it and get what it needs;
 * - `later`: after that;
 * - `not known`: no part of its rule says a day.
 */
export type DueStage = 'past' | 'soon' | 'later' | 'not known';

/** How near a due is. @param lead_d days it takes to plan it and to get what it needs. ≥ 0 */
export function dueStage({ day }: FallsDue, today: string, lead_d: number): DueStage {
  if (day === null) return 'not known';
  const days = daysBetween(today, day.likely);
  return days < 0 ? 'past' : days <= lead_d ? 'soon' : 'later';
}
