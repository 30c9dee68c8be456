import type { Outcome, Problem } from '#workplan';
import { lengthInWords } from './when-in-words.ts';

/**
 * How good the plan is, in one or two sentences: how many jobs are in it, whether what has a date is met, and
 * whether it is proved best or within how much of the best possible.
 */
export function verdictInWords(outcome: Outcome, problem: Problem): string {
  const out = new Set(outcome.plan.leftOut);
  const open = problem.jobs.filter((job) =>
    problem.steps.some((step) => step.job === job.id && step.progress.kind !== 'done'),
  );
  const done = open.filter((job) => !out.has(job.id)).length;
  const needed = open.filter((job) => job.deadline !== null || !job.optional);
  const missed = needed.filter((job) => out.has(job.id));
  const counts = `${done} of ${open.length} ${open.length === 1 ? 'job' : 'jobs'} in the plan${datesPart(needed.length, missed.length)}.`;
  return `${counts} ${quality(outcome)}`;
}

function datesPart(needed: number, missed: number): string {
  if (needed === 0) return '';
  if (missed === 0) return needed === 1 ? ', the one with a date among them' : `, all ${needed} with a date among them`;
  if (needed === 1) return '; the one with a date is missed';
  return `; ${missed} of the ${needed} with a date ${missed === 1 ? 'is' : 'are'} missed`;
}

function quality({ verdict }: Outcome): string {
  switch (verdict.kind) {
    case 'proved best':
      return verdict.finishToo
        ? 'Proved best: no plan does more, with less set-up changing, or sooner.'
        : 'Proved best: no plan does more with less set-up changing.';
    case 'good, gap known':
      return `Within ${percent(verdict.gap)} of the best possible.`;
    case 'stopped early':
      return `Stopped early: at most ${percent(verdict.gap)} more could be done than this plan does.`;
    case 'impossible, because': {
      const jobs = new Set(verdict.because.map((obstacle) => obstacle.job)).size;
      const rest =
        verdict.rest === 'proved best'
          ? 'the rest is proved best'
          : verdict.rest === 'stopped early'
            ? `the rest was stopped early, at most ${percent(verdict.gap)} from the best possible`
            : `the rest is within ${percent(verdict.gap)} of the best possible`;
      return `${jobs === 1 ? 'One job with a date can be in no plan' : `${jobs} jobs with dates can be in no plan`} (see why below); ${rest}.`;
    }
  }
}

/** `0.4 %`, `3 %`; never rounded down to nothing */
function percent(share: number): string {
  const value = share * 100;
  if (value <= 0) return '0 %';
  if (value < 0.1) return '0.1 %';
  return value < 10 ? `${Math.ceil(value * 10) / 10} %` : `${Math.ceil(value)} %`;
}

/** Minutes of work, set-up changing and the last finish, for the line under the verdict. */
export function effortInWords(outcome: Outcome): string {
  const work = outcome.plan.steps
    .filter((step) => step.day !== null)
    .reduce((sum, step) => sum + (step.finish - step.start), 0);
  const changes = outcome.plan.changes.length;
  return `${lengthInWords(work)} of work, ${changes === 0 ? 'no set-up changes' : `${changes} set-up ${changes === 1 ? 'change' : 'changes'} (${lengthInWords(outcome.worth.setUp_min)})`}.`;
}
