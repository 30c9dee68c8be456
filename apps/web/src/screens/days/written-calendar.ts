import type { Book } from '#boat-book';
import { calendarFile, calendarType } from '#calendar';
import { calendarEvents, givenIn } from '#reckoning';
import { givenBefore, keepGiven } from './given-calendar.ts';

/** The calendar file of a book, and how many entries it has that are not called off, and that are. */
export function writtenCalendar(book: Book, now: number) {
  const events = calendarEvents(book, now, givenBefore(book.id));
  const off = events.filter((event) => event.off).length;
  return {
    text: calendarFile({ name: book.boat.name, made: now, events }),
    type: calendarType,
    events: events.length - off,
    off,
    /** it was given out: what it had is kept, so that a later file can take it back */
    given: () => keepGiven(book.id, givenIn(events, now)),
  };
}
