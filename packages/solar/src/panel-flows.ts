import { dayOfYear } from '#sky';
import { bandOfProducts } from './band.ts';
import { type Clouds, lightsOf } from './clouds.ts';
import { type PanelCase, panelSteps, stepAmps } from './panel-steps.ts';
import { keptFactors } from './sun-kept.ts';

/** What a panel may have brought over a stretch of time, positive into the battery. */
export interface PanelFlow {
  /** from 1970, ms */
  readonly from: number;
  readonly to: number;
  readonly low_A: number;
  readonly likely_A: number;
  readonly high_A: number;
}

/** Parts that a day's light is told in. */
const parts = 4;

/**
 * What a panel may have brought in each part of a day's light.
 *
 * @param light   sunrise to sunset of one day. [ms]
 * @param clouds  what is known of that day's sky; without it, the season's days. Cloud by the hour is taken as its mean
 * @returns       four parts of one length; the band is of the whole day, for it is the day that was dull or fair
 */
export function panelFlows(
  asked: PanelCase,
  light: { readonly start: number; readonly end: number },
  clouds: Clouds,
): PanelFlow[] {
  const step_min = (light.end - light.start) / 60_000 / parts;
  const steps = panelSteps(asked, light.start, step_min, parts);
  const lights = lightsOf(clouds, asked.place.latitude_deg, dayOfYear(light.start));
  const sums = new Float64Array(lights.length);
  const byPart = new Float64Array(parts);
  for (let n = 0; n < lights.length; n++) {
    const { covered, under, open } = lights[n]!;
    let mean = 0;
    for (const each of covered) mean += each / covered.length;
    for (let i = 0; i < parts; i++) {
      const amps = stepAmps(steps, i, mean, under, open);
      sums[n]! += amps;
      byPart[i]! += amps;
    }
  }
  const day = bandOfProducts(sums, keptFactors(asked.kept));
  const all = sums.reduce((sum, each) => sum + each, 0);
  return Array.from({ length: parts }, (_, i) => {
    const share = all > 0 ? byPart[i]! / all : 0;
    return {
      from: light.start + i * step_min * 60_000,
      to: light.start + (i + 1) * step_min * 60_000,
      low_A: day.low * share,
      likely_A: day.likely * share,
      high_A: day.high * share,
    };
  });
}
