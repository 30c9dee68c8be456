/** Whose forecast stands here, of when and how old: beside every place it is shown, as its licence asks. */
import type { Book, ForecastRecord, Id } from '#boat-book';
import { forecastServer } from '#forecast';
import { takenInWords, untilInWords } from './forecast-in-words.ts';

export function ForecastCredit({
  book,
  place,
  forecast,
}: {
  readonly book: Book;
  readonly place: Id;
  readonly forecast: ForecastRecord;
}) {
  const zone = book.places[place]!.timeZone;
  const now = Date.now();
  return (
    <>
      Forecast for {book.places[place]!.name} {takenInWords(forecast, zone, now)}, {untilInWords(forecast, zone, now)}:{' '}
      <Source name={forecast.source} />, made into hours by Fettle.
    </>
  );
}

function Source({ name }: { readonly name: string }) {
  if (name !== forecastServer.name) return <>from your server {name}</>;
  return (
    <>
      weather data by{' '}
      <a href={forecastServer.site} target="_blank" rel="noreferrer">
        {forecastServer.name}
      </a>{' '}
      (
      <a href={forecastServer.licenceSite} target="_blank" rel="noreferrer">
        {forecastServer.licence}
      </a>
      )
    </>
  );
}
