/** One stay: how taut it was last found, what is to be done, its trend, and every reading with its working. */
import { useMemo } from 'react';
import type { Book, Id, StayRecord } from '#boat-book';
import { aim_N, foundInWords, type StayOfBook, sinceInWords, stayInWords, stayJob, staysOfBook } from '#reckoning';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { RefusalLine } from '../../../../parts/form.tsx';
import { capital, dayInWords } from '../../../../parts/in-words.ts';
import { Mark } from '../../../../parts/mark.tsx';
import { MarkedLine } from '../../../../parts/marked-line.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../../parts/opened.tsx';
import { useRun } from '../../../../parts/use-run.ts';
import { todayAt } from '../../../../reading/today.ts';
import { address } from '../../../../shell/route.ts';
import { StayTrendDrawing } from './stay-trend-drawing.tsx';

const StaySheet = onDemand(() => import('./stay-sheet.tsx'));
const StayReadingSheet = onDemand(() => import('./stay-reading-sheet.tsx'));
const ReadingToldSheet = onDemand(() => import('./reading-told-sheet.tsx'));

type Open = { readonly sheet: 'stay' | 'reading' } | { readonly sheet: 'told'; readonly id: Id };

export function StayPage({ book, id }: { readonly book: Book; readonly id: Id }) {
  const record = book.stays[id];
  if (record === undefined)
    return (
      <>
        <Back />
        <h1>No such stay</h1>
        <p>It is not in the book any more.</p>
      </>
    );
  return (
    <>
      <Back />
      <h1>{record.name}</h1>
      <BelowHeading>
        <StayBelow book={book} id={id} record={record} />
      </BelowHeading>
    </>
  );
}

function StayBelow({ book, id, record }: { readonly book: Book; readonly id: Id; readonly record: StayRecord }) {
  const sheet = useOpened<Open>();
  const { close } = sheet;
  const today = todayAt(book);
  const { stayReadings } = book;
  const stay = useMemo(() => staysOfBook({ stays: { [id]: record }, stayReadings })[0]!, [id, record, stayReadings]);
  const { readings } = stay;
  const words = stayInWords(stay);
  const shownIn = (open: Open) =>
    open.sheet === 'told' ? readings.find((reading) => reading.id === open.id) : undefined;
  return (
    <>
      <p className="soft">
        {words.label}
        {record.note && `. ${record.note}`}
      </p>
      <div className="loads-beside">
        <div>
          <p className="loads-verdict">{words.now}</p>
          <ul className="rig-next">
            {words.next.map(({ gravity, words: line }) => (
              <li key={line}>
                {gravity === 'worsens' && <Mark of="worsens" said="gets worse" />}
                <div>
                  <p>{line}</p>
                  {gravity === 'worsens' && <MakeJob book={book} stay={stay} why={line} />}
                </div>
              </li>
            ))}
          </ul>
          <div className="boat-acts">
            <button type="button" className="main" onClick={() => sheet.open({ sheet: 'reading' })}>
              Enter a reading
            </button>
            <button type="button" className="words" onClick={() => sheet.open({ sheet: 'stay' })}>
              Change the stay
            </button>
          </div>
        </div>
        {readings.length > 1 && <StayTrendDrawing readings={readings} aim_N={aim_N(record)} today={today} />}
      </div>
      <section aria-labelledby="stay-readings">
        <h2 id="stay-readings">Readings</h2>
        {readings.length === 0 && (
          <p className="soft">
            None yet. A spring balance drawn square to it, or a folding rule taped to the wire while the screw is
            turned.
          </p>
        )}
        <ul>
          {[...readings].reverse().map((reading) => (
            <MarkedLine
              key={reading.id}
              title={`${dayInWords(reading.reading.on, today)}, ${reading.reading.moment}`}
              note={[capital(foundInWords(reading)), sinceInWords(reading), reading.reading.note]
                .filter(Boolean)
                .join(' ')}
              figure={
                <button
                  type="button"
                  className="words"
                  aria-label={`How it is worked out: ${dayInWords(reading.reading.on, today)}, ${reading.reading.moment}`}
                  onClick={() => sheet.open({ sheet: 'told', id: reading.id })}
                >
                  How
                </button>
              }
            />
          ))}
        </ul>
      </section>
      <section aria-labelledby="stay-care">
        <h2 id="stay-care">Take care</h2>
        <p>
          A stay under tension is a spring: ease its screw, never knock a pin out of it, and pin the screw afterwards.
          The mast is held by another stay or a halyard before this one comes off.
        </p>
      </section>
      <OpenedSheet of={sheet}>
        {(open) => {
          const shown = shownIn(open);
          return (
            <>
              {open.sheet === 'stay' && <StaySheet book={book} id={id} onClose={close} />}
              {open.sheet === 'reading' && (
                <StayReadingSheet book={book} id={id} last={readings.at(-1)} onClose={close} />
              )}
              {shown !== undefined && <ReadingToldSheet reading={shown} today={today} onClose={close} />}
            </>
          );
        }}
      </OpenedSheet>
    </>
  );
}

const Back = () => (
  <p className="boat-back no-print">
    <a className="button words" href={address('boat', 'loads', 'stays')}>
      ‹ Stays
    </a>
  </p>
);

/** Makes a job of a stay that slackens; where there is one already, leads to it. */
function MakeJob({ book, stay, why }: { readonly book: Book; readonly stay: StayOfBook; readonly why: string }) {
  const { run, refusal } = useRun();
  const job = stayJob(stay.record, why);
  const open = Object.entries(book.jobs).find(([, { title, state }]) => title === job.title && state === 'open');
  return (
    <>
      {open ? (
        <a className="button words" href={address('work', 'job', open[0])}>
          Job: {job.title.toLowerCase()}
        </a>
      ) : (
        <button type="button" className="words" onClick={() => void run('addJob', job)}>
          Make a job of it
        </button>
      )}
      <RefusalLine refusal={refusal} />
    </>
  );
}
