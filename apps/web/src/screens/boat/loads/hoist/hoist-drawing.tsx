/** The board, its pivot, wire and lead to scale, at one place of its travel, with what pulls there. */
import type { BoardHoistRecord } from '#boat-book';
import { type HoistPoint, placeAt } from '#loads';
import { forceSaid } from '#reckoning';

const width = 358;
/** Room round the drawing for its words. [px] */
const margin = { x: 46, top: 24, bottom: 34 } as const;

interface At {
  /** aft of the pivot, or of the case's middle. [m] */
  readonly x: number;
  /** above the pivot, or above the plate's top all the way down. [m] */
  readonly y: number;
}

interface Laid {
  readonly outline: readonly At[];
  readonly mass: At;
  readonly attached: At;
  readonly lead: At;
}

/** The turning plate at an angle: its outline round the line from the pivot to its far end. */
function turned(record: BoardHoistRecord, down_deg: number): Laid | null {
  const { moves, plate } = record;
  if (moves.kind !== 'turns') return null;
  const at = (along_m: number, square_m: number): At => {
    const { aft_m, up_m } = placeAt({ along_m, square_m }, down_deg);
    return { x: aft_m, y: up_m };
  };
  const [low, high] = [moves.massSquare_m - plate.breadth_m / 2, moves.massSquare_m + plate.breadth_m / 2];
  // round the pivot there is as much plate as holds its bolt
  const back = -Math.min(0.08, plate.breadth_m / 4);
  return {
    outline: [at(back, low), at(plate.length_m, low), at(plate.length_m, high), at(back, high)],
    mass: at(moves.massAlong_m, moves.massSquare_m),
    attached: at(moves.attachedAlong_m, moves.attachedSquare_m),
    lead: { x: moves.leadAft_m, y: moves.leadUp_m },
  };
}

/** The sliding plate so far up: its foot down in the water, its top where the wire takes it. */
function slid(record: BoardHoistRecord, up_m: number): Laid | null {
  const { moves, plate } = record;
  if (moves.kind !== 'slides') return null;
  const half = plate.breadth_m / 2;
  const [top, foot] = [up_m, up_m - plate.length_m];
  return {
    outline: [
      { x: -half, y: foot },
      { x: half, y: foot },
      { x: half, y: top },
      { x: -half, y: top },
    ],
    mass: { x: 0, y: (top + foot) / 2 },
    attached: { x: moves.offMiddle_m, y: top },
    lead: { x: moves.offMiddle_m, y: moves.travel_m + 0.25 },
  };
}

export function HoistDrawing({
  record,
  point,
  points,
}: {
  readonly record: BoardHoistRecord;
  readonly point: HoistPoint;
  readonly points: readonly HoistPoint[];
}) {
  const laidAt = (of: HoistPoint) => (of.down_deg === null ? slid(record, of.hauled_m) : turned(record, of.down_deg));
  const now = laidAt(point);
  const ends = [points[0]!, points.at(-1)!].map(laidAt).filter((each) => each !== null);
  if (now === null || ends.length < 2) return null;
  const { moves, leads } = record;
  const turns = moves.kind === 'turns';
  const all = [now, ...ends].flatMap(({ outline, lead }) => [...outline, lead, { x: 0, y: 0 }]);
  const left = Math.min(...all.map(({ x }) => x));
  const right = Math.max(...all.map(({ x }) => x));
  const bottom = Math.min(...all.map(({ y }) => y)) - 0.04;
  const top = Math.max(...all.map(({ y }) => y));
  const scale = Math.min((width - 2 * margin.x) / (right - left), 330 / (top - bottom));
  const height = margin.top + margin.bottom + (top - bottom) * scale;
  const inset = (width - (right - left) * scale) / 2;
  const px = ({ x, y }: At) => ({ x: inset + (x - left) * scale, y: margin.top + (top - y) * scale });
  const shape = (outline: readonly At[]) =>
    outline
      .map(px)
      .map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`)
      .join(' ');
  const [lead, attached, mass, pivot] = [px(now.lead), px(now.attached), px(now.mass), px({ x: 0, y: 0 })];
  const sheave_px = Math.max(4, ((leads.sheave_mm ?? 40) / 2000) * scale);
  const bar_m = right - left > 1.2 ? 0.5 : 0.2;
  const where =
    point.down_deg === null
      ? `${Math.round(100 * point.hauled_m)} cm up`
      : `${Math.round(point.down_deg)}° below level`;
  const wireWords = forceSaid(point.wire_N.hoisting);
  const middle = { x: (lead.x + attached.x) / 2, y: (lead.y + attached.y) / 2 };
  return (
    <svg
      className="hoist-drawing"
      viewBox={`0 0 ${width} ${Math.ceil(height)}`}
      role="img"
      aria-label={`The board ${where}, to scale: ${wireWords} in its wire, hoisting.`}
    >
      {ends.map(({ outline }, i) => (
        <path key={i === 0 ? 'down' : 'up'} className="hoist-ghost" d={`${shape(outline)} Z`} />
      ))}
      {turns && (
        <path
          className="hoist-arc"
          d={arc(
            ends.map(({ mass: at }) => px(at)),
            pivot,
          )}
        />
      )}
      <path className="hoist-plate" d={`${shape(now.outline)} Z`} />
      <path className="hoist-wire" d={`M${lead.x} ${lead.y}L${attached.x} ${attached.y}`} />
      <path className="hoist-wire" d={`M${lead.x} ${lead.y - sheave_px}H${Math.min(width - 4, lead.x + 60)}`} />
      <circle className="hoist-sheave" cx={lead.x} cy={lead.y} r={sheave_px} />
      <circle className="hoist-dot" cx={attached.x} cy={attached.y} r="4" />
      {turns && <circle className="hoist-pivot" cx={pivot.x} cy={pivot.y} r="6" />}
      <path className="hoist-weight" d={`M${mass.x} ${mass.y}v28m-5 -7l5 7l5 -7`} />
      <circle className="hoist-mass" cx={mass.x} cy={mass.y} r="4" />
      {turns && (
        <text x={inset - 5} y={pivot.y + 4} textAnchor="end">
          pivot
        </text>
      )}
      <text x={lead.x} y={lead.y - sheave_px - 8} textAnchor="middle">
        lead
      </text>
      <text className="hoist-said" x={Math.min(width - 6, middle.x + 9)} y={middle.y + 4}>
        {wireWords}
      </text>
      <path className="hoist-bar" d={`M${margin.x} ${height - 12}v-5m0 2.5h${bar_m * scale}m0 -2.5v5`} />
      <text x={margin.x + bar_m * scale + 8} y={height - 10}>
        {bar_m} m
      </text>
    </svg>
  );
}

/** From where the middle of the plate is all the way down to where it is all the way up, round the pivot. */
function arc(
  ends: readonly { readonly x: number; readonly y: number }[],
  pivot: { readonly x: number; readonly y: number },
): string {
  const [down, up] = [ends[0]!, ends[1]!];
  const r = Math.hypot(down.x - pivot.x, down.y - pivot.y);
  return `M${down.x} ${down.y}A${r} ${r} 0 0 0 ${up.x} ${up.y}`;
}
