/** What a battery held at each load test, by date, with the band of each and the label as a dashed line. */
import type { LoadTestResult } from '#reckoning';
import { dateInWords } from '../../../parts/in-words.ts';

const size = { width: 358, height: 170, left: 34, right: 16, top: 12, bottom: 28 } as const;
/** Two dates nearer than this on the drawing would stand in each other. [px] */
const datesApart = 84;

export function LoadTestsDrawing({
  tests,
  label_Ah,
  today,
}: {
  /** two at least, oldest first */
  readonly tests: readonly LoadTestResult[];
  readonly label_Ah: number;
  readonly today: string;
}) {
  const first = tests[0]!;
  const last = tests.at(-1)!;
  const most = 1.05 * Math.max(label_Ah, ...tests.map(({ capacity_Ah }) => capacity_Ah.high));
  const inner = { left: size.left + 22, right: size.width - size.right - 22 };
  const x = (at: number) =>
    last.at === first.at
      ? inner.left
      : inner.left + ((at - first.at) / (last.at - first.at)) * (inner.right - inner.left);
  const y = (Ah: number) => size.height - size.bottom - (Ah / most) * (size.height - size.top - size.bottom);
  const step = most > 60 ? 50 : most > 24 ? 10 : 5;
  const ticks = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step).filter(
    (Ah) => Math.abs(y(Ah) - y(label_Ah)) > 12,
  );
  const dated = [first, ...(x(last.at) - x(first.at) > datesApart ? [last] : [])];
  return (
    <figure className="battery-nights">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`What it held at ${tests.length} load tests: ${first.capacity_Ah.likely.toFixed(0)} Ah on ${dateInWords(first.day, today)}, ${last.capacity_Ah.likely.toFixed(0)} Ah on ${dateInWords(last.day, today)}; its label says ${label_Ah}.`}
      >
        {ticks.map((Ah) => (
          <g key={Ah}>
            <line className="battery-hair" x1={size.left} x2={size.width - size.right} y1={y(Ah)} y2={y(Ah)} />
            <text x={size.left - 5} y={y(Ah) + 4} textAnchor="end">
              {Ah}
            </text>
          </g>
        ))}
        <line className="battery-floor" x1={size.left} x2={size.width - size.right} y1={y(label_Ah)} y2={y(label_Ah)} />
        <text x={size.left - 5} y={y(label_Ah) + 4} textAnchor="end">
          {label_Ah}
        </text>
        <path
          className="battery-likely"
          d={tests.map(({ at, capacity_Ah }, i) => `${i === 0 ? 'M' : 'L'}${x(at)} ${y(capacity_Ah.likely)}`).join(' ')}
        />
        {tests.map(({ id, at, capacity_Ah: { low, likely, high } }) => (
          <g key={id}>
            <path
              className="battery-reach"
              d={`M${x(at)} ${y(low)}V${y(high)}M${x(at) - 5} ${y(low)}h10M${x(at) - 5} ${y(high)}h10`}
            />
            <circle className="battery-dot" cx={x(at)} cy={y(likely)} r="4.5" />
          </g>
        ))}
        {dated.map(({ id, at, day }) => (
          <text
            key={id}
            x={x(at)}
            y={size.height - 8}
            textAnchor={at === first.at ? 'start' : 'end'}
            dx={at === first.at ? -20 : 20}
          >
            {dateInWords(day, today)}
          </text>
        ))}
      </svg>
      <figcaption className="soft small">
        Ampere-hours from full, by date. Dot: likely; bar: 9 in 10; dashed: the label.
      </figcaption>
    </figure>
  );
}
