/** A change that would let more be done, in a sentence, with the button that makes it where the keeper can. */
import { useMemo, useState } from 'react';
import type { Book } from '#boat-book';
import type { Problem } from '#workplan';
import { RefusalLine } from '../../parts/form.tsx';
import { useRun } from '../../parts/use-run.ts';
import { address } from '../../shell/route.ts';
import { changeToMake } from './change-to-make.ts';
import type { ChangeTold } from './plan-report.ts';
import { planNextFrom } from './planner.ts';

export function ChangeLine({
  change,
  problem,
  book,
  readOnly,
}: {
  readonly change: ChangeTold;
  readonly problem: Problem;
  readonly book: Book;
  readonly readOnly: boolean;
}) {
  const { run, refusal } = useRun();
  const [busy, setBusy] = useState(false);
  const { relaxation } = change;
  const make = useMemo(() => changeToMake(change, problem, book, crypto.randomUUID()), [change, problem, book]);
  const apply = async () => {
    if (make === null) return;
    setBusy(true);
    for (const { name, fields } of make.making) {
      // the plan made after the change begins with the one that showed what it brings
      planNextFrom({ startsAt: problem.startsAt, plan: make.plan });
      const outcome = await run(name, fields);
      if (outcome.kind !== 'refused') continue;
      planNextFrom(null);
      break;
    }
    setBusy(false);
  };
  return (
    <div className="days-change">
      <p className="days-change-words">
        {change.words}
        {change.least !== null && <span className="soft"> {change.least}</span>}
      </p>
      {make !== null && !readOnly && (
        <button type="button" className="words days-change-do" disabled={busy} onClick={() => void apply()}>
          {make.label}
        </button>
      )}
      {relaxation.kind === 'another day' && relaxation.needs !== null && (
        <a className="days-gain days-change-do no-print" href={address('days', 'day', 'new')}>
          Add a job day with its weather
        </a>
      )}
      {relaxation.kind === 'place' && (
        <a className="days-gain days-change-do no-print" href={address('days', 'day', relaxation.day, 'change')}>
          Change where she lies that day
        </a>
      )}
      <RefusalLine refusal={refusal} />
    </div>
  );
}
