/** The jobs that are not in the plan, each with what stands in its way and the changes that would let it in. */

import { memo, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { holdInWords, storeOfLine } from '#reckoning';
import type { Obstacle, Problem } from '#workplan';
import { RefusalLine } from '../../parts/form.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { useRun } from '../../parts/use-run.ts';
import { address } from '../../shell/route.ts';
import { ChangeLine } from './change-line.tsx';
import { MostGain, ReasonsProgress } from './most-gain.tsx';
import type { LeftOutJob, PlanPicture, PlanReasons } from './plan-report.ts';
import './reasons.css';
import { Held } from './hold-part.tsx';

const StoreSheet = onDemand(() => import('../stores/store-sheet.tsx'));

interface Shown {
  readonly problem: Problem;
  readonly book: Book;
  /** null: nothing is known yet of what would let them in */
  readonly reasons: PlanReasons | null;
  readonly readOnly: boolean;
}

export const LeftOut = memo(function LeftOut({
  picture,
  settled,
  ...shown
}: Shown & { readonly picture: PlanPicture; readonly settled: boolean }) {
  const { leftOut } = picture;
  if (leftOut.length === 0)
    return (
      <section className="days-left">
        <h2>Left out</h2>
        <p>Nothing: every open job is in the plan.</p>
      </section>
    );
  return (
    <section className="days-left">
      <h2>Left out, and why</h2>
      <ReasonsProgress reasons={shown.reasons} settled={settled} />
      <ul>
        {leftOut.map((job) => (
          <LeftOutLine key={job.job} job={job} {...shown} />
        ))}
      </ul>
      <MostGain {...shown} />
    </section>
  );
});

function LeftOutLine({ job, problem, book, reasons, readOnly }: Shown & { readonly job: LeftOutJob }) {
  const [store, setStore] = useState<Id | null>(null);
  const known = reasons?.ways.find((each) => each.job === job.job);
  const ways = known?.ways ?? [];
  const record = book.jobs[job.job];
  const held = record === undefined ? null : holdInWords(book, record);
  const { run, refusal } = useRun();
  return (
    <li>
      <h3>
        <a href={address('work', 'job', job.job)}>{job.title}</a>
      </h3>
      {held !== null && (
        <p className="small">
          <Held to={held} />
          {!readOnly && (
            <>
              {' '}
              <button
                type="button"
                className="words small"
                onClick={() => void run('holdJob', { job: job.job, day: null })}
              >
                Let go
              </button>
            </>
          )}
        </p>
      )}
      <RefusalLine refusal={refusal} />
      {job.reasons.map(({ why }) => (
        <p key={why} className="small soft">
          {why}
        </p>
      ))}
      {ways.map((way) => (
        <ChangeLine key={way.words} change={way} problem={problem} book={book} readOnly={readOnly} />
      ))}
      {ways.length === 0 && known?.finished && (
        <p className="small">No single change that was looked at would let it in beside the rest.</p>
      )}
      {job.reasons.map(({ obstacle }) =>
        obstacle.kind === 'not in stores' ? (
          <button
            key={obstacle.store}
            type="button"
            className="words small"
            onClick={() => setStore(storeOfLine(obstacle.store, book))}
          >
            {book.stores[storeOfLine(obstacle.store, book)]?.name ?? obstacle.store}: open it in the stores
          </button>
        ) : ways.length === 0 && known?.finished ? (
          <p key={obstacle.kind} className="small no-print">
            <a className="days-gain" href={whereToChange(obstacle, problem)}>
              Change what stands in its way
            </a>
          </p>
        ) : null,
      )}
      {store !== null && <StoreSheet book={book} id={store} onClose={() => setStore(null)} />}
    </li>
  );
}

/** The page on which what stands in a job's way is changed. */
function whereToChange(obstacle: Obstacle, problem: Problem): string {
  const lastDay = problem.days.at(-1)?.id ?? 'new';
  switch (obstacle.kind) {
    case 'no tool':
      return address('stores');
    case 'no second hand':
    case 'no hands':
    case 'no room left':
      return address('days', 'day', lastDay, 'change');
    case 'weather':
      return address('days', 'day', obstacle.bestDay ?? lastDay, 'weather');
    case 'no such place':
    case 'deadline':
    case 'wait not over in time':
    case 'wait needs not kept':
    case 'window missed':
      return address('days', 'day', 'new');
    case 'waits for a job left out':
      return address('work', 'job', obstacle.other);
    default:
      return address('work', 'job', obstacle.job);
  }
}
