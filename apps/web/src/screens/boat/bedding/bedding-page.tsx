/**
 * What to bed a joint with: `#/boat/bedding/<fitting>` for a fitting, `#/work/job/<job>/bedding` for a job, `#/boat/bedding` for any.
 * The kind that is chosen is put on a step of the job; what it was in the end is written down with the fitting.
 */
import { useEffect, useRef, useState } from 'react';
import type { Book, Id } from '#boat-book';
import { beddingTold } from '#reckoning';
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { Refused } from '../../../parts/field.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import type { Faults } from '../../../parts/read-form.ts';
import { useDraft } from '../../../parts/use-draft.ts';
import { WorkingParts } from '../../../parts/working-parts.tsx';
import { beddedInWords } from '../../../reading/bedded-in-words.ts';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { type BeddingDraft, type BeddingFault, beddingDraft, readBedding } from './bedding-draft.ts';
import './bedding.css';
import { BeddingFields } from './bedding-fields.tsx';
import { TakeIt } from './take-it.tsx';

const BeddedSheet = onDemand(() => import('./bedded-sheet.tsx'));

export default function BeddingPage({ fitting, job }: { readonly fitting: Id | null; readonly job: Id | null }) {
  const book = useOpenBook();
  const ofJob = job === null ? undefined : book.jobs[job];
  const fittingId = fitting ?? ofJob?.fitting ?? null;
  const [open, setOpen] = useState(false);
  const gone = (job !== null && ofJob === undefined) || (fittingId !== null && book.fittings[fittingId] === undefined);
  return (
    <div className="boat bedding">
      <p className="boat-back no-print">
        <Back book={book} job={job} fitting={fittingId} />
      </p>
      {gone ? (
        <>
          <h1>Nothing to bed</h1>
          <p>What this was about was taken out of the book.</p>
        </>
      ) : (
        <>
          <h1>What to bed it with</h1>
          <BelowHeading>
            <Now book={book} fitting={fittingId} title={ofJob?.title ?? null} onOpen={() => setOpen(true)} />
            <Ask book={book} fitting={fittingId} job={job} />
          </BelowHeading>
        </>
      )}
      {open && fittingId !== null && (
        <BeddedSheet book={book} fitting={fittingId} job={job} onClose={() => setOpen(false)} />
      )}
    </div>
  );
}

function Back({ book, job, fitting }: { readonly book: Book; readonly job: Id | null; readonly fitting: Id | null }) {
  if (job !== null)
    return (
      <a className="button words" href={address('work', 'job', job)}>
        ‹ The job
      </a>
    );
  const zone = fitting === null ? undefined : book.fittings[fitting]?.zone;
  return (
    <a className="button words" href={zone === undefined ? address('boat') : address('boat', 'zone', zone)}>
      ‹ {(zone !== undefined && book.zones[zone]?.name) || 'Boat'}
    </a>
  );
}

/** What it is bedded with now, and the way to write down what it was bedded with. */
function Now({
  book,
  fitting,
  title,
  onOpen,
}: {
  readonly book: Book;
  readonly fitting: Id | null;
  /** of the job */
  readonly title: string | null;
  readonly onOpen: () => void;
}) {
  const found = fitting === null ? undefined : book.fittings[fitting];
  if (!found) return <p className="soft">{title ?? 'Any joint of hers.'}</p>;
  const { bedding } = found;
  const job = bedding?.job ? book.jobs[bedding.job] : undefined;
  return (
    <>
      <p className="bedding-now">
        {found.name}: {beddedInWords(found, todayAt(book)) ?? 'nobody wrote down what it is bedded with'}
        {job && bedding?.job && (
          <>
            , <a href={address('work', 'job', bedding.job)}>{job.title}</a>
          </>
        )}
        .
      </p>
      <p>
        <button type="button" onClick={onOpen}>
          Write down what it was bedded with
        </button>
      </p>
    </>
  );
}

function Ask({ book, fitting, job }: { readonly book: Book; readonly fitting: Id | null; readonly job: Id | null }) {
  const { draft, set } = useDraft<BeddingDraft>(beddingDraft);
  const [faults, setFaults] = useState<Faults<BeddingFault>>({});
  const [asked, setAsked] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const answer = useRef<HTMLHeadingElement>(null);
  const read = asked ? readBedding(draft) : null;
  const told = read?.kind === 'read' ? beddingTold(read.asked) : null;
  useEffect(() => {
    if (Object.keys(faults).length > 0) form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus();
  }, [faults]);
  const find = () => {
    const found = readBedding(draft);
    setFaults(found.kind === 'refused' ? found.faults : {});
    setAsked(found.kind === 'read');
    if (found.kind === 'read') requestAnimationFrame(() => answer.current?.focus());
  };
  const best = told?.does[0];
  return (
    <div className="bedding-ask">
      <form
        ref={form}
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          find();
        }}
      >
        <BeddingFields
          draft={draft}
          onChange={(key, value) => {
            set(key, value);
            setAsked(false);
          }}
          faults={faults}
        />
        <div role="alert">
          {Object.keys(faults).length > 0 && <Refused text="Not worked out yet: see the marked fields." />}
        </div>
        <div className="boat-acts">
          <button type="submit" className="main">
            Find what does
          </button>
        </div>
      </form>
      {told && (
        <section className="bedding-answer" aria-labelledby="bedding-answer">
          <h2 id="bedding-answer" ref={answer} tabIndex={-1}>
            {told.verdict}
          </h2>
          {best && <p>{best.sentence}</p>}
          {told.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {best?.mind.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {best && job !== null && (
            <TakeIt key={told.verdict} book={book} job={job} does={told.does} amount_ml={told.amount_ml} />
          )}
          {told.does.length > 1 && (
            <>
              <h3>Would do too, best first</h3>
              <ul className="bedding-kinds">
                {told.does.slice(1).map(({ kind, sentence, mind }) => (
                  <li key={kind}>{[sentence, ...mind].join(' ')}</li>
                ))}
              </ul>
            </>
          )}
          <h3>Wrong here</h3>
          <ul className="bedding-kinds">
            {told.wrong.map(({ title, sentence }) => (
              <li key={title}>{sentence}</li>
            ))}
          </ul>
          <details className="field-group">
            <summary>How it is worked out</summary>
            <WorkingParts working={told.working} />
          </details>
          {[...(best?.cautions ?? []), ...told.cautions].length > 0 && <h3>Take care</h3>}
          {[...told.cautions, ...(best?.cautions ?? [])].map((line) => (
            <p key={line}>{line}</p>
          ))}
          <p className="soft small">
            Bedding by kind of product; how long it takes to cure goes by its own law. The tube and its maker know
            theirs: what they say wins.
            {fitting !== null && ' When it is done, write down above what it was.'}
          </p>
        </section>
      )}
    </div>
  );
}
