/** Runs a named operation of the boat book and holds what it refused. */
import { useCallback, useState } from 'react';
import type { OperationFields, OperationName } from '#boat-book';
import { bookClient } from '../offline/book-client.ts';

export interface Refusal {
  readonly where: string;
  readonly wrong: string;
  readonly right: string;
}

export type Run = <N extends OperationName>(
  name: N,
  fields: OperationFields<N>,
) => Promise<{ readonly kind: 'done'; readonly id: string | null } | ({ readonly kind: 'refused' } & Refusal)>;

export function useRun(): { readonly run: Run; readonly refusal: Refusal | null } {
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const run: Run = useCallback(async (name, fields) => {
    const outcome = await bookClient.run(name, fields);
    setRefusal(outcome.kind === 'refused' ? outcome : null);
    return outcome;
  }, []);
  return { run, refusal };
}
