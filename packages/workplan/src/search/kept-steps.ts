import type { Plan } from '../plan.ts';
import type { Compiled } from './compiled.ts';
import { type Frame, frameOf, frameOfPlan } from './frames/frame.ts';
import { KeptSetUps } from './kept-set-ups.ts';
import type { Placing } from './placing.ts';
import type { Laid, Taken } from './taken.ts';

/** Where each step lay in a plan, to lay some of them there again, and how its set-ups were changed. */
export interface Lay {
  /** null: it was not in the plan */
  readonly steps: readonly (Laid | null)[];
  readonly frame: Frame;
}

/** How the placed steps lie now. */
export function layOf(taken: Taken): Lay {
  return {
    steps: Array.from(taken.finish, (finish, step) =>
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
    ),
    frame: frameOf(taken),
  };
}

/** How the open steps of a plan lie, one that breaks no rule. */
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
  return { steps: lay, frame: frameOfPlan(plan, compiled) };
}

/** The steps of a plan in order of start. */
export function stepsInOrder({ steps }: Lay): number[] {
  return steps
    .flatMap((at, step) => (at === null ? [] : [step]))
    .sort((a, b) => steps[a]!.start - steps[b]!.start || a - b);
}

/** Lays steps again where they lay, without some units, and without the set-up changes that only those asked for. */
export class KeptSteps {
  private readonly compiled: Compiled;
  private readonly placing: Placing;
  private readonly unitOf: Int32Array;
  private readonly setUps: KeptSetUps;
  /** by unit: units that wait for it */
  private readonly waiting: readonly (readonly number[])[];

  constructor(compiled: Compiled, placing: Placing, unitOf: Int32Array) {
    this.compiled = compiled;
    this.placing = placing;
    this.unitOf = unitOf;
    this.setUps = new KeptSetUps(compiled, placing);
    this.waiting = compiled.units.map((_, unit) =>
      compiled.units.flatMap(({ waitsFor }, other) => (waitsFor.includes(unit) ? [other] : [])),
    );
  }

  /**
   * Lays all steps of a plan again but those of the units marked 1 in `out`. Units that cannot stay without those are
   * marked too.
   *
   * @param order  the steps of the plan in order of start
   */
  layAgain({ steps, frame }: Lay, order: readonly number[], out: Uint8Array): void {
    const { placing, unitOf } = this;
    this.markDependent(steps, order, out);
    placing.clear();
    const kept = order.filter((step) => out[unitOf[step]!] === 0);
    for (const step of kept) placing.lay(step, steps[step]!);
    this.setUps.hold(frame, kept);
  }

  /** Marks the units that wait for one that is out, or that share a batch of it. */
  private markDependent(lay: Lay['steps'], order: readonly number[], out: Uint8Array): void {
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
}
