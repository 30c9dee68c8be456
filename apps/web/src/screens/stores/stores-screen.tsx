/** What is on hand and where it is kept, what must be got and when it is expected, and the tools. */
import { lazy, Suspense, useState } from 'react';
import type { Id } from '#boat-book';
import { countInWords } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { useOpenBook } from '../../reading/use-open-book.ts';
import './stores.css';
import { ToGetList } from './to-get-list.tsx';

const StoreSheet = lazy(() => import('./store-sheet.tsx'));
const ToolSheet = lazy(() => import('./tool-sheet.tsx'));

export default function StoresScreen() {
  const book = useOpenBook();
  const [open, setOpen] = useState<{ readonly sheet: 'store' | 'tool'; readonly id: Id | null } | null>(null);
  const stores = Object.entries(book.stores).sort(([, a], [, b]) => a.name.localeCompare(b.name));
  const onHand = stores.filter(([, store]) => store.onHand);
  const tools = Object.entries(book.tools).sort(([, a], [, b]) => a.name.localeCompare(b.name));
  const change = (sheet: 'store' | 'tool', id: Id, name: string) => (
    <button type="button" className="words" aria-label={`Change: ${name}`} onClick={() => setOpen({ sheet, id })}>
      Change
    </button>
  );
  return (
    <div className="stores">
      <h1>Stores</h1>
      <p className="soft">
        {countInWords(onHand.length, 'thing')} on hand, {stores.length - onHand.length} to get,{' '}
        {countInWords(tools.length, 'tool')}.
      </p>
      <div className="stores-sides">
        <section aria-labelledby="stores-get">
          <h2 id="stores-get">To get</h2>
          <ToGetList book={book} onChange={(id) => setOpen({ sheet: 'store', id })} />
          <h2 id="stores-hand">On hand</h2>
          <ul>
            {onHand.map(([id, store]) => (
              <MarkedLine
                key={id}
                title={store.name}
                note={[store.keptAt ? `kept ${store.keptAt}` : 'place not written down', store.note]
                  .filter(Boolean)
                  .join(' · ')}
                figure={change('store', id, store.name)}
              />
            ))}
          </ul>
          {onHand.length === 0 && <p className="soft">Nothing is written down yet.</p>}
          <p className="stores-add">
            <button type="button" onClick={() => setOpen({ sheet: 'store', id: null })}>
              Add a thing
            </button>
          </p>
        </section>
        <section aria-labelledby="stores-tools">
          <h2 id="stores-tools">Tools</h2>
          <ul>
            {tools.map(([id, tool]) => (
              <MarkedLine
                key={id}
                title={tool.name}
                note={`${tool.count === 1 ? 'one' : tool.count}${tool.keptAt ? `, kept ${tool.keptAt}` : ', place not written down'}`}
                figure={change('tool', id, tool.name)}
              />
            ))}
          </ul>
          {tools.length === 0 && (
            <p className="soft">None yet. Two steps that want the same tool are not planned at once.</p>
          )}
          <p className="stores-add">
            <button type="button" onClick={() => setOpen({ sheet: 'tool', id: null })}>
              Add a tool
            </button>
          </p>
        </section>
      </div>
      <Suspense fallback={null}>
        {open?.sheet === 'store' && <StoreSheet book={book} id={open.id} onClose={() => setOpen(null)} />}
        {open?.sheet === 'tool' && <ToolSheet book={book} id={open.id} onClose={() => setOpen(null)} />}
      </Suspense>
    </div>
  );
}
