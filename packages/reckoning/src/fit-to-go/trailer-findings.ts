import type { Consequence, Id } from '#boat-book';
import type { Bearing, Finding, Remedy } from '#fit-to-go';
import type { TrailerFinding } from '../trailer/trailer-finding.ts';
import { trailerJob } from '../trailer/trailer-jobs.ts';
import { trailersLooked } from '../trailer/trailer-looked.ts';
import { lengthInWords, sentence } from '../when-in-words.ts';
import type { Beside } from './beside.ts';
import { doJob, type OutingMatter, workOf } from './job-remedy.ts';

const grave: readonly (Consequence | 'unknown')[] = ['danger', 'unlawful'];

/**
 * The trailer. By road a danger and what is unlawful stop her, what only gets worse is a condition. By water all of it is a
 * condition: she may be afloat already, and where she is towed to the water first it stands in the way of that.
 */
export function trailerFindings(matter: OutingMatter): Beside {
  const { book, time } = matter;
  const cannot = (words: string, because: string) => ({ subject: 'trailer', words, because }) as const;
  const words = 'ball load, tyres and lashings';
  const looked = trailersLooked(book, time.today);
  if (looked.length === 0) return { findings: [], notLooked: [cannot(words, 'no trailer is in the book')] };
  return {
    findings: looked.flatMap(({ id, name, findings, sound, cautions }) => [
      ...findings
        .filter(({ gravity }) => gravity !== 'unknown')
        .map((found): Finding => {
          const bearing: Bearing = time.byRoad && grave.includes(found.gravity) ? 'stops' : 'condition';
          return {
            id: `trailer.${id}.${found.id}`,
            subject: 'trailer',
            bearing,
            words: time.byRoad ? found.wrong : `Where she is towed to the water: ${found.wrong}`,
            because: [
              ...(found.right === null ? [] : [{ words: found.right, from: found.from }]),
              ...found.because.map((each) => ({ words: each, from: found.from })),
            ],
            remedies: [mendOf(matter, id, name, found)],
            cautions,
            of: { collection: 'trailers', id },
          };
        }),
      ...sound.map(
        (each, at): Finding => ({
          id: `trailer.${id}.sound-${at}`,
          subject: 'trailer',
          bearing: 'sound',
          words: each.words,
          because: [
            {
              words: `${sentence(each.subject)} of ${name}${each.from === null ? '; no day is written down' : ''}.`,
              from: each.from,
            },
          ],
          remedies: [],
          cautions: [],
          of: { collection: 'trailers', id },
        }),
      ),
    ]),
    notLooked: looked.flatMap(({ name, findings }) =>
      findings
        .filter(({ gravity }) => gravity === 'unknown')
        .map(({ wrong, right, subject }) => cannot(`${subject} of ${name}`, [wrong, right ?? ''].join(' ').trim())),
    ),
  };
}

/** The open job of it, by its title; else what the job it would make takes, or what would be right. */
function mendOf(matter: OutingMatter, id: Id, name: string, found: TrailerFinding): Remedy {
  const { book } = matter;
  let made = 0;
  const would = trailerJob(book, found, null, () => `trailer-${++made}`);
  const open = Object.entries(book.jobs).find(([, job]) => job.state === 'open' && job.title === would?.job.title);
  if (open !== undefined) return doJob(matter, open[0]);
  const work = workOf((would?.job.steps ?? []).map(({ minutes, waits = [] }) => ({ minutes, waits })));
  return {
    words:
      would === null
        ? `${name}: ${found.right ?? found.wrong}`
        : `${would.job.title}${work.minutes === null ? '.' : `: ${lengthInWords(work.minutes)} of work as we guess it.`}`,
    ...work,
    inHand: true,
    inTime:
      would === null
        ? null
        : { kind: 'not in time', words: 'It is no job yet: made one at the trailer, the plan finds it a time.' },
    leaves: 'nothing',
    of: { collection: 'trailers', id },
  };
}
