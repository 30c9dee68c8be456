/** What a piece of work asks of the hours it runs through. */
import type { Conditions } from '#sky';
import { TickField } from './choice-fields.tsx';
import type { Faults, FormReading } from './read-form.ts';
import { NumberField } from './text-fields.tsx';

export interface ConditionsDraft {
  readonly dry: boolean;
  readonly daylight: boolean;
  readonly wind: string;
  readonly airMin: string;
  readonly airMax: string;
  readonly surfaceMin: string;
  readonly humidity: string;
  readonly dewMargin: string;
}
export type ConditionsFault = 'wind' | 'airMin' | 'airMax' | 'surfaceMin' | 'humidity' | 'dewMargin';

export function conditionsDraft(needs: Conditions): ConditionsDraft {
  const text = (value: number | undefined) => value?.toString() ?? '';
  return {
    dry: needs.dry ?? false,
    daylight: needs.daylight ?? false,
    wind: text(needs.wind_max_kn),
    airMin: text(needs.air_min_C),
    airMax: text(needs.air_max_C),
    surfaceMin: text(needs.surface_min_C),
    humidity: text(needs.humidity_max_pct),
    dewMargin: text(needs.dewMargin_min_C),
  };
}

/** The conditions of a draft; what cannot be read is refused in the form. */
export function conditionsOf<F extends string>(
  draft: ConditionsDraft,
  form: FormReading<F | ConditionsFault>,
): Conditions {
  const wind = form.figureOrNone('wind', draft.wind, { min: 0, max: 80, unit: 'knots' });
  const airMin = form.figureOrNone('airMin', draft.airMin, { min: -30, max: 50, unit: '°C' });
  const airMax = form.figureOrNone('airMax', draft.airMax, { min: -30, max: 60, unit: '°C' });
  const surfaceMin = form.figureOrNone('surfaceMin', draft.surfaceMin, { min: -30, max: 60, unit: '°C' });
  const humidity = form.figureOrNone('humidity', draft.humidity, { min: 1, max: 100, unit: '%' });
  const dewMargin = form.figureOrNone('dewMargin', draft.dewMargin, { min: 0, max: 20, unit: '°C' });
  if (airMin !== null && airMax !== null && airMin > airMax)
    form.refuse('airMax', `That is below the ${airMin} °C it must have at least.`);
  return {
    ...(draft.dry ? { dry: true as const } : {}),
    ...(draft.daylight ? { daylight: true as const } : {}),
    ...(wind === null ? {} : { wind_max_kn: wind }),
    ...(airMin === null ? {} : { air_min_C: airMin }),
    ...(airMax === null ? {} : { air_max_C: airMax }),
    ...(surfaceMin === null ? {} : { surface_min_C: surfaceMin }),
    ...(humidity === null ? {} : { humidity_max_pct: humidity }),
    ...(dewMargin === null ? {} : { dewMargin_min_C: dewMargin }),
  };
}

export function ConditionsFields({
  draft,
  onChange,
  faults,
  fold = false,
}: {
  readonly draft: ConditionsDraft;
  readonly onChange: (draft: ConditionsDraft) => void;
  readonly faults: Faults<ConditionsFault>;
  /** the figures are folded away while none is given */
  readonly fold?: boolean;
}) {
  const set = <K extends keyof ConditionsDraft>(key: K, value: ConditionsDraft[K]) =>
    onChange({ ...draft, [key]: value });
  const figure = (key: ConditionsFault, label: string, unit: string) => (
    <NumberField
      label={label}
      unit={unit}
      value={draft[key]}
      onChange={(text) => set(key, text)}
      refused={faults[key]}
    />
  );
  const rows = (
    <>
      <p className="field-note">A field left empty asks for nothing.</p>
      <div className="field-grid">
        {figure('airMin', 'Air from', '°C')}
        {figure('airMax', 'Air up to', '°C')}
        {figure('wind', 'Wind up to', 'knots')}
        {figure('surfaceMin', 'Surface from', '°C')}
        {figure('humidity', 'Humidity up to', '%')}
        {figure('dewMargin', 'Over the dew point by', '°C')}
      </div>
    </>
  );
  const given = [draft.wind, draft.airMin, draft.airMax, draft.surfaceMin, draft.humidity, draft.dewMargin].some(
    (text) => text !== '',
  );
  const figures =
    fold && !given ? (
      <details className="field-group">
        <summary>
          Figures <span className="soft">temperature, wind, humidity</span>
        </summary>
        {rows}
      </details>
    ) : (
      rows
    );
  return (
    <>
      <div className="field-row">
        <TickField label="Dry" value={draft.dry} onChange={(on) => set('dry', on)} />
        <TickField label="Daylight" value={draft.daylight} onChange={(on) => set('daylight', on)} />
      </div>
      {figures}
    </>
  );
}
