/** Coats that must be dry to the touch before dew, and what a clear night does to what lies in the open. */
import type { Id, Step } from '#boat-book';
import { nightSurface_C, touchDryLaw } from '#materials';
import type { BeforeDew, MinuteSpan, PlanHour } from '#workplan';
import { familyOfWait } from './product-tin.ts';

export interface CoatWait {
  readonly wait: Id;
  readonly beforeDew: BeforeDew;
}

/**
 * The wait in which a step's coat gets dry to the touch: of a step that leaves a wet finish and asks for a margin over
 * the dew point, the one that is soonest there. The margin is the step's own. Null: no such step, or nothing that dries.
 */
export function coatWaitOf({ wet, needs: { dewMargin_min_C }, waits }: Step): CoatWait | null {
  if (!wet || dewMargin_min_C === undefined) return null;
  let soonest: { readonly wait: Id; readonly touchDry: BeforeDew['touchDry']; readonly minutes: number } | null = null;
  for (const wait of waits) {
    const touchDry = touchDryLaw(wait.law, familyOfWait(wait));
    if (touchDry === null) continue;
    const minutes =
      'minutes' in touchDry ? touchDry.minutes : 'atReference_min' in touchDry ? touchDry.atReference_min : 0;
    if (soonest === null || minutes < soonest.minutes) soonest = { wait: wait.id, touchDry, minutes };
  }
  return soonest && { wait: soonest.wait, beforeDew: { dewMargin_min_C, touchDry: soonest.touchDry } };
}

/**
 * The hours with what a clear sky takes from what lies in the open while the sun is down (`nightSurface_C`), where no
 * surface was told and no roof is over her. Cloud is not known to the book: a clear sky is the cautious one.
 *
 * @param daylight  sunrise to sunset; an hour is dark where its middle is
 */
export function withSkyCooling(hours: readonly PlanHour[], daylight: readonly MinuteSpan[]): PlanHour[] {
  return hours.map((hour, index) => {
    const middle = index * 60 + 30;
    if (hour.surface_C !== null || hour.sheltered) return hour;
    if (daylight.some(({ from, to }) => from <= middle && middle < to)) return hour;
    // to a tenth, so that every machine has the same
    const skyCooling_C = Math.max(0, Math.round((hour.air_C - nightSurface_C(hour)) * 10) / 10);
    return { ...hour, skyCooling_C };
  });
}
