/** On a job's page: the next hours in the weather known that would suit it, outside the job days there are. */
import type { Book, Id } from '#boat-book';
import { liesAt } from '#reckoning';
import { todayAt } from '../../reading/today.ts';
import { useWindows } from './use-windows.ts';
import { useWillingHours } from './willing-hours.ts';
import { WindowLine } from './window-line.tsx';

export default function NextWindow({ book, job }: { readonly book: Book; readonly job: Id }) {
  const place = liesAt(book, Date.now());
  if (place === null) return null;
  return <NextWindowAt book={book} job={job} place={place} />;
}

function NextWindowAt({ book, job, place }: { readonly book: Book; readonly job: Id; readonly place: Id }) {
  const { hours } = useWillingHours();
  const { windows, state, words } = useWindows(book, { place, willing: hours, job });
  const today = todayAt(book);
  const ahead = Object.values(book.jobDays).some(({ date }) => date >= today);
  const window = windows.find((each) => each.job === job);
  return (
    <section className="days-next-window" aria-labelledby="job-window" data-windows-state={state}>
      <h2 id="job-window">Next window</h2>
      <p className="soft small">
        The next hours that would suit it by itself, {hours.from} to {hours.to}
        {ahead ? ', outside the job days there are' : ''}. <a href="#/days/weather">Enter the weather ahead</a>
      </p>
      {state === 'failed' && <p role="alert">It could not be worked out: {words}.</p>}
      {window && (
        <ul>
          <WindowLine window={window} book={book} headed={false} />
        </ul>
      )}
    </section>
  );
}
