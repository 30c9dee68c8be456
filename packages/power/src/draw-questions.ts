import { capacityInHours_Ah } from '#battery';
import { addDays, inBase, instantAt, inUnit } from '#units';
import { amount, assuming, choice, duration, type Field, humidity, type Question, question } from '#working';
import { usualVolts } from './circuit-draw.ts';
import { type CircuitUse, circuitSpans } from './circuit-times.ts';
import { dailyDraw } from './daily-draw.ts';
import {
  bandFigure,
  chargeField,
  chemistryField,
  floorField,
  floorOf,
  holdsField,
  offField,
  placeFields,
  powerCautions,
  powerSources,
} from './power-fields.ts';

/** What circuits draw, and how long a steady draw may go on. A function, so that an app that asks none carries none. */
export function drawQuestions(): readonly Question[] {
  return [drawQuestion(), enduranceQuestion()];
}

type When = 'always' | 'night' | 'evening' | 'hours';

function drawQuestion() {
  return question({
    id: 'power.draw',
    title: 'What does a circuit take in a day?',
    fields: {
      watts: amount('power', 'W', 0, 2000, 'what it draws while on'),
      duty: assuming(
        humidity('%', 0, 100, 'share of that time it really draws'),
        100 as never,
        '100 %',
        'a lamp is on or off',
      ),
      when: choice(
        [
          { id: 'always', title: 'day and night' },
          { id: 'night', title: 'sunset to sunrise' },
          { id: 'evening', title: 'sunset to a clock time' },
          { id: 'hours', title: 'so many hours a day' },
        ],
        'when it is on',
      ) as Field<When>,
      until: assuming(
        amount('duration', 'h', 0, 24, 'hour of the clock it goes off, for an evening'),
        inBase('duration', 22.5, 'h'),
        '22.5 h',
        'half past ten',
      ),
      hours: assuming(duration('h', 0, 24, 'hours a day'), inBase('duration', 2, 'h'), '2 h', 'only for hours a day'),
      chemistry: chemistryField(),
      ...placeFields(),
    },
    answer: ({ watts, duty, when, until, hours, chemistry, day, latitude, longitude, zone }) => {
      const place = { latitude_deg: latitude, longitude_deg: longitude, zone };
      const minutes = Math.min(1439, Math.round(inUnit('duration', until, 'min')));
      const clock = `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
      const use: CircuitUse =
        when === 'always'
          ? { kind: 'always' }
          : when === 'hours'
            ? { kind: 'hours', hours_a_day: inUnit('duration', hours, 'h') }
            : { kind: 'sun', from: 'sunset', to: when === 'night' ? 'sunrise' : clock };
      const span = { start: instantAt(day, '12:00', zone), end: instantAt(addDays(day, 1), '12:00', zone) };
      const volts = usualVolts(chemistry, 12);
      const { circuits } = dailyDraw([{ name: 'it', watts, duty_pct: duty, use }], place, span, volts);
      const [row] = circuits;
      return {
        kind: 'found',
        results: [
          bandFigure('Q', 'ampere-hours from noon to noon', row!.perDay_Ah, 'Ah'),
          { symbol: 'I', meaning: 'amps while it is on, on the mean', value: row!.amps, unit: 'A' },
          { symbol: 't', meaning: 'hours it is on', value: row!.hours, unit: 'h' },
        ],
        working: [
          {
            symbol: 'U',
            meaning: 'volts of a battery at 70 %, 15 °C',
            value: volts,
            unit: 'V',
            formula: 'tables of rested volts',
          },
          { symbol: 'I', meaning: 'amps', value: row!.amps, unit: 'A', formula: 'P·duty/U' },
          ...circuitSpans(use, place, span).map(({ start, end }, i) => ({
            symbol: `span ${i + 1}`,
            meaning: 'in use for',
            value: (end - start) / 3_600_000,
            unit: 'h',
            formula: when === 'hours' ? 'spread over the waking hours' : 'by the sun and the clock',
          })),
        ],
        sources: [powerSources.lamps],
        limits: [
          'A 12 V battery. A plain filament lamp draws less as the volts fall; starting a motor is not covered.',
        ],
        cautions: [],
      };
    },
  });
}

function enduranceQuestion() {
  return question({
    id: 'power.endurance',
    title: 'How long can it give a steady draw?',
    fields: {
      chemistry: chemistryField(),
      holds: holdsField(),
      charge: chargeField(),
      off: offField(),
      floor: floorField(),
      current: amount('current', 'A', 0.001, 500, 'steady draw'),
    },
    answer: ({ chemistry, holds, charge, off, floor, current }) => {
      const least = floorOf(floor, chemistry);
      const over = (pct: number) => Math.max(0, ((Math.min(100, pct) - least) / 100) * holds);
      const over_Ah = { low: over(charge - off), likely: over(charge), high: over(charge + off) };
      const hours = {
        low: over_Ah.low / current,
        likely: over_Ah.likely / current,
        high: over_Ah.high / current,
      };
      const emptied_h = holds / current;
      const rated = Math.min(100, Math.max(0.5, emptied_h));
      const given = capacityInHours_Ah(chemistry, holds, rated);
      const working = [
        {
          ...bandFigure('ΔQ', 'over the floor', over_Ah, 'Ah'),
          formula: '(charge − floor)/100·C, the charge as far off as stated',
        },
        {
          symbol: 'floor',
          meaning: 'lowest charge planned for',
          value: least,
          unit: '%',
          formula: floor === null ? 'practice' : 'as given',
        },
        {
          ...bandFigure(
            'C at this draw',
            `what it gives when emptied in ${rated.toFixed(rated < 10 ? 1 : 0)} h`,
            given,
            'Ah',
          ),
          formula: 'usual exponents and data pages',
        },
      ];
      const shared = {
        working,
        sources: [powerSources.floor, { title: 'rate: usual exponents, two data pages', seen: 'recalled' }] as const,
        limits: [
          'Percent is of its own 20-hour charge. At a heavy draw the volts are down before that charge is out: see C at this draw.',
          'No sun, no charger, no rest between.',
        ],
        cautions: powerCautions(chemistry),
      };
      if (over_Ah.high <= 0)
        return {
          kind: 'truth',
          statement: 'it is under its floor already',
          because: `${charge} % is under ${least} %, however far it may be off`,
          results: [],
          ...shared,
        };
      return { kind: 'found', results: [bandFigure('t', 'until the floor', hours, 'h')], ...shared };
    },
  });
}
