/** Makes jobs of what would mend faults; where there is one already, leads to it. */
import type { Book, Id } from '#boat-book';
import { type Finding, mendJob } from '#reckoning';
import { RefusalLine } from '../../../parts/form.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { address } from '../../../shell/route.ts';

export function MendButtons({
  book,
  name,
  findings,
  zone,
}: {
  readonly book: Book;
  /** of the circuit, or of the battery */
  readonly name: string;
  readonly findings: readonly Finding[];
  readonly zone: Id | null;
}) {
  const { run, refusal } = useRun();
  return (
    <>
      {mendings(findings).map((finding) => {
        const job = mendJob(name, finding, zone);
        const open = Object.entries(book.jobs).find(([, { title, state }]) => title === job.title && state === 'open');
        const does = finding.mend?.toLowerCase();
        return open ? (
          <a key={job.title} className="button words" href={address('work', 'job', open[0])}>
            Job: {does}
          </a>
        ) : (
          <button
            key={job.title}
            type="button"
            className="words"
            aria-label={`Make a job of it: ${job.title}`}
            onClick={() => void run('addJob', job)}
          >
            Make a job of it: {does}
          </button>
        );
      })}
      <RefusalLine refusal={refusal} />
    </>
  );
}

/** One finding for each thing that can be done, the gravest: two faults of one wire are mended by one new wire. */
const mendings = (findings: readonly Finding[]) =>
  findings.filter(({ mend }, i) => mend !== null && findings.findIndex((other) => other.mend === mend) === i);
