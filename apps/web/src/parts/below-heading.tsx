/**
 * What stands below the heading of a page. The tap that goes to a page is answered by its heading, in the first picture
 * after it; this comes in the pictures after that, drawn in slices that another tap may come between: on a slow phone a
 * whole page takes longer than a finger waits for an answer. It only grows downwards, so nothing moves from under a
 * finger. The page one arrives on with no tap is drawn in one go; and what is printed is whole, however soon it is.
 */
import { type ReactNode, startTransition, useEffect, useState } from 'react';
import { hasGone } from '../shell/route.ts';
import { afterPaint } from '../shell/when.ts';
import { useOnPaper } from './use-on-paper.ts';

/**
 * @param meanwhile  stands in its place until then: a heading that lies within it, on the paper of a sheet to print
 */
export function BelowHeading({
  children,
  meanwhile = null,
}: {
  readonly children: ReactNode;
  readonly meanwhile?: ReactNode;
}) {
  const [shown, setShown] = useState(() => !hasGone());
  // it stays once it was printed
  if (useOnPaper() && !shown) setShown(true);
  useEffect(() => {
    if (!shown) return afterPaint(() => startTransition(() => setShown(true)));
  }, [shown]);
  return shown ? children : meanwhile;
}
