import { dayOfYear } from '#sky';
import { type Clouds, type DayLight, lightOfClearness, lightsOf, placeMean } from './clouds.ts';
import { normalShare } from './normal.ts';
import { type PanelCase, type PanelSteps, panelSteps, stepAmps } from './panel-steps.ts';
import { assumedMeanClearness, assumedSeason, bend, clearnessAt } from './season-clearness.ts';
import { keptAt } from './sun-kept.ts';

/** Where chance comes from: a source of standard normal numbers, seeded by who asks. */
export interface NormalDice {
  normal(): number;
}

/** Amps into the battery, draw after draw, hour after hour, before the battery says what it takes. */
export interface SolarDraws {
  readonly draws: number;
  readonly hours: number;
  /** draws × hours */
  readonly amps: Float64Array;
  /** start of the first hour. [ms] */
  readonly from: number;
}

const hour = 3_600_000;

/**
 * What panels on one battery may bring over the coming days, in many courses of the weather.
 *
 * Each draw is one place among those of its latitude, sunnier or duller all through, and one course of days in which a day
 * keeps some of the luck of the day before (`assumedSeason.spell`); a day that a forecast speaks of keeps to it, and has its luck
 * within its band. What rig and label leave is the same all through a draw.
 *
 * @param panels  on one battery, under one sky
 * @param from    a whole hour. [ms]
 * @param clouds  what is said of a day, YYYY-MM-DD by the sun's noon
 * @throws RangeError for no panels, days or draws
 */
export function sunDraws(
  panels: readonly PanelCase[],
  {
    from,
    days,
    draws,
    clouds,
    clockHour,
    dice,
  }: {
    readonly from: number;
    readonly days: number;
    readonly draws: number;
    readonly clouds: (day: string) => Clouds;
    /** hour of the place's clock at an instant, for forecasts by the hour. 0–23 */
    readonly clockHour: (at: number) => number;
    readonly dice: NormalDice;
  },
): SolarDraws {
  const [first] = panels;
  if (first === undefined || !(days >= 1) || !(draws >= 1))
    throw new RangeError(
      `sun is drawn for a panel, a day and a draw at least, got ${panels.length}, ${days}, ${draws}`,
    );
  const hours = 24 * days;
  const all = panels.map((each) => panelSteps(each, from, 60, hours));
  const spans = daySpans(first.place.longitude_deg, from, hours);
  const { latitude_deg } = first.place;
  const told = spans.map(({ day, start, end }) => {
    const said = clouds(day);
    if (said.kind === 'season') return null;
    const clock = Int32Array.from({ length: hours }, (_, i) =>
      i < start || i >= end ? 0 : clockHour(from + (i + 0.5) * hour),
    );
    const lights = lightsOf(said, latitude_deg, dayOfYear(from + start * hour)).map((light) => ({
      light,
      sum: sumOver(all, light, clock, start, end),
    }));
    return { lights: lights.sort((a, b) => a.sum - b.sum).map(({ light }) => light), clock };
  });
  // a season does not turn within the days looked at
  const mean = assumedMeanClearness(latitude_deg, dayOfYear(from + (hours / 2) * hour));
  const rest = Math.sqrt(1 - assumedSeason.spell ** 2);
  const amps = new Float64Array(draws * hours);
  const kept = new Float64Array(all.length);
  for (let draw = 0; draw < draws; draw++) {
    const gamma = bend(placeMean(mean, dice.normal()));
    for (let p = 0; p < all.length; p++) kept[p] = keptAt(panels[p]!.kept, dice.normal(), dice.normal());
    let luck = dice.normal();
    for (let d = 0; d < spans.length; d++) {
      if (d > 0) luck = assumedSeason.spell * luck + rest * dice.normal();
      const { start, end } = spans[d]!;
      const said = told[d]!;
      const share = normalShare(luck);
      const light =
        said === null
          ? lightOfClearness(clearnessAt(gamma, share))
          : said.lights[Math.min(said.lights.length - 1, Math.floor(share * said.lights.length))]!;
      const { covered, under, open } = light;
      for (let i = start; i < end; i++) {
        const cover = covered.length === 1 ? covered[0]! : covered[said!.clock[i]!]!;
        let sum = 0;
        for (let p = 0; p < all.length; p++) sum += kept[p]! * stepAmps(all[p]!, i, cover, under, open);
        amps[draw * hours + i] = sum;
      }
    }
  }
  return { draws, hours, amps, from };
}

/** Days by the sun's midnight, with the hours of each: from `start` up to `end`. */
function daySpans(
  longitude_deg: number,
  from: number,
  hours: number,
): { readonly day: string; readonly start: number; end: number }[] {
  const spans: { day: string; start: number; end: number }[] = [];
  for (let i = 0; i < hours; i++) {
    const day = new Date(from + (i + 0.5 + longitude_deg / 15) * hour).toISOString().slice(0, 10);
    const last = spans.at(-1);
    if (last?.day === day) last.end = i + 1;
    else spans.push({ day, start: i, end: i + 1 });
  }
  return spans;
}

function sumOver(
  all: readonly PanelSteps[],
  { covered, under, open }: DayLight,
  clock: Int32Array,
  start: number,
  end: number,
): number {
  let sum = 0;
  for (let i = start; i < end; i++)
    for (const steps of all)
      sum += stepAmps(steps, i, covered.length === 1 ? covered[0]! : covered[clock[i]!]!, under, open);
  return sum;
}
