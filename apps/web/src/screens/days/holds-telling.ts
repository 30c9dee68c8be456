/** In the planner's Worker: what the holds of a settled plan cost, and what a hold would cost that is only thought of. */
import type { Book } from '#boat-book';
import { costOfHoldInWords, holdInWords, planInMinutesOf, problemFrom } from '#reckoning';
import { checkProblem, startHoldCosts, startHoldTrial } from '#workplan';
import type { HoldTrialRequest, HoldTrialTelling } from './plan-report.ts';
import { breath, nextSlice, type SettledPlan } from './worker-slices.ts';

/** a hold is tried for so long. [ms] */
const trial_ms = 900;
/** and a first word of it comes after so long. [ms] */
const firstWord_ms = 150;

/** Tells what each hold of a settled plan costs until all are known or a newer request comes. */
export async function tellHolds({ problem, outcome, book, seed, tell, isCurrent }: SettledPlan): Promise<void> {
  const run = startHoldCosts(problem, outcome, { seed });
  let iterations = 1;
  let told = 0;
  for (;;) {
    const from = performance.now();
    const { costs, finished } = run.advance(iterations);
    iterations = nextSlice(iterations, performance.now() - from);
    if (!isCurrent()) return;
    if (costs.length > told) {
      told = costs.length;
      const holds = costs.map((cost) => costOfHoldInWords(cost, problem, heldTo(book, cost.job)));
      tell({ kind: 'holds', holds });
    }
    if (finished) return;
    await breath();
    if (!isCurrent()) return;
  }
}

const heldTo = (book: Book, job: string): string => {
  const held = book.jobs[job];
  return (held === undefined ? null : holdInWords(book, held)) ?? 'its day';
};

/** the trial in hand; an older one ends when it sees another number here */
let trial = 0;

export async function tryHold(request: HoldTrialRequest, tell: (telling: HoldTrialTelling) => void): Promise<void> {
  trial++;
  const mine = trial;
  const { book, job, hold, seed, inHand } = request;
  const record = book.jobs[job];
  if (record === undefined) throw new RangeError(`there is no job ${job} in the book`);
  const held: Book = { ...book, jobs: { ...book.jobs, [job]: { ...record, ...hold } } };
  const matter = problemFrom(held, { now: request.now, afresh: true });
  if (matter.kind === 'nothing to plan') throw new RangeError(matter.words);
  const { problem } = matter;
  const checked = checkProblem(problem);
  if (checked.kind === 'refused') {
    const [fault] = checked.faults;
    throw new RangeError(`${fault?.where}: ${fault?.wrong}; right would be ${fault?.right}`);
  }
  const plan = planInMinutesOf({ startsAt: inHand.startsAt, plan: inHand.outcome.plan }, problem);
  const run = startHoldTrial(
    problem,
    job,
    { plan, verdict: inHand.outcome.verdict },
    {
      seed,
      isFree: record.heldTo === null,
    },
  );
  const to = holdInWords(held, hold) ?? 'its day';
  const began = performance.now();
  let iterations = 1;
  let saidAt = began;
  for (;;) {
    const from = performance.now();
    const { finished, cost } = run.advance(iterations);
    const at = performance.now();
    iterations = nextSlice(iterations, at - from);
    if (mine !== trial) return;
    const over = finished || at - began > trial_ms;
    if (over || at - saidAt > firstWord_ms) {
      saidAt = at;
      tell({ words: costOfHoldInWords(cost, problem, to).words, finished: over });
    }
    if (over) return;
    await breath();
    if (mine !== trial) return;
  }
}
