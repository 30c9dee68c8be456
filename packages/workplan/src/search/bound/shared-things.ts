import type { AspectNeed, Compiled, CompiledStep } from '../compiled.ts';
import type { WorkMinutes } from './work-minutes.ts';

/**
 * What work takes of the minutes it lies in: the keeper, hands, tools, room in a zone, and for each set-up that some
 * work asks for, the keeper and hands while the boat stands so. Of each there is only so much in a part of a day.
 */
export interface SharedThings {
  readonly count: number;
  /** by thing and part, `thing × parts + part`: minutes there are whatever the set-ups; 0 for a thing of a set-up */
  readonly there: Float64Array;
  /** by aspect: the needs of that aspect that work asks for, with their two things */
  readonly standing: readonly (readonly StandingThing[])[];
  /** by step: what its waits need of the standing while they last, apart from all other waits */
  readonly ofWaits: ReadonlyMap<number, readonly WaitThing[]>;
  /** what a piece of work takes in each of its minutes */
  takes(work: { hands: number; keeper: boolean; setUps: readonly AspectNeed[] }, step: CompiledStep | null): Take[];
}

export interface StandingThing {
  readonly mask: number;
  /** the keeper while the aspect stands so */
  readonly keeper: number;
  /** all hands while it does */
  readonly hands: number;
}

/** A wait that needs an aspect to stand one way, in all its minutes or only in those in which it rains. */
export interface WaitThing {
  readonly wait: number;
  readonly aspect: number;
  readonly mask: number;
  readonly inRain: boolean;
  readonly thing: number;
}

export interface Take {
  readonly thing: number;
  readonly each: number;
}

export function sharedThings(compiled: Compiled, axis: WorkMinutes, steps: readonly CompiledStep[]): SharedThings {
  const { problem, aspects } = compiled;
  const { parts } = axis;
  const keeper = 0;
  const hands = 1;
  const firstTool = 2;
  const firstZone = firstTool + problem.tools.length;
  let count = firstZone + problem.zones.length;

  const masks = aspects.map(() => new Set<number>());
  const ask = (needs: readonly AspectNeed[]) => {
    for (const { aspect, mask } of needs) if (mask !== (1 << aspects[aspect]!.states) - 1) masks[aspect]!.add(mask);
  };
  for (const step of steps) ask(step.setUps);
  for (const aspect of aspects) for (const change of aspect.changes) ask(change.setUps);
  const standing = masks.map((set) =>
    [...set].map((mask): StandingThing => {
      count += 2;
      return { mask, keeper: count - 2, hands: count - 1 };
    }),
  );

  const ofWaits = new Map<number, WaitThing[]>();
  const sheltering = aspects.filter((aspect) => aspect.sheltering !== 0);
  for (const step of steps) {
    const things: WaitThing[] = [];
    for (const [wait, { dry, setUps }] of step.waits.entries()) {
      for (const { aspect, mask } of setUps) things.push({ wait, aspect, mask, inRain: false, thing: count++ });
      // where several aspects could shelter it nothing is asked of any one of them
      if (dry && sheltering.length === 1) {
        const { index, sheltering: mask } = sheltering[0]!;
        things.push({ wait, aspect: index, mask, inRain: true, thing: count++ });
      }
    }
    if (things.length > 0) ofWaits.set(step.index, things);
  }

  const there = new Float64Array(count * parts);
  const underWay = compiled.steps.filter(({ source }) => source.progress.kind === 'under way');
  const toolLeft = compiled.toolCount.map((full) => Int16Array.from(full));
  const roomLeft = problem.zones.map((zone) => new Int32Array(compiled.horizon + 1).fill(zone.room));
  for (const step of underWay) {
    const [from, to] = [Math.max(0, step.fixed!.start), Math.min(compiled.horizon, step.fixed!.finish)];
    for (let at = from; at < to; at++) {
      for (const { tool, count: used } of step.tools) toolLeft[tool]![at]! -= used;
      if (step.zone >= 0) roomLeft[step.zone]![at]! -= step.fixed!.hands.length;
    }
  }
  for (let place = 0; place < axis.count; place++) {
    const part = axis.part[place]!;
    if (part < 0) continue;
    const minute = axis.minute[place]!;
    const free = axis.handsFree[place]!;
    there[keeper * parts + part]! += axis.keeperFree[place]!;
    there[hands * parts + part]! += free;
    for (const [tool, left] of toolLeft.entries())
      there[(firstTool + tool) * parts + part]! += Math.max(0, left[minute]!);
    for (const [zone, left] of roomLeft.entries())
      there[(firstZone + zone) * parts + part]! += Math.max(0, Math.min(left[minute]!, free));
  }

  return {
    count,
    there,
    standing,
    ofWaits,
    takes(work, step) {
      const takes: Take[] = [];
      const add = (thing: number, each: number) => {
        if (each > 0) takes.push({ thing, each });
      };
      add(keeper, work.keeper ? 1 : 0);
      add(hands, work.hands);
      for (const { aspect, mask } of work.setUps) {
        const thing = standing[aspect]!.find((one) => one.mask === mask);
        if (thing === undefined) continue;
        add(thing.keeper, work.keeper ? 1 : 0);
        add(thing.hands, work.hands);
      }
      if (step !== null) {
        for (const { tool, count: used } of step.tools) add(firstTool + tool, used);
        if (step.zone >= 0) add(firstZone + step.zone, step.hands);
      }
      return takes;
    },
  };
}
