/**
 * Links of calibrated short-link chain by the diameter of their wire, mm: the length and the width inside. Outside there is
 * twice the wire more. Source: fastenings.source.md.
 */
// biome-ignore format: one size, one line
export const shortLinks = [
  { wire_mm: 5, insideLength_mm: 18.5, insideWidth_mm: 6 },
  { wire_mm: 6, insideLength_mm: 18.5, insideWidth_mm: 7.2 },
  { wire_mm: 7, insideLength_mm: 22, insideWidth_mm: 8.4 },
  { wire_mm: 8, insideLength_mm: 24, insideWidth_mm: 9.6 },
  { wire_mm: 10, insideLength_mm: 28, insideWidth_mm: 12 },
] as const;
