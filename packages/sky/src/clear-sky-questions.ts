import { inBase } from '#units';
import {
  angle,
  assuming,
  choice,
  count,
  type Field,
  type Figure,
  instant,
  length,
  number,
  pressure,
  type Question,
  question,
  type Source,
} from '#working';
import { airMass, airMassAtPressure, pressureAtHeight_hPa, seaPressure_hPa } from './air-mass.ts';
import { clearSky, haurwitz_W_m2, ineichenSky, type Sunlight, solisSky } from './clear-sky.ts';
import { ashraeSky, clearDayOf } from './clear-sky-by-month.ts';
import { kastenCzeplak_W_m2 } from './cloud-cover.ts';
import { outsideAir_W_m2, solarConstant_W_m2 } from './sun-outside-air.ts';
import { assumedDeltaT_s, sunPosition } from './sun-position.ts';
import { assumedTurbidity, dayOfYear } from './turbidity.ts';

/** The questions about sunlight under a clear sky. */
export function clearSkyQuestions(): readonly Question[] {
  return [clearSkyQuestion(), byHazeQuestion(), byWaterQuestion(), byMonthQuestion(), byHeightQuestion()];
}

const sources = {
  ineichen: { title: 'P. Ineichen and R. Perez, Solar Energy 73 (2002) 151–157', seen: 'read second-hand' },
  solis: { title: 'P. Ineichen, Solar Energy 82 (2008) 758–762', seen: 'read second-hand' },
  ashrae: { title: 'ASHRAE Fundamentals 1997, chapter 29, table 8', seen: 'read second-hand' },
  haurwitz: { title: 'B. Haurwitz, Journal of Meteorology 2 (1945)', seen: 'read second-hand' },
  kasten: { title: 'F. Kasten and G. Czeplak, Solar Energy 24 (1980) 177–189', seen: 'recalled' },
  kastenYoung: { title: 'F. Kasten and A. Young, Applied Optics 28 (1989) 4735–4738', seen: 'read second-hand' },
  place: {
    title: 'I. Reda and A. Andreas, Solar Position Algorithm, NREL/TP-560-34302 (2008)',
    seen: 'read second-hand',
  },
  haze: {
    title: 'haze of a usual clear day by latitude and season: from memory of maps of the world',
    seen: 'our assumption',
  },
} as const satisfies Readonly<Record<string, Source>>;

const noClouds = 'A sky without a cloud, from horizon to horizon: hills and houses take their light away.';

const altitudeField = () => angle('°', -90, 90, 'altitude of the sun over the horizon, as seen');
const heightField = () =>
  assuming(length('m', -500, 5000, 'height above the sea'), inBase('length', 0, 'm'), '0 m', 'boats lie at the sea');
const outsideField = () =>
  assuming(
    number('W/m²', 0, 1500, 'sun outside the air that day, on a surface square to it'),
    solarConstant_W_m2,
    `${solarConstant_W_m2} W/m²`,
    'the mean of the year; 3 % less in July, 3 % more in January',
  );

/** All light, as on a surface square to the sun; none with the sun on the horizon or under it. */
const onSquare_W_m2 = (light: Sunlight, altitude: number) =>
  light.global_W_m2 === 0 ? 0 : light.global_W_m2 / Math.sin((altitude * Math.PI) / 180);

const lightResults = (light: Sunlight): [Figure, Figure, Figure] => [
  { symbol: 'G', meaning: 'all light, on a level surface', value: light.global_W_m2, unit: 'W/m²' },
  { symbol: 'B', meaning: 'straight from the sun, on a surface square to it', value: light.beam_W_m2, unit: 'W/m²' },
  { symbol: 'D', meaning: 'from the sky, on a level surface', value: light.diffuse_W_m2, unit: 'W/m²' },
];

function clearSkyQuestion() {
  return question({
    id: 'sky.clear-sky',
    title: 'How strong is the sunlight on a clear day?',
    fields: {
      at: instant('moment to look at the sun'),
      latitude: angle('°', -90, 90, 'latitude, north positive'),
      longitude: angle('°', -180, 180, 'longitude, east positive'),
      elevation: heightField(),
      turbidity: assuming(
        number('', 1, 10, 'haze, as Linke turbidity: 2 cold and clean, 3 usual, 5 a hazy summer') as Field<
          number | null
        >,
        null,
        'by latitude and season',
        'nobody has measured it; its ends are shown',
      ),
    },
    answer: (given) => {
      const sun = sunPosition({
        instant: given.at,
        latitude_deg: given.latitude,
        longitude_deg: given.longitude,
        elevation_m: given.elevation,
        pressure_hPa: pressureAtHeight_hPa(given.elevation),
        air_C: 10,
        deltaT_s: assumedDeltaT_s,
        horizonRefraction_deg: 0.5667,
      });
      const haze =
        given.turbidity === null
          ? assumedTurbidity(given.latitude, dayOfYear(given.at))
          : { low: given.turbidity, likely: given.turbidity, high: given.turbidity };
      const outside_W_m2 = outsideAir_W_m2(sun.earthRadius_au);
      const under = (turbidity: number) =>
        clearSky({ zenith: sun.zenith, outside_W_m2, turbidity, elevation_m: given.elevation });
      const [hazy, light, clean] = [under(haze.high), under(haze.likely), under(haze.low)];
      const [G, B, D] = lightResults(light);
      const banded = (figure: Figure, one: number, other: number): Figure =>
        given.turbidity === null && sun.zenith < 90
          ? { ...figure, low: Math.min(one, other), high: Math.max(one, other) }
          : figure;
      const results: [Figure, Figure, Figure] = [
        banded(G, hazy.global_W_m2, clean.global_W_m2),
        banded(B, hazy.beam_W_m2, clean.beam_W_m2),
        banded(D, hazy.diffuse_W_m2, clean.diffuse_W_m2),
      ];
      const up = sun.zenith < 90;
      const shown = {
        working: [
          {
            symbol: 'h',
            meaning: 'altitude of the sun as seen',
            value: sun.altitude,
            unit: '°',
            formula: 'as sky.sun-position',
          },
          {
            symbol: 'E0',
            meaning: 'on a surface square to it, outside the air',
            value: outside_W_m2,
            unit: 'W/m²',
            formula: `${solarConstant_W_m2}/R²`,
          },
          {
            symbol: 'TL',
            meaning: 'haze, as Linke turbidity',
            value: haze.likely,
            ...(given.turbidity === null ? { low: haze.low, high: haze.high } : {}),
            unit: '',
            formula: given.turbidity === null ? 'by latitude and season' : 'as given',
          },
          ...(up
            ? [
                {
                  symbol: 'AMp',
                  meaning: 'air crossed, for the pressure at this height',
                  value: airMassAtPressure(airMass(sun.zenith), pressureAtHeight_hPa(given.elevation)),
                  unit: '',
                  formula: 'as sky.air-mass; G, B, D as sky.clear-sky-by-haze, G·exp(0.01·AMp^1.8), AMp held at 4.5',
                },
              ]
            : []),
        ],
        sources: [
          sources.ineichen,
          sources.kastenYoung,
          sources.place,
          ...(given.turbidity === null ? [sources.haze] : []),
        ],
        limits: [
          noClouds,
          'The last quarter of a degree of the sun’s fall is ours: the beam fades with its disc.',
          'Under 13° of altitude the formulas for a clear sky part by a tenth and more.',
        ],
        cautions: [],
      };
      if (!up)
        return {
          kind: 'truth',
          statement: 'the sun is down',
          because: `its centre stands ${Math.abs(Math.round(sun.altitude * 10) / 10)}° below the horizon`,
          results,
          ...shown,
        };
      return { kind: 'found', results, ...shown };
    },
  });
}

function byHazeQuestion() {
  return question({
    id: 'sky.clear-sky-by-haze',
    title: 'How strong is a clear sky, from its haze?',
    fields: {
      altitude: altitudeField(),
      turbidity: number('', 1, 10, 'haze, as Linke turbidity: 2 cold and clean, 3 usual, 5 a hazy summer'),
      elevation: heightField(),
      'air-mass': assuming(
        number('', 0.2, 60, 'air crossed, for the pressure of the place') as Field<number | null>,
        null,
        'by altitude and height',
        'as sky.air-mass has it',
      ),
      outside: outsideField(),
    },
    answer: ({ altitude, turbidity, elevation, 'air-mass': crossed, outside }) => {
      const zenith = 90 - altitude;
      const air =
        crossed ??
        (zenith > 90 ? airMass(90) : airMassAtPressure(airMass(Math.max(0, zenith)), pressureAtHeight_hPa(elevation)));
      const light = ineichenSky({ zenith, airMass: air, turbidity, elevation_m: elevation, outside_W_m2: outside });
      const fh1 = Math.exp(-elevation / 8000);
      const fh2 = Math.exp(-elevation / 1250);
      return {
        kind: 'found',
        results: lightResults(light),
        working: [
          { symbol: 'AMp', meaning: 'air crossed', value: air, unit: '', formula: 'as given, or as sky.air-mass' },
          { symbol: 'fh1', meaning: 'thinner air', value: fh1, unit: '', formula: 'exp(−height/8000 m)' },
          { symbol: 'fh2', meaning: 'thinner haze', value: fh2, unit: '', formula: 'exp(−height/1250 m)' },
          {
            symbol: 'G/sin h',
            meaning: 'all light, on a surface square to the sun',
            value: onSquare_W_m2(light, altitude),
            unit: 'W/m²',
            formula: '(5.09·10⁻⁵·height + 0.868)·E0·exp(−(3.92·10⁻⁵·height + 0.0387)·AMp·(fh1 + fh2·(TL − 1)))',
          },
          {
            symbol: 'B by the air',
            meaning: 'straight from the sun',
            value: altitude > 0 ? (0.664 + 0.163 / fh1) * outside * Math.exp(-0.09 * air * (turbidity - 1)) : 0,
            unit: 'W/m²',
            formula: '(0.664 + 0.163/fh1)·E0·exp(−0.09·AMp·(TL − 1)), at most what leaves the sky its least share',
          },
        ],
        sources: [sources.ineichen, sources.kastenYoung],
        limits: [
          noClouds,
          'G of a low sun is too little, by a fifth at 10° of altitude; sky.clear-sky has the later factor that mends it.',
        ],
        cautions: [],
      };
    },
  });
}

function byWaterQuestion() {
  return question({
    id: 'sky.clear-sky-by-water',
    title: 'How strong is a clear sky, from the dust and the water in it?',
    fields: {
      altitude: altitudeField(),
      depth: number('', 0, 0.45, 'optical depth of the haze at 700 nm: 0.05 clean, 0.1 usual, 0.3 hazy'),
      water: number('cm', 0, 10, 'water in the air above, if it all rained out: 1 dry, 2 usual, 4 close'),
      pressure: assuming(
        pressure('hPa', 300, 1100, 'pressure of the air at the place'),
        inBase('pressure', seaPressure_hPa, 'hPa'),
        `${seaPressure_hPa} hPa`,
        'standard atmosphere at the sea',
      ),
      outside: outsideField(),
    },
    answer: ({ altitude, depth, water, pressure: air, outside }) => {
      const light = solisSky({ altitude, depth, water_cm: water, pressure_hPa: air, outside_W_m2: outside });
      return {
        kind: 'found',
        results: lightResults(light),
        working: [
          {
            symbol: 'G/sin h',
            meaning: 'all light, on a surface square to the sun',
            value: onSquare_W_m2(light, altitude),
            unit: 'W/m²',
            formula: 'E0′·exp(−τ/sinᵍ h); E0′, τ and g by haze, water and pressure, as the source prints them',
          },
        ],
        sources: [sources.solis],
        limits: [
          noClouds,
          'G, B and D are fitted each for itself: B on the level and D add to G within a few percent.',
        ],
        cautions: [],
      };
    },
  });
}

function byMonthQuestion() {
  return question({
    id: 'sky.clear-sky-by-month',
    title: 'How strong is a clear sky, by the month?',
    fields: { month: count(1, 12, 'month; in the south the one half a year off'), altitude: altitudeField() },
    answer: ({ month, altitude }) => {
      const { A_W_m2, B, C } = clearDayOf(month);
      return {
        kind: 'found',
        results: lightResults(ashraeSky(month, altitude)),
        working: [
          {
            symbol: 'A, B, C',
            meaning: 'of the month: sun over the air in W/m², how fast air dims it, share of the sky',
            value: `${A_W_m2}, ${B}, ${C}`,
            unit: '',
            formula: 'B = A·exp(−B/sin h); D = C·B; G = B·(sin h + C)',
          },
        ],
        sources: [sources.ashrae],
        limits: [noClouds, 'Usual clear days of the United States, each for the 21st of its month.'],
        cautions: [],
      };
    },
  });
}

function byHeightQuestion() {
  return question({
    id: 'sky.clear-sky-by-altitude',
    title: 'Roughly how strong is a clear sky, by the sun’s altitude alone?',
    fields: {
      altitude: altitudeField(),
      form: assuming(
        choice(
          [
            { id: 'Haurwitz', title: sources.haurwitz.title },
            { id: 'Kasten and Czeplak', title: `${sources.kasten.title}: a hazier place` },
          ],
          'by whose formula',
        ) as Field<'Haurwitz' | 'Kasten and Czeplak'>,
        'Haurwitz',
        'Haurwitz',
        'the two are some 5 to 10 % apart',
      ),
    },
    answer: ({ altitude, form }) => {
      const G = form === 'Haurwitz' ? haurwitz_W_m2(90 - altitude) : kastenCzeplak_W_m2(altitude);
      return {
        kind: 'found',
        results: [{ symbol: 'G', meaning: 'all light, on a level surface', value: G, unit: 'W/m²' }],
        working: [
          {
            symbol: 'sin h',
            meaning: 'sine of the altitude',
            value: Math.sin((altitude * Math.PI) / 180),
            unit: '',
            formula: form === 'Haurwitz' ? 'G = 1098·sin h·exp(−0.059/sin h)' : 'G = 910·sin h − 30',
          },
        ],
        sources: [form === 'Haurwitz' ? sources.haurwitz : sources.kasten],
        limits: [noClouds, 'One usual haze for every place and season.'],
        cautions: [],
      };
    },
  });
}
