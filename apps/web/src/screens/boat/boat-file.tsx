/** The boat book as one file: given out, taken in, and what a file was refused for. */
import { useEffect, useRef, useState } from 'react';
import type { Book } from '#boat-book';
import { bookClient, type OpenedFile } from '../../offline/book-client.ts';
import { Refused } from '../../parts/field.tsx';
import { fileNameOf, giveFile } from '../../parts/give-file.ts';

export default function BoatFile({ book }: { readonly book: Book }) {
  const chooser = useRef<HTMLInputElement>(null);
  const [opened, setOpened] = useState<OpenedFile | null>(null);
  const [others, setOthers] = useState<
    readonly { readonly id: string; readonly name: string; readonly current: boolean }[]
  >([]);
  // read again whenever another book is open
  const bookId = book.id;
  useEffect(() => {
    let here = true;
    void bookClient.books().then((books) => {
      if (here) setOthers(books.filter((one) => one.id !== bookId));
    });
    return () => {
      here = false;
    };
  }, [bookId]);

  const give = async () => {
    const bytes = await bookClient.boatFile();
    giveFile(bytes, `${fileNameOf(book.boat.name)}.fettle`, 'application/zip');
  };
  const take = async (file: File | undefined) => {
    if (!file) return;
    setOpened(await bookClient.openFile(new Uint8Array(await file.arrayBuffer())));
  };
  return (
    <section className="no-print" aria-labelledby="boat-file">
      <h2 id="boat-file">The boat file</h2>
      <p>The whole book in one file: keep a copy where the phone is not.</p>
      <div className="boat-acts">
        <button type="button" onClick={() => void give()}>
          Save the boat file
        </button>
        <button type="button" onClick={() => chooser.current?.click()}>
          Open a boat file
        </button>
        <input
          ref={chooser}
          type="file"
          accept=".fettle,application/zip"
          hidden
          aria-label="Boat file to open"
          onChange={(event) => {
            void take(event.target.files?.[0]);
            event.target.value = '';
          }}
        />
      </div>
      <div role="status">
        {opened?.kind === 'refused' && (
          <>
            <Refused text="The file was not opened; nothing in your book has changed." />
            <ul className="boat-because">
              {opened.because.map((why) => (
                <li key={why}>{why}</li>
              ))}
            </ul>
          </>
        )}
        {opened?.kind === 'opened' && (
          <>
            <p>The file is open{opened.readOnly ? ', to read only: it is from a newer version of Fettle.' : '.'}</p>
            <ul className="boat-because">
              {opened.notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          </>
        )}
      </div>
      {others.length > 0 && (
        <>
          <h3>Other books on this device</h3>
          <ul>
            {others.map(({ id, name }) => (
              <li key={id}>
                <button type="button" className="words" onClick={() => void bookClient.openBook(id)}>
                  Open {name}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
