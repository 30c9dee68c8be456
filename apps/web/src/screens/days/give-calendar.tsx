/** Job days, steps, waits, outings and what falls due as a file for the device's own calendar. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import { fileNameOf, giveFile } from '../../parts/give-file.ts';
import { countInWords } from '../../parts/in-words.ts';

export function GiveCalendar({ book }: { readonly book: Book }) {
  const [told, setTold] = useState('');
  const give = async () => {
    // made only when it is asked for: it is not in the first load
    const { writtenCalendar } = await import('./written-calendar.ts');
    const { text, type, events, off, given } = writtenCalendar(book, Date.now());
    if (events + off === 0) {
      setTold('Nothing is ahead: no job day, no plan, no outing, and nothing falls due.');
      return;
    }
    giveFile(text, `${fileNameOf(book.boat.name)}.ics`, type);
    given();
    setTold(
      `${countInWords(events, 'entry', 'entries')} written${off === 0 ? '' : `, ${off} called off`}. Open the file with your calendar.`,
    );
  };
  return (
    <section className="no-print" aria-labelledby="give-calendar">
      <h2 id="give-calendar">For your calendar</h2>
      <p>
        Job days, the plan’s steps, when each wait is over, outings, and what falls due. Take it in again after a
        change: what moved is moved, what is no more is called off, nothing is doubled.
      </p>
      <button type="button" onClick={() => void give()}>
        Save the calendar file
      </button>
      <p role="status">{told}</p>
    </section>
  );
}
