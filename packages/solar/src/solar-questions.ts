import { cellTemperature_C, dayOfYear } from '#sky';
import { addDays, inBase, instantAt } from '#units';
import { angle, assuming, count, humidity, number, type Question, question, series, temperature } from '#working';
import { bandOf } from './band.ts';
import { clearDay } from './clear-day.ts';
import { assumedOfClouds, lightsOf } from './clouds.ts';
import { panelDay } from './panel-day.ts';
import { assumedMeanClearness, assumedSeason } from './season-clearness.ts';
import {
  cloudsOf,
  nominalOf,
  panelCautions,
  panelFields,
  panelOf,
  placeFields,
  skyField,
  solarSources,
} from './solar-fields.ts';
import { assumedOfPanels, leadOhms, panelGives } from './solar-panel.ts';
import { assumedKept, keptBand, keptLearnt, leastExpected_Ah } from './sun-kept.ts';
import { usualAir } from './usual-air.ts';

/** The questions about panels and sun. A function, so that an app that asks none carries none. */
export function solarQuestions(): readonly Question[] {
  return [clearDayQuestion(), seasonQuestion(), panelQuestion(), dayQuestion(), keptQuestion()];
}

const airField = () => temperature('°C', -40, 50, 'air about noon');
const noonAirField = () =>
  assuming(airField(), inBase('temperature', 18, '°C'), '18 °C', 'it moves the answer by some percent at most');
const placeOf = (given: { readonly latitude: number; readonly longitude: number; readonly elevation: number }) => ({
  latitude_deg: given.latitude,
  longitude_deg: given.longitude,
  elevation_m: given.elevation,
});

function clearDayQuestion() {
  return question({
    id: 'solar.clear-day',
    title: 'How much sun does a clear day bring?',
    fields: {
      ...placeFields(),
      haze: assuming<number | null>(
        number('', 0, 0.45, 'optical depth of the haze at 700 nm: 0.03 very clean, 0.1 usual, 0.3 hazy'),
        null,
        'the usual one',
        'by latitude, season and height; our assumption',
      ),
      water: assuming<number | null>(
        number('cm', 0.1, 10, 'water in the air above, if it all rained out'),
        null,
        'the usual',
        'by latitude, season and height; our assumption',
      ),
    },
    answer: (given) => {
      const span = {
        start: instantAt(given.day, '00:00', given.zone),
        end: instantAt(addDays(given.day, 1), '00:00', given.zone),
      };
      const usual = usualAir(given.latitude, dayOfYear((span.start + span.end) / 2), given.elevation);
      const air = { depth: given.haze ?? usual.depth, water_cm: given.water ?? usual.water_cm };
      const found = clearDay(placeOf(given), span, air);
      const working = [
        {
          symbol: 'τ',
          meaning: 'optical depth of the haze at 700 nm',
          value: found.air.depth,
          unit: '',
          formula: 'given, or τ0·exp(−h/1500 m)',
        },
        {
          symbol: 'w',
          meaning: 'water in the air above',
          value: found.air.water_cm,
          unit: 'cm',
          formula: 'given, or w0·exp(−h/2100 m)',
        },
        {
          symbol: 'highest',
          meaning: 'the sun at its highest',
          value: found.highest_deg,
          unit: '°',
          formula: 'sky.sun-position',
        },
        {
          symbol: 'H0',
          meaning: 'outside the air, on the level',
          value: found.outside_kWh,
          unit: 'kWh/m²',
          formula: 'Σ I0·cos z·Δt',
        },
      ];
      const shared = {
        working,
        sources: [solarSources.clear, solarSources.haze],
        limits: [
          'A level horizon; a hill takes the low sun away. Snow around adds some percent.',
          'Held against measured clear days in checks/solar: within 8 % of the day’s energy on the level; the beam by itself less well.',
        ],
        cautions: [],
      };
      if (found.global_kWh <= 0)
        return {
          kind: 'truth',
          statement: 'the sun does not rise',
          because: `at its highest it stands ${found.highest_deg.toFixed(1)}° over the horizon`,
          results: [],
          ...shared,
        };
      return {
        kind: 'found',
        results: [
          { symbol: 'H', meaning: 'on a level surface', value: found.global_kWh, unit: 'kWh/m²' },
          {
            symbol: 'Hb',
            meaning: 'of the beam, on a surface that follows the sun',
            value: found.beam_kWh,
            unit: 'kWh/m²',
          },
          { symbol: 'Hd', meaning: 'from the sky without the sun, on the level', value: found.sky_kWh, unit: 'kWh/m²' },
        ],
        ...shared,
      };
    },
  });
}

function seasonQuestion() {
  return question({
    id: 'solar.season',
    title: 'How dull and how fair are a season’s days, where nobody has forecast them?',
    fields: {
      latitude: angle('°', -90, 90, 'latitude, north positive'),
      'day-of-year': count(1, 366, 'day of the year'),
    },
    answer: ({ latitude, 'day-of-year': season }) => {
      const through = bandOf(
        lightsOf({ kind: 'season' }, latitude, season).map(
          ({ covered, under, open }) => open * (1 - covered[0]!) + under * covered[0]!,
        ),
      );
      const mean = assumedMeanClearness(latitude, season);
      return {
        kind: 'found',
        results: [
          {
            symbol: 'k',
            meaning: 'of a clear day’s light, on the middle day; the ends are passed by one day in twenty each',
            value: 100 * through.likely,
            low: 100 * through.low,
            high: 100 * through.high,
            unit: '%',
          },
        ],
        working: [
          {
            symbol: 'mean',
            meaning: 'of all days, mean of the places',
            value: 100 * mean,
            unit: '%',
            formula: 'assumed, by latitude and season',
          },
          {
            symbol: 'places',
            meaning: 'spread of the places of one latitude, as a standard deviation',
            value: 100 * assumedSeason.placeSpread,
            unit: '%',
            formula: 'assumed',
          },
          {
            symbol: 'spell',
            meaning: 'of a day’s luck that the next keeps, as a correlation',
            value: assumedSeason.spell,
            unit: '',
            formula: 'assumed; 0.29 found in Canada',
          },
        ],
        sources: [solarSources.season, solarSources.spell],
        limits: [
          'Of no place in particular: a desert and a rainy coast of one latitude differ by more than the seasons do. What the keeper reads goes before.',
        ],
        cautions: [],
      };
    },
  });
}

function panelQuestion() {
  const { watts, regulator, volts, coefficient, 'lead-length': length, 'lead-area': area } = panelFields();
  return question({
    id: 'solar.panel',
    title: 'What does a panel give in a light?',
    fields: {
      light: number('W/m²', 0, 1500, 'light on the panel; 1000 is the label’s'),
      cell: assuming<number | null>(
        temperature('°C', -40, 120, 'temperature of its cells'),
        null,
        'worked out from the air',
        'seldom measured',
      ),
      air: assuming(airField(), inBase('temperature', 18, '°C'), '18 °C', 'where the cells’ own is not given'),
      watts,
      regulator,
      volts,
      coefficient,
      'lead-length': length,
      'lead-area': area,
    },
    answer: (given) => {
      const panel = panelOf({ ...given, tilt: 0, heading: 0 });
      const cell_C = given.cell ?? cellTemperature_C(given.light, given.air, assumedOfPanels.operatingCell_C);
      const gives = panelGives(panel, nominalOf(given), {
        onPanel_W_m2: given.light,
        cell_C,
      });
      return {
        kind: 'found',
        results: [
          { symbol: 'I', meaning: 'into the battery, before it says what it takes', value: gives.amps, unit: 'A' },
          { symbol: 'P', meaning: 'power that reaches it', value: gives.reaches_W, unit: 'W' },
        ],
        working: [
          {
            symbol: 'Tc',
            meaning: 'its cells',
            value: cell_C,
            unit: '°C',
            formula: given.cell === null ? 'Ta + (NOCT − 20)/800·G' : 'given',
          },
          {
            symbol: 'Pm',
            meaning: 'its power at its best',
            value: gives.best_W,
            unit: 'W',
            formula: 'P·G/1000·(1 + γ·(Tc − 25))',
          },
          {
            symbol: 'U',
            meaning: 'volts it is held at',
            value: gives.panel_V,
            unit: 'V',
            formula: given.regulator === 'tracking' ? 'of its best power' : 'battery, regulator and leads',
          },
          { symbol: 'R', meaning: 'of the leads', value: leadOhms(panel), unit: 'Ω', formula: 'ρ·L/S' },
          { symbol: 'Pl', meaning: 'lost in the leads', value: gives.leads_W, unit: 'W', formula: 'I²·R' },
        ],
        sources: [solarSources.panel],
        limits: [
          `A plate that gives its peak at ${assumedOfPanels.peak_V} V for a 12 V battery. A tracking regulator passes on ${100 * assumedOfPanels.tracking} %.`,
          'The shade of one rope takes more than its own share.',
        ],
        cautions: panelCautions,
      };
    },
  });
}

function dayQuestion() {
  return question({
    id: 'solar.day',
    title: 'How many ampere-hours does a panel bring in a day?',
    fields: {
      ...placeFields(),
      ...panelFields(),
      sky: skyField(),
      cloud: assuming<readonly number[] | null>(
        series(
          'humidity',
          '%',
          0,
          100,
          { least: 1, most: 24 },
          'cloud of a forecast, in even parts of the day from midnight; it goes before the word',
        ),
        null,
        'none',
        'no forecast was given',
      ),
      'cloud-error': assuming(
        number('oktas', 0, 4, 'how far the forecast is mostly off, as a standard deviation'),
        assumedOfClouds.error_oktas,
        `${assumedOfClouds.error_oktas} oktas`,
        'a forecast for tomorrow; our assumption',
      ),
      air: noonAirField(),
    },
    answer: (given) => {
      const panel = panelOf(given);
      const clouds = cloudsOf(given.sky, given.cloud, given['cloud-error']);
      const kept = keptBand(given.kept);
      const asked = { panel, kept, nominal_V: nominalOf(given), place: placeOf(given), air_C: () => given.air };
      const found = panelDay(asked, given.day, given.zone, clouds);
      const working = [
        {
          symbol: 'Hp',
          meaning: 'a clear day on the panel',
          value: found.clearOnPanel_kWh,
          unit: 'kWh/m²',
          formula: 'beam, sky and ground on its slope, step by step',
        },
        {
          symbol: 'Qc',
          meaning: 'of a clear day, through regulator, leads and heat',
          value: found.clearDay_Ah,
          unit: 'Ah',
          formula: 'Σ I·Δt, solar.panel',
        },
        {
          symbol: 'Qs',
          meaning: 'under this sky, nothing in the way',
          value: found.unshaded_Ah.likely,
          low: found.unshaded_Ah.low,
          high: found.unshaded_Ah.high,
          unit: 'Ah',
          formula:
            clouds.kind === 'season' ? 'the season’s days, solar.season' : 'sun and cloud by what is said of the sky',
        },
        {
          symbol: 'kept',
          meaning: 'left by mast, boom and ropes',
          value: 100 * kept.likely,
          low: 100 * kept.low,
          high: 100 * kept.high,
          unit: '%',
          formula: given.kept === null ? 'assumed' : `given, a guess within ${assumedKept.guessOff_pct} %`,
        },
        {
          symbol: 'left',
          meaning: 'by dirt, age and the label’s promise',
          value: 100 * assumedOfPanels.left.likely,
          low: 100 * assumedOfPanels.left.low,
          high: 100 * assumedOfPanels.left.high,
          unit: '%',
          formula: 'assumed',
        },
      ];
      const { likely, low, high } = found.brought_Ah;
      return {
        kind: 'found',
        results: [
          {
            symbol: 'Q',
            meaning: 'into the battery, before it says what it takes',
            value: likely,
            low,
            high,
            unit: 'Ah',
          },
        ],
        working,
        sources: [
          solarSources.clear,
          solarSources.haze,
          clouds.kind === 'season' ? solarSources.season : solarSources.cloud,
          solarSources.panel,
          solarSources.left,
        ],
        limits: [
          'A battery near full takes less: power.night counts that.',
          'At anchor a boat swings: only a level panel faces the same way all day.',
        ],
        cautions: panelCautions,
      };
    },
  });
}

function keptQuestion() {
  const days = (meaning: string) => series('charge', 'Ah', 0, 1000, { least: 1, most: 60 }, meaning);
  const offField = (meaning: string, off: number) =>
    assuming(number('%', 1, 100, meaning), off, `${off} %`, 'a day told by its sky; our assumption');
  return question({
    id: 'solar.kept',
    title: 'How much of the sun does the panel keep, by what came in?',
    fields: {
      expected: days('what each day was to bring with nothing in the way'),
      brought: days('what each day brought, by the readings'),
      'expected-off': offField('how far what was to come may be off, either way', 30),
      'brought-off': offField('how far what came may be off, either way', 15),
      kept: assuming<number | null>(
        humidity('%', 0, 100, 'as it was guessed before'),
        null,
        `${assumedKept.low_pct} to ${assumedKept.high_pct} %, likely ${assumedKept.likely_pct}`,
        'nobody has said; our assumption',
      ),
    },
    conflict: ({ expected, brought }) =>
      expected.length === brought.length
        ? null
        : {
            where: 'brought',
            wrong: `${brought.length} days brought stand beside ${expected.length} expected`,
            right: 'give one of each a day, in the same order',
          },
    answer: ({ expected, brought, 'expected-off': farOff, 'brought-off': readOff, kept }) => {
      const before = keptBand(kept);
      const band = (value: number, off_pct: number) => ({
        low: value * Math.max(0, 1 - off_pct / 100),
        likely: value,
        high: value * (1 + off_pct / 100),
      });
      const learnt = keptLearnt(
        before,
        expected.map((each, i) => ({ expected_Ah: band(each, farOff), brought_Ah: band(brought[i]!, readOff) })),
      );
      return {
        kind: 'found',
        results: [
          {
            symbol: 'kept',
            meaning: 'of the sun, in 9 of 10',
            value: 100 * learnt.likely,
            low: 100 * learnt.low,
            high: 100 * learnt.high,
            unit: '%',
          },
        ],
        working: [
          {
            symbol: 'before',
            meaning: 'as it was guessed',
            value: 100 * before.likely,
            low: 100 * before.low,
            high: 100 * before.high,
            unit: '%',
            formula: kept === null ? 'assumed' : 'given',
          },
          ...expected.map((each, i) => ({
            symbol: `day ${i + 1}`,
            meaning: `${brought[i]!.toFixed(2)} of ${each.toFixed(2)} Ah`,
            value: each > leastExpected_Ah ? (100 * brought[i]!) / each : 0,
            unit: '%',
            formula: each > leastExpected_Ah ? 'brought/expected' : 'nothing expected: says nothing',
          })),
        ],
        sources: [{ title: 'Bayes’ rule over a list of shares (README)', seen: 'our derivation' }],
        limits: [
          'On days that filled the battery less came in than could have: leave those out.',
          'A day far from the others counts less: its sky may have been misjudged.',
        ],
        cautions: [],
      };
    },
  });
}
