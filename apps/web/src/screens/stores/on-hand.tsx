/** What is on hand, by where it is kept, searched by any word of its name, place or note. */
import { useState } from 'react';
import type { Book, Id, StoreRecord } from '#boat-book';
import { keptInWords, type StoreStanding, standingInWords } from '#reckoning';
import { capital, listInWords } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { TextField } from '../../parts/text-fields.tsx';

interface OnHandThing {
  readonly id: Id;
  readonly store: StoreRecord;
  readonly kept: string | null;
  readonly standing: StoreStanding;
}

export function OnHand({
  book,
  standings,
  onChange,
}: {
  readonly book: Book;
  readonly standings: ReadonlyMap<Id, StoreStanding>;
  readonly onChange: (id: Id) => void;
}) {
  const [asked, setAsked] = useState('');
  const all = Object.entries(book.stores).flatMap(([id, store]): OnHandThing[] => {
    const standing = standings.get(id);
    return store.onHand && standing !== undefined
      ? [{ id, store, kept: keptInWords(book.stowages, store), standing }]
      : [];
  });
  const found = all.filter((thing) => hasWords(thing, asked));
  const places = [...new Set(found.map(({ kept }) => kept))].sort(
    (a, b) => Number(a === null) - Number(b === null) || (a ?? '').localeCompare(b ?? ''),
  );
  return (
    <>
      {all.length > 6 && (
        <search className="no-print">
          <TextField label="Find a thing" note="By its name, size, place or note." value={asked} onChange={setAsked} />
        </search>
      )}
      {places.map((place) => (
        <section key={place ?? ''} className="stores-at">
          <h3>{place === null ? 'Place not written down' : capital(place)}</h3>
          <ul>
            {found
              .filter(({ kept }) => kept === place)
              .sort((a, b) => a.store.name.localeCompare(b.store.name))
              .map((thing) => (
                <ThingLine key={thing.id} thing={thing} onChange={onChange} />
              ))}
          </ul>
        </section>
      ))}
      {all.length === 0 && (
        <p className="soft">
          Nothing is written down yet. Begin with what costs a walk to find: sealant and how old it is, the box of
          bolts, the good tape.
        </p>
      )}
      {all.length > 0 && found.length === 0 && <p>Nothing here has all of these words.</p>}
    </>
  );
}

function ThingLine({
  thing: { id, store, standing },
  onChange,
}: {
  readonly thing: OnHandThing;
  readonly onChange: (id: Id) => void;
}) {
  const { there, needs, keeps, past } = standingInWords(standing);
  const said = [
    there === 'there' ? '' : there,
    needs.length > 0 ? `for ${listInWords(needs.map(({ title }) => `'${title}'`))}` : '',
  ]
    .filter(Boolean)
    .join(', ');
  const dates = keeps !== null && (past || standing.keeps?.from === 'printed on it') ? capital(keeps) : '';
  const note = [capital(said), dates, store.note.replace(/\.$/, '')].filter(Boolean).join('. ');
  const wrong = past ? 'past its date' : standing.short ? 'not enough' : null;
  return (
    <MarkedLine
      {...(wrong === null ? {} : { mark: 'wait' as const, said: wrong })}
      title={store.name}
      note={note === '' ? undefined : `${note}.`}
      figure={
        <button type="button" className="words" aria-label={`Change: ${store.name}`} onClick={() => onChange(id)}>
          Change
        </button>
      }
    />
  );
}

function hasWords({ store, kept }: OnHandThing, asked: string): boolean {
  const text = `${store.name} ${kept ?? ''} ${store.note}`.toLowerCase();
  return asked
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
