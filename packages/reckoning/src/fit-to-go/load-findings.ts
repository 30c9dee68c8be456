import type { Id, LoadPathRecord } from '#boat-book';
import type { Bearing, Finding, NotLooked, Remedy } from '#fit-to-go';
import { type PathMending, pathJob, pathMendings } from '../load-path-jobs.ts';
import { type LoadPathTold, loadPathsTold, type PathCaseTold, type PathFinding } from '../load-path-told.ts';
import { lengthInWords, listInWords } from '../when-in-words.ts';
import type { Beside } from './beside.ts';
import { doJob, type OutingMatter } from './job-remedy.ts';
import type { OutingWind } from './outing-wind.ts';

/** Load paths under the wind of the outing: what does not hold stops her, what is unknown is a condition. */
export function loadFindings(matter: OutingMatter): Beside {
  const { book, time } = matter;
  const paths = loadPathsTold(book, time.today);
  const cannot = (words: string, because: string): NotLooked => ({ subject: 'loads', words, because });
  if (time.byRoad)
    return {
      findings: [],
      notLooked: paths.length === 0 ? [] : [cannot('what her gear bears', 'on the road only, nothing pulls on it')],
    };
  return {
    findings: paths.map((path) => findingOf(matter, path)),
    notLooked: [
      ...(paths.length === 0 ? [cannot('what her gear bears', 'no load path is in the book')] : []),
      ...(time.wind === null && paths.length > 0
        ? [cannot('her gear under the wind of that day', 'no wind is written down for this outing')]
        : []),
    ],
  };
}

/** How one load of a path stands under a wind. */
type Borne = 'does not hold' | 'too much wind' | 'good to less than its own wind' | 'unknown' | 'holds';

/** A load of the wind’s is asked for at the wind of the outing, where that is known, and not at its own. */
function borneIn({ verdict, goodTo_kn }: PathCaseTold, broken: boolean, wind: OutingWind | null): Borne {
  if (broken || goodTo_kn === null || wind === null) return verdict;
  if (wind.kn > goodTo_kn) return 'too much wind';
  return verdict === 'does not hold' ? 'good to less than its own wind' : verdict;
}

function findingOf(matter: OutingMatter, path: LoadPathTold): Finding {
  const { wind } = matter.time;
  const record = matter.book.loadPaths[path.id]!;
  // what must be replaced or does not go together fails in any wind
  const broken =
    path.parts.some(({ state }) => state === 'replace') ||
    path.findings.some(({ gravity }) => gravity === 'does not go together');
  const borne = path.cases.map((each) => ({ each, how: borneIn(each, broken, wind) }));
  const of = (...kinds: readonly Borne[]) => borne.filter(({ how }) => kinds.includes(how)).map(({ each }) => each);
  const tooMuch = of('too much wind');
  const failing = [...tooMuch, ...of('does not hold')];
  const short = of('good to less than its own wind');
  const known = path.cases.length > 0 ? of('unknown').length === 0 : path.verdict !== 'unknown';
  const bearing: Bearing =
    failing.length > 0 || (path.cases.length === 0 && path.verdict === 'does not hold')
      ? 'stops'
      : short.length > 0 || !known
        ? 'condition'
        : 'sound';
  const dated = record.parts.flatMap(({ since }) => (since === null ? [] : [since])).sort();
  return {
    id: `load-path.${path.id}`,
    subject: 'loads',
    bearing,
    words: `${path.name}: ${heldInWords(path, bearing, short)}`,
    because: [
      ...(tooMuch.length > 0 || short.length > 0 ? [{ words: `${wind!.words}`, from: wind!.from }] : []),
      ...[...tooMuch, ...short].map(({ name, goodTo_kn }) => ({
        words: `${name}: good to ${Math.floor(goodTo_kn!)} knots.`,
        from: null,
      })),
      // what fails in any wind before what a load does
      ...path.findings.filter(isGrave).map(findingInWords),
      ...path.cases.flatMap(({ lines }) => lines.map((words) => ({ words, from: null }))),
      ...path.findings.filter((each) => !isGrave(each)).map(findingInWords),
      ...path.lines.map((words) => ({ words, from: null })),
      dated.length === 0
        ? { words: `How old its ${record.parts.length} parts are is not written down.`, from: null }
        : {
            words: `${dated.length} of its ${record.parts.length} parts have their age written down; the oldest is counted from that day.`,
            from: dated[0]!,
          },
    ],
    remedies: bearing === 'sound' ? [] : remediesOf(matter, record, path, { bearing, failing, tooMuch, short }),
    cautions: path.cautions,
    of: { collection: 'loadPaths', id: path.id },
  };
}

const isGrave = ({ gravity }: PathFinding) => gravity === 'does not go together';
const findingInWords = ({ wrong, right }: PathFinding) => ({ words: `${wrong} ${right}`, from: null });

function heldInWords(path: LoadPathTold, bearing: Bearing, short: readonly PathCaseTold[]): string {
  if (bearing === 'stops') return 'does not hold';
  if (short.length > 0) return `only to ${Math.floor(Math.min(...short.map(({ goodTo_kn }) => goodTo_kn!)))} knots`;
  if (bearing === 'condition') return 'whether it holds is not known';
  return path.verdict === 'no load' ? 'no load is written down, and nothing is known to be wrong' : 'holds';
}

/**
 * The open job that is about a path: one that its mending put in, or one whose title says the path's name. Of several, that
 * which says the part that fails, in its title or its steps.
 */
function openJobOf({ book }: OutingMatter, record: LoadPathRecord, fails: readonly PathMending[]): Id | null {
  const part = record.parts.find(({ id }) => id === fails[0]?.part);
  const words = (part?.name.trim() || part?.kind || '').toLowerCase().split(' ').at(-1)!;
  const says = (id: Id, title: string) =>
    [title, ...Object.values(book.steps).flatMap((step) => (step.job === id ? [step.title] : []))].some(
      (text) => words !== '' && text.toLowerCase().includes(words),
    );
  const about = Object.entries(book.jobs).filter(
    ([, job]) => job.state === 'open' && job.title.toLowerCase().includes(record.name.toLowerCase()),
  );
  return (about.find(([id, { title }]) => says(id, title)) ?? about[0])?.[0] ?? null;
}

interface Stands {
  readonly bearing: Bearing;
  readonly failing: readonly PathCaseTold[];
  readonly tooMuch: readonly PathCaseTold[];
  readonly short: readonly PathCaseTold[];
}

function remediesOf(
  matter: OutingMatter,
  record: LoadPathRecord,
  path: LoadPathTold,
  { bearing, failing, tooMuch, short }: Stands,
): readonly Remedy[] {
  const here = { collection: 'loadPaths', id: path.id } as const;
  if (bearing === 'condition' && short.length === 0)
    return [
      {
        words: `${path.name}: find out what its unknown parts are, by their marks or by measuring.`,
        minutes: null,
        waits: '',
        inHand: true,
        inTime: null,
        leaves: 'nothing',
        of: here,
      },
    ];
  const fails = pathMendings(record, path, failing[0] ?? short[0] ?? null, matter.time.today).filter(
    ({ gravity }) => gravity === 'fails',
  );
  const jobs = fails.map((mending) => pathJob(record, mending, null));
  const ofPath = openJobOf(matter, record, fails);
  // a part that is a jury rig goes when what it stands in for is done
  const standIns = record.parts.flatMap(({ id, juryRig }) => {
    const job = juryRig === null ? null : (matter.book.juryRigs[juryRig]?.job ?? null);
    return job !== null && matter.book.jobs[job]?.state === 'open' ? [{ part: id, job }] : [];
  });
  const minutes = jobs.reduce(
    (sum, { steps = [] }) => sum + steps.reduce((all, step) => all + step.minutes.likely, 0),
    0,
  );
  const goodTo_kn = Math.floor(Math.min(...[...tooMuch, ...short].map((each) => each.goodTo_kn!)));
  return [
    ...(standIns.length > 0 && fails.every(({ part }) => standIns.some((each) => each.part === part))
      ? [...new Set(standIns.map(({ job }) => job))].slice(0, 1).map((job) => doJob(matter, job))
      : []),
    ...(ofPath !== null
      ? [doJob(matter, ofPath)]
      : [
          {
            words:
              fails.length === 0
                ? `${path.name}: change what is first in it.`
                : `${path.name}: ${listInWords(fails.map(({ mend }) => mend.charAt(0).toLowerCase() + mend.slice(1)))}, ${lengthInWords(minutes)} of work as we guess it.`,
            minutes: fails.length === 0 ? null : minutes,
            waits: '',
            inHand: true,
            inTime: {
              kind: 'not in time' as const,
              words: 'It is no job yet: made one at its load path, the plan finds it a time.',
            },
            leaves: 'nothing' as const,
            of: here,
          },
        ]),
    ...(tooMuch.length > 0 && failing.length === tooMuch.length && goodTo_kn > 0
      ? [
          {
            words: `Go in no more than ${goodTo_kn} knots.`,
            minutes: null,
            waits: '',
            inHand: false,
            inTime: null,
            leaves: 'condition' as const,
            of: null,
          },
        ]
      : []),
  ];
}
