/** Rules: dry, wind, air, surface, humidity, dew margin, daylight; tools, room in the zone, stores. */
import { type Condition, type Conditions, underRoof, unmetConditions } from '#sky';
import type { MinuteSpan, Problem } from '../problem.ts';
import type { Rule, Violation } from '../rules.ts';
import type { LaidPlan, Report } from './laid-out.ts';
import { firstOveruse, firstUncovered, hoursThrough } from './spans.ts';

const ruleOfCondition: Record<Condition, Rule> = {
  dry: 'dry',
  wind_max_kn: 'wind',
  air_min_C: 'air',
  air_max_C: 'air',
  surface_min_C: 'surface',
  humidity_max_pct: 'humidity',
  dewMargin_min_C: 'dew margin',
  daylight: 'daylight',
};

export function weatherOfWork(laid: LaidPlan, report: Report): void {
  const { problem } = laid;
  const inside = new Set(problem.zones.filter((zone) => zone.inside).map((zone) => zone.id));
  for (const { step, open, from, to } of laid.steps) {
    if (!open) continue;
    const roofed = step.zone !== null && inside.has(step.zone);
    conditionsThrough(step.needs, { from, to }, roofed, problem, (rule, what, minute) =>
      report(rule, `${step.title}: ${what}`, { step: step.id }, minute),
    );
  }
  for (const { aspect, listed, from, to } of laid.changes) {
    if (listed === null) continue;
    conditionsThrough(listed.needs, { from, to }, false, problem, (rule, what, minute) =>
      report(rule, `changing the ${aspect.name}: ${what}`, { aspect: aspect.id }, minute),
    );
  }
}

/** Reports, for each rule once, the first hour a span runs through that does not meet the conditions. */
function conditionsThrough(
  needs: Conditions,
  span: MinuteSpan,
  roofed: boolean,
  problem: Problem,
  report: (rule: Rule, what: string, minute: number) => void,
): void {
  const told = new Set<Rule>();
  for (const index of hoursThrough(span, problem.hours.length)) {
    const hour = problem.hours[index]!;
    for (const condition of unmetConditions(needs, roofed || hour.sheltered ? underRoof(hour) : hour)) {
      const rule = ruleOfCondition[condition];
      if (told.has(rule)) continue;
      told.add(rule);
      const minute = Math.max(span.from, index * 60);
      report(rule, `the hour from minute ${index * 60} does not meet ${condition} ${needs[condition]}`, minute);
    }
  }
  if (needs.daylight) {
    const dark = firstUncovered(span, problem.daylight);
    if (dark !== null) report('daylight', `it is dark at ${dark}`, dark);
  }
}

export function thingsInUse(laid: LaidPlan, report: Report): void {
  const { problem } = laid;
  const busy = laid.steps.filter(({ step }) => step.progress.kind !== 'done');
  for (const tool of problem.tools) {
    const uses = busy.flatMap(({ step, from, to, open }) =>
      step.tools.filter((use) => use.tool === tool.id).map(({ count }) => ({ from, to, count, open })),
    );
    const over = firstOveruse(uses, tool.capacity);
    if (over !== null)
      report(
        'tools',
        `${over.used} of ${tool.name} in use at ${over.minute}, there are ${over.there}`,
        { tool: tool.id },
        over.minute,
      );
  }
  const always = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
  for (const zone of problem.zones) {
    const uses = busy
      .filter(({ step }) => step.zone === zone.id)
      .map(({ step, from, to, open, hands }) => ({ from, to, count: open ? step.hands : hands.length, open }));
    const over = firstOveruse(uses, [{ ...always, count: zone.room }]);
    if (over !== null)
      report(
        'room in the zone',
        `${over.used} hands busy in ${zone.name} at ${over.minute}, there is room for ${zone.room}`,
        { zone: zone.id },
        over.minute,
      );
  }
  for (const { step, open, from } of laid.steps) {
    if (!open) continue;
    for (const id of step.stores) {
      const line = problem.stores.find((store) => store.id === id);
      const where: Violation['where'] = { step: step.id };
      if (line === undefined || line.from === null)
        report('stores', `${step.title} needs ${line?.name ?? id}, which is not in sight`, where, from);
      else if (from < line.from)
        report('stores', `${step.title} starts at ${from}; ${line.name} is on hand from ${line.from}`, where, from);
    }
  }
}
