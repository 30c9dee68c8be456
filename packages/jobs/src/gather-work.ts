/** Clauses that speak of one piece of work, gathered; readings and stores between them taken out. */
import { type Judges, ourJudges } from './judged/judge.ts';
import { judgedWork } from './judged/judged-work.ts';
import type { Lexicon } from './read-line-parts.ts';
import type { Clause } from './walk-clauses.ts';
import { headingOf, openingPlace } from './walk-headings.ts';
import { senseOf, setUpAlone } from './walk-sense.ts';
import { headsShopping, isThingAlone, listedThings, thingsToGet } from './walk-shopping.ts';
import { doneHeading, isMeasure, type StoreList, stillListed } from './walk-store-lists.ts';
import { isGoods, storeListOf, storeTold } from './walk-stores.ts';
import { placeOf, roleOf, type TalkClause, type Topic, topicsOf } from './walk-topics.ts';
import { voltsTold } from './walk-volts.ts';
import { type Found, type Heading, isNameAlone, type TellingClause } from './work-in-hand.ts';

/** Said while thinking. */
const filler =
  /^(?:oh|er|um|erm|well|so|and|right|okay|ok|no|yes|yeah|what else|now then|let me think|let's see|anyway|also)$/;
/** Clauses that speak of one piece of work, in the order they were said. */
export function gatherWork(clauses: readonly Clause[], lexicon: Lexicon, judges: Judges = ourJudges()): Found[] {
  const { talk, found } = talkOf(clauses, lexicon);
  return [...found, ...judgedWork(topicsOf(talk), judges)].sort((a, b) => a.clauses[0]!.from - b.clauses[0]!.from);
}

/** What of the page is neither a reading nor a thing to get, in its topics. */
export const topicsIn = (clauses: readonly Clause[], lexicon: Lexicon): Topic[] =>
  topicsOf(talkOf(clauses, lexicon).talk);

/** The page without its readings, stores and headings. */
function talkOf(
  clauses: readonly Clause[],
  lexicon: Lexicon,
): { readonly talk: readonly TalkClause[]; readonly found: readonly Found[] } {
  const told = clauses.map(
    (clause, at): TellingClause => ({
      ...clause,
      sense: senseOf(clause.words, { asked: clause.asked, opens: clauses[at - 1]?.sentence !== clause.sentence }),
    }),
  );
  for (const [at, clause] of told.entries()) if (asOfWork(clause, told[at - 1], told[at + 1])) told[at] = meant(clause);
  const found: Found[] = [];
  let afresh = true;
  const talk: TalkClause[] = [];
  let heading: Heading | null = null;
  let before: TellingClause | null = null;
  let list: StoreList | null = null;
  let lastVolts = -9;
  let read = false;
  let counted = 0;

  for (const [at, clause] of told.entries()) {
    const { sense, words } = clause;
    const last: TellingClause | null = before;
    if (filler.test(words) && !(before && before.sentence === clause.sentence && /^(?:ok|okay|no)$/.test(words)))
      continue;
    const sameItem = last !== null && last.item === clause.item;
    const sameSentence = sameItem && last.sentence === clause.sentence;
    before = clause;
    if (!sameItem && clause.marked) afresh = true;
    // 'Three. Port shroud plate.'
    if (counts[counted] === words && told[at + 1]?.sentence !== clause.sentence && !sameSentence) {
      counted++;
      afresh = true;
      continue;
    }
    if (clause.ticked) continue;

    const itemHead = clause.listed && !sameItem ? headingOf(words, lexicon.zones) : null;
    if (itemHead !== null && itemHead !== 'elsewhere') heading = { zone: itemHead, words };
    const alone = !clause.listed || (!sameItem && told[at + 1]?.item !== clause.item);
    const called =
      !alone ||
      setUpAlone.test(words) ||
      (sameSentence &&
        !/^(?:okay|right|now|then|next|climbing|down|moving|(?:and )?(?:the|on the|in the) [a-zß-ɏ]+(?: now| itself)?$)/.test(
          words,
        ))
        ? null
        : headingOf(words, lexicon.zones);
    if (called !== null) {
      heading = called === 'elsewhere' ? null : { zone: called, words };
      afresh = true;
      list = null;
      // 'The coaming, where the varnish has lifted': a place, and what is spoken of
      if (clause.listed || sense.things.length === 0 || told[at + 1]?.sentence !== clause.sentence) continue;
    }
    const place = sameSentence ? null : openingPlace(words, lexicon.zones);
    if (place) heading = place;

    if (alone && doneHeading.test(words)) {
      list = { kind: 'done', headed: true, item: clause.item, sentence: clause.sentence };
      afresh = true;
      continue;
    }
    const near = told.slice(Math.max(0, at - 3), at + 4).filter(({ sentence }) => sentence === clause.sentence);
    const volts = hasFigure(words)
      ? (voltsTold(near.map((each) => each.words).join(', ')) ?? (last && voltsTold(`${last.words}, ${words}`)))
      : null;
    if (volts) {
      if (at - lastVolts > 3) found.push({ kind: 'reading', clauses: [clause], ...volts });
      lastVolts = at;
      read = true;
      if (!sense.defect) continue;
    }

    // what is to be bought, or is there, told in a list
    const listHead = storeListOf(words) ?? (headsShopping(words) ? 'to get' : null);
    if (listHead) {
      list = { kind: listHead, headed: true, item: clause.item, sentence: clause.sentence };
      afresh = true;
      continue;
    }
    if (list && !stillListed(list, clause, told[at - 1])) list = null;
    if (list?.kind === 'done') {
      list = { ...list, item: clause.item };
      continue;
    }
    if (list) {
      const kind: 'to get' | 'on hand' = list.kind;
      list = { ...list, item: clause.item };
      const inSame = last !== null && sameItem && last.sentence === clause.sentence;
      const lastFound = found.at(-1);
      if (inSame && lastFound?.kind === 'store' && isMeasure(words)) {
        (lastFound.clauses as Clause[]).push(clause);
        continue;
      }
      const each = listedThings(clause);
      const heads =
        list.headed &&
        !list.inline &&
        (clause.listed ||
          isGoods.test(words) ||
          sense.things.length > 0 ||
          amountFirst.test(words) ||
          /\d/.test(words));
      const named =
        each.every((one) => isThingAlone(one.words)) &&
        (heads ||
          (!sense.defect && amountFirst.test(words)) ||
          (!sense.defect &&
            (!sense.remedy || isGoods.test(words)) &&
            (sense.about || isGoods.test(words)) &&
            words.split(' ').length <= 7));
      const things = named && !sense.minutes ? each.flatMap((one) => storeIn(one, kind, list!.headed)) : [];
      if (things.length > 0) {
        found.push(...things);
        continue;
      }
    }
    // 'rivets 4.8 mm, get 20'
    if (
      last &&
      sameSentence &&
      isNameAlone(last) &&
      /^(?:get|buy|need|order|want)(?: \d+| (?:some|more|two|three|four|five|six|ten|a few))?$/.test(words)
    ) {
      const thing = storeTold(`buy ${last.words}`);
      if (thing) {
        found.push({ kind: 'store', clauses: [last, clause], ...thing });
        continue;
      }
    }
    const wanted = sense.minutes ? [] : thingsToGet(clause);
    const gettable = wanted.flatMap((one) => storeIn(one, 'to get', true));
    if (gettable.length > 0 && gettable.length === wanted.length) {
      list = { kind: 'to get', headed: true, item: clause.item, sentence: clause.sentence, inline: true };
      found.push(...gettable);
      continue;
    }
    const store = storeTold(words);
    if (
      store &&
      !(sense.temporary && store.keptAt === '') &&
      !/\b(?:proper|on there|on it|fit)\b/.test(words) &&
      !(
        sense.minutes ||
        (sense.defect &&
          !store.onHand &&
          !/(?:list|buy|(?:i|we) (?:still |also )?need|need (?:some|more|to)|(?:we're|i'm|are|am|run) out of)/.test(
            words,
          ))
      )
    ) {
      if (!store.onHand) list = { kind: 'to get', headed: false, item: clause.item, sentence: clause.sentence };
      found.push({ kind: 'store', clauses: [clause], ...store });
      continue;
    }

    const fineBefore = clause.listed && told.some((each) => each.item === clause.item && each.sense.fine);
    // what follows a reading is something else, unless it goes back
    afresh ||= read && !sense.pronoun;
    read = false;
    talk.push({
      ...clause,
      heading,
      afresh,
      role: roleOf(clause, fineBefore),
      place: sense.things.length > 0 ? placeOf(words, lexicon.zones) : null,
    });
    afresh = false;
  }
  return { talk, found };
}

const counts = 'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen'.split(' ');
const amountFirst = /^(?:and )?(?:a|an|some|another|more|one|two|three|four|five|six|ten|\d+) /;

/** One thing of a list, as a store; none where it is nothing that one buys. */
function storeIn(clause: Clause, kind: 'to get' | 'on hand', anything: boolean): Found[] {
  const thing = storeTold(clause.words, { listed: kind, anything });
  return thing ? [{ kind: 'store', clauses: [clause], ...thing }] : [];
}

/** 'off, clean, rebed': between what is wrong and what is to be done 'clean' is no word of praise. */
const asOfWork = (clause: TellingClause, before: TellingClause | undefined, after: TellingClause | undefined) =>
  /^(?:and |then )?(?:clean|dry|clear|free|tight)(?: (?:and|&) [a-zß-ɏ]+)?$/.test(clause.words) &&
  ((after?.item === clause.item && after.sense.remedy) ||
    (before?.item === clause.item && before.sense.remedy && !before.sense.done) ||
    (/(?:clean|dry) (?:and|&)/.test(clause.words) && before?.item === clause.item && before.sense.defect));
const meant = (clause: TellingClause): TellingClause => ({
  ...clause,
  sense: { ...clause.sense, fine: false, remedy: true },
});

const hasFigure = (words: string) =>
  /\d[.,]\d|point|comma|(?:ten|eleven|twelve|thirteen|fourteen) (?:oh|one|two|three|four|five|six|seven|eight|nine|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)/.test(
    words,
  );
