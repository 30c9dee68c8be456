/** Photographs side by side; one is opened large with a tap. */
import { useState } from 'react';
import { createPortal } from 'react-dom';
import type { Book, Id } from '#boat-book';
import { localAt } from '#units';
import { dateInWords } from '../parts/in-words.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { todayAt, zoneOf } from '../reading/today.ts';
import { type NamedPhoto, showsInWords } from './photos-of.ts';
import './photos.css';
import { usePicture } from './use-picture.ts';

const PhotoSheet = onDemand(() => import('./photo-sheet.tsx'));

export function PhotoStrip({ book, photos }: { readonly book: Book; readonly photos: readonly NamedPhoto[] }) {
  const [open, setOpen] = useState<Id | null>(null);
  if (photos.length === 0) return null;
  return (
    <>
      <ul className="photo-strip">
        {photos.map((named) => (
          <li key={named.id}>
            <Small book={book} {...named} onOpen={() => setOpen(named.id)} />
          </li>
        ))}
      </ul>
      {open !== null &&
        book.photos[open] &&
        // beside the page: the strip may stand in a form, and a form in a form is none
        createPortal(
          <PhotoSheet book={book} id={open} photo={book.photos[open]} onClose={() => setOpen(null)} />,
          document.body,
        )}
    </>
  );
}

function Small({ book, photo, onOpen }: NamedPhoto & { readonly book: Book; readonly onOpen: () => void }) {
  const picture = usePicture(photo.blob);
  const said = [
    photo.shows === null ? null : showsInWords[photo.shows],
    dateInWords(localAt(Date.parse(photo.taken), zoneOf(book)).day, todayAt(book)),
  ].filter((part) => part !== null);
  const name = ['Photograph', ...said, photo.words].filter(Boolean).join(', ');
  return (
    <button type="button" className="photo-small" aria-label={name} onClick={onOpen}>
      {picture.state === 'here' ? (
        <img src={picture.address} alt="" />
      ) : (
        <span className="photo-none">{picture.state === 'not here' && 'not on this device'}</span>
      )}
      <span className="small">{said.join(' · ')}</span>
    </button>
  );
}
