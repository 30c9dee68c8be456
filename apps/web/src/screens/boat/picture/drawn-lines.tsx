/** Lines of a drawing of the boat on the screen: as wide at any size, hidden ones dashed, filled ones over what lies behind. */
import type { ReactNode } from 'react';
import { type Line, pathOf } from '#picture';
import './drawn-lines.css';

export function DrawnLines({
  lines,
  transform,
  children,
}: {
  readonly lines: readonly Line[];
  /** from metres, x aft and y up, to the drawing's own units */
  readonly transform: string;
  readonly children?: ReactNode;
}) {
  return (
    <g transform={transform} className="drawn">
      {lines.map((line) => (
        <path
          key={line.part}
          d={pathOf(line)}
          data-part={line.part}
          className={`drawn-${line.weight}`}
          data-filled={line.filled || undefined}
        />
      ))}
      {children}
    </g>
  );
}
