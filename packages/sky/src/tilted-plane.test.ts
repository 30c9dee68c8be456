import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearSky } from './clear-sky.ts';
import { erbsDiffuseShare, splitSunlight } from './sunlight-split.ts';
import { groundLight_W_m2, lightOnPlane, type SkySpread, shareOfSky } from './tilted-plane.ts';

const cos = (deg: number) => Math.cos((deg * Math.PI) / 180);
const anyAngle = fc.double({ min: 0, max: 360, noNaN: true });
const anySlope = fc.double({ min: 0, max: 180, noNaN: true });
const anyZenith = fc.double({ min: 0, max: 180, noNaN: true });
const anySpread = fc.constantFrom<SkySpread>('even', 'Hay and Davies');

describe('light on a tilted surface', () => {
  // pvlib-python, tests/test_irradiance.py (values of an older program): slope 40°, facing south, sun outside the air 1321.17
  it.each([
    [82.85457044, 66.71410338, 316.1949056, 40.46149818, 27.1775],
    [10.56413562, 144.76567754, 939.95469881, 118.45831879, 102.9949],
    [72.41687122, 287.04104128, 646.22886049, 62.03376265, 33.1909],
  ])(
    'of the sky, with the sun at %s°, is by Hay and Davies what others find',
    (zenith, azimuth, beam, diffuse, sky) => {
      const on = lightOnPlane(
        { global_W_m2: 0, beam_W_m2: beam, diffuse_W_m2: diffuse },
        { zenith, azimuth, slope: 40, facing: 180, groundShare: 0.25, outside_W_m2: 1321.1655834833093 },
        'Hay and Davies',
      );
      expect(on.sky_W_m2).toBeCloseTo(sky, 3.9);
    },
  );

  it('of an even sky and of the ground is what others find', () => {
    // the same tests: 100 W/m² of sky and 900 of all light on 40°
    expect(100 * shareOfSky(40)).toBeCloseTo(88.30222215594891, 9);
    expect(groundLight_W_m2(900, 40, 0.25)).toBeCloseTo(26.32000014911496, 9);
  });

  it('is all light where the surface is level, whichever way the sky is spread', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 88, noNaN: true }),
        anyAngle,
        anyAngle,
        anySpread,
        (zenith, azimuth, facing, spread) => {
          const light = clearSky({ zenith, outside_W_m2: 1361, turbidity: 3, elevation_m: 0 });
          const plane = { zenith, azimuth, slope: 0, facing, groundShare: 0.2, outside_W_m2: 1361 };
          expect(lightOnPlane(light, plane, spread).total_W_m2).toBeCloseTo(light.global_W_m2, 6);
        },
      ),
    );
  });

  it('is never negative and never more than sun, sky and ground can give', () => {
    fc.assert(
      fc.property(anyZenith, anyAngle, anySlope, anyAngle, anySpread, (zenith, azimuth, slope, facing, spread) => {
        const light = clearSky({ zenith, outside_W_m2: 1361, turbidity: 3, elevation_m: 0 });
        const plane = { zenith, azimuth, slope, facing, groundShare: 0.8, outside_W_m2: 1361 };
        const on = lightOnPlane(light, plane, spread);
        for (const part of Object.values(on)) expect(part).toBeGreaterThanOrEqual(0);
        expect(on.total_W_m2).toBeCloseTo(on.beam_W_m2 + on.sky_W_m2 + on.ground_W_m2, 9);
        expect(on.beam_W_m2).toBeLessThanOrEqual(light.beam_W_m2 + 1e-9);
        expect(on.total_W_m2).toBeLessThanOrEqual(1361 * 1.1);
        if (zenith >= 90) expect(on.total_W_m2).toBe(0);
      }),
    );
  });

  it('is the same when sun and surface are turned together', () => {
    fc.assert(
      fc.property(anyZenith, anyAngle, anySlope, anyAngle, anyAngle, (zenith, azimuth, slope, facing, turn) => {
        const light = clearSky({ zenith, outside_W_m2: 1361, turbidity: 3, elevation_m: 0 });
        const at = { zenith, slope, groundShare: 0.2, outside_W_m2: 1361 };
        expect(
          lightOnPlane(light, { ...at, azimuth: azimuth + turn, facing: facing + turn }, 'even').total_W_m2,
        ).toBeCloseTo(lightOnPlane(light, { ...at, azimuth, facing }, 'even').total_W_m2, 6);
      }),
    );
  });
});

describe('light parted into sun and sky', () => {
  it('adds up again, with no beam over what there is outside the air', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1400, noNaN: true }), anyZenith, (global, zenith) => {
        const parts = splitSunlight(global, zenith, 1361);
        expect(parts.beam_W_m2).toBeGreaterThanOrEqual(0);
        expect(parts.beam_W_m2).toBeLessThanOrEqual(1361);
        expect(parts.diffuse_W_m2).toBeGreaterThanOrEqual(0);
        expect(parts.beam_W_m2 * Math.max(0, cos(zenith)) + parts.diffuse_W_m2).toBeCloseTo(global, 6);
      }),
    );
  });

  it('has more of the sky the duller the hour, without a step', () => {
    // hand working at 0.5: 0.9511 − 0.0802 + 1.097 − 2.07975 + 0.771 = 0.65915
    expect(erbsDiffuseShare(0.5)).toBeCloseTo(0.65915, 6);
    for (const edge of [0.22, 0.8])
      expect(Math.abs(erbsDiffuseShare(edge - 1e-9) - erbsDiffuseShare(edge + 1e-9))).toBeLessThan(0.001);
    for (let clearness = 0; clearness < 0.76; clearness += 0.01)
      expect(erbsDiffuseShare(clearness + 0.01)).toBeLessThan(erbsDiffuseShare(clearness));
    expect(erbsDiffuseShare(0)).toBe(1);
  });
});
