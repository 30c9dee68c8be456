/** The parts of a day that its weather is told in. */
import type { JobDay } from '#boat-book';
import { hoursOfDay } from './weather-known.ts';

export interface DayPart {
  readonly id: 'morning' | 'midday' | 'afternoon' | 'night';
  readonly name: string;
  /** whole hours, [from, to), of the day itself (0) or the day after (1) */
  readonly spans: readonly { readonly dayAfter: 0 | 1; readonly fromHour: number; readonly toHour: number }[];
}

/** Morning, midday and afternoon between them cover the job day whatever its hours; the night after is the fourth. */
export function partsOf(day: Pick<JobDay, 'from' | 'to'>): DayPart[] {
  const hours = hoursOfDay(day);
  const from = Math.min(6, hours.from);
  const to = Math.max(20, hours.to);
  const part = (id: DayPart['id'], name: string, fromHour: number, toHour: number): DayPart => ({
    id,
    name,
    spans: [{ dayAfter: 0, fromHour, toHour }],
  });
  const night: DayPart = {
    id: 'night',
    name: 'Night after',
    spans: [
      ...(to < 24 ? [{ dayAfter: 0 as const, fromHour: to, toHour: 24 }] : []),
      { dayAfter: 1, fromHour: 0, toHour: 6 },
    ],
  };
  return [
    part('morning', 'Morning', from, 11),
    part('midday', 'Midday', 11, 15),
    part('afternoon', 'Afternoon', 15, to),
    night,
  ];
}

/** `06 to 11` */
export function partHours(part: DayPart): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${two(part.spans[0]!.fromHour)} to ${two(part.spans.at(-1)!.toHour)}`;
}
