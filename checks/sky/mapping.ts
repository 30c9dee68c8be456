import { addDays } from '#units';
import { type Asking, type FamilyMapping, numberIn } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';
import { lightMappings } from './light-mapping.ts';

type Inputs = Readonly<Record<string, unknown>>;

/** The last part of a worked-example row's id, and the symbol of the same figure in our working. */
const symbols: Readonly<Record<string, string>> = {
  JD: 'JD',
  JC: 'JC',
  JDE: 'JDE',
  JCE: 'JCE',
  JME: 'JME',
  L: 'L',
  B: 'B',
  R: 'R',
  Theta: 'Θ',
  beta: 'β',
  X0: 'X0',
  X1: 'X1',
  X2: 'X2',
  X3: 'X3',
  X4: 'X4',
  dPsi: 'Δψ',
  dEps: 'Δε',
  dEpsilon: 'Δε',
  eps0: 'ε0',
  epsilon0: 'ε0',
  eps: 'ε',
  epsilon: 'ε',
  dTau: 'Δτ',
  lambda: 'λ',
  lamd: 'λ',
  v0: 'ν0',
  nu0: 'ν0',
  v: 'ν',
  nu: 'ν',
  M: 'M',
  m: 'M',
  alpha: 'α',
  delta: 'δ',
  H: 'H',
  xi: 'ξ',
  dAlpha: 'Δα',
  alphaP: 'α′',
  deltaP: 'δ′',
  HP: 'H′',
  e0: 'e0',
  de: 'Δe',
  e: 'e',
  elevation: 'e',
  zenith: 'θ',
  zen: 'θ',
  theta: 'θ',
  azS: 'Γ',
  Gamma: 'Γ',
  azN: 'Φ',
  azimuth: 'Φ',
  Phi: 'Φ',
  eot: 'E',
};

const offset = (hours: number) => {
  const minutes = Math.round(Math.abs(hours) * 60);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${hours < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
};

/** A zone that keeps so many hours from UTC the whole year. Etc/GMT names count westward (IANA). */
function steadyZone(row: OutsideRow, inputs: Inputs): string {
  if (typeof inputs.tz === 'string') return inputs.tz;
  if (inputs.tz_h === undefined) return 'UTC';
  const hours = numberIn(row, inputs, 'tz_h');
  const odd: Readonly<Record<string, string>> = {
    '5.5': 'Asia/Kolkata',
    '5.75': 'Asia/Kathmandu',
    '6.5': 'Asia/Yangon',
    '9.5': 'Australia/Darwin',
  };
  if (!Number.isInteger(hours)) return odd[hours] ?? 'none';
  return hours === 0 ? 'UTC' : `Etc/GMT${hours < 0 ? '+' : '-'}${Math.abs(hours)}`;
}

/**
 * The day at the place whose event a row gives. The reference program and its web form print the sunrise and sunset that
 * fall in the *UTC* day of their date: with clocks 7 h behind, a sunset at 19:14 is that of the evening before.
 */
function dayOfEvent(row: OutsideRow, inputs: Inputs): string {
  const day = String(inputs.date);
  if (!/NREL|reference C program/.test(row.source) || typeof inputs.tz_h !== 'number') return day;
  const clock = typeof row.expected === 'string' ? /^(\d+):(\d\d)/.exec(row.expected) : null;
  const local_h = clock ? Number(clock[1]) + Number(clock[2]) / 60 : row.expected;
  if (typeof local_h !== 'number') return day;
  return addDays(day, -Math.floor((local_h - inputs.tz_h) / 24));
}

function workedExample(row: OutsideRow, inputs: Inputs): Asking {
  const n = (name: string) => numberIn(row, inputs, name);
  const last = row.id.split('.').at(-1)!;
  const place = { latitude: n('lat'), longitude: n('lon') };
  const event = { rise: 'sunrise', transit: 'noon', set: 'sunset' }[last];
  if (event)
    return {
      question: 'sky.sun-times',
      fields: {
        day: dayOfEvent(row, inputs),
        ...place,
        zone: steadyZone(row, inputs),
      },
      pick: event,
    };
  const sun = {
    at: `${inputs.date}T${inputs.local}${offset(n('tz_h'))}`,
    ...place,
    elevation: n('elev_m'),
    pressure: n('pressure_mbar'),
    air: n('temp_C'),
    'delta-t': n('deltaT_s'),
    'horizon-refraction': n('refraction_deg'),
  };
  if (last === 'inc')
    // slope and turn stand in the quantity's name: 30° slope, turned 10° east of south, so facing 170°
    return row.quantity.includes('30°') && row.quantity.includes('10°')
      ? { question: 'sky.sun-on-slope', fields: { ...sun, slope: 30, facing: 170 }, pick: 'I' }
      : { unmapped: 'its slope is not known here' };
  const symbol = symbols[last];
  return symbol
    ? { question: 'sky.sun-position', fields: sun, pick: symbol }
    : { unmapped: `no figure of the working is called ${last}` };
}

function riseOrSet(row: OutsideRow, inputs: Inputs): Asking {
  const named = row.quantity.toLowerCase().trim();
  const pick =
    { rise: 'sunrise', set: 'sunset', transit: 'noon', 'solar noon': 'noon', dawn: 'civil dawn', dusk: 'civil dusk' }[
      named
    ] ?? named;
  const zone = steadyZone(row, inputs);
  if (zone === 'none') return { unmapped: 'no zone keeps these hours from UTC' };
  return {
    question: 'sky.sun-times',
    fields: {
      day: dayOfEvent(row, inputs),
      latitude: numberIn(row, inputs, 'lat'),
      longitude: numberIn(row, inputs, 'lon'),
      zone,
    },
    pick,
  };
}

const constants = (row: OutsideRow) => (row.id.includes('.ae.') ? 'Alduchov and Eskridge' : 'WMO');

export const skyMappings: readonly FamilyMapping[] = [
  { family: 'sky.spa', kind: 'outside answer', asking: workedExample },
  { family: 'sky.rs', kind: 'outside answer', asking: riseOrSet },
  {
    family: 'sky.def',
    kind: 'transcription',
    asking: (row) => {
      const last = row.id.split('.').at(-1)!;
      return {
        question: 'sky.light-limit',
        fields: { light: last === 'rise' || last === 'set' ? 'sun' : last },
        pick: 'h0',
      };
    },
  },
  {
    family: 'sky.decl',
    kind: 'outside answer',
    asking: (row, inputs) =>
      row.quantity.includes('Cooper')
        ? { question: 'sky.pocket-declination', fields: { 'day-of-year': numberIn(row, inputs, 'day') }, pick: 'δ' }
        : { unmapped: 'only the formula of Cooper is asked' },
  },
  {
    family: 'sky.dew',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.dew-point',
      fields: {
        air: inputs.T_F === undefined ? `${numberIn(row, inputs, 'T')} °C` : `${numberIn(row, inputs, 'T_F')} °F`,
        humidity: numberIn(row, inputs, 'RH'),
        form: constants(row),
      },
      pick: 'Td',
    }),
  },
  {
    family: 'sky.rh',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.humidity',
      fields: { air: numberIn(row, inputs, 'T'), 'dew-point': numberIn(row, inputs, 'Td'), form: constants(row) },
      pick: 'RH',
    }),
  },
  {
    family: 'sky.es',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.saturation-pressure',
      fields: { air: numberIn(row, inputs, 'T'), form: constants(row) },
      pick: 'es',
    }),
  },
  ...lightMappings,
];
