import { expect, it } from 'vitest';
import { shelfLifeOf } from './shelf-life.ts';

it('knows a family by the words of a name, the nearer one first', () => {
  const family = (name: string) => shelfLifeOf(name)?.family ?? null;
  expect(family('Polyurethane sealant, white')).toBe('polyurethane sealant');
  expect(family('Two-pot polyurethane paint')).toBe('two-pot paint or varnish');
  expect(family('Epoxy primer')).toBe('two-pot primer');
  expect(family('Epoxy, fast hardener, 500 g')).toBe('epoxy');
  expect(family('Polysulphide or hybrid sealant')).toBe('polysulphide');
  expect(family('Butyl tape')).toBe('butyl tape');
});

it('says nothing of what keeps, or is only named after a product', () => {
  for (const name of ['M6 × 40 bolts, A4', 'Sealant gun', 'Paint brush', 'Filler powder for epoxy', 'Seizing wire'])
    expect(shelfLifeOf(name)).toBeNull();
});

it('never keeps longer opened than sealed', () => {
  for (const name of [
    'Silicone',
    'Epoxy',
    'Gelcoat',
    'Varnish, one pot',
    'Antifouling',
    'Peroxide catalyst',
    'Petrol',
  ]) {
    const { sealed_months, opened_months } = shelfLifeOf(name)!;
    expect(opened_months ?? 0).toBeLessThanOrEqual(sealed_months!);
  }
});
