/** The tools: how many, where they are kept, who has borrowed one. */
import type { Book, Id } from '#boat-book';
import { keptInWords } from '#reckoning';
import { dateInWords } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';

export function ToolsList({
  book,
  today,
  onChange,
}: {
  readonly book: Book;
  readonly today: string;
  readonly onChange: (id: Id) => void;
}) {
  const tools = Object.entries(book.tools).sort(([, a], [, b]) => a.name.localeCompare(b.name));
  if (tools.length === 0)
    return <p className="soft">None yet. Two steps that want the same tool are not planned at once.</p>;
  return (
    <ul>
      {tools.map(([id, tool]) => {
        const kept = keptInWords(book.stowages, tool);
        const lent = tool.lent ?? null;
        return (
          <MarkedLine
            key={id}
            {...(lent === null ? {} : { mark: 'wait' as const, said: 'lent out' })}
            title={tool.name}
            note={
              <>
                {tool.count === 1 ? 'one' : tool.count}, {kept === null ? 'place not written down' : `kept ${kept}`}
                {lent !== null && (
                  <span className="stores-for">
                    {lent.count > 1 ? `${lent.count} lent` : 'Lent'} to {lent.to} since {dateInWords(lent.since, today)}
                    , {lent.back === null ? 'no day said for it to come back' : `back ${dateInWords(lent.back, today)}`}
                    .
                  </span>
                )}
              </>
            }
            figure={
              <button type="button" className="words" aria-label={`Change: ${tool.name}`} onClick={() => onChange(id)}>
                Change
              </button>
            }
          />
        );
      })}
    </ul>
  );
}
