import { assuming, choice, type Field, type Question, question, type Source, type WorkingLine } from '#working';
import { manualCapacity105 } from '../tables/current-capacity.read-2026-11.ts';
import {
  areas_mm2,
  backTo20C,
  copper_ohm_mm2_km,
  copperArea_mm2,
  copperPer_K,
  gauge_cmil,
  gaugeArea_mm2,
  gaugeDiameter_mm,
  gauges,
  resistance_ohm_km,
  type Stranding,
  sizeInWords,
} from './conductor.ts';
import { type CurrentCapacity, currentCapacity } from './current-capacity.ts';
import { usualStranding } from './volt-drop.ts';
import {
  bundledField,
  cautions,
  conductorHeatField,
  engineField,
  insulationField,
  sizeField,
  sizeOf,
  sources,
} from './wiring-fields.ts';

/** The questions about a conductor by itself. A function, so that an app that asks none carries none. */
export function conductorQuestions(): readonly Question[] {
  return [resistanceQuestion(), gaugeQuestion(), currentCapacityQuestion()];
}

const strandings: readonly { readonly id: string; readonly title: string; readonly stranding: Stranding }[] = [
  { id: 'fine-tinned', title: 'fine strands, tinned (class 5)', stranding: 'class5 tinned' },
  { id: 'fine-plain', title: 'fine strands, plain (class 5)', stranding: 'class5 plain' },
  { id: 'stiff-tinned', title: 'stiff strands, tinned (class 2)', stranding: 'class2 tinned' },
  { id: 'stiff-plain', title: 'stiff strands, plain (class 2)', stranding: 'class2 plain' },
];
export const strandingField = (): Field<string> =>
  assuming(
    choice(strandings, 'how it is stranded'),
    'fine-tinned',
    'fine strands, tinned',
    'what is sold for boats; it has the most resistance of the four',
  );
export const strandingOf = (id: string): Stranding =>
  strandings.find((each) => each.id === id)?.stranding ?? usualStranding;

function resistanceQuestion() {
  return question({
    id: 'wiring.resistance',
    title: 'What resistance has a conductor?',
    fields: { size: sizeField(), strands: strandingField(), temperature: conductorHeatField() },
    answer: ({ size, strands, temperature }) => {
      const of = sizeOf(size);
      const cold = resistance_ohm_km(of, strandingOf(strands), 20);
      const warm = resistance_ohm_km(of, strandingOf(strands), temperature);
      return {
        kind: 'found',
        results: [
          { symbol: 'R', meaning: `resistance of ${sizeInWords(of)}`, value: warm.value, unit: 'Ω/km' },
          { symbol: 'R of a metre', meaning: 'of one metre of conductor', value: warm.value, unit: 'mΩ/m' },
        ],
        working: [
          {
            symbol: 'R20',
            meaning: `at 20 °C${cold.recalled ? ', recalled' : ''}`,
            value: cold.value,
            unit: 'Ω/km',
            formula: of.kind === 'metric' ? 'greatest of IEC 60228' : '10.75 Ω·circular mil/ft ÷ circular mils',
          },
          { symbol: 'ρ', meaning: 'annealed copper', value: copper_ohm_mm2_km, unit: 'Ω·mm²/km', formula: 'at 20 °C' },
          { symbol: 'α', meaning: 'change of copper', value: copperPer_K, unit: '1/K', formula: 'recalled' },
          {
            symbol: 'R of T',
            meaning: 'at the temperature given',
            value: warm.value,
            unit: 'Ω/km',
            formula: 'R20·(1 + α·(T − 20))',
          },
          {
            symbol: 'Kt',
            meaning: 'brings a resistance measured at this temperature back to 20 °C',
            value: backTo20C(temperature),
            unit: '',
            formula: '1/(1 + 0.004·(T − 20)), as the standard rounds it',
          },
        ],
        sources: conductorSources(cold.recalled),
        limits: ['The greatest resistance a new conductor may have. A joint or a green strand adds its own.'],
        cautions: [cautions.guidance],
      };
    },
  });
}

const conductorSources = (recalled: boolean): Source[] => [
  sources.iec60228,
  ...(recalled ? [sources.iecCells] : []),
  sources.copper,
  sources.copperHeat,
];

function gaugeQuestion() {
  return question({
    id: 'wiring.gauge',
    title: 'What is a gauge in mm²?',
    fields: {
      gauge: choice(
        gauges.map((id) => ({ id, title: `${id} AWG` })),
        'American wire gauge',
      ),
    },
    answer: ({ gauge }) => {
      const cable = gauge_cmil(gauge);
      const cableArea = copperArea_mm2({ kind: 'gauge', awg: gauge });
      const metric = areas_mm2.find((area) => area >= cableArea - 1e-9);
      return {
        kind: 'found',
        results: [
          { symbol: 'S', meaning: 'area of a solid wire', value: gaugeArea_mm2(gauge), unit: 'mm²' },
          {
            symbol: 'metric',
            meaning: 'metric size that stands in for boat cable of this gauge',
            value: metric === undefined ? 'none in the table is so thick' : `${metric} mm²`,
            unit: '',
          },
          { symbol: 'CM', meaning: 'boat cable of this gauge', value: cable.value, unit: 'circular mils' },
        ],
        working: [
          {
            symbol: 'd',
            meaning: 'diameter of a solid wire',
            value: gaugeDiameter_mm(gauge),
            unit: 'mm',
            formula: '0.127·92^((36 − n)/39)',
          },
          {
            symbol: 'R',
            meaning: 'resistance of solid copper at 20 °C',
            value: copper_ohm_mm2_km / gaugeArea_mm2(gauge),
            unit: 'Ω/km',
            formula: '17.241/S',
          },
          {
            symbol: 'S of boat cable',
            meaning: `copper of boat cable${cable.recalled ? ', recalled' : ''}`,
            value: cableArea,
            unit: 'mm²',
            formula: 'CM·π/4·0.0254²',
          },
        ],
        sources: [sources.astm, sources.copper, sources.circularMils, ...(cable.recalled ? [sources.iecCells] : [])],
        limits: ['Cable sold by a gauge that is no boat cable can be a tenth thinner.'],
        cautions: [],
      };
    },
  });
}

function currentCapacityQuestion() {
  return question({
    id: 'wiring.current-capacity',
    title: 'What current may a conductor carry?',
    fields: {
      size: sizeField(),
      insulation: insulationField(),
      bundled: bundledField(),
      'engine-space': engineField(),
    },
    answer: ({ size, insulation, bundled, 'engine-space': engine }) => {
      const of = sizeOf(size);
      const found = currentCapacity(of, {
        insulation_C: Number(insulation),
        bundled,
        engineSpace: engine === 'yes',
      });
      const shown = {
        sources: [
          of.kind === 'metric' ? sources.isoCurrent : sources.gaugeCurrent,
          ...(found.kind === 'capacity' && found.recalled ? [sources.currentCells] : []),
        ],
        limits: [
          '30 °C around it outside an engine space. Between two sizes or two insulations the lower is taken.',
          'What the wire bears, not what the device needs: on a long run the drop in volts decides.',
        ],
        cautions: [cautions.atTheBattery, cautions.guidance],
      };
      if (found.kind === 'none')
        return {
          kind: 'truth',
          statement: 'It may carry nothing here',
          because: `${found.because}: ${found.right}`,
          results: [],
          working: [],
          ...shown,
        };
      const manual = of.kind === 'metric' && insulation === '105' ? manualCapacity105[of.area_mm2] : undefined;
      return {
        kind: 'found',
        results: [{ symbol: 'I', meaning: 'for as long as it likes', value: found.amps, unit: 'A' }],
        working: [
          ...capacityWorking(found),
          ...(manual === undefined
            ? []
            : [
                {
                  symbol: 'I of a manual',
                  meaning: 'as one maker’s manual prints the 105 °C column: not used, it is the 200 °C one as recalled',
                  value: manual,
                  unit: 'A',
                  formula: 'printed',
                },
              ]),
        ],
        ...shown,
      };
    },
  });
}

/** How a current capacity came about. */
export function capacityWorking(found: CurrentCapacity): WorkingLine[] {
  return [
    {
      symbol: 'I of table',
      meaning: `${found.row}, insulation ${found.column}${found.recalled ? ', with a figure recalled' : ''}`,
      value: found.table_A,
      unit: 'A',
      formula: 'printed table',
    },
    {
      symbol: 'k bundle',
      meaning: 'share left in the bundle',
      value: found.bundleShare,
      unit: '',
      formula: 'printed, by the number of conductors',
    },
    {
      symbol: 'k engine',
      meaning: 'share left in an engine space',
      value: found.engineShare,
      unit: '',
      formula: 'printed, by the insulation; 1 outside',
    },
    {
      symbol: 'Iz',
      meaning: 'what it may carry',
      value: found.amps,
      unit: 'A',
      formula: 'I of table·k bundle·k engine',
    },
  ];
}
