export { type CalendarEvent, calendarFile, calendarType } from './calendar-file.ts';
export { folded } from './content-line.ts';
