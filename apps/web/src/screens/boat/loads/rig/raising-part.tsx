/** The mast at a place of its way, moved with a slider: drawn to scale, with what bears what there. */
import { useState } from 'react';
import type { Boat, MastRecord } from '#boat-book';
import type { RaisingTold, SidewaysTold } from '#reckoning';
import { SliderField } from '../../../../parts/slider-field.tsx';
import { WorkingParts } from '../../../../parts/working-parts.tsx';
import { MastDrawing } from './mast-drawing.tsx';
import { RaisingCurves } from './raising-curves.tsx';

export function RaisingPart({
  boat,
  mast,
  told,
  sideways,
}: {
  readonly boat: Boat;
  readonly mast: MastRecord;
  readonly told: Extract<RaisingTold, { kind: 'told' }>;
  /** null: nothing is said of the shrouds */
  readonly sideways: SidewaysTold | null;
}) {
  const { points, hardest } = told;
  const [n, setN] = useState(points.indexOf(hardest));
  const point = points[Math.min(n, points.length - 1)]!;
  const slack = sideways?.points.reduce((near, each) =>
    Math.abs(each.mast_deg - point.mast_deg) < Math.abs(near.mast_deg - point.mast_deg) ? each : near,
  );
  const { led } = mast;
  return (
    <section aria-labelledby="mast-raising">
      <h2 id="mast-raising" className="unseen">
        On its way
      </h2>
      <p className="loads-verdict">{told.lines[0]}</p>
      <div className="rig-raising">
        <div className="rig-told">
          {told.lines.slice(1).map((line) => (
            <p key={line}>{line}</p>
          ))}
          <details className="field-group">
            <summary>How it is worked out</summary>
            <WorkingParts working={told.working} />
          </details>
        </div>
        <div className="rig-raising-drawing">
          <MastDrawing boat={boat} told={told} point={point} holdFrom_deg={sideways?.holdFrom_deg ?? null} />
          <SliderField
            label="Mast at"
            said={`${Math.round(point.mast_deg)}° above level, ${newtons(point.tackle_N)} in the ${led ? 'tackle' : 'line'}`}
            value={n}
            min={0}
            max={points.length - 1}
            step={1}
            onChange={setN}
          />
        </div>
        <div className="rig-raising-forces">
          <dl className="rig-forces">
            <dt>{led ? 'In the tackle' : 'In the line to the bow'}</dt>
            <dd>{newtons(point.tackle_N)}</dd>
            {led !== null && (
              <>
                <dt>In the forestay or halyard</dt>
                <dd>{newtons(point.line_N)}</dd>
                <dt>
                  {led.by === 'pole' ? 'Along the pole' : 'Along each leg'}, {point.leg_N < 0 ? 'pulled' : 'pressed'}
                </dt>
                <dd>{newtons(Math.abs(point.leg_N))}</dd>
              </>
            )}
            <dt>On the hinge</dt>
            <dd>{newtons(Math.hypot(point.pivot_N.ahead, point.pivot_N.up))}</dd>
            {slack !== undefined && (
              <>
                <dt>Shrouds {slack.slack_m >= 0 ? 'slack by' : 'too short by'}</dt>
                <dd>{Math.round(Math.abs(1000 * slack.slack_m))} mm</dd>
              </>
            )}
          </dl>
          <RaisingCurves points={points} at={point} led={led !== null} />
        </div>
      </div>
    </section>
  );
}

const newtons = (force_N: number) => `${10 * Math.round(force_N / 10)} N`;
