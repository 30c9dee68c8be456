import { Dice } from '#battery';
import { assumedSeason } from '#solar';
import { addDays, clockOfMinute, inBase, instantAt, inUnit, localAt } from '#units';
import { amount, assuming, count, humidity, type Question, question } from '#working';
import { assumedTaper_h } from './acceptance.ts';
import type { CircuitDraw } from './circuit-draw.ts';
import { endurance } from './endurance.ts';
import {
  bandFigure,
  chanceFigure,
  chargeField,
  chemistryField,
  floorField,
  floorOf,
  holdsField,
  offField,
  placeFields,
  powerCautions,
  powerSources,
  wattsField,
} from './power-fields.ts';
import { assumedWorn_pct, sizing, usualSizes } from './sizing.ts';
import { daysDoNotRise, panelFields, sunAsked, sunDayAsked, sunField } from './sun-asked.ts';
import { assumedSpell } from './sun-by-days.ts';

/** The chance of lasting, and what to fit. A function, so that an app that asks none carries none. */
export function nightQuestions(): readonly Question[] {
  return [nightQuestion(), sizingQuestion()];
}

const loadFields = () => ({
  'anchor-light': wattsField('anchor light, sunset to sunrise'),
  evening: wattsField('cabin and instruments, sunset to 22:30'),
  standing: wattsField('what draws day and night'),
});
const circuitsOf = (given: {
  readonly 'anchor-light': number;
  readonly evening: number;
  readonly standing: number;
}): CircuitDraw[] => [
  {
    name: 'anchor light',
    watts: given['anchor-light'],
    duty_pct: 100,
    use: { kind: 'sun', from: 'sunset', to: 'sunrise' },
  },
  { name: 'evening', watts: given.evening, duty_pct: 100, use: { kind: 'sun', from: 'sunset', to: '22:30' } },
  { name: 'standing draw', watts: given.standing, duty_pct: 100, use: { kind: 'always' } },
];
const runs = 1000;
const hour = 3_600_000;
const shownAt = (at: number, zone: string) => {
  const { day, minuteOfDay } = localAt(at, zone);
  return `${day} ${clockOfMinute(minuteOfDay)}`;
};

function nightQuestion() {
  return question({
    id: 'power.night',
    title: 'Does it last the night, and the nights after it?',
    fields: {
      chemistry: chemistryField(),
      holds: holdsField(),
      charge: chargeField(),
      off: offField(),
      floor: floorField(),
      ...loadFields(),
      panel: assuming(
        amount('power', 'W', 0, 1000, 'peak watts of the panel'),
        inBase('power', 0, 'W'),
        '0 W',
        'no panel stated',
      ),
      ...panelFields(),
      sun: sunField('no days were told'),
      nights: assuming(count(1, 14, 'nights'), 1, '1', 'tonight'),
      ...placeFields(),
    },
    conflict: daysDoNotRise,
    answer: (given) => {
      const { chemistry, holds, charge, off, floor, nights, day, latitude, longitude, zone } = given;
      const place = { latitude_deg: latitude, longitude_deg: longitude, zone };
      const from = instantAt(day, '12:00', zone);
      const dice = new Dice(11);
      const charge_pct = Float64Array.from({ length: runs }, () =>
        Math.min(100, Math.max(0, charge + (off / 1.645) * dice.normal())),
      );
      const days = nights + 4;
      const asked = { ...given, panel_W: given.panel };
      const sunDay = sunDayAsked(asked, place, day);
      const sun = sunAsked(asked, { place, from, days, draws: runs, seed: 5 });
      const found = endurance({
        chemistry,
        nominal_V: 12,
        states: { charge_pct, capacity_Ah: new Float64Array(runs).fill(holds) },
        floor_pct: floorOf(floor, chemistry),
        circuits: circuitsOf(given),
        aboard: null,
        place,
        from,
        nights,
        sun,
        chargers: [],
        runs,
        seed: 1,
      });
      const last = found.nights.at(-1)!;
      const hours = found.hoursLeft;
      return {
        kind: 'found',
        results: [
          chanceFigure(
            'P',
            nights === 1 ? 'it stays over the floor until sunrise' : `it stays over the floor ${nights} nights`,
            last.lasts,
          ),
          bandFigure('morning', 'charge at that sunrise', last.morning_pct, '%'),
          ...(hours.low === null
            ? []
            : [
                {
                  symbol: 'floor reached',
                  meaning: 'in one of twenty runs by',
                  value: hours.low,
                  unit: 'h',
                  inWords: shownAt(from + hours.low * hour, zone),
                },
              ]),
        ],
        working: [
          ...found.nights.flatMap((night, n) => [
            {
              ...bandFigure(
                `night ${n + 1}`,
                `drawn from ${shownAt(night.start, zone)} to ${shownAt(night.end, zone)}`,
                night.drawn_Ah,
                'Ah',
              ),
              formula: 'P/U, each lamp as far off as it may be',
            },
            {
              ...bandFigure(
                `before night ${n + 1}`,
                'taken in from sunrise, or from noon of the first day',
                night.storedBefore_Ah,
                'Ah',
              ),
              formula: 'what the sun brings over what is used, as the battery takes it',
            },
            {
              ...chanceFigure(
                `P${n + 1}`,
                'over the floor until its sunrise; the ends are the error of counting',
                night.lasts,
              ),
              formula: `${night.lasts.of} of ${night.lasts.runs} runs`,
            },
          ]),
          ...(sunDay === null
            ? []
            : [
                {
                  ...bandFigure('sun', 'brought in a day, before the battery says what it takes', sunDay, 'Ah'),
                  formula: sunDay.formula,
                },
              ]),
          {
            symbol: 'U',
            meaning: 'volts for watts into amps',
            value: found.usual_V,
            unit: 'V',
            formula: 'rested at 70 %, 15 °C',
          },
          {
            symbol: 'taper',
            meaning: 'near full: amps are what it lacks in',
            value: assumedTaper_h[chemistry].likely,
            unit: 'h',
            formula: 'assumed',
          },
          {
            symbol: 'spells',
            meaning: 'what a day’s luck with the sun leaves to the next',
            value: given.sun === null ? assumedSeason.spell : assumedSpell,
            unit: '',
            formula: given.sun === null ? 'assumed, besides the place’s own luck' : 'assumed',
          },
        ],
        sources: [
          powerSources.runs,
          powerSources.lamps,
          powerSources.floor,
          powerSources.taper,
          powerSources.stored,
          powerSources.sun,
        ],
        limits: [
          'From noon of the day. Only the loads stated; a battery that was not read is not known.',
          'A chance is a count of runs: another thousand would differ within the ends given.',
        ],
        cautions: powerCautions(chemistry),
      };
    },
  });
}

function sizingQuestion() {
  return question({
    id: 'power.sizing',
    title: 'What battery and panel do the nights wanted need?',
    fields: {
      chemistry: chemistryField(),
      floor: floorField(),
      'set-out': assuming(
        humidity('%', 1, 100, 'charge to set out with'),
        95 as never,
        '95 %',
        'a day of charge short of full',
      ),
      kept: assuming(
        humidity('%', 1, 110, 'of its label it still holds when old'),
        assumedWorn_pct as never,
        `${assumedWorn_pct} %`,
        'it is replaced when it holds less',
      ),
      ...loadFields(),
      panel: assuming(
        amount('power', 'W', 0.1, 1000, 'panel that the sun is told or worked out for'),
        inBase('power', 10, 'W'),
        '10 W',
        'so that they scale',
      ),
      ...panelFields(),
      sun: sunField('no days were told: for that panel, laid as stated'),
      nights: count(1, 7, 'nights wanted'),
      chance: assuming(
        humidity('%', 1, 99.9, 'chance wanted of lasting them all'),
        95 as never,
        '95 %',
        'one outing in twenty may fall short',
      ),
      ...placeFields(),
    },
    conflict: daysDoNotRise,
    answer: (given) => {
      const { chemistry, floor, 'set-out': start, kept, panel, nights, chance, day, latitude, longitude, zone } = given;
      const place = { latitude_deg: latitude, longitude_deg: longitude, zone };
      const from = instantAt(day, '12:00', zone);
      const per = inUnit('power', panel, 'W');
      const drawn = sunAsked({ ...given, panel_W: per }, { place, from, days: nights + 4, draws: 300, seed: 5 });
      const found = sizing({
        chemistry,
        nominal_V: 12,
        floor_pct: floorOf(floor, chemistry),
        start_pct: start,
        kept_pct: kept,
        circuits: circuitsOf(given),
        place,
        from,
        nights,
        chance_pct: chance,
        sunPerWatt: drawn === null ? null : { ...drawn, amps: drawn.amps.map((amps) => amps / per) },
        battery_Ah: usualSizes.battery_Ah,
        panel_W: usualSizes.panel_W,
        runs: 300,
        seed: 1,
      });
      const shared = {
        working: found.tried.map((each) => ({
          ...chanceFigure(
            `${each.battery_Ah} Ah, ${each.panel_W} W`,
            `all nights to ${addDays(day, nights)}`,
            each.lasts,
          ),
          formula: `${each.lasts.of} of ${each.lasts.runs} runs`,
        })),
        sources: [powerSources.runs, powerSources.lamps, powerSources.floor, powerSources.taper, powerSources.sun],
        limits: [
          'Sizes as they are usually sold, from memory. The error of counting is in the ends of each chance: near the edge a size more is safe.',
          'The sun is taken to grow with the panel; wiring and regulator must be sized for it too.',
        ],
        cautions: powerCautions(chemistry),
      };
      const [first] = found.enough;
      if (!first)
        return {
          kind: 'truth',
          statement: 'no usual size lasts the nights wanted',
          because: `the largest, ${usualSizes.battery_Ah.at(-1)} Ah, was looked at with every panel`,
          results: [],
          ...shared,
        };
      return {
        kind: 'found',
        results: [
          {
            symbol: 'battery',
            meaning: `smallest with ${first.panel_W} W of panel`,
            value: first.battery_Ah,
            unit: 'Ah',
          },
          ...found.enough.flatMap((each, i) => {
            const smaller = found.oneSmaller[i];
            return [
              chanceFigure(`${each.battery_Ah} Ah, ${each.panel_W} W`, 'enough: chance of all nights', each.lasts),
              ...(smaller
                ? [
                    chanceFigure(
                      `${smaller.battery_Ah} Ah, ${smaller.panel_W} W`,
                      'the next smaller battery: not enough',
                      smaller.lasts,
                    ),
                  ]
                : []),
            ];
          }),
        ],
        ...shared,
      };
    },
  });
}
