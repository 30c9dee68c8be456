/** Each pull over what was foretold of it, by date; the dashed line is as foretold. */
import type { PullsTold } from '#reckoning';
import { daysBetween } from '#units';
import { dateInWords } from '../../../../parts/in-words.ts';

const size = { width: 358, height: 150, left: 46, right: 16, top: 14, bottom: 30 } as const;

export function PullsDrawing({
  pulls,
  today,
}: {
  /** two at least, oldest first */
  readonly pulls: PullsTold['pulls'];
  readonly today: string;
}) {
  const [first, last] = [pulls[0]!, pulls.at(-1)!];
  const span = Math.max(1, daysBetween(first.day, last.day));
  const most = 1.1 * Math.max(1, ...pulls.map(({ share }) => share));
  const inner = { left: size.left + 14, right: size.width - size.right - 14 };
  const x = (day: string) => inner.left + (daysBetween(first.day, day) / span) * (inner.right - inner.left);
  const y = (share: number) => size.height - size.bottom - (share / most) * (size.height - size.top - size.bottom);
  const said = (share: number) => share.toFixed(2);
  return (
    <figure className="hoist-curves">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`${pulls.length} pulls over what was foretold: ${said(first.share)} times on ${dateInWords(first.day, today)}, ${said(last.share)} times on ${dateInWords(last.day, today)}.`}
      >
        <line className="hoist-hair" x1={size.left} x2={size.width - size.right} y1={y(0)} y2={y(0)} />
        <text x={size.left - 6} y={y(0) + 4} textAnchor="end">
          0
        </text>
        <line className="hoist-limit" x1={size.left} x2={size.width - size.right} y1={y(1)} y2={y(1)} />
        <text x={size.left - 6} y={y(1) + 4} textAnchor="end">
          1
        </text>
        <path
          className="hoist-curve"
          data-kind="hoisting"
          d={pulls
            .map(({ day, share }, i) => `${i === 0 ? 'M' : 'L'}${x(day).toFixed(1)} ${y(share).toFixed(1)}`)
            .join(' ')}
        />
        {pulls.map(({ id, day, share }) => (
          <circle key={id} className="hoist-on" cx={x(day)} cy={y(share)} r="4" />
        ))}
        <text x={x(last.day)} y={y(last.share) - 9} textAnchor="end">
          {said(last.share)}
        </text>
        <text x={size.left} y={size.height - 9}>
          {dateInWords(first.day, today)}
        </text>
        <text x={size.width - size.right} y={size.height - 9} textAnchor="end">
          {dateInWords(last.day, today)}
        </text>
      </svg>
      <figcaption className="soft small">Times what was foretold, hoisting, by date. Dashed: as foretold.</figcaption>
    </figure>
  );
}
