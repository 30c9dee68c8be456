/** One part of a day: dry or rain, wind, warmth and humidity, each a tap or a typed figure. */
import { PickField } from '../../parts/choice-fields.tsx';
import { readFigure } from '../../parts/read-form.ts';
import { NumberField } from '../../parts/text-fields.tsx';
import type { KnownHour } from './weather-known.ts';
import { type DayPart, partHours } from './weather-parts.ts';

export interface PartDraft {
  readonly sky: 'dry' | 'rain' | '';
  /** chance of rain; may be left empty */
  readonly odds: string;
  readonly wind: string;
  readonly air: string;
  readonly humidity: string;
}

export const emptyPart: PartDraft = { sky: '', odds: '', wind: '', air: '', humidity: '' };

export const limits = {
  odds: { min: 0, max: 100, unit: '%', whole: true },
  wind: { min: 0, max: 120, unit: 'kn' },
  air: { min: -60, max: 60, unit: '°C' },
  humidity: { min: 1, max: 100, unit: '%' },
} as const;

const chances = [5, 20, 40, 70, 95] as const;
const winds = [2, 6, 10, 14, 18, 24] as const;
const humidities = [
  { figure: 50, word: 'dry air' },
  { figure: 65, word: 'fair' },
  { figure: 80, word: 'damp' },
  { figure: 95, word: 'wet' },
] as const;

export function PartFields({
  part,
  draft,
  forecast,
  varies,
  before,
  onChange,
}: {
  readonly part: DayPart;
  readonly draft: PartDraft;
  /** what the forecast says of its hours; null: nothing */
  readonly forecast: string | null;
  /** its hours were entered, and not all alike */
  readonly varies: boolean;
  readonly before: { readonly name: string; readonly draft: PartDraft } | null;
  readonly onChange: (draft: PartDraft) => void;
}) {
  const set = (what: Partial<PartDraft>) => onChange({ ...draft, ...what });
  const warmer = (by: number) => {
    const now = readFigure(draft.air, limits.air);
    const from = now.kind === 'figure' ? now.value : before ? Number(before.draft.air || 10) : 10;
    set({ air: String(now.kind === 'figure' ? from + by : from) });
  };
  return (
    <fieldset className="days-part">
      <legend>
        {part.name} <span className="soft small">{partHours(part)}</span>
      </legend>
      {forecast && <p className="small soft">Forecast: {forecast}.</p>}
      {varies && <p className="small soft">Entered hour by hour; what is filled in here replaces it.</p>}
      <div className="days-sky">
        <PickField
          label="Sky"
          quiet
          value={draft.sky}
          onChange={(sky) => set({ sky })}
          options={[
            { value: 'dry', name: 'Dry' },
            { value: 'rain', name: 'Rain' },
          ]}
        />
        {before && before.draft.sky !== '' && draft.sky === '' && (
          <button type="button" className="words" onClick={() => onChange(before.draft)}>
            As the {before.name}
          </button>
        )}
      </div>
      <div className="days-figure days-chance">
        <NumberField label="Chance of rain" unit="%" whole value={draft.odds} onChange={(odds) => set({ odds })} />
        <Chips
          name={`${part.name}: chance of rain in each hour, of 100`}
          chosen={draft.odds}
          options={chances.map((figure) => ({ figure, word: String(figure) }))}
          onChoose={(odds) => set({ odds })}
        />
      </div>
      <div className="days-figure">
        <NumberField label="Wind" unit="kn" value={draft.wind} onChange={(wind) => set({ wind })} />
        <Chips
          name={`${part.name}: wind in knots`}
          chosen={draft.wind}
          options={winds.map((figure) => ({ figure, word: String(figure) }))}
          onChoose={(wind) => set({ wind })}
        />
      </div>
      <div className="days-figure">
        <NumberField label="Air" unit="°C" value={draft.air} onChange={(air) => set({ air })} />
        <fieldset className="days-chips">
          <legend className="unseen">{part.name}: air warmer or cooler</legend>
          <button type="button" onClick={() => warmer(-1)}>
            cooler
          </button>
          <button type="button" onClick={() => warmer(1)}>
            warmer
          </button>
        </fieldset>
      </div>
      <div className="days-figure">
        <NumberField
          label="Humidity"
          unit="%"
          whole
          value={draft.humidity}
          onChange={(humidity) => set({ humidity })}
        />
        <Chips
          name={`${part.name}: humidity`}
          chosen={draft.humidity}
          options={humidities}
          onChoose={(humidity) => set({ humidity })}
        />
      </div>
    </fieldset>
  );
}

function Chips({
  name,
  chosen,
  options,
  onChoose,
}: {
  readonly name: string;
  readonly chosen: string;
  readonly options: readonly { readonly figure: number; readonly word: string }[];
  readonly onChoose: (figure: string) => void;
}) {
  return (
    <fieldset className="days-chips">
      <legend className="unseen">{name}</legend>
      {options.map(({ figure, word }) => (
        <button
          key={figure}
          type="button"
          aria-pressed={chosen === String(figure)}
          onClick={() => onChoose(String(figure))}
        >
          {word}
        </button>
      ))}
    </fieldset>
  );
}

/** The hour a part stands for; `empty` where nothing was filled in, `refused` where only some of it was. */
export function readPart(
  draft: PartDraft,
):
  | { readonly kind: 'hour'; readonly hour: KnownHour }
  | { readonly kind: 'empty' }
  | { readonly kind: 'refused'; readonly why: string } {
  if (Object.values(draft).every((text) => text === '')) return { kind: 'empty' };
  if (draft.sky === '') return { kind: 'refused', why: 'say whether it is dry or rains.' };
  const figures = {
    wind: readFigure(draft.wind, limits.wind),
    air: readFigure(draft.air, limits.air),
    humidity: readFigure(draft.humidity, limits.humidity),
  };
  for (const [name, figure] of Object.entries(figures))
    if (figure.kind === 'refused') return { kind: 'refused', why: `${name}: ${figure.why}` };
  const odds = draft.odds.trim() === '' ? null : readFigure(draft.odds, limits.odds);
  if (odds?.kind === 'refused') return { kind: 'refused', why: `chance of rain: ${odds.why}` };
  if (figures.wind.kind !== 'figure' || figures.air.kind !== 'figure' || figures.humidity.kind !== 'figure')
    return { kind: 'empty' };
  return {
    kind: 'hour',
    hour: {
      rain: draft.sky === 'rain',
      rainOdds_pct: odds === null ? null : odds.value,
      wind_kn: figures.wind.value,
      air_C: figures.air.value,
      humidity_pct: figures.humidity.value,
    },
  };
}
