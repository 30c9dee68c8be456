/** A board's hoist: the plate, how it moves, and what its wire runs through on the way to the hand. */
import type { Book, Id } from '#boat-book';
import { ChoiceField, PickField } from '../../../../parts/choice-fields.tsx';
import type { Faults, FormReading } from '../../../../parts/read-form.ts';
import { RecordSheet } from '../../../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../../../parts/text-fields.tsx';
import { useDraft } from '../../../../parts/use-draft.ts';
import { address, goTo } from '../../../../shell/route.ts';
import {
  bearingOptions,
  cordOptions,
  densityOptions,
  type HoistDraft,
  type HoistFault,
  hoistDraft,
  hoistOf,
  lineOptions,
} from './hoist-draft.ts';
import { LineFields } from './line-fields.tsx';
import { TackleFields } from './tackle-fields.tsx';

type Set = <K extends keyof HoistDraft>(key: K, value: HoistDraft[K]) => void;
interface Part {
  readonly draft: HoistDraft;
  readonly set: Set;
  readonly faults: Faults<HoistFault>;
}

export default function HoistSheet({
  book,
  id,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly onClose: () => void;
}) {
  const record = id === null ? null : (book.boardHoists[id] ?? null);
  const { draft, set, changed } = useDraft(hoistDraft(record));
  return (
    <RecordSheet
      title={record ? `Change: ${record.name}` : 'A board’s hoist'}
      keep={record ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form: FormReading<HoistFault>) => hoistOf(draft, form)}
      onKeep={(hoist, run) => (id === null ? run('addBoardHoist', hoist) : run('changeBoardHoist', { id, ...hoist }))}
      onRemove={
        id === null
          ? null
          : async (run) => {
              const outcome = await run('removeBoardHoist', { id });
              if (outcome.kind === 'done') goTo(address('boat'));
              return outcome;
            }
      }
      onClose={onClose}
    >
      {(faults) => (
        <>
          <TextField label="Name" value={draft.name} onChange={(text) => set('name', text)} refused={faults.name} />
          <ChoiceField
            label="Zone"
            value={draft.zone}
            onChange={(zone) => set('zone', zone)}
            options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
            none="not said"
          />
          <h3 className="hoist-fields">The board</h3>
          <PlateFields draft={draft} set={set} faults={faults} />
          <PickField
            label="The board"
            value={draft.moves}
            onChange={(moves) => set('moves', moves)}
            options={[
              { value: 'turns', name: 'turns on a pivot' },
              { value: 'slides', name: 'slides up and down' },
            ]}
            refused={faults.moves}
          />
          {draft.moves === 'turns' && <TurnsFields draft={draft} set={set} faults={faults} />}
          {draft.moves === 'slides' && <SlidesFields draft={draft} set={set} faults={faults} />}
          <h3 className="hoist-fields">Its wire</h3>
          <LineFields
            label="The wire or rope"
            draft={draft.wire}
            onChange={(wire) => set('wire', wire)}
            options={lineOptions}
            faultOf={faults.wireOf}
            faultSize={faults.wireSize}
          />
          <LeadFields draft={draft} set={set} faults={faults} />
          <h3 className="hoist-fields">From there to the hand</h3>
          <TackleFields
            tackles={draft.tackles}
            onChange={(tackles) => set('tackles', tackles)}
            faults={[faults.tackle0, faults.tackle1, faults.tackle2]}
          />
          {draft.tackles.length > 0 && (
            <LineFields
              label="The tackle’s cord"
              draft={draft.cord}
              onChange={(cord) => set('cord', cord)}
              options={cordOptions}
              faultOf={faults.cordOf}
              faultSize={faults.cordSize}
            />
          )}
          <WinchFields draft={draft} set={set} faults={faults} />
          <TextField label="Note" rows={2} value={draft.note} onChange={(text) => set('note', text)} />
        </>
      )}
    </RecordSheet>
  );
}

function PlateFields({ draft, set, faults }: Part) {
  return (
    <>
      <div className="field-row">
        <NumberField
          label="Length"
          unit="mm"
          note="From the pivot to the far end; from top to foot where it slides."
          value={draft.length}
          onChange={(text) => set('length', text)}
          refused={faults.length}
        />
        <NumberField
          label="Breadth"
          unit="mm"
          note="Fore and aft, square to its length."
          value={draft.breadth}
          onChange={(text) => set('breadth', text)}
          refused={faults.breadth}
        />
      </div>
      <ChoiceField
        label="Made of"
        note="It says how much of the weight the water bears."
        value={draft.density}
        onChange={(density) => set('density', density)}
        options={densityOptions(draft.density)}
        refused={faults.density}
      />
      <PickField
        label="What it weighs"
        value={draft.massKnown}
        onChange={(known) => set('massKnown', known)}
        options={[
          { value: 'weighed', name: 'was weighed' },
          { value: 'by its sizes', name: 'by its sizes' },
        ]}
        refused={faults.massKnown}
      />
      {draft.massKnown === 'weighed' && (
        <NumberField
          label="Weight"
          unit="kg"
          value={draft.mass}
          onChange={(text) => set('mass', text)}
          refused={faults.mass}
        />
      )}
      {draft.massKnown === 'by its sizes' && (
        <NumberField
          label="Thickness"
          unit="mm"
          value={draft.thickness}
          onChange={(text) => set('thickness', text)}
          refused={faults.thickness}
        />
      )}
    </>
  );
}

function TurnsFields({ draft, set, faults }: Part) {
  const figure = (field: keyof HoistDraft & HoistFault, label: string, note: string, unit = 'mm') => (
    <NumberField
      label={label}
      unit={unit}
      note={note}
      value={draft[field] as string}
      onChange={(text) => set(field, text)}
      refused={faults[field]}
    />
  );
  return (
    <>
      <p className="field-note">
        Lay the plate level in thought. Along: from the pivot towards its far end. Above: square to that, up.
      </p>
      <div className="field-grid">
        {figure('massAlong', 'Balance point, along', 'Where it balances on an edge.')}
        {figure('massSquare', 'Balance point, above', '0 where it is on the line.')}
        {figure('attachedAlong', 'Wire’s hole, along', 'From the pivot.')}
        {figure('attachedSquare', 'Wire’s hole, above', 'Below: minus.')}
        {figure('leadAft', 'First lead, aft', 'Aft of the pivot.')}
        {figure('leadUp', 'First lead, up', 'Above the pivot.')}
        {figure('down', 'All the way down', 'Below level.', '°')}
        {figure('up', 'All the way up', 'Below level; 0 is level.', '°')}
      </div>
    </>
  );
}

function SlidesFields({ draft, set, faults }: Part) {
  const figure = (field: keyof HoistDraft & HoistFault, label: string, note: string) => (
    <NumberField
      label={label}
      unit="mm"
      note={note}
      value={draft[field] as string}
      onChange={(text) => set(field, text)}
      refused={faults[field]}
    />
  );
  return (
    <div className="field-grid">
      {figure('travel', 'Travel', 'From all the way down to all the way up.')}
      {figure('topAboveWater', 'Its top above the water', 'All the way down; below: minus.')}
      {figure('held', 'Held by the case', 'Of its length, all the way down.')}
      {figure('offMiddle', 'Wire off the middle', 'Fore or aft; it cocks the plate.')}
    </div>
  );
}

function LeadFields({ draft, set, faults }: Part) {
  return (
    <>
      <NumberField
        label="Blocks it turns over on the way"
        unit="blocks"
        whole
        value={draft.leads}
        onChange={(text) => set('leads', text)}
        refused={faults.leads}
      />
      {draft.leads.trim() !== '' && draft.leads.trim() !== '0' && (
        <>
          <PickField
            label="Their sheaves run"
            value={draft.leadBearing}
            onChange={(bearing) => set('leadBearing', bearing)}
            options={bearingOptions}
            refused={faults.leadBearing}
          />
          <NumberField
            label="The smallest of them"
            unit="mm, at the bottom of the groove"
            note="Leave it empty where it was not measured."
            value={draft.sheave}
            onChange={(text) => set('sheave', text)}
            refused={faults.sheave}
          />
        </>
      )}
    </>
  );
}

function WinchFields({ draft, set, faults }: Part) {
  const figure = (field: keyof HoistDraft & HoistFault, label: string, unit: string) => (
    <NumberField
      label={label}
      unit={unit}
      value={draft[field] as string}
      onChange={(text) => set(field, text)}
      refused={faults[field]}
    />
  );
  return (
    <>
      <PickField
        label="The last line comes to"
        value={draft.wound}
        onChange={(wound) => set('wound', wound)}
        options={[
          { value: 'hand', name: 'the hand' },
          { value: 'winch', name: 'a small winch' },
        ]}
        refused={faults.wound}
      />
      {draft.wound === 'winch' && (
        <div className="field-grid">
          {figure('gear', 'Gear', 'turns of the crank to 1')}
          {figure('handle', 'Crank', 'mm, shaft to hand')}
          {figure('drum', 'Bare drum', 'mm across')}
          {figure('width', 'Between its cheeks', 'mm')}
          {figure('woundWhenDown', 'On it, board down', 'm')}
        </div>
      )}
    </>
  );
}
