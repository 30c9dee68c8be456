/** Lists of things to get, on hand, or done with, on a page. */
import { isThingAlone } from './walk-shopping.ts';
import type { TellingClause } from './work-in-hand.ts';

export interface StoreList {
  readonly kind: 'to get' | 'on hand' | 'done';
  /** by words that say so, so that anything in it is a store */
  readonly headed: boolean;
  readonly item: number;
  readonly sentence: number;
  /** told in one breath, so that it ends with its sentence */
  readonly inline?: true;
}

export const doneHeading =
  /^(?:done|done already|finished|completed|already done|done so far|what (?:i've|i have|we've) done|not (?:this time|now|this year|this season|to do)|some ?day|one day|(?:for )?(?:another|next) (?:year|season|winter)|(?:wish ?list|dreams))$/;

/** A list goes on in its sentence, and line by line where it stands alone at the head of lines. */
export function stillListed(list: StoreList, clause: TellingClause, last: TellingClause | undefined): boolean {
  if (clause.sentence === list.sentence) return true;
  if (!last) return false;
  // 'I must get more ties. And a tin of the blue.'
  if (list.inline)
    return (
      clause.item === list.item &&
      /^(?:oh |and |also |plus |then )+(?:a|an|some|another|more|two|three|four) /.test(clause.words)
    );
  if (!clause.listed) {
    const under = list.headed && clause.item === list.item + 1 && (!clause.spaced || last.sentence === list.sentence);
    return isThingAlone(clause.words) && (under || (list.headed && clause.item === list.item));
  }
  const headAlone = last.item === list.item && clause.item === list.item + 1;
  return headAlone || clause.item === list.item;
}

/** 'one roll', 'in the workshop drawer', '12 mm': more of what was named. */
export const isMeasure = (words: string) =>
  /^(?:in|on|under|from|at) /.test(words) ||
  /^(?:about |say |x ?)?(?:\d[\d.,x/ -]*|a|an|one|two|three|four|five|six|eight|ten|twelve|twenty|fifty|half a|couple of)(?: ?(?:mm|cm|m|metres?|l|litres?|ml|g|kg|off|of|pairs?|packs?|rolls?|tubes?|tins?|boxes?|bags?|inch(?:es)?|long|thick|wide))*$/.test(
    words,
  ) ||
  /^(?:small|large|medium|stainless|brass|galvanised|white|black|the (?:good|blue|black|white|cheap) (?:one|stuff|kind)s?)$/.test(
    words,
  );
