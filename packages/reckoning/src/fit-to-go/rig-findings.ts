import type { JuryRig } from '#boat-book';
import type { Finding, Remedy } from '#fit-to-go';
import { dayInWords } from '../when-in-words.ts';
import { doJob, type OutingMatter } from './job-remedy.ts';
import type { OutingTime } from './outing-time.ts';

/**
 * Jury rigs: past their trust, or asked for more than they are good for, they stop her; within it they are conditions. Only what
 * the outing asks counts: a limit of the road does not stop her by water, where it is told as a condition of the tow; one of wind
 * or sails says nothing on the road.
 */
export function rigFindings(matter: OutingMatter): readonly Finding[] {
  const { book, time } = matter;
  return Object.entries(book.juryRigs).flatMap(([id, rig]): Finding[] => {
    if (rig.state !== 'standing') return [];
    const beyond = beyondTrust(rig, time);
    const job = rig.job === null ? undefined : book.jobs[rig.job];
    const open = job?.state === 'open';
    return [
      {
        id: `jury-rig.${id}`,
        subject: 'jury rigs',
        bearing: beyond.length > 0 ? 'stops' : 'condition',
        words: beyond.length > 0 ? rig.title : `${rig.title}: only ${limitsInWords(rig)}`,
        because: [
          ...beyond,
          { words: `It is trusted ${limitsInWords(rig)}.`, from: rig.made },
          ...(rig.wind_max_kn !== null && time.wind === null && !time.byRoad
            ? [
                {
                  words: 'No wind is written down for this outing: whether it is asked for more is not known.',
                  from: null,
                },
              ]
            : []),
          ...(rig.reason === '' ? [] : [{ words: rig.reason, from: rig.made }]),
          ...(open && job ? [{ words: `It stands in for: ${job.title}.`, from: job.opened }] : []),
        ],
        remedies: [
          ...(open ? [doJob(matter, rig.job!)] : []),
          ...(beyond.length > 0 || !open ? [lookedOver(id, rig, open)] : []),
        ],
        cautions: ['A jury rig holds until it does not: look at it before you cast off and each time you stop.'],
        of: { collection: 'juryRigs', id },
      },
    ];
  });
}

function lookedOver(id: string, { title }: JuryRig, hasJob: boolean): Remedy {
  return {
    words: hasJob
      ? `${title}: look it over, and trust it anew with the reason.`
      : `${title}: put in its job and do it, or look it over and trust it anew with the reason.`,
    minutes: null,
    waits: '',
    inHand: true,
    inTime: null,
    leaves: 'condition',
    of: { collection: 'juryRigs', id },
  };
}

/** What the outing asks of a jury rig beyond what it is trusted for, a sentence each. */
function beyondTrust(rig: JuryRig, { last, wind, byRoad }: OutingTime): Finding['because'] {
  const ended = rig.trustedUntil < last;
  return [
    ...(ended
      ? [{ words: `Its trust ends ${dayInWords(rig.trustedUntil)}, before the outing does.`, from: rig.made }]
      : []),
    ...(rig.wind_max_kn !== null && wind !== null && wind.kn > rig.wind_max_kn
      ? [
          { words: `It is good to ${rig.wind_max_kn} knots.`, from: rig.made },
          { words: wind.words, from: wind.from },
        ]
      : []),
    ...(rig.sails_max !== null && rig.sails_max < 1 && !byRoad
      ? [{ words: 'It is not to be sailed with.', from: rig.made }]
      : []),
    ...(rig.notOnRoad && byRoad
      ? [{ words: 'It is not for the road, and she goes there on her trailer.', from: rig.made }]
      : []),
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
