import { dueBesideOuting, dueParts, dueRenewal, duesAndPapers, dueUsual, dueWhen } from '#reckoning';
import { bookOnDay } from '../book-on-day.ts';
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
  const read = bookOnDay(args, surroundings, duesUsage, { valued: {}, bare: ['working'] });
  if (read.kind === 'ended') return read.code;
  const { book, today, bare, notes } = read;
  const all = duesAndPapers(book, today);
  if (all.length === 0) out('Nothing comes round in this book. Put in what does under Go.');
  for (const dueOf of all) {
    const beside = dueBesideOuting(dueOf, book, today);
    out(`${dueOf.stage.padEnd(9)}  ${dueOf.due.title}. ${dueWhen(dueOf, today)}${beside === null ? '' : ` ${beside}`}`);
    const renewal = dueRenewal(dueOf);
    if (renewal !== null && dueOf.stage !== 'later') out(`             ${renewal}`);
    if (!bare.has('working')) continue;
    for (const part of dueParts(dueOf, today)) out(`             ${part}`);
    const usual = dueUsual(dueOf);
    if (usual !== null) out(`             ${usual}`);
  }
  for (const note of notes) out(`  ${note}`);
  return exit.done;
}
