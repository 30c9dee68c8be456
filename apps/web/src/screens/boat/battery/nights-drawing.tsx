/** Charge over the nights ahead: the likely course, its band, the floor, and the nights as a shade. */
import type { PowerCourse } from '#reckoning';
import { localAt } from '#units';

const size = { width: 358, height: 190, left: 34, right: 6, top: 14, bottom: 24 } as const;

export function NightsDrawing({ course }: { readonly course: PowerCourse }) {
  const { at, low, likely, high, floor_pct, nights, zone } = course;
  const [first, last] = [at[0]!, at.at(-1)!];
  const least = Math.max(0, Math.min(floor_pct, ...low) - 5);
  const x = (ms: number) => size.left + ((ms - first) / (last - first)) * (size.width - size.left - size.right);
  const y = (pct: number) => size.top + ((100 - pct) / (100 - least)) * (size.height - size.top - size.bottom);
  const path = (values: readonly number[]) =>
    values.map((value, i) => `${i === 0 ? 'M' : 'L'}${x(at[i]!).toFixed(1)} ${y(value).toFixed(1)}`).join(' ');
  const back = [...at.keys()].reverse().map((i) => `L${x(at[i]!).toFixed(1)} ${y(low[i]!).toFixed(1)}`);
  const clock = (ms: number) => {
    const minute = localAt(ms, zone).minuteOfDay;
    return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
  };
  const ticks = [100, 75, 50, 25].filter((pct) => pct >= least && Math.abs(pct - floor_pct) > 6);
  return (
    <figure className="battery-nights">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`Charge over the nights ahead: ${Math.round(likely[0]!)} % now, ${Math.round(likely.at(-1)!)} % at the end (${Math.round(low.at(-1)!)} to ${Math.round(high.at(-1)!)}); the floor is ${floor_pct} %.`}
      >
        {nights.map(({ start, end }) => (
          <rect
            key={start}
            className="battery-night"
            x={x(start)}
            width={x(end) - x(start)}
            y={size.top}
            height={size.height - size.top - size.bottom}
          />
        ))}
        {ticks.map((pct) => (
          <g key={pct}>
            <line className="battery-hair" x1={size.left} x2={size.width - size.right} y1={y(pct)} y2={y(pct)} />
            <text x={size.left - 5} y={y(pct) + 4} textAnchor="end">
              {pct}
            </text>
          </g>
        ))}
        <path className="battery-band" d={`${path(high)} ${back.join(' ')} Z`} />
        <path className="battery-likely" d={path(likely)} />
        <line
          className="battery-floor"
          x1={size.left}
          x2={size.width - size.right}
          y1={y(floor_pct)}
          y2={y(floor_pct)}
        />
        <text x={size.left - 5} y={y(floor_pct) + 4} textAnchor="end">
          {floor_pct}
        </text>
        {nights.map(({ start, end }) => (
          <g key={start}>
            {x(start) - size.left > 20 && (
              <text x={x(start)} y={size.height - 8} textAnchor="middle">
                {clock(start)}
              </text>
            )}
            {size.width - x(end) > 14 && (
              <text x={x(end)} y={size.height - 8} textAnchor="middle">
                {clock(end)}
              </text>
            )}
          </g>
        ))}
      </svg>
      <figcaption className="soft small">
        Percent of what it holds. Line: likely; band: 9 in 10; shaded: sunset to sunrise; dashed: the floor.
      </figcaption>
    </figure>
  );
}
