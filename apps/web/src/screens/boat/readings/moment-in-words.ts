import { localAt } from '#units';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** `2 May 2026 18:40` on the clocks of the zone. */
export function stampInWords(at: number, zone: string): string {
  const { day, clock } = localAt(at, zone);
  return `${Number(day.slice(8))} ${months[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)} ${clock}`;
}

/** `2 May`, for an axis. */
export function dayMark(day: string): string {
  return `${Number(day.slice(8))} ${months[Number(day.slice(5, 7)) - 1]}`;
}

/** `May 2026` */
export function monthMark(day: string): string {
  return `${months[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;
}

/** `40 s`, `25 min`, `3 h`, `12 days`: a stretch of time in one figure. */
export function stretchInWords(ms: number): string {
  const minutes = ms / 60_000;
  if (minutes < 1.5) return `${Math.round(ms / 1000)} s`;
  if (minutes < 90) return `${Math.round(minutes)} min`;
  if (minutes < 48 * 60) return `${Math.round(minutes / 60)} h`;
  return `${Math.round(minutes / 1440)} days`;
}

/** `199,976` */
export const many = (count: number): string => count.toLocaleString('en-GB');
