export { belowMinimum, cureFinish, curePerMinute } from './cure-finish.ts';
export type { CureLaw, FigureFrom } from './cure-law.ts';
export { cureLawOf, cureLaws, type FigureSource, type ProductLaw } from './cure-laws.ts';
export { type RecoatFigures, type RecoatWindow, recoatFigures, recoatWindow } from './recoat-window.ts';
