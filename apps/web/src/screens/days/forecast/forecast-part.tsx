/** The forecast of a place on the page of the weather ahead: on or off, how old, what went wrong, and its settings. */
import { useState } from 'react';
import type { Book, Id } from '#boat-book';
import { forecastOf } from '#reckoning';
import { localAt } from '#units';
import { useOfBook } from '../../../offline/use-book.ts';
import { onDemand } from '../../../parts/on-demand.tsx';
import { useForecastChoice } from './forecast-choice.ts';
import { ForecastCredit } from './forecast-credit.tsx';
import './forecast.css';
import { callOff, takeForecasts, useFreshForecasts, useTaking } from './taking.ts';

const ForecastSheet = onDemand(() => import('./forecast-sheet.tsx'));

export function ForecastPart({ book, place }: { readonly book: Book; readonly place: Id }) {
  const { on, server } = useForecastChoice();
  const readOnly = useOfBook('readOnly');
  const { asking, troubles } = useTaking();
  const [open, setOpen] = useState(false);
  useFreshForecasts(book, readOnly !== null);
  const forecast = forecastOf(book, place);
  const trouble = troubles[place];
  const zone = book.places[place]!.timeZone;
  return (
    <>
      <section className="days-weather" aria-labelledby="days-forecast">
        <h2 id="days-forecast">Forecast from the network</h2>
        <p>
          {on
            ? `On: ${server.host} is asked when you look at the days and the forecast is over 3 hours old.`
            : 'Off: nothing is asked, and nothing leaves this device.'}
        </p>
        {forecast && (
          <p>
            <ForecastCredit book={book} place={place} forecast={forecast} />
          </p>
        )}
        <div role="status" className="forecast-trouble">
          {asking && <p>Asking {server.host}…</p>}
          {!asking && on && trouble && (
            <p>
              Not taken at {localAt(trouble.at, zone).clock}: {trouble.why}.{' '}
              {forecast ? 'The forecast above is kept.' : 'There is no forecast yet; what you enter by hand counts.'}
            </p>
          )}
        </div>
        <div className="days-row">
          {on && !asking && readOnly === null && (
            <button type="button" onClick={() => void takeForecasts(book)}>
              Ask now
            </button>
          )}
          {asking && (
            <button type="button" onClick={callOff}>
              Call it off
            </button>
          )}
          <button type="button" onClick={() => setOpen(true)}>
            {on ? 'Turn it off, or change it' : 'What turning it on sends'}
          </button>
        </div>
      </section>
      {open && <ForecastSheet book={book} onClose={() => setOpen(false)} />}
    </>
  );
}
