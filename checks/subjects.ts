import type { FamilyMapping, UnaskedFamily } from './mapping.ts';
import { materialsMappings, materialsUnasked } from './materials/mapping.ts';
import { skyMappings, skyUnasked } from './sky/mapping.ts';

/** Subjects of the handbook that no package of ours speaks about. */
const unspoken: readonly UnaskedFamily[] = ['power', 'wiring', 'loads', 'trailer', 'upkeep', 'interchange'].map(
  (family) => ({ family, because: `no question asks about ${family} yet` }),
);

export const mappings: readonly FamilyMapping[] = [...skyMappings, ...materialsMappings];
export const unasked: readonly UnaskedFamily[] = [...skyUnasked, ...materialsUnasked, ...unspoken];

/** The subjects that keep rows in their folder. */
export const subjects = ['sky', 'materials'] as const;
