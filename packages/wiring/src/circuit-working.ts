/** How the figures of a circuit are worked out: what it loses, what its wire may carry, its fuse, what arrives. */
import type { Source, WorkingLine } from '#working';
import type { WiredBattery, WiredCircuit } from './circuit-check.ts';
import { type ConductorSize, copperArea_mm2, gauges, isInTable, resistance_ohm_km, sizeInWords } from './conductor.ts';
import { capacityWorking } from './conductor-questions.ts';
import { currentCapacity } from './current-capacity.ts';
import { faultCurrent_A, fuseKinds, fuseReach_m, fuseThatBreaks, greatestFuse_A, loadShare } from './fuse.ts';
import { atDevice, dropLimit_pct, usualConductor_C, usualStranding, voltDrop_V, way_ohm } from './volt-drop.ts';
import { sources } from './wiring-fields.ts';

/** Fuse, switch and joints of a circuit in good order, together, and the most they lose: larger ones are fitted to larger currents. */
const assumedJoints = { ohm: 0.02, most_V: 0.1 } as const;

/** Resistance of fuse, switch and joints together at a current. Our assumption. [Ω] */
const joints_ohm = (current_A: number): number =>
  Math.min(assumedJoints.ohm, current_A > 0 ? assumedJoints.most_V / current_A : assumedJoints.ohm);

/** A part of the working under its title. */
export interface WorkingPart {
  readonly title: string;
  readonly lines: readonly WorkingLine[];
}

export interface CircuitWorking {
  readonly parts: readonly WorkingPart[];
  readonly sources: readonly Source[];
  /** where the figures stop being true */
  readonly limits: readonly string[];
}

/**
 * Volts at the device at the end of a circuit, as one that draws steady watts sees them: the worst case on a long wire.
 *
 * @param battery_V  at the battery, under this load. [V]
 * @returns          [V]; null: the wire cannot bring so much, or no wire is known, or it is no load
 */
export function voltsAtDevice(circuit: WiredCircuit, battery_V: number, nominal_V: number): number | null {
  if (circuit.conductor === null || circuit.end !== 'load' || !isInTable(circuit.conductor.size)) return null;
  const { size, lengthThereAndBack_m } = circuit.conductor;
  const way = way_ohm(size, lengthThereAndBack_m) + joints_ohm(circuit.current_A);
  const found = atDevice('steady-watts', battery_V, way, circuit.current_A * nominal_V, nominal_V);
  return found.kind === 'found' ? found.volts : null;
}

/** The thickest boat cable in gauge that has no more copper than the conductor; null: it is thinner than all of them. */
export function gaugeWithin(size: ConductorSize): string | null {
  const area = copperArea_mm2(size);
  return gauges.findLast((awg) => copperArea_mm2({ kind: 'gauge', awg }) <= area + 1e-9) ?? null;
}

/** Where the figures of a circuit stop being true. */
const limits = [
  'Copper, direct current, to 60 V. Each circuit by itself: a lead that several share carries them all.',
  'Joints, fuse and switch in good order; a green joint loses more than the wire.',
  'Motors that start hard, windlass and starter follow their makers’ sheets.',
] as const;

/** The working of one circuit as it stands. Parts about the wire are left out where no wire is known. */
export function circuitWorking(battery: WiredBattery, circuit: WiredCircuit): CircuitWorking {
  const { conductor, current_A } = circuit;
  const from: Source[] = [];
  const parts: WorkingPart[] = [];
  if (conductor && isInTable(conductor.size)) {
    const { size, lengthThereAndBack_m } = conductor;
    const resistance = resistance_ohm_km(size, usualStranding, usualConductor_C);
    const drop = voltDrop_V(size, lengthThereAndBack_m, current_A);
    parts.push({
      title: 'Volts lost on the way',
      lines: [
        line('I', 'current', current_A, 'A', 'watts ÷ nominal volts'),
        line('L', 'length there and back', lengthThereAndBack_m, 'm', 'measured'),
        line(
          'R',
          `${sizeInWords(size)}, fine strands, tinned, at ${usualConductor_C} °C${resistance.recalled ? ', recalled' : ''}`,
          resistance.value,
          'Ω/km',
          size.kind === 'metric' ? 'greatest of IEC 60228, warmed' : '10.75 Ω·circular mil/ft ÷ circular mils, warmed',
        ),
        line('E', 'volts lost', drop, 'V', 'I·R·L/1000'),
        line('share', 'of the nominal volts', (100 * drop) / battery.nominal_V, '%', '100·E/U'),
        line('most', 'share that may be lost', dropLimit_pct[circuit.needs], '%', '3 where it matters, 10 elsewhere'),
      ],
    });
    from.push(sources.iec60228, ...(resistance.recalled ? [sources.iecCells] : []), sources.copperHeat, sources.limits);
    const capacity = currentCapacity(size, conductor);
    parts.push({
      title: 'What the wire may carry',
      lines:
        capacity.kind === 'capacity'
          ? [
              ...capacityWorking(capacity),
              line(
                'In most',
                'greatest standard fuse it bears',
                greatestFuse_A(capacity.amps) ?? 'none',
                'A',
                'next standard at or below Iz',
              ),
            ]
          : [line('Iz', `${capacity.because}; ${capacity.right}`, 'none', '', 'printed table')],
    });
    from.push(size.kind === 'metric' ? sources.isoCurrent : sources.gaugeCurrent);
    if (capacity.kind === 'capacity') {
      if (capacity.recalled) from.push(sources.currentCells);
    }
  }
  parts.push({ title: 'The fuse', lines: fuseLines(battery, circuit) });
  from.push(sources.fuseRule, sources.fuseLoad, sources.fuseUs, sources.breaking);
  if (battery.fault_A === null) from.push(sources.fault);
  const arrives_V = voltsAtDevice(circuit, battery.nominal_V, battery.nominal_V);
  if (conductor && arrives_V !== null) {
    const wire = way_ohm(conductor.size, conductor.lengthThereAndBack_m);
    parts.push({
      title: 'Volts at the device',
      lines: [
        line('E', 'at the battery, under load', battery.nominal_V, 'V', 'nominal: a lead battery at half gives it'),
        line('R wire', 'there and back', 1000 * wire, 'mΩ', 'R·L'),
        line(
          'R joints',
          'fuse, switch and joints in good order',
          1000 * joints_ohm(current_A),
          'mΩ',
          `${1000 * assumedJoints.ohm} mΩ, or less where they would lose over ${assumedJoints.most_V} V: our assumption`,
        ),
        line('P', 'draws as much at fewer volts: the worst case', current_A * battery.nominal_V, 'W', 'its label'),
        line('U', 'at the device', arrives_V, 'V', '(E + √(E² − 4·R·P))/2'),
      ],
    });
  }
  return { parts, sources: from, limits };
}

function fuseLines(battery: WiredBattery, circuit: WiredCircuit): WorkingLine[] {
  const fault_A = battery.fault_A ?? faultCurrent_A(battery.chemistry, battery.capacity_Ah, battery.nominal_V);
  const kind = fuseThatBreaks(fault_A);
  return [
    line('In least', 'least rating', loadShare * circuit.current_A, 'A', `${loadShare}·I: common practice`),
    line(
      'place',
      'from the battery along the lead, at most',
      1000 * (circuit.sheathed ? fuseReach_m.sheathed : fuseReach_m.open),
      'mm',
      circuit.sheathed ? 'in a sheath all the way' : 'in the open',
    ),
    line(
      'I short',
      `into a dead short${battery.fault_A === null ? ', by kind and size' : ', from its maker’s sheet'}`,
      fault_A,
      'A',
      battery.fault_A === null ? 'charged volts over the least likely resistance: our assumption' : 'given',
    ),
    line(
      'I breaks',
      kind ? `a ${fuseKinds[kind].title} fuse breaks, as recalled` : 'no fuse of the list breaks it: ask its maker',
      kind ? fuseKinds[kind].breaks_A : 'none',
      kind ? 'A' : '',
      'by its kind; its maker’s sheet decides',
    ),
  ];
}

const line = (symbol: string, meaning: string, value: number | string, unit: string, formula: string): WorkingLine => ({
  symbol,
  meaning,
  value,
  unit,
  formula,
});
