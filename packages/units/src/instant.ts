/** A moment in time: milliseconds since 1970-01-01T00:00Z, leap seconds left out (as every device counts it). */
export type Instant = number;

/** A stretch of time, half-open: from its start up to, not including, its end. */
export interface Span {
  readonly start: Instant;
  readonly end: Instant;
}

/** A span. @throws RangeError when the end is before the start, or either is not a number */
export function span(start: Instant, end: Instant): Span {
  if (!(Number.isFinite(start) && Number.isFinite(end) && start <= end))
    throw new RangeError(`a span ends at or after its start; got ${start} to ${end}`);
  return { start, end };
}

/** Minutes of a span. ≥ 0 */
export function spanMinutes({ start, end }: Span): number {
  return (end - start) / 60_000;
}

/** The time two spans share, or null where they share none. */
export function sharedSpan(a: Span, b: Span): Span | null {
  const start = Math.max(a.start, b.start);
  const end = Math.min(a.end, b.end);
  return start < end ? { start, end } : null;
}
