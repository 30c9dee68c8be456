/**
 * A sheet laid over the page for one thing to fill in. The device's own dialog: focus stays in it, Escape leaves it. It is
 * there with its heading in the first picture after the tap, and filled in the next: on a slow phone a long form takes
 * longer than a finger waits for an answer. In that first picture it lies on the page without closing it off: to do so the
 * device goes through the style of all that is on the page, which takes as long as the sheet itself. It is closed off, and
 * its heading has the focus, before the sheet is filled.
 */
import { type ReactNode, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { afterPaint } from '../shell/when.ts';
import './sheet.css';

export function Sheet({
  title,
  onClose,
  unsaved = false,
  children,
}: {
  readonly title: string;
  readonly onClose: () => void;
  /** something was typed that is not in the book: leaving asks first */
  readonly unsaved?: boolean;
  readonly children: ReactNode;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  const [asking, setAsking] = useState(false);
  const [filled, setFilled] = useState(false);

  useLayoutEffect(() => {
    const shown = dialog.current;
    if (shown === null) return;
    // over another sheet there is no other way
    if (document.querySelector('dialog:modal') !== null) shown.showModal();
    else shown.open = true;
    const off = afterPaint(() => {
      if (!shown.matches(':modal')) {
        shown.open = false;
        shown.showModal();
      }
      shown.querySelector('h2')?.focus();
      setFilled(true);
    });
    return () => {
      off();
      shown.close();
    };
  }, []);
  useEffect(() => {
    if (!unsaved) setAsking(false);
  }, [unsaved]);

  const leave = () => {
    if (unsaved) setAsking(true);
    else onClose();
  };
  return (
    <dialog
      ref={dialog}
      className="sheet"
      data-asks=""
      aria-labelledby={id}
      aria-busy={!filled}
      onCancel={(event) => {
        // a file chooser's own cancel bubbles up to here
        if (event.target !== dialog.current) return;
        event.preventDefault();
        leave();
      }}
    >
      <div className="sheet-head">
        <h2 id={id} tabIndex={-1}>
          {title}
        </h2>
        <button type="button" className="words" onClick={leave}>
          Close
        </button>
      </div>
      {asking && (
        <div className="sheet-asking" role="alert">
          <p>What you typed is not in the book yet.</p>
          <button type="button" onClick={() => setAsking(false)}>
            Go on with it
          </button>
          <button type="button" className="removes" onClick={onClose}>
            Leave it out
          </button>
        </div>
      )}
      <div className="sheet-body">{filled && children}</div>
    </dialog>
  );
}
