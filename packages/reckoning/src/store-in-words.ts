/** Things in the stores in words: how they stand, and lists to be sent or printed. */
import type { Book, Day, Id, StoreUnit } from '#boat-book';
import type { Problem } from '#workplan';
import { type CarryStop, carriedInWords } from './carry-down.ts';
import { amountInWords, countInWords } from './store-amounts.ts';
import type { StoreStanding } from './store-standing.ts';
import type { ToGet } from './to-get.ts';
import { dayNear } from './to-get-in-words.ts';
import { dayInWords, sentence } from './when-in-words.ts';

export interface StandingWords {
  /** `580 ml there, 40 ml reserved, 540 ml free`; without a full stop */
  readonly there: string;
  /** each job it is reserved for, with how much: `40 ml` */
  readonly needs: readonly { readonly job: Id; readonly title: string; readonly words: string }[];
  /** its dates, past or not; null: nothing is known */
  readonly keeps: string | null;
  readonly past: boolean;
}

/** How a thing on hand stands. */
export function standingInWords(standing: StoreStanding): StandingWords {
  const { unit, there, reserved, free, needs, keeps } = standing;
  const said = (amount: number) => (unit === null ? '' : countInWords(amount, unit));
  const past = keeps?.past ?? false;
  const words = past
    ? 'there, not counted on'
    : there === null || unit === null
      ? needs.length > 0
        ? 'there, not counted'
        : 'there'
      : reserved === null || reserved === 0
        ? `${said(there)} there`
        : `${said(there)} there, ${said(Math.min(reserved, there))} reserved, ${free === null || free === 0 ? 'none' : said(free)} free`;
  return {
    there: words,
    needs: needs.map(({ job, title, amount, short }) => ({
      job,
      title,
      words: `${amount === null || unit === null ? 'some' : amountInWords(amount, unit)}${short ? ', still to be got' : ''}`,
    })),
    keeps: keeps?.words ?? null,
    past,
  };
}

/** `piece` for what has no unit, for a list to choose from. */
export const unitInWords = (unit: StoreUnit): string => (unit === '' ? 'pieces' : unit);

/** A price in the boat's currency: `NZD 12.50`; without one, the figure alone. */
export const priceInWords = (amount: number, currency: string | null): string =>
  currency === null ? amount.toFixed(2) : `${currency} ${amount.toFixed(2)}`;

/** One thing to get in a line of a list: what and how much. */
export const toGetName = ({ name, buy }: ToGet): string => (buy === null ? name : `${name}: ${buyWords(buy)}`);

/** `4`, `1 tube of 290 ml (takes 22 ml)` */
function buyWords({ words, packs }: NonNullable<ToGet['buy']>): string {
  if (packs === null) return words;
  const [takes = '', buy = ''] = words.split(': ');
  return `${buy} (takes ${takes})`;
}

/** Things to get by where they are to be had; those of no known place last. */
export function toGetByShop(
  lines: readonly ToGet[],
): readonly { readonly from: string | null; readonly lines: readonly ToGet[] }[] {
  const shops = new Map<string | null, ToGet[]>();
  for (const line of lines) shops.set(line.from, [...(shops.get(line.from) ?? []), line]);
  return [...shops]
    .map(([from, own]) => ({ from, lines: own }))
    .sort((a, b) => Number(a.from === null) - Number(b.from === null) || (a.from ?? '').localeCompare(b.from ?? ''));
}

/** By when: `by Saturday`, `order by tomorrow`; null: no day hangs on it, or it is ordered. */
export function getByInWords(line: ToGet, today: Day): string | null {
  if (line.expected !== null) return `ordered, here ${dayNear(line.expected, today)}`;
  if (line.orderBy !== null && line.lead_days !== null && line.lead_days > 0)
    return line.orderBy <= today ? 'order today' : `order by ${dayNear(line.orderBy, today)}`;
  return line.hereBy === null ? null : `by ${dayNear(line.hereBy, today)}`;
}

/** What is to be got as plain text, to be sent to someone who goes to the shop. */
export function toGetText(lines: readonly ToGet[], { boat }: Pick<Book, 'boat'>, today: Day): string {
  const shops = toGetByShop(lines);
  return [
    `To get for ${boat.name}, ${dayInWords(today)}`,
    ...shops.flatMap(({ from, lines: own }) => [
      '',
      ...(shops.length > 1 || from !== null ? [from === null ? 'Anywhere' : sentence(from)] : []),
      ...own.map((line) => {
        const parts = [
          toGetName(line),
          getByInWords(line, today),
          `for ${line.jobs.map(({ title }) => title).join(', ')}`,
        ];
        return `- ${parts.filter((part) => part !== null).join('; ')}`;
      }),
    ]),
  ].join('\n');
}

/** What to carry down as plain text, in order of use. */
export function carryText(stops: readonly CarryStop[], problem: Problem, day: Day, today: Day): string {
  return [
    `Carry down, ${dayInWords(day)}`,
    ...stops.flatMap(({ keptAt, things }) => [
      '',
      keptAt === null
        ? things.every(({ kind }) => kind === 'mix')
          ? 'To mix'
          : 'Place not written down'
        : sentence(keptAt),
      ...things.map((thing) => {
        const { name, about } = carriedInWords(thing, problem, today);
        return `- ${name} (${about})`;
      }),
    ]),
  ].join('\n');
}
