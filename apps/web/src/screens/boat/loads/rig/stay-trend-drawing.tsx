/** The tension of a stay by date, with the band of each reading; dashed: what it is to be set to. */
import type { StayReadingTold } from '#reckoning';
import { dateInWords } from '../../../../parts/in-words.ts';

const size = { width: 358, height: 190, left: 44, right: 18, top: 14, bottom: 28 } as const;
/** Two dates nearer than this on the drawing would stand in each other. [px] */
const datesApart = 100;

export function StayTrendDrawing({
  readings,
  aim_N,
  today,
}: {
  /** two at least, oldest first */
  readonly readings: readonly StayReadingTold[];
  readonly aim_N: number | null;
  readonly today: string;
}) {
  const [first, last] = [readings[0]!, readings.at(-1)!];
  const day = ({ reading }: StayReadingTold) => Date.parse(reading.on) / 86_400_000;
  const most = 1.1 * Math.max(100, aim_N ?? 0, ...readings.map(({ load }) => load.high_N));
  const inner = { left: size.left + 16, right: size.width - size.right - 16 };
  const span = day(last) - day(first);
  // readings of one day stand side by side, in their order
  const x = (i: number) =>
    inner.left +
    (span === 0 ? i / (readings.length - 1) : (day(readings[i]!) - day(first)) / span) *
      (inner.right - inner.left - 8 * sameDay(i)) +
    8 * sameDay(i);
  const sameDay = (i: number) =>
    readings.slice(0, i).filter(({ reading }) => span > 0 && reading.on === readings[i]!.reading.on).length;
  const y = (force_N: number) => size.height - size.bottom - (force_N / most) * (size.height - size.top - size.bottom);
  const step = most > 4000 ? 2000 : most > 1600 ? 500 : most > 600 ? 200 : 50;
  const ticks = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step).filter(
    (force_N) => aim_N === null || Math.abs(y(force_N) - y(aim_N)) > 13,
  );
  const dated = [0, ...(x(readings.length - 1) - x(0) > datesApart ? [readings.length - 1] : [])];
  const newtons = (force_N: number) => String(10 * Math.round(force_N / 10));
  return (
    <figure className="rig-figure">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`Tension at ${readings.length} readings: ${newtons(first.load.tension_N)} N on ${dateInWords(first.reading.on, today)}, ${newtons(last.load.tension_N)} N on ${dateInWords(last.reading.on, today)}.${aim_N === null ? '' : ` It is to be set to ${newtons(aim_N)} N.`}`}
      >
        {ticks.map((force_N) => (
          <g key={force_N}>
            <line className="rig-hair" x1={size.left} x2={size.width - size.right} y1={y(force_N)} y2={y(force_N)} />
            <text x={size.left - 6} y={y(force_N) + 4} textAnchor="end">
              {force_N}
            </text>
          </g>
        ))}
        {aim_N !== null && (
          <>
            <line className="rig-aim" x1={size.left} x2={size.width - size.right} y1={y(aim_N)} y2={y(aim_N)} />
            <text x={size.left - 6} y={y(aim_N) + 4} textAnchor="end">
              {newtons(aim_N)}
            </text>
          </>
        )}
        <path
          className="rig-course"
          d={readings.map(({ load }, i) => `${i === 0 ? 'M' : 'L'}${x(i)} ${y(load.tension_N)}`).join(' ')}
        />
        {readings.map(({ id, load }, i) => (
          <g key={id}>
            <path
              className="rig-reach"
              d={`M${x(i)} ${y(load.low_N)}V${y(load.high_N)}M${x(i) - 5} ${y(load.low_N)}h10M${x(i) - 5} ${y(load.high_N)}h10`}
            />
            <circle className="rig-dot" cx={x(i)} cy={y(load.tension_N)} r="4.5" />
          </g>
        ))}
        {dated.map((i) => (
          <text key={i} x={x(i)} y={size.height - 8} textAnchor={i === 0 ? 'start' : 'end'} dx={i === 0 ? -16 : 16}>
            {dateInWords(readings[i]!.reading.on, today)}
          </text>
        ))}
      </svg>
      <figcaption className="soft small">
        Newtons, by date. Bar: what the reading leaves open.{aim_N !== null && ' Dashed: what it is set to.'}
      </figcaption>
    </figure>
  );
}
