import type { SetUp } from '#boat-book';
import type { Finding } from '#fit-to-go';
import { setUpChangeInWords } from '../change-in-words.ts';
import { sentence } from '../when-in-words.ts';
import type { Beside } from './beside.ts';
import type { OutingMatter } from './job-remedy.ts';

/** What a boat is made ready to sail by: states that a set-up is brought into. Known by the words that sailors say. */
const readyStates = ['up', 'raised', 'stepped', 'off', 'afloat'];

/** What has yet to be changed about her before she sails: whether enough go to do it, and whether it is calm enough. */
export function launchFindings({ book, outing, time }: OutingMatter): Beside {
  if (time.byRoad) return { findings: [], notLooked: [] };
  const ahead = Object.entries(book.setUps).flatMap(([id, setUp]) =>
    setUp.changes.flatMap((change, at) =>
      change.from === setUp.now && readyStates.includes(stateOf(setUp, change.to).toLowerCase())
        ? [{ id, at, setUp, change }]
        : [],
    ),
  );
  const crew = outing.crew ?? null;
  const needsMore = ahead.filter(({ change }) => change.hands > 1);
  return {
    findings: ahead.map(({ id, at, setUp, change }): Finding => {
      const what = sentence(setUpChangeInWords(setUp.name, stateOf(setUp, change.from), stateOf(setUp, change.to)));
      const calm_kn = change.needs.wind_max_kn;
      const few = crew !== null && change.hands > crew;
      const windy = calm_kn !== undefined && time.wind !== null && time.wind.kn > calm_kn;
      return {
        id: `set-up.${id}.${at}`,
        subject: 'crew',
        bearing: few || windy ? 'condition' : 'sound',
        words: few
          ? `${what}: only with ${change.hands} hands`
          : windy
            ? `${what}: only in ${calm_kn} knots or less`
            : `${what}: ${change.minutes} minutes`,
        because: [
          ...(few
            ? [{ words: `${crew === 1 ? 'One goes' : `${crew} go`}, and it takes ${change.hands}.`, from: null }]
            : []),
          ...(windy
            ? [
                { words: `It is done in ${calm_kn} knots at most.`, from: null },
                { words: time.wind!.words, from: time.wind!.from },
              ]
            : []),
          {
            words: `She stands with it ${stateOf(setUp, setUp.now)}; ${change.minutes} minutes, ${change.hands === 1 ? 'one hand' : `${change.hands} hands`}.`,
            from: null,
          },
        ],
        remedies: few
          ? [decided(`${what} while someone is there to help, or have someone come.`)]
          : windy
            ? [decided(`${what} before the wind comes, or where there is shelter.`)]
            : [],
        cautions: few || windy ? change.cautions : [],
        of: { collection: 'setUps', id },
      };
    }),
    notLooked:
      crew === null && needsMore.length > 0
        ? [
            {
              subject: 'crew',
              words: 'whether enough go to make her ready',
              because: 'how many go is not written down',
            },
          ]
        : [],
  };
}

const stateOf = (setUp: SetUp, id: string) => setUp.states.find((state) => state.id === id)?.name ?? id;

const decided = (words: string) =>
  ({ words, minutes: null, waits: '', inHand: false, inTime: null, leaves: 'nothing', of: null }) as const;
