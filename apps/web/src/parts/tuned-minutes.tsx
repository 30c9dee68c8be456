/** What steps of this kind really took, and what it makes of the minutes written: before, after and how. */
import type { Book, Step } from '#boat-book';
import { tunedInWords, tunerOf } from '#reckoning';
import './tuned-minutes.css';

export function TunedMinutes({
  book,
  step,
}: {
  readonly book: Book;
  readonly step: Pick<Step, 'title' | 'minutes' | 'hands'>;
}) {
  const tuned = tunerOf(book)(step);
  const words = tunedInWords(step.title, tuned);
  if (words === null) return null;
  return (
    <details className="tuned-minutes">
      <summary>{words}</summary>
      {tuned.working.map((line) => (
        <p key={line} className="small">
          {line}
        </p>
      ))}
      <p className="small soft">
        How far few steps are believed is our assumption. The minutes written stay as they are; the planner counts with
        these.
      </p>
    </details>
  );
}
