import { airMass, clearSky, lightOnPlane, sunPosition } from '#sky';
import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

const radian = Math.PI / 180;

/**
 * Sunlight by another way: air crossed, followed ray by ray; a slope's share of the sky, patch by patch;
 * a clear sky by its water and by the definition of turbidity; the sum in the head.
 */
export function otherLight(seed: number): OtherCheck[] {
  const random = seeded(seed);
  const all = questions();
  const figure = (id: string, fields: Readonly<Record<string, unknown>>, symbol: string): number => {
    const asked = ask(all.find((each) => each.id === id)!, fields);
    const found = asked.kind === 'answered' ? figureOf(asked.answer, symbol)?.value : undefined;
    return typeof found === 'number' ? found : Number.NaN;
  };
  const airs: number[] = [];
  const column = airAlong(90);
  for (let altitude = 3; altitude < 90; altitude += 0.75)
    airs.push(airMass(90 - altitude) / (airAlong(altitude) / column) - 1);

  const slopes: number[] = [];
  const pocket: number[] = [];
  for (let n = 0; n < 150; n++) {
    const slope = 180 * random();
    const facing = 360 * random();
    const zenith = 85 * random();
    const azimuth = 360 * random();
    const light = clearSky({ zenith, outside_W_m2: 1361, turbidity: 2 + 4 * random(), elevation_m: 0 });
    const groundShare = random();
    const on = lightOnPlane(light, { zenith, azimuth, slope, facing, groundShare, outside_W_m2: 1361 }, 'even');
    slopes.push(on.total_W_m2 - patchByPatch(light, { zenith, azimuth, slope, facing, groundShare }));

    const dayOfYear = 1 + Math.floor(365 * random());
    const latitude_deg = -65 + 130 * random();
    const instant = Date.UTC(2026, 0, dayOfYear, 0, Math.floor(1440 * random()));
    const sun = sunPosition({
      instant,
      latitude_deg,
      longitude_deg: 0,
      elevation_m: 0,
      pressure_hPa: 1013.25,
      air_C: 10,
      deltaT_s: 69,
      horizonRefraction_deg: 0.5667,
    });
    const fields = {
      'day-of-year': dayOfYear,
      latitude: latitude_deg,
      'hour-angle': ((sun.hourAngle + 540) % 360) - 180,
    };
    pocket.push(90 - figure('sky.pocket-sun', fields, 'θz') - sun.altitudeWithoutAir);
  }
  const hazes: number[] = [];
  const beams: number[] = [];
  for (const depth of [0.05, 0.1, 0.2, 0.3])
    for (const water of [1, 2, 4])
      for (let altitude = 10; altitude <= 85; altitude += 7.5) {
        const turbidity = turbidityOf(depth, water);
        const light = clearSky({ zenith: 90 - altitude, outside_W_m2: 1361, turbidity, elevation_m: 0 });
        // haze at 700 nm from that at 550 by Ångström's law with 1.3
        const fields = { altitude, depth: depth * (700 / 550) ** -1.3, water };
        hazes.push(light.global_W_m2 / figure('sky.clear-sky-by-water', fields, 'G') - 1);
        if (altitude >= 20) beams.push(light.beam_W_m2 / beamByLinke_W_m2(turbidity, altitude) - 1);
      }
  const stated = { subject: 'sky', kind: 'derived twice' } as const;
  return [
    errorsOf(
      {
        ...stated,
        what: 'all light of a clear sky from 10° up, as a share',
        against: 'the simplified Solis formulas, haze and water turned into turbidity by Ineichen (2008, from memory)',
        unit: '',
        allowed: 0.09,
        why: 'fitted to other skies: from 13° up ours is 2 % the brighter in the mean, at 10° 6 % the dimmer, and further down dimmer still, where its factor for a low sun is held',
      },
      hazes,
    ),
    errorsOf(
      {
        ...stated,
        what: 'beam of a clear sky from 20° up, as a share',
        against: 'turbidity by its definition: Kasten’s depth of clean dry air (1996, from memory) times 0.8662',
        unit: '',
        allowed: 0.09,
        why: 'Ineichen and Perez made theirs free of the air crossed, which the definition is not; the two meet at an air mass of 2',
      },
      beams,
    ),
    errorsOf(
      {
        ...stated,
        what: 'air crossed by the sunlight from 3° up, as a share',
        against: 'a ray bent through the layers of the standard atmosphere, step by step',
        unit: '',
        allowed: 0.005,
        why: 'the formula was fitted to an atmosphere of 1972 with other upper layers; most of it stands under 10° of altitude',
      },
      airs,
    ),
    errorsOf(
      {
        ...stated,
        what: 'light on a slope under an even sky',
        against: 'the sky and the ground added up in patches of 2°',
        unit: 'W/m²',
        allowed: 0.3,
        why: 'the patches at the edge of what the slope sees are counted whole or not at all',
      },
      slopes,
    ),
    errorsOf(
      {
        ...stated,
        what: 'altitude of the sun by the sum in the head',
        against: 'the whole computation, at the same hour angle',
        unit: '°',
        allowed: 1.3,
        why: 'Cooper’s declination takes the earth’s path for a circle, out by up to 1° in October, and the whole day for one moment, 0.4° at most in March',
      },
      pocket,
    ),
  ];
}

/** Linke turbidity at sea level from the haze at 550 nm and the water above in cm. */
const turbidityOf = (depth: number, water_cm: number) =>
  3.91 * Math.exp(0.689) * depth + 0.376 * Math.log(water_cm) + 2 + 0.54 - 0.5 + 0.16;

/** Beam through air so many times as dim as clean dry air. */
function beamByLinke_W_m2(turbidity: number, altitude: number): number {
  const m = airMass(90 - altitude);
  const cleanDepth = 1 / (6.6296 + 1.7513 * m - 0.1202 * m ** 2 + 0.0065 * m ** 3 - 0.00013 * m ** 4);
  return 1361 * Math.exp(-0.8662 * turbidity * m * cleanDepth);
}

/**
 * Air along the way of light that arrives at an altitude, in kg/m² and so on of any unit: density of the standard atmosphere
 * (ICAO Doc 7488 from memory: −6.5 °C/km to 11 km, then steady to 20, then +1 °C/km to 32, then +2.8), bent by a refraction in
 * proportion to the density (1.000292 at the sea).
 */
function airAlong(altitude_deg: number): number {
  const earth_m = 6_371_000;
  const step_m = 20;
  const top_m = 60_000;
  const bend = 0.000292;
  const densities = standardDensities(step_m, top_m);
  // Snell on a sphere: index · radius · cosine of the altitude stays along the ray
  const held = (1 + bend) * earth_m * Math.cos(altitude_deg * radian);
  let sum = 0;
  for (const [i, density] of densities.entries()) {
    const radius = earth_m + (i + 0.5) * step_m;
    const cosine = held / ((1 + (bend * density) / densities[0]!) * radius);
    sum += (density * step_m) / Math.sqrt(1 - cosine * cosine);
  }
  return sum;
}

function standardDensities(step_m: number, top_m: number): number[] {
  const layers = [
    [11_000, -0.0065],
    [20_000, 0],
    [32_000, 0.001],
    [top_m, 0.0028],
  ] as const;
  const gravityOverGas = 9.80665 / 287.053;
  const densities: number[] = [];
  let kelvin = 288.15;
  let pascal = 101_325;
  for (let height = step_m / 2; height < top_m; height += step_m) {
    const lapse = layers.find(([to]) => height < to)![1];
    const [k, p] = [kelvin + (lapse * step_m) / 2, pascal * (1 - (gravityOverGas / kelvin) * (step_m / 2))];
    densities.push(p / (287.053 * k));
    pascal *= Math.exp((-gravityOverGas / k) * step_m);
    kelvin += lapse * step_m;
  }
  return densities;
}

/** Direct sun by vectors; sky and ground as a sphere of even patches, each by the cosine at which it meets the slope. */
function patchByPatch(
  light: { readonly global_W_m2: number; readonly beam_W_m2: number; readonly diffuse_W_m2: number },
  at: {
    readonly zenith: number;
    readonly azimuth: number;
    readonly slope: number;
    readonly facing: number;
    readonly groundShare: number;
  },
): number {
  const toward = (zenith: number, azimuth: number) =>
    [
      Math.sin(zenith * radian) * Math.cos(azimuth * radian),
      Math.sin(zenith * radian) * Math.sin(azimuth * radian),
      Math.cos(zenith * radian),
    ] as const;
  const normal = toward(at.slope, at.facing);
  const meets = (zenith: number, azimuth: number) => {
    const [x, y, z] = toward(zenith, azimuth);
    return Math.max(0, x * normal[0] + y * normal[1] + z * normal[2]);
  };
  let sum = light.beam_W_m2 * meets(at.zenith, at.azimuth);
  const patch = 2;
  for (let zenith = patch / 2; zenith < 180; zenith += patch) {
    // an even sky of so much light on the level has that over π from every direction
    const bright = (zenith < 90 ? light.diffuse_W_m2 : light.global_W_m2 * at.groundShare) / Math.PI;
    const size = (patch * radian) ** 2 * Math.sin(zenith * radian);
    for (let azimuth = patch / 2; azimuth < 360; azimuth += patch) sum += bright * size * meets(zenith, azimuth);
  }
  return sum;
}
