/** A list that shows its first lines; the rest is folded under a line that says how many they are and how bad. */
import type { ReactNode } from 'react';
import './folded-list.css';

/** So many are read at a glance. */
const shown = 5;

export function FoldedList<Item>({
  items,
  of: line,
  rest,
  ordered = false,
  className,
}: {
  readonly items: readonly Item[];
  /** a list item with a key */
  readonly of: (item: Item) => ReactNode;
  /** what is folded away, in words */
  readonly rest: (items: readonly Item[]) => string;
  readonly ordered?: boolean;
  readonly className?: string;
}) {
  const List = ordered ? 'ol' : 'ul';
  // one alone is not worth a fold
  const first = items.length <= shown + 1 ? items : items.slice(0, shown);
  const folded = items.slice(first.length);
  return (
    <>
      <List className={className}>{first.map(line)}</List>
      {folded.length > 0 && (
        <details>
          <summary className="folded-rest">{rest(folded)}</summary>
          <List className={className} {...(ordered && { start: first.length + 1 })}>
            {folded.map(line)}
          </List>
        </details>
      )}
    </>
  );
}
