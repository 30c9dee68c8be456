/** A load test put in: what drew, the volts before it was switched on, and what was read while it was on. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { addDays, localAt } from '#units';
import { ChoiceField, TickField } from '../../../parts/choice-fields.tsx';
import { Form } from '../../../parts/form.tsx';
import type { Faults } from '../../../parts/read-form.ts';
import { Sheet } from '../../../parts/sheet.tsx';
import { ClockField, DayField, NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { useRun } from '../../../parts/use-run.ts';
import { zoneOf } from '../../../reading/today.ts';
import { hourAfter, type LoadTestDraft, readLoadTest, type TestField, type TestLine } from './load-test-draft.ts';

/** Before this hour of the day a test is most likely last evening’s. */
const lastEveningUntil_min = 15 * 60;
const linesAtFirst = 3;

export default function LoadTestSheet({
  book,
  battery,
  stop_V,
  onKept,
  onClose,
}: {
  readonly book: Book;
  readonly battery: Id;
  /** what the floor reads rested; null: not worked out yet */
  readonly stop_V: number | null;
  readonly onKept: (test: Id) => void;
  readonly onClose: () => void;
}) {
  const record = book.batteries[battery]!;
  const zone = zoneOf(book);
  const { draft, set, changed } = useDraft<LoadTestDraft>(emptyDraft(zone));
  const [faults, setFaults] = useState<Faults<TestField>>({});
  const { run, refusal } = useRun();
  const circuits = Object.entries(book.circuits).filter(
    ([, circuit]) => circuit.battery === battery && circuit.uses.kind !== 'always' && circuit.watts > 0,
  );
  const setLine = (i: number, line: Partial<TestLine>) =>
    set(
      'lines',
      draft.lines.map((each, n) => (n === i ? { ...each, ...line } : each)),
    );
  const setStart = (clock: string) => {
    set('start', { ...draft.start, clock });
    // hourly from there, unless times were put in already
    if (draft.lines.every((line, i) => line.clock === hoursAfter(draft.start.clock, i + 1)))
      set(
        'lines',
        draft.lines.map((line, i) => ({ ...line, clock: hoursAfter(clock, i + 1) })),
      );
  };
  const keep = async () => {
    const read = readLoadTest(draft, record, battery, zone, Date.now());
    setFaults(read.kind === 'refused' ? read.faults : {});
    if (read.kind === 'refused') return;
    const outcome = await run('enterLoadTest', read.fields);
    if (outcome.kind === 'done' && outcome.id !== null) onKept(outcome.id);
  };
  return (
    <Sheet title={`${record.name}: a load test`} onClose={onClose} unsaved={changed}>
      <Form keep="Keep it and read the result" onKeep={keep} faults={faults} refusal={refusal} inSight>
        <p className="soft small battery-lead">
          Panel dark, nothing else on, a lamp of known watts for some hours, the volts every hour; the last reading
          while it is still on.
        </p>
        <div className="battery-caution">
          <p>
            <b>Take care:</b>{' '}
            {stop_V === null
              ? 'Stop at its floor. '
              : `Stop when it shows ${stop_V.toFixed(2)} V: its floor of ${record.floor_pct} %. `}
            A spanner across the terminals glows in a second: rings and watch off, and a fuse in the lead of the lamp.
          </p>
          <p className="battery-care">
            {record.chemistry === 'lifepo4'
              ? 'Charge it afterwards, but never below 0 °C.'
              : 'Charge it the same day. Lead on charge gives off hydrogen: locker open, no flame and no spark.'}
          </p>
        </div>
        <ChoiceField
          label="What drew"
          value={draft.load}
          onChange={(value) => set('load', value)}
          options={[
            ...circuits.map(([value, { name, watts }]) => ({ value, name: `${name}, ${watts} W` })),
            { value: 'watts', name: 'something else, by its watts' },
          ]}
          refused={faults.load}
        />
        {draft.load === 'watts' && (
          <NumberField
            label="Its watts"
            unit="W"
            note="Measured, or off its label."
            value={draft.watts}
            onChange={(text) => set('watts', text)}
            refused={faults.watts}
          />
        )}
        <DayField
          label="Switched on, on the"
          value={draft.day}
          onChange={(text) => set('day', text)}
          refused={faults.day}
        />
        <Line
          line={draft.start}
          clockLabel="Switched on at"
          voltsLabel="Volts just before"
          onClock={setStart}
          onVolts={(volts) => set('start', { ...draft.start, volts })}
          clockRefused={faults.clock}
          voltsRefused={faults.volts}
        />
        <TickField
          label="It was rested then"
          note="All off for hours, panel dark."
          value={draft.rested}
          onChange={(on) => set('rested', on)}
        />
        {draft.lines.map((line, i) => (
          <Line
            // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place in the list
            key={i}
            line={line}
            clockLabel={`${i + 1}. read at`}
            voltsLabel={`${i + 1}. volts, with it on`}
            onClock={(clock) => setLine(i, { clock })}
            onVolts={(volts) => setLine(i, { volts })}
            clockRefused={faults[`clock ${i}`]}
            voltsRefused={faults[`volts ${i}`]}
          />
        ))}
        <p className="field-note">
          A time that is not after the one before it is the next day’s. Empty lines are passed over.
        </p>
        <p>
          <button
            type="button"
            className="words"
            onClick={() =>
              set('lines', [...draft.lines, { clock: hourAfter((draft.lines.at(-1) ?? draft.start).clock), volts: '' }])
            }
          >
            Add a line
          </button>
        </p>
        <NumberField
          label="Air, if you know it"
          unit="°C"
          value={draft.air}
          onChange={(text) => set('air', text)}
          refused={faults.air}
        />
        <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
      </Form>
    </Sheet>
  );
}

function Line({
  line,
  clockLabel,
  voltsLabel,
  onClock,
  onVolts,
  clockRefused,
  voltsRefused,
}: {
  readonly line: TestLine;
  readonly clockLabel: string;
  readonly voltsLabel: string;
  readonly onClock: (clock: string) => void;
  readonly onVolts: (volts: string) => void;
  readonly clockRefused: string | undefined;
  readonly voltsRefused: string | undefined;
}) {
  return (
    <div className="battery-line">
      <ClockField label={clockLabel} value={line.clock} onChange={onClock} refused={clockRefused} />
      <NumberField label={voltsLabel} unit="V" value={line.volts} onChange={onVolts} refused={voltsRefused} />
    </div>
  );
}

function hoursAfter(clock: string, hours: number): string {
  let after = clock;
  for (let n = 0; n < hours; n++) after = hourAfter(after);
  return after;
}

function emptyDraft(zone: string): LoadTestDraft {
  const { day, minuteOfDay } = localAt(Date.now(), zone);
  return {
    load: '',
    watts: '',
    day: minuteOfDay < lastEveningUntil_min ? addDays(day, -1) : day,
    start: { clock: '', volts: '' },
    rested: false,
    lines: Array.from({ length: linesAtFirst }, () => ({ clock: '', volts: '' })),
    air: '',
    note: '',
  };
}
