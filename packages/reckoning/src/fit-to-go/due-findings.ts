import type { Book, Outing } from '#boat-book';
import type { Bearing, Finding, NotLooked } from '#fit-to-go';
import { type DueOfBook, dueBefore, duesOfBook } from '../due-of-book.ts';
import { dueCautionsOf, dueParts, dueWhen } from '../dues-told.ts';
import { planInForce } from '../plan-in-force.ts';
import { doIt } from './job-findings.ts';
import { jobInTime } from './jobs-in-time.ts';
import type { OutingTime } from './outing-time.ts';

const grave = ['danger', 'unlawful', 'stops-sailing'];

/** What is due before the outing is over: grave ones stop her, others and those that may be due are conditions. */
export function dueFindings(
  book: Book,
  outing: Outing,
  time: OutingTime,
): { readonly findings: readonly Finding[]; readonly notLooked: readonly NotLooked[] } {
  const dues = duesOfBook(book, time.today);
  const { due: before, mayBe, unknown } = dueBefore(dues, outing);
  const bearingOf = (each: DueOfBook): Bearing => {
    if (before.includes(each)) return grave.includes(each.due.consequence) ? 'stops' : 'condition';
    return mayBe.includes(each) ? 'condition' : 'sound';
  };
  const cannot = (words: string, because: string): NotLooked => ({ subject: 'dues', words, because });
  return {
    findings: dues
      .filter((each) => !unknown.includes(each))
      .map((each) => findingOf(book, each, bearingOf(each), time)),
    notLooked: [
      ...(dues.length === 0
        ? [
            cannot(
              'what falls due, and the dates printed on her safety gear',
              'nothing that comes round is in the book',
            ),
          ]
        : []),
      ...unknown.map(({ due }) => cannot(due.title, 'when it falls due is not known')),
    ],
  };
}

function findingOf(book: Book, dueOf: DueOfBook, bearing: Bearing, { today, starts, zone }: OutingTime): Finding {
  const { id, due, since, job } = dueOf;
  const open = job === null ? undefined : book.jobs[job];
  return {
    id: `due.${id}`,
    subject: 'dues',
    bearing,
    words: due.title,
    because: [dueWhen(dueOf, today), ...dueParts(dueOf, today)]
      .filter((words) => words !== '')
      .map((words) => ({ words, from: since?.on ?? null })),
    remedies:
      bearing === 'sound'
        ? []
        : [
            open && job !== null
              ? doIt(book, job, open, jobInTime(book, job, planInForce(book), starts, zone))
              : { words: `${due.title}: do it, and say when.`, minutes: null, inHand: true },
          ],
    cautions: bearing === 'sound' ? [] : dueCautionsOf(dueOf),
    of: { collection: 'dues', id },
  };
}
