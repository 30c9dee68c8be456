/** How an operation writes in the log. */
import type { Edit } from './edit.ts';
import type { LogEntry } from './log-records.ts';
import type { At, Id } from './records.ts';

/** What must be said of an entry; the rest is filled in or left out. */
export type NewLogEntry = Pick<LogEntry, 'kind' | 'text'> & Partial<Omit<LogEntry, 'kind' | 'text' | 'order'>>;

/**
 * Writes an entry in the log as part of an operation, and returns its id. Operations write the log, screens do not:
 *
 *   logged(edit, { kind: 'bedded', fitting: id, text: 'Stem fitting bedded with butyl tape', with: [{ name: 'butyl tape' }] });
 *
 * `at` is now unless given. Of a job that is named, zone and fitting are taken where the entry does not say them; of a
 * fitting alone, its zone. Undo of the operation needs nothing more: it writes an entry that takes this one back.
 * `text` is a whole sentence or title by itself, with the names things then had: it must read right when they are gone.
 */
export function logged(edit: Edit, { kind, text, ...said }: NewLogEntry): Id {
  const job = said.job == null ? null : edit.find('jobs', said.job);
  const fitting = said.fitting ?? job?.fitting ?? null;
  const zone = said.zone ?? job?.zone ?? (fitting === null ? null : (edit.find('fittings', fitting)?.zone ?? null));
  return edit.fix('log', {
    at: edit.now,
    kind,
    job: null,
    step: null,
    who: '',
    spent_min: null,
    text,
    ...said,
    zone,
    ...(fitting === null ? {} : { fitting }),
  });
}

/** The latest standing entry that `matches`, as what a new entry `corrects`; none: nothing. */
export function correcting(edit: Edit, matches: (entry: LogEntry) => boolean): { readonly corrects?: Id } {
  let latest: Id | null = null;
  const log = [...edit.all('log')].sort(([, a], [, b]) => (a.order ?? 0) - (b.order ?? 0));
  for (const [id, entry] of standingLog(Object.fromEntries(log))) if (matches(entry)) latest = id;
  return latest === null ? {} : { corrects: latest };
}

/** The entry that takes another back, when the operation that wrote it is undone: what it cost and used counts no more. */
export function takenBack(id: Id, { job, step, zone, who, fitting, of, text }: LogEntry, now: At): LogEntry {
  return {
    at: now,
    kind: 'taken back',
    job,
    step,
    zone,
    who,
    spent_min: null,
    text: `Taken back: ${text}`,
    ...(fitting === undefined ? {} : { fitting }),
    ...(of === undefined ? {} : { of }),
    corrects: id,
  };
}

/**
 * The entries that stand, in their order: less those that another standing entry puts right or takes back, and less
 * those that only take back. Where what took an entry back was itself taken back, the entry stands again. Sums of money
 * and minutes are made of these.
 * @param log  as it stands in a book, in the order it was known in: an entry comes after what it corrects
 */
export function standingLog(log: Readonly<Record<Id, LogEntry>>): ReadonlyMap<Id, LogEntry> {
  const known = standingOf.get(log);
  if (known !== undefined) return known;
  const struck = new Set<Id>();
  const standing: [Id, LogEntry][] = [];
  for (const [id, entry] of Object.entries(log).reverse()) {
    if (struck.has(id)) continue;
    if (entry.corrects !== undefined) struck.add(entry.corrects);
    if (entry.kind !== 'taken back') standing.push([id, entry]);
  }
  const found = new Map(standing.reverse());
  standingOf.set(log, found);
  return found;
}

/** What a job was last proved by, as it stands in the log; null: no proof of it stands. */
export function proofOf(log: Readonly<Record<Id, LogEntry>>, job: Id): string | null {
  const proved = [...standingLog(log).values()].findLast((entry) => entry.job === job && entry.kind === 'proved');
  return proved?.text ?? null;
}

/** a log never changes under one who looks at it, and several look at the same one */
const standingOf = new WeakMap<object, ReadonlyMap<Id, LogEntry>>();
