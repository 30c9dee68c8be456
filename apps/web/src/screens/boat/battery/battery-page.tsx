/** One battery: how full now and why, the nights ahead, what reading would help; its readings. */
import { useCallback, useEffect, useState } from 'react';
import type { BatteryRecord, Book, Id } from '#boat-book';
import { type FigureOf, lineInWords } from '#reckoning';
import { localAt } from '#units';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import { dateInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../parts/opened.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { todayAt, zoneOf } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import './battery.css';
import { ChargingPart, type ChargingSheet } from './charging-part.tsx';
import { ForetoldPart } from './foretold-part.tsx';
import { keepForetold } from './keep-foretold.ts';
import { LoadTestResultSheet, LoadTestsPart } from './load-tests-part.tsx';
import { NightsDrawing } from './nights-drawing.tsx';
import { OpenWorking, ToldLines, ToldWords, WorkingSheet } from './told-words.tsx';
import { usePowerTold } from './use-power-told.ts';

const ReadingSheet = onDemand(() => import('./reading-sheet.tsx'));
const BatterySheet = onDemand(() => import('./battery-sheet.tsx'));
const LoadTestSheet = onDemand(() => import('./load-test-sheet.tsx'));
const PanelSheet = onDemand(() => import('./panel-sheet.tsx'));
const ChargerSheet = onDemand(() => import('./charger-sheet.tsx'));

type Open =
  | 'reading'
  | 'battery'
  | 'working'
  | 'load test'
  | ChargingSheet
  | { readonly of: 'result'; readonly id: Id }
  | { readonly of: 'figure'; readonly figure: FigureOf };

/** readings shown before more is asked for */
const shownAtFirst = 8;

export default function BatteryPage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const record = book.batteries[id];
  const back = (
    <p className="boat-back no-print">
      <a className="button words" href={address('boat')}>
        ‹ Boat
      </a>
    </p>
  );
  if (!record)
    return (
      <div className="boat">
        {back}
        <h1>No such battery</h1>
        <p>It was taken out of the book.</p>
      </div>
    );
  return (
    <div className="boat battery">
      {back}
      <h1>{record.name}</h1>
      <BelowHeading>
        <BatteryBelow book={book} id={id} record={record} />
      </BelowHeading>
    </div>
  );
}

function BatteryBelow({ book, id, record }: { readonly book: Book; readonly id: Id; readonly record: BatteryRecord }) {
  const sheet = useOpened<Open>();
  const { close } = sheet;
  const telling = usePowerTold(book, id);
  const openFigure = useCallback((figure: FigureOf) => sheet.open({ of: 'figure', figure }), [sheet]);
  const foretold = telling.state === 'told' ? telling.told.foretold : null;
  useEffect(() => {
    if (foretold !== null) void keepForetold(foretold);
  }, [foretold]);
  const told = telling.state === 'told' ? telling.told : null;
  return (
    <OpenWorking value={openFigure}>
      <p className="soft">{told?.label.replace(`${record.name}: `, '') ?? `${record.nominal_Ah} Ah`}</p>
      {telling.state === 'working out' && <p role="status">Working out how full it is …</p>}
      {telling.state === 'failed' && <p role="alert">It could not be worked out: {telling.because}</p>}
      <div className="battery-head">
        <div>
          {told && (
            <section aria-label="How full">
              {told.full.map((line, index) => (
                <ToldWords
                  key={lineInWords(line)}
                  line={line}
                  className={index === 0 ? 'battery-full' : 'battery-told'}
                />
              ))}
              {told.working.length > 0 && (
                <p>
                  <button type="button" className="words" onClick={() => sheet.open('working')}>
                    How all this is worked out
                  </button>
                </p>
              )}
            </section>
          )}
          <div className="boat-acts">
            <button type="button" className="main" onClick={() => sheet.open('reading')}>
              Read the volts
            </button>
            <button type="button" onClick={() => sheet.open('battery')}>
              Change the battery
            </button>
            <a className="button" href={address('boat', 'battery', id, 'readings')}>
              Readings from a file
            </a>
            <a className="button" href={address('boat', 'battery', id, 'card')}>
              The card to print
            </a>
          </div>
        </div>
        {told?.course && <NightsDrawing course={told.course} />}
      </div>
      <div className="battery-parts">
        {told?.parts
          .filter(({ of }) => of !== 'load tests' && of !== 'foretold')
          .map(({ of, title, lines }) => (
            <section key={title}>
              <h2>{title}</h2>
              <ToldLines lines={lines} />
              {of === 'draws' && (
                <a className="button words" href={address('boat', 'circuits')}>
                  Each circuit, and how it is worked out
                </a>
              )}
            </section>
          ))}
        <LoadTestsPart
          book={book}
          battery={id}
          trend={told?.loadTests}
          change={told?.loadTestsChange ?? null}
          onOpen={(test) => sheet.open({ of: 'result', id: test })}
          onAdd={() => sheet.open('load test')}
        />
        {told && <ForetoldPart nights={told.compared} today={todayAt(book)} />}
        <ChargingPart book={book} battery={id} onOpen={sheet.open} />
        <Readings id={id} />
        {told && (
          <section className="battery-cautions">
            <h2>Take care</h2>
            <ToldLines lines={told.cautions} />
          </section>
        )}
      </div>
      <OpenedSheet of={sheet}>
        {(open) => (
          <>
            {told && open === 'working' && <WorkingSheet workings={told.working} onClose={close} />}
            {told && typeof open === 'object' && open.of === 'figure' && (
              <WorkingSheet workings={told.working.filter(({ of }) => of === open.figure)} onClose={close} />
            )}
            {open === 'reading' && <ReadingSheet book={book} battery={id} onClose={close} />}
            {open === 'battery' && <BatterySheet book={book} id={id} onClose={close} />}
            {open === 'load test' && (
              <LoadTestSheet
                book={book}
                battery={id}
                stop_V={told?.stop_V ?? null}
                onKept={(test) => sheet.open({ of: 'result', id: test })}
                onClose={close}
              />
            )}
            {typeof open === 'object' && open.of === 'result' && (
              <LoadTestResultSheet book={book} id={open.id} trend={told?.loadTests} onClose={close} />
            )}
            {typeof open === 'object' && open.of === 'panel' && (
              <PanelSheet book={book} battery={id} id={open.id} onClose={close} />
            )}
            {typeof open === 'object' && open.of === 'charger' && (
              <ChargerSheet book={book} battery={id} id={open.id} onClose={close} />
            )}
          </>
        )}
      </OpenedSheet>
    </OpenWorking>
  );
}

function Readings({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const { run, refusal } = useRun();
  const [all, setAll] = useState(false);
  const today = todayAt(book);
  const zone = zoneOf(book);
  const readings = Object.entries(book.readings)
    .filter(([, { battery }]) => battery === id)
    .sort(([, a], [, b]) => b.at.localeCompare(a.at));
  const shown = all ? readings : readings.slice(0, shownAtFirst);
  return (
    <section className="battery-readings">
      <h2>Readings</h2>
      {readings.length === 0 && <p className="soft">None yet. The best is before sunrise, with all off.</p>}
      <RefusalLine refusal={refusal} />
      <ul>
        {shown.map(([reading, { at, volts, circumstance, on, air_C }]) => {
          const { day, minuteOfDay } = localAt(Date.parse(at), zone);
          const clock = `${String(Math.floor(minuteOfDay / 60)).padStart(2, '0')}:${String(minuteOfDay % 60).padStart(2, '0')}`;
          const lit = on.flatMap((circuit) => book.circuits[circuit]?.name ?? []);
          return (
            <MarkedLine
              key={reading}
              title={`${volts.toFixed(2)} V`}
              note={[
                `${dateInWords(day, today)} ${clock}`,
                lit.length > 0 ? `${circumstance}: ${lit.join(', ')}` : circumstance,
                air_C === null ? null : `${air_C} °C`,
              ]
                .filter((part) => part !== null)
                .join(' · ')}
              figure={
                <button
                  type="button"
                  className="words"
                  aria-label={`Take out the reading of ${volts.toFixed(2)} V, ${dateInWords(day, today)} ${clock}`}
                  onClick={() => void run('removeReading', { id: reading })}
                >
                  Take out
                </button>
              }
            />
          );
        })}
      </ul>
      {readings.length > shown.length && (
        <button type="button" className="words" onClick={() => setAll(true)}>
          All {readings.length} readings
        </button>
      )}
    </section>
  );
}
