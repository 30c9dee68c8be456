/** One circuit: its figures, what is wrong with it and what would be right, how it is worked out, and the way to change it. */

import { useEffect, useState } from 'react';
import type { Book } from '#boat-book';
import { type CircuitTold, circuitDrawTold, type WorkingTold } from '#reckoning';
import { Sheet } from '../../../parts/sheet.tsx';
import { WorkingParts } from '../../../parts/working-parts.tsx';
import { Findings } from './findings.tsx';

export default function ToldSheet({
  book,
  circuit,
  onChange,
  onClose,
}: {
  readonly book: Book;
  readonly circuit: CircuitTold;
  readonly onChange: () => void;
  readonly onClose: () => void;
}) {
  const { name, words, findings, working, place } = circuit;
  const [draw, setDraw] = useState<WorkingTold | null>(null);
  // the clock is asked once the sheet stands
  useEffect(() => {
    setDraw(place.kind === 'circuit' ? circuitDrawTold(book, place.id, Date.now()) : null);
  }, [book, place]);
  // before what is not covered and where it is from
  const last = working.length - 2;
  return (
    <Sheet title={name} onClose={onClose}>
      <p>
        {[words.draws, words.on, words.wire, words.fuse, words.drop, words.arrives]
          .filter((part) => part !== null)
          .join('; ')}
        .
      </p>
      <Findings findings={findings} />
      <p>
        <button type="button" className="main" onClick={onChange}>
          {place.kind === 'circuit' ? 'Change the circuit' : 'Say how its lead is fused'}
        </button>
      </p>
      <h2>How it is worked out</h2>
      <WorkingParts working={draw === null ? working : [...working.slice(0, last), draw, ...working.slice(last)]} />
    </Sheet>
  );
}
