/** What is to be got by the plan in hand. */
import { useMemo } from 'react';
import type { Book } from '#boat-book';
import { type ToGet, toGet } from '#reckoning';
import { zoneOf } from '../../reading/today.ts';
import { isOfBookAsked, type PlanInHand, usePlan } from '../days/planner.ts';

interface ToGetSoFar {
  readonly lines: readonly ToGet[];
  readonly state: PlanInHand['state'];
  /** by a plan of this book, not by the one before */
  readonly sure: boolean;
}

export function useToGet(book: Book): ToGetSoFar {
  const inHand = usePlan(book);
  const { problem, picture, state } = inHand;
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
  return { lines, state, sure: isOfBookAsked(inHand) };
}
