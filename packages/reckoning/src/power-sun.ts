/** The panels of a battery under the sun of their place: what they may have brought, and what they may bring. */
import { type Band, Dice, type Flow } from '#battery';
import type { Book, PanelRecord } from '#boat-book';
import type { PowerPlace } from '#power';
import { lightSpans } from '#sky';
import { type Clouds, keptBand, type PanelCase, panelDay, panelFlows, type SolarDraws, sunDraws } from '#solar';
import { addDays, instantAt, localAt, type Span } from '#units';
import { cautiousClimate } from './cautious-climate.ts';
import type { BatteryOfBook } from './power-history.ts';
import { weatherInForce } from './weather/weather-in-force.ts';

const hour = 3_600_000;
/** Assumed: the cautious climate is so much colder than the air mostly is. [°C] */
const assumedCautionTakenBack_C = 3;

/** What the rig leaves of one panel's sun: as the keeper guessed it, unless readings have taught better. */
export type KeptOf = (panel: PanelRecord) => Band;
export const keptAsGuessed: KeptOf = ({ kept_pct }) => keptBand(kept_pct);

/** A panel of the book as it is asked about. Boats lie at the sea. */
function panelCase(panel: PanelRecord, nominal_V: 6 | 12 | 24, place: PowerPlace, keptOf: KeptOf): PanelCase {
  return {
    panel,
    nominal_V,
    place: { latitude_deg: place.latitude_deg, longitude_deg: place.longitude_deg, elevation_m: 0 },
    kept: keptOf(panel),
    air_C: (at) => usualAir_C(place, at),
  };
}

/** The plain picture of the climate at an instant, by the sun's clock. [°C] */
export function usualAir_C({ latitude_deg, longitude_deg }: PowerPlace, at: number): number {
  const sun = new Date(at + (longitude_deg / 15) * hour);
  const dayOfYear = Math.floor((sun.getTime() - Date.UTC(sun.getUTCFullYear(), 0, 1)) / (24 * hour)) + 1;
  return cautiousClimate(latitude_deg, dayOfYear, sun.getUTCHours()).air_C + assumedCautionTakenBack_C;
}

/** Hours of the clock that a day's rain is looked for in. */
const assumedDaylight = { from: 8, to: 18 } as const;

/**
 * What the book says of a day's sky. Assumed: rain in half of the hours entered of its daylight or more is an overcast day, rain in
 * fewer one of mostly cloud; hours without rain say nothing of the cloud, and the day is one of the season's.
 */
export function cloudsInBook(book: Book): (day: string) => Clouds {
  const entries = weatherInForce(book);
  return (day) => {
    const ofDay = entries.filter(({ date }) => date === day);
    let entered = 0;
    let wet = 0;
    if (ofDay.length > 0)
      for (let clock: number = assumedDaylight.from; clock < assumedDaylight.to; clock++) {
        const entry = ofDay.findLast(({ fromHour, toHour }) => fromHour <= clock && clock < toHour);
        if (entry === undefined) continue;
        entered++;
        if (entry.rain) wet++;
      }
    if (wet === 0) return { kind: 'season' };
    return { kind: 'word', word: 2 * wet >= entered ? 'overcast' : 'mostly cloud' };
  };
}

/** What all panels of a battery bring in a day, in 9 of 10; null: no panel. [Ah] */
export function sunOfDay(
  book: Book,
  { record, panels }: Pick<BatteryOfBook, 'record' | 'panels'>,
  place: PowerPlace,
  day: string,
  keptOf: KeptOf,
): Band | null {
  const clouds = cloudsInBook(book)(day);
  return panels.reduce<Band | null>((sum, panel) => {
    const { low, likely, high } = panelDay(
      panelCase(panel, record.nominal_V, place, keptOf),
      day,
      place.zone,
      clouds,
    ).brought_Ah;
    return sum === null
      ? { low, likely, high }
      : { low: sum.low + low, likely: sum.likely + likely, high: sum.high + high };
  }, null);
}

/** Courses of the sun over the coming days for all panels of a battery; null: no panel. @param from a whole hour */
export function sunAhead(
  book: Book,
  { record, panels }: Pick<BatteryOfBook, 'record' | 'panels'>,
  place: PowerPlace,
  keptOf: KeptOf,
  {
    from,
    days,
    draws,
    seed,
  }: { readonly from: number; readonly days: number; readonly draws: number; readonly seed: number },
): SolarDraws | null {
  if (panels.length === 0) return null;
  return sunDraws(
    panels.map((panel) => panelCase(panel, record.nominal_V, place, keptOf)),
    {
      from,
      days,
      draws,
      clouds: cloudsInBook(book),
      clockHour: (at) => Math.floor(localAt(at, place.zone).minuteOfDay / 60),
      dice: new Dice(seed),
    },
  );
}

/** Days before the end of a history that are misstated each by a share of its own; those before share one. */
const ownDays = 5;

/** What the panels may have brought over a span, as flows out of the battery counted positive, in four parts of each day's light. */
export function panelFlowsOf(
  book: Book,
  { record, panels }: Pick<BatteryOfBook, 'record' | 'panels'>,
  place: PowerPlace,
  span: Span,
): Flow[] {
  if (panels.length === 0) return [];
  const clouds = cloudsInBook(book);
  return lightsByDay(place, span).flatMap((light) => {
    const { day } = localAt((light.start + light.end) / 2, place.zone);
    const source = span.end - light.end < ownDays * 24 * hour ? `sun of ${day}` : 'sun';
    return panels.flatMap((panel) =>
      panelFlows(panelCase(panel, record.nominal_V, place, keptAsGuessed), light, clouds(day)).map(
        ({ from, to, low_A, likely_A, high_A }): Flow => ({
          from,
          to,
          low_A: -high_A,
          likely_A: -likely_A,
          high_A: -low_A,
          source,
        }),
      ),
    );
  });
}

/** Spans of light, none longer than a day: midnight sun is cut at the midnights of the clocks. */
function lightsByDay(place: PowerPlace, span: Span): Span[] {
  return lightSpans(place, 'sun', span).flatMap((light) => {
    const cut: Span[] = [];
    let { start } = light;
    while (light.end - start > 24 * hour) {
      const midnight = instantAt(addDays(localAt(start, place.zone).day, 1), '00:00', place.zone);
      cut.push({ start, end: midnight });
      start = midnight;
    }
    if (light.end > start) cut.push({ start, end: light.end });
    return cut;
  });
}

/** What panels with nothing in the way were to bring between two instants: days' bands, fair and dull evening out over several. [Ah] */
export function sunUnshaded(
  book: Book,
  { record, panels }: Pick<BatteryOfBook, 'record' | 'panels'>,
  place: PowerPlace,
  { start, end }: Span,
): Band {
  const clouds = cloudsInBook(book);
  const open = { low: 1, likely: 1, high: 1 };
  let likely = 0;
  let below = 0;
  let above = 0;
  for (const light of lightsByDay(place, { start, end })) {
    const { day } = localAt((light.start + light.end) / 2, place.zone);
    const sum = { low: 0, likely: 0, high: 0 };
    for (const panel of panels)
      for (const flow of panelFlows(
        panelCase(panel, record.nominal_V, place, () => open),
        light,
        clouds(day),
      )) {
        const hours = (flow.to - flow.from) / hour;
        sum.low += flow.low_A * hours;
        sum.likely += flow.likely_A * hours;
        sum.high += flow.high_A * hours;
      }
    likely += sum.likely;
    below = Math.hypot(below, sum.likely - sum.low);
    above = Math.hypot(above, sum.high - sum.likely);
  }
  return { low: Math.max(0, likely - below), likely, high: likely + above };
}
