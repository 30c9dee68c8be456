/** The ball load on a line from nothing to past its limit: its band, what is wanted, the limit, and as it was before a change. */
import { useRef } from 'react';
import { kgFigure, kgSaid, type TrailerTold } from '#reckoning';
import { useWidth } from '../../../parts/use-width.ts';
import { balanceOnPaper_px } from './balance-places.ts';

export function BallGauge({ told, before }: { readonly told: TrailerTold; readonly before: TrailerTold | null }) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, balanceOnPaper_px);
  return (
    <div ref={frame} className="trailer-frame">
      {width > 0 && <Gauge told={told} before={before} width={width} />}
    </div>
  );
}

function Gauge({
  told,
  before,
  width,
}: {
  readonly told: TrailerTold;
  readonly before: TrailerTold | null;
  readonly width: number;
}) {
  const { ball_kg } = told.load;
  const limit = told.ballLimit_kg;
  const { low_kg, high_kg } = told.wanted;
  const was = before?.load.ball_kg.likely ?? ball_kg.likely;
  const least = Math.min(0, ball_kg.low, was);
  const most = Math.max(1.25 * (limit ?? high_kg), ball_kg.high * 1.05, was * 1.05, 10);
  const across = (kg: number) => 8 + ((kg - least) / (most - least)) * (width - 16);
  const over = limit !== null && ball_kg.likely > limit;
  const x = across(ball_kg.likely);
  return (
    <svg
      className="trailer-gauge"
      width={width}
      height="76"
      viewBox={`0 0 ${width} 76`}
      role="img"
      aria-label={`On the ball ${kgSaid(ball_kg.likely)}, between ${kgFigure(ball_kg.low)} and ${kgSaid(ball_kg.high)}; wanted ${kgFigure(low_kg)} to ${kgSaid(high_kg)}${limit === null ? '; no limit is entered' : `; at most ${kgSaid(limit)}`}`}
    >
      <line className="trailer-scale" x1={across(least)} x2={across(most)} y1="38" y2="38" />
      <rect
        className="trailer-wanted"
        x={across(low_kg)}
        width={Math.max(2, across(high_kg) - across(low_kg))}
        y="32"
        height="12"
      />
      <line className="trailer-band" x1={across(ball_kg.low)} x2={across(ball_kg.high)} y1="38" y2="38" />
      {before && Math.abs(was - ball_kg.likely) > 0.05 && <path className="trailer-was" d={`M${across(was)} 30v16`} />}
      <path className="trailer-is" data-over={over || undefined} d={`M${x} 29l7 9-7 9-7-9z`} />
      <text
        className="trailer-ball-said"
        data-over={over || undefined}
        x={held(x, width, 28)}
        y="20"
        textAnchor="middle"
      >
        {kgSaid(ball_kg.likely)}
      </text>
      {limit !== null && (
        <>
          <path className="trailer-limit" d={`M${across(limit)} 24V56`} />
          <text x={held(across(limit), width, 44)} y="70" textAnchor="middle">
            {`limit ${kgSaid(limit)}`}
          </text>
        </>
      )}
      <text x={across(Math.max(0, least))} y="70">
        {least < 0 ? kgFigure(least) : '0'}
      </text>
    </svg>
  );
}

const held = (x: number, width: number, half: number) => Math.min(width - half, Math.max(half, x));
