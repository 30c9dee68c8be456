import type { Minute } from '../../problem.ts';
import type { Compiled } from '../compiled.ts';

/**
 * The minutes of the days' work put end to end, so that a plan's time is counted in places that can be worked in.
 * Each stretch has one place more than it has minutes: its end, at which only a step of no minutes can stand.
 */
export interface WorkMinutes {
  readonly count: number;
  /** by place: its minute */
  readonly minute: Int32Array;
  /** by minute up to horizon + 1: the first place at or after it; `count` where there is none */
  readonly placeFrom: Int32Array;
  /** by place: which part of the day's work it is in, for prices; the end of a stretch is in none (−1) */
  readonly part: Int32Array;
  readonly parts: number;
  /** first and last place of each stretch, the day it is in, in order of time */
  readonly stretches: readonly { readonly first: number; readonly last: number; readonly day: number }[];
  /** by place: 1 where the keeper is there and free of what is under way */
  readonly keeperFree: Uint8Array;
  /** by place: how many hands are */
  readonly handsFree: Uint8Array;
  /** by place: 1 where rain reaches what lies outside */
  readonly rain: Uint8Array;
}

/** @param longest_min  no part of a stretch that has one price is longer. ≥ 1 */
export function workMinutes(compiled: Compiled, longest_min: Minute): WorkMinutes {
  const { horizon } = compiled;
  const count = compiled.stretches.reduce((sum, { from, to }) => sum + to - from + 1, 0);
  const minute = new Int32Array(count);
  const part = new Int32Array(count).fill(-1);
  const keeperFree = new Uint8Array(count);
  const handsFree = new Uint8Array(count);
  const rain = new Uint8Array(count);
  const busy = compiled.absent.map((away) => Uint8Array.from(away));
  for (const { source, fixed } of compiled.steps)
    if (source.progress.kind === 'under way')
      for (const hand of fixed!.hands) busy[hand]!.fill(1, Math.max(0, fixed!.start), Math.max(0, fixed!.finish));
  const stretches: { first: number; last: number; day: number }[] = [];
  let place = 0;
  let parts = -1;
  for (const { day, from, to } of compiled.stretches) {
    const first = place;
    let since = -1;
    for (let at = from; at < to; at++, place++) {
      minute[place] = at;
      keeperFree[place] = busy.length > 0 && busy[0]![at] === 0 ? 1 : 0;
      handsFree[place] = busy.reduce((sum, away) => sum + (away[at] === 0 ? 1 : 0), 0);
      rain[place] = compiled.nextRain[at] === at ? 1 : 0;
      // hours differ in weather; who is there may change in between
      const isNew =
        at === from || at - since >= longest_min || at % 60 === 0 || handsFree[place] !== handsFree[place - 1];
      if (isNew) {
        parts++;
        since = at;
      }
      part[place] = parts;
    }
    minute[place] = to;
    place++;
    stretches.push({ first, last: place - 1, day });
  }
  const placeFrom = new Int32Array(horizon + 2).fill(count);
  let next = count;
  for (let at = horizon + 1, p = count - 1; at >= 0; at--) {
    while (p >= 0 && minute[p]! >= at) next = p--;
    placeFrom[at] = next;
  }
  return { count, minute, placeFrom, part, parts: parts + 1, stretches, keeperFree, handsFree, rain };
}
