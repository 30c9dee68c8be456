import { type ConductorSize, copperArea_mm2, gauge_cmil, sizesOf } from './conductor.ts';
import { type CurrentCapacity, currentCapacity, type Laid, type NoCapacity } from './current-capacity.ts';
import { type FuseFound, fuseFor } from './fuse.ts';
import { leastCircularMils, voltDrop_V } from './volt-drop.ts';

/** Led singly a conductor must be strong enough not to break; in a sheath it may be thinner. */
export type Run = 'singly' | 'in-a-sheath';

/** Least sizes: ISO 10133:2012 7.7 and 33 CFR 183.425(d)(e). */
export const leastSize = {
  singly: { metric: 1, gauge: '16' },
  'in-a-sheath': { metric: 0.75, gauge: '18' },
} as const satisfies Record<Run, { metric: number; gauge: string }>;

export interface Wanted {
  readonly system: ConductorSize['kind'];
  readonly current_A: number;
  readonly lengthThereAndBack_m: number;
  readonly nominal_V: number;
  readonly drop_pct: number;
  readonly conductor_C: number;
  readonly laid: Laid;
  readonly run: Run;
}

/** The smallest conductor that passes everything, and the smallest for each reason alone; null where no size of the table does. */
export interface SmallestConductor {
  readonly size: ConductorSize | null;
  readonly forDrop: ConductorSize | null;
  readonly forCurrent: ConductorSize | null;
  readonly forFuse: ConductorSize | null;
  readonly least: ConductorSize;
  readonly drop_V: number | null;
  readonly fuse: FuseFound | null;
  readonly capacity: CurrentCapacity | NoCapacity | null;
}

/**
 * The smallest conductor by volt drop *and* by current *and* so that a standard fuse of 1.25 × the load protects it, no thinner than
 * the rules allow.
 */
export function smallestConductor(wanted: Wanted): SmallestConductor {
  const sizes = sizesOf(wanted.system);
  const drop = (size: ConductorSize) =>
    voltDrop_V(size, wanted.lengthThereAndBack_m, wanted.current_A, { conductor_C: wanted.conductor_C });
  const allowed_V = (wanted.nominal_V * wanted.drop_pct) / 100;
  const capacityOf = (size: ConductorSize) => currentCapacity(size, wanted.laid);
  const amps = (size: ConductorSize) => {
    const found = capacityOf(size);
    return found.kind === 'capacity' ? found.amps : 0;
  };
  // gauges by the trade's own formula, so that its printed table comes out
  const dropIsRight = (size: ConductorSize) =>
    size.kind === 'gauge'
      ? gauge_cmil(size.awg).value >= leastCircularMils(wanted.lengthThereAndBack_m, wanted.current_A, allowed_V) - 1e-9
      : drop(size) <= allowed_V + 1e-12;
  const first = (passes: (size: ConductorSize) => boolean) => sizes.find(passes) ?? null;
  const least: ConductorSize =
    wanted.system === 'metric'
      ? { kind: 'metric', area_mm2: leastSize[wanted.run].metric }
      : { kind: 'gauge', awg: leastSize[wanted.run].gauge };
  const leastArea = copperArea_mm2(least);
  const carries = (size: ConductorSize) => amps(size) >= wanted.current_A - 1e-9;
  const protects = (size: ConductorSize) => fuseFor(wanted.current_A, amps(size)).kind === 'fits';
  const size = first(
    (each) => dropIsRight(each) && carries(each) && protects(each) && copperArea_mm2(each) >= leastArea - 1e-9,
  );
  return {
    size,
    forDrop: first(dropIsRight),
    forCurrent: first(carries),
    forFuse: first(protects),
    least,
    drop_V: size && drop(size),
    fuse: size && fuseFor(wanted.current_A, amps(size)),
    capacity: size && capacityOf(size),
  };
}
