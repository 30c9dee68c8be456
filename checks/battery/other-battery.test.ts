import { describe, expect, it } from 'vitest';
import { seeded } from '../other-check.ts';
import {
  acidOfDensity_mol_L,
  cellVolts,
  cutOff_V,
  drawnBattery,
  flow,
  ownCapacity_Ah,
  regulated,
  rested,
  stillToCome_Ah,
  terminalVolts,
} from './other-battery.ts';

const some = (['agm', 'flooded', 'gel', 'lifepo4'] as const).flatMap((chemistry, i) =>
  [0, 3, 7].map((age, j) => drawnBattery(chemistry, [12, 20, 100][j]!, age, seeded(10 * i + j))),
);

describe('the other battery', () => {
  it('gives less in the cold and, of lead, less when asked fast', () => {
    for (const battery of some) {
      const at = (hours: number, heat: number) =>
        stillToCome_Ah(battery, rested(1), battery.nominal_Ah / hours, heat, cutOff_V(battery.chemistry));
      expect(at(20, 5)).toBeLessThan(at(20, 25));
      if (battery.chemistry !== 'lifepo4') expect(at(3, 25)).toBeLessThan(at(20, 25));
      expect(ownCapacity_Ah(battery)).toBeGreaterThan(0.3 * battery.nominal_Ah);
      expect(ownCapacity_Ah(battery)).toBeLessThan(1.4 * battery.nominal_Ah);
    }
  });

  it('sags under a load and comes back at rest', () => {
    for (const battery of some) {
      const state = rested(0.7);
      const before = terminalVolts(battery, state, 0, 20);
      for (let n = 0; n < 60; n++) flow(battery, state, battery.nominal_Ah / 10, 60, 20);
      const under = terminalVolts(battery, state, battery.nominal_Ah / 10, 20);
      for (let n = 0; n < 600; n++) flow(battery, state, 0, 60, 20);
      const after = terminalVolts(battery, state, 0, 20);
      expect(under).toBeLessThan(after);
      expect(after).toBeLessThan(before);
    }
  });

  it('reads high on charge and is held to the regulator’s volts', () => {
    for (const battery of some) {
      const state = rested(0.5);
      const atRest = terminalVolts(battery, state, 0, 20);
      for (let n = 0; n < 40 * 60; n++) {
        const amps = regulated(battery, state, -battery.nominal_Ah / 10, 20, 14.4);
        expect(terminalVolts(battery, state, amps, 20)).toBeLessThan(14.45);
        flow(battery, state, amps, 60, 20);
      }
      expect(terminalVolts(battery, state, 0, 20)).toBeGreaterThan(atRest + 0.1);
    }
  });

  // battery trade table, recalled: 1.265 is 12.65 V, 1.190 is 12.24 V, 1.120 is 11.89 V
  it('has the volts of its acid', () => {
    for (const [density, volts] of [
      [1.265, 12.65],
      [1.19, 12.24],
      [1.12, 11.89],
    ] as const)
      expect(Math.abs(6 * cellVolts(acidOfDensity_mol_L(density)) - volts)).toBeLessThan(0.04);
  });
});
