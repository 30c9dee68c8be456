/** Rules: wait time, wait over, wait dry, wait warm, before dew, wait set-up, still. */
import { dewMargin_C } from '#sky';
import { touchDryAfter } from '../wait-after.ts';
import { firstUnmetSetUp, type LaidPlan, type LaidWait, type Report, standsNow } from './laid-out.ts';
import { firstUncovered, hoursThrough, overlap, since } from './spans.ts';

export function timesOfWaits(laid: LaidPlan, report: Report): void {
  const planned = new Map(laid.plan.waits.map((wait) => [JSON.stringify([wait.step, wait.wait]), wait]));
  for (const { of, wait, from, to, over, tooCold } of laid.waits) {
    const where = { step: of.step.id, wait: wait.id };
    const told = planned.get(JSON.stringify([of.step.id, wait.id]));
    if (told === undefined) report('wait time', `${wait.title} after ${of.step.title} is not in the plan`, where, from);
    else if (told.start !== from || told.finish !== to || told.tooCold !== tooCold)
      report(
        'wait time',
        `${wait.title} after ${of.step.title} lasts from ${from} to ${to}${tooCold ? ', too cold' : ''}; the plan has ${told.start} to ${told.finish}${told.tooCold ? ', too cold' : ''}`,
        where,
        from,
      );
    if (!over && of.open)
      report('wait over', `${wait.title} after ${of.step.title} is not over by the horizon`, where, to);
  }
  for (const { step, wait } of laid.plan.waits)
    if (laid.problem.steps.some(({ id }) => id === step) && !laid.stepOf.has(step))
      report('wait time', `wait ${wait} is in the plan without its step`, { step, wait });
}

export function needsOfWaits(laid: LaidPlan, report: Report): void {
  const { problem } = laid;
  for (const laidWait of laid.waits) {
    const { of, wait } = laidWait;
    const where = { step: of.step.id, wait: wait.id };
    const name = `${wait.title} after ${of.step.title}`;
    const span = of.open ? laidWait : since(laidWait, problem.now);
    if (wait.needs.dry) {
      const wetAt = firstRain(laidWait, laid);
      if (wetAt !== null) report('wait dry', `${name} must stay dry; rain reaches it at ${wetAt}`, where, wetAt);
    }
    const least_C = wait.needs.air_min_C;
    if (least_C !== undefined && of.open) {
      const cold = hoursThrough(span, problem.hours.length).find((hour) => problem.hours[hour]!.air_C < least_C);
      if (cold !== undefined)
        report(
          'wait warm',
          `${name} needs ${least_C} °C; the hour from minute ${cold * 60} is colder`,
          where,
          Math.max(span.from, cold * 60),
        );
    }
    const near = firstNearDew(laidWait, laid);
    if (near !== null)
      report('before dew', `${name} is not dry to the touch at ${near}, when dew comes near it`, where, near);
    for (const need of wait.setUps) {
      if (!of.open && !standsNow(need, problem)) continue;
      const unmet = firstUnmetSetUp(need, span, laid);
      if (unmet !== null)
        report(
          'wait set-up',
          `${name} needs ${need.aspect} ${need.states.join(' or ')}; at ${unmet} it is not`,
          { ...where, aspect: need.aspect },
          unmet,
        );
    }
    for (const change of laid.changes)
      if (wait.still.includes(change.aspect.id) && overlap(change, span))
        report(
          'still',
          `${name} needs the ${change.aspect.name} still; it is changed at ${change.from}`,
          { ...where, aspect: change.aspect.id },
          change.from,
        );
  }
}

/** The first minute at which a coat in the open, not yet dry to the touch, has less than its margin; null: none. */
function firstNearDew({ of, wait, from, to }: LaidWait, { problem }: LaidPlan): number | null {
  const { beforeDew } = wait.needs;
  if (beforeDew === undefined || !of.open) return null;
  if (problem.zones.some((zone) => zone.inside && zone.id === of.step.zone)) return null;
  const sticks = { from, to: touchDryAfter(beforeDew, from, to, problem.hours) };
  const near = hoursThrough(sticks, problem.hours.length).find((index) => {
    const hour = problem.hours[index]!;
    return !hour.sheltered && dewMargin_C(hour) < beforeDew.dewMargin_min_C;
  });
  return near === undefined ? null : Math.max(from, near * 60);
}

/** The first minute at which rain reaches a wait; null when none does. */
function firstRain(laidWait: LaidWait, laid: LaidPlan): number | null {
  const { problem } = laid;
  const { of } = laidWait;
  if (problem.zones.some((zone) => zone.inside && zone.id === of.step.zone)) return null;
  const shelterOf = new Map(
    problem.aspects.map((aspect) => [aspect.id, new Set(aspect.states.filter((s) => s.shelters).map((s) => s.id))]),
  );
  // a wait begun before now that nothing shelters gets wet whatever the plan does
  if (!of.open && !problem.aspects.some((aspect) => shelterOf.get(aspect.id)!.has(aspect.initial))) return null;
  const sheltered = [...laid.standing].flatMap(([aspect, stretches]) =>
    stretches.filter(({ state }) => state !== null && shelterOf.get(aspect)!.has(state)),
  );
  const span = of.open ? laidWait : since(laidWait, problem.now);
  for (const index of hoursThrough(span, problem.hours.length)) {
    const hour = problem.hours[index]!;
    if (!hour.rain || hour.sheltered) continue;
    const rained = { from: Math.max(span.from, index * 60), to: Math.min(span.to, index * 60 + 60) };
    const reached = firstUncovered(rained, sheltered);
    if (reached !== null) return reached;
  }
  return null;
}
