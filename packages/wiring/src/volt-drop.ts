import { type ConductorSize, cmilConstant, copperArea_mm2, resistance_ohm_km, type Stranding } from './conductor.ts';

/** What the wire does not carry on: share of the nominal volts that may be lost on the way there and back. */
export const dropLimit_pct = { critical: 3, other: 10 } as const;
export type Needs = keyof typeof dropLimit_pct;

/** What is taken where a boat does not say: tinned, fine strands, as warm as a cabin in summer. */
export const usualStranding: Stranding = 'class5 tinned';
export const usualConductor_C = 30;

/** Volts lost along a conductor there and back. [V] */
export function voltDrop_V(
  size: ConductorSize,
  lengthThereAndBack_m: number,
  current_A: number,
  { stranding = usualStranding, conductor_C = usualConductor_C }: { stranding?: Stranding; conductor_C?: number } = {},
): number {
  return (current_A * lengthThereAndBack_m * resistance_ohm_km(size, stranding, conductor_C).value) / 1000;
}

/** K of E = K·I·L/S in ISO 10133 annex C. [Ω·mm²/m] */
export const isoConstant = 0.0164;

/** Volts lost by the formula of ISO 10133 annex C: E = 0.0164·I·L/S. [V] */
export const isoDrop_V = (area_mm2: number, lengthThereAndBack_m: number, current_A: number): number =>
  (isoConstant * current_A * lengthThereAndBack_m) / area_mm2;

/** Least circular mils for a drop, by the trade's CM = K·I·L/E with the length in feet. */
export const leastCircularMils = (lengthThereAndBack_m: number, current_A: number, drop_V: number): number =>
  (cmilConstant * current_A * (lengthThereAndBack_m / 0.3048)) / drop_V;

/** How the current of a device follows its volts. */
export type DeviceKind = 'steady-watts' | 'steady-amps' | 'resistor';

/** Volts and current at a device. Truth: a device of steady watts asks for more than the wire can bring. */
export type AtDevice =
  | { readonly kind: 'found'; readonly volts: number; readonly current_A: number }
  | { readonly kind: 'too much'; readonly most_W: number };

/**
 * What a device sees at the end of its wire.
 *
 * Steady watts (LED with a regulator, radio): U = (E + √(E² − 4·R·P))/2. Resistor (filament lamp, heater): U = E·Rd/(Rd + R), with
 * Rd from its watts at nominal volts. Steady amps: U = E − I·R.
 *
 * @param battery_V   at the battery, under this load
 * @param way_ohm     the whole way: conductor, fuse, switch, joints
 * @param watts       on its label, at nominal volts
 */
export function atDevice(
  device: DeviceKind,
  battery_V: number,
  way_ohm: number,
  watts: number,
  nominal_V: number,
): AtDevice {
  if (device === 'resistor') {
    const own_ohm = nominal_V ** 2 / watts;
    const current_A = battery_V / (own_ohm + way_ohm);
    return { kind: 'found', volts: current_A * own_ohm, current_A };
  }
  if (device === 'steady-amps') {
    const current_A = watts / nominal_V;
    const volts = battery_V - current_A * way_ohm;
    return volts > 0
      ? { kind: 'found', volts, current_A }
      : { kind: 'too much', most_W: (battery_V / way_ohm) * nominal_V };
  }
  const under = battery_V ** 2 - 4 * way_ohm * watts;
  if (under < 0) return { kind: 'too much', most_W: battery_V ** 2 / (4 * way_ohm) };
  const volts = (battery_V + Math.sqrt(under)) / 2;
  return { kind: 'found', volts, current_A: watts / volts };
}

/** Resistance of the conductor there and back. [Ω] */
export const way_ohm = (
  size: ConductorSize,
  lengthThereAndBack_m: number,
  stranding = usualStranding,
  conductor_C = usualConductor_C,
) => (resistance_ohm_km(size, stranding, conductor_C).value * lengthThereAndBack_m) / 1000;

/** Least area by the formula of ISO 10133 annex C. [mm²] */
export const isoLeastArea_mm2 = (lengthThereAndBack_m: number, current_A: number, drop_V: number): number =>
  (isoConstant * current_A * lengthThereAndBack_m) / drop_V;

/** Greatest current for a drop by the same formula. [A] */
export const isoMostCurrent_A = (size: ConductorSize, lengthThereAndBack_m: number, drop_V: number): number =>
  (drop_V * copperArea_mm2(size)) / (isoConstant * lengthThereAndBack_m);
