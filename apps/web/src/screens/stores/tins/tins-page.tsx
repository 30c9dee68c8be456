/** What the tins say: each product by its own figures, which win over ours, and what goes by them. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { tinInWords, tinUses } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { dateInWords, listInWords } from '../../../parts/in-words.ts';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';

const TinSheet = onDemand(() => import('./tin-sheet.tsx'));

export default function TinsPage() {
  const book = useOpenBook();
  return (
    <div className="stores">
      <p className="stores-ways">
        <a href={address('stores')}>Stores</a>
      </p>
      <h1>What the tins say</h1>
      <BelowHeading>
        <TinsBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function TinsBelow({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const [open, setOpen] = useState<{ readonly id: Id | null } | null>(null);
  const tins = Object.entries(book.tins).sort(([, a], [, b]) => a.name.localeCompare(b.name));
  return (
    <>
      <p className="soft">
        Waits, pot lives and mixes go by the tin where it stands here, and by our own figures elsewhere. What a tin does
        not say stays ours.
      </p>
      <ul>
        {tins.map(([id, tin]) => {
          const uses = tinUses(book, id);
          const store = tin.store === null ? undefined : book.stores[tin.store];
          return (
            <MarkedLine
              key={id}
              title={tin.name}
              note={[
                ...tinInWords(tin),
                uses.length === 0
                  ? 'Nothing open goes by it.'
                  : `From the tin in: ${listInWords(uses.map((title) => `‘${title}’`))}.`,
                store ? `In the stores: ${store.name}.` : '',
                `Read ${dateInWords(tin.readOn, today)}.`,
                tin.note,
              ]
                .filter(Boolean)
                .join(' ')}
              figure={
                <button
                  type="button"
                  className="words"
                  aria-label={`Change: ${tin.name}`}
                  onClick={() => setOpen({ id })}
                >
                  Change
                </button>
              }
            />
          );
        })}
      </ul>
      {tins.length === 0 && (
        <p>None yet. Begin with the one you open next: how long it takes, how cold it may be, how it is mixed.</p>
      )}
      <p className="stores-add">
        <button type="button" onClick={() => setOpen({ id: null })}>
          Put in what a tin says
        </button>
      </p>
      {open && <TinSheet book={book} id={open.id} today={today} onClose={() => setOpen(null)} />}
    </>
  );
}
