import { capital } from '../in-words.ts';
import { Sheet } from '../sheet.tsx';
import { meaningsOf } from './glossary.ts';
import type { TermName } from './term-names.ts';

/** What a term means, from the glossary. */
export default function TermSheet({ of, onClose }: { readonly of: TermName; readonly onClose: () => void }) {
  return (
    <Sheet title={capital(of)} onClose={onClose}>
      {meaningsOf(of).map((meaning) => (
        <p key={meaning}>{capital(meaning)}.</p>
      ))}
    </Sheet>
  );
}
