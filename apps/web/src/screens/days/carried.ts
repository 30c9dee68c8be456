/** What has been carried down for a job day: ticks of this device, dropped once the day is over. */
import { useState } from 'react';

const prefix = 'fettle-carried';

export function useCarried(book: string, day: string, date: string, today: string) {
  const key = `${prefix} ${date} ${book} ${day}`;
  const [carried, setCarried] = useState(() => {
    dropBefore(today);
    return new Set(read(key));
  });
  const tick = (thing: string) => {
    const next = new Set(carried);
    if (!next.delete(thing)) next.add(thing);
    setCarried(next);
    localStorage.setItem(key, JSON.stringify([...next]));
  };
  return { carried: carried as ReadonlySet<string>, tick };
}

function read(key: string): string[] {
  const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '[]');
  return Array.isArray(kept) ? kept.filter((each) => typeof each === 'string') : [];
}

/** Lists of days gone by are of no more use. */
function dropBefore(today: string): void {
  for (const key of Object.keys(localStorage))
    if (key.startsWith(`${prefix} `) && key.slice(prefix.length + 1, prefix.length + 11) < today)
      localStorage.removeItem(key);
}
