/** What stands where the picture was touched: a fitting of the book, or a new one. */
import { useState } from 'react';
import type { Book, Id, Spot } from '#boat-book';
import type { PlaceOnBoat } from '#picture';
import { RefusalLine } from '../../../parts/form.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { useRun } from '../../../parts/use-run.ts';
import FittingSheet from '../fitting-sheet.tsx';

export default function PlaceThingSheet({
  book,
  place,
  onClose,
}: {
  readonly book: Book;
  readonly place: PlaceOnBoat;
  readonly onClose: () => void;
}) {
  const { run, refusal } = useRun();
  const [making, setMaking] = useState(false);
  const spot: Spot = {
    along: place.along,
    up: place.up,
    ...(place.across === undefined ? {} : { across: place.across }),
  };
  const near = nearestZone(book, place);
  const put = async (fitting: Id) => {
    const outcome = await run('placeFitting', { fitting, ...spot });
    if (outcome.kind === 'done') onClose();
  };
  if (making)
    return (
      <FittingSheet book={book} id={null} spot={spot} {...(near === null ? {} : { zone: near })} onClose={onClose} />
    );
  // those without a place first, and of those the ones of the zone that was touched
  const order = Object.entries(book.fittings).sort(
    ([, a], [, b]) =>
      Number(Boolean(a.spot)) - Number(Boolean(b.spot)) ||
      Number(b.zone === near) - Number(a.zone === near) ||
      a.name.localeCompare(b.name),
  );
  return (
    <Sheet title="What is here?" onClose={onClose}>
      <p className="soft">
        {near === null ? '' : `By ${book.zones[near]!.name}. `}A fitting that was placed before is moved here.
      </p>
      <RefusalLine refusal={refusal} />
      <p>
        <button type="button" className="main" onClick={() => setMaking(true)}>
          A fitting that is not in the book yet
        </button>
      </p>
      <ul className="picture-choose">
        {order.map(([id, { name, zone, spot: placed }]) => (
          <li key={id}>
            <button type="button" onClick={() => void put(id)}>
              <b>{name}</b>
              <span className="soft">
                {book.zones[zone]?.name}
                {placed ? ', placed elsewhere' : ''}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

/** The zone whose place is nearest, as the boat is long and high. */
function nearestZone(book: Book, { along, up }: PlaceOnBoat): Id | null {
  const { length_m: length, freeboard_m: freeboard } = book.boat;
  const off = ([, zone]: readonly [Id, Spot]) => Math.hypot((zone.along - along) * length, (zone.up - up) * freeboard);
  return Object.entries(book.zones).sort((a, b) => off(a) - off(b))[0]?.[0] ?? null;
}
