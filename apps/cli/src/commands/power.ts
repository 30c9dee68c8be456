import { readArguments } from '../arguments.ts';
import { circuitLines, powerLines } from '../power-lines.ts';
import { readBookFile } from '../read-book-file.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';
import { instant } from './plan.ts';

export const powerUsage = [
  'fettle power FILE [--nights N] [--now INSTANT] [--working]',
  '  how full each battery of a boat file is and why, how the nights ahead will go, and what is wrong with its circuits',
  '  --nights N      nights looked at: 1 to 7, 3 where not given',
  '  --now INSTANT   as from then, such as 2026-05-09T18:40:00Z; now where not given',
  '  --working       how the figures are worked out, too',
];

const usualNights = 3;

/** `fettle power`: the batteries and circuits of a boat file, as the app tells of them. */
export function power(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const refuse = (wrong: string): ExitCode => {
    out(wrong);
    for (const line of powerUsage) out(`  ${line}`);
    return exit.usage;
  };
  const read = readArguments(args, {
    plain: ['FILE'],
    valued: { nights: 'a whole number from 1 to 7', now: 'an instant such as 2026-05-09T18:40:00Z' },
    bare: ['working'],
  });
  if (read.kind === 'refused') return refuse(read.wrong);
  const nights = read.valued.nights === undefined ? usualNights : Number(read.valued.nights);
  if (!(Number.isInteger(nights) && nights >= 1 && nights <= 7))
    return refuse(`--nights takes a whole number from 1 to 7, got '${read.valued.nights}'`);
  const now = read.valued.now === undefined ? new Date(surroundings.now()).toISOString() : instant(read.valued.now);
  if (now === null)
    return refuse(`--now takes an instant with its zone, such as 2026-05-09T18:40:00Z, got '${read.valued.now}'`);
  const file = readBookFile(read.plain[0]!, surroundings);
  if (file.kind === 'refused') {
    for (const line of file.because) out(line);
    return exit.refused;
  }
  const ids = Object.keys(file.book.batteries);
  if (ids.length === 0) out('There is no battery in this book. Put one in under Boat, with its kind and size.');
  for (const [n, id] of ids.entries()) {
    if (n > 0) out('');
    for (const line of powerLines(file.book, id, Date.parse(now), nights, read.bare.has('working'), file.blobs))
      out(line);
  }
  if (ids.length > 0) {
    out('');
    for (const line of circuitLines(file.book, read.bare.has('working'))) out(line);
  }
  for (const note of file.notes) out(`  ${note}`);
  return exit.done;
}
