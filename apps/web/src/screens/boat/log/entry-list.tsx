/** Entries of the log down the page by month, newest first; more are put on it as its end comes near. */
import { memo, startTransition, useEffect, useRef, useState } from 'react';
import type { Book, Id, LogEntry } from '#boat-book';
import { monthInWords } from '../../../parts/in-words.ts';
import { dayOf, entryNote } from './log-words.ts';

export type NamedEntry = readonly [Id, LogEntry];

/** Put on the page at a time: little enough that a frame is not missed for it. */
const some = 25;
/** How far ahead of the reader. [px] */
const ahead_px = 2_000;

export function EntryList({
  book,
  entries,
  onOpen,
}: {
  readonly book: Book;
  /** in the order they are shown */
  readonly entries: readonly NamedEntry[];
  readonly onOpen: (id: Id) => void;
}) {
  const [shown, setShown] = useState(some);
  const end = useRef<HTMLDivElement>(null);
  const more = shown < entries.length;
  // biome-ignore lint/correctness/useExhaustiveDependencies: watched anew after each piece, in case the end is still near
  useEffect(() => {
    const mark = end.current;
    if (mark === null || !more) return;
    const watch = new IntersectionObserver(
      ([seen]) => {
        if (seen?.isIntersecting) startTransition(() => setShown((before) => before + some));
      },
      { rootMargin: `${ahead_px}px 0px` },
    );
    watch.observe(mark);
    return () => watch.disconnect();
  }, [more, shown]);

  const pieces: NamedEntry[][] = [];
  for (let from = 0; from < Math.min(shown, entries.length); from += some)
    pieces.push(entries.slice(from, from + some));
  return (
    <>
      {pieces.map((piece, i) => (
        <Piece key={piece[0]?.[0]} book={book} entries={entries} from={i * some} onOpen={onOpen} />
      ))}
      {more && <div ref={end} className="log-end" />}
    </>
  );
}

const Piece = memo(
  function Piece({
    book,
    entries,
    from,
    onOpen,
  }: {
    readonly book: Book;
    readonly entries: readonly NamedEntry[];
    readonly from: number;
    readonly onOpen: (id: Id) => void;
  }) {
    const piece = entries.slice(from, from + some);
    const before = from === 0 ? undefined : entries[from - 1];
    let month = before && dayOf(book, before[1]).slice(0, 7);
    return (
      <div className="log-piece">
        {piece.map(([id, entry]) => {
          const day = dayOf(book, entry);
          const newMonth = day.slice(0, 7) !== month;
          month = day.slice(0, 7);
          return (
            <div key={id}>
              {newMonth && <h2>{monthInWords(day)}</h2>}
              <EntryLine book={book} entry={entry} day={day} onOpen={() => onOpen(id)} />
            </div>
          );
        })}
      </div>
    );
  },
  // a piece is the same while its entries and what names them are
  (a, b) =>
    a.from === b.from &&
    a.onOpen === b.onOpen &&
    a.book.fittings === b.book.fittings &&
    a.book.zones === b.book.zones &&
    a.book.jobs === b.book.jobs &&
    (a.entries === b.entries || sameEntries(a.entries, b.entries, Math.max(0, a.from - 1), a.from + some)),
);

function sameEntries(a: readonly NamedEntry[], b: readonly NamedEntry[], from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (a[i]?.[0] !== b[i]?.[0]) return false;
  return true;
}

export function EntryLine({
  book,
  entry,
  day,
  onOpen,
}: {
  readonly book: Book;
  readonly entry: LogEntry;
  readonly day: string;
  readonly onOpen: () => void;
}) {
  return (
    <button type="button" className="log-line prints" onClick={onOpen}>
      <span className="log-day">{Number(day.slice(8))}</span>
      <span className="line-words">
        <b className="line-title">{entry.text}</b>
        <span className="line-note">{entryNote(book, entry)}</span>
      </span>
    </button>
  );
}
