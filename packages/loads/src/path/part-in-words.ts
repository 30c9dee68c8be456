import { endingShares } from '../../tables/endings.read-2026-11.ts';
import type { PartOfPath } from './part.ts';

const makes = { lifting: 'stamped steel', stainless: 'stainless', galvanised: 'galvanised' } as const;
const limbs = { pull: 'a hand that pulls', crank: 'a hand at a crank' } as const;

/** A part in trade words: what it is and the size it is called by, as in ‘stainless shackle, 8 mm’. */
export function partInWords(part: PartOfPath): string {
  switch (part.kind) {
    case 'rope':
      return `${part.fibre.replaceAll('-', ' ')} rope, ${part.size_mm} mm`;
    case 'lashing':
      return `lashing of ${part.fibre.replaceAll('-', ' ')}, ${part.size_mm} mm, ${part.passes} times round`;
    case 'wire':
      return `${part.laid} wire, ${part.size_mm} mm`;
    case 'chain':
      return `${part.grade === null ? 'unmarked' : `grade ${part.grade}`} chain, ${part.size_mm} mm`;
    case 'shackle':
      return `${makes[part.make]} shackle, ${part.size_mm} mm`;
    case 'thimble':
      return `${part.metal} thimble for ${part.size_mm} mm`;
    case 'ending':
      return endingShares[part.ending].title;
    case 'block':
      return part.sheave_mm === null ? 'block' : `block, ${part.sheave_mm} mm sheave`;
    case 'fitting':
      return part.what === 'other' ? 'fitting' : part.what;
    case 'pin':
      return `${part.metal} pin, ${part.size_mm} mm`;
    case 'rigging screw':
      return `rigging screw, M${part.thread_mm}`;
    case 'fastenings':
      return `${part.count} ${part.how}, ${part.size_mm} mm`;
    case 'winch':
      return 'winch';
    case 'hand':
      return limbs[part.how];
  }
}
