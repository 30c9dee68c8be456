/**
 * A record without what it names that is not there. A merge cannot bring such a thing about (what was taken out and
 * is named comes back), but a damaged store or a file written by hand can; screens and the planner then still get a
 * book in which everything named is there, and the keeper is told what was left aside.
 */
import type { CollectionName, Json } from './operation-fields.ts';
import type { Reference } from './references.ts';
import { recordSchemas } from './schemas.ts';

type Path = Reference['path'];

/** `record` without the `missing` things it names; null where it means nothing without them. */
export function soundRecord(collection: CollectionName, record: Json, missing: readonly Reference[]): Json | null {
  let now: Json | null = record;
  // later places in a list first, so that the earlier ones stay where they are
  const paths = missing.map((one) => (one.within === undefined ? one.path : partPath(one))).sort(byPlaceDown);
  for (const path of paths) if (now !== null) now = withoutPlace(collection, now, path);
  return now;
}

/** A follow of a wait that is gone still follows its step; anything else goes with what it names. */
const partPath = ({ path, collection }: Reference): Path => (collection === 'steps' ? [...path, 'wait'] : path);

function byPlaceDown(a: Path, b: Path): number {
  for (let i = 0; i < Math.max(a.length, b.length); i++) {
    const [one, other] = [a[i], b[i]];
    if (one === other) continue;
    if (typeof one === 'number' && typeof other === 'number') return other - one;
    return String(one) < String(other) ? -1 : 1;
  }
  return 0;
}

function withoutPlace(collection: CollectionName, record: Json, path: Path): Json | null {
  const [field] = path;
  const last = path.findLastIndex((part) => typeof part === 'number');
  if (path.at(-1) === 'wait') return changedAt(record, path, () => null);
  if (last >= 0) {
    return changedAt(record, path.slice(0, last), (list) =>
      Array.isArray(list) ? list.filter((_, i) => i !== path[last]) : list,
    );
  }
  const shape = recordSchemas[collection].shape as Readonly<
    Record<string, { safeParse(v: unknown): { success: boolean } }>
  >;
  return shape[String(field)]?.safeParse(null).success ? changedAt(record, path, () => null) : null;
}

function changedAt(value: Json, path: Path, change: (part: Json) => Json): Json {
  const [first, ...rest] = path;
  if (first === undefined) return change(value);
  if (Array.isArray(value)) return value.map((part: Json, i) => (i === first ? changedAt(part, rest, change) : part));
  const fields = value as { readonly [key: string]: Json };
  const part = fields[first];
  return part === undefined ? value : { ...fields, [first]: changedAt(part, rest, change) };
}
