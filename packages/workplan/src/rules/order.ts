/** Rules: held, deadline, comes after, least lag, greatest lag, abrading, batch, pot life, dust and wet. */
import type { MinuteSpan } from '../problem.ts';
import type { LaidPlan, LaidStep, LaidWait, Report } from './laid-out.ts';
import { overlap } from './spans.ts';

export function heldAndDeadlines(laid: LaidPlan, report: Report): void {
  for (const { step, open, from, to } of laid.steps)
    if (open && step.held !== null && (from < step.held.from || to > step.held.to))
      report(
        'held',
        `${step.title} (${from} to ${to}) is held to ${step.held.from} to ${step.held.to}`,
        { step: step.id },
        from,
      );
  const inPlan = new Set(laid.steps.filter(({ open }) => open).map(({ step }) => step.job));
  for (const { id: job, title, deadline } of laid.problem.jobs) {
    if (deadline === null || !inPlan.has(job)) continue;
    const lateStep = laid.steps.find(({ step, to }) => step.job === job && to > deadline);
    const lateWait = laid.waits.find(({ of, to, over }) => of.step.job === job && (to > deadline || !over));
    if (lateStep !== undefined)
      report(
        'deadline',
        `${title} must be over by ${deadline}; ${lateStep.step.title} ends at ${lateStep.to}`,
        { job, step: lateStep.step.id },
        deadline,
      );
    else if (lateWait !== undefined)
      report(
        'deadline',
        `${title} must be over by ${deadline}; ${lateWait.wait.title} lasts until ${lateWait.over ? lateWait.to : 'after the horizon'}`,
        { job, step: lateWait.of.step.id, wait: lateWait.wait.id },
        deadline,
      );
  }
}

export function orderOfSteps(laid: LaidPlan, report: Report): void {
  const waitOf = new Map(laid.waits.map((wait) => [JSON.stringify([wait.of.step.id, wait.wait.id]), wait]));
  const abradeDue = new Map<string, number>();
  for (const { before, wait, after, least_min, greatest_min, past } of laid.problem.precedence) {
    const next = laid.stepOf.get(after);
    if (next === undefined || !next.open) continue;
    const where = { step: after };
    const first = laid.stepOf.get(before);
    if (first === undefined) {
      report(
        'comes after',
        `${next.step.title} comes after ${before}, which is neither done nor in the plan`,
        where,
        next.from,
      );
      continue;
    }
    const ended = endOf(first, wait === null ? undefined : waitOf.get(JSON.stringify([before, wait])));
    if (ended === null) {
      report(
        'least lag',
        `${next.step.title} comes after a wait of ${first.step.title} that is not over by the horizon`,
        where,
        next.from,
      );
      continue;
    }
    if (next.from < ended + least_min)
      report(
        'least lag',
        `${next.step.title} starts at ${next.from}; it may not before ${ended + least_min}`,
        where,
        next.from,
      );
    if (greatest_min === null || next.from <= ended + greatest_min) continue;
    if (past.kind === 'forbidden')
      report(
        'greatest lag',
        `${next.step.title} starts at ${next.from}; it may not after ${ended + greatest_min}`,
        where,
        next.from,
      );
    else abradeDue.set(after, Math.max(abradeDue.get(after) ?? 0, past.minutes));
  }
  for (const { step, open, from, abrade_min } of laid.steps) {
    const due = abradeDue.get(step.id) ?? 0;
    if (open && abrade_min !== due)
      report(
        'abrading',
        `${step.title} needs ${due} min of abrading, the plan gives it ${abrade_min}`,
        { step: step.id },
        from,
      );
  }
}

/** The end of a step or of its wait; null where the wait is not over by the horizon. */
function endOf(step: LaidStep, wait: LaidWait | undefined): number | null {
  if (wait === undefined) return step.to;
  return wait.over ? wait.to : null;
}

export function batches(laid: LaidPlan, report: Report): void {
  for (const { step, open, from, to, batchOf } of laid.steps) {
    if (!open || batchOf === null) continue;
    const where = { step: step.id };
    const leader = laid.stepOf.get(batchOf);
    const mix = laid.problem.mixes.find(({ id }) => id === step.mix);
    if (mix === undefined) {
      report('batch', `${step.title} uses no mix, so it can share no batch`, where, from);
      continue;
    }
    if (
      leader === undefined ||
      !leader.open ||
      leader.step.id === step.id ||
      leader.step.mix !== mix.id ||
      leader.batchOf !== null
    ) {
      report(
        'batch',
        `${step.title} cannot share a batch of ${batchOf}: no other open step of the plan that mixes ${mix.name}`,
        where,
        from,
      );
      continue;
    }
    const mixed = leader.from + leader.abrade_min + mix.mixing_min;
    if (from < mixed) report('batch', `${step.title} starts at ${from}; the batch is mixed at ${mixed}`, where, from);
    if (to > mixed + mix.potLife_min)
      report('pot life', `${step.title} ends at ${to}; the batch lasts until ${mixed + mix.potLife_min}`, where, to);
  }
}

export function dustAndWet(laid: LaidPlan, report: Report): void {
  interface Airborne extends MinuteSpan {
    readonly of: LaidStep;
  }
  const dust: Airborne[] = [];
  const wet: Airborne[] = [];
  for (const of of laid.steps) {
    if (of.step.zone === null) continue;
    if (of.step.dusty) dust.push({ of, from: of.from, to: of.to });
    else if (of.abrade_min > 0) dust.push({ of, from: of.from, to: of.from + of.abrade_min });
    if (of.step.wet) wet.push({ of, from: of.from, to: of.to });
  }
  for (const { of, wait, from, to } of laid.waits) if (of.step.zone !== null && wait.wet) wet.push({ of, from, to });
  if (dust.length === 0 || wet.length === 0) return;
  const reach = new Map(laid.problem.zones.map((zone) => [zone.id, new Set([zone.id, ...zone.near])]));
  for (const a of dust)
    for (const b of wet) {
      if (a.of === b.of || !(a.of.open || b.of.open) || !overlap(a, b)) continue;
      const [here, there] = [a.of.step.zone!, b.of.step.zone!];
      if (!reach.get(here)?.has(there) && !reach.get(there)?.has(here)) continue;
      report(
        'dust and wet',
        `${a.of.step.title} makes dust (${a.from} to ${a.to}) while ${b.of.step.title} is wet (${b.from} to ${b.to})`,
        { step: a.of.step.id, zone: there },
        Math.max(a.from, b.from),
      );
    }
}
