import type { Alone } from '../alone.ts';
import type { AspectNeed, Compiled, CompiledStep } from '../compiled.ts';
import { CheapestWays, type UnitWays, waysOfUnit } from './cheapest-way.ts';
import { DearestStanding } from './dearest-standing.ts';
import { type SharedThings, sharedThings, type Take } from './shared-things.ts';
import type { SupplyBound } from './supplies.ts';
import { WaitPlaces } from './wait-places.ts';
import type { WorkMinutes } from './work-minutes.ts';

/**
 * Hours with a price. Whatever the prices are, each unit in a plan takes hours that cost at least its cheapest way,
 * and all of them together cost no more than all the hours there are: so of any plan the sum of the least costs of
 * its units is at most `whole`. Such a row holds for every plan; prices are moved to make it say as much as it can.
 */
export interface PriceRow {
  /** what all hours cost together */
  readonly whole: number;
  /** by unit: least cost */
  readonly least: Float64Array;
}

/** Where work on a bound may pause: when other work may take over, or only to go on with this very piece. */
export type Pause = 'between' | 'in the midst';

/** starts looked at in one slice while a list is made: a few milliseconds */
const placesInASlice = 200_000;

export class PriceList {
  readonly compiled: Compiled;
  /** kinds of work by what they take */
  private readonly known = new Map<string, number>();
  private readonly axis: WorkMinutes;
  private readonly things: SharedThings;
  /** by unit; null: not worked out, since it is in no plan */
  private readonly ways: (UnitWays | null)[] = [];
  private readonly standing: DearestStanding[] = [];
  private readonly kinds: Take[][] = [];
  private readonly cheapest: CheapestWays;
  /** by kind, by place: what all minutes before it cost together */
  private upTo: Float64Array[] = [];
  readonly units: readonly number[];
  prices: Float64Array;
  private readonly used: Float64Array;
  /** by kind: whether only minutes of rain are paid for */
  private readonly onlyInRain: boolean[] = [];

  private constructor(compiled: Compiled, alone: Alone, axis: WorkMinutes) {
    this.compiled = compiled;
    this.units = compiled.units.flatMap((_, unit) => (alone.possible[unit] ? [unit] : []));
    this.axis = axis;
    const steps = this.units.flatMap((unit) => compiled.units[unit]!.open.map((step) => compiled.steps[step]!));
    this.things = sharedThings(compiled, this.axis, steps);
    this.cheapest = new CheapestWays(this.axis);
    this.prices = new Float64Array(this.things.count * this.axis.parts);
    this.used = new Float64Array(this.prices.length);
  }

  /** A list with all prices 0. Yields now and then. */
  static *made(compiled: Compiled, alone: Alone, axis: WorkMinutes): Generator<Pause, PriceList, undefined> {
    const list = new PriceList(compiled, alone, axis);
    yield 'between';
    const places = new WaitPlaces(axis, compiled.horizon);
    let sinceYield = 0;
    for (const unit of list.units) {
      list.ways[unit] = waysOfUnit(
        compiled,
        axis,
        places,
        alone,
        unit,
        (step) => list.kindOf(step, step),
        (step) =>
          (list.things.ofWaits.get(step.index) ?? []).map(({ wait, thing, inRain }) => {
            list.onlyInRain[list.kinds.length] = inRain;
            list.kinds.push([{ thing, each: 1 }]);
            return { wait, kind: list.kinds.length - 1 };
          }),
      );
      sinceYield += list.axis.count * compiled.units[unit]!.open.length;
      if (sinceYield < placesInASlice) continue;
      sinceYield = 0;
      yield 'between';
    }
    for (const aspect of compiled.aspects) {
      const asked = [...list.things.ofWaits.values()].some((waits) => waits.some((one) => one.aspect === aspect.index));
      if (!asked && list.things.standing[aspect.index]!.length === 0) continue;
      const kinds = aspect.changes.map(({ hands, setUps }) => list.kindOf({ hands, keeper: true, setUps }, null));
      list.standing.push(new DearestStanding(compiled, list.axis, list.things, aspect, kinds));
    }
    list.upTo = list.kinds.map(() => new Float64Array(list.axis.count + 1));
    return list;
  }

  /**
   * Prices to begin with: those behind the bound from sums of minutes, over the parts of the days they are for.
   *
   * @returns  by thing and part
   */
  first({ prices }: SupplyBound): Float64Array {
    const { parts, part } = this.axis;
    const minutes = new Float64Array(parts);
    for (const p of part) if (p >= 0) minutes[p]!++;
    const list = new Float64Array(this.things.count * parts);
    for (const { supply, price } of prices) {
      if (price === 0) continue;
      const covered = new Float64Array(parts);
      for (let n = 0; n < supply.within.length; n += 2)
        for (let place = supply.within[n]!; place < supply.within[n + 1]!; place++)
          if (part[place]! >= 0) covered[part[place]!]!++;
      for (let p = 0; p < parts; p++) if (2 * covered[p]! >= minutes[p]!) list[supply.thing * parts + p]! += price;
    }
    return list;
  }

  private kindOf(
    work: { readonly hands: number; readonly keeper: boolean; readonly setUps: readonly AspectNeed[] },
    step: CompiledStep | null,
  ): number {
    const takes = this.things.takes(work, step);
    const key = JSON.stringify(takes);
    const known = this.known.get(key);
    if (known !== undefined) return known;
    this.known.set(key, this.kinds.length);
    this.kinds.push(takes);
    return this.kinds.length - 1;
  }

  /**
   * Works out the row of the prices in force, and which way they should move. Yields now and then; nothing else may be
   * worked out with the list in between.
   *
   * @param worth  by unit: what it is worth; its hours count as taken where that is more than they cost
   * @param slope  filled with what is there less what is taken, by thing and part
   */
  *row(worth: Float64Array, slope: Float64Array): Generator<Pause, PriceRow, undefined> {
    const { axis, prices, things, kinds, upTo, used } = this;
    const { parts, part, count } = axis;
    const perPart = new Float64Array(parts);
    for (const [k, takes] of kinds.entries()) {
      perPart.fill(0);
      for (const { thing, each } of takes)
        for (let p = 0; p < parts; p++) perPart[p]! += each * prices[thing * parts + p]!;
      const sums = upTo[k]!;
      const inRain = this.onlyInRain[k] === true;
      let sum = 0;
      for (let place = 0; place < count; place++) {
        sums[place] = sum;
        if (part[place]! >= 0 && (!inRain || axis.rain[place] === 1)) sum += perPart[part[place]!]!;
      }
      sums[count] = sum;
    }
    used.fill(0);
    const least = new Float64Array(this.compiled.units.length);
    let sinceYield = kinds.length * count;
    for (const unit of this.units) {
      if (sinceYield > placesInASlice) {
        sinceYield = 0;
        yield 'in the midst';
      }
      const ways = this.ways[unit] ?? null;
      if (ways === null) {
        least[unit] = Number.POSITIVE_INFINITY;
        continue;
      }
      const cost = this.cheapest.cheapest(ways, upTo);
      sinceYield += 2 * count * ways.steps.length;
      least[unit] = cost;
      if (cost === Number.POSITIVE_INFINITY || worth[unit]! <= cost) continue;
      for (const [n, { kind, lasts, waits }] of ways.steps.entries()) {
        const start = this.cheapest.start[n]!;
        this.takeFor(kind, start, lasts);
        for (const wait of waits) this.takeFor(wait.kind, wait.from[start]!, wait.to[start]! - wait.from[start]!);
      }
    }
    slope.set(things.there);
    let whole = 0;
    for (let n = 0; n < prices.length; n++) whole += prices[n]! * things.there[n]!;
    for (const standing of this.standing) {
      whole += standing.earned(prices, upTo);
      const { aspect } = standing;
      standing.followed(
        (place, state, isWorked) => {
          for (const { mask, keeper, hands } of things.standing[aspect.index]!)
            if (isWorked && (mask & (1 << state)) !== 0) {
              slope[keeper * parts + part[place]!]! += axis.keeperFree[place]!;
              slope[hands * parts + part[place]!]! += axis.handsFree[place]!;
            }
          for (const { mask, thing } of standing.waits)
            if ((mask & (1 << state)) !== 0) slope[thing * parts + part[place]!]!++;
        },
        (change, place) => {
          const { minutes, hands, setUps } = aspect.changes[change]!;
          this.take(things.takes({ hands, keeper: true, setUps }, null), place, minutes, false);
        },
      );
    }
    for (let n = 0; n < slope.length; n++) slope[n]! -= used[n]!;
    return { whole, least };
  }

  private takeFor(kind: number, place: number, minutes: number): void {
    this.take(this.kinds[kind]!, place, minutes, this.onlyInRain[kind] === true);
  }

  private take(takes: readonly Take[], place: number, minutes: number, inRain: boolean): void {
    const { part, parts, rain } = this.axis;
    for (let at = place; at < place + minutes; at++)
      if (part[at]! >= 0 && (!inRain || rain[at] === 1))
        for (const { thing, each } of takes) this.used[thing * parts + part[at]!]! += each;
  }
}
