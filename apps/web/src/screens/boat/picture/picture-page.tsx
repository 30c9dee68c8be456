/** The picture on a page of its own, with what stands on her as a list; printed black on white. */
import { BelowHeading } from '../../../parts/below-heading.tsx';
import { todayAt } from '../../../reading/today.ts';
import { useOpenBook } from '../../../reading/use-open-book.ts';
import { address } from '../../../shell/route.ts';
import { BoatPicture } from './boat-picture.tsx';

export default function PicturePage() {
  const book = useOpenBook();
  const today = todayAt(book);
  return (
    <div className="boat picture-page">
      <p className="boat-back no-print">
        <a className="button words" href={address('boat')}>
          ‹ Boat
        </a>
      </p>
      <h1>Picture of {book.boat.name}</h1>
      <BelowHeading>
        <p className="no-print">
          <button type="button" onClick={() => print()}>
            Print it as it is drawn now
          </button>
        </p>
        <BoatPicture book={book} today={today} page />
      </BelowHeading>
    </div>
  );
}
