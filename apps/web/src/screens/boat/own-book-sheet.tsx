/** A book of one's own: a few of her sizes draw her; zones and set-ups of a small boat stand in it to start from. */
import { useState } from 'react';
import { bookClient } from '../../offline/book-client.ts';
import { Form } from '../../parts/form.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { Sheet } from '../../parts/sheet.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import type { Refusal } from '../../parts/use-run.ts';
import { address, goTo } from '../../shell/route.ts';
import { type BoatFault, boatDraft, readBoat } from './boat-draft.ts';
import { BoatFields } from './boat-fields.tsx';
import { startingSetUps, startingZones } from './starting-zones.ts';

export default function OwnBookSheet({ onClose }: { readonly onClose: () => void }) {
  const { draft, set, changed } = useDraft(boatDraft(null));
  const [faults, setFaults] = useState<Faults<BoatFault>>({});
  const [failed, setFailed] = useState<Refusal | null>(null);
  const start = async () => {
    const form = formReading<BoatFault>();
    const name = form.words('name', draft.name, 'Give her name.');
    const boat = readBoat(draft, form);
    setFaults(form.faults);
    if (boat === null) return;
    try {
      await bookClient.startBook(
        'empty',
        { name, keeper: draft.keeper.trim(), demo: false, ...boat },
        { zones: startingZones(draft.cabin), setUps: startingSetUps(boat.build.keel) },
      );
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
        The invented boat's book stays on this device; you find it again at the foot of Boat. Her length and what is
        under her are enough to draw her; all can be changed later.
      </p>
      <Form keep="Start her book" onKeep={start} faults={faults} refusal={failed}>
        <BoatFields draft={draft} faults={faults} set={set} />
      </Form>
    </Sheet>
  );
}
