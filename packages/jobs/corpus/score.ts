/** Lines and pages as read, held against the hand's marks. */
import type { Proposal, ReadLine, WalkRound } from '../src/index.ts';
import type { MarkedLine, MarkedPage, MarkedParts, PageMark } from './marked.ts';

export interface Score {
  readonly right: number;
  readonly of: number;
  /** what was not right, for a person to read */
  readonly wrong: readonly string[];
}

/** What was read, in the form it is marked in. */
function partsRead(read: ReadLine): MarkedParts {
  const { minutes, setUps, conditions } = read;
  const length = minutes?.value;
  return {
    ...(read.zone ? { zone: read.zone.value } : {}),
    ...(read.fitting ? { fitting: read.fitting.value } : {}),
    ...(length ? { minutes: length.low === null ? length.likely : [length.low, length.likely, length.high ?? 0] } : {}),
    ...(read.hands ? { hands: read.hands.value } : {}),
    ...(read.notAlone ? { notAlone: true } : {}),
    ...(setUps.length > 0 ? { setUps: Object.fromEntries(setUps.map(({ value }) => [value.setUp, value.state])) } : {}),
    ...(conditions.length > 0 ? { conditions: Object.assign({}, ...conditions.map(({ value }) => value)) } : {}),
    ...(read.consequence ? { consequence: read.consequence.value } : {}),
    ...(read.due ? { due: read.due.value } : {}),
    ...(read.outing ? { outing: read.outing.value } : {}),
    ...(read.temporary ? { temporary: true } : {}),
  };
}

const spelled = (value: unknown): string =>
  JSON.stringify(value, (_, each) =>
    each && typeof each === 'object' && !Array.isArray(each) ? Object.fromEntries(Object.entries(each).sort()) : each,
  ) ?? 'nothing';

/** Every part marked or read of every line, and what must be left in its title. */
export function scoreLines(marked: readonly MarkedLine[], readLine: (line: string) => ReadLine): Score {
  const wrong: string[] = [];
  let of = 0;
  for (const [line, { what, ...marks }] of marked) {
    const read = readLine(line);
    const parts = partsRead(read);
    const keys = [...new Set([...Object.keys(marks), ...Object.keys(parts)])] as (keyof MarkedParts)[];
    for (const key of keys)
      if (spelled(parts[key]) !== spelled(marks[key]))
        wrong.push(`${line}\n    ${key}: ${spelled(parts[key])}, marked ${spelled(marks[key])}`);
    if (!read.title.toLowerCase().includes(what)) wrong.push(`${line}\n    title: '${read.title}', marked '${what}'`);
    of += keys.length + 1;
  }
  return { right: of - wrong.length, of, wrong };
}

export interface PageScore {
  /** jobs and jury rigs */
  readonly work: Score;
  readonly falseWork: readonly string[];
  readonly proposedWork: number;
  /** readings and stores */
  readonly other: Score;
  readonly falseOther: readonly string[];
  readonly proposedOther: number;
  /** the parts that are marked, of the jobs and jury rigs found */
  readonly parts: Score;
}

const isWork = ({ kind }: { readonly kind: PageMark['kind'] }) => kind === 'job' || kind === 'jury rig';

/** Each mark is met by at most one proposal, and each proposal meets at most one mark. */
export function scorePages(pages: readonly MarkedPage[], readPage: (page: string) => WalkRound): PageScore {
  const missed: Record<'work' | 'other' | 'parts', string[]> = { work: [], other: [], parts: [] };
  const falseOnes: Record<'work' | 'other', string[]> = { work: [], other: [] };
  const of = { work: 0, other: 0, parts: 0 };
  const proposed = { work: 0, other: 0 };
  for (const { name, page, marks } of pages) {
    const left = [...readPage(page).proposals];
    for (const one of left) proposed[isWork(one) ? 'work' : 'other']++;
    for (const mark of marks) {
      const sort = isWork(mark) ? 'work' : 'other';
      of[sort]++;
      const at = left.findIndex((one) => one.kind === mark.kind && meets(one, page.indexOf(mark.at), mark.at.length));
      if (at < 0) {
        missed[sort].push(`${name}: ${mark.kind} '${mark.at}'`);
        continue;
      }
      const [found] = left.splice(at, 1);
      if (!found || !('read' in found)) continue;
      const read = partsRead(found.read);
      for (const key of Object.keys(mark.parts) as (keyof PageMark['parts'])[]) {
        of.parts++;
        if (spelled(read[key]) !== spelled(mark.parts[key]))
          missed.parts.push(`${name}: '${mark.at}' ${key}: ${spelled(read[key])}, marked ${spelled(mark.parts[key])}`);
      }
    }
    for (const one of left) falseOnes[isWork(one) ? 'work' : 'other'].push(`${name}: ${one.kind} '${one.said}'`);
  }
  const score = (sort: 'work' | 'other' | 'parts'): Score => ({
    right: of[sort] - missed[sort].length,
    of: of[sort],
    wrong: missed[sort],
  });
  return {
    work: score('work'),
    falseWork: falseOnes.work,
    proposedWork: proposed.work,
    other: score('other'),
    falseOther: falseOnes.other,
    proposedOther: proposed.other,
    parts: score('parts'),
  };
}

const meets = (one: Proposal, from: number, length: number) =>
  one.spans.some((span) => span.from < from + length && from < span.to);
