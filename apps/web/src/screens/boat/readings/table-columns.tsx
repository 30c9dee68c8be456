/** The columns of a table: what was understood of them, each to be changed, and the first rows as they would be read. */
import { useEffect, useState } from 'react';
import { type PlanFaults, type ReadingLimits, type Separator, type TablePlan, timeExamples } from '#readings';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import { Refused } from '../../../parts/field.tsx';
import { NumberField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { stampInWords } from './moment-in-words.ts';
import type { FileReader } from './reading-files.ts';
import type { LookedFile, TriedRow } from './readings-worker.ts';
import { draftFrom, planFrom, type TableDraft } from './table-draft.ts';

type LookedTable = LookedFile & { readonly kind: 'table' };

const forms = [
  ['year first', 'year first'],
  ['day first', 'day first'],
  ['month first', 'month first'],
  ['seconds', 'seconds since 1970'],
  ['milliseconds', 'thousandths of a second since 1970'],
  ['sheet days', 'days, as spreadsheets count them'],
] as const;
const separatorNames: readonly { readonly value: Separator; readonly name: string }[] = [
  { value: ',', name: 'comma' },
  { value: ';', name: 'semicolon' },
  { value: '\t', name: 'tab' },
  { value: '|', name: 'upright line' },
];

export function TableColumns({
  looked,
  reader,
  limits,
  zone,
  onSeparator,
  onRead,
}: {
  readonly looked: LookedTable;
  readonly reader: FileReader;
  readonly limits: ReadingLimits;
  /** of the boat */
  readonly zone: string;
  readonly onSeparator: (separator: Separator) => void;
  readonly onRead: (plan: TablePlan) => void;
}) {
  const { look } = looked;
  const { draft, set } = useDraft<TableDraft>(draftFrom(look, zone));
  const [tried, setTried] = useState<{
    readonly faults: PlanFaults;
    readonly rows: readonly TriedRow[];
    readonly lost: string | null;
  }>({ faults: {}, rows: [], lost: null });
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    let live = true;
    const planned = planFrom(draft, look);
    if (planned.kind === 'open') setTried({ faults: {}, rows: [], lost: null });
    else
      void reader.worker.tryOut(planned.plan, limits).then((answer) => {
        if (live) setTried(answer);
      });
    return () => {
      live = false;
    };
  }, [draft, look, reader, limits]);

  const planned = planFrom(draft, look);
  // what is left open is asked for when it is to be read; what does not go with the figures is said at once
  const faults = { ...(asked ? planned.faults : {}), ...tried.faults };
  const columns = look.columns.map(({ name, samples }, n) => ({
    value: String(n),
    name: `${name}: ${samples.slice(0, 2).join(', ')} …`,
  }));
  return (
    <form
      noValidate
      className="readings-columns"
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(true);
        if (planned.kind === 'plan' && Object.keys({ ...planned.faults, ...tried.faults }).length === 0)
          onRead(planned.plan);
      }}
    >
      <h3>What stands in it</h3>
      <FirstRows looked={looked} draft={draft} />
      {looked.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      <div className="readings-fields">
        <div>
          <ChoiceField
            label="Time"
            value={draft.time}
            onChange={(value) => set('time', value)}
            options={columns}
            refused={faults.time}
          />
          <ChoiceField
            label="Time of day"
            value={draft.clock}
            onChange={(value) => set('clock', value)}
            none="in the same column"
            options={columns}
          />
          <ChoiceField
            label="How times are written"
            value={draft.form}
            onChange={(value) => set('form', value)}
            options={forms.map(([value, name]) => ({ value, name: `${name}: ${timeExamples[value]}` }))}
            refused={faults.form}
          />
          {!look.zoned && draft.form !== 'seconds' && draft.form !== 'milliseconds' && (
            <ChoiceField
              label="Zone the logger’s clock was in"
              note="A logger that is never put on an hour in spring is on UTC or its own winter time."
              value={draft.zone}
              onChange={(value) => set('zone', value)}
              options={zonesWith(zone)}
            />
          )}
        </div>
        <div>
          <ChoiceField
            label="Volts"
            value={draft.volts}
            onChange={(value) => set('volts', value)}
            options={columns}
            refused={faults.volts}
          />
          <PickField
            label="Volts are in"
            value={draft.voltsUnit}
            onChange={(value) => set('voltsUnit', value)}
            options={plain(['V', 'mV'])}
          />
          <ChoiceField
            label="Current"
            value={draft.current}
            onChange={(value) => set('current', value)}
            none="not in the file"
            options={columns}
            refused={faults.current}
          />
          {draft.current !== '' && (
            <>
              <PickField
                label="Current is in"
                value={draft.currentUnit}
                onChange={(value) => set('currentUnit', value)}
                options={plain(['A', 'mA'])}
              />
              <PickField
                label="A current over nought flows"
                value={draft.positive}
                onChange={(value) => set('positive', value)}
                options={plain(['out of the battery', 'into the battery'])}
                refused={faults.positive}
              />
            </>
          )}
          <ChoiceField
            label="Temperature at the battery"
            value={draft.air}
            onChange={(value) => set('air', value)}
            none="not in the file"
            options={columns}
            refused={faults.air}
          />
          {draft.air !== '' && (
            <PickField
              label="Temperature is in"
              value={draft.airUnit}
              onChange={(value) => set('airUnit', value)}
              options={plain(['°C', '°F'])}
            />
          )}
        </div>
      </div>
      <details className="field-group">
        <summary>
          How the file is written{' '}
          <span className="soft">
            {separatorNames.find(({ value }) => value === look.separator)?.name} between columns, decimal{' '}
            {draft.decimal === '.' ? 'point' : 'comma'}
          </span>
        </summary>
        <PickField
          label="Columns are parted by"
          value={look.separator}
          onChange={onSeparator}
          options={separatorNames}
        />
        <PickField
          label="Decimal sign"
          value={draft.decimal}
          onChange={(value) => set('decimal', value)}
          options={[
            { value: '.', name: 'point: 12.45' },
            { value: ',', name: 'comma: 12,45' },
          ]}
        />
        <NumberField
          label="Rows above the first reading"
          unit="rows"
          whole
          value={draft.headRows}
          onChange={(value) => set('headRows', value)}
          refused={planned.faults.headRows}
        />
      </details>
      <AsRead rows={tried.rows} zone={zone} lost={tried.lost} plan={planned.kind === 'plan' ? planned.plan : null} />
      <div className="boat-acts">
        <button type="submit" className="main">
          Read the file
        </button>
        <div role="alert">
          {asked && Object.keys(faults).length > 0 && <Refused text="Not read yet: see the marked fields." />}
        </div>
      </div>
    </form>
  );
}

const plain = <const V extends string>(values: readonly V[]) => values.map((value) => ({ value, name: value }));

/** All zones this device knows, the boat’s first. */
function zonesWith(boat: string) {
  const all = Intl.supportedValuesOf('timeZone').filter((name) => name !== boat && name !== 'UTC');
  return [
    { value: boat, name: `${boat}, the boat’s` },
    ...(boat === 'UTC' ? [] : [{ value: 'UTC', name: 'UTC' }]),
    ...plain(all),
  ];
}

function FirstRows({ looked: { look, rows }, draft }: { readonly looked: LookedTable; readonly draft: TableDraft }) {
  const said = { time: 'time', clock: 'time of day', volts: 'volts', current: 'current', air: 'temperature' } as const;
  const heads = look.columns.map((_, n) => {
    const what = (['time', 'clock', 'volts', 'current', 'air'] as const).find((each) => draft[each] === String(n));
    return { id: `column ${n}`, what: what && said[what] };
  });
  const lines = rows.map((cells, n) => ({
    id: `row ${n}`,
    cells: look.columns.map((_, column) => ({ id: `cell ${column}`, text: cells[column] ?? '' })),
  }));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <section className="readings-rows" tabIndex={0} aria-label="The first rows of the file">
      <table>
        <thead>
          <tr>
            {heads.map(({ id, what }) => (
              <th key={id} scope="col">
                <span className={what ? 'readings-taken' : 'soft'}>{what ?? 'not read'}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ id, cells }) => (
            <tr key={id}>
              {cells.map((cell) => (
                <td key={cell.id}>{cell.text}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function AsRead({
  rows,
  zone,
  lost,
  plan,
}: {
  readonly rows: readonly TriedRow[];
  readonly zone: string;
  readonly lost: string | null;
  readonly plan: TablePlan | null;
}) {
  if (plan === null) return null;
  return (
    <div className="readings-tried">
      <h3>So read, the first rows say</h3>
      {rows.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">At the boat</th>
              <th scope="col">V</th>
              {plan.current && <th scope="col">A out</th>}
              {plan.air && <th scope="col">°C</th>}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ at, volts, current, air }) => (
              <tr key={at}>
                <td>{stampInWords(at, zone)}</td>
                <td>{volts?.toFixed(2) ?? '–'}</td>
                {plan.current && <td>{current?.toFixed(2) ?? '–'}</td>}
                {plan.air && <td>{air?.toFixed(1) ?? '–'}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {lost && <Refused text={lost} />}
    </div>
  );
}
