import type { Book, Id, Outing } from '#boat-book';
import { type Finding, type FitAnswer, fitAnswer, type NotLooked } from '#fit-to-go';
import { addDays, type Day, instantAt, localAt } from '#units';
import { dueFindings } from './due-findings.ts';
import { jobFindings } from './job-findings.ts';
import { loadFindings } from './load-findings.ts';
import type { OutingTime } from './outing-time.ts';
import { rigFindings } from './rig-findings.ts';

/** What comes of a slower look, made beside the page. */
export interface Beside {
  readonly findings: readonly Finding[];
  readonly notLooked: readonly NotLooked[];
}

export interface OutingFit {
  readonly answer: FitAnswer;
  /** the answer if every job that the plan has in time is done; null: none is */
  readonly ifPlanKept: FitAnswer | null;
}

/**
 * Is she fit for an outing? The findings of the book, folded.
 *
 * @param now  the instant it is asked
 * @param beside  the battery's nights, worked out apart; null: they are not there yet
 */
export function outingFit(book: Book, id: Id, outing: Outing, now: number, beside: Beside | null): OutingFit {
  const zone = Object.values(book.places)[0]?.timeZone ?? 'UTC';
  const time: OutingTime = {
    starts: instantAt(outing.date, outing.from, zone),
    last: addDays(outing.date as Day, outing.nights),
    zone,
    today: localAt(now, zone).day,
  };
  const jobs = jobFindings(book, id, outing, time);
  const dues = dueFindings(book, outing, time);
  const loads = loadFindings(book, outing, time);
  const findings = [
    ...jobs.findings,
    ...rigFindings(book, outing, time),
    ...dues.findings,
    ...(beside?.findings ?? []),
    ...loads.findings,
  ];
  const notLooked: NotLooked[] = [
    ...(beside?.notLooked ?? []),
    ...dues.notLooked,
    ...loads.notLooked,
    { subject: 'trailer', words: 'ball load, tyres and straps', because: 'the book holds no masses of the trailer' },
    {
      subject: 'weather',
      words: 'the weather on the day',
      because: 'look at the forecast before you go, and again in the morning',
    },
  ];
  // a jury rig goes with the job it stands in for
  const gone = new Set(jobs.goneByPlan);
  for (const [rigId, rig] of Object.entries(book.juryRigs))
    if (rig.job !== null && jobs.goneByPlan.has(`job.${rig.job}`)) gone.add(`jury-rig.${rigId}`);
  return {
    answer: fitAnswer(findings, notLooked),
    ifPlanKept:
      gone.size === 0
        ? null
        : fitAnswer(
            findings.filter((finding) => !gone.has(finding.id)),
            notLooked,
          ),
  };
}
