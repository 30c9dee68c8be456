/** A step as it is being filled in, and the reading of it. */
import type { Book, Follow, Id, OperationFields, SetUpNeedRecord, Step, WaitRecord } from '#boat-book';
import type { PlaceFeature } from '#workplan';
import {
  type ConditionsDraft,
  type ConditionsFault,
  conditionsDraft,
  conditionsOf,
} from '../../parts/conditions-fields.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { type FollowDraft, type FollowFault, followDraft, readFollow } from './follow-draft.ts';
import { readWait, type WaitDraft, type WaitFault, waitDraft } from './wait-draft.ts';

export interface StepDraft {
  readonly title: string;
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly hands: string;
  readonly keeper: boolean;
  readonly notAlone: boolean;
  readonly zone: string;
  readonly needs: ConditionsDraft;
  readonly features: readonly PlaceFeature[];
  readonly tools: readonly { readonly tool: Id; readonly count: string }[];
  readonly setUps: readonly SetUpNeedRecord[];
  readonly stores: readonly Id[];
  readonly dusty: boolean;
  readonly wet: boolean;
  readonly mix: string;
  readonly waits: readonly WaitDraft[];
  /** null: after the step before it and its waits */
  readonly follows: readonly FollowDraft[] | null;
  readonly cautions: string;
}

export type StepFault = 'title' | 'low' | 'likely' | 'high' | 'hands' | 'tools' | ConditionsFault;

export interface StepFaults {
  readonly step: Faults<StepFault>;
  readonly waits: Readonly<Record<string, Faults<WaitFault>>>;
  readonly follows: Readonly<Record<number, Faults<FollowFault>>>;
}
export const noFaults: StepFaults = { step: {}, waits: {}, follows: {} };

export function stepDraft(step: Step | null): StepDraft {
  return {
    title: step?.title ?? '',
    low: step?.minutes.low.toString() ?? '',
    likely: step?.minutes.likely.toString() ?? '',
    high: step?.minutes.high.toString() ?? '',
    hands: step?.hands.toString() ?? '1',
    keeper: step?.keeper ?? true,
    notAlone: step?.notAlone ?? false,
    zone: step?.zone ?? '',
    needs: conditionsDraft(step?.needs ?? {}),
    features: step?.features ?? [],
    tools: step?.tools.map(({ tool, count }) => ({ tool, count: String(count) })) ?? [],
    setUps: step?.setUps ?? [],
    stores: step?.stores ?? [],
    dusty: step?.dusty ?? false,
    wet: step?.wet ?? false,
    mix: step?.mix ?? '',
    waits: step?.waits.map(waitDraft) ?? [],
    follows: step?.follows?.map((follow, index) => followDraft(follow, String(index))) ?? null,
    cautions: step?.cautions.join('\n') ?? '',
  };
}

export type StepFields = Omit<OperationFields<'addStep'>, 'job' | 'id'>;

export function readStep(
  draft: StepDraft,
  book: Book,
): { readonly kind: 'step'; readonly step: StepFields } | { readonly kind: 'refused'; readonly faults: StepFaults } {
  const form = formReading<StepFault>();
  const minutes = { min: 1, max: 1440, unit: 'min', whole: true };
  const title = form.words('title', draft.title, 'Say what is done in this step.');
  const likely = form.figure('likely', draft.likely, minutes);
  const low = form.figure('low', draft.low, minutes);
  const high = form.figure('high', draft.high, minutes);
  if (low > likely)
    form.refuse('low', `That is more than the likely ${likely} min. The low figure is the least it may take.`);
  if (high < likely)
    form.refuse('high', `That is less than the likely ${likely} min. The high figure is the most it may take.`);
  const hands = form.figure('hands', draft.hands, { min: 0, max: 8, unit: '', whole: true });
  const needs = conditionsOf<StepFault>(draft.needs, form);
  const tools = draft.tools.map(({ tool, count }) => ({
    tool,
    count: form.figure('tools', count, { min: 1, max: book.tools[tool]?.count ?? 1, unit: '', whole: true }),
  }));

  const waits: WaitRecord[] = [];
  const waitFaults: Record<string, Faults<WaitFault>> = {};
  for (const wait of draft.waits) {
    const read = readWait(wait);
    if (read.kind === 'wait') waits.push(read.wait);
    else waitFaults[wait.id] = read.faults;
  }
  const follows: Follow[] = [];
  const followFaults: Record<number, Faults<FollowFault>> = {};
  draft.follows?.forEach((follow, index) => {
    const read = readFollow(follow);
    if (read.kind === 'follow') follows.push(read.follow);
    else followFaults[index] = read.faults;
  });
  if (!form.sound() || Object.keys(waitFaults).length > 0 || Object.keys(followFaults).length > 0)
    return { kind: 'refused', faults: { step: form.faults, waits: waitFaults, follows: followFaults } };
  return {
    kind: 'step',
    step: {
      title,
      minutes: { low, likely, high },
      hands,
      keeper: draft.keeper,
      notAlone: draft.notAlone,
      zone: draft.zone || null,
      needs,
      features: draft.features,
      tools,
      setUps: draft.setUps,
      stores: draft.stores,
      dusty: draft.dusty,
      wet: draft.wet,
      mix: draft.mix || null,
      waits,
      follows: draft.follows === null ? null : follows,
      cautions: draft.cautions
        .split('\n')
        .map((line) => line.trim())
        .filter((line) => line !== ''),
    },
  };
}
