/**
 * A keeper's problem of `keeper-problems.ts` as MiniZinc text, stated so that a general solver has a fair chance:
 * one resource for each hand and tool, windows for the cover and the mast, tables for weather and cures.
 *
 * It is not the model of checks/workplan, which loses no plan and grows too large for these. This one
 * - goes by five minutes: all figures of these problems are multiples of five but the ends of cures, rounded up;
 * - allows so many openings of the cover, raisings of the mast and changes of the board a day as `assumedWindows` says;
 * - keeps the cover shut from the first rain that a wait meets to the last;
 * - counts a needed job as ten times itself, where a plan's worth puts it before everything.
 * Nothing else is left out. The plan found is written back in minutes and judged by the same rules and worth as ours.
 */
import type { Precedence, Problem, ProblemStep, SetUpAspect } from '#workplan';
import {
  dayOfMinutes,
  hourOf,
  startsFor,
  waitFinish,
  workableForChange,
  workableForStep,
} from '../checks/workplan/minute-tables.ts';
import { setText, sumText } from '../checks/workplan/model-draft.ts';
import { type PlanFrom, planReader } from './keeper-model-plan.ts';

/** so many a day; our own plans of these problems use no more */
export const assumedWindows = { cover: 2, mast: 1, board: 2 } as const;

const grid_min = 5;
const up = (minutes: number) => Math.ceil(minutes / grid_min);
const list = (values: readonly (string | number)[]) => `[${values.join(',')}]`;

export interface KeeperModel {
  readonly text: string;
  readonly planFrom: PlanFrom;
}

/** How the solver is told to search: by the jobs' weight then the soonest start, or as it likes. */
export type KeeperHint = 'jobs by weight, then soonest start' | 'none';

/**
 * @param problem      one of `keeperProblem`
 * @throws RangeError  where it has something in it that those never have, and that this model does not state
 */
export function keeperModel(problem: Problem, hint: KeeperHint): KeeperModel {
  refuseForeign(problem);
  const { steps, jobs, days } = problem;
  const lines: string[] = ['include "cumulative.mzn";'];
  const say = (line: string) => void lines.push(line);
  const rule = (text: string) => say(`constraint ${text};`);
  const jobAt = new Map(jobs.map(({ id }, index) => [id, index + 1]));
  const stepAt = new Map(steps.map(({ id }, index) => [id, index + 1]));
  const on = (step: ProblemStep) => `x[${jobAt.get(step.job)!}]`;
  const dayOf = dayOfMinutes(problem);
  const onGrid = (starts: readonly number[]) => starts.filter((at) => at % grid_min === 0).map((at) => at / grid_min);
  const friendThere = (at: number) => problem.hands[1]!.present.some(({ from, to }) => from <= at && at < to);
  const end = up(problem.horizon);

  say(`array[1..${jobs.length}] of var bool: x;`);
  say(`array[1..${steps.length}] of var 0..${end}: s;`);
  say(`array[1..${steps.length}] of var 0..${end}: e;`);
  say(`array[1..${steps.length}] of var bool: keeper;`);
  say(`array[1..${steps.length}] of var bool: friend;`);
  say(`array[1..${steps.length}] of var bool: late;`);
  say(`array[1..${steps.length}] of var bool: shares;`);

  const windows = new Map(problem.precedence.flatMap((one) => (one.greatest_min === null ? [] : [[one.after, one]])));
  const mixers = steps.filter(({ mix }) => mix !== null);
  const mix = problem.mixes[0]!;
  const lengthTexts: string[] = [];
  const waitEnd = new Map<string, string>();
  const rainOfWait = new Map<string, { first: string; last: string }>();
  for (const [index, step] of steps.entries()) {
    const at = index + 1;
    const more = abrading(windows.get(step.id));
    const less = mixers.length > 1 && step.mix !== null ? mix.mixing_min : 0;
    const lengths = [...new Set([0, more].flatMap((a) => [0, less].map((b) => step.minutes + a - b)))];
    const suits = workableForStep(problem, step);
    const withFriend = suits.map((fits, minute) => (fits === 1 && friendThere(minute) ? 1 : 0));
    const bySize = lengths.map((length) => ({
      length: up(length),
      starts: onGrid(startsFor(suits, dayOf, length)),
      helped: onGrid(startsFor(withFriend, dayOf, length)),
    }));
    const all = [...new Set(bySize.flatMap(({ starts }) => starts))].sort((a, b) => a - b);
    if (all.length === 0) {
      rule(`not ${on(step)}`);
      all.push(0);
    }
    rule(`s[${at}] in ${setText(all)}`);
    rule(`not ${on(step)} -> s[${at}] = ${all[0]}`);
    if (more === 0) rule(`not late[${at}]`);
    if (less === 0) rule(`not shares[${at}]`);
    rule(`not ${on(step)} -> (not late[${at}] /\\ not shares[${at}])`);
    const length =
      lengths.length === 1
        ? String(up(step.minutes))
        : `(${up(step.minutes)} + ${up(more)} * late[${at}] - ${up(less)} * shares[${at}])`;
    rule(`e[${at}] = s[${at}] + ${length}`);
    lengthTexts.push(length);
    for (const { length: size, starts, helped } of bySize) {
      const so = lengths.length === 1 ? on(step) : `(${on(step)} /\\ ${length} = ${size})`;
      if (starts.length < all.length) rule(`${so} -> s[${at}] in ${setText(starts)}`);
      rule(`(${so} /\\ friend[${at}]) -> s[${at}] in ${setText(helped)}`);
    }
    rule(`keeper[${at}] + friend[${at}] = ${step.hands} * ${on(step)}`);
    if (step.keeper) rule(`keeper[${at}] = ${on(step)}`);
    const wait = step.waits[0];
    if (wait === undefined) continue;
    const ends = [...new Set(bySize.flatMap(({ length: size, starts }) => starts.map((start) => start + size)))];
    const over = ends
      .sort((a, b) => a - b)
      .flatMap((from) => {
        const { finish } = waitFinish(problem, wait, from * grid_min);
        return finish === null ? [] : [{ from, to: up(finish), rain: rainIn(problem, from * grid_min, finish) }];
      });
    if (over.length === 0) {
      rule(`not ${on(step)}`);
      waitEnd.set(step.id, String(end));
      continue;
    }
    say(`var 1..${over.length}: place_${at}; var 0..${end}: over_${at};`);
    rule(`${on(step)} -> e[${at}] = ${list(over.map(({ from }) => from))}[place_${at}]`);
    rule(`over_${at} = ${list(over.map(({ to }) => to))}[place_${at}]`);
    rule(`not ${on(step)} -> place_${at} = 1`);
    waitEnd.set(step.id, `over_${at}`);
    if (wait.needs.dry && over.some(({ rain }) => rain !== null)) {
      say(`var 0..${end}: wet_${at}; var 0..${end}: dry_${at};`);
      rule(`wet_${at} = ${list(over.map(({ rain }) => (rain ? Math.floor(rain.from / grid_min) : 0)))}[place_${at}]`);
      rule(`dry_${at} = ${list(over.map(({ rain }) => (rain ? up(rain.to) : 0)))}[place_${at}]`);
      rainOfWait.set(step.id, { first: `wet_${at}`, last: `dry_${at}` });
    }
  }
  const overOf = (step: ProblemStep) => waitEnd.get(step.id) ?? `e[${stepAt.get(step.id)!}]`;

  for (const job of jobs)
    if (job.deadline !== null)
      for (const step of steps)
        if (step.job === job.id) rule(`${on(step)} -> ${overOf(step)} <= ${Math.floor(job.deadline / grid_min)}`);

  for (const one of problem.precedence) {
    const [before, after] = [steps[stepAt.get(one.before)! - 1]!, steps[stepAt.get(one.after)! - 1]!];
    const from = one.wait === null ? `e[${stepAt.get(one.before)!}]` : overOf(before);
    const at = stepAt.get(one.after)!;
    if (before.job !== after.job) rule(`${on(after)} -> ${on(before)}`);
    rule(`${on(after)} -> s[${at}] >= ${from} + ${up(one.least_min)}`);
    if (one.greatest_min === null) continue;
    // the tick in which it becomes late is not used: the end of a cure may lie anywhere in it
    const latest = `${from} + ${one.greatest_min / grid_min}`;
    rule(`(${on(after)} /\\ not late[${at}]) -> s[${at}] < ${latest}`);
    rule(`(${on(after)} /\\ late[${at}]) -> s[${at}] > ${latest}`);
  }

  batches();
  dust();
  const busy = setUps();
  const inOrder = steps.map((_, index) => index + 1);
  const keepers = [
    ...inOrder.map((at) => ({ from: `s[${at}]`, size: lengthTexts[at - 1]!, on: `keeper[${at}]` })),
    ...busy,
  ];
  together(keepers);
  together(inOrder.map((at) => ({ from: `s[${at}]`, size: lengthTexts[at - 1]!, on: `friend[${at}]` })));
  for (const { id } of problem.tools)
    together(
      steps.flatMap((step, index) =>
        step.tools.some(({ tool }) => tool === id)
          ? [{ from: `s[${index + 1}]`, size: lengthTexts[index]!, on: on(step) }]
          : [],
      ),
    );
  objective();
  return { text: `${lines.join('\n')}\n`, planFrom: planReader(problem, assumedWindows, mixers) };

  /** No two of these at once. */
  function together(work: readonly { from: string; size: string; on: string }[]): void {
    if (work.length < 2) return;
    const needs = work.map((one) => `bool2int(${one.on})`);
    rule(`cumulative(${list(work.map(({ from }) => from))}, ${list(work.map(({ size }) => size))}, ${list(needs)}, 1)`);
  }

  function batches(): void {
    if (mixers.length < 2) return;
    say(`array[1..${mixers.length}, 1..${mixers.length}] of var bool: batch;`);
    for (const [u, user] of mixers.entries()) {
      const at = stepAt.get(user.id)!;
      for (const [m, mixer] of mixers.entries()) {
        const from = stepAt.get(mixer.id)!;
        if (u === m) rule(`not batch[${u + 1},${m + 1}]`);
        else {
          const mixed = `s[${from}] + ${up(abrading(windows.get(mixer.id)))} * late[${from}] + ${up(mix.mixing_min)}`;
          rule(
            `batch[${u + 1},${m + 1}] -> (${on(user)} /\\ ${on(mixer)} /\\ not shares[${from}] /\\ s[${at}] >= ${mixed} /\\ e[${at}] <= ${mixed} + ${up(mix.potLife_min)})`,
          );
        }
      }
      rule(`sum(m in 1..${mixers.length})(batch[${u + 1},m]) = bool2int(shares[${at}])`);
    }
  }

  function dust(): void {
    for (const [a, dusty] of steps.entries())
      for (const [b, wet] of steps.entries()) {
        if (a === b || dusty.zone !== wet.zone || !wet.wet) continue;
        const abrades = abrading(windows.get(dusty.id)) > 0;
        if (!dusty.dusty && !abrades) continue;
        const [spell, to] = dusty.dusty
          ? [on(dusty), `e[${a + 1}]`]
          : [`late[${a + 1}]`, `s[${a + 1}] + ${up(abrading(windows.get(dusty.id)))}`];
        rule(`(${spell} /\\ ${on(wet)}) -> (${to} <= s[${b + 1}] \\/ ${overOf(wet)} <= s[${a + 1}])`);
      }
  }

  /** Windows of cover and mast, the row of the board's changes, and what asks for them; returns the keeper's work. */
  function setUps(): { from: string; size: string; on: string }[] {
    const work: { from: string; size: string; on: string }[] = [];
    const [mast, cover, board] = ['mast', 'cover', 'board'].map((id) => problem.aspects.find((one) => one.id === id)!);
    window('cover', cover!, ['on', 'off'], ['off', 'on'], assumedWindows.cover);
    window('mast', mast!, ['down', 'up'], ['up', 'down'], assumedWindows.mast);
    for (let m = 1; m <= days.length * assumedWindows.mast; m++)
      for (const part of ['open', 'shut']) {
        say(`var 1..${days.length * assumedWindows.cover}: bare_${part}_${m};`);
        inWindow('cover', `bare_${part}_${m}`, `mast_used[${m}]`, `mast_${part}[${m}]`, `mast_${part}_end[${m}]`);
      }
    const count = days.length * assumedWindows.board;
    row(board!, count);
    for (const [index, step] of steps.entries()) {
      const at = index + 1;
      for (const { aspect, states } of step.setUps) {
        if (aspect === 'board') {
          const wanted = states.map((id) => board!.states.findIndex((state) => state.id === id) + 1);
          say(`var 0..${count}: after_${at};`);
          rule(`${on(step)} -> board_state[after_${at}] in {${wanted.join(',')}}`);
          rule(`${on(step)} -> (board_end[after_${at}] <= s[${at}] /\\ e[${at}] <= board_start[after_${at} + 1])`);
        } else if (states[0] === 'off' || states[0] === 'up') {
          say(`var 1..${days.length * assumedWindows[aspect as 'cover' | 'mast']}: in_${aspect}_${at};`);
          inWindow(aspect, `in_${aspect}_${at}`, on(step), `s[${at}]`, `e[${at}]`);
        } else
          rule(
            `forall(m in index_set(${aspect}_used))((${aspect}_used[m] /\\ ${on(step)}) -> (e[${at}] <= ${aspect}_open[m] \\/ ${aspect}_shut_end[m] <= s[${at}]))`,
          );
      }
      for (const aspect of step.waits[0]?.still ?? [])
        for (const part of ['open', 'shut'])
          rule(
            `forall(m in index_set(${aspect}_used))((${aspect}_used[m] /\\ ${on(step)}) -> (${overOf(step)} <= ${aspect}_${part}[m] \\/ ${aspect}_${part}_end[m] <= e[${at}]))`,
          );
      const rain = rainOfWait.get(step.id);
      if (rain)
        rule(
          `forall(m in index_set(cover_used))((cover_used[m] /\\ ${on(step)} /\\ ${rain.last} > 0) -> (${rain.last} <= cover_open[m] \\/ cover_shut_end[m] <= ${rain.first}))`,
        );
    }
    return work;

    function inWindow(aspect: string, place: string, so: string, from: string, to: string): void {
      rule(`${so} -> ${aspect}_used[${place}]`);
      rule(`${so} -> (${aspect}_open_end[${place}] <= ${from} /\\ ${to} <= ${aspect}_shut[${place}])`);
    }

    /** Each day so many times out of the state it starts and ends in and back to it. */
    function window(name: string, aspect: SetUpAspect, out: string[], back: string[], perDay: number): void {
      const total = days.length * perDay;
      const change = ([from, to]: string[]) => aspect.changes.find((one) => one.from === from && one.to === to)!;
      say(`array[1..${total}] of var bool: ${name}_used;`);
      for (const [part, one] of [
        ['open', change(out)],
        ['shut', change(back)],
      ] as const) {
        const size = up(one.minutes);
        say(`array[1..${total}] of var 0..${end}: ${name}_${part};`);
        say(`array[1..${total}] of var 0..${end}: ${name}_${part}_end;`);
        const starts = onGrid(startsFor(workableForChange(problem, one), dayOf, one.minutes));
        for (let w = 1; w <= total; w++) {
          const day = days[Math.floor((w - 1) / perDay)]!;
          const own = starts.filter((at) => day.from <= at * grid_min && at * grid_min < day.to);
          if (own.length === 0) rule(`not ${name}_used[${w}]`);
          const fits = own.length === 0 ? [up(day.from)] : own;
          rule(`${name}_${part}[${w}] in ${setText(fits)}`);
          rule(`${name}_${part}_end[${w}] = ${name}_${part}[${w}] + ${size}`);
          rule(`not ${name}_used[${w}] -> ${name}_${part}[${w}] = ${fits[0]}`);
          work.push({ from: `${name}_${part}[${w}]`, size: String(size), on: `${name}_used[${w}]` });
        }
      }
      for (let w = 1; w <= total; w++) {
        rule(`${name}_used[${w}] -> ${name}_open_end[${w}] <= ${name}_shut[${w}]`);
        if ((w - 1) % perDay > 0)
          rule(`${name}_used[${w}] -> (${name}_used[${w - 1}] /\\ ${name}_shut_end[${w - 1}] <= ${name}_open[${w}])`);
      }
    }

    /** One change after the other, each used or not. */
    function row({ states, changes, initial }: SetUpAspect, total: number): void {
      const stateOf = (id: string) => states.findIndex((state) => state.id === id) + 1;
      say(`array[1..${total}] of var 0..${changes.length}: board_kind;`);
      say(`array[0..${total}] of var 1..${states.length}: board_state;`);
      say(`array[1..${total + 1}] of var 0..${end}: board_start;`);
      say(`array[0..${total}] of var 0..${end}: board_end;`);
      rule(`board_state[0] = ${stateOf(initial)} /\\ board_end[0] = 0 /\\ board_start[${total + 1}] = ${end}`);
      for (let b = 1; b <= total; b++) {
        const day = days[Math.floor((b - 1) / assumedWindows.board)]!;
        rule(`board_start[${b}] in ${up(day.from)}..${up(day.to)}`);
        rule(`board_start[${b}] >= board_end[${b - 1}]`);
        rule(
          `board_kind[${b}] = 0 -> (board_state[${b}] = board_state[${b - 1}] /\\ board_end[${b}] = board_start[${b}])`,
        );
        for (const [kind, change] of changes.entries()) {
          const starts = onGrid(startsFor(workableForChange(problem, change), dayOf, change.minutes));
          const own = starts.filter((at) => day.from <= at * grid_min && at * grid_min < day.to);
          const size = up(change.minutes);
          rule(
            `board_kind[${b}] = ${kind + 1} -> (board_state[${b - 1}] = ${stateOf(change.from)} /\\ board_state[${b}] = ${stateOf(change.to)} /\\ board_start[${b}] in ${setText(own)} /\\ board_end[${b}] = board_start[${b}] + ${size})`,
          );
        }
        work.push({
          from: `board_start[${b}]`,
          size: `[0, ${changes.map(({ minutes }) => up(minutes)).join(', ')}][board_kind[${b}] + 1]`,
          on: `(board_kind[${b}] > 0)`,
        });
      }
    }
  }

  function objective(): void {
    const [mast, cover, board] = ['mast', 'cover', 'board'].map((id) => problem.aspects.find((one) => one.id === id)!);
    const both = ({ changes }: SetUpAspect) => sumText(changes.map(({ minutes }) => String(up(minutes))));
    const sizes = [0, ...board!.changes.map(({ minutes }) => up(minutes))];
    const most = days.length * (2 * 5 * assumedWindows.cover + 12 * assumedWindows.mast + 12 * assumedWindows.board);
    say(`var 0..${most}: setUp;`);
    rule(
      `setUp = (${both(cover!)}) * sum(cover_used) + (${both(mast!)}) * sum(mast_used) + sum(b in index_set(board_kind))(${list(sizes)}[board_kind[b] + 1])`,
    );
    const worth = jobs.map((job, index) => {
      const tenths = Math.round(10 * job.weight);
      return `${tenths * (most + 1) * (job.deadline !== null ? 10 : 1)} * x[${index + 1}]`;
    });
    say('var int: worth;');
    rule(`worth = ${sumText(worth)} - setUp`);
    const byWeight = [...jobs.keys()].sort((a, b) => rank(b) - rank(a)).map((index) => `x[${index + 1}]`);
    const order = `seq_search([int_search(${list(byWeight)}, input_order, indomain_max, complete), int_search(s, smallest, indomain_min, complete)])`;
    say(`solve ${hint === 'none' ? '' : `:: ${order}`} maximize worth;`);
    function rank(index: number): number {
      return jobs[index]!.weight + (jobs[index]!.deadline !== null ? 1e6 : 0);
    }
  }
}

const abrading = (window: Precedence | undefined) => (window?.past.kind === 'abrade' ? window.past.minutes : 0);

/** From the first minute of rain in a stretch to the end of the last; null where there is none. */
function rainIn(problem: Problem, from: number, to: number): { from: number; to: number } | null {
  const wet: number[] = [];
  for (let minute = from; minute < to; minute++) if (hourOf(problem, minute).rain) wet.push(minute);
  return wet.length === 0 ? null : { from: wet[0]!, to: wet.at(-1)! + 1 };
}

function refuseForeign({ hands, mixes, steps, aspects, zones, jobs, precedence, previous }: Problem): void {
  const refuse = (what: string) => {
    throw new RangeError(`this model does not state ${what}`);
  };
  if (hands.length !== 2) refuse('other than two hands');
  if (mixes.length !== 1) refuse('other than one mix');
  if (aspects.map(({ id }) => id).join() !== 'mast,cover,board') refuse('other set-ups than mast, cover and board');
  if (zones.some(({ room, near }) => room < 2 || near.length > 0)) refuse('narrow zones, or dust from zone to zone');
  if (jobs.some(({ deadline, optional }) => deadline === null && !optional)) refuse('needed jobs of no date');
  if (previous.length > 0) refuse('a plan before');
  if (precedence.some(({ greatest_min, past }) => greatest_min !== null && past.kind !== 'abrade'))
    refuse('windows that may not be missed');
  for (const step of steps) {
    if (step.progress.kind !== 'open' || step.held) refuse('work that has begun or is held');
    if (step.waits.length > 1 || step.waits.some(({ setUps }) => setUps.length > 0)) refuse('waits that need set-ups');
    if (step.waits.some(({ needs }) => needs.air_min_C !== undefined)) refuse('waits that must be warm');
    if (step.waits.some(({ needs }) => needs.beforeDew !== undefined)) refuse('coats before dew');
    if (step.minutes % grid_min > 0) refuse('minutes that are no multiple of five');
  }
}
