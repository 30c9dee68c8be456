import { describe, expect, it } from 'vitest';
import { bandOf } from './band.ts';
import type { Clouds } from './clouds.ts';
import { panelDay } from './panel-day.ts';
import { panelFlows } from './panel-flows.ts';
import type { PanelCase } from './panel-steps.ts';
import { sunDraws } from './sun-draws.ts';
import { keptBand } from './sun-kept.ts';

const place = { latitude_deg: 54.4, longitude_deg: 10.2, elevation_m: 0 };
const of = (changed: Partial<PanelCase['panel']>, kept_pct = 100): PanelCase => ({
  panel: {
    peak_W: 10,
    tilt_deg: 0,
    heading_deg: 180,
    regulator: 'simple',
    coefficient_pct_C: null,
    leads: null,
    ...changed,
  },
  nominal_V: 12,
  place,
  kept: keptBand(kept_pct),
  air_C: () => 15,
});
const season: Clouds = { kind: 'season' };
const day = (asked: PanelCase, date: string, clouds: Clouds) => panelDay(asked, date, 'Europe/Berlin', clouds);

describe('a panel’s day', () => {
  it('is some ampere-hours in June and a fraction of them in December', () => {
    // common practice: 10 W bring some 2 to 4 Ah on a usual summer day, next to nothing in midwinter
    const june = day(of({}), '2026-06-20', season).brought_Ah;
    expect(june.likely).toBeGreaterThan(2);
    expect(june.likely).toBeLessThan(4);
    expect(day(of({}), '2026-12-20', season).brought_Ah.likely).toBeLessThan(june.likely / 8);
  });

  it('in winter is more than doubled by tilting to the south on a clear day, and helped much less under cloud', () => {
    const ratio = (clouds: Clouds) =>
      day(of({ tilt_deg: 60 }), '2026-12-20', clouds).brought_Ah.likely /
      day(of({}), '2026-12-20', clouds).brought_Ah.likely;
    expect(ratio({ kind: 'word', word: 'clear' })).toBeGreaterThan(2);
    expect(ratio({ kind: 'word', word: 'overcast' })).toBeLessThan(1.5);
    const north = day(of({ tilt_deg: 60, heading_deg: 0 }), '2026-12-20', { kind: 'word', word: 'clear' });
    expect(north.brought_Ah.likely).toBeLessThan(
      day(of({}), '2026-12-20', { kind: 'word', word: 'clear' }).brought_Ah.likely,
    );
  });

  it('turned east brings as much as turned west', () => {
    const east = day(of({ tilt_deg: 40, heading_deg: 90 }), '2026-06-20', season).brought_Ah.likely;
    const west = day(of({ tilt_deg: 40, heading_deg: 270 }), '2026-06-20', season).brought_Ah.likely;
    expect(east / west).toBeGreaterThan(0.97);
    expect(east / west).toBeLessThan(1.03);
  });

  it('is what shade leaves, and a forecast by the hour counts where the sun is', () => {
    expect(day(of({}, 50), '2026-06-20', season).brought_Ah.likely).toBeCloseTo(
      0.5 * day(of({}), '2026-06-20', season).brought_Ah.likely,
      0,
    );
    const hours = (cloudy: (hour: number) => boolean): Clouds => ({
      kind: 'oktas',
      oktas: Array.from({ length: 24 }, (_, hour) => (cloudy(hour) ? 8 : 0)),
      error_oktas: 0.5,
    });
    const clear = day(
      of({}),
      '2026-06-20',
      hours(() => false),
    ).brought_Ah.likely;
    expect(
      day(
        of({}),
        '2026-06-20',
        hours((hour) => hour < 4 || hour > 22),
      ).brought_Ah.likely,
    ).toBeCloseTo(clear, 1);
    expect(
      day(
        of({}),
        '2026-06-20',
        hours((hour) => hour >= 10 && hour < 17),
      ).brought_Ah.likely,
    ).toBeLessThan(0.6 * clear);
  });

  it('has its clocks put forward or back and stays whole', () => {
    // the clocks of Berlin go back on 25 October 2026: a day of 25 hours
    const back = day(of({}), '2026-10-25', season).clearDay_Ah;
    expect(back).toBeGreaterThan(0.97 * day(of({}), '2026-10-26', season).clearDay_Ah);
    expect(back).toBeLessThan(1.05 * day(of({}), '2026-10-26', season).clearDay_Ah);
  });
});

describe('what a panel may have brought', () => {
  it('adds up to the day, least at its ends', () => {
    const light = { start: Date.parse('2026-06-22T02:43:00Z'), end: Date.parse('2026-06-22T19:57:00Z') };
    const flows = panelFlows(of({}), light, season);
    const sumOf = (key: 'low_A' | 'likely_A' | 'high_A') =>
      flows.reduce((sum, flow) => sum + (flow[key] * (flow.to - flow.from)) / 3_600_000, 0);
    const whole = day(of({}), '2026-06-22', season).brought_Ah;
    expect(sumOf('likely_A') / whole.likely).toBeCloseTo(1, 1);
    expect(sumOf('low_A') / whole.low).toBeCloseTo(1, 0);
    expect(sumOf('high_A') / whole.high).toBeCloseTo(1, 1);
    expect(flows).toHaveLength(4);
    expect(flows[0]!.likely_A).toBeLessThan(flows[1]!.likely_A / 2);
    expect(flows[0]!.from).toBe(light.start);
    expect(flows[3]!.to).toBe(light.end);
  });
});

describe('draws of the sun', () => {
  let state = 1;
  /** sums of twelve shares of a plain generator (Park and Miller's): near enough to normal, and seeded */
  const dice = () => {
    state = 1;
    return {
      normal: () => {
        let sum = -6;
        for (let i = 0; i < 12; i++) {
          state = (state * 48_271) % 2_147_483_647;
          sum += state / 2_147_483_647;
        }
        return sum;
      },
    };
  };
  const from = Date.parse('2026-06-20T10:00:00Z');
  const drawn = (clouds: (day: string) => Clouds, panels = [of({})]) =>
    sunDraws(panels, {
      from,
      days: 5,
      draws: 600,
      clouds,
      clockHour: (at) => new Date(at).getUTCHours(),
      dice: dice(),
    });
  const sun = drawn(() => season);
  const perDay = ({ amps, hours, draws }: typeof sun, d: number) =>
    Array.from({ length: draws }, (_, draw) =>
      amps.subarray(draw * hours + 24 * d + 12, draw * hours + 24 * d + 36).reduce((sum, each) => sum + each, 0),
    );

  it('bring what the day’s band says, nothing by night, the same for the same dice', () => {
    const band = bandOf(perDay(sun, 1));
    const wanted = day(of({}), '2026-06-22', season).brought_Ah;
    expect(band.likely / wanted.likely).toBeGreaterThan(0.9);
    expect(band.likely / wanted.likely).toBeLessThan(1.1);
    expect(band.high / wanted.high).toBeGreaterThan(0.93);
    expect(band.high / wanted.high).toBeLessThan(1.07);
    expect(Math.abs(band.low - wanted.low)).toBeLessThan(0.1 * wanted.likely);
    for (let draw = 0; draw < sun.draws; draw++) expect(sun.amps[draw * sun.hours + 13]).toBe(0);
    expect(drawn(() => season).amps).toEqual(sun.amps);
  });

  it('keep spells: a dull day is oftener followed by a dull one', () => {
    const [first, second] = [perDay(sun, 1), perDay(sun, 2)];
    const dull = bandOf([...first]).likely * 0.7;
    const both = first.filter((each, i) => each < dull && second[i]! < dull).length;
    const alone = first.filter((each) => each < dull).length;
    const other = second.filter((each) => each < dull).length;
    expect(both / alone).toBeGreaterThan(1.25 * (other / sun.draws));
  });

  it('keep to a forecast on the day it is for', () => {
    const told = drawn((date) => (date === '2026-06-22' ? { kind: 'word', word: 'overcast' } : season));
    const band = bandOf(perDay(told, 1));
    const wanted = day(of({}), '2026-06-22', { kind: 'word', word: 'overcast' }).brought_Ah;
    expect(band.likely / wanted.likely).toBeGreaterThan(0.9);
    expect(band.likely / wanted.likely).toBeLessThan(1.1);
    expect(bandOf(perDay(told, 2)).high).toBeGreaterThan(2 * band.high);
  });

  it('of two panels are those of both under one sky', () => {
    const two = drawn(() => season, [of({}), of({})]);
    const times = bandOf(perDay(two, 1)).likely / bandOf(perDay(sun, 1)).likely;
    expect(times).toBeGreaterThan(1.85);
    expect(times).toBeLessThan(2.15);
    expect(() => drawn(() => season, [])).toThrow(/got 0/);
  });
});
