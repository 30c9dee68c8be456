/** The boat's circuits: what is wrong with them first, then every one, drawn and listed, with its figures one tap away. */
import { useMemo } from 'react';
import type { Book, Id } from '#boat-book';
import { type CircuitTold, circuitsTold } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { dayInWords } from '../../../parts/in-words.ts';
import { onDemand } from '../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../parts/opened.tsx';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import './circuits.css';
import { CircuitsDrawing } from './circuits-drawing.tsx';
import { Findings } from './findings.tsx';
import { FoundList } from './found-list.tsx';
import { MendButtons } from './mend-buttons.tsx';

const BatterySheet = onDemand(() => import('../battery/battery-sheet.tsx'));
const CircuitSheet = onDemand(() => import('./circuit-sheet.tsx'));
const LeadSheet = onDemand(() => import('./lead-sheet.tsx'));
const TerminalSheet = onDemand(() => import('./terminal-sheet.tsx'));
const ToldSheet = onDemand(() => import('./told-sheet.tsx'));

type Open =
  | { readonly sheet: 'told' | 'change'; readonly place: CircuitTold['place'] }
  | { readonly sheet: 'new' | 'battery' }
  | { readonly sheet: 'terminal'; readonly id: Id };

export default function CircuitsPage() {
  const book = useOpenBook();
  return (
    <div className="boat circuits">
      <p className="boat-back no-print">
        <a className="button words" href={address('boat')}>
          ‹ Boat
        </a>
      </p>
      <h1>Circuits</h1>
      <BelowHeading>
        <CircuitsBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function CircuitsBelow({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const told = useMemo(() => circuitsTold(book), [book]);
  const sheet = useOpened<Open>();
  const { close } = sheet;
  const all = told.batteries.flatMap(({ circuits }) => circuits);
  const show = ({ place }: CircuitTold) => sheet.open({ sheet: 'told', place });
  const shownIn = (open: Open) =>
    open.sheet === 'told'
      ? all.find(({ place }) => place.kind === open.place.kind && place.id === open.place.id)
      : undefined;
  return (
    <>
      <p className="circuits-on-paper">
        {book.boat.name}, {dayInWords(today, today)} {today.slice(0, 4)}
      </p>
      <p className="circuits-verdict">{told.verdict}</p>
      {told.batteries.length === 0 ? (
        <>
          <p>There is no battery in the book, and every circuit hangs on one.</p>
          <button type="button" className="main" onClick={() => sheet.open({ sheet: 'battery' })}>
            Add a battery
          </button>
        </>
      ) : (
        <div className="boat-acts no-print">
          <a className="button main" href={address('boat', 'circuits', 'outlet')}>
            Wire and fuse for a new outlet
          </a>
          <button type="button" onClick={() => sheet.open({ sheet: 'new' })}>
            Add a circuit
          </button>
          {all.length > 0 && (
            <button type="button" onClick={() => print()}>
              Print the drawing
            </button>
          )}
        </div>
      )}
      {told.batteries.map(({ id, name, label, lines, findings, circuits }, n) => (
        <div key={id} className="circuits-of">
          <section aria-labelledby={`circuits-found-${id}`}>
            <h2 id={`circuits-found-${id}`}>On {name}</h2>
            <Findings findings={findings} />
            <div className="circuits-acts">
              <MendButtons book={book} name={name} findings={findings} zone={book.batteries[id]?.zone ?? null} />
            </div>
            <FoundList
              book={book}
              circuits={circuits}
              onChange={({ place }) => sheet.open({ sheet: 'change', place })}
              onShow={show}
            />
            {lines.map((line) => (
              <p key={line} className="soft small">
                {line}{' '}
              </p>
            ))}
            <p className="no-print">
              <button type="button" className="words" onClick={() => sheet.open({ sheet: 'terminal', id })}>
                What stands at its terminal
              </button>
            </p>
          </section>
          {circuits.length > 0 && (
            <CircuitsDrawing record={book.batteries[id]!} label={label} circuits={circuits} onOpen={show} />
          )}
          {n === told.batteries.length - 1 && <Cautions lines={told.cautions} />}
        </div>
      ))}
      <OpenedSheet of={sheet}>
        {(open) => {
          const shown = shownIn(open);
          return (
            <>
              {shown && (
                <ToldSheet
                  book={book}
                  circuit={shown}
                  onChange={() => sheet.open({ sheet: 'change', place: shown.place })}
                  onClose={close}
                />
              )}
              {open.sheet === 'battery' && <BatterySheet book={book} id={null} onClose={close} />}
              {open.sheet === 'new' && <CircuitSheet book={book} id={null} onClose={close} />}
              {open.sheet === 'change' &&
                (open.place.kind === 'circuit' ? (
                  <CircuitSheet book={book} id={open.place.id} onClose={close} />
                ) : (
                  <LeadSheet book={book} place={open.place} onClose={close} />
                ))}
              {open.sheet === 'terminal' && <TerminalSheet book={book} id={open.id} onClose={close} />}
            </>
          );
        }}
      </OpenedSheet>
    </>
  );
}

function Cautions({ lines }: { readonly lines: readonly string[] }) {
  return (
    <div className="circuits-cautions">
      <h2>Take care</h2>
      {lines.map((line) => (
        <p key={line}>{line} </p>
      ))}
    </div>
  );
}
