import type { Minute } from '../../problem.ts';
import type { Compiled, CompiledStep } from '../compiled.ts';
import { type Air, hinderedByAir } from '../hindrances.ts';
import type { Taken } from '../taken.ts';

const [ofStep, ofWait] = [1, 2];

/** The dust and the wet of the steps placed and their waits. */
export class DustAndWet {
  private readonly near: Compiled['near'];
  private readonly dust: Air;
  private readonly wet: Air;
  /** by zone: how long the lists are with what has begun already */
  private readonly dustBefore: readonly number[];
  private readonly wetBefore: readonly number[];
  /** by step: whether it is dusty or wet itself, a wait of it is wet, or both */
  private readonly makes: Uint8Array;

  /** @param taken  what has begun already */
  constructor({ near, steps }: Compiled, taken: Taken) {
    this.near = near;
    this.dust = taken.dust.map((list) => [...list]);
    this.wet = taken.wet.map((list) => [...list]);
    this.dustBefore = this.dust.map(({ length }) => length);
    this.wetBefore = this.wet.map(({ length }) => length);
    this.makes = Uint8Array.from(
      steps,
      ({ source, waits }) => (source.dusty || source.wet ? ofStep : 0) | (waits.some(({ wet }) => wet) ? ofWait : 0),
    );
  }

  clear(): void {
    for (let zone = 0; zone < this.dust.length; zone++) {
      shorten(this.dust[zone]!, this.dustBefore[zone]!);
      shorten(this.wet[zone]!, this.wetBefore[zone]!);
    }
  }

  add({ index, zone, source, waits }: CompiledStep, start: Minute, finish: Minute, abrade: Minute): void {
    if (zone < 0) return;
    if (abrade > 0 && !source.dusty) this.dust[zone]!.push(index, start, start + abrade);
    if (this.makes[index] === 0) return;
    if (source.dusty) this.dust[zone]!.push(index, start, finish);
    if (source.wet) this.wet[zone]!.push(index, start, finish);
    for (let k = 0; k < waits.length; k++)
      if (waits[k]!.wet) this.wet[zone]!.push(index, finish, waits[k]!.cure.finish(finish));
  }

  remove({ index, zone }: CompiledStep, abrade: Minute): void {
    if (zone < 0) return;
    const makes = this.makes[index]!;
    if (makes !== 0 || abrade > 0) removeOf(index, this.dust[zone]!, this.dustBefore[zone]!);
    if (makes !== 0) removeOf(index, this.wet[zone]!, this.wetBefore[zone]!);
  }

  /** A later start to try where dust would settle on something wet; −1: it would not. */
  hinders(step: CompiledStep, start: Minute, finish: Minute, abrade: Minute): Minute {
    const { index, zone, source, waits } = step;
    if (zone < 0 || (this.makes[index] === 0 && abrade === 0)) return -1;
    const near = this.near[zone]!;
    let next = -1;
    if (source.dusty) next = hinderedByAir(this.wet, near, step, start, finish);
    else if (abrade > 0) next = hinderedByAir(this.wet, near, step, start, start + abrade);
    if (next < 0 && source.wet) next = hinderedByAir(this.dust, near, step, start, finish);
    if (next >= 0 || (this.makes[index]! & ofWait) === 0) return next;
    for (let k = 0; k < waits.length; k++) {
      const wait = waits[k]!;
      if (!wait.wet) continue;
      const until = hinderedByAir(this.dust, near, step, finish, wait.cure.finish(finish));
      if (until >= 0) return start + Math.max(1, until - finish);
    }
    return -1;
  }
}

/** Removes what is of a step; what has begun already stays in front. */
function removeOf(step: number, list: number[], before: number): void {
  let kept = before;
  for (let k = before; k < list.length; k += 3) {
    if (list[k] === step) continue;
    if (kept !== k) for (let n = 0; n < 3; n++) list[kept + n] = list[k + n]!;
    kept += 3;
  }
  shorten(list, kept);
}

/** Setting the length of a list may have it made anew. */
function shorten(list: number[], length: number): void {
  while (list.length > length) list.pop();
}
