/** The boat's load paths; or one of them: whether it holds, what gives first, what does not fit, and the chain itself. */
import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import type { Book, Id, LoadPathRecord } from '#boat-book';
import { caseInWind, loadPathTold, pathMendings, standingRigs } from '#reckoning';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { PickField } from '../../../../parts/choice-fields.tsx';
import { MarkedLine } from '../../../../parts/marked-line.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../../parts/opened.tsx';
import { SliderField } from '../../../../parts/slider-field.tsx';
import { todayAt } from '../../../../reading/today.ts';
import { useOpenBook } from '../../../../reading/use-open-book.ts';
import { address } from '../../../../shell/route.ts';
import { ChainDrawing } from './chain-drawing.tsx';
import { MendList } from './mend-list.tsx';
import './path.css';
import { PathPicture } from './path-picture.tsx';
import { PathsList } from './paths-list.tsx';

const CaseSheet = onDemand(() => import('./case-sheet.tsx'));
const PartSheet = onDemand(() => import('./part-sheet.tsx'));
const PathSheet = onDemand(() => import('./path-sheet.tsx'));
const PartToldSheet = onDemand(() => import('./part-told-sheet.tsx'));

export default function PathPage({ id }: { readonly id: Id | undefined }) {
  const book = useOpenBook();
  if (id === undefined) return <PathsList book={book} />;
  if (book.loadPaths[id] === undefined)
    return (
      <>
        <h1>No such load path</h1>
        <p>It was taken out of the book.</p>
      </>
    );
  return <OnePath book={book} id={id} />;
}

type Open =
  | { readonly sheet: 'path' }
  | { readonly sheet: 'told'; readonly part: Id }
  | { readonly sheet: 'part'; readonly part: Id | null; readonly after: Id | null }
  | { readonly sheet: 'case'; readonly one: Id | null };

const uses = {
  'standing-rigging': 'standing rigging',
  'running-rigging': 'running rigging',
  'ground-tackle': 'anchor and rode',
  hoist: 'hoisting or holding up',
} as const;
/** winds that the slider goes through, in knots */
const windRange = { min: 5, max: 60 } as const;

function OnePath({ book, id }: { readonly book: Book; readonly id: Id }) {
  const record = book.loadPaths[id]!;
  return (
    <>
      <p className="boat-back no-print">
        <a className="button words" href={address('boat', 'loads', 'path')}>
          ‹ Load paths
        </a>
      </p>
      <h1>{record.name}</h1>
      <p className="soft">
        {[uses[record.use], record.zone && book.zones[record.zone]?.name, record.note].filter(Boolean).join(' · ')}
      </p>
      <BelowHeading>
        <PathBelow book={book} id={id} record={record} />
      </BelowHeading>
    </>
  );
}

function PathBelow({ book, id, record }: { readonly book: Book; readonly id: Id; readonly record: LoadPathRecord }) {
  const today = todayAt(book);
  const sheet = useOpened<Open>();
  const [looked, setLooked] = useState<{ readonly one: Id; readonly wind_kn: number | null } | null>(null);
  const chosen =
    record.cases.find((one) => one.id === looked?.one) ?? record.cases.toSorted((a, b) => b.force_N - a.force_N)[0];
  const wind_kn = looked?.wind_kn ?? chosen?.wind_kn ?? null;
  // the slider moves with the finger; what follows from it is reckoned and drawn after that
  const followed_kn = useDeferredValue(wind_kn);
  const told = useMemo(() => {
    const cases = record.cases.map((one) =>
      one === chosen && followed_kn !== null ? caseInWind(one, followed_kn) : one,
    );
    return loadPathTold(id, { ...record, cases }, today);
  }, [id, record, chosen, followed_kn, today]);
  const borne = told.cases.find((one) => one.id === chosen?.id) ?? null;
  const mendings = useMemo(() => pathMendings(record, told, borne, today), [record, told, borne, today]);
  const rigs = useMemo(() => standingRigs(book, today), [book, today]);
  const { close } = sheet;
  const change = useCallback((part: Id) => sheet.open({ sheet: 'part', part, after: null }), [sheet]);
  const tell = useCallback((part: Id) => sheet.open({ sheet: 'told', part }), [sheet]);
  const shownIn = (open: Open) =>
    open.sheet === 'told' ? told.parts.find((part) => part.id === open.part) : undefined;
  return (
    <>
      {record.parts.length === 0 ? (
        <p className="loads-verdict">No part is in it yet. Begin with what pulls, and end with what holds.</p>
      ) : (
        <p className="loads-verdict" role="status">
          {(borne?.lines.slice(1) ?? told.lines).join(' ')}
        </p>
      )}
      <div className="boat-acts no-print">
        <button
          type="button"
          className="main"
          onClick={() => sheet.open({ sheet: 'part', part: null, after: record.parts.at(-1)?.id ?? null })}
        >
          Add a part
        </button>
        <button type="button" onClick={() => sheet.open({ sheet: 'case', one: null })}>
          Add a load
        </button>
        <button type="button" onClick={() => sheet.open({ sheet: 'path' })}>
          Change its name or use
        </button>
      </div>
      {chosen !== undefined && record.parts.length > 0 && (
        <div className="path-load">
          <p className="soft">{borne?.lines[0]}</p>
          {record.cases.length > 1 && (
            <PickField
              label="Under"
              value={chosen.id}
              onChange={(one) => setLooked({ one, wind_kn: null })}
              options={record.cases.map((one) => ({ value: one.id, name: one.name }))}
            />
          )}
          {chosen.wind_kn !== null && wind_kn !== null && (
            <SliderField
              label="In a wind of"
              said={`${wind_kn} knots`}
              value={wind_kn}
              {...windRange}
              step={1}
              onChange={(knots) => setLooked({ one: chosen.id, wind_kn: knots })}
            />
          )}
        </div>
      )}
      <div className="path-beside">
        {record.parts.length > 0 && (
          <div className="path-drawings">
            <ChainDrawing
              record={record}
              told={told}
              shares={borne?.shares ?? null}
              mendings={mendings}
              rigs={rigs}
              today={today}
              onOpen={tell}
            />
            <PathPicture book={book} record={record} told={told} shares={borne?.shares ?? null} mendings={mendings} />
          </div>
        )}
        {record.parts.length > 0 && (
          <section className="path-findings" aria-labelledby="path-found">
            <h2 id="path-found">What was found</h2>
            <MendList book={book} path={id} told={told} mendings={mendings} onChange={change} />
          </section>
        )}
        <div className="path-rest">
          {borne !== null && told.lines.length > 0 && (
            <section aria-labelledby="path-whole">
              <h2 id="path-whole">As a whole</h2>
              {[...told.lines, ...told.steps].map((line) => (
                <p key={line}>{line}</p>
              ))}
            </section>
          )}
          <section aria-labelledby="path-loads">
            <h2 id="path-loads">What it must bear</h2>
            <ul>
              {record.cases.map((one) => (
                <MarkedLine
                  key={one.id}
                  title={one.name}
                  note={told.cases
                    .find((other) => other.id === one.id)
                    ?.lines.slice(1)
                    .join(' ')}
                  figure={
                    <button
                      type="button"
                      className="words"
                      aria-label={`Change the load: ${one.name}`}
                      onClick={() => sheet.open({ sheet: 'case', one: one.id })}
                    >
                      Change
                    </button>
                  }
                />
              ))}
            </ul>
            {record.cases.length === 0 && (
              <p className="soft">No load is given for it, so nothing is said of whether it holds.</p>
            )}
          </section>
          <section aria-labelledby="path-care">
            <h2 id="path-care">Take care</h2>
            {told.cautions.map((line) => (
              <p key={line} className="loads-caution">
                {line}
              </p>
            ))}
          </section>
        </div>
      </div>
      <OpenedSheet of={sheet}>
        {(open) => {
          const shown = shownIn(open);
          return (
            <>
              {open.sheet === 'path' && <PathSheet book={book} id={id} onClose={close} />}
              {open.sheet === 'case' && <CaseSheet book={book} path={id} id={open.one} onClose={close} />}
              {open.sheet === 'part' && (
                <PartSheet book={book} path={id} id={open.part} after={open.after} onClose={close} />
              )}
              {shown && (
                <PartToldSheet
                  told={told}
                  part={shown}
                  share={borne?.shares[told.parts.indexOf(shown)] ?? null}
                  onChange={() => change(shown.id)}
                  onAfter={() => sheet.open({ sheet: 'part', part: null, after: shown.id })}
                  onClose={close}
                />
              )}
            </>
          );
        }}
      </OpenedSheet>
    </>
  );
}
