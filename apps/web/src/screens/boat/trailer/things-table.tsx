/** The table of what stands on the trailer: each thing with its mass, its place and what it adds to the ball. */
import type { Book, Id } from '#boat-book';
import { kgFigure, kgSaid, massOfCarried, placeAlong, type TrailerTold } from '#reckoning';
import { MarkedLine } from '../../../parts/marked-line.tsx';

export function ThingsTable({
  book,
  trailer,
  load,
  selected,
  onSelect,
  onOpen,
}: {
  readonly book: Book;
  readonly trailer: Id;
  readonly load: TrailerTold['load'];
  readonly selected: Id | null;
  readonly onSelect: (carried: Id) => void;
  readonly onOpen: (carried: Id) => void;
}) {
  const { standings, balance } = load;
  const atHome = Object.entries(book.carried).filter(([, thing]) => thing.trailer === trailer && !thing.aboard);
  return (
    <>
      <ol className="trailer-things">
        {standings.map(({ carried, name, mass, ahead_m, massFrom }, n) => {
          const words = (
            <>
              <span className="trailer-number">{n + 1}</span>
              <span className="trailer-words">
                <b>{name}</b>
                <span className="trailer-note">
                  {kgSaid(mass.likely_kg)}
                  {mass.low_kg === mass.high_kg ? '' : ` (${kgFigure(mass.low_kg)} to ${kgFigure(mass.high_kg)})`},{' '}
                  {massFrom}; {placeAlong(ahead_m)}
                </span>
              </span>
              <span className="trailer-share">{signed(balance.shares[n]?.ball_kg ?? 0)}</span>
            </>
          );
          return (
            <li key={carried ?? 'trailer'}>
              {carried === null ? (
                <div className="trailer-row">{words}</div>
              ) : (
                <button
                  type="button"
                  className="trailer-row prints"
                  aria-pressed={carried === selected}
                  onClick={() => onSelect(carried)}
                >
                  {words}
                </button>
              )}
            </li>
          );
        })}
      </ol>
      <p className="soft small">At the right: what it adds to the ball, or takes off it, by the table.</p>
      {atHome.length > 0 && (
        <>
          <h3>Left at home</h3>
          <ul>
            {atHome.map(([id, thing]) => (
              <MarkedLine
                key={id}
                title={thing.name}
                note={`${kgSaid(massOfCarried(book, thing).mass.likely_kg)}, ${placeAlong(thing.ahead_m)}`}
                figure={
                  <button
                    type="button"
                    className="words"
                    aria-label={`Change: ${thing.name}`}
                    onClick={() => onOpen(id)}
                  >
                    Change
                  </button>
                }
              />
            ))}
          </ul>
        </>
      )}
    </>
  );
}

const signed = (kg: number): string => `${kg > 0.05 ? '+' : ''}${kgSaid(kg)}`;
