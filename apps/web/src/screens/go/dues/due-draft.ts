/** A due as it is typed, and read. */
import type { DueRecord } from '#boat-book';
import { type IntervalUnit, type UseKind, useKinds, usualOf, usualRule } from '#dues';
import type { FormReading } from '../../../parts/read-form.ts';

export type DueFault =
  | 'title'
  | 'consequence'
  | 'every'
  | 'printed'
  | 'season'
  | 'lastDone'
  | 'limit'
  | 'within'
  | `use-${UseKind}`;

export const useKindNames = Object.keys(useKinds) as UseKind[];

export function dueDraft(due: DueRecord | null) {
  return {
    title: due?.title ?? '',
    consequence: due?.consequence ?? ('' as const),
    zone: due?.zone ?? '',
    usual: due?.usual ?? '',
    recipe: due?.recipe ?? '',
    every: due?.every?.count.toString() ?? '',
    unit: due?.every?.unit ?? ('months' as IntervalUnit),
    printed: due?.printed ?? '',
    season: due?.season ?? '',
    uses: Object.fromEntries(
      useKindNames.map((kind) => [kind, due?.uses.find(({ use }) => use === kind)?.count.toString() ?? '']),
    ) as Readonly<Record<UseKind, string>>,
    measure: due?.condition?.measure ?? '',
    measureUnit: due?.condition?.unit ?? '',
    limit: due?.condition?.limit.toString() ?? '',
    way: due?.condition?.way ?? ('falls' as const),
    within: due?.condition?.within.toString() ?? '',
    lastDone: due?.lastDone ?? '',
    source: due?.source ?? '',
    note: due?.note ?? '',
  };
}
export type DueDraft = ReturnType<typeof dueDraft>;

/** What is usual, put in the fields that are still empty. */
export function withUsual(draft: DueDraft, id: string): DueDraft {
  const usual = usualOf(id);
  if (usual === null) return { ...draft, usual: id };
  const rule = usualRule(usual);
  return {
    ...draft,
    usual: id,
    title: draft.title === '' ? usual.title.charAt(0).toUpperCase() + usual.title.slice(1) : draft.title,
    recipe: draft.recipe === '' ? (usual.recipe ?? '') : draft.recipe,
    source: draft.source === '' ? usual.source : draft.source,
    ...(rule === null || draft.every !== '' ? {} : { every: String(rule.every.count), unit: rule.every.unit }),
    uses: {
      ...draft.uses,
      ...Object.fromEntries(
        (rule?.uses ?? []).filter(({ use }) => draft.uses[use] === '').map(({ use, count }) => [use, String(count)]),
      ),
    },
  };
}

/** The due as typed; what cannot be read is refused in the form. */
export function dueOf(draft: DueDraft, before: DueRecord | null, form: FormReading<DueFault>): DueRecord {
  const count = form.figureOrNone('every', draft.every, { min: 1, max: 1000, unit: draft.unit, whole: true });
  const season = draft.season.trim();
  if (season !== '' && !/^\d\d-\d\d$/.test(season))
    form.refuse('season', `‘${season}’ is not a day of the year. Give month and day, such as 04-15.`);
  const uses = useKindNames.flatMap((use) => {
    const each = form.figureOrNone(`use-${use}`, draft.uses[use], {
      min: 0.1,
      max: 100_000,
      unit: useKinds[use].unit || useKinds[use].title,
    });
    return each === null ? [] : [{ use, count: each }];
  });
  const condition =
    draft.measure.trim() === ''
      ? null
      : {
          measure: draft.measure.trim(),
          unit: draft.measureUnit.trim(),
          limit: form.figure('limit', draft.limit, { min: -100_000, max: 100_000, unit: draft.measureUnit }),
          way: draft.way,
          within: form.figure('within', draft.within, { min: 0, max: 10_000, unit: draft.measureUnit }),
        };
  return {
    title: form.words('title', draft.title, 'Say what comes round, such as: grease the wheel bearings.'),
    consequence: form.chosen('consequence', draft.consequence, 'Choose what happens if it is left.'),
    zone: draft.zone === '' ? null : draft.zone,
    fitting: before?.fitting ?? null,
    printed: form.dayOrNone('printed', draft.printed),
    every: count === null ? null : { count, unit: draft.unit },
    season: season === '' ? null : season,
    uses,
    condition,
    usual: draft.usual === '' ? null : draft.usual,
    recipe: draft.recipe === '' ? null : draft.recipe,
    source: draft.source.trim(),
    lastDone: form.dayOrNone('lastDone', draft.lastDone),
    note: draft.note.trim(),
  };
}
