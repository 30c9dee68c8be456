/** Operations on the forecast of a place, and on what was entered by hand beside it. */
import { z } from 'zod/mini';
import { refuse } from './edit.ts';
import { day, id } from './field-schemas.ts';
import type { ForecastRecord } from './forecast-records.ts';
import { forecastSchema } from './forecast-schemas.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';

export const forecastOperations = {
  keepForecast: {
    title: 'Keep the forecast',
    does: 'Keeps the forecast of a place by the hour; the one before it for that place gives way.',
    // it is what somebody else said: undo is for what the keeper did
    undoes: false,
    fields: z.strictObject(without(forecastSchema, ['taken', 'order'])),
    run(fields: OperationFields<'keepForecast'>, edit) {
      edit.need('places', fields.place, 'place');
      const fault = forecastFault(fields);
      if (fault !== null) refuse(fault.where, fault.wrong, fault.right);
      for (const [before, { place }] of [...edit.all('forecasts')])
        if (place === fields.place) edit.unfix('forecasts', before);
      return edit.fix('forecasts', { ...fields, taken: edit.now });
    },
  },
  goByForecast: {
    title: 'Go by the forecast',
    does: 'Takes out the weather entered by hand for a day at a place, so that the forecast counts there again.',
    undoes: true,
    fields: z.strictObject({ place: id, date: day }),
    run({ place, date }: OperationFields<'goByForecast'>, edit) {
      edit.need('places', place, 'place');
      const entered = [...edit.all('weather')].filter(([, entry]) => entry.place === place && entry.date === date);
      if (entered.length === 0)
        refuse('date', `no weather was entered for ${date} there`, 'a day with weather entered');
      for (const [entry] of entered) edit.unfix('weather', entry);
      return null;
    },
  },
} satisfies Partial<Operations>;

/** Faults of a forecast that no single field shows. */
export function forecastFault(
  forecast: Omit<ForecastRecord, 'taken' | 'order'>,
): { where: string; wrong: string; right: string } | null {
  const hours = forecast.air_C.length;
  for (const column of ['rain_mm', 'rainOdds_pct', 'wind_kn', 'humidity_pct'] as const)
    if (forecast[column].length !== hours)
      return {
        where: column,
        wrong: `it has ${forecast[column].length} hours, and air_C has ${hours}`,
        right: 'as many hours in every column',
      };
  return Date.parse(forecast.from) % 3_600_000 === 0
    ? null
    : { where: 'from', wrong: `${forecast.from} is no whole hour`, right: 'a whole hour UTC' };
}
