/** What one product's own tin says. Only what this kind of product has is asked; what is left empty stays our figure. */
import type { Book, Id } from '#boat-book';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { fieldsOf, readTin, type TinDraft, type TinName, tinDraft, tinFamilies } from './tin-draft.ts';

export default function TinSheet({
  book,
  id,
  today,
  onClose,
}: {
  readonly book: Book;
  /** null: a new one */
  readonly id: Id | null;
  readonly today: string;
  readonly onClose: () => void;
}) {
  const tin = id === null ? undefined : book.tins[id];
  const { draft, set, changed } = useDraft<TinDraft>(tinDraft(tin, today));
  const has = fieldsOf(draft.family);
  const stores = Object.entries(book.stores).sort(([, a], [, b]) => a.name.localeCompare(b.name));
  return (
    <RecordSheet<TinName, ReturnType<typeof readTin>>
      title={tin ? `What it says: ${tin.name}` : 'What a tin says'}
      keep={tin ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={(form) => readTin(draft, form)}
      onKeep={(fields, run) => (id === null ? run('addTin', fields) : run('changeTin', { id, ...fields }))}
      onRemove={id === null ? null : (run) => run('removeTin', { id })}
      onClose={onClose}
    >
      {(faults) => {
        const figure = (key: Exclude<TinName, 'name' | 'family' | 'readOn' | 'by'>, label: string, unit: string) => (
          <NumberField
            label={label}
            unit={unit}
            value={draft[key]}
            onChange={(words) => set(key, words)}
            refused={faults[key]}
          />
        );
        return (
          <>
            <TextField
              label="Name on the tin"
              value={draft.name}
              onChange={(words) => set('name', words)}
              refused={faults.name}
            />
            <ChoiceField
              label="What it is"
              value={draft.family}
              onChange={(family) => set('family', family)}
              options={tinFamilies.map(({ id: value, title }) => ({ value, name: title }))}
              refused={faults.family}
            />
            {has && (
              <p className="field-note">Leave empty what the tin does not say: our figure stands in for it there.</p>
            )}
            {has?.coat && figure('next', 'Next coat from', 'h')}
            {has?.coat && figure('latest', 'Past this, abrade first', 'h')}
            {has?.worked && figure('worked', 'To be sanded, or clamps off, from', 'h')}
            {has?.full && figure('full', 'Full strength after', 'h')}
            {has && !has.firstDay && figure('at', 'These at', '°C')}
            {has?.firstDay && figure('firstDay', 'Cures in the first day', 'mm')}
            {has && figure('minimum', 'Not below', '°C')}
            {has?.humidity && figure('humidity', 'Not in air damper than', '%')}
            {has?.mixed && (
              <div className="field-row">
                {figure('pot', 'Pot life', 'min')}
                {figure('potAt', 'at', '°C')}
                {figure('potOf', 'for', 'g')}
              </div>
            )}
            {has?.parts && (
              <>
                <div className="field-row">
                  {figure('resin', 'Resin', 'parts')}
                  {figure('hardener', 'Hardener', 'parts')}
                </div>
                <PickField
                  label="Parts by"
                  value={draft.by}
                  onChange={(by) => set('by', by)}
                  options={[
                    { value: 'weight', name: 'weight' },
                    { value: 'volume', name: 'volume' },
                  ]}
                  refused={faults.by}
                />
              </>
            )}
            {has?.pumps && figure('pair', 'One stroke of each pump gives', 'g')}
            {has?.catalysed && (
              <div className="field-row">
                {figure('catalystLow', 'Catalyst from', '%')}
                {figure('catalystHigh', 'to', '%')}
              </div>
            )}
            {has?.coat && figure('spread', 'A litre covers in one coat', 'm²/l')}
            <ChoiceField
              label="Which thing in the stores it is"
              value={draft.store}
              onChange={(store) => set('store', store)}
              options={[
                { value: 'none', name: 'none of them: every step with this kind of product goes by it' },
                ...stores.map(([value, { name }]) => ({ value, name })),
              ]}
            />
            <DayField
              label="Read on"
              value={draft.readOn}
              onChange={(day) => set('readOn', day)}
              refused={faults.readOn}
            />
            <TextField label="Note" rows={2} value={draft.note} onChange={(words) => set('note', words)} />
          </>
        );
      }}
    </RecordSheet>
  );
}
