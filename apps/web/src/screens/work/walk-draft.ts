/** What a walk-round proposed, with what the keeper changed of it, and the records it goes in as. */
import type { Book, Consequence, Day, Id, OperationFields, ReadingRecord } from '#boat-book';
import type { Proposal } from '#jobs';
import { stowageNamed } from '#reckoning';
import { instantAt } from '#units';
import { type Faults, formReading } from '../../parts/read-form.ts';
import {
  nothingRead,
  type PutInDraft,
  type PutInFault,
  readPutIn,
  trustedAsUsual,
  understood,
} from './put-in-draft.ts';

export interface ReadingDraft {
  readonly battery: Id | '';
  readonly volts: string;
  readonly circumstance: ReadingRecord['circumstance'];
  /** the time it was read today */
  readonly clock: string;
}

export interface StoreDraft {
  readonly name: string;
  readonly keptAt: string;
  readonly stands: 'on hand' | 'to get';
}

/** Each form holds what would go in if its kind were chosen, so that a change of kind and back loses nothing. */
export interface WalkDraft {
  readonly what: Proposal['kind'];
  readonly work: PutInDraft;
  readonly reading: ReadingDraft;
  readonly store: StoreDraft;
}

export type WalkFault = PutInFault | 'battery' | 'volts' | 'clock' | 'name';

/** What is said once for all that do not say it. */
export interface ForAll {
  readonly consequence: Consequence | '';
}

/**
 * What a proposal would go in as.
 * @param battery  the only one she has, or ''
 * @param standsFor  of the job that a jury rig stands in for; '': none is known
 */
export function walkDraft(
  proposal: Proposal,
  {
    battery,
    clock,
    all,
    standsFor,
    today,
  }: {
    readonly battery: Id | '';
    readonly clock: string;
    readonly all: ForAll;
    readonly standsFor: Consequence | '';
    readonly today: Day;
  },
): WalkDraft {
  const work = 'read' in proposal ? understood(proposal.read) : nothingUnderstood;
  const rig = proposal.kind === 'jury rig';
  return {
    what: proposal.kind,
    work: trustedAsUsual(
      {
        ...work,
        what: rig ? 'jury rig' : 'job',
        title: work.title || ('name' in proposal ? proposal.name : ''),
        consequence: rig ? standsFor : work.consequence || all.consequence,
        notOnRoad: rig && proposal.notOnRoad,
      },
      today,
    ),
    reading: {
      battery,
      volts: proposal.kind === 'reading' ? String(proposal.volts) : '',
      circumstance: proposal.kind === 'reading' ? proposal.circumstance : 'not said',
      clock,
    },
    store: {
      name: proposal.kind === 'store' ? proposal.name : work.title,
      keptAt: proposal.kind === 'store' ? proposal.keptAt : '',
      stands: proposal.kind === 'store' && proposal.onHand ? 'on hand' : 'to get',
    },
  };
}

const nothingUnderstood: PutInDraft = understood(nothingRead);

export type WalkRecords =
  | { readonly kind: 'job'; readonly fields: OperationFields<'addJob'> }
  | { readonly kind: 'jury rig'; readonly fields: OperationFields<'addJuryRig'> }
  | { readonly kind: 'reading'; readonly fields: OperationFields<'enterReadings'> }
  | { readonly kind: 'store'; readonly fields: OperationFields<'addStore'> }
  | { readonly kind: 'refused'; readonly faults: Faults<WalkFault> };

/**
 * The records of a draft.
 *
 * @param batteries  nominal volts of each of her batteries, by id
 */
export function walkRecords(
  draft: WalkDraft,
  {
    said,
    today,
    zone,
    batteries,
    stowages,
  }: {
    readonly said: string;
    readonly today: Day;
    readonly zone: string;
    readonly batteries: Readonly<Record<Id, { readonly nominal_V: number }>>;
    readonly stowages: Book['stowages'];
  },
): WalkRecords {
  if (draft.what === 'job' || draft.what === 'jury rig') {
    const records = readPutIn({ ...draft.work, what: draft.what }, said, today);
    if (records.kind === 'job') return { kind: 'job', fields: records.job };
    if (records.kind === 'jury rig') return { kind: 'jury rig', fields: records.rig };
    return records;
  }
  const form = formReading<WalkFault>();
  if (draft.what === 'store') {
    const name = form.words('name', draft.store.name, 'Name it, with its size.');
    if (!form.sound()) return { kind: 'refused', faults: form.faults };
    const onHand = draft.store.stands === 'on hand';
    const keptAt = draft.store.keptAt.trim();
    const stowage = stowageNamed(stowages, keptAt);
    return {
      kind: 'store',
      fields: {
        name,
        ...(stowage === null ? { keptAt } : { keptAt: '', stowage }),
        onHand,
        expected: null,
        lead_days: null,
        note: said,
      },
    };
  }
  const { circumstance } = draft.reading;
  const battery = form.chosen('battery', draft.reading.battery, 'Choose which battery it is of.');
  const scale = (batteries[battery]?.nominal_V ?? 12) / 12;
  const volts = form.figure('volts', draft.reading.volts, { min: 8 * scale, max: 16.5 * scale, unit: 'V' });
  const clock = form.clock('clock', draft.reading.clock);
  if (!form.sound()) return { kind: 'refused', faults: form.faults };
  const at = new Date(instantAt(today, clock, zone)).toISOString();
  const panelDark = circumstance === 'not said' ? null : circumstance !== 'on charge';
  const reading = {
    battery,
    at,
    volts,
    current_A: null,
    air_C: null,
    circumstance,
    on: [],
    panelDark,
    by: 'hand',
  } as const;
  return { kind: 'reading', fields: { readings: [reading] } };
}

/** A name for each proposal that stays with it while the page goes on being written. */
export function walkKeys(proposals: readonly Proposal[]): readonly string[] {
  const seen = new Map<string, number>();
  return proposals.map(({ kind, said }) => {
    const words = `${kind} ${said.toLowerCase().replace(/\s+/g, ' ')}`;
    const count = seen.get(words) ?? 0;
    seen.set(words, count + 1);
    return count === 0 ? words : `${words} ${count + 1}`;
  });
}
