/**
 * What follows from a change that was answered already: drawn after the answer, in slices that another tap may come
 * between. Until then it stands as it was before the change, so what it is told to do must be right for both.
 */
import { type ReactNode, useDeferredValue } from 'react';

export function Following({ children }: { readonly children: ReactNode }) {
  return useDeferredValue(children);
}
