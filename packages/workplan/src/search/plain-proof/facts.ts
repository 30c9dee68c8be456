/**
 * What is known of each figure (a start, or which of two goes first) at this point of the search, and why.
 *
 * A figure x has two sides: side 2x holds "at least", side 2x + 1 holds "at most" as its negative. So one comparison
 * serves both: side s is known to `value[s]`, the fact (s, k) is true where value[s] ≥ k, and its opposite is the
 * fact (s ^ 1, 1 − k). Facts only grow within a level; going back a level takes them off again in reverse.
 */
export const because = {
  /** tried, or true from the outset */
  tried: 0,
  /** a chain: ref is an arc of Orders */
  arc: 1,
  /** an earlier lesson: ref is its place in Lessons */
  lesson: 2,
  /** one cannot go before the other: ref is an arc of Orders */
  tooLate: 3,
  /** no room at minute ref */
  room: 4,
} as const;

export class Facts {
  readonly figures: number;
  readonly value: Int32Array;
  /** what each side was known to at the outset */
  readonly first: Int32Array;
  /** newest entry of each side, or −1 */
  readonly last: Int32Array;
  readonly side: Int32Array;
  readonly to: Int32Array;
  readonly from: Int32Array;
  readonly earlier: Int32Array;
  readonly level: Int32Array;
  readonly why: Uint8Array;
  readonly ref: Int32Array;
  size = 0;
  depth = 0;
  /** where each level begins in the entries */
  readonly begins: Int32Array;
  /** the fact that could not be added; side −1 where there is no room at minute `brokenRef` */
  brokenSide = 0;
  brokenTo = 0;
  brokenWhy = 0;
  brokenRef = 0;

  constructor(least: Int32Array, most: Int32Array) {
    this.figures = least.length;
    this.value = new Int32Array(2 * this.figures);
    let entries = 16;
    for (let x = 0; x < this.figures; x++) {
      this.value[2 * x] = least[x]!;
      this.value[2 * x + 1] = -most[x]!;
      entries += most[x]! - least[x]! + 2;
    }
    this.first = this.value.slice();
    this.last = new Int32Array(2 * this.figures).fill(-1);
    this.side = new Int32Array(entries);
    this.to = new Int32Array(entries);
    this.from = new Int32Array(entries);
    this.earlier = new Int32Array(entries);
    this.level = new Int32Array(entries);
    this.why = new Uint8Array(entries);
    this.ref = new Int32Array(entries);
    this.begins = new Int32Array(entries + 2);
  }

  /** Adds the fact (side, k); false where it contradicts what is known. */
  raise(side: number, k: number, why: number, ref: number): boolean {
    const was = this.value[side]!;
    if (was >= k) return true;
    if (k + this.value[side ^ 1]! > 0) {
      this.brokenSide = side;
      this.brokenTo = k;
      this.brokenWhy = why;
      this.brokenRef = ref;
      return false;
    }
    const entry = this.size++;
    this.side[entry] = side;
    this.to[entry] = k;
    this.from[entry] = was;
    this.earlier[entry] = this.last[side]!;
    this.level[entry] = this.depth;
    this.why[entry] = why;
    this.ref[entry] = ref;
    this.last[side] = entry;
    this.value[side] = k;
    return true;
  }

  /** Takes the newest entry off and returns its side. */
  takeOff(): number {
    const entry = --this.size;
    const side = this.side[entry]!;
    this.value[side] = this.from[entry]!;
    this.last[side] = this.earlier[entry]!;
    return side;
  }

  deeper(): void {
    this.begins[++this.depth] = this.size;
  }

  /** What the side was known to before that entry. */
  before(side: number, entry: number): number {
    let at = this.last[side]!;
    let known = this.value[side]!;
    while (at >= entry) {
      known = this.from[at]!;
      at = this.earlier[at]!;
    }
    return known;
  }

  /** The entry that made the fact true, or −1 where it was true at the outset. */
  maker(side: number, k: number): number {
    let at = this.last[side]!;
    while (at >= 0 && this.from[at]! >= k) at = this.earlier[at]!;
    return at;
  }
}
