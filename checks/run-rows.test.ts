import { describe, expect, it } from 'vitest';
import { inOtherUnit } from './run-rows.ts';

describe('a figure in the unit of a row', () => {
  // NIST SP 811 (2008), appendix B.8 (from memory), as printed there; weights by the standard g of 9.80665 m/s²
  it.each([
    [1, 'lbf', 'N', 4.448222],
    [1, 'kN', 'kgf', 101.9716],
    [1000, 'N', 'lbf', 224.8089],
    [1, 'lbf/ft²', 'Pa', 47.88026],
    [1, 'N/mm²', 'psi', 145.0377],
    [15_700, 'psi', 'N/mm²', 108.2477],
    [1, 'kN/mm²', 'Pa', 1e9],
    [1, 'lbf·in', 'N·m', 0.1129848],
    [1, 'kgf·m', 'lbf·ft', 7.233014],
    [25.4, 'mm', 'in', 1],
    [90, '°', 'rad', 1.570796],
    [50, '°F', '°C', 10],
    [90, 'min', 'h', 1.5],
    [9.80665, 'kN', 't', 1],
    [9.80665, 'N', 'kg', 1],
    [0.25, 'V', 'mV', 250],
  ])('%f %s in %s', (value, from, to, expected) => {
    expect(inOtherUnit(value, from, to)).toBeCloseTo(expected, expected > 1000 ? 0 : 4);
  });

  it('never takes one kind of quantity for another', () => {
    for (const [from, to] of [
      ['kg', 'N'],
      ['N·m', 'N'],
      ['mm', 'kg'],
      ['%', ''],
      ['', 'N'],
      ['N', 'V vs SCE'],
    ] as const)
      expect(inOtherUnit(1, from, to), `${from} in ${to}`).toBeNull();
  });
});
