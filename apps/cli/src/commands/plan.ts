import { checkBook } from '#boat-book';
import { planInForce, planInMinutesOf, problemFrom } from '#reckoning';
import { checkProblem, startSearch } from '#workplan';
import { readArguments } from '../arguments.ts';
import { holdLines } from '../hold-lines.ts';
import { movesLines } from '../moves-lines.ts';
import { oddsInLines } from '../odds-in-lines.ts';
import { planInLines } from '../plan-in-lines.ts';
import { readBookFile } from '../read-book-file.ts';
import { reasonsInLines } from '../reasons-in-lines.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';
import { windowLines } from '../window-lines.ts';

export const planUsage = [
  'fettle plan FILE [--seconds S] [--now INSTANT] [--json]',
  '  lays the open jobs of a boat file into its job days and prints the plan with its reasons',
  '  --seconds S     how long to look for a better plan: 0.1 to 600, 3 where not given;',
  '                  up to twice as long again to work out the odds',
  '  --now INSTANT   plan as from then, such as 2026-05-09T10:40:00Z; now where not given',
  '  --json          the outcome as data: plan, worth, verdict, obstacles',
];

/** The app looks with the same one, so that both give the same plan. */
const seed = 1;
const defaultSeconds = 3;

/** `fettle plan`: the plan of a boat file, as the app makes it. */
export function plan(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const read = readArguments(args, {
    plain: ['FILE'],
    valued: { seconds: 'a number of seconds from 0.1 to 600', now: 'an instant such as 2026-05-09T10:40:00Z' },
    bare: ['json'],
  });
  if (read.kind === 'refused') return refuse(out, read.wrong);
  const seconds = read.valued.seconds === undefined ? defaultSeconds : Number(read.valued.seconds);
  if (!(seconds >= 0.1 && seconds <= 600))
    return refuse(out, `--seconds takes a number of seconds from 0.1 to 600, got '${read.valued.seconds}'`);
  const now = read.valued.now === undefined ? new Date(surroundings.now()).toISOString() : instant(read.valued.now);
  if (now === null)
    return refuse(out, `--now takes an instant with its zone, such as 2026-05-09T10:40:00Z, got '${read.valued.now}'`);

  const file = readBookFile(read.plain[0]!, surroundings);
  if (file.kind === 'refused') {
    for (const line of file.because) out(line);
    return exit.refused;
  }
  const json = read.bare.has('json');
  const matter = problemFrom(file.book, { now });
  if (matter.kind === 'nothing to plan') {
    if (json) out(JSON.stringify(matter, null, 2));
    else {
      for (const line of [matter.words, ...matter.notes.map((note) => `  ${note.words}`)]) out(line);
      if (matter.because === 'no job days ahead') for (const line of windowLines(file.book, now)) out(line);
    }
    return exit.done;
  }
  const checked = checkProblem(matter.problem);
  if (checked.kind === 'refused') {
    out('This book cannot be planned; fettle check says more:');
    for (const { where, wrong, right } of checked.faults) out(`  ${where}: ${wrong}; right would be ${right}`);
    return exit.refused;
  }
  const kept = planInForce(file.book);
  const from = kept === null ? null : planInMinutesOf(kept, checked.problem);
  const start = from === null ? { seed } : { seed, plan: from };
  const search = startSearch(checked.problem, start);
  const beside = surroundings.besideThread?.() ?? null;
  beside?.begin(search, checked.problem, start);
  const ends = surroundings.elapsed() + seconds * 1000;
  let slice = 1;
  for (;;) {
    const before = surroundings.elapsed();
    if (before >= ends || search.advance(slice).finished) break;
    // slices of about a twentieth of a second
    if (surroundings.elapsed() - before < 50) slice = Math.min(slice * 2, 4096);
    beside?.swap();
  }
  beside?.close();
  const outcome = search.outcome();
  if (json) out(JSON.stringify(outcome, null, 2));
  else {
    for (const line of planInLines(outcome, checked.problem, { book: file.book, notes: matter.notes })) out(line);
    const { elapsed } = surroundings;
    for (const line of reasonsInLines(outcome, checked.problem, { seed, elapsed, most_ms: seconds * 3000 })) out(line);
    for (const line of movesLines(outcome, checked.problem, file.book)) out(line);
    for (const line of holdLines(outcome, checked.problem, { book: file.book, seed, elapsed, most_ms: seconds * 1000 }))
      out(line);
    for (const line of oddsInLines(outcome, checked.problem, {
      book: file.book,
      seed,
      elapsed,
      most_ms: seconds * 2000,
    }))
      out(line);
    for (const note of file.notes) out(`  ${note}`);
    const faults = checkBook(file.book).length;
    if (faults > 0)
      out(
        `fettle check finds ${faults} ${faults === 1 ? 'thing' : 'things'} wrong in this book; the plan is of the book as it is.`,
      );
  }
  return exit.done;
}

function refuse(out: Surroundings['out'], wrong: string): ExitCode {
  out(wrong);
  for (const line of planUsage) out(`  ${line}`);
  return exit.usage;
}

/** An instant with its zone, as UTC; null for anything else. */
export function instant(words: string): string | null {
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,3})?)?(Z|[+-]\d{2}:?\d{2})$/.test(words)) return null;
  const ms = Date.parse(words);
  return Number.isNaN(ms) ? null : new Date(ms).toISOString();
}
