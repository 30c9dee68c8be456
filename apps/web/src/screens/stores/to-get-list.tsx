/** What is to be got, by when and to be ordered by when, the most pressing first; then what nothing open needs. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { keptInWords, priceInWords, type ToGet, toGetAtAGlance, toGetInWords, toGetName } from '#reckoning';
import { RefusalLine } from '../../parts/form.tsx';
import { capital, dateInWords } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { useRun } from '../../parts/use-run.ts';
import { todayAt } from '../../reading/today.ts';
import { address } from '../../shell/route.ts';
import { gotFields } from './got-fields.ts';
import { useToGet } from './use-to-get.ts';

const OrderedSheet = onDemand(() => import('./ordered-sheet.tsx'));
const GotSheet = onDemand(() => import('./got-sheet.tsx'));

/** What the answers to a line need to know of it. */
type Asked = Pick<ToGet, 'store' | 'name' | 'jobs' | 'buy' | 'price'>;

export function ToGetList({ book, onChange }: { readonly book: Book; readonly onChange: (id: Id) => void }) {
  const { lines, state } = useToGet(book);
  const today = todayAt(book);
  const { run, refusal } = useRun();
  const [ordering, setOrdering] = useState<Id | null>(null);
  const [getting, setGetting] = useState<Asked | null>(null);
  const needed = new Set(lines.map(({ store }) => store));
  const others = Object.entries(book.stores)
    .filter(([id, store]) => !store.onHand && !needed.has(id))
    .sort(([, a], [, b]) => a.name.localeCompare(b.name));
  const answers = (line: Asked) => (
    <>
      <button
        type="button"
        aria-label={`Got it: ${line.name}`}
        onClick={() => void run('gotStore', gotFields(line, line.buy?.unit ?? null, line.buy?.amount ?? null))}
      >
        Got it
      </button>
      <button type="button" aria-label={`Got it at a price: ${line.name}`} onClick={() => setGetting(line)}>
        Got it at a price …
      </button>
      <button type="button" aria-label={`Ordered: ${line.name}, here on a day`} onClick={() => setOrdering(line.store)}>
        Ordered: here on …
      </button>
      <button type="button" className="words" aria-label={`Change: ${line.name}`} onClick={() => onChange(line.store)}>
        Change
      </button>
    </>
  );
  return (
    <div className="stores-get" data-plan-state={state}>
      <RefusalLine refusal={refusal} />
      {lines.length > 0 && <p className="soft">{toGetAtAGlance(lines, today)}</p>}
      <ul>
        {lines.map((line) => (
          <MarkedLine
            key={line.store}
            mark={line.late === null ? 'wait' : 'danger'}
            {...(line.late === null ? {} : { said: 'late' })}
            title={toGetName(line)}
            note={<AboutLine book={book} line={line} today={today} />}
          >
            {answers(line)}
          </MarkedLine>
        ))}
        {others.map(([id, store]) => (
          <MarkedLine
            key={id}
            mark="wait"
            title={store.name}
            note={[
              store.expected === null
                ? 'No open job needs it'
                : `Expected ${dateInWords(store.expected, today)}; no open job needs it`,
              store.note,
            ]
              .filter(Boolean)
              .join(' · ')}
          >
            {answers({ store: id, name: store.name, jobs: [], buy: null, price: null })}
          </MarkedLine>
        ))}
      </ul>
      {lines.length + others.length === 0 && (
        <p className="soft">Nothing. A step that needs something not on hand, or more than is there, puts it here.</p>
      )}
      {ordering !== null && <OrderedSheet book={book} id={ordering} onClose={() => setOrdering(null)} />}
      {getting !== null && <GotSheet book={book} line={getting} onClose={() => setGetting(null)} />}
    </div>
  );
}

/** How it stands with it, when it is needed, the jobs it is for, where it is to be had, and where it then goes. */
function AboutLine({ book, line, today }: { readonly book: Book; readonly line: ToGet; readonly today: string }) {
  const { how, when } = toGetInWords(line, today);
  const store = book.stores[line.store];
  const kept = store === undefined ? null : keptInWords(book.stowages, store);
  const having = [
    line.from === null ? null : `from ${line.from}`,
    line.price === null ? null : `about ${priceInWords(line.price, book.boat.currency ?? null)}`,
    kept === null ? null : `kept ${kept}`,
  ].filter((part) => part !== null);
  return (
    <>
      {line.because !== null && <span className="stores-for">{capital(line.because)}.</span>}
      {capital(how)}.
      <span className="stores-for">
        {when === null ? 'For ' : `${capital(when)}, for `}
        {line.jobs.map(({ job, title, inPlan, takes }, index) => (
          <span key={job}>
            {index > 0 && ', '}
            <a href={address('work', 'job', job)}>{title}</a>
            {takes !== null && line.jobs.length > 1 && ` (${takes})`}
            {!inPlan && line.use !== null && ' (left out)'}
          </span>
        ))}
      </span>
      {having.length > 0 && <span className="stores-for">{capital(having.join(', '))}.</span>}
      {store?.note && <span className="stores-for">{store.note}</span>}
    </>
  );
}
