import { describe, expect, it } from 'vitest';
import type { Book, Day, WeatherEntry } from '#boat-book';
import { cureLawOf } from '#materials';
import { addDays } from '#units';
import { type Problem, startSearch } from '#workplan';
import { demoBook } from '../../../examples/demo-book.ts';
import { problemFrom } from './problem-from.ts';
import { waitCourseInWords } from './wait-told.ts';

const today = '2026-05-06' as Day;

/** The demo with one air temperature through all of the first night and the day after it, hour by hour. */
function withNight(air_C: number): Book {
  const demo = demoBook(today);
  const night = (date: Day, fromHour: number, toHour: number): WeatherEntry => ({
    place: 'drive',
    date,
    fromHour,
    toHour,
    rain: false,
    rainOdds_pct: 0,
    wind_kn: 3,
    air_C,
    surface_C: null,
    humidity_pct: 60,
    basis: 'forecast',
    entered: `${today}T08:00:00Z`,
    order: 1000,
  });
  const added = [2, 3, 4].flatMap((n) => [night(addDays(today, n), 19, 24), night(addDays(today, n + 1), 0, 8)]);
  return {
    ...demo,
    weather: { ...demo.weather, ...Object.fromEntries(added.map((entry, i) => [`night-${i}`, entry])) },
  };
}

/** The plan's wait for the rudder's filler to harden, and what is said of it. */
function rudder(book: Book) {
  const matter = problemFrom(book, { now: `${today}T08:00:00Z` });
  if (matter.kind !== 'problem') throw new Error(matter.words);
  const search = startSearch(matter.problem, { seed: 7 });
  search.advance(60);
  const wait = search.outcome('as it stands').plan.waits.find((each) => each.wait === 'rudder-cure')!;
  const stated = matter.problem.steps.find(({ id }) => id === wait.step)!.waits[0]!;
  return { wait, length: wait.finish - wait.start, words: waitCourseInWords(stated, wait, matter.problem) };
}

describe('a wait over a cold night, on the demo boat', () => {
  it('grows as the night gets colder, and says by what', () => {
    const [mild, cool] = [rudder(withNight(16)), rudder(withNight(7))];
    expect(cool.length).toBeGreaterThan(mild.length + 60);
    expect(cool.wait.tooCold).toBe(false);
    expect(cool.words[0]).toBe('Our figure; the tin wins: 10 h at 20 °C.');
    expect(cool.words[1]).toMatch(/^It grows to \d+ h.*: the hours it runs through have \d+ to \d+ °C\.$/);
    expect(cool.words).toHaveLength(2);
  });

  it('below the least temperature says that it may never reach its strength', () => {
    const { wait, words } = rudder(withNight(2));
    expect(wait.tooCold).toBe(true);
    expect(words.at(-1)).toMatch(/^In \d+ hours it is below 5 °C: .*may never reach its strength\.$/);
  });

  it('goes by the tin, where the keeper read it, and says so', () => {
    const cool = withNight(7);
    const tin = {
      name: 'Epoxy, the grey tin',
      family: 'epoxy-fast',
      store: null,
      readOn: today,
      nextCoat: null,
      latestCoat_h: null,
      worked: { hours: 6, at_C: 25 },
      full: null,
      firstDay_mm: null,
      minimum_C: 8,
      humidity_max_pct: null,
      potLife: null,
      ratio: null,
      spread_m2_l: null,
      strokePair_g: null,
      note: '',
    };
    const { wait, words } = rudder({ ...cool, tins: { grey: tin } });
    expect(words[0]).toBe('From the tin: 6 h at 25 °C.');
    expect(wait.tooCold).toBe(true);
    expect(words.at(-1)).toMatch(/below 8 °C/);
  });
});

describe('a wait in words', () => {
  const hour = (air_C: number, humidity_pct: number) => ({
    rain: false,
    wind_kn: 3,
    air_C,
    surface_C: null,
    humidity_pct,
    basis: 'typed' as const,
    sheltered: false,
  });
  const said = (product: string, hours: Problem['hours'], finish: number, over = true) =>
    waitCourseInWords({ law: cureLawOf(product).law }, { start: 0, finish, over }, { hours });

  it('counts the hours too damp for a film to dry', () => {
    const hours = [...Array.from({ length: 4 }, () => hour(20, 90)), ...Array.from({ length: 20 }, () => hour(20, 60))];
    expect(said('varnish-one-pot', hours, 20 * 60)[1]).toBe(
      'It grows to 20 h: the hours it runs through have 20 °C, and 4 of them are too damp for it to dry.',
    );
  });

  it('says nothing more where it takes what the product says, and nothing at all of what never cures', () => {
    const hours = Array.from({ length: 24 }, () => hour(20, 50));
    expect(said('epoxy-fast', hours, 600)).toEqual(['Our figure; the tin wins: 10 h at 20 °C.']);
    expect(said('epoxy-fast', hours, 600, false)[1]).toBe('It is not over by the end of what is planned.');
    expect(said('butyl-tape', hours, 0)).toEqual([]);
  });
});
