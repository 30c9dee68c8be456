/** Asked of a board of another mass: what it feels like as she is rove, what wire and tackle it needs, and the job of it. */
import { useState } from 'react';
import type { BoardHoistRecord, Book, Id } from '#boat-book';
import { hoistJob, hoistNeedsTold, massOf_kg } from '#reckoning';
import { RefusalLine } from '../../../../parts/form.tsx';
import { readFigure } from '../../../../parts/read-form.ts';
import { NumberField } from '../../../../parts/text-fields.tsx';
import { useRun } from '../../../../parts/use-run.ts';
import { address } from '../../../../shell/route.ts';
import { takeToGet } from '../../take-to-get.ts';

const limits = { min: 1, max: 500, unit: 'kg' } as const;

export function HeavierPart({
  book,
  id,
  record,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly record: BoardHoistRecord;
}) {
  const [text, setText] = useState('');
  const [asked, setAsked] = useState<number | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const { run, refusal } = useRun();
  const mass_kg = massOf_kg(record.plate);
  const told = asked === null ? null : hoistNeedsTold(record, asked);
  const find = () => {
    const read = readFigure(text, limits);
    setRefused(read.kind === 'refused' ? read.why : null);
    setAsked(read.kind === 'figure' ? read.value : null);
  };
  const title = told?.kind === 'found' ? hoistJob(record, told, []).title : null;
  const job = Object.entries(book.jobs).find(([, each]) => each.title === title && each.state === 'open')?.[0];
  const makeJob = async () => {
    if (told?.kind !== 'found') return;
    const taken = await takeToGet(book, told.toGet, run);
    if (taken !== null) await run('addJob', hoistJob(record, told, taken));
  };
  return (
    <>
      <form
        noValidate
        className="hoist-ask no-print"
        onSubmit={(event) => {
          event.preventDefault();
          find();
        }}
      >
        <NumberField
          label="What if the board weighed"
          unit="kg"
          note={`Now ${Number(mass_kg.toFixed(1))} kg; half as heavy again is ${Number((1.5 * mass_kg).toFixed(1))}.`}
          value={text}
          onChange={(next) => {
            setText(next);
            setAsked(null);
          }}
          refused={refused}
        />
        <button type="submit">Find its wire and tackle</button>
      </form>
      {told && asked !== null && (
        <div className="hoist-answer" role="status">
          <h3>As she is rove, with {asked} kg</h3>
          {told.asIs.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {told.kind === 'none' ? (
            <p>{told.why}</p>
          ) : (
            <>
              <h3>{told.asIsDoes ? 'The least that does' : 'What it needs'}</h3>
              {told.needs.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </>
          )}
        </div>
      )}
      <RefusalLine refusal={refusal} />
      {told?.kind === 'found' && (
        <div className="boat-acts">
          {job ? (
            <a className="button words" href={address('work', 'job', job)}>
              The job is in the book
            </a>
          ) : (
            <button type="button" className="main" onClick={makeJob}>
              Make the job{told.toGet.length > 0 && ', with what is to get'}
            </button>
          )}
          <button type="button" onClick={() => void run('changeBoardHoist', { id, ...told.record })}>
            She is so now
          </button>
        </div>
      )}
    </>
  );
}
