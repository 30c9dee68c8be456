/** Rules: job day, set-out and clear-up, break, place; hands, hand present, one thing at a time, keeper, not alone. */
import type { Minute, MinuteSpan, ProblemDay } from '../problem.ts';
import type { Violation } from '../rules.ts';
import type { LaidPlan, Report } from './laid-out.ts';
import { firstOveruse, firstUncovered, overlap } from './spans.ts';

/** A piece of open work: a step, or a change of a set-up. */
interface Work extends MinuteSpan {
  readonly name: string;
  readonly where: Violation['where'];
  readonly day: ProblemDay | null;
  readonly hands: readonly string[];
  readonly handsNeeded: number;
  readonly keeper: boolean;
}

function openWork(laid: LaidPlan): Work[] {
  const steps = laid.steps
    .filter(({ open }) => open)
    .map(({ step, from, to, day, hands }): Work => {
      const where = { step: step.id };
      return { name: step.title, where, day, hands, handsNeeded: step.hands, keeper: step.keeper, from, to };
    });
  const changes = laid.changes.map(({ aspect, planned, listed, day, from, to }): Work => {
    const name = `changing the ${aspect.name}`;
    // a change that is not listed is broken under 'set-up chain'; how many hands it needs is then unknown
    const handsNeeded = listed?.hands ?? planned.hands.length;
    return { name, where: { aspect: aspect.id }, day, hands: planned.hands, handsNeeded, keeper: true, from, to };
  });
  return [...steps, ...changes];
}

export function withinDays(laid: LaidPlan, report: Report): void {
  for (const { name, where, day, from, to } of openWork(laid)) {
    if (day === null) {
      report('job day', `${name} is in no job day`, where, from);
      continue;
    }
    const here = { ...where, day: day.id };
    const [first, last] = [day.from + day.setOut_min, day.to - day.clearUp_min];
    if (from < day.from || to > day.to)
      report('job day', `${name} (${from} to ${to}) is not within ${day.label} (${day.from} to ${day.to})`, here, from);
    else if (from < first)
      report('set-out and clear-up', `${name} starts at ${from}; setting out lasts until ${first}`, here, from);
    else if (to > last)
      report('set-out and clear-up', `${name} ends at ${to}; clearing up starts at ${last}`, here, last);
    for (const pause of day.breaks)
      if (overlap(pause, { from, to }))
        report('break', `${name} (${from} to ${to}) overlaps a break (${pause.from} to ${pause.to})`, here, pause.from);
  }
  for (const { step, open, day, from } of laid.steps) {
    if (!open || day === null) continue;
    for (const feature of step.features)
      if (!day.features.includes(feature))
        report('place', `${step.title} needs ${feature}; ${day.label} has none`, { step: step.id, day: day.id }, from);
  }
}

export function handsOfWork(laid: LaidPlan, report: Report): void {
  const { problem } = laid;
  const keeper = problem.hands[0];
  const presentOf = new Map(problem.hands.map((hand) => [hand.id, hand.present]));
  const work = openWork(laid);
  for (const { name, where, hands, handsNeeded, keeper: needsKeeper, from, to } of work) {
    if (new Set(hands).size !== hands.length) report('hands', `${name} names a hand twice`, where, from);
    else if (hands.length !== handsNeeded)
      report('hands', `${name} takes ${handsNeeded} hands, the plan gives it ${hands.length}`, where, from);
    if (needsKeeper && (keeper === undefined || !hands.includes(keeper.id)))
      report('keeper', `the keeper must be one of the hands of ${name}`, where, from);
    for (const hand of new Set(hands)) {
      const away = firstUncovered({ from, to }, presentOf.get(hand) ?? []);
      if (away !== null)
        report('hand present', `${hand} is not there at ${away} for ${name}`, { ...where, hand }, away);
    }
  }
  oneThingAtATime(laid, work, report);
  const presences = problem.hands.flatMap(({ present }) => present);
  for (const { step, open, from, to } of laid.steps) {
    if (!open || !step.notAlone) continue;
    const alone = firstAlone({ from, to }, presences);
    if (alone !== null)
      report(
        'not alone',
        `${step.title} is not to be done alone; at ${alone} no second hand is there`,
        { step: step.id },
        alone,
      );
  }
}

function oneThingAtATime(laid: LaidPlan, work: readonly Work[], report: Report): void {
  const underWay = laid.steps.filter(({ step }) => step.progress.kind === 'under way');
  for (const hand of laid.problem.hands) {
    const uses = [
      ...work
        .filter(({ hands }) => hands.includes(hand.id))
        .map(({ from, to }) => ({ from, to, count: 1, open: true })),
      ...underWay
        .filter(({ hands }) => hands.includes(hand.id))
        .map(({ from, to }) => ({ from, to, count: 1, open: false })),
    ];
    const always = [{ from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY, count: 1 }];
    const over = firstOveruse(uses, always);
    if (over !== null)
      report(
        'one thing at a time',
        `${hand.name} is busy with ${over.used} things at ${over.minute}`,
        { hand: hand.id },
        over.minute,
      );
  }
}

/** The first minute of a span at which fewer than two hands are there; null when two are there throughout. */
function firstAlone(span: MinuteSpan, presences: readonly MinuteSpan[]): Minute | null {
  const edges = new Set([span.from]);
  for (const { to } of presences) if (to > span.from && to < span.to) edges.add(to);
  if (span.to <= span.from) return null;
  for (const edge of [...edges].sort((a, b) => a - b)) {
    const there = presences.filter(({ from, to }) => from <= edge && edge < to).length;
    if (there < 2) return edge;
  }
  return null;
}
