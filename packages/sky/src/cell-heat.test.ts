import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellTemperature_C, cellTemperatureInWind_C, panelPower_W } from './cell-heat.ts';
import { diffuseShareByCloud, shareThroughCloud } from './cloud-cover.ts';

describe('heat of the cells', () => {
  it('is the air in the dark and never under it, hotter in more light, cooler in more wind', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1400, noNaN: true }),
        fc.double({ min: -20, max: 45, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 12, noNaN: true }),
        (light_W_m2, air_C, wind_m_s, gap_cm) => {
          expect(cellTemperature_C(0, air_C, 45)).toBe(air_C);
          expect(cellTemperature_C(light_W_m2, air_C, 45)).toBeGreaterThanOrEqual(air_C);
          const at = (more: { wind?: number; gap?: number }) =>
            cellTemperatureInWind_C({
              light_W_m2,
              air_C,
              wind_m_s: wind_m_s + (more.wind ?? 0),
              nominal_C: 45,
              efficiency: 0.18,
              gap_cm: gap_cm + (more.gap ?? 0),
            });
          expect(at({})).toBeGreaterThanOrEqual(air_C);
          expect(at({ wind: 1 })).toBeLessThanOrEqual(at({}));
          expect(at({ gap: 3 })).toBeLessThanOrEqual(at({}));
        },
      ),
    );
  });

  it('takes power from the panel, never more than all', () => {
    expect(panelPower_W(100, 1000, 25, -0.4)).toBe(100);
    expect(panelPower_W(100, 1000, 0, -0.4)).toBeCloseTo(110, 9);
    expect(panelPower_W(100, 1000, 150, -1)).toBe(0);
    expect(() => panelPower_W(100, 1000, 25, 0.4)).toThrow(/-1 to 0 %\/°C, got 0.4/);
  });
});

describe('cloud', () => {
  it('lets less through the more there is, and more of it from the sky', () => {
    for (let oktas = 0; oktas < 8; oktas += 0.25) {
      expect(shareThroughCloud(oktas + 0.25)).toBeLessThan(shareThroughCloud(oktas));
      expect(diffuseShareByCloud(oktas + 0.25)).toBeGreaterThan(diffuseShareByCloud(oktas));
    }
    expect(() => shareThroughCloud(9)).toThrow(/0 to 8 oktas, got 9/);
  });
});
