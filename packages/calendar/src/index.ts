export { type CalendarEvent, calendarFile, calendarType, versionOf } from './calendar-file.ts';
export { folded } from './content-line.ts';
