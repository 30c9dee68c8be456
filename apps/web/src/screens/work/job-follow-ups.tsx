/** Where a job came from and what it leaves to be done: its recipe, what it follows up, what follows it, what to write down. */
import type { Book, Id } from '#boat-book';
import { followUpsOf, recipeIdNow, recipesOfBook } from '#reckoning';
import { RefusalLine } from '../../parts/form.tsx';
import { useRun } from '../../parts/use-run.ts';
import { address } from '../../shell/route.ts';

export default function JobFollowUps({
  book,
  id,
  today,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly today: string;
}) {
  const { run, refusal } = useRun();
  const job = book.jobs[id];
  if (!job) return null;
  const recipe = job.recipe === undefined ? null : recipeIdNow(book, job.recipe);
  const origin = job.followsJob === undefined ? undefined : book.jobs[job.followsJob];
  const told = followUpsOf(book, id, today);
  const offered = told.filter(({ already }) => already === null);
  return (
    <section className="job-leaves" aria-labelledby="job-leaves">
      <h2 id="job-leaves">Where it comes from and what it leaves</h2>
      {recipe !== null && (
        <p>
          By the recipe <a href={address('work', 'recipe', recipe)}>{recipesOfBook(book)[recipe]!.title}</a>.
        </p>
      )}
      {origin && job.followsJob && (
        <p>
          It follows <a href={address('work', 'job', job.followsJob)}>{origin.title}</a>.
        </p>
      )}
      {told.length > 0 && (
        <>
          <p>Usually followed by:</p>
          <ul>
            {told.map(({ title, because, when, already }) => (
              <li key={title}>
                {already === null ? <b>{title}</b> : <a href={address('work', 'job', already)}>{title}</a>}, {when}
                {already !== null && ', put in'}. <span className="soft">{because}</span>
              </li>
            ))}
          </ul>
          {job.state === 'done' && offered.length > 0 && (
            <p>
              <button
                type="button"
                onClick={() => void run('putInFollowUps', { job: id, followUps: offered.map((each) => each.job) })}
              >
                Put in what follows
              </button>
            </p>
          )}
        </>
      )}
      {job.writeDown && job.writeDown.length > 0 && (
        <p>
          Write down when it is done: <span className="soft">{job.writeDown.join('; ')}.</span>
        </p>
      )}
      <RefusalLine refusal={refusal} />
    </section>
  );
}
