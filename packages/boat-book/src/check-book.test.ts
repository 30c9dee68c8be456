import { expect, test } from 'vitest';
import { checkBook } from './check-book.ts';
import type { Book } from './records.ts';
import { begun, done, jobDay, place, step, zone } from './testing/devices.ts';

/** A sound book with a job of two steps and one job day of 9:00 to 17:00, 20 minutes of each end for setting out. */
function soundBook(): Book {
  const book = begun();
  done(book.run('addPlace', { ...place, id: 'drive' }));
  done(book.run('addZone', { ...zone, id: 'foredeck' }));
  done(book.run('addTool', { name: 'Clamp', count: 2, keptAt: 'Shed', id: 'clamp' }));
  done(book.run('addJobDay', { ...jobDay, id: 'd1', breaks: [{ from: '13:00', minutes: 30 }] }));
  const steps = [
    { ...step, id: 's1' },
    { ...step, title: 'Clean', id: 's2' },
  ];
  done(book.run('addJob', { title: 'Rebed', consequence: 'worsens', id: 'j1', zone: 'foredeck', steps }));
  done(book.run('addJob', { title: 'Paint', consequence: 'comfort', id: 'j2' }));
  return book.view();
}

type Change = (book: Record<string, Record<string, Record<string, unknown>>>) => void;

/** What is said of the sound book after one change. */
function saidOf(change: Change): string[] {
  const book = structuredClone(soundBook()) as unknown as Record<string, Record<string, Record<string, unknown>>>;
  change(book);
  return checkBook(book).map(({ where, wrong, right }) => `${where}: ${wrong}; ${right}`);
}

test('a sound book has no faults', () => {
  expect(checkBook(soundBook())).toEqual([]);
});

test('what is no book at all is named', () => {
  for (const value of [null, 7, 'book', [], {}]) expect(checkBook(value).length).toBeGreaterThan(0);
});

test.each<[string, Change, RegExp]>([
  ['a job in a zone that is not there', (b) => (b.jobs!.j1!.zone = 'bow'), /jobs › j1 › zone: it names the zone ‘bow’/],
  [
    'jobs in a ring',
    (b) => {
      b.jobs!.j1!.afterJobs = ['j2'];
      b.jobs!.j2!.afterJobs = ['j1'];
    },
    /ring: ‘(Rebed|Paint)’, then ‘(Rebed|Paint)’/,
  ],
  [
    'steps in a ring',
    (b) => {
      b.steps!.s1!.follows = [
        { step: 's2', wait: null, least_min: 0, greatest_min: null, past: { kind: 'forbidden' } },
      ];
    },
    /steps › follows: .*ring: .*‘Clean’/,
  ],
  // 9:20 to 13:00 is 220 minutes; 13:30 to 16:40 is 190
  [
    'a step longer than any stretch of a day',
    (b) => (b.steps!.s1!.minutes = { low: 221, likely: 221, high: 221 }),
    /takes 221 minutes, and no job day has more than 220/,
  ],
  [
    'more of a tool than there are',
    (b) => (b.steps!.s1!.tools = [{ tool: 'clamp', count: 3 }]),
    /needs 3 of ‘Clamp’, and there are 2/,
  ],
  ['more hands than find room', (b) => (b.steps!.s1!.hands = 2), /needs 2 hands in ‘Foredeck’, where 1 find room/],
  [
    'a date before the first job day',
    (b) => (b.jobs!.j1!.due = '2026-05-08'),
    /must be done by 2026-05-08, and the first job day is 2026-05-09/,
  ],
  [
    'a date before it was put in',
    (b) => (b.jobs!.j1!.due = '2026-05-01'),
    /was due on 2026-05-01, before it was put in on 2026-05-02/,
  ],
  [
    // 410 minutes of work that day: 480 less 20, 20 and 30; two steps of 206 make 412
    'more work than the days until then',
    (b) => {
      b.jobs!.j1!.due = '2026-05-09';
      for (const id of ['s1', 's2']) b.steps![id]!.minutes = { low: 206, likely: 206, high: 206 };
    },
    /takes the keeper 412 minutes, and the job days until then have 410/,
  ],
  [
    // from 9:00 to midnight are 900 minutes; 20, a soak of 880, and 20 make 920
    'a wait that lasts past the date',
    (b) => {
      b.jobs!.j1!.due = '2026-05-09';
      const law = { kind: 'set time', minutes: 880, from: 'the tin' };
      b.steps!.s1!.waits = [{ id: 'w', title: 'Soak', law, needs: {}, setUps: [], still: [], wet: false }];
    },
    /take 920 minutes one after the other, and there are 900/,
  ],
  [
    'job days that overlap',
    (b) => (b.jobDays!.d2 = { ...b.jobDays!.d1!, breaks: [], from: '16:00', to: '18:00' }),
    /begins at 16:00, while another job day lasts until 17:00/,
  ],
  [
    'a latest time before the earliest',
    (b) =>
      (b.steps!.s2!.follows = [
        { step: 's1', wait: null, least_min: 60, greatest_min: 30, past: { kind: 'forbidden' } },
      ]),
    /no sooner than 60 minutes and no later than 30/,
  ],
  [
    'minutes the wrong way round',
    (b) => (b.steps!.s1!.minutes = { low: 9, likely: 5, high: 9 }),
    /steps › s1 › minutes: .*low at most likely/,
  ],
])('%s', (_, change, words) => {
  const said = saidOf(change);
  expect(said.join('\n')).toMatch(words);
  expect(said).toHaveLength(1);
});

test('a jury rig past its trust is no fault of the book', () => {
  expect(
    saidOf((book) => {
      book.juryRigs!.r1 = {
        title: 'Lashing',
        job: 'j1',
        zone: null,
        reason: 'It weeps',
        made: '2020-05-01',
        trustedUntil: '2020-06-01',
        wind_max_kn: 14,
        sails_max: null,
        notOnRoad: true,
        state: 'standing',
      };
    }),
  ).toEqual([]);
});
