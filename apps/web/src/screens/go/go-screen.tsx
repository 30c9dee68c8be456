/** The outings, and what stands between the boat and each of them. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { OnePage } from '../../shell/one-page.tsx';
import { address, type ScreenProps } from '../../shell/route.ts';
import './go.css';
import { NewOuting } from './new-outing.tsx';
import { OutingSection } from './outing-section.tsx';
import { usePlanOfOutings } from './use-plan-of-outings.ts';

const opening = <p className="soft">Opening.</p>;
const DuesPage = onDemand(() => import('./dues/dues-page.tsx'), opening);
const DuePage = onDemand(() => import('./dues/due-page.tsx'), opening);
const SeasonPage = onDemand(() => import('./dues/season-page.tsx'), opening);
const MorningPage = onDemand(() => import('./morning/morning-page.tsx'), opening);
const FitSheet = onDemand(() => import('./fit-sheet.tsx'), opening);
const OutingSheet = onDemand(() => import('./outing-sheet.tsx'));

export default function GoScreen({ at }: ScreenProps) {
  return <OnePage>{pageOf(at.rest)}</OnePage>;
}

function pageOf(rest: readonly string[]) {
  const [page, id] = rest;
  if (page === 'season' && (id === 'lay-up' || id === 'fit-out')) return <SeasonPage key={id} list={id} />;
  if (page === 'dues') return id === undefined ? <DuesPage /> : <DuePage key={id} id={id} />;
  if (page === 'morning' && id !== undefined)
    // on paper it is another page: the one left is taken down after it has come
    return <MorningPage key={`${id} ${rest[3] ?? ''}`} id={id} rest={rest.slice(2)} />;
  if (page === 'sheet' && id !== undefined) return <FitSheet key={id} id={id} />;
  return <Outings />;
}

function Outings() {
  const book = useOpenBook();
  return (
    <div className="go">
      <h1>Go</h1>
      <p>
        <a className="button words" href={address('go', 'dues')}>
          What falls due, and what she was used for
        </a>
      </p>
      <BelowHeading>
        <OutingsBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function OutingsBelow({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const [open, setOpen] = useState<Id | null>(null);
  const outings = Object.entries(book.outings).sort(([, a], [, b]) => a.date.localeCompare(b.date));
  const ahead = outings.filter(([, outing]) => outing.date >= today);
  const past = outings.filter(([, outing]) => outing.date < today).reverse();
  const plan = usePlanOfOutings(book, ahead);
  return (
    <>
      <NewOuting book={book} today={today} />
      {ahead.length === 0 && (
        <p>
          No outing is ahead. Put in the next sail with its date: the jobs it needs then have a day they must be done
          by.
        </p>
      )}
      {ahead.map(([id, outing]) => (
        <OutingSection
          key={id}
          book={book}
          today={today}
          id={id}
          outing={outing}
          plan={plan}
          onChange={() => setOpen(id)}
        />
      ))}
      {past.length > 0 && (
        <details className="go-past">
          <summary>Outings that are over: {past.length}</summary>
          <ul>
            {past.map(([id, outing]) => (
              <li key={id}>
                {outing.title}, {outing.date}{' '}
                <button
                  type="button"
                  className="words"
                  aria-label={`Change: ${outing.title}`}
                  onClick={() => setOpen(id)}
                >
                  Change
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      {open && <OutingSheet book={book} id={open} onClose={() => setOpen(null)} />}
    </>
  );
}
