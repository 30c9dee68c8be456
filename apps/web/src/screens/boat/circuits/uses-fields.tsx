/** When a circuit is on: always, by the clock, by the sun, or so many hours a day. */
import type { CircuitUseRecord } from '#boat-book';
import { isClock } from '#units';
import { ChoiceField, PickField } from '../../../parts/choice-fields.tsx';
import type { Faults, FormReading } from '../../../parts/read-form.ts';
import { ClockField, NumberField } from '../../../parts/text-fields.tsx';

type SunMark = 'sunset' | 'sunrise' | 'dusk' | 'dawn';

export interface UsesDraft {
  readonly kind: CircuitUseRecord['kind'] | '';
  readonly from: SunMark | 'clock';
  readonly fromClock: string;
  readonly to: SunMark | 'clock';
  readonly toClock: string;
  readonly hours: string;
}
export type UsesFault = 'uses' | 'fromClock' | 'toClock' | 'hours';

/** What stands in the form for a circuit; for a new one nothing is chosen. */
export function usesDraft(uses: CircuitUseRecord | null): UsesDraft {
  const empty: UsesDraft = { kind: '', from: 'sunset', fromClock: '', to: 'sunrise', toClock: '', hours: '' };
  if (uses === null) return empty;
  if (uses.kind === 'hours') return { ...empty, kind: 'hours', hours: String(uses.hours_a_day) };
  if (uses.kind === 'always') return { ...empty, kind: 'always' };
  const from = isClock(uses.from) ? 'clock' : (uses.from as SunMark);
  const to = isClock(uses.to) ? 'clock' : (uses.to as SunMark);
  return {
    ...empty,
    kind: uses.kind,
    from,
    to,
    fromClock: from === 'clock' ? uses.from : '',
    toClock: to === 'clock' ? uses.to : '',
  };
}

/** The uses of a draft; what cannot be read is refused in the form. */
export function usesOf<F extends string>(draft: UsesDraft, form: FormReading<F | UsesFault>): CircuitUseRecord {
  const end = (mark: SunMark | 'clock', field: 'fromClock' | 'toClock') =>
    mark === 'clock' ? form.clock(field, draft[field]) : mark;
  switch (form.chosen('uses', draft.kind, 'Choose when it is on.')) {
    case 'hours':
      return { kind: 'hours', hours_a_day: form.figure('hours', draft.hours, { min: 0, max: 24, unit: 'hours' }) };
    case 'clock':
      return {
        kind: 'clock',
        from: form.clock('fromClock', draft.fromClock),
        to: form.clock('toClock', draft.toClock),
      };
    case 'sun':
      return { kind: 'sun', from: end(draft.from, 'fromClock'), to: end(draft.to, 'toClock') };
    default:
      return { kind: 'always' };
  }
}

const marks = [
  { value: 'sunset', name: 'sunset' },
  { value: 'dusk', name: 'dusk' },
  { value: 'dawn', name: 'dawn' },
  { value: 'sunrise', name: 'sunrise' },
  { value: 'clock', name: 'a clock time' },
] as const;

export function UsesFields({
  draft,
  onChange,
  faults,
}: {
  readonly draft: UsesDraft;
  readonly onChange: (draft: UsesDraft) => void;
  readonly faults: Faults<UsesFault>;
}) {
  const set = (part: Partial<UsesDraft>) => onChange({ ...draft, ...part });
  const clock = (field: 'fromClock' | 'toClock', label: string) => (
    <ClockField
      label={label}
      value={draft[field]}
      onChange={(text) => set({ [field]: text })}
      refused={faults[field]}
    />
  );
  return (
    <>
      <PickField
        label="On, with someone aboard"
        value={draft.kind}
        onChange={(kind) => set({ kind })}
        options={[
          { value: 'hours', name: 'hours a day' },
          { value: 'clock', name: 'by the clock' },
          { value: 'sun', name: 'by the sun' },
          { value: 'always', name: 'always' },
        ]}
        refused={faults.uses}
      />
      {draft.kind === 'always' && <p className="field-note">With nobody aboard too.</p>}
      {draft.kind === 'hours' && (
        <NumberField
          label="Hours a day"
          unit="h"
          value={draft.hours}
          onChange={(hours) => set({ hours })}
          refused={faults.hours}
        />
      )}
      {draft.kind === 'clock' && (
        <div className="field-row">
          {clock('fromClock', 'From')}
          {clock('toClock', 'To')}
        </div>
      )}
      {draft.kind === 'sun' && (
        <div className="field-row">
          <ChoiceField label="From" value={draft.from} onChange={(from) => from && set({ from })} options={marks} />
          {draft.from === 'clock' && clock('fromClock', 'From, by the clock')}
          <ChoiceField label="To" value={draft.to} onChange={(to) => to && set({ to })} options={marks} />
          {draft.to === 'clock' && clock('toClock', 'To, by the clock')}
        </div>
      )}
    </>
  );
}
