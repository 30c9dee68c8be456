/** Days: the plan, the job days it is laid into, and on the day itself the step in hand. */
import { localAt } from '#units';
import { onDemand } from '../../parts/on-demand.tsx';
import { zoneOf } from '../../reading/today.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { OnePage } from '../../shell/one-page.tsx';
import type { ScreenProps } from '../../shell/route.ts';
import './days.css';
import { PlanPage } from './plan-page.tsx';

const DayPage = onDemand(() => import('./day-page.tsx'));
const NowPage = onDemand(() => import('./now-page.tsx'));
const SheetPage = onDemand(() => import('./sheet-page.tsx'));
const CarryPage = onDemand(() => import('./carry-page.tsx'));
const WeatherAhead = onDemand(() => import('./weather-ahead.tsx'));

export default function DaysScreen({ at }: ScreenProps) {
  const [page, id, part] = at.rest;
  const book = useOpenBook();
  return <OnePage>{pageOf(page, id, part, isJobDayNow(book))}</OnePage>;
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
