/** The mast: what it weighs, how it is raised, and the shrouds that are to hold it on the way. */
import type { Book, Id, MastRecord } from '#boat-book';
import { PickField } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';

const figures = {
  mass: {
    label: 'It weighs',
    unit: 'kg',
    note: 'With all that hangs on it: foot on a bathroom scale, then head, and the two added.',
    min: 2,
    max: 300,
  },
  massAt: { label: 'It balances at', unit: 'm from the hinge', note: undefined, min: 0.3, max: 12 },
  lineAt: { label: 'Forestay or halyard takes hold', unit: 'm from the hinge', note: undefined, min: 1, max: 20 },
  bowAhead: { label: 'Bow fitting ahead of the hinge', unit: 'm', note: undefined, min: 0.5, max: 8 },
  bowUp: { label: 'Bow fitting above the hinge', unit: 'm; with a minus, below', note: undefined, min: -2, max: 1 },
  from: { label: 'It starts', unit: '° above level', note: 'In its crutch.', min: -10, max: 60 },
  to: { label: 'The forestay is pinned at', unit: '° above level', note: undefined, min: 45, max: 89 },
  pole: { label: 'Pole, or leg', unit: 'm', note: undefined, min: 0.3, max: 6 },
  heelAhead: { label: 'Its heel ahead of the hinge', unit: 'm', note: undefined, min: -0.5, max: 3 },
  heelUp: { label: 'Its heel above the hinge', unit: 'm', note: undefined, min: -1, max: 0.8 },
  lean: { label: 'It leans ahead at the start', unit: '° from upright', note: undefined, min: -30, max: 70 },
  spread: { label: 'Between its heels', unit: 'm', note: undefined, min: 0.1, max: 4 },
  shroudAt: { label: 'Shrouds take hold', unit: 'm from the hinge', note: undefined, min: 0.5, max: 20 },
  plateAhead: {
    label: 'Chainplates ahead of the hinge',
    unit: 'm; with a minus, aft',
    note: undefined,
    min: -2,
    max: 1,
  },
  plateUp: { label: 'Chainplates above the hinge', unit: 'm', note: undefined, min: -1, max: 1 },
  out: { label: 'Chainplates out from the mast', unit: 'm', note: undefined, min: 0.1, max: 3 },
} as const;
type Figure = keyof typeof figures;

export default function MastSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? null : (book.masts[id] ?? null);
  const led = record?.led ?? null;
  const { draft, set, changed } = useDraft({
    by: (record === null ? '' : (led?.by ?? 'none')) as 'pole' | 'A-frame' | 'none' | '',
    shrouded: record === null ? '' : record.shrouds === null ? ('no' as const) : ('yes' as const),
    note: record?.note ?? '',
    mass: said(record?.mass_kg),
    massAt: said(record?.massAt_m),
    lineAt: said(record?.lineAt_m),
    bowAhead: said(record?.bowAhead_m),
    bowUp: said(record?.bowUp_m),
    from: said(record?.from_deg),
    to: said(record?.to_deg),
    pole: led === null ? '' : said(led.length_m),
    heelAhead: led === null ? '0' : said(led.heelAhead_m),
    heelUp: led === null ? '0' : said(led.heelUp_m),
    lean: led === null ? '0' : said(led.lean_deg),
    spread: said(led?.spread_m ?? undefined),
    shroudAt: said(record?.shrouds?.at_m),
    plateAhead: said(record?.shrouds?.ahead_m),
    plateUp: said(record?.shrouds?.up_m),
    out: said(record?.shrouds?.out_m),
  });
  const read = (form: FormReading<Figure | 'by' | 'shrouded'>): MastRecord => {
    const of = (figure: Figure) => form.figure(figure, draft[figure], figures[figure]);
    const by = form.chosen('by', draft.by, 'Choose what leads the pull.');
    const shrouded = form.chosen('shrouded', draft.shrouded, 'Choose whether shrouds are set up on the way.');
    const mast: MastRecord = {
      name: record?.name ?? 'The mast',
      mass_kg: of('mass'),
      massAt_m: of('massAt'),
      lineAt_m: of('lineAt'),
      led:
        by === 'none'
          ? null
          : {
              by,
              length_m: of('pole'),
              heelAhead_m: of('heelAhead'),
              heelUp_m: of('heelUp'),
              lean_deg: of('lean'),
              spread_m: by === 'A-frame' ? of('spread') : null,
            },
      bowAhead_m: of('bowAhead'),
      bowUp_m: of('bowUp'),
      from_deg: of('from'),
      to_deg: of('to'),
      shrouds:
        shrouded === 'yes'
          ? { at_m: of('shroudAt'), ahead_m: of('plateAhead'), up_m: of('plateUp'), out_m: of('out') }
          : null,
      vang: record?.vang ?? null,
      note: draft.note.trim(),
    };
    if (mast.from_deg >= mast.to_deg) form.refuse('from', `It ends at ${mast.to_deg}°. Give less than that.`);
    const { led: leading } = mast;
    if (leading !== null && leading.spread_m !== null && leading.spread_m >= 1.9 * leading.length_m)
      form.refuse(
        'spread',
        `Legs of ${leading.length_m} m have no height so far apart. Give ${leading.length_m} m or less.`,
      );
    return mast;
  };
  return (
    <RecordSheet
      title={record ? 'Change the mast' : 'The mast'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addMast', fields) : run('changeMast', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeMast', { id })}
      onClose={onClose}
    >
      {(faults) => {
        const field = (figure: Figure) => (
          <NumberField
            key={figure}
            label={figures[figure].label}
            unit={figures[figure].unit}
            note={figures[figure].note}
            value={draft[figure]}
            onChange={(text) => set(figure, text)}
            refused={faults[figure]}
          />
        );
        return (
          <>
            {field('mass')}
            <div className="field-grid">{(['massAt', 'lineAt'] as const).map(field)}</div>
            <div className="field-grid">{(['bowAhead', 'bowUp'] as const).map(field)}</div>
            <div className="field-grid">{(['from', 'to'] as const).map(field)}</div>
            <PickField
              label="The pull is led by"
              value={draft.by}
              onChange={(value) => set('by', value)}
              options={[
                { value: 'pole', name: 'a gin pole' },
                { value: 'A-frame', name: 'an A-frame' },
                { value: 'none', name: 'nothing: straight to the bow' },
              ]}
              refused={faults.by}
            />
            {draft.by !== '' && draft.by !== 'none' && (
              <div className="field-grid">
                {(['pole', 'heelAhead', 'heelUp', 'lean'] as const).map(field)}
                {draft.by === 'A-frame' && field('spread')}
              </div>
            )}
            <PickField
              label="Shrouds are set up on the way"
              value={draft.shrouded}
              onChange={(value) => set('shrouded', value)}
              options={[
                { value: 'yes', name: 'yes' },
                { value: 'no', name: 'no' },
              ]}
              refused={faults.shrouded}
            />
            {draft.shrouded === 'yes' && (
              <div className="field-grid">{(['shroudAt', 'out', 'plateAhead', 'plateUp'] as const).map(field)}</div>
            )}
            <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
          </>
        );
      }}
    </RecordSheet>
  );
}

const said = (value: number | undefined) => (value === undefined ? '' : String(value));
