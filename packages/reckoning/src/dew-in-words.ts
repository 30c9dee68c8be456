/** What a coat's step says of the dew: by when it is to be on, why, and whose figures those are. */
import { type CureLaw, eveningStop, leastDewMargin_C } from '#materials';
import { dewMargin_C } from '#sky';
import { showNumber } from '#units';
import { type PlannedStep, type Problem, type ProblemStep, touchDryAfter, type Wait, waitAfter } from '#workplan';
import { lengthInWords, localMinute } from './when-in-words.ts';

/** Hours looked ahead for the evening's dew. */
const evening_h = 18;

/** Nothing under a roof or inside, nor where no dew comes near it. */
export function dewReason(step: ProblemStep, planned: PlannedStep, problem: Problem): string[] {
  if (!step.wet || step.needs.dewMargin_min_C === undefined) return [];
  if (problem.zones.find((zone) => zone.id === step.zone)?.inside) return [];
  const coat = step.waits.find(({ needs }) => needs.beforeDew !== undefined);
  return coat === undefined ? toldOnly(planned, problem) : keptTo(coat, planned, problem);
}

/** By the plan's own rule: when it is dry to the touch, when the dew comes near, and so by when it is to be on. */
function keptTo(wait: Wait, { finish }: PlannedStep, problem: Problem): string[] {
  const { dewMargin_min_C, touchDry } = wait.needs.beforeDew!;
  const near = nextNear(finish, dewMargin_min_C, problem);
  if (near === null) return [];
  const dryAfter = (minute: number) =>
    touchDryAfter(
      wait.needs.beforeDew!,
      minute,
      waitAfter(wait, minute, problem.hours).finish ?? problem.horizon,
      problem.hours,
    );
  let latest = finish;
  while (latest < near && dryAfter(latest + 1) <= near) latest++;
  const clock = (minute: number) => localMinute(minute, problem).clock;
  return [
    `Be done by ${clock(latest)}, to be dry to the touch before dew: as planned it is at ${clock(dryAfter(finish))} (${timeInWords(touchDry)}), and from ${clock(near)} what lies under a clear sky is less than ${showNumber(dewMargin_min_C, dewMargin_min_C % 1 === 0 ? 0 : 1)} °C over the dew point${dewMargin_min_C === leastDewMargin_C ? ' (the margin of ISO 8502-4)' : ''}.`,
  ];
}

/** `3 h at 20 °C, our figure; the tin wins` */
function timeInWords(law: CureLaw): string {
  const whose = law.from === 'the tin' ? 'by the tin' : 'our figure; the tin wins';
  if (law.kind === 'set time') return `${lengthInWords(law.minutes)}, ${whose}`;
  return 'atReference_min' in law
    ? `${lengthInWords(law.atReference_min)} at ${showNumber(law.reference_C, 0)} °C, ${whose}`
    : whose;
}

/** The first minute of an hour in the evening ahead that has less than the margin; null: none. */
function nextNear(from: number, margin_C: number, { hours }: Problem): number | null {
  const first = Math.floor(from / 60);
  for (let index = first; index < Math.min(hours.length, first + evening_h); index++) {
    const hour = hours[index]!;
    if (!hour.sheltered && dewMargin_C(hour) < margin_C) return Math.max(from, index * 60);
  }
  return null;
}

/** Of a coat without a wait the plan knows no time to keep to: the practice of 2 to 3 h before the dew is told. */
function toldOnly(planned: PlannedStep, problem: Problem): string[] {
  const first = Math.floor((planned.finish - 1) / 60);
  const hours = problem.hours.slice(first, first + evening_h);
  if (hours.length === 0 || hours.some((hour) => hour.sheltered)) return [];
  const found = eveningStop(
    hours.map((hour, i) => {
      const middle = (first + i) * 60 + 30;
      return { ...hour, dark: !problem.daylight.some((light) => light.from <= middle && middle < light.to) };
    }),
  );
  const clock = (minute: number) => localMinute(first * 60 + minute, problem).clock;
  if (found.kind === 'no dew') return [];
  if (found.kind === 'too late') return [`Late for a coat that faces the sky: ${found.because}.`];
  const dew =
    found.dew === null
      ? 'the damp of the evening comes near it'
      : `dew is likely on it from ${clock(found.dew)} under a clear sky`;
  return [`Be done by ${clock(found.by)} where it faces the sky: ${dew}.`];
}
