/** That a thing of one kind and size is one thing, however its name is put: how lists are merged at any counter. */
import { describe, expect, it } from 'vitest';
import type { Book, StoreRecord } from '#boat-book';
import { type ThingToGet, thingInStores, thingInWords, thingTaken } from './thing-to-get.ts';

const store = (name: string, parts: Partial<StoreRecord> = {}): StoreRecord => ({
  name,
  keptAt: '',
  onHand: true,
  expected: null,
  lead_days: null,
  note: '',
  ...parts,
});
const thing = (name: string, parts: Partial<ThingToGet> = {}): ThingToGet => ({
  name,
  amount: 1,
  unit: '',
  note: '',
  ...parts,
});
const book = (name: string, parts: Partial<StoreRecord> = {}): Pick<Book, 'stores'> => ({
  stores: { there: store(name, parts) },
});

describe('a thing to get', () => {
  it.each([
    ['Twin cable, 1.5 mm² (16 AWG)', 'Tinned twin cable 1.5 mm²', true],
    ['Twin cable, 1.5 mm²', 'Twin cable, 2.5 mm²', false],
    ['Single-core cable, 1.5 mm²', 'Twin cable, 1.5 mm²', false],
    ['Fuse with holder, 3 A', 'fuse with holder, 3 A', true],
    ['Fuse with holder, 3 A', 'Fuse with holder, 10 A', false],
    ['Nylon rope, 12 mm', 'Braided nylon rope 12 mm', true],
    ['Nylon rope, 12 mm', 'Nylon rope, 10 mm', false],
    // a length that is not asked for may be the wrong one
    ['M6 bolts, A4-70', 'M6 × 40 bolts, A4-70', false],
    // no size is said: it may be any
    ['Shackle', 'Shackle, 8 mm', false],
    ['Shackle: one marked for 9.0 kN or more', 'Shackle: one marked for 9.0 kN or more', true],
  ])('%s and %s: the same thing, %s', (asked, there, same) => {
    expect(thingInStores(book(there), thing(asked))).toBe(same ? 'there' : null);
  });

  it('is taken in the unit of the store that it is', () => {
    // 4.5 m is 4,500 mm
    const cable = thing('Twin cable, 1.5 mm²', { amount: 4.5, unit: 'm' });
    expect(thingTaken(book('Twin cable, 1.5 mm²', { unit: 'mm' }), cable, 'there').take).toEqual({
      store: 'there',
      amount: 4500,
      unit: 'mm',
    });
    // metres are no pieces: it stays as it was asked for
    expect(thingTaken(book('Twin cable, 1.5 mm²', { unit: '' }), cable, 'there').take).toMatchObject({
      amount: 4.5,
      unit: 'm',
    });
    expect(thingTaken(book('x'), { ...cable, amount: null }, 'there')).toEqual({ store: 'there', take: null });
  });

  it('is said with how much of it, which is no part of its name', () => {
    expect(thingInWords(thing('Twin cable, 1.5 mm²', { amount: 4.5, unit: 'm' }))).toBe('Twin cable, 1.5 mm², 4.5 m');
    expect(thingInWords(thing('M6 bolts', { amount: 4 }))).toBe('4 × M6 bolts');
    expect(thingInWords(thing('Fuse with holder, 3 A'))).toBe('Fuse with holder, 3 A');
  });
});
