import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cooperDeclination_deg,
  levelOutsideAir_MJ_m2,
  nearnessOfSun,
  outsideAir_W_m2,
  solarConstant_W_m2,
  sunsetHourAngle,
} from './sun-outside-air.ts';
import { assumedDeltaT_s, geocentricSun } from './sun-position.ts';
import { assumedTurbidity } from './turbidity.ts';

describe('the sun outside the air', () => {
  it('is nearer in January by both formulas, as its true distance has it', () => {
    for (let day = 1; day <= 365; day++) {
      const noon = Date.UTC(2026, 0, day, 12);
      const true_W_m2 = outsideAir_W_m2(geocentricSun(noon, assumedDeltaT_s).earthRadius_au);
      expect(Math.abs((nearnessOfSun(day, 'Spencer') * solarConstant_W_m2) / true_W_m2 - 1)).toBeLessThan(0.0015);
      expect(Math.abs((nearnessOfSun(day, 'Duffie and Beckman') * solarConstant_W_m2) / true_W_m2 - 1)).toBeLessThan(
        0.003,
      );
    }
  });

  it('gives a level surface over a day what is printed', () => {
    // FAO Irrigation and Drainage Paper 56, example 8 (from memory): 20° S on 3 September, 32.2 MJ/m² with 1367 W/m²
    const of = levelOutsideAir_MJ_m2({
      latitude_deg: -20,
      declination_deg: cooperDeclination_deg(246),
      outside_W_m2: 1367 * nearnessOfSun(246, 'Duffie and Beckman'),
      from_deg: -180,
      to_deg: 180,
    });
    expect(of).toBeCloseTo(32.2, 0.5);
  });

  it('is the sum of its stretches, as small steps find it, and nothing in polar night', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -23.45, max: 23.45, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (latitude_deg, declination_deg, middle) => {
          const over = (from_deg: number, to_deg: number) =>
            levelOutsideAir_MJ_m2({ latitude_deg, declination_deg, outside_W_m2: 1361, from_deg, to_deg });
          const day = over(-180, 180);
          expect(over(-180, middle) + over(middle, 180)).toBeCloseTo(day, 9);
          const rad = Math.PI / 180;
          let sum = 0;
          for (let hour = -179.5; hour < 180; hour++)
            sum += Math.max(
              0,
              Math.sin(latitude_deg * rad) * Math.sin(declination_deg * rad) +
                Math.cos(latitude_deg * rad) * Math.cos(declination_deg * rad) * Math.cos(hour * rad),
            );
          expect(day).toBeCloseTo((sum * 240 * 1361) / 1e6, 1);
          if (sunsetHourAngle(latitude_deg, declination_deg) === 0) expect(day).toBe(0);
        },
      ),
    );
    expect(
      levelOutsideAir_MJ_m2({
        latitude_deg: 75,
        declination_deg: -23,
        outside_W_m2: 1361,
        from_deg: -180,
        to_deg: 180,
      }),
    ).toBe(0);
  });
});

describe('the haze that is assumed', () => {
  it('is in order, in range and without a jump, at every place and day', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 89.9, noNaN: true }),
        fc.integer({ min: 1, max: 364 }),
        (latitude, day) => {
          const haze = assumedTurbidity(latitude, day);
          expect(haze.low).toBeGreaterThanOrEqual(1);
          expect(haze.low).toBeLessThan(haze.likely);
          expect(haze.likely).toBeLessThan(haze.high);
          expect(haze.high).toBeLessThan(7);
          expect(Math.abs(assumedTurbidity(latitude + 0.1, day).likely - haze.likely)).toBeLessThan(0.02);
          expect(Math.abs(assumedTurbidity(latitude, day + 1).likely - haze.likely)).toBeLessThan(0.02);
        },
      ),
    );
  });

  it('has a hazier summer on either side of the equator', () => {
    expect(assumedTurbidity(50, 200).likely).toBeGreaterThan(assumedTurbidity(50, 20).likely + 0.8);
    expect(assumedTurbidity(-40, 20).likely).toBeGreaterThan(assumedTurbidity(-40, 200).likely + 0.6);
  });
});
