/** One due: its rule, when it was last done, when it falls due and why, where the rule is from. */
import type { Book, Id } from '#boat-book';
import {
  dueAway,
  dueBesideOuting,
  dueCautionsOf,
  dueDay,
  dueJob,
  dueParts,
  duesOfBook,
  dueUsual,
  dueWhen,
  recipeOfDue,
} from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { consequenceName, Mark } from '../../../parts/mark.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../parts/opened.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { DueLine } from './due-line.tsx';
import './dues.css';

const DueSheet = onDemand(() => import('./due-sheet.tsx'));
const MeasureSheet = onDemand(() => import('./measure-sheet.tsx'));

export default function DuePage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const sheet = useOpened<'change' | 'measure'>();
  const due = book.dues[id];
  const back = (
    <p>
      <a className="button words" href={address('go', 'dues')}>
        What falls due
      </a>
    </p>
  );
  if (due === undefined)
    return (
      <div className="dues">
        {back}
        <p>That one is not in the book any more.</p>
      </div>
    );
  return (
    <div className="dues">
      {back}
      <div className="go-top">
        <h1>{due.title}</h1>
        <button type="button" className="words" onClick={() => sheet.open('change')}>
          Change
        </button>
      </div>
      <BelowHeading>
        <DueBelow book={book} id={id} onMeasured={() => sheet.open('measure')} />
      </BelowHeading>
      <OpenedSheet of={sheet}>
        {(open) =>
          open === 'change' ? (
            <DueSheet book={book} id={id} onClose={sheet.close} />
          ) : (
            <MeasureSheet id={id} due={due} today={todayAt(book)} onClose={sheet.close} />
          )
        }
      </OpenedSheet>
    </div>
  );
}

function DueBelow({ book, id, onMeasured }: { readonly book: Book; readonly id: Id; readonly onMeasured: () => void }) {
  const today = todayAt(book);
  const { run, refusal } = useRun();
  const dueOf = duesOfBook(book, today).find((each) => each.id === id)!;
  const { due, since, job, lead_d, waitsFor, falls } = dueOf;
  const beside = dueBesideOuting(dueOf, book, today);
  const usual = dueUsual(dueOf);
  const recipe = recipeOfDue(book, due);
  return (
    <>
      <p className="due-when">
        <b>{dueWhen(dueOf, today)}</b>
      </p>
      <DueLine dueOf={dueOf} today={today} />
      {beside !== null && <p>{beside}</p>}
      <p className="dues-answers">
        {job === null ? (
          <button type="button" className="main" onClick={() => void run('makeJobOfDue', dueJob(book, dueOf, today))}>
            Make it a job
          </button>
        ) : (
          <a className="button main" href={address('work', 'job', job)}>
            Its job
          </a>
        )}
        {job === null && since?.on !== today && (
          <button type="button" onClick={() => void run('dueWasDone', { id, on: today })}>
            Done today
          </button>
        )}
        {due.condition !== null && (
          <button type="button" onClick={onMeasured}>
            Measured
          </button>
        )}
      </p>
      {refusal && (
        <p role="alert">
          {refusal.wrong}; {refusal.right}.
        </p>
      )}
      <h2>Why</h2>
      <ul className="due-parts">
        {dueParts(dueOf, today).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      {falls.parts.length > 1 && <p className="small soft">Whichever comes first.</p>}
      <p className="small">
        <Mark of={due.consequence} /> If it is left: {consequenceName[due.consequence]}.
      </p>
      <h2>Last done</h2>
      <p>
        {since === null
          ? 'Not known. Say the day it was last done, made or fitted, and it can be foretold.'
          : `${dueDay(since.on, today)}, ${dueAway(since.on, today)}; ${since.by === 'job' ? 'by the job of it that was done' : 'as the keeper says'}.`}
      </p>
      <h2>In good time</h2>
      <p>
        It wants a job {lead_d} days before: 14 to find the hours
        {waitsFor === null
          ? ''
          : `, and ${waitsFor.days} to get ${waitsFor.name.toLowerCase()}${waitsFor.known ? '' : ', as nothing says how long that takes'}`}
        .{recipe === null ? ' No recipe answers it.' : ` By the recipe ‘${recipe.title}’.`}
      </p>
      <h2>From</h2>
      <p>
        {due.source === '' ? 'The source is not written down.' : `The rule: ${due.source}.`} {usual}
      </p>
      {due.note !== '' && <p>{due.note}</p>}
      <ul className="due-cautions">
        {dueCautionsOf(dueOf).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </>
  );
}
