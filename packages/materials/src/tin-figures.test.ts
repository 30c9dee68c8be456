import { expect, it } from 'vitest';
import { cureFinish } from './cure-finish.ts';
import { cureLawOf } from './cure-laws.ts';
import { lawFromTin, type TinFigures } from './tin-figures.ts';

const silent: TinFigures = {
  family: 'varnish-one-pot',
  nextCoat: null,
  latestCoat_h: null,
  worked: null,
  full: null,
  firstDay_mm: null,
  minimum_C: null,
  humidity_max_pct: null,
  potLife: null,
  ratio: null,
  spread_m2_l: null,
};
const varnish = cureLawOf('varnish-one-pot').law;

it('a tin that says nothing of a wait leaves it as it was, and so does a tin of something else', () => {
  expect(lawFromTin(varnish, 'varnish-one-pot', silent)).toBeNull();
  expect(lawFromTin(varnish, 'varnish-one-pot', { ...silent, family: 'epoxy-fast', minimum_C: 2 })).toBeNull();
});

it('what a tin says stands in the law, from the tin; the rest stays ours', () => {
  const tin = { ...silent, nextCoat: { hours: 24, at_C: 23 }, minimum_C: 10, humidity_max_pct: 75 };
  const told = lawFromTin(varnish, 'varnish-one-pot', tin)!;
  expect(told.says).toEqual(['time', 'temperature', 'humidity']);
  expect(told.law).toMatchObject({
    kind: 'dries',
    atReference_min: 1440,
    reference_C: 23,
    minimum_C: 10,
    doublesPer_C: 10,
    from: 'the tin',
  });
  const hours = (humidity_pct: number) =>
    Array.from({ length: 60 }, () => ({
      rain: false,
      wind_kn: 0,
      air_C: 23,
      surface_C: null,
      humidity_pct,
      basis: 'typed' as const,
    }));
  // at 23 °C, in air as damp as the tin allows, in the tin's own time; damper, not at all
  expect(cureFinish(told.law, hours(75), 0).finish).toBe(1440);
  expect(cureFinish(told.law, hours(76), 0).finish).toBeNull();
});

it('an epoxy’s tin speaks for its full strength too, a sealant’s for the depth of its first day', () => {
  const epoxy = { ...silent, family: 'epoxy-slow', full: { hours: 96, at_C: 25 }, worked: { hours: 10, at_C: 25 } };
  expect(lawFromTin(cureLawOf('epoxy-full-strength').law, 'epoxy-full-strength', epoxy)!.law).toMatchObject({
    atReference_min: 96 * 60,
  });
  expect(lawFromTin(cureLawOf('epoxy-slow').law, 'epoxy-slow', epoxy)!.law).toMatchObject({ atReference_min: 600 });
  const tube = { ...silent, family: 'hybrid-sealant', firstDay_mm: 4 };
  const bead = { ...cureLawOf('hybrid-sealant').law, depth_mm: 12 } as const;
  expect(lawFromTin(bead as never, 'hybrid-sealant', tube)!.law).toMatchObject({ firstDay_mm: 4, depth_mm: 12 });
});
