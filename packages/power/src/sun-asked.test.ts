import { expect, it } from 'vitest';
import { daysDoNotRise, type SunAsked, sunAsked, sunDayAsked } from './sun-asked.ts';

const place = { latitude_deg: 50, longitude_deg: 0, zone: 'UTC' };
const asked = (changed: Partial<SunAsked>): SunAsked => ({
  sun: null,
  panel_W: 20,
  tilt: 0,
  heading: 180,
  regulator: 'simple',
  'sun-kept': 100,
  ...changed,
});
const over = { place, from: Date.parse('2026-12-10T12:20:00Z'), days: 6, draws: 200, seed: 3 };
const mean_Ah = (changed: Partial<SunAsked>) =>
  sunAsked(asked(changed), over)!.amps.reduce((sum, amps) => sum + amps, 0) / over.draws / over.days;

it('the sun of a question is the panel’s at the place, by its tilt and what is kept', () => {
  const level = mean_Ah({});
  const day = sunDayAsked(asked({}), place, '2026-12-12')!;
  expect(level / day.likely).toBeGreaterThan(0.8);
  expect(level / day.likely).toBeLessThan(1.3);
  expect(mean_Ah({ tilt: 60 })).toBeGreaterThan(1.4 * level);
  expect(mean_Ah({ 'sun-kept': 50 })).toBeLessThan(0.6 * level);
  expect(mean_Ah({ panel_W: 40 }) / level).toBeCloseTo(2, 6);
});

it('days told go before it, and no panel brings nothing', () => {
  expect(mean_Ah({ sun: [1, 3, 5] })).toBeGreaterThan(2.4);
  expect(mean_Ah({ sun: [1, 3, 5] })).toBeLessThan(3.4);
  expect(sunAsked(asked({ panel_W: 0 }), over)).toBeNull();
  expect(sunAsked(asked({ sun: [0, 0, 0] }), over)).toBeNull();
  expect(sunDayAsked(asked({ panel_W: 0 }), place, '2026-12-12')).toBeNull();
  expect(daysDoNotRise({ sun: [1, 3, 2] })).toMatchObject({ where: 'sun', wrong: '1, 3, 2 Ah do not rise' });
  expect(daysDoNotRise({ sun: null })).toBeNull();
});
