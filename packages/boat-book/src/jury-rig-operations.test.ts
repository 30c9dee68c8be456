import { expect, test } from 'vitest';
import { also, begun, done, meet } from './testing/devices.ts';

const lashing = {
  title: 'Gate lashed with cord',
  job: null,
  zone: null,
  reason: 'The latch is sheared.',
  made: '2026-05-01',
  trustedUntil: '2026-05-15',
  wind_max_kn: 14,
  sails_max: null,
  notOnRoad: true,
} as const;
const trusts = (book: ReturnType<typeof begun>) => Object.values(book.view().rigTrusts);

test('what it is trusted to is kept from the first, and each new date with its reason; why it is there stands', () => {
  const book = begun();
  const id = done(book.run('addJuryRig', { ...lashing, trustedBecause: 'as is usual for a lashing' }));
  expect(book.run('trustJuryRig', { id, trustedUntil: '2026-06-01', reason: ' ' })).toMatchObject({
    kind: 'refused',
    where: 'reason',
  });
  done(book.run('trustJuryRig', { id, trustedUntil: '2026-06-01', wind_max_kn: 10, reason: 'No chafe after a sail' }));
  expect(book.view().juryRigs[id]).toMatchObject({
    reason: lashing.reason,
    trustedUntil: '2026-06-01',
    wind_max_kn: 10,
    notOnRoad: true,
  });
  expect(trusts(book)).toMatchObject([
    { rig: id, trustedUntil: '2026-05-15', wind_max_kn: 14, reason: 'as is usual for a lashing' },
    { rig: id, trustedUntil: '2026-06-01', wind_max_kn: 10, reason: 'No chafe after a sail' },
  ]);
  book.undo();
  expect(book.view().juryRigs[id]?.trustedUntil).toBe('2026-05-15');
  expect(trusts(book)).toHaveLength(1);
});

test('its limits are not changed beside its date: that too wants a reason', () => {
  const book = begun();
  const id = done(book.run('addJuryRig', lashing));
  const widened = { id, wind_max_kn: 30 } as { id: string };
  expect(book.run('changeJuryRig', widened)).toMatchObject({
    kind: 'refused',
    wrong: expect.stringContaining('wind_max_kn'),
  });
  done(book.run('changeJuryRig', { id, title: 'Gate tied up' }));
  expect(book.run('changeJuryRig', { id, made: '2026-05-20' })).toMatchObject({ kind: 'refused' });
});

test('two who look at it apart are both heard: both reasons are kept, and one date is to be chosen', () => {
  const mine = begun();
  const id = done(mine.run('addJuryRig', lashing));
  const theirs = also(mine, 'them');
  done(mine.run('trustJuryRig', { id, trustedUntil: '2026-06-01', reason: 'Holds well' }));
  done(theirs.run('trustJuryRig', { id, trustedUntil: '2026-05-18', reason: 'One turn is chafed' }));
  meet(mine, theirs);
  expect(mine.questions()).toMatchObject([{ collection: 'juryRigs', id, field: 'trustedUntil' }]);
  expect(trusts(mine).map(({ reason }) => reason)).toEqual(
    expect.arrayContaining(['Holds well', 'One turn is chafed']),
  );
  expect(theirs.view().rigTrusts).toEqual(mine.view().rigTrusts);
});

test('it is out with a reason told, or with the proof of its job, and with nothing less', () => {
  const book = begun();
  const job = done(book.run('addJob', { title: 'Fit a new latch', consequence: 'danger' }));
  const id = done(book.run('addJuryRig', { ...lashing, job }));
  const refused = (wrong: string) =>
    expect(book.run('removeJuryRig', { id })).toMatchObject({
      kind: 'refused',
      where: 'because',
      wrong: expect.stringContaining(wrong),
    });
  refused('is not done: ‘Fit a new latch’');
  done(book.run('finishJob', { id: job }));
  refused('closed without proof');
  book.undo();
  done(book.run('finishJob', { id: job, proof: { by: 'pull', found: '120 N for 2 minutes' } }));
  done(book.run('removeJuryRig', { id }));
  expect(book.view().juryRigs[id]?.state).toBe('removed');
  expect(Object.values(book.view().log).at(-1)?.text).toBe(
    'Gate lashed with cord: out, because its job is done. Proved by pull: 120 N for 2 minutes',
  );
  expect(book.run('trustJuryRig', { id, trustedUntil: '2026-06-01', reason: 'x' })).toMatchObject({ kind: 'refused' });
  // the proof taken back speaks for it no more
  book.undo();
  book.undo();
  refused('is not done');
  done(book.run('removeJuryRig', { id, because: 'The gate is sold; nothing hangs there' }));
});

test('a job done with its proof takes its jury rigs out with it, and undo brings both back', () => {
  const book = begun();
  const job = done(book.run('addJob', { title: 'Fit a new latch', consequence: 'danger' }));
  const id = done(book.run('addJuryRig', { ...lashing, job }));
  const other = done(book.run('addJuryRig', lashing));
  const proof = { by: 'pull', found: '120 N for 2 minutes' } as const;
  expect(book.run('finishJob', { id: job, proof, rigsOut: [other] })).toMatchObject({ kind: 'refused' });
  expect(book.run('finishJob', { id: job, notProved: 'too dark', rigsOut: [id] })).toMatchObject({ kind: 'refused' });
  done(book.run('finishJob', { id: job, proof, rigsOut: [id] }));
  expect(book.view().juryRigs[id]?.state).toBe('removed');
  book.undo();
  expect(book.view().juryRigs[id]?.state).toBe('standing');
  expect(book.view().jobs[job]?.state).toBe('open');
});
