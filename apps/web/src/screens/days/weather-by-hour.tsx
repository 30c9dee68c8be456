/** The weather of a job day hour by hour, as a table to type into. */
import { useState } from 'react';
import type { Book, JobDay, WeatherEntry } from '#boat-book';
import { forecastHours } from '#reckoning';
import { Refused } from '../../parts/field.tsx';
import { enteredHours, hoursOfDay, type KnownHour, sameWeather, type WeatherEntries } from './weather-known.ts';
import { emptyPart, type PartDraft, readPart } from './weather-part.tsx';

const two = (n: number) => String(n).padStart(2, '0');

export function WeatherByHour({
  book,
  day,
  onEnter,
  onTouch,
}: {
  readonly book: Book;
  readonly day: JobDay;
  readonly onEnter: (entries: WeatherEntries) => Promise<void>;
  readonly onTouch: () => void;
}) {
  const [rows, setRows] = useState<readonly PartDraft[]>(() =>
    enteredHours(book, day.place, day.date).map((hour) =>
      hour === null
        ? emptyPart
        : {
            sky: hour.rain ? 'rain' : 'dry',
            odds: hour.rainOdds_pct === null ? '' : String(hour.rainOdds_pct),
            wind: String(hour.wind_kn),
            air: String(hour.air_C),
            humidity: String(hour.humidity_pct),
          },
    ),
  );
  const [refused, setRefused] = useState<string | null>(null);
  const [all, setAll] = useState(false);
  const hours = hoursOfDay(day);
  const forecast = new Map(forecastHours(book, day.place, day.date).map((hour) => [hour.fromHour, hour]));
  const shown = { from: Math.min(6, hours.from), to: Math.max(20, hours.to) };
  const set = (hour: number, what: Partial<PartDraft>) => {
    onTouch();
    setRows(rows.map((row, i) => (i === hour ? { ...row, ...what } : row)));
  };
  const keep = () => {
    const read: (KnownHour | null)[] = [];
    for (const [hour, row] of rows.entries()) {
      const one = readPart(row);
      if (one.kind === 'refused') {
        setRefused(`${two(hour)}:00: ${one.why}`);
        return;
      }
      read.push(one.kind === 'hour' ? one.hour : null);
    }
    const entries = entriesOf(read, day);
    if (entries.length === 0) {
      setRefused('No hour is filled in yet. Fill in at least one.');
      return;
    }
    setRefused(null);
    void onEnter(entries);
  };
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      {forecast.size > 0 && (
        <p className="small soft">In an empty field stands the forecast, which counts while the field is empty.</p>
      )}
      <table className="days-hours">
        <thead>
          <tr>
            <th scope="col">hour</th>
            <th scope="col">rain</th>
            <th scope="col">chance, %</th>
            <th scope="col">wind, kn</th>
            <th scope="col">air, °C</th>
            <th scope="col">humid, %</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, hour) => {
            if (!all && (hour < shown.from || hour >= shown.to)) return null;
            const name = `${two(hour)}:00`;
            const told = forecast.get(hour);
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the index is the hour of the day
              <tr key={hour}>
                <th scope="row">{two(hour)}</th>
                <td>
                  <select
                    aria-label={`${name} rain`}
                    value={row.sky}
                    onChange={(event) => set(hour, { sky: event.target.value as PartDraft['sky'] })}
                  >
                    <option value="">{told ? `(${told.rain ? 'rain' : 'dry'})` : '–'}</option>
                    <option value="dry">dry</option>
                    <option value="rain">rain</option>
                  </select>
                </td>
                {(['odds', 'wind', 'air', 'humidity'] as const).map((field) => (
                  <td key={field}>
                    <input
                      type="text"
                      inputMode="decimal"
                      aria-label={`${name} ${field === 'odds' ? 'chance of rain' : field}`}
                      value={row[field]}
                      placeholder={told && forecastFigure(told, field)}
                      onChange={(event) => set(hour, { [field]: event.target.value })}
                    />
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
      {!all && (
        <p>
          <button type="button" className="words" onClick={() => setAll(true)}>
            The hours of the night too
          </button>
        </p>
      )}
      <Refused text={refused} />
      <button type="submit" className="main">
        Enter the weather
      </button>
    </form>
  );
}

/** The figure of the forecast that stands in an empty field. */
function forecastFigure(hour: WeatherEntry, field: 'odds' | 'wind' | 'air' | 'humidity'): string {
  const figure = {
    odds: hour.rainOdds_pct,
    wind: Math.round(hour.wind_kn),
    air: Math.round(hour.air_C),
    humidity: hour.humidity_pct,
  }[field];
  return figure === null ? '' : String(figure);
}

/** One entry for each run of hours with the same weather. */
function entriesOf(hours: readonly (KnownHour | null)[], day: JobDay): WeatherEntries {
  const entries: WeatherEntries[number][] = [];
  for (let from = 0; from < hours.length; ) {
    const first = hours[from];
    let to = from + 1;
    if (first) {
      while (to < hours.length && hours[to] && sameWeather(hours[to]!, first)) to++;
      entries.push({
        place: day.place,
        date: day.date,
        fromHour: from,
        toHour: to,
        ...first,
        surface_C: null,
        basis: 'typed',
      });
    }
    from = to;
  }
  return entries;
}
