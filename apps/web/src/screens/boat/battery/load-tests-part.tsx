/** The load tests of a battery: what each said it is worth, drawn by date where there are several. */
import type { Book, Id } from '#boat-book';
import { type LoadTestTrend, lineInWords, loadTestInWords, type ToldLine } from '#reckoning';
import { localAt } from '#units';
import { RefusalLine } from '../../../parts/form.tsx';
import { dateInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { todayAt, zoneOf } from '../../../reading/today.ts';
import { LoadTestsDrawing } from './load-tests-drawing.tsx';
import { ToldWords } from './told-words.tsx';

const noPlace =
  'What flowed cannot be worked out without a place: put in where the boat lies, and the load tests say what the battery is worth.';

export function LoadTestsPart({
  book,
  battery,
  trend,
  change,
  onOpen,
  onAdd,
}: {
  readonly book: Book;
  readonly battery: Id;
  /** undefined: it is not worked out yet; null: the book has no place, so it cannot be */
  readonly trend: LoadTestTrend | null | undefined;
  /** what becomes of the battery over the tests, in words; null: they do not say */
  readonly change: ToldLine | null;
  readonly onOpen: (test: Id) => void;
  readonly onAdd: () => void;
}) {
  const today = todayAt(book);
  const tests = trend?.tests ?? [];
  const label_Ah = book.batteries[battery]!.nominal_Ah;
  return (
    <section>
      <h2>Load tests</h2>
      {trend === null && <p className="soft">{noPlace}</p>}
      {trend?.tests.length === 0 && (
        <p className="soft">
          None yet. A lamp of known watts on for some hours, and the volts every hour, say what it is really worth.
        </p>
      )}
      {tests.length > 1 && <LoadTestsDrawing tests={tests} label_Ah={label_Ah} today={today} />}
      {change !== null && <ToldWords line={change} />}
      <ul>
        {[...tests].reverse().map(({ id, day, capacity_Ah, drawn_Ah, hours, readings }) => (
          <MarkedLine
            key={id}
            title={`${capacity_Ah.likely.toFixed(0)} Ah (${capacity_Ah.low.toFixed(0)} to ${capacity_Ah.high.toFixed(0)})`}
            note={`${dateInWords(day, today)} · ${drawn_Ah.toFixed(1)} Ah drawn in ${hours.toFixed(1)} h · ${readings} readings`}
            figure={
              <button
                type="button"
                className="words"
                aria-label={`What the load test of ${dateInWords(day, today)} says`}
                onClick={() => onOpen(id)}
              >
                Read it
              </button>
            }
          />
        ))}
      </ul>
      <div className="boat-acts">
        <button type="button" onClick={onAdd}>
          Enter a load test
        </button>
      </div>
    </section>
  );
}

/** One load test: what it says, from what. */
export function LoadTestResultSheet({
  book,
  id,
  trend,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly trend: LoadTestTrend | null | undefined;
  readonly onClose: () => void;
}) {
  const { run, refusal } = useRun();
  const test = book.loadTests[id];
  const today = todayAt(book);
  const zone = zoneOf(book);
  if (test === undefined) return null;
  const record = book.batteries[test.battery]!;
  const result = trend?.tests.find((each) => each.id === id);
  const load =
    test.watts === null
      ? `${book.circuits[test.circuit ?? '']?.name ?? 'a circuit'}, ${book.circuits[test.circuit ?? '']?.watts ?? '?'} W`
      : `${test.watts} W`;
  return (
    <Sheet title="What the load test says" onClose={onClose}>
      {trend === null && <p>{noPlace}</p>}
      {trend !== null && result === undefined && <p role="status">Working out what it says …</p>}
      {result !== undefined && (
        <div className="battery-result">
          {loadTestInWords(result, record).map((line, i) => (
            <ToldWords key={lineInWords(line)} line={line} className={i === 0 ? 'battery-full' : 'battery-told'} />
          ))}
        </div>
      )}
      <h3>From</h3>
      <p>
        {load}. {test.note}
      </p>
      <table className="battery-read">
        <thead>
          <tr>
            <th scope="col">read</th>
            <th scope="col">volts</th>
            <th scope="col">how</th>
          </tr>
        </thead>
        <tbody>
          {test.readings.flatMap((reading) => {
            const read = book.readings[reading];
            if (read === undefined) return [];
            const { day, minuteOfDay } = localAt(Date.parse(read.at), zone);
            const clock = `${String(Math.floor(minuteOfDay / 60)).padStart(2, '0')}:${String(minuteOfDay % 60).padStart(2, '0')}`;
            return [
              <tr key={reading}>
                <td>
                  {dateInWords(day, today)} {clock}
                </td>
                <td>{read.volts.toFixed(2)}</td>
                <td>{read.circumstance}</td>
              </tr>,
            ];
          })}
        </tbody>
      </table>
      <RefusalLine refusal={refusal} />
      <div className="boat-acts">
        <button
          type="button"
          className="removes"
          onClick={async () => {
            const outcome = await run('removeLoadTest', { id });
            if (outcome.kind === 'done') onClose();
          }}
        >
          Take the test out
        </button>
      </div>
      <p className="soft small">Its readings stay among the readings.</p>
    </Sheet>
  );
}
