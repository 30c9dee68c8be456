/** The schema of a forecast, held to its type at the foot of `schemas.ts`. */
import { z } from 'zod/mini';
import { at, id, number, title, whole } from './field-schemas.ts';

/** As far as any service goes, with some days gone by. [hours] */
const most_hours = 24 * 20;
const column = <T extends z.core.SomeType>(of: T) => z.array(of).check(z.minLength(1), z.maxLength(most_hours));

export const forecastSchema = z.strictObject({
  place: id,
  source: title,
  askedLatitude_deg: number(-90, 90),
  askedLongitude_deg: number(-180, 180),
  from: at,
  rain_mm: column(number(0, 300)),
  rainOdds_pct: column(z.nullable(whole(0, 100))),
  wind_kn: column(number(0, 120)),
  air_C: column(number(-60, 60)),
  humidity_pct: column(number(1, 100)),
  taken: at,
  order: z.exactOptional(whole(1, Number.MAX_SAFE_INTEGER)),
});
