/** The thing that was taken in hand: its place and its mass to try out. */
import type { Book, Id } from '#boat-book';
import { kgSaid, type LoadChange, placeAlong, type TrailerTold } from '#reckoning';
import { SliderField } from '../../../parts/slider-field.tsx';

export function ThingPanel({
  book,
  load,
  selected,
  onTry,
  onOpen,
}: {
  readonly book: Book;
  readonly load: TrailerTold['load'];
  readonly selected: Id | null;
  readonly onTry: (carried: Id, change: LoadChange[string]) => void;
  readonly onOpen: (carried: Id) => void;
}) {
  const thing = load.standings.find(({ carried }) => carried !== null && carried === selected);
  if (!thing?.carried)
    return (
      <p className="trailer-hint no-print">
        Take a mark or a line of the table in hand to try out another place or another mass.
      </p>
    );
  const { carried, name, ahead_m, moves, mass } = thing;
  const kept = book.carried[carried];
  const most = Math.max(2 * (kept?.mass.likely_kg ?? 0), (kept?.mass.likely_kg ?? 0) + 50, mass.likely_kg);
  return (
    <section className="trailer-thing no-print" aria-labelledby="trailer-thing">
      <h2 id="trailer-thing">{name}</h2>
      {moves ? (
        <SliderField
          label="Its place"
          said={placeAlong(ahead_m)}
          value={ahead_m}
          min={moves.aftmost_m}
          max={moves.foremost_m}
          step={0.01}
          onChange={(value) => onTry(carried, { ahead_m: value })}
        />
      ) : (
        <p className="soft">
          It stands {placeAlong(ahead_m)}, and stays there: how far it can be moved is not entered.
        </p>
      )}
      <SliderField
        label="Its mass"
        said={kgSaid(mass.likely_kg)}
        value={mass.likely_kg}
        min={0}
        max={most}
        step={mass.likely_kg < 20 ? 0.1 : 1}
        onChange={(value) => onTry(carried, { likely_kg: value })}
      />
      <p>
        <button type="button" className="words" aria-label={`Change: ${name}`} onClick={() => onOpen(carried)}>
          Change what is said of it
        </button>
      </p>
    </section>
  );
}
