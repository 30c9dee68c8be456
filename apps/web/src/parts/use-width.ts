import { type RefObject, useLayoutEffect, useState } from 'react';
import { paperWidth_px, useOnPaper } from './use-on-paper.ts';

/** Width inside an element, followed as it changes; 0 before it is known; on paper what a page has, or less. [whole CSS px] */
export function useWidth(frame: RefObject<HTMLElement | null>, onPaper_px = paperWidth_px): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const watched = frame.current;
    if (!watched) return;
    const watch = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)));
    watch.observe(watched);
    setWidth(Math.floor(watched.getBoundingClientRect().width));
    return () => watch.disconnect();
  }, [frame]);
  return useOnPaper() ? onPaper_px : width;
}
