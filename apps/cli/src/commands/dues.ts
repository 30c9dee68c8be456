import { dueBesideOuting, dueParts, duesOfBook, dueUsual, dueWhen } from '#reckoning';
import { isDay, localAt } from '#units';
import { readArguments } from '../arguments.ts';
import { readBookFile } from '../read-book-file.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';

export const duesUsage = [
  'fettle dues FILE [--today DAY] [--working]',
  '  what of a boat file falls due, the first first: past, soon, later, and what cannot be foretold',
  '  --today DAY     as from that day, such as 2026-05-09; today at the boat’s place where not given',
  '  --working       each part of its rule, and where the rule is from, too',
];

/** `fettle dues`: what falls due of a boat file, as the app tells of it. */
export function dues(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const refuse = (wrong: string): ExitCode => {
    out(wrong);
    for (const line of duesUsage) out(`  ${line}`);
    return exit.usage;
  };
  const read = readArguments(args, {
    plain: ['FILE'],
    valued: { today: 'a day such as 2026-05-09' },
    bare: ['working'],
  });
  if (read.kind === 'refused') return refuse(read.wrong);
  const { today: said } = read.valued;
  if (said !== undefined && !isDay(said)) return refuse(`--today takes a day such as 2026-05-09, got '${said}'`);
  const file = readBookFile(read.plain[0]!, surroundings);
  if (file.kind === 'refused') {
    for (const line of file.because) out(line);
    return exit.refused;
  }
  const { book } = file;
  const zone = Object.values(book.places)[0]?.timeZone ?? 'UTC';
  const today = said ?? localAt(surroundings.now(), zone).day;
  const all = duesOfBook(book, today);
  if (all.length === 0) out('Nothing comes round in this book. Put in what does under Go.');
  for (const dueOf of all) {
    const beside = dueBesideOuting(dueOf, book, today);
    out(`${dueOf.stage.padEnd(9)}  ${dueOf.due.title}. ${dueWhen(dueOf, today)}${beside === null ? '' : ` ${beside}`}`);
    if (!read.bare.has('working')) continue;
    for (const part of dueParts(dueOf, today)) out(`             ${part}`);
    const usual = dueUsual(dueOf);
    if (usual !== null) out(`             ${usual}`);
  }
  for (const note of file.notes) out(`  ${note}`);
  return exit.done;
}
