import type { Source } from '#working';

/** What a path is for: it decides how far below breaking it may work. */
export const uses = {
  'standing-rigging': 'standing rigging',
  'running-rigging': 'running rigging, sheets and halyards',
  'ground-tackle': 'anchor, rode and mooring',
  hoist: 'hoisting or holding something up',
} as const;
export type Use = keyof typeof uses;

/** Gear by how its working load is reckoned from its breaking load. */
export type Gear = 'rope' | 'wire' | 'chain' | 'lifting shackle' | 'fitting';

export interface Factor {
  /** breaking load over working load */
  readonly factor: number;
  /** whose it is */
  readonly whose: Source;
}

const directive = 'Machinery Directive 2006/42/EC annex I 4.1.2.5';
const ours = (title: string): Source => ({ title, seen: 'our assumption' });

/**
 * Breaking load over working load, and whose figure it is. A working load marked on the gear wins over both.
 *
 * @param gear  what it is
 * @param use   what the path is for
 */
export function factorOf(gear: Gear, use: Use): Factor {
  switch (gear) {
    case 'chain':
      return { factor: 4, whose: { title: `${directive}, chain; DIN 766 takes the same`, seen: 'recalled' } };
    case 'lifting shackle':
      return { factor: 6, whose: { title: 'RR-C-271 and EN 13889', seen: 'read second-hand' } };
    case 'wire':
      return use === 'standing-rigging'
        ? { factor: 4, whose: { title: 'yacht-design texts take 2.5 to 4: the upper end', seen: 'recalled' } }
        : { factor: 5, whose: { title: `${directive}, wire rope`, seen: 'recalled' } };
    case 'rope':
      if (use === 'hoist') return { factor: 7, whose: { title: `${directive}, textile slings`, seen: 'recalled' } };
      return use === 'running-rigging'
        ? { factor: 5, whose: { title: 'rigging practice takes 4 to 6', seen: 'common practice' } }
        : { factor: 5, whose: ours('5 for rope that pulls steadily; rope makers ask 9 to 12') };
    case 'fitting':
      return use === 'standing-rigging'
        ? { factor: 4, whose: ours('4 for fittings, as for the wire they hold') }
        : { factor: 5, whose: ours('5 for fittings, as for the wire and rope they hold') };
  }
}
