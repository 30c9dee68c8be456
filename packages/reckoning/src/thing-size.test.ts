import { describe, expect, it } from 'vitest';
import { sizeFit, sizeInWords } from './thing-size.ts';

describe('a size as a name says it', () => {
  it.each([
    ['M6 × 40 bolts, A4', 'M6, 40 mm long, A4'],
    ['M6x40 A4 bolts and nuts', 'M6, 40 mm long, A4'],
    // the pitch stands between: ISO 965 writes M6 × 1
    ['M6 × 1 × 40 bolts', 'M6, 40 mm long'],
    ['Screws 4.2 × 25 mm, A4', '25 mm long, 4.2 mm, A4'],
    ['7 × 19 wire, grade 316, 4 mm', '4 mm, 7×19, A4'],
    ['1 × 19 stainless wire, 5 mm', '5 mm, 1×19, stainless'],
    ['Tinned twin cable, 2.5 mm²', '2.5 mm², twin'],
    ['Shackle, pin 8 mm, galvanised', 'pin 8 mm, galvanised'],
    ['Shackle 8 mm, galvanised', '8 mm, galvanised'],
    ['Fuse 15 A with its holder', '15 A'],
    ['Rope, polyester braid, 12 mm', '12 mm'],
    ['Waxed twine', null],
    ['Bolts, A4', 'A4'],
  ])('%s', (name, said) => {
    expect(sizeInWords(name)).toBe(said);
  });
});

describe('whether a thing is of the size asked for', () => {
  it.each([
    ['M6 × 40 bolts, A4', 'M6 × 30 bolts, A4', '40 mm long', '30 mm long'],
    ['M6 × 40 bolts, A4', 'M8 × 40 bolts, A4', 'M6', 'M8'],
    ['M6 × 40 bolts, A4', 'M6 × 40 bolts, A2', 'A4', 'A2'],
    ['7 × 19 wire, 4 mm', '1 × 19 wire, 4 mm', '7×19', '1×19'],
    ['Twin cable 2.5 mm²', 'Twin cable 1.5 mm²', '2.5 mm²', '1.5 mm²'],
    ['Shackle, pin 8 mm', 'Shackle, pin 10 mm', 'pin 8 mm', 'pin 10 mm'],
    ['Shackle 8 mm, galvanised', 'Shackle 8 mm, stainless', 'galvanised', 'stainless'],
  ])('%s is not %s', (asked, there, want, have) => {
    expect(sizeFit(asked, there)).toEqual({ kind: 'other size', asked: want, there: have });
  });

  it('takes the same size however it is written', () => {
    expect(sizeFit('M6 × 40 bolts, A4', 'Bolts M6x40 316')).toEqual({ kind: 'fits', unsaid: [] });
    expect(sizeFit('Bolts', 'M6 × 40 bolts')).toEqual({ kind: 'fits', unsaid: [] });
  });

  it('knows the thickness of a bolt by its thread', () => {
    expect(sizeFit('Bolts for the plate, A4, 8 mm', 'M8 × 60 bolts and nuts, A4')).toEqual({
      kind: 'fits',
      unsaid: [],
    });
    expect(sizeFit('Bolts for the plate, A4, 6 mm', 'M8 × 60 bolts and nuts, A4').kind).toBe('other size');
  });

  it('names what the other does not say, so that it is looked at', () => {
    expect(sizeFit('M6 × 40 bolts, A4', 'M6 bolts, stainless')).toEqual({ kind: 'fits', unsaid: ['length', 'metal'] });
    expect(sizeFit('Shackle, pin 8 mm', 'Shackle 8 mm')).toEqual({ kind: 'fits', unsaid: ['pin'] });
  });
});
