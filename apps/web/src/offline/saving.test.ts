import { expect, test } from 'vitest';
import type { StoredChange } from '#boat-book';
import { saving } from './saving.ts';

const change = (n: number): StoredChange => ({ boat: null, work: new Uint8Array([n]), keys: [] });
const soon = () => new Promise((done) => setTimeout(done, 0));

/** A store that takes changes until it is told to refuse, and pauses that end when they are told to. */
function device() {
  const stored: number[] = [];
  const pauses: { readonly then: () => void; readonly wait_ms: number }[] = [];
  let refusing: Error | null = null;
  const kept = saving(
    async (changes) => {
      await soon();
      if (refusing) throw refusing;
      stored.push(...changes.map((one) => one.work![0]!));
    },
    () => {},
    (then, wait_ms) => pauses.push({ then, wait_ms }),
  );
  return {
    kept,
    stored,
    pauses,
    refuse(error: Error | null) {
      refusing = error;
    },
  };
}

test('nothing shows as saved before it is stored', async () => {
  const { kept, stored } = device();
  expect(kept.state().state).toBe('saved');
  for (let n = 0; n < 5; n++) kept.add(change(n));
  expect(kept.state().state).toBe('saving');
  await kept.flush();
  expect(stored).toEqual([0, 1, 2, 3, 4]);
  expect(kept.state().state).toBe('saved');
});

test('what a full device refuses is kept, said, and stored in order once there is room', async () => {
  const { kept, stored, pauses, refuse } = device();
  kept.add(change(1));
  await kept.flush();
  refuse(new DOMException('full', 'QuotaExceededError'));
  kept.add(change(2));
  await kept.flush();
  kept.add(change(3));
  await kept.flush();
  expect(kept.state()).toMatchObject({ state: 'not saved', because: expect.stringMatching(/no room left/) });
  expect(kept.waiting()).toHaveLength(2);
  // tries come further apart, and never end
  for (let i = 0; i < 5; i++) {
    pauses.shift()!.then();
    await kept.flush();
  }
  expect(kept.waiting()).toHaveLength(2);
  expect(pauses.map((pause) => pause.wait_ms)).toEqual([30_000]);
  refuse(null);
  pauses.shift()!.then();
  await kept.flush();
  expect(stored).toEqual([1, 2, 3]);
  expect(kept.state()).toEqual({ state: 'saved', because: null });
});
