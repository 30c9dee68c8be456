import { unmetConditions } from '#sky';
import type { Plan, PlannedStep, Problem, ProblemStep } from '#workplan';
import { setUpInWords } from './change-in-words.ts';
import { conditionsInWords } from './condition-in-words.ts';
import { dewReason } from './dew-in-words.ts';
import { lengthInWords, localMinute, minuteInWords, sentence } from './when-in-words.ts';

/**
 * Why a step stands where it does in a plan: what it waited for, the weather and set-ups it needs, the part that had
 * to come first, who must be there. One sentence each, the one that binds most first; empty where nothing binds.
 */
export function stepReasonsInWords(stepId: string, plan: Plan, problem: Problem): string[] {
  const step = problem.steps.find((each) => each.id === stepId);
  const planned = plan.steps.find((each) => each.step === stepId);
  if (!step || !planned || step.progress.kind !== 'open') return [];
  return [
    ...afterWhat(step, planned, plan, problem),
    ...storesReason(step, planned, problem),
    ...weatherReason(step, planned, problem),
    ...setUpReason(step, problem),
    ...handsReason(step, planned, problem),
    ...batchReason(planned, plan, problem),
    ...windowReason(step, planned, plan, problem),
    ...dewReason(step, planned, problem),
  ];
}

/** The step or wait whose end came last before it, when it starts within the same job day or at once after. */
function afterWhat(step: ProblemStep, planned: PlannedStep, plan: Plan, problem: Problem): string[] {
  let latest: { at: number; words: string } | null = null;
  for (const link of problem.precedence) {
    if (link.after !== step.id) continue;
    const before = problem.steps.find((each) => each.id === link.before);
    // that a step follows the one before it in its own job goes without saying
    if (before?.job === step.job && link.wait === null && link.least_min === 0) continue;
    const end = link.wait
      ? plan.waits.find((wait) => wait.step === link.before && wait.wait === link.wait)?.finish
      : plan.steps.find((each) => each.step === link.before)?.finish;
    if (!before || end === undefined) continue;
    const at = end + link.least_min;
    if (latest && latest.at >= at) continue;
    const wait = before.waits.find((each) => each.id === link.wait);
    const what = wait ? `'${wait.title}' (after '${before.title}') to be over` : `'${before.title}' to be done`;
    const rest = link.least_min > 0 ? ` and ${lengthInWords(link.least_min)} more` : '';
    latest = { at, words: `Waited for ${what}${rest}: ${minuteInWords(at, problem)}.` };
  }
  return latest && latest.at <= planned.start && latest.at > planned.start - 24 * 60 ? [latest.words] : [];
}

function storesReason(step: ProblemStep, planned: PlannedStep, problem: Problem): string[] {
  return step.stores.flatMap((id) => {
    const line = problem.stores.find((each) => each.id === id);
    if (!line || line.from === null || line.from <= problem.now) return [];
    return line.from <= planned.start
      ? [`${sentence(line.name)}: here from ${minuteInWords(line.from, problem)}.`]
      : [];
  });
}

/** The weather it needs, and until when it holds where it ends within the day. */
function weatherReason(step: ProblemStep, planned: PlannedStep, problem: Problem): string[] {
  const asks = conditionsInWords(step.needs);
  if (asks === '') return [];
  const day = problem.days.find((each) => each.id === planned.day);
  if (!day) return [`Weather needed: ${asks}.`];
  const suits = (minute: number) => minuteSuits(step, minute, problem);
  let from = planned.start;
  while (from > day.from && suits(from - 1)) from--;
  let to = planned.finish;
  while (to < day.to && suits(to)) to++;
  if (from <= day.from && to >= day.to) return [`Weather needed: ${asks}; that holds all day.`];
  const clock = (minute: number) => localMinute(minute, problem).clock;
  const stretch =
    from <= day.from
      ? `until ${clock(to)}`
      : to >= day.to
        ? `from ${clock(from)}`
        : `from ${clock(from)} to ${clock(to)}`;
  return [`Weather needed: ${asks}; that holds ${stretch}.`];
}

function minuteSuits(step: ProblemStep, minute: number, problem: Problem): boolean {
  const hour = problem.hours[Math.floor(minute / 60)];
  if (!hour) return false;
  const inside = problem.zones.find((zone) => zone.id === step.zone)?.inside ?? false;
  const unmet = unmetConditions(step.needs, hour.sheltered || inside ? { ...hour, rain: false } : hour);
  if (unmet.length > 0) return false;
  return !step.needs.daylight || problem.daylight.some((light) => light.from <= minute && minute < light.to);
}

function setUpReason(step: ProblemStep, problem: Problem): string[] {
  return step.setUps.length === 0
    ? []
    : [`Needs ${step.setUps.map((need) => setUpInWords(problem, need.aspect, need.states)).join(', ')}.`];
}

function handsReason(step: ProblemStep, planned: PlannedStep, problem: Problem): string[] {
  if (!step.notAlone && step.hands < 2) return [];
  const there = problem.hands.filter(
    (hand, index) => index > 0 && hand.present.some((span) => span.from <= planned.start && planned.finish <= span.to),
  );
  const names = there.map((hand) => hand.name).join(' and ');
  const need = step.notAlone ? 'Not to be done alone' : `Needs ${step.hands} hands`;
  return [names === '' ? `${need}.` : `${need}: ${names} ${there.length === 1 ? 'is' : 'are'} there.`];
}

function batchReason(planned: PlannedStep, plan: Plan, problem: Problem): string[] {
  if (planned.batchOf === null) {
    const sharers = plan.steps.filter((each) => each.batchOf === planned.step).length;
    return sharers === 0
      ? []
      : [`Mix enough for ${sharers === 1 ? 'one step' : `${sharers} steps`} more: they share this batch.`];
  }
  const from = problem.steps.find((each) => each.id === planned.batchOf);
  return [`Uses the batch mixed for '${from?.title ?? planned.batchOf}', within its pot life.`];
}

function windowReason(step: ProblemStep, planned: PlannedStep, plan: Plan, problem: Problem): string[] {
  if (planned.abrade_min > 0) return [`The recoat window is past: abrade first, ${lengthInWords(planned.abrade_min)}.`];
  return problem.precedence.flatMap((link) => {
    if (link.after !== step.id || link.greatest_min === null) return [];
    const end = link.wait
      ? plan.waits.find((wait) => wait.step === link.before && wait.wait === link.wait)?.finish
      : plan.steps.find((each) => each.step === link.before)?.finish;
    return end === undefined
      ? []
      : [`Within its recoat window, which shuts ${minuteInWords(end + link.greatest_min, problem)}.`];
  });
}
