/** What charges a battery: its panels and its chargers, each with what is known of it. */
import type { Book, Id } from '#boat-book';
import { MarkedLine } from '../../../parts/marked-line.tsx';

/** The sheet that is asked for: of a panel or a charger; null: a new one. */
export interface ChargingSheet {
  readonly of: 'panel' | 'charger';
  readonly id: Id | null;
}

export function ChargingPart({
  book,
  battery,
  onOpen,
}: {
  readonly book: Book;
  readonly battery: Id;
  readonly onOpen: (sheet: ChargingSheet) => void;
}) {
  const panels = Object.entries(book.panels).filter(([, panel]) => panel.battery === battery);
  const chargers = Object.entries(book.chargers).filter(([, charger]) => charger.battery === battery);
  return (
    <section>
      <h2>What charges it</h2>
      {panels.length + chargers.length === 0 && (
        <p className="soft">Nothing is in the book: no charge is counted to come in.</p>
      )}
      <ul>
        {panels.map(([id, { name, peak_W, regulator, tilt_deg, heading_deg, kept_pct, fuse_A }]) => (
          <MarkedLine
            key={id}
            title={name}
            note={[
              `panel, ${peak_W} W`,
              tilt_deg === 0 ? 'level' : `tilted ${tilt_deg}° towards ${heading_deg}°`,
              regulator === 'none' ? 'no regulator' : `${regulator} regulator`,
              kept_pct === null ? 'shade not said' : `${kept_pct} % of the sun gets to it`,
              fuseInWords(fuse_A),
            ].join(' · ')}
            figure={<Change name={`panel: ${name}`} onClick={() => onOpen({ of: 'panel', id })} />}
          />
        ))}
        {chargers.map(([id, { name, kind, amps, volts_max, hours_a_day, fuse_A }]) => (
          <MarkedLine
            key={id}
            title={name}
            note={[
              kind === 'mains' ? 'on the mains' : 'on the outboard',
              `${amps} A to ${volts_max} V`,
              hours_a_day === undefined || hours_a_day === null
                ? 'not counted in the nights ahead'
                : `${hours_a_day} h a day aboard`,
              fuseInWords(fuse_A),
            ].join(' · ')}
            figure={<Change name={`charger: ${name}`} onClick={() => onOpen({ of: 'charger', id })} />}
          />
        ))}
      </ul>
      {chargers.some(([, { kind }]) => kind === 'mains') && (
        <p className="soft small">Shore power and its wiring are for a licensed person.</p>
      )}
      <div className="boat-acts">
        <button type="button" className="words" onClick={() => onOpen({ of: 'panel', id: null })}>
          Add a panel
        </button>
        <button type="button" className="words" onClick={() => onOpen({ of: 'charger', id: null })}>
          Add a charger
        </button>
      </div>
    </section>
  );
}

/** The fuse at the battery’s end of a lead. */
function fuseInWords(fuse_A: number | null | undefined): string {
  if (fuse_A === undefined) return 'fuse not said';
  return fuse_A === null ? 'no fuse at the battery' : `fuse ${fuse_A} A`;
}

function Change({ name, onClick }: { readonly name: string; readonly onClick: () => void }) {
  return (
    <button type="button" className="words" aria-label={`Change the ${name}`} onClick={onClick}>
      Change
    </button>
  );
}
