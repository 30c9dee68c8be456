/** A term of the trade in the text of a screen: a tap of it says what it means. */
import { Fragment, type ReactNode, Suspense, useState } from 'react';
import { onDemand } from '../on-demand.ts';
import './term.css';
import type { TermName } from './term-names.ts';

const TermSheet = onDemand(() => import('./term-sheet.tsx'));

export function Term({ of, children }: { readonly of: TermName; readonly children?: ReactNode }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        className="term"
        aria-haspopup="dialog"
        title={`What is meant by ${of}`}
        onClick={() => setOpen(true)}
      >
        {children ?? of}
      </button>
      {open && (
        <Suspense fallback={null}>
          <TermSheet of={of} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}

/** A text with the first of each of the terms in it to be tapped. */
export function WithTerms({ text, terms }: { readonly text: string; readonly terms: readonly TermName[] }) {
  // the longest first: 'ball load' before 'ball'
  const found = [...terms]
    .sort((a, b) => b.length - a.length)
    .flatMap((of) => {
      const match = new RegExp(`\\b${of.replace('-', '[- ]')}s?\\b`, 'i').exec(text);
      return match ? [{ of, from: match.index, to: match.index + match[0].length }] : [];
    })
    .sort((a, b) => a.from - b.from)
    .filter(({ from }, i, all) => all.slice(0, i).every(({ to }) => to <= from));
  return (
    <>
      {found.map(({ of, from, to }, i) => (
        <Fragment key={of}>
          {text.slice(found[i - 1]?.to ?? 0, from)}
          <Term of={of}>{text.slice(from, to)}</Term>
        </Fragment>
      ))}
      {text.slice(found.at(-1)?.to ?? 0)}
    </>
  );
}
