/** The second line of a job in a list: where it is, its date, and what it waits for. */
import type { Job } from '#boat-book';
import { dateInWords, daysAway } from '../../parts/in-words.ts';
import type { ShownJob } from '../../reading/work-shown.ts';

export function JobWords({
  job: { due, outing, held, waits },
  where,
  today,
}: {
  readonly job: ShownJob;
  readonly where: string | undefined;
  readonly today: string;
}) {
  const facts = [
    where,
    due === null ? undefined : `by ${dateInWords(due, today)}, ${daysAway(due, today)}`,
    outing === null ? undefined : `for ‘${outing}’`,
    held === null ? undefined : `held to ${dateInWords(held.date, today)}${held.at === null ? '' : ` ${held.at}`}`,
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

/** How a job that is not open came to its end. */
export function closedInWords({ state, closed }: Job, today: string): string {
  return closed === null ? state : `${state} ${dateInWords(closed, today)}`;
}
