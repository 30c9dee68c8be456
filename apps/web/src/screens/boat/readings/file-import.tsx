/** A file of readings taken in: looked at, its columns put right, read with progress, kept. */
import { proxy } from 'comlink';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { BatteryRecord, Id } from '#boat-book';
import type { SentencePlan, Separator, TablePlan } from '#readings';
import { bookClient } from '../../../offline/book-client.ts';
import { Refused } from '../../../parts/field.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import type { Refusal } from '../../../parts/use-run.ts';
import { ImportReport } from './import-report.tsx';
import { many } from './moment-in-words.ts';
import { beginReading, type FileReader, limitsOf } from './reading-files.ts';
import type { FileReport, LookedFile } from './readings-worker.ts';
import { SentenceColumns } from './sentence-columns.tsx';
import { TableColumns } from './table-columns.tsx';

type Stage =
  | { readonly at: 'nothing' }
  | { readonly at: 'looking' }
  | { readonly at: 'refused'; readonly wrong: string; readonly right: string }
  | { readonly at: 'columns' }
  | { readonly at: 'reading'; readonly share: number }
  | { readonly at: 'read'; readonly report: FileReport }
  | { readonly at: 'kept'; readonly count: number };

type Looked = Exclude<LookedFile, { kind: 'refused' }>;

export function FileImport({
  battery,
  record,
  zone,
  onKept,
}: {
  readonly battery: Id;
  readonly record: BatteryRecord;
  readonly zone: string;
  /** the new block */
  readonly onKept: (block: Id) => void;
}) {
  const chooser = useRef<HTMLInputElement>(null);
  const reader = useRef<FileReader | null>(null);
  const [file, setFile] = useState('');
  const [looked, setLooked] = useState<Looked | null>(null);
  const [stage, setStage] = useState<Stage>({ at: 'nothing' });
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const limits = useMemo(() => limitsOf(record), [record]);
  useEffect(() => () => reader.current?.stop(), []);

  const failed = (cause: unknown) =>
    setStage({
      at: 'refused',
      wrong: `The file could not be read: ${cause instanceof Error ? cause.message : String(cause)}.`,
      right: 'a file that this device can open; choose it again',
    });
  const open = async (chosen: File | undefined) => {
    if (!chosen) return;
    reader.current?.stop();
    const mine = beginReading();
    reader.current = mine;
    setFile(chosen.name);
    setLooked(null);
    setRefusal(null);
    setStage({ at: 'looking' });
    try {
      const found = await mine.worker.open(chosen, limits);
      if (reader.current !== mine) return;
      if (found.kind === 'refused') setStage({ at: 'refused', ...found });
      else {
        setLooked(found);
        setStage({ at: 'columns' });
      }
    } catch (cause) {
      if (reader.current === mine) failed(cause);
    }
  };
  const separate = async (separator: Separator) => {
    const found = await reader.current?.worker.look(separator, looked?.notes ?? [], limits);
    if (found && found.kind !== 'refused') setLooked(found);
  };
  const read = async (plan: { readonly table: TablePlan } | { readonly sentences: SentencePlan }) => {
    const mine = reader.current;
    if (mine === null) return;
    setRefusal(null);
    setStage({ at: 'reading', share: 0 });
    try {
      const told = proxy((share: number) => {
        if (reader.current === mine) setStage((now) => (now.at === 'reading' ? { at: 'reading', share } : now));
      });
      const report = await mine.worker.read(plan, limits, told);
      if (reader.current === mine) setStage({ at: 'read', report });
    } catch (cause) {
      if (reader.current === mine) failed(cause);
    }
  };
  const keep = async (count: number) => {
    const mine = reader.current;
    if (mine === null) return;
    const { block, bytes } = await mine.worker.block(battery, file);
    const outcome = await bookClient.keepBlob('keepReadingBlock', block, bytes);
    if (outcome.kind === 'refused') return setRefusal(outcome);
    setRefusal(null);
    leave({ at: 'kept', count });
    if (outcome.id !== null) onKept(outcome.id);
  };
  const leave = (to: Stage) => {
    reader.current?.stop();
    reader.current = null;
    setLooked(null);
    setStage(to);
  };
  return (
    <section aria-labelledby="readings-import">
      <h2 id="readings-import">From a file</h2>
      {stage.at !== 'columns' && stage.at !== 'reading' && stage.at !== 'read' && (
        <>
          <p>
            A logger’s table (CSV or text) with a time and volts in each row, or a file of NMEA 0183 sentences. Current
            and temperature are taken too where they are there.
          </p>
          <div className="boat-acts">
            <button type="button" className="main" onClick={() => chooser.current?.click()}>
              Choose a file
            </button>
          </div>
        </>
      )}
      <input
        ref={chooser}
        type="file"
        hidden
        aria-label="File of readings"
        onChange={(event) => {
          void open(event.target.files?.[0]);
          event.target.value = '';
        }}
      />
      {file !== '' && (stage.at === 'columns' || stage.at === 'reading' || stage.at === 'read') && (
        <p className="readings-file">
          <b>{file}</b>
          <button type="button" className="words" onClick={() => leave({ at: 'nothing' })}>
            Leave it
          </button>
        </p>
      )}
      <div role="status">
        {stage.at === 'looking' && <p>Looking at {file} …</p>}
        {stage.at === 'kept' && (
          <p>
            {many(stage.count)} readings from {file} are in the book.
          </p>
        )}
        {stage.at === 'refused' && (
          <>
            <Refused text={`${file} was not read; nothing in your book has changed.`} />
            <p>{stage.wrong}</p>
            <p>Right would be {stage.right}.</p>
          </>
        )}
      </div>
      {looked && reader.current && (
        <div hidden={stage.at !== 'columns'}>
          {looked.kind === 'table' ? (
            <TableColumns
              key={looked.look.separator}
              looked={looked}
              reader={reader.current}
              limits={limits}
              zone={zone}
              onSeparator={(separator) => void separate(separator)}
              onRead={(table) => void read({ table })}
            />
          ) : (
            <SentenceColumns transducers={looked.transducers} onRead={(sentences) => void read({ sentences })} />
          )}
        </div>
      )}
      {stage.at === 'reading' && (
        <div className="readings-progress">
          <progress aria-label="How far it is read" max={1} value={stage.share} />
          <p>Reading, {Math.round(100 * stage.share)} %</p>
          <button type="button" onClick={() => leave({ at: 'nothing' })}>
            Stop
          </button>
        </div>
      )}
      {stage.at === 'read' && (
        <>
          <ImportReport report={stage.report} zone={zone} />
          <div role="alert">
            <RefusalLine refusal={refusal} />
          </div>
          <div className="boat-acts">
            {stage.report.count > 0 && (
              <button type="button" className="main" onClick={() => void keep(stage.report.count)}>
                Keep {stage.report.count === 1 ? 'this reading' : 'these readings'}
              </button>
            )}
            <button type="button" onClick={() => setStage({ at: 'columns' })}>
              Back to the columns
            </button>
          </div>
        </>
      )}
    </section>
  );
}
