import type { Book, Id } from '#boat-book';
import type { Beside } from './beside.ts';
import { dueFindings } from './due-findings.ts';
import { groundFindings } from './ground-findings.ts';
import { hoistFindings } from './hoist-findings.ts';
import { loadFindings } from './load-findings.ts';
import { outingTime } from './outing-time.ts';
import { stayFindings } from './stay-findings.ts';
import { trailerFindings } from './trailer-findings.ts';

/**
 * What falls due before an outing is over, what her gear bears under its wind, and her trailer. It takes some tenths of a second: not for the
 * moment of a tap. Whether its jobs are done in time is told by `outingFit`, which knows the plan.
 *
 * @param now  the instant it is asked
 */
export function gearFindings(book: Book, id: Id, now: number): Beside {
  const outing = book.outings[id];
  if (outing === undefined) return { findings: [], notLooked: [] };
  const matter = { book, id, outing, time: outingTime(book, outing, now), knows: null };
  const looks = [
    dueFindings(matter),
    loadFindings(matter),
    groundFindings(matter),
    stayFindings(matter),
    { findings: hoistFindings(matter), notLooked: [] },
    trailerFindings(matter),
  ];
  return {
    findings: looks.flatMap(({ findings }) => findings),
    notLooked: looks.flatMap(({ notLooked }) => notLooked),
  };
}
