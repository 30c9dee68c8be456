/** A wait of a plan in sentences: what it takes as its product says, how it grows in the cold, and what it may never reach. */
import { belowMinimum } from '#materials';
import { showNumber } from '#units';
import type { Problem, Wait } from '#workplan';
import { lengthInWords } from './when-in-words.ts';

/** Said from this much more than the product's own time on. */
const tellsFrom = 1.1;

/**
 * What a wait takes and why, as it falls in the plan; empty for a set time and for what never cures. The first sentence says
 * whose figure it goes by; one more where it is longer for the cold or the damp; one more where it meets hours below its least
 * temperature.
 *
 * @param start, finish  minutes of the plan; `finish` the end of what is planned where `over` is false
 */
export function waitCourseInWords(
  { law }: Pick<Wait, 'law'>,
  { start, finish, over = true }: { readonly start: number; readonly finish: number; readonly over?: boolean },
  problem: Pick<Problem, 'hours'>,
): string[] {
  if (law.kind === 'set time' || law.kind === 'never cures') return [];
  const own_min = law.kind === 'moisture' ? (law.depth_mm / law.firstDay_mm) ** 2 * 1440 : law.atReference_min;
  const at = `${degrees(law.reference_C)}${law.kind === 'moisture' ? ` and ${showNumber(law.reference_pct, 0)} % of humidity` : ''}`;
  const says = law.from === 'the tin' ? 'From the tin' : 'Our figure; the tin wins';
  const hours = problem.hours.slice(
    Math.floor(start / 60),
    Math.max(Math.floor(start / 60) + 1, Math.ceil(finish / 60)),
  );
  const felt = hours.map((hour) => hour.surface_C ?? hour.air_C);
  const [coolest, warmest] = [Math.min(...felt), Math.max(...felt)];
  const lines = [`${says}: ${lengthInWords(own_min)} at ${at}.`];
  const length = finish - start;
  const damp = law.kind === 'dries' ? hours.filter((hour) => hour.humidity_pct >= law.stopsAt_pct).length : 0;
  if (!over) lines.push('It is not over by the end of what is planned.');
  else if (length > tellsFrom * own_min)
    lines.push(
      `It grows to ${lengthInWords(length)}: the hours it runs through have ${span(coolest, warmest)}${damp === 0 ? '' : `, and ${damp === 1 ? 'one of them is' : `${damp} of them are`} too damp for it to dry`}.`,
    );
  const cold = hours.filter((hour) => belowMinimum(law, hour)).length;
  if (cold > 0)
    lines.push(
      `In ${cold === 1 ? 'one hour' : `${cold} hours`} it is below ${degrees(law.minimum_C)}: it makes no progress then, and may never reach its strength.`,
    );
  return lines;
}

const degrees = (value: number) => `${showNumber(value, value % 1 === 0 ? 0 : 1)} °C`;
const span = (low: number, high: number) =>
  Math.round(low) === Math.round(high)
    ? degrees(Math.round(low))
    : `${showNumber(Math.round(low), 0)} to ${degrees(Math.round(high))}`;
