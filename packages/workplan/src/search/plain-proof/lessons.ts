import { because, type Facts } from './facts.ts';

const headWords = 4; // facts in it, depth (levels it spans; 0: to be dropped), and for each of two watched facts the next lesson
const sizeAt = 0;
const spanAt = 1;
const nextAt = 2;

/**
 * Lessons: in each, at least one of its facts must hold. Two facts of each are watched; once one turns false the
 * lesson is looked at, and its last open fact is added. Kept in one array of fixed size, halved when it fills.
 */
export class Lessons {
  readonly store: Int32Array;
  private readonly facts: Facts;
  /** questions "is figure x at least k" are numbered from questionFrom[x] for k = first + 1 */
  readonly questionFrom: Int32Array;
  readonly questions: number;
  /** first watched fact that turns false with each fact, as lesson · 2 + (0 or 1), or −1 */
  private readonly watch: Int32Array;
  private readonly used: Uint8Array;
  end = 0;
  kept = 0;

  constructor(facts: Facts, words: number) {
    this.facts = facts;
    this.questionFrom = new Int32Array(facts.figures + 1);
    for (let x = 0; x < facts.figures; x++)
      this.questionFrom[x + 1] = this.questionFrom[x]! - facts.first[2 * x + 1]! - facts.first[2 * x]!;
    this.questions = this.questionFrom[facts.figures]!;
    this.watch = new Int32Array(2 * this.questions).fill(-1);
    this.store = new Int32Array(words);
    this.used = new Uint8Array(words / headWords + 1);
  }

  /** Number of the question a fact answers: (2x, k) and its opposite answer the same. */
  question(side: number, k: number): number {
    const x = side >> 1;
    const least = (side & 1) === 0 ? k : 1 - k;
    return this.questionFrom[x]! + least - this.facts.first[2 * x]! - 1;
  }

  private watchPlace(side: number, k: number): number {
    return (side & 1) * this.questions + this.question(side, k);
  }

  /** The figure a question is about. */
  figureOf(question: number): number {
    const { questionFrom } = this;
    let low = 0;
    let high = this.facts.figures - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (questionFrom[middle]! <= question) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  isNearlyFull(): boolean {
    return this.end > 0.75 * this.store.length;
  }

  hasRoomFor(count: number): boolean {
    return this.end + headWords + 2 * count <= this.store.length;
  }

  /** Keeps a lesson of two facts or more, of which the first two are watched, and returns its place. */
  keep(sides: Int32Array, tos: Int32Array, count: number, span: number): number {
    const { store } = this;
    const lesson = this.end;
    store[lesson + sizeAt] = count;
    store[lesson + spanAt] = span;
    for (let n = 0; n < count; n++) {
      store[lesson + headWords + 2 * n] = sides[n]!;
      store[lesson + headWords + 2 * n + 1] = tos[n]!;
    }
    this.end += headWords + 2 * count;
    this.kept++;
    this.used[lesson / headWords] = 1;
    this.attach(lesson, 0);
    this.attach(lesson, 1);
    return lesson;
  }

  size(lesson: number): number {
    return this.store[lesson + sizeAt]!;
  }

  sideOf(lesson: number, n: number): number {
    return this.store[lesson + headWords + 2 * n]!;
  }

  toOf(lesson: number, n: number): number {
    return this.store[lesson + headWords + 2 * n + 1]!;
  }

  /** Marks a lesson as having helped. */
  helped(lesson: number): void {
    this.used[(lesson / headWords) | 0] = 1;
  }

  private attach(lesson: number, which: number): void {
    const { store } = this;
    const at = lesson + headWords + 2 * which;
    const place = this.watchPlace(store[at]! ^ 1, 1 - store[at + 1]!);
    store[lesson + nextAt + which] = this.watch[place]!;
    this.watch[place] = 2 * lesson + which;
  }

  /** Looks at the lessons with a fact that turned false as a side went from `was` to `now`; false where one is broken. */
  follow(side: number, was: number, now: number): boolean {
    const { facts, store, watch } = this;
    const { value } = facts;
    const step = (side & 1) === 0 ? 1 : -1;
    let place = this.watchPlace(side, was + 1);
    for (let k = was + 1; k <= now; k++, place += step) {
      let before = -1; // where the link to the present lesson stands in the store; −1: in `watch`
      let link = watch[place]!;
      while (link >= 0) {
        const lesson = link >> 1;
        const which = link & 1;
        const nextLink = lesson + nextAt + which;
        const otherAt = lesson + headWords + 2 * (1 - which);
        const otherSide = store[otherAt]!;
        const otherTo = store[otherAt + 1]!;
        if (value[otherSide]! < otherTo) {
          const to = lesson + headWords + 2 * store[lesson + sizeAt]!;
          let at = lesson + headWords + 4;
          while (at < to && value[store[at]! ^ 1]! >= 1 - store[at + 1]!) at += 2;
          if (at < to) {
            const own = lesson + headWords + 2 * which;
            const swapSide = store[own]!;
            const swapTo = store[own + 1]!;
            store[own] = store[at]!;
            store[own + 1] = store[at + 1]!;
            store[at] = swapSide;
            store[at + 1] = swapTo;
            const next = store[nextLink]!;
            if (before < 0) watch[place] = next;
            else store[before] = next;
            this.attach(lesson, which);
            link = next;
            continue;
          }
          if (!facts.raise(otherSide, otherTo, because.lesson, lesson)) return false;
        }
        before = nextLink;
        link = store[nextLink]!;
      }
    }
    return true;
  }

  /**
   * Drops the lessons that helped least, at the outset level, and what has become sure of the others.
   *
   * @returns  false where a lesson is broken for good
   */
  thin(): boolean {
    const { facts, store, used } = this;
    const { value } = facts;
    const most = 64;
    const bySpan = new Int32Array(most + 1);
    for (let at = 0; at < this.end; at += headWords + 2 * store[at + sizeAt]!)
      bySpan[Math.min(most, store[at + spanAt]!)]!++;
    let span = 0;
    let sum = 0;
    while (span < most && sum + bySpan[span]! <= this.kept / 2) sum += bySpan[span++]!;
    this.watch.fill(-1);
    let to = 0;
    let kept = 0;
    let sound = true;
    const oldEnd = this.end;
    for (let at = 0; at < oldEnd; ) {
      const size = store[at + sizeAt]!;
      const own = store[at + spanAt]!;
      const next = at + headWords + 2 * size;
      const stays = own <= 2 || own < span || (used[(at / headWords) | 0] === 1 && own < 3 * span);
      used[(at / headWords) | 0] = 0;
      if (stays) {
        let count = 0;
        let sure = false;
        for (let n = 0; n < size; n++) {
          const side = store[at + headWords + 2 * n]!;
          const k = store[at + headWords + 2 * n + 1]!;
          if (value[side]! >= k) sure = true;
          if (value[side ^ 1]! >= 1 - k) continue;
          store[to + headWords + 2 * count] = side;
          store[to + headWords + 2 * count + 1] = k;
          count++;
        }
        if (!sure && count === 0) sound = false;
        else if (!sure && count === 1) {
          if (!facts.raise(store[to + headWords]!, store[to + headWords + 1]!, because.tried, 0)) sound = false;
        } else if (!sure) {
          store[to + sizeAt] = count;
          store[to + spanAt] = own;
          this.attach(to, 0);
          this.attach(to, 1);
          to += headWords + 2 * count;
          kept++;
        }
      }
      at = next;
    }
    this.end = to;
    this.kept = kept;
    return sound;
  }
}
