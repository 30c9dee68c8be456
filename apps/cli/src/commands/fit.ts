import type { Book, Id, Outing } from '#boat-book';
import {
  gearFindings,
  outingFit,
  outingSets,
  type PlannerKnows,
  planInForce,
  planInMinutesOf,
  planOddsInWords,
  powerFindings,
  problemFrom,
} from '#reckoning';
import { isDay, localAt } from '#units';
import { checkProblem, startOdds, violations } from '#workplan';
import { readArguments } from '../arguments.ts';
import { fitLines } from '../fit-lines.ts';
import { readBookFile } from '../read-book-file.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';
import { instant } from './plan.ts';

export const fitUsage = [
  'fettle fit FILE [--outing NAME] [--now INSTANT] [--working]',
  '  is she fit to go? For each outing ahead of a boat file one answer, what would make her fit, and what was not looked at',
  '  --outing NAME   only outings with that in their name',
  '  --now INSTANT   as from then, such as 2026-05-09T10:40:00Z; now where not given',
  '  --working       each reason, down to its figures and their days, too',
];

const seed = 1;
const mostRuns = 400;
/** no more runs for the odds are begun after so long. [ms] */
const most_ms = 4000;

/** `fettle fit`: whether she is fit to go, as the app tells of it. */
export function fit(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const refuse = (wrong: string): ExitCode => {
    out(wrong);
    for (const line of fitUsage) out(`  ${line}`);
    return exit.usage;
  };
  const read = readArguments(args, {
    plain: ['FILE'],
    valued: { outing: 'a part of its name', now: 'an instant such as 2026-05-09T10:40:00Z' },
    bare: ['working'],
  });
  if (read.kind === 'refused') return refuse(read.wrong);
  const { outing: named, now: said } = read.valued;
  const now = said === undefined ? new Date(surroundings.now()).toISOString() : instant(said);
  if (now === null) return refuse(`--now takes an instant with its zone, such as 2026-05-09T10:40:00Z, got '${said}'`);
  const file = readBookFile(read.plain[0]!, surroundings);
  if (file.kind === 'refused') {
    for (const line of file.because) out(line);
    return exit.refused;
  }
  const { book } = file;
  const zone = Object.values(book.places)[0]?.timeZone ?? 'UTC';
  const { day } = localAt(Date.parse(now), zone);
  const ahead = Object.entries(book.outings)
    .filter(([, { date }]) => isDay(date) && date >= day)
    .sort(([, a], [, b]) => a.date.localeCompare(b.date));
  const wanted = ahead.filter(
    ([, { title }]) => named === undefined || title.toLowerCase().includes(named.toLowerCase()),
  );
  if (wanted.length === 0) {
    out(
      named === undefined || ahead.length === 0
        ? 'No outing is ahead in this book. Put the next sail in under Go.'
        : `No outing ahead has '${named}' in its name; there ${ahead.length === 1 ? 'is' : 'are'} ${ahead.map(([, { title }]) => title).join(', ')}.`,
    );
    return named === undefined || ahead.length === 0 ? exit.done : exit.refused;
  }
  const knows = plannerOf(book, now, surroundings);
  for (const [id, outing] of wanted)
    for (const line of answerOf(book, id, outing, { now, knows, working: read.bare.has('working') })) out(line);
  for (const note of file.notes) out(`  ${note}`);
  return exit.done;
}

function answerOf(
  book: Book,
  id: Id,
  outing: Outing,
  { now, knows, working }: { readonly now: string; readonly knows: PlannerKnows; readonly working: boolean },
): readonly string[] {
  const at = Date.parse(now);
  const nights = powerFindings(book, outing, at);
  return fitLines(
    outing,
    outingFit(book, id, outing, at, { gear: gearFindings(book, id, at), nights, knows }),
    working,
  );
}

/** The odds of the plan that is kept in the book. One that the book has outrun has none: `fettle plan` makes another. */
function plannerOf(book: Book, now: string, { elapsed }: Surroundings): PlannerKnows {
  const without = (nothing: string): PlannerKnows => ({ leftOut: {}, odds: null, nothing });
  const matter = problemFrom(book, { now });
  if (matter.kind === 'nothing to plan') return without(matter.words);
  const checked = checkProblem(matter.problem);
  const kept = planInForce(book);
  if (checked.kind === 'refused') return without('this book cannot be planned; fettle check says more');
  if (kept === null) return without('no plan is kept in this book; the app makes one under Days');
  const plan = planInMinutesOf(kept, checked.problem);
  if (violations(plan, checked.problem).length > 0)
    return without('the plan kept in this book does not hold any more; the app makes another under Days');
  const run = startOdds(checked.problem, plan, { seed, sets: outingSets(book, checked.problem) });
  const ends = elapsed() + most_ms;
  let odds = run.advance(20);
  while (odds.runs < mostRuns && elapsed() < ends) odds = run.advance(20);
  return { leftOut: {}, odds: planOddsInWords(odds, checked.problem, book), nothing: null };
}
