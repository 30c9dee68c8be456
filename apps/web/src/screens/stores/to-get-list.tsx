/** What is to be got, by when and to be ordered by when, the most pressing first; then what nothing open needs. */
import { useMemo, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { toGet, toGetAtAGlance, toGetInWords } from '#reckoning';
import { RefusalLine } from '../../parts/form.tsx';
import { capital, dateInWords } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { onDemand } from '../../parts/on-demand.ts';
import { useRun } from '../../parts/use-run.ts';
import { todayAt, zoneOf } from '../../reading/today.ts';
import { address } from '../../shell/route.ts';
import { usePlan } from '../days/planner.ts';

const OrderedSheet = onDemand(() => import('./ordered-sheet.tsx'));

export function ToGetList({ book, onChange }: { readonly book: Book; readonly onChange: (id: Id) => void }) {
  const { problem, picture, state } = usePlan(book);
  const today = todayAt(book);
  const zone = zoneOf(book);
  const { run, refusal } = useRun();
  const [ordering, setOrdering] = useState<Id | null>(null);
  const lines = useMemo(
    () =>
      toGet(book, {
        planned: problem && picture ? { problem, outcome: picture.outcome } : null,
        now: Date.now(),
        timeZone: zone,
      }),
    [book, problem, picture, zone],
  );
  const needed = new Set(lines.map(({ store }) => store));
  const others = Object.entries(book.stores)
    .filter(([id, store]) => !store.onHand && !needed.has(id))
    .sort(([, a], [, b]) => a.name.localeCompare(b.name));
  const answers = (id: Id, name: string) => (
    <>
      <button type="button" aria-label={`Ordered: ${name}, here on a day`} onClick={() => setOrdering(id)}>
        Ordered: here on …
      </button>
      <button
        type="button"
        aria-label={`Got it: ${name}`}
        onClick={() => void run('changeStore', { id, onHand: true, expected: null })}
      >
        Got it
      </button>
      <button type="button" className="words" aria-label={`Change: ${name}`} onClick={() => onChange(id)}>
        Change
      </button>
    </>
  );
  return (
    <div className="stores-get" data-plan-state={state}>
      <RefusalLine refusal={refusal} />
      {lines.length > 0 && <p className="soft">{toGetAtAGlance(lines, today)}</p>}
      <ul>
        {lines.map((line) => {
          const { how, when } = toGetInWords(line, today);
          const note = book.stores[line.store]?.note;
          return (
            <MarkedLine
              key={line.store}
              mark={line.late === null ? 'wait' : 'danger'}
              {...(line.late === null ? {} : { said: 'late' })}
              title={line.name}
              note={
                <>
                  {capital(how)}.
                  <NeededFor line={line} when={when} />
                  {note && <span className="stores-for">{note}</span>}
                </>
              }
            >
              {answers(line.store, line.name)}
            </MarkedLine>
          );
        })}
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
            {answers(id, store.name)}
          </MarkedLine>
        ))}
      </ul>
      {lines.length + others.length === 0 && (
        <p className="soft">Nothing. A step that needs something not on hand puts it here.</p>
      )}
      {ordering !== null && <OrderedSheet book={book} id={ordering} onClose={() => setOrdering(null)} />}
    </div>
  );
}

/** When it is needed, and the jobs it is for, each to be opened. */
function NeededFor({ line, when }: { readonly line: ReturnType<typeof toGet>[number]; readonly when: string | null }) {
  return (
    <span className="stores-for">
      {when === null ? 'For ' : `${capital(when)}, for `}
      {line.jobs.map(({ job, title, inPlan }, index) => (
        <span key={job}>
          {index > 0 && ', '}
          <a href={address('work', 'job', job)}>{title}</a>
          {!inPlan && line.use !== null && ' (left out)'}
        </span>
      ))}
    </span>
  );
}
