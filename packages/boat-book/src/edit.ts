/**
 * What an operation writes with. An operation first says all that it would change; only when every record is sound
 * and names nothing that is not there are the changes made, all of them. A refusal changes nothing.
 */
import { instantAt, localAt } from '#units';
import { contentId } from './canonical.ts';
import { collections, type RecordOf } from './collections.ts';
import type { CollectionName, Json, Refusal } from './operation-fields.ts';
import { asGiven, faultsOf } from './plain-words.ts';
import type { At, Day, Id } from './records.ts';
import { referencesOf } from './references.ts';
import { recordSchemas } from './schemas.ts';

/** The records as they stand, read one at a time. */
export interface Records {
  record<C extends CollectionName>(collection: C, id: Id): RecordOf<C> | null;
  all<C extends CollectionName>(collection: C): Iterable<[Id, RecordOf<C>]>;
  /** the highest order of the fixed records of a collection; 0 where there are none */
  lastOrder(collection: CollectionName): number;
  /** the answers between which the keeper has to choose; none where there is no question */
  answersTo(collection: CollectionName, id: Id, field: string): readonly Json[];
}

/** A change that can be made, and turned round. */
export type RecordChange =
  | { readonly kind: 'put'; readonly collection: CollectionName; readonly id: Id; readonly record: Json }
  | { readonly kind: 'remove'; readonly collection: CollectionName; readonly id: Id; readonly record: Json }
  | {
      readonly kind: 'answer';
      readonly collection: CollectionName;
      readonly id: Id;
      readonly field: string;
      readonly answers: readonly Json[];
    }
  | { readonly kind: 'settle removal'; readonly collection: CollectionName; readonly id: Id; readonly record: Json };

/** Thrown by an operation to refuse; it never leaves `run`. */
export class RefusedEdit extends Error {
  readonly refusal: Refusal;
  constructor(refusal: Refusal) {
    super(`${refusal.where}: ${refusal.wrong}`);
    this.refusal = refusal;
  }
}

export function refuse(where: string, wrong: string, right: string): never {
  throw new RefusedEdit({ where, wrong, right });
}

/** Collections of records that never change. */
type FixedName =
  | 'weather'
  | 'forecasts'
  | 'readings'
  | 'readingBlocks'
  | 'nightsAhead'
  | 'hoistForces'
  | 'ballWeighings'
  | 'uses'
  | 'dueMeasures'
  | 'seasonTicks'
  | 'morningTicks'
  | 'rigTrusts'
  | 'stayReadings'
  | 'photos'
  | 'plans'
  | 'log';

export interface EditClock {
  newId(): Id;
  readonly now: At;
  /** IANA zone the boat lives in: what day it is, and when that day's noon */
  readonly zone: string;
}

export class Edit {
  readonly now: At;
  readonly today: Day;
  readonly changes: RecordChange[] = [];
  readonly #before: Records;
  readonly #clock: EditClock;
  /** records as they stand with the changes so far; null: taken out */
  readonly #after = new Map<CollectionName, Map<Id, Json | null>>();
  readonly #orders = new Map<CollectionName, number>();

  constructor(before: Records, clock: EditClock) {
    this.#before = before;
    this.#clock = clock;
    this.now = clock.now;
    this.today = localAt(Date.parse(clock.now), clock.zone).day;
  }

  /** The moment kept for what was done on a day: now where that is today, else the middle of that day where she lives. */
  momentOn(day: Day): At {
    if (day === this.today) return this.now;
    return new Date(instantAt(day, '12:00', this.#clock.zone)).toISOString().replace('.000Z', 'Z');
  }

  find<C extends CollectionName>(collection: C, id: Id): RecordOf<C> | null {
    const changed = this.#after.get(collection)?.get(id);
    return changed === undefined ? this.#before.record(collection, id) : (changed as RecordOf<C> | null);
  }

  /** The record, or a refusal that says it is not there. */
  need<C extends CollectionName>(collection: C, id: Id, where: string): RecordOf<C> {
    const found = this.find(collection, id);
    const { word } = collections[collection];
    return (
      found ?? refuse(where, `there is no ${word} ${asGiven(id)} in this book`, `the id of a ${word} that is there`)
    );
  }

  *all<C extends CollectionName>(collection: C): Iterable<[Id, RecordOf<C>]> {
    const changed = this.#after.get(collection);
    for (const [id, record] of this.#before.all(collection)) if (!changed?.has(id)) yield [id, record];
    for (const [id, record] of changed ?? []) if (record !== null) yield [id, record as RecordOf<C>];
  }

  /** Puts a new record in, under `id` where the caller brought one. Returns its id. */
  put<C extends CollectionName>(collection: C, record: RecordOf<C>, id?: Id): Id {
    const made = id ?? this.#clock.newId();
    if (this.find(collection, made) !== null) {
      refuse('id', `there is a ${collections[collection].word} ${asGiven(made)} already`, 'an id that is not in use');
    }
    this.#keep(collection, made, record as unknown as Json);
    this.changes.push({ kind: 'put', collection, id: made, record: record as unknown as Json });
    return made;
  }

  /** Changes some fields of a record; fields that stay as they are write nothing. */
  set<C extends CollectionName>(collection: C, id: Id, fields: Partial<RecordOf<C>>): void {
    const record = this.need(collection, id, 'id') as unknown as Readonly<Record<string, Json>>;
    const next = { ...record };
    for (const [field, value] of Object.entries(fields as Readonly<Record<string, Json | undefined>>)) {
      if (value === undefined) continue;
      next[field] = value;
      this.changes.push({ kind: 'answer', collection, id, field, answers: [value] });
    }
    this.#keep(collection, id, next);
  }

  /** Takes a record out, unless another names it. */
  remove(collection: CollectionName, id: Id): void {
    const record = this.need(collection, id, 'id');
    const users = this.usersOf(collection, id);
    if (users.length > 0) {
      const { word } = collections[collection];
      refuse(
        'id',
        `this ${word} is still named by ${users.slice(0, 3).join(', ')}${users.length > 3 ? ` and ${users.length - 3} more` : ''}`,
        `take it out of ${users.length === 1 ? 'that' : 'those'} first`,
      );
    }
    this.#keep(collection, id, null);
    this.changes.push({ kind: 'remove', collection, id, record: record as unknown as Json });
  }

  /** Keeps a record that never changes, under the hash of its content. The same content twice is one record. */
  fix<C extends FixedName>(collection: C, record: Omit<RecordOf<C>, 'order'>): Id {
    const order = (this.#orders.get(collection) ?? this.#before.lastOrder(collection)) + 1;
    this.#orders.set(collection, order);
    const kept = { ...record, order } as unknown as Json;
    const id = contentId(kept);
    this.#keep(collection, id, kept);
    this.changes.push({ kind: 'put', collection, id, record: kept });
    return id;
  }

  /** Takes a fixed record out. */
  unfix(collection: Exclude<FixedName, 'log'>, id: Id): void {
    const record = this.need(collection, id, 'id') as unknown as Json;
    this.#keep(collection, id, null);
    this.changes.push({ kind: 'remove', collection, id, record });
  }

  answersTo(collection: CollectionName, id: Id, field: string): readonly Json[] {
    return this.#before.answersTo(collection, id, field);
  }

  /** Settles a field by one of its answers, also where that is what the book already goes by. */
  settle(collection: CollectionName, id: Id, field: string, answer: Json): void {
    const record = this.need(collection, id, 'id') as unknown as Readonly<Record<string, Json>>;
    this.#keep(collection, id, { ...record, [field]: answer });
    this.changes.push({ kind: 'answer', collection, id, field, answers: [answer] });
  }

  /** Settles that a record which came back is to stay. */
  settleRemoval(collection: CollectionName, id: Id): void {
    const record = this.need(collection, id, 'id') as unknown as Json;
    this.changes.push({ kind: 'settle removal', collection, id, record });
  }

  /** What names a record, in words for a sentence: `the step ‘Bed the plate’`. */
  usersOf(collection: CollectionName, id: Id): string[] {
    const users: string[] = [];
    for (const by of Object.keys(collections) as CollectionName[]) {
      if (collections[by].kept === 'fixed') continue;
      for (const [userId, record] of this.all(by)) {
        if (by === collection && userId === id) continue;
        if (referencesOf(by, record as never).some((ref) => ref.collection === collection && ref.id === id)) {
          users.push(`the ${collections[by].word} ${nameOf(record)}`);
        }
      }
    }
    return users;
  }

  #keep(collection: CollectionName, id: Id, record: Json | null): void {
    const records = this.#after.get(collection) ?? new Map<Id, Json | null>();
    this.#after.set(collection, records.set(id, record));
  }

  /** Refuses unless every record changed is sound and names only what is there. */
  check(): void {
    for (const [collection, records] of this.#after) {
      for (const [id, record] of records) {
        if (record === null) continue;
        const read = recordSchemas[collection].safeParse(record);
        if (!read.success) {
          const [fault] = faultsOf(read.error.issues, record);
          throw new RefusedEdit(fault ?? { where: id, wrong: 'it does not do', right: 'a sound record' });
        }
        for (const { path, collection: named, id: namedId, within } of referencesOf(collection, record as never)) {
          const where = path.map((part) => (typeof part === 'number' ? `${part + 1}.` : part)).join(' › ');
          const target = this.need(named, namedId, where);
          if (within !== undefined && !partsWithin(target).includes(within)) {
            const word = named === 'setUps' ? 'state' : 'wait';
            refuse(where, `${nameOf(target)} has no ${word} ${asGiven(within)}`, `one of its ${word}s`);
          }
        }
      }
    }
  }
}

/** The ids of the states of a set-up, or of the waits of a step. */
export function partsWithin(record: unknown): readonly Id[] {
  const { states, waits } = record as { states?: readonly { id: Id }[]; waits?: readonly { id: Id }[] };
  return (states ?? waits ?? []).map(({ id }) => id);
}

export function nameOf(record: unknown): string {
  const { title, name, date } = record as { title?: string; name?: string; date?: string };
  return asGiven(title ?? name ?? date ?? '');
}
