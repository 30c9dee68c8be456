/**
 * One page at a time; one that is left by a tap is taken down after the picture of the next. To take down a long page takes a
 * slow phone as long as to draw the heading that answers the finger; hidden where it is, it costs that picture nothing.
 */
import { type ReactElement, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { cameByTap } from './route.ts';
import { afterPaint } from './when.ts';

interface Page {
  /** tells a page from the one before it */
  readonly turn: number;
  readonly drawn: ReactElement;
}

/** @param children  the page; one of another kind, or with another key, is another page */
export function OnePage({ children }: { readonly children: ReactElement }) {
  const [here, setHere] = useState<Page>({ turn: 0, drawn: children });
  const [left, setLeft] = useState<Page | null>(null);
  if (here.drawn !== children) {
    const another = here.drawn.type !== children.type || here.drawn.key !== children.key;
    if (another && cameByTap()) setLeft(here);
    setHere({ turn: here.turn + (another ? 1 : 0), drawn: children });
  }

  const goes = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    // a sheet left open would keep the page that came closed off
    if (left !== null) for (const sheet of goes.current?.querySelectorAll('dialog') ?? []) sheet.close();
  }, [left]);
  useEffect(() => {
    if (left !== null) return afterPaint(() => setLeft(null));
  }, [left]);

  return (left === null ? [here] : [here, left]).map((page) => (
    <div
      key={page.turn}
      className={page === left ? 'shell-page-left' : undefined}
      ref={page === left ? goes : undefined}
    >
      {page.drawn}
    </div>
  ));
}
