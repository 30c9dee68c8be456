/**
 * The weather of the world the odds are held against, and what its forecasters say of it. Nothing of it is the odds'
 * own model: rain comes in fronts with lengths of their own, air masses change by steps, and a forecast is the truth
 * with its fronts moved, missed or made up, the more the further ahead. The chance of rain it gives is the share of
 * 25 other such forecasts, made around the first, that have it wet.
 */
import type { PlanHour } from '#workplan';
import { type ChanceSource, chanceSource } from './chance-source.ts';

interface Front {
  /** hours after the start, not whole */
  readonly from: number;
  readonly to: number;
}

export interface WorldWeather {
  readonly truth: readonly PlanHour[];
  /** what is said at a minute of all hours from then on; hours gone by, and the hour at hand, as they are */
  said(at: number): PlanHour[];
}

export function worldWeather(seed: number, hours: number): WorldWeather {
  const chance = chanceSource(seed);
  const perHour = 0.012 + 0.03 * chance.share();
  const fronts = frontsOf(chance, hours, perHour);
  const base_C = 11 + 8 * chance.share();
  const air: number[] = [];
  let mass_C = 2.5 * chance.normal();
  for (let hour = 0; hour < hours; hour++) {
    if (chance.share() < 1 / 30) mass_C = 0.4 * mass_C + 2.5 * chance.normal();
    air.push(base_C + mass_C + 4.5 * Math.cos(((hour - 15) / 12) * Math.PI) + 0.4 * chance.normal());
  }
  const wind: number[] = [];
  let breeze = chance.normal();
  for (let hour = 0; hour < hours; hour++) {
    breeze = 0.93 * breeze + 0.37 * chance.normal();
    wind.push(Math.min(60, 8 * Math.exp(0.35 * breeze)));
  }
  const wet = (list: readonly Front[], hour: number) => list.some(({ from, to }) => from < hour + 1 && to > hour);
  const hourOf = (rain: boolean, air_C: number, wind_kn: number, hour: number): PlanHour => ({
    rain,
    wind_kn: round(wind_kn, 1),
    air_C: round(air_C, 1),
    surface_C: null,
    humidity_pct: rain ? 94 : Math.round(Math.min(92, Math.max(35, 66 - 18 * Math.cos(((hour - 15) / 12) * Math.PI)))),
    basis: 'forecast',
    sheltered: false,
  });
  const truth = air.map((air_C, hour) => hourOf(wet(fronts, hour), air_C, wind[hour]!, hour));
  // each front and each air mass is mistaken in its own way, which stays much the same from one forecast to the next
  const shiftOf = fronts.map(() => [chance.normal(), chance.normal(), chance.share()] as const);
  const airOff = chance.normal();
  const windOff = chance.normal();
  return {
    truth,
    said(at) {
      const now = at / 60;
      const ours = chanceSource(seed * 7919 + Math.floor(now));
      const first: Front[] = [];
      fronts.forEach((front, n) => {
        const days = Math.max(0, front.from - now) / 24;
        const [shift, longer, seen] = shiftOf[n]!;
        if (front.from > now && seen < missed(days)) return;
        first.push(moved(front, days, 0.8 * shift + 0.6 * ours.normal(), longer));
      });
      first.push(...madeUp(ours, now, hours, perHour));
      const members = Array.from({ length: 25 }, () => [
        ...first.flatMap((front) => {
          const days = Math.max(0, front.from - now) / 24;
          return ours.share() < missed(days) ? [] : [moved(front, days, ours.normal(), ours.normal())];
        }),
        ...madeUp(ours, now, hours, perHour),
      ]);
      return truth.map((hour, index) => {
        if (index < now) return hour;
        const days = (index - now) / 24;
        const times = members.filter((list) => wet(list, index)).length;
        const off_C = (0.7 + 0.5 * days) * airOff;
        const said = hourOf(
          times > 12,
          air[index]! + off_C,
          wind[index]! * Math.exp(Math.min(0.4, 0.1 + 0.05 * days) * windOff),
          index,
        );
        return { ...said, rainOdds_pct: (100 * times) / 25 };
      });
    },
  };
}

function frontsOf(chance: ChanceSource, hours: number, perHour: number): Front[] {
  const fronts: Front[] = [];
  for (let at = 0; at < hours; ) {
    at += -Math.log(1 - chance.share()) / perHour;
    const lasts = Math.exp(0.9 + 0.8 * chance.normal());
    fronts.push({ from: at, to: at + lasts });
    at += lasts;
  }
  return fronts;
}

const missed = (days: number) => Math.min(0.3, 0.02 + 0.05 * days);

/** A front earlier or later, longer or shorter, by some hours that grow with how far ahead it is. */
function moved({ from, to }: Front, days: number, shift: number, longer: number): Front {
  const by = (0.3 + 1.6 * days) * shift;
  return { from: from + by, to: from + by + (to - from) * Math.exp(Math.min(0.4, 0.1 + 0.1 * days) * longer) };
}

function madeUp(chance: ChanceSource, now: number, hours: number, perHour: number): Front[] {
  return frontsOf(chance, hours, perHour).filter(
    ({ from }) => from > now && chance.share() < missed((from - now) / 24),
  );
}

const round = (value: number, digits: number) => Math.round(value * 10 ** digits) / 10 ** digits;
