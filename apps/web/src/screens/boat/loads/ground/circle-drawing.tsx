/** The circle she swings in, seen from above and to scale: anchor in the middle, the boat where three winds would lay her. */
import type { Boat } from '#boat-book';

const size = 320;
const middle = size / 2;

export function CircleDrawing({
  boat,
  lying_m,
  taut_m,
}: {
  readonly boat: Boat;
  /** from the anchor to her stern: with this load, and with the rode drawn straight */
  readonly lying_m: number;
  readonly taut_m: number;
}) {
  const scale = (middle - 14) / taut_m;
  const stem = (lying_m - boat.length_m) * scale;
  const [length, half] = [boat.length_m * scale, (boat.beam_m * scale) / 2];
  const hull = `M${stem} 0C${stem + length * 0.3} ${-half} ${stem + length * 0.5} ${-half} ${stem + length} ${-half * 0.8}V${half * 0.8}C${stem + length * 0.5} ${half} ${stem + length * 0.3} ${half} ${stem} 0Z`;
  return (
    <figure className="ground-circle">
      <svg
        className="ground-drawing"
        viewBox={`0 0 ${size} ${size}`}
        width={size}
        height={size}
        role="img"
        aria-label={`Seen from above: she swings within ${Math.ceil(lying_m)} m of the anchor, ${Math.ceil(taut_m)} m with the rode drawn straight.`}
      >
        <circle className="ground-swing" cx={middle} cy={middle} r={lying_m * scale} />
        <circle className="ground-swing" data-taut cx={middle} cy={middle} r={taut_m * scale} />
        {[35, 80, 160].map((turn_deg, n) => (
          <g key={turn_deg} transform={`translate(${middle} ${middle}) rotate(${turn_deg})`}>
            <path className="ground-rode" d={`M0 0H${stem}`} />
            <path className="ground-boat" data-filled data-weight={n === 0 ? 'outline' : 'rigging'} d={hull} />
          </g>
        ))}
        <circle className="ground-dot" cx={middle} cy={middle} r={4} />
        <text x={middle - 10} y={middle - 8} textAnchor="end">
          anchor
        </text>
        <path className="ground-measure" d={`M${middle} ${middle}H${middle - lying_m * scale}`} />
        <text x={middle - (lying_m * scale) / 2} y={middle + 17} textAnchor="middle">
          {Math.ceil(lying_m)} m
        </text>
      </svg>
      <figcaption className="soft small">
        To scale, at low water. Line: her stern with this load; dashed: with the rode drawn straight.
      </figcaption>
    </figure>
  );
}
