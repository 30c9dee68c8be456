/** Undo of this device's own last change, always at hand, and offered in words after each change. */
import { useEffect, useRef, useState } from 'react';
import { bookClient } from '../offline/book-client.ts';

export function UndoLine({ undo, redo }: { readonly undo: string | null; readonly redo: string | null }) {
  return (
    <>
      <button
        type="button"
        className="shell-icon"
        data-of-three={redo === null ? undefined : ''}
        disabled={undo === null}
        aria-label={undo === null ? 'Undo: nothing to undo' : `Undo: ${undo}`}
        title={undo === null ? 'Nothing to undo' : `Undo: ${undo}`}
        onClick={() => void bookClient.undo()}
      >
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M8 5L3.5 9.5 8 14M4 9.5h9.5a5.5 5.5 0 0 1 0 11H8" />
        </svg>
        <span>Undo</span>
      </button>
      {redo !== null && (
        <button
          type="button"
          className="shell-icon"
          data-of-three=""
          aria-label={`Redo: ${redo}`}
          title={`Redo: ${redo}`}
          onClick={() => void bookClient.redo()}
        >
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M16 5l4.5 4.5L16 14M20 9.5h-9.5a5.5 5.5 0 0 0 0 11H16" />
          </svg>
          <span>Redo</span>
        </button>
      )}
      <JustDone undo={undo} />
    </>
  );
}

/** After a change: what was done, with its undo in reach of the thumb, for as long as it is the last change. */
function JustDone({ undo }: { readonly undo: string | null }) {
  const [shown, setShown] = useState<string | null>(null);
  const before = useRef(undo);
  useEffect(() => {
    if (before.current === undo) return;
    before.current = undo;
    setShown(undo);
    const timer = setTimeout(() => setShown(null), 12_000);
    return () => clearTimeout(timer);
  }, [undo]);
  return (
    <div className="shell-done no-print" role="status">
      {shown !== null && shown === undo && (
        <p>
          <span>{shown}</span>
          <button type="button" className="words" onClick={() => void bookClient.undo()}>
            Undo
          </button>
        </p>
      )}
    </div>
  );
}
