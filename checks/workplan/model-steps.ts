/** The part of the constraint model that is about each step by itself, its waits, and the order of steps. */
import type { Precedence, Problem, ProblemStep, Wait } from '#workplan';
import {
  dayOfMinutes,
  driesBeforeDew,
  hourOf,
  presenceOf,
  startsFor,
  startsOfNoLength,
  waitFinish,
  workableForStep,
} from './minute-tables.ts';
import { type Draft, type StepTerms, setText, sumText, type WaitTerms } from './model-draft.ts';

/** An order in which lateness is made good by abrading, with the term that says it is late. */
interface Abrading {
  readonly precedence: Precedence;
  readonly term: string;
  readonly minutes: number;
}

/** All steps as terms of the model, in the problem's order. */
export function stepTerms(draft: Draft): StepTerms[] {
  const { problem } = draft;
  const abrading = abradings(draft);
  const steps = problem.steps.map((step, index) =>
    step.progress.kind === 'open' ? openStep(draft, step, index, abrading) : begunStep(draft, step, index),
  );
  sharedMixes(draft, steps);
  order(draft, steps, abrading);
  return steps;
}

/** The term that says a job is in the plan. */
export const jobTerm = (problem: Problem, job: string) => `job_${problem.jobs.findIndex(({ id }) => id === job)}`;

const byNumber = (a: number, b: number) => a - b;

function abradings(draft: Draft): Abrading[] {
  draft.rule('abrading');
  return draft.problem.precedence.flatMap((precedence, index) => {
    const after = draft.problem.steps.find(({ id }) => id === precedence.after)!;
    const { past, greatest_min } = precedence;
    if (past.kind !== 'abrade' || greatest_min === null || after.progress.kind !== 'open') return [];
    return [{ precedence, term: draft.variable('bool', `late_${index}`), minutes: past.minutes }];
  });
}

function openStep(draft: Draft, step: ProblemStep, index: number, abrading: readonly Abrading[]): StepTerms {
  const { problem } = draft;
  draft.rule(`${step.id}: now, job day, set-out and clear-up, break, place, weather, stores, held, tools, not alone`);
  const on = jobTerm(problem, step.job);
  const mixing_min = problem.mixes.find(({ id }) => id === step.mix)?.mixing_min ?? 0;
  const shares = step.mix !== null && problem.steps.some((other) => other.mix === step.mix && other.id !== step.id);
  const own = abrading.filter(({ precedence }) => precedence.after === step.id);
  const lengths = new Set<number>();
  for (const more of [0, ...own.map(({ minutes }) => minutes)]) {
    lengths.add(step.minutes + more);
    if (shares) lengths.add(step.minutes + more - mixing_min);
  }
  const dayOf = dayOfMinutes(problem);
  const suits = workableForStep(problem, step);
  const fits = new Map(
    [...lengths].map((length) => [
      length,
      length === 0 ? startsOfNoLength(problem, step) : startsFor(suits, dayOf, length),
    ]),
  );
  const starts = [...new Set([...fits.values()].flat())].sort(byNumber);
  if (starts.length === 0) {
    draft.constraint(`not ${on}`);
    starts.push(0);
  }
  const from = draft.variable(setText(starts), `start_${index}`);
  const share = shares ? draft.variable('bool', `shares_${index}`) : 'false';
  let abrade = '0';
  if (own.length > 0) {
    // several windows past: the longest of their abradings, once
    abrade = draft.variable(
      setText([...new Set([0, ...own.map(({ minutes }) => minutes)])].sort(byNumber)),
      `abrade_${index}`,
    );
    draft.constraint(`${abrade} = max([${own.map(({ term, minutes }) => `${minutes} * ${term}`).join(', ')}])`);
  }
  let length = String(step.minutes);
  if (lengths.size > 1) {
    length = draft.variable(setText([...lengths].sort(byNumber)), `length_${index}`);
    draft.constraint(`${length} = ${step.minutes} + ${abrade} - ${mixing_min} * ${share}`);
    for (const [minutes, allowed] of fits)
      draft.constraint(`(${on} /\\ ${length} = ${minutes}) -> ${from} in ${setText(allowed)}`);
  }
  const idle = [`${from} = ${starts[0]}`, ...own.map(({ term }) => `not ${term}`), ...(shares ? [`not ${share}`] : [])];
  draft.constraint(`not ${on} -> (${idle.join(' /\\ ')})`);
  const to = draft.variable(`0..${problem.horizon + Math.max(...lengths)}`, `finish_${index}`);
  draft.constraint(`${to} = ${from} + ${length}`);

  const ends = new Set([...fits].flatMap(([minutes, allowed]) => allowed.map((start) => start + minutes)));
  return {
    name: step.id,
    step,
    open: true,
    on,
    from,
    to,
    abrade,
    mayBeEmpty: lengths.has(0),
    hands: handsOf(draft, step, index, on, from, to),
    waits: step.waits.map((wait, at) =>
      waitAfterOpen(draft, step, wait, `wait_${index}_${at}`, { on, to }, [...ends].sort(byNumber)),
    ),
  };
}

function handsOf(draft: Draft, step: ProblemStep, index: number, on: string, from: string, to: string): string[] {
  const { problem } = draft;
  if (step.hands === 0) {
    if (step.keeper) draft.constraint(`not ${on}`);
    return problem.hands.map(() => 'false');
  }
  draft.rule(`${step.id}: hands, hand present, keeper`);
  const hands = problem.hands.map((hand, at) => {
    const busy = draft.variable('bool', `hand_${index}_${at}`);
    const there = presenceOf(problem, hand).map((span) => `(${from} >= ${span.from} /\\ ${to} <= ${span.to})`);
    draft.constraint(`${busy} -> (${there.join(' \\/ ') || 'false'})`);
    return busy;
  });
  draft.constraint(`${sumText(hands)} = ${step.hands} * ${on}`);
  if (step.keeper) draft.constraint(`${on} -> ${hands[0]}`);
  return hands;
}

/** What is done or under way stands as it is, its waits too. */
function begunStep(draft: Draft, step: ProblemStep, index: number): StepTerms {
  const { problem } = draft;
  const { progress } = step;
  if (progress.kind === 'open') throw new RangeError(`step ${step.id} has not begun`);
  draft.rule(`${step.id}: already begun`);
  const finish = progress.kind === 'done' ? progress.finish : progress.expectedFinish;
  const busy = progress.kind === 'under way' ? progress.hands : [];
  const waits = step.waits.map((wait, at): WaitTerms => {
    const end = waitFinish(problem, wait, finish).finish;
    const name = `wait_${index}_${at}`;
    const to = String(end ?? problem.horizon);
    return {
      name,
      wait,
      on: 'true',
      from: String(finish),
      to,
      over: end !== null,
      earliest: finish,
      mayBeEmpty: true,
    };
  });
  return {
    name: step.id,
    step,
    open: false,
    on: 'true',
    from: String(progress.start),
    to: String(finish),
    abrade: '0',
    mayBeEmpty: finish === progress.start,
    hands: problem.hands.map(({ id }) => (busy.includes(id) ? 'true' : 'false')),
    waits,
  };
}

/** A wait that begins as its step ends: how long it is, and after which ends it is over in time, warm and clear of dew. */
function waitAfterOpen(
  draft: Draft,
  step: ProblemStep,
  wait: Wait,
  name: string,
  { on, to }: { on: string; to: string },
  ends: readonly number[],
): WaitTerms {
  const { problem } = draft;
  draft.rule(`${step.id} ${wait.id}: wait time, wait over, wait warm, before dew`);
  const finishes = new Map<number, number>();
  for (const end of ends) {
    const { finish } = waitFinish(problem, wait, end);
    if (finish === null) continue;
    const { air_min_C } = wait.needs;
    let warm = true;
    for (let minute = end; minute < finish; minute++)
      warm &&= air_min_C === undefined || hourOf(problem, minute).air_C >= air_min_C;
    if (warm && driesBeforeDew(problem, step, wait, end, finish)) finishes.set(end, finish);
  }
  const starts = [...finishes.keys()];
  const [first, last] = [starts[0], starts.at(-1)];
  if (first === undefined || last === undefined) {
    draft.constraint(`not ${on}`);
    return { name, wait, on: 'false', from: to, to, over: true, earliest: 0, mayBeEmpty: true };
  }
  draft.constraint(`${on} -> ${to} in ${setText(starts)}`);
  const finish = draft.variable(`0..${problem.horizon}`, name);
  const shift = finishes.get(first)! - first;
  if (starts.every((start) => finishes.get(start) === start + shift))
    draft.constraint(`${on} -> ${finish} = ${to} + ${shift}`);
  else {
    const place = draft.variable(`1..${starts.length}`, `${name}_place`);
    draft.constraint(`not ${on} -> ${place} = 1`);
    for (const [what, term, table] of [
      ['start', to, starts],
      ['finish', finish, starts.map((start) => finishes.get(start)!)],
    ] as const) {
      const found = draft.variable(`0..${problem.horizon}`, `${name}_${what}`);
      draft.constraint(`${found} = [${table.join(',')}][${place}]`);
      draft.constraint(`${on} -> ${term} = ${found}`);
    }
  }
  draft.constraint(`not ${on} -> ${finish} = 0`);
  const mayBeEmpty = starts.some((start) => finishes.get(start) === start);
  return { name, wait, on, from: to, to: finish, over: true, earliest: first, mayBeEmpty };
}

/** Steps that use the same mix may share one mixing. */
function sharedMixes(draft: Draft, steps: readonly StepTerms[]): void {
  for (const mix of draft.problem.mixes) {
    draft.rule(`${mix.id}: batch, pot life`);
    const alike = steps.filter(({ step }) => step.mix === mix.id);
    const users = alike.filter(({ open }) => open);
    if (alike.length < 2) continue;
    const share = (user: StepTerms) => `shares_${steps.indexOf(user)}`;
    for (const user of users) {
      const from = users
        .filter((other) => other !== user)
        .map((other) => {
          const term = draft.variable('bool', `batch_${steps.indexOf(user)}_${steps.indexOf(other)}`);
          const mixed = `${other.from} + ${other.abrade} + ${mix.mixing_min}`;
          draft.constraint(`${term} -> (${user.on} /\\ ${other.on} /\\ not ${share(other)})`);
          draft.constraint(`${term} -> (${user.from} >= ${mixed} /\\ ${user.to} <= ${mixed} + ${mix.potLife_min})`);
          return term;
        });
      draft.constraint(`${sumText(from)} = bool2int(${share(user)})`);
    }
  }
}

function order(draft: Draft, steps: readonly StepTerms[], abrading: readonly Abrading[]): void {
  draft.rule('comes after, least lag, greatest lag, abrading');
  for (const precedence of draft.problem.precedence) {
    const before = steps.find(({ step }) => step.id === precedence.before)!;
    const after = steps.find(({ step }) => step.id === precedence.after)!;
    if (!after.open) continue;
    const wait = precedence.wait === null ? null : before.waits.find((one) => one.wait.id === precedence.wait)!;
    const end = wait?.to ?? before.to;
    draft.constraint(`${after.on} -> ${before.on}`);
    if (wait && !wait.over) draft.constraint(`not ${after.on}`);
    draft.constraint(`${after.on} -> ${after.from} >= ${end} + ${precedence.least_min}`);
    if (precedence.greatest_min === null) continue;
    const inTime = `${after.from} <= ${end} + ${precedence.greatest_min}`;
    const late = abrading.find((one) => one.precedence === precedence)?.term;
    draft.constraint(late ? `${after.on} -> (${late} <-> not (${inTime}))` : `${after.on} -> ${inTime}`);
  }
}
