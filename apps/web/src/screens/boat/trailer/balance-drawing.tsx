/**
 * The trailer from the side, to scale, the ball at the right: everything with a mass as a mark at its place, what axle and ball
 * carry as arrows. A mark that can be moved is drawn along with the thumb, or with the arrow keys.
 */
import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import type { Boat, Id, TrailerRecord } from '#boat-book';
import { kgSaid, placeAlong, type TrailerTold } from '#reckoning';
import { useWidth } from '../../../parts/use-width.ts';
import { DrawnLines } from '../picture/drawn-lines.tsx';
import { type BalancePlaces, balanceOnPaper_px, balancePlaces, type MassMark, massMarks } from './balance-places.ts';

interface Drawn {
  readonly boat: Boat;
  readonly record: TrailerRecord;
  readonly told: TrailerTold;
  readonly selected: Id | null;
  readonly onSelect: (carried: Id | null) => void;
  readonly onMove: (carried: Id, ahead_m: number) => void;
}

export function BalanceDrawing(props: Drawn) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, balanceOnPaper_px);
  return (
    <div ref={frame} className="trailer-frame">
      {width > 0 && <Sheet {...props} width={width} />}
    </div>
  );
}

/** How far a thumb may miss a mark. [px] */
const reach = 34;
/** By one press of an arrow key, and with Page Up and Page Down. [m] */
const step_m = 0.05;
const leap_m = 0.5;

const inSteps = (ahead_m: number, { aftmost_m, foremost_m }: { aftmost_m: number; foremost_m: number }) =>
  Math.min(foremost_m, Math.max(aftmost_m, Math.round(ahead_m / step_m) * step_m));

function Sheet({ boat, record, told, selected, onSelect, onMove, width }: Drawn & { readonly width: number }) {
  const { standings } = told.load;
  const places = balancePlaces(boat, record, standings, width);
  const marks = massMarks(places, standings, boat);
  const svg = useRef<SVGSVGElement>(null);
  const [drawnAlong, setDrawnAlong] = useState<Id | null>(null);

  const pointAt = (event: PointerEvent) => {
    const box = svg.current?.getBoundingClientRect();
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
  };
  const take = (event: PointerEvent<SVGSVGElement>) => {
    const { x, y } = pointAt(event);
    const near = marks
      .map((mark) => ({ mark, far: Math.hypot(mark.x - x, mark.y - y) - (mark.standing.moves ? 8 : 0) }))
      .filter(({ mark, far }) => mark.standing.carried !== null && far < reach)
      .sort((a, b) => a.far - b.far)[0]?.mark.standing;
    if (!near?.carried) return;
    onSelect(near.carried);
    if (near.moves === null) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    setDrawnAlong(near.carried);
  };
  const along = (event: PointerEvent<SVGSVGElement>) => {
    const standing = standings.find(({ carried }) => carried === drawnAlong);
    if (drawnAlong === null || !standing?.moves) return;
    onMove(drawnAlong, inSteps(places.aheadAt(pointAt(event).x), standing.moves));
  };
  const let_go = () => setDrawnAlong(null);

  return (
    // the thumb takes the nearest mark; for keys and readers each mark is a slider of its own
    <svg
      ref={svg}
      className="trailer-drawing"
      width={width}
      height={places.height}
      viewBox={`0 0 ${width} ${places.height}`}
      aria-label={`${record.name} from the side, to scale, the ball at the right. ${told.ball}`}
      onPointerDown={take}
      onPointerMove={along}
      onPointerUp={let_go}
      onPointerCancel={let_go}
    >
      <line className="trailer-road" x1="0" x2={width} y1={places.down(0)} y2={places.down(0)} />
      <DrawnLines lines={places.lines} transform={places.transform} />
      <Forces places={places} record={record} told={told} />
      {marks.map((mark) => (
        <Mark
          key={mark.standing.carried ?? 'trailer'}
          mark={mark}
          places={places}
          selected={mark.standing.carried !== null && mark.standing.carried === selected}
          ball={kgSaid(told.load.ball_kg.likely)}
          onSelect={onSelect}
          onMove={onMove}
        />
      ))}
      <g className="trailer-numbers">
        {marks.map(({ number, label, x, y, radius, standing: { carried } }) => {
          const foot = label.y < y ? label.y + 3 : label.y - 11;
          const far = Math.abs(foot - y) > radius + 6;
          return (
            <g key={number}>
              {far && <line className="trailer-leader" x1={x} x2={x} y1={foot} y2={y} />}
              <text
                x={label.x}
                y={label.y}
                textAnchor="middle"
                data-selected={(carried !== null && carried === selected) || undefined}
              >
                {number}
              </text>
            </g>
          );
        })}
      </g>
    </svg>
  );
}

/** What axle and ball carry, as arrows from below; the ball's red where it is over its limit. */
function Forces({
  places,
  record,
  told,
}: {
  readonly places: BalancePlaces;
  readonly record: TrailerRecord;
  readonly told: TrailerTold;
}) {
  const { across, down, width } = places;
  const road = down(0);
  const limit = told.ballLimit_kg;
  const { ball_kg, axle_kg } = told.load;
  const over = limit !== null && ball_kg.likely > limit;
  const ballX = across(record.ballAhead_m);
  return (
    <>
      <path className="trailer-force" d={arrow(across(0), road + 3, road + 26)} />
      <text x={across(0)} y={road + 41} textAnchor="middle">
        {`axle ${kgSaid(axle_kg)}`}
      </text>
      <path className="trailer-force" data-over={over || undefined} d={arrow(ballX, road + 3, road + 26)} />
      <text className="trailer-ball-said" data-over={over || undefined} x={width - 2} y={road + 41} textAnchor="end">
        {`ball ${kgSaid(ball_kg.likely)}${limit === null ? '' : ` of ${kgSaid(limit)}`}`}
      </text>
    </>
  );
}

const arrow = (x: number, head: number, foot: number) =>
  `M${x} ${foot}V${head}M${x - 5} ${head + 8}L${x} ${head}L${x + 5} ${head + 8}`;

function Mark({
  mark: { standing, x, y, radius },
  places,
  selected,
  ball,
  onSelect,
  onMove,
}: {
  readonly mark: MassMark;
  readonly places: BalancePlaces;
  readonly selected: boolean;
  readonly ball: string;
  readonly onSelect: (carried: Id | null) => void;
  readonly onMove: (carried: Id, ahead_m: number) => void;
}) {
  const { carried, moves, ahead_m, name, mass } = standing;
  const shown = <circle cx={x} cy={y} r={radius} className="trailer-mass" />;
  if (carried === null) return <g className="trailer-mark">{shown}</g>;
  const said = `${name}, ${kgSaid(mass.likely_kg)}`;
  if (moves === null)
    return (
      // biome-ignore lint/a11y/useSemanticElements: there is no button element in a drawing
      <g
        className="trailer-mark"
        data-selected={selected || undefined}
        role="button"
        tabIndex={0}
        aria-label={`${said}, ${placeAlong(ahead_m)}: it stays where it is`}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' && event.key !== ' ') return;
          event.preventDefault();
          onSelect(carried);
        }}
      >
        {shown}
      </g>
    );
  const move = (event: KeyboardEvent) => {
    const to = movedBy(event.key, ahead_m, moves);
    if (to === null) return;
    event.preventDefault();
    onSelect(carried);
    onMove(carried, inSteps(to, moves));
  };
  return (
    <g
      className="trailer-mark"
      data-moves
      data-selected={selected || undefined}
      role="slider"
      tabIndex={0}
      aria-label={said}
      aria-orientation="horizontal"
      aria-valuemin={moves.aftmost_m}
      aria-valuemax={moves.foremost_m}
      aria-valuenow={Number(ahead_m.toFixed(2))}
      aria-valuetext={`${placeAlong(ahead_m)}; ${ball} on the ball`}
      onKeyDown={move}
      onFocus={() => onSelect(carried)}
    >
      {selected && (
        <path
          className="trailer-travel"
          d={`M${places.across(moves.aftmost_m)} ${y}H${places.across(moves.foremost_m)}`}
        />
      )}
      {shown}
    </g>
  );
}

/** Where a key puts it; null: the key moves nothing. */
function movedBy(
  key: string,
  ahead_m: number,
  { aftmost_m, foremost_m }: { aftmost_m: number; foremost_m: number },
): number | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return ahead_m + step_m;
    case 'ArrowLeft':
    case 'ArrowDown':
      return ahead_m - step_m;
    case 'PageUp':
      return ahead_m + leap_m;
    case 'PageDown':
      return ahead_m - leap_m;
    case 'Home':
      return aftmost_m;
    case 'End':
      return foremost_m;
    default:
      return null;
  }
}
