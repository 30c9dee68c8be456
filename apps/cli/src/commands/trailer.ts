import { isDay, localAt } from '#units';
import { readArguments } from '../arguments.ts';
import { readBookFile } from '../read-book-file.ts';
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
  const refuse = (wrong: string): ExitCode => {
    out(wrong);
    for (const line of trailerUsage) out(`  ${line}`);
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
  const ids = Object.keys(book.trailers);
  if (ids.length === 0) out('There is no trailer in this book. Put one in under Boat, with its sizes and its papers.');
  for (const [n, id] of ids.entries()) {
    if (n > 0) out('');
    for (const line of trailerLines(book, id, today, read.bare.has('working'))) out(line);
  }
  for (const note of file.notes) out(`  ${note}`);
  return exit.done;
}
