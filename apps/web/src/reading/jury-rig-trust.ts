/** How far a jury rig is to be trusted today, and which are to be seen before anything else. */
import type { Id, JuryRig } from '#boat-book';
import { daysBetween } from '#units';
import { countInWords } from '../parts/in-words.ts';
import type { RigsAndJobs } from './work-shown.ts';

export interface RigTrust {
  readonly id: Id;
  readonly rig: JuryRig;
  /** days past its trust; 0 or less: still trusted */
  readonly daysPast: number;
  /** it stands in for an open job that is a danger to people */
  readonly forDanger: boolean;
  /** the job it stands in for is done or dropped: it can come out */
  readonly jobClosed: boolean;
}

/** Past its trust, or standing in for a danger: the first thing seen. */
export function seenFirst({ daysPast, forDanger }: RigTrust): boolean {
  return daysPast > 0 || forDanger;
}

/**
 * The jury rigs that stand, the most pressing first: past trust and for a danger, past trust, for a danger, then by
 * the date their trust ends.
 * @param today  day at the boat's place
 */
export function standingRigs({ juryRigs, jobs }: RigsAndJobs, today: string): readonly RigTrust[] {
  const standing = Object.entries(juryRigs)
    .filter(([, rig]) => rig.state === 'standing')
    .map(([id, rig]): RigTrust => {
      const job = rig.job === null ? undefined : jobs[rig.job];
      return {
        id,
        rig,
        // trusted until the day, that day included
        daysPast: daysBetween(rig.trustedUntil, today),
        forDanger: job?.state === 'open' && job.consequence === 'danger',
        jobClosed: job !== undefined && job.state !== 'open',
      };
    });
  const press = (trust: RigTrust) => (trust.daysPast > 0 ? 2 : 0) + (trust.forDanger ? 1 : 0);
  return standing.sort(
    (a, b) =>
      press(b) - press(a) ||
      a.rig.trustedUntil.localeCompare(b.rig.trustedUntil) ||
      a.rig.title.localeCompare(b.rig.title),
  );
}

/** ['up to 12 knots', 'for 2 sails', 'not on the road'] */
export function limitsInWords(rig: JuryRig): readonly string[] {
  const limits: string[] = [];
  if (rig.wind_max_kn !== null) limits.push(`up to ${rig.wind_max_kn} knots`);
  if (rig.sails_max !== null)
    limits.push(rig.sails_max === 0 ? 'not to be sailed with' : `for ${countInWords(rig.sails_max, 'sail')}`);
  if (rig.notOnRoad) limits.push('not on the road');
  return limits;
}
