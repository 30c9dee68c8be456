/** How a figure of the trailer came about. */
import type { TrailerFigure } from '#reckoning';
import { Sheet } from '../../../parts/sheet.tsx';
import { WorkingParts } from '../../../parts/working-parts.tsx';

export default function TrailerFigureSheet({
  figure: { title, figure, note, working },
  onClose,
}: {
  readonly figure: TrailerFigure;
  readonly onClose: () => void;
}) {
  return (
    <Sheet title={`${title}: ${figure}`} onClose={onClose}>
      <p>{`${note.charAt(0).toUpperCase()}${note.slice(1)}.`}</p>
      <WorkingParts working={working} />
    </Sheet>
  );
}
