import type { Book } from '#boat-book';
import { calendarFile, calendarType } from '#calendar';
import { calendarEvents } from '#reckoning';

/** The calendar file of a book, and how many entries it has that are not called off. */
export function writtenCalendar(book: Book, now: number) {
  const events = calendarEvents(book, now);
  return {
    text: calendarFile({ name: book.boat.name, made: now, events }),
    type: calendarType,
    events: events.filter(({ off }) => !off).length,
  };
}
