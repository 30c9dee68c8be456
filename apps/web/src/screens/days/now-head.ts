/**
 * What stands over and in the heading of the page of the moment. It is reckoned once for a book, a plan and a minute: as the
 * finger comes down on the way there, so that the page has it when the finger goes up.
 */
import type { Book } from '#boat-book';
import type { RigTrust } from '#reckoning';
import type { Minute, Plan, Problem } from '#workplan';
import { todayAt } from '../../reading/today.ts';
import { type Item, momentOf, ticksOf } from './in-hand.ts';
import { momentInWords } from './now-words.ts';
import { minuteOf } from './place-time.ts';
import { rigsPast } from './rigs-past.tsx';

export interface NowHead {
  readonly now: Minute;
  /** `Saturday 10:05 · 14 °C · dry until 15:00` */
  readonly said: string;
  /** jury rigs past their trust */
  readonly past: readonly RigTrust[];
  /** null: nothing more is planned */
  readonly first: Item | null;
}

let last: { readonly book: Book; readonly plan: Plan; readonly head: NowHead } | null = null;

export function nowHeadOf(book: Book, problem: Problem, plan: Plan): NowHead {
  const now = minuteOf(problem, Date.now());
  if (last?.book === book && last.plan === plan && last.head.now === now) return last.head;
  const head: NowHead = {
    now,
    said: momentInWords(problem, now),
    past: rigsPast(book, todayAt(book)),
    first: momentOf(problem, plan, now, ticksOf(book)).first,
  };
  last = { book, plan, head };
  return head;
}
