/** The moment in words: clock, warmth and how long the sky stays as it is. */
import { changeInWords } from '#reckoning';
import type { Minute, Problem } from '#workplan';
import { capital } from '../../parts/in-words.ts';
import type { Item } from './in-hand.ts';
import { clockAt, dayAt, weekdayInWords } from './place-time.ts';

/** `Saturday 11:20 · 15 °C · dry until 16:00` */
export function momentInWords(problem: Problem, now: Minute): string {
  const parts = [`${weekdayInWords(dayAt(problem, now))} ${clockAt(problem, now)}`];
  const hour = problem.hours[Math.floor(now / 60)];
  if (!hour) return parts[0]!;
  if (hour.basis === 'climate') return `${parts[0]} · weather of this hour not entered`;
  parts.push(`${Math.round(hour.air_C)} °C`);
  const today = dayAt(problem, now);
  let until = Math.floor(now / 60) + 1;
  while (problem.hours[until]?.rain === hour.rain && dayAt(problem, until * 60) === today) until++;
  const sky = hour.rain ? 'rain' : 'dry';
  const changes = problem.hours[until] !== undefined && dayAt(problem, until * 60) === today;
  parts.push(changes ? `${sky} until ${clockAt(problem, until * 60)}` : `${sky} for the rest of the day`);
  return parts.join(' · ');
}

/** `Fill the holes`, `Raise the mast` */
export function itemName(item: Item, problem: Problem): string {
  return item.kind === 'step' ? item.step.title : capital(changeInWords(item.planned, problem));
}
