/** What went wrong with keeping the book, in words, until it is put away. */
import { useState } from 'react';

export function Troubles({ troubles }: { readonly troubles: readonly string[] }) {
  const [away, setAway] = useState<readonly string[]>([]);
  const open = troubles.filter((trouble) => !away.includes(trouble));
  if (open.length === 0) return null;
  return (
    <div className="shell-trouble" role="alert">
      <ul>
        {open.map((trouble) => (
          <li key={trouble}>
            <b>▲ </b>
            {trouble}
          </li>
        ))}
      </ul>
      <button type="button" className="words" onClick={() => setAway([...away, ...open])}>
        Put away
      </button>
    </div>
  );
}
