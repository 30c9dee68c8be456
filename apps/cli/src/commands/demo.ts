import { writeBoatFile } from '#boat-book';
import { isDay, localAt } from '#units';
import { demoBook } from '../../../../examples/demo-book.ts';
import { readArguments } from '../arguments.ts';
import { fileTrouble } from '../read-book-file.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';

export const demoUsage = [
  'fettle demo OUT.fettle [--day YYYY-MM-DD]',
  '  writes the invented demo boat as a new boat file',
  '  --day DAY   dated as from that day; today where not given',
];

/** `fettle demo`: a new boat file with the demo in it; a file that is there already is left as it is. */
export function demo(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const refuse = (wrong: string): ExitCode => {
    out(wrong);
    for (const line of demoUsage) out(`  ${line}`);
    return exit.usage;
  };
  const read = readArguments(args, { plain: ['OUT.fettle'], valued: { day: 'a day as YYYY-MM-DD' }, bare: [] });
  if (read.kind === 'refused') return refuse(read.wrong);
  const path = read.plain[0]!;
  if (!path.endsWith('.fettle')) return refuse(`a boat file's name ends in .fettle, got '${path}'`);
  const day = read.valued.day ?? localAt(surroundings.now(), surroundings.timeZone).day;
  if (!isDay(day)) return refuse(`--day takes a day that there is, as YYYY-MM-DD, got '${day}'`);
  const book = demoBook(day);
  try {
    surroundings.writeNewFile(path, writeBoatFile({ book }));
  } catch (error) {
    out(`${fileTrouble(error, path)} Give the name of a new file.`);
    return exit.refused;
  }
  out(`${path} written: ${book.boat.name}, ${Object.keys(book.jobs).length} jobs, dated from ${day}.`);
  return exit.done;
}
