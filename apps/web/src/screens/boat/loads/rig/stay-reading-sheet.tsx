/** A reading of a stay put in: when, by what, and the turns its screw was given since the last. */
import type { Book, Id, OperationFields, StayReading } from '#boat-book';
import { foretoldInWords, type StayReadingTold } from '#reckoning';
import { PickField } from '../../../../parts/choice-fields.tsx';
import { dayInWords } from '../../../../parts/in-words.ts';
import type { FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';
import { todayAt } from '../../../../reading/today.ts';

type Named = 'on' | 'moment' | 'turns' | 'stretch' | 'measured' | 'pulledAt' | 'pull' | 'aside' | 'sway';

/** What it was told by last, so that the next is read the same way; nothing of a first one. */
const sameWay = (told: StayReading['told'] | undefined) => ({
  way: told?.kind === 'sway' ? ('pull' as const) : (told?.kind ?? ('pull' as const)),
  measured: told?.kind === 'stretch' ? String(told.measured_m) : '',
  pulledAt: told?.kind === 'pull' ? String(told.pulledAt_m) : '',
  pull: told?.kind === 'pull' ? String(told.pull_N) : '',
});

export default function StayReadingSheet({
  book,
  id,
  last,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  /** undefined: it is the first */
  readonly last: StayReadingTold | undefined;
  readonly onClose: () => void;
}) {
  const record = book.stays[id]!;
  const today = todayAt(book);
  const { draft, set, changed } = useDraft({
    on: today as string,
    moment: '' as StayReading['moment'] | '',
    ...sameWay(last?.reading.told),
    way: sameWay(last?.reading.told).way as StayReading['told']['kind'],
    stretch: '',
    aside: '',
    sway: '',
    turns: '0',
    note: '',
  });
  const toldOf = (form: FormReading<Named>): StayReading['told'] => {
    switch (draft.way) {
      case 'stretch': {
        const measured_m = form.figure('measured', draft.measured, {
          min: 0.5,
          max: Math.min(12, record.length_m),
          unit: 'm',
        });
        // a hundredth of the length breaks it
        const stretch_mm = form.figure('stretch', draft.stretch, {
          min: 0,
          max: Math.max(1, 10 * measured_m || 60),
          unit: 'mm',
        });
        return { kind: 'stretch', stretch_mm, measured_m };
      }
      case 'pull': {
        const pulledAt_m = form.figure('pulledAt', draft.pulledAt, {
          min: 0.2,
          max: Math.min(15, record.length_m / 2),
          unit: 'm',
        });
        return {
          kind: 'pull',
          pulledAt_m,
          pull_N: form.figure('pull', draft.pull, { min: 5, max: 1000, unit: 'N' }),
          aside_mm: form.figure('aside', draft.aside, { min: 1, max: 200 * (pulledAt_m || 5), unit: 'mm' }),
        };
      }
      case 'sway':
        return {
          kind: 'sway',
          sway_mm: form.figure('sway', draft.sway, { min: 0, max: Math.min(1000, 100 * record.length_m), unit: 'mm' }),
        };
    }
  };
  const read = (form: FormReading<Named>): OperationFields<'enterStayReading'> => {
    const on = form.day('on', draft.on);
    if (on > today) form.refuse('on', `${dayInWords(on, today)} is still to come. Give the day it was read.`);
    return {
      stay: id,
      on,
      moment: form.chosen('moment', draft.moment, 'Choose what it is a reading of.'),
      told: toldOf(form),
      turns: record.screw === null ? 0 : form.figure('turns', draft.turns, { min: -40, max: 40, unit: 'turns' }),
      note: draft.note.trim(),
    };
  };
  const turns = Number(draft.turns.trim().replace('−', '-').replace(',', '.'));
  const foretold =
    last === undefined || draft.turns.trim() === '' || Math.abs(turns) > 40 || !Number.isFinite(turns)
      ? null
      : foretoldInWords(record, last, turns);
  return (
    <RecordSheet
      title={`${record.name}: a reading`}
      keep="Keep the reading"
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => run('enterStayReading', fields)}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <PickField
            label="Read"
            value={draft.moment}
            onChange={(value) => set('moment', value)}
            options={[
              { value: 'as set', name: 'as set' },
              { value: 'before towing', name: 'before towing' },
              { value: 'after towing', name: 'after towing' },
              { value: 'in between', name: 'in between' },
            ]}
            refused={faults.moment}
          />
          <DayField label="On" value={draft.on} onChange={(text) => set('on', text)} refused={faults.on} />
          <PickField
            label="By"
            value={draft.way}
            onChange={(value) => set('way', value)}
            options={[
              { value: 'pull', name: 'a pull sideways' },
              { value: 'stretch', name: 'its stretch' },
              { value: 'sway', name: 'it hangs slack' },
            ]}
          />
          {draft.way === 'pull' && (
            <>
              <p className="field-note">
                A cord round the stay, a spring balance square to it, a rule beside it. The same place each time. 10 kg
                on the balance is 98 N.
              </p>
              <div className="field-grid">
                <NumberField
                  label="From its nearer end"
                  unit="m"
                  value={draft.pulledAt}
                  onChange={(text) => set('pulledAt', text)}
                  refused={faults.pulledAt}
                />
                <NumberField
                  label="Pulled with"
                  unit="N"
                  value={draft.pull}
                  onChange={(text) => set('pull', text)}
                  refused={faults.pull}
                />
                <NumberField
                  label="It came aside"
                  unit="mm"
                  value={draft.aside}
                  onChange={(text) => set('aside', text)}
                  refused={faults.aside}
                />
              </div>
            </>
          )}
          {draft.way === 'stretch' && (
            <>
              <p className="field-note">
                Stay just taut, a rule taped to the wire at its upper end, a mark at the lower; then the screw is
                turned, and the gap is the stretch.
              </p>
              <div className="field-grid">
                <NumberField
                  label="Measured on"
                  unit="m of wire"
                  value={draft.measured}
                  onChange={(text) => set('measured', text)}
                  refused={faults.measured}
                />
                <NumberField
                  label="It stretched"
                  unit="mm"
                  value={draft.stretch}
                  onChange={(text) => set('stretch', text)}
                  refused={faults.stretch}
                />
              </div>
            </>
          )}
          {draft.way === 'sway' && (
            <NumberField
              label="Its middle moves, to either side, before it comes taut"
              unit="mm"
              value={draft.sway}
              onChange={(text) => set('sway', text)}
              refused={faults.sway}
            />
          )}
          {record.screw !== null && (
            <NumberField
              label="Turns its screw was given since the last reading"
              unit="turns, tighter; with a minus, easier"
              note={
                <>
                  Taking the screw apart to lower the mast is no turn, if it went back to its mark.
                  {foretold !== null && <span className="rig-foretold"> {foretold}</span>}
                </>
              }
              value={draft.turns}
              onChange={(text) => set('turns', text)}
              refused={faults.turns}
            />
          )}
          <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}
