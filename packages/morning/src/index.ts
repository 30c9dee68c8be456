export { checkedOrder, movedLine, type OrderRule } from './checked-order.ts';
export { houseLines, linesFor, rulesOf } from './house-lines.ts';
export type { LineFailing, MorningListName, Naming, Trait } from './morning-line.ts';
