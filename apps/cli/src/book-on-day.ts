/** What the commands that look at a boat file as on one day have in common: its arguments, the file, the day at its place. */
import type { Book } from '#boat-book';
import { isDay, localAt } from '#units';
import { type ArgumentForm, readArguments } from './arguments.ts';
import { readBookFile } from './read-book-file.ts';
import { type ExitCode, exit, type Surroundings } from './surroundings.ts';

export type BookOnDay =
  | {
      readonly kind: 'read';
      readonly book: Book;
      /** `--today`; today at the boat’s place where not given */
      readonly today: string;
      /** IANA zone of the boat’s place */
      readonly zone: string;
      readonly valued: Readonly<Record<string, string>>;
      readonly bare: ReadonlySet<string>;
      /** what the file’s gate says of it, a sentence each */
      readonly notes: readonly string[];
      /** ends the command for what is wrong with its arguments, said with how it is used */
      readonly refuse: (wrong: string) => ExitCode;
    }
  /** it was said why */
  | { readonly kind: 'ended'; readonly code: ExitCode };

/** Reads `FILE`, `--today DAY` and the options given. */
export function bookOnDay(
  args: readonly string[],
  surroundings: Surroundings,
  usage: readonly string[],
  { valued, bare }: Omit<ArgumentForm, 'plain'>,
): BookOnDay {
  const { out } = surroundings;
  const refuse = (wrong: string): ExitCode => {
    for (const line of [wrong, ...usage.map((each) => `  ${each}`)]) out(line);
    return exit.usage;
  };
  const ended = (code: ExitCode): BookOnDay => ({ kind: 'ended', code });
  const read = readArguments(args, {
    plain: ['FILE'],
    valued: { ...valued, today: 'a day such as 2026-05-09' },
    bare,
  });
  if (read.kind === 'refused') return ended(refuse(read.wrong));
  const { today: said } = read.valued;
  if (said !== undefined && !isDay(said)) return ended(refuse(`--today takes a day such as 2026-05-09, got '${said}'`));
  const file = readBookFile(read.plain[0]!, surroundings);
  if (file.kind === 'refused') {
    for (const line of file.because) out(line);
    return ended(exit.refused);
  }
  const { book, notes } = file;
  const zone = Object.values(book.places)[0]?.timeZone ?? 'UTC';
  const today = said ?? localAt(surroundings.now(), zone).day;
  return { kind: 'read', book, today, zone, valued: read.valued, bare: read.bare, notes, refuse };
}
