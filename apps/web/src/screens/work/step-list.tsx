/** The steps of a job in order, each with its minutes, what it asks for, its cautions and its waits. */
import { useState } from 'react';
import type { Book, Id, Step } from '#boat-book';
import { coverageInWords, followByTin, keptInWords, takesByTin, thingInWords } from '#reckoning';
import { localAt } from '#units';
import { RefusalLine } from '../../parts/form.tsx';
import { dayInWords, minutesInWords } from '../../parts/in-words.ts';
import { Mark } from '../../parts/mark.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { useRun } from '../../parts/use-run.ts';
import type { NamedStep } from '../../reading/open-work.ts';
import { stepNeedsInWords, waitInWords, whoseInWords } from '../../reading/step-in-words.ts';
import { zoneOf } from '../../reading/today.ts';

const TickSheet = onDemand(() => import('./tick-sheet.tsx'));
const LongerSheet = onDemand(() => import('./longer-sheet.tsx'));

export function StepList({
  book,
  steps,
  today,
  locked,
  onChange,
}: {
  readonly book: Book;
  readonly steps: readonly NamedStep[];
  readonly today: string;
  readonly locked: boolean;
  readonly onChange: (step: Id) => void;
}) {
  const [open, setOpen] = useState<{ readonly sheet: 'tick' | 'longer'; readonly id: Id } | null>(null);
  const { run, refusal } = useRun();
  return (
    <>
      <RefusalLine refusal={refusal} />
      <ol className="job-steps">
        {steps.map(({ id, step }, index) => (
          <li key={id} className="job-step" data-progress={step.progress.kind}>
            <span className="job-step-number">{index + 1}</span>
            <div className="job-step-words">
              <h3>{step.title}</h3>
              <StepMinutes step={step} />
              <StepProgressLine book={book} step={step} today={today} id={id} />
              {step.progress.kind !== 'done' && <StepBody book={book} step={step} />}
              <Waits book={book} step={step} />
              <Follows book={book} step={step} />
              {!locked && (
                <div className="job-step-acts">
                  {step.progress.kind !== 'done' && (
                    <button
                      type="button"
                      aria-label={`Tick: ${step.title}`}
                      onClick={() => setOpen({ sheet: 'tick', id })}
                    >
                      Tick
                    </button>
                  )}
                  {step.progress.kind === 'open' && (
                    <button
                      type="button"
                      className="words"
                      aria-label={`Start: ${step.title}`}
                      onClick={() => void run('startStep', { id })}
                    >
                      Start
                    </button>
                  )}
                  {step.progress.kind === 'under way' && (
                    <button
                      type="button"
                      className="words"
                      aria-label={`Took longer: ${step.title}`}
                      onClick={() => setOpen({ sheet: 'longer', id })}
                    >
                      Took longer
                    </button>
                  )}
                  {step.progress.kind !== 'open' && (
                    <button
                      type="button"
                      className="words"
                      aria-label={`Untick: ${step.title}`}
                      onClick={() => void run('untickStep', { id })}
                    >
                      {step.progress.kind === 'done' ? 'Untick' : 'Not started'}
                    </button>
                  )}
                  <button
                    type="button"
                    className="words"
                    aria-label={`Change step ${index + 1}: ${step.title}`}
                    onClick={() => onChange(id)}
                  >
                    Change
                  </button>
                </div>
              )}
            </div>
          </li>
        ))}
      </ol>
      {open &&
        (open.sheet === 'tick' ? (
          <TickSheet book={book} id={open.id} onClose={() => setOpen(null)} />
        ) : (
          <LongerSheet book={book} id={open.id} onClose={() => setOpen(null)} />
        ))}
    </>
  );
}

function StepMinutes({ step }: { readonly step: Step }) {
  const { low, likely, high } = step.minutes;
  return (
    <p className="job-step-minutes">
      about {minutesInWords(likely)}
      {(low !== likely || high !== likely) && (
        <span className="soft">
          {' '}
          between {low} and {high} min
        </span>
      )}
    </p>
  );
}

function StepProgressLine({
  book,
  step,
  today,
  id,
}: {
  readonly book: Book;
  readonly step: Step;
  readonly today: string;
  readonly id: Id;
}) {
  const { progress } = step;
  if (progress.kind === 'open') return null;
  const at = (instant: string) => localAt(Date.parse(instant), zoneOf(book));
  if (progress.kind === 'under way')
    return (
      <p>
        <b>Under way</b> since {at(progress.started).clock}, expected done at {at(progress.expected).clock}.
      </p>
    );
  const finished = at(progress.finished);
  const spent = Object.values(book.log).find(
    (entry) => entry.step === id && entry.kind === 'step done' && entry.spent_min !== null,
  );
  return (
    <p className="job-step-done">
      <Mark of="go" /> Done {dayInWords(finished.day, today)} {finished.clock}
      {spent?.spent_min != null && `, ${minutesInWords(spent.spent_min)} spent`}
    </p>
  );
}

/** ` (port locker, behind the oars)`; nothing where no place is written down */
function keptNear(book: Book, thing: Parameters<typeof keptInWords>[1]): string {
  const kept = keptInWords(book.stowages, thing);
  return kept === null ? '' : ` (${kept})`;
}

function StepBody({ book, step }: { readonly book: Book; readonly step: Step }) {
  const needs = stepNeedsInWords(book, step);
  const taken = (id: Id) => {
    const take = takesByTin(book, step).find(({ store }) => store === id);
    const { name } = book.stores[id]!;
    if (take === undefined) return name;
    return `${thingInWords({ ...take, name })}${take.goes === null ? '' : `, at ${coverageInWords(take.goes)}`}`;
  };
  const tools = step.tools.flatMap(({ tool, count }) => {
    const known = book.tools[tool];
    return known ? [`${count > 1 ? `${count} ` : ''}${known.name}${keptNear(book, known)}`] : [];
  });
  const stores = step.stores.flatMap((id) => {
    const store = book.stores[id];
    return store ? [`${taken(id)}${store.onHand ? keptNear(book, store) : ', not in stores'}`] : [];
  });
  return (
    <>
      {step.cautions.map((caution) => (
        <p key={caution} className="job-caution">
          <Mark of="danger" said="caution" /> {caution}
        </p>
      ))}
      {needs.length > 0 && <p className="small">{needs.join(' · ')}</p>}
      {tools.length > 0 && (
        <p className="small">
          <span className="soft">tools</span> {tools.join(', ')}
        </p>
      )}
      {stores.length > 0 && (
        <p className="small">
          <span className="soft">stores</span> {stores.join(', ')}
        </p>
      )}
    </>
  );
}

function Waits({ book, step }: { readonly book: Book; readonly step: Step }) {
  return step.waits.map((wait) => (
    <p key={wait.id} className="job-wait small">
      <span className="job-hatch" aria-hidden="true" />
      <span>
        then waits: <b>{wait.title}</b> · {waitInWords(book, step, wait).join(' · ')}
      </span>
    </p>
  ));
}

/** Only what is out of the ordinary: an order of its own, or a window to the next coat. */
function Follows({ book, step }: { readonly book: Book; readonly step: Step }) {
  if (step.follows === null) return null;
  if (step.follows.length === 0) return <p className="small soft">needs no other step first</p>;
  return step.follows.map((said) => {
    const before = book.steps[said.step];
    if (!before) return null;
    const { follow, wait, tin } = followByTin(book, said);
    return (
      <p key={`${follow.step} ${follow.wait}`} className="small soft">
        after ‘{before.title}’{wait && `, when ${wait.title} is over`}
        {follow.least_min > 0 && `, ${minutesInWords(follow.least_min)} later at the soonest`}
        {follow.greatest_min !== null &&
          `, within ${minutesInWords(follow.greatest_min)}${tin === null ? '' : `, ${whoseInWords('the tin', tin.tin)}`}${follow.past.kind === 'abrade' ? `; later it must be abraded first, ${follow.past.minutes} min` : ''}`}
      </p>
    );
  });
}
