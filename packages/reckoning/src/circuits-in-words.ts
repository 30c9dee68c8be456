/** The circuits of the book in sentences with their numbers. Shared by the screens and `fettle power`. */

import type { CircuitUseRecord } from '#boat-book';
import {
  bladeColours,
  type ConductorSize,
  copperArea_mm2,
  type FaultKind,
  fuseKinds,
  fuseThatBreaks,
  gaugeWithin,
  sizeInWords,
  wiringCautions,
} from '#wiring';
import type { Source, WorkingLine } from '#working';
import type { LookedAtBattery, LookedAtCircuit } from './circuits-of-book.ts';

/** `1.5 mm² (16 AWG)`, `14 AWG (2.08 mm²)` */
export function bothSizesInWords(size: ConductorSize): string {
  if (size.kind === 'gauge') return `${sizeInWords(size)} (${copperArea_mm2(size).toFixed(2)} mm²)`;
  const gauge = gaugeWithin(size);
  return `${sizeInWords(size)} (${gauge === null ? 'under 18 AWG' : `${gauge} AWG`})`;
}

/** A figure as it is said: `0.058`, `3.2`, `19`, `1900` */
export function figureSaid(value: number): string {
  if (value === 0) return '0';
  const places = Math.max(0, Math.min(4, 2 - Math.floor(Math.log10(Math.abs(value)))));
  const text = value.toFixed(Math.min(places, Math.abs(value) >= 10 ? 1 : 4));
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

const amps = (value: number) => `${Number(value.toFixed(value < 0.1 ? 3 : 2))} A`;

/** What is drawn of a circuit beside its line. */
export interface CircuitWords {
  readonly draws: string;
  /** `from sunset to 22:30`; null: it feeds the battery */
  readonly on: string | null;
  /** `1.5 mm² (16 AWG), 19 m there and back`; or that it is not entered */
  readonly wire: string;
  /** `loses 0.05 V, 0.4 % (3 % may be)`; null: no wire is known */
  readonly drop: string | null;
  /** `gets 11.9 V`, when the battery gives its nominal volts under load; null: no wire is known, or it feeds the battery */
  readonly arrives: string | null;
  readonly fuse: string;
}

export function circuitInWords(
  { wired, checked, atDevice_V, place, uses }: LookedAtCircuit,
  nominal_V: number,
): CircuitWords {
  const { conductor, current_A, fuse_A, fuseAt_m } = wired;
  const { drop } = checked;
  const unsaid = checked.gaps.some(({ missing }) => missing === 'fuse');
  return {
    draws:
      place.kind === 'circuit'
        ? `${amps(current_A)}, ${figureSaid(current_A * nominal_V)} W`
        : `brings up to ${amps(current_A)}`,
    on: uses && usesInWords(uses),
    wire: conductor
      ? `${bothSizesInWords(conductor.size)}, ${figureSaid(conductor.lengthThereAndBack_m)} m there and back`
      : place.kind === 'charger'
        ? 'its wire has no place in the book'
        : 'wire not entered',
    drop:
      drop &&
      `loses ${drop.volts < 0.005 ? 'under 0.01' : drop.volts.toFixed(2)} V, ${drop.pct < 0.05 ? 'under 0.1' : drop.pct.toFixed(1)} % (${drop.limit_pct} % may be)`,
    arrives: atDevice_V === null ? null : `gets ${atDevice_V.toFixed(1)} V`,
    fuse: unsaid
      ? 'fuse not entered'
      : fuse_A === null
        ? 'no fuse'
        : `fuse ${amps(fuse_A)}${fuseAt_m === null ? '' : `, ${Math.round(1000 * fuseAt_m)} mm from the battery`}`,
  };
}

/** When a circuit is on: `from sunset to 22:30`, `4 h a day`, `always on` */
export function usesInWords(uses: CircuitUseRecord): string {
  if (uses.kind === 'always') return 'always on';
  if (uses.kind !== 'hours') return `from ${uses.from} to ${uses.to}`;
  const { hours_a_day } = uses;
  return hours_a_day > 0 && hours_a_day < 1
    ? `${figureSaid(60 * hours_a_day)} min a day`
    : `${figureSaid(hours_a_day)} h a day`;
}

/** A fault or a thing not entered, as a finding of the table. */
export interface Finding {
  /** danger: it can burn; worse: it fails or works badly; unknown: it was not entered, and so not looked at */
  readonly gravity: 'danger' | 'worse' | 'unknown';
  readonly wrong: string;
  /** what would be right; null: only entering it would tell */
  readonly right: string | null;
  /** what to do about it, as a job is called: `Move the fuse to the battery`; null: there is nothing to do but to enter it */
  readonly mend: string | null;
}

/** What mends a fault, as a job is called. */
const mendInWords: Readonly<Record<FaultKind, string>> = {
  'no fuse': 'Fit a fuse at the battery',
  'fuse above the wire': 'Change the fuse',
  'fuse below the load': 'Change the fuse',
  'fuse too far': 'Move the fuse to the battery',
  'fuse cannot break': 'Fit a main fuse that breaks a short',
  'drop too great': 'Renew the wire',
  'conductor too thin': 'Renew the wire',
  'conductor too weak': 'Renew the wire',
  'no figure': 'Renew the wire',
  'no isolator': 'Fit an isolator',
};

/** What was found at a circuit or at a battery as a whole, the gravest first. */
export function findingsOf({ faults, gaps }: Pick<LookedAtBattery, 'faults' | 'gaps'>): Finding[] {
  const found = faults.map(
    ({ kind, danger, wrong, right }): Finding => ({
      gravity: danger ? 'danger' : 'worse',
      mend: mendInWords[kind],
      wrong: sentence(wrong),
      right: sentence(`right would be: ${right}`),
    }),
  );
  return [
    ...found.filter(({ gravity }) => gravity === 'danger'),
    ...found.filter(({ gravity }) => gravity === 'worse'),
    ...gaps.map(
      ({ unchecked }): Finding => ({ gravity: 'unknown', wrong: sentence(unchecked), right: null, mend: null }),
    ),
  ];
}

/** What stands over the whole table. */
export function circuitsVerdictInWords(batteries: readonly LookedAtBattery[]): string {
  const all = batteries.flatMap((battery) => [battery, ...battery.circuits.map(({ checked }) => checked)]);
  const faults = all.flatMap((each) => each.faults);
  const gaps = all.flatMap((each) => each.gaps);
  const circuits = batteries.flatMap((battery) => battery.circuits).length;
  if (circuits === 0) return 'No circuit is in the book yet.';
  const of = `${circuits} ${circuits === 1 ? 'circuit' : 'circuits'} looked at`;
  const dangers = faults.filter(({ danger }) => danger).length;
  const wrong =
    faults.length === 0
      ? 'nothing wrong found'
      : `${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}${dangers === 0 ? ', none that can burn' : dangers === faults.length ? ` that can burn` : `, ${dangers} that can burn`}`;
  return `${of}: ${wrong}${gaps.length === 0 ? '' : `; ${gaps.length === 1 ? '1 thing' : `${gaps.length} things`} not entered and so not looked at`}.`;
}

/** `The battery may give 1800 A into a short (our assumption by kind and size): …` */
export function faultCurrentInWords({ record, fault_A }: LookedAtBattery): string {
  const kind = fuseThatBreaks(fault_A);
  const given = record.fault_A ?? null;
  const breaks = kind
    ? `a ${fuseKinds[kind].title} fuse breaks it (${fuseKinds[kind].breaks_A} A, recalled)`
    : 'no fuse of our list breaks it: ask its maker';
  return `The battery may give ${100 * Math.ceil(fault_A / 100)} A into a short (${given === null ? 'our assumption, by kind and size' : 'its maker’s sheet'}): ${breaks}.`;
}

/** What the volts at the devices are told for. */
export const arrivesWhenInWords = ({ record }: LookedAtBattery): string =>
  `The volts a device gets are those when the battery gives ${record.nominal_V.toFixed(1)} V under load, with fuse, switch and joints counted.`;

/** Whether the battery can be parted from its wiring. */
export const isolatorInWords = ({ record }: LookedAtBattery): string =>
  record.isolator === true
    ? 'An isolator parts it from the wiring.'
    : record.isolator === false
      ? 'No isolator parts it from the wiring.'
      : 'Whether an isolator parts it from the wiring is not entered.';

/** A line of the working: `Volts lost: E = I·R·L/1000 = 0.058 V.` */
export function workingInWords({ symbol, meaning, value, unit, formula }: WorkingLine): string {
  const figure = typeof value === 'number' ? `${figureSaid(value)}${unit === '' ? '' : ` ${unit}`}` : value;
  return sentence(`${meaning}: ${symbol} = ${formula} = ${figure}`);
}

export const sourceInWords = ({ title, seen }: Source): string => `${title} (${seen}).`;

/** The colour of a blade fuse; null: it has none. */
export const bladeInWords = (rating_A: number): string | null => bladeColours[rating_A] ?? null;

/** What can hurt at the circuits of these batteries. */
export function circuitCautions(batteries: readonly LookedAtBattery[]): string[] {
  const lithium = batteries.some(({ record }) => record.chemistry === 'lifepo4');
  const panel = batteries.some(({ circuits }) => circuits.some(({ wired }) => wired.end === 'panel'));
  const { before, tools, atTheBattery, protects, shore, guidance } = wiringCautions;
  return [
    atTheBattery,
    protects,
    before,
    tools,
    ...(panel ? [wiringCautions.regulator] : []),
    ...(lithium ? [wiringCautions.lithium] : []),
    shore,
    guidance,
  ];
}

/** A sentence starts with a capital and ends with a stop. */
export function sentence(words: string): string {
  const whole = `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}
