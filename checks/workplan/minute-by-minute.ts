/**
 * Some of the rules judged a second way: by writing down, for every single minute, who is where and how the boat
 * stands. Slow and plain, for holding `violations` to.
 */
import { unmetConditions } from '#sky';
import type { Plan, PlannedStep, Problem, ProblemStep, Rule } from '#workplan';

interface Minute {
  /** steps worked on, with their hands */
  readonly steps: readonly { readonly step: ProblemStep; readonly hands: readonly string[]; readonly open: boolean }[];
  readonly changing: readonly { readonly aspect: string; readonly hands: readonly string[] }[];
  /** aspect to state; none while it is changed */
  readonly stands: ReadonlyMap<string, string>;
}

/**
 * For each of the rules counted this way whether the plan breaks it.
 *
 * @param plan  one whose steps and changes have known names and whole minutes; its waits are left aside
 */
export function breachesByTheMinute(plan: Plan, problem: Problem): Map<Rule, boolean> {
  const broken = new Map<Rule, boolean>(
    (
      [
        'job day',
        'break',
        'one thing at a time',
        'hand present',
        'not alone',
        'tools',
        'room in the zone',
        'dry',
        'wind',
        'daylight',
        'step set-up',
      ] as const
    ).map((rule) => [rule, false]),
  );
  const breach = (rule: Rule, isBroken: boolean) => {
    if (isBroken) broken.set(rule, true);
  };
  const worked = new Set<number>();
  for (const { start, finish } of [...plan.steps, ...plan.changes])
    for (let at = start; at < finish; at++) worked.add(at);
  for (const at of worked) {
    const minute = minuteOf(at, plan, problem);
    const work = [
      ...minute.steps.filter(({ open }) => open).map(({ step, hands }) => ({ step, hands })),
      ...minute.changing.map(({ hands }) => ({ step: null, hands })),
    ];
    const there = problem.hands
      .filter(({ present }) => present.some(({ from, to }) => from <= at && at < to))
      .map(({ id }) => id);
    const hour = problem.hours[Math.floor(at / 60)];
    for (const { step, hands } of work) {
      const days = problem.days.filter(({ from, to }) => from <= at && at < to);
      const named = step === null ? null : plan.steps.find((planned) => planned.step === step.id)!.day;
      breach('job day', days.length === 0 || (named !== null && days[0]!.id !== named));
      breach(
        'break',
        days.some(({ breaks }) => breaks.some(({ from, to }) => from <= at && at < to)),
      );
      breach(
        'hand present',
        hands.some((hand) => !there.includes(hand)),
      );
      if (step === null) continue;
      breach('not alone', step.notAlone && there.length < 2);
      breach(
        'daylight',
        step.needs.daylight === true && !problem.daylight.some(({ from, to }) => from <= at && at < to),
      );
      for (const { aspect, states } of step.setUps)
        breach('step set-up', !states.includes(minute.stands.get(aspect) ?? ''));
      if (hour === undefined) continue;
      const unmet = unmetConditions(step.needs, hour);
      const roofed = problem.zones.some(({ id, inside }) => id === step.zone && inside) || hour.sheltered;
      breach('dry', unmet.includes('dry') && !roofed);
      breach('wind', unmet.includes('wind_max_kn'));
    }
    const openNow = minute.steps.some(({ open }) => open);
    const all = [...minute.steps.map(({ hands }) => hands), ...minute.changing.map(({ hands }) => hands)];
    for (const { id } of problem.hands) {
      const mine = all.filter((hands) => hands.includes(id)).length;
      const open = work.some(({ hands }) => hands.includes(id));
      breach('one thing at a time', mine > 1 && open);
    }
    if (!openNow) continue;
    for (const { id, capacity } of problem.tools) {
      const users = minute.steps.filter(({ step }) => step.tools.some(({ tool }) => tool === id));
      const used = users.reduce((sum, { step }) => sum + step.tools.find(({ tool }) => tool === id)!.count, 0);
      const owned = capacity.find(({ from, to }) => from <= at && at < to)?.count ?? 0;
      breach('tools', used > owned && users.some(({ open }) => open));
    }
    for (const { id, room } of problem.zones) {
      const inZone = minute.steps.filter(({ step }) => step.zone === id);
      const busy = inZone.reduce((sum, { hands }) => sum + hands.length, 0);
      breach('room in the zone', busy > room && inZone.some(({ open, hands }) => open && hands.length > 0));
    }
  }
  return broken;
}

function minuteOf(at: number, plan: Plan, problem: Problem): Minute {
  const isIn = ({ start, finish }: Pick<PlannedStep, 'start' | 'finish'>) => start <= at && at < finish;
  const stands = new Map(problem.aspects.map(({ id, initial }) => [id, initial]));
  const changing = [];
  for (const change of [...plan.changes].sort((a, b) => a.start - b.start)) {
    if (change.finish <= at) stands.set(change.aspect, change.to);
    else if (isIn(change)) {
      stands.delete(change.aspect);
      changing.push({ aspect: change.aspect, hands: change.hands });
    }
  }
  const steps = plan.steps.filter(isIn).flatMap(({ step: id, hands }) => {
    const step = problem.steps.find((candidate) => candidate.id === id)!;
    return step.progress.kind === 'done' ? [] : [{ step, hands, open: step.progress.kind === 'open' }];
  });
  return { steps, changing, stands };
}
