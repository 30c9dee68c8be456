import { inBase } from '#units';
import { amount, assuming, choice, count, type Field, length, type Source, temperature } from '#working';
import { type ConductorSize, sizeInWords, sizesOf } from './conductor.ts';
import type { Run } from './smallest-conductor.ts';
import { type Needs, usualConductor_C } from './volt-drop.ts';

/** The fields that questions about wiring share, each made anew. */
export const currentField = (meaning = 'steady current of all that is on it at once') =>
  amount('current', 'A', 0.01, 300, meaning);

export const lengthField = () =>
  length('m', 0.1, 100, 'length of the conductor there and back: out to the device and home again');

export const nominalField = () =>
  assuming(
    amount('voltage', 'V', 5, 60, 'nominal volts of the system'),
    inBase('voltage', 12, 'V'),
    '12 V',
    'small boats have 12 V',
  );

const sizeIds = [...sizesOf('metric'), ...sizesOf('gauge')];
const idOf = (size: ConductorSize) => (size.kind === 'metric' ? `${size.area_mm2}mm2` : `awg${size.awg}`);
export const sizeField = () =>
  choice(
    sizeIds.map((size) => ({ id: idOf(size), title: sizeInWords(size) })),
    'size of the conductor',
  );
export const sizeOf = (id: string): ConductorSize => sizeIds.find((size) => idOf(size) === id)!;

const insulations = ['60', '70', '75', '80', '85', '90', '105', '125', '200'] as const;
type Insulation = (typeof insulations)[number];
export const insulationField = (): Field<Insulation> =>
  assuming(
    choice(
      insulations.map((id) => ({ id, title: `${id} °C` })),
      'what its insulation bears, as printed on it',
    ) as Field<Insulation>,
    '70',
    '70 °C',
    'plain PVC; what is printed on the cable wins',
  );

export const bundledField = () =>
  assuming(
    count(1, 60, 'conductors that carry current in the same bundle, this one among them'),
    2,
    '2',
    'its own lead there and back',
  );

type YesNo = 'yes' | 'no';
const yesNo = (meaning: string): Field<YesNo> =>
  choice(
    [
      { id: 'yes', title: 'yes' },
      { id: 'no', title: 'no' },
    ],
    meaning,
  ) as Field<YesNo>;
export const engineField = () =>
  assuming(
    yesNo('some of it runs through an engine space'),
    'no' as YesNo,
    'no',
    'the outboard hangs outside; say yes for a well or a box that gets hot',
  );
export const sheathedField = () =>
  assuming(
    yesNo('in a sheath or conduit all the way from the battery to the fuse'),
    'no' as YesNo,
    'no',
    'bare single conductors are the worse case',
  );

export const needsField = (): Field<Needs> =>
  assuming(
    choice(
      [
        { id: 'critical', title: 'it matters: navigation lights, bilge pump, radio, panel feed, charging' },
        { id: 'other', title: 'it does not: cabin lights, fan' },
      ],
      'whether it matters that the device gets its volts',
    ) as Field<Needs>,
    'critical',
    'it matters',
    '3 % is the safe side',
  );

export const runField = (): Field<Run> =>
  assuming(
    choice(
      [
        { id: 'singly', title: 'single conductors' },
        { id: 'in-a-sheath', title: 'conductors in one sheath' },
      ],
      'how it is made up',
    ) as Field<Run>,
    'in-a-sheath',
    'in a sheath',
    'twin cable is what is laid in small boats',
  );

export const conductorHeatField = () =>
  assuming(
    temperature('°C', -20, 120, 'temperature of the conductor'),
    inBase('temperature', usualConductor_C, '°C'),
    `${usualConductor_C} °C`,
    'a cabin in summer; a conductor at its full current is warmer',
  );

/** What can hurt, by the work. */
export const cautions = {
  before:
    'Before you touch a terminal: loads off, isolator off, negative lead off first and on last. Panel covered or unplugged. Rings and watch off.',
  tools: 'A spanner across the terminals glows in a second: tape its handle and cover the other terminal.',
  atTheBattery:
    'The fuse stands at the battery. Wire before the fuse has nothing to stop it: when it chafes to a short it burns.',
  protects: 'A fuse protects the wire, not the lamp. Never fit a bigger one because it blew: find out why.',
  regulator:
    'A solar regulator: to the battery first, the panel last; off the other way round. A panel in the sun cannot be switched off: cover it.',
  lithium:
    'LiFePO4 gives thousands of amperes into a short: a fuse that cannot break them arcs on and burns. Ask the maker for its short-circuit current.',
  shore: 'Shore power and anything on mains volts are for a licensed electrician.',
  guidance:
    'Guidance only: the standard in your country, the makers’ sheets and a qualified person decide. Figures marked recalled were not read again.',
} as const;

export const sources = {
  iec60228: { title: 'IEC 60228:2004 tables 2 and 3, greatest resistance of conductors', seen: 'read second-hand' },
  iecCells: { title: 'cells of IEC 60228 that were not seen', seen: 'recalled' },
  copper: { title: 'IEC 60028, annealed copper 17.241 Ω·mm²/km at 20 °C', seen: 'read second-hand' },
  copperHeat: { title: 'IEC 60028, 0.00393 a kelvin', seen: 'recalled' },
  astm: { title: 'ASTM B258, d = 0.127·92^((36−n)/39)', seen: 'read second-hand' },
  isoCurrent: { title: 'ISO 10133:2012 and ISO 13297, table A.1 and A.2', seen: 'read second-hand' },
  gaugeCurrent: { title: '33 CFR 183.425 table 5; UL 1426 bundle table', seen: 'read' },
  currentCells: { title: 'cells of the current tables and factors that were not seen', seen: 'recalled' },
  isoDrop: { title: 'ISO 10133 annex C, E = 0.0164·I·L/S', seen: 'read second-hand' },
  circularMils: { title: 'ABYC E-11, CM = 10.75·I·L/E, L in feet there and back', seen: 'read second-hand' },
  limits: { title: 'ABYC E-11 11.14.2.6, 3 % and 10 %; ISO 10133:2012 clause 4', seen: 'read second-hand' },
  least: { title: 'ISO 10133:2012 7.7; 33 CFR 183.425(d)(e)', seen: 'read second-hand' },
  fuseRule: { title: 'ISO 10133 clause 8 and IEC 60364-4-43 433.1: load ≤ fuse ≤ capacity', seen: 'read second-hand' },
  fuseUs: { title: '33 CFR 183.455', seen: 'read' },
  fuseLoad: { title: 'load at most 80 % of the fuse', seen: 'common practice' },
  blades: { title: 'ISO 8820-3, colours of 3, 7.5, 10, 15 and 30 A', seen: 'read second-hand' },
  bladesRecalled: { title: 'ISO 8820-3, the other colours', seen: 'recalled' },
  breaking: { title: 'breaking capacity by kind of fuse', seen: 'recalled' },
  fault: { title: 'fault current from the least likely resistance of the battery', seen: 'our assumption' },
} as const satisfies Readonly<Record<string, Source>>;
