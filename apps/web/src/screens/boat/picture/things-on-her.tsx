/** The picture as a list: the same things by their places, and fittings and zones to be placed or moved. */
import type { Book } from '#boat-book';
import { meaningName } from '../../../parts/mark.tsx';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import type { Moving } from './boat-picture.tsx';
import type { PinOnHer, RunOnHer, ThingOnHer } from './pins-on-her.ts';

export default function ThingsOnHer({
  book,
  pins,
  runs,
  nowhere,
  onMove,
}: {
  readonly book: Book;
  readonly pins: readonly PinOnHer[];
  readonly runs: readonly RunOnHer[];
  /** what is shown and has no place on her */
  readonly nowhere: readonly ThingOnHer[];
  readonly onMove: (what: Moving) => void;
}) {
  const along = [...pins].filter(({ things }) => things.length > 0).sort((a, b) => a.place.along - b.place.along);
  return (
    <div className="picture-list">
      {along.map((pin) => (
        <section key={pin.key} aria-label={pin.of.name}>
          <h3>{pin.of.name}</h3>
          <ul>
            {pin.things.map((thing) => (
              <ThingLine key={thing.key} thing={thing} />
            ))}
          </ul>
        </section>
      ))}
      {runs.length > 0 && (
        <section aria-label="Runs on her">
          <h3>Runs on her</h3>
          <ul>
            {runs.map((run) => (
              <ThingLine key={run.key} thing={run} />
            ))}
          </ul>
        </section>
      )}
      {nowhere.length > 0 && (
        <section aria-label="Has no place on her">
          <h3>Has no place on her</h3>
          <ul>
            {nowhere.map((thing) => (
              <ThingLine key={thing.key} thing={thing} />
            ))}
          </ul>
        </section>
      )}
      <section className="no-print" aria-label="Fittings and zones to place">
        <h3>Fittings and zones to place</h3>
        <ul>
          {Object.entries(book.fittings)
            .sort(([, a], [, b]) => Number(Boolean(a.spot)) - Number(Boolean(b.spot)) || a.name.localeCompare(b.name))
            .map(([id, { name, zone, spot }]) => (
              <MarkedLine
                key={id}
                title={name}
                note={`${book.zones[zone]?.name ?? ''}${spot ? '' : ': not placed yet'}`}
                figure={
                  <button
                    type="button"
                    className="words"
                    aria-label={`${spot ? 'Move' : 'Place'} the fitting: ${name}`}
                    onClick={() => onMove({ kind: 'fitting', id })}
                  >
                    {spot ? 'Move' : 'Place'}
                  </button>
                }
              />
            ))}
          {Object.entries(book.zones).map(([id, { name }]) => (
            <MarkedLine
              key={id}
              title={name}
              note="zone"
              figure={
                <button
                  type="button"
                  className="words"
                  aria-label={`Move the zone: ${name}`}
                  onClick={() => onMove({ kind: 'zone', id })}
                >
                  Move
                </button>
              }
            />
          ))}
        </ul>
      </section>
    </div>
  );
}

function ThingLine({ thing: { meaning, title, href } }: { readonly thing: ThingOnHer }) {
  return <MarkedLine mark={meaning} said={meaning ? meaningName[meaning] : ''} href={href} title={title} />;
}
