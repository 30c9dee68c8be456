/** Operations on what products' own tins say. */
import { plainThree } from './boat-operations.ts';
import { refuse } from './edit.ts';
import type { Operations } from './operation.ts';
import type { TinRecord } from './tin-records.ts';

function refuseWhatNoTinSays({ nextCoat, latestCoat_h, worked, full, ratio }: TinRecord): void {
  if (latestCoat_h !== null && nextCoat === null)
    refuse('nextCoat', 'a latest time for the next coat is given without an earliest', 'the earliest, or no latest');
  if (latestCoat_h !== null && nextCoat !== null && latestCoat_h <= nextCoat.hours)
    refuse('latestCoat_h', `${latestCoat_h} h is not after ${nextCoat.hours} h`, `more than ${nextCoat.hours} h`);
  if (worked !== null && full !== null && worked.at_C === full.at_C && full.hours < worked.hours)
    refuse(
      'full › hours',
      `full strength in ${full.hours} h, sanded after ${worked.hours} h`,
      `at least ${worked.hours} h`,
    );
  if (ratio?.kind === 'catalyst' && ratio.high_pct < ratio.low_pct)
    refuse('ratio › high_pct', `${ratio.high_pct} % is less than ${ratio.low_pct} %`, `at least ${ratio.low_pct} %`);
}

const [addTin, changeTin, removeTin] = plainThree<'addTin', 'changeTin', 'removeTin'>('tins', (record) =>
  refuseWhatNoTinSays(record as TinRecord),
);

export const tinOperations = { addTin, changeTin, removeTin } satisfies Partial<Operations>;
