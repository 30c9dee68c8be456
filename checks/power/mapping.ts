import { type Asking, type FamilyMapping, numberIn, type UnaskedFamily } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;
const last = (row: OutsideRow) => row.id.split('.').at(-1)!;
const part = (row: OutsideRow, at: number) => row.id.split('.')[at] ?? '';

/** Printed tables of rested volts by the letters of their rows. */
const restTables: Readonly<Record<string, readonly [chemistry: string, table: string]>> = {
  'flooded.a': ['flooded', 'flooded-rounded'],
  'lead.b': ['flooded', 'lead-ten-step'],
  'flooded.c': ['flooded', 'flooded-gravity'],
  'agm.a': ['agm', 'agm-owners'],
  'agm.b': ['agm', 'agm-data-sheet'],
};
const kinds: Readonly<Record<string, string>> = { flooded: 'flooded', lead: 'flooded', agm: 'agm', gel: 'gel' };

function restedLead(row: OutsideRow, inputs: Inputs): Asking {
  const kind = kinds[part(row, 2)];
  if (!kind) return { unmapped: `no kind of battery of ours is called ${part(row, 2)}` };
  const [chemistry, table] = restTables[`${part(row, 2)}.${part(row, 3)}`] ?? [
    kind,
    kind === 'gel' ? 'gel-data-sheet' : 'U',
  ];
  return {
    question: 'battery.rest-volts',
    fields: { chemistry, charge: numberIn(row, inputs, 'soc_pct') },
    pick: table,
  };
}

function restedLithium(row: OutsideRow, inputs: Inputs): Asking {
  const pick = part(row, 3) === 'm' ? 'lfp-measured cell' : part(row, 3) === 'm4' ? 'lfp-measured' : 'lfp-trade';
  return {
    question: 'battery.rest-volts',
    fields: { chemistry: 'lifepo4', charge: numberIn(row, inputs, 'soc_pct') },
    pick,
  };
}

const lithiumFigure: Readonly<Record<string, string>> = {
  nominal: 'nominal cell',
  limits: 'lowest cell',
  charge: 'absorption',
  coldcharge: 'coldest charge',
};

function peukert(row: OutsideRow, inputs: Inputs): Asking {
  const n = (name: string) => numberIn(row, inputs, name);
  const exponent = () => n(inputs.n === undefined ? 'k' : 'n');
  switch (part(row, 2)) {
    case 'old':
      return {
        question: 'battery.peukert',
        fields: { capacity: n('C_Ah'), current: n('I_A'), exponent: exponent(), reading: 'one ampere' },
        pick: row.unit === 'Ah' ? 'I·t' : 't',
      };
    case 'rated':
      return {
        question: 'battery.peukert',
        fields: {
          capacity: n('C_Ah'),
          current: n('I_A'),
          exponent: exponent(),
          reading: 'rated hours',
          rated: n('H_h'),
        },
        pick: row.unit === 'Ah' ? 'I·t' : 't',
      };
    case 'exponent':
      return {
        question: 'battery.peukert-exponent',
        fields: {
          'first-current': n('I1'),
          'first-time': n('t1'),
          'second-current': n('I2'),
          'second-time': n('t2'),
        },
        pick: 'k',
      };
    case 'k14':
    case 'k40': {
      const hours = Number.parseFloat(last(row));
      return {
        question: 'battery.peukert-exponent',
        fields: {
          'first-current': n('C20') / 20,
          'first-time': 20,
          'second-current': n(`C${hours}`) / hours,
          'second-time': hours,
        },
        pick: 'k',
      };
    }
    default:
      return { unmapped: `no question answers ${row.quantity}` };
  }
}

/** Specific gravity: the reading is at 80 °F unless the row says another temperature. */
function gravity(pick: string) {
  return (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'battery.gravity',
    fields: {
      reading: inputs.sg === undefined ? 1.25 : numberIn(row, inputs, 'sg'),
      acid: `${inputs.temp_F === undefined ? 80 : numberIn(row, inputs, 'temp_F')} °F`,
    },
    pick,
  });
}

const chargeGravity =
  (charge: (row: OutsideRow, inputs: Inputs) => number, full: number) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'battery.charge-gravity',
    fields: { charge: charge(row, inputs), full },
    pick: 'SG',
  });

function float(row: OutsideRow, inputs: Inputs): Asking {
  if (part(row, 2) === 'comp')
    return {
      question: 'battery.compensated-volts',
      fields: {
        volts: 13.4,
        for: numberIn(row, inputs, 'ref_C'),
        temperature: numberIn(row, inputs, 'temp_C'),
        cells: numberIn(row, inputs, 'cells'),
        change: -5,
      },
      pick: 'U',
    };
  const source = { a: 'float note', b: 'float encyclopedia', c: 'float vendors now' }[part(row, 2)];
  return {
    question: 'battery.charge-voltages',
    fields: { chemistry: part(row, 3), temperature: numberIn(row, inputs, 'temp_C') },
    pick: source ?? 'float',
  };
}

const compensations: Readonly<Record<string, string>> = { a: 'vendors', b: 'encyclopedia', c: 'note' };

function absorption(row: OutsideRow): Asking {
  const of = part(row, 2);
  const paged = /^agm\d/.test(of);
  return {
    question: 'battery.charge-voltages',
    fields: { chemistry: paged ? 'agm' : of },
    pick: paged ? `absorption ${of} page` : 'absorption',
  };
}

const efficiency = (row: OutsideRow): Asking => {
  const asked = (chemistry: string, from: number, to: number, pick: string): Asking => ({
    question: 'battery.charge-efficiency',
    fields: { chemistry, from, to },
    pick,
  });
  switch (row.id) {
    case 'power.eff.coul.low':
      return asked('agm', 0, 40, 'η');
    case 'power.eff.coul.0_84':
      return asked('agm', 0, 84, 'η');
    case 'power.eff.coul.79_84':
      return asked('agm', 79, 84, 'η');
    case 'power.eff.coul.top':
      return asked('agm', 90, 100, 'η');
    case 'power.eff.coul.li':
      return asked('lifepo4', 20, 90, 'η');
    case 'power.eff.energy.lead':
      return asked('agm', 0, 100, 'round trip');
    case 'power.eff.energy.lfp':
      return asked('lifepo4', 0, 100, 'round trip');
    case 'power.eff.system':
      return asked('agm', 0, 100, 'whole system');
    default:
      return { unmapped: `no question answers ${row.quantity}` };
  }
};

const lamps: Readonly<Record<string, string>> = {
  led_allround_or_tricolour: 'led-anchor-or-tricolour',
  led_bicolour: 'led-two-colour',
  led_stern: 'led-stern',
  filament_nav: 'filament-navigation',
  led_cabin_spot: 'led-cabin-spot',
  led_cabin_strip_per_m: 'led-cabin-strip',
  filament_cabin: 'filament-cabin',
};

const temperatureOf =
  (chemistry: string, pick: string) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'battery.temperature',
    fields: { chemistry, temperature: inputs.temp_C === undefined ? 25 : numberIn(row, inputs, 'temp_C') },
    pick,
  });

export const powerMappings: readonly FamilyMapping[] = [
  { family: 'power.ocv', kind: 'transcription', asking: restedLead },
  { family: 'power.lfp.ocv', kind: 'transcription', asking: restedLithium },
  {
    family: 'power.lfp',
    kind: 'transcription',
    asking: (row) => {
      const pick = lithiumFigure[part(row, 2)];
      return pick
        ? { question: 'battery.charge-voltages', fields: { chemistry: 'lifepo4' }, pick }
        : { unmapped: `no question answers ${row.quantity}` };
    },
  },
  { family: 'power.sg.ocv', kind: 'outside answer', asking: gravity('U') },
  {
    family: 'power.sg.range',
    kind: 'transcription',
    asking: chargeGravity((row, inputs) => numberIn(row, inputs, 'soc_pct'), 1.265),
  },
  { family: 'power.sg.full', kind: 'transcription', asking: chargeGravity(() => 100, 1.28) },
  { family: 'power.sg.half', kind: 'transcription', asking: chargeGravity(() => 50, 1.28) },
  { family: 'power.sg.tempcorr', kind: 'transcription', asking: gravity('per 10 °F') },
  { family: 'power.sg.tempcorr.cold', kind: 'outside answer', asking: gravity('SG') },
  {
    family: 'power.sg.selfdischarge',
    kind: 'transcription',
    asking: () => ({ question: 'battery.self-discharge', fields: { chemistry: 'flooded' }, pick: 'gravity' }),
  },
  { family: 'power.sg.freeze', kind: 'transcription', asking: gravity('Tf') },
  { family: 'power.sg.freeze.tm', kind: 'outside answer', asking: gravity('Tf') },
  {
    family: 'power.rest.aftercharge',
    kind: 'transcription',
    asking: (row) => ({
      question: 'battery.rest-hours',
      fields: { last: 'charge' },
      pick: { a: 'least', b: 'note' }[last(row)] ?? 'cautious',
    }),
  },
  {
    family: 'power.rest.afterload',
    kind: 'transcription',
    asking: () => ({ question: 'battery.rest-hours', fields: { last: 'load' }, pick: 'least' }),
  },
  {
    family: 'power.rest.decay',
    kind: 'transcription',
    asking: (row, inputs) => ({
      question: 'battery.rest-hours',
      fields: { last: 'charge', stood: numberIn(row, inputs, 'hours_off_charge') },
      pick: 'U of the log',
    }),
  },
  { family: 'power.temp.ocv', kind: 'default in its band', asking: temperatureOf('flooded', 'dU/dT') },
  { family: 'power.temp.cap', kind: 'outside answer', asking: temperatureOf('agm', 'share of rated') },
  ...[14, 40].map(
    (size): FamilyMapping => ({
      family: `power.temp.cap${size}`,
      kind: 'transcription',
      asking: temperatureOf('agm', `agm${size} page`),
    }),
  ),
  { family: 'power.peukert', kind: 'outside answer', asking: peukert },
  {
    family: 'power.peukert.k',
    kind: 'default in its band',
    asking: (row) => ({
      question: 'battery.rate',
      fields: { chemistry: last(row) === 'lfp' ? 'lifepo4' : last(row), size: 20, hours: 5 },
      pick: 'k',
    }),
  },
  ...[14, 40].map(
    (size): FamilyMapping => ({
      family: `power.rate${size}`,
      kind: 'transcription',
      asking: (row, inputs) => ({
        question: 'battery.rate',
        fields: { chemistry: 'agm', size, hours: numberIn(row, inputs, 'hours') },
        pick: `agm${size} page`,
      }),
    }),
  ),
  {
    family: 'power.dod.limit',
    kind: 'transcription',
    asking: (row) => ({
      question: 'battery.life',
      fields: { chemistry: last(row) === 'lfp' ? 'lifepo4' : 'agm', depth: 50 },
      pick: 'floor',
    }),
  },
  {
    family: 'power.cycles',
    kind: 'default in its band',
    asking: (row, inputs) => ({
      question: 'battery.life',
      fields: { chemistry: last(row).startsWith('lfp') ? 'lifepo4' : 'agm', depth: numberIn(row, inputs, 'dod_pct') },
      pick: 'n',
    }),
  },
  {
    family: 'power.cycles40',
    kind: 'transcription',
    asking: (row, inputs) => ({
      question: 'battery.life',
      fields: { chemistry: 'agm', depth: numberIn(row, inputs, 'dod_pct') },
      pick: 'n',
    }),
  },
  {
    family: 'power.storage.recharge',
    kind: 'transcription',
    asking: () => ({ question: 'battery.self-discharge', fields: { chemistry: 'flooded' }, pick: 'recharge' }),
  },
  {
    family: 'power.selfdischarge',
    kind: 'default in its band',
    asking: (row) => ({
      question: 'battery.self-discharge',
      fields: { chemistry: last(row) === 'flooded' ? 'flooded' : 'agm' },
      pick: 'rate',
    }),
  },
  ...[14, 40].map(
    (size): FamilyMapping => ({
      family: `power.store${size}`,
      kind: 'transcription',
      asking: (row, inputs) => ({
        question: 'battery.self-discharge',
        fields: { chemistry: 'agm', months: numberIn(row, inputs, 'months') },
        pick: `agm${size} page`,
      }),
    }),
  ),
  { family: 'power.float', kind: 'transcription', asking: float },
  { family: 'power.float.c', kind: 'outside answer', asking: float },
  { family: 'power.float.comp', kind: 'outside answer', asking: float },
  {
    family: 'power.comp',
    kind: 'transcription',
    asking: (row) => ({
      question: 'battery.charge-voltages',
      fields: { chemistry: 'agm' },
      pick: compensations[last(row)] ?? 'compensation',
    }),
  },
  { family: 'power.absorb', kind: 'default in its band', asking: absorption },
  ...['agm14', 'agm40'].map(
    (of): FamilyMapping => ({ family: `power.absorb.${of}`, kind: 'transcription', asking: absorption }),
  ),
  ...(['gassing', 'equalise'] as const).map(
    (figure): FamilyMapping => ({
      family: `power.${figure}`,
      kind: 'transcription',
      asking: () => ({ question: 'battery.charge-voltages', fields: { chemistry: 'flooded' }, pick: figure }),
    }),
  ),
  {
    family: 'power.current.lead',
    kind: 'default in its band',
    asking: () => ({ question: 'battery.charge-voltages', fields: { chemistry: 'agm' }, pick: 'bulk' }),
  },
  { family: 'power.eff', kind: 'default in its band', asking: efficiency },
  {
    family: 'power.ri',
    kind: 'default in its band',
    asking: (row, inputs) => ({
      question: 'battery.resistance',
      fields: { chemistry: 'agm', size: numberIn(row, inputs, 'Ah') },
      pick: 'R',
    }),
  },
  {
    family: 'power.colreg.cd',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'battery.light-range',
      fields: { light: 'all-round', range: numberIn(row, inputs, 'range_nm') },
      pick: 'I',
    }),
  },
  {
    family: 'power.colreg.range',
    kind: 'transcription',
    asking: (row) => ({
      question: 'battery.light-range',
      fields: { light: last(row) === 'allround' ? 'all-round' : last(row) },
      pick: 'range',
    }),
  },
  {
    family: 'power.watts',
    kind: 'default in its band',
    asking: (row) => {
      const lamp = lamps[last(row)];
      return lamp
        ? { question: 'battery.lamp', fields: { lamp }, pick: 'P' }
        : { unmapped: `no lamp of ours stands for ${row.quantity}` };
    },
  },
  {
    family: 'power.watts.current',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'battery.lamp',
      fields: { lamp: 'led-anchor-or-tricolour', watts: numberIn(row, inputs, 'W'), volts: numberIn(row, inputs, 'V') },
      pick: 'I',
    }),
  },
  ...(
    [
      ['lel', 'LEL'],
      ['factor', 'q'],
    ] as const
  ).map(
    ([figure, pick]): FamilyMapping => ({
      family: `power.h2.${figure}`,
      kind: 'transcription',
      asking: () => ({ question: 'battery.hydrogen', fields: { plates: 'sealed', size: 20 }, pick }),
    }),
  ),
  {
    family: 'power.h2.vent',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'battery.hydrogen',
      fields: {
        plates: 'sealed',
        size: numberIn(row, inputs, 'Ah'),
        cells: numberIn(row, inputs, 'cells'),
        gassing: numberIn(row, inputs, 'Igas_mA_per_Ah'),
      },
      pick: 'Q',
    }),
  },
  {
    family: 'power.h2.opening',
    kind: 'outside answer',
    asking: (row, inputs) => ({
      question: 'battery.hydrogen',
      // Q = 0.05·6·20·C/1000: the size whose air is the row's
      fields: { plates: 'vented', gassing: 20, size: numberIn(row, inputs, 'Q_m3h') / 0.006 },
      pick: 'A',
    }),
  },
];

export const powerUnasked: readonly UnaskedFamily[] = [
  { family: 'power.h2.caution', because: 'a caution in words; ours stand at the questions about charging' },
];
