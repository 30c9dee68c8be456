/** What mends a load path: for each thing that fails or wants looking to, the job and the thing to get. */
import type { Id, LoadCaseRecord, LoadPathRecord, OperationFields, PathPartRecord } from '#boat-book';
import { type LoadPart, partInWords, shacklesThatFit, stepped } from '#loads';
import { forceInWords } from './load-path-in-words.ts';
import { type LoadPathTold, type PathCaseTold, type PathFinding, partsOfPath } from './load-path-told.ts';
import { stepTaking, type ThingTaken, type ThingToGet } from './thing-to-get.ts';

/** One thing to mend in a path. */
export interface PathMending {
  /** the part to change */
  readonly part: Id;
  readonly gravity: 'fails' | 'look';
  readonly wrong: string;
  readonly right: string;
  /** what to do, as a job is called: `Change the anchor shackle` */
  readonly mend: string;
  /** what to get for it; null: nothing */
  readonly toGet: PathThing | null;
}

/** A part to get. */
interface PathThing {
  /** `Nylon rope, 12 mm`; the kind alone where no size is known */
  readonly name: string;
  /** what it must be like where no size says it: `a jaw of 15 mm or more` */
  readonly wants: readonly string[];
  /** its size is of the tables: what it must be like is to be measured still */
  readonly byTables: boolean;
  readonly kind: PathPartRecord['kind'];
}

/** What is to get for a mending, in words. */
export const pathWantsInWords = ({ name, wants, byTables }: PathThing): string =>
  wants.length === 0 ? name : `${name}${byTables ? ' by the tables' : ''}: ${wants.join('; ')}`;

const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** A name inside a sentence: `Anchor shackle` is written small, `M6 bolt` is not. */
const inSentence = (name: string) =>
  /^\p{Lu}[\p{Ll} ]/u.test(name) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
const plainly = (part: PathPartRecord) => inSentence(part.name.trim() || partInWords(part));

/** What a part is called; where two of a path are called the same, with its place. */
function called({ parts }: LoadPathRecord, part: PathPartRecord): string {
  const same = parts.filter((other) => plainly(other) === plainly(part)).length > 1;
  return same ? `${plainly(part)} (part ${parts.indexOf(part) + 1})` : plainly(part);
}

/** A load in another wind than its own: it grows with the wind’s square. One that is not the wind’s stays as it is. */
export function caseInWind(record: LoadCaseRecord, wind_kn: number): LoadCaseRecord {
  if (record.wind_kn === null) return record;
  return { ...record, wind_kn, force_N: record.force_N * (wind_kn / record.wind_kn) ** 2 };
}

/**
 * What there is to mend in a path, what fails first.
 *
 * @param told    the path as it is told
 * @param borne   the load it must bear, as it is told; null: it has none
 * @param today   ages count up to it
 */
export function pathMendings(
  record: LoadPathRecord,
  told: LoadPathTold,
  borne: PathCaseTold | null,
  today: string,
): readonly PathMending[] {
  const found = told.findings.flatMap((finding) => mendingOf(record, told, finding));
  const parts = partsOfPath(record, today);
  const weak = weakIn(record, parts, borne).map((these) => tooWeak(record, parts, borne, told, these));
  const all = joined([...found.filter(({ gravity }) => gravity === 'fails'), ...weak, ...found.filter(isToLookTo)]);
  return all.map((mending) => withShackle(mending, record, parts, borne));
}

/** What to get for a shackle that fails names one of the tables that goes there and bears the load, where there is one. */
function withShackle(
  mending: PathMending,
  record: LoadPathRecord,
  parts: readonly LoadPart[],
  borne: PathCaseTold | null,
): PathMending {
  const i = record.parts.findIndex(({ id }) => id === mending.part);
  if (record.parts[i]?.kind !== 'shackle' || mending.toGet === null) return mending;
  const force_N = record.cases.find(({ id }) => id === borne?.id)?.force_N ?? null;
  const goes = shacklesThatFit(parts, i, record.use, force_N)[0];
  return goes === undefined
    ? mending
    : { ...mending, toGet: { ...mending.toGet, name: capital(partInWords(goes.part)), byTables: true } };
}

/** Two faults that one change of a part mends are one thing to mend. */
function joined(all: readonly PathMending[]): readonly PathMending[] {
  const firsts = all.filter(({ mend }, i) => all.findIndex((other) => other.mend === mend) === i);
  return firsts.map((first) => {
    const same = all.filter(({ mend }) => mend === first.mend);
    // what says a size says more than what says to take the same again
    const sized = same.flatMap(({ toGet }) => (toGet !== null && toGet.wants.length > 0 ? [toGet] : []));
    return {
      ...first,
      wrong: same.map(({ wrong }) => wrong).join(' '),
      right: same.map(({ right }) => right).join(' '),
      toGet:
        sized[0] === undefined
          ? first.toGet
          : { ...sized[0], wants: [...new Set(sized.flatMap(({ wants }) => wants))] },
    };
  });
}

const isToLookTo = ({ gravity }: PathMending) => gravity === 'look';

/** Of the parts that do not go together, the one that is changed: what goes through before what it goes through. */
const changedFirst: readonly PathPartRecord['kind'][] = ['shackle', 'pin', 'rigging screw', 'thimble', 'block'];

function mendingOf(record: LoadPathRecord, told: LoadPathTold, finding: PathFinding): readonly PathMending[] {
  const here = finding.parts.flatMap((id) => record.parts.filter((part) => part.id === id));
  const part = changedFirst.flatMap((kind) => here.filter((each) => each.kind === kind))[0] ?? here[0];
  if (part === undefined || finding.gravity === 'not known') return [];
  const { wrong, right } = finding;
  if (finding.gravity === 'look to it') {
    const mend = here.length > 1 ? null : secured(record, part);
    return mend === null ? [] : [{ part: part.id, gravity: 'look', wrong, right, mend, toGet: null }];
  }
  const gone = told.parts.find(({ id }) => id === part.id)?.state === 'replace';
  return [
    {
      part: part.id,
      gravity: 'fails',
      wrong,
      right,
      mend: gone ? `Replace the ${called(record, part)}` : `Change the ${called(record, part)}`,
      toGet:
        here.length > 1
          ? thing(part, capital(part.kind), [inSentence(right).replace(/\.$/, '')])
          : thing(part, capital(partInWords(part))),
    },
  ];
}

/** What keeps a part from coming undone, as a job is called; null: nothing of the kind. */
function secured(record: LoadPathRecord, part: PathPartRecord): string | null {
  if (part.kind === 'shackle') return `Mouse the ${called(record, part)}`;
  if (part.kind === 'pin') return `Secure the ${called(record, part)}`;
  return part.kind === 'rigging screw' ? `Lock the ${called(record, part)}` : null;
}

/** The parts over their working load, each rope or wire together with its knots, splices and terminals. */
function weakIn(
  record: LoadPathRecord,
  parts: readonly LoadPart[],
  borne: PathCaseTold | null,
): readonly (readonly number[])[] {
  const groups = new Map<number, number[]>();
  for (const i of record.parts.keys()) {
    if ((borne?.shares[i] ?? 0) <= 1) continue;
    // of a knot, splice or terminal it is the line that has sizes
    const of = stepped(parts, i, 'up', record.use)?.at ?? i;
    groups.set(of, [...(groups.get(of) ?? []), i]);
  }
  return [...groups].map(([of, these]) => [of, ...these.filter((i) => i !== of)]);
}

/**
 * A part that is too weak, with the first size of its kind that is not.
 *
 * @param these  the part to change, then what ends it: one at least is over its working load
 */
function tooWeak(
  record: LoadPathRecord,
  parts: readonly LoadPart[],
  borne: PathCaseTold | null,
  told: LoadPathTold,
  these: readonly number[],
): PathMending {
  const over = these.flatMap((i) => {
    const [share, atMost_N] = [borne?.shares[i] ?? 0, told.parts[i]!.atMost_N ?? 0];
    return share > 1 ? [{ i, load_N: share * atMost_N, atMost_N }] : [];
  });
  const changed = these[0]!;
  const part = record.parts[changed]!;
  const load_N = Math.max(...over.map((each) => each.load_N));
  const other = strongEnough(parts, changed, record.use, these, load_N);
  const stronger = other === null ? null : partInWords(other);
  const marked = `one marked for ${forceInWords(load_N)} or more`;
  return {
    part: part.id,
    gravity: 'fails',
    wrong: over
      .map(
        (each) =>
          `The ${called(record, record.parts[each.i]!)} bears ${forceInWords(each.load_N)}, and may work at ${forceInWords(each.atMost_N)}.`,
      )
      .join(' '),
    right: `${capital(stronger ?? marked)}.`,
    mend: `Fit a stronger ${called(record, part)}`,
    toGet:
      stronger === null
        ? thing(part, capital(part.kind === 'fitting' ? part.what : part.kind), [marked])
        : thing(part, capital(stronger)),
  };
}

/**
 * The first size up of a part with which it, new, and what ends it bear a load of the path; null: no table has one.
 *
 * @param i      the part to change
 * @param these  the parts that must bear it
 */
function strongEnough(
  parts: readonly LoadPart[],
  i: number,
  use: LoadPathRecord['use'],
  these: readonly number[],
  load_N: number,
): LoadPart | null {
  let now = parts;
  // a table has some ten sizes
  for (let size = 0; size < 20; size++) {
    const next = stepped(now, i, 'up', use);
    if (next === null) return null;
    const bears = these.every((each) => {
      const { strength, times } = next.path.parts[each]!;
      return strength.kind === 'known' && times !== null && strength.working_N >= load_N * times;
    });
    if (bears) return next.part;
    now = now.with(next.at, next.part);
  }
  return null;
}

/** What is held before a part of a path is let go, by what the path is for (common practice). */
const heldFirst: Readonly<Record<LoadPathRecord['use'], string>> = {
  'ground-tackle': 'She lies to something else meanwhile: the shore, a mooring, her trailer.',
  'standing-rigging':
    'What is taken off holds the mast up: make a halyard fast to the same side first and set it up, or lower the mast.',
  'running-rigging': 'The sail is down and nothing hangs on the line.',
  hoist: 'The load rests on blocks or on its pin before its wire is let go: nobody under it, no hand below it.',
};

const thing = ({ kind }: PathPartRecord, name: string, wants: readonly string[] = []): PathThing => ({
  name,
  wants,
  byTables: false,
  kind,
});

/** Parts that are cut to length; how long a path does not say. */
const byTheMetre: readonly PathPartRecord['kind'][] = ['rope', 'wire', 'chain'];

/** What to get for a mending; null where nothing is. Where no size is known, what it must be like is its name. */
export function pathToGet(record: LoadPathRecord, { part, toGet }: PathMending): ThingToGet | null {
  if (toGet === null) return null;
  const old = record.parts.find(({ id }) => id === part);
  const cut = byTheMetre.includes(toGet.kind);
  const { name, wants, byTables } = toGet;
  return {
    name: byTables ? name : pathWantsInWords(toGet),
    amount: cut ? null : 1,
    unit: cut ? 'm' : '',
    note: [
      `For ${record.name}${old ? `, in place of the ${called(record, old)}` : ''}.`,
      byTables && wants.length > 0 ? `It wants ${wants.join('; ')}.` : '',
      cut ? 'Measure how long, and the parts beside it.' : 'Measure the parts beside it first.',
    ]
      .filter((words) => words !== '')
      .join(' '),
  };
}

/**
 * The job that mends a part of a path. Its minutes are our guess, for the keeper to change.
 *
 * @param taken  what is to get for it, as it is taken out of the stores; null: nothing is
 */
export function pathJob(
  record: LoadPathRecord,
  { gravity, wrong, right, mend }: PathMending,
  taken: ThingTaken | null,
): OperationFields<'addJob'> {
  return {
    title: `${mend}: ${record.name}`,
    why: `${wrong} Right would be: ${inSentence(right)}`,
    consequence: gravity === 'look' ? 'worsens' : record.use === 'running-rigging' ? 'stops-sailing' : 'danger',
    zone: record.zone,
    steps: [
      {
        title: mend,
        minutes: { low: 10, likely: 25, high: 60 },
        hands: 1,
        cautions: [heldFirst[record.use]],
        ...(taken === null ? {} : stepTaking([taken])),
      },
    ],
  };
}
