/** A new outlet as it is asked about, and what the question about its wire and fuse takes. */
import type { BatteryRecord, CircuitRecord, Id } from '#boat-book';
import type { NewOutlet } from '#reckoning';
import { type Faults, formReading } from '../../../parts/read-form.ts';
import { type UsesDraft, type UsesFault, usesDraft, usesOf } from './uses-fields.tsx';

export interface OutletDraft {
  readonly name: string;
  readonly battery: Id | '';
  readonly drawsIn: 'watts' | 'amps';
  readonly draws: string;
  readonly oneWay: string;
  readonly needs: NewOutlet['needs'] | '';
  readonly run: NewOutlet['run'];
  readonly insulation: string;
  readonly bundled: string;
  readonly engineSpace: boolean;
  readonly fuseAt_mm: string;
  readonly sheathed: boolean;
  readonly soldBy: NewOutlet['soldBy'];
  readonly uses: UsesDraft;
  readonly zone: Id | '';
}

export type OutletFault = 'name' | 'battery' | 'draws' | 'oneWay' | 'needs' | 'bundled' | 'fuseAt_mm' | UsesFault;

/** What is not measured is empty; twin cable with plain insulation, by itself, is what is mostly laid. */
export const outletDraft = (onlyBattery: Id | ''): OutletDraft => ({
  name: '',
  battery: onlyBattery,
  drawsIn: 'watts',
  draws: '',
  oneWay: '',
  needs: '',
  run: 'in-a-sheath',
  insulation: '70',
  bundled: '2',
  engineSpace: false,
  fuseAt_mm: '',
  sheathed: false,
  soldBy: 'metric',
  uses: usesDraft(null),
  zone: '',
});

export type OutletRead =
  | { readonly kind: 'read'; readonly outlet: NewOutlet; readonly battery: Id }
  | { readonly kind: 'refused'; readonly faults: Faults<OutletFault> };

/** What is asked; or everything that cannot be read. Watts are amperes at the battery's nominal volts. */
export function readOutlet(draft: OutletDraft, batteries: Readonly<Record<Id, BatteryRecord>>): OutletRead {
  const form = formReading<OutletFault>();
  const battery = form.chosen('battery', draft.battery, 'Choose the battery it will hang on.');
  const nominal_V = batteries[battery]?.nominal_V ?? 12;
  const outlet = {
    name: form.words('name', draft.name, 'Name what will hang on it.'),
    current_A:
      draft.drawsIn === 'watts'
        ? form.figure('draws', draft.draws, { min: 0.1, max: 3600, unit: 'W' }) / nominal_V
        : form.figure('draws', draft.draws, { min: 0.01, max: 300, unit: 'A' }),
    oneWay_m: form.figure('oneWay', draft.oneWay, { min: 0.1, max: 50, unit: 'm' }),
    needs: form.chosen('needs', draft.needs, 'Say whether its volts matter.'),
    insulation_C: Number(draft.insulation) as NewOutlet['insulation_C'],
    bundled: form.figure('bundled', draft.bundled, { min: 1, max: 60, unit: 'wires', whole: true }),
    engineSpace: draft.engineSpace,
    run: draft.run,
    fuseAt_m: form.figure('fuseAt_mm', draft.fuseAt_mm, { min: 0, max: 5000, unit: 'mm' }) / 1000,
    sheathed: draft.sheathed,
    soldBy: draft.soldBy,
  };
  return form.sound() ? { kind: 'read', outlet, battery } : { kind: 'refused', faults: form.faults };
}

export type UsesRead =
  | { readonly kind: 'read'; readonly uses: CircuitRecord['uses'] }
  | { readonly kind: 'refused'; readonly faults: Faults<OutletFault> };

/** When it is to be on, which the book asks and the wire does not. */
export function readUses(draft: OutletDraft): UsesRead {
  const form = formReading<OutletFault>();
  const uses = usesOf<OutletFault>(draft.uses, form);
  return form.sound() ? { kind: 'read', uses } : { kind: 'refused', faults: form.faults };
}

/** `Counted there and back: 9 m.`; null: no way was given yet */
export function thereAndBackInWords(oneWay: string): string | null {
  const metres = Number(oneWay.trim().replace(',', '.'));
  return oneWay.trim() === '' || !Number.isFinite(metres) || metres <= 0
    ? null
    : `Counted there and back: ${Number((2 * metres).toFixed(2))} m.`;
}
