import { describe, expect, it } from 'vitest';
import type { Book, ReadingRecord } from '#boat-book';
import { furtherReadingInWords } from './next-reading-in-words.ts';
import { batteryHistory, batteryOfBook, spanOfReadings } from './power-history.ts';
import { howFullInWords, nightsInWords, trendInWords } from './power-in-words.ts';
import { batteryNow, nightAheadOf, nightForetold, nightsCompared, nightsToOuting } from './power-night.ts';
import { smallBook } from './testing/small-book.ts';
import { lineInWords } from './told-line.ts';

const now = Date.parse('2026-06-20T16:00:00Z');
const reading = (at: string, volts: number, parts: Partial<ReadingRecord> = {}): ReadingRecord => ({
  battery: 'house',
  at,
  volts,
  current_A: null,
  air_C: 12,
  circumstance: 'rested',
  on: [],
  panelDark: true,
  by: 'hand',
  ...parts,
});
const book = (parts: Partial<Book> = {}): Book =>
  smallBook({
    batteries: {
      house: {
        name: 'House battery',
        zone: null,
        chemistry: 'agm',
        nominal_Ah: 20,
        nominal_V: 12,
        made: '2024-06-01',
        floor_pct: 50,
        meter: 'm',
        note: '',
      },
    },
    circuits: {
      light: {
        name: 'Anchor light',
        battery: 'house',
        watts: 3,
        duty_pct: 100,
        uses: { kind: 'sun', from: 'sunset', to: 'sunrise' },
        fuse_A: null,
        fuseAt_m: null,
        conductor: null,
        needs: 'other',
        zone: null,
      },
    },
    readings: { a: reading('2026-06-20T03:30:00Z', 12.5) },
    ...parts,
  });
const outing = { title: 'Two nights', date: '2026-06-21', from: '10:00', nights: 2, place: '', wind_kn: null };

describe('the history of a battery', () => {
  it('draws lights only while someone is aboard, and as the switches were seen', () => {
    const aboard = { o: { ...outing, date: '2026-06-18', nights: 1 } };
    const of = (parts: Partial<Book>) => {
      const made = book(parts);
      const battery = batteryOfBook(made, 'house')!;
      const span = { start: Date.parse('2026-06-18T00:00:00Z'), end: now };
      const place = { latitude_deg: 50, longitude_deg: 0, zone: 'Europe/London' };
      return batteryHistory(made, battery, place, span).flows.reduce(
        (sum, { from, to, likely_A }) => sum + (likely_A * (to - from)) / 3_600_000,
        0,
      );
    };
    expect(of({})).toBe(0);
    // one night of 7.6 h at 0.24 A
    expect(of({ outings: aboard })).toBeCloseTo(1.85, 1);
    // seen off at a rested reading at 03:30: off for the three hours before it
    expect(of({ outings: aboard, readings: { a: reading('2026-06-19T03:30:00Z', 12.5) } })).toBeCloseTo(1.12, 1);
  });

  it('reaches back three weeks and no further', () => {
    const battery = (at: string) => batteryOfBook(book({ readings: { a: reading(at, 12.5) } }), 'house')!;
    expect(spanOfReadings(battery('2026-05-01T03:30:00Z'), now)).toBeNull();
    expect(spanOfReadings(battery('2026-06-10T03:30:00Z'), now)).not.toBeNull();
  });
});

describe('the night ahead', () => {
  const ahead = (volts: number, nights = 2) => {
    const made = book({ readings: { a: reading('2026-06-20T03:30:00Z', volts) } });
    const battery = batteryOfBook(made, 'house')!;
    const known = batteryNow(made, battery, now);
    if (typeof known === 'string') throw new Error(known);
    return { battery, known, night: nightAheadOf(made, battery, known, { now, nights, aboard: 'all' }) };
  };

  it('goes better the higher the battery was read', () => {
    const lasts = [12.1, 12.3, 12.6].map((volts) => ahead(volts).night.endurance.nights[0]!.lasts.of);
    expect(lasts[0]).toBeLessThan(lasts[1]!);
    expect(lasts[1]).toBeLessThanOrEqual(lasts[2]!);
    expect(ahead(12.6).night.morning_V.likely).toBeGreaterThan(ahead(12.3).night.morning_V.likely);
  });

  it('is told with its numbers', () => {
    const { known, battery, night } = ahead(12.6);
    expect(lineInWords(howFullInWords(known, battery)[0]!)).toMatch(/^About \d+ % full: \d+ to \d+ % in 9 of 10\.$/);
    expect(lineInWords(nightsInWords(night)[0]!)).toMatch(/^Lasts the night in (over )?\d+ of 100\.$/);
    expect(lineInWords(nightsInWords(night)[1]!)).toMatch(/^Two nights, with the sun between, in /);
    expect(lineInWords(furtherReadingInWords(known, battery, 12.1))).toMatch(/(rested|load|full).* Ah\.$/);
  });

  it('is foretold as the book has it, to be kept: without lamps where nobody is aboard, and not shortly before sunrise', () => {
    const { battery, known } = ahead(12.6);
    const of = (outings: Book['outings'], at = now) =>
      nightForetold(book({ outings, readings: { a: reading('2026-06-20T03:30:00Z', 12.6) } }), battery, known, at);
    const alone = of({})!;
    expect(alone).toMatchObject({ battery: 'house', morning: '2026-06-21' });
    // sunrise at 50° north on the meridian on the longest day: 03:51 UTC (almanac, from memory)
    expect(Math.abs(Date.parse(alone.at) - Date.parse('2026-06-21T03:51:00Z'))).toBeLessThan(5 * 60_000);
    const aboard = of({ outing: { ...outing, date: '2026-06-20', nights: 1 } })!;
    expect(aboard.charge_pct.likely).toBeLessThan(alone.charge_pct.likely - 5);
    expect(aboard.volts.likely).toBeLessThan(alone.volts.likely);
    expect(of({}, Date.parse('2026-06-21T00:30:00Z'))).toBeNull();
  });

  it('says that nothing can be said without a reading or a place', () => {
    const none = book({ readings: {} });
    expect(batteryNow(none, batteryOfBook(none, 'house')!, now)).toBe('no reading');
    const nowhere = book({ places: {} });
    expect(batteryNow(nowhere, batteryOfBook(nowhere, 'house')!, now)).toBe('no place');
  });

  it('counts the nights to the end of the next outing', () => {
    const place = { latitude_deg: 50, longitude_deg: 0, zone: 'Europe/London' };
    // tonight, the 21st and the 22nd
    expect(nightsToOuting(book({ outings: { outing } }), place, now)).toMatchObject({ nights: 3 });
    expect(nightsToOuting(book({ outings: { outing: { ...outing, nights: 0 } } }), place, now)).toBeNull();
  });
});

describe('nights foretold', () => {
  const night = (morning: string, likely: number) => ({
    battery: 'house',
    made: `${morning}T00:00:00Z`,
    morning,
    at: `${morning}T04:00:00Z`,
    volts: { low: likely - 0.1, likely, high: likely + 0.1 },
    charge_pct: { low: 60, likely: 70, high: 80 },
  });
  const days = ['2026-06-14', '2026-06-15', '2026-06-16'];
  const made = book({
    nightsAhead: Object.fromEntries(days.map((day) => [day, night(day, 12.5)])),
    readings: Object.fromEntries([
      ...days.map((day) => [day, reading(`${day}T03:40:00Z`, 12.38)] as const),
      ['noon', reading('2026-06-16T11:00:00Z', 13.4, { circumstance: 'on charge', panelDark: false })] as const,
    ]),
  });

  it('are held beside the reading of their morning, and their run says that it tires', () => {
    const compared = nightsCompared(made, batteryOfBook(made, 'house')!);
    expect(compared.map(({ morning, within }) => [morning, within])).toEqual(days.map((day) => [day, false]));
    expect(compared[0]!.off_V).toBeCloseTo(-0.12, 9);
    expect(lineInWords(trendInWords(compared)!)).toMatch(/0\.12 V under .*: it tires/);
    expect(trendInWords(compared.slice(0, 2))).toBeNull();
  });
});
