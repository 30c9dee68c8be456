import { describe, expect, it } from 'vitest';
import { assumedLoadedResistance_mohm, batteryCard } from './battery-card.ts';
import { restCharge, restVolts } from './rest-charge.ts';

const card = batteryCard({
  chemistry: 'agm',
  nominal_V: 12,
  load_A: 2,
  loaded_mohm: { low: 40, likely: 50, high: 60 },
  temperatures_C: [0, 10, 20, 30],
  floor_pct: 50,
  step_V: 0.1,
});

describe('the battery card', () => {
  it('reads rested volts as the rest curve does', () => {
    for (const { volts, cells } of card.rows)
      for (const { battery_C, rested } of cells) expect(rested).toEqual(restCharge('agm', volts, battery_C));
  });

  // by hand, at 20 °C: 2 A × 50 mΩ × e^0.06 = 0.106 V, so 12.1 V under load is as 12.206 V rested
  it('takes the load’s sag off first', () => {
    const row = card.rows.find(({ volts }) => volts === 12.1)!;
    const cell = row.cells.find(({ battery_C }) => battery_C === 20)!;
    expect(cell.underLoad.likely).toBeCloseTo(restCharge('agm', 12.1 + 0.1 * Math.exp(0.06), 20).likely, 6);
  });

  it('gives more charge for the same volts under load than rested, and more in the cold', () => {
    for (const { cells } of card.rows) {
      for (const { rested, underLoad } of cells) expect(underLoad.likely).toBeGreaterThanOrEqual(rested.likely);
      expect(cells[0]!.underLoad.likely).toBeGreaterThanOrEqual(cells[3]!.underLoad.likely);
    }
  });

  it('says the floor in volts, lower under load', () => {
    expect(card.floor_pct).toBe(50);
    for (const { rested_V, underLoad_V } of card.floor) {
      expect(underLoad_V.likely).toBeLessThan(rested_V.likely);
      expect(underLoad_V.high - underLoad_V.low).toBeGreaterThan(rested_V.high - rested_V.low);
    }
  });

  it('of a 24 V battery has twice the volts', () => {
    const loaded_mohm = assumedLoadedResistance_mohm('lifepo4', 50, 24);
    const of24 = batteryCard({
      ...{ chemistry: 'lifepo4', nominal_V: 24, load_A: 0, loaded_mohm, temperatures_C: [25], floor_pct: 20 },
      step_V: 0.05,
    } as const);
    expect(of24.rows[0]!.volts).toBe(27.2);
    expect(of24.rows[0]!.cells[0]!.rested).toEqual(restCharge('lifepo4', 13.6, 25));
    expect(of24.rows[1]!.volts).toBe(27.1);
    expect(of24.floor[0]!.rested_V).toEqual(restVolts('lifepo4', 20, 25, 24));
  });

  it('refuses what cannot be', () => {
    expect(() =>
      batteryCard({
        ...{ chemistry: 'agm', nominal_V: 12, load_A: -1, loaded_mohm: { low: 1, likely: 1, high: 1 } },
        temperatures_C: [20],
        floor_pct: 50,
        step_V: 0.1,
      } as const),
    ).toThrow('load must be');
  });
});
