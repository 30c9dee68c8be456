/** The boat with her mast at one place of its way, to scale; the hardest place is marked on the way of its head. */
import type { Boat } from '#boat-book';
import type { RaisingPoint } from '#loads';
import { boatDrawing, landmarks } from '#picture';
import { type RaisingTold, sizesOfBoat } from '#reckoning';
import { DrawnLines } from '../../picture/drawn-lines.tsx';

const size = { width: 358, side: 10, top: 24 } as const;

export function MastDrawing({
  boat,
  told: { raising, points, hardest },
  point,
  holdFrom_deg,
}: {
  readonly boat: Boat;
  readonly told: Extract<RaisingTold, { kind: 'told' }>;
  readonly point: RaisingPoint;
  /** from here on the shrouds hold it sideways; null: not before it is upright, or nothing is said of them */
  readonly holdFrom_deg: number | null;
}) {
  const { sizes } = sizesOfBoat(boat);
  const foot = landmarks(sizes).mastFoot.y;
  const mast_m = Math.max(boat.mastHeight_m, raising.lineAt_m);
  const hull = boatDrawing(sizes, 'profile', { mastUp: true, board: 'up', coverOn: false }).lines.filter(({ part }) =>
    /^(hull|cabin|coaming|companion|rubbing)/.test(part),
  );
  // metres: x aft from the stem, y up from the water
  const head = (deg: number, along_m: number) => ({
    x: boat.mastFromBow_m + along_m * Math.cos((deg * Math.PI) / 180),
    y: foot + along_m * Math.sin((deg * Math.PI) / 180),
  });
  const at = ({ ahead_m, up_m }: { readonly ahead_m: number; readonly up_m: number }) => ({
    x: boat.mastFromBow_m - ahead_m,
    y: foot + up_m,
  });
  const bow = at(raising.bow);
  const tips = points.flatMap(({ tip }) => (tip === null ? [] : [at(tip).x]));
  const left = Math.min(0, bow.x, ...tips) - 0.1;
  const right = boat.mastFromBow_m + mast_m + 0.25;
  const top = foot + mast_m;
  const bottom = -boat.draft_m - 0.1;
  const scale = (size.width - 2 * size.side) / (right - left);
  const height = size.top + (top - bottom) * scale + size.side;
  const px = (x: number) => size.side + (x - left) * scale;
  const py = (y: number) => size.top + (top - y) * scale;
  const path = (places: readonly { readonly x: number; readonly y: number }[]) =>
    places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${px(x).toFixed(1)} ${py(y).toFixed(1)}`).join('');
  const now = head(point.mast_deg, mast_m);
  const tip = point.tip === null ? null : at(point.tip);
  const heel = raising.pole.kind === 'none' ? null : at(raising.pole.heel);
  const hold = at(point.attachment);
  const pressed = points.filter(({ pole_N }) => pole_N >= 0);
  const pulled = points.filter(({ pole_N }) => pole_N < 0);
  const way = (of: readonly RaisingPoint[]) => path(of.map(({ mast_deg }) => head(mast_deg, mast_m)));
  const worst = [0.97, 1.03].map((share) => head(hardest.mast_deg, mast_m * share));
  const words = head(hardest.mast_deg, mast_m * 0.97);
  const held =
    holdFrom_deg === null || holdFrom_deg <= raising.from_deg
      ? null
      : [0.97, 1.03].map((share) => head(holdFrom_deg, mast_m * share));
  return (
    <figure className="rig-figure">
      <svg
        viewBox={`0 0 ${size.width} ${height.toFixed(0)}`}
        role="img"
        aria-label={`The mast at ${Math.round(point.mast_deg)}° above level, hinged at its foot and pulled from the bow${tip === null ? '' : ' over a pole'}. The pull is hardest at ${Math.round(hardest.mast_deg)}°.`}
      >
        <DrawnLines lines={hull} transform={`translate(${px(0)} ${py(0)}) scale(${scale} ${-scale})`} />
        <path className="rig-way" d={way(pressed)} />
        {pulled.length > 1 && <path className="rig-way-pulled" d={way(pulled)} />}
        <path className="rig-worst" d={path(worst)} />
        <text className="rig-worst-words" x={px(words.x) - 4} y={py(words.y) + 20} textAnchor="end">
          hardest at {Math.round(hardest.mast_deg)}°
        </text>
        {held !== null && (
          <>
            <path className="rig-held" d={path(held)} />
            <text className="rig-force" x={px(held[1]!.x) + 8} y={Math.max(13, py(held[1]!.y))}>
              shrouds hold from {Math.round(holdFrom_deg!)}°
            </text>
          </>
        )}
        <path className="rig-mast" d={path([head(0, 0), now])} />
        {tip === null ? (
          <path className="rig-line" d={path([hold, bow])} />
        ) : (
          <>
            <path className="rig-line" d={path([hold, tip])} />
            <path className="rig-line" d={path([tip, bow])} />
            {heel !== null && (
              <path className="rig-pole" data-pulled={point.pole_N < 0 ? '' : undefined} d={path([heel, tip])} />
            )}
          </>
        )}
        <circle className="rig-dot" cx={px(bow.x)} cy={py(bow.y)} r="3.5" />
        <circle className="rig-dot" cx={px(boat.mastFromBow_m)} cy={py(foot)} r="3.5" />
      </svg>
      <figcaption className="soft small">
        To scale, the bow to the left. The curve is the way of the masthead
        {pulled.length > 1 ? '; dashed, the pole is pulled, no longer pressed.' : '.'}
      </figcaption>
    </figure>
  );
}
