import { bookOnDay } from '../book-on-day.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';
import { trailerLines } from '../trailer-lines.ts';

export const trailerUsage = [
  'fettle trailer FILE [--today DAY] [--working]',
  '  what presses on ball and axle of each trailer of a boat file, against its papers, with what to move and what is wrong',
  '  --today DAY     as on that day, for the age of its tyres, such as 2026-05-09; today at the boat’s place where not given',
  '  --working       how the figures are worked out, too',
];

/** `fettle trailer`: the trailers of a boat file, as the app tells of them. */
export function trailer(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const read = bookOnDay(args, surroundings, trailerUsage, { valued: {}, bare: ['working'] });
  if (read.kind === 'ended') return read.code;
  const { book, today, bare, notes } = read;
  const ids = Object.keys(book.trailers);
  if (ids.length === 0) out('There is no trailer in this book. Put one in under Boat, with its sizes and its papers.');
  for (const [n, id] of ids.entries()) {
    if (n > 0) out('');
    for (const line of trailerLines(book, id, today, bare.has('working'))) out(line);
  }
  for (const note of notes) out(`  ${note}`);
  return exit.done;
}
