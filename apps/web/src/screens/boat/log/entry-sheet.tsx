/** One entry of the log in full, with what it stands in place of. */
import type { Book, Id } from '#boat-book';
import { localAt } from '#units';
import { dayInWords, minutesInWords } from '../../../parts/in-words.ts';
import { Sheet } from '../../../parts/sheet.tsx';
import { PhotoStrip } from '../../../photos/photo-strip.tsx';
import { photosOf } from '../../../photos/photos-of.ts';
import { todayAt, zoneOf } from '../../../reading/today.ts';
import { address } from '../../../shell/route.ts';
import { costInWords, kindName, withInWords } from './log-words.ts';

export default function EntrySheet({
  book,
  id,
  onCorrect,
  onClose,
}: {
  readonly book: Book;
  readonly id: Id;
  readonly onCorrect: () => void;
  readonly onClose: () => void;
}) {
  const entry = book.log[id];
  if (entry === undefined) return null;
  const { day, clock } = localAt(Date.parse(entry.at), zoneOf(book));
  const fitting = entry.fitting === undefined ? undefined : book.fittings[entry.fitting];
  const job = entry.job === null ? undefined : book.jobs[entry.job];
  const zone = entry.zone === null ? undefined : book.zones[entry.zone];
  const old = entry.corrects === undefined ? undefined : book.log[entry.corrects];
  const named = (entry.photos ?? []).flatMap((photo) => {
    const record = book.photos[photo];
    return record === undefined ? [] : [{ id: photo, photo: record }];
  });
  const photos = [...photosOf(book, { entry: id, job: entry.job }), ...named];
  return (
    <Sheet title={`In the log: ${kindName[entry.kind]}`} onClose={onClose}>
      <p className="log-text">{entry.text}</p>
      <p className="soft">
        {dayInWords(day, todayAt(book))}, {clock}
        {entry.who && `, by ${entry.who}`}
      </p>
      <ul className="log-facts">
        {entry.with && entry.with.length > 0 && <li>Done {withInWords(entry.with)}.</li>}
        {entry.spent_min !== null && <li>{minutesInWords(entry.spent_min)} spent.</li>}
        {entry.cost && <li>It cost {costInWords(entry.cost)}.</li>}
        {zone && <li>At: {zone.name}.</li>}
        {old && (
          <li>
            It takes the place of an entry that said: ‘{old.text}’{old.cost && `, ${costInWords(old.cost)}`}.
          </li>
        )}
      </ul>
      <PhotoStrip book={book} photos={photos} />
      <div className="boat-acts">
        {fitting && (
          <a className="button" href={address('boat', 'log', 'fitting', entry.fitting ?? '')}>
            All of {fitting.name}
          </a>
        )}
        {job && (
          <a className="button" href={address('work', 'job', entry.job ?? '')}>
            The job: {job.title}
          </a>
        )}
        <button type="button" onClick={onCorrect}>
          Put it right
        </button>
      </div>
    </Sheet>
  );
}
