/** A told sentence on the screen: each figure in it opens how it is worked out. */
import { createContext, type ReactNode, useContext } from 'react';
import { type FigureOf, type FigureWorking, lineInWords, type ToldLine, type WorkingRow } from '#reckoning';
import { Sheet } from '../../../parts/sheet.tsx';

/** Opens the working of a kind of figure. */
export const OpenWorking = createContext<(of: FigureOf) => void>(() => {});

export function ToldWords({
  line,
  className = 'battery-told',
}: {
  readonly line: ToldLine;
  readonly className?: string;
}) {
  const open = useContext(OpenWorking);
  if (typeof line === 'string') return <p className={className}>{line}</p>;
  const parts: ReactNode[] = line.map((part, i) => {
    const before = line[i - 1];
    // what closes after a figure stays on its line
    if (typeof part === 'string') return typeof before === 'object' ? part.slice(closing(part).length) : part;
    const after = line[i + 1];
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: a part is its place in the sentence
      <span key={i} className="battery-figure-on">
        <button
          type="button"
          className="battery-figure prints"
          aria-label={`${part.figure}: how it is worked out`}
          onClick={() => open(part.of)}
        >
          {part.figure}
        </button>
        {typeof after === 'string' && closing(after)}
      </span>
    );
  });
  return <p className={className}>{parts}</p>;
}

const closing = (words: string) => /^[.,;:)]*/.exec(words)![0];

/** Sentences one under the other. */
export function ToldLines({ lines }: { readonly lines: readonly ToldLine[] }) {
  return lines.map((line) => <ToldWords key={lineInWords(line)} line={line} />);
}

const kindName: Readonly<Record<WorkingRow['kind'], string>> = {
  'goes in': 'Goes in',
  how: 'How',
  from: 'From',
  margin: 'How sure',
  'take care': 'Take care',
};

/** How one kind of figure is worked out, or all of them. */
export function WorkingSheet({
  workings,
  onClose,
}: {
  readonly workings: readonly FigureWorking[];
  readonly onClose: () => void;
}) {
  const [only] = workings;
  const one = workings.length === 1 && only !== undefined;
  return (
    <Sheet title={one ? only.title : 'How it is worked out'} onClose={onClose}>
      <div className="battery-working">
        {workings.map(({ of, title, rows }) => (
          <section key={of}>
            {!one && <h3>{title}</h3>}
            <Rows rows={rows} />
          </section>
        ))}
      </div>
    </Sheet>
  );
}

/** Rows of one kind stand together under its name. */
function Rows({ rows }: { readonly rows: readonly WorkingRow[] }) {
  const kinds = (Object.keys(kindName) as WorkingRow['kind'][]).filter((kind) => rows.some((row) => row.kind === kind));
  return (
    <dl>
      {kinds.map((kind) => (
        <div key={kind} data-kind={kind}>
          <dt>{kindName[kind]}</dt>
          {rows
            .filter((row) => row.kind === kind)
            .map(({ words }) => (
              <dd key={words}>{marked(words)}</dd>
            ))}
        </div>
      ))}
    </dl>
  );
}

/** What is recalled and what is assumed stands out: it is not looked up. */
const marked = (words: string): ReactNode[] =>
  words
    .split(/(from memory|our assumptions?|assumed)/)
    // biome-ignore lint/suspicious/noArrayIndexKey: a part is its place in the sentence
    .map((part, i) => (i % 2 === 1 ? <mark key={i}>{part}</mark> : part));
