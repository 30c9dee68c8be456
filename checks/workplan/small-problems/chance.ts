import type { Rule } from '#workplan';

/** What a small problem is asked to be like. */
export interface SmallProblemOptions {
  /**
   * 'all': any rule may come up. A list: these rules come up often and others seldom, so that they bite.
   * Default 'all'.
   */
  readonly rules?: 'all' | readonly Rule[];
  /**
   * 'tiny': one job day, 2–4 steps; 'small': one or two job days, 3–9 steps; 'middling': two or three longer job
   * days, 8–13 steps. Default 'small'.
   */
  readonly size?: 'tiny' | 'small' | 'middling';
  /**
   * Every figure of time a multiple of five minutes, waits of set times only and no abrading, so that brute force
   * may step by five. Default false.
   */
  readonly onFives?: boolean;
}

/** Draws for one problem. Stored answers go by the seed, so the draws and their order may not change. */
export interface Chance {
  readonly tiny: boolean;
  readonly middling: boolean;
  readonly onFives: boolean;
  /** true with this chance */
  chance(of: number): boolean;
  /** whole number from..to, both included */
  whole(from: number, to: number): number;
  /** multiple of five from..to, both included */
  fives(from: number, to: number): number;
  one<T>(of: readonly T[]): T;
  /** whether something of these rules comes up: often where they are asked for, seldom where others are */
  often(chance: number, ...named: Rule[]): boolean;
  asked(...named: Rule[]): boolean;
}

/** The same draws for the same seed and options on every machine (mulberry32, public domain). */
export function chanceFrom(
  seed: number,
  { rules = 'all', size = 'small', onFives = false }: SmallProblemOptions,
): Chance {
  let a = Math.imul(seed + 1, 0x9e3779b1) >>> 0;
  const next = () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const chance = (of: number) => next() < of;
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  const asked = (...named: Rule[]) => rules !== 'all' && named.some((rule) => rules.includes(rule));
  return {
    tiny: size === 'tiny',
    middling: size === 'middling',
    onFives,
    chance,
    whole,
    fives: (from, to) => 5 * whole(from / 5, to / 5),
    one: (of) => of[whole(0, of.length - 1)]!,
    often: (of, ...named) => chance(rules === 'all' ? of : asked(...named) ? 0.8 : of / 4),
    asked,
  };
}
