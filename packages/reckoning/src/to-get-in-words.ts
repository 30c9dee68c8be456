import type { Day } from '#boat-book';
import { daysBetween } from '#units';
import type { ToGet } from './to-get.ts';
import { dayInWords, listInWords, weekdayInWords } from './when-in-words.ts';

export interface ToGetWords {
  /** what it is for and when: `needed Saturday 10:20 for 'Rebed the plate'` */
  readonly need: string;
  /** only when: `needed Saturday 10:20`, `of use if here by Sunday`; null: no day hangs on it */
  readonly when: string | null;
  /** how it stands and what to do by when: `not ordered, 5 days from ordering: order by Monday 4 May` */
  readonly how: string;
}

/** One thing to get, in two phrases without a full stop. */
export function toGetInWords(line: ToGet, today: Day): ToGetWords {
  const jobs = line.jobs.map(({ title }) => `'${title}'`);
  const out = line.jobs.filter(({ inPlan }) => !inPlan).map(({ title }) => `'${title}'`);
  const when =
    line.use !== null
      ? `needed ${dayNear(line.use.day, today)} ${line.use.clock}`
      : line.hereBy !== null
        ? `of use if here by ${dayNear(line.hereBy, today)}`
        : null;
  const forJobs = `for ${listInWords(jobs)}`;
  const need = when === null ? forJobs : line.use !== null ? `${when} ${forJobs}` : `${forJobs}: ${when}`;
  return { need, when, how: line.late === null ? onTimeInWords(line, today) : lateInWords(line, today, out, jobs) };
}

function onTimeInWords(line: ToGet, today: Day): string {
  if (line.expected !== null)
    return line.use === null
      ? `here on ${dayNear(line.expected, today)}`
      : `ordered, here on ${dayNear(line.expected, today)}`;
  if (line.lead_days === null)
    return 'not ordered, and not said how long it takes: say when it can be here, and its jobs can be planned';
  const takes = leadInWords(line.lead_days);
  if (line.orderBy === null) return `not ordered, ${takes}`;
  return line.orderBy <= today
    ? `not ordered, ${takes}: order it today`
    : `not ordered, ${takes}: order by ${dayNear(line.orderBy, today)}`;
}

function lateInWords(line: ToGet, today: Day, out: readonly string[], jobs: readonly string[]): string {
  const held = listInWords(out.length > 0 ? out : jobs);
  const holdsUp = `it holds up ${held}`;
  if (line.late === 'overdue')
    return `late: expected ${dayNear(line.expected!, today)} and not marked as here; ${holdsUp}`;
  const soonest = dayNear(line.soonest!, today);
  return line.expected === null
    ? `late already: ordered today it is here ${soonest}; ${holdsUp}`
    : `late: it comes ${soonest}; ${holdsUp}`;
}

/** `got the same day`, `one day from ordering`, `5 days from ordering` */
export function leadInWords(lead_days: number): string {
  if (lead_days === 0) return 'to be had the same day';
  return lead_days === 1 ? 'one day from ordering' : `${lead_days} days from ordering`;
}

/** How much there is to get and what comes first: `Three things to get, the first to order by Thursday.` null: nothing. */
export function toGetAtAGlance(lines: readonly ToGet[], today: Day): string | null {
  if (lines.length === 0) return null;
  const count = lines.length === 1 ? 'One thing to get' : `${counted(lines.length)} things to get`;
  const late = lines.filter((line) => line.late !== null).length;
  if (late > 0)
    return `${count}, ${late === lines.length ? (late === 1 ? 'and it is late' : 'all of them late') : `${late === 1 ? 'one' : String(late)} of them late`}.`;
  const orders = lines.flatMap(({ orderBy }) => (orderBy === null ? [] : [orderBy])).sort();
  const unknown = lines.filter((line) => line.expected === null && line.lead_days === null).length;
  if (orders.length > 0) {
    const first = orders[0]!;
    const by = first <= today ? 'today' : `by ${dayNear(first, today)}`;
    return `${count}, ${lines.length === 1 ? 'to order' : 'the first to order'} ${by}.`;
  }
  if (unknown > 0)
    return `${count}, ${unknown === lines.length ? '' : `${unknown === 1 ? 'one' : String(unknown)} of them `}with no day it can be here.`;
  const first = lines.flatMap(({ expected }) => (expected === null ? [] : [expected])).sort()[0];
  return first === undefined
    ? `${count}.`
    : `${count}, ${lines.length === 1 ? 'here' : 'all ordered, the first here'} ${dayNear(first, today)}.`;
}

const numbers = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten'] as const;
const counted = (n: number) => numbers[n] ?? String(n);

/** `today`, `tomorrow`, `Thursday` within six days, otherwise `Thursday 14 May`. */
export function dayNear(day: Day, today: Day): string {
  const away = daysBetween(today, day);
  if (away === 0) return 'today';
  if (away === 1) return 'tomorrow';
  return away > 1 && away < 7 ? weekdayInWords(day) : dayInWords(day);
}
