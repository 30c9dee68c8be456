import type { Book, JuryRig, Outing } from '#boat-book';
import type { Finding } from '#fit-to-go';
import { planInForce } from '../plan-in-force.ts';
import { dayInWords } from '../when-in-words.ts';
import { doIt } from './job-findings.ts';
import { jobInTime } from './jobs-in-time.ts';
import type { OutingTime } from './outing-time.ts';

/** Jury rigs: past their trust, or asked for more than they are good for, they stop her; within it they are conditions. */
export function rigFindings(book: Book, outing: Outing, { last, starts, zone }: OutingTime): readonly Finding[] {
  return Object.entries(book.juryRigs).flatMap(([id, rig]): Finding[] => {
    if (rig.state !== 'standing') return [];
    const beyond = beyondTrust(rig, outing, last);
    const job = rig.job === null ? undefined : book.jobs[rig.job];
    const open = job?.state === 'open';
    return [
      {
        id: `jury-rig.${id}`,
        subject: 'jury rigs',
        bearing: beyond.length > 0 ? 'stops' : 'condition',
        words: beyond.length > 0 ? rig.title : `${rig.title}: only ${limitsInWords(rig)}`,
        because: [
          ...beyond.map((words) => ({ words, from: rig.made })),
          { words: `It is trusted ${limitsInWords(rig)}.`, from: rig.made },
          ...(rig.wind_max_kn !== null && outing.wind_kn === null
            ? [
                {
                  words: 'No wind is written down for this outing: whether it is asked for more is not known.',
                  from: null,
                },
              ]
            : []),
          ...(open && job ? [{ words: `It stands in for: ${job.title}.`, from: job.opened }] : []),
        ],
        remedies: [
          open && job
            ? doIt(book, rig.job!, job, jobInTime(book, rig.job!, planInForce(book), starts, zone))
            : {
                words: 'Put in its job and do it, or look it over and trust it anew, with the reason.',
                minutes: null,
                inHand: true,
              },
        ],
        cautions: ['A jury rig holds until it does not: look at it before you cast off and each time you stop.'],
        of: { collection: 'juryRigs', id },
      },
    ];
  });
}

/** What the outing asks of a jury rig beyond what it is trusted for, a sentence each. */
function beyondTrust(rig: JuryRig, outing: Outing, last: string): readonly string[] {
  return [
    ...(rig.trustedUntil < last ? [`Its trust ends ${dayInWords(rig.trustedUntil)}, before the outing does.`] : []),
    ...(rig.wind_max_kn !== null && outing.wind_kn !== null && outing.wind_kn > rig.wind_max_kn
      ? [`It is good to ${rig.wind_max_kn} knots; ${outing.wind_kn} are expected.`]
      : []),
    ...(rig.sails_max !== null && rig.sails_max < 1 ? ['It is not to be sailed with.'] : []),
    ...(rig.notOnRoad ? ['It is not for the road, and she goes there on her trailer.'] : []),
  ];
}

/** `until Sunday 29 November, to 14 knots, for 3 sails at most` */
function limitsInWords(rig: JuryRig): string {
  return [
    `until ${dayInWords(rig.trustedUntil)}`,
    ...(rig.wind_max_kn === null ? [] : [`to ${rig.wind_max_kn} knots`]),
    ...(rig.sails_max === null ? [] : [`for ${rig.sails_max === 1 ? 'one sail' : `${rig.sails_max} sails`} at most`]),
    ...(rig.notOnRoad ? ['off the road'] : []),
  ].join(', ');
}
