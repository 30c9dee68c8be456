import { expect, it } from 'vitest';
import { panelDay_Ah, sunOutsideAir_kWh } from './panel-day.ts';

it('the sun outside the air is that of a printed example', () => {
  // FAO paper 56, example 8, from memory: 20° south, 3 September (day 246): 32.2 MJ/m²
  expect(sunOutsideAir_kWh(-20, 246) * 3.6).toBeCloseTo(32.2, 1);
  expect(sunOutsideAir_kWh(80, 355)).toBe(0);
});

it('a small panel brings some ampere-hours in June and a fraction of them in December', () => {
  const panel = { peak_W: 10, regulator: 'simple', kept_pct: 100 } as const;
  const june = panelDay_Ah(panel, 50, '2026-06-20');
  const december = panelDay_Ah(panel, 50, '2026-12-20');
  // common practice: a 10 W panel brings some 2 to 3 Ah on a usual summer day
  expect(june.likely).toBeGreaterThan(1.8);
  expect(june.likely).toBeLessThan(3.5);
  expect(december.likely).toBeLessThan(june.likely / 3);
  expect(panelDay_Ah({ ...panel, regulator: 'tracking' }, 50, '2026-06-20').likely).toBeGreaterThan(june.likely);
});
