/** Clauses that speak of one piece of work, gathered; readings and stores between them taken out. */
import type { Lexicon } from './read-line-parts.ts';
import { workOf } from './topic-work.ts';
import type { Clause } from './walk-clauses.ts';
import { headingOf, openingPlace } from './walk-headings.ts';
import { senseOf, setUpAlone } from './walk-sense.ts';
import { doneHeading, isMeasure, type StoreList, stillListed } from './walk-store-lists.ts';
import { storeListOf, storeTold } from './walk-stores.ts';
import { placeOf, roleOf, type TalkClause, topicsOf } from './walk-topics.ts';
import { voltsTold } from './walk-volts.ts';
import { type Found, type Heading, isNameAlone, type TellingClause } from './work-in-hand.ts';

/** Said while thinking. */
const filler =
  /^(?:oh|er|um|erm|well|so|and|right|okay|ok|no|yes|yeah|what else|now then|let me think|let's see|anyway|also)$/;
/** Clauses that speak of one piece of work, in the order they were said. */
export function gatherWork(clauses: readonly Clause[], lexicon: Lexicon): Found[] {
  const { talk, found } = talkOf(clauses, lexicon);
  return [...found, ...topicsOf(talk).flatMap(workOf)].sort((a, b) => a.clauses[0]!.from - b.clauses[0]!.from);
}

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
  const found: Found[] = [];
  let afresh = true;
  const talk: TalkClause[] = [];
  let heading: Heading | null = null;
  let before: TellingClause | null = null;
  let list: StoreList | null = null;
  let lastVolts = -9;
  let read = false;

  for (const [at, clause] of told.entries()) {
    const { sense, words } = clause;
    const last: TellingClause | null = before;
    if (filler.test(words) && !(before && before.sentence === clause.sentence && /^(?:ok|okay|no)$/.test(words)))
      continue;
    const sameItem = last !== null && last.item === clause.item;
    const sameSentence = sameItem && last.sentence === clause.sentence;
    before = clause;
    if (!sameItem && clause.marked) afresh = true;
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
    const near = told.slice(Math.max(0, at - 1), at + 4).filter(({ sentence }) => sentence === clause.sentence);
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
    const listHead = storeListOf(words);
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
      const plainName =
        /^(?:and )?(?:a|an|some|another|one|two|three|four|\d+) (?:[a-zß-ɏ]+ )?(?:packs?|tins?|box(?:es)?|tubes?|rolls?|bags?|litres?|metres?|bottles?|sheets?|pots?|spare) /.test(
          words,
        ) ||
        list.headed ||
        (!sense.defect && !sense.remedy && !sense.minutes && words.split(' ').length <= 7);
      const thing = plainName ? storeTold(words, { listed: kind, anything: list.headed }) : null;
      if (thing) {
        found.push({ kind: 'store', clauses: [clause], ...thing });
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

const hasFigure = (words: string) =>
  /\d[.,]\d|point|(?:ten|eleven|twelve|thirteen|fourteen) (?:oh|one|two|three|four|five|six|seven|eight|nine|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)/.test(
    words,
  );
