/** What the hand was seen to pull, beside what was foretold of it: a sheave that seizes shows before it stops. */
import type { BoardHoistRecord, Book, HoistForceRecord, Id, OperationFields } from '#boat-book';
import { feltSheaveFactor, hoistFigures, pullAtHand_N } from '#loads';
import { daysBetween, localAt } from '#units';
import { figureSaid } from './circuits-in-words.ts';
import { forceSaid } from './hoist-in-words.ts';
import { type HoistedIn, wholeHoist } from './hoist-of-book.ts';

/** One pull that was read, on its day. */
export interface PullSeen {
  readonly id: Id;
  readonly day: string;
  readonly hand_N: number;
  readonly foretold_N: number;
  /** read over foretold */
  readonly share: number;
  readonly record: HoistForceRecord;
}

export interface PullsTold {
  /** oldest first */
  readonly pulls: readonly PullSeen[];
  /** what they say, in sentences */
  readonly lines: readonly string[];
  /** it turns harder than it did, or than it should */
  readonly stiffer: boolean;
}

/** What the hand would feel as the hoist stands in the book; null: it cannot be hoisted so. [N] */
export function foretoldPull_N(
  record: BoardHoistRecord,
  { handling, hauled_pct, in: hoistedIn }: Pick<HoistForceRecord, 'handling' | 'hauled_pct' | 'in'>,
): number | null {
  const figures = hoistFigures(wholeHoist(record, hoistedIn));
  return figures.kind === 'figures' ? pullAtHand_N(figures, handling, hauled_pct) : null;
}

/** A pull is read off a luggage scale to a tenth or so: nearer than this it is as foretold. Our judgement. */
const assumedScale = 0.15;
/** Pulls nearer to one another than this say nothing of a year. [days] */
const leastApart_days = 60;

/** The pulls of a hoist with what becomes of them. Only pulls of one kind are laid beside one another: hoisting. */
export function pullsTold(book: Book, hoist: Id, zone: string): PullsTold {
  const record = book.boardHoists[hoist];
  const pulls = Object.entries(book.hoistForces)
    .filter(([, each]) => each.hoist === hoist)
    .map(
      ([id, each]): PullSeen => ({
        id,
        day: localAt(Date.parse(each.at), zone).day,
        hand_N: each.hand_N,
        foretold_N: each.foretold_N,
        share: each.foretold_N > 0 ? each.hand_N / each.foretold_N : 1,
        record: each,
      }),
    )
    .sort((a, b) => a.record.at.localeCompare(b.record.at) || (a.record.order ?? 0) - (b.record.order ?? 0));
  const hoisted = pulls.filter((pull) => pull.record.handling === 'hoisting' && pull.foretold_N > 0);
  const last = hoisted.at(-1);
  if (record === undefined || last === undefined) return { pulls, lines: [], stiffer: false };
  const lines = [
    `${forceSaid(last.hand_N)} where ${forceSaid(last.foretold_N)} were foretold: ${againstForetold(last.share)}.`,
  ];
  const first = hoisted[0]!;
  const days = daysBetween(first.day, last.day);
  const grown = last.share / first.share;
  const growing = hoisted.length >= 3 && days >= leastApart_days && grown > 1 + assumedScale;
  if (growing)
    lines.push(
      `Over ${hoisted.length} pulls in ${monthsSaid(days)} it grew from ${timesOf(first.share)} to ${timesOf(last.share)} what was foretold: something turns harder than it did. Sheaves first: turn each by hand, rinse, dry, oil; then the wire in its grooves, the pivot, grit in the case.`,
    );
  else if (hoisted.length >= 2)
    lines.push(`Over ${hoisted.length} pulls no more than a scale is out by: it turns as it did.`);
  const felt = last.record.hauled_pct === null ? feltLine(record, last.record) : null;
  if (felt !== null) lines.push(felt);
  return { pulls, lines, stiffer: growing || last.share > 1 + 2 * assumedScale };
}

const againstForetold = (share: number): string =>
  Math.abs(share - 1) <= assumedScale
    ? 'as foretold, to what a scale reads'
    : `${Math.round(100 * Math.abs(share - 1))} % ${share > 1 ? 'more' : 'less'}`;

const timesOf = (share: number): string => figureSaid(Number(share.toFixed(2)));

const monthsSaid = (days: number): string => {
  const months = Math.round(days / 30.44);
  return months < 1 ? `${days} days` : `${months} ${months === 1 ? 'month' : 'months'}`;
};

/** What every sheave would have to take for it to feel so. */
function feltLine(record: BoardHoistRecord, { hand_N, in: hoistedIn }: HoistForceRecord): string | null {
  const factor = feltSheaveFactor(wholeHoist(record, hoistedIn as HoistedIn), hand_N);
  if (factor === 'no sheave') return null;
  if (factor === 'less than none')
    return 'That is less than it would take with no friction at all: the mass, or the scale, is not as entered.';
  if (factor === 'more than any') return 'No sheave that still turns takes so much: something rubs or jams.';
  return `It feels as if the tension grew ${factor.toFixed(2)} times over every sheave: 1.04 on balls, 1.09 plain, 1.15 stiff.`;
}

/** The job of finding what turns hard. Its minutes are our guess, for the keeper to change. */
export function stiffHoistJob(record: BoardHoistRecord, { lines }: PullsTold): OperationFields<'addJob'> {
  return {
    title: `Find what turns hard: ${record.name}`,
    why: lines.join(' '),
    consequence: 'worsens',
    zone: record.zone,
    steps: [
      {
        title: 'Pin the board up, slack the wire, turn each sheave by hand',
        minutes: { low: 15, likely: 30, high: 60 },
        hands: 1,
        cautions: ['Board held by a pin or strop before the wire is slacked. Nobody under it.'],
      },
      {
        title: 'Free or change what is stiff; look along the wire for broken strands',
        minutes: { low: 20, likely: 45, high: 120 },
        hands: 1,
        cautions: ['Broken strands cut hands: gloves. One broken strand at a terminal: a new wire.'],
      },
      { title: 'Weigh the pull again where it is hardest', minutes: { low: 5, likely: 10, high: 20 }, hands: 1 },
    ],
  };
}
