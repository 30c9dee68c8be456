import { inBase } from '#units';
import { amount, assuming, choice, type Field, type Question, question, type WorkingLine } from '#working';
import { copperArea_mm2, resistance_ohm_km, sizeInWords } from './conductor.ts';
import { capacityWorking, strandingField, strandingOf } from './conductor-questions.ts';
import { leastSize, smallestConductor } from './smallest-conductor.ts';
import {
  atDevice,
  type DeviceKind,
  dropLimit_pct,
  isoDrop_V,
  isoLeastArea_mm2,
  isoMostCurrent_A,
  leastCircularMils,
  voltDrop_V,
  way_ohm,
} from './volt-drop.ts';
import {
  bundledField,
  cautions,
  conductorHeatField,
  currentField,
  engineField,
  insulationField,
  lengthField,
  needsField,
  nominalField,
  runField,
  sizeField,
  sizeOf,
  sources,
} from './wiring-fields.ts';

/** The questions about volts lost on the way, and the conductor that loses few enough. */
export function dropQuestions(): readonly Question[] {
  return [conductorQuestion(), voltDropQuestion(), atDeviceQuestion()];
}

const metric = { id: 'metric', title: 'mm²' } as const;
const gauge = { id: 'gauge', title: 'AWG' } as const;
type System = 'metric' | 'gauge';

/** As ISO 10133:2012 clause 4 lists them. */
const whereItMatters = 'main conductors; navigation lights; bilge blowers; bilge pumps; other safety loads';

function conductorQuestion() {
  return question({
    id: 'wiring.conductor',
    title: 'What size of conductor?',
    fields: {
      current: currentField(),
      'length-there-and-back': lengthField(),
      needs: needsField(),
      volts: nominalField(),
      insulation: insulationField(),
      bundled: bundledField(),
      'engine-space': engineField(),
      run: runField(),
      temperature: conductorHeatField(),
      system: assuming(
        choice([metric, gauge], 'sizes in mm² or in gauge') as Field<System>,
        'metric' as System,
        'mm²',
        'as sold in most of the world',
      ),
    },
    answer: ({ current, needs, volts, insulation, bundled, run, temperature, system, ...rest }) => {
      const lengthThereAndBack_m = rest['length-there-and-back'];
      const drop_pct = dropLimit_pct[needs];
      const allowed = (volts * drop_pct) / 100;
      const found = smallestConductor({
        system,
        current_A: current,
        lengthThereAndBack_m,
        nominal_V: volts,
        drop_pct,
        conductor_C: temperature,
        laid: { insulation_C: Number(insulation), bundled, engineSpace: rest['engine-space'] === 'yes' },
        run,
      });
      const said = (size: typeof found.size) => (size ? sizeInWords(size) : 'none in the table');
      const reasons: WorkingLine[] = [
        { symbol: 'share', meaning: 'that may be lost', value: drop_pct, unit: '%', formula: `${needs}: 3 or 10` },
        { symbol: 'E', meaning: 'volts that may be lost', value: allowed, unit: 'V', formula: 'share·U/100' },
        {
          symbol: 'S for drop',
          meaning: 'smallest by the volts lost',
          value: said(found.forDrop),
          unit: '',
          formula: system === 'gauge' ? 'circular mils ≥ CM' : 'R·L·I ≤ E, IEC 60228 class 5 tinned, warm',
        },
        {
          symbol: 'S for current',
          meaning: 'smallest by the current',
          value: said(found.forCurrent),
          unit: '',
          formula: 'table·bundle·engine space ≥ I',
        },
        {
          symbol: 'S for fuse',
          meaning: 'smallest that a standard fuse protects',
          value: said(found.forFuse),
          unit: '',
          formula: 'next standard fuse ≥ 1.25·I, ≤ what the conductor may carry',
        },
        {
          symbol: 'S least',
          meaning: `least by the rules, ${run === 'singly' ? 'single' : 'in a sheath'}`,
          value: found.least.kind === 'metric' ? found.least.area_mm2 : Number(found.least.awg),
          unit: found.least.kind === 'metric' ? 'mm²' : 'AWG',
          formula: 'so that it does not break',
        },
        {
          symbol: 'least gauges',
          meaning: 'by the rules, in AWG',
          value: `${leastSize.singly.gauge} singly, ${leastSize['in-a-sheath'].gauge} in a sheath`,
          unit: '',
          formula: 'printed',
        },
        {
          symbol: 'S of ISO',
          meaning: 'least area by the standard’s own formula, for comparison',
          value: isoLeastArea_mm2(lengthThereAndBack_m, current, allowed),
          unit: 'mm²',
          formula: '0.0164·I·L/E',
        },
        {
          symbol: 'CM',
          meaning: 'least circular mils',
          value: leastCircularMils(lengthThereAndBack_m, current, allowed),
          unit: 'circular mils',
          formula: '10.75·I·L/E, L in feet',
        },
        {
          symbol: 'where it matters',
          meaning: 'circuits that want 3 %, as the standard lists them',
          value: whereItMatters,
          unit: '',
          formula: 'printed',
        },
      ];
      const shown = {
        sources: [
          sources.iec60228,
          system === 'metric' ? sources.isoCurrent : sources.gaugeCurrent,
          ...(found.capacity?.kind === 'capacity' && found.capacity.recalled ? [sources.currentCells] : []),
          sources.isoDrop,
          sources.circularMils,
          sources.limits,
          sources.least,
          sources.fuseRule,
          sources.fuseLoad,
        ],
        limits: [
          'Copper, stranded, direct current. Joints, fuse and switch lose volts of their own. Starter and windlass leads follow other rules.',
        ],
        cautions: [cautions.before, cautions.atTheBattery, cautions.shore, cautions.guidance],
      };
      if (!found.size || found.drop_V === null || found.capacity?.kind !== 'capacity' || found.fuse?.kind !== 'fits')
        return {
          kind: 'truth',
          statement: 'No conductor of the table does it',
          because:
            'shorten the run, raise the system’s volts, split the load over two circuits, or take insulation for more heat',
          results: [],
          working: reasons,
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          found.size.kind === 'metric'
            ? { symbol: 'S', meaning: 'smallest conductor that does', value: found.size.area_mm2, unit: 'mm²' }
            : /^\d+$/.test(found.size.awg)
              ? { symbol: 'S', meaning: 'smallest conductor that does', value: Number(found.size.awg), unit: 'AWG' }
              : {
                  symbol: 'S',
                  meaning: 'smallest conductor that does',
                  value: sizeInWords(found.size),
                  unit: '',
                },
          { symbol: 'In', meaning: 'fuse, at the battery', value: found.fuse.rating_A, unit: 'A' },
          { symbol: 'drop', meaning: 'volts lost there and back', value: found.drop_V, unit: 'V' },
          {
            symbol: 'drop share',
            meaning: `of ${drop_pct} % that may be lost`,
            value: (100 * found.drop_V) / volts,
            unit: '%',
          },
          {
            symbol: 'room',
            meaning: 'current it may carry over what it is given',
            value: found.capacity.amps / current,
            unit: '×',
          },
        ],
        working: [...reasons, ...capacityWorking(found.capacity)],
        ...shown,
      };
    },
  });
}

function voltDropQuestion() {
  return question({
    id: 'wiring.volt-drop',
    title: 'How many volts does a wire lose?',
    fields: {
      current: currentField(),
      'length-there-and-back': lengthField(),
      size: sizeField(),
      volts: nominalField(),
      needs: needsField(),
      strands: strandingField(),
      temperature: conductorHeatField(),
    },
    answer: ({ current, size, volts, needs, strands, temperature, ...rest }) => {
      const of = sizeOf(size);
      const length_m = rest['length-there-and-back'];
      const stranding = strandingOf(strands);
      const resistance = resistance_ohm_km(of, stranding, temperature);
      const drop = voltDrop_V(of, length_m, current, { stranding, conductor_C: temperature });
      const share = (100 * drop) / volts;
      const limit = dropLimit_pct[needs];
      const allowed = (volts * limit) / 100;
      return {
        kind: 'found',
        results: [
          { symbol: 'E', meaning: 'volts lost there and back', value: drop, unit: 'V' },
          { symbol: 'share', meaning: `of the ${limit} % that may be lost`, value: share, unit: '%' },
          {
            symbol: 'verdict',
            meaning: 'against the limit',
            value: share <= limit + 1e-9 ? 'within' : 'too much: a thicker or a shorter conductor',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'R',
            meaning: `${sizeInWords(of)}, warm${resistance.recalled ? ', recalled' : ''}`,
            value: resistance.value,
            unit: 'Ω/km',
            formula: 'wiring.resistance',
          },
          { symbol: 'E of R', meaning: 'volts lost', value: drop, unit: 'V', formula: 'I·R·L/1000' },
          {
            symbol: 'E of ISO',
            meaning: 'by the standard’s own formula, for comparison',
            value: isoDrop_V(copperArea_mm2(of), length_m, current),
            unit: 'V',
            formula: '0.0164·I·L/S',
          },
          {
            symbol: 'I of ISO',
            meaning: 'greatest current by that formula',
            value: isoMostCurrent_A(of, length_m, allowed),
            unit: 'A',
            formula: 'share·U·S/(0.0164·L)',
          },
          {
            symbol: 'I most',
            meaning: 'greatest current for the limit by the resistance',
            value: (allowed * 1000) / (resistance.value * length_m),
            unit: 'A',
            formula: '1000·share·U/(R·L)',
          },
        ],
        sources: [
          sources.iec60228,
          ...(resistance.recalled ? [sources.iecCells] : []),
          sources.copperHeat,
          sources.isoDrop,
          sources.limits,
        ],
        limits: [
          'The wire alone: joints, fuse and switch lose volts of their own. The standard’s 0.0164 is thin copper at its best.',
        ],
        cautions: [cautions.guidance],
      };
    },
  });
}

const devices: readonly { readonly id: DeviceKind; readonly title: string }[] = [
  { id: 'steady-watts', title: 'draws more as volts fall: LED with a regulator, radio, pilot' },
  { id: 'steady-amps', title: 'the same amperes: motor, pump' },
  { id: 'resistor', title: 'less as volts fall: filament lamp, heater' },
];

function atDeviceQuestion() {
  return question({
    id: 'wiring.at-device',
    title: 'How many volts does the device see?',
    fields: {
      watts: amount('power', 'W', 0.1, 3000, 'watts on its label'),
      'length-there-and-back': lengthField(),
      size: sizeField(),
      battery: assuming(
        amount('voltage', 'V', 5, 60, 'volts at the battery under this load'),
        inBase('voltage', 12, 'V'),
        '12 V',
        'a lead battery at half, under load',
      ),
      volts: nominalField(),
      device: assuming(
        choice(devices, 'how it draws') as Field<DeviceKind>,
        'steady-watts' as DeviceKind,
        'steady watts',
        'the worst of the three on a long wire',
      ),
      joints: assuming(
        amount('resistance', 'mΩ', 0, 1000, 'resistance of fuse, switch and joints together'),
        inBase('resistance', 20, 'mΩ'),
        '20 mΩ',
        'our assumption for two joints, a blade fuse and a switch in good order',
      ),
      temperature: conductorHeatField(),
    },
    answer: ({ watts, size, battery, volts, device, joints, temperature, ...rest }) => {
      const of = sizeOf(size);
      const length_m = rest['length-there-and-back'];
      const wire = way_ohm(of, length_m, undefined, temperature);
      const found = atDevice(device, battery, wire + joints, watts, volts);
      const working: WorkingLine[] = [
        { symbol: 'R wire', meaning: 'there and back', value: 1000 * wire, unit: 'mΩ', formula: 'R·L' },
        { symbol: 'R joints', meaning: 'fuse, switch, joints', value: 1000 * joints, unit: 'mΩ', formula: 'given' },
      ];
      const shown = {
        sources: [sources.iec60228, sources.copperHeat, sources.limits],
        limits: ['The volts at the battery are those under this load, not the rested ones.'],
        cautions: [cautions.guidance],
      };
      if (found.kind === 'too much')
        return {
          kind: 'truth',
          statement: 'The wire cannot bring it so much',
          because: `at the end of this wire no device gets more than ${found.most_W.toFixed(1)} W: take a thicker conductor`,
          results: [],
          working,
          ...shown,
        };
      return {
        kind: 'found',
        results: [
          { symbol: 'U', meaning: 'at the device', value: found.volts, unit: 'V' },
          { symbol: 'I', meaning: 'current', value: found.current_A, unit: 'A' },
          {
            symbol: 'share',
            meaning: 'of the battery’s volts lost on the way',
            value: (100 * (battery - found.volts)) / battery,
            unit: '%',
          },
          {
            symbol: 'P lost',
            meaning: 'heat in the wire and joints',
            value: (battery - found.volts) * found.current_A,
            unit: 'W',
          },
        ],
        working: [
          ...working,
          {
            symbol: 'U of way',
            meaning: 'at the device',
            value: found.volts,
            unit: 'V',
            formula: {
              'steady-watts': '(E + √(E² − 4·R·P))/2',
              'steady-amps': 'E − I·R',
              resistor: 'E·Rd/(Rd + R), Rd = U²/P',
            }[device],
          },
        ],
        ...shown,
      };
    },
  });
}
