/** One trailer: its balance drawn, a change tried out before it is kept, the table of what stands on it, and what was found. */
import { useMemo, useRef, useState } from 'react';
import type { Book, Id, TrailerRecord } from '#boat-book';
import { type LoadChange, loadChangeSaid, type TrailerFigure, trailerTold } from '#reckoning';
import { RefusalLine } from '../../../parts/form.tsx';
import { listInWords } from '../../../parts/in-words.ts';
import { Mark } from '../../../parts/mark.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { BalanceDrawing } from './balance-drawing.tsx';
import { balancePlaces } from './balance-places.ts';
import { BallGauge } from './ball-gauge.tsx';
import { FoundPart } from './found-part.tsx';
import { ThingPanel } from './thing-panel.tsx';
import { ThingsTable } from './things-table.tsx';
import { WeighedPart } from './weighed-part.tsx';

const TrailerSheet = onDemand(() => import('./trailer-sheet.tsx'));
const CarriedSheet = onDemand(() => import('./carried-sheet.tsx'));
const FigureSheet = onDemand(() => import('./trailer-figure-sheet.tsx'));

type Open =
  | { readonly sheet: 'trailer' }
  | { readonly sheet: 'thing'; readonly id: Id | null }
  | { readonly sheet: 'figure'; readonly of: TrailerFigure['of'] };

export function TrailerView({
  book,
  id,
  record,
  today,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly record: TrailerRecord;
  readonly today: string;
}) {
  const [tried, setTried] = useState<LoadChange>({});
  const [selected, setSelected] = useState<Id | null>(null);
  const [open, setOpen] = useState<Open | null>(null);
  const balance = useRef<HTMLDivElement>(null);
  const { run, refusal } = useRun();
  const before = useMemo(() => trailerTold(book, id, record, today), [book, id, record, today]);
  const told = useMemo(() => trailerTold(book, id, record, today, tried), [book, id, record, today, tried]);
  const changed = told.load.standings.filter(({ carried }) => carried !== null && tried[carried] !== undefined);
  const trying = changed.length > 0;
  const tryOut = (carried: Id, change: LoadChange[string]) => {
    setSelected(carried);
    setTried((all) => ({ ...all, [carried]: { ...all[carried], ...change } }));
  };
  const keep = async () => {
    const outcome = await run('changeLoad', {
      things: changed.flatMap(({ carried, ahead_m, mass }) => {
        const change = carried === null ? undefined : tried[carried];
        return carried === null || change === undefined
          ? []
          : [
              {
                carried,
                ...(change.ahead_m === undefined ? {} : { ahead_m }),
                ...(change.likely_kg === undefined ? {} : { mass }),
              },
            ];
      }),
    });
    if (outcome.kind === 'done') setTried({});
  };
  const stops = told.findings.some(({ gravity }) => gravity === 'danger' || gravity === 'unlawful');
  const { guessed } = balancePlaces(book.boat, record, told.load.standings, 390);
  const shown = open?.sheet === 'figure' ? told.figures.find(({ of }) => of === open.of) : undefined;
  return (
    <>
      <p className="trailer-verdict">
        {stops && <Mark of="danger" />} {told.verdict}
      </p>
      <p className="trailer-ball-line">{told.ball}</p>
      <div className="trailer-sides">
        <div ref={balance} className="trailer-balance">
          <figure>
            <BalanceDrawing
              boat={book.boat}
              record={record}
              told={told}
              selected={selected}
              onSelect={setSelected}
              onMove={(carried, ahead_m) => tryOut(carried, { ahead_m })}
            />
            <BallGauge told={told} before={trying ? before : null} />
            <figcaption className="soft small">
              To scale; numbers as in the table.{' '}
              <span className="no-print">A ringed mark can be moved: draw it along, or use the arrow keys. </span>
              Below: the ball load with its band; boxed: what is wanted.
              {guessed.length > 0 && ` Not measured, drawn as is usual: ${listInWords(guessed)}.`}
            </figcaption>
          </figure>
          <ThingPanel
            book={book}
            load={told.load}
            selected={selected}
            onTry={tryOut}
            onOpen={(thing) => setOpen({ sheet: 'thing', id: thing })}
          />
          {trying && (
            <div className="trailer-trying" role="status">
              <p>
                <b>Tried out, not kept:</b> {listInWords(changed.map(({ name }) => name))}.{' '}
                {loadChangeSaid(before, told)}
              </p>
              <RefusalLine refusal={refusal} />
              <div className="boat-acts no-print">
                <button type="button" className="main" onClick={() => void keep()}>
                  Keep it so
                </button>
                <button type="button" onClick={() => setTried({})}>
                  As it was
                </button>
              </div>
            </div>
          )}
          {told.mendings.length > 0 && (
            <section aria-labelledby="trailer-mend">
              <h2 id="trailer-mend">What to move</h2>
              <ul className="trailer-mendings">
                {told.mendings.map(({ carried, name, words, forward_m }) => (
                  <li key={name}>
                    <p>{words}</p>
                    {carried !== null && (
                      <button
                        type="button"
                        className="words"
                        aria-label={`Try it on the drawing: ${name}`}
                        onClick={() => {
                          const at = told.load.standings.find((each) => each.carried === carried)?.ahead_m ?? 0;
                          tryOut(carried, { ahead_m: Number((at + forward_m).toFixed(3)) });
                        }}
                      >
                        Try it on the drawing
                      </button>
                    )}
                  </li>
                ))}
              </ul>
            </section>
          )}
        </div>
        <div className="trailer-says">
          <section aria-labelledby="trailer-figures">
            <h2 id="trailer-figures">What presses where</h2>
            <ul className="trailer-figures">
              {told.figures.map(({ of, title, figure, note }) => (
                <li key={of}>
                  <button
                    type="button"
                    className="prints"
                    aria-label={`${title}: ${figure}. How it is worked out`}
                    onClick={() => setOpen({ sheet: 'figure', of })}
                  >
                    <span>{title}</span>
                    <b>{figure}</b>
                    <span className="trailer-note">{note}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
          <FoundPart book={book} record={record} findings={told.findings} />
        </div>
        <div className="trailer-rest">
          <section aria-labelledby="trailer-things">
            <h2 id="trailer-things">What stands on it</h2>
            <ThingsTable
              book={book}
              trailer={id}
              load={told.load}
              selected={selected}
              onSelect={(carried) => {
                setSelected(carried);
                balance.current?.scrollIntoView();
              }}
              onOpen={(thing) => setOpen({ sheet: 'thing', id: thing })}
            />
            <div className="boat-acts no-print">
              <button type="button" className="main" onClick={() => setOpen({ sheet: 'thing', id: null })}>
                Add a thing
              </button>
              <button type="button" onClick={() => setOpen({ sheet: 'trailer' })}>
                Change the trailer and its papers
              </button>
            </div>
          </section>
        </div>
        <div className="trailer-more">
          <WeighedPart book={book} id={id} told={before} />
          <Lines title="Tyres" id="trailer-tyres" lines={told.tyres} />
          <section aria-labelledby="trailer-lashings">
            <h2 id="trailer-lashings">Lashings</h2>
            {told.lashings.map(({ way, words, because }) => (
              <details key={way}>
                <summary className="prints">{words}</summary>
                {because.map((line) => (
                  <p key={line}>{line}</p>
                ))}
              </details>
            ))}
            {told.lashings.length === 0 && (
              <p className="soft">Once the boat stands on it, what holds her is told here.</p>
            )}
          </section>
          {record.note && <p className="soft">{record.note}</p>}
          <Lines title="Take care" id="trailer-care" lines={told.cautions} />
        </div>
      </div>
      {open?.sheet === 'trailer' && <TrailerSheet book={book} id={id} today={today} onClose={() => setOpen(null)} />}
      {open?.sheet === 'thing' && <CarriedSheet book={book} trailer={id} id={open.id} onClose={() => setOpen(null)} />}
      {shown && <FigureSheet figure={shown} onClose={() => setOpen(null)} />}
    </>
  );
}

function Lines({
  title,
  id,
  lines,
}: {
  readonly title: string;
  readonly id: string;
  readonly lines: readonly string[];
}) {
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}
