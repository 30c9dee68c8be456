/**
 * A battery as a circuit: open-circuit volts by charge, a resistance that grows in the cold and towards empty, a fast and a slow
 * polarisation, surface charge after charging, what of a charge is stored, and what it takes near full. Volts are of a 12 V
 * battery; currents are positive out of it.
 *
 * The form is the usual one of the literature (two resistor and capacitor pairs after the rested volts); the figures are drawn
 * from tables and literature by `batteryPrior`, never fitted beforehand on measured runs.
 */
import { storedShare } from './charging.ts';
import type { Chemistry } from './chemistry.ts';
import { recountedVolts, tablesOf, tableVolts } from './rest-charge.ts';

/** Figures of one battery, in a list; `figureNames` says where each stands. */
export const figureNames = [
  'capacity_Ah',
  'charge',
  'ohms',
  'nearEmpty',
  'fast_ohms',
  'fast_h',
  'slow_ohms',
  'slow_h',
  'surface_V',
  'surface_h',
  'surfaceMost_V',
  'rise_V',
  'stored',
  'taper_h',
  'memory_V',
  'tilt_V',
  'bow_V',
  'recount',
  'weight0',
  'weight1',
  'exponentOver1',
] as const;
export type FigureName = (typeof figureNames)[number];
export const figureCount = figureNames.length;
export const at = Object.fromEntries(figureNames.map((name, i) => [name, i])) as Readonly<Record<FigureName, number>>;

/** What flows and what is read, cut into steps in which nothing changes. */
export interface Timeline {
  readonly steps: number;
  /** length of each step. [h] */
  readonly hours: Float64Array;
  readonly battery_C: Float64Array;
  /** flows of step i stand from firstFlow[i] to firstFlow[i + 1] in `flowIndex` */
  readonly firstFlow: Int32Array;
  readonly flowIndex: Int32Array;
  /** readings at the end of step i stand from firstReading[i] on; step −1 is written as the first entry */
  readonly firstReading: Int32Array;
  readonly readings: number;
  readonly volts: Float64Array;
  /** current measured with the reading, or NaN */
  readonly measured_A: Float64Array;
  readonly meter: Int32Array;
  readonly meters: number;
}

/** Room for one battery's run through a timeline, used again for each. */
export interface RunRoom {
  /** amps of each flow */
  readonly flow_A: Float64Array;
  /** volts predicted for each reading, and how far the model itself may be out there */
  readonly predicted_V: Float64Array;
  readonly spread_V: Float64Array;
  /** charge at the end: share, surface, fast, slow, memory */
  readonly end: Float64Array;
  /** charge at the end of every step, when it is wanted */
  readonly track: Float64Array | null;
}

const grid = 200;
/** Rested volts of the tables of a chemistry on a grid from 0 to 100 %: as printed, and counted to the loaded cut-off. */
interface RestGrid {
  readonly printed: readonly Float64Array[];
  readonly recounted: readonly Float64Array[];
}
const gridOf = new Map<Chemistry, RestGrid>();
function restGrid(chemistry: Chemistry): RestGrid {
  const known = gridOf.get(chemistry);
  if (known) return known;
  const lists = (volts: (name: (typeof tablesOf)[Chemistry][number], pct: number) => number) =>
    tablesOf[chemistry].map((name) => Float64Array.from({ length: grid + 1 }, (_, i) => volts(name, (100 * i) / grid)));
  const lithium = chemistry === 'lifepo4';
  const made = { printed: lists(tableVolts), recounted: lists(lithium ? tableVolts : recountedVolts) };
  // a rested full LiFePO4 cell has fallen back: the last two percent of the measured curve are those of a cell on charge
  if (lithium)
    for (const list of [made.printed[0]!, made.recounted[0]!])
      for (let i = 196; i <= grid; i++) list[i] = 13.4 + (0.1 * (i - 196)) / 4;
  gridOf.set(chemistry, made);
  return made;
}

/** Rested volts of one battery at 25 °C, by its own mixture of the tables; past the ends the last slope is drawn on. */
function openVolts({ printed, recounted }: RestGrid, figures: Float64Array, charge: number): number {
  const x = Math.min(1.05, Math.max(-0.1, charge)) * grid;
  const i = Math.min(grid - 1, Math.max(0, Math.floor(x)));
  const part = x - i;
  const count = figures[at.recount]!;
  const last = printed.length - 1;
  let sum = 0;
  let weights = 0;
  for (let t = 0; t <= last; t++) {
    const weight = t === last ? 1 : Math.exp(figures[t === 0 ? at.weight0 : at.weight1]!);
    const p = printed[t]!;
    const r = recounted[t]!;
    const asPrinted = p[i]! + part * (p[i + 1]! - p[i]!);
    const counted = r[i]! + part * (r[i + 1]! - r[i]!);
    sum += weight * (asPrinted + count * (counted - asPrinted));
    weights += weight;
  }
  return sum / weights + figures[at.tilt_V]! * (charge - 0.5) + figures[at.bow_V]! * 4 * charge * (1 - charge);
}

const logistic = (x: number) => 1 / (1 + Math.exp(-x));
/** Change of resistance and of rested volts with temperature; as in `battery-card` and `rest-charge`. */
const coldRate = (lithium: boolean) => (lithium ? 0.022 : 0.012);

/**
 * Runs one battery through a timeline, from the charge in its figures.
 *
 * @param figures   one battery
 * @param room      `flow_A` is filled in before; the rest is written
 */
export function runThrough(
  chemistry: Chemistry,
  figures: Float64Array,
  timeline: Timeline,
  room: RunRoom,
  selfLoss_h: number,
): void {
  const lithium = chemistry === 'lifepo4';
  const tables = restGrid(chemistry);
  const capacity = figures[at.capacity_Ah]!;
  const taper = figures[at.taper_h]!;
  let charge = figures[at.charge]!;
  let surface = figures[at.surface_V]!;
  let fast = 0;
  let slow = 0;
  let memory = 0;
  let amps = 0;
  const rate = coldRate(lithium);
  const { flow_A, predicted_V, spread_V, track } = room;
  for (let step = -1; step < timeline.steps; step++) {
    let heat = timeline.battery_C[Math.max(0, step)] ?? 25;
    let cold = 1;
    if (step >= 0) {
      const hours = timeline.hours[step]!;
      heat = timeline.battery_C[step]!;
      cold = Math.exp(-rate * (heat - 25));
      amps = 0;
      for (let k = timeline.firstFlow[step]!; k < timeline.firstFlow[step + 1]!; k++)
        amps += flow_A[timeline.flowIndex[k]!]!;
      if (amps < 0) {
        // what it takes near full, and what of that is stored
        const most = ((1.005 - charge) * capacity) / taper;
        amps = -Math.min(-amps, Math.max(most, 0.002 * capacity));
        const share = lithium ? 0.995 : storedNow(charge, figures[at.stored]!);
        charge = Math.min(1, charge - (amps * share * hours) / capacity);
        const goal = figures[at.surfaceMost_V]! * logistic((charge - 0.7) / 0.1);
        surface += (goal - surface) * (1 - Math.exp(-hours / 1.2));
      } else {
        charge -= (amps * hours) / capacity;
        surface *= Math.exp(-hours / figures[at.surface_h]! - (amps * hours) / (0.02 * capacity));
      }
      charge -= selfLoss_h * hours;
      fast += (amps * figures[at.fast_ohms]! * cold - fast) * (1 - Math.exp(-hours / figures[at.fast_h]!));
      slow += (amps * figures[at.slow_ohms]! * cold - slow) * (1 - Math.exp(-hours / figures[at.slow_h]!));
      if (lithium && amps !== 0)
        memory += (-Math.sign(amps) - memory) * Math.min(1, (Math.abs(amps) * hours) / (0.05 * capacity));
      if (track) track[step] = charge;
    }
    const from = timeline.firstReading[step + 1]!;
    const to = timeline.firstReading[step + 2]!;
    for (let r = from; r < to; r++) {
      const measured = timeline.measured_A[r]!;
      const now = Number.isNaN(measured) ? amps : measured;
      const ohms = cold * figures[at.ohms]! * (1 + figures[at.nearEmpty]! * Math.exp(-Math.max(-0.05, charge) / 0.08));
      // a measured current that is not the one that flowed before works on the quick part at once
      const drop = now * ohms + fast + (now - amps) * cold * figures[at.fast_ohms]! + slow;
      const rising =
        now < 0
          ? figures[at.rise_V]! *
            logistic((charge - (lithium ? 0.985 : 0.93)) / (lithium ? 0.01 : 0.06)) *
            (1 - Math.exp(now / (0.03 * capacity)))
          : 0;
      const volts =
        openVolts(tables, figures, charge) +
        (lithium ? 0 : 0.0015) * (heat - 25) +
        figures[at.memory_V]! * memory -
        drop +
        surface +
        rising;
      // a regulator holds about these volts
      predicted_V[r] = now < 0 ? Math.min(volts, lithium ? 14.5 : 14.7) : volts;
      const low = Math.exp(-Math.max(0, charge) / 0.1);
      spread_V[r] = Math.sqrt(
        modelSpread_V ** 2 + (0.15 * drop) ** 2 + (0.3 * surface) ** 2 + (0.3 * rising) ** 2 + (0.15 * low) ** 2,
      );
    }
  }
  room.end[0] = charge;
  room.end[1] = surface;
  room.end[2] = fast;
  room.end[3] = slow;
  room.end[4] = memory;
}

/** Assumed: how far the circuit lies off a battery whatever else is known, from one reading to the next. [V] */
const modelSpread_V = 0.025;

/** Usual stored share by percent of charge, as a table: the loop asks it at every step. */
const storedByPct = Float64Array.from({ length: 101 }, (_, pct) => storedShare('agm', pct));

/** Stored share of a charging current; `power` bends the usual curve for one battery. */
const storedNow = (charge: number, power: number): number =>
  storedByPct[Math.min(100, Math.max(0, Math.round(100 * charge)))]! ** power;
