/** From the book's table of circuits to the check of its wiring. */
import type { BatteryRecord, Book, ChargerRecord, CircuitRecord, CircuitUseRecord, Id, PanelRecord } from '#boat-book';
import {
  type CheckedCircuit,
  type CircuitFault,
  type CircuitGap,
  circuitCheck,
  faultCurrent_A,
  sizeOfArea,
  voltsAtDevice,
  type WiredBattery,
  type WiredCircuit,
} from '#wiring';

/** Where a circuit stands in the book: a panel's and a charger's lead are circuits too. */
export interface CircuitPlace {
  readonly kind: 'circuit' | 'panel' | 'charger';
  readonly id: Id;
}

/** One circuit of the book, as it is wired and with what was found. */
export interface LookedAtCircuit {
  readonly place: CircuitPlace;
  /** null: it feeds the battery */
  readonly uses: CircuitUseRecord | null;
  readonly wired: WiredCircuit;
  readonly checked: CheckedCircuit;
  /** at the device, when the battery gives its nominal volts under load; null: no load, or no wire is known */
  readonly atDevice_V: number | null;
}

/** A battery with all that hangs on it, looked at. */
export interface LookedAtBattery {
  readonly id: Id;
  readonly record: BatteryRecord;
  readonly wired: WiredBattery;
  /** into a dead short: given, or by kind and size. [A] */
  readonly fault_A: number;
  readonly circuits: readonly LookedAtCircuit[];
  readonly faults: readonly CircuitFault[];
  readonly gaps: readonly CircuitGap[];
}

/** Every battery of the book with its circuits, panels and chargers looked at; in the order of the book. */
export function circuitsOfBook(book: Book): LookedAtBattery[] {
  return Object.entries(book.batteries).map(([id, record]) => lookedAt(book, id, record));
}

function lookedAt(book: Book, id: Id, record: BatteryRecord): LookedAtBattery {
  const wired = wiredBattery(record);
  const of = <T extends { readonly battery: Id }>(records: Readonly<Record<Id, T>>) =>
    Object.entries(records).filter(([, each]) => each.battery === id);
  const all: readonly (readonly [CircuitPlace, WiredCircuit, fuseSaid: boolean])[] = [
    ...of(book.circuits).map(
      ([circuit, each]) => [{ kind: 'circuit', id: circuit }, wiredCircuit(each, record), true] as const,
    ),
    ...of(book.panels).map(
      ([panel, each]) => [{ kind: 'panel', id: panel }, wiredPanel(each, record), each.fuse_A !== undefined] as const,
    ),
    ...of(book.chargers).map(
      ([charger, each]) => [{ kind: 'charger', id: charger }, wiredCharger(each), each.fuse_A !== undefined] as const,
    ),
  ];
  const checked = circuitCheck(
    wired,
    all.map(([, circuit]) => circuit),
  );
  return {
    id,
    record,
    wired,
    fault_A: checked.fault_A,
    circuits: all.map(([place, circuit, fuseSaid], n) => ({
      place,
      uses: place.kind === 'circuit' ? book.circuits[place.id]!.uses : null,
      wired: circuit,
      checked: asSaid(checked.circuits[n]!, circuit, fuseSaid),
      atDevice_V: voltsAtDevice(circuit, wired.nominal_V, wired.nominal_V),
    })),
    faults: checked.faults,
    gaps: checked.gaps,
  };
}

/** What nobody was asked is not a fault but something to look at; what the book has no place for is not asked. */
function asSaid(checked: CheckedCircuit, { end }: WiredCircuit, fuseSaid: boolean): CheckedCircuit {
  const gaps = checked.gaps.filter(
    ({ missing }) => end === 'load' || (missing !== 'fuse place' && (end === 'panel' || missing !== 'conductor')),
  );
  if (fuseSaid) return { ...checked, gaps };
  return {
    ...checked,
    faults: checked.faults.filter(({ kind }) => kind !== 'no fuse'),
    gaps: [
      ...gaps,
      { missing: 'fuse', unchecked: `whether the ${end}’s lead is fused at the battery end is not entered` },
    ],
  };
}

export const wiredBattery = (record: BatteryRecord): WiredBattery => ({
  chemistry: record.chemistry,
  capacity_Ah: record.nominal_Ah,
  nominal_V: record.nominal_V,
  fault_A: record.fault_A ?? null,
  isolator: record.isolator ?? null,
  mainFuseKind: record.mainFuseKind ?? null,
});

/** What a battery may give into a dead short: as its maker says, else by kind and size. [A] */
export const faultOf = ({ chemistry, capacity_Ah, nominal_V, fault_A }: WiredBattery): number =>
  fault_A ?? faultCurrent_A(chemistry, capacity_Ah, nominal_V);

function wiredCircuit(record: CircuitRecord, battery: BatteryRecord): WiredCircuit {
  const { conductor } = record;
  return {
    name: record.name,
    end: 'load',
    current_A: record.watts / battery.nominal_V,
    needs: record.needs,
    fuse_A: record.fuse_A,
    fuseAt_m: record.fuseAt_m,
    fuseKind: record.fuseKind ?? null,
    sheathed: record.sheathed ?? false,
    run: assumedRun,
    conductor: conductor && {
      size: sizeOfArea(conductor.area_mm2),
      insulation_C: conductor.insulation_C,
      lengthThereAndBack_m: conductor.lengthThereAndBack_m,
      bundled: conductor.bundled,
      engineSpace: conductor.engineSpace,
    },
  };
}

/** A panel at its peak watts into the battery's nominal volts, on the safe side; its insulation is not in the book. */
function wiredPanel({ name, peak_W, leads, ...panel }: PanelRecord, battery: BatteryRecord): WiredCircuit {
  return {
    ...feed,
    name,
    end: 'panel',
    current_A: peak_W / battery.nominal_V,
    fuse_A: panel.fuse_A ?? null,
    conductor: leads && {
      size: sizeOfArea(leads.area_mm2),
      insulation_C: assumedInsulation_C,
      lengthThereAndBack_m: leads.lengthThereAndBack_m,
      bundled: 2,
      engineSpace: false,
    },
  };
}

const wiredCharger = ({ name, amps, fuse_A }: ChargerRecord): WiredCircuit => ({
  ...feed,
  name,
  end: 'charger',
  current_A: amps,
  fuse_A: fuse_A ?? null,
  conductor: null,
});

/** Twin cable is what is laid in small boats. Assumed. */
const assumedRun = 'in-a-sheath';
/** The lowest of the tables, where none is in the book. Assumed. [°C] */
const assumedInsulation_C = 60;
const feed = { needs: 'critical', fuseAt_m: null, fuseKind: null, sheathed: false, run: assumedRun } as const;
