/** Writing in the log by hand; and putting an entry right, which writes another that names it. */
import type { Book, Id, LogEntry, LogKind } from '#boat-book';
import { instantAt } from '#units';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { RecordSheet } from '../../../parts/record-sheet.tsx';
import { DayField, NumberField, TextField } from '../../../parts/text-fields.tsx';
import { useDraft } from '../../../parts/use-draft.ts';
import { todayAt, zoneOf } from '../../../reading/today.ts';
import { dayOf, kindName, kindsByHand, lastCurrency } from './log-words.ts';

type Name = 'kind' | 'text' | 'day' | 'cost' | 'currency' | 'minutes';

export default function NoteSheet({
  book,
  corrects,
  fitting = null,
  onClose,
}: {
  readonly book: Book;
  /** the entry that is put right; null: none, it is a new one */
  readonly corrects: Id | null;
  readonly fitting?: Id | null;
  readonly onClose: () => void;
}) {
  const old = corrects === null ? undefined : book.log[corrects];
  const today = todayAt(book);
  const { draft, set, changed } = useDraft({
    kind: old?.kind ?? ('note' as LogKind),
    text: old?.text ?? '',
    day: old === undefined ? today : dayOf(book, old),
    fitting: old?.fitting ?? fitting ?? '',
    zone: old?.zone ?? '',
    with: (old?.with ?? []).map(({ name }) => name).join(', '),
    cost: old?.cost === undefined ? '' : String(old.cost.amount),
    currency: old?.cost?.currency ?? lastCurrency(book),
    minutes: old?.spent_min == null ? '' : String(old.spent_min),
    who: old?.who ?? book.boat.keeper,
  });
  const kinds = old === undefined || kindsByHand.includes(old.kind) ? kindsByHand : [old.kind, ...kindsByHand];
  const read = (form: FormReading<Name>) => {
    const text = form.words('text', draft.text, 'Say what was done, seen or measured.');
    const day = form.day('day', draft.day);
    if (form.sound() && day > today) form.refuse('day', `${day} is still to come. Give today or a day before it.`);
    const amount = form.figureOrNone('cost', draft.cost, { min: 0, max: 10_000_000, unit: '' });
    const currency = draft.currency.trim().toUpperCase();
    if (amount !== null && !/^[A-Z]{3}$/.test(currency))
      form.refuse('currency', 'Give the three letters of the currency it was paid in, such as EUR, GBP or SEK.');
    const spent_min = form.figureOrNone('minutes', draft.minutes, { min: 0, max: 100_000, unit: 'min' });
    const names = draft.with.split(',').map((name) => name.trim());
    const used = names.filter((name) => name !== '').map((name) => kept(old, name));
    return {
      kind: draft.kind,
      text,
      // at noon of another day; of the same day as it stood, or now
      ...(old !== undefined && day === dayOf(book, old)
        ? { at: old.at }
        : day === today || !form.sound()
          ? {}
          : { at: new Date(instantAt(day, '12:00', zoneOf(book))).toISOString() }),
      job: old?.job ?? null,
      step: old?.step ?? null,
      zone: draft.zone === '' ? null : draft.zone,
      who: draft.who.trim(),
      spent_min,
      ...(draft.fitting === '' ? {} : { fitting: draft.fitting }),
      ...(old?.of === undefined ? {} : { of: old.of }),
      ...(used.length === 0 ? {} : { with: used }),
      ...(amount === null ? {} : { cost: { amount, currency } }),
      ...(old?.photos === undefined ? {} : { photos: old.photos }),
      ...(corrects === null ? {} : { corrects }),
    };
  };
  return (
    <RecordSheet
      title={old === undefined ? 'Write in the log' : 'Put an entry right'}
      keep={old === undefined ? 'Write it' : 'Put it right'}
      unsaved={changed}
      read={read}
      onKeep={(fields, run) => run('writeLog', fields)}
      onClose={onClose}
    >
      {(faults) => (
        <>
          {old !== undefined && (
            <p className="soft">The entry of before stays as it was, and this one is shown in its place.</p>
          )}
          <PickField
            label="What it is"
            value={draft.kind}
            onChange={(value) => set('kind', value)}
            options={kinds.map((value) => ({ value, name: kindName[value] }))}
          />
          <TextField
            label="What was done or seen"
            rows={3}
            value={draft.text}
            onChange={(text) => set('text', text)}
            refused={faults.text}
          />
          <TextField
            label="With what"
            note="Bedding, paint, parts: with commas between."
            value={draft.with}
            onChange={(text) => set('with', text)}
          />
          <ChoiceField
            label="Fitting"
            value={draft.fitting}
            onChange={(value) => set('fitting', value)}
            none="none"
            options={Object.entries(book.fittings).map(([value, { name }]) => ({ value, name }))}
          />
          {draft.fitting === '' && (
            <ChoiceField
              label="Zone"
              value={draft.zone}
              onChange={(value) => set('zone', value)}
              none="the boat as a whole"
              options={Object.entries(book.zones).map(([value, { name }]) => ({ value, name }))}
            />
          )}
          <DayField label="When" value={draft.day} onChange={(text) => set('day', text)} refused={faults.day} />
          <NumberField
            label="What it cost"
            unit="left empty: nothing, or not known"
            value={draft.cost}
            onChange={(text) => set('cost', text)}
            refused={faults.cost}
          />
          {draft.cost.trim() !== '' && (
            <TextField
              label="Currency"
              value={draft.currency}
              onChange={(text) => set('currency', text)}
              refused={faults.currency}
            />
          )}
          <NumberField
            label="Time spent"
            unit="min"
            whole
            value={draft.minutes}
            onChange={(text) => set('minutes', text)}
            refused={faults.minutes}
          />
          <TextField label="By" value={draft.who} onChange={(text) => set('who', text)} />
        </>
      )}
    </RecordSheet>
  );
}

/** What was used, as the entry of before had it where the name is the same. */
function kept(old: LogEntry | undefined, name: string): NonNullable<LogEntry['with']>[number] {
  return old?.with?.find((used) => used.name === name) ?? { name };
}
