import { type Conductor, type ConductorSize, isInTable, sizeInWords } from './conductor.ts';
import { type CurrentCapacity, currentCapacity, type NoCapacity } from './current-capacity.ts';
import {
  type BatteryKind,
  type FuseKind,
  faultCurrent_A,
  fuseFor,
  fuseKinds,
  fuseReach_m,
  fuseThatBreaks,
  greatestFuse_A,
  loadShare,
} from './fuse.ts';
import { leastSize, type Run, type SmallestConductor, smallestConductor } from './smallest-conductor.ts';
import { dropLimit_pct, type Needs, usualConductor_C, voltDrop_V } from './volt-drop.ts';

/** What all circuits hang on. */
export interface WiredBattery {
  readonly chemistry: BatteryKind;
  readonly capacity_Ah: number;
  readonly nominal_V: number;
  /** short-circuit current on the maker's sheet; null: taken by kind and size */
  readonly fault_A: number | null;
  /** of the fuse ahead of all others: where it breaks the short, those after it need not; null: not said */
  readonly mainFuseKind: FuseKind | 'none' | null;
  /** whether a switch parts the battery from all but its bilge pump; null: not said */
  readonly isolator: boolean | null;
}

/** One circuit as it is, or is to be. */
export interface WiredCircuit {
  readonly name: string;
  /** what is at its far end: a panel and a charger feed the battery, and their leads burn by it all the same */
  readonly end: 'load' | 'panel' | 'charger';
  /** greatest steady current */
  readonly current_A: number;
  readonly needs: Needs;
  readonly fuse_A: number | null;
  /** way along the lead from the battery to the fuse; null: not measured */
  readonly fuseAt_m: number | null;
  readonly fuseKind: FuseKind | null;
  /** in a sheath or conduit between battery and fuse */
  readonly sheathed: boolean;
  readonly run: Run;
  /** null: not known yet, or not led yet */
  readonly conductor: Conductor | null;
}

export type FaultKind =
  | 'no fuse'
  | 'fuse above the wire'
  | 'fuse below the load'
  | 'fuse too far'
  | 'fuse cannot break'
  | 'drop too great'
  | 'conductor too thin'
  | 'conductor too weak'
  | 'no figure'
  | 'no isolator';

/** Something wrong with a circuit, and what would be right. */
export interface CircuitFault {
  readonly kind: FaultKind;
  /** it can burn; the others fail or work badly */
  readonly danger: boolean;
  readonly wrong: string;
  readonly right: string;
}

/** Something that was not entered, so that a check could not be made. */
export interface CircuitGap {
  readonly missing: 'fuse' | 'fuse place' | 'fuse kind' | 'conductor' | 'isolator';
  readonly unchecked: string;
}

/** One circuit looked at. */
export interface CheckedCircuit {
  readonly name: string;
  readonly faults: readonly CircuitFault[];
  readonly gaps: readonly CircuitGap[];
  /** what the wire that is there may carry and loses; null: no wire was given, or one thinner than the tables begin */
  readonly capacity: CurrentCapacity | NoCapacity | null;
  readonly drop: { readonly volts: number; readonly pct: number; readonly limit_pct: number } | null;
  /** greatest standard fuse that the wire bears; null: no wire was given, or none so small */
  readonly greatestFuse_A: number | null;
}

export interface CheckedCircuits {
  readonly fault_A: number;
  readonly circuits: readonly CheckedCircuit[];
  /** of the battery as a whole */
  readonly faults: readonly CircuitFault[];
  readonly gaps: readonly CircuitGap[];
}

/** Looks at every circuit of a battery and names each fault with what would be right. Nothing that is missing passes in silence. */
export function circuitCheck(battery: WiredBattery, circuits: readonly WiredCircuit[]): CheckedCircuits {
  const fault_A = battery.fault_A ?? faultCurrent_A(battery.chemistry, battery.capacity_Ah, battery.nominal_V);
  return {
    fault_A,
    circuits: circuits.map((circuit) => checkedCircuit(battery, fault_A, circuit)),
    faults: batteryFaults(battery, fault_A),
    gaps: batteryGaps(battery, circuits),
  };
}

function batteryFaults(battery: WiredBattery, fault_A: number): CircuitFault[] {
  const faults: CircuitFault[] = [];
  if (battery.isolator === false)
    faults.push({
      kind: 'no isolator',
      danger: true,
      wrong: 'nothing parts the battery from the wiring',
      right: 'fit an isolator in the positive lead at the battery, in reach without moving anything',
    });
  const { mainFuseKind } = battery;
  if (mainFuseKind !== null && mainFuseKind !== 'none' && fuseKinds[mainFuseKind].breaks_A < fault_A)
    faults.push(cannotBreak(battery, mainFuseKind, fault_A));
  return faults;
}

function batteryGaps(battery: WiredBattery, circuits: readonly WiredCircuit[]): CircuitGap[] {
  const gaps: CircuitGap[] = [];
  if (battery.isolator === null)
    gaps.push({
      missing: 'isolator',
      unchecked: 'whether an isolator parts the battery from the wiring is not entered',
    });
  const unknown = circuits.filter(({ fuse_A, fuseKind }) => fuse_A !== null && fuseKind === null).length;
  if ((battery.mainFuseKind === null || battery.mainFuseKind === 'none') && unknown > 0)
    gaps.push({
      missing: 'fuse kind',
      unchecked: `of ${unknown === 1 ? 'one fuse' : `${unknown} fuses`} the kind is not entered, nor that of a main fuse ahead of ${unknown === 1 ? 'it' : 'them'}: whether a short is broken was not looked at`,
    });
  return gaps;
}

/** A fuse that would arc on where the battery gives all it can. */
function cannotBreak({ chemistry }: WiredBattery, kind: FuseKind, fault_A: number): CircuitFault {
  const breaks = fuseThatBreaks(fault_A);
  return {
    kind: 'fuse cannot break',
    danger: true,
    wrong: `a ${fuseKinds[kind].title} fuse breaks ${fuseKinds[kind].breaks_A} A, this ${chemistry === 'lifepo4' ? 'LiFePO4' : 'lead'} battery may give ${100 * Math.ceil(fault_A / 100)} A into a short`,
    right: breaks
      ? `a main fuse of the kind ‘${fuseKinds[breaks].title}’ at the battery, ahead of all others`
      : 'ask the battery’s maker which fuse breaks it',
  };
}

/** Whether the main fuse breaks what the battery may give, so that the fuses after it need not. */
const mainBreaks = ({ mainFuseKind }: WiredBattery, fault_A: number): boolean =>
  mainFuseKind !== null && mainFuseKind !== 'none' && fuseKinds[mainFuseKind].breaks_A >= fault_A;

/** The wire and fuse for a circuit by its load, length and need, whatever is there now. */
export function wireFor(
  battery: Pick<WiredBattery, 'nominal_V'>,
  circuit: Pick<WiredCircuit, 'current_A' | 'needs' | 'run'>,
  laid: Omit<Conductor, 'size'>,
  system: ConductorSize['kind'],
): SmallestConductor {
  return smallestConductor({
    system,
    current_A: circuit.current_A,
    lengthThereAndBack_m: laid.lengthThereAndBack_m,
    nominal_V: battery.nominal_V,
    drop_pct: dropLimit_pct[circuit.needs],
    conductor_C: usualConductor_C,
    laid,
    run: circuit.run,
  });
}

function checkedCircuit(battery: WiredBattery, fault_A: number, circuit: WiredCircuit): CheckedCircuit {
  const { conductor } = circuit;
  const capacity = conductor && currentCapacity(conductor.size, conductor);
  const carries_A = capacity?.kind === 'capacity' ? capacity.amps : null;
  const volts =
    conductor && isInTable(conductor.size)
      ? voltDrop_V(conductor.size, conductor.lengthThereAndBack_m, circuit.current_A)
      : null;
  const limit_pct = dropLimit_pct[circuit.needs];
  const drop = volts === null ? null : { volts, pct: (100 * volts) / battery.nominal_V, limit_pct };
  const wanted = conductor && wireFor(battery, circuit, conductor, conductor.size.kind);
  return {
    name: circuit.name,
    capacity,
    drop,
    greatestFuse_A: carries_A === null ? null : greatestFuse_A(carries_A),
    faults: [
      ...conductorFaults(circuit, capacity, drop, wanted),
      ...fuseFaults(battery, circuit, carries_A, fault_A, wanted),
    ],
    gaps: gapsOf(circuit),
  };
}

function conductorFaults(
  circuit: WiredCircuit,
  capacity: CurrentCapacity | NoCapacity | null,
  drop: CheckedCircuit['drop'],
  wanted: SmallestConductor | null,
): CircuitFault[] {
  const { conductor } = circuit;
  if (!conductor || !capacity || !wanted) return [];
  const thicker = wanted.size
    ? `${sizeInWords(wanted.size)} does on this run`
    : 'no size of the table does on this run: shorten it, split the load, or raise the volts';
  const faults: CircuitFault[] = [];
  if (capacity.kind === 'none')
    faults.push({ kind: 'no figure', danger: true, wrong: capacity.because, right: capacity.right });
  else if (capacity.amps < circuit.current_A - 1e-9)
    faults.push({
      kind: 'conductor too thin',
      danger: true,
      wrong: `${amps(circuit.current_A)} run through ${sizeInWords(conductor.size)}, which may carry ${amps(capacity.amps)} here`,
      right: thicker,
    });
  if (drop && drop.pct > drop.limit_pct + 1e-9)
    faults.push({
      kind: 'drop too great',
      danger: false,
      wrong: `${drop.volts.toFixed(2)} V are lost on the way, ${drop.pct.toFixed(1)} %, and ${drop.limit_pct} % may be`,
      right: thicker,
    });
  const least = leastSize[circuit.run];
  const weak =
    conductor.size.kind === 'metric'
      ? conductor.size.area_mm2 < least.metric - 1e-9
      : Number(conductor.size.awg) > Number(least.gauge);
  if (weak)
    faults.push({
      kind: 'conductor too weak',
      danger: false,
      wrong: `${sizeInWords(conductor.size)} ${circuit.run === 'singly' ? 'led singly' : 'in a sheath'} breaks by handling and shaking`,
      right: `${conductor.size.kind === 'metric' ? `${least.metric} mm²` : `${least.gauge} AWG`} or more`,
    });
  return faults;
}

function fuseFaults(
  battery: WiredBattery,
  circuit: WiredCircuit,
  carries_A: number | null,
  fault_A: number,
  wanted: SmallestConductor | null,
): CircuitFault[] {
  const reach_m = circuit.sheathed ? fuseReach_m.sheathed : fuseReach_m.open;
  const where = `within ${Math.round(1000 * reach_m)} mm of the battery along the lead`;
  const fits = carries_A === null ? null : fuseFor(circuit.current_A, carries_A);
  const rating = fits?.kind === 'fits' ? `${amps(fits.rating_A)}` : null;
  if (circuit.fuse_A === null) {
    const source = circuit.end === 'load' ? 'the lead' : `the ${circuit.end}’s lead`;
    return [
      {
        kind: 'no fuse',
        danger: true,
        wrong: `${source} has no fuse at the battery end: a chafed spot burns with all the battery gives`,
        right: `${rating ?? (wanted?.fuse?.kind === 'fits' && wanted.size ? `${sizeInWords(wanted.size)} with ${amps(wanted.fuse.rating_A)}` : `a fuse of at least ${amps(loadShare * circuit.current_A)}, not above what the wire may carry`)}, ${where}`,
      },
    ];
  }
  const faults: CircuitFault[] = [];
  if (carries_A !== null && circuit.fuse_A > carries_A + 1e-9)
    faults.push({
      kind: 'fuse above the wire',
      danger: true,
      wrong: `the fuse is ${amps(circuit.fuse_A)}, the wire may carry ${amps(carries_A)}: the wire is the fuse`,
      right:
        rating ??
        (wanted?.size && wanted.fuse?.kind === 'fits'
          ? `${sizeInWords(wanted.size)} with ${amps(wanted.fuse.rating_A)}: no standard fuse stands between this load and this wire`
          : 'a thicker wire: no standard fuse stands between this load and this one'),
    });
  if (circuit.fuse_A < circuit.current_A - 1e-9)
    faults.push({
      kind: 'fuse below the load',
      danger: false,
      wrong: `the fuse is ${amps(circuit.fuse_A)} and ${amps(circuit.current_A)} run: it blows`,
      right: rating ?? `at least ${amps(loadShare * circuit.current_A)}, on a wire that carries it`,
    });
  if (circuit.fuseAt_m !== null && circuit.fuseAt_m > reach_m + 1e-9)
    faults.push({
      kind: 'fuse too far',
      danger: true,
      wrong: `the fuse is ${Math.round(1000 * circuit.fuseAt_m)} mm from the battery: the wire before it has nothing to stop it`,
      right: circuit.sheathed ? where : `${where}, or to ${1000 * fuseReach_m.sheathed} mm in a sheath all the way`,
    });
  if (circuit.fuseKind !== null && fuseKinds[circuit.fuseKind].breaks_A < fault_A && !mainBreaks(battery, fault_A))
    faults.push(cannotBreak(battery, circuit.fuseKind, fault_A));
  return faults;
}

function gapsOf(circuit: WiredCircuit): CircuitGap[] {
  const gaps: CircuitGap[] = [];
  if (circuit.conductor === null)
    gaps.push({
      missing: 'conductor',
      unchecked: 'the wire is not entered: neither its drop nor its fuse was looked at',
    });
  if (circuit.fuse_A !== null && circuit.fuseAt_m === null)
    gaps.push({ missing: 'fuse place', unchecked: 'how far the fuse is from the battery is not entered' });
  return gaps;
}

const amps = (value: number) => `${Number(value.toFixed(value < 10 ? 2 : 1))} A`;
