import { type Book, checkBook } from '#boat-book';
import { obstacleInWords, problemFrom } from '#reckoning';
import { checkProblem, type Obstacle, startSearch } from '#workplan';
import { readArguments } from '../arguments.ts';
import { readBookFile } from '../read-book-file.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';
import { instant } from './plan.ts';

export const checkUsage = [
  'fettle check FILE [--now INSTANT]',
  '  says what is wrong in a boat file: in its form, in what its records say of each other, and for the planner',
  '  --now INSTANT   look at it as from then, such as 2026-05-09T10:40:00Z; now where not given',
];

/** Obstacles that no weather and no shopping will move: something in the book is to be changed. */
const faultsOfTheBook: ReadonlySet<Obstacle['kind']> = new Set([
  'steps wait for each other',
  'longer than any day',
  'deadline',
  'no tool',
  'no such place',
  'set-up out of reach',
  'held elsewhere',
]);

/** `fettle check`: exit 0 where nothing is wrong, 1 where something is. */
export function check(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const refuse = (wrong: string): ExitCode => {
    out(wrong);
    for (const line of checkUsage) out(`  ${line}`);
    return exit.usage;
  };
  const read = readArguments(args, {
    plain: ['FILE'],
    valued: { now: 'an instant such as 2026-05-09T10:40:00Z' },
    bare: [],
  });
  if (read.kind === 'refused') return refuse(read.wrong);
  const now = read.valued.now === undefined ? new Date(surroundings.now()).toISOString() : instant(read.valued.now);
  if (now === null)
    return refuse(`--now takes an instant with its zone, such as 2026-05-09T10:40:00Z, got '${read.valued.now}'`);
  const path = read.plain[0]!;
  const file = readBookFile(path, surroundings);
  if (file.kind === 'refused') {
    for (const line of file.because) out(line);
    return exit.refused;
  }
  const faults = checkBook(file.book).map(({ where, wrong, right }) => `${where}: ${wrong}; right would be ${right}`);
  const planner = plannerFaults(file.book, now, faults);
  const wrong = [...faults, ...planner.wrong];
  if (wrong.length > 0) {
    out(`${path}: ${wrong.length} ${wrong.length === 1 ? 'thing is' : 'things are'} wrong.`);
    for (const line of wrong) out(`  ${line}`);
  } else {
    const { jobs, steps, jobDays } = file.book;
    out(
      `${path}: nothing wrong. ${count(jobs, 'job')}, ${count(steps, 'step')}, ${count(jobDays, 'job day')} looked at.`,
    );
  }
  const also = [...file.notes, ...planner.also];
  if (also.length > 0) {
    out('Worth knowing:');
    for (const line of also) out(`  ${line}`);
  }
  return wrong.length > 0 ? exit.refused : exit.done;
}

const count = (records: Readonly<Record<string, unknown>>, word: string) => {
  const many = Object.keys(records).length;
  return `${many} ${word}${many === 1 ? '' : 's'}`;
};

/** What the planner says of the book: what is wrong for it, and what merely keeps a job out for now. */
function plannerFaults(
  book: Book,
  now: string,
  said: readonly string[],
): { readonly wrong: string[]; readonly also: string[] } {
  const matter = problemFrom(book, { now });
  const also = matter.notes.map((note) => note.words);
  if (matter.kind === 'nothing to plan') return { wrong: [], also: [matter.words, ...also] };
  const checked = checkProblem(matter.problem);
  if (checked.kind === 'refused')
    return {
      wrong: checked.faults.map(({ where, wrong, right }) => `${where}: ${wrong}; right would be ${right}`),
      also,
    };
  const search = startSearch(checked.problem, { seed: 1 });
  search.advance(1);
  const wrong: string[] = [];
  for (const obstacle of search.outcome().obstacles) {
    const title = checked.problem.jobs.find((job) => job.id === obstacle.job)?.title ?? obstacle.job;
    const { why, gain } = obstacleInWords(obstacle, checked.problem);
    const line = `job '${title}': ${why}${gain ? ` ${gain}` : ''}`;
    if (faultsOfTheBook.has(obstacle.kind)) {
      if (!saidOf(obstacle, said)) wrong.push(line);
    }
    // that one plan of many has no room for it is not a thing about the book
    else if (obstacle.kind !== 'no room left' && obstacle.kind !== 'waits for a job left out') also.push(line);
  }
  return { wrong, also };
}

/** The same was said of the step or job already, from the records alone. */
function saidOf(obstacle: Obstacle, said: readonly string[]): boolean {
  if (obstacle.kind === 'steps wait for each other') return said.some((line) => line.includes('round in a ring'));
  const ids = 'step' in obstacle ? [obstacle.step, obstacle.job] : [obstacle.job];
  return ids.some((id) => said.some((line) => line.includes(`(${id})`)));
}
