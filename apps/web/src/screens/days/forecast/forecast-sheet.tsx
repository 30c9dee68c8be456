/** What a forecast from the network sends, to whom, and the switch for it. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import { forecastServer, serverFrom } from '#forecast';
import { bookClient } from '../../../offline/book-client.ts';
import { Sheet } from '../../../parts/sheet.tsx';
import { TextField } from '../../../parts/text-fields.tsx';
import { chooseServer, turnOff, turnOn, useForecastChoice } from './forecast-choice.ts';
import { placesAsked, roundedInWords } from './places-asked.ts';
import { callOff } from './taking.ts';
import './forecast.css';

export default function ForecastSheet({ book, onClose }: { readonly book: Book; readonly onClose: () => void }) {
  const { on, server } = useForecastChoice();
  const places = placesAsked(book, Date.now());
  const [typed, setTyped] = useState(server.address);
  const [wrong, setWrong] = useState<string | null>(null);
  const allow = async () => {
    const read = serverFrom(typed);
    if (read.kind === 'refused') {
      setWrong(`${read.wrong}. Right would be ${read.right}.`);
      return;
    }
    chooseServer(read.address);
    const own = read.address !== forecastServer.address;
    turnOn({ address: read.address, host: read.host, name: own ? read.host : forecastServer.name, own });
    // the page may reach that server from its next load on; what is in hand is written first
    await bookClient.flush();
    location.reload();
  };
  const host = hostOf(typed) ?? server.host;
  return (
    <Sheet title="Forecast from the network" onClose={onClose}>
      {on && <p>It is on, and asks {server.host}.</p>}
      <h3>What is sent</h3>
      {places.length === 0 ? (
        <p>Nothing yet: there is no place in the book.</p>
      ) : (
        <ul className="forecast-places">
          {places.map(({ id, name, asked, within_km }) => (
            <li key={id}>
              <b>{roundedInWords(asked)}</b> for {name}: rounded to a tenth of a degree, up to {Math.ceil(within_km)} km
              from the true place.
            </li>
          ))}
        </ul>
      )}
      <p>
        Nothing else of the boat, the jobs or you. As with everything asked over a network, {host} also sees the network
        address you have just then, the kind of browser, and at which address Fettle was opened.
      </p>
      <h3>To whom</h3>
      <p>
        {host}
        {typed.trim() === forecastServer.address && (
          <>
            , an open service without a key, free for use without gain: it reads the forecasts of the national weather
            services.{' '}
            <a href={forecastServer.site} target="_blank" rel="noreferrer">
              {forecastServer.name}
            </a>
            , data under{' '}
            <a href={forecastServer.licenceSite} target="_blank" rel="noreferrer">
              {forecastServer.licence}
            </a>
          </>
        )}
        .
      </p>
      <h3>What comes of it</h3>
      <p>
        Wind, air, humidity, rain and its chance by the hour, nine days ahead, for the plan and its odds. What you enter
        by hand goes before it. The last good forecast is kept, with its age; a reply that is not right is refused
        whole.
      </p>
      <details className="forecast-server">
        <summary>Another server</summary>
        <TextField
          label="Address of the server"
          note={`One that answers in the same form, on this device or yours. The open service is ${forecastServer.address}.`}
          value={typed}
          onChange={(text) => {
            setTyped(text);
            setWrong(null);
          }}
          refused={wrong}
        />
        {typed !== forecastServer.address && (
          <p>
            <button type="button" className="words" onClick={() => setTyped(forecastServer.address)}>
              Back to the open service
            </button>
          </p>
        )}
      </details>
      <div className="sheet-foot">
        {(!on || typed.trim() !== server.address) && (
          <button type="button" className="main" disabled={places.length === 0} onClick={() => void allow()}>
            Send the rounded place{places.length === 1 ? '' : 's'} to {host}
          </button>
        )}
        {on && (
          <button
            type="button"
            onClick={() => {
              callOff();
              turnOff();
              onClose();
            }}
          >
            Turn it off
          </button>
        )}
      </div>
    </Sheet>
  );
}

function hostOf(typed: string): string | null {
  const read = serverFrom(typed);
  return read.kind === 'server' ? read.host : null;
}
