/**
 * The best plan of a tiny problem by trying all of them, judged by `violations` and `worthOf` alone.
 *
 * It lays steps and set-up changes one after the other in the order of their starts, every five minutes, by every
 * choice of hands and batch. Why this is all of them, for problems made with `onFives`:
 * - Five minutes are enough. Every rule there compares two starts, each plus a multiple of five, or a start with a
 *   multiple of five, and keeps when the first is no more than the second. Rounding every start of a plan down to a
 *   multiple of five keeps each of these. (Abrading would not: it is due one minute past a window.)
 * - In the order of starts, what breaks a rule goes on breaking it whatever is laid later, but for a job not yet
 *   whole, a day not yet at its end, and a wait whose set-ups may still change before the minute in question. So a
 *   plan that breaks another rule is not laid further.
 * - Changes of an aspect between two things that ask for its state need never pass one state twice: the loop could
 *   be left out. So an aspect changes at most (states − 1) times for each thing that asks for it.
 */
import {
  compareWorth,
  type Plan,
  type PlannedChange,
  type PlannedStep,
  type Problem,
  type ProblemStep,
  type Rule,
  type SetUpAspect,
  violations,
  type Worth,
  waitAfter,
  worthOf,
} from '#workplan';

export type BruteForce =
  | { readonly kind: 'best'; readonly plan: Plan; readonly worth: Worth; readonly tried: number }
  | { readonly kind: 'too many'; readonly tried: number };

const stride_min = 5;

/** Rules that a plan laid only up to some minute may break and yet come to keep. */
const mendable: ReadonlySet<Rule> = new Set<Rule>(['whole job', 'day ends in']);
const mendableLater: ReadonlySet<Rule> = new Set<Rule>(['wait set-up', 'wait dry']);

/** Rules that a step breaks, or not, by where and by whom it is laid, whatever else the plan has. */
const itsOwn: ReadonlySet<Rule> = new Set<Rule>([
  'not before now',
  'job day',
  'set-out and clear-up',
  'break',
  'place',
  'hand present',
  'keeper',
  'not alone',
  'dry',
  'wind',
  'air',
  'surface',
  'humidity',
  'dew margin',
  'daylight',
  'stores',
  'held',
  'wait over',
  'wait warm',
  'before dew',
]);

/** The plan that leaves out every job with an open step and changes nothing. */
export function emptyPlan(problem: Problem): Plan {
  return planOf(problem, [], []);
}

/**
 * The plan with the least missed, then the most weight, then the least set-up changing.
 *
 * @param most  how many plans, whole and in part, may be tried
 */
export function bruteForce(problem: Problem, most: number): BruteForce {
  const open = problem.steps.filter(({ progress }) => progress.kind === 'open');
  const jobs = problem.jobs.map(({ id }) => id).filter((id) => open.some(({ job }) => job === id));
  const choices = Array.from({ length: 2 ** jobs.length }, (_, bits) => jobs.filter((_job, i) => (bits >> i) & 1));
  const ranked = choices
    .map((taken) => ({
      taken,
      worth: worthOf({ ...emptyPlan(problem), leftOut: jobs.filter((job) => !taken.includes(job)) }, problem),
    }))
    .sort((a, b) => compareWorth(a.worth, b.worth));
  const effort = { tried: 0, most };
  let best: { plan: Plan; worth: Worth } | null = null;
  for (const { taken, worth } of ranked) {
    // ranked by missed and weight: a later choice that ties with the best may still change less
    if (best !== null && (worth.missed !== best.worth.missed || worth.weight !== best.worth.weight)) break;
    const least = best === null ? Number.POSITIVE_INFINITY : best.worth.setUp_min;
    const plan = leastChanging(
      problem,
      open.filter(({ job }) => taken.includes(job)),
      least,
      effort,
    );
    if (effort.tried > most) return { kind: 'too many', tried: effort.tried };
    if (plan !== null) best = { plan, worth: worthOf(plan, problem) };
  }
  if (best === null) throw new Error('not even the plan that leaves everything out keeps the rules');
  return { kind: 'best', ...best, tried: effort.tried };
}

/** A good plan of just these steps with less set-up changing than `under`, the least there is; null: none. */
function leastChanging(
  problem: Problem,
  steps: readonly ProblemStep[],
  under: number,
  effort: { tried: number; readonly most: number },
): Plan | null {
  const starts = problem.days.flatMap((day) => {
    const within: { at: number; day: string }[] = [];
    for (let at = Math.ceil(Math.max(day.from, problem.now) / stride_min) * stride_min; at <= day.to; at += stride_min)
      within.push({ at, day: day.id });
    return within;
  });
  const cap = new Map(problem.aspects.map((aspect) => [aspect.id, mostChanges(problem, steps, aspect)]));
  let found: Plan | null = null;
  let least = under;
  /** ways of laying one step that break a rule of its own */
  const hopeless = new Set<string>();
  const way = ({ step, start, finish, hands }: PlannedStep) => `${step} ${start} ${finish} ${hands}`;

  const lay = (laid: readonly PlannedStep[], changes: readonly PlannedChange[], from: number): void => {
    if (effort.tried > effort.most) return;
    const setUp_min = changes.reduce((sum, { start, finish }) => sum + finish - start, 0);
    if (setUp_min >= least) return;
    effort.tried++;
    const plan = planOf(problem, laid, changes);
    const broken = violations(plan, problem);
    if (
      broken.some(({ rule, where }) => itsOwn.has(rule) && where.step !== undefined && where.step === laid.at(-1)?.step)
    )
      hopeless.add(way(laid.at(-1)!));
    if (broken.some(({ rule, minute }) => !mendable.has(rule) && !(mendableLater.has(rule) && minute! >= from))) return;
    if (laid.length === steps.length && broken.length === 0) {
      found = plan;
      least = setUp_min;
      return;
    }
    for (const { at, day } of starts) {
      if (at < from) continue;
      for (const step of steps)
        if (!laid.some((planned) => planned.step === step.id))
          for (const batchOf of batchesFor(problem, step, laid))
            for (const hands of choicesOf(
              problem.hands.map(({ id }) => id),
              step.hands,
            )) {
              const mixing_min = batchOf === null ? 0 : problem.mixes.find(({ id }) => id === step.mix)!.mixing_min;
              const finish = at + step.minutes - mixing_min;
              const next = { step: step.id, start: at, finish, hands, day, batchOf, abrade_min: 0 };
              if (!hopeless.has(way(next))) lay([...laid, next], changes, at);
            }
      for (const aspect of problem.aspects) {
        const before = changes.filter((change) => change.aspect === aspect.id);
        if (before.length >= cap.get(aspect.id)!) continue;
        const stands = before.at(-1)?.to ?? aspect.initial;
        for (const change of aspect.changes.filter((candidate) => candidate.from === stands)) {
          const [keeper, ...others] = problem.hands.map(({ id }) => id);
          for (const rest of choicesOf(others, change.hands - 1)) {
            const hands = [keeper!, ...rest];
            const finish = at + change.minutes;
            lay(
              laid,
              [...changes, { aspect: aspect.id, from: change.from, to: change.to, start: at, finish, hands, day }],
              at,
            );
          }
        }
      }
    }
  };
  lay([], [], Number.NEGATIVE_INFINITY);
  return found;
}

/** The most times an aspect need be changed in a plan of these steps. */
function mostChanges(problem: Problem, steps: readonly ProblemStep[], aspect: SetUpAspect): number {
  let asks = problem.days.filter(({ endsIn }) => endsIn.some((end) => end.aspect === aspect.id)).length;
  const shelters = aspect.states.some((state) => state.shelters);
  for (const step of steps) {
    if (step.setUps.some((need) => need.aspect === aspect.id)) asks++;
    for (const wait of step.waits) {
      if (wait.setUps.some((need) => need.aspect === aspect.id)) asks++;
      // each rainy stretch may be sheltered by another aspect than the one before
      if (wait.needs.dry && shelters) asks += problem.aspects.length;
    }
  }
  for (const other of problem.aspects)
    if (other.changes.some(({ setUps }) => setUps.some((need) => need.aspect === aspect.id)))
      asks += mostChanges({ ...problem, aspects: [other] }, steps, other);
  return asks * (aspect.states.length - 1);
}

function batchesFor(problem: Problem, step: ProblemStep, laid: readonly PlannedStep[]): (string | null)[] {
  if (step.mix === null) return [null];
  const sameMix = new Set(problem.steps.filter(({ mix }) => mix === step.mix).map(({ id }) => id));
  return [null, ...laid.filter((planned) => sameMix.has(planned.step)).map((planned) => planned.step)];
}

function choicesOf(from: readonly string[], count: number): string[][] {
  if (count === 0) return [[]];
  return from.flatMap((id, i) => choicesOf(from.slice(i + 1), count - 1).map((rest) => [id, ...rest]));
}

function planOf(problem: Problem, laid: readonly PlannedStep[], changes: readonly PlannedChange[]): Plan {
  const begun = problem.steps.flatMap(({ id: step, progress }): PlannedStep[] => {
    if (progress.kind === 'open') return [];
    const done = progress.kind === 'done';
    const finish = done ? progress.finish : progress.expectedFinish;
    const hands = done ? [] : progress.hands;
    return [{ step, start: progress.start, finish, hands, day: null, batchOf: null, abrade_min: 0 }];
  });
  const steps = [...begun, ...laid];
  const finishOf = new Map(steps.map(({ step, finish }) => [step, finish]));
  const taken = new Set(problem.steps.filter(({ id }) => laid.some(({ step }) => step === id)).map(({ job }) => job));
  const open = new Set(problem.steps.filter(({ progress }) => progress.kind === 'open').map(({ job }) => job));
  return {
    steps,
    waits: problem.steps.flatMap((step) => {
      const start = finishOf.get(step.id);
      if (start === undefined) return [];
      return step.waits.map((wait) => {
        const { finish, tooCold } = waitAfter(wait, start, problem.hours);
        return { step: step.id, wait: wait.id, start, finish: finish ?? problem.horizon, tooCold };
      });
    }),
    changes,
    leftOut: problem.jobs.map(({ id }) => id).filter((id) => open.has(id) && !taken.has(id)),
  };
}
