import type { FamilyMapping, UnaskedFamily } from '../mapping.ts';
import { hoistMappings } from './hoist-mapping.ts';

const gear: Readonly<Record<string, string>> = { chain: 'chain', wire: 'wire', cordage: 'rope' };

const pathMappings: readonly FamilyMapping[] = [
  {
    family: 'loads.cfr.unmarked',
    kind: 'transcription',
    asking: (row) => {
      const of = gear[row.id.split('.').at(-1) ?? ''];
      return of
        ? { question: 'loads.unmarked', fields: { gear: of }, pick: 'taken for' }
        : { unmapped: `no gear of ours is ${row.quantity}` };
    },
  },
];

export const loadsMappings: readonly FamilyMapping[] = [
  ...pathMappings,
  // one part a line
  ...hoistMappings,
];

export const loadsUnasked: readonly UnaskedFamily[] = [{ family: 'loads', because: 'no question asks about it yet' }];
