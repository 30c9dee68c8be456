/**
 * A rode that lies, to scale: the seabed, the water at high and low, chain heavy and rope thin, the pull at the anchor, and
 * the boat from her own sizes at the end of it.
 */
import { memo, useRef } from 'react';
import type { Boat } from '#boat-book';
import { boatDrawing } from '#picture';
import { type GroundDrawing as Drawn, sizesOfBoat } from '#reckoning';
import { useWidth } from '../../../../parts/use-width.ts';
import { DrawnLines } from '../../picture/drawn-lines.tsx';

export const GroundDrawing = memo(function GroundDrawing({
  boat,
  drawn,
  longest_m,
  said,
}: {
  readonly boat: Boat;
  readonly drawn: Drawn;
  /** all of the rode: the drawing keeps its scale while less is out */
  readonly longest_m: number;
  /** the drawing in a sentence */
  readonly said: string;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  return (
    <div ref={frame} className="ground-frame">
      {width > 0 && <Sheet boat={boat} drawn={drawn} longest_m={longest_m} said={said} width={width} />}
    </div>
  );
});

const left = 14;
/** room for what is written below the seabed */
const foot = 58;

function Sheet({
  boat,
  drawn,
  longest_m,
  said,
  width,
}: {
  readonly boat: Boat;
  readonly drawn: Drawn;
  readonly longest_m: number;
  readonly said: string;
  readonly width: number;
}) {
  const profile = boatDrawing(sizesOfBoat(boat).sizes, 'profile', { mastUp: true, board: 'up', coverOn: false });
  const end = drawn.high.at(-1)!.at(-1)!;
  const widest_m = Math.max(longest_m, end.along_m) + boat.length_m * 1.1;
  const scale = (width - left - 8) / widest_m;
  const top_m = drawn.high_m + profile.extent.top + 0.3;
  const across = (metres: number) => left + metres * scale;
  const down = (metres: number) => (top_m - metres) * scale + 6;
  const seabed = down(0);
  const height = seabed + foot;
  const line = (points: Drawn['high'][number]) =>
    points
      .map(({ along_m, up_m }, i) => `${i === 0 ? 'M' : 'L'}${across(along_m).toFixed(1)} ${down(up_m).toFixed(1)}`)
      .join('');
  const tide = drawn.high_m - drawn.low_m;
  const reach = across(end.along_m);
  /** the anchor, and the upper end of each piece */
  const marks = [across(0), ...drawn.high.map((points) => across(points.at(-1)!.along_m))];
  return (
    <svg className="ground-drawing" width={width} height={height} role="img" aria-label={said}>
      <line className="ground-water" x1={0} x2={width} y1={down(drawn.high_m)} y2={down(drawn.high_m)} />
      {tide > 0.05 && <line className="ground-low" x1={0} x2={width} y1={down(drawn.low_m)} y2={down(drawn.low_m)} />}
      <path className="ground-seabed" d={`M0 ${seabed}H${width}`} />
      <path className="ground-stones" d={stones(width, seabed)} />
      <DrawnLines
        lines={profile.lines.filter(({ weight }) => weight !== 'hidden')}
        transform={`translate(${reach.toFixed(1)} ${down(drawn.high_m).toFixed(1)}) scale(${scale} ${-scale})`}
      />
      {tide > 0.05 && drawn.low.map((points) => <path key={line(points)} className="ground-at-low" d={line(points)} />)}
      {drawn.high.map((points, n) => (
        <path key={line(points)} className="ground-rode" data-kind={drawn.pieces[n]!.kind} d={line(points)} />
      ))}
      <Anchor x={across(0)} y={seabed} />
      <text className="ground-soft" x={4} y={down(drawn.high_m) - 5}>
        high water {metres(drawn.high_m)}
      </text>
      {tide * scale > 16 && (
        <text className="ground-soft" x={4} y={down(drawn.low_m) - 4}>
          low {metres(drawn.low_m)}
        </text>
      )}
      <path
        className="ground-measure"
        d={`M${across(0)} ${seabed + 16}H${reach}${marks.map((x) => `M${x} ${seabed + 11}v10`).join('')}`}
      />
      {drawn.pieces.map(({ words }, n) => (
        <text key={words} x={n === 0 ? marks[0] : marks.at(-1)} y={seabed + 35} textAnchor={n === 0 ? 'start' : 'end'}>
          {words}
        </text>
      ))}
      <text x={marks[0]} y={seabed + 53}>
        {drawn.angle_deg < 0.05 ? 'pulled level' : `pulled ${Number(drawn.angle_deg.toFixed(1))}° up`}
      </text>
      <text x={marks.at(-1)} y={seabed + 53} textAnchor="end">
        {metres(end.along_m)} to the bow
      </text>
    </svg>
  );
}

/** Shank, stock and one fluke, the fluke in the seabed. [px] */
function Anchor({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <path
      className="ground-anchor"
      d={`M${x} ${y - 2}L${x - 10} ${y + 2}L${x - 2} ${y + 9}M${x - 10} ${y + 2}L${x - 12} ${y - 4}`}
    />
  );
}

/** Short strokes under the seabed. */
function stones(width: number, y: number): string {
  let d = '';
  for (let x = 6; x < width; x += 12) d += `M${x} ${y + 1}l-5 6`;
  return d;
}

const metres = (value: number) => `${value < 9.95 ? Number(value.toFixed(1)) : Math.round(value)} m`;
