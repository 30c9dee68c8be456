/**
 * Rested volts against charge, one entry a printed table. Source: rest-volts.read-2026-11.source.md.
 * Volts are those of a 12 V battery (six cells) unless `volts_of` says one cell.
 */
export interface RestTable {
  readonly title: string;
  /** 'found' was read in stored material, 'memory' is recalled and not seen */
  readonly provenance: 'found' | 'memory';
  readonly volts_of: 'six cells' | 'four cells' | 'one cell';
  /** charge in percent and volts, rising */
  readonly rows: readonly (readonly [charge_pct: number, volts: number])[];
}

// biome-ignore format: one printed table, one line here
export const restTables = {
  'flooded-rounded': {
    title: 'rounded rule-of-thumb table for flooded cells, a seller’s or maker’s page',
    provenance: 'found',
    volts_of: 'six cells',
    rows: [[0, 11.6], [25, 12.0], [50, 12.2], [75, 12.4], [100, 12.6]],
  },
  'lead-ten-step': {
    title: 'much-reprinted ten-step table for lead batteries (donsnotes.com/tech/charging-auto.html)',
    provenance: 'found',
    volts_of: 'six cells',
    rows: [[10, 11.31], [20, 11.58], [30, 11.75], [40, 11.9], [50, 12.06], [60, 12.2], [70, 12.32], [80, 12.42], [90, 12.5], [100, 12.7]],
  },
  'flooded-gravity': {
    title: 'battery trade table with specific gravity, 1.265 full',
    provenance: 'memory',
    volts_of: 'six cells',
    rows: [[0, 11.89], [25, 12.06], [50, 12.24], [75, 12.45], [100, 12.65]],
  },
  'agm-owners': {
    title: 'owners’ AGM table (diyelectriccar.com, thread on AGM voltage against depth of discharge)',
    provenance: 'found',
    volts_of: 'six cells',
    rows: [[15, 12.0], [35, 12.2], [55, 12.4], [75, 12.6], [100, 13.2]],
  },
  'agm-data-sheet': {
    title: 'typical data-sheet curve of a valve-regulated battery',
    provenance: 'memory',
    volts_of: 'six cells',
    rows: [[0, 11.8], [25, 12.02], [50, 12.32], [75, 12.62], [100, 12.85]],
  },
  'gel-data-sheet': {
    title: 'typical data-sheet curve of a gel battery',
    provenance: 'memory',
    volts_of: 'six cells',
    rows: [[0, 11.8], [25, 12.02], [50, 12.35], [75, 12.65], [100, 12.88]],
  },
  'lfp-measured': {
    title: 'breakpoints of a measured C/32 curve, mean of charge and discharge, one cell at room temperature (Sunil, Pattipati, Balasingam, IEEE Trans. Instrum. Meas. 2025, repository Piecewise-Battery-OCV)',
    provenance: 'found',
    volts_of: 'one cell',
    rows: [[0, 2.0102], [0.33, 2.4177], [1.17, 2.7405], [2.67, 2.9299], [5.34, 3.0872], [8.85, 3.1942], [29.72, 3.2772], [98.33, 3.3511], [99.5, 3.418], [100, 3.5981]],
  },
  'lfp-trade': {
    title: 'typical trade table of a LiFePO4 battery',
    provenance: 'memory',
    volts_of: 'four cells',
    rows: [[0, 10.0], [10, 12.3], [20, 12.9], [30, 13.0], [40, 13.1], [50, 13.15], [70, 13.2], [90, 13.35], [100, 13.5]],
  },
} as const satisfies Readonly<Record<string, RestTable>>;

export type RestTableName = keyof typeof restTables;
