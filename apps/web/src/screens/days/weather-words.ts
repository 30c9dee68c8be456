/** Weather of a stretch of hours in a sentence, with what is not known said so. */
import type { Minute, Problem } from '#workplan';
import { clockAt } from './place-time.ts';

/** `14–19 °C, 60–75 % humid, wind to 8 kn, rain 16 to 18` */
export function dayWeatherInWords(problem: Problem, from: Minute, to: Minute): string {
  const first = Math.floor(from / 60);
  const hours = problem.hours.slice(first, Math.ceil(to / 60));
  if (hours.length === 0) return '';
  const known = hours.filter((h) => h.basis !== 'climate');
  const told = known.length > 0 ? known : hours;
  const air = range(told.map((h) => h.air_C));
  const humid = range(told.map((h) => h.humidity_pct));
  const wind = Math.round(Math.max(...told.map((h) => h.wind_kn)));
  const words = [`${air} °C`, `${humid} % humid`, `wind to ${wind} kn`, rainInWords(problem, first, hours)];
  if (known.length === 0) return `weather not entered; planned with cautious figures: ${words.join(', ')}`;
  if (known.length < hours.length) words.push(`${hours.length - known.length} h not entered: cautious figures`);
  return words.join(', ');
}

function rainInWords(problem: Problem, first: number, hours: Problem['hours']): string {
  const spells: { from: number; to: number }[] = [];
  hours.forEach((hour, i) => {
    if (!hour.rain || hour.sheltered) return;
    const last = spells.at(-1);
    if (last && last.to === i) last.to = i + 1;
    else spells.push({ from: i, to: i + 1 });
  });
  if (spells.length === 0) return hours.some((h) => h.rain) ? 'rain, under a roof' : 'dry';
  if (spells.length === 1 && spells[0]!.to - spells[0]!.from === hours.length) return 'rain all day';
  const clock = (i: number) => clockAt(problem, (first + i) * 60).replace(/:00$/, '');
  return `rain ${spells.map((s) => `${clock(s.from)} to ${clock(s.to)}`).join(' and ')}`;
}

function range(values: readonly number[]): string {
  const low = Math.round(Math.min(...values));
  const high = Math.round(Math.max(...values));
  return low === high ? `${low}` : `${low}–${high}`;
}
