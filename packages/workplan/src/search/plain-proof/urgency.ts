/**
 * Which question to ask next: the one that stood most in recent lessons. A heap by urgency, of questions numbered
 * from 0; those never met in a lesson are not in it.
 */
export class Urgency {
  private readonly urgency: Float64Array;
  private readonly heap: Int32Array;
  private readonly place: Int32Array;
  private size = 0;
  private step = 1;

  constructor(questions: number) {
    this.urgency = new Float64Array(questions);
    this.heap = new Int32Array(questions);
    this.place = new Int32Array(questions).fill(-1);
  }

  bump(question: number): void {
    this.urgency[question]! += this.step;
    if (this.urgency[question]! > 1e100) {
      for (let q = 0; q < this.urgency.length; q++) this.urgency[q]! *= 1e-100;
      this.step *= 1e-100;
    }
    const place = this.place[question]!;
    if (place >= 0) this.up(place);
  }

  fade(share: number): void {
    this.step /= share;
  }

  /** Puts a question back, if it was ever met. */
  putBack(question: number): void {
    if (this.place[question]! >= 0 || this.urgency[question] === 0) return;
    this.heap[this.size] = question;
    this.place[question] = this.size;
    this.up(this.size++);
  }

  /** Takes the most urgent question, or −1 where there is none. */
  take(): number {
    if (this.size === 0) return -1;
    const top = this.heap[0]!;
    this.place[top] = -1;
    const last = this.heap[--this.size]!;
    if (this.size > 0) {
      this.heap[0] = last;
      this.place[last] = 0;
      this.down(0);
    }
    return top;
  }

  private up(from: number): void {
    const { heap, place, urgency } = this;
    let at = from;
    const question = heap[at]!;
    const own = urgency[question]!;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (urgency[heap[above]!]! >= own) break;
      heap[at] = heap[above]!;
      place[heap[at]!] = at;
      at = above;
    }
    heap[at] = question;
    place[question] = at;
  }

  private down(from: number): void {
    const { heap, place, urgency, size } = this;
    let at = from;
    const question = heap[at]!;
    const own = urgency[question]!;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= size) break;
      if (below + 1 < size && urgency[heap[below + 1]!]! > urgency[heap[below]!]!) below++;
      if (urgency[heap[below]!]! <= own) break;
      heap[at] = heap[below]!;
      place[heap[at]!] = at;
      at = below;
    }
    heap[at] = question;
    place[question] = at;
  }
}
