import type { Plan, PlannedChange, PlannedStep, PlannedWait, Worth } from '../plan.ts';
import type { Compiled } from './compiled.ts';
import type { Taken } from './taken.ts';

/** What is placed, as a plan: steps in the problem's order, changes in order of time. */
export function writtenPlan(taken: Taken): Plan {
  const { compiled } = taken;
  const { problem } = compiled;
  const names = (hands: readonly number[]) => hands.map((hand) => problem.hands[hand]!.id);
  const steps: PlannedStep[] = [];
  const waits: PlannedWait[] = [];
  for (const step of compiled.steps) {
    const { index, source, fixed } = step;
    if (fixed === null && taken.finish[index]! < 0) continue;
    const finish = fixed?.finish ?? taken.finish[index]!;
    steps.push(
      fixed === null
        ? {
            step: source.id,
            start: taken.start[index]!,
            finish,
            hands: names(taken.hands[index]!),
            day: problem.days[taken.day[index]!]!.id,
            batchOf: taken.batchOf[index]! < 0 ? null : problem.steps[taken.batchOf[index]!]!.id,
            abrade_min: taken.abrade[index]!,
          }
        : {
            step: source.id,
            start: fixed.start,
            finish,
            hands: names(fixed.hands),
            day: null,
            batchOf: null,
            abrade_min: 0,
          },
    );
    for (const wait of step.waits) {
      const over = finish < 0 ? finish : wait.cure.finish(finish);
      waits.push({
        step: source.id,
        wait: wait.id,
        start: finish,
        finish: over < 0 && finish >= 0 ? problem.horizon : over,
        tooCold: finish >= 0 && wait.cure.tooCold(finish),
      });
    }
  }
  const changes: PlannedChange[] = [];
  taken.lines.forEach((line, index) => {
    const aspect = problem.aspects[index]!;
    for (const spell of line)
      for (const { change, start, finish, hands, day } of spell.before)
        changes.push({
          aspect: aspect.id,
          from: aspect.states[change.from]!.id,
          to: aspect.states[change.to]!.id,
          start,
          finish,
          hands: names(hands),
          day: problem.days[day]!.id,
        });
  });
  changes.sort((a, b) => a.start - b.start || a.finish - b.finish);
  return {
    steps,
    waits,
    changes,
    leftOut: compiled.jobs
      .filter((job) => job.unit >= 0 && compiled.units[job.unit]!.open.some((step) => taken.finish[step]! < 0))
      .map((job) => problem.jobs[job.index]!.id),
  };
}

/** What the placed steps are worth, as `worthOf` counts it. */
export function worthPlaced(taken: Taken, compiled: Compiled): Worth {
  let missed = 0;
  let weight = 0;
  for (const job of compiled.jobs) {
    if (job.unit < 0 || taken.finish[compiled.units[job.unit]!.open[0]!]! >= 0) weight += job.weight;
    else if (job.needed) missed += job.weight;
  }
  let lastFinish = 0;
  let moved_min = 0;
  const { finish, start } = taken;
  for (let step = 0; step < finish.length; step++) {
    if (finish[step]! < 0) continue;
    if (finish[step]! > lastFinish) lastFinish = finish[step]!;
    const was = compiled.previous[step]!;
    if (was >= 0) moved_min += Math.abs(start[step]! - was);
  }
  return { missed, weight, setUp_min: taken.setUpMinutes, moved_min, lastFinish };
}
