import type { Problem, ProblemStep } from '../../problem.ts';

/**
 * The plain case: activities with durations, an order, and resources of constant capacity; the aim is to finish
 * soon. In typed arrays, with all capacities packed side by side into whole words so that one subtraction tests
 * four resources at once.
 */
export interface PlainCase {
  /** activities are numbered in an order in which each comes after what it waits for */
  readonly count: number;
  /** index in `problem.steps` by activity */
  readonly stepOf: Int32Array;
  readonly duration: Int32Array;
  /** sum of durations: no plan needs to be longer */
  readonly horizon: number;
  readonly resources: number;
  readonly capacity: Int32Array;
  /** request[activity · resources + resource] */
  readonly request: Int32Array;
  /** words a minute in the packed form; fields of 8 bits (16 where a capacity is over 127), top bit a guard */
  readonly words: number;
  readonly guard: Int32Array;
  /** packed capacity with the guard bits set */
  readonly packedCapacity: Int32Array;
  /** packedRequest[activity · words + word] */
  readonly packedRequest: Int32Array;
  /** before[beforeFrom[i] … beforeFrom[i + 1]) are what activity i waits for; after likewise */
  readonly beforeFrom: Int32Array;
  readonly before: Int32Array;
  readonly afterFrom: Int32Array;
  readonly after: Int32Array;
}

/** The plain case a problem is, or null where any other rule is at work in it. */
export function plainCase(problem: Problem): PlainCase | null {
  const { days, steps, tools, horizon } = problem;
  const day = days[0];
  if (days.length !== 1 || day === undefined || problem.now !== 0 || steps.length === 0) return null;
  if (day.from !== 0 || day.to !== horizon || day.setOut_min + day.clearUp_min > 0) return null;
  if (day.breaks.length > 0 || day.endsIn.length > 0 || problem.previous.length > 0) return null;
  if (problem.jobs.some((job) => job.deadline !== null)) return null;
  if (!steps.every(isPlainStep)) return null;
  for (const tool of tools) {
    const span = tool.capacity[0];
    if (tool.capacity.length !== 1 || span === undefined || span.from !== 0 || span.to !== horizon) return null;
    if (span.count > 32767) return null;
  }
  for (const tie of problem.precedence)
    if (tie.wait !== null || tie.least_min !== 0 || tie.greatest_min !== null) return null;

  const total = steps.reduce((sum, step) => sum + step.minutes, 0);
  if (total > horizon) return null;
  const order = inOrder(problem);
  if (order === null) return null;

  const count = steps.length;
  const activityOf = new Map(order.map((step, activity) => [steps[step]!.id, activity]));
  const capacity = Int32Array.from(tools, (tool) => tool.capacity[0]!.count);
  const resources = tools.length;
  const toolIndex = new Map(tools.map((tool, index) => [tool.id, index]));
  const request = new Int32Array(count * resources);
  order.forEach((step, activity) => {
    for (const use of steps[step]!.tools) request[activity * resources + toolIndex.get(use.tool)!]! += use.count;
  });
  for (let i = 0; i < count; i++)
    for (let k = 0; k < resources; k++) if (request[i * resources + k]! > capacity[k]!) return null;

  const bits = capacity.some((most) => most > 127) ? 16 : 8;
  const perWord = 32 / bits;
  const words = Math.max(1, Math.ceil(resources / perWord));
  const guard = new Int32Array(words).fill(bits === 8 ? 0x80808080 | 0 : 0x80008000 | 0);
  const packed = (word: number, figure: (resource: number) => number) => {
    let sum = 0;
    for (let field = 0; field < perWord; field++) {
      const resource = word * perWord + field;
      if (resource < resources) sum |= figure(resource) << (field * bits);
    }
    return sum;
  };
  const packedCapacity = Int32Array.from(guard, (top, word) => top | packed(word, (k) => capacity[k]!));
  const packedRequest = new Int32Array(count * words);
  for (let i = 0; i < count; i++)
    for (let word = 0; word < words; word++)
      packedRequest[i * words + word] = packed(word, (k) => request[i * resources + k]!);

  const befores: Set<number>[] = Array.from({ length: count }, () => new Set());
  const afters: Set<number>[] = Array.from({ length: count }, () => new Set());
  for (const tie of problem.precedence) {
    const [from, to] = [activityOf.get(tie.before)!, activityOf.get(tie.after)!];
    befores[to]!.add(from);
    afters[from]!.add(to);
  }
  const [beforeFrom, before] = flat(befores);
  const [afterFrom, after] = flat(afters);
  return {
    count,
    stepOf: Int32Array.from(order),
    duration: Int32Array.from(order, (step) => steps[step]!.minutes),
    horizon: total,
    resources,
    capacity,
    request,
    words,
    guard,
    packedCapacity,
    packedRequest,
    beforeFrom,
    before,
    afterFrom,
    after,
  };
}

function isPlainStep(step: ProblemStep): boolean {
  return (
    step.hands === 0 &&
    !step.keeper &&
    !step.notAlone &&
    step.zone === null &&
    Object.keys(step.needs).length === 0 &&
    step.features.length === 0 &&
    step.setUps.length === 0 &&
    step.stores.length === 0 &&
    step.waits.length === 0 &&
    step.mix === null &&
    step.held === null &&
    step.progress.kind === 'open'
  );
}

/** Steps so that each comes after what it waits for; null where some wait for each other. */
function inOrder(problem: Problem): number[] | null {
  const indexOf = new Map(problem.steps.map((step, index) => [step.id, index]));
  const open = new Int32Array(problem.steps.length);
  const next: number[][] = problem.steps.map(() => []);
  for (const tie of problem.precedence) {
    open[indexOf.get(tie.after)!]!++;
    next[indexOf.get(tie.before)!]!.push(indexOf.get(tie.after)!);
  }
  const order = problem.steps.flatMap((_, index) => (open[index] === 0 ? [index] : []));
  for (let at = 0; at < order.length; at++)
    for (const after of next[order[at]!]!) if (--open[after]! === 0) order.push(after);
  return order.length === problem.steps.length ? order : null;
}

function flat(lists: readonly Set<number>[]): [Int32Array, Int32Array] {
  const from = new Int32Array(lists.length + 1);
  lists.forEach((list, index) => {
    from[index + 1] = from[index]! + list.size;
  });
  return [from, Int32Array.from(lists.flatMap((list) => [...list]))];
}
