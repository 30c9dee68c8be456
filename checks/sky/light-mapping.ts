import { type Asking, type FamilyMapping, numberIn } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;

const lastOf = (row: OutsideRow) => row.id.split('.').at(-1)!;
/** The sun outside the air that the rows' library takes where none is given. [W/m²] */
const outsideOfLibrary = 1364;
const lights: Readonly<Record<string, string>> = { ghi: 'G', dni: 'B', dhi: 'D' };

/** Sums of a textbook by Cooper's declination and hour angles; its constant is 1367 W/m². */
function textbookSun(row: OutsideRow, inputs: Inputs): Asking {
  const last = lastOf(row);
  const day = { 'day-of-year': numberIn(row, inputs, 'day'), latitude: numberIn(row, inputs, 'lat') };
  if (last === 'H0') return { question: 'sky.day-outside-air', fields: { ...day, constant: 1367 }, pick: 'H0' };
  if (last === 'I0') {
    const hours = /(\d+)–(\d+) h/.exec(row.quantity);
    if (!hours) return { unmapped: 'its hours are not named' };
    const angleAt = (hour: string) => 15 * (Number(hour) - 12);
    return {
      question: 'sky.day-outside-air',
      fields: { ...day, constant: 1367, from: angleAt(hours[1]!), to: angleAt(hours[2]!) },
      pick: 'H0',
    };
  }
  const fields = { ...day, 'hour-angle': numberIn(row, inputs, 'hour_angle') };
  if (last.startsWith('zen')) return { question: 'sky.pocket-sun', fields, pick: 'θz' };
  if (last.startsWith('az')) return { question: 'sky.pocket-sun', fields, pick: 'γ' };
  if (last === 'inc')
    return {
      question: 'sky.pocket-sun',
      // the book counts a surface's turn from south
      fields: { ...fields, slope: numberIn(row, inputs, 'slope'), facing: 180 + numberIn(row, inputs, 'surf_az') },
      pick: 'θ',
    };
  return { unmapped: `no figure of the sum is called ${last}` };
}

function crossedAir(row: OutsideRow, inputs: Inputs): Asking {
  if (inputs.am !== undefined)
    return {
      question: 'sky.air-mass',
      fields: {
        // air in level layers, from which the amount given follows
        zenith: (Math.acos(1 / numberIn(row, inputs, 'am')) * 180) / Math.PI,
        form: 'flat earth',
        pressure: `${numberIn(row, inputs, 'pressure_Pa') / 100} hPa`,
      },
      pick: 'AMp',
    };
  const form = { ky: 'Kasten and Young', kasten: 'Kasten', pickering: 'Pickering', simple: 'flat earth' }[
    row.id.split('.')[2] ?? ''
  ];
  return form === undefined
    ? { unmapped: 'its formula is not asked' }
    : { question: 'sky.air-mass', fields: { zenith: numberIn(row, inputs, 'zenith'), form }, pick: 'AM' };
}

function hazySky(row: OutsideRow, inputs: Inputs): Asking {
  const n = (name: string) => numberIn(row, inputs, name);
  return {
    question: 'sky.clear-sky-by-haze',
    fields: {
      altitude: 90 - n('zenith'),
      // a row with the sun down has none
      ...(typeof inputs.airmass_abs === 'number' ? { 'air-mass': inputs.airmass_abs } : {}),
      turbidity: n('linke'),
      elevation: n('altitude_m'),
      outside: inputs.dni_extra === undefined ? outsideOfLibrary : n('dni_extra'),
    },
    pick: lights[lastOf(row)] ?? 'none',
  };
}

function cloudy(row: OutsideRow, inputs: Inputs): Asking {
  if (inputs.elevation !== undefined)
    return {
      question: 'sky.clear-sky-by-altitude',
      fields: { altitude: numberIn(row, inputs, 'elevation'), form: 'Kasten and Czeplak' },
      pick: 'G',
    };
  return {
    question: 'sky.through-cloud',
    fields: { oktas: numberIn(row, inputs, 'oktas') },
    pick: row.id.includes('.diffuse') ? 'D/G' : 'G/G0',
  };
}

function slope(row: OutsideRow, inputs: Inputs): Asking {
  const n = (name: string) => numberIn(row, inputs, name);
  const question = 'sky.slope-and-level';
  if (inputs.I_MJ !== undefined) {
    // sums of an hour in the row, the steady light that makes them in the question
    const asLight = (MJ: number) => MJ / 0.0036;
    return {
      question,
      fields: {
        global: asLight(n('I_MJ')),
        diffuse: asLight(n('Id')),
        ratio: n('Rb'),
        slope: n('tilt'),
        ground: n('albedo'),
      },
      pick: 'GT in an hour',
    };
  }
  const fields = {
    global: inputs.ghi === undefined ? n('dhi') : n('ghi'),
    // where the row has none the figure picked does not hang on it
    diffuse: inputs.dhi === undefined ? 0 : n('dhi'),
    ratio: 1,
    slope: n('tilt'),
    ground: inputs.albedo === undefined ? 0.25 : n('albedo'),
  };
  const pick = inputs.dhi === undefined ? 'RT' : inputs.ghi === undefined ? 'DT' : 'GT';
  return { question, fields, pick };
}

function cells(row: OutsideRow, inputs: Inputs): Asking {
  const n = (name: string) => numberIn(row, inputs, name);
  const question = 'sky.cell-temperature';
  if (lastOf(row) === 'def') return { question, fields: { light: 0, air: 20 }, pick: 'NOCT at' };
  return {
    question,
    fields: {
      light: n('G'),
      air: n('Ta'),
      nominal: n('NOCT'),
      ...(inputs.wind === undefined ? {} : { wind: `${n('wind')} m/s` }),
      ...(inputs.eta === undefined ? {} : { efficiency: n('eta') }),
    },
    pick: 'Tc',
  };
}

/** Sunlight: outside the air, through it, through cloud, on a slope and on a panel. */
export const lightMappings: readonly FamilyMapping[] = [
  { family: 'sky.db', kind: 'outside answer', asking: textbookSun },
  {
    family: 'sky.extra',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.outside-air',
      fields: { 'day-of-year': numberIn(row, inputs, 'day') },
      pick: 'E0',
    }),
  },
  { family: 'sky.am', kind: 'outside answer', asking: crossedAir },
  {
    family: 'sky.haurwitz',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.clear-sky-by-altitude',
      fields: { altitude: numberIn(row, inputs, 'elevation'), form: 'Haurwitz' },
      pick: 'G',
    }),
  },
  { family: 'sky.ineichen', kind: 'outside answer', asking: hazySky },
  {
    family: 'sky.solis',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.clear-sky-by-water',
      fields: {
        altitude: numberIn(row, inputs, 'elevation'),
        depth: numberIn(row, inputs, 'aod700'),
        water: numberIn(row, inputs, 'pw_cm'),
        pressure: `${numberIn(row, inputs, 'pressure') / 100} hPa`,
        outside: numberIn(row, inputs, 'dni_extra'),
      },
      pick: lights[lastOf(row)] ?? 'none',
    }),
  },
  {
    family: 'sky.ashrae.coef',
    kind: 'transcription',
    asking: (row, inputs) => ({
      question: 'sky.clear-sky-by-month',
      fields: { month: numberIn(row, inputs, 'month'), altitude: 90 },
      pick: 'A, B, C',
    }),
  },
  {
    family: 'sky.ashrae',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.clear-sky-by-month',
      fields: { month: numberIn(row, inputs, 'month'), altitude: numberIn(row, inputs, 'altitude') },
      pick: row.id.includes('.dni.') ? 'B' : row.id.includes('.ghi.') ? 'G' : 'D',
    }),
  },
  { family: 'sky.cloud', kind: 'outside answer', asking: cloudy },
  { family: 'sky.iso', kind: 'outside answer', asking: slope },
  { family: 'sky.noct', kind: 'outside answer', asking: cells },
  { family: 'sky.noct.def', kind: 'transcription', asking: cells },
  {
    family: 'sky.tempco',
    kind: 'default in its band',
    asking: () => ({ question: 'sky.panel-power', fields: { peak: 100, light: 1000, cells: 25 }, pick: 'γ' }),
  },
  {
    family: 'sky.derate',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'sky.panel-power',
      fields: {
        peak: numberIn(row, inputs, 'P'),
        light: numberIn(row, inputs, 'G'),
        cells: numberIn(row, inputs, 'Tc'),
        coefficient: numberIn(row, inputs, 'coef'),
      },
      pick: 'P',
    }),
  },
];
