/** What is to be got by the plan in hand. */
import { useMemo } from 'react';
import type { Book } from '#boat-book';
import { type ToGet, toGet } from '#reckoning';
import { zoneOf } from '../../reading/today.ts';
import { type PlanInHand, usePlan } from '../days/planner.ts';

export function useToGet(book: Book): { readonly lines: readonly ToGet[]; readonly state: PlanInHand['state'] } {
  const { problem, picture, state } = usePlan(book);
  const zone = zoneOf(book);
  const lines = useMemo(
    () =>
      toGet(book, {
        planned: problem && picture ? { problem, outcome: picture.outcome } : null,
        now: Date.now(),
        timeZone: zone,
      }),
    [book, problem, picture, zone],
  );
  return { lines, state };
}
