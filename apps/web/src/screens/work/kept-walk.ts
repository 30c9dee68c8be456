/** The walk-round being gone through: kept on this device until it is cleared, so that closing the page loses nothing. */
import { useCallback, useState } from 'react';

export type Fate = { readonly kind: 'in'; readonly id: string | null } | { readonly kind: 'left' };

export interface KeptWalk {
  readonly page: string;
  /** what became of the proposals, by their keys */
  readonly fates: Readonly<Record<string, Fate>>;
}

const empty: KeptWalk = { page: '', fates: {} };

export function useKeptWalk(book: string) {
  const place = `fettle-walk-round ${book}`;
  const [walk, setWalk] = useState(() => read(place));
  const keep = useCallback(
    (change: (before: KeptWalk) => KeptWalk) =>
      setWalk((before) => {
        const next = change(before);
        if (next.page === '' && Object.keys(next.fates).length === 0) localStorage.removeItem(place);
        else localStorage.setItem(place, JSON.stringify(next));
        return next;
      }),
    [place],
  );
  return { walk, keep, clear: useCallback(() => keep(() => empty), [keep]) };
}

function read(place: string): KeptWalk {
  const text = localStorage.getItem(place);
  if (text === null) return empty;
  try {
    const kept: unknown = JSON.parse(text);
    if (typeof kept !== 'object' || kept === null || !('page' in kept) || typeof kept.page !== 'string') return empty;
    const fates = 'fates' in kept && typeof kept.fates === 'object' && kept.fates !== null ? kept.fates : {};
    return { page: kept.page, fates: Object.fromEntries(Object.entries(fates).filter(([, fate]) => isFate(fate))) };
  } catch {
    // another program's words under our name: nothing of ours is lost by starting anew
    return empty;
  }
}

function isFate(fate: unknown): fate is Fate {
  if (typeof fate !== 'object' || fate === null || !('kind' in fate)) return false;
  if (fate.kind === 'left') return true;
  return fate.kind === 'in' && 'id' in fate && (fate.id === null || typeof fate.id === 'string');
}
