/** The places things are kept in, on board and ashore, with what is in each. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { type StowageInOrder, stowagePath, stowagesInOrder } from '#reckoning';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { countInWords } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';

const StowageSheet = onDemand(() => import('./stowage-sheet.tsx'));

export default function PlacesPage() {
  const book = useOpenBook();
  return (
    <div className="stores">
      <p className="no-print">
        <a href={address('stores')}>Back to the stores</a>
      </p>
      <h1>Places</h1>
      <BelowHeading>
        <PlacesBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function PlacesBelow({ book }: { readonly book: Book }) {
  const [open, setOpen] = useState<{ readonly id: Id | null } | null>(null);
  const places = stowagesInOrder(book.stowages);
  const aboard = ({ id }: StowageInOrder) => stowagePath(book.stowages, id)[0]?.aboard ?? false;
  const inIt = (id: Id) =>
    [...Object.values(book.stores).filter((store) => store.onHand), ...Object.values(book.tools)].filter(
      ({ stowage }) => stowage === id,
    ).length;
  const section = (title: string, own: readonly StowageInOrder[]) =>
    own.length > 0 && (
      <>
        <h2>{title}</h2>
        <ul>
          {own.map(({ id, stowage, depth }) => (
            <li key={id} className="stores-place" style={{ paddingLeft: `${Math.min(depth, 4) * 20}px` }}>
              <span>
                <b>{stowage.name}</b> <span className="soft small">{countInWords(inIt(id), 'thing')}</span>
              </span>
              <button
                type="button"
                className="words"
                aria-label={`Change: ${stowage.name}`}
                onClick={() => setOpen({ id })}
              >
                Change
              </button>
            </li>
          ))}
        </ul>
      </>
    );
  return (
    <>
      <p className="soft">
        Where things are kept, as you call it. What is on board need not be carried down; the carry-down list goes by
        these.
      </p>
      {section('On board', places.filter(aboard))}
      {section(
        'Ashore',
        places.filter((place) => !aboard(place)),
      )}
      {places.length === 0 && <p>None yet. A port locker, the bench in the garage, the paint box.</p>}
      <p className="stores-add">
        <button type="button" className="main" onClick={() => setOpen({ id: null })}>
          Add a place
        </button>
      </p>
      {open !== null && <StowageSheet book={book} id={open.id} onClose={() => setOpen(null)} />}
    </>
  );
}
