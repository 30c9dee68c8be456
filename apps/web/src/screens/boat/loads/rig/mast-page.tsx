/** The mast on its way up and down: drawn to scale with a slider, its worst place, what it takes, and the vang. */
import { useMemo } from 'react';
import type { Book, Id, MastRecord } from '#boat-book';
import { rigCautions } from '#loads';
import { type RigPartTold, raisingTold, sidewaysTold, vangTold } from '#reckoning';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import { capital } from '../../../../parts/in-words.ts';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { OpenedSheet, useOpened } from '../../../../parts/opened.tsx';
import { WorkingParts } from '../../../../parts/working-parts.tsx';
import { useOpenBook } from '../../../../reading/use-open-book.ts';
import { RaisingPart } from './raising-part.tsx';
import './rig.css';
import { VangDrawing } from './vang-drawing.tsx';

const MastSheet = onDemand(() => import('./mast-sheet.tsx'));
const VangSheet = onDemand(() => import('./vang-sheet.tsx'));

type Open = { readonly sheet: 'mast' | 'vang'; readonly id: Id | null };

export default function MastPage() {
  const book = useOpenBook();
  return (
    <>
      <h1>Mast up and down</h1>
      <BelowHeading>
        <MastBelow book={book} />
      </BelowHeading>
    </>
  );
}

function MastBelow({ book }: { readonly book: Book }) {
  const sheet = useOpened<Open>();
  const masts = Object.entries(book.masts);
  return (
    <>
      {masts.length === 0 && (
        <>
          <p>
            Put in what it weighs, where it balances and what leads the pull, and every force on its way up is told,
            with the worst place and the tackle that a person alone can haul.
          </p>
          <div className="boat-acts">
            <button type="button" className="main" onClick={() => sheet.open({ sheet: 'mast', id: null })}>
              Put in the mast
            </button>
          </div>
        </>
      )}
      {masts.map(([id, mast]) => (
        <MastParts key={id} book={book} mast={mast} onChange={(part) => sheet.open({ sheet: part, id })} />
      ))}
      <OpenedSheet of={sheet}>
        {(open) => (
          <>
            {open.sheet === 'mast' && <MastSheet book={book} id={open.id} onClose={sheet.close} />}
            {open.sheet === 'vang' && open.id !== null && <VangSheet book={book} id={open.id} onClose={sheet.close} />}
          </>
        )}
      </OpenedSheet>
    </>
  );
}

function MastParts({
  book,
  mast,
  onChange,
}: {
  readonly book: Book;
  readonly mast: MastRecord;
  readonly onChange: (sheet: 'mast' | 'vang') => void;
}) {
  const raising = useMemo(() => raisingTold(mast), [mast]);
  const sideways = useMemo(() => sidewaysTold(mast), [mast]);
  const vang = useMemo(() => vangTold(mast), [mast]);
  const { wires, path, sideways: toTheSide } = rigCautions;
  const first: readonly string[] = [wires, path, toTheSide];
  const others = [raising, sideways, vang]
    .flatMap((part) => (part !== null && 'cautions' in part ? part.cautions : []))
    .filter((line) => !first.includes(line));
  return (
    <>
      <div className="loads-caution rig-first">
        <p>
          <b>Take care:</b> {first[0]}
        </p>
        {first.slice(1).map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
      {raising.kind === 'refused' ? (
        <section aria-labelledby="mast-raising">
          <h2 id="mast-raising">It cannot be raised so</h2>
          <Faults faults={raising.faults} />
        </section>
      ) : (
        <RaisingPart boat={book.boat} mast={mast} told={raising} sideways={sideways} />
      )}
      <div className="boat-acts">
        <button type="button" onClick={() => onChange('mast')}>
          Change the mast
        </button>
      </div>
      {sideways !== null && (
        <section aria-labelledby="mast-sideways">
          <h2 id="mast-sideways">Sideways</h2>
          <Told part={sideways} />
        </section>
      )}
      <section aria-labelledby="mast-vang">
        <h2 id="mast-vang">Vang</h2>
        {vang === null && <p className="soft">Nothing is said of it yet.</p>}
        {vang !== null && 'kind' in vang && <Faults faults={vang.faults} />}
        {vang !== null && 'vang' in vang && (
          <div className="loads-beside">
            <Told part={vang} />
            <VangDrawing vang={vang.vang} forces={vang.forces} boom_m={book.boat.boom_m} />
          </div>
        )}
        <div className="boat-acts">
          <button type="button" onClick={() => onChange('vang')}>
            {mast.vang === null ? 'Put in the vang' : 'Change the vang'}
          </button>
        </div>
      </section>
      <section aria-labelledby="mast-care" className="rig-care">
        <h2 id="mast-care">Take care too</h2>
        {[...new Set(others)].map((line) => (
          <p key={line}>{line}</p>
        ))}
      </section>
    </>
  );
}

function Told({ part }: { readonly part: RigPartTold }) {
  return (
    <div className="rig-told">
      {part.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <details className="field-group">
        <summary>How it is worked out</summary>
        <WorkingParts working={part.working} />
      </details>
    </div>
  );
}

function Faults({ faults }: { readonly faults: readonly { readonly wrong: string; readonly right: string }[] }) {
  return (
    <ul>
      {faults.map(({ wrong, right }) => (
        <li key={wrong}>
          <p>{capital(wrong)}.</p>
          <p>Right would be: {right}.</p>
        </li>
      ))}
    </ul>
  );
}
