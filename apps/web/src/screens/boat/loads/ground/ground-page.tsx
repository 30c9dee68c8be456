/** Ground tackle: the rodes aboard, or the one there is. */
import './ground.css';
import { useState } from 'react';
import type { Id } from '#boat-book';
import { fibreInWords, figureSaid } from '#reckoning';
import { MarkedLine } from '../../../../parts/marked-line.tsx';
import { onDemand } from '../../../../parts/on-demand.tsx';
import { useOpenBook } from '../../../../reading/use-open-book.ts';
import { address } from '../../../../shell/route.ts';
import { RodeView } from './rode-view.tsx';

const RodeSheet = onDemand(() => import('./rode-sheet.tsx'));

export default function GroundPage({ id }: { readonly id: Id | undefined }) {
  const book = useOpenBook();
  const [adding, setAdding] = useState(false);
  const ids = Object.keys(book.rodes);
  const shown = id ?? (ids.length === 1 ? ids[0] : undefined);
  const rode = shown === undefined ? undefined : book.rodes[shown];
  const add = (
    <button type="button" onClick={() => setAdding(true)}>
      {ids.length === 0 ? 'Put in a rode' : 'Add a rode'}
    </button>
  );
  return (
    <>
      {shown !== undefined && rode ? (
        <RodeView key={shown} book={book} id={shown} rode={rode} add={add} />
      ) : (
        <>
          <h1>Ground tackle</h1>
          {shown !== undefined && <p>That rode is no longer in the book.</p>}
          {ids.length === 0 && (
            <p>
              What lies between anchor and bow: its chain and rope, and from wind, water and boat how much of it to
              veer.
            </p>
          )}
          <ul>
            {Object.entries(book.rodes).map(([one, { name, chain, rope }]) => (
              <MarkedLine
                key={one}
                href={address('boat', 'loads', 'rode', one)}
                title={name}
                note={[
                  chain && `${figureSaid(chain.length_m)} m of ${chain.size_mm} mm chain`,
                  rope && `${figureSaid(rope.length_m)} m of ${rope.size_mm} mm ${fibreInWords[rope.fibre]}`,
                ]
                  .filter(Boolean)
                  .join(', ')}
              />
            ))}
          </ul>
          <div className="boat-acts">{add}</div>
        </>
      )}
      {adding && <RodeSheet book={book} id={null} onClose={() => setAdding(false)} />}
    </>
  );
}
