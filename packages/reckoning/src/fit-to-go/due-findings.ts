import type { Bearing, Finding, NotLooked, Remedy } from '#fit-to-go';
import { dueJob } from '../due-job.ts';
import { type DueOfBook, dueBefore, duesOfBook } from '../due-of-book.ts';
import { dueCautionsOf, dueParts, dueWhen } from '../dues-told.ts';
import { lengthInWords } from '../when-in-words.ts';
import type { Beside } from './beside.ts';
import { doJob, type OutingMatter, workOf } from './job-remedy.ts';

const grave = ['danger', 'unlawful', 'stops-sailing'];

/** What is due before the outing is over: grave ones stop her, others and those that may be due are conditions. */
export function dueFindings(matter: OutingMatter): Beside {
  const { book, outing, time } = matter;
  const dues = duesOfBook(book, time.today);
  const { due: before, mayBe, unknown } = dueBefore(dues, outing);
  const bearingOf = (each: DueOfBook): Bearing => {
    if (before.includes(each)) return grave.includes(each.due.consequence) ? 'stops' : 'condition';
    return mayBe.includes(each) ? 'condition' : 'sound';
  };
  const cannot = (words: string, because: string): NotLooked => ({ subject: 'dues', words, because });
  return {
    findings: dues.filter((each) => !unknown.includes(each)).map((each) => findingOf(matter, each, bearingOf(each))),
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

function findingOf(matter: OutingMatter, dueOf: DueOfBook, bearing: Bearing): Finding {
  const { id, due, since } = dueOf;
  const { today } = matter.time;
  return {
    id: `due.${id}`,
    subject: 'dues',
    bearing,
    words: due.title,
    because: [dueWhen(dueOf, today), ...dueParts(dueOf, today)]
      .filter((words) => words !== '')
      .map((words) => ({ words, from: since?.on ?? null })),
    remedies: bearing === 'sound' ? [] : [doDue(matter, dueOf)],
    cautions: bearing === 'sound' ? [] : dueCautionsOf(dueOf),
    of: { collection: 'dues', id },
  };
}

/** Its job, where there is one; else what its recipe would take. */
function doDue(matter: OutingMatter, dueOf: DueOfBook): Remedy {
  const { book, time } = matter;
  if (dueOf.job !== null) return doJob(matter, dueOf.job);
  const steps = dueJob(book, dueOf, time.today).job.steps ?? [];
  const work = workOf(steps.map(({ minutes, waits = [] }) => ({ minutes, waits })));
  return {
    words: `${dueOf.due.title}: ${work.minutes === null ? 'do it, and say when.' : `${lengthInWords(work.minutes)} of work by its recipe.`}`,
    ...work,
    inHand: true,
    inTime: { kind: 'not in time', words: 'It is no job yet: made one, the plan finds it a time.' },
    leaves: 'nothing',
    of: { collection: 'dues', id: dueOf.id },
  };
}
