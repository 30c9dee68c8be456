/**
 * The weather of one clock hour at one place, as the planner and the cure laws read it.
 *
 * Stored form: units stand in the names. `basis` says where the figure is from: typed by the keeper, from a
 * forecast, or the stated cautious climate value that stands in where nothing is known.
 */
export interface WeatherHour {
  /** rain or drizzle enough to wet a surface at any time in the hour */
  readonly rain: boolean;
  /** mean wind. [kn], 0–120 */
  readonly wind_kn: number;
  /** air temperature. [°C], −60–60 */
  readonly air_C: number;
  /** surface temperature where it is known to differ from the air (sun, night sky); null: take the air's. [°C] */
  readonly surface_C: number | null;
  /**
   * how much colder than that gets what lies open to the sky, where it is worked out (a clear night). Only a margin over
   * the dew point reads it. [°C], 0–40; missing: as the surface
   */
  readonly skyCooling_C?: number;
  /** relative humidity. [%], 1–100 */
  readonly humidity_pct: number;
  readonly basis: 'typed' | 'forecast' | 'climate';
}

/** What a piece of work or a wait asks of the hours it runs through. A missing key asks nothing. */
export interface Conditions {
  readonly dry?: true;
  readonly wind_max_kn?: number;
  readonly air_min_C?: number;
  readonly air_max_C?: number;
  readonly surface_min_C?: number;
  readonly humidity_max_pct?: number;
  /** least margin over the dew point (`dewMargin_C`). [°C]; 3 °C is the coating rule (ISO 8502-4) */
  readonly dewMargin_min_C?: number;
  readonly daylight?: true;
}
