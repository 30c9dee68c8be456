/**
 * Whether this device may ask for a forecast, and whom: a choice of the device, never of the book, so that nobody's
 * phone asks because another's was told to. Off until it is turned on.
 *
 * `index.html` reads the same key before anything is loaded and lets the page reach that server and no other; so what
 * was turned on counts from the next load, and what was turned off at once.
 */
import { useSyncExternalStore } from 'react';
import { forecastServer, serverFrom } from '#forecast';

/** the address asked while it is on; missing: off */
const onKey = 'fettle-forecast-on';
/** a server of the keeper's own */
const serverKey = 'fettle-forecast-server';
const listeners = new Set<() => void>();

/** The server whose forecasts are asked for: as the keeper named it, or the open service. */
export interface ForecastServer {
  readonly address: string;
  readonly host: string;
  /** what it is called beside a forecast */
  readonly name: string;
  /** a server of the keeper's own, not the open service */
  readonly own: boolean;
}

function serverOf(typed: string | null): ForecastServer {
  const read = typed === null || typed === '' ? null : serverFrom(typed);
  const { address, host } =
    read?.kind === 'server' ? read : { address: forecastServer.address, host: new URL(forecastServer.address).host };
  const own = address !== forecastServer.address;
  return { address, host, name: own ? host : forecastServer.name, own };
}

/** The server that may be asked; null: none, it is off. */
export function serverAllowed(): ForecastServer | null {
  const on = localStorage.getItem(onKey);
  return on === null || serverFrom(on).kind === 'refused' ? null : serverOf(on);
}

export function turnOn(server: ForecastServer): void {
  localStorage.setItem(onKey, server.address);
  tell();
}

/** Nothing is asked from now on, and the page can reach no server but its own, without a new load. */
export function turnOff(): void {
  localStorage.removeItem(onKey);
  const policy = document.createElement('meta');
  policy.httpEquiv = 'Content-Security-Policy';
  policy.content = "connect-src 'self' blob:";
  document.head.append(policy);
  tell();
}

/** Names the server to ask when it is next turned on; another server is never asked by a consent given for this one. */
export function chooseServer(address: string): void {
  if (address === forecastServer.address) localStorage.removeItem(serverKey);
  else localStorage.setItem(serverKey, address);
  tell();
}

export function useForecastChoice(): { readonly on: boolean; readonly server: ForecastServer } {
  const kept = useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => `${localStorage.getItem(onKey) ?? ''} ${localStorage.getItem(serverKey) ?? ''}`,
  );
  const [on = '', named = ''] = kept.split(' ');
  const allowed = on === '' ? null : serverAllowed();
  return { on: allowed !== null, server: allowed ?? serverOf(named) };
}

function tell(): void {
  for (const listener of listeners) listener();
}
