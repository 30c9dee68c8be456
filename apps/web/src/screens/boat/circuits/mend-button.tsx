/** Makes a job of what would mend a fault; where there is one already, leads to it. */
import type { Book, Id } from '#boat-book';
import { type Finding, mendJob } from '#reckoning';
import { RefusalLine } from '../../../parts/form.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { address } from '../../../shell/route.ts';

export function MendButton({
  book,
  name,
  finding,
  zone,
}: {
  readonly book: Book;
  /** of the circuit, or of the battery */
  readonly name: string;
  readonly finding: Finding;
  readonly zone: Id | null;
}) {
  const { run, refusal } = useRun();
  if (finding.mend === null) return null;
  const job = mendJob(name, finding, zone);
  const open = Object.entries(book.jobs).find(([, { title, state }]) => title === job.title && state === 'open');
  if (open)
    return (
      <a className="button words" href={address('work', 'job', open[0])}>
        Job: {finding.mend.toLowerCase()}
      </a>
    );
  return (
    <>
      <button
        type="button"
        className="words"
        aria-label={`Make it a job: ${job.title}`}
        onClick={() => void run('addJob', job)}
      >
        Make it a job
      </button>
      <RefusalLine refusal={refusal} />
    </>
  );
}
