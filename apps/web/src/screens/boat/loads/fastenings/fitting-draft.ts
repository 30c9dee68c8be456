/** A fitting as it is asked about, and what the question about its fastenings takes. */
import type { Id } from '#boat-book';
import { baseChoices, type PathUse } from '#loads';
import type { FittingAsked } from '#reckoning';
import { type Faults, formReading } from '../../../../parts/read-form.ts';

export interface FittingDraft {
  readonly name: string;
  readonly zone: Id | '';
  readonly use: PathUse | '';
  readonly base: string;
  readonly by: FittingAsked['by'];
  readonly bolt: string;
  readonly screw_mm: string;
  readonly count: string;
  readonly thickness_mm: string;
  readonly washer: FittingAsked['washer'];
  readonly pad_mm: string;
  readonly pull_N: string;
  readonly angle_deg: string;
  readonly height_mm: string;
  readonly rows_mm: string;
}

export type FittingFault =
  | 'name'
  | 'use'
  | 'base'
  | 'by'
  | 'size'
  | 'thickness'
  | 'pad'
  | 'pull'
  | 'angle'
  | 'height'
  | 'rows';

/** What is not measured is empty; four bolts with plain washers and no pad are what is mostly found. */
export const fittingDraft: FittingDraft = {
  name: '',
  zone: '',
  use: '',
  base: '',
  by: 'bolt',
  bolt: '6',
  screw_mm: '',
  count: '4',
  thickness_mm: '',
  washer: 'plain',
  pad_mm: '0',
  pull_N: '',
  angle_deg: '',
  height_mm: '',
  rows_mm: '',
};

export type FittingRead =
  | { readonly kind: 'read'; readonly fitting: FittingAsked }
  | { readonly kind: 'refused'; readonly faults: Faults<FittingFault> };

/** What is asked; or everything that cannot be read. */
export function readFitting(draft: FittingDraft): FittingRead {
  const form = formReading<FittingFault>();
  const threaded = draft.by === 'bolt' || draft.by === 'machine-screw';
  const fitting = {
    name: form.words('name', draft.name, 'Name the fitting.'),
    use: form.chosen('use', draft.use, 'Say what it is for: it sets how far below breaking it may work.'),
    base: form.chosen('base', draft.base, 'Choose what it holds in.'),
    by: draft.by,
    size_mm: threaded ? Number(draft.bolt) : form.figure('size', draft.screw_mm, { min: 2.5, max: 12.7, unit: 'mm' }),
    count: Number(draft.count),
    thickness_mm: form.figure('thickness', draft.thickness_mm, { min: 0.5, max: 120, unit: 'mm' }),
    washer: draft.washer,
    pad_mm: draft.by === 'bolt' ? form.figure('pad', draft.pad_mm, { min: 0, max: 30, unit: 'mm' }) : 0,
    pull_N: form.figure('pull', draft.pull_N, { min: 1, max: 50_000, unit: 'N' }),
    angle_deg: Number(form.chosen('angle', draft.angle_deg, 'Say which way it pulls.')),
    height_mm: form.figure('height', draft.height_mm, { min: 0, max: 500, unit: 'mm' }),
    rows_mm: form.figure('rows', draft.rows_mm, { min: 10, max: 390, unit: 'mm' }),
  };
  return form.sound() ? { kind: 'read', fitting } : { kind: 'refused', faults: form.faults };
}

/** The field of the form that a fault of the question is about. */
export const fieldOfFault = (where: string): FittingFault =>
  (['by', 'size', 'thickness', 'pad', 'pull', 'angle', 'height', 'rows'] as const).find((each) => each === where) ??
  'base';

export const bases = baseChoices.map(({ id, title }) => ({ value: id as string, name: title }));
