import type { MinuteSpan } from '../problem.ts';

/** True when the spans share at least one minute; a span of no minutes shares none. */
export function overlap(a: MinuteSpan, b: MinuteSpan): boolean {
  return Math.max(a.from, b.from) < Math.min(a.to, b.to);
}

function isEmpty(span: MinuteSpan): boolean {
  return span.to <= span.from;
}

/** The part of a span at or after a minute. */
export function since(span: MinuteSpan, minute: number): MinuteSpan {
  return { from: Math.max(span.from, minute), to: span.to };
}

/**
 * The first minute of a span that none of the others covers; null when all of it is covered. The others may come
 * in any order, touch and overlap.
 */
export function firstUncovered(span: MinuteSpan, by: readonly MinuteSpan[]): number | null {
  if (isEmpty(span)) return null;
  let reached = span.from;
  for (const cover of [...by].sort((a, b) => a.from - b.from)) {
    if (cover.from > reached) break;
    if (cover.to > reached) reached = cover.to;
    if (reached >= span.to) return null;
  }
  return reached;
}

/** Indices of the hours a span runs through, of as many as there are. */
export function hoursThrough(span: MinuteSpan, hours: number): number[] {
  if (isEmpty(span)) return [];
  const through: number[] = [];
  const last = Math.min(hours, Math.ceil(span.to / 60));
  for (let hour = Math.max(0, Math.floor(span.from / 60)); hour < last; hour++) through.push(hour);
  return through;
}

export interface Use extends MinuteSpan {
  readonly count: number;
  /** the plan may lay it otherwise; what is under way already cannot be helped */
  readonly open: boolean;
}

/**
 * The first minute at which more is used than there is, with something open among it; null when there is none.
 *
 * @param there  how many there are, in spans that do not overlap; outside them none
 */
export function firstOveruse(
  uses: readonly Use[],
  there: readonly (MinuteSpan & { readonly count: number })[],
): { readonly minute: number; readonly used: number; readonly there: number } | null {
  const real = uses.filter((use) => use.count > 0 && !isEmpty(use));
  if (!real.some((use) => use.open)) return null;
  const events: { at: number; used: number; open: number; there: number }[] = [];
  for (const { from, to, count, open } of real) {
    events.push({ at: from, used: count, open: open ? 1 : 0, there: 0 });
    events.push({ at: to, used: -count, open: open ? -1 : 0, there: 0 });
  }
  for (const { from, to, count } of there) {
    events.push({ at: from, used: 0, open: 0, there: count });
    events.push({ at: to, used: 0, open: 0, there: -count });
  }
  events.sort((a, b) => a.at - b.at);
  const sum = { used: 0, open: 0, there: 0 };
  for (const [i, event] of events.entries()) {
    sum.used += event.used;
    sum.open += event.open;
    sum.there += event.there;
    if (events[i + 1]?.at === event.at) continue;
    if (sum.open > 0 && sum.used > sum.there) return { minute: event.at, used: sum.used, there: sum.there };
  }
  return null;
}
