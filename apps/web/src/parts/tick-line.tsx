/** A line to tick that the boat book keeps: it shows the tick at once, and the book's answer once that is there. */
import { type ReactNode, useState } from 'react';

/** By then the book's answer is drawn; what it has stands, also where it was changed again meanwhile. [ms] */
const drawn_ms = 1000;

export function TickLine({
  ticked,
  onTick,
  children,
}: {
  /** as the book has it */
  readonly ticked: boolean;
  /** asks the book for the other; resolves with what came of it */
  readonly onTick: () => Promise<{ readonly kind: 'done' | 'refused' }>;
  /** what the line says */
  readonly children: ReactNode;
}) {
  const [asked, setAsked] = useState<boolean | null>(null);
  const [before, setBefore] = useState(ticked);
  if (before !== ticked) {
    setBefore(ticked);
    setAsked(null);
  }
  const tick = async () => {
    // asked for already
    if (asked !== null) return;
    setAsked(!ticked);
    const { kind } = await onTick();
    if (kind === 'refused') setAsked(null);
    else setTimeout(() => setAsked(null), drawn_ms);
  };
  return (
    <label>
      <input type="checkbox" checked={asked ?? ticked} onChange={() => void tick()} />
      <span>{children}</span>
    </label>
  );
}
