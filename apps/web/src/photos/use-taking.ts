/** Photographs taken in: each made smaller beside the page and put in the book, or refused by name. */
import { wrap } from 'comlink';
import { useRef, useState } from 'react';
import type { Id, PhotoRecord } from '#boat-book';
import { bookClient } from '../offline/book-client.ts';
import type { Position } from './exif-marks.ts';
import type { MadeSmall, PhotoWorker } from './photo-worker.ts';
import { type PhotoOf, subjectOf } from './photos-of.ts';

export interface Taking {
  /** which of them is in hand; null: none is */
  readonly inHand: { readonly name: string; readonly place: number; readonly of: number } | null;
  readonly refused: readonly { readonly name: string; readonly why: string }[];
  /** those put in that said where they were taken, which was left out */
  readonly silenced: readonly { readonly id: Id; readonly name: string; readonly position: Position }[];
}

const nothing: Taking = { inHand: null, refused: [], silenced: [] };

export function useTaking(of: PhotoOf) {
  const [taking, setTaking] = useState<Taking>(nothing);
  const busy = useRef(false);
  /** @param then  told of each photograph that is in the book */
  const take = async (files: readonly File[], shows: PhotoRecord['shows'], then?: (photo: Id) => void) => {
    if (busy.current || files.length === 0) return;
    busy.current = true;
    const maker = begin();
    setTaking(nothing);
    for (const [i, file] of files.entries()) {
      const name = file.name || 'the photograph';
      setTaking((now) => ({ ...now, inHand: { name, place: i + 1, of: files.length } }));
      const refuse = (why: string) => setTaking((now) => ({ ...now, refused: [...now.refused, { name, why }] }));
      const made = await maker.small(file);
      if (made.kind === 'refused') {
        refuse(made.why);
        continue;
      }
      const { bytes, width_px, height_px, position } = made;
      const outcome = await bookClient.keepBlob(
        'keepPhoto',
        {
          ...subjectOf(of),
          shows,
          bytes: bytes.length,
          width_px,
          height_px,
          taken: new Date(made.taken ?? file.lastModified).toISOString(),
          words: '',
          position: null,
        },
        bytes,
      );
      if (outcome.kind === 'refused') {
        refuse(`${outcome.wrong}. Right would be ${outcome.right}.`);
        continue;
      }
      if (outcome.id === null) continue;
      const { id } = outcome;
      if (position !== null) setTaking((now) => ({ ...now, silenced: [...now.silenced, { id, name, position }] }));
      then?.(id);
    }
    maker.stop();
    setTaking((now) => ({ ...now, inHand: null }));
    busy.current = false;
  };
  const keepPosition = async (id: Id, position: Position) => {
    await bookClient.run('changePhoto', { id, position });
    setTaking((now) => ({ ...now, silenced: now.silenced.filter((one) => one.id !== id) }));
  };
  return { taking, take, keepPosition };
}

/** A Worker for a run of photographs, closed after it: what a picture takes is given back then. */
function begin() {
  const worker = new Worker(new URL('./photo-worker.ts', import.meta.url), { type: 'module', name: 'photographs' });
  const stopped = new Promise<MadeSmall>((resolve) => {
    worker.addEventListener('error', () =>
      resolve({
        kind: 'refused',
        why: 'this device had no room to open it. Close other pages, or take it at a smaller size.',
      }),
    );
  });
  const remote = wrap<PhotoWorker>(worker);
  return {
    small: (file: File): Promise<MadeSmall> =>
      Promise.race([
        stopped,
        (remote.smallPhoto(file) as Promise<MadeSmall>).catch(
          (cause: unknown): MadeSmall => ({
            kind: 'refused',
            why: `it could not be made smaller: ${cause instanceof Error ? cause.message : String(cause)}.`,
          }),
        ),
      ]),
    stop: () => worker.terminate(),
  };
}
