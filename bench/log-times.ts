/** The log of a big book: the search built in pieces, asked, and kept up; a fitting's story and the costs of all years. */
import { beginBook, type RecordPatch } from '#boat-book';
import { costsOf, fittingStory, logSearch } from '#log';
import { bigBook } from './big-book.ts';

export const logTimeHead = ['| what | median | worst | budget | kept |', '| --- | --- | --- | --- | --- |'];

/** Taken in at once, between other answers of the Worker. */
const piece = 100;
const asked = [
  'what was this bedded with',
  'butyl tape',
  'rebed weeping window starboard',
  'poly',
  'greased rudder',
  'what did the epoxy cost',
  'manual of the hinge',
  'wet at the after bolt',
  'veneer on the moon',
  'dril out cleet',
];

/** A row for each thing: median and worst of how long it took. [ms] */
export function logTimes(): string[] {
  const rows: string[] = [];
  const row = (what: string, took: number[], budget_ms: number) => {
    took.sort((a, b) => a - b);
    const median = took[took.length >> 1]!;
    rows.push(
      `| ${what} | ${median.toFixed(2)} ms | ${took.at(-1)!.toFixed(2)} ms | ${budget_ms} ms | ${median <= budget_ms ? 'yes' : 'NO'} |`,
    );
  };
  const timed = (work: () => void): number => {
    const start = performance.now();
    work();
    return performance.now() - start;
  };
  const { book } = bigBook(1);
  const pieces: number[] = [];
  const whole = Array.from({ length: 3 }, () =>
    timed(() => {
      const search = logSearch(book);
      for (let all = false; !all; )
        pieces.push(
          timed(() => {
            all = search.build(piece);
          }),
        );
    }),
  );
  row('search built over all of it', whole, 2_000);
  row(`of that, one piece of ${piece}`, pieces, 20);
  const search = logSearch(book);
  while (!search.build(1_000));
  const answers = (more: object) =>
    asked.flatMap((words) => [0, 1, 2].map(() => timed(() => void search.find({ words, ...more }))));
  row('a search by words', answers({}), 50);
  row('the same on one fitting', answers({ fitting: 'fitting7' }), 50);
  row('the same in one zone and year', answers({ zone: 'zone3', from: '2022-01-01', to: '2022-12-31' }), 50);

  let ids = 0;
  let patches: readonly RecordPatch[] = [];
  const open = beginBook(book, 'birth', {
    session: 7,
    newId: () => `new${++ids}`,
    now: () => Date.UTC(2026, 4, 2) + ids * 1_000,
    timeZone: 'UTC',
  });
  open.onChange((_, told) => {
    patches = told;
  });
  const kept = (name: string, run: (n: number) => void) =>
    row(
      name,
      Array.from({ length: 30 }, (_, n) => {
        run(n);
        const view = open.view();
        return timed(() => search.changed(view, patches));
      }),
      20,
    );
  kept('kept up with a note', (n) => void open.run('writeLog', { kind: 'note', text: `Looked at it again ${n}` }));
  kept(
    'kept up with a fitting called otherwise',
    (n) => void open.run('changeFitting', { id: `fitting${n}`, name: `Eye ${n}` }),
  );
  row(
    'a fitting’s whole story',
    Array.from({ length: 30 }, (_, n) => timed(() => void fittingStory(book, `fitting${n}`))),
    50,
  );
  row(
    'costs of all years',
    Array.from({ length: 10 }, () => timed(() => void costsOf(book, 'Europe/London'))),
    50,
  );
  return rows;
}
