/** What tackle, forestay and pole bear over the way of the mast, with where it is now. */
import type { RaisingPoint } from '#loads';

const size = { width: 358, height: 200, left: 44, right: 92, top: 14, bottom: 28 } as const;

export function RaisingCurves({
  points,
  at,
  led,
}: {
  readonly points: readonly RaisingPoint[];
  readonly at: RaisingPoint;
  readonly led: boolean;
}) {
  const curves = [
    { name: led ? 'tackle' : 'line', of: ({ tackle_N }: RaisingPoint) => tackle_N, main: true },
    ...(led
      ? [
          { name: 'forestay', of: ({ line_N }: RaisingPoint) => line_N, main: false },
          { name: 'pole', of: ({ leg_N }: RaisingPoint) => leg_N, main: false },
        ]
      : []),
  ];
  const values = curves.flatMap(({ of }) => points.map(of));
  const [low, high] = [Math.min(0, ...values), Math.max(...values) * 1.08];
  const step = [50, 100, 200, 500, 1000, 2000, 5000, 10_000].find((each) => (high - low) / each <= 6) ?? 20_000;
  const [from, to] = [points[0]!.mast_deg, points.at(-1)!.mast_deg];
  const x = (deg: number) => size.left + ((deg - from) / (to - from)) * (size.width - size.left - size.right);
  const y = (force_N: number) => size.top + ((high - force_N) / (high - low)) * (size.height - size.top - size.bottom);
  const ticks = Array.from(
    { length: Math.floor(high / step) - Math.ceil(low / step) + 1 },
    (_, i) => (Math.ceil(low / step) + i) * step,
  );
  // names at the ends of the curves, moved apart where they would stand in each other
  const ends = curves.map(({ name, of }) => ({ name, y: y(of(points.at(-1)!)) })).sort((a, b) => a.y - b.y);
  for (let i = 1; i < ends.length; i++) ends[i]!.y = Math.max(ends[i]!.y, ends[i - 1]!.y + 16);
  const under = Math.max(0, ends.at(-1)!.y - (size.height - size.bottom - 4));
  for (const end of ends) end.y -= under;
  const hardest = points.reduce((most, point) => (point.tackle_N > most.tackle_N ? point : most));
  return (
    <figure className="rig-figure">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`Over the way from ${Math.round(from)}° to ${Math.round(to)}°: the ${led ? 'tackle' : 'line'} bears most, ${Math.round(hardest.tackle_N)} N, at ${Math.round(hardest.mast_deg)}°, and ${Math.round(points.at(-1)!.tackle_N)} N at the end.`}
      >
        {ticks.map((force_N) => (
          <g key={force_N}>
            <line
              className={force_N === 0 ? 'rig-zero' : 'rig-hair'}
              x1={size.left}
              x2={size.width - size.right}
              y1={y(force_N)}
              y2={y(force_N)}
            />
            <text x={size.left - 6} y={y(force_N) + 4} textAnchor="end">
              {force_N < 0 ? `−${-force_N}` : force_N}
            </text>
          </g>
        ))}
        {curves.map(({ name, of, main }) => (
          <path
            key={name}
            className={main ? 'rig-course' : 'rig-other'}
            data-curve={name}
            d={points
              .map((point, i) => `${i === 0 ? 'M' : 'L'}${x(point.mast_deg).toFixed(1)} ${y(of(point)).toFixed(1)}`)
              .join('')}
          />
        ))}
        <line
          className="rig-now"
          x1={x(at.mast_deg)}
          x2={x(at.mast_deg)}
          y1={size.top}
          y2={size.height - size.bottom}
        />
        <circle className="rig-dot" cx={x(at.mast_deg)} cy={y(at.tackle_N)} r="4.5" />
        {ends.map(({ name, y: end }) => (
          <text key={name} className="rig-force" x={size.width - size.right + 8} y={end + 4}>
            {name}
          </text>
        ))}
        {[from, (from + to) / 2, to].map((deg) => (
          <text key={deg} x={x(deg)} y={size.height - 8} textAnchor="middle">
            {Math.round(deg)}°
          </text>
        ))}
      </svg>
      <figcaption className="soft small">
        Newtons over the angle of the mast.{led && ' Below zero the pole is pulled.'}
      </figcaption>
    </figure>
  );
}
