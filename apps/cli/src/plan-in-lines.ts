import type { Book } from '#boat-book';
import {
  changeInWords,
  effortInWords,
  localMinute,
  minuteInWords,
  obstacleInWords,
  type PlanNote,
  stepReasonsInWords,
  verdictInWords,
} from '#reckoning';
import type { Outcome, PlannedStep, Problem, ProblemDay } from '#workplan';
import { carryDownLines } from './carry-down-lines.ts';
import { toGetLines } from './to-get-lines.ts';

/**
 * A plan as it is printed: verdict, each job day in order of time with reasons and cautions, what cures on, what is
 * left out and why, what to get, and what was assumed.
 */
export function planInLines(
  outcome: Outcome,
  problem: Problem,
  { book, notes }: { readonly book: Book; readonly notes: readonly PlanNote[] },
): string[] {
  const lines = [
    `${book.boat.name}, planned from ${minuteInWords(problem.now, problem)}`,
    verdictInWords(outcome, problem),
    effortInWords(outcome),
  ];
  if (outcome.verdict.kind === 'impossible, because') {
    lines.push('', 'Can be in no plan:');
    for (const obstacle of outcome.verdict.because) lines.push(...reasonLines(obstacle, problem));
  }
  lines.push(...begunLines(outcome, problem));
  for (const day of problem.days) lines.push('', ...dayLines(day, outcome, problem, book));
  if (outcome.plan.leftOut.length > 0) {
    lines.push('', 'Left out, and why:');
    for (const id of outcome.plan.leftOut) {
      const reasons = outcome.obstacles.filter((obstacle) => obstacle.job === id);
      lines.push(`  ${problem.jobs.find((job) => job.id === id)?.title ?? id}`);
      for (const obstacle of reasons) {
        const { why, gain } = obstacleInWords(obstacle, problem);
        lines.push(`    ${why}`);
        // what else would help is told below, once it has been seen to
        if (gain && obstacle.kind === 'not in stores') lines.push(`    ${gain}`);
      }
    }
  }
  const get = toGetLines(outcome, problem, book);
  if (get.length > 0) lines.push('', ...get);
  if (notes.length > 0) lines.push('', 'How the book was read:', ...notes.map((note) => `  ${note.words}`));
  return lines;
}

function reasonLines(obstacle: Outcome['obstacles'][number], problem: Problem): string[] {
  const { why, gain } = obstacleInWords(obstacle, problem);
  const title = problem.jobs.find((job) => job.id === obstacle.job)?.title ?? obstacle.job;
  return [`  ${title}: ${why}`, ...(gain ? [`    ${gain}`] : [])];
}

/** What was begun before now and runs on. */
function begunLines(outcome: Outcome, problem: Problem): string[] {
  const lines: string[] = [];
  for (const step of problem.steps) {
    if (step.progress.kind === 'under way')
      lines.push(`  Under way: ${step.title}, until ${minuteInWords(step.progress.expectedFinish, problem)}`);
    if (step.progress.kind === 'done')
      for (const wait of outcome.plan.waits)
        if (wait.step === step.id && wait.finish > problem.now)
          lines.push(`  ${waitTitle(problem, wait.step, wait.wait)}, until ${minuteInWords(wait.finish, problem)}`);
  }
  return lines.length > 0 ? ['', 'Begun already:', ...lines] : [];
}

function dayLines(day: ProblemDay, outcome: Outcome, problem: Problem, book: Book): string[] {
  const clock = (minute: number) => localMinute(minute, problem).clock;
  const place = book.places[book.jobDays[day.id]?.place ?? '']?.name;
  const lines = [`${day.label}, ${clock(day.from)}–${clock(day.to)}${place ? `, ${place}` : ''}`];
  const rows: { readonly at: number; readonly lines: readonly string[] }[] = [];
  for (const step of outcome.plan.steps)
    if (step.day === day.id) rows.push({ at: step.start, lines: stepLines(step, outcome, problem, book) });
  for (const change of outcome.plan.changes)
    if (change.day === day.id)
      rows.push({
        at: change.start,
        lines: [
          `  ${clock(change.start)}–${clock(change.finish)}  ${changeInWords(change, problem)}${handsPart(change.hands, problem)}`,
          ...changeCautions(change, book).map(caution),
        ],
      });
  if (rows.length === 0) return [...lines, '  Nothing is planned.'];
  rows.sort((a, b) => a.at - b.at);
  lines.push(...rows.flatMap((row) => row.lines));
  const over = outcome.plan.waits.filter(
    (wait) => wait.start < day.to && wait.finish > day.to && wait.start >= day.from,
  );
  for (const wait of over)
    lines.push(
      `  Goes on: ${waitTitle(problem, wait.step, wait.wait)}, until ${minuteInWords(wait.finish, problem)}${wait.tooCold ? '; it meets hours below the least temperature of its product and may never reach its strength' : ''}`,
    );
  return [...lines, ...carryDownLines(outcome, problem, book, day)];
}

function stepLines(planned: PlannedStep, { plan }: Outcome, problem: Problem, book: Book): string[] {
  const step = problem.steps.find((each) => each.id === planned.step)!;
  const job = problem.jobs.find((each) => each.id === step.job)!;
  const clock = (minute: number) => localMinute(minute, problem).clock;
  return [
    `  ${clock(planned.start)}–${clock(planned.finish)}  ${step.title} (${job.title})${handsPart(planned.hands, problem)}`,
    ...stepReasonsInWords(step.id, plan, problem).map((reason) => `               ${reason}`),
    ...(book.steps[step.id]?.cautions ?? []).map(caution),
  ];
}

const caution = (words: string) => `               Caution: ${words}`;

/** Named only where it is not the keeper alone. */
function handsPart(hands: readonly string[], problem: Problem): string {
  const [keeper] = problem.hands;
  if (hands.length === 1 && hands[0] === keeper?.id) return '';
  const names = hands.map((id) => problem.hands.find((hand) => hand.id === id)?.name ?? id);
  return names.length === 0 ? '' : `, ${names.join(' and ')}`;
}

function changeCautions(change: Outcome['plan']['changes'][number], book: Book): readonly string[] {
  return (
    book.setUps[change.aspect]?.changes.find((each) => each.from === change.from && each.to === change.to)?.cautions ??
    []
  );
}

function waitTitle(problem: Problem, stepId: string, waitId: string): string {
  const step = problem.steps.find((each) => each.id === stepId);
  const wait = step?.waits.find((each) => each.id === waitId);
  return `${wait?.title ?? waitId} after '${step?.title ?? stepId}'`;
}
