/**
 * Asks a server for the forecast of a place: a few times at most, for a short while, for no more than fits. What comes
 * is read in `#forecast`; what goes wrong is told in plain words, and nothing else changes.
 */
import { forecastAddress, type ReadForecast, type RoundedPlace, readForecast, replyLimit_bytes } from '#forecast';

/** How long one asking may take, its reply included. [ms] */
const longest_ms = 10_000;
/** Between one asking and the next, where another may help: twice, no more. [ms] */
const pauses_ms = [1_000, 4_000] as const;

export interface Asking {
  /** address of the server */
  readonly server: string;
  readonly asked: RoundedPlace;
  /** epoch ms, by the clock of this device */
  readonly now: number;
  readonly signal?: AbortSignal;
  readonly timeout_ms?: number;
  readonly pause?: (ms: number) => Promise<void>;
}

export type FetchedForecast = ReadForecast | { readonly kind: 'called off' };

/** A reply, or why there is none; `again`: another asking may help. */
type Reply =
  | { readonly kind: 'reply'; readonly text: string }
  | { readonly kind: 'none'; readonly why: string; readonly again: boolean };

export async function fetchForecast({
  server,
  asked,
  now,
  signal,
  timeout_ms = longest_ms,
  pause = waited,
}: Asking): Promise<FetchedForecast> {
  const address = forecastAddress(server, asked);
  const host = new URL(server).host;
  for (let asking = 0; ; asking++) {
    const reply = await replyOf(address, host, signal, timeout_ms);
    if (signal?.aborted) return { kind: 'called off' };
    if (reply.kind === 'reply') return readForecast(reply.text, { asked, now });
    const before = pauses_ms[asking];
    if (!reply.again || before === undefined)
      return { kind: 'refused', why: asking === 0 ? reply.why : `${reply.why}; asked ${asking + 1} times` };
    await pause(before);
    if (signal?.aborted) return { kind: 'called off' };
  }
}

async function replyOf(
  address: string,
  host: string,
  signal: AbortSignal | undefined,
  timeout_ms: number,
): Promise<Reply> {
  const late = AbortSignal.timeout(timeout_ms);
  try {
    const response = await fetch(address, {
      signal: signal ? AbortSignal.any([signal, late]) : late,
      // nothing of this device goes along but what the address says
      credentials: 'omit',
      referrerPolicy: 'no-referrer',
      // what is asked of one server is not carried to another
      redirect: 'error',
      cache: 'no-store',
    });
    if (response.status === 429)
      return { kind: 'none', why: `${host} was asked too often today; ask again later`, again: false };
    if (response.status >= 500)
      return { kind: 'none', why: `${host} has trouble of its own (${response.status})`, again: true };
    // a refusal says why in the same form as a forecast
    const text = await textWithin(response);
    if (text === null)
      return { kind: 'none', why: `the reply is longer than ${replyLimit_bytes / 1000} kB`, again: false };
    if (!response.ok && !text.trimStart().startsWith('{'))
      return {
        kind: 'none',
        why: `${host} does not give forecasts at this address (${response.status})`,
        again: false,
      };
    return { kind: 'reply', text };
  } catch {
    return late.aborted
      ? { kind: 'none', why: `${host} did not answer within ${timeout_ms / 1000} seconds`, again: true }
      : { kind: 'none', why: `${host} could not be reached, or the connection broke off`, again: true };
  }
}

/** The text of a reply; null: longer than is read. What is too long is not taken in. */
async function textWithin({ body }: Response): Promise<string | null> {
  if (body === null) return '';
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let [text, bytes] = ['', 0];
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    bytes += part.value.byteLength;
    if (bytes > replyLimit_bytes) {
      await reader.cancel();
      return null;
    }
    text += decoder.decode(part.value, { stream: true });
  }
  return text + decoder.decode();
}

function waited(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
