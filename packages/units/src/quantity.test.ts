import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase, inUnit, type Kind, kinds, quantity, unitsOf } from './quantity.ts';
import { readQuantity } from './read-quantity.ts';
import { showInches, showQuantity } from './show-quantity.ts';

const read = (kind: Kind, text: string, bare?: string) => {
  const found = readQuantity(kind, text, bare);
  if (found.kind === 'not clear') throw new Error(`${found.wrong}; ${found.right}`);
  return found.value as number;
};
const allKinds = Object.keys(kinds) as Kind[];

describe('conversion', () => {
  // NIST SP 811 (2008), appendix B.8 (from memory): figures printed there, not those the table is built of.
  it.each([
    ['force', 'lbf', 4.448222, 5e-7],
    ['force', 'kgf', 9.80665, 0],
    ['speed', 'kn', 0.5144444, 5e-8],
    ['speed', 'mph', 0.44704, 1e-12],
    ['pressure', 'psi', 68.94757, 5e-6],
    ['torque', 'lbf·ft', 1.355818, 5e-7],
    ['mass', 'oz', 0.02834952, 5e-9],
    ['area', 'ft²', 0.09290304, 1e-12],
    ['volume', 'US gal', 3.785412, 5e-7],
    ['volume', 'US fl oz', 0.02957353, 5e-9],
  ] as const)('one unit of %s, %s', (kind, unit, expected, tolerance) => {
    expect(Math.abs(inBase(kind, 1, unit) - expected)).toBeLessThanOrEqual(tolerance + 1e-12);
  });

  it('puts the fixed points of the thermometer where they are', () => {
    expect(inBase('temperature', 32, '°F')).toBeCloseTo(0, 12);
    expect(inBase('temperature', 212, '°F')).toBeCloseTo(100, 12);
    expect(inBase('temperature', -40, '°F')).toBeCloseTo(-40, 12);
    expect(inBase('temperature difference', 9, '°F')).toBeCloseTo(5, 12);
  });

  it('undoes itself in every unit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...allKinds), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (kind, value) => {
        for (const unit of unitsOf(kind)) {
          const there = inUnit(kind, inBase(kind, value, unit.symbol), unit.symbol);
          expect(Math.abs(there - value)).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(value), Math.abs(unit.offset / unit.factor)),
          );
        }
      }),
    );
  });

  it('has no two units of a kind written alike', () => {
    for (const kind of allKinds) {
      const names = unitsOf(kind).flatMap((unit) => [unit.symbol, ...unit.also]);
      expect(new Set(names).size, kind).toBe(names.length);
    }
  });

  it('refuses what is not a number', () => {
    expect(() => quantity('force', Number.NaN)).toThrow(/force must be a finite number of N, got NaN/);
    expect(() => inBase('force', 1, 'kg')).toThrow(/force is written in N, daN, kN, kgf, lbf; got 'kg'/);
  });
});

describe('reading', () => {
  it.each([
    ['length', '8 mm', 0.008],
    ['length', '5/16 in', (5 / 16) * 0.0254],
    ['length', '1 3/8 in', 1.375 * 0.0254],
    ['length', '1-3/8"', 1.375 * 0.0254],
    ['length', '5 ft 6 in', 66 * 0.0254],
    ['length', '5\' 6"', 66 * 0.0254],
    ['length', '5 ft 6', 66 * 0.0254],
    ['length', '12,5 m', 12.5],
    ['length', '.5 m', 0.5],
    ['length', '7 Metres', 7],
    ['speed', '12 kn', 12 * 0.514444444],
    ['speed', '12 knots', 12 * 0.514444444],
    ['temperature', '54 °F', 12.2222222],
    ['temperature', '−3 °C', -3],
    ['temperature', '-3C', -3],
    ['duration', '1 h 30', 90],
    ['duration', '1h30', 90],
    ['duration', '1 h 30 min', 90],
    ['duration', '90 min', 90],
    ['duration', '2 d 3 h', 51 * 60],
    ['duration', '1.5 h', 90],
    ['humidity', '75%', 75],
    ['angle', '30°', 30],
    ['resistance', '12 mΩ', 0.012],
    ['volume', '250 ml', 0.25],
    ['force', '1.2 kN', 1200],
  ] as const)('%s: %s', (kind, text, expected) => {
    expect(read(kind, text)).toBeCloseTo(expected, 6);
  });

  it('takes a bare number only where the field states the unit', () => {
    expect(read('length', '8', 'mm')).toBeCloseTo(0.008, 12);
    expect(readQuantity('length', '8')).toEqual({
      kind: 'not clear',
      wrong: "'8' has no unit",
      right: 'add the unit, as in 8 mm, 1.2 m or 5/16 in',
    });
  });

  it.each([
    ['length', '8 kg', /'kg' is not a unit of length/],
    ['length', '', /no length given/],
    ['length', 'eight mm', /does not start with a number/],
    ['length', '1/0 in', /divides by nothing/],
    ['length', '1,500 mm', /may mean 1500 or 1.500/],
    ['length', '1.2.3 m', /is not a number/],
    ['length', '6 in 5 ft', /smaller unit/],
    ['length', '5 m 6', /has no unit/],
    ['temperature', '54 °F 3 °C', /two temperatures/],
    ['duration', '90', /has no unit/],
    ['power', '5 MW', /'MW' is not a unit of power/],
  ] as const)('refuses %s: %s', (kind, text, wrong) => {
    const found = readQuantity(kind, text);
    expect(found.kind).toBe('not clear');
    if (found.kind === 'not clear') expect(found.wrong).toMatch(wrong);
  });
});

describe('showing', () => {
  it('writes each kind as people do', () => {
    const plain = (text: string) => text.replaceAll('\u00a0', ' ');
    expect(plain(showQuantity('length', quantity('length', 0.008), { unit: 'mm', decimals: 0 }))).toBe('8 mm');
    expect(plain(showQuantity('speed', inBase('speed', 12, 'kn')))).toBe('12 kn');
    expect(plain(showQuantity('temperature', quantity('temperature', 12.2), { system: 'imperial' }))).toBe('54 °F');
    expect(plain(showQuantity('temperature', quantity('temperature', -3)))).toBe('−3.0 °C');
    expect(plain(showQuantity('temperature', quantity('temperature', -0.01)))).toBe('0.0 °C');
    expect(plain(showQuantity('duration', quantity('duration', 90)))).toBe('1 h 30');
    expect(plain(showQuantity('duration', quantity('duration', 45)))).toBe('45 min');
    expect(plain(showQuantity('duration', quantity('duration', 1445)))).toBe('1 d 5 min');
    expect(plain(showQuantity('duration', quantity('duration', 3060)))).toBe('2 d 3 h');
    expect(plain(showInches(inBase('length', 5 / 16, 'in')))).toBe('5/16 in');
    expect(plain(showInches(inBase('length', 1.375, 'in')))).toBe('1 3/8 in');
    expect(plain(showInches(inBase('length', 2, 'in')))).toBe('2 in');
  });

  it('reads back what it writes, within half of the last decimal', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...allKinds),
        fc.nat(20),
        fc.integer({ min: 0, max: 6 }),
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        (kind, pick, decimals, number) => {
          const unit = unitsOf(kind)[pick % unitsOf(kind).length]!;
          const value = inBase(kind, number, unit.symbol);
          const again = read(kind, showQuantity(kind, value, { unit: unit.symbol, decimals }));
          expect(Math.abs(again - value)).toBeLessThanOrEqual(
            0.5001 * 10 ** -decimals * unit.factor + 1e-9 * Math.abs(value) + 1e-12,
          );
        },
      ),
    );
  });

  it('reads back lengths of time and inches', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 20_000 }), (n) => {
        expect(read('duration', showQuantity('duration', quantity('duration', n)))).toBe(n);
        expect(read('length', showInches(inBase('length', n / 64, 'in')))).toBeCloseTo((n / 64) * 0.0254, 9);
      }),
    );
  });
});
