/** The hours in which a window is looked for: those the keeper is willing to work and whose weather is known. */
import type { Book, Clock, Day, Id, JobDay } from '#boat-book';
import { addDays, clockOfMinute, instantAt, localAt, minuteOfClock } from '#units';
import { datedJobDays } from './job-days-ahead.ts';
import { placeAt } from './plan-hours.ts';
import { weatherInForce } from './weather/weather-in-force.ts';

/** Between which clock times a keeper is taken to be willing to work, on any day, until said otherwise. Our assumption. */
export const assumedWilling: WillingHours = { from: '08:00', to: '20:00' };

export interface WillingHours {
  readonly from: Clock;
  readonly to: Clock;
}

/** The weather is looked at no further ahead than this: what is said of later hours is no forecast. */
const furthest_days = 16;

/**
 * Where the boat lies as far as the book tells: at the place of the job day begun last, else of the first one ahead,
 * else the first place; null where there is none.
 *
 * @param now  epoch ms
 */
export function liesAt(book: Book, now: number): Id | null {
  const { days } = datedJobDays(book);
  return days.length > 0 ? placeAt(days, now).placeId : (Object.keys(book.places)[0] ?? null);
}

/**
 * The job days there could be: on each date from today the willing hours whose weather is known, each run of them one
 * day; today's from now. Dates with a job day already are left to it. Set-out, clear-up and the set-ups to be left in
 * are those of the last job day written down; none where there is none.
 *
 * @param now      epoch ms
 * @param freeAt   epoch ms from which the keeper is free: the end of a step under way, or `now`
 * @param helpers  hands there beside the keeper, all the time
 */
export function windowDays(
  book: Book,
  {
    now,
    freeAt,
    place: placeId,
    willing,
    helpers,
  }: {
    readonly now: number;
    readonly freeAt: number;
    readonly place: Id;
    readonly willing: WillingHours;
    readonly helpers: number;
  },
): ReadonlyMap<Id, JobDay> {
  const from_min = minuteOfClock(willing.from);
  const to_min = minuteOfClock(willing.to);
  if (!(from_min < to_min))
    throw new RangeError(`willing hours must end after they begin, got ${willing.from} to ${willing.to}`);
  const place = book.places[placeId];
  if (place === undefined) throw new RangeError(`there is no place '${placeId}' in the book`);
  const { day: today } = localAt(now, place.timeZone);
  const free = localAt(freeAt, place.timeZone);
  const known = knownHours(book, placeId, today);
  const taken = new Set(Object.values(book.jobDays).map(({ date }) => date));
  const pattern = lastJobDay(book);
  const days = new Map<Id, JobDay>();
  for (let away = 0; away <= furthest_days; away++) {
    const date = addDays(today, away);
    const hours = known.get(date);
    if (hours === undefined || taken.has(date) || date < free.day) continue;
    // rounded up, so that the day begins on a clock time the keeper would say
    const begins = date === free.day ? Math.ceil((free.minuteOfDay + 1) / 5) * 5 : 0;
    for (const run of runsOf(hours)) {
      const from = Math.max(run.from * 60, from_min, begins);
      const to = Math.min(run.to * 60, to_min);
      if (to - from <= pattern.setOut_min + pattern.clearUp_min) continue;
      const [opens, closes] = [clockOfMinute(from), to === 1440 ? '23:59' : clockOfMinute(to)];
      // where the clock is put on, times in the gap are not on it
      if (instantAt(date, closes, place.timeZone) <= instantAt(date, opens, place.timeZone)) continue;
      days.set(`${date} ${opens}`, {
        date,
        from: opens,
        to: closes,
        place: placeId,
        ...pattern,
        breaks: [],
        hands: Array.from({ length: helpers }, (_, n) => ({
          id: `helper ${n + 1}`,
          name: n === 0 ? 'a second hand' : `hand ${n + 2}`,
          from: opens,
          to: closes,
        })),
      });
    }
  }
  return days;
}

/** The last clock hour whose weather is known at a place, from today on; null: none is. */
export function weatherKnownTo(book: Book, place: Id, today: Day): { readonly day: Day; readonly hour: number } | null {
  const known = [...knownHours(book, place, today)].sort(([a], [b]) => a.localeCompare(b)).at(-1);
  return known === undefined ? null : { day: known[0], hour: Math.max(...known[1]) + 1 };
}

/** Clock hours whose weather is in the book, by date from today on. */
function knownHours(book: Book, place: Id, today: Day): Map<Day, Set<number>> {
  const known = new Map<Day, Set<number>>();
  for (const entry of weatherInForce(book)) {
    if (entry.place !== place || entry.date < today) continue;
    const hours = known.get(entry.date) ?? new Set();
    for (let hour = entry.fromHour; hour < entry.toHour; hour++) hours.add(hour);
    known.set(entry.date, hours);
  }
  return known;
}

/** Runs of whole hours, [from, to). */
function runsOf(hours: ReadonlySet<number>): { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  for (const hour of [...hours].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last?.to === hour) last.to = hour + 1;
    else runs.push({ from: hour, to: hour + 1 });
  }
  return runs;
}

/** Set-out, clear-up and what she is left in, as on the last job day written down. */
function lastJobDay(book: Book): Pick<JobDay, 'setOut_min' | 'clearUp_min' | 'endsIn'> {
  const last = Object.values(book.jobDays)
    .sort((a, b) => a.date.localeCompare(b.date) || a.from.localeCompare(b.from))
    .at(-1);
  return last === undefined
    ? { setOut_min: 0, clearUp_min: 0, endsIn: [] }
    : { setOut_min: last.setOut_min, clearUp_min: last.clearUp_min, endsIn: last.endsIn };
}
