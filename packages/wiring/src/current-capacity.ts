import {
  gaugeBundleShare,
  gaugeCapacity,
  gaugeEngineShare,
  isoBundleShare,
  isoCapacity,
  isoEngineShare,
} from '../tables/current-capacity.read-2026-11.ts';
import { type ConductorSize, sizeInWords, tableFigure } from './conductor.ts';

/** How a conductor lies, as far as its warmth goes. */
export type Laid = {
  readonly insulation_C: number;
  readonly bundled: number;
  readonly engineSpace: boolean;
};

/** Current a conductor may carry, with the figures it is made of. */
export interface CurrentCapacity {
  readonly kind: 'capacity';
  readonly amps: number;
  readonly table_A: number;
  /** the size and the column that were read: never one above what was given */
  readonly row: string;
  readonly column: string;
  readonly bundleShare: number;
  readonly engineShare: number;
  /** some figure in it is recalled */
  readonly recalled: boolean;
}

/** No capacity, and why. */
export interface NoCapacity {
  readonly kind: 'none';
  readonly because: string;
  readonly right: string;
}

const isoColumns = [60, 70, 85, 105, 125, 200] as const;
const gaugeColumns = [60, 75, 80, 90, 105, 125, 200] as const;

/**
 * Current a conductor may carry for as long as it likes, at 30 °C around it: table by size and insulation × share of the bundle ×
 * share of the engine space. Between two sizes or two columns the lower is taken; nothing is interpolated.
 */
export function currentCapacity(size: ConductorSize, laid: Laid): CurrentCapacity | NoCapacity {
  const metric = size.kind === 'metric';
  const row = metric
    ? isoCapacity.findLast((each) => Number(each.size) <= size.area_mm2 + 1e-9)
    : gaugeCapacity.find((each) => each.size === size.awg);
  if (!row)
    return {
      kind: 'none',
      because: `the table of currents has no ${sizeInWords(size)}`,
      right: metric ? `take ${isoCapacity[0]!.size} mm² or more` : 'take a gauge from 18 to 4/0',
    };
  const column = (metric ? isoColumns : gaugeColumns).findLast((each) => each <= laid.insulation_C);
  const printed = column === undefined ? null : tableFigure(row, column);
  if (column === undefined || !printed)
    return {
      kind: 'none',
      because: `insulation for ${laid.insulation_C} °C is below the table, which begins at 60 °C`,
      right: 'take a cable whose insulation bears 60 °C or more',
    };
  const engine = laid.engineSpace ? tableFigure(metric ? isoEngineShare : gaugeEngineShare, column) : unhurt;
  if (!engine)
    return {
      kind: 'none',
      because: `insulation for ${column} °C has nothing left in an engine space`,
      right: 'take a cable whose insulation bears 70 °C or more, or lead it another way',
    };
  const bundle = (metric ? isoBundleShare : gaugeBundleShare).findLast(({ least }) => least <= laid.bundled)!;
  return {
    kind: 'capacity',
    amps: printed.value * bundle.share * engine.value,
    table_A: printed.value,
    row: sizeInWords(metric ? { kind: 'metric', area_mm2: Number(row.size) } : size),
    column: metric && column === 85 ? '85 to 90 °C' : `${column} °C`,
    bundleShare: bundle.share,
    engineShare: engine.value,
    recalled: printed.recalled || engine.recalled || (!metric && bundle.least === 25),
  };
}

const unhurt = { value: 1, recalled: false } as const;
