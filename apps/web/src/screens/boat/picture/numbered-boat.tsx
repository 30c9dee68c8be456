/** The boat from the side with a mark, and a number or a word, where each of some things is: to be printed beside their list. */
import { useMemo, useRef } from 'react';
import type { Book, Id } from '#boat-book';
import { boatDrawing, placesIn } from '#picture';
import { sizesOfBoat } from '#reckoning';
import type { Meaning } from '../../../parts/mark.tsx';
import { useWidth } from '../../../parts/use-width.ts';
import './boat-picture.css';
import { besideLabels } from './beside-labels.ts';
import { DrawnLines } from './drawn-lines.tsx';
import { drawnWidth, PinMark } from './picture-drawing.tsx';
import { graver, type PinOnHer, placeOnHer } from './pins-on-her.ts';
import { stanceOf } from './stance.ts';

export interface Numbered {
  /** what stands beside its mark: `3` */
  readonly label: string;
  readonly meaning: Meaning;
  readonly fitting: Id | null;
  readonly zone: Id | null;
}

/** @param tallest_px  she is drawn smaller rather than taller than this, names and all */
export function NumberedBoat({
  book,
  things,
  tallest_px,
}: {
  readonly book: Book;
  readonly things: readonly Numbered[];
  readonly tallest_px: number;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const pins = useMemo(() => pinsOf(book, things), [book, things]);
  if (pins.length === 0) return null;
  return (
    <div ref={frame} className="picture">
      {width > 0 && <Drawing book={book} pins={pins} width={width} tallest_px={tallest_px} />}
    </div>
  );
}

function Drawing({
  book,
  pins,
  width,
  tallest_px,
}: {
  readonly book: Book;
  readonly pins: readonly PinOnHer[];
  readonly width: number;
  readonly tallest_px: number;
}) {
  const { sizes } = sizesOfBoat(book.boat);
  const stance = { ...stanceOf(book), coverOn: false };
  const { extent, lines } = boatDrawing(sizes, 'profile', stance);
  const edge = 24;
  const scale = Math.min(
    (width - 2 * edge) / (extent.right - extent.left),
    (tallest_px - 2 * edge) / (extent.top - extent.bottom),
  );
  const margin = (width - (extent.right - extent.left) * scale) / 2;
  // the bow looks to the right
  const across = (x: number) => width - margin - (x - extent.left) * scale;
  const down = (y: number) => (extent.top - y) * scale + edge;
  const placed = placesIn(sizes, 'profile', stance);
  const marks = pins.map((pin) => {
    const { x, y } = placed(pin.place);
    return { pin, key: pin.key, x: across(x), y: down(y), text: pin.things.map(({ title }) => title).join(', ') };
  });
  const height = Math.max(down(extent.bottom), ...marks.map(({ y }) => y)) + edge;
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`${book.boat.name} from the side: ${marks.map(({ pin, text }) => `${text} ${pin.of.name}`).join('; ')}`}
    >
      <DrawnLines lines={lines} transform={`matrix(${-scale} 0 0 ${-scale} ${across(0)} ${down(0)})`} />
      {marks.map(({ pin, key, x, y }) => (
        <PinMark key={key} pin={pin} x={x} y={y} />
      ))}
      {besideLabels(marks, width, drawnWidth).map(({ key, left, middle, text }) => (
        <g key={key}>
          <rect className="picture-behind" x={left - 2} y={middle - 7} width={drawnWidth(text) + 4} height={14} />
          <text x={left} y={middle + 5} className="picture-text">
            {text}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** One mark for all that is at one place; what has no place has none. */
function pinsOf(book: Book, things: readonly Numbered[]): readonly PinOnHer[] {
  const pins = new Map<string, PinOnHer>();
  for (const { label, meaning, fitting, zone } of things) {
    const at = placeOnHer(book, fitting, zone);
    if (at === null) continue;
    const key = `${at.of.kind} ${at.of.id}`;
    const before = pins.get(key);
    pins.set(key, {
      key,
      ...at,
      things: [...(before?.things ?? []), { key: label, meaning, title: label, href: '' }],
      meaning: graver(before?.meaning ?? null, meaning),
    });
  }
  return [...pins.values()];
}
