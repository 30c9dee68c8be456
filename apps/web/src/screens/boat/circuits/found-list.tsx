/** What was found at a battery's circuits, the gravest first, each with what would be right and what to do about it. */
import type { Book, Id } from '#boat-book';
import type { CircuitTold, Finding } from '#reckoning';
import type { Meaning } from '../../../parts/mark.tsx';
import { MarkedLine } from '../../../parts/marked-line.tsx';
import { MendButton } from './mend-button.tsx';

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
        <MarkedLine
          key={`${circuit.place.kind} ${circuit.place.id}`}
          {...markOf(circuit)}
          title={circuit.name}
          note={circuit.findings.map(({ wrong, right }) => (right ? `${wrong} ${right}` : wrong)).join(' ')}
        >
          {mendings(circuit.findings).map((finding) => (
            <MendButton
              key={finding.mend}
              book={book}
              name={circuit.name}
              finding={finding}
              zone={zoneOf(book, circuit)}
            />
          ))}
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
        </MarkedLine>
      ))}
      {sound.length > 0 && (
        <MarkedLine mark="go" title="Nothing wrong found" note={sound.map(({ name }) => name).join(', ')} />
      )}
    </ul>
  );
}

/** One finding for each thing that can be done: two faults of one wire are mended by one new wire. */
const mendings = (findings: readonly Finding[]) =>
  findings.filter(({ mend }, i) => mend !== null && findings.findIndex((other) => other.mend === mend) === i);

const zoneOf = (book: Book, { place }: CircuitTold): Id | null =>
  place.kind === 'circuit' ? (book.circuits[place.id]?.zone ?? null) : null;

const gravities = ['danger', 'worse', 'unknown'] as const;
const gravest = ({ findings }: CircuitTold) =>
  gravities.find((gravity) => findings.some((finding) => finding.gravity === gravity));
const rank = (circuit: CircuitTold) => gravities.indexOf(gravest(circuit) ?? 'unknown');

function markOf(circuit: CircuitTold): { readonly mark: Meaning | null; readonly said?: string } {
  const gravity = gravest(circuit);
  if (gravity === undefined || gravity === 'unknown') return { mark: null };
  return gravity === 'danger' ? { mark: 'danger', said: 'can burn' } : { mark: 'worsens', said: 'fault' };
}
