import type { Book, Day, Id, Job, JuryRig, RigTrustRecord } from '#boat-book';
import { daysBetween } from '#units';
import { dayInWords } from '../when-in-words.ts';

/** What says of the jury rigs that stand how far they are to be trusted. */
export interface RigsOfBook extends Pick<Book, 'juryRigs' | 'rigTrusts' | 'uses'> {
  /** the jobs they stand in for */
  readonly jobs: Readonly<Record<Id, Pick<Job, 'title' | 'state' | 'consequence'>>>;
}

/** What of a book says so, and no more: it is kept and shown before the book is there. */
export function rigsOfBook(book: Book): RigsOfBook {
  const standing = Object.entries(book.juryRigs).filter(([, rig]) => rig.state === 'standing');
  const jobs = standing.flatMap(([, { job }]) => {
    const known = job === null ? undefined : book.jobs[job];
    if (job === null || known === undefined) return [];
    return [[job, { title: known.title, state: known.state, consequence: known.consequence }] as const];
  });
  const looked = standing.map(([id]) => rigHistory(book, id).at(-1)!.on).sort()[0];
  return {
    juryRigs: Object.fromEntries(standing),
    rigTrusts: Object.fromEntries(
      Object.entries(book.rigTrusts).filter(([, { rig }]) => book.juryRigs[rig]?.state === 'standing'),
    ),
    uses: Object.fromEntries(
      Object.entries(book.uses).filter(
        ([, { use, on }]) => looked !== undefined && on >= looked && (use === 'sail' || use === 'tow'),
      ),
    ),
    jobs: Object.fromEntries(jobs),
  };
}

/** How far a jury rig is to be trusted on a day. */
export interface RigTrust {
  readonly id: Id;
  readonly rig: JuryRig;
  /** days past its date; 0 or less: not past it */
  readonly daysPast: number;
  /** what she was used for beyond its limits since it was last looked at, a sentence each */
  readonly beyond: readonly string[];
  /** it stands in for an open job that is a danger to people */
  readonly forDanger: boolean;
  /** the job it stands in for is done or dropped: it can come out */
  readonly jobClosed: boolean;
}

/** Past its date, or used beyond its limits. */
export const isPastTrust = ({ daysPast, beyond }: RigTrust): boolean => daysPast > 0 || beyond.length > 0;

/** Past its trust, or standing in for a danger: the first thing seen. */
export const seenFirst = (trust: RigTrust): boolean => isPastTrust(trust) || trust.forDanger;

/**
 * The jury rigs that stand, the most pressing first: past trust and for a danger, past trust, for a danger, then by
 * the date their trust ends.
 * @param today  day at the boat's place
 */
export function standingRigs(book: RigsOfBook, today: Day): readonly RigTrust[] {
  const standing = Object.entries(book.juryRigs)
    .filter(([, rig]) => rig.state === 'standing')
    .map(([id, rig]): RigTrust => {
      const job = rig.job === null ? undefined : book.jobs[rig.job];
      return {
        id,
        rig,
        // trusted until the day, that day included
        daysPast: daysBetween(rig.trustedUntil, today),
        beyond: usedBeyond(book, id, rig),
        forDanger: job?.state === 'open' && job.consequence === 'danger',
        jobClosed: job !== undefined && job.state !== 'open',
      };
    });
  const press = (trust: RigTrust) => (isPastTrust(trust) ? 2 : 0) + (trust.forDanger ? 1 : 0);
  return standing.sort(
    (a, b) =>
      press(b) - press(a) ||
      a.rig.trustedUntil.localeCompare(b.rig.trustedUntil) ||
      a.rig.title.localeCompare(b.rig.title),
  );
}

/** Sails and tows since it was last looked at that it was not trusted for. The wind of a sail is not written down, so it has no say. */
function usedBeyond(book: RigsOfBook, id: Id, rig: JuryRig): readonly string[] {
  if (rig.sails_max === null && !rig.notOnRoad) return [];
  const looked = rigHistory(book, id).at(-1)!;
  const since = (kind: 'sail' | 'tow') =>
    Object.values(book.uses).filter(
      ({ use, on, entered }) =>
        use === kind && (on > looked.on || (on === looked.on && Date.parse(entered) > Date.parse(looked.entered))),
    );
  const sails = since('sail').reduce((sum, { count }) => sum + count, 0);
  const tow = since('tow')[0];
  const from = dayInWords(looked.on);
  return [
    ...(rig.sails_max !== null && sails >= Math.max(1, rig.sails_max)
      ? [
          rig.sails_max === 0
            ? `She was sailed since ${from}, and it is not to be sailed with.`
            : `She was sailed ${sails === 1 ? 'once' : `${sails} times`} since ${from}: the ${countOf(rig.sails_max)} it was trusted for ${rig.sails_max === 1 ? 'is' : 'are'} used up.`,
        ]
      : []),
    ...(rig.notOnRoad && tow !== undefined
      ? [`She was towed on ${dayInWords(tow.on)}, and it is not for the road.`]
      : []),
  ];
}

const countOf = (sails: number): string => (sails === 1 ? 'one sail' : `${sails} sails`);

/**
 * Each time it was said how far a jury rig is trusted, the first first. Of a rig from before that was kept there is one:
 * what it says now, since it was made.
 * @throws RangeError where the rig is not in the book
 */
export function rigHistory(book: Pick<Book, 'juryRigs' | 'rigTrusts'>, id: Id): readonly RigTrustRecord[] {
  const rig = book.juryRigs[id];
  if (rig === undefined) throw new RangeError(`there is no jury rig ${id} in the book`);
  const kept = Object.values(book.rigTrusts).filter((trust) => trust.rig === id);
  // the first of an older rig may have been kept on two devices
  const once = kept.filter(
    (trust, i) =>
      !kept
        .slice(0, i)
        .some(
          ({ entered, trustedUntil, reason }) =>
            entered === trust.entered && trustedUntil === trust.trustedUntil && reason === trust.reason,
        ),
  );
  if (once.length > 0)
    return once.sort((a, b) => a.on.localeCompare(b.on) || Date.parse(a.entered) - Date.parse(b.entered));
  const { made: on, trustedUntil, wind_max_kn, sails_max, notOnRoad } = rig;
  return [
    {
      rig: id,
      on,
      trustedUntil,
      wind_max_kn,
      sails_max,
      notOnRoad,
      reason: 'as it was made',
      entered: `${on}T12:00:00Z`,
    },
  ];
}

/** ['up to 12 knots', 'for 2 sails', 'not on the road'] */
export function rigLimitsInWords({
  wind_max_kn,
  sails_max,
  notOnRoad,
}: Pick<JuryRig, 'wind_max_kn' | 'sails_max' | 'notOnRoad'>): readonly string[] {
  return [
    ...(wind_max_kn === null ? [] : [`up to ${wind_max_kn} knots`]),
    ...(sails_max === null ? [] : [sails_max === 0 ? 'not to be sailed with' : `for ${countOf(sails_max)}`]),
    ...(notOnRoad ? ['not on the road'] : []),
  ];
}
