/** Days: the plan, the job days it is laid into, and on the day itself the step in hand. */
import { lazy, Suspense } from 'react';
import { localAt } from '#units';
import { zoneOf } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { useRoute } from '../../shell/route.ts';
import './days.css';
import { PlanPage } from './plan-page.tsx';

const DayPage = lazy(() => import('./day-page.tsx'));
const NowPage = lazy(() => import('./now-page.tsx'));
const SheetPage = lazy(() => import('./sheet-page.tsx'));
const CarryPage = lazy(() => import('./carry-page.tsx'));
const WeatherAhead = lazy(() => import('./weather-ahead.tsx'));

export default function DaysScreen() {
  const [page, id, part] = useRoute().rest;
  const book = useOpenBook();
  return <Suspense fallback={null}>{pageOf(page, id, part, isJobDayNow(book))}</Suspense>;
}

function pageOf(page: string | undefined, id: string | undefined, part: string | undefined, onTheDay: boolean) {
  if (page === 'day' && id !== undefined) return <DayPage key={`${id}-${part}`} id={id} at={part ?? null} />;
  if (page === 'sheet' && id !== undefined) return <SheetPage key={id} id={id} />;
  if (page === 'carry' && id !== undefined) return <CarryPage key={id} id={id} />;
  if (page === 'weather') return <WeatherAhead />;
  if (page === 'now' || (page === undefined && onTheDay)) return <NowPage />;
  return <PlanPage />;
}

/** True within the hours of a job day: Days then opens on the step in hand. */
function isJobDayNow(book: ReturnType<typeof useOpenBook>): boolean {
  return Object.values(book.jobDays).some((day) => {
    const { day: today, clock } = localAt(Date.now(), book.places[day.place]?.timeZone ?? zoneOf(book));
    return day.date === today && day.from <= clock && clock < day.to;
  });
}
