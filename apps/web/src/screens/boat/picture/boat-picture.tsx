/** The boat's picture: seen from three sides, standing as she does or otherwise, with what is chosen shown on her. */
import { type ReactNode, useMemo, useRef, useState } from 'react';
import type { Book, Id } from '#boat-book';
import type { PlaceOnBoat, Stance, View } from '#picture';
import { sizesOfBoat } from '#reckoning';
import { ManyField, PickField } from '../../../parts/choice-fields.tsx';
import { RefusalLine } from '../../../parts/form.tsx';
import { onDemand } from '../../../parts/on-demand.tsx';
import { useRun } from '../../../parts/use-run.ts';
import { useWidth } from '../../../parts/use-width.ts';
import './boat-picture.css';
import { listInWords } from '../../../parts/in-words.ts';
import { trailerDrawn } from '../trailer/trailer-drawn.ts';
import { PictureDrawing } from './picture-drawing.tsx';
import { type Layer, layers, pinsOnHer, runsOnHer } from './pins-on-her.ts';
import { placeInWords } from './place-in-words.ts';
import { stanceOf, standingOf } from './stance.ts';

const PlaceThingSheet = onDemand(() => import('./place-thing-sheet.tsx'));
const ThingsOnHer = onDemand(() => import('./things-on-her.tsx'));

const views: readonly { readonly value: View; readonly name: string }[] = [
  { value: 'profile', name: 'Side' },
  { value: 'plan', name: 'Above' },
  { value: 'trailer', name: 'Trailer' },
];

/** A cover hides what the picture is for: she is drawn without until it is asked for. */
const uncovered: Partial<Stance> = { coverOn: false };

/** What is being moved about on her. */
export interface Moving {
  readonly kind: 'fitting' | 'zone';
  readonly id: Id;
}

export function BoatPicture({
  book,
  today,
  page = false,
}: {
  readonly book: Book;
  readonly today: string;
  /** it has a page of its own, to be printed with its list */
  readonly page?: boolean;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const [view, setView] = useState<View>('profile');
  const [drawn, setDrawn] = useState<Partial<Stance>>(uncovered);
  const [shown, setShown] = useState<ReadonlySet<Layer>>(
    () => new Set<Layer>(['jobs', 'jury rigs', 'fittings', 'zones']),
  );
  const [moving, setMoving] = useState<Moving | null>(null);
  const [touched, setTouched] = useState<PlaceOnBoat | null>(null);
  const [placing, setPlacing] = useState(false);
  const [listed, setListed] = useState(false);
  const { run, refusal } = useRun();
  const { sizes } = useMemo(() => sizesOfBoat(book.boat), [book.boat]);
  const stands = stanceOf(book);
  const stance: Stance = { ...stands, ...drawn };
  const { mastUp, board, coverOn } = stance;
  const { pins, nowhere } = useMemo(() => pinsOnHer(book, today, shown), [book, today, shown]);
  const runs = useMemo(
    () => runsOnHer(book, today, shown, { sizes, view, stance: { mastUp, board, coverOn } }),
    [book, today, shown, sizes, view, mastUp, board, coverOn],
  );
  const fixed = sizes.keel === 'bilge keels' || sizes.keel === 'fixed keel';
  const named = sizes.keel === 'lifting keel' ? 'Keel' : 'Board';
  const before = moving === null ? null : spotOf(book, moving);

  const move = (place: PlaceOnBoat) => {
    if (moving === null) return;
    const spot = { along: place.along, up: place.up, ...(place.across === undefined ? {} : { across: place.across }) };
    void (moving.kind === 'fitting'
      ? run('placeFitting', { fitting: moving.id, ...spot })
      : run('placeZone', { zone: moving.id, ...spot }));
  };
  const begin = (what: Moving) => {
    setMoving(what);
    setTouched(null);
    frame.current?.scrollIntoView({ block: 'nearest' });
    frame.current?.querySelector<HTMLElement>('[data-picture]')?.focus({ preventScroll: true });
  };

  return (
    <figure className="boat-figure">
      <div className="picture-views no-print">
        <PickField label="Seen from" quiet value={view} onChange={setView} options={views} />
      </div>
      <div className="picture-stands no-print">
        <Turn
          said={`Mast ${stance.mastUp ? 'up' : 'down'}`}
          onTurn={() => setDrawn({ ...drawn, mastUp: !stance.mastUp })}
        />
        {!fixed && (
          <Turn
            said={`${named} ${stance.board}`}
            onTurn={() =>
              setDrawn({ ...drawn, board: ({ up: 'down', down: 'removed', removed: 'up' } as const)[stance.board] })
            }
          />
        )}
        <Turn
          said={`Cover ${stance.coverOn ? 'on' : 'off'}`}
          onTurn={() => setDrawn({ ...drawn, coverOn: !stance.coverOn })}
        />
      </div>
      {otherwise(book, stance) && (
        <p className="picture-line soft small no-print">
          <span>Drawn otherwise than she stands.</span>
          <button type="button" className="words" onClick={() => setDrawn({})}>
            As she stands
          </button>
        </p>
      )}
      <div ref={frame} className="picture">
        {width > 0 && (
          <PictureDrawing
            boat={book.boat}
            sizes={sizes}
            view={view}
            stance={stance}
            trailer={Object.values(book.trailers)[0]}
            width={width}
            tall={page}
            pins={pins}
            runs={runs}
            touched={moving === null ? touched : null}
            moving={moving === null ? null : { name: nameOf(book, moving), place: before }}
            onTouch={(place) => (moving === null ? setTouched(place) : move(place))}
            onMove={move}
          />
        )}
      </div>
      <div className="no-print" role="status">
        <RefusalLine refusal={refusal} />
        {moving !== null && (
          <p className="picture-line">
            <span>
              {nameOf(book, moving)}:{' '}
              {before === null
                ? 'touch where it is, or place it by the arrow keys.'
                : `${placeInWords(sizes, view, before)}. Touch where it is, or move it by the arrow keys.`}
            </span>
            <button type="button" onClick={() => setMoving(null)}>
              It stands there
            </button>
          </p>
        )}
        {moving === null && touched !== null && (
          <p className="picture-line">
            <span>{placeInWords(sizes, view, touched)}</span>
            <button type="button" onClick={() => setPlacing(true)}>
              Put a fitting here
            </button>
            <button type="button" className="words" onClick={() => setTouched(null)}>
              Leave it
            </button>
          </p>
        )}
      </div>
      <details className="picture-more no-print">
        <summary>What is shown on her</summary>
        <ManyField
          label="Shown"
          values={[...shown]}
          onChange={(values) => setShown(new Set(values))}
          options={layers.map((layer) => ({ value: layer, name: layer }))}
          empty=""
        />
        <p className="soft small">
          A triangle: danger. A diamond: a jury rig. Hatched: it falls due soon. A ring: a zone with nothing open; a
          small ring: a fitting. Touch the boat to put a fitting where it is.
        </p>
      </details>
      {page ? (
        <div className="picture-page-list">
          <ThingsOnHer book={book} pins={pins} runs={runs} nowhere={nowhere} onMove={begin} />
        </div>
      ) : (
        <details className="picture-more no-print" onToggle={(event) => setListed(event.currentTarget.open)}>
          <summary>The same as a list, and placing things</summary>
          {listed && <ThingsOnHer book={book} pins={pins} runs={runs} nowhere={nowhere} onMove={begin} />}
        </details>
      )}
      <figcaption className="soft small">{caption(view, book)}</figcaption>
      {placing && touched !== null && (
        <PlaceThingSheet
          book={book}
          place={touched}
          onClose={() => {
            setPlacing(false);
            setTouched(null);
          }}
        />
      )}
    </figure>
  );
}

/** A button that says how she is drawn, and draws her otherwise. */
function Turn({ said, onTurn }: { readonly said: string; readonly onTurn: () => void }): ReactNode {
  return (
    <button type="button" aria-label={`Drawn with ${said.toLowerCase()}: change it`} onClick={onTurn}>
      {said}
    </button>
  );
}

function otherwise(book: Book, stance: Stance): boolean {
  const { mastUp, board } = standingOf(book);
  return (mastUp !== null && mastUp !== stance.mastUp) || (board !== null && board !== stance.board);
}

function caption(view: View, { boat, trailers }: Book): string {
  const drawn = 'To scale from her own sizes; dashed is inside or hidden.';
  if (view === 'plan') return `${drawn} Seen from above, starboard below.`;
  if (view === 'profile') return `${drawn} Dotted: the waterline.`;
  const [trailer] = Object.values(trailers);
  const guessed = trailer && trailerDrawn(boat, trailer).guessed;
  if (guessed === undefined) return `${drawn} The trailer is drawn as is usual.`;
  return guessed.length === 0 ? drawn : `${drawn} Of the trailer, not measured: ${listInWords(guessed)}.`;
}

function nameOf(book: Book, { kind, id }: Moving): string {
  return (kind === 'fitting' ? book.fittings[id]?.name : book.zones[id]?.name) ?? '';
}

function spotOf(book: Book, { kind, id }: Moving): PlaceOnBoat | null {
  if (kind === 'zone') return book.zones[id] ?? null;
  return book.fittings[id]?.spot ?? null;
}
