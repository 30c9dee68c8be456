import { shortLinks } from './chain-links.read-2026-11.ts';

/** A size that a maker’s or standard’s sheet gives by the size a part is called by, mm. Source: strengths.source.md. */
export interface SizeColumn {
  readonly source: string;
  readonly read: Readonly<Record<number, number>>;
  readonly recalled: Readonly<Record<number, number>>;
}

const lifting = 'RR-C-271 and EN 13889, alloy lifting shackles, a works’ sheet';
const stainless = 'plain 316 D shackles as they are sold: pin as the body, jaw twice it';
const din766 = 'DIN 766, width inside a link';
const thimbles = 'stainless thimbles as two sellers’ sheets have them, the narrower opening';

/** Pin, clear jaw and ear (the eye of the body that its pin goes through, over all) of shackles by body, mm. */
// biome-ignore format: one printed column, one place here
export const shackleSizes = {
  lifting: {
    pin_mm: { source: lifting, read: { 5: 6, 6: 8, 8: 10, 9: 11, 11: 13, 13: 16, 16: 19 }, recalled: {} },
    jaw_mm: { source: lifting, read: { 5: 10, 6: 12, 8: 13, 9: 16, 11: 18, 13: 22, 16: 27 }, recalled: {} },
    ear_mm: { source: lifting, read: { 5: 13, 6: 16, 8: 20, 9: 22, 11: 26, 13: 34, 16: 40 }, recalled: {} },
  },
  stainless: {
    pin_mm: { source: stainless, read: {}, recalled: { 4: 4, 5: 5, 6: 6, 8: 8, 10: 10, 12: 12, 14: 14, 16: 16 } },
    jaw_mm: { source: stainless, read: {}, recalled: { 4: 8, 5: 10, 6: 12, 8: 16, 10: 20, 12: 24, 14: 28, 16: 32 } },
    ear_mm: { source: stainless, read: {}, recalled: { 4: 8, 5: 10, 6: 12, 8: 16, 10: 20, 12: 24, 14: 28, 16: 32 } },
  },
} as const satisfies Readonly<Record<string, Readonly<Record<'pin_mm' | 'jaw_mm' | 'ear_mm', SizeColumn>>>>;

/** Clear width inside a link of short-link chain by its wire, mm: what a pin may go through. */
export const chainInside_mm: SizeColumn = {
  source: din766,
  read: Object.fromEntries(shortLinks.map(({ wire_mm, insideWidth_mm }) => [wire_mm, insideWidth_mm])),
  recalled: {},
};

/** Thimbles by the rope or wire they are for, mm: clear width of the opening, and over all across the groove. */
// biome-ignore format: one printed column, one place here
export const thimbleSizes = {
  opening_mm: { source: thimbles, read: { 2: 8, 3: 10, 4: 11, 5: 13, 6: 15, 8: 18, 10: 23, 12: 27, 14: 34.5, 16: 35 }, recalled: {} },
  width_mm: { source: thimbles, read: { 2: 5, 3: 5.5, 4: 6.5, 5: 7, 6: 9.5, 8: 12, 10: 15, 12: 18, 14: 19, 16: 22 }, recalled: {} },
} as const satisfies Readonly<Record<string, SizeColumn>>;

/** An ear over its pin, where neither was measured: every shackle of the works’ sheet is 2.0 to 2.2. */
export const earOverPin = 2.2;
