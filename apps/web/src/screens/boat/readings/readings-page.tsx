/** The readings of a battery that came from files: taken in, listed, drawn. */
import { useState } from 'react';
import type { BatteryRecord, Book, Id, ReadingBlock } from '#boat-book';
import { gapsIn } from '#readings';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { Refused } from '../../../parts/field.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { zoneOf } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { FileImport } from './file-import.tsx';
import { many, stampInWords, stretchInWords } from './moment-in-words.ts';
import './readings.css';
import { pitchInWords, ReadingsDrawing } from './readings-drawing.tsx';
import { useBlock } from './use-block.ts';

export default function ReadingsPage({ id }: { readonly id: Id }) {
  const book = useOpenBook();
  const record = book.batteries[id];
  if (!record)
    return (
      <div className="boat">
        <p className="boat-back no-print">
          <a className="button words" href={address('boat')}>
            ‹ Boat
          </a>
        </p>
        <h1>No such battery</h1>
        <p>It was taken out of the book.</p>
      </div>
    );
  return (
    <div className="boat readings">
      <p className="boat-back no-print">
        <a className="button words" href={address('boat', 'battery', id)}>
          ‹ {record.name}
        </a>
      </p>
      <h1>Readings from files</h1>
      <BelowHeading>
        <ReadingsBelow book={book} id={id} record={record} />
      </BelowHeading>
    </div>
  );
}

function ReadingsBelow({ book, id, record }: { readonly book: Book; readonly id: Id; readonly record: BatteryRecord }) {
  const { run, refusal } = useRun();
  const [chosen, setChosen] = useState<Id | null>(null);
  const zone = zoneOf(book);
  const blocks = Object.entries(book.readingBlocks)
    .filter(([, { battery }]) => battery === id)
    .sort(([, a], [, b]) => b.to.localeCompare(a.to));
  const drawn = blocks.find(([block]) => block === chosen) ?? blocks[0];
  return (
    <>
      <FileImport battery={id} record={record} zone={zone} onKept={setChosen} />
      {drawn && <Drawn key={drawn[0]} book={book} id={drawn[0]} block={drawn[1]} zone={zone} />}
      <section aria-labelledby="readings-kept">
        <h2 id="readings-kept">In the book</h2>
        {blocks.length === 0 && <p className="soft">None yet.</p>}
        <RefusalLine refusal={refusal} />
        <ul>
          {blocks.map(([block, { file, count, from, to }]) => (
            <MarkedLine
              key={block}
              title={file}
              note={`${count === 1 ? '1 reading' : `${many(count)} readings`}, ${stampInWords(Date.parse(from), zone)} to ${stampInWords(Date.parse(to), zone)}`}
              figure={
                <span className="readings-acts">
                  {drawn?.[0] !== block && (
                    <button type="button" className="words" onClick={() => setChosen(block)}>
                      Draw
                    </button>
                  )}
                  <button
                    type="button"
                    className="words"
                    aria-label={`Take out the readings from ${file}`}
                    onClick={() => void run('removeReadingBlock', { id: block })}
                  >
                    Take out
                  </button>
                </span>
              }
            />
          ))}
        </ul>
      </section>
    </>
  );
}

function Drawn({
  book,
  id,
  block,
  zone,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly block: ReadingBlock;
  readonly zone: string;
}) {
  const here = useBlock(block);
  return (
    <section aria-labelledby="readings-drawn">
      <h2 id="readings-drawn">{block.file}</h2>
      {here.state === 'fetching' && <p role="status">Fetching {many(block.count)} readings …</p>}
      {here.state === 'not here' && <Refused text={here.because} />}
      {here.state === 'here' && (
        <>
          <Said at={here.columns.at} zone={zone} />
          <ReadingsDrawing columns={here.columns} book={book} block={id} zone={zone} />
        </>
      )}
    </section>
  );
}

/** gaps told one by one */
const gapsTold = 3;

function Said({ at, zone }: { readonly at: Float64Array; readonly zone: string }) {
  const gaps = gapsIn(at).sort((a, b) => b.to - b.from - (a.to - a.from));
  return (
    <>
      <p>
        {at.length === 1 ? '1 reading' : `${many(at.length)} readings`} from {stampInWords(at[0]!, zone)} to{' '}
        {stampInWords(at.at(-1)!, zone)}
        {pitchInWords(at)}.
      </p>
      {gaps.length > 0 && (
        <p>
          {gaps.length === 1 ? 'One gap' : `${many(gaps.length)} gaps`}:{' '}
          {gaps
            .slice(0, gapsTold)
            .map(({ from, to }) => `${stretchInWords(to - from)} from ${stampInWords(from, zone)}`)
            .join('; ')}
          {gaps.length > gapsTold ? '; the others are shorter' : ''}.
        </p>
      )}
    </>
  );
}
