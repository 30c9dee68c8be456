/** What must agree between the fields of a problem: names known and given once, spans in order, counts that match. */
import type { MinuteSpan, Problem, ProblemStep, SetUpAspect, SetUpNeed } from './problem.ts';

/** What was wrong with something given, where it stands, and what would be right. */
export interface Fault {
  readonly where: string;
  readonly wrong: string;
  readonly right: string;
}

export function faultsBetween(problem: Problem): Fault[] {
  const faults: Fault[] = [];
  const fault = (where: string, wrong: string, right: string) => {
    faults.push({ where, wrong, right });
  };
  const known = knownNames(problem, fault);
  timesAgree(problem, fault);
  daysAndHands(problem, known, fault);
  setUpsAgree(problem, known, fault);
  for (const [i, step] of problem.steps.entries())
    stepAgrees(step, `steps › ${i + 1}. (${step.id})`, problem, known, fault);
  orderAgrees(problem, known, fault);
  return faults;
}

type Tell = (where: string, wrong: string, right: string) => void;

/** The ids of each list, for looking up. */
interface Known {
  readonly hands: ReadonlySet<string>;
  readonly tools: ReadonlySet<string>;
  readonly zones: ReadonlySet<string>;
  readonly aspects: ReadonlyMap<string, SetUpAspect>;
  readonly mixes: ReadonlyMap<string, number>;
  readonly stores: ReadonlySet<string>;
  readonly jobs: ReadonlySet<string>;
  readonly steps: ReadonlyMap<string, ProblemStep>;
}

function knownNames(problem: Problem, fault: Tell): Known {
  const once = (list: string, ids: readonly string[]) => {
    const seen = new Set<string>();
    for (const [i, id] of ids.entries()) {
      if (seen.has(id)) fault(`${list} › ${i + 1}. › id`, `‘${id}’ stands there twice`, 'each id once in its list');
      seen.add(id);
    }
    return seen;
  };
  const ids = (of: readonly { readonly id: string }[]) => of.map(({ id }) => id);
  for (const list of ['days', 'aspects', 'mixes', 'steps'] as const) once(list, ids(problem[list]));
  for (const [i, aspect] of problem.aspects.entries()) once(`aspects › ${i + 1}. › states`, ids(aspect.states));
  for (const [i, step] of problem.steps.entries()) once(`steps › ${i + 1}. › waits`, ids(step.waits));
  return {
    hands: once('hands', ids(problem.hands)),
    tools: once('tools', ids(problem.tools)),
    zones: once('zones', ids(problem.zones)),
    stores: once('stores', ids(problem.stores)),
    jobs: once('jobs', ids(problem.jobs)),
    aspects: new Map(problem.aspects.map((aspect) => [aspect.id, aspect])),
    mixes: new Map(problem.mixes.map((mix) => [mix.id, mix.mixing_min])),
    steps: new Map(problem.steps.map((step) => [step.id, step])),
  };
}

function inOrder(where: string, spans: readonly MinuteSpan[], fault: Tell): void {
  let free = Number.NEGATIVE_INFINITY;
  for (const [i, { from, to }] of spans.entries()) {
    const here = `${where} › ${i + 1}.`;
    if (to <= from) fault(here, `it goes from ${from} to ${to}`, 'a span that ends after it starts');
    else if (from < free)
      fault(here, `it starts at ${from}, the one before ends at ${free}`, 'spans in order of time that do not overlap');
    free = Math.max(free, to);
  }
}

function timesAgree(problem: Problem, fault: Tell): void {
  const { horizon, now, hours, daylight } = problem;
  if (hours.length !== horizon / 60)
    fault(
      'hours',
      `there are ${hours.length}`,
      `${horizon / 60}, one for each hour of the horizon of ${horizon} minutes`,
    );
  if (now > horizon) fault('now', `${now} lies after the horizon`, `a minute from 0 to ${horizon}`);
  inOrder('daylight', daylight, fault);
}

function daysAndHands(problem: Problem, known: Known, fault: Tell): void {
  inOrder('days', problem.days, fault);
  for (const [i, day] of problem.days.entries()) {
    const where = `days › ${i + 1}. (${day.id})`;
    if (day.to > problem.horizon)
      fault(`${where} › to`, `${day.to} lies after the horizon`, `at most ${problem.horizon}`);
    inOrder(`${where} › breaks`, day.breaks, fault);
    const ends = new Set<string>();
    for (const { aspect, state } of day.endsIn) {
      needAgrees({ aspect, states: [state] }, `${where} › endsIn`, known, fault);
      if (ends.has(aspect)) fault(`${where} › endsIn`, `it names ${aspect} twice`, 'each set-up once');
      ends.add(aspect);
    }
  }
  for (const [i, hand] of problem.hands.entries())
    inOrder(`hands › ${i + 1}. (${hand.id}) › present`, hand.present, fault);
  for (const [i, tool] of problem.tools.entries())
    inOrder(`tools › ${i + 1}. (${tool.id}) › capacity`, tool.capacity, fault);
  for (const [i, zone] of problem.zones.entries())
    for (const near of zone.near)
      if (!known.zones.has(near))
        fault(`zones › ${i + 1}. (${zone.id}) › near`, `there is no zone ‘${near}’`, 'ids of zones');
}

function needAgrees(need: SetUpNeed, where: string, known: Known, fault: Tell): void {
  const aspect = known.aspects.get(need.aspect);
  if (aspect === undefined) {
    fault(where, `there is no set-up ‘${need.aspect}’`, named('a set-up', [...known.aspects.keys()]));
    return;
  }
  for (const state of need.states)
    if (!aspect.states.some(({ id }) => id === state))
      fault(
        where,
        `${need.aspect} has no state ‘${state}’`,
        named(
          'a state',
          aspect.states.map(({ id }) => id),
        ),
      );
}

/** The names there are, as far as they are few. */
function named(kind: string, ids: readonly string[]): string {
  if (ids.length === 0) return `the id of ${kind} that the problem lists; it lists none`;
  return ids.length > 8 ? `the id of ${kind} in the problem` : `${kind} of: ${ids.join(', ')}`;
}

function setUpsAgree(problem: Problem, known: Known, fault: Tell): void {
  for (const [i, aspect] of problem.aspects.entries()) {
    const where = `aspects › ${i + 1}. (${aspect.id})`;
    needAgrees({ aspect: aspect.id, states: [aspect.initial] }, `${where} › initial`, known, fault);
    const pairs = new Set<string>();
    for (const [k, change] of aspect.changes.entries()) {
      const here = `${where} › changes › ${k + 1}.`;
      needAgrees({ aspect: aspect.id, states: [change.from, change.to] }, here, known, fault);
      if (change.from === change.to)
        fault(here, `it goes from ${change.from} to ${change.to}`, 'a change to another state');
      const pair = JSON.stringify([change.from, change.to]);
      if (pairs.has(pair)) fault(here, `${change.from} to ${change.to} stands there twice`, 'each change once');
      pairs.add(pair);
      for (const need of change.setUps) {
        if (need.aspect === aspect.id)
          fault(`${here} › setUps`, `it asks for ${aspect.id} itself`, 'other set-ups only');
        needAgrees(need, `${here} › setUps`, known, fault);
      }
    }
  }
}

function stepAgrees(step: ProblemStep, where: string, problem: Problem, known: Known, fault: Tell): void {
  const need = (list: string, id: string, there: { has(id: string): boolean }, kind: string, all: Iterable<string>) => {
    if (!there.has(id)) fault(`${where} › ${list}`, `there is no ${kind} ‘${id}’`, named(`a ${kind}`, [...all]));
  };
  need('job', step.job, known.jobs, 'job', known.jobs);
  if (step.zone !== null) need('zone', step.zone, known.zones, 'zone', known.zones);
  if (step.mix !== null) need('mix', step.mix, known.mixes, 'mix', known.mixes.keys());
  for (const store of step.stores) need('stores', store, known.stores, 'store line', known.stores);
  const tools = new Set<string>();
  for (const { tool } of step.tools) {
    need('tools', tool, known.tools, 'tool', known.tools);
    if (tools.has(tool)) fault(`${where} › tools`, `it names ${tool} twice`, 'each tool once, with its count');
    tools.add(tool);
  }
  for (const setUp of step.setUps) needAgrees(setUp, `${where} › setUps`, known, fault);
  for (const [i, wait] of step.waits.entries()) {
    for (const setUp of wait.setUps) needAgrees(setUp, `${where} › waits › ${i + 1}. › setUps`, known, fault);
    for (const aspect of wait.still)
      needAgrees({ aspect, states: [] }, `${where} › waits › ${i + 1}. › still`, known, fault);
  }
  if (step.minutes === 0 && step.hands > 0)
    fault(`${where} › minutes`, `it takes 0 minutes of ${step.hands} hands`, 'at least 1 minute, or no hands');
  const [low, high] = [step.minutes_low ?? step.minutes, step.minutes_high ?? step.minutes];
  if (low > step.minutes)
    fault(`${where} › minutes_low`, `${low} is more than the likely ${step.minutes}`, `at most ${step.minutes}`);
  if (high < step.minutes)
    fault(`${where} › minutes_high`, `${high} is less than the likely ${step.minutes}`, `at least ${step.minutes}`);
  if (step.keeper && step.hands === 0)
    fault(
      `${where} › keeper`,
      'the keeper must be one of its hands, and it has none',
      'at least 1 hand, or keeper false',
    );
  const mixing_min = step.mix === null ? undefined : known.mixes.get(step.mix);
  if (mixing_min !== undefined && step.minutes < mixing_min)
    fault(
      `${where} › minutes`,
      `${step.minutes} minutes are fewer than the ${mixing_min} of mixing in them`,
      `at least ${mixing_min}`,
    );
  if (step.held !== null && step.held.to < step.held.from)
    fault(
      `${where} › held`,
      `it goes from ${step.held.from} to ${step.held.to}`,
      'a span that does not end before it starts',
    );
  progressAgrees(step, where, problem.now, known, fault);
}

function progressAgrees(step: ProblemStep, where: string, now: number, known: Known, fault: Tell): void {
  const { progress } = step;
  const here = `${where} › progress`;
  if (progress.kind === 'open') return;
  if (progress.kind === 'done') {
    if (progress.finish < progress.start)
      fault(here, `it ran from ${progress.start} to ${progress.finish}`, 'a finish at or after the start');
    if (progress.finish > now)
      fault(here, `it is done at ${progress.finish}, after now`, `a finish at or before ${now}`);
    return;
  }
  if (progress.start > now)
    fault(here, `it is under way from ${progress.start}, after now`, `a start at or before ${now}`);
  if (progress.expectedFinish < now)
    fault(here, `it is under way and expected to finish at ${progress.expectedFinish}, before now`, `${now} or later`);
  if (new Set(progress.hands).size !== progress.hands.length) fault(here, 'it names a hand twice', 'each hand once');
  for (const hand of progress.hands)
    if (!known.hands.has(hand)) fault(here, `there is no hand ‘${hand}’`, named('a hand', [...known.hands]));
}

function orderAgrees(problem: Problem, known: Known, fault: Tell): void {
  const worked = new Set(problem.steps.map(({ job }) => job));
  for (const [i, { id }] of problem.jobs.entries())
    if (!worked.has(id)) fault(`jobs › ${i + 1}. (${id})`, 'it has no step', 'at least one step for each job');
  for (const [i, { before, wait, after, least_min, greatest_min }] of problem.precedence.entries()) {
    const where = `precedence › ${i + 1}.`;
    for (const [side, id] of [
      ['before', before],
      ['after', after],
    ] as const)
      if (!known.steps.has(id))
        fault(`${where} › ${side}`, `there is no step ‘${id}’`, 'the id of a step in the problem');
    if (before === after) fault(where, `${after} comes after itself`, 'two different steps');
    const step = known.steps.get(before);
    if (wait !== null && step !== undefined && !step.waits.some(({ id }) => id === wait))
      fault(`${where} › wait`, `${before} has no wait ‘${wait}’`, 'null, or the id of one of its waits');
    if (greatest_min !== null && greatest_min < least_min)
      fault(
        where,
        `at least ${least_min} and at most ${greatest_min} minutes`,
        'a greatest lag that is no less than the least',
      );
  }
  const named = new Set<string>();
  for (const [i, { step }] of problem.previous.entries()) {
    if (!known.steps.has(step))
      fault(`previous › ${i + 1}.`, `there is no step ‘${step}’`, 'the id of a step in the problem');
    if (named.has(step)) fault(`previous › ${i + 1}.`, `it names ${step} again`, 'each step once');
    named.add(step);
  }
}
