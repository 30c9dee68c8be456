/**
 * A sheet to print, under the button that prints it. The button and the sheet's heading are there in the first picture after
 * the tap, and what is on the sheet comes after. Tapped before the sheet is whole, the button prints it once it is: never a
 * part of it.
 */
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { createPortal } from 'react-dom';
import './paper.css';

/** `none`: there will be none */
type Sheet = 'coming' | 'whole' | 'none';

interface Acts {
  /** how far the sheet is */
  say(sheet: Sheet): void;
  /** the place beside the button; null: not drawn yet */
  readonly beside: HTMLElement | null;
}

const Acts = createContext<Acts>({ say: () => {}, beside: null });

/**
 * @param button  what it says
 * @param children  the sheet; it says how far it is with a `SheetIs`
 */
export function Printable({ button, children }: { readonly button: string; readonly children: ReactNode }) {
  const [sheet, say] = useState<Sheet>('coming');
  const [asked, setAsked] = useState(false);
  const [beside, setBeside] = useState<HTMLElement | null>(null);
  useEffect(() => {
    if (!asked || sheet === 'coming') return;
    setAsked(false);
    if (sheet === 'whole') print();
  }, [asked, sheet]);
  return (
    <Acts value={useMemo(() => ({ say, beside }), [beside])}>
      <div className="paper-acts no-print">
        <button
          type="button"
          className="main"
          disabled={sheet === 'none'}
          onClick={() => (sheet === 'whole' ? print() : setAsked(true))}
        >
          {asked ? 'It is printed once it is whole' : button}
        </button>
        <div ref={setBeside} />
      </div>
      {children}
    </Acts>
  );
}

/**
 * Says how far the sheet is: beside the button, and on paper where the browser's own command prints it sooner.
 *
 * @param waitsFor  what is not on it yet, a sentence; empty: nothing
 * @param children  stand beside the button too
 */
export function SheetIs({
  sheet,
  waitsFor = '',
  children,
}: {
  readonly sheet: Sheet;
  readonly waitsFor?: string;
  readonly children?: ReactNode;
}) {
  const { say, beside } = useContext(Acts);
  useEffect(() => say(sheet), [say, sheet]);
  return (
    <>
      {beside !== null &&
        createPortal(
          <>
            <p role="status" className="small soft">
              {waitsFor}
            </p>
            {children}
          </>,
          beside,
        )}
      {waitsFor !== '' && <p className="paper-not-whole">{waitsFor}</p>}
    </>
  );
}
