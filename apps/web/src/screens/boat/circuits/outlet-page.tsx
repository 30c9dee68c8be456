/** The wire and fuse for an outlet that is not there yet: asked, worked out, and put in the book with one tap. */

import { useEffect, useRef, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { circuitsTold, type Finding, newOutletTold, type OutletTold, outletJob, outletToGet } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { Refused } from '../../../parts/field.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import type { Faults } from '../../../parts/read-form.ts';
import { useDraft } from '../../../parts/use-draft.ts';
import { useRun } from '../../../parts/use-run.ts';
import { WorkingParts } from '../../../parts/working-parts.tsx';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { takeToGet } from '../take-to-get.ts';
import './circuits.css';
import { Findings } from './findings.tsx';
import { type OutletDraft, type OutletFault, outletDraft, readOutlet, readUses } from './outlet-draft.ts';
import { OutletFields } from './outlet-fields.tsx';
import { UsesFields } from './uses-fields.tsx';

export default function OutletPage() {
  const book = useOpenBook();
  return (
    <div className="boat circuits">
      <p className="boat-back no-print">
        <a className="button words" href={address('boat', 'circuits')}>
          ‹ Circuits
        </a>
      </p>
      <h1>Wire and fuse for a new outlet</h1>
      <BelowHeading>
        <OutletBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function OutletBelow({ book }: { readonly book: Book }) {
  const batteryIds = Object.keys(book.batteries);
  const { draft, set } = useDraft<OutletDraft>(outletDraft(batteryIds.length === 1 ? batteryIds[0]! : ''));
  const [asked, setAsked] = useState(false);
  const [faults, setFaults] = useState<Faults<OutletFault>>({});
  const [put, setPut] = useState<{ readonly circuit: Id; readonly job: Id | null } | null>(null);
  const { run, refusal } = useRun();
  const form = useRef<HTMLFormElement>(null);
  const answer = useRef<HTMLHeadingElement>(null);
  const read = asked ? readOutlet(draft, book.batteries) : null;
  const told = read?.kind === 'read' ? newOutletTold(book.batteries[read.battery]!, read.outlet) : null;

  useEffect(() => {
    if (Object.keys(faults).length > 0) form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus();
  }, [faults]);

  const change = <K extends keyof OutletDraft>(key: K, value: OutletDraft[K]) => {
    set(key, value);
    setPut(null);
  };
  const find = () => {
    const found = readOutlet(draft, book.batteries);
    setFaults(found.kind === 'refused' ? found.faults : {});
    setAsked(found.kind === 'read');
    if (found.kind === 'read') requestAnimationFrame(() => answer.current?.focus());
  };
  const putIn = async () => {
    const uses = readUses(draft);
    setFaults(uses.kind === 'refused' ? uses.faults : {});
    if (uses.kind === 'refused' || read?.kind !== 'read' || told?.kind !== 'found') return;
    const outcome = await run('addCircuit', {
      ...told.fields,
      name: read.outlet.name,
      battery: read.battery,
      duty_pct: 100,
      uses: uses.uses,
      zone: draft.zone || null,
    });
    if (outcome.kind === 'done' && outcome.id !== null) setPut({ circuit: outcome.id, job: null });
  };
  const makeJob = async () => {
    if (put === null || read?.kind !== 'read' || told?.kind !== 'found') return;
    const taken = await takeToGet(book, outletToGet(read.outlet, told), run);
    if (taken === null) return;
    const job = await run('addJob', outletJob(read.outlet, draft.zone || null, taken));
    if (job.kind === 'done') setPut({ ...put, job: job.id });
  };

  return (
    <>
      {batteryIds.length === 0 && (
        <p>
          There is no battery in the book for it to hang on: <a href={address('boat', 'circuits')}>add one first</a>.
        </p>
      )}
      <div className="circuits-ask" hidden={batteryIds.length === 0}>
        <form
          ref={form}
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            find();
          }}
        >
          <OutletFields book={book} draft={draft} onChange={change} faults={faults} />
          <div role="alert">
            {Object.keys(faults).length > 0 && <Refused text="Not worked out yet: see the marked fields." />}
          </div>
          <div className="boat-acts">
            <button type="submit" className="main">
              Find the wire and fuse
            </button>
          </div>
        </form>
        {told && (
          <section className="circuits-answer" aria-labelledby="outlet-answer">
            <h2 id="outlet-answer" ref={answer} tabIndex={-1}>
              {told.kind === 'found' ? `${told.size} and a ${told.fuse_A} A fuse` : 'No wire does it'}
            </h2>
            {told.kind === 'found' && <Findings findings={told.warnings.map(canBurn)} />}
            {told.lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
            {told.kind === 'found' && (
              <>
                <details className="field-group">
                  <summary>How it is worked out</summary>
                  <WorkingParts working={told.working} />
                </details>
                <h3 className="circuits-fields">Put it in the book</h3>
                <RefusalLine refusal={refusal} />
                {put === null ? (
                  <PutIn draft={draft} onChange={change} faults={faults} onPut={putIn} />
                ) : (
                  <Done put={put} told={told} name={read?.kind === 'read' ? read.outlet.name : ''} onJob={makeJob} />
                )}
              </>
            )}
            <h3 className="circuits-fields">Take care</h3>
            {circuitsTold(book).cautions.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </section>
        )}
      </div>
    </>
  );
}

const canBurn = (wrong: string): Finding => ({ gravity: 'danger', wrong, right: null, mend: null });

function PutIn({
  draft,
  onChange,
  faults,
  onPut,
}: {
  readonly draft: OutletDraft;
  readonly onChange: (key: 'uses', value: OutletDraft['uses']) => void;
  readonly faults: Faults<OutletFault>;
  readonly onPut: () => void;
}) {
  return (
    <>
      <UsesFields draft={draft.uses} onChange={(uses) => onChange('uses', uses)} faults={faults} />
      <p>
        <button type="button" className="main" onClick={onPut}>
          Put it in as a circuit
        </button>
      </p>
    </>
  );
}

function Done({
  put,
  told,
  name,
  onJob,
}: {
  readonly put: { readonly circuit: Id; readonly job: Id | null };
  readonly told: Extract<OutletTold, { kind: 'found' }>;
  readonly name: string;
  readonly onJob: () => void;
}) {
  return (
    <>
      <p role="status">
        {name} is in the book as a circuit. <a href={address('boat', 'circuits')}>See it drawn</a>
      </p>
      {put.job === null ? (
        <p>
          <button type="button" onClick={onJob}>
            Make the job, with wire and fuse to get
          </button>
        </p>
      ) : (
        <p role="status">
          The job is in, as comfort and with our guess of its minutes, yours to change; {told.size} cable and the{' '}
          {told.fuse_A} A fuse are to get. <a href={address('work', 'job', put.job)}>See the job</a>
        </p>
      )}
    </>
  );
}
