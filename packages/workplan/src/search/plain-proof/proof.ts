import { because, Facts } from './facts.ts';
import { Lessons } from './lessons.ts';
import { type Orders, ordersOf } from './orders.ts';
import type { ProofCase } from './proof-case.ts';
import { Reasons } from './reasons.ts';
import { Room } from './room.ts';
import { Urgency } from './urgency.ts';
import { workBound } from './work-bound.ts';

/** More questions (starts × minutes they may fall in) than this are too many to hold; see `proofFits`. */
const mostQuestions = 1_000_000;
const lessonWords = 1 << 20;
const fadeShare = 0.95;
const restartAfter = 100;
const firstEffort = 2000;

/**
 * Looks for a schedule that is finished sooner than the best known, and proves that there is none: a search that
 * learns from each contradiction what may not be tried again, over starts and over who goes first.
 *
 * It works in turns. In one it asks for any sooner finish; in the other it asks for a finish half way between what is
 * excluded and what is known, so that the bound from below rises where the whole is too hard. Lessons serve both.
 * Same case, same calls, same answer on every machine. What it needs is laid out at the start, nothing while it works.
 *
 * Idea: O. Ohrimenko, P. Stuckey, M. Codish, "Propagation via lazy clause generation", Constraints 14 (2009);
 * A. Schutt, T. Feydt, P. Stuckey, M. Wallace, "Explaining the cumulative propagator", Constraints 16 (2011); both
 * from memory.
 */
export class Proof {
  /** Nothing sooner than `finish` exists. */
  closed = false;
  /** contradictions met so far */
  conflicts = 0;
  /** starts of the schedule finished at `finish`, once one was found here */
  readonly start: Int32Array;
  private readonly plain: ProofCase;
  /** all durations are multiples of it, and so some best schedule's starts are: one minute in here */
  private readonly unit: number;
  private readonly facts: Facts;
  private readonly orders: Orders;
  private readonly room: Room;
  private readonly lessons: Lessons;
  private readonly urgency: Urgency;
  private readonly reasons: Reasons;
  /** side "finished at least by" of the finish of all */
  private readonly finishSide: number;
  private best: number;
  private found = false;
  private followed = 0;
  private untilRestart = restartAfter;
  private restarts = 0;
  private mostKept = 4000;
  /** the finish asked for in this turn, or −1 for any sooner one */
  private aim = -1;
  private turnEnds = firstEffort;
  private effort = firstEffort;
  /** aims at this and above were given up in this round */
  private givenUp = 0;

  /**
   * @param plain       the case
   * @param upperBound  finish of a known schedule, in the unit of the durations
   */
  constructor(plain: ProofCase, upperBound: number) {
    const { count } = plain;
    this.plain = plain;
    this.unit = plain.duration.reduce(greatestShared, 0) || 1;
    const duration = plain.duration.map((lasts) => lasts / this.unit);
    this.best = Math.ceil(upperBound / this.unit);
    this.start = new Int32Array(count);
    this.finishSide = 2 * count;
    this.orders = ordersOf(plain, duration);
    const { least, most } = windows(plain, duration, this.best - 1, this.orders.pairs);
    if (least.some((low, x) => low > most[x]!)) {
      this.closed = true;
      most.set(least);
    }
    this.facts = new Facts(least, most);
    this.room = new Room(plain, duration, this.facts, Math.max(this.best, least[count]!) + 1);
    this.lessons = new Lessons(this.facts, this.closed ? 0 : lessonWords);
    this.urgency = new Urgency(this.lessons.questions);
    const takenOff = (side: number) => this.takenOff(side);
    this.reasons = new Reasons(plain, duration, this.facts, this.orders, this.lessons, this.urgency, takenOff);
    for (let i = 0; i < count && !this.closed; i++) if (!this.room.note(i)) this.closed = true;
    for (let a = 0; a < this.orders.tail.length && !this.closed; a++) if (!this.followArc(a)) this.closed = true;
  }

  /** Finish of the best schedule known, here or to the caller, in the unit of the durations. */
  get finish(): number {
    return this.best * this.unit;
  }

  /** No schedule is finished sooner than this. */
  get lowerBound(): number {
    return this.unit * (this.closed ? this.best : this.sureFinish());
  }

  /** Whether `start` holds a schedule better than the upper bounds given. */
  get improved(): boolean {
    return this.found;
  }

  /** Takes note of a better schedule found elsewhere. */
  know(finish: number): void {
    const best = Math.ceil(finish / this.unit);
    if (best >= this.best || this.closed) return;
    this.best = best;
    this.found = false;
    this.askForSooner();
  }

  /** Works until so many more contradictions were met, or all is settled. */
  advance(conflicts: number): void {
    for (let n = 0; n < conflicts && !this.closed; ) {
      if (!this.follow()) {
        n++;
        this.conflicts++;
        this.untilRestart--;
        if (!this.learn()) this.closed = true;
      } else if (this.untilRestart <= 0) this.restart();
      else if (this.aimIsSettled()) this.nextAim();
      else if (!this.tryOne()) this.keepSchedule();
    }
  }

  private learn(): boolean {
    const { reasons, facts, lessons } = this;
    if (!reasons.learn()) return false;
    this.urgency.fade(fadeShare);
    this.goBack(reasons.backTo);
    const [side, to] = [reasons.sides[0]!, reasons.tos[0]!];
    if (reasons.count === 1) return facts.raise(side, to, because.tried, 0);
    if (!lessons.hasRoomFor(reasons.count)) {
      this.untilRestart = 0;
      return true;
    }
    const lesson = lessons.keep(reasons.sides, reasons.tos, reasons.count, reasons.span);
    facts.raise(side, to, because.lesson, lesson);
    return true;
  }

  private restart(): void {
    this.goBack(0);
    this.restarts++;
    this.untilRestart = restartAfter * luby(this.restarts);
    if (this.lessons.kept > this.mostKept || this.lessons.isNearlyFull()) {
      this.mostKept += 200;
      if (!this.lessons.thin()) this.closed = true;
    }
    if (this.conflicts >= this.turnEnds) this.nextTurn();
  }

  /** After a turn for any sooner finish, one for the bound; there the aim is lowered each time it proves too hard. */
  private nextTurn(): void {
    const least = this.sureFinish();
    if (this.aim < 0) this.givenUp = this.best - 1;
    else this.givenUp = this.aim;
    if (this.givenUp > least) {
      this.aim = (least + this.givenUp) >> 1;
      this.turnEnds = this.conflicts + (this.effort >> 2);
      return;
    }
    this.aim = -1;
    this.effort *= 2;
    this.turnEnds = this.conflicts + this.effort;
  }

  private aimIsSettled(): boolean {
    return this.aim >= 0 && this.facts.depth === 0 && this.sureFinish() > this.aim;
  }

  private nextAim(): void {
    const least = this.sureFinish();
    if (least < this.givenUp) this.aim = (least + this.givenUp) >> 1;
    else {
      this.aim = -1;
      this.effort *= 2;
      this.turnEnds = this.conflicts + this.effort;
    }
  }

  /** All starts are known, and nothing speaks against them. */
  private keepSchedule(): void {
    for (let i = 0; i < this.plain.count; i++) this.start[i] = this.facts.value[2 * i]! * this.unit;
    this.best = this.facts.value[this.finishSide]!;
    this.found = true;
    this.askForSooner();
  }

  private askForSooner(): void {
    this.goBack(0);
    if (!this.facts.raise(this.finishSide + 1, 1 - this.best, because.tried, 0)) this.closed = true;
  }

  /** Tries an answer to one open question; false where none is open. */
  private tryOne(): boolean {
    const { facts, lessons, urgency } = this;
    const { value } = facts;
    const { count } = this.plain;
    if (facts.depth === 0 && this.aim >= 0 && -value[this.finishSide + 1]! > this.aim) {
      facts.deeper();
      return facts.raise(this.finishSide + 1, -this.aim, because.tried, 0);
    }
    for (let question = urgency.take(); question >= 0; question = urgency.take()) {
      const x = lessons.figureOf(question);
      const k = question - lessons.questionFrom[x]! + facts.first[2 * x]! + 1;
      if (value[2 * x]! >= k || -value[2 * x + 1]! < k) continue;
      facts.deeper();
      return x > count ? facts.raise(2 * x, 1, because.tried, 0) : facts.raise(2 * x + 1, 1 - k, because.tried, 0);
    }
    let pick = -1;
    for (let i = 0; i <= count; i++) {
      const [soonest, latest] = [value[2 * i]!, -value[2 * i + 1]!];
      if (soonest === latest) continue;
      if (pick < 0 || soonest < value[2 * pick]! || (soonest === value[2 * pick]! && latest < -value[2 * pick + 1]!))
        pick = i;
    }
    if (pick < 0) return false;
    facts.deeper();
    return facts.raise(2 * pick + 1, -value[2 * pick]!, because.tried, 0);
  }

  /** The soonest finish that is not excluded, whatever is being tried. */
  private sureFinish(): number {
    const { facts, finishSide } = this;
    return facts.depth === 0 ? facts.value[finishSide]! : facts.before(finishSide, facts.begins[1]!);
  }

  private goBack(depth: number): void {
    const { facts } = this;
    if (facts.depth <= depth) return;
    const size = facts.begins[depth + 1]!;
    while (facts.size > size) this.takenOff(facts.takeOff());
    facts.depth = depth;
    if (this.followed > facts.size) this.followed = facts.size;
  }

  /** Undoes what hangs on the entry just taken off. */
  private takenOff(side: number): void {
    const { facts, lessons, urgency } = this;
    const entry = facts.size;
    const x = side >> 1;
    if (x < this.plain.count) this.room.forget(x);
    const [was, now] = [facts.from[entry]!, facts.to[entry]!];
    const question = lessons.question(side, (side & 1) === 0 ? was + 1 : now);
    for (let n = 0; n < now - was; n++) urgency.putBack(question + n);
  }

  /** Draws all that follows from what is known; false where that cannot be. */
  private follow(): boolean {
    const { facts, room, lessons, orders } = this;
    const { count } = this.plain;
    for (;;) {
      while (this.followed < facts.size) {
        const entry = this.followed++;
        const side = facts.side[entry]!;
        for (let a = orders.arcFrom[side]!; a < orders.arcFrom[side + 1]!; a++)
          if (!this.followArc(orders.arc[a]!)) return false;
        for (let a = orders.heldFrom[side]!; a < orders.heldFrom[side + 1]!; a++)
          if (!this.followArc(orders.heldBy[a]!)) return false;
        if (!lessons.follow(side, facts.from[entry]!, facts.to[entry]!)) return false;
        if (side < 2 * count && !room.note(side >> 1)) return false;
      }
      if (!room.push()) return false;
      if (this.followed === facts.size) return true;
    }
  }

  private followArc(arc: number): boolean {
    const { facts, orders } = this;
    const { value } = facts;
    const onlyIf = orders.onlyIf[arc]!;
    const sum = value[orders.tail[arc]!]! + orders.weight[arc]!;
    const head = orders.head[arc]!;
    if (onlyIf < 0 || value[onlyIf]! >= orders.needs[arc]!)
      return value[head]! >= sum || facts.raise(head, sum, because.arc, arc);
    if (sum + value[head ^ 1]! > 0) return facts.raise(onlyIf ^ 1, 1 - orders.needs[arc]!, because.tooLate, arc);
    return true;
  }
}

/** Whether a case is small enough for a proof to be tried: its questions are held one by one. */
export function proofFits(plain: ProofCase, upperBound: number): boolean {
  const unit = plain.duration.reduce(greatestShared, 0) || 1;
  return plain.count <= 2000 && (plain.count * upperBound) / unit <= mostQuestions;
}

/** How soon and how late each activity can start by the chains alone, then the finish, then who goes first. */
function windows(plain: ProofCase, duration: Int32Array, horizon: number, pairs: number) {
  const { count, afterFrom, after } = plain;
  const least = new Int32Array(count + 1 + pairs);
  const most = new Int32Array(count + 1 + pairs).fill(1);
  for (let i = 0; i < count; i++) {
    const finish = least[i]! + duration[i]!;
    least[count] = Math.max(least[count]!, finish);
    for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++) least[after[a]!] = Math.max(least[after[a]!]!, finish);
  }
  most[count] = horizon;
  for (let i = count - 1; i >= 0; i--) {
    most[i] = horizon - duration[i]!;
    for (let a = afterFrom[i]!; a < afterFrom[i + 1]!; a++)
      most[i] = Math.min(most[i]!, most[after[a]!]! - duration[i]!);
  }
  const tail = new Int32Array(count);
  for (let i = 0; i < count; i++) tail[i] = horizon - most[i]! - duration[i]!;
  least[count] = Math.max(least[count]!, workBound(plain, duration, least, tail));
  return { least, most };
}

function greatestShared(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y > 0) [x, y] = [y, x % y];
  return x;
}

/** The sequence 1, 1, 2, 1, 1, 2, 4, … from n = 1. */
function luby(n: number): number {
  let k = 1;
  while (2 ** k - 1 < n) k++;
  return n === 2 ** k - 1 ? 2 ** (k - 1) : luby(n - 2 ** (k - 1) + 1);
}
