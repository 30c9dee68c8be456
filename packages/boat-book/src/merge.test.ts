import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkBook } from './check-book.ts';
import type { OpenBook, StoredChange } from './open-book.ts';
import { openBook } from './open-book.ts';
import { also, begun, done, jobDay, meet, place, step, surroundings, zone } from './testing/devices.ts';

const job = { title: 'Varnish the tiller', consequence: 'comfort' } as const;

describe('two devices that were apart', () => {
  test('edit and edit of one field: both answers are seen, and one choice settles it everywhere', () => {
    const one = begun();
    const id = done(one.run('addJob', job));
    const two = also(one, 'b', -9); // its clock is nine years slow
    done(one.run('changeJob', { id, due: '2026-05-20' }));
    done(two.run('changeJob', { id, due: '2026-05-10' }));
    meet(one, two);
    // until the keeper chooses, the earlier date stands, whatever the clocks said
    expect(one.view().jobs[id]?.due).toBe('2026-05-10');
    expect(one.questions()).toEqual([{ collection: 'jobs', id, field: 'due', answers: ['2026-05-10', '2026-05-20'] }]);
    expect(two.run('chooseAnswer', { collection: 'jobs', id, field: 'due', answer: '2026-06-01' })).toMatchObject({
      kind: 'refused',
      where: 'answer',
    });
    done(two.run('chooseAnswer', { collection: 'jobs', id, field: 'due', answer: '2026-05-20' }));
    meet(one, two);
    expect(one.questions()).toEqual([]);
    expect(one.view().jobs[id]?.due).toBe('2026-05-20');
    two.undo();
    expect(two.questions()).toHaveLength(1);
  });

  test('the same answer on both is no question', () => {
    const one = begun();
    const id = done(one.run('addJob', job));
    const two = also(one, 'b');
    for (const book of [one, two]) done(book.run('changeJob', { id, note: 'two coats' }));
    meet(one, two);
    expect(one.questions()).toEqual([]);
    expect(one.view().jobs[id]?.note).toBe('two coats');
  });

  test('a later answer that had seen the earlier ones replaces them, on a device with a clock years behind', () => {
    const one = begun();
    const id = done(one.run('addJob', job));
    done(one.run('changeJob', { id, note: 'first' }));
    const two = also(one, 'b', -30);
    done(two.run('changeJob', { id, note: 'second' }));
    meet(one, two);
    expect(one.view().jobs[id]?.note).toBe('second');
    expect(one.questions()).toEqual([]);
  });

  test('edits of different fields of one record both stand', () => {
    const one = begun();
    const id = done(one.run('addJob', job));
    const two = also(one, 'b');
    done(one.run('changeJob', { id, note: 'two coats' }));
    done(two.run('changeJob', { id, title: 'Varnish the tiller and its stock' }));
    meet(one, two);
    expect(one.view().jobs[id]).toMatchObject({ note: 'two coats', title: 'Varnish the tiller and its stock' });
    expect(one.questions()).toEqual([]);
  });

  test('remove and edit: the unseen edit brings the record back, marked; keep or remove settles it', () => {
    for (const answer of ['keep', 'remove'] as const) {
      const one = begun();
      const id = done(one.run('addZone', zone));
      done(one.run('changeZone', { id, name: 'Fore deck' }));
      const two = also(one, 'b');
      done(one.run('removeZone', { id }));
      done(two.run('changeZone', { id, inside: true }));
      expect(one.view().zones[id]).toBeUndefined();
      meet(one, two);
      expect(one.view().zones[id]).toEqual({ ...zone, name: 'Fore deck', inside: true });
      expect(one.questions()).toEqual([{ collection: 'zones', id, field: 'removed', answers: ['keep', 'remove'] }]);
      done(two.run('chooseAnswer', { collection: 'zones', id, field: 'removed', answer }));
      meet(one, two);
      expect(one.questions()).toEqual([]);
      expect(one.view().zones[id]).toEqual(
        answer === 'keep' ? { ...zone, name: 'Fore deck', inside: true } : undefined,
      );
    }
  });

  test('remove, with every edit seen, stays removed', () => {
    const one = begun();
    const id = done(one.run('addZone', zone));
    const two = also(one, 'b');
    done(two.run('changeZone', { id, inside: true }));
    meet(one, two);
    done(one.run('removeZone', { id }));
    meet(one, two);
    expect(two.view().zones).toEqual({});
    expect(two.questions()).toEqual([]);
  });

  test('remove and use: what another device came to name is brought back, marked', () => {
    const one = begun();
    const id = done(one.run('addZone', zone));
    const two = also(one, 'b');
    done(one.run('removeZone', { id }));
    const jobId = done(two.run('addJob', { ...job, zone: id }));
    meet(one, two);
    expect(one.view().zones[id]).toEqual(zone);
    expect(one.questions()).toEqual([{ collection: 'zones', id, field: 'removed', answers: ['keep', 'remove'] }]);
    expect(one.run('chooseAnswer', { collection: 'zones', id, field: 'removed', answer: 'remove' })).toMatchObject({
      kind: 'refused',
      wrong: 'this zone is still named by the job ‘Varnish the tiller’',
    });
    done(one.run('changeJob', { id: jobId, zone: null }));
    expect(one.view().zones).toEqual({});
    expect(one.questions()).toEqual([]);
  });

  test('remove and remove: it is gone', () => {
    const one = begun();
    const id = done(one.run('addZone', zone));
    const two = also(one, 'b');
    for (const book of [one, two]) done(book.run('removeZone', { id }));
    meet(one, two);
    expect(one.view().zones).toEqual({});
    expect(one.questions()).toEqual([]);
  });

  test('tick and tick: done, with both times to choose from, and both in the log', () => {
    const one = begun();
    const jobId = done(one.run('addJob', { ...job, steps: [{ ...step, id: 's1' }] }));
    const two = also(one, 'b');
    done(one.run('tickStep', { id: 's1', started: '2026-05-02T10:00:00Z', finished: '2026-05-02T10:30:00Z' }));
    done(two.run('tickStep', { id: 's1', started: '2026-05-02T10:00:00Z', finished: '2026-05-02T10:20:00Z' }));
    meet(one, two);
    expect(one.view().steps.s1?.progress.kind).toBe('done');
    expect(one.questions()).toMatchObject([{ collection: 'steps', id: 's1', field: 'progress' }]);
    expect(one.questions()[0]?.answers).toHaveLength(2);
    expect(Object.values(one.view().log).map((entry) => [entry.job, entry.step, entry.spent_min])).toEqual(
      expect.arrayContaining([
        [jobId, 's1', 30],
        [jobId, 's1', 20],
      ]),
    );
  });

  test('tick and untick apart: done is shown until the keeper chooses', () => {
    const one = begun();
    done(one.run('addJob', { ...job, steps: [{ ...step, id: 's1' }] }));
    done(one.run('startStep', { id: 's1' }));
    const two = also(one, 'b');
    done(one.run('untickStep', { id: 's1' }));
    done(two.run('tickStep', { id: 's1' }));
    meet(one, two);
    expect(one.view().steps.s1?.progress.kind).toBe('done');
    expect(one.questions()[0]?.answers).toHaveLength(2);
  });

  test('plan and plan: both are kept; weather and weather: both are kept, in an order that is the same everywhere', () => {
    const one = begun();
    done(one.run('addPlace', { ...place, id: 'drive' }));
    const two = also(one, 'b', -4);
    const plan = { steps: [], waits: [], changes: [], leftOut: [] };
    const verdict = { kind: 'proved best', finishToo: true } as const;
    done(one.run('keepPlan', { startsAt: '2026-05-02T08:00:00Z', plan, verdict }));
    done(two.run('keepPlan', { startsAt: '2026-05-02T09:00:00Z', plan, verdict }));
    meet(one, two);
    expect(
      Object.values(one.view().plans)
        .map((kept) => kept.startsAt)
        .sort(),
    ).toEqual(['2026-05-02T08:00:00Z', '2026-05-02T09:00:00Z']);
    // the slow clock writes after having seen both: its plan stands last though its instant is the earliest
    const last = done(two.run('keepPlan', { startsAt: '2026-05-02T10:00:00Z', plan, verdict }));
    meet(one, two);
    expect(Object.keys(one.view().plans).at(-1)).toBe(last);
    expect(one.view().plans[last]?.order).toBe(2);
  });

  test('two lead times and two times a job is held to are both seen; the longer and the earlier are gone by', () => {
    const one = begun();
    done(one.run('addPlace', { ...place, id: 'drive' }));
    const day = done(one.run('addJobDay', jobDay));
    const id = done(one.run('addJob', job));
    const store = done(
      one.run('addStore', { name: 'Hose', keptAt: '', onHand: false, expected: null, lead_days: null, note: '' }),
    );
    const two = also(one, 'b');
    done(one.run('holdJob', { job: id, day, at: '14:00' }));
    done(two.run('holdJob', { job: id, day, at: '09:30' }));
    done(one.run('changeStore', { id: store, lead_days: 7 }));
    done(two.run('changeStore', { id: store, lead_days: 10 }));
    meet(one, two);
    expect(one.view().jobs[id]).toMatchObject({ heldTo: day, heldAt: '09:30' });
    expect(one.view().stores[store]?.lead_days).toBe(10);
    expect(one.questions()).toEqual([
      { collection: 'jobs', id, field: 'heldAt', answers: ['09:30', '14:00'] },
      { collection: 'stores', id: store, field: 'lead_days', answers: [10, 7] },
    ]);
  });

  test('a job day taken out while a job is held to it elsewhere comes back, marked', () => {
    const one = begun();
    done(one.run('addPlace', { ...place, id: 'drive' }));
    const dayId = done(one.run('addJobDay', jobDay));
    const id = done(one.run('addJob', job));
    const two = also(one, 'b');
    done(one.run('removeJobDay', { id: dayId }));
    done(two.run('holdJob', { job: id, day: dayId }));
    meet(one, two);
    expect(one.view().jobs[id]?.heldTo).toBe(dayId);
    expect(one.view().jobDays[dayId]).toEqual(jobDay);
    expect(one.questions()).toMatchObject([{ collection: 'jobDays', field: 'removed' }]);
  });
});

type Act = (book: OpenBook, n: number) => void;

/** What a device may do, each in whatever state it finds the book: refusals are part of it. */
const acts: readonly Act[] = [
  (book, n) => book.run('addJob', { ...job, title: `Job ${n}`, steps: [step, { ...step, title: `Step ${n}` }] }),
  (book, n) => book.run('changeJob', { id: pick(book.view().jobs, n), due: `2026-06-${10 + (n % 20)}`, note: `${n}` }),
  (book, n) => book.run('finishJob', { id: pick(book.view().jobs, n) }),
  (book, n) => book.run('dropJob', { id: pick(book.view().jobs, n) }),
  (book, n) => book.run('tickStep', { id: pick(book.view().steps, n), spent_min: n % 90 }),
  (book, n) => book.run('untickStep', { id: pick(book.view().steps, n) }),
  (book, n) => book.run('removeStep', { id: pick(book.view().steps, n) }),
  (book, n) => book.run('moveStep', { id: pick(book.view().steps, n), to: n % 2 }),
  (book, n) => book.run('addZone', { ...zone, name: `Zone ${n}` }),
  (book, n) => book.run('removeZone', { id: pick(book.view().zones, n) }),
  (book, n) => book.run('changeZone', { id: pick(book.view().zones, n), room: 1 + (n % 5) }),
  (book, n) => book.run('changeJob', { id: pick(book.view().jobs, n), zone: pick(book.view().zones, n) }),
  (book, n) => book.run('writeLog', { kind: 'note', text: `Note ${n}` }),
  (book) => book.undo(),
  (book) => book.redo(),
  (book) => {
    const [question] = book.questions();
    if (question) book.run('chooseAnswer', { ...question, answer: question.answers[0]! });
  },
];

const pick = (records: Readonly<Record<string, unknown>>, n: number): string => {
  const ids = Object.keys(records).sort();
  return ids[n % Math.max(1, ids.length)] ?? 'none';
};

test('any order and repetition of the changes of three devices ends in the same book', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ device: fc.nat(2), act: fc.nat(acts.length - 1), n: fc.nat(99), meet: fc.nat(9) }), {
        maxLength: 40,
      }),
      fc.array(fc.nat(), { maxLength: 60 }),
      (moves, shuffle) => {
        const first = begun();
        const beginning = first.states();
        const devices = [first, also(first, 'b', 3), also(first, 'c', -20)];
        const changes: StoredChange[] = [];
        for (const device of devices) device.onChange((change) => change !== null && changes.push(change));
        for (const move of moves) {
          acts[move.act]!(devices[move.device]!, move.n);
          if (move.meet === 0) meet(...devices);
        }
        meet(...devices);
        // a fourth device hears the same in another order, some of it twice
        const order = [...changes.keys(), ...shuffle.map((at) => (changes.length === 0 ? 0 : at % changes.length))]
          .map((at, i) => ({ at, by: (shuffle[i % Math.max(1, shuffle.length)] ?? 0) * 7919 + i * 31 }))
          .sort((a, b) => (a.by % 1009) - (b.by % 1009));
        const fourth = openBook([beginning], surroundings('d'));
        for (const { at } of order) if (changes[at]) fourth.takeIn(changes[at]);
        expect(fourth.view()).toEqual(first.view());
        expect(fourth.questions()).toEqual(first.questions());
        // everything named is there, whatever came together
        const { jobs, steps, zones } = first.view();
        for (const one of Object.values(jobs)) expect(one.zone === null || zones[one.zone]).toBeTruthy();
        for (const one of Object.values(steps)) expect(jobs[one.job]).toBeTruthy();
        expect(first.faults()).toEqual([]);
        // and the book is sound, but for dates that devices with clocks years apart put before one another
        expect(checkBook(first.view()).filter(({ wrong }) => !/before it was put in/.test(wrong))).toEqual([]);
      },
    ),
    { numRuns: 60 },
  );
});
