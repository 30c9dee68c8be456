/** Forecasts being taken: what is asked just now, and what went wrong the last time. The last good one stays in the book. */
import { useEffect, useSyncExternalStore } from 'react';
import type { Book, Id } from '#boat-book';
import { forecastOf } from '#reckoning';
import { bookClient } from '../../../offline/book-client.ts';
import { type ForecastServer, serverAllowed, useForecastChoice } from './forecast-choice.ts';
import { placesAsked } from './places-asked.ts';

/** A forecast older than this is asked for anew when the days are looked at: the service has a new one every 1 to 6 h. [ms] */
const assumedFresh_ms = 3 * 3_600_000;
/** After an asking, however it went, none is begun by itself for so long. [ms] */
const rest_ms = 15 * 60_000;

export interface Trouble {
  /** in plain words, as the end of a sentence */
  readonly why: string;
  /** epoch ms */
  readonly at: number;
}

export interface Taking {
  readonly asking: boolean;
  readonly troubles: Readonly<Record<Id, Trouble>>;
}

let taking: Taking = { asking: false, troubles: {} };
let lastAsked = 0;
let calledOff: AbortController | null = null;
const listeners = new Set<() => void>();

function now_is(next: Taking): void {
  taking = next;
  for (const listener of listeners) listener();
}

export function useTaking(): Taking {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => taking,
  );
}

/** Calls off what is being asked. */
export function callOff(): void {
  calledOff?.abort();
}

/** Asks for the forecast of each place and keeps what is good. Nothing is asked while it is off. */
export async function takeForecasts(book: Book): Promise<void> {
  const server = serverAllowed();
  if (server === null || taking.asking) return;
  lastAsked = Date.now();
  calledOff = new AbortController();
  now_is({ asking: true, troubles: {} });
  const troubles: Record<Id, Trouble> = {};
  try {
    for (const place of placesAsked(book, Date.now())) {
      const why = await takeOne(place, server, calledOff.signal);
      if (why === 'called off') return;
      if (why !== null) troubles[place.id] = { why, at: Date.now() };
    }
  } finally {
    now_is({ asking: false, troubles });
  }
}

/** Takes one forecast; returns why not, or null. */
async function takeOne(
  { id, asked }: ReturnType<typeof placesAsked>[number],
  server: ForecastServer,
  signal: AbortSignal,
): Promise<string | null> {
  if (!navigator.onLine) return 'this device has no network just now';
  // loaded only by who turned it on
  const { fetchForecast } = await import('./fetch-forecast.ts');
  const answer = await fetchForecast({ server: server.address, asked, now: Date.now(), signal });
  if (answer.kind === 'called off') return 'called off';
  if (answer.kind === 'refused') return answer.why;
  const { from, ...hours } = answer.hours;
  const outcome = await bookClient.run('keepForecast', {
    place: id,
    source: server.name,
    askedLatitude_deg: asked.latitude_deg,
    askedLongitude_deg: asked.longitude_deg,
    from: new Date(from).toISOString(),
    ...hours,
  });
  return outcome.kind === 'refused' ? `${outcome.where}: ${outcome.wrong}` : null;
}

/** Asks by itself, while it is on, when a forecast is missing or has grown old. */
export function useFreshForecasts(book: Book, readOnly: boolean): void {
  const { on } = useForecastChoice();
  const due =
    on &&
    !readOnly &&
    placesAsked(book, Date.now()).some(({ id }) => {
      const known = forecastOf(book, id);
      return known === null || Date.now() - Date.parse(known.taken) > assumedFresh_ms;
    });
  useEffect(() => {
    if (due && Date.now() - lastAsked > rest_ms) void takeForecasts(book);
  }, [due, book]);
}
