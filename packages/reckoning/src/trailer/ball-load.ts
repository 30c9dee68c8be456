/** The ball load by the table of masses, put right by the last time the ball was weighed. */
import type { BallWeighing, Book, Id, TrailerRecord } from '#boat-book';
import { type Balance, type Band, balanceOf, ballByScale_kg } from '#trailer';
import { inSums, keyOf, massGive_kg, type Standing } from './standing.ts';

/** How finely a bathroom scale and a tape on a plank are read. Our assumption, told with every weighing. */
export const assumedReading = { scale_kg: 1, arm_mm: 5 } as const;

export interface Weighed {
  readonly id: Id;
  readonly weighing: BallWeighing;
  /** by the lever, and how far off it may be */
  readonly ball_kg: number;
  readonly give_kg: number;
  /** what the scale had more than the table */
  readonly unexplained_kg: number;
  /** how far off the table could be by what it says of itself */
  readonly tableGive_kg: number;
  /** what was added, taken off, moved or weighed anew since: its name, and what the ball gained by it */
  readonly since: readonly { readonly name: string; readonly gain_kg: number }[];
}

export interface BallLoad {
  readonly standings: readonly Standing[];
  readonly balance: Balance;
  /** the last; null: the ball was never weighed */
  readonly weighed: Weighed | null;
  /** what counts: the table, or the weighing with what was changed since */
  readonly ball_kg: Band;
  readonly laden_kg: Band;
  readonly axle_kg: number;
  /** what is added to the table’s ball load */
  readonly correction_kg: number;
}

/** The ball load of what stands on a trailer. */
export function ballLoad(book: Book, id: Id, record: TrailerRecord, standings: readonly Standing[]): BallLoad {
  const balance = balanceOf(inSums(standings, record), record.ballAhead_m);
  const weighed = lastWeighed(book, id, record, standings, balance);
  const ball_kg = weighed?.now ?? balance.ball_kg;
  const ladenGive = Math.hypot(...standings.map(({ mass }) => massGive_kg(mass)));
  return {
    standings,
    balance,
    weighed: weighed?.weighed ?? null,
    ball_kg,
    laden_kg: {
      low: balance.laden_kg - ladenGive,
      likely: balance.laden_kg,
      high: balance.laden_kg + ladenGive,
    },
    axle_kg: balance.laden_kg - ball_kg.likely,
    correction_kg: ball_kg.likely - balance.ball_kg.likely,
  };
}

/** What the lever says of a scale's reading, and how far off that may be. */
export function byScale({ scale_kg, arm_mm, beam_mm }: Pick<BallWeighing, 'scale_kg' | 'arm_mm' | 'beam_mm'>): {
  readonly ball_kg: number;
  readonly give_kg: number;
} {
  const ball_kg = ballByScale_kg(scale_kg, arm_mm / beam_mm);
  return {
    ball_kg,
    give_kg: Math.hypot((assumedReading.scale_kg * beam_mm) / arm_mm, (ball_kg * assumedReading.arm_mm) / arm_mm),
  };
}

/** All that stands on it now, as a weighing keeps it. */
export const stoodNow = ({ standings, balance }: Pick<BallLoad, 'standings' | 'balance'>): BallWeighing['stood'] =>
  standings.map((each, n) => ({
    carried: each.carried,
    name: each.name,
    mass_kg: each.mass.likely_kg,
    ahead_m: each.ahead_m,
    ball_kg: balance.shares[n]?.ball_kg ?? 0,
    give_kg: balance.shares[n]?.give_kg ?? 0,
  }));

/**
 * The last weighing, and the ball load it makes of today. What stands as it stood then is in the scale's reading, right or
 * wrong; what was changed since counts by the table, with the give of the change.
 */
function lastWeighed(
  book: Book,
  id: Id,
  record: TrailerRecord,
  standings: readonly Standing[],
  balance: Balance,
): { readonly weighed: Weighed; readonly now: Band } | null {
  const [last] = Object.entries(book.ballWeighings)
    .filter(([, { trailer }]) => trailer === id)
    .sort(([, a], [, b]) => (b.order ?? 0) - (a.order ?? 0));
  if (!last) return null;
  const [of, weighing] = last;
  const { ball_kg, give_kg } = byScale(weighing);
  const then = new Map(weighing.stood.map((stood) => [keyOf(stood), stood]));
  const changes = standings.flatMap((each, n) => {
    const share = balance.shares[n];
    const before = then.get(keyOf(each));
    then.delete(keyOf(each));
    if (!share) return [];
    if (!before) return [{ name: each.name, gain_kg: share.ball_kg, give_kg: share.give_kg }];
    const sameMass = alike(before.mass_kg, each.mass.likely_kg);
    if (sameMass && alike(before.ahead_m, each.ahead_m)) return [];
    const moved = each.ahead_m - before.ahead_m;
    return [
      {
        name: each.name,
        gain_kg: share.ball_kg - before.ball_kg,
        give_kg: sameMass
          ? Math.hypot(massGive_kg(each.mass) * moved, each.mass.likely_kg * each.give_m) / record.ballAhead_m
          : Math.hypot(before.give_kg, share.give_kg),
      },
    ];
  });
  const gone = [...then.values()].map((before) => ({
    name: before.name,
    gain_kg: -before.ball_kg,
    give_kg: before.give_kg,
  }));
  const since = [...changes, ...gone];
  const likely = since.reduce((sum, { gain_kg }) => sum + gain_kg, ball_kg);
  const give = Math.hypot(give_kg, ...since.map((each) => each.give_kg));
  return {
    weighed: {
      id: of,
      weighing,
      ball_kg,
      give_kg,
      unexplained_kg: ball_kg - weighing.told_kg,
      tableGive_kg: Math.hypot(...weighing.stood.map((each) => each.give_kg)),
      since: since.map(({ name, gain_kg }) => ({ name, gain_kg })),
    },
    now: { low: likely - give, likely, high: likely + give },
  };
}

const alike = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
