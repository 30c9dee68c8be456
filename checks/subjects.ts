import { loadsMappings, loadsUnasked } from './loads/mapping.ts';
import type { FamilyMapping, UnaskedFamily } from './mapping.ts';
import { materialsMappings, materialsUnasked } from './materials/mapping.ts';
import { powerMappings, powerUnasked } from './power/mapping.ts';
import { skyMappings } from './sky/mapping.ts';
import { trailerMappings, trailerUnasked } from './trailer/mapping.ts';
import { upkeepMappings } from './upkeep/mapping.ts';
import { wiringMappings } from './wiring/mapping.ts';

/** Forms of files, not figures: checks/interchange holds the files that are written and read to them. */
const forms: readonly UnaskedFamily[] = [
  { family: 'interchange', because: 'forms of files, not figures: held in checks/interchange' },
];

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
  ...forms,
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
