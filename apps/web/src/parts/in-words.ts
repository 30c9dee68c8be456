/** Days, times and lengths as the screens say them. */
import { daysBetween, weekday } from '#units';

const dayNames = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** 'Saturday 5 December'; with the year where it is not this one. */
export function dayInWords(day: string, today: string): string {
  return `${dayNames[weekday(day)]} ${dateInWords(day, today)}`;
}

/** '5 December'; with the year where it is not this one. */
export function dateInWords(day: string, today: string): string {
  const year = day.slice(0, 4) === today.slice(0, 4) ? '' : ` ${day.slice(0, 4)}`;
  return `${Number(day.slice(8))} ${monthNames[Number(day.slice(5, 7)) - 1]}${year}`;
}

/** 'December 2026' */
export function monthInWords(day: string): string {
  return `${monthNames[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;
}

/** 'today', 'tomorrow', 'in 9 days', '3 days ago' */
export function daysAway(day: string, today: string): string {
  const days = daysBetween(today, day);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days === -1) return 'yesterday';
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
}

/** '35 min', '1 h 20', '3 h' */
export function minutesInWords(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const left = whole % 60;
  if (hours === 0) return `${left} min`;
  return left === 0 ? `${hours} h` : `${hours} h ${String(left).padStart(2, '0')}`;
}

/** 'one', 'one and another', 'one, another and a third' */
export function listInWords(words: readonly string[], last = 'and'): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

/** '1 job', '3 jobs' */
export function countInWords(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** A sentence starts with a capital. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
