/** Hours, weather and night of a day as marks and bands down its column. */
import type { Minute, Problem } from '#workplan';
import { clockAt } from '../place-time.ts';
import type { DayScale } from './day-scale.ts';

export interface HourMark {
  readonly y: number;
  readonly clock: string;
  /** `14°`, where it differs from the hour before */
  readonly air: string | null;
  readonly wind: string | null;
  readonly known: boolean;
}

export function hourMinutes(problem: Problem, from: Minute, to: Minute): Minute[] {
  // the plan starts on a whole hour of UTC; zones off the hour by 30 or 45 minutes have their own
  const offset = Number(clockAt(problem, 0).slice(3));
  const first = Math.ceil((from + offset) / 60) * 60 - offset;
  const marks: Minute[] = [];
  for (let minute = first; minute <= to; minute += 60) marks.push(minute);
  return marks;
}

export function hourMarks(problem: Problem, minutes: readonly Minute[], scale: DayScale): HourMark[] {
  let shownAir = '';
  let shownWind = '';
  return minutes.map((minute, i) => {
    const hour = problem.hours[Math.floor(minute / 60)];
    const last = i === minutes.length - 1 && scale.y(minute) > scale.height - 30;
    const air = hour && !last ? `${Math.round(hour.air_C)}°` : null;
    const wind = hour && !last ? `${Math.round(hour.wind_kn)} kn` : null;
    const mark = {
      y: scale.y(minute),
      clock: clockAt(problem, minute).slice(0, clockAt(problem, minute).endsWith(':00') ? 2 : 5),
      air: air !== shownAir ? air : null,
      wind: wind !== shownWind ? wind : null,
      known: hour?.basis !== 'climate',
    };
    if (air) shownAir = air;
    if (wind) shownWind = wind;
    return mark;
  });
}

export function hourBands(
  problem: Problem,
  from: Minute,
  to: Minute,
  scale: DayScale,
  is: (hour: Problem['hours'][number]) => boolean,
) {
  const bands: { from: Minute; to: Minute }[] = [];
  for (let i = Math.floor(from / 60); i * 60 < to; i++) {
    const hour = problem.hours[i];
    if (!hour || !is(hour)) continue;
    const last = bands.at(-1);
    if (last && last.to === i * 60) last.to = i * 60 + 60;
    else bands.push({ from: i * 60, to: i * 60 + 60 });
  }
  return bands.map((b) => ({ top: scale.y(b.from), height: scale.y(b.to) - scale.y(b.from) }));
}

export function nightBands(problem: Problem, from: Minute, to: Minute, scale: DayScale) {
  const bands: { top: number; height: number; name: string | null }[] = [];
  const light = problem.daylight.filter((d) => d.from < to && d.to > from);
  let at = from;
  for (const span of [...light, { from: to, to }]) {
    if (span.from > at) {
      const sunset = problem.daylight.find((d) => d.to === at);
      const sunrise = problem.daylight.find((d) => d.from === span.from);
      bands.push({
        top: scale.y(at),
        height: scale.y(span.from) - scale.y(at),
        name: sunset ? `sunset ${clockAt(problem, at)}` : sunrise ? `sunrise ${clockAt(problem, span.from)}` : null,
      });
    }
    at = Math.max(at, span.to);
  }
  return bands;
}
