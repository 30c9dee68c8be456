/** All that can be done to a boat book: one list, which buttons, keys and commands share. */
import { beddingOperations } from './bedding-operations.ts';
import { boatOperations } from './boat-operations.ts';
import { dayOperations } from './day-operations.ts';
import { dueOperations } from './due-operations.ts';
import { finishOperations } from './finish-operations.ts';
import { forecastOperations } from './forecast-operations.ts';
import { hoistOperations } from './hoist-operations.ts';
import { jobOperations } from './job-operations.ts';
import { juryRigOperations } from './jury-rig-operations.ts';
import { loadOperations } from './load-operations.ts';
import { morningOperations } from './morning-operations.ts';
import type { Operations } from './operation.ts';
import { outingOperations } from './outing-operations.ts';
import { paperOperations } from './paper-operations.ts';
import { photoOperations } from './photo-operations.ts';
import { pictureOperations } from './picture-operations.ts';
import { powerOperations } from './power-operations.ts';
import { recipeOperations } from './recipe-operations.ts';
import { rigOperations } from './rig-operations.ts';
import { rodeOperations } from './rode-operations.ts';
import { storeOperations } from './store-operations.ts';
import { timerOperations } from './timer-operations.ts';
import { tinOperations } from './tin-operations.ts';
import { trailerOperations } from './trailer-operations.ts';

export const operations: Operations = {
  ...boatOperations,
  ...pictureOperations,
  ...beddingOperations,
  ...jobOperations,
  ...dayOperations,
  ...outingOperations,
  ...forecastOperations,
  ...morningOperations,
  ...juryRigOperations,
  ...powerOperations,
  ...loadOperations,
  ...rigOperations,
  ...rodeOperations,
  ...hoistOperations,
  ...photoOperations,
  ...finishOperations,
  ...timerOperations,
  ...storeOperations,
  ...tinOperations,
  ...paperOperations,
  ...dueOperations,
  ...recipeOperations,
  ...trailerOperations,
};
