import type { Book, Id } from '#boat-book';
import { Sheet } from '../../parts/sheet.tsx';
import './days.css';
import { HoldPart } from './hold-part.tsx';
import { usePlan } from './planner.ts';

/** Holding a job, from its own page: the plan is made or taken up so that the cost can be told. */
export default function HoldSheet({
  book,
  job,
  onClose,
}: {
  readonly book: Book;
  readonly job: Id;
  readonly onClose: () => void;
}) {
  const inHand = usePlan(book);
  return (
    <Sheet title={book.jobs[job]?.title ?? 'Hold'} onClose={onClose}>
      {inHand.problem === null ? (
        <p>{inHand.words ?? 'Making the plan.'}</p>
      ) : (
        <HoldPart book={book} job={job} inHand={inHand} />
      )}
    </Sheet>
  );
}
