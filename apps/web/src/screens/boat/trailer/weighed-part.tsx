/** The ball on a bathroom scale: what it said of the table, and the way to weigh it or to put the table right. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import type { TrailerTold } from '#reckoning';
import { RefusalLine } from '../../../parts/form.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { useRun } from '../../../parts/use-run.ts';

const WeighingSheet = onDemand(() => import('./weighing-sheet.tsx'));

export function WeighedPart({ book, id, told }: { readonly book: Book; readonly id: Id; readonly told: TrailerTold }) {
  const [weighing, setWeighing] = useState(false);
  const { run, refusal } = useRun();
  const { weighed, putRight, load } = told;
  return (
    <section aria-labelledby="trailer-weighed">
      <h2 id="trailer-weighed">The ball weighed</h2>
      {weighed.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {weighed.length === 0 && (
        <p>A plank on a block and a bathroom scale say what really presses on the ball, and narrow its band at once.</p>
      )}
      {putRight && <p>{putRight.words}</p>}
      <RefusalLine refusal={refusal} />
      <div className="boat-acts no-print">
        <button type="button" className={weighed.length === 0 ? 'main' : ''} onClick={() => setWeighing(true)}>
          Weigh the ball
        </button>
        {putRight && (
          <button
            type="button"
            onClick={() =>
              void run('putTableRight', {
                weighing: putRight.weighing,
                carried: putRight.carried,
                ahead_m: putRight.ahead_m,
              })
            }
          >
            Put the table right
          </button>
        )}
        {load.weighed && (
          <button
            type="button"
            className="words"
            onClick={() => void run('removeBallWeighing', { id: load.weighed?.id ?? '' })}
          >
            Take out the last weighing
          </button>
        )}
      </div>
      {weighing && <WeighingSheet book={book} id={id} told={told} onClose={() => setWeighing(false)} />}
    </section>
  );
}
