/** What a step comes after, and how soon or how late, as it is being filled in. */
import type { Follow } from '#boat-book';
import { type Faults, formReading } from '../../parts/read-form.ts';

export type FollowFault = 'step' | 'least' | 'greatest' | 'abrade';

export interface FollowDraft {
  /** of the draft only */
  readonly id: string;
  readonly step: string;
  /** '': from the end of the step itself */
  readonly wait: string;
  readonly least: string;
  /** '': no latest */
  readonly greatest: string;
  readonly past: 'forbidden' | 'abrade';
  readonly abrade: string;
}

export function emptyFollow(id: string): FollowDraft {
  return { id, step: '', wait: '', least: '0', greatest: '', past: 'forbidden', abrade: '' };
}

export function followDraft(follow: Follow, id: string): FollowDraft {
  return {
    id,
    step: follow.step,
    wait: follow.wait ?? '',
    least: String(follow.least_min),
    greatest: follow.greatest_min?.toString() ?? '',
    past: follow.past.kind,
    abrade: follow.past.kind === 'abrade' ? String(follow.past.minutes) : '',
  };
}

export function readFollow(
  draft: FollowDraft,
):
  | { readonly kind: 'follow'; readonly follow: Follow }
  | { readonly kind: 'refused'; readonly faults: Faults<FollowFault> } {
  const form = formReading<FollowFault>();
  const lag = { min: 0, max: 60 * 24 * 60, unit: 'min', whole: true };
  const step = form.chosen('step', draft.step, 'Choose the step it comes after.');
  const least_min = form.figure('least', draft.least, lag);
  const greatest_min = form.figureOrNone('greatest', draft.greatest, lag);
  if (greatest_min !== null && greatest_min < least_min)
    form.refuse('greatest', `That is sooner than the soonest, ${least_min} min.`);
  const past: Follow['past'] =
    draft.past === 'abrade' && greatest_min !== null
      ? { kind: 'abrade', minutes: form.figure('abrade', draft.abrade, { min: 1, max: 600, unit: 'min', whole: true }) }
      : { kind: 'forbidden' };
  if (!form.sound()) return { kind: 'refused', faults: form.faults };
  return { kind: 'follow', follow: { step, wait: draft.wait || null, least_min, greatest_min, past } };
}
