/** Timers that are over, said on whatever page is open until they are heard, and outside it where the device may. */
import { useEffect, useState } from 'react';
import type { Book } from '#boat-book';
import { localAt } from '#units';
import { useRun } from '../parts/use-run.ts';
import { zoneOf } from '../reading/today.ts';
import './timers.css';
import { timersOf } from './timers-of.ts';
import { tell } from './use-notices.ts';

const toldKey = 'fettle-timers-told';
/** The longest that a browser waits in one go. [ms] */
const longest_ms = 2 ** 31 - 1;

export default function TimersOver({ book }: { readonly book: Book }) {
  const { run } = useRun();
  const [, look] = useState(0);
  const timers = timersOf(book, Date.now());
  const over = timers.filter(({ left_ms }) => left_ms <= 0);
  const next = timers.find(({ left_ms }) => left_ms > 0)?.timer.ends ?? null;
  useEffect(() => {
    const seen = () => look((n) => n + 1);
    document.addEventListener('visibilitychange', seen);
    if (next === null) return () => document.removeEventListener('visibilitychange', seen);
    const timer = setTimeout(seen, Math.min(longest_ms, Math.max(0, Date.parse(next) - Date.now()) + 50));
    return () => {
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', seen);
    };
  }, [next]);
  const overNow = over.map(({ id }) => id).join(' ');
  useEffect(() => {
    const told = new Set((localStorage.getItem(toldKey) ?? '').split(' '));
    const ids = overNow === '' ? [] : overNow.split(' ');
    for (const id of ids) if (!told.has(id)) void tell(id, wordsOf(book, id)).catch(() => {}); // the page says it in any case
    localStorage.setItem(toldKey, ids.join(' '));
  }, [overNow, book]);
  if (over.length === 0) return null;
  return (
    <div role="alert" className="timers-over">
      {over.map(({ id, timer }) => (
        <p key={id}>
          <span>
            <b>{wordsOf(book, id)}</b>, since {localAt(Date.parse(timer.ends), zoneOf(book)).clock}.
          </span>
          <button type="button" onClick={() => void run('stopTimer', { id })}>
            Heard
          </button>
        </p>
      ))}
    </div>
  );
}

/** `Over: pot life of the epoxy, Fill the holes` */
function wordsOf(book: Book, id: string): string {
  const timer = book.timers[id];
  const step = timer && book.steps[timer.step];
  return `Over: ${timer?.words ?? ''}${step ? `, ${step.title}` : ''}`;
}
