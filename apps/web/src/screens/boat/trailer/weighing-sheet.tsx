/** What a bathroom scale said of the ball load, and how the plank lay. */
import type { Book, Id } from '#boat-book';
import { stoodNow, type TrailerTold } from '#reckoning';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';

type Fault = 'scale' | 'arm' | 'beam';

export default function WeighingSheet({
  book,
  id,
  told,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  /** as the trailer stands in the book */
  readonly told: TrailerTold;
  readonly onClose: () => void;
}) {
  const { draft, set, changed } = useDraft({ scale: '', arm: '', beam: '', note: '' });
  const { balance } = told.load;
  return (
    <RecordSheet
      title="Weigh the ball"
      keep="Enter it"
      unsaved={changed}
      read={(form: FormReading<Fault>) => ({
        trailer: id,
        at: new Date().toISOString(),
        scale_kg: form.figure('scale', draft.scale, { min: 0, max: 250, unit: 'kg' }),
        arm_mm: form.figure('arm', draft.arm, { min: 1, max: 5000, unit: 'mm' }),
        beam_mm: form.figure('beam', draft.beam, { min: 10, max: 10_000, unit: 'mm' }),
        told_kg: balance.ball_kg.likely,
        stood: stoodNow(told.load),
        note: draft.note,
      })}
      onKeep={(fields, run) => run('enterBallWeighing', fields)}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <p className="trailer-how">
            <b>Take care.</b> {book.trailers[id]?.braked ? 'Handbrake on and wheels chocked' : 'Wheels chocked'}, legs
            wound down so that she cannot tip, nobody under her. Lower the coupling on to the plank slowly with the
            jockey wheel; keep feet from under it. A plank can kick out sideways.
          </p>
          <p className="trailer-how">
            Laid as for the road, as the table has it. A plank with its near end on a block, its far end on the scale,
            both level; the coupling presses on it between them at the height it tows at. Weigh the plank alone first
            and take that off.
          </p>
          <NumberField
            label="The scale says, less the plank’s own"
            unit="kg"
            value={draft.scale}
            onChange={(text) => set('scale', text)}
            refused={faults.scale}
          />
          <div className="field-grid">
            <NumberField
              label="From the block to the coupling"
              unit="mm"
              value={draft.arm}
              onChange={(text) => set('arm', text)}
              refused={faults.arm}
            />
            <NumberField
              label="From the block to the scale"
              unit="mm"
              note="The same where the coupling stands on the scale itself."
              value={draft.beam}
              onChange={(text) => set('beam', text)}
              refused={faults.beam}
            />
          </div>
          <TextField label="Note" value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}
