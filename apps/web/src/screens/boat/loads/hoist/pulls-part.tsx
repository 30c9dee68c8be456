/** Pulls that were read beside what was foretold of them: whether it turns as it should, and whether that changes. */
import { useState } from 'react';
import type { BoardHoistRecord, Book, Id } from '#boat-book';
import { forceSaid, pullsTold, stiffHoistJob } from '#reckoning';
import { RefusalLine } from '../../../../parts/form.tsx';
import { dateInWords } from '../../../../parts/in-words.ts';
import { Mark } from '../../../../parts/mark.tsx';
import { MarkedLine } from '../../../../parts/marked-line.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { useRun } from '../../../../parts/use-run.ts';
import { todayAt, zoneOf } from '../../../../reading/today.ts';
import { address } from '../../../../shell/route.ts';
import { PullsDrawing } from './pulls-drawing.tsx';

const PullSheet = onDemand(() => import('./pull-sheet.tsx'));

export function PullsPart({
  book,
  id,
  record,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly record: BoardHoistRecord;
}) {
  const today = todayAt(book);
  const told = pullsTold(book, id, zoneOf(book));
  const [entering, setEntering] = useState(false);
  const { run, refusal } = useRun();
  const hoisted = told.pulls.filter(({ record: { handling } }) => handling === 'hoisting');
  const { title } = stiffHoistJob(record, told);
  const job = Object.entries(book.jobs).find(([, each]) => each.title === title && each.state === 'open')?.[0];
  return (
    <>
      {told.pulls.length === 0 && (
        <p className="soft">
          None yet. Hang a luggage scale on the {record.winch ? 'crank' : 'fall'} and pull: what it reads, beside what
          is foretold, shows a sheave that seizes before it stops.
        </p>
      )}
      {hoisted.length > 1 && <PullsDrawing pulls={hoisted} today={today} />}
      {told.lines.map((line, i) => (
        <p key={line}>
          {i === 0 && told.stiffer && <Mark of="worsens" />} {line}
        </p>
      ))}
      <RefusalLine refusal={refusal} />
      <ul>
        {[...told.pulls].reverse().map((pull) => (
          <MarkedLine
            key={pull.id}
            title={`${forceSaid(pull.hand_N)}, ${pull.record.handling}`}
            note={[
              dateInWords(pull.day, today),
              `${forceSaid(pull.foretold_N)} foretold`,
              pull.record.in === 'air' ? 'on the trailer' : 'afloat',
              pull.record.hauled_pct === null ? 'where it is hardest' : `${Math.round(pull.record.hauled_pct)} % up`,
              pull.record.with,
              pull.record.note,
            ]
              .filter(Boolean)
              .join(' · ')}
            figure={
              <button
                type="button"
                className="words removes"
                aria-label={`Take out the pull of ${dateInWords(pull.day, today)}`}
                onClick={() => void run('removeHoistForce', { id: pull.id })}
              >
                Take out
              </button>
            }
          />
        ))}
      </ul>
      <div className="boat-acts">
        <button type="button" onClick={() => setEntering(true)}>
          Enter a pull
        </button>
        {told.stiffer &&
          (job ? (
            <a className="button words" href={address('work', 'job', job)}>
              Job: find what turns hard
            </a>
          ) : (
            <button type="button" onClick={() => void run('addJob', stiffHoistJob(record, told))}>
              Make a job of it: find what turns hard
            </button>
          ))}
      </div>
      {entering && <PullSheet id={id} record={record} onClose={() => setEntering(false)} />}
    </>
  );
}
