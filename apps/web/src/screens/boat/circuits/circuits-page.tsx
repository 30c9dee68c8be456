/** The boat's circuits: what is wrong with them first, then every one, drawn and listed, with its figures one tap away. */
import { Suspense, useMemo, useState } from 'react';
import type { Id } from '#boat-book';
import { type CircuitTold, circuitsTold } from '#reckoning';
import type { Meaning } from '../../../parts/mark.tsx';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { onDemand } from '../../../parts/on-demand.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import './circuits.css';
import { CircuitsDrawing } from './circuits-drawing.tsx';
import { Findings } from './findings.tsx';

const CircuitSheet = onDemand(() => import('./circuit-sheet.tsx'));
const LeadSheet = onDemand(() => import('./lead-sheet.tsx'));
const TerminalSheet = onDemand(() => import('./terminal-sheet.tsx'));
const ToldSheet = onDemand(() => import('./told-sheet.tsx'));

type Open =
  | { readonly sheet: 'told' | 'change'; readonly place: CircuitTold['place'] }
  | { readonly sheet: 'new' }
  | { readonly sheet: 'terminal'; readonly id: Id };

export default function CircuitsPage() {
  const book = useOpenBook();
  const told = useMemo(() => circuitsTold(book), [book]);
  const [open, setOpen] = useState<Open | null>(null);
  const close = () => setOpen(null);
  const all = told.batteries.flatMap(({ circuits }) => circuits);
  const show = ({ place }: CircuitTold) => setOpen({ sheet: 'told', place });
  const shown =
    open?.sheet === 'told'
      ? all.find(({ place }) => place.kind === open.place.kind && place.id === open.place.id)
      : undefined;
  return (
    <div className="boat circuits">
      <p className="boat-back">
        <a className="button words" href={address('boat')}>
          ‹ Boat
        </a>
      </p>
      <h1>Circuits</h1>
      <p className="circuits-verdict">{told.verdict}</p>
      {told.batteries.length === 0 ? (
        <p>
          There is no battery in the book, and every circuit hangs on one. <a href={address('boat')}>Put one in</a>{' '}
          under Boat, Batteries.
        </p>
      ) : (
        <div className="boat-acts">
          <a className="button main" href={address('boat', 'circuits', 'outlet')}>
            Wire and fuse for a new outlet
          </a>
          <button type="button" onClick={() => setOpen({ sheet: 'new' })}>
            Add a circuit
          </button>
        </div>
      )}
      {told.batteries.map(({ id, name, label, lines, findings, circuits }, n) => (
        <div key={id} className="circuits-of">
          <section aria-labelledby={`circuits-found-${id}`}>
            <h2 id={`circuits-found-${id}`}>On {name}</h2>
            <Findings findings={findings} />
            <ul>
              {circuits
                .filter(hasFindings)
                .sort(byGravity)
                .map((circuit) => (
                  <MarkedLine
                    key={`${circuit.place.kind} ${circuit.place.id}`}
                    {...markOf(circuit)}
                    title={circuit.name}
                    note={circuit.findings.map(({ wrong, right }) => (right ? `${wrong} ${right}` : wrong)).join(' ')}
                  >
                    <button
                      type="button"
                      className="words"
                      aria-label={`Change: ${circuit.name}`}
                      onClick={() => setOpen({ sheet: 'change', place: circuit.place })}
                    >
                      Change
                    </button>
                    <button
                      type="button"
                      className="words"
                      aria-label={`How it is worked out: ${circuit.name}`}
                      onClick={() => show(circuit)}
                    >
                      How it is worked out
                    </button>
                  </MarkedLine>
                ))}
              {circuits.some((circuit) => !hasFindings(circuit)) && (
                <MarkedLine
                  mark="go"
                  title="Nothing wrong found"
                  note={circuits
                    .filter((circuit) => !hasFindings(circuit))
                    .map(({ name: each }) => each)
                    .join(', ')}
                />
              )}
            </ul>
            {lines.map((line) => (
              <p key={line} className="soft small">
                {line}
              </p>
            ))}
            <p>
              <button type="button" className="words" onClick={() => setOpen({ sheet: 'terminal', id })}>
                What stands at its terminal
              </button>
            </p>
            {n === 0 && <Cautions lines={told.cautions} />}
          </section>
          {circuits.length > 0 && (
            <CircuitsDrawing record={book.batteries[id]!} label={label} circuits={circuits} onOpen={show} />
          )}
        </div>
      ))}
      <Suspense fallback={null}>
        {shown && (
          <ToldSheet
            circuit={shown}
            onChange={() => setOpen({ sheet: 'change', place: shown.place })}
            onClose={close}
          />
        )}
        {open?.sheet === 'new' && <CircuitSheet book={book} id={null} onClose={close} />}
        {open?.sheet === 'change' &&
          (open.place.kind === 'circuit' ? (
            <CircuitSheet book={book} id={open.place.id} onClose={close} />
          ) : (
            <LeadSheet book={book} place={open.place} onClose={close} />
          ))}
        {open?.sheet === 'terminal' && <TerminalSheet book={book} id={open.id} onClose={close} />}
      </Suspense>
    </div>
  );
}

const hasFindings = ({ findings }: CircuitTold) => findings.length > 0;
const gravities = ['danger', 'worse', 'unknown'] as const;
const gravest = ({ findings }: CircuitTold) =>
  gravities.find((gravity) => findings.some((finding) => finding.gravity === gravity));
/** the gravest first; else as they stand in the book */
const byGravity = (a: CircuitTold, b: CircuitTold) => rank(a) - rank(b);
const rank = (circuit: CircuitTold) => {
  const gravity = gravest(circuit);
  return gravity === undefined ? gravities.length : gravities.indexOf(gravity);
};

function markOf(circuit: CircuitTold): { readonly mark: Meaning | null; readonly said?: string } {
  const gravity = gravest(circuit);
  if (gravity === undefined || gravity === 'unknown') return { mark: null };
  return gravity === 'danger' ? { mark: 'danger', said: 'can burn' } : { mark: 'worsens', said: 'fault' };
}

function Cautions({ lines }: { readonly lines: readonly string[] }) {
  return (
    <div className="circuits-cautions">
      <h2>Take care</h2>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}
