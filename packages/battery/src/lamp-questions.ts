import { inBase } from '#units';
import { amount, assuming, choice, type Field, number, type Question, question } from '#working';
import { sources } from './battery-fields.ts';
import { intensity_cd, type Lamp, lamps, type NavigationLight, seenFrom_nm } from './lamps.ts';

/** The questions about lights. A function, so that an app that asks none carries none. */
export function lampQuestions(): readonly Question[] {
  return [lampDrawQuestion(), lightRangeQuestion()];
}

function lampDrawQuestion() {
  return question({
    id: 'battery.lamp',
    title: 'What does a light draw?',
    fields: {
      lamp: choice(
        (Object.keys(lamps) as Lamp[]).map((id) => ({ id, title: lamps[id].title })),
        'which light',
      ) as Field<Lamp>,
      watts: assuming<number | null>(
        amount('power', 'W', 0.1, 200, 'watts on its label'),
        null,
        'what is sold',
        'the label was not given',
      ),
      volts: assuming(
        amount('voltage', 'V', 9, 30, 'volts it gets'),
        inBase('voltage', 12.5, 'V'),
        '12.5 V',
        'a battery at anchor',
      ),
    },
    answer: ({ lamp, watts, volts }) => {
      const sold = lamps[lamp];
      const [low, likely, high] = watts === null ? [sold.low, sold.likely, sold.high] : [watts, watts, watts];
      return {
        kind: 'found',
        results: [
          {
            symbol: 'P',
            meaning: watts === null ? 'usual watts' : 'watts of the label',
            value: likely,
            low,
            high,
            unit: 'W',
          },
          { symbol: 'I', meaning: 'current', value: likely / volts, low: low / volts, high: high / volts, unit: 'A' },
          {
            symbol: 'night',
            meaning: 'of a night of 12 hours',
            value: (12 * likely) / volts,
            low: (12 * low) / volts,
            high: (12 * high) / volts,
            unit: 'Ah',
          },
        ],
        working: [{ symbol: 'I of P', meaning: 'current', value: likely / volts, unit: 'A', formula: 'P/U' }],
        sources: [{ title: 'what is sold', seen: 'common practice' }],
        limits: [
          'A label is out by a fifth either way. LED lights with a regulator draw more amperes as the volts fall.',
        ],
        cautions: [],
      };
    },
  });
}

function lightRangeQuestion() {
  return question({
    id: 'battery.light-range',
    title: 'How bright must a navigation light be?',
    fields: {
      light: choice(
        (Object.keys(seenFrom_nm) as NavigationLight[]).map((id) => ({ id, title: id })),
        'which light of a boat under 12 m',
      ) as Field<NavigationLight>,
      range: assuming<number | null>(
        number('nmi', 0.5, 6, 'miles it must be seen'),
        null,
        'by the rule',
        'rule 22 gives it by the light',
      ),
    },
    answer: ({ light, range }) => {
      const miles = range ?? seenFrom_nm[light];
      return {
        kind: 'found',
        results: [
          { symbol: 'I', meaning: 'least luminous intensity', value: intensity_cd(miles), unit: 'cd' },
          { symbol: 'range', meaning: 'it must be seen', value: miles, unit: 'nm' },
        ],
        working: [
          {
            symbol: 'K',
            meaning: 'share of the light that passes a mile of clear air',
            value: 0.8,
            unit: '',
            formula: 'I = 3.43·10⁶·T·D²·K^−D, T = 2·10⁻⁷ lux',
          },
        ],
        sources: [
          {
            title: 'COLREG 1972 annex I section 8 and rule 22(c)',
            seen: light === 'stern' ? 'recalled' : 'read second-hand',
          },
          sources.practice,
        ],
        limits: ['A light must carry its approval: watts say nothing of it. Your country may ask more.'],
        cautions: ['A light too dim is not seen in time by a ship: fit what is approved for the range.'],
      };
    },
  });
}
