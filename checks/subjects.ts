import { loadsMappings, loadsUnasked } from './loads/mapping.ts';
import type { FamilyMapping, UnaskedFamily } from './mapping.ts';
import { materialsMappings, materialsUnasked } from './materials/mapping.ts';
import { powerMappings, powerUnasked } from './power/mapping.ts';
import { skyMappings } from './sky/mapping.ts';
import { trailerMappings, trailerUnasked } from './trailer/mapping.ts';
import { upkeepMappings } from './upkeep/mapping.ts';
import { wiringMappings } from './wiring/mapping.ts';

/** Subjects of the handbook that no package of ours speaks about. */
const unspoken: readonly UnaskedFamily[] = ['interchange'].map((family) => ({
  family,
  because: `no question asks about ${family} yet`,
}));

export const mappings: readonly FamilyMapping[] = [
  ...skyMappings,
  ...materialsMappings,
  // one subject a line
  ...powerMappings,
  ...wiringMappings,
  ...loadsMappings,
  ...upkeepMappings,
  ...trailerMappings,
];
export const unasked: readonly UnaskedFamily[] = [
  ...materialsUnasked,
  // one subject a line
  ...powerUnasked,
  ...loadsUnasked,
  ...trailerUnasked,
  ...unspoken,
];

/** The subjects that keep rows in their folder. */
export const subjects = [
  'sky',
  'materials',
  // one a line
  'power',
  'wiring',
  'loads',
  'upkeep',
  'trailer',
] as const;
