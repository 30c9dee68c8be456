/** The lanes of a day: the keeper's, one for each hand who is there, and which work stands in which. */
import type { Minute, PlannedStep, Problem, ProblemDay } from '#workplan';
import { insetsOf, nameSize } from './block-size.ts';
import type { Measure } from './text-size.ts';

export interface Lane {
  /** a hand's id, or `none` for steps that need nobody */
  readonly id: string;
  readonly name: string;
  readonly left: number;
  readonly width: number;
  /** where the hand is there on this day */
  readonly present: readonly { readonly top: number; readonly height: number }[];
}

export type LaneSpan = Omit<Lane, 'present'>;

/**
 * The keeper's lane takes the free width; each hand who is there that day has one, and what needs nobody another. A
 * lane is wide enough for the longest word in it, up to its half.
 */
export function laneSpans(
  problem: Problem,
  day: ProblemDay,
  steps: readonly PlannedStep[],
  width: number,
  left: number,
  measure: Measure,
): LaneSpan[] {
  const [keeper, ...others] = problem.hands;
  const here = others.filter((h) => h.present.some((p) => p.from < day.to && p.to > day.from));
  const byItself = steps.some((s) => needsNobody(problem, s));
  const beside = [
    ...here.map((h) => ({ id: h.id, name: h.name })),
    ...(byItself ? [{ id: 'none', name: 'nobody' }] : []),
  ];
  const gap = 4;
  const words = steps
    .filter((s) => !s.hands.includes(keeper?.id ?? ''))
    .flatMap((s) => (problem.steps.find((step) => step.id === s.step)?.title ?? '').split(' '));
  const longest = Math.max(0, ...words.map((word) => measure(word, nameSize))) + insetsOf(0) + 1;
  const share = Math.max(56, Math.floor((width * 0.42) / Math.max(1, beside.length)), Math.ceil(longest));
  const each = beside.length === 0 ? 0 : Math.min(share, Math.floor((width * 0.5) / beside.length));
  const keeperWidth = width - beside.length * (each + gap);
  return [
    { id: keeper?.id ?? 'keeper', name: keeper?.name ?? 'keeper', left, width: keeperWidth },
    ...beside.map((b, i) => ({ ...b, left: left + keeperWidth + gap + i * (each + gap), width: each })),
  ];
}

export function needsNobody(problem: Problem, planned: PlannedStep): boolean {
  return problem.steps.find((s) => s.id === planned.step)?.hands === 0;
}

/** Whose lane it is drawn in: who is busy with it; for what is done already, the keeper where the keeper was needed. */
export function handsOf(problem: Problem, planned: PlannedStep): readonly string[] {
  if (planned.hands.length > 0) return planned.hands;
  const step = problem.steps.find((s) => s.id === planned.step);
  const [keeper, ...others] = problem.hands.map((h) => h.id);
  return step?.keeper === false && others.length > 0 ? others : keeper === undefined ? [] : [keeper];
}

/** From the first lane of those busy to the last: two hands at one step are one block across both lanes. */
export function boxOf(
  spans: readonly LaneSpan[],
  hands: readonly string[],
  byItself: boolean,
): { left: number; width: number } {
  const mine = byItself ? spans.filter((s) => s.id === 'none') : spans.filter((s) => hands.includes(s.id));
  const first = mine[0] ?? spans[0]!;
  const last = mine.at(-1) ?? first;
  return { left: first.left, width: last.left + last.width - first.left };
}

export function presence(problem: Problem, hand: string, from: Minute, to: Minute) {
  const found = problem.hands.find((h) => h.id === hand);
  if (!found || found === problem.hands[0]) return [];
  return found.present
    .filter((p) => p.from < to && p.to > from)
    .map((p) => ({ from: Math.max(p.from, from), to: Math.min(p.to, to) }));
}
