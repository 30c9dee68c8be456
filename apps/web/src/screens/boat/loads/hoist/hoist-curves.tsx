/** What pulls over the whole travel: in the wire, and at the hand hoisting, holding and lowering. */
import type { Handling, HoistPoint } from '#loads';
import { forceSaid, handlingNames } from '#reckoning';

const size = { width: 358, height: 168, left: 46, right: 66, top: 14, bottom: 30 } as const;
const handlings: readonly Handling[] = ['hoisting', 'holding', 'lowering'];

interface Curve {
  readonly name: string;
  readonly kind: Handling | 'wire';
  readonly of: (point: HoistPoint) => number;
}

export function HoistCurves({
  points,
  at,
  hand,
  limit_N,
}: {
  readonly points: readonly HoistPoint[];
  /** where the slider stands, of `points` */
  readonly at: number;
  readonly hand: 'crank' | 'fall';
  readonly limit_N: number;
}) {
  return (
    <>
      <Curves
        title={`On the ${hand}`}
        points={points}
        at={at}
        curves={handlings.map((kind) => ({ name: handlingNames[kind], kind, of: ({ hand_N }) => hand_N[kind] }))}
        limit_N={limit_N}
      />
      <Curves
        title="In the wire at the board, hoisting"
        points={points}
        at={at}
        curves={[{ name: '', kind: 'wire', of: ({ wire_N }) => wire_N.hoisting }]}
        limit_N={null}
      />
    </>
  );
}

function Curves({
  title,
  points,
  at,
  curves,
  limit_N,
}: {
  readonly title: string;
  readonly points: readonly HoistPoint[];
  readonly at: number;
  readonly curves: readonly Curve[];
  readonly limit_N: number | null;
}) {
  const most = Math.max(1, ...curves.flatMap(({ of }) => points.map(of)));
  // the limit is drawn where it is near enough to mean something
  const limit = limit_N !== null && limit_N < 3 * most ? limit_N : null;
  const top = 1.08 * Math.max(most, limit ?? 0);
  const x = (i: number) => size.left + (i / (points.length - 1)) * (size.width - size.left - size.right);
  const y = (force: number) => size.height - size.bottom - (force / top) * (size.height - size.top - size.bottom);
  const step = stepFor(top);
  const ticks = Array.from({ length: Math.floor(top / step) + 1 }, (_, i) => i * step).filter(
    (each) => limit === null || Math.abs(y(each) - y(limit)) > 13,
  );
  const point = points[at]!;
  const labels = apart(curves.map(({ of }) => y(of(points.at(-1)!))));
  const down = points[0]!.down_deg;
  const up = points.at(-1)!.down_deg;
  return (
    <figure className="hoist-curves">
      <figcaption>
        <b>{title}</b> <span>{curves.map(({ name, of }) => `${name} ${forceSaid(of(point))}`.trim()).join(', ')}</span>
      </figcaption>
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`${title} over the travel: ${curves.map(({ name, of }) => `${name} ${forceSaid(of(points[0]!))} all the way down, ${forceSaid(Math.max(...points.map(of)))} at most, ${forceSaid(of(points.at(-1)!))} all the way up`).join('; ')}.`}
      >
        {ticks.map((each) => (
          <g key={each}>
            <line className="hoist-hair" x1={size.left} x2={size.width - size.right} y1={y(each)} y2={y(each)} />
            <text x={size.left - 6} y={y(each) + 4} textAnchor="end">
              {each}
            </text>
          </g>
        ))}
        {limit !== null && (
          <>
            <line className="hoist-limit" x1={size.left} x2={size.width - size.right} y1={y(limit)} y2={y(limit)} />
            <text x={size.left - 6} y={y(limit) + 4} textAnchor="end">
              {Math.round(limit)}
            </text>
          </>
        )}
        {curves.map(({ kind, of }) => (
          <path
            key={kind}
            className="hoist-curve"
            data-kind={kind}
            d={points.map((each, i) => `${i === 0 ? 'M' : 'L'}${x(i).toFixed(1)} ${y(of(each)).toFixed(1)}`).join(' ')}
          />
        ))}
        <line className="hoist-here" x1={x(at)} x2={x(at)} y1={size.top} y2={size.height - size.bottom} />
        {curves.map(({ kind, of }) => (
          <circle key={kind} className="hoist-on" cx={x(at)} cy={y(of(point))} r="4" />
        ))}
        {curves.map(({ kind, name }, i) => (
          <text key={kind} x={size.width - size.right + 6} y={labels[i]! + 4}>
            {name}
          </text>
        ))}
        <text x={size.left} y={size.height - 9}>
          {down === null ? 'down' : `down, ${Math.round(down)}°`}
        </text>
        <text x={size.width - size.right} y={size.height - 9} textAnchor="end">
          {up === null ? 'up' : `up, ${Math.round(up)}°`}
        </text>
      </svg>
    </figure>
  );
}

/** A round step that makes three to six lines. */
function stepFor(top: number): number {
  const ten = 10 ** Math.floor(Math.log10(top / 3));
  return [1, 2, 5, 10].map((each) => each * ten).find((each) => top / each <= 6) ?? 10 * ten;
}

/** Heights of labels, moved apart until none stands in another. */
function apart(heights: readonly number[]): readonly number[] {
  const order = heights.map((height, i) => ({ height, i })).sort((a, b) => a.height - b.height);
  for (let n = 1; n < order.length; n++)
    order[n] = { ...order[n]!, height: Math.max(order[n]!.height, order[n - 1]!.height + 15) };
  const over = Math.max(0, (order.at(-1)?.height ?? 0) - (size.height - size.bottom));
  const placed = [...heights];
  for (const { height, i } of order) placed[i] = height - over;
  return placed;
}
