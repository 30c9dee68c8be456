/** The second line of a job in a list: where it is, its date, and what it waits for. */
import type { Book, Job } from '#boat-book';
import { dateInWords, daysAway } from '../../parts/in-words.ts';
import type { JobWaits, NamedJob } from '../../reading/open-work.ts';

type Props =
  | { readonly closed: Job; readonly today: string }
  | {
      readonly book: Book;
      readonly named: NamedJob;
      readonly waits: JobWaits;
      readonly where: string | undefined;
      readonly today: string;
    };

export function JobWords(props: Props) {
  if ('closed' in props) {
    const { state, closed } = props.closed;
    return (
      <>
        {state}
        {closed !== null && ` ${dateInWords(closed, props.today)}`}
      </>
    );
  }
  const { book, named, waits, where, today } = props;
  const outing = named.job.outing === null ? undefined : book.outings[named.job.outing];
  const held = named.job.heldTo === null ? undefined : book.jobDays[named.job.heldTo];
  const facts = [
    where,
    named.job.due === null ? undefined : `by ${dateInWords(named.job.due, today)}, ${daysAway(named.job.due, today)}`,
    outing && `for ‘${outing.title}’`,
    held && `held to ${dateInWords(held.date, today)}${named.job.heldAt === null ? '' : ` ${named.job.heldAt}`}`,
  ].filter((fact) => fact !== undefined);
  const waiting = [
    ...waits.stores.map(({ name, expected }) =>
      expected === null ? `${name}, not in stores` : `${name}, expected ${dateInWords(expected, today)}`,
    ),
    ...waits.jobs.map((title) => `‘${title}’`),
    ...waits.setUps,
    ...(waits.secondHand ? ['a second pair of hands'] : []),
  ];
  return (
    <>
      {facts.join(' · ')}
      {waiting.length > 0 && (
        <span className="work-waits">
          {facts.length > 0 && <br />}waits for: {waiting.join('; ')}
        </span>
      )}
    </>
  );
}
