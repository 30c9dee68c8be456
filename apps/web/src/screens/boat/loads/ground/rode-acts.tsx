/** What follows from a rode in one tap: rope to get, and its pull as a load case of its load path. */
import { memo, useState } from 'react';
import type { Book, RodeRecord } from '#boat-book';
import { type GroundTold, storeToGet, thingInStores, thingInWords } from '#reckoning';
import { RefusalLine } from '../../../../parts/form.tsx';
import { useRun } from '../../../../parts/use-run.ts';
import { address } from '../../../../shell/route.ts';

/** The case that this page keeps on a path: put anew, it takes the place of the one before. */
const caseId = 'ground-tackle';

export const RodeActs = memo(function RodeActs({
  book,
  rode,
  told,
}: {
  readonly book: Book;
  readonly rode: RodeRecord;
  readonly told: GroundTold;
}) {
  const { run, refusal } = useRun();
  const { toGet, loadCase } = told;
  const there = toGet === null ? null : thingInStores(book, toGet);
  const onList = there !== null && book.stores[there]?.onHand === false;
  const said = toGet === null ? '' : thingInWords(toGet).toLowerCase();
  return (
    <>
      <RefusalLine refusal={refusal} />
      {toGet !== null &&
        (onList ? (
          <a className="button words" href={address('stores')}>
            To get: {said}
          </a>
        ) : (
          <button type="button" onClick={() => void run('addStore', storeToGet(toGet))}>
            To get: {said}
          </button>
        ))}
      {rode.path !== null && book.loadPaths[rode.path] && (
        <OnPath book={book} path={rode.path} loadCase={loadCase} run={run} />
      )}
    </>
  );
});

function OnPath({
  book,
  path,
  loadCase,
  run,
}: {
  readonly book: Book;
  readonly path: string;
  readonly loadCase: GroundTold['loadCase'];
  readonly run: ReturnType<typeof useRun>['run'];
}) {
  const [put, setPut] = useState(false);
  const { name, cases } = book.loadPaths[path]!;
  const there = cases.find(({ id }) => id === caseId);
  const isSame = there?.force_N === loadCase.force_N && there.wind_kn === loadCase.wind_kn;
  if (isSame)
    return (
      <span role={put ? 'status' : undefined}>
        <a className="button words" href={address('boat', 'loads', 'path', path)}>
          Its every part in this load: {name}
        </a>
      </span>
    );
  return (
    <button
      type="button"
      onClick={async () => {
        const others = cases.filter(({ id }) => id !== caseId);
        const outcome = await run('changeLoadPath', { id: path, cases: [...others, { ...loadCase, id: caseId }] });
        setPut(outcome.kind === 'done');
      }}
    >
      Put this load on its load path
    </button>
  );
}
