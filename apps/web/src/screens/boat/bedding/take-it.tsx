/** The chosen kind put on a step of the job, with its amount; what is not in the stores goes on the list to get. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { type BeddingTold, beddingStore, waitsBeddedWith } from '#reckoning';
import { ChoiceField } from '../../../parts/choice-fields.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { stepsOf } from '../../../reading/open-work.ts';
import { address } from '../../../shell/route.ts';

type Does = BeddingTold['does'];

export function TakeIt({
  book,
  job,
  does,
  amount_ml,
}: {
  readonly book: Book;
  readonly job: Id;
  readonly does: Does;
  readonly amount_ml: number | null;
}) {
  const steps = stepsOf(book, job).filter(({ step }) => step.progress.kind !== 'done');
  const likely = [/\b(re)?bed/i, /\b(seal|glue|stick|fill)/i].flatMap((says) =>
    steps.filter(({ step: { title } }) => says.test(title)),
  );
  const [step, setStep] = useState<Id | ''>((likely[0] ?? (steps.length === 1 ? steps[0] : undefined))?.id ?? '');
  const [kind, setKind] = useState<Does[number]['kind']>(does[0]!.kind);
  const [taken, setTaken] = useState<string | null>(null);
  const { run, refusal } = useRun();
  if (steps.length === 0) return null;
  const take = async () => {
    if (step === '') return;
    const { store, put } = beddingStore(kind, book, book.jobs[job]?.title ?? '');
    // one that is counted in another unit takes no amount here
    const counted = store === null || (book.stores[store]?.unit ?? null) === 'ml';
    const outcome = await run('stepTakes', {
      step,
      store: store ?? `bedding-${crypto.randomUUID()}`,
      put: store === null ? put : null,
      amount: counted && amount_ml !== null ? Math.ceil(amount_ml) : null,
      unit: 'ml',
      waits: waitsBeddedWith(book.steps[step]!.waits, kind),
    });
    if (outcome.kind !== 'done') return;
    const name = store === null ? put.name : book.stores[store]!.name;
    setTaken(store !== null && book.stores[store]!.onHand ? `${name}, on hand` : `${name}, to get`);
  };
  return (
    <div className="bedding-take">
      <h3>For this job</h3>
      <div className="field-grid">
        <ChoiceField
          label="Take"
          value={kind}
          onChange={(value) => {
            if (value) setKind(value);
            setTaken(null);
          }}
          options={does.map(({ kind: value, title }) => ({ value, name: title }))}
        />
        <ChoiceField
          label="For the step"
          value={step}
          onChange={(value) => {
            setStep(value);
            setTaken(null);
          }}
          options={steps.map(({ id, step: { title } }) => ({ value: id, name: title }))}
        />
      </div>
      <RefusalLine refusal={refusal} />
      {taken === null ? (
        <p>
          <button type="button" onClick={() => void take()} disabled={step === ''}>
            Put it on the step
          </button>
        </p>
      ) : (
        <p role="status">
          The step takes {taken} and waits until it has set. <a href={address('work', 'job', job)}>See the job</a>
        </p>
      )}
    </div>
  );
}
