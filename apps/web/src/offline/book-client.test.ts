import 'fake-indexeddb/auto';
import { expose } from 'comlink';
import { expect, test } from 'vitest';
import { emptyBook } from '#boat-book';
import { type BookWorker, clientOf } from './book-client.ts';
import { bookLog } from './book-log.ts';
import { keptBooks } from './kept-books.ts';

const boat = {
  name: 'Dabchick',
  keeper: 'Ilka',
  demo: true,
  length_m: 5.6,
  beam_m: 2.2,
  mastHeight_m: 7,
  mastFromBow_m: 2,
  boom_m: 2.4,
  freeboard_m: 0.6,
  draft_m: 0.25,
  draftBoardDown_m: 1.2,
  cabin: true,
  board: 'pivoting',
} as const;

let count = 0;

/** A client and the books it speaks to, over a real message channel as to a Worker. */
function joined(store: string) {
  const { port1, port2 } = new MessageChannel();
  const books = keptBooks({
    openLog: () => bookLog(store),
    tell: (news) => port1.postMessage({ news }),
    nudge: () => {},
    surroundings: () => ({
      session: ++count,
      newId: () => `id${++count}`,
      now: () => Date.UTC(2026, 4, 2, 9),
      timeZone: 'UTC',
    }),
    demoBook: async () => emptyBook('demo', boat),
    compactAfter: 2_000,
    later: (then, wait_ms) => void setTimeout(then, Math.min(wait_ms, 5)),
  });
  expose(books, port1 as never);
  port2.start();
  const client = clientOf(
    () => port2 as unknown as BookWorker,
    async () => null,
  );
  const close = (): void => {
    port1.close();
    port2.close();
  };
  return { client, close };
}

test('what an operation changed is in the snapshot by the time it is answered', async () => {
  const { client, close } = joined(`client ${++count}`);
  expect(client.snapshot()).toMatchObject({ book: null, state: 'opening' });
  await client.startBook('demo');
  for (let i = 0; i < 20; i++) {
    const outcome = await client.run('addJob', { title: `Job ${i}`, consequence: 'comfort' });
    if (outcome.kind !== 'done') throw new Error('refused');
    expect(client.snapshot().book?.jobs[outcome.id!]?.title).toBe(`Job ${i}`);
  }
  await client.undo();
  expect(Object.keys(client.snapshot().book!.jobs)).toHaveLength(19);
  expect(client.snapshot().redo).toBe('Put in a job: Job 19');
  close();
});

test('it stops showing saved at the moment something is asked, and shows it again only when that is stored', async () => {
  const { client, close } = joined(`client ${++count}`);
  await client.startBook('demo');
  await client.flush();
  await until(() => client.snapshot().state === 'saved');
  const asked = client.run('addJob', { title: 'Varnish', consequence: 'comfort' });
  expect(client.snapshot().state).toBe('saving');
  await asked;
  await client.flush();
  await until(() => client.snapshot().state === 'saved');
  // a refusal writes nothing, and the state comes back
  expect(await client.run('addJob', { title: '', consequence: 'comfort' })).toMatchObject({ kind: 'refused' });
  await until(() => client.snapshot().state === 'saved');
  close();
});

test('many changes at once tell the screens only now and then', async () => {
  const { client, close } = joined(`client ${++count}`);
  await client.startBook('demo');
  let told = 0;
  client.subscribe(() => told++);
  const runs = Array.from({ length: 300 }, (_, i) => client.run('writeLog', { kind: 'note', text: `Note ${i}` }));
  await Promise.all(runs);
  expect(Object.keys(client.snapshot().book!.log)).toHaveLength(300);
  expect(told).toBeLessThan(150);
  close();
});

async function until(holds: () => boolean): Promise<void> {
  for (let i = 0; i < 200 && !holds(); i++) await new Promise((done) => setTimeout(done, 5));
  expect(holds()).toBe(true);
}
