/** What is on hand and where it is kept, what must be got and when it is expected, and the tools. */
import { lazy, Suspense, useMemo, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { countInWords, dateInWords, daysAway } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { useRun } from '../../parts/use-run.ts';
import { todayAt } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import './stores.css';
import { RefusalLine } from '../../parts/form.tsx';

const StoreSheet = lazy(() => import('./store-sheet.tsx'));
const ToolSheet = lazy(() => import('./tool-sheet.tsx'));

export default function StoresScreen() {
  const book = useOpenBook();
  const today = todayAt(book);
  const [open, setOpen] = useState<{ readonly sheet: 'store' | 'tool'; readonly id: Id | null } | null>(null);
  const { run, refusal } = useRun();
  const users = useMemo(() => jobsThatUse(book), [book]);
  const stores = Object.entries(book.stores).sort(([, a], [, b]) => a.name.localeCompare(b.name));
  const toGet = stores
    .filter(([, store]) => !store.onHand)
    .sort(([, a], [, b]) => (a.expected ?? '').localeCompare(b.expected ?? ''));
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
        {countInWords(onHand.length, 'thing')} on hand, {toGet.length} to get, {countInWords(tools.length, 'tool')}.
      </p>
      <RefusalLine refusal={refusal} />
      <div className="stores-sides">
        <section aria-labelledby="stores-get">
          <h2 id="stores-get">To get</h2>
          <ul>
            {toGet.map(([id, store]) => (
              <MarkedLine
                key={id}
                mark="wait"
                title={store.name}
                note={
                  <>
                    {store.expected === null
                      ? 'not ordered: what needs it cannot be planned'
                      : `expected ${dateInWords(store.expected, today)}, ${daysAway(store.expected, today)}${store.expected < today ? ', and not marked as here' : ''}`}
                    {store.note && ` · ${store.note}`}
                    <Users jobs={users.get(id)} />
                  </>
                }
              >
                <button
                  type="button"
                  className="words"
                  aria-label={`It is here: ${store.name}`}
                  onClick={() => void run('changeStore', { id, onHand: true, expected: null })}
                >
                  It is here
                </button>
                {change('store', id, store.name)}
              </MarkedLine>
            ))}
          </ul>
          {toGet.length === 0 && <p className="soft">Nothing. A step that needs something not on hand puts it here.</p>}
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

function Users({ jobs }: { readonly jobs: ReadonlyMap<Id, string> | undefined }) {
  if (!jobs) return null;
  return (
    <span className="stores-for">
      for{' '}
      {[...jobs].map(([id, title], index) => (
        <span key={id}>
          {index > 0 && ', '}
          <a href={address('work', 'job', id)}>{title}</a>
        </span>
      ))}
    </span>
  );
}

/** For each store, the open jobs that have an open step which needs it. */
function jobsThatUse(book: Book): ReadonlyMap<Id, ReadonlyMap<Id, string>> {
  const users = new Map<Id, Map<Id, string>>();
  for (const step of Object.values(book.steps)) {
    const job = book.jobs[step.job];
    if (job?.state !== 'open' || step.progress.kind === 'done') continue;
    for (const store of step.stores) {
      const jobs = users.get(store) ?? new Map<Id, string>();
      jobs.set(step.job, job.title);
      users.set(store, jobs);
    }
  }
  return users;
}
