/** Waits as hatched bars at the right of a day, side by side where they overlap, each with its name beside it. */
import type { Minute, Plan, Problem } from '#workplan';
import { clockAt, whenInWords } from '../place-time.ts';
import type { DayScale } from './day-scale.ts';
import type { Measure } from './text-size.ts';

const barWidth = 13;
const tightBar = 12;
const pitch = 33;
const tightPitch = 17;
const textSize = 13;

export interface WaitBar {
  readonly key: string;
  readonly title: string;
  readonly from: Minute;
  readonly to: Minute;
  /** from the left of the waits. [px] */
  readonly left: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  /** it comes in from the day before, or goes on past the day's end */
  readonly comesIn: boolean;
  readonly goesOn: boolean;
  readonly tooCold: boolean;
  /** the words along the bar; null where there is no room for them beside it and `letter` stands for it */
  readonly name: { readonly text: string; readonly top: number } | null;
  readonly letter: string | null;
}

interface Request {
  readonly problem: Problem;
  readonly plan: Plan;
  readonly from: Minute;
  readonly to: Minute;
  readonly scale: DayScale;
  readonly measure: Measure;
  /** width there is for waits. [px] */
  readonly room: number;
}

/** Width that the waits of a day take. 0 where there is none */
export function waitsWidth(request: Request): number {
  const bars = placeWaits(request);
  return bars.length === 0 ? 0 : Math.max(...bars.map((b) => b.left + (b.letter === null ? pitch : tightPitch))) + 5;
}

export function placeWaits(request: Request): WaitBar[] {
  const named = placed(request, true);
  const lanes = Math.max(0, ...named.map((b) => b.left / pitch + 1));
  return lanes * pitch <= request.room ? named : placed(request, false);
}

function placed({ problem, plan, from, to, scale, measure }: Request, withNames: boolean): WaitBar[] {
  const waits = plan.waits
    .filter((w) => w.finish > w.start && w.start < to && w.finish > from)
    .sort((a, b) => a.start - b.start || b.finish - a.finish);
  /** how far down each lane is taken */
  const lanes: number[] = [];
  return waits.map((w, i) => {
    const title = waitTitle(problem, w.step, w.wait);
    const top = scale.y(w.start);
    const bottom = scale.y(w.finish);
    const goesOn = w.finish > to;
    const text = goesOn ? title : `${title}, until ${clockAt(problem, w.finish)}`;
    const length = measure(text, textSize) + 6;
    const nameTop = Math.max(0, Math.min(top + 4, scale.height - length));
    const first = withNames ? Math.min(top, nameTop) : top;
    const last = withNames ? Math.max(bottom, nameTop + length) : Math.max(bottom, top + 16);
    let lane = lanes.findIndex((taken) => taken + 6 <= first);
    if (lane < 0) lane = lanes.length;
    lanes[lane] = last;
    return {
      key: `${w.step}-${w.wait}`,
      title,
      from: w.start,
      to: w.finish,
      left: lane * (withNames ? pitch : tightPitch),
      top,
      bottom: Math.max(bottom, top + 3),
      width: withNames ? barWidth : tightBar,
      comesIn: w.start < from,
      goesOn,
      tooCold: w.tooCold,
      name: withNames ? { text, top: nameTop } : null,
      letter: withNames ? null : 'abcdefghijklmnopqrstuvwxyz'.charAt(i % 26),
    };
  });
}

export function waitTitle(problem: Problem, step: string, wait: string): string {
  const found = problem.steps.find((s) => s.id === step)?.waits.find((w) => w.id === wait);
  return found?.title ?? 'wait';
}

/** What stands at the foot of a day: each wait that goes on overnight, how cold it gets, and when it ends. */
export function overnightInWords(problem: Problem, plan: Plan, to: Minute): { lead: string; ends: string[] } | null {
  const going = plan.waits.filter((w) => w.start < to && w.finish > to).sort((a, b) => a.finish - b.finish);
  if (going.length === 0) return null;
  const until = Math.max(...going.map((w) => w.finish));
  const hours = problem.hours.slice(Math.floor(to / 60), Math.ceil(until / 60));
  const coldest = Math.round(Math.min(...hours.map((h) => h.air_C)));
  const guessed = hours.some((h) => h.basis === 'climate');
  return {
    lead: `overnight, down to ${coldest} °C${guessed ? ' (cautious figure)' : ''}`,
    ends: going.map((w) => {
      const end = `${waitTitle(problem, w.step, w.wait)}: over at ${whenInWords(problem, w.finish, to)}`;
      return w.tooCold ? `${end}; too cold for part of it, it may never reach its strength` : end;
    }),
  };
}

/** What stands at the head of a day: waits that ended since the job day before. */
export function endedSince(problem: Problem, plan: Plan, before: Minute, from: Minute): string[] {
  return plan.waits
    .filter((w) => w.start < before && w.finish > before && w.finish <= from)
    .map((w) => `${waitTitle(problem, w.step, w.wait)}: over at ${whenInWords(problem, w.finish, from)}`);
}
