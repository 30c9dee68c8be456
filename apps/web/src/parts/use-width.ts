import { type RefObject, useLayoutEffect, useState } from 'react';

/** Width inside an element, followed as it changes; 0 before it is known. [whole CSS px] */
export function useWidth(frame: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const watched = frame.current;
    if (!watched) return;
    const watch = new ResizeObserver(([entry]) => setWidth(Math.floor(entry?.contentRect.width ?? 0)));
    watch.observe(watched);
    setWidth(Math.floor(watched.getBoundingClientRect().width));
    return () => watch.disconnect();
  }, [frame]);
  return width;
}
