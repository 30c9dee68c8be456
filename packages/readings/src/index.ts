export { type ReadingsByDay, readingsByDay } from './by-day.ts';
export {
  type LookedSentences,
  lookAtSentences,
  readSentences,
  type SentencePlan,
  type Transducer,
  timeOf,
} from './nmea-readings.ts';
export { checksumOf, readSentence } from './nmea-sentence.ts';
export { type Gap, gapFrom_ms, gapsIn, type ReadingLimits } from './ordered-readings.ts';
export { type PlanFaults, planFaults, type ReadFile, readTable, type TablePlan } from './read-table.ts';
export { blockBytes, readBlock } from './reading-block.ts';
export { columnsThere, type ReadColumn, type ReadingColumns } from './reading-columns.ts';
export type { FaultTally, RowFault } from './row-faults.ts';
export { type LookedTable, lookAtTable, rowsOf, type Separator, type TableLook } from './table-look.ts';
export { type FileText, textOfFile } from './text-of-file.ts';
export { type DrawnLine, thinned } from './thinned.ts';
export { type TimeForm, timeExamples } from './time-text.ts';
