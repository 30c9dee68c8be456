/** A circuit as it is filled in, and the record it goes in as. */
import type { BatteryRecord, CircuitRecord, Id } from '#boat-book';
import { bothSizesInWords } from '#reckoning';
import { copperArea_mm2, fuseKinds, sizeOfArea, sizesOf } from '#wiring';
import type { Option } from '../../../parts/choice-fields.tsx';
import type { FormReading } from '../../../parts/read-form.ts';
import { type UsesDraft, type UsesFault, usesDraft, usesOf } from './uses-fields.tsx';

export type FuseKindId = NonNullable<CircuitRecord['fuseKind']>;
type Insulation = NonNullable<CircuitRecord['conductor']>['insulation_C'];

export interface CircuitDraft {
  readonly name: string;
  readonly battery: Id | '';
  readonly drawsIn: 'watts' | 'amps';
  readonly draws: string;
  readonly duty: string;
  readonly uses: UsesDraft;
  readonly needs: CircuitRecord['needs'] | '';
  readonly fused: 'fitted' | 'none' | '';
  readonly fuse_A: string;
  readonly fuseAt_mm: string;
  readonly fuseKind: FuseKindId | '';
  readonly sheathed: boolean;
  readonly wired: 'known' | 'not known' | '';
  readonly area: string;
  readonly insulation: string;
  readonly length: string;
  readonly bundled: string;
  readonly engineSpace: boolean;
  readonly zone: Id | '';
}

export type CircuitFault =
  | 'name'
  | 'battery'
  | 'draws'
  | 'duty'
  | 'needs'
  | 'fused'
  | 'fuse_A'
  | 'fuseAt_mm'
  | 'wired'
  | 'area'
  | 'insulation'
  | 'length'
  | 'bundled'
  | UsesFault;

export const insulations: readonly Option<string>[] = [
  { value: '60', name: '60 °C' },
  { value: '70', name: '70 °C, plain PVC' },
  { value: '75', name: '75 °C' },
  { value: '85', name: '85 °C' },
  { value: '90', name: '90 °C' },
  { value: '105', name: '105 °C, boat cable' },
];

export const fuseKindOptions: readonly Option<FuseKindId>[] = (Object.keys(fuseKinds) as FuseKindId[]).map((value) => ({
  value,
  name: fuseKinds[value].title,
}));

/** Sizes as they are sold, metric and gauge, with one of its own where the book has another. */
export function sizeOptions(area: string): readonly Option<string>[] {
  const options = [...sizesOf('metric'), ...sizesOf('gauge')].map((size) => ({
    value: areaText(copperArea_mm2(size)),
    name: bothSizesInWords(size),
  }));
  const own = area !== '' && !options.some(({ value }) => value === area);
  return own ? [{ value: area, name: bothSizesInWords(sizeOfArea(Number(area))) }, ...options] : options;
}

/** An area as the book holds it, in mm²; of a gauge to three places. */
const areaText = (area_mm2: number) => String(Number(area_mm2.toFixed(3)));

/** What stands in the form: for a new circuit nothing is filled in but what every circuit has. */
export function circuitDraft(record: CircuitRecord | null, onlyBattery: Id | ''): CircuitDraft {
  const conductor = record?.conductor ?? null;
  return {
    name: record?.name ?? '',
    battery: record?.battery ?? onlyBattery,
    drawsIn: 'watts',
    draws: record ? String(record.watts) : '',
    duty: record ? String(record.duty_pct) : '100',
    uses: usesDraft(record?.uses ?? null),
    needs: record?.needs ?? '',
    fused: record === null ? '' : record.fuse_A === null ? 'none' : 'fitted',
    fuse_A: record?.fuse_A?.toString() ?? '',
    fuseAt_mm: record?.fuseAt_m == null ? '' : String(Math.round(record.fuseAt_m * 1000)),
    fuseKind: record?.fuseKind ?? '',
    sheathed: record?.sheathed ?? false,
    wired: record === null ? '' : conductor === null ? 'not known' : 'known',
    area: conductor ? areaText(conductor.area_mm2) : '',
    insulation: conductor ? String(conductor.insulation_C) : '',
    length: conductor?.lengthThereAndBack_m.toString() ?? '',
    bundled: conductor?.bundled.toString() ?? '2',
    engineSpace: conductor?.engineSpace ?? false,
    zone: record?.zone ?? '',
  };
}

/** The record of a draft; what cannot be read is refused in the form. Amperes are watts at the battery's nominal volts. */
export function circuitOf(
  draft: CircuitDraft,
  batteries: Readonly<Record<Id, BatteryRecord>>,
  form: FormReading<CircuitFault>,
): Required<CircuitRecord> {
  const battery = form.chosen('battery', draft.battery, 'Choose the battery it hangs on.');
  const nominal_V = batteries[battery]?.nominal_V ?? 12;
  const draws =
    draft.drawsIn === 'watts'
      ? form.figure('draws', draft.draws, { min: 0, max: 10_000, unit: 'W' })
      : form.figure('draws', draft.draws, { min: 0, max: 400, unit: 'A' }) * nominal_V;
  const fused = form.chosen('fused', draft.fused, 'Say whether a fuse is fitted.');
  const wired = form.chosen('wired', draft.wired, 'Say whether the wire is known.');
  const fuseAt_mm =
    fused === 'fitted' ? form.figureOrNone('fuseAt_mm', draft.fuseAt_mm, { min: 0, max: 50_000, unit: 'mm' }) : null;
  return {
    name: form.words('name', draft.name, 'Name what hangs on it.'),
    battery,
    watts: Number(draws.toPrecision(6)),
    duty_pct: form.figure('duty', draft.duty, { min: 0, max: 100, unit: '%' }),
    uses: usesOf<CircuitFault>(draft.uses, form),
    needs: form.chosen('needs', draft.needs, 'Say whether its volts matter.'),
    fuse_A: fused === 'fitted' ? form.figure('fuse_A', draft.fuse_A, { min: 0.1, max: 1000, unit: 'A' }) : null,
    fuseAt_m: fuseAt_mm === null ? null : fuseAt_mm / 1000,
    fuseKind: fused === 'fitted' && draft.fuseKind !== '' ? draft.fuseKind : null,
    sheathed: fused === 'fitted' ? draft.sheathed : null,
    conductor:
      wired === 'known'
        ? {
            area_mm2: Number(form.chosen('area', draft.area, 'Choose the size printed on the wire.')),
            insulation_C: Number(
              form.chosen('insulation', draft.insulation, 'Choose what its insulation bears, as printed on it.'),
            ) as Insulation,
            lengthThereAndBack_m: form.figure('length', draft.length, { min: 0.1, max: 200, unit: 'm' }),
            bundled: form.figure('bundled', draft.bundled, { min: 1, max: 100, unit: 'wires', whole: true }),
            engineSpace: draft.engineSpace,
          }
        : null,
    zone: draft.zone || null,
  };
}
