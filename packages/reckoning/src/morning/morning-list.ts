/** A morning list of one boat and outing, as it stands: its lines in the order that works, what is ticked, what was changed. */
import type { Book, Id, MorningLineRecord, MorningTick, Outing } from '#boat-book';
import {
  checkedOrder,
  houseLines,
  type LineFailing,
  linesFor,
  type MorningListName,
  type OrderRule,
  rulesOf,
} from '#morning';
import { cautionsOn, lackingOf, namedOn, traitsOf } from './boat-traits.ts';
import { type BookLine, linesOfBook, rulesOfBook } from './lines-of-book.ts';

/** lines of the house stand so far apart, so that others find room between them */
const apart = 10;

export interface MorningItem {
  readonly id: string;
  readonly text: string;
  /** what this boat has of it, in her own names; empty: nothing is named */
  readonly about: string;
  readonly cautions: readonly string[];
  readonly from: string;
  readonly fails: LineFailing;
  readonly juryRig: boolean;
  readonly due: Id | null;
  /** a line of the keeper's own */
  readonly own: boolean;
  /** words or place are the keeper's */
  readonly changed: boolean;
  /** its words are the keeper's, in place of the house's */
  readonly reworded: boolean;
  readonly place: number;
  /** its place was set for this outing alone */
  readonly placedHere: boolean;
  /** the usual rules set aside for it */
  readonly setAside: MorningLineRecord['setAside'];
  readonly tick: (Pick<MorningTick, 'at' | 'came' | 'job'> & { readonly id: Id }) | null;
}

/** A usual rule that the keeper set aside, told with the list. */
export interface SetAside {
  readonly before: string;
  readonly after: string;
  readonly because: string;
  readonly reason: string;
}

export interface MorningListTold {
  readonly list: MorningListName;
  readonly items: readonly MorningItem[];
  /** taken out by the keeper: of this outing, or of all (null) */
  readonly out: readonly { readonly id: string; readonly text: string; readonly outing: Id | null }[];
  /** the rules that hold here, less those that are set aside */
  readonly rules: readonly OrderRule[];
  readonly setAside: readonly SetAside[];
  /** what her book does not have, so that no line asks for it */
  readonly lacking: readonly string[];
  /** which time it is gone through, from 1 */
  readonly round: number;
  /** when it was last done; null: not yet */
  readonly lastDone: string | null;
}

/** The lists that an outing has: by road alone nothing is rigged or launched. */
export const listsOf = ({ way }: Outing): readonly MorningListName[] =>
  way === 'road' ? ['pack', 'tow'] : ['pack', 'tow', 'rig', 'launch', 'recover'];

/**
 * A list as it stands. Lines come from the house, from the book's jury rigs and dues, and from the keeper; what the keeper
 * changed of one stays with it, whatever else comes and goes. The order is the wanted one put right by every rule that was
 * not set aside.
 *
 * @param today  where the boat is, YYYY-MM-DD
 * @throws RangeError when the rules of the house form a ring, with the lines named: a fault of the program
 */
export function morningList(book: Book, outingId: Id, list: MorningListName, today: string): MorningListTold {
  const outing = book.outings[outingId];
  if (outing === undefined) throw new RangeError(`there is no outing ${outingId} in the book`);
  const records = Object.entries(book.morningLines).filter(
    ([, record]) => record.list === list && (record.outing === null || record.outing === outingId),
  );
  const ofBook = linesOfBook(book, outing, list, today);
  const lines = candidates(book, outing, { list, ofBook, records }).map((line) => withChanges(line, records, outingId));
  const aside = lines.flatMap(({ item, out }) => (out === undefined ? item.setAside : []));
  const isAside = (rule: OrderRule) =>
    rule.holds === 'usual' && aside.some(({ before, after }) => before === rule.before && after === rule.after);
  const here = new Set(lines.filter(({ out }) => out === undefined).map(({ item }) => item.id));
  const all = [...rulesOf(list), ...rulesOfBook(ofBook)].filter(
    ({ before, after }) => here.has(before) && here.has(after),
  );
  const rules = all.filter((rule) => !isAside(rule));
  const ticks = ticksOf(book, outingId, list);
  const byId = new Map(lines.map(({ item }) => [item.id, { ...item, tick: ticks.of.get(item.id) ?? null }]));
  const order = inOrder(
    lines.flatMap(({ item, out }) => (out === undefined ? [item] : [])),
    rules,
  );
  const place = new Map(order.map((id, i) => [id, i]));
  return {
    list,
    items: order.map((id) => byId.get(id)!),
    out: lines.flatMap(({ item: { id, text }, out }) => (out === undefined ? [] : [{ id, text, outing: out }])),
    rules,
    setAside: all
      .filter((rule) => isAside(rule) && place.get(rule.before)! > place.get(rule.after)!)
      .map(({ before, after, because }) => ({
        before: byId.get(before)!.text,
        after: byId.get(after)!.text,
        because,
        reason: aside.find((one) => one.before === before && one.after === after)!.reason,
      })),
    lacking: lackingOf(book, outing),
    round: ticks.round,
    lastDone: ticks.lastDone,
  };
}

/** The order of lines: as they are wanted, put right by the rules. */
export function inOrder(
  lines: readonly { readonly id: string; readonly place: number }[],
  rules: readonly OrderRule[],
): readonly string[] {
  const wanted = [...lines].sort((a, b) => a.place - b.place).map(({ id }) => id);
  const found = checkedOrder(wanted, rules);
  if (found.kind === 'ring') throw new RangeError(`these wait for each other: ${found.ring.join(', ')}`);
  return found.ids;
}

type Entry = readonly [Id, MorningLineRecord];
type Line = Omit<MorningItem, 'tick'>;

/** Every line there may be, before the keeper's changes. */
function candidates(
  book: Book,
  outing: Outing,
  {
    list,
    ofBook,
    records,
  }: {
    readonly list: MorningListName;
    readonly ofBook: readonly BookLine[];
    readonly records: readonly Entry[];
  },
): readonly Line[] {
  const order = housePlaces(list);
  const house = linesFor(list, traitsOf(book, outing)).map(
    ({ id, text, names, cautions, from, fails }): Line => ({
      ...{ id, text, from, fails },
      cautions: [...cautions, ...cautionsOn(book, names)],
      about: names === null ? '' : namedOn(book, outing, names),
      ...plain,
      place: order.get(id)!,
    }),
  );
  const added = ofBook.map(
    ({ near, ...line }, i): Line => ({ ...plain, ...line, place: order.get(near.after)! + 1 + i / 1000 }),
  );
  const end = apart * (order.size + 1);
  const own = records
    .filter(([, { of }]) => of === null)
    .map(
      ([id, { text, place }], i): Line => ({
        ...plain,
        id,
        text: text ?? '',
        about: '',
        cautions: [],
        from: 'your own',
        fails: { title: `Put right: ${text ?? ''}`, consequence: 'worsens' },
        own: true,
        place: place ?? end + i,
      }),
    );
  return [...house, ...added, ...own];
}

const plain = {
  juryRig: false,
  due: null,
  own: false,
  changed: false,
  reworded: false,
  placedHere: false,
  setAside: [],
} as const;

/** Where the lines of the house stand, also those this boat has none of: so that a line that comes later finds its place. */
const housePlaces = (list: MorningListName): ReadonlyMap<string, number> =>
  new Map(houseLines[list].map(({ id }, i) => [id, apart * (i + 1)]));

/** What the keeper changed: of all outings first, of this one over it. `out`: of what it is taken out; left out: it stands. */
function withChanges(
  line: Line,
  records: readonly Entry[],
  outingId: Id,
): { readonly item: Line; readonly out?: Id | null } {
  let item = line;
  let out: { readonly out?: Id | null } = {};
  for (const of of [null, outingId])
    for (const [id, { outing, of: named, text, place, setAside, out: said }] of records) {
      if (outing !== of || (named ?? id) !== line.id) continue;
      if (said !== null) out = said ? { out: of } : {};
      item = {
        ...item,
        text: text ?? item.text,
        changed: item.changed || text !== null || place !== null,
        reworded: item.reworded || (text !== null && named !== null),
        ...(place === null ? {} : { place, setAside, placedHere: of !== null }),
      };
    }
  return { item, ...out };
}

/** The ticks of the round that is under way, the latest of each line; and how many rounds were done. */
function ticksOf(book: Book, outing: Id, list: MorningListName) {
  const all = Object.entries(book.morningTicks)
    .filter(([, tick]) => tick.outing === outing && tick.list === list)
    .sort(([, a], [, b]) => (a.order ?? 0) - (b.order ?? 0));
  const done = all.filter(([, { line }]) => line === null);
  const round = Math.max(0, ...done.map(([, tick]) => tick.round)) + 1;
  const of = new Map<string, NonNullable<MorningItem['tick']>>();
  for (const [id, { line, at, came, job, round: its }] of all)
    if (line !== null && its === round) of.set(line, { id, at, came, job });
  return { of, round, lastDone: done.at(-1)?.[1].at ?? null };
}
