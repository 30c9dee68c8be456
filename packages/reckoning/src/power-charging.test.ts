import { describe, expect, it } from 'vitest';
import type { ChargerRecord } from '#boat-book';
import type { Endurance } from '#power';
import { chargingAhead, chargingHelp } from './power-charging.ts';
import { chargingHelpInWords } from './power-in-words.ts';
import { lineInWords } from './told-line.ts';

const place = { latitude_deg: 50, longitude_deg: 0, zone: 'UTC' };
const outboard: ChargerRecord = { name: 'Outboard', battery: 'b', kind: 'outboard', amps: 6, volts_max: 14.4 };
const at = (text: string) => Date.parse(`2026-06-${text}:00Z`);
const clocks = (spans: readonly { start: number; end: number }[]) =>
  spans.map(({ start, end }) => [start, end].map((each) => new Date(each).toISOString().slice(8, 16)).join(' to '));

describe('what chargers bring on the days ahead', () => {
  const span = { start: at('20T09:30'), end: at('22T08:00') };

  it('is counted for the hours that are said of it from nine on, and what is left of today', () => {
    expect(clocks(chargingAhead([{ ...outboard, hours_a_day: 2 }], place, span, null))).toEqual([
      '20T09:30 to 20T11:00',
      '21T09:00 to 21T11:00',
    ]);
    // shore power all day starts at midnight
    expect(clocks(chargingAhead([{ ...outboard, hours_a_day: 24 }], place, span, null))[1]).toBe(
      '21T00:00 to 22T00:00',
    );
  });

  it('is none where nobody said how long, and none with nobody aboard', () => {
    expect(chargingAhead([outboard, { ...outboard, hours_a_day: null }], place, span, null)).toEqual([]);
    const aboard = [{ start: at('21T10:00'), end: at('22T12:00') }];
    expect(clocks(chargingAhead([{ ...outboard, hours_a_day: 2 }], place, span, aboard))).toEqual([
      '21T10:00 to 21T11:00',
    ]);
  });
});

describe('what a charger would change', () => {
  const hours = [0, 1, 2, 3, 4, 30];
  const nights = (start_pct: number, perHour: number, of: number): Endurance => {
    const likely = Float64Array.from(hours, (h) => Math.min(100, start_pct + perHour * h));
    const lasts = { runs: 1000, of, chance_pct: of / 10, low_pct: 0, high_pct: 100 };
    const band = { low: 0, likely: 0, high: 0 };
    return {
      nights: [
        {
          start: at('20T20:00'),
          end: at('21T04:00'),
          lasts,
          evening_pct: band,
          morning_pct: band,
          drawn_Ah: band,
          storedBefore_Ah: band,
        },
      ],
      hoursLeft: { low: null, likely: null, high: null },
      lookedAt_h: 30,
      course: {
        at: Float64Array.from(hours, (h) => at('20T10:00') + h * 3_600_000),
        low: likely,
        likely,
        high: likely,
      },
      usual_V: 12.6,
      runs: 1000,
    };
  };
  const mains: ChargerRecord = { ...outboard, name: 'Bench', kind: 'mains', amps: 3 };

  it('is told to the hour at which the battery is nearly full, with the odds before and after', () => {
    const asked: string[][] = [];
    const [help] = chargingHelp([mains], nights(60, 0, 400), place, (more) => {
      asked.push(clocks(more));
      return nights(60, 12, 990);
    });
    // 60 % and 12 % an hour: 96 % after three hours
    expect(asked).toEqual([['20T10:00 to 21T10:00'], ['20T10:00 to 20T13:00']]);
    expect(help).toMatchObject({ until: at('20T13:00'), reached_pct: 96, without: { of: 400 }, with: { of: 990 } });
  });

  it('is told with the odds where they rise, and without them where the floor is passed already', () => {
    const told = (before: number, after: number, charger: ChargerRecord) => {
      const [help] = chargingHelp([charger], nights(60, 0, before), place, () => nights(60, 12, after));
      return lineInWords(chargingHelpInWords(help!, at('20T10:00'), 'UTC'));
    };
    expect(told(400, 990, mains)).toBe(
      'Bench (3.0 A) put on now until today 13:00 brings it to about 96 %. It then lasts the night in 99 of 100, instead of 40 of 100.',
    );
    expect(told(0, 0, mains)).toMatch(/brings it to about 96 %\. A night counts as lasted only where/);
    expect(told(400, 700, outboard)).toBe(
      'With an hour a day of Outboard (6.0 A) it lasts the night in 70 of 100, instead of 40 of 100.',
    );
    expect(told(0, 0, outboard)).toBe('An hour a day of Outboard (6.0 A) does not help: the night in 0 of 100 still.');
  });

  it('is nothing where the nights are sure, or the battery is nearly full', () => {
    const never = () => {
      throw new Error('nothing is to be worked out');
    };
    expect(chargingHelp([mains], nights(60, 0, 995), place, never)).toEqual([]);
    expect(chargingHelp([mains], nights(97, 0, 400), place, never)).toEqual([]);
  });
});
