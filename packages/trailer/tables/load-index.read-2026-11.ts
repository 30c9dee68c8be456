/**
 * What one tyre may carry by its load index in kg, and the highest speed by its speed symbol in km/h (ETRTO, ISO 4000-1).
 * Source: tyre-marks.source.md.
 */
interface PrintedMark {
  readonly mark: number | string;
  readonly value: number;
  /** recalled, not seen: the marking on the tyre and the standard decide */
  readonly recalled?: true;
}

// biome-ignore format: ten to a line, as the table is printed
export const loadIndex_kg: readonly PrintedMark[] = [
  { mark: 50, value: 190, recalled: true }, { mark: 51, value: 195, recalled: true }, { mark: 52, value: 200, recalled: true }, { mark: 53, value: 206, recalled: true }, { mark: 54, value: 212, recalled: true },
  { mark: 55, value: 218, recalled: true }, { mark: 56, value: 224, recalled: true }, { mark: 57, value: 230, recalled: true }, { mark: 58, value: 236, recalled: true }, { mark: 59, value: 243, recalled: true },
  { mark: 60, value: 250 }, { mark: 61, value: 257 }, { mark: 62, value: 265 }, { mark: 63, value: 272 }, { mark: 64, value: 280 },
  { mark: 65, value: 290 }, { mark: 66, value: 300, recalled: true }, { mark: 67, value: 307 }, { mark: 68, value: 315, recalled: true }, { mark: 69, value: 325 },
  { mark: 70, value: 335 }, { mark: 71, value: 345 }, { mark: 72, value: 355 }, { mark: 73, value: 365 }, { mark: 74, value: 375 },
  { mark: 75, value: 387 }, { mark: 76, value: 400 }, { mark: 77, value: 412 }, { mark: 78, value: 425 }, { mark: 79, value: 437, recalled: true },
  { mark: 80, value: 450 }, { mark: 81, value: 462 }, { mark: 82, value: 475 }, { mark: 83, value: 487 }, { mark: 84, value: 500 },
  { mark: 85, value: 515 }, { mark: 86, value: 530 }, { mark: 87, value: 545 }, { mark: 88, value: 560 }, { mark: 89, value: 580, recalled: true },
  { mark: 90, value: 600 }, { mark: 91, value: 615, recalled: true }, { mark: 92, value: 630 }, { mark: 93, value: 650 }, { mark: 94, value: 670 },
  { mark: 95, value: 690 }, { mark: 96, value: 710 }, { mark: 97, value: 730, recalled: true }, { mark: 98, value: 750 }, { mark: 99, value: 775, recalled: true },
  { mark: 100, value: 800 }, { mark: 101, value: 825, recalled: true }, { mark: 102, value: 850, recalled: true }, { mark: 103, value: 875, recalled: true }, { mark: 104, value: 900, recalled: true },
  { mark: 105, value: 925, recalled: true }, { mark: 106, value: 950, recalled: true }, { mark: 107, value: 975, recalled: true }, { mark: 108, value: 1000, recalled: true }, { mark: 109, value: 1030, recalled: true },
  { mark: 110, value: 1060, recalled: true }, { mark: 111, value: 1090, recalled: true }, { mark: 112, value: 1120, recalled: true }, { mark: 113, value: 1150, recalled: true }, { mark: 114, value: 1180, recalled: true },
  { mark: 115, value: 1215, recalled: true }, { mark: 116, value: 1250, recalled: true }, { mark: 117, value: 1285, recalled: true }, { mark: 118, value: 1320, recalled: true }, { mark: 119, value: 1360, recalled: true },
  { mark: 120, value: 1400, recalled: true },
];

// biome-ignore format: as the table is printed
export const speedSymbol_km_h: readonly PrintedMark[] = [
  { mark: 'F', value: 80, recalled: true }, { mark: 'G', value: 90, recalled: true }, { mark: 'J', value: 100 }, { mark: 'K', value: 110 }, { mark: 'L', value: 120 },
  { mark: 'M', value: 130 }, { mark: 'N', value: 140 }, { mark: 'P', value: 150 }, { mark: 'Q', value: 160 }, { mark: 'R', value: 170, recalled: true },
  { mark: 'S', value: 180 }, { mark: 'T', value: 190 }, { mark: 'U', value: 200, recalled: true }, { mark: 'H', value: 210 }, { mark: 'V', value: 240 },
];
