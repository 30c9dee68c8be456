import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { addDays } from '#units';
import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

/** The sun of random days outside the air, added up from another program's places of the sun. */
export function otherSun(seed: number, days: number): OtherCheck[] {
  const random = seeded(seed);
  const clearDay = questions().find(({ id }) => id === 'solar.clear-day')!;
  const errors = Array.from({ length: days }, (_, n) => {
    const latitude = -65 + 130 * random();
    const longitude = -180 + 360 * random();
    const day = addDays('2026-01-01', (n * 3) % 365);
    const asked = ask(clearDay, { day, latitude, longitude, zone: 'UTC' });
    const ours = asked.kind === 'answered' ? figureOf(asked.answer, 'H0')?.value : undefined;
    const observer = new Observer(latitude, longitude, 0);
    const step_min = 15;
    let theirs = 0;
    for (let minute = step_min / 2; minute < 1440; minute += step_min) {
      const at = new Date(Date.parse(`${day}T00:00Z`) + minute * 60_000);
      const { ra, dec, dist } = Equator(Body.Sun, at, observer, true, true);
      const { altitude } = Horizon(at, observer, ra, dec);
      theirs += ((Math.max(0, Math.sin((altitude * Math.PI) / 180)) * 1361) / dist ** 2) * (step_min / 60_000);
    }
    return typeof ours === 'number' ? ours - theirs : Number.NaN;
  });
  return [
    errorsOf(
      {
        subject: 'solar',
        what: 'sun of a day outside the air, on the level, to 65° of latitude',
        kind: 'another program',
        against: 'astronomy-engine’s places of the sun, every quarter of an hour',
        unit: 'kWh/m²',
        allowed: 0.04,
        why: 'ours is of the sun as seen, lifted by the air: up to half a percent of a day with a low sun',
      },
      errors,
    ),
  ];
}
