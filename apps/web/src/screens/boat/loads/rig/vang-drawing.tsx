/** The vang to scale: boom, mast, and the distance from the gooseneck square to its line. */
import type { Vang, VangForces } from '#loads';

const size = { width: 358, left: 54, right: 20, top: 26, bottom: 24 } as const;
/** The drawing is no higher than this, however deep the vang reaches. [px] */
const highest = 260;

export function VangDrawing({
  vang,
  forces,
  boom_m,
}: {
  readonly vang: Vang;
  readonly forces: VangForces;
  readonly boom_m: number;
}) {
  const long_m = Math.max(boom_m, vang.boomAlong_m * 1.1);
  const scale = Math.min(
    (size.width - size.left - size.right) / long_m,
    (highest - size.top - size.bottom) / vang.below_m,
  );
  const height = size.top + vang.below_m * scale + size.bottom;
  const px = (x: number) => size.left + x * scale;
  const py = (y: number) => size.top - y * scale;
  const [a, b] = [
    { x: vang.boomAlong_m, y: 0 },
    { x: vang.aft_m, y: -vang.below_m },
  ];
  // foot of the square from the gooseneck to the line of the vang
  const share = -(a.x * (b.x - a.x) + a.y * (b.y - a.y)) / forces.length_m ** 2;
  const foot = { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
  const mm = (metres: number) => Math.round(1000 * metres);
  return (
    <figure className="rig-figure">
      <svg
        viewBox={`0 0 ${size.width} ${height.toFixed(0)}`}
        role="img"
        aria-label={`The vang takes hold ${mm(vang.boomAlong_m)} mm along the boom and ${mm(vang.below_m)} mm below the gooseneck; the distance square to it is ${mm(forces.arm_m)} mm.`}
      >
        <path className="rig-mast" d={`M${px(0)} ${size.top - 16}V${height - 4}`} />
        <path className="rig-pole" d={`M${px(0)} ${py(0)}H${px(long_m)}`} />
        <path className="rig-line" d={`M${px(a.x)} ${py(a.y)}L${px(b.x)} ${py(b.y)}`} />
        <path className="rig-aim" d={`M${px(0)} ${py(0)}L${px(foot.x)} ${py(foot.y)}`} />
        <circle className="rig-dot" cx={px(0)} cy={py(0)} r="4" />
        <text className="rig-force" x={px(a.x) - 4} y={py(0) - 9} textAnchor="end">
          {mm(vang.boomAlong_m)} mm
        </text>
        <text className="rig-force" x={px(0) - 8} y={py(-vang.below_m / 2) + 4} textAnchor="end">
          {mm(vang.below_m)}
        </text>
        <text className="rig-force" x={px((a.x + b.x) / 2) + 14} y={py(-vang.below_m / 2) + 18}>
          {10 * Math.round(forces.vang_N / 10)} N
        </text>
        <text x={px(long_m)} y={py(0) + 20} textAnchor="end">
          boom
        </text>
      </svg>
      <figcaption className="soft small">
        To scale. Dashed: {mm(forces.arm_m)} mm from the gooseneck, square to the vang.
      </figcaption>
    </figure>
  );
}
