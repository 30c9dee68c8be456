/** What the book shows of one record, from all that stands in the documents about it. */
import { withAddedFields } from './added-fields.ts';
import { canonicalJson } from './canonical.ts';
import { quietFields } from './collections.ts';
import type { Kept } from './documents.ts';
import type { CollectionName, Json, OpenQuestion } from './operation-fields.ts';
import { faultsOf } from './plain-words.ts';
import type { Id } from './records.ts';
import { recordSchemas } from './schemas.ts';

export interface ShownRecord {
  /** null: there is none, or it was taken out */
  readonly record: Json | null;
  /** it was taken out on one device and changed on another that did not know */
  readonly cameBack: boolean;
  /** as it stood when it was taken out; null: it never was, or is back */
  readonly takenOut: Json | null;
  readonly questions: readonly OpenQuestion[];
  /** in plain words, what could not be read and was left aside */
  readonly faults: readonly string[];
}

const nothing: ShownRecord = { record: null, cameBack: false, takenOut: null, questions: [], faults: [] };

type Fields = Readonly<Record<string, Json>>;
const fieldsOf = (value: Json | undefined): Fields | null =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : null;

const progressRank: Readonly<Record<string, number>> = { done: 0, 'under way': 1, open: 2 };
const stateRank: Readonly<Record<string, number>> = { done: 0, dropped: 1, open: 2, removed: 0, standing: 1 };

/**
 * The answers in the order they are shown, the same on every device. First is what the book goes by until the keeper
 * chooses: what was done rather than what was not, a date rather than none, of two dates the earlier, of two lead
 * times the longer, of two amounts the smaller, so that nobody counts on what was used, and of two limits the lower.
 */
export function inOrder(field: string, answers: readonly Json[]): readonly Json[] {
  const rank = (answer: Json): number => {
    if (field === 'progress') return progressRank[String(fieldsOf(answer)?.kind)] ?? 9;
    if (field === 'state') return stateRank[String(answer)] ?? 9;
    return answer === null ? 1 : 0;
  };
  return [...answers]
    .map((answer) => ({ answer, rank: rank(answer), text: canonicalJson(answer) }))
    .sort(
      (a, b) =>
        a.rank - b.rank || longerFirst(field, a.answer, b.answer) || (a.text < b.text ? -1 : a.text > b.text ? 1 : 0),
    )
    .map(({ answer }) => answer);
}

/** Of two amounts, and of two limits of a trailer’s papers, the smaller counts until the keeper chooses. */
const smallerFirst: ReadonlySet<string> = new Set([
  'amount',
  'carBall_kg',
  'barBall_kg',
  'couplingBall_kg',
  'gross_kg',
  'axle_kg',
  'train_kg',
  'carKerb_kg',
  'post_N',
]);

const longerFirst = (field: string, a: Json, b: Json): number => {
  if (typeof a !== 'number' || typeof b !== 'number') return 0;
  return field === 'lead_days' ? b - a : smallerFirst.has(field) ? a - b : 0;
};

/** The different answers that stand for a field, in order; those that the schema does not take are left aside. */
export function answersTo(kept: Kept, field: string): readonly Json[] {
  const different = new Map<string, Json>();
  for (const answers of kept.answers.get(field)?.values() ?? []) {
    for (const answer of answers) different.set(canonicalJson(answer), answer);
  }
  return inOrder(field, [...different.values()]);
}

/** The record as it stands with every answer given since, or null where nothing stands to begin from. */
export function shownRecord(collection: CollectionName, id: Id, kept: Kept | undefined): ShownRecord {
  if (kept === undefined) return nothing;
  const snapshots = [...kept.removals].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, snapshot]) => snapshot);
  const start = fieldsOf(kept.base ?? snapshots[0]);
  if (start === null) {
    return kept.base === undefined && snapshots.length === 0
      ? {
          ...nothing,
          faults: kept.answers.size > 0 ? [`${collection} › ${id}: changes to a record that is not there`] : [],
        }
      : { ...nothing, faults: [`${collection} › ${id}: not a record`] };
  }
  const live = kept.base !== undefined || kept.answers.size > 0;
  const whole = withAddedFields(collection, start);
  // a book holds thousands of records that nothing was answered for since: they are not copied
  const record: Record<string, Json> = kept.answers.size === 0 ? (whole as Record<string, Json>) : { ...whole };
  const questions: OpenQuestion[] = [];
  const faults: string[] = [];
  const shape = recordSchemas[collection].shape as Readonly<
    Record<string, { safeParse(v: unknown): { success: boolean } }>
  >;
  for (const field of kept.answers.keys()) {
    const form = Object.hasOwn(shape, field) ? shape[field] : undefined;
    const answers = answersTo(kept, field).filter((answer) => form?.safeParse(answer).success === true);
    if (answers.length === 0) {
      faults.push(`${collection} › ${id} › ${field}: what stands there cannot be read; the value before it is shown`);
      continue;
    }
    record[field] = answers[0]!;
    if (answers.length > 1 && !quietFields[collection]?.includes(field)) {
      questions.push({ collection, id, field, answers });
    }
  }
  if (!live) return { ...nothing, takenOut: record, faults };
  const read = recordSchemas[collection].safeParse(record);
  if (!read.success) {
    const [fault] = faultsOf(read.error.issues, record, `${collection} › ${id}`);
    return { ...nothing, faults: [...faults, `${fault?.where}: ${fault?.wrong}; right would be ${fault?.right}`] };
  }
  const cameBack = snapshots.length > 0;
  if (cameBack) questions.push({ collection, id, field: 'removed', answers: ['keep', 'remove'] });
  return { record, cameBack, takenOut: null, questions, faults };
}
