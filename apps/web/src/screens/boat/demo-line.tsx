import { useState } from 'react';
import type { Boat } from '#boat-book';
import { onDemand } from '../../parts/on-demand.tsx';

const OwnBookSheet = onDemand(() => import('./own-book-sheet.tsx'));

/** Says that the boat is invented, and starts the keeper's own book in one tap. */
export function DemoLine({ boat }: { readonly boat: Pick<Boat, 'name'> }) {
  const [open, setOpen] = useState(false);
  return (
    <div className="shell-line">
      <span>{boat.name} and all in her book are invented, to try things out on.</span>
      <button type="button" className="words" onClick={() => setOpen(true)}>
        Start your own boat's book
      </button>
      {open && <OwnBookSheet onClose={() => setOpen(false)} />}
    </div>
  );
}
