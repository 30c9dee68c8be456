/** One part of a load path: what it bears, what it works at, and how that is worked out. */
import type { LoadPathTold, PathPartTold } from '#reckoning';
import { capital } from '../../../../parts/in-words.ts';
import { Sheet } from '../../../../parts/sheet.tsx';
import { WorkingParts } from '../../../../parts/working-parts.tsx';
import { shareInWords } from './share-in-words.ts';

export default function PartToldSheet({
  told,
  part,
  share,
  onChange,
  onAfter,
  onClose,
}: {
  readonly told: LoadPathTold;
  readonly part: PathPartTold;
  /** load over working load; null: not known, or no load is looked at */
  readonly share: number | null;
  readonly onChange: () => void;
  readonly onAfter: () => void;
  readonly onClose: () => void;
}) {
  const here = told.findings.filter(({ parts }) => parts.includes(part.id));
  return (
    <Sheet title={capital(part.name)} onClose={onClose}>
      <p>
        {part.what !== part.name && `${capital(part.what)}. `}
        {part.bears}
        {share !== null && ` Under this load it ${shareInWords(share)}.`}
        {part.isWeakest && ' Of the parts that are known it is the first to reach its working load.'}
      </p>
      {here.map(({ wrong, right }) => (
        <p key={wrong}>
          <b>{wrong}</b> <span className="path-right">{right}</span>
        </p>
      ))}
      <div className="boat-acts">
        <button type="button" className="main" onClick={onChange}>
          Change the part
        </button>
        <button type="button" onClick={onAfter}>
          Put a part in after it
        </button>
      </div>
      {part.working.length > 0 && (
        <>
          <h2 className="loads-fields">How it is worked out</h2>
          <WorkingParts working={part.working} />
        </>
      )}
    </Sheet>
  );
}
