/** The travel of the board under the thumb: the drawing and the curves at one place of it. */
import { useState } from 'react';
import type { BoardHoistRecord } from '#boat-book';
import type { HoistTold } from '#reckoning';
import { SliderField } from '../../../../parts/slider-field.tsx';
import { HoistCurves } from './hoist-curves.tsx';
import { HoistDrawing } from './hoist-drawing.tsx';

export function HoistTravelPart({
  record,
  told: { points, hand, reckoned },
}: {
  readonly record: BoardHoistRecord;
  readonly told: Extract<HoistTold, { readonly kind: 'told' }>;
}) {
  // it opens where it pulls hardest
  const [at, setAt] = useState(() =>
    points.reduce((most, { hand_N }, i) => (hand_N.hoisting > points[most]!.hand_N.hoisting ? i : most), 0),
  );
  const point = points[at]!;
  const place =
    point.down_deg === null
      ? `${Math.round(100 * point.hauled_m)} cm up`
      : `${Math.round(point.down_deg)}° below level`;
  return (
    <section aria-labelledby="hoist-travel" className="hoist-travel">
      <h2 id="hoist-travel">Over its travel</h2>
      <figure>
        <HoistDrawing record={record} point={point} points={points} />
        <figcaption className="soft small">
          To scale, the bow to the left. Dashed: all the way down and all the way up. Arrow: its weight.
        </figcaption>
      </figure>
      <SliderField
        label="Board"
        said={`${place}, ${Math.round(100 * (point.hauled_m / Math.max(1e-9, points.at(-1)!.hauled_m)))} % of the wire hauled in`}
        value={at}
        min={0}
        max={points.length - 1}
        step={1}
        onChange={setAt}
      />
      <HoistCurves points={points} at={at} hand={hand} limit_N={reckoned.handLimit_N} />
      <p className="soft small">
        Newtons. Dashed across: what one person is asked for. Upright line: where the board is drawn.
      </p>
    </section>
  );
}
