/** What falls due of a boat book: each due's rule with the uses, outings and measures that bear on it. */
import type { Book, DueRecord, Id, Outing } from '#boat-book';
import { type DueStage, dueStage, type FallsDue, fallsDue, type UseAhead } from '#dues';
import { type Recipe, recipes } from '#jobs';
import { addDays } from '#units';
import { storeFor } from './recipe-stores.ts';

/** Days to find the hours for a job once it is known: our judgement, two weekends. [d] */
export const assumedToPlan_d = 14;
/** Days to get a thing whose own are not known: our judgement. [d] */
export const assumedToGet_d = 7;

export interface DueOfBook {
  readonly id: Id;
  /** the paper it is: its date stands there, and a newer one renews it; null: a due the keeper put in */
  readonly paper: Id | null;
  readonly due: DueRecord;
  readonly falls: FallsDue;
  readonly stage: DueStage;
  /** when it was last done, and what says so; null: not known */
  readonly since: { readonly on: string; readonly by: 'job' | 'keeper' } | null;
  /** days it takes to plan it and to get what it needs */
  readonly lead_d: number;
  /** what takes the longest to get, and its days; null: all is on hand, or nothing is asked */
  readonly waitsFor: { readonly name: string; readonly days: number; readonly known: boolean } | null;
  /** the open job of it */
  readonly job: Id | null;
}

/** what of the book the dues are reckoned from: no function below is given more */
const parts = ['dues', 'dueMeasures', 'uses', 'outings', 'jobs', 'recipes', 'stores'] as const;
type Parts = Pick<Book, (typeof parts)[number]>;

interface Known {
  readonly today: string;
  /** the parts as they then were, in their order */
  readonly from: readonly unknown[];
  readonly dues: readonly DueOfBook[];
}

/** when each falls due, and what it waits for, is much to reckon: one screen asks for it many times, and after each tick */
const known = new WeakMap<Book['dues'], Known>();

/**
 * Every due the keeper put in (papers: `duesAndPapers`), the first to fall due first; those that say no day last, by name.
 * The same list while the day and what it is reckoned from stay the same.
 */
export function duesOfBook(book: Parts, today: string): readonly DueOfBook[] {
  const before = known.get(book.dues);
  if (before?.today === today && parts.every((part, i) => before.from[i] === book[part])) return before.dues;
  const dues = duesReckoned(book, today);
  known.set(book.dues, { today, from: parts.map((part) => book[part]), dues });
  return dues;
}

function duesReckoned(book: Parts, today: string): readonly DueOfBook[] {
  const ahead = usesAhead(book, today);
  const uses = Object.values(book.uses);
  return Object.entries(book.dues)
    .map(([id, due]): DueOfBook => {
      const since = lastDoneOf(book, id, due);
      const falls = fallsDue({
        rule: due,
        since: since?.on ?? null,
        today,
        uses,
        ahead,
        measured: Object.values(book.dueMeasures).filter((measure) => measure.due === id),
      });
      const waitsFor = longestToGet(book, due);
      const lead_d = assumedToPlan_d + (waitsFor?.days ?? 0);
      const job = Object.entries(book.jobs).find(([, { fromDue, state }]) => fromDue === id && state === 'open');
      return {
        id,
        paper: null,
        due,
        falls,
        stage: dueStage(falls, today, lead_d),
        since,
        lead_d,
        waitsFor,
        job: job?.[0] ?? null,
      };
    })
    .sort(
      (a, b) =>
        (a.falls.day?.likely ?? '9').localeCompare(b.falls.day?.likely ?? '9') ||
        a.due.title.localeCompare(b.due.title),
    );
}

/** The recipe that answers a due: the keeper's own before the house's; null where there is none. */
export function recipeOfDue(book: Pick<Book, 'recipes'>, { recipe }: DueRecord): Recipe | null {
  if (recipe === null) return null;
  const house: Readonly<Record<string, Recipe>> = recipes;
  return book.recipes[recipe] ?? (Object.hasOwn(house, recipe) ? house[recipe]! : null);
}

/** The later of what the keeper says and what a job of it that was done says. */
function lastDoneOf(book: Pick<Book, 'jobs'>, id: Id, { lastDone }: DueRecord): DueOfBook['since'] {
  const byJob = Object.values(book.jobs)
    .flatMap((job) => (job.fromDue === id && job.state === 'done' && job.closed !== null ? [job.closed] : []))
    .sort()
    .at(-1);
  if (byJob !== undefined && (lastDone === null || byJob >= lastDone)) return { on: byJob, by: 'job' };
  return lastDone === null ? null : { on: lastDone, by: 'keeper' };
}

/** What the outings ahead are sure to bring: one sail each, and its nights. Tows and launches are not known of them. */
function usesAhead(book: Pick<Book, 'outings'>, today: string): UseAhead[] {
  return Object.values(book.outings)
    .filter(({ date }) => date >= today)
    .flatMap(({ date, nights }): UseAhead[] => [
      { on: date, use: 'sail', count: 1 },
      ...(nights > 0 ? [{ on: date, use: 'night', count: nights } as const] : []),
    ]);
}

function longestToGet(book: Pick<Book, 'recipes' | 'stores'>, due: DueRecord): DueOfBook['waitsFor'] {
  const recipe = recipeOfDue(book, due);
  if (recipe === null) return null;
  const asked = [...recipe.steps, recipe.proof.step].flatMap(({ stores }) => stores);
  return asked.reduce<DueOfBook['waitsFor']>((longest, thing) => {
    // how much of it is not asked, and no size is measured yet
    const { name } = thing;
    const store = storeFor(book, thing, name);
    const kept = store === null ? null : book.stores[store];
    if (kept?.onHand) return longest;
    const days = kept?.lead_days ?? assumedToGet_d;
    return longest === null || days > longest.days
      ? { name, days, known: kept?.lead_days !== null && kept?.lead_days !== undefined }
      : longest;
  }, null);
}

/** What of the dues bears on an outing, to its last morning: due by then, may be, or not known. */
export function dueBefore(
  dues: readonly DueOfBook[],
  { date, nights }: Outing,
): Readonly<Record<'due' | 'mayBe' | 'unknown', readonly DueOfBook[]>> {
  const over = addDays(date, nights);
  // a date printed on the thing is its last good day: on that very day it is not yet due
  const by = (day: string, printed: boolean) => (printed ? day < over : day <= over);
  const due = dues.filter(({ falls }) => falls.day && by(falls.day.likely, falls.first?.kind === 'printed'));
  return {
    due,
    mayBe: dues.filter(
      (each) =>
        !due.includes(each) &&
        each.falls.day !== null &&
        each.falls.day.low <= over &&
        each.falls.first?.kind !== 'printed',
    ),
    unknown: dues.filter(({ falls }) => falls.day === null),
  };
}
