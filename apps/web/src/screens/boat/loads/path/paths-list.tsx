/** Every load path of the boat, each with whether it holds. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import { type LoadPathTold, loadPathsTold } from '#reckoning';
import { BelowHeading } from '../../../../parts/below-heading.tsx';
import type { Meaning } from '../../../../parts/mark.tsx';
import { MarkedLine } from '../../../../parts/marked-line.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { todayAt } from '../../../../reading/today.ts';
import { address } from '../../../../shell/route.ts';

const PathSheet = onDemand(() => import('./path-sheet.tsx'));

const marks: Readonly<Record<LoadPathTold['verdict'], Meaning | null>> = {
  'does not hold': 'danger',
  unknown: 'worsens',
  holds: 'go',
  'no load': null,
};

export function PathsList({ book }: { readonly book: Book }) {
  return (
    <div className="path-list">
      <h1>Load paths</h1>
      <p className="soft">
        A load path is a chain of parts from what pulls to what holds: the strength of each, the weakest, and what does
        not fit what.
      </p>
      <BelowHeading>
        <Paths book={book} />
      </BelowHeading>
    </div>
  );
}

function Paths({ book }: { readonly book: Book }) {
  const [adding, setAdding] = useState(false);
  const paths = loadPathsTold(book, todayAt(book));
  return (
    <>
      <ul>
        {paths.map((path) => {
          const gravest = path.cases.find(({ verdict }) => verdict === path.verdict);
          return (
            <MarkedLine
              key={path.id}
              mark={marks[path.verdict]}
              href={address('boat', 'loads', 'path', path.id)}
              title={path.name}
              note={(gravest?.lines.slice(1) ?? path.lines).join(' ')}
            />
          );
        })}
      </ul>
      {paths.length === 0 && <p className="soft">None yet. Begin with the one you trust least.</p>}
      <div className="boat-acts">
        <button type="button" onClick={() => setAdding(true)}>
          Add a load path
        </button>
      </div>
      {adding && <PathSheet book={book} id={null} onClose={() => setAdding(false)} />}
    </>
  );
}
