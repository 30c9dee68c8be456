/** A block of readings from the device’s store, read. */
import { useEffect, useState } from 'react';
import type { ReadingBlock } from '#boat-book';
import { type ReadingColumns, readBlock } from '#readings';
import { bookClient } from '../../../offline/book-client.ts';

export type BlockHere =
  | { readonly state: 'fetching' }
  | { readonly state: 'here'; readonly columns: ReadingColumns }
  /** why nothing can be drawn of it */
  | { readonly state: 'not here'; readonly because: string };

export function useBlock(block: ReadingBlock): BlockHere {
  const [found, setFound] = useState<{ readonly of: string; readonly here: BlockHere } | null>(null);
  const { blob } = block;
  useEffect(() => {
    let live = true;
    const tell = (here: BlockHere) => {
      if (live) setFound({ of: blob, here });
    };
    bookClient.blob(blob).then(
      (bytes) => {
        if (bytes === null)
          return tell({
            state: 'not here',
            because:
              'These readings are named in the book but are not on this device. Open a boat file from the device that has them.',
          });
        const read = readBlock(bytes);
        tell(
          read.kind === 'block'
            ? { state: 'here', columns: read.columns }
            : { state: 'not here', because: `These readings are damaged: ${read.because}. Read the file again.` },
        );
      },
      (cause: unknown) => tell({ state: 'not here', because: `They could not be fetched: ${String(cause)}.` }),
    );
    return () => {
      live = false;
    };
  }, [blob]);
  return found?.of === blob ? found.here : { state: 'fetching' };
}
