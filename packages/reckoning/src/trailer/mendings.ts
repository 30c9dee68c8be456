/** What to move, and how far, to bring the ball load where it is wanted. */
import type { TrailerRecord } from '#boat-book';
import { advised_pct, ballLimit, least_pct, mendsOf } from '#trailer';
import type { BallLoad } from './ball-load.ts';
import { paperLimits } from './paper-limits.ts';
import { inSums, keyOf, type Standing } from './standing.ts';
import type { TrailerMend } from './trailer-finding.ts';
import { kgSaid, movedSaid } from './trailer-words.ts';

/** The name the boat with all in her goes by among ids, which never have a space. */
const wholeBoat = 'the boat';

export interface TrailerMending {
  /** null: the boat with all that is in her */
  readonly carried: string | null;
  readonly name: string;
  /** aft below 0 */
  readonly forward_m: number;
  readonly ball_kg: number;
  /** whether that alone brings the ball load where it is wanted */
  readonly enough: boolean;
  /** `Move the battery 1.2 m aft: the ball then carries 48.6 kg.` */
  readonly words: string;
  readonly mend: TrailerMend;
}

/** The ball load that is wanted: within the advice, and within the lowest limit. [kg] */
export function ballWanted_kg(
  record: TrailerRecord,
  load: BallLoad,
): { readonly low_kg: number; readonly high_kg: number } {
  const laden_kg = load.laden_kg.likely;
  const advised = advised_pct[record.advice];
  const limit = ballLimit(paperLimits(record))?.kg ?? Number.POSITIVE_INFINITY;
  // as far under the limit as the ball load may be off, as long as the share is still advised
  const margin = load.ball_kg.high - load.ball_kg.likely;
  const least = Math.min((advised.low / 100) * laden_kg, limit);
  const high_kg = Math.min((advised.high / 100) * laden_kg, Math.max(limit - margin, Math.min(limit, least)));
  return { low_kg: Math.min(least, Math.max(high_kg, (least_pct / 100) * laden_kg)), high_kg };
}

/**
 * Each thing that can be moved, as far as it must and can: those that are enough first, the least work first, and the boat
 * herself after the things in her. None where the ball load is within limit and advice as it is.
 */
export function mendings(record: TrailerRecord, load: BallLoad): TrailerMending[] {
  if (isWithin(record, load)) return [];
  const wanted = ballWanted_kg(record, load);
  const byTable = {
    low_kg: wanted.low_kg - load.correction_kg,
    high_kg: wanted.high_kg - load.correction_kg,
  };
  const { standings } = load;
  const movable = standings.flatMap((each) => (each.moves === null ? [] : [{ name: keyOf(each), ...each.moves }]));
  const carried = inSums(standings, record);
  const found = [...mendsOf(carried, movable, record.ballAhead_m, byTable), ...boatMoved(record, load, byTable)].sort(
    (a, b) =>
      Number(b.enough) - Number(a.enough) ||
      Number(a.name === wholeBoat) - Number(b.name === wholeBoat) ||
      a.work_kg_m - b.work_kg_m,
  );
  return found.map(({ name: key, forward_m, ball_kg, enough }) => {
    const of = standings.find((each) => keyOf(each) === key) ?? null;
    const name = of?.name ?? 'the boat with all in her';
    const after = ball_kg + load.correction_kg;
    const moved = `${of ? inSentence(of) : name} ${movedSaid(forward_m)}`;
    return {
      carried: of?.carried ?? null,
      name,
      forward_m,
      ball_kg: after,
      enough,
      words: `Move ${moved}: the ball then carries ${kgSaid(after)}${enough ? '' : ', not yet enough'}.`,
      mend: of ? moveJob(moved, of) : postJob(forward_m),
    };
  });
}

/** Whether the ball load, as likely as not, is within the lowest limit and the usual advice. */
function isWithin(record: TrailerRecord, { ball_kg, laden_kg }: BallLoad): boolean {
  const { low, high } = advised_pct[record.advice];
  const limit = ballLimit(paperLimits(record))?.kg ?? Number.POSITIVE_INFINITY;
  const share = (100 * ball_kg.likely) / laden_kg.likely;
  return ball_kg.likely <= limit && share <= high && (share >= low || ball_kg.likely >= limit);
}

/** The bow post set otherwise, and she with all that rides in her. */
function boatMoved(record: TrailerRecord, { standings }: BallLoad, wanted: { low_kg: number; high_kg: number }) {
  if (record.boatMoves === null) return [];
  const carried = inSums(standings, record);
  const aboard = carried.filter((_, n) => standings[n]?.rides === 'boat');
  const mass_kg = aboard.reduce((sum, each) => sum + each.mass_kg, 0);
  if (mass_kg === 0) return [];
  const ahead_m = aboard.reduce((sum, each) => sum + each.mass_kg * each.ahead_m, 0) / mass_kg;
  return mendsOf(
    [{ name: wholeBoat, mass_kg, ahead_m }, ...carried.filter((_, n) => standings[n]?.rides === 'trailer')],
    [
      {
        name: wholeBoat,
        aftmost_m: ahead_m - record.boatMoves.aft_m,
        foremost_m: ahead_m + record.boatMoves.forward_m,
      },
    ],
    record.ballAhead_m,
    wanted,
  );
}

/** `The battery` within a sentence: `the battery`; a name of its own keeps its capital. */
const inSentence = ({ name }: Standing): string =>
  /^(The|A|An)\s/.test(name) ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;

const moveJob = (moved: string, { name }: Standing): TrailerMend => ({
  kind: 'steps',
  title: `Move ${moved}`,
  steps: [
    {
      title: `Make a place for it and move it; whatever is led to it goes along: ${name}`,
      minutes: { low: 20, likely: 45, high: 120 },
      cautions: ['It is strapped where it goes, so that it does not slide or tip when the car brakes.'],
    },
    {
      title: 'Weigh the ball load again',
      minutes: { low: 15, likely: 25, high: 45 },
      cautions: ['Wheels chocked. Feet from under the coupling; a beam can kick out sideways.'],
    },
  ],
});

const postJob = (forward_m: number): TrailerMend => ({
  kind: 'steps',
  title: `Set the bow post ${movedSaid(forward_m)} and the boat with it`,
  steps: [
    {
      title: 'Float or winch her off it, set the post, draw her up to it again',
      minutes: { low: 30, likely: 60, high: 120 },
      cautions: ['Never pushed by hand on a slope. Nobody behind her, and a second line on the bow besides the winch.'],
    },
    {
      title: 'See that rollers and chocks still stand under what carries her, and weigh the ball load again',
      minutes: { low: 20, likely: 30, high: 60 },
      cautions: ['Wheels chocked. Feet from under the coupling.'],
    },
  ],
});
