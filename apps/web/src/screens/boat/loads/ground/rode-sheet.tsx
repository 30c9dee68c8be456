/** A rode as it lies in its locker, and what the wind and the water meet of the boat. */
import type { Book, Id, RodeRecord } from '#boat-book';
import { chainSizes, ropeSizes } from '#loads';
import { assumedWindage_m2, fibreInWords } from '#reckoning';
import { ChoiceField } from '../../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';

type Fibre = NonNullable<RodeRecord['rope']>['fibre'];
type Named = 'name' | 'chain' | 'chainLength' | 'ropeSize' | 'ropeLength' | 'bow' | 'windage' | 'below' | 'limit';

const inMm = <Size extends number>(sizes: readonly Size[]) =>
  sizes.map((size) => ({ value: `${size}` as `${Size}`, name: `${size} mm` }));
const fibres = (Object.keys(fibreInWords) as Fibre[]).map((value) => ({ value, name: fibreInWords[value] }));

export default function RodeSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? undefined : book.rodes[id];
  const text = (value: number | undefined) => value?.toString() ?? '';
  const { draft, set, changed } = useDraft<{
    name: string;
    chain: `${(typeof chainSizes)[number]}` | '';
    chainLength: string;
    fibre: Fibre | '';
    ropeSize: `${(typeof ropeSizes)[number]}` | '';
    ropeLength: string;
    bow: string;
    windage: string;
    below: string;
    limit: string;
    zone: Id | '';
    path: Id | '';
    note: string;
  }>({
    name: record?.name ?? '',
    chain: record?.chain ? `${record.chain.size_mm}` : '',
    chainLength: text(record?.chain?.length_m),
    fibre: record?.rope?.fibre ?? '',
    ropeSize: record?.rope ? `${record.rope.size_mm}` : '',
    ropeLength: text(record?.rope?.length_m),
    bow: text(record?.bow_m),
    windage: text(record?.windage_m2),
    below: text(record?.below_m2),
    limit: text(record?.limit_deg),
    zone: record?.zone ?? '',
    path: record?.path ?? '',
    note: record?.note ?? '',
  });
  const read = (form: FormReading<Named>): RodeRecord => {
    const { chain, fibre, ropeSize } = draft;
    if (chain === '' && fibre === '')
      form.refuse('chain', 'There is neither chain nor rope. Say what lies next to the anchor.');
    return {
      name: form.words('name', draft.name, 'Name the rode: bower, kedge.'),
      zone: draft.zone || null,
      chain:
        chain === ''
          ? null
          : {
              size_mm: Number(chain) as NonNullable<RodeRecord['chain']>['size_mm'],
              length_m: form.figure('chainLength', draft.chainLength, { min: 0.1, max: 150, unit: 'm' }),
            },
      rope:
        fibre === ''
          ? null
          : {
              fibre,
              size_mm: Number(form.chosen('ropeSize', ropeSize, 'Choose its size.')) as NonNullable<
                RodeRecord['rope']
              >['size_mm'],
              length_m: form.figure('ropeLength', draft.ropeLength, { min: 0.1, max: 300, unit: 'm' }),
            },
      bow_m: form.figure('bow', draft.bow, { min: 0, max: 3, unit: 'm' }),
      windage_m2: form.figure('windage', draft.windage, { min: 0.1, max: 60, unit: 'm²' }),
      below_m2: form.figure('below', draft.below, { min: 0, max: 2, unit: 'm²' }),
      limit_deg: form.figure('limit', draft.limit, { min: 0, max: 30, unit: '°' }),
      anchorage: record?.anchorage ?? null,
      path: draft.path || null,
      note: draft.note.trim(),
    };
  };
  return (
    <RecordSheet
      title={record ? `Change the rode: ${record.name}` : 'A rode'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => (id === null ? run('addRode', fields) : run('changeRode', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeRode', { id })}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(value) => set('name', value)} refused={faults.name} />
          <ChoiceField
            label="Chain at the anchor"
            note="Thickness of a link’s wire, measured."
            value={draft.chain}
            onChange={(value) => set('chain', value)}
            none="none"
            options={inMm(chainSizes)}
            refused={faults.chain}
          />
          {draft.chain !== '' && (
            <NumberField
              label="Of chain"
              unit="m"
              value={draft.chainLength}
              onChange={(value) => set('chainLength', value)}
              refused={faults.chainLength}
            />
          )}
          <ChoiceField
            label="Rope from there to the bow"
            note="Nylon stretches and takes the snatch; polypropylene floats."
            value={draft.fibre}
            onChange={(value) => set('fibre', value)}
            none="none"
            options={fibres}
          />
          {draft.fibre !== '' && (
            <div className="field-row">
              <ChoiceField
                label="Across"
                value={draft.ropeSize}
                onChange={(value) => set('ropeSize', value)}
                options={inMm(ropeSizes)}
                refused={faults.ropeSize}
              />
              <NumberField
                label="Of rope"
                unit="m"
                value={draft.ropeLength}
                onChange={(value) => set('ropeLength', value)}
                refused={faults.ropeLength}
              />
            </div>
          )}
          <NumberField
            label="Bow roller above the water"
            unit="m"
            value={draft.bow}
            onChange={(value) => set('bow', value)}
            refused={faults.bow}
          />
          <NumberField
            label="Seen by the wind from ahead"
            unit="m²"
            note={`Hull, cabin, mast, what is rigged or lashed on deck. By her sizes about ${assumedWindage_m2(book.boat)} m²: our assumption.`}
            value={draft.windage}
            onChange={(value) => set('windage', value)}
            refused={faults.windage}
          />
          <NumberField
            label="Board, rudder and outboard leg in the water, from ahead"
            unit="m²"
            note="A leg and a rudder left down are about 0.06 m²: our assumption. All lifted: 0."
            value={draft.below}
            onChange={(value) => set('below', value)}
            refused={faults.below}
          />
          <NumberField
            label="The steepest pull you trust the anchor with"
            unit="° above level"
            note="Most writers go to 8. With 0 every link at the anchor stays down."
            value={draft.limit}
            onChange={(value) => set('limit', value)}
            refused={faults.limit}
          />
          <ChoiceField
            label="Its load path"
            note="Part by part, from bow to anchor, under Boat, Loads."
            value={draft.path}
            onChange={(value) => set('path', value)}
            none="none"
            options={Object.entries(book.loadPaths).map(([value, { name }]) => ({ value, name }))}
          />
          <ChoiceField
            label="Where"
            value={draft.zone}
            onChange={(value) => set('zone', value)}
            none="not said"
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
          />
          <TextField label="Note" rows={2} value={draft.note} onChange={(value) => set('note', value)} />
        </>
      )}
    </RecordSheet>
  );
}
