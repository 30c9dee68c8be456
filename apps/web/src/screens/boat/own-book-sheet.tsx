/** A book of one's own: her name and sizes; zones and set-ups of a small boat stand in it to start from. */
import { useState } from 'react';
import type { Boat } from '#boat-book';
import { bookClient } from '../../offline/book-client.ts';
import { PickField, TickField } from '../../parts/choice-fields.tsx';
import { Form } from '../../parts/form.tsx';
import type { Faults } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import type { Refusal } from '../../parts/use-run.ts';
import { address, goTo } from '../../shell/route.ts';
import { boardName, readSizes, type SizeFault, SizeFields, sizeDraft } from './sizes-sheet.tsx';
import { startingSetUps, startingZones } from './starting-zones.ts';

export default function OwnBookSheet({ onClose }: { readonly onClose: () => void }) {
  const { draft, set, changed } = useDraft({
    ...sizeDraft({}),
    keeper: '',
    cabin: true,
    board: '' as Boat['board'] | '',
  });
  const [faults, setFaults] = useState<Faults<SizeFault | 'board'>>({});
  const [failed, setFailed] = useState<Refusal | null>(null);
  const start = async () => {
    const read = readSizes(draft);
    const found: Faults<SizeFault | 'board'> =
      draft.board === '' ? { ...read.faults, board: 'Choose what board she has.' } : read.faults;
    setFaults(found);
    if (read.sizes === null || draft.board === '') return;
    const boat: Partial<Boat> = {
      ...read.sizes,
      keeper: draft.keeper.trim(),
      cabin: draft.cabin,
      board: draft.board,
      demo: false,
    };
    try {
      await bookClient.startBook('empty', boat, {
        zones: startingZones(draft.cabin),
        setUps: startingSetUps(),
      });
    } catch (error) {
      setFailed({ where: 'the new book', wrong: String(error), right: 'to try once more' });
      return;
    }
    onClose();
    goTo(address('boat'));
  };
  return (
    <Sheet title="Your own boat's book" onClose={onClose} unsaved={changed}>
      <p className="soft">
        The invented boat's book stays on this device; you find it again at the foot of Boat. Every size can be changed
        later.
      </p>
      <Form keep="Start her book" onKeep={start} faults={faults} refusal={failed}>
        <TextField label="Her name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
        <TextField label="Who keeps her" value={draft.keeper} onChange={(text) => set('keeper', text)} />
        <SizeFields draft={draft} faults={faults} onChange={set} />
        <TickField label="She has a cabin" value={draft.cabin} onChange={(on) => set('cabin', on)} />
        <PickField
          label="Her board"
          value={draft.board}
          onChange={(board) => set('board', board)}
          options={(Object.keys(boardName) as Boat['board'][]).map((value) => ({ value, name: boardName[value] }))}
          refused={faults.board}
        />
      </Form>
    </Sheet>
  );
}
