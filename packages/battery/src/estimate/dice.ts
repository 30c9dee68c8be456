/** A seeded source of chance: the same seed gives the same numbers on every machine (mulberry32, public domain). */
export class Dice {
  private state: number;
  private spare = Number.NaN;

  constructor(seed: number) {
    this.state = Math.imul((seed | 0) + 0x51ed270b, 0x9e3779b1);
  }

  /** from 0, under 1 */
  share(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    const a = this.state;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  /** a whole number from 0, under `count` */
  below(count: number): number {
    return Math.floor(this.share() * count);
  }

  /** a draw of the standard normal distribution (G. Marsaglia's polar method) */
  normal(): number {
    if (!Number.isNaN(this.spare)) {
      const kept = this.spare;
      this.spare = Number.NaN;
      return kept;
    }
    for (;;) {
      const a = 2 * this.share() - 1;
      const b = 2 * this.share() - 1;
      const s = a * a + b * b;
      if (s >= 1 || s === 0) continue;
      const size = Math.sqrt((-2 * Math.log(s)) / s);
      this.spare = b * size;
      return a * size;
    }
  }
}
