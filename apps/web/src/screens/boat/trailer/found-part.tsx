/** What was found at the trailer, the gravest first, each with what would be right and a job of it; then what was not looked at. */
import type { Book, TrailerRecord } from '#boat-book';
import { type TrailerFinding, trailerJob } from '#reckoning';
import { RefusalLine } from '../../../parts/form.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { address } from '../../../shell/route.ts';

const gravityName = {
  danger: 'Danger.',
  unlawful: 'Not allowed.',
  worsens: 'To see to.',
  unknown: 'Not looked at.',
} as const;

export function FoundPart({
  book,
  record,
  findings,
}: {
  readonly book: Book;
  readonly record: TrailerRecord;
  readonly findings: readonly TrailerFinding[];
}) {
  const { run, refusal } = useRun();
  return (
    <section aria-labelledby="trailer-found">
      <h2 id="trailer-found">What was found</h2>
      <ul className="trailer-found">
        {findings.map((finding, n) => {
          const { id, gravity, wrong, right, mend } = finding;
          // two findings of one job have one button
          const first = findings.findIndex((other) => other.mend?.title === mend?.title) === n;
          return (
            <li key={id} data-gravity={gravity}>
              {gravity === 'unknown' ? (
                <span className="trailer-unknown" aria-hidden="true">
                  ?
                </span>
              ) : (
                <Mark of={gravity === 'worsens' ? 'worsens' : 'danger'} />
              )}
              <div>
                <p>
                  <b>{gravityName[gravity]}</b> {wrong} {right && <span className="soft">{right}</span>}
                </p>
                {mend && first && <MendButton book={book} record={record} finding={finding} run={run} />}
              </div>
            </li>
          );
        })}
      </ul>
      {findings.length === 0 && <p>Nothing was found against it in what was entered.</p>}
      <RefusalLine refusal={refusal} />
    </section>
  );
}

function MendButton({
  book,
  record,
  finding,
  run,
}: {
  readonly book: Book;
  readonly record: TrailerRecord;
  readonly finding: TrailerFinding;
  readonly run: ReturnType<typeof useRun>['run'];
}) {
  const title = finding.mend?.title ?? '';
  const open = Object.entries(book.jobs).find(([, job]) => job.title === title && job.state === 'open');
  if (open)
    return (
      <a className="button words no-print" href={address('work', 'job', open[0])}>
        Job: {title}
      </a>
    );
  return (
    <button
      type="button"
      className="words no-print"
      onClick={() => {
        const taken = trailerJob(book, finding, record.zone, () => crypto.randomUUID());
        if (taken) void run('takeRecipe', taken);
      }}
    >
      Make a job of it: {title}
    </button>
  );
}
