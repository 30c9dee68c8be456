/** The drawing itself: her lines, what runs on her, and the pins with their names, near or whole. */
import { type KeyboardEvent, memo, type PointerEvent, useMemo } from 'react';
import type { Boat, TrailerRecord } from '#boat-book';
import {
  type BoatSizes,
  boatDrawing,
  isAloft,
  type Line,
  landmarks,
  type PlaceOnBoat,
  placeAt,
  placesIn,
  type Stance,
  type View,
} from '#picture';
import { countInWords } from '../../../parts/in-words.ts';
import { markShapes } from '../../../parts/mark.tsx';
import { address } from '../../../shell/route.ts';
import { trailerDrawn } from '../trailer/trailer-drawn.ts';
import { besideLabels } from './beside-labels.ts';
import { DrawnLines } from './drawn-lines.tsx';
import { lineHeight, markWidth, type Pin, placedPins } from './pin-layout.ts';
import type { PinOnHer, RunOnHer } from './pins-on-her.ts';
import { useTouch } from './use-touch.ts';
import { inFrame, onDrawing } from './zoom.ts';

const shownThings = 3;
/** more names than these are not to be read at once: the gravest stand, the others are at their marks */
const shownPins = 9;
/** a step by an arrow key, and with Shift. [m] */
const step_m = 0.05;
const bigStep_m = 0.25;

const viewSaid: Readonly<Record<View, string>> = {
  profile: 'from the side',
  plan: 'from above',
  trailer: 'on her trailer',
};

export function PictureDrawing({
  boat,
  sizes,
  view,
  stance,
  trailer,
  width,
  tall,
  pins,
  runs,
  touched,
  moving,
  onTouch,
  onMove,
}: {
  readonly boat: Boat;
  readonly sizes: BoatSizes;
  readonly view: View;
  readonly stance: Stance;
  /** the one she is drawn on; undefined: none is in the book, and it is drawn as is usual */
  readonly trailer: TrailerRecord | undefined;
  readonly width: number;
  /** it may take the height of a page */
  readonly tall: boolean;
  readonly pins: readonly PinOnHer[];
  readonly runs: readonly RunOnHer[];
  /** where the picture was touched last */
  readonly touched: PlaceOnBoat | null;
  /** what is being moved; place null: it has none yet */
  readonly moving: { readonly name: string; readonly place: PlaceOnBoat | null } | null;
  readonly onTouch: (place: PlaceOnBoat) => void;
  readonly onMove: (place: PlaceOnBoat) => void;
}) {
  const { mastUp, board, coverOn } = stance;
  const drawing = useMemo(
    () => boatDrawing(sizes, view, { mastUp, board, coverOn }, trailer && trailerDrawn(boat, trailer).sizes),
    [sizes, view, mastUp, board, coverOn, boat, trailer],
  );
  const { extent } = drawing;
  const scale = Math.min(
    (width - 24) / (extent.right - extent.left),
    (tall ? 820 : 560) / (extent.top - extent.bottom),
    150,
  );
  const margin = (width - (extent.right - extent.left) * scale) / 2;
  // the bow looks to the right
  const across = (x: number) => width - margin - (x - extent.left) * scale;
  const down = (y: number) => (extent.top - y) * scale + 10;
  const placed = placesIn(sizes, view, stance);
  const at = (place: PlaceOnBoat) => {
    const point = placed(place);
    return { x: across(point.x), y: down(point.y) };
  };

  const named = useMemo(
    () =>
      new Set(
        pins
          .filter(({ things, meaning }) => things.length > 0 && meaning !== null)
          .slice(0, shownPins)
          .map(({ key }) => key),
      ),
    [pins],
  );
  const mastX = view !== 'plan' && stance.mastUp ? across(sizes.mastFromBow_m) : null;
  const labels = placedPins(
    pins
      .filter(({ key }) => named.has(key))
      .map((pin): Pin => {
        const { x, y } = at(pin.place);
        return {
          id: pin.key,
          x,
          y,
          aloft: mastX !== null && isAloft(sizes, pin.place),
          lines: linesOf(pin).map(({ title }) => title),
        };
      }),
    {
      width,
      mastX,
      flagsAbove:
        (view === 'plan' ? down(extent.top) : down(stance.mastUp ? landmarks(sizes).gooseneck.y : extent.top)) - 14,
      hangsBelow: down(extent.bottom) + 14,
      measure: drawnWidth,
    },
  );
  const top = Math.min(0, ...labels.map(({ box }) => box.y - 4));
  const bottom = Math.max(down(extent.bottom) + 12, ...labels.map(({ box }) => box.y + box.height + 6));
  const frame = { width, top, bottom };
  const touch = useTouch(frame);
  const near = touch.zoom.by > 1;
  const shownAt = (place: PlaceOnBoat) => inFrame(touch.zoom, frame, at(place));
  const inSight = ({ x, y }: { readonly x: number; readonly y: number }) =>
    x > -20 && x < width + 20 && y > top - 20 && y < bottom + 20;

  const tapped = (event: PointerEvent<SVGSVGElement>) => {
    if ((event.target as Element).closest('a')) return;
    const box = event.currentTarget.getBoundingClientRect();
    const point = onDrawing(touch.zoom, frame, { x: event.clientX - box.left, y: event.clientY - box.top + top });
    const metres = { x: extent.left + (width - margin - point.x) / scale, y: extent.top - (point.y - 10) / scale };
    onTouch(placeAt(sizes, view, stance, metres, moving?.place ?? null));
  };
  const key = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const step = event.shiftKey ? bigStep_m : step_m;
    const by = { ArrowLeft: [step, 0], ArrowRight: [-step, 0], ArrowUp: [0, step], ArrowDown: [0, -step] }[event.key];
    if (moving === null || !by) {
      touch.key(event);
      return;
    }
    event.preventDefault();
    const from = placed(moving.place ?? { along: 0.5, up: 1 });
    onMove(placeAt(sizes, view, stance, { x: from.x + by[0]!, y: from.y + by[1]! }, moving.place));
  };
  const beside = near
    ? besideLabels(
        pins
          .filter(({ things }) => things.length > 0)
          .map((pin) => ({
            key: pin.key,
            ...shownAt(pin.place),
            text:
              pin.things.length === 1
                ? pin.things[0]!.title
                : `${pin.of.name}: ${countInWords(pin.things.length, 'thing')}`,
          }))
          .filter(inSight),
        width,
        drawnWidth,
      )
    : [];
  const cross = moving?.place ?? touched;
  const lines = `matrix(${-scale * touch.zoom.by} 0 0 ${-scale * touch.zoom.by} ${inFrame(touch.zoom, frame, { x: across(0), y: 0 }).x} ${inFrame(touch.zoom, frame, { x: 0, y: down(0) }).y})`;

  return (
    <section
      data-picture
      aria-label={`Picture of ${boat.name}. Plus and minus look nearer and further off, arrows move it${moving ? `; now they move ${moving.name}` : ''}.`}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: keys zoom it and move what is being placed
      tabIndex={0}
      className="picture-frame"
      data-near={near || undefined}
      onKeyDown={key}
    >
      <svg
        viewBox={`0 ${top} ${width} ${bottom - top}`}
        width={width}
        height={bottom - top}
        aria-label={`${boat.name} ${viewSaid[view]}, ${boat.length_m} m, drawn to scale: mast ${stance.mastUp ? 'up' : 'down'}, board ${stance.board}, cover ${stance.coverOn ? 'on' : 'off'}`}
        onPointerDown={touch.onPointerDown}
        onPointerMove={touch.onPointerMove}
        onPointerUp={(event) => {
          if (touch.onPointerUp(event)) tapped(event);
        }}
        onPointerCancel={touch.onPointerCancel}
      >
        {drawing.ground_m !== null && (
          <line
            className={view === 'trailer' ? 'picture-road' : 'picture-water'}
            x1="0"
            x2={width}
            {...levelAt(inFrame(touch.zoom, frame, { x: 0, y: down(drawing.ground_m) }).y)}
          />
        )}
        <Hull lines={drawing.lines} transform={lines} />
        {runs.map((run) => {
          const from = inFrame(touch.zoom, frame, { x: across(run.from.x), y: down(run.from.y) });
          const to = inFrame(touch.zoom, frame, { x: across(run.to.x), y: down(run.to.y) });
          return <RunLine key={run.key} run={run} from={from} to={to} />;
        })}
        {!near &&
          labels.map((pin) => (
            <line
              key={pin.id}
              className={`picture-leader ${colour(pins.find(({ key: one }) => one === pin.id)?.meaning ?? null)}`}
              x1={pin.x}
              y1={pin.y}
              x2={pin.leader.x}
              y2={pin.leader.y}
            />
          ))}
        {pins.map((pin) => {
          const point = shownAt(pin.place);
          if (!inSight(point)) return null;
          const label = near ? undefined : labels.find(({ id }) => id === pin.key);
          const name = beside.find(({ key: one }) => one === pin.key);
          return (
            <a key={pin.key} href={hrefOf(pin)} aria-label={said(pin)} className="picture-zone">
              <circle cx={point.x} cy={point.y} r={pin.of.kind === 'zone' ? 22 : 14} className="picture-touch" />
              <PinMark pin={pin} x={point.x} y={point.y} />
              {label && <Label pin={pin} label={label} />}
              {name && (
                <text x={name.left} y={name.middle + 5} className="picture-text">
                  {name.text}
                </text>
              )}
            </a>
          );
        })}
        {cross && <Cross {...shownAt(cross)} />}
      </svg>
      <div className="picture-zoom no-print">
        <button type="button" aria-label="Look nearer" onClick={touch.nearer}>
          +
        </button>
        <button type="button" aria-label="Look from further off" onClick={touch.further} disabled={!near}>
          −
        </button>
      </div>
    </section>
  );
}

const levelAt = (y: number) => ({ y1: y, y2: y });

/** Her own lines do not change while things are moved about on her. */
const Hull = memo(function Hull({ lines, transform }: { readonly lines: readonly Line[]; readonly transform: string }) {
  return <DrawnLines lines={lines} transform={transform} />;
});

export function PinMark({ pin, x, y }: { readonly pin: PinOnHer; readonly x: number; readonly y: number }) {
  if (pin.meaning === null)
    return (
      <circle cx={x} cy={y} r={pin.of.kind === 'zone' && pin.things.length === 0 ? 4 : 3} className="picture-ring" />
    );
  return (
    <g
      className={`picture-pin mark-${pin.meaning.replace(' ', '-')} ${colour(pin.meaning)}`}
      transform={`translate(${x - 7} ${y - 7}) scale(.875)`}
    >
      <path d={markShapes[pin.meaning]} className="picture-halo" />
      <path d={markShapes[pin.meaning]} />
    </g>
  );
}

function Label({ pin, label }: { readonly pin: PinOnHer; readonly label: ReturnType<typeof placedPins>[number] }) {
  const things = linesOf(pin);
  return (
    <>
      <rect
        className="picture-touch"
        x={label.box.x - 4}
        y={label.box.y - 4}
        width={label.box.width + 8}
        height={Math.max(label.box.height + 8, 26)}
      />
      {label.lines.map((line, index) => {
        const thing = things[line.of];
        const y = label.box.y + index * lineHeight + 14;
        return (
          <g key={`${line.of} ${line.text}`}>
            {line.first && thing?.meaning && (
              <path
                className={`picture-mark mark-${thing.meaning.replace(' ', '-')}`}
                transform={`translate(${label.box.x} ${y - 11}) scale(.78)`}
                d={markShapes[thing.meaning]}
              />
            )}
            <text x={label.box.x + markWidth} y={y} className="picture-text">
              {line.text}
            </text>
          </g>
        );
      })}
    </>
  );
}

function RunLine({
  run,
  from,
  to,
}: {
  readonly run: RunOnHer;
  readonly from: { x: number; y: number };
  readonly to: { x: number; y: number };
}) {
  // current turns a corner, loads go straight
  const way =
    run.layer === 'circuits' ? `M${from.x} ${from.y}H${to.x}V${to.y}` : `M${from.x} ${from.y}L${to.x} ${to.y}`;
  const middle = run.layer === 'circuits' ? to : { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  return (
    <a href={run.href} aria-label={run.title} className="picture-zone">
      <path d={way} className="picture-reach" />
      <path d={way} className={`picture-run ${colour(run.meaning)}`} data-layer={run.layer} />
      {run.meaning === 'danger' ? (
        <g
          className="picture-pin mark-danger picture-danger"
          transform={`translate(${middle.x - 7} ${middle.y - 7}) scale(.875)`}
        >
          <path d={markShapes.danger} />
        </g>
      ) : (
        <circle cx={middle.x} cy={middle.y} r="4" className={`picture-bead ${colour(run.meaning)}`} />
      )}
    </a>
  );
}

function Cross({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <path className="picture-cross" d={`M${x - 16} ${y}h11M${x + 5} ${y}h11M${x} ${y - 16}v11M${x} ${y + 5}v11`} />
  );
}

/** Where a tap of a pin leads: to the thing itself where there is one, else to the place with all of them. */
function hrefOf({ of, things }: PinOnHer): string {
  const worked = things.filter(({ meaning }) => meaning !== null);
  if (worked.length === 1) return worked[0]!.href;
  if (of.kind === 'zone') return address('boat', 'zone', of.id);
  return things.length === 1 ? things[0]!.href : address('boat', 'log', 'fitting', of.id);
}

/** What stands at a pin: all of it where it is little, else the first of it and how much more there is. */
function linesOf({ things }: PinOnHer) {
  const worked = things.filter(({ meaning }) => meaning !== null);
  if (worked.length <= shownThings) return worked;
  return [
    ...worked.slice(0, shownThings - 1),
    {
      key: 'more',
      meaning: null,
      href: '',
      title: `and ${countInWords(worked.length - (shownThings - 1), 'more thing')}`,
    },
  ];
}

function said({ of, things }: PinOnHer): string {
  if (things.length === 0) return `${of.name}: nothing open`;
  return `${of.name}: ${things.map(({ meaning, title }) => (meaning === 'danger' ? `danger, ${title}` : title)).join('; ')}`;
}

const colour = (meaning: PinOnHer['meaning']) =>
  meaning === 'danger' || meaning === 'unlawful'
    ? 'picture-danger'
    : meaning === 'jury rig' || meaning === 'wait'
      ? 'picture-jury-rig'
      : 'picture-work';

/** Width of a text in the drawing's type, from the device itself: its letters differ. [px] */
export function drawnWidth(text: string): number {
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return text.length * 8;
  pen.font = `14px ${getComputedStyle(document.documentElement).getPropertyValue('--face')}`;
  return pen.measureText(text).width;
}
let pen: CanvasRenderingContext2D | null = null;
