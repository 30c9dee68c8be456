import { because, type Facts } from './facts.ts';
import type { Lessons } from './lessons.ts';
import type { Orders } from './orders.ts';
import type { ProofCase } from './proof-case.ts';
import type { Urgency } from './urgency.ts';

/**
 * Why something cannot be: walks back from a broken fact through the reasons of the facts behind it to one fact of the
 * present level that is behind all (the first unique implication point), and gives the lesson that follows.
 *
 * Reasons are worked out when asked for, for as little as has to be explained. Any set of earlier facts that implies
 * the later one will do, so no choice made here can make a lesson wrong, only weaker or stronger.
 */
export class Reasons {
  /** the lesson: at least one of these must hold; the first is the one to add after going back */
  readonly sides: Int32Array;
  readonly tos: Int32Array;
  count = 0;
  /** the level to go back to, and how many levels the lesson spans */
  backTo = 0;
  span = 0;

  private readonly plain: ProofCase;
  private readonly duration: Int32Array;
  private readonly facts: Facts;
  private readonly orders: Orders;
  private readonly lessons: Lessons;
  private readonly urgency: Urgency;
  /** by side: what is asked for, and the entry that made it true, or −1 */
  private readonly wanted: Int32Array;
  private readonly maker: Int32Array;
  private readonly touched: Int32Array;
  private readonly isTouched: Uint8Array;
  private touchedCount = 0;
  /** how many of what is asked for were made at the level in hand */
  private open = 0;
  private depth = 0;
  private readonly levelSeen: Int32Array;
  private stamp = 0;
  private readonly sure: Int32Array;
  /** while a reason is only tried: whether all of it is asked for already */
  private trying = false;
  private tried = 0;
  private allThere = false;
  private readonly takenOff: (side: number) => void;

  constructor(
    plain: ProofCase,
    duration: Int32Array,
    facts: Facts,
    orders: Orders,
    lessons: Lessons,
    urgency: Urgency,
    takenOff: (side: number) => void,
  ) {
    const sides = 2 * facts.figures;
    this.plain = plain;
    this.duration = duration;
    this.facts = facts;
    this.orders = orders;
    this.lessons = lessons;
    this.urgency = urgency;
    this.takenOff = takenOff;
    this.sides = new Int32Array(sides);
    this.tos = new Int32Array(sides);
    this.wanted = new Int32Array(sides);
    this.maker = new Int32Array(sides).fill(-1);
    this.touched = new Int32Array(sides);
    this.isTouched = new Uint8Array(sides);
    this.levelSeen = new Int32Array(facts.begins.length);
    this.sure = new Int32Array(plain.count);
  }

  /**
   * The lesson of the fact that could not be added.
   *
   * @returns  false where nothing was tried that it rests on: there is no solution at all
   */
  learn(): boolean {
    const { facts } = this;
    for (let n = 0; n < this.touchedCount; n++) {
      this.maker[this.touched[n]!] = -1;
      this.isTouched[this.touched[n]!] = 0;
    }
    this.touchedCount = 0;
    this.trying = false;
    this.open = 0;
    this.depth = -1; // nothing counts as open while the first facts are gathered
    if (facts.brokenSide < 0) this.wantFull(facts.brokenRef);
    else {
      this.want(facts.brokenSide ^ 1, 1 - facts.brokenTo);
      this.explain(facts.brokenSide, facts.brokenTo, facts.brokenWhy, facts.brokenRef, facts.size);
    }
    let deepest = 0;
    for (let n = 0; n < this.touchedCount; n++) {
      const entry = this.maker[this.touched[n]!]!;
      if (entry >= 0) deepest = Math.max(deepest, facts.level[entry]!);
    }
    if (deepest === 0) return false;
    this.depth = deepest;
    for (let n = 0; n < this.touchedCount; n++) {
      const entry = this.maker[this.touched[n]!]!;
      if (entry >= 0 && facts.level[entry] === deepest) this.open++;
    }
    for (;;) {
      const entry = facts.size - 1;
      const side = facts.side[entry]!;
      const asked = this.maker[side] === entry;
      if (asked && this.open === 1) {
        this.write(side);
        return true;
      }
      const [why, ref] = [facts.why[entry]!, facts.ref[entry]!];
      this.takenOff(facts.takeOff());
      if (!asked) continue;
      this.open--;
      this.maker[side] = -1;
      this.explain(side, this.wanted[side]!, why, ref, entry);
    }
  }

  private write(first: number): void {
    const { facts, sides, tos, wanted, maker } = this;
    sides[0] = first ^ 1;
    tos[0] = 1 - wanted[first]!;
    this.urgency.bump(this.lessons.question(first, wanted[first]!));
    this.count = 1;
    this.backTo = 0;
    this.stamp++;
    this.span = 1;
    let deepestAt = 0;
    for (let n = 0; n < this.touchedCount; n++) {
      const side = this.touched[n]!;
      const entry = maker[side]!;
      if (entry < 0 || side === first) continue;
      if (this.follows(side, entry)) continue;
      const level = facts.level[entry]!;
      sides[this.count] = side ^ 1;
      tos[this.count] = 1 - wanted[side]!;
      if (level > this.backTo) {
        this.backTo = level;
        deepestAt = this.count;
      }
      if (this.levelSeen[level] !== this.stamp) {
        this.levelSeen[level] = this.stamp;
        this.span++;
      }
      this.count++;
    }
    if (deepestAt > 1) {
      const [side, to] = [sides[1]!, tos[1]!];
      sides[1] = sides[deepestAt]!;
      tos[1] = tos[deepestAt]!;
      sides[deepestAt] = side;
      tos[deepestAt] = to;
    }
  }

  /** Whether a fact follows from the others asked for, so that the lesson can do without it. */
  private follows(side: number, entry: number): boolean {
    const { facts } = this;
    if (facts.why[entry] === because.tried) return false;
    this.trying = true;
    this.tried = entry;
    this.allThere = true;
    this.explain(side, this.wanted[side]!, facts.why[entry]!, facts.ref[entry]!, entry);
    this.trying = false;
    return this.allThere;
  }

  /** Asks for a fact, which must be true. */
  private want(side: number, k: number): void {
    const { facts, wanted, maker } = this;
    if (facts.first[side]! >= k) return;
    const asked = maker[side]!;
    // While a reason is tried only what came before counts, or two facts could each stand for the other.
    if (asked >= 0 && wanted[side]! >= k && (!this.trying || asked < this.tried)) return;
    const entry = facts.maker(side, k);
    if (entry < 0) return;
    const level = facts.level[entry]!;
    if (level === 0) return;
    if (this.trying) {
      this.allThere = false;
      return;
    }
    if (this.isTouched[side] === 0) {
      this.isTouched[side] = 1;
      this.touched[this.touchedCount++] = side;
    }
    if (level === this.depth && (asked < 0 || facts.level[asked]! !== level)) this.open++;
    wanted[side] = k;
    maker[side] = entry;
    this.urgency.bump(this.lessons.question(side, k));
  }

  /** Asks for what made the fact (side, k) true, from what was known before `entry`. */
  private explain(side: number, k: number, why: number, ref: number, entry: number): void {
    const { facts, orders, lessons } = this;
    switch (why) {
      case because.arc: {
        this.want(orders.tail[ref]!, k - orders.weight[ref]!);
        if (orders.onlyIf[ref]! >= 0) this.want(orders.onlyIf[ref]!, orders.needs[ref]!);
        break;
      }
      case because.tooLate: {
        const tail = orders.tail[ref]!;
        const known = facts.before(tail, entry);
        this.want(tail, known);
        this.want(orders.head[ref]! ^ 1, 1 - orders.weight[ref]! - known);
        break;
      }
      case because.lesson: {
        lessons.helped(ref);
        const size = lessons.size(ref);
        for (let n = 0; n < size; n++) {
          const other = lessons.sideOf(ref, n);
          if (other !== side) this.want(other ^ 1, 1 - lessons.toOf(ref, n));
        }
        break;
      }
      case because.room: {
        this.wantNoRoom(side, ref, entry);
        break;
      }
      default:
        this.allThere = false;
    }
  }

  /** Why an activity cannot be at work in a minute, and so starts after it or is finished before. */
  private wantNoRoom(side: number, minute: number, entry: number): void {
    const activity = side >> 1;
    const lasts = this.duration[activity]!;
    if ((side & 1) === 0) {
      this.want(side, minute - lasts + 1);
    } else {
      this.want(side, -minute);
    }
    this.wantTaken(activity, minute, entry);
  }

  /** Asks for activities surely at work in that minute that leave no room for this one, as few as will do. */
  private wantTaken(activity: number, minute: number, entry: number): void {
    const { plain, duration, facts, sure } = this;
    const { count, resources, request, capacity } = plain;
    let sureCount = 0;
    for (let i = 0; i < count; i++) {
      if (i === activity || duration[i] === 0) continue;
      const latest = -facts.before(2 * i + 1, entry);
      if (latest > minute) continue;
      if (facts.before(2 * i, entry) + duration[i]! <= minute) continue;
      sure[sureCount++] = i;
    }
    for (let k = 0; k < resources; k++) {
      let over = request[activity * resources + k]! - capacity[k]!;
      if (over + capacity[k]! === 0) continue;
      for (let n = 0; n < sureCount; n++) over += request[sure[n]! * resources + k]!;
      if (over <= 0) continue;
      this.wantSome(k, over, minute, sureCount);
      return;
    }
    throw new RangeError('a reason of the proof does not hold');
  }

  /** Asks for as few of the sure activities as still ask for too much; `over` is by how much all of them do. */
  private wantSome(resource: number, overAll: number, minute: number, sureCount: number): void {
    const { plain, duration, sure } = this;
    const { resources, request } = plain;
    let over = overAll;
    for (let n = 0; n < sureCount; n++) {
      const i = sure[n]!;
      const asks = request[i * resources + resource]!;
      if (asks === 0) continue;
      if (asks < over) {
        over -= asks;
        continue;
      }
      this.want(2 * i, minute - duration[i]! + 1);
      this.want(2 * i + 1, -minute);
    }
  }

  /** Why a minute is overfull. */
  private wantFull(minute: number): void {
    const { plain, duration, facts, sure } = this;
    const { count, resources, request, capacity } = plain;
    let sureCount = 0;
    for (let i = 0; i < count; i++) {
      if (duration[i] === 0) continue;
      if (-facts.value[2 * i + 1]! > minute || facts.value[2 * i]! + duration[i]! <= minute) continue;
      sure[sureCount++] = i;
    }
    for (let k = 0; k < resources; k++) {
      let over = -capacity[k]!;
      for (let n = 0; n < sureCount; n++) over += request[sure[n]! * resources + k]!;
      if (over <= 0) continue;
      this.wantSome(k, over, minute, sureCount);
      return;
    }
    throw new RangeError('a reason of the proof does not hold');
  }
}
