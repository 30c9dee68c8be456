/** The picture of a photograph as an address that an image can show, for as long as it is shown. */
import { useEffect, useState } from 'react';
import { bookClient } from '../offline/book-client.ts';

export type Picture =
  | { readonly state: 'coming' }
  | { readonly state: 'here'; readonly address: string }
  | { readonly state: 'not here' };

export function usePicture(blob: string): Picture {
  const [picture, setPicture] = useState<Picture>({ state: 'coming' });
  useEffect(() => {
    let live = true;
    let address: string | null = null;
    void bookClient.blob(blob).then((bytes) => {
      if (!live) return;
      if (bytes === null) return setPicture({ state: 'not here' });
      // whatever the bytes are, they are shown as a JPEG and as nothing else
      address = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'image/jpeg' }));
      setPicture({ state: 'here', address });
    });
    return () => {
      live = false;
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [blob]);
  return picture;
}
