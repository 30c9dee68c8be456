import { inBase, inUnit } from '#units';
import {
  angle,
  assuming,
  choice,
  type Field,
  length,
  number,
  type Question,
  question,
  type Source,
  speed,
  temperature,
} from '#working';
import {
  assumedNominal_C,
  assumedPowerPerDegree_pct,
  cellTemperature_C,
  cellTemperatureInWind_C,
  nominalConditions,
  panelPower_W,
} from './cell-heat.ts';
import { diffuseShareByCloud, shareThroughCloud } from './cloud-cover.ts';
import { incidenceAngle } from './sun-position.ts';
import { erbsDiffuseShare, splitSunlight } from './sunlight-split.ts';
import { groundLight_W_m2, lightOnPlane, type SkySpread, shareOfSky } from './tilted-plane.ts';

/** The questions about sunlight through cloud, on a slope, and what it makes of a panel. */
export function slopeLightQuestions(): readonly Question[] {
  return [
    throughCloudQuestion(),
    splitQuestion(),
    slopeByRatioQuestion(),
    lightOnSlopeQuestion(),
    cellQuestion(),
    panelPowerQuestion(),
  ];
}

const sources = {
  kasten: { title: 'F. Kasten and G. Czeplak, Solar Energy 24 (1980) 177–189', seen: 'read second-hand' },
  erbs: { title: 'D. Erbs, S. Klein and J. Duffie, Solar Energy 28 (1982) 293–302', seen: 'recalled' },
  liuJordan: { title: 'B. Liu and R. Jordan, Solar Energy 7 (1963)', seen: 'read second-hand' },
  hayDavies: { title: 'J. Hay and J. Davies (1980)', seen: 'read second-hand' },
  ross: { title: 'R. Ross (1976): nominal operating cell temperature, IEC 61215', seen: 'read second-hand' },
  windy: { title: 'NOCT model with wind and efficiency, as described at pvpmc.sandia.gov', seen: 'read second-hand' },
  coefficient: { title: 'power coefficient of crystalline silicon: the middle of data sheets', seen: 'recalled' },
} as const satisfies Readonly<Record<string, Source>>;

const light = (meaning: string) => number('W/m²', 0, 2000, meaning);
const slopeField = () => angle('°', 0, 180, 'slope of the surface from level');
const groundField = () =>
  number('', 0, 1, 'share of light the ground throws back: water 0.06, grass 0.2, concrete 0.25, snow 0.6 to 0.8');

function throughCloudQuestion() {
  return question({
    id: 'sky.through-cloud',
    title: 'How much of a clear day’s light comes through cloud?',
    fields: { oktas: number('oktas', 0, 8, 'cloud, in eighths of the sky') },
    answer: ({ oktas }) => ({
      kind: 'found',
      results: [
        { symbol: 'G/G0', meaning: 'of the light of a clear sky', value: shareThroughCloud(oktas), unit: '' },
        {
          symbol: 'D/G',
          meaning: 'part of what is left that comes from the sky, not straight from the sun',
          value: diffuseShareByCloud(oktas),
          unit: '',
        },
      ],
      working: [
        {
          symbol: 'N/8',
          meaning: 'share of the sky covered',
          value: oktas / 8,
          unit: '',
          formula: 'G/G0 = 1 − 0.75·(N/8)^3.4; D/G = 0.3 + 0.7·(N/8)²',
        },
      ],
      sources: [sources.kasten],
      limits: [
        'The mean of many hours at one place (Hamburg): of a single hour it says little, least at 5 to 7 oktas.',
        'Low rain cloud lets through about a tenth, high thin cloud four fifths (from memory).',
      ],
      cautions: [],
    }),
  });
}

function splitQuestion() {
  return question({
    id: 'sky.sun-and-sky',
    title: 'How much of the light is straight from the sun?',
    fields: {
      global: light('all light, on a level surface'),
      zenith: angle('°', 0, 90, 'zenith angle of the sun: 90° less its altitude'),
      outside: number('W/m²', 1300, 1420, 'sun outside the air that day, on a surface square to it'),
    },
    answer: ({ global, zenith, outside }) => {
      const parts = splitSunlight(global, zenith, outside);
      const level = outside * Math.cos((zenith * Math.PI) / 180);
      const clearness = level > 0 ? Math.min(5, global / level) : 0;
      return {
        kind: 'found',
        results: [
          {
            symbol: 'B',
            meaning: 'straight from the sun, on a surface square to it',
            value: parts.beam_W_m2,
            unit: 'W/m²',
          },
          { symbol: 'D', meaning: 'from the sky, on a level surface', value: parts.diffuse_W_m2, unit: 'W/m²' },
        ],
        working: [
          {
            symbol: 'kt',
            meaning: 'clearness: light on the level over that outside the air',
            value: clearness,
            unit: '',
            formula: 'G/(E0·cos z), held at 5',
          },
          {
            symbol: 'D/G by kt',
            meaning: 'part from the sky',
            value: erbsDiffuseShare(clearness),
            unit: '',
            formula: '1 − 0.09·kt to 0.22; 0.9511 − 0.1604·kt + 4.388·kt² − 16.638·kt³ + 12.336·kt⁴ to 0.8; then 0.165',
          },
        ],
        sources: [sources.erbs],
        limits: [
          'An hour’s mean; of a single hour the part is out by 0.1 to 0.15.',
          'With the sun under 1.15° all counts as light of the sky.',
        ],
        cautions: [],
      };
    },
  });
}

function slopeByRatioQuestion() {
  return question({
    id: 'sky.slope-and-level',
    title: 'How much light does a slope get, beside the level?',
    fields: {
      global: light('all light, on a level surface'),
      diffuse: light('from the sky, on a level surface'),
      ratio: number('', 0, 60, 'direct sun on the slope over that on the level'),
      slope: slopeField(),
      ground: groundField(),
    },
    conflict: ({ global, diffuse }) =>
      diffuse > global
        ? {
            where: 'diffuse',
            wrong: `${diffuse} W/m² from the sky are more than all light, ${global} W/m²`,
            right: 'give at most all light',
          }
        : null,
    answer: ({ global, diffuse, ratio, slope, ground }) => {
      const beam = (global - diffuse) * ratio;
      const sky = diffuse * shareOfSky(slope);
      const fromGround = groundLight_W_m2(global, slope, ground);
      const total = beam + sky + fromGround;
      return {
        kind: 'found',
        results: [
          { symbol: 'GT', meaning: 'on the slope', value: total, unit: 'W/m²' },
          { symbol: 'GT in an hour', meaning: 'the same kept up for an hour', value: total * 0.0036, unit: 'MJ/m²' },
        ],
        working: [
          { symbol: 'BT', meaning: 'straight from the sun', value: beam, unit: 'W/m²', formula: '(G − D)·ratio' },
          { symbol: 'DT', meaning: 'from the sky', value: sky, unit: 'W/m²', formula: 'D·(1 + cos slope)/2' },
          {
            symbol: 'RT',
            meaning: 'from the ground',
            value: fromGround,
            unit: 'W/m²',
            formula: 'G·share·(1 − cos slope)/2',
          },
        ],
        sources: [sources.liuJordan],
        limits: ['A sky as bright all over: 2 to 6 % low for a slope that looks at the sun.'],
        cautions: [],
      };
    },
  });
}

function lightOnSlopeQuestion() {
  return question({
    id: 'sky.light-on-slope',
    title: 'How much light does a slope get with the sun where it stands?',
    fields: {
      beam: number('W/m²', 0, 1400, 'straight from the sun, on a surface square to it'),
      diffuse: light('from the sky, on a level surface'),
      zenith: angle('°', 0, 180, 'zenith angle of the sun: 90° less its altitude'),
      azimuth: angle('°', 0, 360, 'azimuth of the sun, true, from north'),
      slope: slopeField(),
      facing: angle('°', 0, 360, 'the way it looks down its slope, true, from north'),
      ground: groundField(),
      outside: number('W/m²', 1300, 1420, 'sun outside the air that day, on a surface square to it'),
      sky: assuming(
        choice(
          [
            { id: 'Hay and Davies', title: 'the sky brighter round the sun' },
            { id: 'even', title: 'the sky as bright all over' },
          ],
          'how the light of the sky is spread',
        ) as Field<SkySpread>,
        'Hay and Davies',
        'Hay and Davies',
        'a clear sky is brightest round the sun',
      ),
    },
    answer: ({ beam, diffuse, zenith, azimuth, slope, facing, ground, outside, sky }) => {
      const level = zenith < 90 ? beam * Math.cos((zenith * Math.PI) / 180) : 0;
      const on = lightOnPlane(
        { global_W_m2: level + diffuse, beam_W_m2: beam, diffuse_W_m2: diffuse },
        { zenith, azimuth, slope, facing, groundShare: ground, outside_W_m2: outside },
        sky,
      );
      return {
        kind: 'found',
        results: [{ symbol: 'GT', meaning: 'on the slope', value: on.total_W_m2, unit: 'W/m²' }],
        working: [
          {
            symbol: 'I',
            meaning: 'angle between the sun’s rays and square on',
            value: incidenceAngle(zenith, azimuth, slope, facing),
            unit: '°',
            formula: 'cos I = cos z·cos slope + sin slope·sin z·cos(azimuth − facing)',
          },
          { symbol: 'BT', meaning: 'straight from the sun', value: on.beam_W_m2, unit: 'W/m²', formula: 'B·cos I' },
          {
            symbol: 'DT',
            meaning: 'from the sky',
            value: on.sky_W_m2,
            unit: 'W/m²',
            formula: sky === 'even' ? 'D·(1 + cos slope)/2' : 'D·(A·cos I/cos z + (1 − A)·(1 + cos slope)/2), A = B/E0',
          },
          {
            symbol: 'RT',
            meaning: 'from the ground',
            value: on.ground_W_m2,
            unit: 'W/m²',
            formula: '(B·cos z + D)·share·(1 − cos slope)/2',
          },
        ],
        sources: [...(sky === 'even' ? [] : [sources.hayDavies]), sources.liuJordan],
        limits: ['Nothing of shade: a mast, a boom or a shroud over a panel takes more than its width.'],
        cautions: [],
      };
    },
  });
}

const nominalField = () =>
  assuming(
    temperature('°C', 20, 80, 'nominal operating cell temperature (NOCT) from the label'),
    inBase('temperature', assumedNominal_C, '°C'),
    `${assumedNominal_C} °C`,
    'the middle of labels',
  );

function cellQuestion() {
  return question({
    id: 'sky.cell-temperature',
    title: 'How hot do a panel’s cells get?',
    fields: {
      light: light('on the panel'),
      air: temperature('°C', -60, 60, 'temperature of the air'),
      nominal: nominalField(),
      wind: assuming(
        speed('m/s', 0, 60, 'mean wind, 10 m up as forecasts give it') as Field<number | null>,
        null,
        'not counted',
        'the label’s light wind then',
      ),
      efficiency: assuming(
        number('', 0, 0.5, 'share of the light it turns into power; counted with the wind only'),
        0.18,
        '0.18',
        'usual of silicon',
      ),
      gap: assuming(
        length('cm', 0, 1000, 'air behind the panel; counted with the wind only'),
        inBase('length', 10, 'cm'),
        '10 cm',
        'a panel free behind',
      ),
    },
    answer: (given) => {
      const still = cellTemperature_C(given.light, given.air, given.nominal);
      const inWind =
        given.wind === null
          ? null
          : cellTemperatureInWind_C({
              light_W_m2: given.light,
              air_C: given.air,
              wind_m_s: given.wind,
              nominal_C: given.nominal,
              efficiency: given.efficiency,
              gap_cm: inUnit('length', given.gap, 'cm'),
            });
      const { light_W_m2, air_C, wind_m_s } = nominalConditions;
      return {
        kind: 'found',
        results: [{ symbol: 'Tc', meaning: 'temperature of the cells', value: inWind ?? still, unit: '°C' }],
        working: [
          {
            symbol: 'NOCT at',
            meaning: 'light in W/m², air in °C and wind in m/s that the label’s figure is for',
            value: `${light_W_m2}, ${air_C}, ${wind_m_s}`,
            unit: '',
            formula: 'IEC 61215',
          },
          {
            symbol: 'Tc by light',
            meaning: 'in the light wind of the label',
            value: still,
            unit: '°C',
            formula: 'air + (NOCT − 20)/800·light',
          },
          ...(inWind === null
            ? []
            : [
                {
                  symbol: 'rise',
                  meaning: 'over the air, with the wind',
                  value: inWind - given.air,
                  unit: '°C',
                  formula: '(NOCT + less air behind − 20)/800·light·(1 − efficiency/0.9)·9.5/(5.7 + 3.8·0.51·wind)',
                },
              ]),
        ],
        sources: [inWind === null ? sources.ross : sources.windy],
        limits: ['A panel flat on a deck, with no air behind, runs 10 to 15 °C hotter (from memory).'],
        cautions: [],
      };
    },
  });
}

function panelPowerQuestion() {
  return question({
    id: 'sky.panel-power',
    title: 'What does a panel give in this light and heat?',
    fields: {
      peak: number('W', 0, 100_000, 'peak power from the label, at 1000 W/m² and 25 °C'),
      light: light('on the panel'),
      cells: temperature('°C', -60, 150, 'temperature of the cells'),
      coefficient: assuming(
        number('%/K', -1, 0, 'power lost to each degree, from the label'),
        assumedPowerPerDegree_pct,
        `${assumedPowerPerDegree_pct} %/K`,
        'crystalline silicon has −0.29 to −0.5',
      ),
    },
    answer: ({ peak, light: falling, cells, coefficient }) => ({
      kind: 'found',
      results: [{ symbol: 'P', meaning: 'power', value: panelPower_W(peak, falling, cells, coefficient), unit: 'W' }],
      working: [
        {
          symbol: 'γ',
          meaning: 'power lost to each degree',
          value: coefficient,
          unit: '%/K',
          formula: 'P = peak·light/1000·(1 + γ/100·(cells − 25))',
        },
      ],
      sources: [sources.coefficient],
      limits: [
        'In weak light, under 200 W/m², 3 to 5 % less than this (from memory); nothing of dirt, shade, leads, regulator.',
      ],
      cautions: [],
    }),
  });
}
