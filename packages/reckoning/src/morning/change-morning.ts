/** What a keeper does to a morning list, as the fields of the operations that write it. */
import { type Book, contentId, type Id, type OperationFields } from '#boat-book';
import { usualTrust } from '#jobs';
import { type MorningListName, movedLine, type OrderRule } from '#morning';
import { addDays, localAt } from '#units';
import { recipeTaken, zoneOfRecipe } from '../recipe-job.ts';
import { recipeIdNow, recipesOfBook } from '../recipes-of-book.ts';
import { dayInWords } from '../when-in-words.ts';
import { inOrder, type MorningItem, type MorningListTold } from './morning-list.ts';

export const listTitles: Readonly<Record<MorningListName, string>> = {
  pack: 'Pack',
  tow: 'Tow',
  rig: 'Rig',
  launch: 'Launch',
  recover: 'Recover',
};

type Change = OperationFields<'changeMorningLines'>['lines'][number];
/** of which outing it is changed: null, of all */
type Of = Id | null;

export type LineMove =
  | { readonly kind: 'moved'; readonly lines: readonly Change[] }
  /** what stands against it; `lines`: the move with these rules set aside for a reason, null where one of them always holds */
  | {
      readonly kind: 'against';
      readonly rules: readonly { readonly words: string; readonly because: string; readonly always: boolean }[];
      readonly lines: ((reason: string) => readonly Change[]) | null;
    };

/**
 * One line moved by so many places, or what stands against it and why. A usual rule may be set aside with the keeper's
 * reason, which is then told with the list; one that always holds may not.
 *
 * @param of  the outing it is moved for; null: every one, and of lines that have a place of their own here, here too
 * @throws RangeError for a line that is not on the list, or a place off its ends
 */
export function lineMove(
  told: MorningListTold,
  id: string,
  by: number,
  of: { readonly outing: Of; readonly here: Id },
): LineMove {
  const order = told.items.map((item) => item.id);
  const to = order.indexOf(id) + by;
  const moved = movedLine(order, id, to, told.rules);
  if (moved.kind === 'moved') return { kind: 'moved', lines: placesFor(told, moved.ids, id, told.rules, of, []) };
  const broken = new Set(moved.rules);
  const rest = told.rules.filter((rule) => !broken.has(rule));
  const text = (line: string) => told.items.find((item) => item.id === line)!.text;
  const setAside = (reason: string) => moved.rules.map(({ before, after }) => ({ before, after, reason }));
  const free = movedLine(order, id, to, rest);
  return {
    kind: 'against',
    rules: moved.rules.map(({ before, after, because, holds }) => ({
      words: `‘${text(before)}’ comes before ‘${text(after)}’`,
      because,
      always: holds === 'always',
    })),
    lines:
      free.kind === 'against' || moved.rules.some(({ holds }) => holds === 'always')
        ? null
        : (reason) => placesFor(told, free.ids, id, rest, of, setAside(reason)),
  };
}

/** Places in which the lines stand in this order: that of the one moved alone where that is enough, else all anew. */
function placesFor(
  { items }: MorningListTold,
  ids: readonly string[],
  id: string,
  rules: readonly OrderRule[],
  { outing, here }: { readonly outing: Of; readonly here: Id },
  newlyAside: MorningItem['setAside'],
): readonly Change[] {
  const of = new Map(items.map((item) => [item.id, item]));
  const place = (line: string) => of.get(line)!.place;
  const at = ids.indexOf(id);
  const before = ids[at - 1];
  const after = ids[at + 1];
  const between =
    before === undefined
      ? place(after ?? id) - 5
      : after === undefined
        ? place(before) + 5
        : (place(before) + place(after)) / 2;
  // what is against no rule any more is no exception any more
  const index = new Map(ids.map((line, i) => [line, i]));
  const setAside = [...of.get(id)!.setAside, ...newlyAside].filter(
    (rule) => (index.get(rule.before) ?? -1) > (index.get(rule.after) ?? ids.length),
  );
  const written = (line: string, to: number): readonly Change[] => {
    const change = { of: line, place: to, setAside: line === id ? setAside : of.get(line)!.setAside };
    return [
      { ...change, outing },
      ...(outing === null && of.get(line)!.placedHere ? [{ ...change, outing: here }] : []),
    ];
  };
  const one = items.map((item) => (item.id === id ? { ...item, place: between } : item));
  if (inOrder(one, rules).every((line, i) => line === ids[i])) return written(id, between);
  // the places there are, handed out anew, each above the last
  let last = Number.NEGATIVE_INFINITY;
  return items
    .map((item) => item.place)
    .sort((a, b) => a - b)
    .flatMap((value, i) => {
      last = Math.max(value, last + 0.001);
      const line = ids[i]!;
      return line !== id && place(line) === last ? [] : written(line, last);
    });
}

/** Of which outing and round a tick is. */
export const tickOf = (outing: Id, { list, round }: MorningListTold, { id, text }: MorningItem, who: string) => ({
  ...{ outing, list, round, who },
  line: id,
  text: text.slice(0, 300),
});

/**
 * What is left of a line that is not right: the job of it, needed for this outing, and where it is mended for now the jury
 * rig that stands in for it, trusted as is usual for what it is, but never past this outing.
 *
 * @param mended  what holds it for now, in the keeper's words; null: nothing does
 */
export function lineFailed(
  book: Book,
  outingId: Id,
  told: MorningListTold,
  item: MorningItem,
  mended: string | null,
  { today, who }: { readonly today: string; readonly who: string },
): OperationFields<'failMorningLine'> {
  const outing = book.outings[outingId];
  if (outing === undefined) throw new RangeError(`there is no outing ${outingId} in the book`);
  const { title, consequence } = item.fails;
  const zone = item.due === null ? null : (book.dues[item.due]?.zone ?? null);
  const trust = usualTrust(mended ?? '', consequence);
  // days as they are written stand in the order of time
  const [until = today] = [addDays(outing.date, outing.nights), addDays(today, trust.days)].sort();
  return {
    ...tickOf(outingId, told, item, who),
    ...jobOfLine(book, item, {
      title: title.slice(0, 300),
      consequence,
      why: `Not right on the morning list ${listTitles[told.list]}: ${item.text}.`,
      outing: outingId,
      zone,
      ...(item.due === null ? {} : { fromDue: item.due }),
    }),
    juryRig:
      mended === null
        ? null
        : {
            title: (mended.trim() === '' ? `Mended for now: ${title}` : mended.trim()).slice(0, 300),
            zone,
            reason: item.text,
            made: today,
            trustedUntil: until < today ? today : until,
            wind_max_kn: trust.wind_max_kn,
            sails_max: null,
            notOnRoad: trust.notOnRoad && told.list !== 'tow',
          },
  };
}

/** What a line that is not right takes where no recipe fits, so that it can be planned: our guess, said with the job. [min] */
const assumedLineMinutes = { low: 15, likely: 30, high: 90 };

/** The job of a line with what its recipe takes; where none fits, with one plain step, so that a plan can lay it. */
function jobOfLine(
  book: Book,
  { id, fails, cautions, tick }: MorningItem,
  job: OperationFields<'failMorningLine'>['job'],
): Pick<OperationFields<'failMorningLine'>, 'job' | 'tools' | 'mixes' | 'stores'> {
  const named = fails.recipe === undefined ? null : recipeIdNow(book, fails.recipe);
  const recipe = named === null ? undefined : recipesOfBook(book)[named];
  // made of what it is a job of, so that two devices that make it apart have made one; again, once the first is closed
  const before = Object.values(book.jobs).filter(({ title, state }) => title === job.title && state !== 'open').length;
  let made = 0;
  const newId = () =>
    `line-${contentId({ line: id, outing: job.outing ?? null, before, tick: tick?.id ?? null, nth: ++made })}`;
  if (named === null || recipe === undefined) {
    const step = { title: job.title, minutes: assumedLineMinutes, hands: 1, cautions: [...cautions] };
    const note = 'No recipe is named for it: its minutes are a guess.';
    return { job: { ...job, note, steps: [step] }, tools: [], mixes: [], stores: [] };
  }
  const { fromDue, zone = null, ...said } = job;
  const { take } = recipeTaken(recipe, book, {
    job: { ...said, zone: zone ?? zoneOfRecipe(recipe, book), recipe: named },
    sizes: {},
    newId,
  });
  return { ...take, job: { ...take.job, ...(fromDue != null && { fromDue }) } };
}

/** What goes into the log when a list is done: what was ticked and when, what was not right, and what was left. */
export function listDone(
  book: Book,
  outingId: Id,
  told: MorningListTold,
  { timeZone, who }: { readonly timeZone: string; readonly who: string },
): OperationFields<'finishMorningList'> {
  const { list, round, items } = told;
  const clock = (at: string) => localAt(Date.parse(at), timeZone).clock;
  const came = (how: 'good' | 'failed') =>
    items
      .filter(({ tick }) => tick?.came === how)
      .sort((a, b) => a.tick!.at.localeCompare(b.tick!.at))
      .map(({ tick, text }) => `${clock(tick!.at)} ${text}`);
  const left = items.filter(({ tick }) => tick === null).map(({ text }) => text);
  const part = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [`${title}: ${lines.join('; ')}.`];
  const outing = book.outings[outingId];
  return {
    ...{ outing: outingId, list, round, who },
    text: [
      `${listTitles[list]}${round > 1 ? `, gone through ${round} times` : ''}: ${outing?.title ?? ''}${outing === undefined ? '' : `, ${dayInWords(outing.date)}`}.`,
      ...part('Ticked', came('good')),
      ...part('Not right', came('failed')),
      ...part('Left', left),
    ]
      .join(' ')
      .slice(0, 20_000),
  };
}
