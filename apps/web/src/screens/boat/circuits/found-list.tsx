/** What was found at a battery's circuits, the gravest first, each with what would be right and what to do about it. */
import type { Book, Id } from '#boat-book';
import type { CircuitTold } from '#reckoning';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { Findings } from './findings.tsx';
import { MendButtons } from './mend-buttons.tsx';

export function FoundList({
  book,
  circuits,
  onChange,
  onShow,
}: {
  readonly book: Book;
  readonly circuits: readonly CircuitTold[];
  readonly onChange: (circuit: CircuitTold) => void;
  readonly onShow: (circuit: CircuitTold) => void;
}) {
  const found = circuits.filter(({ findings }) => findings.length > 0).sort((a, b) => rank(a) - rank(b));
  const sound = circuits.filter(({ findings }) => findings.length === 0);
  return (
    <ul className="circuits-list">
      {found.map((circuit) => (
        <li key={`${circuit.place.kind} ${circuit.place.id}`} className="circuits-found">
          <h3>{circuit.name}</h3>
          <Findings findings={circuit.findings} />
          <div className="circuits-acts">
            <MendButtons book={book} name={circuit.name} findings={circuit.findings} zone={zoneOf(book, circuit)} />
            <button
              type="button"
              className="words"
              aria-label={`Change: ${circuit.name}`}
              onClick={() => onChange(circuit)}
            >
              Change
            </button>
            <button
              type="button"
              className="words"
              aria-label={`How it is worked out: ${circuit.name}`}
              onClick={() => onShow(circuit)}
            >
              How it is worked out
            </button>
          </div>
        </li>
      ))}
      {sound.length > 0 && (
        <MarkedLine mark="go" title="Nothing wrong found" note={sound.map(({ name }) => name).join(', ')} />
      )}
    </ul>
  );
}

const zoneOf = (book: Book, { place }: CircuitTold): Id | null =>
  place.kind === 'circuit' ? (book.circuits[place.id]?.zone ?? null) : null;

const gravities = ['danger', 'worse', 'unknown'] as const;
const gravest = ({ findings }: CircuitTold) =>
  gravities.find((gravity) => findings.some((finding) => finding.gravity === gravity));
const rank = (circuit: CircuitTold) => gravities.indexOf(gravest(circuit) ?? 'unknown');
