import { describe, expect, it } from 'vitest';
import { type DewHour, eveningStop, nightSurface_C } from './evening-dew.ts';

const hour = (part: Partial<DewHour>): DewHour => ({
  air_C: 15,
  humidity_pct: 50,
  wind_kn: 4,
  surface_C: null,
  dark: false,
  ...part,
});

describe('a surface that faces the night sky', () => {
  it('is colder than the air under a clear sky, less so in wind and under cloud, and as the air under a closed one', () => {
    const calm = { air_C: 12, humidity_pct: 80, wind_kn: 2 };
    const clear = nightSurface_C(calm);
    expect(clear).toBeLessThan(8);
    expect(clear).toBeGreaterThan(4);
    expect(nightSurface_C({ ...calm, wind_kn: 15 })).toBeGreaterThan(clear);
    expect(nightSurface_C(calm, 0.5)).toBeGreaterThan(clear);
    expect(nightSurface_C(calm, 1)).toBeCloseTo(12, 0);
  });

  it('balances what it radiates against what the air gives it', () => {
    // by hand: Td of 12 °C and 80 % is 8.65 °C, sky emissivity 0.711 + 0.0484 + 0.0055 = 0.765; wind 2 kn = 1.03 m/s, 9.6 W
    const t = nightSurface_C({ air_C: 12, humidity_pct: 80, wind_kn: 2 }) + 273.15;
    const lost = 0.95 * 5.670374e-8 * (t ** 4 - 0.765 * 285.15 ** 4);
    expect(lost).toBeCloseTo(9.61 * (285.15 - t), 0);
  });
});

describe('when to stop before the dew', () => {
  const evening = (humid: number) => [
    ...Array.from({ length: 5 }, () => hour({})),
    ...Array.from({ length: 6 }, () => hour({ dark: true, air_C: 9, humidity_pct: humid })),
  ];

  it('is two to three hours before it falls', () => {
    // five lit hours of 15 °C and 50 %: 10 °C over the dew point; then dew at once
    expect(eveningStop(evening(90))).toEqual({ kind: 'stop', by: 180, better: 120, dew: 300 });
  });

  it('is when the 3 °C are gone, where that is sooner than two hours before it', () => {
    const damp = [hour({}), hour({ humidity_pct: 84 }), ...evening(90)];
    expect(eveningStop(damp)).toEqual({ kind: 'margin first', by: 60, dew: 420 });
  });

  it('is now or past where dew is near, and nothing where the night stays dry', () => {
    expect(eveningStop(evening(90).slice(4))).toMatchObject({ kind: 'too late', dew: 60 });
    expect(eveningStop([hour({ humidity_pct: 90 }), ...evening(90)])).toMatchObject({ kind: 'too late' });
    expect(eveningStop(evening(30))).toEqual({ kind: 'no dew', hours: 11 });
  });
});
