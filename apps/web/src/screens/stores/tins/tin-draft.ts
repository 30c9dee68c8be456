/** What a tin says as it is being filled in: all text, and which of it a kind of product has. */
import type { TinRecord } from '#boat-book';
import { cureLaws, cureStage, potLives } from '#materials';
import type { FormReading } from '../../../parts/read-form.ts';

export type TinName =
  | 'name'
  | 'family'
  | 'readOn'
  | 'next'
  | 'latest'
  | 'worked'
  | 'full'
  | 'at'
  | 'firstDay'
  | 'minimum'
  | 'humidity'
  | 'pot'
  | 'potAt'
  | 'potOf'
  | 'resin'
  | 'hardener'
  | 'by'
  | 'catalystLow'
  | 'catalystHigh'
  | 'pair'
  | 'spread';

export type TinDraft = Readonly<
  Record<Exclude<TinName, 'by'> | 'store' | 'note', string> & { readonly by: 'weight' | 'volume' | '' }
>;

const text = (value: number | null | undefined) => value?.toString() ?? '';

export function tinDraft(tin: TinRecord | undefined, today: string): TinDraft {
  const parts = tin?.ratio?.kind === 'parts' ? tin.ratio : null;
  const catalyst = tin?.ratio?.kind === 'catalyst' ? tin.ratio : null;
  return {
    name: tin?.name ?? '',
    family: tin?.family ?? '',
    store: tin?.store ?? 'none',
    readOn: tin?.readOn ?? today,
    next: text(tin?.nextCoat?.hours),
    latest: text(tin?.latestCoat_h),
    worked: text(tin?.worked?.hours),
    full: text(tin?.full?.hours),
    at: text((tin?.nextCoat ?? tin?.worked ?? tin?.full)?.at_C),
    firstDay: text(tin?.firstDay_mm),
    minimum: text(tin?.minimum_C),
    humidity: text(tin?.humidity_max_pct),
    pot: text(tin?.potLife?.minutes),
    potAt: text(tin?.potLife?.at_C),
    potOf: text(tin?.potLife?.of_g),
    resin: text(parts?.resin),
    hardener: text(parts?.hardener),
    by: parts?.by ?? '',
    catalystLow: text(catalyst?.low_pct),
    catalystHigh: text(catalyst?.high_pct),
    pair: text(tin?.strokePair_g),
    spread: text(tin?.spread_m2_l),
    note: tin?.note ?? '',
  };
}

/** The kinds of product a tin can be of; full strength is on the epoxy's own tin. */
export const tinFamilies = cureLaws.filter(
  ({ id, law }) => id !== 'epoxy-full-strength' && law.kind !== 'never cures' && law.kind !== 'set time',
);

/** Which of the fields a kind of product has. */
export function fieldsOf(family: string) {
  const product = tinFamilies.find(({ id }) => id === family);
  if (!product) return null;
  const stage = cureStage(family);
  const catalysed = family === 'polyester-resin' || family === 'gelcoat';
  return {
    coat: stage === 'next coat',
    worked: stage === 'worked',
    full: stage !== 'first day',
    firstDay: stage === 'first day',
    humidity: product.law.kind === 'dries',
    mixed: potLives[family] !== undefined,
    catalysed,
    parts: potLives[family] !== undefined && !catalysed && family !== 'polyester-filler',
    pumps: family.startsWith('epoxy-') && family !== 'epoxy-primer',
  };
}

/** The record, with null for all that was left empty or that this kind of product does not have. */
export function readTin(draft: TinDraft, form: FormReading<TinName>): TinRecord {
  const has = fieldsOf(draft.family);
  const family = form.chosen('family', has ? draft.family : '', 'Choose what kind of product it is.');
  const given = (field: TinName, value: string, min: number, max: number, unit: string, wanted = true) =>
    wanted ? form.figureOrNone(field, value, { min, max, unit }) : null;
  const next = given('next', draft.next, 0.1, 8760, 'h', has?.coat);
  const worked = given('worked', draft.worked, 0.1, 8760, 'h', has?.worked);
  const full = given('full', draft.full, 0.1, 8760, 'h', has?.full);
  const timed = next !== null || worked !== null || full !== null;
  const at_C = timed ? form.figure('at', draft.at, { min: -20, max: 60, unit: '°C' }) : 0;
  const time = (hours: number | null) => (hours === null ? null : { hours, at_C });
  const pot = given('pot', draft.pot, 0.5, 10_080, 'min', has?.mixed);
  const potAt = pot === null ? 0 : form.figure('potAt', draft.potAt, { min: -20, max: 60, unit: '°C' });
  const resin = given('resin', draft.resin, 0.01, 1000, 'parts', has?.parts);
  const low = given('catalystLow', draft.catalystLow, 0.1, 10, '%', has?.catalysed);
  const high = given('catalystHigh', draft.catalystHigh, 0.1, 10, '%', has?.catalysed);
  const parts = { min: 0.01, max: 1000, unit: 'parts' };
  return {
    name: form.words('name', draft.name, 'Name it as it stands on the tin, or as you call it.'),
    family,
    store: draft.store === 'none' ? null : draft.store,
    readOn: form.day('readOn', draft.readOn),
    nextCoat: time(next),
    latestCoat_h: given('latest', draft.latest, 0.1, 8760, 'h', has?.coat),
    worked: time(worked),
    full: time(full),
    firstDay_mm: given('firstDay', draft.firstDay, 0.1, 20, 'mm', has?.firstDay),
    minimum_C: given('minimum', draft.minimum, -20, 40, '°C'),
    humidity_max_pct: given('humidity', draft.humidity, 5, 100, '%', has?.humidity),
    potLife:
      pot === null
        ? null
        : {
            minutes: pot,
            at_C: potAt,
            of_g: form.figureOrNone('potOf', draft.potOf, { min: 1, max: 100_000, unit: 'g' }),
          },
    ratio:
      resin !== null
        ? {
            kind: 'parts',
            by: form.chosen('by', draft.by, 'Say whether the parts are by weight or by volume.'),
            resin,
            hardener: form.figure('hardener', draft.hardener, parts),
          }
        : low !== null || high !== null
          ? { kind: 'catalyst', low_pct: (low ?? high)!, high_pct: (high ?? low)! }
          : null,
    spread_m2_l: given('spread', draft.spread, 0.1, 100, 'm²/l', has?.coat),
    strokePair_g: given('pair', draft.pair, 0.1, 1000, 'g', has?.pumps),
    note: draft.note.trim(),
  };
}
