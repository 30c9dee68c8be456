export {
  addDays,
  type Clock,
  clockOfMinute,
  type Day,
  dayNumber,
  daysBetween,
  isClock,
  isDay,
  minuteOfClock,
  type Weekday,
  weekday,
} from './day.ts';
export { type Instant, type Span, sharedSpan, span, spanMinutes } from './instant.ts';
export { instantAt, isTimeZone, localAt } from './zone-time.ts';
