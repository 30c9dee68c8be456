/** How far a jury rig is trusted, as it is filled in: until a day, and within its limits. */
import type { JuryRig } from '#boat-book';
import type { UsualTrust } from '#jobs';
import { addDays } from '#units';
import { TickField } from '../../parts/choice-fields.tsx';
import type { Faults, FormReading } from '../../parts/read-form.ts';
import { DayField, NumberField } from '../../parts/text-fields.tsx';

export interface TrustDraft {
  readonly trustedUntil: string;
  readonly wind: string;
  readonly sails: string;
  readonly notOnRoad: boolean;
}

export type TrustFault = 'trustedUntil' | 'wind' | 'sails';
type Trust = Pick<JuryRig, 'trustedUntil' | 'wind_max_kn' | 'sails_max' | 'notOnRoad'>;

/** What is usual of its kind, for one made on a day. */
export const usuallyTrusted = ({ days, wind_max_kn, notOnRoad }: UsualTrust, made: string): Trust => ({
  trustedUntil: addDays(made, days),
  wind_max_kn,
  sails_max: null,
  notOnRoad,
});

export const usualWords = ({ kind }: UsualTrust): string =>
  `as is usual for ${kind ?? 'something of no kind that is known'}`;

export const trustDraft = (trust: Trust): TrustDraft => ({
  trustedUntil: trust.trustedUntil,
  wind: trust.wind_max_kn?.toString() ?? '',
  sails: trust.sails_max?.toString() ?? '',
  notOnRoad: trust.notOnRoad,
});

export function readTrust(form: FormReading<TrustFault>, draft: TrustDraft, notBefore: string): Trust {
  const trustedUntil = form.day('trustedUntil', draft.trustedUntil);
  if (form.sound() && trustedUntil < notBefore)
    form.refuse('trustedUntil', 'That day is over, or before it was made. Choose a later day.');
  return {
    trustedUntil,
    wind_max_kn: form.figureOrNone('wind', draft.wind, { min: 1, max: 80, unit: 'knots' }),
    sails_max: form.figureOrNone('sails', draft.sails, { min: 0, max: 100, unit: 'sails', whole: true }),
    notOnRoad: draft.notOnRoad,
  };
}

export function TrustFields({
  draft,
  onChange,
  faults,
}: {
  readonly draft: TrustDraft;
  readonly onChange: (draft: TrustDraft) => void;
  readonly faults: Faults<TrustFault>;
}) {
  return (
    <>
      <DayField
        label="Trusted until"
        note="The last day you would go with it."
        value={draft.trustedUntil}
        onChange={(trustedUntil) => onChange({ ...draft, trustedUntil })}
        refused={faults.trustedUntil}
      />
      <div className="field-row">
        <NumberField
          label="Up to a wind of"
          unit="knots"
          note="Empty: no such limit."
          value={draft.wind}
          onChange={(wind) => onChange({ ...draft, wind })}
          refused={faults.wind}
        />
        <NumberField
          label="For at most"
          unit="sails"
          whole
          note="Empty: no such limit."
          value={draft.sails}
          onChange={(sails) => onChange({ ...draft, sails })}
          refused={faults.sails}
        />
      </div>
      <TickField
        label="Not on the road"
        value={draft.notOnRoad}
        onChange={(notOnRoad) => onChange({ ...draft, notOnRoad })}
      />
    </>
  );
}
