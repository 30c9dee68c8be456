export { belowMinimum, cureFinish, curePerMinute } from './cure-finish.ts';
export type { CureLaw, FigureFrom } from './cure-law.ts';
