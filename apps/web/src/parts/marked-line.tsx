/** A line of a list: a mark, what it is, what there is to know about it, and a figure at the right. */
import type { ReactNode } from 'react';
import { Mark, type Meaning } from './mark.tsx';
import './marked-line.css';

export function MarkedLine({
  mark,
  said,
  href,
  title,
  note,
  figure,
  children,
}: {
  /** null: none, but in line with others that have one; left out: no column for it */
  readonly mark?: Meaning | null;
  /** the mark's word, for screen readers; leave out where the word stands in the text */
  readonly said?: string;
  readonly href?: string;
  readonly title: ReactNode;
  readonly note?: ReactNode;
  readonly figure?: ReactNode;
  readonly children?: ReactNode;
}) {
  const words = (
    <>
      {mark !== undefined && (
        <span className="line-mark">{mark && (said ? <Mark of={mark} said={said} /> : <Mark of={mark} />)}</span>
      )}
      <span className="line-words">
        <b className="line-title">{title}</b>
        {note && <span className="line-note">{note}</span>}
      </span>
      {figure && <span className="line-figure">{figure}</span>}
    </>
  );
  return (
    <li className="line">
      {href ? (
        <a className="line-row" href={href}>
          {words}
        </a>
      ) : (
        <div className="line-row">{words}</div>
      )}
      {children && <div className={mark === undefined ? 'line-more' : 'line-more line-under'}>{children}</div>}
    </li>
  );
}
