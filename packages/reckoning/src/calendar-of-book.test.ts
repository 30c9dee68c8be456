import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { Book, DueRecord, KeptPlan } from '#boat-book';
import { calendarFile } from '#calendar';
import { addDays, instantAt } from '#units';
import { calendarEvents, givenIn } from './calendar-of-book.ts';
import { job, jobDay, smallBook, soak, step } from './testing/small-book.ts';

const now = Date.parse('2026-05-01T08:00:00Z');
const day = (date: string) => jobDay(date, { hands: [{ id: 'mate', name: 'A friend', from: '10:00', to: '12:00' }] });

const keptPlan = (order: number, startsAt: string, parts: Partial<KeptPlan['plan']>): KeptPlan =>
  ({
    made: startsAt,
    startsAt,
    plan: { steps: [], waits: [], changes: [], leftOut: [], ...parts },
    verdict: { kind: 'proved best' },
    order,
  }) as unknown as KeptPlan;

const planned = (id: string, start: number, finish: number, on = 'sat') => ({
  step: id,
  start,
  finish,
  hands: ['keeper'],
  day: on,
  batchOf: null,
  abrade_min: 0,
});

const book = smallBook({
  jobs: { plate: job('Rebed the plate'), drain: job('Clear the drain') },
  steps: {
    off: step('plate', 1, 'Take it off', { cautions: ['Gloves on.'], waits: [soak('dry', 240)] }),
    rod: step('drain', 1, 'Rod it through'),
  },
  jobDays: { sat: day('2026-05-02') },
  outings: {
    out: {
      title: 'Out for the weekend',
      date: '2026-05-16',
      from: '10:00',
      nights: 1,
      place: 'The pier',
      wind_kn: null,
    },
  },
  plans: {
    first: keptPlan(1, '2026-05-02T08:00:00Z', { steps: [planned('off', 60, 90), planned('rod', 120, 150)] }),
    second: keptPlan(2, '2026-05-02T08:00:00Z', {
      steps: [planned('off', 30, 75)],
      waits: [{ step: 'off', wait: 'dry', start: 75, finish: 315, tooCold: true }],
    }),
  },
});

const due = (title: string, parts: Partial<DueRecord>): DueRecord => ({
  title,
  zone: null,
  fitting: null,
  consequence: 'danger',
  printed: null,
  every: null,
  season: null,
  uses: [],
  condition: null,
  usual: null,
  recipe: null,
  source: '',
  lastDone: null,
  note: '',
  ...parts,
});

const octets = (text: string) => new TextEncoder().encode(text).length;
const written = (from: Book, at = now) =>
  calendarFile({ name: from.boat.name, made: at, events: calendarEvents(from, at) });

/** A calendar that takes files in as RFC 5545 and RFC 5546 ask: by uid, the higher version wins, what is called off goes. */
function takenIn(files: readonly string[]) {
  const kept = new Map<string, { sequence: number; title: string; from: number; off: boolean }>();
  for (const text of files)
    for (const each of new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent')) {
      const event = new ICAL.Event(each);
      const had = kept.get(event.uid);
      if (had && had.sequence > event.sequence) continue;
      kept.set(event.uid, {
        sequence: event.sequence,
        title: event.summary,
        from: event.startDate.toJSDate().getTime(),
        off: each.getFirstPropertyValue('status') === 'CANCELLED',
      });
    }
  return [...kept.values()].filter(({ off }) => !off);
}

describe('calendarEvents', () => {
  it('has job days, the steps and waits of the plan in force, and outings', () => {
    const titles = calendarEvents(book, now)
      .filter(({ off }) => !off)
      .map(({ title }) => title);
    expect(titles).toEqual([
      'Job day: Test boat',
      'Rebed the plate: Take it off',
      'Soak over: Rebed the plate',
      'Out for the weekend: Test boat',
    ]);
  });

  it('says a job day in the hours of its place, and a wait that may never hold', () => {
    const [jobDayThere, taken, wait] = calendarEvents(book, now);
    expect(jobDayThere?.when).toMatchObject({ start: instantAt('2026-05-02', '09:00', 'Europe/London') });
    expect(taken).toMatchObject({ words: 'Gloves on.', place: 'Driveway' });
    expect(wait?.words).toMatch(/may never reach its strength/);
    expect(wait?.when).toEqual({
      kind: 'span',
      start: Date.parse('2026-05-02T13:15:00Z'),
      end: Date.parse('2026-05-02T13:15:00Z'),
    });
  });

  it('calls off what an earlier plan had, and says nothing of what is over', () => {
    expect(calendarEvents(book, now).find(({ off }) => off)?.title).toBe('Clear the drain: Rod it through');
    expect(calendarEvents(book, Date.parse('2026-05-10T00:00:00Z')).map(({ title }) => title)).toEqual([
      'Out for the weekend: Test boat',
    ]);
  });

  it('gives no doubles when it is taken in twice, moves what moved and takes off what was called off', () => {
    const { second: _, ...before } = book.plans;
    const earlier = written({ ...book, plans: before }, now - 60_000);
    expect(takenIn([earlier])).toHaveLength(4);
    const both = takenIn([earlier, written(book), written(book)]);
    expect(both.map(({ title }) => title).sort()).toEqual([
      'Job day: Test boat',
      'Out for the weekend: Test boat',
      'Rebed the plate: Take it off',
      'Soak over: Rebed the plate',
    ]);
    expect(both.find(({ title }) => title.includes('Take it off'))?.from).toBe(Date.parse('2026-05-02T08:30:00Z'));
  });

  it('has what falls due as a whole day with its band, its reminder in time, and nothing of what has no day', () => {
    const dues = {
      flares: due('Hand flares', { printed: '2026-09-30', source: 'the date printed on them' }),
      bearings: due('Grease the bearings', { every: { count: 12, unit: 'months' }, lastDone: '2025-05-10' }),
      seals: due('Window seals', { every: { count: 8, unit: 'years' } }),
      past: due('Gas hose', { printed: '2026-03-01' }),
    };
    const events = calendarEvents({ ...book, dues }, now).filter(({ title }) => title.startsWith('Due: '));
    // 14 days to find the hours of a job are all that is asked where nothing has to be got
    expect(events).toMatchObject([
      {
        title: 'Due: Grease the bearings',
        when: { kind: 'days', first: '2026-05-10', last: '2026-05-10' },
        free: true,
      },
      {
        title: 'Due: Hand flares',
        when: { kind: 'days', first: '2026-09-30', last: '2026-09-30' },
        words: 'By: the date printed on them.',
        reminder_min: 14 * 24 * 60,
      },
    ]);
    expect(events[0]).not.toHaveProperty('reminder_min');
  });

  it('moves a due that was done to its next day, and doubles nothing', () => {
    const bearings = due('Grease the bearings', { every: { count: 12, unit: 'months' }, lastDone: '2025-06-10' });
    const before = written({ ...book, dues: { bearings } }, now - 60_000);
    const after = written({ ...book, dues: { bearings: { ...bearings, lastDone: '2026-05-01' } } });
    const there = takenIn([before, after, after]).filter(({ title }) => title === 'Due: Grease the bearings');
    expect(there).toHaveLength(1);
    expect(new Date(there[0]!.from).getFullYear()).toBe(2027);
  });

  it('calls off what an earlier file had and the book has no more, in a higher version, and brings back what is undone', () => {
    const bearings = due('Grease the bearings', { every: { count: 12, unit: 'months' }, lastDone: '2025-06-10' });
    const full = { ...book, dues: { bearings } };
    const events = calendarEvents(full, now);
    const first = calendarFile({ name: 'Test', made: now, events });
    const given = givenIn(events, now);
    // the job day, the outing and the due taken out within the same minute
    const bare = { ...full, jobDays: {}, outings: {}, dues: {} };
    const later = calendarEvents(bare, now, given);
    const second = calendarFile({ name: 'Test', made: now, events: later });
    expect(takenIn([first, second]).map(({ title }) => title)).toEqual([
      'Rebed the plate: Take it off',
      'Soak over: Rebed the plate',
    ]);
    const versions = (text: string) =>
      new Map(
        new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => {
          const event = new ICAL.Event(each);
          return [event.uid, { sequence: event.sequence, off: each.getFirstPropertyValue('status') === 'CANCELLED' }];
        }),
      );
    const before = versions(first);
    const gone = [...versions(second)].filter(([uid, { off }]) => off && before.get(uid)?.off === false);
    expect(gone.map(([uid]) => uid.split('.')[0]).sort()).toEqual(['due', 'job-day', 'outing']);
    for (const [uid, { sequence }] of gone) expect(sequence).toBeGreaterThan(before.get(uid)!.sequence);
    // still called off in the next, as a file may not have been taken in; and back once it is undone
    const third = calendarEvents(bare, now + 60_000, givenIn(later, now));
    expect(third.filter(({ off }) => off)).toHaveLength(later.filter(({ off }) => off).length);
    const undone = calendarFile({ name: 'Test', made: now, events: calendarEvents(full, now, givenIn(later, now)) });
    expect(takenIn([first, second, undone])).toHaveLength(takenIn([first]).length);
    // what is over needs no calling off
    expect(calendarEvents(bare, Date.parse('2027-08-01T00:00:00Z'), given)).toEqual([]);
  });

  it('writes a year of plans that an independent reader takes, every line within 75 octets', () => {
    const long = 'Püttings und Wantenspanner – «très longue» explication, çà et là, 塗料と船底, при +5 °C, ⛵ '.repeat(
      6,
    );
    const weeks = Array.from({ length: 52 }, (_, week) => addDays('2026-05-02', 7 * week));
    const steps = Object.fromEntries(
      weeks.flatMap((_, week) =>
        Array.from({ length: 6 }, (_, i) => [
          `s${week}-${i}`,
          step('plate', 6 * week + i, `${long} ${week}.${i}`, { cautions: [long, long], waits: [soak('dry', 240)] }),
        ]),
      ),
    );
    const year = {
      ...book,
      steps,
      jobDays: Object.fromEntries(weeks.map((date, week) => [`d${week}`, day(date)])),
      outings: Object.fromEntries(
        weeks.map((date, week) => [`o${week}`, { ...book.outings.out!, title: `${long} ${week}`, date, place: long }]),
      ),
      dues: Object.fromEntries(
        weeks.map((date, week) => [`u${week}`, due(`${long} ${week}`, { printed: date, source: long })]),
      ),
      plans: {
        all: keptPlan(1, '2026-05-02T08:00:00Z', {
          steps: weeks.flatMap((_, week) =>
            Array.from({ length: 6 }, (_, i) =>
              planned(`s${week}-${i}`, 10_080 * week + 60 * i, 10_080 * week + 60 * i + 45, `d${week}`),
            ),
          ),
          waits: weeks.map((_, week) => ({
            step: `s${week}-0`,
            wait: 'dry',
            start: 10_080 * week + 45,
            finish: 10_080 * week + 285,
            tooCold: false,
          })),
        }),
      },
    };
    const text = written(year);
    for (const line of text.split('\r\n')) expect(octets(line)).toBeLessThanOrEqual(75);
    const read = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));
    expect(read).toHaveLength(52 * 10);
    expect(new Set(read.map(({ uid }) => uid)).size).toBe(read.length);
    const last = read.find(({ summary }) => summary.endsWith('51.5'))!;
    expect(last.description).toBe(`${long}\n${long}`);
    const dueThen = read.find(({ summary }) => summary === `Due: ${long} 51`)!;
    expect(dueThen.description).toBe(`By: ${long}.`);
    expect(dueThen.startDate.toString()).toBe('2027-04-24');
    expect(last.startDate.toJSDate().toISOString()).toBe('2027-04-24T13:00:00.000Z');
  });
});
