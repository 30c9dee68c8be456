import { lazy, Suspense, useState } from 'react';
import type { Book } from '#boat-book';

const OwnBookSheet = lazy(() => import('./own-book-sheet.tsx'));

/** Says that the boat is invented, and starts the keeper's own book in one tap. */
export function DemoLine({ book }: { readonly book: Book }) {
  const [open, setOpen] = useState(false);
  if (!book.boat.demo) return null;
  return (
    <p className="demo-line">
      {book.boat.name}, her keeper and her jobs are invented, to try things out on.{' '}
      <button type="button" className="words" onClick={() => setOpen(true)}>
        Start your own boat's book
      </button>
      {open && (
        <Suspense fallback={null}>
          <OwnBookSheet onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </p>
  );
}
