/** A small line of a year with today, the day a due falls due, and its band: past, soon, later by where it stands. */

import type { DueOfBook } from '#reckoning';
import { daysBetween } from '#units';

const before_d = 60;
const after_d = 365;
const wide = 300;

/** Where a day lies on the line; a day beyond its ends lies at the end. */
function at(day: string, today: string): number {
  const days = Math.max(-before_d, Math.min(after_d, daysBetween(today, day)));
  return ((days + before_d) / (before_d + after_d)) * wide;
}

export function DueLine({ dueOf, today }: { readonly dueOf: DueOfBook; readonly today: string }) {
  const { day } = dueOf.falls;
  if (day === null) return null;
  const now = at(today, today);
  const soon = now + (dueOf.lead_d / (before_d + after_d)) * wide;
  const [low, likely, high] = [at(day.low, today), at(day.likely, today), at(day.high, today)];
  const beyond = daysBetween(today, day.likely) > after_d;
  return (
    <svg
      className={`due-line due-${dueOf.stage.replace(' ', '-')}`}
      viewBox={`-6 0 ${wide + 12} 16`}
      aria-hidden="true"
    >
      <line className="due-line-year" x1={0} x2={wide} y1={8} y2={8} />
      <rect className="due-line-soon" x={now} width={soon - now} y={5} height={6} />
      <line className="due-line-today" x1={now} x2={now} y1={1} y2={15} />
      {high - low > 1 && <line className="due-line-band" x1={low} x2={high} y1={8} y2={8} />}
      {beyond ? (
        <path className="due-line-dot" d={`M${wide - 4} 3L${wide + 3} 8L${wide - 4} 13z`} />
      ) : (
        <circle className="due-line-dot" cx={likely} cy={8} r={4} />
      )}
    </svg>
  );
}
