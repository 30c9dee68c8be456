/** Owners of batteries of the other kind: what each really has and does, and what of it the estimate is told. */
import type { BatteryHistory, Chemistry, Flow, VoltReading } from '#battery';
import { seeded } from '../other-check.ts';
import {
  cutOff_V,
  drawnBattery,
  flow,
  type OtherBattery,
  type OtherState,
  ownCapacity_Ah,
  regulated,
  rested,
  stillToCome_Ah,
  terminalVolts,
} from './other-battery.ts';

export const situations = [
  'one rested reading',
  'load test from full',
  'night at anchor',
  'days with sun',
  'read on charge',
] as const;
export type Situation = (typeof situations)[number];

/** What is so at the end of the history, by the other battery. */
export interface Truth {
  /** still to come at the 20-hour current down to the cut-off. [Ah] */
  readonly left_Ah: number;
  /** from full at the 20-hour current. [Ah] */
  readonly capacity_Ah: number;
  readonly soc_pct: number;
}

/** What draws that the owner never wrote down. */
export const forgettings = ['nothing', 'a light left on', 'a leak'] as const;
export type Forgetting = (typeof forgettings)[number];

export interface Owner {
  readonly seed: number;
  readonly forgot: Forgetting;
  readonly situation: Situation;
  readonly history: BatteryHistory;
  readonly truth: Truth;
}

const hour = 3_600_000;
const minute = 60_000;
/** One in five each, AGM twice. */
const shelf: readonly Chemistry[] = ['agm', 'agm', 'flooded', 'gel', 'lifepo4'];

/** A lamp as it is and as its label says. */
interface Lamp {
  readonly name: string;
  readonly stated_A: number;
  readonly true_A: number;
}

/** One owner; the same seed gives the same. */
export function owner(seed: number): Owner {
  const random = seeded(seed);
  for (let i = 0; i < 5; i++) random();
  const between = (low: number, high: number) => low + (high - low) * random();
  const normal = () => Array.from({ length: 12 }, random).reduce((sum, each) => sum + each, -6);
  const situation = situations[Math.floor(random() * situations.length)]!;
  const forgetting = forgettingOf(seed, situation);
  const chemistry = shelf[Math.floor(random() * shelf.length)]!;
  const nominal_Ah = [10, 12, 17, 20, 35, 55, 75, 100][Math.floor(random() * 8)]!;
  const age_years = Math.floor(between(0, 8));
  const battery = drawnBattery(chemistry, nominal_Ah, age_years, random);
  const capacity_Ah = ownCapacity_Ah(battery);
  const offset_V = 0.03 * normal();

  const from = Date.UTC(2026, 6, 1, 18) + Math.floor(random() * 60) * 24 * hour;
  const meanAir_C = between(8, 28);
  const swing_C = between(1, 7);
  const air = (ms: number) => meanAir_C - swing_C * Math.cos((2 * Math.PI * (ms / hour - 4)) / 24);
  // the battery lags the air by some three hours and feels two thirds of it
  const battery_C = (ms: number) => meanAir_C - 0.67 * swing_C * Math.cos((2 * Math.PI * (ms / hour - 7)) / 24);

  const lamp = (name: string, share: number): Lamp => {
    const true_A = share * nominal_Ah;
    return { name, true_A, stated_A: true_A / Math.exp(0.11 * normal()) };
  };
  const readings: VoltReading[] = [];
  const flows: Flow[] = [];
  const state = startState(battery, situation === 'load test from full' ? 1 : between(0.35, 1), random);
  const knowsAmps = random() < 0.2;

  let now = from;
  let amps = 0;
  /** lets time go by; the sun offers a current, the regulator takes what it can */
  const pass = (until: number, load_A: number, sun_A: (ms: number) => number = () => 0) => {
    while (now < until) {
      const step = Math.min(minute, until - now);
      const heat = battery_C(now);
      const wanted =
        load_A + (now - from >= forgetting.from_h * hour ? forgetting.ofLabel_1_h * nominal_Ah : 0) - sun_A(now);
      amps = wanted < 0 ? regulated(battery, state, wanted, heat, chemistry === 'lifepo4' ? 14.2 : 14.4) : wanted;
      flow(battery, state, amps, step / 1000, heat);
      now += step;
    }
  };
  const told = ({ name, stated_A }: Lamp, start: number, end: number) =>
    flows.push({
      from: start,
      to: end,
      low_A: 0.8 * stated_A,
      likely_A: stated_A,
      high_A: 1.2 * stated_A,
      source: name,
    });
  /** reads the meter, and lets things stay as they are for a minute */
  const read = (load_A: number, sun_A: (ms: number) => number = () => 0) => {
    const volts = terminalVolts(battery, state, amps, battery_C(now)) + offset_V + 0.006 * normal();
    readings.push({
      at: now,
      volts: Math.round(volts * 100) / 100,
      meter: 'panel meter',
      current_A: knowsAmps ? Math.round(amps * 50) / 50 : null,
    });
    pass(now + minute, load_A, sun_A);
  };

  if (situation === 'one rested reading') {
    pass(from + between(8, 14) * hour, 0);
    read(0);
  } else if (situation === 'load test from full') {
    const test = lamp('test lamp', between(0.04, 0.18));
    pass(from + 2 * hour, 0);
    if (random() < 0.7) read(0);
    const start = now;
    const hours = (between(0.25, 0.6) * capacity_Ah) / test.true_A;
    const times = Array.from({ length: 5 + Math.floor(random() * 3) }, random).sort((a, b) => a - b);
    for (const share of times) {
      pass(Math.round(start + Math.max(0.03, share) * hours * hour), test.true_A);
      read(test.true_A);
    }
    told(test, start, now);
  } else if (situation === 'night at anchor') {
    const light = lamp('anchor light', between(0.006, 0.025));
    const cabin = lamp('cabin lights', between(0.02, 0.06));
    pass(from + between(1, 4) * hour, 0);
    read(0);
    const dusk = now;
    pass(dusk + 2 * hour, light.true_A + cabin.true_A);
    if (random() < 0.6) read(light.true_A + cabin.true_A);
    told(cabin, dusk, now);
    pass(dusk + between(8, 11) * hour, light.true_A);
    read(light.true_A);
    told(light, dusk, now);
  } else {
    const days = situation === 'read on charge' ? 1 : 2 + Math.floor(random() * 6);
    const light = lamp('anchor light', between(0.006, 0.02));
    const cabin = lamp('cabin lights', between(0.02, 0.05));
    const peak_A = between(0.05, 0.15) * nominal_Ah;
    let cloud = between(0.3, 1);
    read(0);
    for (let day = 0; day < days; day++) {
      const dusk = now;
      pass(dusk + 3 * hour, light.true_A + cabin.true_A);
      if (random() < 0.4) read(light.true_A + cabin.true_A);
      told(cabin, dusk, now);
      pass(dusk + 11 * hour, light.true_A);
      const beforeSunrise = random() < 0.6;
      if (beforeSunrise) read(light.true_A);
      told(light, dusk, now);
      const sunrise = now;
      // spells: a day is half like the day before
      cloud = 0.5 * cloud + 0.5 * between(0.2, 1);
      const bell = (ms: number) => Math.max(0, Math.sin((Math.PI * (ms - sunrise)) / (13 * hour)));
      const sun_A = (ms: number) => peak_A * cloud * bell(ms);
      const last = day === days - 1;
      const sunHours = !last ? 13 : situation === 'read on charge' ? between(3, 10) : between(0, 13);
      pass(Math.round(sunrise + sunHours * hour), 0, sun_A);
      if (random() < 0.4 || last) read(0, sun_A);
      for (let start = sunrise; start < now; start += hour) {
        const to = Math.min(now, start + hour);
        const offered = peak_A * bell((start + to) / 2);
        flows.push({
          from: start,
          to,
          low_A: -offered,
          likely_A: -0.6 * offered,
          high_A: -0.2 * offered,
          source: `sun of day ${day + 1}`,
        });
      }
    }
  }
  const temperatures: { at: number; air_C: number }[] = [];
  for (let ms = from; ms <= now + hour; ms += hour) temperatures.push({ at: ms, air_C: Math.round(air(ms)) });
  const left_Ah = stillToCome_Ah(battery, state, nominal_Ah / 20, 25, cutOff_V(chemistry));
  return {
    seed,
    forgot: forgetting.kind,
    situation,
    history: {
      battery: { chemistry, nominal_Ah, nominal_V: 12, age_years: random() < 0.8 ? age_years : null },
      from,
      to: now,
      flows,
      readings,
      temperatures,
    },
    truth: { left_Ah, capacity_Ah, soc_pct: Math.min(100, (100 * left_Ah) / capacity_Ah) },
  };
}

/**
 * One owner in five forgets a load, by dice of their own so that the others stay as they were: a light of 0.4 to 3 % of the
 * label an hour left on at some time, or a leak of 0.05 to 0.4 % all along.
 */
function forgettingOf(
  seed: number,
  situation: Situation,
): { readonly kind: Forgetting; readonly from_h: number; readonly ofLabel_1_h: number } {
  const random = seeded(seed + 700_000);
  for (let i = 0; i < 5; i++) random();
  const luck = random();
  const within_h = situation === 'days with sun' ? 72 : situation === 'read on charge' ? 16 : 6;
  if (luck < 0.1)
    return { kind: 'a light left on', from_h: within_h * random(), ofLabel_1_h: 0.004 + 0.026 * random() };
  if (luck < 0.2) return { kind: 'a leak', from_h: 0, ofLabel_1_h: 0.0005 + 0.0035 * random() };
  return { kind: 'nothing', from_h: 0, ofLabel_1_h: 0 };
}

/** How the history finds the battery: used down from full some time ago, or charged to where it is. */
function startState(battery: OtherBattery, full: number, random: () => number): OtherState {
  const state = rested(Math.min(1, full));
  if (battery.chemistry === 'lifepo4') state.memory = random() < 0.5 ? -1 : 1;
  // an hour or a day since it was last charged
  if (battery.chemistry !== 'lifepo4' && random() < 0.5)
    state.surface_V = 0.5 * battery.surface_V * full * Math.exp(-(24 * random()) / battery.surface_h);
  return state;
}
