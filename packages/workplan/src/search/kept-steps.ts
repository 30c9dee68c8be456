import type { Plan } from '../plan.ts';
import type { Compiled } from './compiled.ts';
import type { Placing } from './placing.ts';
import type { Laid, Taken } from './taken.ts';

/** Where each step lay in a plan, to lay some of them there again; null: it was not in the plan. */
export type Lay = readonly (Laid | null)[];

/** Where the placed steps lie now. */
export function layOf(taken: Taken): Lay {
  return Array.from(taken.finish, (finish, step) =>
    finish < 0
      ? null
      : {
          start: taken.start[step]!,
          finish,
          day: taken.day[step]!,
          batchOf: taken.batchOf[step]!,
          abrade: taken.abrade[step]!,
          hands: taken.hands[step]!,
        },
  );
}

/** Where the open steps of a plan lie, one that breaks no rule. */
export function layOfPlan(plan: Plan, compiled: Compiled): Lay {
  const { problem } = compiled;
  const indexOf = (things: readonly { readonly id: string }[]) => new Map(things.map(({ id }, index) => [id, index]));
  const [steps, hands, days] = [indexOf(problem.steps), indexOf(problem.hands), indexOf(problem.days)];
  const lay: (Laid | null)[] = compiled.steps.map(() => null);
  for (const { step, start, finish, hands: busy, day, batchOf, abrade_min } of plan.steps) {
    const index = steps.get(step)!;
    if (compiled.steps[index]!.fixed !== null || day === null) continue;
    lay[index] = {
      start,
      finish,
      day: days.get(day)!,
      batchOf: batchOf === null ? -1 : steps.get(batchOf)!,
      abrade: abrade_min,
      hands: busy.map((hand) => hands.get(hand)!),
    };
  }
  return lay;
}

/** Lays steps again where they lay, without some units, and with as many set-up changes fewer as that allows. */
export class KeptSteps {
  private readonly compiled: Compiled;
  private readonly placing: Placing;
  private readonly unitOf: Int32Array;
  /** by unit: units that wait for it */
  private readonly waiting: readonly (readonly number[])[];

  constructor(compiled: Compiled, placing: Placing, unitOf: Int32Array) {
    this.compiled = compiled;
    this.placing = placing;
    this.unitOf = unitOf;
    this.waiting = compiled.units.map((_, unit) =>
      compiled.units.flatMap(({ waitsFor }, other) => (waitsFor.includes(unit) ? [other] : [])),
    );
  }

  /**
   * Lays all steps of a plan again but those of the units marked 1 in `out`. Units that cannot stay without those are
   * marked too. Returns false, with part of them laid, where set-ups cannot be laid even so.
   *
   * @param order  the steps of the plan in order of start
   */
  layAgain(lay: Lay, order: readonly number[], out: Uint8Array): boolean {
    for (let tries = 0; tries < 4; tries++) {
      this.markDependent(lay, order, out);
      const failed = this.layWithout(lay, order, out);
      if (failed < 0) return true;
      out[failed] = 1;
    }
    return false;
  }

  /** Marks the units that wait for one that is out, or that share a batch of it. */
  private markDependent(lay: Lay, order: readonly number[], out: Uint8Array): void {
    const { unitOf, waiting } = this;
    let more = true;
    while (more) {
      more = false;
      for (let unit = 0; unit < out.length; unit++) {
        if (out[unit] === 0) continue;
        for (const other of waiting[unit]!)
          if (out[other] === 0) {
            out[other] = 1;
            more = true;
          }
      }
      for (const step of order) {
        const { batchOf } = lay[step]!;
        if (batchOf < 0 || out[unitOf[step]!] === 1) continue;
        if (this.compiled.steps[batchOf]!.fixed !== null || out[unitOf[batchOf]!] === 0) continue;
        out[unitOf[step]!] = 1;
        more = true;
      }
    }
  }

  /** Returns a unit whose set-ups find no place; −1: all do. */
  private layWithout(lay: Lay, order: readonly number[], out: Uint8Array): number {
    const { placing, unitOf } = this;
    const { taken, lines } = placing;
    placing.clear();
    // all hands are taken first, so that no change of set-up is laid where a step will lie
    for (const step of order) if (out[unitOf[step]!] === 0) placing.lay(step, lay[step]!);
    for (const step of order) {
      if (out[unitOf[step]!] === 1) continue;
      const { day } = lay[step]!;
      if (!placing.holdFor(step)) return unitOf[step]!;
      if (taken.worked[day] === 0 && !lines.workDay(day)) return unitOf[step]!;
    }
    return -1;
  }
}
