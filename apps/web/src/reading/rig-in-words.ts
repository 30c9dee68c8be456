/** A jury rig as the screens say it: how far it is trusted, and that it was told so. */
import type { JuryRig, RigTrustRecord } from '#boat-book';
import { type RigTrust, rigLimitsInWords } from '#reckoning';
import { dateInWords, daysAway } from '../parts/in-words.ts';

/** `Trusted until 5 December, in 9 days: up to 14 knots, for 4 sails.` and what it was used for beyond that. */
export function trustInWords({ rig, beyond }: RigTrust, today: string): string {
  const limits = rigLimitsInWords(rig);
  const until = `Trusted until ${dateInWords(rig.trustedUntil, today)}, ${daysAway(rig.trustedUntil, today)}`;
  return [`${until}${limits.length > 0 ? `: ${limits.join(', ')}` : ''}.`, ...beyond].join(' ');
}

/** `until 5 December, up to 14 knots` */
export const trustedInWords = (
  trust: Pick<JuryRig | RigTrustRecord, 'trustedUntil' | 'wind_max_kn' | 'sails_max' | 'notOnRoad'>,
  today: string,
): string => [`until ${dateInWords(trust.trustedUntil, today)}`, ...rigLimitsInWords(trust)].join(', ');
