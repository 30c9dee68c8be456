import type { Compiled, CompiledAspect } from '../compiled.ts';
import type { SharedThings, WaitThing } from './shared-things.ts';
import type { WorkMinutes } from './work-minutes.ts';

/**
 * How one aspect could best stand over all the days where each part of a day has a price for the keeper and the hands
 * in each standing, less what the changes cost in minutes. Each day is either left out, with nothing earned and
 * nothing changed, or ends as it must. Other aspects are left out of account but for what they cost a change.
 */
export class DearestStanding {
  readonly aspect: CompiledAspect;
  private readonly axis: WorkMinutes;
  private readonly things: SharedThings;
  /** by change: which row of prices its minutes have */
  private readonly kinds: readonly number[];
  /** by change and place: 1 where it may start */
  private readonly may: readonly Uint8Array[];
  /** by state and place, `state × count + place`: the most to be earned from there on */
  private readonly most: Float64Array;
  /** the choice behind it: −1 stays; −2 leaves the day out; else the change made */
  private readonly choice: Int16Array;
  /** by day that has places: bits of the states it may end in */
  private readonly endsIn: ReadonlyMap<number, number>;
  /** by place that starts a day: the first place after the day; else −1 */
  private readonly skipTo: Int32Array;
  /** by part and state, what a minute of the keeper's and of a hand's earns */
  private readonly earnKeeper: Float64Array;
  private readonly earnHands: Float64Array;
  private readonly earnWaits: Float64Array;
  readonly waits: readonly WaitThing[];

  constructor(
    compiled: Compiled,
    axis: WorkMinutes,
    things: SharedThings,
    aspect: CompiledAspect,
    kinds: readonly number[],
  ) {
    this.axis = axis;
    this.things = things;
    this.aspect = aspect;
    this.kinds = kinds;
    const { count, stretches, minute } = axis;
    this.may = aspect.changes.map((change) => {
      const may = new Uint8Array(count);
      for (const { first, last } of stretches)
        for (let place = first; place + change.minutes <= last; place++)
          if (change.minutes === 0 || change.startFrom[minute[place]!] === minute[place]) may[place] = 1;
      return may;
    });
    this.most = new Float64Array(aspect.states * (count + 1));
    this.choice = new Int16Array(aspect.states * (count + 1));
    const all = (1 << aspect.states) - 1;
    this.endsIn = new Map(
      stretches.map(({ day }) => {
        const asked = compiled.days[day]!.endsIn.filter((need) => need.aspect === aspect.index);
        return [day, asked.reduce((mask, need) => mask & need.mask, all)];
      }),
    );
    this.skipTo = new Int32Array(count).fill(-1);
    for (const [n, { first, day }] of stretches.entries()) {
      if (n > 0 && stretches[n - 1]!.day === day) continue;
      const after = stretches.find((other, m) => m > n && other.day !== day);
      this.skipTo[first] = after?.first ?? count;
    }
    this.earnKeeper = new Float64Array(aspect.states * axis.parts);
    this.waits = [...things.ofWaits.values()].flat().filter((wait) => wait.aspect === aspect.index);
    this.earnWaits = new Float64Array(aspect.states * axis.parts);
    this.earnHands = new Float64Array(aspect.states * axis.parts);
  }

  /**
   * The most to be earned.
   *
   * @param prices  by thing and part
   * @param upTo    by kind of work and place: what all minutes before the place cost together
   */
  earned(prices: Float64Array, upTo: readonly Float64Array[]): number {
    const { aspect, axis, most, choice, may, kinds, skipTo, earnKeeper, earnHands, earnWaits } = this;
    const { states, changes } = aspect;
    const { count, part, parts, stretches, keeperFree, handsFree } = axis;
    earnKeeper.fill(0);
    earnHands.fill(0);
    for (const { mask, keeper, hands } of this.things.standing[aspect.index]!)
      for (let state = 0; state < states; state++)
        if ((mask & (1 << state)) !== 0)
          for (let p = 0; p < parts; p++) {
            earnKeeper[state * parts + p]! += prices[keeper * parts + p]!;
            earnHands[state * parts + p]! += prices[hands * parts + p]!;
          }
    earnWaits.fill(0);
    for (const { mask, thing } of this.waits)
      for (let state = 0; state < states; state++)
        if ((mask & (1 << state)) !== 0)
          for (let p = 0; p < parts; p++) earnWaits[state * parts + p]! += prices[thing * parts + p]!;
    const row = count + 1;
    for (let state = 0; state < states; state++) most[state * row + count] = 0;
    for (let n = stretches.length - 1; n >= 0; n--) {
      const { first, last, day } = stretches[n]!;
      const endsDay = stretches[n + 1]?.day !== day;
      const mask = endsDay ? this.endsIn.get(day)! : -1;
      for (let place = last; place >= first; place--) {
        const p = part[place]!;
        for (let state = 0; state < states; state++) {
          let best = most[state * row + place + 1]!;
          let chosen = -1;
          if (place === last) {
            if ((mask & (1 << state)) === 0) best = Number.NEGATIVE_INFINITY;
          } else
            best +=
              earnWaits[state * parts + p]! +
              keeperFree[place]! * earnKeeper[state * parts + p]! +
              handsFree[place]! * earnHands[state * parts + p]!;
          for (const [c, change] of changes.entries()) {
            if (change.from !== state || change.minutes === 0 || may[c]![place] === 0) continue;
            const sums = upTo[kinds[c]!]!;
            const then = most[change.to * row + place + change.minutes]! - sums[place + change.minutes]! + sums[place]!;
            if (then > best) {
              best = then;
              chosen = c;
            }
          }
          most[state * row + place] = best;
          choice[state * row + place] = chosen;
        }
        this.changeInNoTime(place);
        const after = skipTo[place]!;
        if (after < 0) continue;
        for (let state = 0; state < states; state++) {
          // waits go on through a day without work
          let through = most[state * row + after]!;
          for (let other = place; other < after; other++)
            if (part[other]! >= 0) through += earnWaits[state * parts + part[other]!]!;
          if (through > most[state * row + place]!) {
            most[state * row + place] = through;
            choice[state * row + place] = -2;
          }
        }
      }
    }
    return most[aspect.initial * row]!;
  }

  /** Changes that take no minutes, in a row if need be. */
  private changeInNoTime(place: number): void {
    const { aspect, axis, most, choice, may } = this;
    const row = axis.count + 1;
    for (let round = 0; round < aspect.states; round++)
      for (const [c, change] of aspect.changes.entries()) {
        if (change.minutes > 0 || may[c]![place] === 0) continue;
        if (most[change.to * row + place]! > most[change.from * row + place]!) {
          most[change.from * row + place] = most[change.to * row + place]!;
          choice[change.from * row + place] = c;
        }
      }
  }

  /**
   * Goes through the standing found last.
   *
   * @param stood    told of each minute the aspect stands in a state and is paid for it; in a day left out only waits pay
   * @param changed  told of each change and the place it starts at
   */
  followed(
    stood: (place: number, state: number, isWorked: boolean) => void,
    changed: (change: number, place: number) => void,
  ): void {
    const { aspect, axis, choice, skipTo } = this;
    const row = axis.count + 1;
    let state = aspect.initial;
    let place = 0;
    // no more steps than there are places and changes in no time
    for (let n = 0; place < axis.count && n < axis.count * (aspect.states + 1); n++) {
      const chosen = choice[state * row + place]!;
      if (chosen === -2) {
        const after = skipTo[place]!;
        for (; place < after; place++) if (axis.part[place]! >= 0) stood(place, state, false);
      } else if (chosen === -1) {
        if (axis.part[place]! >= 0) stood(place, state, true);
        place++;
      } else {
        const change = aspect.changes[chosen]!;
        changed(chosen, place);
        state = change.to;
        place += change.minutes;
      }
    }
  }
}
