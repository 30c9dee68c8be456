import { nightSurface_C } from '#materials';
import { dewPoint_C } from '#sky';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

/**
 * A surface under the clear night sky beside another sky: what crops are reckoned to lose to it, (0.34 − 0.14·√e)·σ·T⁴ with
 * the vapour e in kPa (FAO Irrigation and Drainage Paper 56, equation 39, from memory; the same line stands in crop models
 * that were read), vapour by Tetens, and the balance found by halving, not by Newton.
 */
export function otherDew(seed: number, hours: number): OtherCheck[] {
  const random = seeded(seed);
  const errors: number[] = [];
  for (let n = 0; n < hours; n++) {
    const air_C = -2 + 24 * random();
    const humidity_pct = 40 + 59 * random();
    const wind_kn = 12 * random();
    errors.push(nightSurface_C({ air_C, humidity_pct, wind_kn }) - byHalving(air_C, humidity_pct, wind_kn));
  }
  return [
    errorsOf(
      {
        subject: 'materials',
        kind: 'derived twice',
        what: 'surface under a clear night sky',
        against: 'net loss to the sky by FAO paper 56, halving',
        unit: '°C',
        allowed: 2.5,
        why: 'formulas of a clear sky differ by a tenth of what it sends down',
      },
      errors,
    ),
  ];
}

function byHalving(air_C: number, humidity_pct: number, wind_kn: number): number {
  const sigma = 5.670374e-8;
  const vapour_kPa = 0.61078 * Math.exp((17.27 * air_C) / (air_C + 237.3)) * (humidity_pct / 100);
  const air_K = air_C + 273.15;
  const down = sigma * air_K ** 4 * (1 - (0.34 - 0.14 * Math.sqrt(vapour_kPa)));
  const fromAir = 5.7 + 3.8 * Math.max(1, wind_kn * (1852 / 3600));
  let low = Math.min(dewPoint_C(air_C, humidity_pct), air_C) - 40;
  let high = air_C;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const gains = 0.95 * (down - sigma * (middle + 273.15) ** 4) + fromAir * (air_C - middle);
    if (gains > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
