export { type CurrencyCosts, costsOf, type YearCost, type ZoneCost } from './costs.ts';
export { type FittingStory, fittingStory } from './fitting-story.ts';
export { type LogFound, type LogQuery, type LogSearch, logSearch } from './log-search.ts';
export type { SearchedCollection } from './searched-text.ts';
