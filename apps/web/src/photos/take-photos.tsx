/** Taking photographs of a thing, with the camera or from the device, and what became of each. */
import { useEffect, useRef, useState } from 'react';
import type { PhotoRecord } from '#boat-book';
import type { PhotoOf } from './photos-of.ts';
import './photos.css';
import { useTaking } from './use-taking.ts';

interface Way {
  /** the words on the button */
  readonly name: string;
  readonly shows: PhotoRecord['shows'];
}

/** How long the making of a photograph goes on before it is said. [ms] */
const saidAfter_ms = 1000;

export function TakePhotos({
  of,
  ways,
  onTaken,
}: {
  readonly of: PhotoOf;
  /** one button each: the camera opens where there is one */
  readonly ways: readonly Way[];
  readonly onTaken?: (photo: string) => void;
}) {
  const camera = useRef<HTMLInputElement>(null);
  const device = useRef<HTMLInputElement>(null);
  const asked = useRef<PhotoRecord['shows']>(null);
  const { taking, take, keepPosition } = useTaking(of);
  const slow = useSlow(taking.inHand?.place ?? null);
  const chosen = (input: HTMLInputElement, shows: PhotoRecord['shows']) => {
    const files = [...(input.files ?? [])];
    input.value = '';
    void take(files, shows, onTaken);
  };
  return (
    <div className="photo-taking">
      <div className="photo-ways">
        {ways.map(({ name, shows }) => (
          <button
            key={name}
            type="button"
            disabled={taking.inHand !== null}
            onClick={() => {
              asked.current = shows;
              camera.current?.click();
            }}
          >
            {name}
          </button>
        ))}
        <button
          type="button"
          className="words"
          disabled={taking.inHand !== null}
          onClick={() => {
            asked.current = ways.length === 1 ? ways[0]!.shows : null;
            device.current?.click();
          }}
        >
          Choose from the device
        </button>
      </div>
      <input
        ref={camera}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        aria-label={`Photograph: ${ways.map(({ name }) => name).join(', ')}`}
        onChange={(event) => chosen(event.currentTarget, asked.current)}
      />
      <input
        ref={device}
        type="file"
        multiple
        hidden
        aria-label="Photographs on this device"
        onChange={(event) => chosen(event.currentTarget, asked.current)}
      />
      <div role="status">
        {taking.inHand !== null && slow && (
          <p>
            Making {taking.inHand.name} small enough to keep
            {taking.inHand.of > 1 && `, ${taking.inHand.place} of ${taking.inHand.of}`} …
          </p>
        )}
        {taking.silenced.map(({ id, name, position }) => (
          <p key={id} className="small">
            {name} said where it was taken; that was left out.{' '}
            <button type="button" className="words" onClick={() => void keepPosition(id, position)}>
              Keep where it was taken
            </button>
          </p>
        ))}
      </div>
      {taking.refused.length > 0 && (
        <div role="alert" className="photo-refused">
          {taking.refused.map(({ name, why }) => (
            <p key={`${name} ${why}`}>
              <b>{name}</b> was not taken in: {why}
            </p>
          ))}
          <p className="small">Nothing in the book has changed by it.</p>
        </div>
      )}
    </div>
  );
}

/** Whether what goes on has gone on for a while. */
function useSlow(what: number | null): boolean {
  const [slow, setSlow] = useState(false);
  const going = what !== null;
  useEffect(() => {
    setSlow(false);
    if (!going) return;
    const timer = setTimeout(() => setSlow(true), saidAfter_ms);
    return () => clearTimeout(timer);
  }, [going]);
  return slow;
}
