/** A line that was read, with what the keeper changed of it, and the records it goes in as. */
import type { Consequence, Id, OperationFields, SetUpNeedRecord } from '#boat-book';
import { type ReadLine, type UsualTrust, usualTrust } from '#jobs';
import type { Conditions } from '#sky';
import {
  type ConditionsDraft,
  type ConditionsFault,
  conditionsDraft,
  conditionsOf,
} from '../../parts/conditions-fields.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { usuallyTrusted, usualWords } from './trust-fields.tsx';

export interface PutInDraft {
  readonly what: 'job' | 'jury rig';
  readonly title: string;
  readonly consequence: Consequence | '';
  readonly zone: Id | '';
  readonly fitting: Id | '';
  readonly likely: string;
  readonly low: string;
  readonly high: string;
  readonly hands: string;
  readonly notAlone: boolean;
  readonly setUps: readonly SetUpNeedRecord[];
  readonly needs: ConditionsDraft;
  readonly due: string;
  readonly outing: Id | '';
  /** of a jury rig */
  readonly notOnRoad: boolean;
}

export type PutInFault = 'title' | 'consequence' | 'likely' | 'low' | 'high' | 'hands' | 'due' | ConditionsFault;

/** What is understood before a word is said: to look for every name and phrase in nothing takes longer than the page. */
export const nothingRead: ReadLine = {
  title: '',
  zone: null,
  fitting: null,
  minutes: null,
  hands: null,
  notAlone: null,
  setUps: [],
  conditions: [],
  consequence: null,
  due: null,
  outing: null,
  temporary: null,
};

/** What the line says; what it does not say is empty. One pair of hands is what one has without saying so. */
export function understood(read: ReadLine): PutInDraft {
  const minutes = read.minutes?.value;
  const needs: Conditions = Object.assign({}, ...read.conditions.map(({ value }) => value));
  const setUps = new Map<Id, readonly Id[]>();
  for (const { value } of read.setUps) setUps.set(value.setUp, [...(setUps.get(value.setUp) ?? []), value.state]);
  return {
    what: read.temporary ? 'jury rig' : 'job',
    title: read.title,
    consequence: read.consequence?.value ?? '',
    zone: read.zone?.value ?? '',
    fitting: read.fitting?.value ?? '',
    likely: minutes ? String(minutes.likely) : '',
    low: minutes?.low != null ? String(minutes.low) : '',
    high: minutes?.high != null ? String(minutes.high) : '',
    hands: String(read.hands?.value ?? 1),
    notAlone: read.notAlone !== null,
    setUps: [...setUps].map(([setUp, states]) => ({ setUp, states })),
    needs: conditionsDraft(needs),
    due: read.due?.value ?? '',
    outing: read.outing?.value ?? '',
    notOnRoad: false,
  };
}

/** A jury rig is trusted as is usual of its kind, where it was not said how far. */
export function trustedAsUsual(draft: PutInDraft, today: string): PutInDraft {
  if (draft.what !== 'jury rig') return draft;
  const { trustedUntil, wind_max_kn, notOnRoad } = usuallyTrusted(usualOf(draft), today);
  return {
    ...draft,
    due: draft.due || trustedUntil,
    needs: { ...draft.needs, wind: draft.needs.wind || (wind_max_kn?.toString() ?? '') },
    notOnRoad: draft.notOnRoad || notOnRoad,
  };
}

const usualOf = ({ title, consequence }: PutInDraft): UsualTrust => usualTrust(title, consequence || null);

/** `as is usual for tape`; null: its day is another than is usual of its kind. */
export function usualOfRig(draft: PutInDraft, today: string): string | null {
  const usual = usualOf(draft);
  return draft.due === usuallyTrusted(usual, today).trustedUntil ? usualWords(usual) : null;
}

export type PutIn =
  | { readonly kind: 'job'; readonly job: OperationFields<'addJob'> }
  | { readonly kind: 'jury rig'; readonly rig: OperationFields<'addJuryRig'> }
  | { readonly kind: 'refused'; readonly faults: Faults<PutInFault> };

/**
 * The records of a draft. Without minutes the job goes in without a step, and the planner says so; without a low and
 * a high figure they are the likely one, for the keeper to change.
 */
export function readPutIn(draft: PutInDraft, said: string, today: string): PutIn {
  const form = formReading<PutInFault>();
  const minutes = { min: 1, max: 1440, unit: 'min', whole: true };
  const title = form.words('title', draft.title, 'Say what is to be done.');
  const zone = draft.zone || null;
  const needs = conditionsOf<PutInFault>(draft.needs, form);
  if (draft.what === 'jury rig') {
    const trustedUntil = form.day('due', draft.due);
    if (form.sound() && trustedUntil < today) form.refuse('due', 'That day is over. Choose today or a later day.');
    if (!form.sound()) return { kind: 'refused', faults: form.faults };
    const usual = usualOfRig(draft, today);
    return {
      kind: 'jury rig',
      rig: {
        title,
        job: null,
        zone,
        reason: said,
        made: today,
        trustedUntil,
        wind_max_kn: needs.wind_max_kn ?? null,
        sails_max: null,
        notOnRoad: draft.notOnRoad,
        ...(usual === null ? {} : { trustedBecause: usual }),
      },
    };
  }
  const consequence = form.chosen('consequence', draft.consequence, 'Choose what happens if it is left.');
  const likely = form.figureOrNone('likely', draft.likely, minutes);
  const low = form.figureOrNone('low', draft.low, minutes) ?? likely;
  const high = form.figureOrNone('high', draft.high, minutes) ?? likely;
  const hands = form.figure('hands', draft.hands, { min: 1, max: 8, unit: '', whole: true });
  const due = form.dayOrNone('due', draft.due);
  if (likely !== null && low !== null && low > likely)
    form.refuse('low', `That is more than the likely ${likely} min.`);
  if (likely !== null && high !== null && high < likely)
    form.refuse('high', `That is less than the likely ${likely} min.`);
  if (likely === null && (draft.low || draft.high)) form.refuse('likely', 'Give the likely minutes too.');
  if (!form.sound()) return { kind: 'refused', faults: form.faults };
  const step =
    likely === null || low === null || high === null
      ? []
      : [{ title, minutes: { low, likely, high }, hands, notAlone: draft.notAlone, needs, setUps: draft.setUps }];
  return {
    kind: 'job',
    job: {
      title,
      consequence,
      zone,
      fitting: draft.fitting || null,
      due,
      outing: draft.outing || null,
      said,
      steps: step,
    },
  };
}
