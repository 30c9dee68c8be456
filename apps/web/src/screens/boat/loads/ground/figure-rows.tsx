/** Figures one under the other; a tap on one opens how it is worked out. */

import type { ReactNode } from 'react';
import { memo } from 'react';
import type { GroundFigure } from '#reckoning';
import { Sheet } from '../../../../parts/sheet.tsx';
import { WorkingParts } from '../../../../parts/working-parts.tsx';

export const FigureRows = memo(function FigureRows({
  figures,
  onOpen,
}: {
  readonly figures: readonly GroundFigure[];
  readonly onOpen: (of: GroundFigure['of']) => void;
}) {
  return (
    <ul className="ground-figures">
      {figures.map(({ of, title, figure, note }) => (
        <li key={of}>
          <button
            type="button"
            className="prints"
            aria-label={`${title}: ${figure}. How it is worked out`}
            onClick={() => onOpen(of)}
          >
            <span className="ground-title">{title}</span>
            <span className="ground-value">{figure}</span>
            <span className="ground-note">{note}</span>
          </button>
        </li>
      ))}
    </ul>
  );
});

export function FigureSheet({
  figure,
  onClose,
  children,
}: {
  readonly figure: GroundFigure;
  readonly onClose: () => void;
  /** a drawing of it */
  readonly children?: ReactNode;
}) {
  return (
    <Sheet title={`${figure.title}: ${figure.figure}`} onClose={onClose}>
      <p>{`${figure.note.charAt(0).toUpperCase()}${figure.note.slice(1)}.`}</p>
      {children}
      <WorkingParts working={figure.working} />
    </Sheet>
  );
}
