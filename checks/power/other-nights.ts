import { Body, Observer, SearchRiseSet } from 'astronomy-engine';
import { restVolts } from '#battery';
import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

/**
 * Nights at anchor by another way: sunset and sunrise from another program, what is drawn as watts over volts times hours, and
 * nothing else, against the runs of `power.night`; the time to the floor and the battery needed likewise.
 */
export function otherNights(seed: number, count: number): OtherCheck[] {
  const share = seeded(seed);
  const between = (low: number, high: number) => low + share() * (high - low);
  const figure = (id: string, fields: Readonly<Record<string, unknown>>, symbol: string): number => {
    const asked = ask(questions().find((each) => each.id === id)!, fields);
    const found = asked.kind === 'answered' ? figureOf(asked.answer, symbol) : undefined;
    return typeof found?.value === 'number' ? found.value : Number.NaN;
  };
  const drawn: number[] = [];
  const mornings: number[] = [];
  const floors: number[] = [];
  const volts = restVolts('agm', 70, 15).likely;
  for (let i = 0; i < count; i++) {
    const latitude = between(-58, 58);
    const longitude = between(-170, 170);
    const day = new Date(Date.UTC(2026, 0, 1 + Math.floor(between(0, 364)))).toISOString().slice(0, 10);
    // clocks by the sun, so that noon is by day
    const offset = Math.round(longitude / 15);
    const zone = offset === 0 ? 'Etc/GMT' : `Etc/GMT${offset > 0 ? '-' : '+'}${Math.abs(offset)}`;
    const noon = Date.parse(`${day}T12:00:00Z`) - offset * 3_600_000;
    const observer = new Observer(latitude, longitude, 0);
    const sunset = SearchRiseSet(Body.Sun, observer, -1, new Date(noon), 2)!.date.getTime();
    const sunrise = SearchRiseSet(Body.Sun, observer, 1, new Date(sunset), 2)!.date.getTime();
    const dark_h = (sunrise - sunset) / 3_600_000;
    const watts = between(1, 6);
    const holds = between(15, 60);
    const at = { chemistry: 'agm', day, latitude, longitude, zone };
    const night_Ah = (watts / volts) * dark_h;
    drawn.push(figure('power.draw', { ...at, watts, when: 'night' }, 'Q') / night_Ah - 1);
    const lost_Ah = (0.03 / 720) * holds * ((sunrise - noon) / 3_600_000);
    const morning = figure('power.night', { ...at, holds, charge: 95, off: 0, 'anchor-light': watts }, 'morning');
    mornings.push(morning - (95 - (100 * (night_Ah + lost_Ah)) / holds));
    const amps = between(0.2, 3);
    const charge = between(55, 100);
    const hours = figure('power.endurance', { chemistry: 'agm', holds, charge, off: 0, current: amps }, 't');
    floors.push(hours / (((charge - 50) * holds) / 100 / amps) - 1);
  }
  const stated = { subject: 'power', kind: 'derived twice' } as const;
  return [
    errorsOf(
      {
        ...stated,
        what: 'ampere-hours of an anchor light, as a share',
        against: 'astronomy-engine’s sunset and sunrise, watts over volts times hours',
        unit: '–',
        allowed: 0.005,
        why: 'the two place sunset up to a minute apart where it is slow',
      },
      drawn,
    ),
    errorsOf(
      {
        ...stated,
        what: 'charge at sunrise after a night at anchor',
        against: 'the same by hand, with 3 % a month lost by itself',
        unit: '%',
        allowed: 0.5,
        why: 'the middle of a thousand runs with lamps off their labels is itself off by about one part in a hundred of what is drawn',
      },
      mornings,
    ),
    errorsOf(
      {
        ...stated,
        what: 'hours until the floor, as a share',
        against: 'charge over the floor, over amps',
        unit: '–',
        allowed: 1e-9,
        why: 'none should remain',
      },
      floors,
    ),
  ];
}
