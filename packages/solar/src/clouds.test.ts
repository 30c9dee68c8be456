import { describe, expect, it } from 'vitest';
import { bandOf } from './band.ts';
import { type Clouds, coveredShare, type DayLight, lightsOf, type SkyWord } from './clouds.ts';
import { normalMiddles, normalShare } from './normal.ts';
import { assumedMeanClearness, assumedSeason, bend, clearnessAt } from './season-clearness.ts';

const through = ({ covered, under, open }: DayLight) =>
  covered.reduce((sum, each) => sum + open * (1 - each) + under * each, 0) / covered.length;
const band = (clouds: Clouds, latitude = 50, season = 180) => bandOf(lightsOf(clouds, latitude, season).map(through));
const oktas = (n: number, error_oktas = 1.2): Clouds => ({ kind: 'oktas', oktas: [n], error_oktas });

describe('the normal spread', () => {
  it('is that of the tables', () => {
    // printed in any table of it: 0.8413, 0.9500, 0.9750
    expect(normalShare(1)).toBeCloseTo(0.8413, 4);
    expect(normalShare(1.6449)).toBeCloseTo(0.95, 4);
    expect(normalShare(-1.96)).toBeCloseTo(0.025, 4);
    expect(normalMiddles(3)[1]!).toBeCloseTo(0, 5);
  });
});

describe('cloud', () => {
  it('lets through what Kasten and Czeplak print, in the middle', () => {
    // G/G0 = 1 − 0.75·(N/8)^3.4: 0.2500 at 8, 0.7181 at 6, 0.9290 at 4 (handbook, sky.cloud.*)
    for (const [n, wanted] of [
      [8, 0.25],
      [6, 0.7181],
      [4, 0.929],
      [0, 1],
    ] as const)
      expect(1 - 0.75 * coveredShare(n)).toBeCloseTo(wanted, 3);
    expect(() => coveredShare(9)).toThrow(/0 to 8 oktas, got 9/);
  });

  it('has its middle there and a band that grows with the error of the forecast', () => {
    expect(band(oktas(6, 0)).likely).toBeCloseTo(0.71, 1);
    const wide = band(oktas(5, 1.5));
    const narrow = band(oktas(5, 0.3));
    expect(wide.high - wide.low).toBeGreaterThan(1.3 * (narrow.high - narrow.low));
    for (let n = 1; n <= 8; n++) expect(band(oktas(n)).likely).toBeLessThanOrEqual(band(oktas(n - 1)).likely);
  });

  it('by words goes from clear to overcast, each within half of what the season spans', () => {
    const words: SkyWord[] = ['clear', 'some cloud', 'broken', 'mostly cloud', 'overcast'];
    const found = words.map((word) => band({ kind: 'word', word }));
    found.slice(1).forEach(({ likely }, i) => {
      expect(likely).toBeLessThan(found[i]!.likely);
    });
    for (const latitude of [0, 15, 30, 45, 60])
      for (const season of [15, 196]) {
        const { low, high } = band({ kind: 'season' }, latitude, season);
        for (const each of found) expect(each.high - each.low).toBeLessThanOrEqual(0.5 * (high - low));
      }
  });

  it('is refused when it is neither one figure nor twenty-four', () => {
    expect(() => lightsOf({ kind: 'oktas', oktas: [1, 2], error_oktas: 1 }, 50, 1)).toThrow(/got 2 figures/);
    expect(() => lightsOf(oktas(3, 9), 50, 1)).toThrow(/0 to 4 oktas, got 9/);
  });
});

describe('the days of a season', () => {
  it('have the mean that their bend was made for', () => {
    for (const mean of [0.3, 0.56, 0.7, 0.9]) {
      const gamma = bend(mean);
      const days = 4000;
      let sum = 0;
      for (let i = 0; i < days; i++) sum += clearnessAt(gamma, (i + 0.5) / days);
      expect(sum / days).toBeCloseTo(mean, 4);
    }
    expect(() => bend(1.2)).toThrow(/got 1.2/);
  });

  it('span from rain to a clear day, and are duller in the northern winter', () => {
    const winter = band({ kind: 'season' }, 52, 10);
    const summer = band({ kind: 'season' }, 52, 190);
    expect(winter.likely).toBeLessThan(summer.likely);
    expect(winter.low).toBeGreaterThanOrEqual(assumedSeason.dullest);
    expect(summer.high).toBeLessThanOrEqual(assumedSeason.clearest);
    expect(band({ kind: 'season' }, -52, 10).likely).toBeGreaterThan(winter.likely);
    for (let latitude = -90; latitude <= 90; latitude += 5)
      for (const season of [1, 120, 366]) {
        expect(assumedMeanClearness(latitude, season)).toBeGreaterThan(0.4);
        expect(assumedMeanClearness(latitude, season)).toBeLessThan(0.9);
      }
  });
});
