import { expect, test } from 'vitest';
import { standingLog } from './log-entry.ts';
import { openBook } from './open-book.ts';
import { also, begun, done, jobDay, meet, place, step, surroundings, zone } from './testing/devices.ts';

const plate = { title: 'Rebed the plate', consequence: 'worsens' } as const;

test('a job goes in with its steps, and undo and redo take both out and in', () => {
  const book = begun();
  const job = done(book.run('addJob', { ...plate, steps: [step, { ...step, title: 'Clean' }] }));
  const { jobs, steps } = book.view();
  expect(jobs[job]).toMatchObject({ title: 'Rebed the plate', state: 'open', opened: '2026-05-02' });
  expect(Object.values(steps).map((s) => [s.job, s.order, s.title])).toEqual([
    [job, 0, 'Take off the plate'],
    [job, 1, 'Clean'],
  ]);
  expect(book.undoTitle()).toBe('Put in a job: Rebed the plate');
  expect(book.redoTitle()).toBeNull();
  book.undo();
  expect(book.view().jobs).toEqual({});
  expect(book.view().steps).toEqual({});
  book.redo();
  expect(book.view().jobs[job]?.title).toBe('Rebed the plate');
  expect(Object.keys(book.view().steps)).toHaveLength(2);
});

test('what did not change is the same object in the next view', () => {
  const book = begun();
  const job = done(book.run('addJob', plate));
  done(book.run('addZone', zone));
  const before = book.view();
  done(book.run('writeLog', { kind: 'note', text: 'Rain at noon' }));
  const after = book.view();
  expect(after).not.toBe(before);
  expect(after.jobs).toBe(before.jobs);
  expect(after.jobs[job]).toBe(before.jobs[job]);
  expect(after.zones).toBe(before.zones);
});

test('undo takes back, in order, every field that an operation changed', () => {
  const book = begun();
  const job = done(book.run('addJob', plate));
  done(book.run('changeJob', { id: job, note: 'one', due: '2026-06-01' }));
  done(book.run('changeJob', { id: job, note: 'two' }));
  expect(book.undo()).toEqual({ title: 'Change a job: Rebed the plate', left: [] });
  expect(book.view().jobs[job]).toMatchObject({ note: 'one', due: '2026-06-01' });
  book.undo();
  expect(book.view().jobs[job]).toMatchObject({ note: '', due: null });
  book.redo();
  book.redo();
  expect(book.view().jobs[job]).toMatchObject({ note: 'two', due: '2026-06-01' });
});

test('undo leaves alone what another device changed since, and says so', () => {
  const one = begun();
  const job = done(one.run('addJob', plate));
  const two = also(one, 'b');
  done(one.run('changeJob', { id: job, note: 'mine', due: '2026-06-01' }));
  meet(one, two);
  done(two.run('changeJob', { id: job, note: 'theirs' }));
  meet(one, two);
  expect(one.undo()).toEqual({ title: 'Change a job: Rebed the plate', left: ['job ‘Rebed the plate’'] });
  expect(one.view().jobs[job]).toMatchObject({ note: 'theirs', due: null });
  // putting the job in cannot be undone either: it is not as this device left it
  expect(one.undo().left).toHaveLength(1);
  expect(one.view().jobs[job]?.note).toBe('theirs');
  expect(two.undoTitle()).toBe('Change a job: Rebed the plate');
  two.undo();
  meet(one, two);
  expect(one.view().jobs[job]?.note).toBe('mine');
});

test('undo never touches what only another device did', () => {
  const one = begun();
  const two = also(one, 'b');
  done(two.run('addJob', plate));
  meet(one, two);
  expect(one.undoTitle()).toBeNull();
  expect(one.undo()).toEqual({ title: null, left: [] });
  expect(Object.keys(one.view().jobs)).toHaveLength(1);
});

test('what is in use is not taken out by undo', () => {
  const one = begun();
  const id = done(one.run('addZone', zone));
  const two = also(one, 'b');
  done(two.run('addJob', { ...plate, zone: id }));
  meet(one, two);
  expect(one.undo().left).toEqual(['zone ‘Foredeck’']);
  expect(one.view().zones[id]).toEqual(zone);
});

test('ticking a step writes the log, and undo writes beside it, never over it', () => {
  const book = begun();
  done(book.run('addJob', { ...plate, steps: [{ ...step, id: 's1' }] }));
  done(book.run('startStep', { id: 's1', started: '2026-05-02T10:00:00Z' }));
  expect(book.view().steps.s1?.progress).toEqual({
    kind: 'under way',
    started: '2026-05-02T10:00:00Z',
    expected: '2026-05-02T10:20:00.000Z', // 20 min, the likely time, after the start
    hands: ['keeper'],
  });
  done(book.run('stepTookLonger', { id: 's1', expected: '2026-05-02T11:00:00Z' }));
  done(book.run('tickStep', { id: 's1', finished: '2026-05-02T11:05:00Z' }));
  expect(Object.values(book.view().log)).toMatchObject([
    { kind: 'step done', step: 's1', spent_min: 65, text: 'Take off the plate', order: 1 },
  ]);
  book.undo();
  expect(book.view().steps.s1?.progress.kind).toBe('under way');
  expect(Object.values(book.view().log).map((entry) => [entry.kind, entry.text])).toEqual([
    ['step done', 'Take off the plate'],
    ['taken back', 'Taken back: Take off the plate'],
  ]);
  const [ticked, back] = Object.keys(book.view().log);
  expect(book.view().log[back!]?.corrects).toBe(ticked);
  book.redo();
  expect([...standingLog(book.view().log).values()].map((entry) => entry.text)).toEqual(['Take off the plate']);
  book.undo();
  expect(standingLog(book.view().log).size).toBe(0);
});

test('minutes spent are not made up: a step ticked without times has none', () => {
  const book = begun();
  done(book.run('addJob', { ...plate, steps: [{ ...step, id: 's1' }] }));
  done(book.run('tickStep', { id: 's1', finished: '2026-05-02T11:05:00Z' }));
  expect(Object.values(book.view().log)[0]?.spent_min).toBeNull();
});

test('steps move to any place in their job', () => {
  const book = begun();
  const steps = ['s0', 's1', 's2', 's3'].map((id) => ({ ...step, id }));
  done(book.run('addJob', { ...plate, steps }));
  const order = () =>
    Object.entries(book.view().steps)
      .sort(([, a], [, b]) => a.order - b.order)
      .map(([id]) => id);
  done(book.run('moveStep', { id: 's3', to: 0 }));
  expect(order()).toEqual(['s3', 's0', 's1', 's2']);
  done(book.run('moveStep', { id: 's3', to: 2 }));
  expect(order()).toEqual(['s0', 's1', 's3', 's2']);
  done(book.run('moveStep', { id: 's0', to: 3 }));
  expect(order()).toEqual(['s1', 's3', 's2', 's0']);
  // halving runs out of figures after some 50 moves; the order must still come out right
  for (let i = 0; i < 120; i++) done(book.run('moveStep', { id: order()[2]!, to: 1 }));
  expect(new Set(order()).size).toBe(4);
  expect(order()[0]).toBe('s1');
});

test('taking a job day out frees the jobs that were held to it, in one undo', () => {
  const book = begun();
  done(book.run('addPlace', { ...place, id: 'drive' }));
  const day = done(book.run('addJobDay', jobDay));
  const job = done(book.run('addJob', { ...plate, heldTo: day }));
  done(book.run('removeJobDay', { id: day }));
  expect(book.view().jobs[job]?.heldTo).toBeNull();
  book.undo();
  expect(book.view().jobs[job]?.heldTo).toBe(day);
  expect(book.view().jobDays[day]).toEqual(jobDay);
});

test('a job is held to a day, to a time on it, and let go', () => {
  const book = begun();
  done(book.run('addPlace', { ...place, id: 'drive' }));
  const day = done(book.run('addJobDay', jobDay));
  const short = done(book.run('addJobDay', { ...jobDay, date: '2026-05-10', from: '14:00', to: '17:00' }));
  const job = done(book.run('addJob', plate));
  const hold = () => ({ to: book.view().jobs[job]?.heldTo, at: book.view().jobs[job]?.heldAt });
  done(book.run('holdJob', { job, day, at: '10:05' }));
  expect(hold()).toEqual({ to: day, at: '10:05' });
  done(book.run('holdJob', { job, day }));
  expect(hold()).toEqual({ to: day, at: null });
  done(book.run('holdJob', { job, day, at: '16:00' }));
  // neither may leave a time that means nothing
  expect(book.run('holdJob', { job, day: short, at: '10:00' })).toMatchObject({
    kind: 'refused',
    where: 'heldAt',
    right: 'from 14:00 and before 17:00',
  });
  expect(book.run('changeJob', { id: job, heldAt: '17:00' })).toMatchObject({ kind: 'refused', where: 'heldAt' });
  done(book.run('changeJob', { id: job, heldTo: null }));
  expect(hold()).toEqual({ to: null, at: null });
  expect(book.run('changeJob', { id: job, heldAt: '10:00' })).toMatchObject({ kind: 'refused', where: 'heldAt' });
  book.undo();
  expect(hold()).toEqual({ to: day, at: '16:00' });
  done(book.run('removeJobDay', { id: day }));
  expect(hold()).toEqual({ to: null, at: null });
});

test('a state with damage in it opens; what cannot be read is left aside and named, and all that is named is there', () => {
  const book = begun();
  const zoneId = done(book.run('addZone', zone));
  const fitting = done(book.run('addFitting', { name: 'Plate', zone: zoneId, size: '', beddedWith: '', note: '' }));
  const job = done(
    book.run('addJob', { ...plate, zone: zoneId, fitting, steps: [{ ...step, id: 's1', zone: zoneId }] }),
  );
  // a device with only part of the history: the zone never arrived
  const lost = begun();
  const there = openBook([lost.states()], surroundings('z'));
  expect(
    there.mend([
      {
        boat: null,
        // an update of a session that this device never heard the beginning of
        work: book.states().work,
        keys: [
          { collection: 'fittings', key: fitting, value: book.view().fittings[fitting] as never },
          { collection: 'jobs', key: job, value: book.view().jobs[job] as never },
          { collection: 'steps', key: 's1', value: book.view().steps.s1 as never },
          { collection: 'jobs', key: `${job}/due@x`, value: ['soon'] },
          { collection: 'jobs', key: 'j9', value: 'nonsense' },
        ],
      },
    ]),
  ).toBe(5);
  const view = there.view();
  expect(view.fittings).toEqual({});
  expect(view.jobs).toEqual({ [job]: { ...book.view().jobs[job], zone: null, fitting: null } });
  expect(view.steps.s1?.zone).toBeNull();
  expect(there.faults()).toHaveLength(6);
  // it can be worked on, and once the zone arrives everything is as it was
  done(there.run('changeJob', { id: job, note: 'still here' }));
  there.mend([
    { boat: book.states().boat, work: null, keys: [{ collection: 'zones', key: zoneId, value: zone as never }] },
  ]);
  expect(there.view().jobs[job]).toMatchObject({ zone: zoneId, fitting, note: 'still here' });
});

test('of many plans the last twelve are kept', () => {
  const book = begun();
  const plan = { steps: [], waits: [], changes: [], leftOut: [] };
  const made = Array.from({ length: 15 }, (_, i) =>
    done(
      book.run('keepPlan', {
        startsAt: `2026-05-02T08:${String(i + 10)}:00Z`,
        plan,
        verdict: { kind: 'proved best', finishToo: true },
      }),
    ),
  );
  expect(Object.keys(book.view().plans)).toEqual(made.slice(3));
});
