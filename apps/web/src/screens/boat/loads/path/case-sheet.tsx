/** A load that a path must bear: how much, in what wind, and whose figure it is. */
import type { Book, Id, LoadPathRecord } from '#boat-book';
import { PickField } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';

type Named = 'name' | 'force' | 'wind' | 'from';
type LoadCase = LoadPathRecord['cases'][number];

/** Newtons in what a load is typed in; of a mass the weight of it. */
const unit_N = { N: 1, kN: 1000, kg: 9.80665 } as const;

export default function CaseSheet({
  book,
  path,
  id,
  onClose,
}: {
  readonly book: Book;
  readonly path: Id;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const { cases } = book.loadPaths[path]!;
  const record = cases.find((one) => one.id === id);
  const { draft, set, changed } = useDraft<{
    name: string;
    force: string;
    unit: keyof typeof unit_N;
    wind: string;
    from: string;
  }>({
    name: record?.name ?? '',
    force: record?.force_N.toString() ?? '',
    unit: 'N',
    wind: record?.wind_kn?.toString() ?? '',
    from: record?.from ?? '',
  });
  const read = (form: FormReading<Named>): LoadCase => {
    const newtons = unit_N[draft.unit];
    const force = form.figure('force', draft.force, {
      min: Number((0.1 / newtons).toPrecision(2)),
      max: Math.floor(1_000_000 / newtons),
      unit: draft.unit,
    });
    return {
      id: id ?? crypto.randomUUID(),
      name: form.words('name', draft.name, 'Say when it pulls so, such as: a night at anchor.'),
      force_N: Number((force * newtons).toPrecision(6)),
      wind_kn: form.figureOrNone('wind', draft.wind, { min: 1, max: 120, unit: 'knots' }),
      from: form.words('from', draft.from, 'Say whose figure it is: measured, worked out, a guess.'),
    };
  };
  return (
    <RecordSheet
      title={record ? `Change the load: ${record.name}` : 'A load'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(one, run) =>
        run('changeLoadPath', {
          id: path,
          cases: record ? cases.map((other) => (other.id === id ? one : other)) : [...cases, one],
        })
      }
      onRemove={
        record && ((run) => run('changeLoadPath', { id: path, cases: cases.filter((other) => other.id !== id) }))
      }
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField
            label="When it pulls so"
            note="Such as: a night at anchor, beating under full sail."
            value={draft.name}
            onChange={(text) => set('name', text)}
            refused={faults.name}
          />
          <div className="field-grid">
            <NumberField
              label="The pull"
              unit={draft.unit}
              value={draft.force}
              onChange={(text) => set('force', text)}
              refused={faults.force}
            />
            <PickField
              label="In"
              value={draft.unit}
              onChange={(unit) => set('unit', unit)}
              options={(Object.keys(unit_N) as (keyof typeof unit_N)[]).map((value) => ({ value, name: value }))}
            />
          </div>
          <NumberField
            label="In a wind of"
            unit="knots"
            note="The pull then grows with its square. Left empty, it is not the wind that pulls."
            value={draft.wind}
            onChange={(text) => set('wind', text)}
            refused={faults.wind}
          />
          <TextField
            label="Whose figure it is"
            note="Such as: measured with a spring balance, a table, my guess."
            value={draft.from}
            onChange={(text) => set('from', text)}
            refused={faults.from}
          />
        </>
      )}
    </RecordSheet>
  );
}
