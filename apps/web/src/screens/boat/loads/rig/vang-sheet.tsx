/** The vang: where its ends are, and how hard the leech lifts the boom. */
import type { Book, Id, MastRecord } from '#boat-book';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { NumberField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';

const figures = {
  lift: {
    label: 'The leech lifts the boom with',
    unit: 'N',
    note: 'A spring balance at the clew, sail set and vang off, says it; 10 kg is 98 N.',
    min: 1,
    max: 20_000,
  },
  liftAt: { label: 'The clew from the gooseneck', unit: 'm', note: undefined, min: 0.3, max: 8 },
  along: { label: 'Upper end along the boom', unit: 'm from the gooseneck', note: undefined, min: 0.1, max: 5 },
  below: { label: 'Lower end below the gooseneck', unit: 'm', note: undefined, min: 0.05, max: 3 },
  aft: { label: 'Lower end aft of the gooseneck', unit: 'm; 0 on the mast', note: undefined, min: -0.5, max: 1.5 },
} as const;
type Figure = keyof typeof figures;

export default function VangSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** of the mast */
  readonly id: Id;
  readonly onClose: () => void;
}) {
  const vang = book.masts[id]?.vang ?? null;
  const { draft, set, changed } = useDraft({
    lift: said(vang?.lift_N),
    liftAt: said(vang?.liftAt_m),
    along: said(vang?.along_m),
    below: said(vang?.below_m),
    aft: said(vang?.aft_m),
  });
  const read = (form: FormReading<Figure>): NonNullable<MastRecord['vang']> => {
    const of = (figure: Figure) => form.figure(figure, draft[figure], figures[figure]);
    return { lift_N: of('lift'), liftAt_m: of('liftAt'), along_m: of('along'), below_m: of('below'), aft_m: of('aft') };
  };
  return (
    <RecordSheet
      title={vang ? 'Change the vang' : 'The vang'}
      keep={vang ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => run('changeMast', { id, vang: fields })}
      onRemove={vang === null ? null : (run) => run('changeMast', { id, vang: null })}
      onClose={onClose}
    >
      {(faults) =>
        (Object.keys(figures) as Figure[]).map((figure) => (
          <NumberField
            key={figure}
            label={figures[figure].label}
            unit={figures[figure].unit}
            note={figures[figure].note}
            value={draft[figure]}
            onChange={(text) => set(figure, text)}
            refused={faults[figure]}
          />
        ))
      }
    </RecordSheet>
  );
}

const said = (value: number | undefined) => (value === undefined ? '' : String(value));
