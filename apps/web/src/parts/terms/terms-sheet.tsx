/** What terms mean, from the glossary: one that was tapped, or those of a page, and all there are. */
import { capital } from '../in-words.ts';
import { Sheet } from '../sheet.tsx';
import { type GlossaryRow, glossary, rowsOf } from './glossary.ts';

interface Asked {
  /** a word that was tapped, or all those of a page */
  readonly asked: string | readonly string[];
  readonly onClose: () => void;
}

export default function TermsSheet({ asked, onClose }: Asked) {
  const one = typeof asked === 'string';
  const rows = one ? rowsOf(asked) : byWord([...new Set(asked.flatMap(rowsOf))]);
  return (
    <Sheet title={one ? `What is meant by ${asked}` : 'Words on this page'} onClose={onClose}>
      <div className="terms-told">
        <Told rows={rows} />
        {!one && (
          <details>
            <summary>The whole glossary: {glossary.length} entries</summary>
            <Told rows={byWord(glossary)} />
          </details>
        )}
      </div>
    </Sheet>
  );
}

function Told({ rows }: { readonly rows: readonly GlossaryRow[] }) {
  return (
    <dl>
      {rows.map(({ words, meaning }) => (
        <div key={`${words} ${meaning}`}>
          <dt>{capital(words.join(', '))}</dt>
          <dd>{capital(meaning)}.</dd>
        </div>
      ))}
    </dl>
  );
}

const byWord = (rows: readonly GlossaryRow[]) => rows.toSorted((a, b) => a.words[0]!.localeCompare(b.words[0]!));
