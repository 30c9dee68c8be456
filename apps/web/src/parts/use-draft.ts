/** What is being filled in, before it is in the book. */
import { useCallback, useState } from 'react';

export function useDraft<D extends object>(start: D) {
  const [draft, setDraft] = useState(start);
  const [changed, setChanged] = useState(false);
  const set = useCallback(<K extends keyof D>(key: K, value: D[K]) => {
    setChanged(true);
    setDraft((before) => ({ ...before, [key]: value }));
  }, []);
  return { draft, set, changed };
}
