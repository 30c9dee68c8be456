/** A wait as it is being filled in: all text, and its law by the name of the product. */
import type { SetUpNeedRecord, WaitRecord } from '#boat-book';
import { type CureLaw, cureLaws } from '#materials';
import { familyOfWait } from '#reckoning';
import { type Faults, formReading } from '../../parts/read-form.ts';

export type WaitFault =
  | 'title'
  | 'law'
  | 'hours'
  | 'reference'
  | 'doubles'
  | 'minimum'
  | 'depth'
  | 'firstDay'
  | 'humidity'
  | 'stopsAt'
  | 'airMin';

export interface WaitDraft {
  readonly id: string;
  readonly title: string;
  /** id of a product in `cureLaws`, or 'set time'; '' not chosen yet */
  readonly product: string;
  /** the keeper's own figures, from the tin, replace ours */
  readonly fromTin: boolean;
  /** the tin in the book it is of; '': one of its family, of those the step takes from the stores first */
  readonly tin: string;
  readonly hours: string;
  readonly reference: string;
  readonly doubles: string;
  readonly minimum: string;
  readonly depth: string;
  readonly firstDay: string;
  readonly humidity: string;
  readonly stopsAt: string;
  readonly dry: boolean;
  readonly airMin: string;
  readonly setUps: readonly SetUpNeedRecord[];
  readonly still: readonly string[];
  readonly wet: boolean;
}

/** A wait with nothing chosen yet. */
export function emptyWait(id: string): WaitDraft {
  return {
    id,
    title: '',
    product: '',
    fromTin: false,
    tin: '',
    ...figures(null),
    dry: false,
    airMin: '',
    setUps: [],
    still: [],
    wet: false,
  };
}

export function waitDraft(wait: WaitRecord): WaitDraft {
  return {
    id: wait.id,
    title: wait.title,
    product: productOf(wait),
    fromTin: wait.law.from === 'the tin' && wait.law.kind !== 'set time',
    tin: wait.tin ?? '',
    ...figures(wait.law),
    dry: wait.needs.dry ?? false,
    airMin: wait.needs.air_min_C?.toString() ?? '',
    setUps: wait.setUps,
    still: wait.still,
    wet: wait.wet,
  };
}

/** The draft with another product: its figures take the place of those that stood there, and another's tin is let go. */
export function withProduct(draft: WaitDraft, product: string): WaitDraft {
  const known = cureLaws.find((one) => one.id === product);
  return {
    ...draft,
    product,
    fromTin: false,
    tin: '',
    title: draft.title || (known ? `${known.title.split(',')[0]!.toLowerCase()} cures` : ''),
    ...figures(known?.law ?? null),
  };
}

/** What sort of law the draft is for, which says what figures it has. */
export function lawKind(draft: WaitDraft): CureLaw['kind'] | null {
  if (draft.product === 'set time') return 'set time';
  return cureLaws.find((one) => one.id === draft.product)?.law.kind ?? null;
}

export function readWait(
  draft: WaitDraft,
):
  | { readonly kind: 'wait'; readonly wait: WaitRecord }
  | { readonly kind: 'refused'; readonly faults: Faults<WaitFault> } {
  const form = formReading<WaitFault>();
  const title = form.words('title', draft.title, 'Say what is waited for, such as ‘epoxy cures’.');
  const airMin = form.figureOrNone('airMin', draft.airMin, { min: -30, max: 50, unit: '°C' });
  const law = readLaw(draft);
  if (law.kind === 'refused') return { kind: 'refused', faults: { ...form.faults, ...law.faults } };
  if (!form.sound()) return { kind: 'refused', faults: form.faults };
  return {
    kind: 'wait',
    wait: {
      id: draft.id,
      title,
      law: law.law,
      ...(cureLaws.some(({ id }) => id === draft.product) ? { family: draft.product } : {}),
      ...(draft.tin === '' || draft.product === 'set time' ? {} : { tin: draft.tin }),
      needs: { ...(draft.dry ? { dry: true as const } : {}), ...(airMin === null ? {} : { air_min_C: airMin }) },
      setUps: draft.setUps,
      still: draft.still,
      wet: draft.wet,
    },
  };
}

function readLaw(
  draft: WaitDraft,
): { readonly kind: 'law'; readonly law: CureLaw } | { readonly kind: 'refused'; readonly faults: Faults<WaitFault> } {
  const form = formReading<WaitFault>();
  const ours = cureLaws.find((one) => one.id === draft.product)?.law;
  if (ours && !draft.fromTin && ours.kind !== 'moisture') return { kind: 'law', law: ours };
  const kind = lawKind(draft);
  if (kind === null) form.refuse('law', 'Choose the product, or a set time.');
  const minutes = () =>
    Math.max(1, Math.round(form.figure('hours', draft.hours, { min: 0.02, max: 2160, unit: 'h' }) * 60));
  const degrees = (field: WaitFault, text: string) => form.figure(field, text, { min: -20, max: 60, unit: '°C' });
  const from = 'the tin' as const;
  // how deep the bead is nobody's tin says: it stands beside our figures and beside the tin's
  if (ours?.kind === 'moisture' && !draft.fromTin) {
    const depth_mm = form.figure('depth', draft.depth, { min: 0.5, max: 50, unit: 'mm' });
    return form.sound() ? { kind: 'law', law: { ...ours, depth_mm } } : { kind: 'refused', faults: form.faults };
  }
  let law: CureLaw = { kind: 'never cures', from };
  if (kind === 'set time') law = { kind, minutes: minutes(), from: 'our assumption' };
  if (kind === 'reacts')
    law = {
      kind,
      atReference_min: minutes(),
      reference_C: degrees('reference', draft.reference),
      doublesPer_C: form.figure('doubles', draft.doubles, { min: 3, max: 40, unit: '°C' }),
      minimum_C: degrees('minimum', draft.minimum),
      from,
    };
  if (kind === 'moisture')
    law = {
      kind,
      depth_mm: form.figure('depth', draft.depth, { min: 0.5, max: 50, unit: 'mm' }),
      firstDay_mm: form.figure('firstDay', draft.firstDay, { min: 0.1, max: 20, unit: 'mm' }),
      reference_C: degrees('reference', draft.reference),
      reference_pct: form.figure('humidity', draft.humidity, { min: 5, max: 100, unit: '%' }),
      minimum_C: degrees('minimum', draft.minimum),
      from,
    };
  if (kind === 'dries')
    law = {
      kind,
      atReference_min: minutes(),
      reference_C: degrees('reference', draft.reference),
      doublesPer_C: form.figure('doubles', draft.doubles, { min: 3, max: 40, unit: '°C' }),
      stopsAt_pct: form.figure('stopsAt', draft.stopsAt, { min: 5, max: 100, unit: '%' }),
      minimum_C: degrees('minimum', draft.minimum),
      from,
    };
  return form.sound() ? { kind: 'law', law } : { kind: 'refused', faults: form.faults };
}

function figures(law: CureLaw | null) {
  const text = (key: string) =>
    law !== null && key in law ? String((law as unknown as Record<string, number>)[key]) : '';
  const minutes =
    law === null ? null : 'minutes' in law ? law.minutes : 'atReference_min' in law ? law.atReference_min : null;
  return {
    hours: minutes === null ? '' : String(Math.round((minutes / 60) * 100) / 100),
    reference: text('reference_C'),
    doubles: text('doublesPer_C'),
    minimum: text('minimum_C'),
    depth: text('depth_mm'),
    firstDay: text('firstDay_mm'),
    humidity: text('reference_pct'),
    stopsAt: text('stopsAt_pct'),
  };
}

/** The product a wait is of, as written on it or by its law; for the keeper's own figures, the first of the same kind. */
function productOf(wait: WaitRecord): string {
  if (wait.law.kind === 'set time') return 'set time';
  return familyOfWait(wait) ?? cureLaws.find((one) => one.law.kind === wait.law.kind)?.id ?? '';
}
