/** Operations on rodes. */
import { plainThree } from './boat-operations.ts';
import { refuse } from './edit.ts';
import type { Operations } from './operation.ts';
import type { RodeRecord } from './rode-records.ts';

function refuseNoRode({ chain, rope, anchorage }: RodeRecord): void {
  if (chain === null && rope === null) refuse('chain', 'there is neither chain nor rope', 'at least one of them');
  if (anchorage !== null && anchorage.fall_m >= anchorage.depth_m)
    refuse(
      'anchorage › fall_m',
      `the tide falls ${anchorage.fall_m} m where there is ${anchorage.depth_m} m of water`,
      `less than ${anchorage.depth_m} m`,
    );
}

const [addRode, changeRode, removeRode] = plainThree<'addRode', 'changeRode', 'removeRode'>('rodes', (record) =>
  refuseNoRode(record as RodeRecord),
);

export const rodeOperations = { addRode, changeRode, removeRode } satisfies Partial<Operations>;
