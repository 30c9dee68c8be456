import type { Book, Day, Id, LoadCaseRecord, LoadPathRecord, PathPartRecord } from '#boat-book';
import {
  type CaseBorne,
  caseBorne,
  type LoadPart,
  type Misfit,
  type PathBears,
  partInWords,
  pathBears,
  placesUnknown,
} from '#loads';
import { daysBetween } from '#units';
import type { WorkingTold } from './circuits-told.ts';
import {
  atMostInWords,
  bearsInWords,
  caseInWords,
  loadPathCautions,
  noticesOf,
  partWorking,
  steppedInWords,
} from './load-path-in-words.ts';

/** A part as it is told and drawn, in the order of the path. */
export interface PathPartTold {
  readonly id: Id;
  /** the keeper’s name for it, or what it is */
  readonly name: string;
  /** `stainless shackle, 8 mm` */
  readonly what: string;
  readonly state: 'known' | 'with its eye' | 'unknown' | 'replace';
  /** what it bears, in a sentence */
  readonly bears: string;
  /** working load, of the load of the path; null: not known, or it bears with its eye. [N] */
  readonly atMost_N: number | null;
  /** the first of those known to reach its working load */
  readonly isWeakest: boolean;
  readonly isJuryRig: boolean;
  readonly working: readonly WorkingTold[];
}

/** What is wrong in a path, gravest first. */
export interface PathFinding {
  /** the parts it is about */
  readonly parts: readonly Id[];
  readonly gravity: Misfit['gravity'];
  readonly wrong: string;
  readonly right: string;
}

/** One load, and how the path bears it. */
export interface PathCaseTold {
  readonly id: Id;
  readonly name: string;
  readonly verdict: CaseBorne['verdict']['kind'];
  /** whole sentences: whether it holds, which part is first, the wind it is good to */
  readonly lines: readonly string[];
  /** share of its working load that each part bears, in the order of the path; null: not known */
  readonly shares: readonly (number | null)[];
  readonly goodTo_kn: number | null;
}

/** All that is told of a load path, in whole sentences. */
export interface LoadPathTold {
  readonly id: Id;
  readonly name: string;
  /** of the gravest case; `no load`: none is said, and nothing is known to be wrong */
  readonly verdict: CaseBorne['verdict']['kind'] | 'no load';
  /** the path as a whole: what it bears and where it is unknown */
  readonly lines: readonly string[];
  readonly parts: readonly PathPartTold[];
  readonly cases: readonly PathCaseTold[];
  readonly findings: readonly PathFinding[];
  /** what another size of the weakest part would change */
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
}

const year_days = 365.25;

/** The parts of a path as the reckoning takes them, on a day. */
export function partsOfPath({ parts }: LoadPathRecord, today: Day): readonly LoadPart[] {
  return parts.map((part) => ({
    ...part,
    years: part.since === null ? null : Math.max(0, daysBetween(part.since, today)) / year_days,
  }));
}

/** Every load path of the book, told as it stands on a day. */
export function loadPathsTold(book: Book, today: Day): readonly LoadPathTold[] {
  return Object.entries(book.loadPaths).map(([id, path]) => loadPathTold(id, path, today));
}

/** A load path told as it stands on a day, also one that is not in the book yet. */
export function loadPathTold(id: Id, record: LoadPathRecord, today: Day): LoadPathTold {
  const parts = partsOfPath(record, today);
  const path = pathBears(parts, record.use);
  const nameOf = (i: number): string => record.parts[i]!.name.trim() || partInWords(record.parts[i]!);
  const cases = record.cases.map((each) => caseTold(path, each, nameOf));
  return {
    id,
    name: record.name,
    verdict: gravest(cases, path),
    lines: atMostInWords(path, nameOf),
    parts: record.parts.map((part, i) => partTold(part, path, i, nameOf)),
    cases,
    findings: noticesOf(path, nameOf).map(({ at, ...words }) => ({
      ...words,
      parts: at.map((i) => record.parts[i]!.id),
    })),
    steps: path.weakest === null ? [] : steppedInWords(parts, path.weakest, record.use, path, nameOf),
    cautions: loadPathCautions(record.use),
  };
}

function gravest(cases: readonly PathCaseTold[], path: PathBears): LoadPathTold['verdict'] {
  for (const kind of ['does not hold', 'unknown', 'holds'] as const)
    if (cases.some(({ verdict }) => verdict === kind)) return kind;
  const apart = path.misfits.some(({ gravity }) => gravity === 'does not go together');
  return path.replace.length > 0 || apart ? 'does not hold' : placesUnknown(path) > 0 ? 'unknown' : 'no load';
}

function partTold(part: PathPartRecord, path: PathBears, i: number, nameOf: (i: number) => string): PathPartTold {
  const { strength, times } = path.parts[i]!;
  return {
    id: part.id,
    name: nameOf(i),
    what: partInWords(part),
    state: strength.kind,
    bears: bearsInWords(strength, times),
    atMost_N: strength.kind === 'known' && times !== null && times > 0 ? strength.working_N / times : null,
    isWeakest: path.weakest === i,
    isJuryRig: part.juryRig !== null,
    working: partWorking(strength, times),
  };
}

function caseTold(path: PathBears, record: LoadCaseRecord, nameOf: (i: number) => string): PathCaseTold {
  const borne = caseBorne(path, record);
  return {
    id: record.id,
    name: record.name,
    verdict: borne.verdict.kind,
    lines: caseInWords(path, record, borne, nameOf),
    shares: borne.shares,
    goodTo_kn: borne.goodTo_kn,
  };
}
