import { useState } from 'react';
import type { Boat, Book } from '#boat-book';
import { PickField, TickField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { useRun } from '../../parts/use-run.ts';

const sizes = [
  ['length_m', 'Length of the hull', 2, 15],
  ['beam_m', 'Beam', 0.8, 5],
  ['mastHeight_m', 'Mast, foot to head', 1, 20],
  ['mastFromBow_m', 'Mast, from the stem', 0, 10],
  ['boom_m', 'Boom', 0.5, 8],
  ['freeboard_m', 'Freeboard', 0.2, 2.5],
  ['draft_m', 'Draft, board up', 0.05, 2],
  ['draftBoardDown_m', 'Draft, board down', 0.1, 3],
] as const;
type Size = (typeof sizes)[number][0];
export type SizeFault = 'name' | Size;

export const boardName: Readonly<Record<Boat['board'], string>> = {
  pivoting: 'a board that swings on a pin',
  vertical: 'a board that lifts straight up',
  keel: 'a lifting keel',
};

/** All sizes of a boat as they were typed; refused where she could not be drawn or would not float. */
export function readSizes(draft: Readonly<Record<Size | 'name', string>>): {
  readonly faults: Faults<SizeFault>;
  readonly sizes: Pick<Boat, Size | 'name'> | null;
} {
  const form = formReading<SizeFault>();
  const name = form.words('name', draft.name, 'Give her name.');
  const read = {} as Record<Size, number>;
  for (const [size, , min, max] of sizes) read[size] = form.figure(size, draft[size], { min, max, unit: 'm' });
  if (read.mastFromBow_m >= read.length_m)
    form.refuse('mastFromBow_m', `The mast would stand aft of the transom; the hull is ${read.length_m} m long.`);
  if (read.draftBoardDown_m <= read.draft_m)
    form.refuse('draftBoardDown_m', `With the board down she must draw more than ${read.draft_m} m.`);
  return { faults: form.faults, sizes: form.sound() ? { name, ...read } : null };
}

export function SizeFields({
  draft,
  faults,
  onChange,
}: {
  readonly draft: Readonly<Record<Size, string>>;
  readonly faults: Faults<SizeFault>;
  readonly onChange: (size: Size, text: string) => void;
}) {
  return (
    <div className="field-row">
      {sizes.map(([size, label]) => (
        <NumberField
          key={size}
          label={label}
          unit="m"
          value={draft[size]}
          onChange={(text) => onChange(size, text)}
          refused={faults[size]}
        />
      ))}
    </div>
  );
}

export function sizeDraft(boat: Partial<Boat>): Record<Size | 'name', string> {
  const draft = { name: boat.name ?? '' } as Record<Size | 'name', string>;
  for (const [size] of sizes) draft[size] = boat[size]?.toString() ?? '';
  return draft;
}

export default function SizesSheet({ book, onClose }: { readonly book: Book; readonly onClose: () => void }) {
  const { boat } = book;
  const { draft, set, changed } = useDraft({
    ...sizeDraft(boat),
    keeper: boat.keeper,
    cabin: boat.cabin,
    board: boat.board,
  });
  const [faults, setFaults] = useState<Faults<SizeFault>>({});
  const { run, refusal } = useRun();
  const keep = async () => {
    const read = readSizes(draft);
    setFaults(read.faults);
    if (read.sizes === null) return;
    const outcome = await run('setBoat', {
      ...read.sizes,
      keeper: draft.keeper.trim(),
      cabin: draft.cabin,
      board: draft.board,
    });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <Sheet title="Her sizes" onClose={onClose} unsaved={changed}>
      <Form keep="Keep" onKeep={keep} faults={faults} refusal={refusal}>
        <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
        <TextField label="Keeper" value={draft.keeper} onChange={(text) => set('keeper', text)} />
        <SizeFields draft={draft} faults={faults} onChange={set} />
        <TickField label="She has a cabin" value={draft.cabin} onChange={(on) => set('cabin', on)} />
        <PickField
          label="Her board"
          value={draft.board}
          onChange={(board) => set('board', board)}
          options={(Object.keys(boardName) as Boat['board'][]).map((value) => ({ value, name: boardName[value] }))}
        />
      </Form>
    </Sheet>
  );
}
