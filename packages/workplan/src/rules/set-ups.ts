/** Rules: step set-up, set-up chain, change set-up, day ends in. */
import { firstUnmetSetUp, type LaidPlan, type Report, standsNow } from './laid-out.ts';
import { since } from './spans.ts';

export function setUpsOfSteps(laid: LaidPlan, report: Report): void {
  const { problem } = laid;
  for (const laidStep of laid.steps) {
    const { step, open } = laidStep;
    const span = open ? laidStep : since(laidStep, problem.now);
    for (const need of step.setUps) {
      if (!open && !standsNow(need, problem)) continue;
      const unmet = firstUnmetSetUp(need, span, laid);
      if (unmet !== null)
        report(
          'step set-up',
          `${step.title} needs ${need.aspect} ${need.states.join(' or ')}; at ${unmet} it is not`,
          { step: step.id, aspect: need.aspect },
          unmet,
        );
    }
  }
}

export function changesOfSetUps(laid: LaidPlan, report: Report): void {
  for (const aspect of laid.problem.aspects) {
    let state = aspect.initial;
    let free = Number.NEGATIVE_INFINITY;
    const where = { aspect: aspect.id };
    for (const change of laid.changes) {
      if (change.aspect !== aspect) continue;
      const { planned, listed, from, to } = change;
      const chain = (what: string) => report('set-up chain', what, where, from);
      if (planned.from !== state) chain(`the ${aspect.name} is ${state} at ${from}, not ${planned.from}`);
      else if (from < free) chain(`the ${aspect.name} is still being changed at ${from}`);
      else if (listed === null) chain(`the ${aspect.name} cannot go from ${planned.from} to ${planned.to} in one`);
      else if (to - from !== listed.minutes)
        chain(`changing the ${aspect.name} takes ${listed.minutes} min, the plan gives it ${to - from}`);
      state = planned.to;
      free = Math.max(free, to);
      for (const need of listed?.setUps ?? []) {
        const unmet = firstUnmetSetUp(need, change, laid);
        if (unmet !== null)
          report(
            'change set-up',
            `changing the ${aspect.name} needs ${need.aspect} ${need.states.join(' or ')}; at ${unmet} it is not`,
            where,
            unmet,
          );
      }
    }
  }
}

export function endsOfDays(laid: LaidPlan, report: Report): void {
  const worked = new Set([
    ...laid.steps.flatMap(({ open, day }) => (open && day !== null ? [day.id] : [])),
    ...laid.changes.map(({ day }) => day.id),
  ]);
  for (const day of laid.problem.days) {
    if (!worked.has(day.id)) continue;
    for (const { aspect, state } of day.endsIn) {
      const stands = laid.standing.get(aspect)?.find(({ from, to }) => from <= day.to && day.to < to);
      if (stands?.state !== state)
        report('day ends in', `${day.label} must end with ${aspect} ${state}`, { day: day.id, aspect }, day.to);
    }
  }
}
