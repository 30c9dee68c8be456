/** Wind, water, tide and how much is out, to move and see what follows. */
import type { AnchorageRecord, RodeRecord } from '#boat-book';
import { figureSaid, rodeLength_m } from '#reckoning';
import { SliderField } from '../../../../parts/slider-field.tsx';

const inMetres = (value: number) => `${figureSaid(value)} m`;
const inKnots = (value: number) => `${figureSaid(value)} kn`;

export function AnchorageSliders({
  rode,
  anchorage,
  out_m,
  byItself,
  onMove,
  onOut,
}: {
  readonly rode: RodeRecord;
  readonly anchorage: AnchorageRecord;
  /** what is out; null: none that does */
  readonly out_m: number | null;
  /** it is as much as it takes, found anew with every move */
  readonly byItself: boolean;
  readonly onMove: (change: Partial<AnchorageRecord>) => void;
  readonly onOut: (out_m: number | null) => void;
}) {
  const { depth_m, rise_m, fall_m, wind_kn, current_kn } = anchorage;
  const all_m = rodeLength_m(rode);
  const least_m = Math.min(all_m, Math.floor(depth_m + rise_m + rode.bow_m) + 1);
  return (
    <div className="ground-sliders no-print">
      <SliderField
        label="Wind"
        said={inKnots(wind_kn)}
        value={wind_kn}
        min={Math.min(5, wind_kn)}
        max={Math.max(50, wind_kn)}
        step={1}
        onChange={(value) => onMove({ wind_kn: value })}
      />
      <SliderField
        label="Water at the anchor now"
        said={inMetres(depth_m)}
        value={depth_m}
        min={Math.min(0.5, depth_m)}
        max={Math.max(15, depth_m)}
        step={0.1}
        onChange={(value) => onMove({ depth_m: value, fall_m: Math.min(fall_m, tenth(value - 0.1)) })}
      />
      <SliderField
        label={byItself ? 'Rode out, as much as it takes' : 'Rode out'}
        said={out_m === null ? 'none does' : inMetres(out_m)}
        value={out_m ?? all_m}
        min={least_m}
        max={all_m}
        step={all_m - least_m > 4 ? 1 : 0.1}
        onChange={onOut}
      />
      {!byItself && (
        <button type="button" className="words" onClick={() => onOut(null)}>
          As much as it takes
        </button>
      )}
      <details className="field-group">
        <summary className="prints">
          Tide and current: rises {inMetres(rise_m)}, falls {inMetres(fall_m)}, {inKnots(current_kn)}
        </summary>
        <SliderField
          label="The tide still rises"
          said={inMetres(rise_m)}
          value={rise_m}
          min={0}
          max={Math.max(8, rise_m)}
          step={0.1}
          onChange={(value) => onMove({ rise_m: value })}
        />
        <SliderField
          label="The tide still falls"
          said={inMetres(fall_m)}
          value={fall_m}
          min={0}
          max={Math.max(fall_m, tenth(depth_m - 0.1))}
          step={0.1}
          onChange={(value) => onMove({ fall_m: value })}
        />
        <SliderField
          label="Current from ahead"
          said={inKnots(current_kn)}
          value={current_kn}
          min={0}
          max={Math.max(4, current_kn)}
          step={0.1}
          onChange={(value) => onMove({ current_kn: value })}
        />
      </details>
    </div>
  );
}

/** In tenths, as the sliders move. */
const tenth = (value: number) => Math.round(value * 10) / 10;
