/** On the plan: whose forecast its weather is by, how old, and that the last asking went wrong. */
import { memo } from 'react';
import type { Book } from '#boat-book';
import { forecastOf } from '#reckoning';
import { useOfBook } from '../../../offline/use-book.ts';
import { ForecastCredit } from './forecast-credit.tsx';
import { placesAsked } from './places-asked.ts';
import { useFreshForecasts, useTaking } from './taking.ts';

export const PlanForecast = memo(function PlanForecast({ book }: { readonly book: Book }) {
  const readOnly = useOfBook('readOnly');
  const { troubles } = useTaking();
  useFreshForecasts(book, readOnly !== null);
  return placesAsked(book, Date.now()).map(({ id }) => {
    const forecast = forecastOf(book, id);
    const trouble = troubles[id];
    if (forecast === null && trouble === undefined) return null;
    return (
      <p key={id} className="small soft">
        {forecast && <ForecastCredit book={book} place={id} forecast={forecast} />}{' '}
        {trouble && <>No newer one: {trouble.why}. </>}
        <a className="no-print" href="#/days/weather">
          Weather ahead
        </a>
      </p>
    );
  });
});
