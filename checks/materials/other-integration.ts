import { type CureLaw, cureFinish, cureLaws } from '#materials';
import type { WeatherHour } from '#sky';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

/**
 * Cure laws over random weather, beside an integration of another kind, written from the words of the trade and not from
 * our code: small steps of time with the midpoint rule; reactions by Arrhenius in kelvin with the energy that fits the
 * doubling at 20 °C; sealants as a skin that thickens, dx/dt = k²·v/(2x), with the vapour by another formula.
 */
export function otherIntegration(seed: number, runs: number): OtherCheck[] {
  const random = seeded(seed);
  const lawsOf = <K extends CureLaw['kind']>(kind: K) =>
    cureLaws.flatMap(({ law }) => (law.kind === kind ? [law as Extract<CureLaw, { kind: K }>] : []));
  /** Random weather for laws of a kind until so many were judged; null: not over within its weather, drawn anew. */
  const each = <L extends CureLaw>(laws: readonly L[], judged: (law: L, run: CureRun) => number | null): number[] => {
    const errors: number[] = [];
    for (let drawn = 0; errors.length < runs && drawn < 4 * runs; drawn++) {
      const law = laws[Math.floor(random() * laws.length)]!;
      const weather = randomWeather(random, 24 * 40);
      const start = Math.floor(random() * 600);
      const error = judged(law, { weather, start, finish: cureFinish(law, weather, start).finish });
      if (error !== null) errors.push(error);
    }
    return errors;
  };
  const sum = (law: Timed, { weather, start, finish }: CureRun) => {
    const byHalves = (t_C: number) => Math.exp((Math.LN2 * (t_C - law.reference_C)) / law.doublesPer_C);
    const other = steps(law, weather, start, weather.length * 60, byHalves).finish;
    // both must say that it is not over
    return finish === null || other === null ? (finish === other ? null : Number.NaN) : finish - other;
  };
  const reactions = each(lawsOf('reacts'), sum);
  const drying = each(lawsOf('dries'), sum);
  const arrhenius = each(lawsOf('reacts'), (law, { weather, start, finish }) => {
    if (finish === null) return null;
    // the energy that doubles the rate across the reference temperature
    const half = law.doublesPer_C / 2;
    const energyOverR = Math.LN2 / (1 / (273.15 + law.reference_C - half) - 1 / (273.15 + law.reference_C + half));
    const byEnergy = (t_C: number) => Math.exp(energyOverR * (1 / (273.15 + law.reference_C) - 1 / (273.15 + t_C)));
    return steps(law, weather, start, finish, byEnergy).done - 1;
  });
  const skins = each(lawsOf('moisture'), (law, { weather, start, finish }) =>
    finish === null ? null : skinDepth_mm(law, weather, start, finish) / law.depth_mm - 1,
  );
  const stated = { subject: 'materials', kind: 'derived twice' } as const;
  return [
    errorsOf(
      {
        ...stated,
        what: 'time to react',
        against: 'midpoint steps of 30 s',
        unit: 'min',
        allowed: 1,
        why: 'ours ends on a whole minute',
      },
      reactions,
    ),
    errorsOf(
      {
        ...stated,
        what: 'time to dry',
        against: 'midpoint steps of 30 s',
        unit: 'min',
        allowed: 1,
        why: 'ours ends on a whole minute',
      },
      drying,
    ),
    errorsOf(
      {
        ...stated,
        what: 'cured when ours ends, less 1',
        against: 'Arrhenius in kelvin through the same doubling',
        unit: '',
        allowed: 0.06,
        why: 'a doubling for each step of degrees is itself an approximation, best near 20 °C',
      },
      arrhenius,
    ),
    errorsOf(
      {
        ...stated,
        what: 'bead cured when ours ends, share of its depth less 1',
        against: 'thickening skin, vapour by Tetens’ formula',
        unit: '',
        allowed: 0.002,
        why: 'the two vapour formulas differ by up to 0.5 % in the cold',
      },
      skins,
    ),
  ];
}

interface CureRun {
  readonly weather: readonly WeatherHour[];
  readonly start: number;
  /** null: not over within its weather */
  readonly finish: number | null;
}

const step_min = 0.5;
type Timed = Extract<CureLaw, { kind: 'reacts' | 'dries' }>;
type Moist = Extract<CureLaw, { kind: 'moisture' }>;

/** Adds up small steps until `end` or until done; what is done then, and when it was. */
function steps(
  law: Timed,
  weather: readonly WeatherHour[],
  start: number,
  end: number,
  rate: (t_C: number) => number,
): { readonly done: number; readonly finish: number | null } {
  let done = 0;
  for (let n = 0; start + n * step_min < end; n++) {
    const hour = weather[Math.floor((start + (n + 0.5) * step_min) / 60)]!;
    const surface = hour.surface_C === null ? hour.air_C : hour.surface_C;
    const still = surface < law.minimum_C || (law.kind === 'dries' && hour.humidity_pct >= law.stopsAt_pct);
    if (!still) done += (rate(surface) * step_min) / law.atReference_min;
    if (done >= 1 && end === weather.length * 60) return { done, finish: start + (n + 1) * step_min };
  }
  return { done, finish: null };
}

function skinDepth_mm(law: Moist, weather: readonly WeatherHour[], start: number, end: number): number {
  // Tetens (1930), from memory: 6.1078·exp(17.27·t/(t + 237.3)) hPa
  const vapour = (t_C: number, pct: number) => 6.1078 * Math.exp((17.27 * t_C) / (t_C + 237.3)) * (pct / 100);
  // first day at the reference: firstDay² = k²·v_ref·1440
  const k2 = law.firstDay_mm ** 2 / (vapour(law.reference_C, law.reference_pct) * 1440);
  let depth = 0;
  for (let n = 0; start + n * step_min < end; n++) {
    const hour = weather[Math.floor((start + (n + 0.5) * step_min) / 60)]!;
    const surface = hour.surface_C === null ? hour.air_C : hour.surface_C;
    if (surface < law.minimum_C) continue;
    const flow = k2 * vapour(hour.air_C, hour.humidity_pct);
    if (depth === 0)
      depth = Math.sqrt(flow * step_min); // exact for the first step: the skin starts from nothing
    else {
      const slope = (x: number) => flow / (2 * x);
      depth += step_min * slope(depth + (step_min / 2) * slope(depth));
    }
  }
  return depth;
}

/** Days that warm and cool, fronts that pass, a surface that is at times warmer or colder than the air. */
function randomWeather(random: () => number, length: number): WeatherHour[] {
  const mean = 4 + 18 * random();
  const swing = 2 + 8 * random();
  let drift = 0;
  return Array.from({ length }, (_, hour) => {
    drift = 0.97 * drift + (random() - 0.5) * 1.5;
    const air_C = mean + drift - swing * Math.cos((2 * Math.PI * (hour - 3)) / 24);
    return {
      rain: false,
      wind_kn: 5,
      air_C,
      surface_C: random() < 0.3 ? air_C + 8 * (random() - 0.4) : null,
      humidity_pct: 40 + 55 * random(),
      basis: 'typed' as const,
    };
  });
}
