/** How taut a stay was last found, as a mark on a line from slack to the most any stay is set to. */
import type { StayReadingTold } from '#reckoning';

const size = { width: 300, height: 34, side: 8 } as const;
/** the end of the line, and what cap shrouds are usually set to. [% of breaking load] */
const [most, low, high] = [25, 10, 20];

export function StayBar({ reading, aim_pct }: { readonly reading: StayReadingTold; readonly aim_pct: number | null }) {
  const share = reading.load.share_pct;
  if (share === null) return null;
  const x = (pct: number) => size.side + (Math.min(most, pct) / most) * (size.width - 2 * size.side);
  const middle = 11;
  return (
    <svg
      className="rig-bar"
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="img"
      aria-label={`${Math.round(share.value)} % of its breaking load${aim_pct === null ? '' : `; it is to be set to ${aim_pct} %`}`}
    >
      <rect className="rig-usual" x={x(low)} y={middle - 7} width={x(high) - x(low)} height={14} />
      <line className="rig-zero" x1={x(0)} x2={x(most)} y1={middle} y2={middle} />
      {[0, low, high].map((pct) => (
        <text key={pct} x={x(pct)} y={size.height - 2} textAnchor={pct === 0 ? 'start' : 'middle'}>
          {pct === 0 ? '0 %' : pct}
        </text>
      ))}
      {aim_pct !== null && <path className="rig-aim" d={`M${x(aim_pct)} ${middle - 10}V${middle + 10}`} />}
      <path className="rig-reach" d={`M${x(share.low)} ${middle}H${x(share.high)}`} />
      <circle className="rig-dot" cx={x(share.value)} cy={middle} r="5" />
    </svg>
  );
}
