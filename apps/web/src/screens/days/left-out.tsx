/** The jobs that are not in the plan, each with what stands in its way and the change that would let it in. */

import { lazy, Suspense, useState } from 'react';
import type { Book, Id } from '#boat-book';
import type { Obstacle, Problem } from '#workplan';
import { RefusalLine } from '../../parts/form.tsx';
import { useRun } from '../../parts/use-run.ts';
import { address } from '../../shell/route.ts';
import type { LeftOutJob, PlanPicture } from './plan-report.ts';

const StoreSheet = lazy(() => import('../stores/store-sheet.tsx'));

export function LeftOut({
  problem,
  picture,
  book,
}: {
  readonly problem: Problem;
  readonly picture: PlanPicture;
  readonly book: Book;
}) {
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
      <ul>
        {leftOut.map((job) => (
          <LeftOutLine key={job.job} job={job} problem={problem} book={book} />
        ))}
      </ul>
    </section>
  );
}

function LeftOutLine({
  job,
  problem,
  book,
}: {
  readonly job: LeftOutJob;
  readonly problem: Problem;
  readonly book: Book;
}) {
  const { run, refusal } = useRun();
  const [store, setStore] = useState<Id | null>(null);
  return (
    <li>
      <h3>
        <a href={address('work', 'job', job.job)}>{job.title}</a>
      </h3>
      {job.reasons.map(({ why, gain, obstacle }) => (
        <div key={why}>
          <p className="small soft">{why}</p>
          {gain !== null &&
            (obstacle.kind === 'not in stores' ? (
              <button type="button" className="words small" onClick={() => setStore(obstacle.store)}>
                {gain}
              </button>
            ) : obstacle.kind === 'held elsewhere' ? (
              <button
                type="button"
                className="words small"
                onClick={() => void run('holdJob', { job: job.job, day: null })}
              >
                Free it from its day
              </button>
            ) : (
              <p className="small">
                <a className="days-gain" href={whereToChange(obstacle, problem)}>
                  {gain}
                </a>
              </p>
            ))}
        </div>
      ))}
      <RefusalLine refusal={refusal} />
      {store !== null && (
        <Suspense fallback={null}>
          <StoreSheet book={book} id={store} onClose={() => setStore(null)} />
        </Suspense>
      )}
    </li>
  );
}

/** The page on which the change that would let the job in is made. */
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
