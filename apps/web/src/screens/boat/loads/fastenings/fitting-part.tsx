/** A fitting asked about: whether its fastenings hold, what else would, and the job with what is to get. */
import { useEffect, useRef, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { type FittingAsked, type FittingTold, fittingJob, fittingToGet, fittingTold } from '#reckoning';
import { Refused } from '../../../../parts/field.tsx';
import { RefusalLine } from '../../../../parts/form.tsx';
import type { Faults } from '../../../../parts/read-form.ts';
import { useDraft } from '../../../../parts/use-draft.ts';
import { useRun } from '../../../../parts/use-run.ts';
import { WorkingParts } from '../../../../parts/working-parts.tsx';
import { address } from '../../../../shell/route.ts';
import { takeToGet } from '../../take-to-get.ts';
import { type FittingDraft, type FittingFault, fieldOfFault, fittingDraft, readFitting } from './fitting-draft.ts';
import { FittingDrawing } from './fitting-drawing.tsx';
import { FittingFields } from './fitting-fields.tsx';

type Told = Extract<FittingTold, { kind: 'told' }>;

export function FittingPart({ book }: { readonly book: Book }) {
  const { draft, set } = useDraft<FittingDraft>(fittingDraft);
  const [faults, setFaults] = useState<Faults<FittingFault>>({});
  const [found, setFound] = useState<{ readonly asked: FittingAsked; readonly told: Told } | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const answer = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (Object.keys(faults).length > 0) form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus();
  }, [faults]);

  const find = () => {
    const read = readFitting(draft);
    const told = read.kind === 'read' ? fittingTold(read.fitting) : null;
    setFaults(
      read.kind === 'refused'
        ? read.faults
        : told?.kind === 'refused'
          ? Object.fromEntries(
              told.faults.map(({ where, wrong, right }) => [
                fieldOfFault(where),
                `${wrong}; right would be: ${right}.`,
              ]),
            )
          : {},
    );
    setFound(read.kind === 'read' && told?.kind === 'told' ? { asked: read.fitting, told } : null);
    if (told?.kind === 'told') requestAnimationFrame(() => answer.current?.focus());
  };
  return (
    <section aria-labelledby="fastened">
      <h2 id="fastened">Does it hold?</h2>
      <div className="loads-beside">
        <form
          ref={form}
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            find();
          }}
        >
          <FittingFields
            book={book}
            draft={draft}
            onChange={(key, value) => {
              set(key, value);
              setFound(null);
            }}
            faults={faults}
          />
          <div role="alert">
            {Object.keys(faults).length > 0 && <Refused text="Not worked out yet: see the marked fields." />}
          </div>
          <div className="boat-acts">
            <button type="submit" className="main">
              Work it out
            </button>
          </div>
        </form>
        {found && (
          <div className="fastened-answer">
            <h3 ref={answer} tabIndex={-1} className="loads-verdict" data-holds={found.told.holds}>
              {found.told.verdict}
            </h3>
            <FittingDrawing asked={found.asked} told={found.told} />
            {found.told.lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
            <Changes told={found.told} />
            <details className="field-group">
              <summary>How it is worked out</summary>
              <WorkingParts working={found.told.working} />
            </details>
            <PutIn book={book} asked={found.asked} zone={draft.zone || null} />
            <h3>Take care</h3>
            {found.told.cautions.map((line) => (
              <p key={line} className="loads-caution">
                {line}
              </p>
            ))}
          </div>
        )}
      </div>
    </section>
  );
}

function Changes({ told }: { readonly told: Told }) {
  return (
    <table className="fastened-changes">
      <caption>With one thing changed</caption>
      <thead>
        <tr>
          <th scope="col">change</th>
          <th scope="col">used</th>
          <th scope="col">then it</th>
        </tr>
      </thead>
      <tbody>
        {told.changes.map(({ what, used_pct, holds }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td>{Math.round(used_pct)} %</td>
            <td>{holds ? 'holds' : 'does not hold'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The bolts on the to-get list and the job that takes them, with one tap. */
function PutIn({ book, asked, zone }: { readonly book: Book; readonly asked: FittingAsked; readonly zone: Id | null }) {
  const { run, refusal } = useRun();
  const [job, setJob] = useState<Id | null>(null);
  const make = async () => {
    const [taken] = (await takeToGet(book, [fittingToGet(asked)], run)) ?? [];
    if (taken === undefined) return;
    const made = await run('addJob', fittingJob(asked, zone, taken));
    if (made.kind === 'done') setJob(made.id);
  };
  return (
    <>
      <RefusalLine refusal={refusal} />
      {job === null ? (
        <p>
          <button type="button" onClick={() => void make()}>
            Make the job, with what is to get
          </button>
        </p>
      ) : (
        <p role="status">
          The job is in, with our guess of its minutes, yours to change; what fastens it is to get.{' '}
          <a href={address('work', 'job', job)}>See the job</a>
        </p>
      )}
    </>
  );
}
