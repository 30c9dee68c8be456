import { describe, expect, it } from 'vitest';
import { restVolts, storedShare } from '#battery';
import type { Book, PanelRecord, ReadingRecord } from '#boat-book';
import { batteryOfBook } from './power-history.ts';
import { keptByReadings } from './power-kept.ts';
import { keptAsGuessed, panelFlowsOf, sunAhead, sunOfDay, sunUnshaded } from './power-sun.ts';
import { smallBook, weather } from './testing/small-book.ts';

const place = { latitude_deg: 50, longitude_deg: 0, zone: 'Europe/London' };
const day_ms = 86_400_000;
const panel: PanelRecord = {
  name: 'Panel',
  battery: 'house',
  peak_W: 20,
  tilt_deg: 0,
  heading_deg: 180,
  regulator: 'simple',
  coefficient_pct_C: null,
  leads: null,
  kept_pct: 100,
};
const book = (panels: readonly PanelRecord[], parts: Partial<Book> = {}): Book =>
  smallBook({
    batteries: {
      house: {
        name: 'House battery',
        zone: null,
        chemistry: 'agm',
        nominal_Ah: 60,
        nominal_V: 12,
        made: null,
        floor_pct: 50,
        meter: 'm',
        note: '',
      },
    },
    panels: Object.fromEntries(panels.map((each, i) => [`p${i}`, each])),
    ...parts,
  });
const day = (made: Book, date: string) => sunOfDay(made, batteryOfBook(made, 'house')!, place, date, keptAsGuessed)!;

describe('the panels of a book', () => {
  it('bring by their tilt, heading, leads and what the rig leaves, and together the sum', () => {
    const likely = (changed: Partial<PanelRecord>, date = '2026-12-20') =>
      day(book([{ ...panel, ...changed }]), date).likely;
    expect(likely({ tilt_deg: 50 })).toBeGreaterThan(1.3 * likely({}));
    expect(likely({ tilt_deg: 50, heading_deg: 0 })).toBeLessThan(0.9 * likely({}));
    expect(likely({ kept_pct: 50 }) / likely({})).toBeCloseTo(0.5, 1);
    const leads = { lengthThereAndBack_m: 20, area_mm2: 0.75 };
    expect(likely({ regulator: 'tracking', leads }, '2026-06-20')).toBeLessThan(
      0.99 * likely({ regulator: 'tracking' }, '2026-06-20'),
    );
    expect(day(book([panel, panel]), '2026-06-20').likely).toBeCloseTo(2 * likely({}, '2026-06-20'), 9);
    expect(sunOfDay(book([]), batteryOfBook(book([]), 'house')!, place, '2026-06-20', keptAsGuessed)).toBeNull();
  });

  it('bring less on a day that the book says is wet, and no less on one that it says is dry', () => {
    const wet = (rain: boolean, fromHour: number, toHour: number) =>
      day(
        book([panel], {
          weather: { w: weather('2026-06-20', { fromHour, toHour, rain }) },
        }),
        '2026-06-20',
      ).likely;
    const season = day(book([panel]), '2026-06-20').likely;
    expect(wet(true, 6, 20)).toBeLessThan(0.6 * season);
    expect(wet(false, 6, 20)).toBe(season);
    // by night it may rain
    expect(wet(true, 0, 6)).toBe(season);
  });

  it('come into a history as flows of the day’s light, out of the battery under 0, and ahead as draws', () => {
    const made = book([panel]);
    const battery = batteryOfBook(made, 'house')!;
    const span = { start: Date.parse('2026-06-10T00:00:00Z'), end: Date.parse('2026-06-20T00:00:00Z') };
    const flows = panelFlowsOf(made, battery, place, span);
    expect(flows).toHaveLength(40);
    expect(new Set(flows.map(({ source }) => source)).size).toBe(6);
    for (const { low_A, likely_A, high_A } of flows) {
      expect(low_A).toBeLessThan(likely_A);
      expect(likely_A).toBeLessThan(high_A);
      expect(high_A).toBeLessThan(0);
    }
    const draws = sunAhead(made, battery, place, keptAsGuessed, { from: span.end, days: 3, draws: 50, seed: 1 })!;
    expect(draws.amps).toHaveLength(50 * 72);
    expect(
      sunAhead(book([]), batteryOfBook(book([]), 'house')!, place, keptAsGuessed, {
        from: 0,
        days: 1,
        draws: 1,
        seed: 1,
      }),
    ).toBeNull();
  });

  it('under midnight sun are told day by day', () => {
    const made = book([panel]);
    const north = { latitude_deg: 71, longitude_deg: 25, zone: 'Europe/Oslo' };
    const span = { start: Date.parse('2026-06-10T12:00:00Z'), end: Date.parse('2026-06-16T12:00:00Z') };
    const flows = panelFlowsOf(made, batteryOfBook(made, 'house')!, north, span);
    for (const { from, to } of flows) expect(to - from).toBeLessThanOrEqual(day_ms / 4);
    const covered = flows.reduce((sum, { from, to }) => sum + to - from, 0);
    expect(covered).toBeCloseTo(span.end - span.start, -3);
  });
});

describe('what a panel keeps by rested readings', () => {
  /** Readings every second dawn of a battery that really takes in so much of the panel's sun and gives a lamp's steady draw. */
  const withTruth = (kept: number, guessed: number | null, start_pct: number, days: number, watts: number) => {
    const bare = book([{ ...panel, kept_pct: guessed }], {
      circuits: {
        lamp: {
          name: 'Lamp',
          battery: 'house',
          watts,
          duty_pct: 100,
          uses: { kind: 'always' },
          fuse_A: null,
          fuseAt_m: null,
          conductor: null,
          needs: 'other',
          zone: null,
        },
      },
    });
    const battery = batteryOfBook(bare, 'house')!;
    const readings: Record<string, ReadingRecord> = {};
    let charge = start_pct;
    const first = Date.parse('2026-06-01T03:30:00Z');
    for (let d = 0; d <= days; d += 2) {
      if (d > 0) {
        const span = { start: first + (d - 2) * day_ms, end: first + d * day_ms };
        const into = kept * sunUnshaded(bare, battery, place, span).likely * storedShare('agm', charge);
        charge = Math.min(100, charge + (100 * (into - (48 * watts) / 12.6)) / 60);
      }
      readings[`r${d}`] = {
        battery: 'house',
        at: new Date(first + d * day_ms).toISOString(),
        volts: Math.round(100 * restVolts('agm', charge, 12).likely) / 100,
        current_A: null,
        air_C: 12,
        circumstance: 'rested',
        on: [],
        panelDark: true,
        by: 'hand',
      };
    }
    const made = { ...bare, readings };
    const capacity = { low: 56, likely: 60, high: 64 };
    return keptByReadings(made, batteryOfBook(made, 'house')!, place, capacity, first + days * day_ms);
  };

  it('goes from the guess towards the truth, which lies in its band', () => {
    const found = withTruth(0.4, null, 70, 40, 1.2)!;
    expect(found.pairs).toBe(20);
    expect(found.learnt.likely).toBeLessThan(found.guessed.likely - 0.2);
    expect(found.learnt.low).toBeLessThan(0.4);
    expect(found.learnt.high).toBeGreaterThan(0.4);
    expect(found.learnt.high - found.learnt.low).toBeLessThan(0.7 * (found.guessed.high - found.guessed.low));
  });

  it('is not taught by a battery that was nearly full, nor without a panel', () => {
    expect(withTruth(0.9, null, 98, 10, 0.3)).toBeNull();
    const none = book([]);
    expect(keptByReadings(none, batteryOfBook(none, 'house')!, place, { low: 1, likely: 1, high: 1 }, 0)).toBeNull();
  });
});
