/** A joint as it is asked about, and what the question about its bedding takes. */
import type { Joint, JointMaterial } from '#materials';
import type { BeddingAsked } from '#reckoning';
import { type Faults, formReading } from '../../../parts/read-form.ts';

export interface BeddingDraft {
  readonly a: JointMaterial | '';
  readonly b: JointMaterial | '';
  readonly held: Joint['held'] | '';
  readonly apart: Joint['apart'] | '';
  readonly where: Joint['where'] | '';
  readonly gap_mm: string;
  readonly movement_mm: string;
  readonly painted: boolean;
  readonly long_mm: string;
  readonly wide_mm: string;
  readonly count: string;
}

export type BeddingFault = 'a' | 'b' | 'held' | 'apart' | 'where' | 'gap' | 'movement' | 'long' | 'wide' | 'count';

/** What is not said is empty; most joints do not move. */
export const beddingDraft: BeddingDraft = {
  a: '',
  b: '',
  held: '',
  apart: '',
  where: '',
  gap_mm: '',
  movement_mm: '0',
  painted: false,
  long_mm: '',
  wide_mm: '',
  count: '1',
};

export type BeddingRead =
  | { readonly kind: 'read'; readonly asked: BeddingAsked }
  | { readonly kind: 'refused'; readonly faults: Faults<BeddingFault> };

/** What is asked; or everything that cannot be read. */
export function readBedding(draft: BeddingDraft): BeddingRead {
  const form = formReading<BeddingFault>();
  const joint: Joint = {
    parts: [
      form.chosen('a', draft.a, 'Choose what the one part is made of.'),
      form.chosen('b', draft.b, 'Choose what the other part is made of.'),
    ],
    held: form.chosen('held', draft.held, 'Say what holds it.'),
    apart: form.chosen('apart', draft.apart, 'Say whether it must come apart again.'),
    where: form.chosen('where', draft.where, 'Say where it is.'),
    gap_mm: form.figure('gap', draft.gap_mm, { min: 0.05, max: 50, unit: 'mm' }),
    movement_mm: form.figure('movement', draft.movement_mm, { min: 0, max: 20, unit: 'mm' }),
    painted: draft.painted,
  };
  const long = form.figureOrNone('long', draft.long_mm, { min: 1, max: 2000, unit: 'mm' });
  const wide = form.figureOrNone('wide', draft.wide_mm, { min: 1, max: 1000, unit: 'mm' });
  if (long !== null && wide === null) form.refuse('wide', 'Give its width too, or leave both empty.');
  if (wide !== null && long === null) form.refuse('long', 'Give its length too, or leave both empty.');
  const count = form.figure('count', draft.count, { min: 1, max: 200, unit: '', whole: true });
  if (!form.sound()) return { kind: 'refused', faults: form.faults };
  const foot = long === null || wide === null ? null : { length_mm: long, width_mm: wide, count };
  return { kind: 'read', asked: { joint, foot } };
}
