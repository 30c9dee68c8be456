/** The stores on one page: to get, on hand, tools. */
import { useMemo, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { storeStandings } from '#reckoning';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { countInWords, dateInWords } from '../../parts/in-words.ts';
import { onDemand } from '../../parts/on-demand.tsx';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { OnHand } from './on-hand.tsx';
import { ToGetList } from './to-get-list.tsx';
import { ToolsList } from './tools-list.tsx';

const StoreSheet = onDemand(() => import('./store-sheet.tsx'));
const ToolSheet = onDemand(() => import('./tool-sheet.tsx'));

export function StoresPage() {
  const book = useOpenBook();
  return (
    <div className="stores">
      <h1>Stores</h1>
      <BelowHeading>
        <StoresBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function StoresBelow({ book }: { readonly book: Book }) {
  const today = todayAt(book);
  const [open, setOpen] = useState<{ readonly sheet: 'store' | 'tool'; readonly id: Id | null } | null>(null);
  const standings = useMemo(() => storeStandings(book, today), [book, today]);
  const stores = Object.entries(book.stores);
  const onHand = stores.filter(([, store]) => store.onHand).length;
  const toGet = stores.filter(([id, store]) => !store.onHand || standings.get(id)?.short === true).length;
  const past = [...standings.values()].filter(({ keeps, needs }) => keeps?.past && needs.length > 0).length;
  const pastWords =
    past === 0
      ? ''
      : past === 1
        ? ' One that work counts on is past its date.'
        : ` ${past} that work counts on are past their dates.`;
  return (
    <>
      <p className="soft">
        {countInWords(onHand, 'thing')} on hand, {toGet} to get, {countInWords(Object.keys(book.tools).length, 'tool')}.
        {pastWords}
      </p>
      <p className="stores-ways no-print">
        <a href={address('stores', 'list')}>The list, to print or send</a>
        <CarryLinks book={book} today={today} />
        <a href={address('stores', 'places')}>Places</a>
        <a href={address('stores', 'tins')}>What the tins say</a>
      </p>
      <div className="stores-sides">
        <section aria-labelledby="stores-get">
          <h2 id="stores-get">To get</h2>
          <ToGetList book={book} onChange={(id) => setOpen({ sheet: 'store', id })} />
        </section>
        <section aria-labelledby="stores-hand">
          <h2 id="stores-hand">On hand</h2>
          <p className="stores-add">
            <button type="button" onClick={() => setOpen({ sheet: 'store', id: null })}>
              Add a thing
            </button>
          </p>
          <OnHand book={book} standings={standings} onChange={(id) => setOpen({ sheet: 'store', id })} />
          <h2>Tools</h2>
          <ToolsList book={book} today={today} onChange={(id) => setOpen({ sheet: 'tool', id })} />
          <p className="stores-add">
            <button type="button" onClick={() => setOpen({ sheet: 'tool', id: null })}>
              Add a tool
            </button>
          </p>
        </section>
      </div>
      {open?.sheet === 'store' && <StoreSheet book={book} id={open.id} onClose={() => setOpen(null)} />}
      {open?.sheet === 'tool' && <ToolSheet book={book} id={open.id} onClose={() => setOpen(null)} />}
    </>
  );
}

/** Ways to what is carried down on the next two job days. */
function CarryLinks({ book, today }: { readonly book: Book; readonly today: string }) {
  const days = Object.entries(book.jobDays)
    .filter(([, { date }]) => date >= today)
    .sort(([, a], [, b]) => (a.date < b.date ? -1 : 1))
    .slice(0, 2);
  return days.map(([id, { date }]) => (
    <a key={id} href={address('days', 'carry', id)}>
      Carry down {date === today ? 'today' : dateInWords(date, today)}
    </a>
  ));
}
