/** What was found, best first: entries of the log, jobs, fittings and papers. */
import type { Book, Id, LogKind } from '#boat-book';
import type { LogFound } from '#log';
import { countInWords, dateInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { todayAt } from '../../../reading/today.ts';
import { address } from '../../../shell/route.ts';
import { dayOf, entryNote } from './log-words.ts';
import type { Found } from './use-found.ts';

/** More are not looked through: another word finds it sooner. */
const mostShown = 40;

export function FoundList({
  book,
  found,
  kind,
  onOpen,
}: {
  readonly book: Book;
  readonly found: Found;
  /** only entries of this kind; '': everything */
  readonly kind: LogKind | '';
  readonly onOpen: (id: Id) => void;
}) {
  if (found.state === 'failed') return <p role="alert">The search stopped: {found.because}</p>;
  if (found.state !== 'found')
    return (
      <p className="soft" role="status">
        Looking.
      </p>
    );
  const all = found.all.filter(
    ({ collection, id }) => kind === '' || (collection === 'log' && book.log[id]?.kind === kind),
  );
  return (
    <>
      <p className="soft small" role="status">
        {all.length === 0
          ? 'Nothing is found. Fewer words find more.'
          : `${countInWords(all.length, 'thing')} found${all.length > mostShown ? `, the ${mostShown} nearest shown` : ''}`}
      </p>
      <ul className="log-found">
        {all.slice(0, mostShown).map((one) => (
          <FoundLine key={`${one.collection} ${one.id}`} book={book} one={one} onOpen={onOpen} />
        ))}
      </ul>
    </>
  );
}

function FoundLine({
  book,
  one: { collection, id },
  onOpen,
}: {
  readonly book: Book;
  readonly one: LogFound;
  readonly onOpen: (id: Id) => void;
}) {
  const today = todayAt(book);
  if (collection === 'log') {
    const entry = book.log[id];
    if (entry === undefined) return null;
    return (
      <li className="line">
        <button type="button" className="log-line prints" onClick={() => onOpen(id)}>
          <span className="line-words">
            <b className="line-title">{entry.text}</b>
            <span className="line-note">
              {dateInWords(dayOf(book, entry), today)} · {entryNote(book, entry)}
            </span>
          </span>
        </button>
      </li>
    );
  }
  if (collection === 'jobs') {
    const job = book.jobs[id];
    if (job === undefined) return null;
    const state = job.closed === null ? 'open' : `${job.state} on ${dateInWords(job.closed, today)}`;
    return <MarkedLine href={address('work', 'job', id)} title={job.title} note={`job · ${state}`} />;
  }
  if (collection === 'fittings') {
    const fitting = book.fittings[id];
    if (fitting === undefined) return null;
    const note = ['fitting', book.zones[fitting.zone]?.name, fitting.beddedWith && `bedded with ${fitting.beddedWith}`];
    return (
      <MarkedLine
        href={address('boat', 'log', 'fitting', id)}
        title={fitting.name}
        note={note.filter(Boolean).join(' · ')}
      />
    );
  }
  const paper = book.papers[id];
  if (paper === undefined) return null;
  return <MarkedLine href={address('boat', 'papers')} title={paper.title} note={`paper · ${paper.kind}`} />;
}
