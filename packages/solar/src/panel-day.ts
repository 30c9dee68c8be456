import { dayOfYear } from '#sky';
import { addDays, instantAt, localAt } from '#units';
import { type Band, bandOf, bandOfProducts } from './band.ts';
import { type Clouds, lightsOf } from './clouds.ts';
import { type PanelCase, type PanelSteps, panelSteps, stepsAh } from './panel-steps.ts';
import { keptFactors } from './sun-kept.ts';

/** What a panel brings in a day, and what it is worked out from. */
export interface PanelDay {
  /** in 9 of 10, before the battery says what it takes. [Ah] */
  readonly brought_Ah: Band;
  /** the same before the rig and the label's promise are taken off. [Ah] */
  readonly unshaded_Ah: Band;
  /** of a clear day on the panel and on level ground. [kWh/m²] */
  readonly clearOnPanel_kWh: number;
  readonly clearDay_Ah: number;
}

/**
 * Ampere-hours a panel brings in a day.
 *
 * @param zone    of the place's clocks, by which the day and the hours of a cloud forecast go
 * @param clouds  what is said of the sky; without it, the season's days
 *
 * Not covered: snow on the panel, hills, a boat that swings with a panel that is not level.
 */
export function panelDay(asked: PanelCase, day: string, zone: string, clouds: Clouds): PanelDay {
  const { steps, clock } = stepsOfDay(asked, day, zone);
  const lights = lightsOf(clouds, asked.place.latitude_deg, dayOfYear(steps.from));
  const ways = lights.map((light) => stepsAh(steps, light, clock));
  const factors = keptFactors(asked.kept);
  const hours = steps.step_min / 60;
  return {
    brought_Ah: bandOfProducts(ways, factors),
    unshaded_Ah: bandOf(ways),
    clearOnPanel_kWh: (steps.clear_W_m2.reduce((sum, each) => sum + each, 0) * hours) / 1000,
    clearDay_Ah: stepsAh(steps, { covered: Float64Array.of(0), under: 0, open: 1 }, clock),
  };
}

/** A day of the clocks in hours, with the hour of the clock that each is. */
export function stepsOfDay(
  asked: PanelCase,
  day: string,
  zone: string,
): { readonly steps: PanelSteps; readonly clock: Int32Array } {
  const start = instantAt(day, '00:00', zone);
  const hours = Math.round((instantAt(addDays(day, 1), '00:00', zone) - start) / 3_600_000);
  return {
    steps: panelSteps(asked, start, 60, hours),
    clock: Int32Array.from({ length: hours }, (_, i) =>
      Math.floor(localAt(start + (i + 0.5) * 3_600_000, zone).minuteOfDay / 60),
    ),
  };
}
