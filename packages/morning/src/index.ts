export {
  brokenRules,
  type CheckedOrder,
  checkedOrder,
  type MovedLine,
  movedLine,
  type OrderRule,
} from './checked-order.ts';
export { houseLines, linesFor, rulesOf } from './house-lines.ts';
export { type MorningLine, type MorningListName, morningLists, type Naming, type Trait } from './morning-line.ts';
