/** How one figure of the hoist is worked out. */
import type { HoistFigureTold } from '#reckoning';
import { Sheet } from '../../../../parts/sheet.tsx';
import { WorkingParts } from '../../../../parts/working-parts.tsx';

export default function FigureSheet({
  figure: { label, figure, wrong, working },
  caution,
  onClose,
}: {
  readonly figure: HoistFigureTold;
  readonly caution: string;
  readonly onClose: () => void;
}) {
  return (
    <Sheet title={label} onClose={onClose}>
      <p>
        <b>{figure}</b>
        {wrong && `: ${wrong}`}.
      </p>
      <p className="loads-caution">
        <b>Take care.</b> {caution}
      </p>
      <WorkingParts working={working} />
    </Sheet>
  );
}
