/** How a thing stands: what is there, which jobs it is reserved for, whether it is still good. */
import type { Book, Id } from '#boat-book';
import { standingInWords, storeStandings } from '#reckoning';
import { capital } from '../../parts/in-words.ts';
import { Mark } from '../../parts/mark.tsx';
import { todayAt } from '../../reading/today.ts';
import { address } from '../../shell/route.ts';

export default function StandingPart({ book, id }: { readonly book: Book; readonly id: Id }) {
  const standing = storeStandings(book, todayAt(book)).get(id);
  const store = book.stores[id];
  if (standing === undefined || store === undefined) return null;
  const { there, needs, keeps, past } = standingInWords(standing);
  return (
    <section className="stores-standing" aria-label="How it stands">
      {store.onHand && <p>{capital(there)}.</p>}
      {keeps !== null && (
        <p>
          {past && <Mark of="wait" said="past its date" />} {capital(keeps)}.
        </p>
      )}
      {needs.length > 0 ? (
        <ul>
          {needs.map(({ job, title, words }) => (
            <li key={job}>
              {capital(words)} for <a href={address('work', 'job', job)}>{title}</a>
            </li>
          ))}
        </ul>
      ) : (
        <p className="soft">No open job needs it.</p>
      )}
      {standing.said.map((words) => (
        <p key={words} className="small soft">
          {words}
        </p>
      ))}
    </section>
  );
}
