import type { Book, Id, Outing } from '#boat-book';
import { type Finding, type FitAnswer, fitAnswer, type NotLooked } from '#fit-to-go';
import { type Beside, nothingFound } from './beside.ts';
import { jobFindings } from './job-findings.ts';
import type { OutingMatter } from './job-remedy.ts';
import { launchFindings } from './launch-findings.ts';
import { outingTime } from './outing-time.ts';
import { paperFindings } from './paper-findings.ts';
import { planFindings } from './plan-findings.ts';
import { type PlannerKnows, plannedInTime } from './planner-knows.ts';
import { rigFindings } from './rig-findings.ts';
import { weatherFindings } from './weather-findings.ts';

/** What was looked at beside the page, as far as it is there; null: it is not yet. */
export interface LookedBeside {
  /** `gearFindings` */
  readonly gear: Beside | null;
  /** `powerFindings` */
  readonly nights: Beside | null;
  /** what the planner knows beyond the plan kept in the book */
  readonly knows: PlannerKnows | null;
}

export interface OutingFit {
  readonly answer: FitAnswer;
  /** the answer if every job that the plan has in time is done; null: none is */
  readonly ifPlanKept: FitAnswer | null;
}

/**
 * Is she fit for an outing? The findings of the book, folded. What is not there yet is neither counted as sound nor as not
 * looked at: whoever asks says that it is still being looked at.
 *
 * @param now  the instant it is asked
 */
export function outingFit(
  book: Book,
  id: Id,
  outing: Outing,
  now: number,
  { gear, nights, knows }: LookedBeside,
): OutingFit {
  const time = outingTime(book, outing, now);
  const matter: OutingMatter = { book, id, outing, time, knows };
  const looks: readonly Beside[] = [
    { findings: jobFindings(matter), notLooked: [neverLooked] },
    { findings: rigFindings(matter), notLooked: [] },
    paperFindings(matter),
    nights ?? nothingFound,
    { findings: [], notLooked: outing.nights > 0 || time.byRoad ? [] : [byDay] },
    gear ?? nothingFound,
    launchFindings(matter),
    weatherFindings(matter),
    planFindings(matter),
  ];
  const findings = looks.flatMap((look) => look.findings.map((finding) => asPlanned(matter, finding)));
  const notLooked = looks.flatMap((look) => look.notLooked);
  const gone = goneIfKept(findings);
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

/** A finding with its jobs held against the plan as it is now: what was looked at beside the page may be of a plan before. */
function asPlanned({ book, outing, time, knows }: OutingMatter, finding: Finding): Finding {
  return {
    ...finding,
    remedies: finding.remedies.map((remedy) =>
      remedy.of?.collection === 'jobs' && book.jobs[remedy.of.id] !== undefined
        ? { ...remedy, inTime: plannedInTime(book, remedy.of.id, outing, time, knows) }
        : remedy,
    ),
  };
}

/** What the plan takes away, where it is kept: whatever a job that it has in time would mend, and then its own chance. */
function goneIfKept(findings: readonly Finding[]): ReadonlySet<string> {
  const gone = findings.filter(
    ({ bearing, remedies }) =>
      bearing !== 'sound' && remedies.some(({ inTime, leaves }) => inTime?.kind === 'in time' && leaves === 'nothing'),
  );
  return new Set(gone.length === 0 ? [] : [...gone.map(({ id }) => id), 'plan.odds']);
}

const neverLooked: NotLooked = {
  subject: 'jobs',
  words: 'what nobody has put in the book',
  because: 'this is answered out of the book alone: walk round her before she goes',
};

const byDay: NotLooked = {
  subject: 'power',
  words: 'whether the battery lasts the day',
  because: 'only nights aboard are foretold: look at its volts before you go',
};
