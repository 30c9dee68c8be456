import { inBase } from '#units';
import {
  amount,
  angle,
  assuming,
  choice,
  day,
  type Field,
  humidity,
  length,
  number,
  type Source,
  timeZone,
} from '#working';
import { type Clouds, type SkyWord, skyWords } from './clouds.ts';
import { assumedOfPanels, type SolarPanel } from './solar-panel.ts';
import { assumedKept } from './sun-kept.ts';

/** The fields that questions about a panel share, each made anew. */
export const placeFields = () => ({
  day: day('day at the place'),
  latitude: angle('°', -90, 90, 'latitude, north positive'),
  longitude: angle('°', -180, 180, 'longitude, east positive'),
  zone: timeZone('time zone of the clocks there'),
  elevation: assuming(
    length('m', -400, 5000, 'height above the sea'),
    inBase('length', 0, 'm'),
    '0 m',
    'boats lie at the sea',
  ),
});

type RegulatorKind = SolarPanel['regulator'];
export const panelFields = () => ({
  watts: amount('power', 'W', 0.1, 5000, 'peak watts on the label'),
  tilt: assuming(angle('°', 0, 90, 'tilt from level'), inBase('angle', 0, '°'), '0°', 'it lies on the deck'),
  heading: assuming(
    angle('°', 0, 360, 'the way it faces, true, from north'),
    inBase('angle', 180, '°'),
    '180°',
    'it does not matter to a level panel',
  ),
  regulator: assuming(
    choice(
      [
        { id: 'none', title: 'none: the panel is wired to the battery' },
        { id: 'simple', title: 'simple: it connects the panel and stops when full' },
        { id: 'tracking', title: 'tracking: it turns spare volts into amps' },
      ],
      'regulator',
    ) as Field<RegulatorKind>,
    'simple',
    'simple',
    'most small panels have one',
  ),
  volts: assuming(
    choice(
      [
        { id: '6', title: '6 V' },
        { id: '12', title: '12 V' },
        { id: '24', title: '24 V' },
      ],
      'nominal volts of the battery',
    ) as Field<'6' | '12' | '24'>,
    '12',
    '12 V',
    'small boats have 12 V',
  ),
  coefficient: assuming(
    number('%/°C', -2, 0, 'change of its power for each °C, from the label'),
    assumedOfPanels.coefficient_pct_C,
    `${assumedOfPanels.coefficient_pct_C} %/°C`,
    'crystalline silicon, from memory of labels',
  ),
  'lead-length': assuming(
    length('m', 0, 100, 'length of its leads, there and back'),
    inBase('length', 0, 'm'),
    '0 m',
    'not stated: nothing is lost in them',
  ),
  'lead-area': assuming(
    amount('area', 'mm²', 0.1, 200, 'section of its leads'),
    inBase('area', 1.5, 'mm²'),
    '1.5 mm²',
    'usual with small panels',
  ),
  kept: assuming<number | null>(
    humidity('%', 0, 100, 'of the sun that gets past mast, boom and ropes'),
    null,
    `${assumedKept.low_pct} to ${assumedKept.high_pct} %, likely ${assumedKept.likely_pct}`,
    'nobody has said: a small boat at anchor, our assumption',
  ),
});

export interface PanelValues {
  readonly watts: number;
  readonly tilt: number;
  readonly heading: number;
  readonly regulator: RegulatorKind;
  readonly volts: '6' | '12' | '24';
  readonly coefficient: number;
  readonly 'lead-length': number;
  readonly 'lead-area': number;
}

export const panelOf = (given: PanelValues): SolarPanel => ({
  peak_W: given.watts,
  tilt_deg: given.tilt,
  heading_deg: given.heading,
  regulator: given.regulator,
  coefficient_pct_C: given.coefficient,
  // the section is held in square metres
  leads:
    given['lead-length'] > 0
      ? { lengthThereAndBack_m: given['lead-length'], area_mm2: given['lead-area'] * 1e6 }
      : null,
});
export const nominalOf = ({ volts }: Pick<PanelValues, 'volts'>): 6 | 12 | 24 =>
  volts === '6' ? 6 : volts === '12' ? 12 : 24;

export const skyField = () =>
  assuming<SkyWord | null>(
    choice(
      (Object.keys(skyWords) as SkyWord[]).map((id) => ({ id, title: `${id}: ${skyWords[id].means}` })),
      'the sky as one would say it',
    ) as Field<SkyWord>,
    null,
    'the season’s days',
    'no forecast was given',
  );

/** What is said of the sky; cloud in percent, in even parts of the day from midnight, goes before a word. */
export const cloudsOf = (sky: SkyWord | null, cloud: readonly number[] | null, error_oktas: number): Clouds => {
  if (cloud !== null)
    return {
      kind: 'oktas',
      oktas: Array.from({ length: 24 }, (_, hour) => (8 * cloud[Math.floor((hour * cloud.length) / 24)]!) / 100),
      error_oktas,
    };
  return sky === null ? { kind: 'season' } : { kind: 'word', word: sky };
};

export const solarSources = {
  clear: { title: 'clear sky: P. Ineichen, Solar Energy 82 (2008) 758–762', seen: 'recalled' },
  haze: { title: 'haze and water of a usual clear day by latitude, season and height', seen: 'our assumption' },
  cloud: { title: 'F. Kasten and G. Czeplak, Solar Energy 24 (1980) 177–189', seen: 'read second-hand' },
  season: {
    title: 'shape of a season’s days: P. Bendt, M. Collares-Pereira and A. Rabl (1981); its means are ours',
    seen: 'recalled',
  },
  spell: {
    title: 'V. Graham, K. Hollands and T. Huget (1988): a day keeps 0.29 of the luck of the day before',
    seen: 'recalled',
  },
  panel: { title: 'panel of silicon: label, heat, curve of two constants', seen: 'recalled' },
  left: { title: 'what dirt, age and the label’s promise leave: 80 to 98 %', seen: 'our assumption' },
} as const satisfies Readonly<Record<string, Source>>;

export const panelCautions = [
  'Cover the panel before its leads are undone: it gives volts whenever there is light.',
  'Battery to the regulator first, panel last; off again panel first.',
  'A fuse stands at the battery end of the leads; the panel cannot blow one, the battery can.',
];
