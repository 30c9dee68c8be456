export { readLine } from './read-line.ts';
export type {
  Lexicon,
  LineConditions,
  LineConsequence,
  LineMinutes,
  ReadLine,
  Understood,
} from './read-line-parts.ts';
