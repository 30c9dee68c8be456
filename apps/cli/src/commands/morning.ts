import { listsOf, listTitles, type MorningListTold, morningList } from '#reckoning';
import { localAt } from '#units';
import { bookOnDay } from '../book-on-day.ts';
import { type ExitCode, exit, type Surroundings } from '../surroundings.ts';

export const morningUsage = [
  'fettle morning FILE [--list NAME] [--today DAY]',
  '  the morning lists of the next outing of a boat file, in the order that works, with what is ticked',
  '  --list NAME     one of pack, tow, rig, launch, recover; all of them where not given',
  '  --today DAY     as from that day, such as 2026-05-09; today at the boat’s place where not given',
];

/** `fettle morning`: the morning lists of the next outing, as the app tells them. */
export function morning(args: readonly string[], surroundings: Surroundings): ExitCode {
  const { out } = surroundings;
  const read = bookOnDay(args, surroundings, morningUsage, {
    valued: { list: 'pack, tow, rig, launch or recover' },
    bare: [],
  });
  if (read.kind === 'ended') return read.code;
  const { book, today, zone, valued, notes, refuse } = read;
  const { list: wanted } = valued;
  const [next] = Object.entries(book.outings)
    .filter(([, { date }]) => date >= today)
    .sort(([, a], [, b]) => a.date.localeCompare(b.date));
  if (next === undefined) {
    out('No outing is ahead in this book. Put one in under Go.');
    return exit.done;
  }
  const [id, outing] = next;
  const lists = listsOf(outing).filter((list) => wanted === undefined || list === wanted);
  if (lists.length === 0)
    return refuse(`--list takes ${listsOf(outing).join(', ')} of ‘${outing.title}’, got '${wanted}'`);
  out(`${outing.title}, ${outing.date} ${outing.from}`);
  for (const list of lists) for (const line of listInLines(morningList(book, id, list, today), zone)) out(line);
  for (const note of notes) out(`  ${note}`);
  return exit.done;
}

function listInLines({ list, items, setAside }: MorningListTold, zone: string): readonly string[] {
  return [
    '',
    listTitles[list],
    ...items.flatMap(({ text, about, cautions, tick }, i) => [
      `${String(i + 1).padStart(3)}  ${tick === null ? '[ ]' : tick.came === 'failed' ? '[!]' : '[x]'} ${text}${about === '' ? '' : ` (${about})`}${tick === null ? '' : `, ${localAt(Date.parse(tick.at), zone).clock}`}`,
      ...cautions.map((caution) => `         Take care: ${caution}`),
    ]),
    ...setAside.map(
      ({ before, after, reason }) =>
        `     Against the usual order: ‘${after}’ may come before ‘${before}’, because: ${reason}`,
    ),
  ];
}
