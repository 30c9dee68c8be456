/** Whether the page is being laid out for paper, which is not as wide as the screen and has no tabs to turn. */
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** What a drawing may take of a page in width, A4 or Letter, inside the margins of look/print.css. [CSS px] */
export const paperWidth_px = 680;

export function useOnPaper(): boolean {
  const [onPaper, setOnPaper] = useState(false);
  useEffect(() => {
    // the page is laid out right after the event: it is to be drawn by then
    const begin = () => flushSync(() => setOnPaper(true));
    const end = () => setOnPaper(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return onPaper;
}
