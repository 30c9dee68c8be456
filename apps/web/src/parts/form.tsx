/** A form in a sheet: kept with one button, refused in words, with the first refused field in hand. */
import { type ReactNode, useEffect, useRef } from 'react';
import { askOfBook } from './ask-of-book.ts';
import { Refused } from './field.tsx';
import type { Refusal } from './use-run.ts';

export function Form({
  keep,
  onKeep,
  faults,
  refusal,
  also,
  inSight = false,
  children,
}: {
  /** the word on the button: what it does */
  readonly keep: string;
  /** resolves when the book has answered */
  readonly onKeep: () => Promise<void>;
  readonly faults: object;
  readonly refusal: Refusal | null;
  /** other things to do, beside the button */
  readonly also?: ReactNode;
  /** another sheet comes in its place once it is kept: it stays until then */
  readonly inSight?: boolean;
  readonly children: ReactNode;
}) {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (Object.keys(faults).length > 0) form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus();
  }, [faults]);
  return (
    <form
      ref={form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        // a sheet that this one stands over has a form of its own
        event.stopPropagation();
        void askOfBook(event.currentTarget, onKeep, inSight);
      }}
    >
      {children}
      <div className="sheet-foot">
        <div role="alert" className="sheet-refusal">
          <RefusalLine refusal={refusal} />
          {Object.keys(faults).length > 0 && <Refused text="Not kept yet: see the marked fields." />}
        </div>
        <button type="submit" className="main">
          {keep}
        </button>
        {also}
      </div>
    </form>
  );
}

/** What the book refused: where, what was wrong, what would be right. */
export function RefusalLine({ refusal }: { readonly refusal: Refusal | null }) {
  if (refusal === null) return null;
  return <Refused text={`Not kept. ${refusal.where}: ${refusal.wrong}; right would be ${refusal.right}.`} />;
}
