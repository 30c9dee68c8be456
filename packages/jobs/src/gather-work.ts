/** Clauses that speak of one piece of work, gathered; readings and stores between them taken out. */
import type { Lexicon } from './read-line-parts.ts';
import type { Clause } from './walk-clauses.ts';
import { headingOf, openingPlace } from './walk-headings.ts';
import { goesOn, guesses, isDetail, otherSide, sharesThing } from './walk-joins.ts';
import { senseOf, setUpAlone } from './walk-sense.ts';
import { doneHeading, isMeasure, type StoreList, stillListed } from './walk-store-lists.ts';
import { storeListOf, storeTold } from './walk-stores.ts';
import { voltsTold } from './walk-volts.ts';
import { type Found, goOn, type Heading, isNameAlone, type Open, type TellingClause } from './work-in-hand.ts';

/** Said while thinking. */
const filler =
  /^(?:oh|er|um|erm|well|so|and|right|okay|ok|no|yes|yeah|what else|now then|let me think|let's see|anyway|also)$/;
export function gatherWork(clauses: readonly Clause[], lexicon: Lexicon): Found[] {
  const told = clauses.map((clause): TellingClause => ({ ...clause, sense: senseOf(clause.words, clause) }));
  const found: (Found | Open)[] = [];
  let open: Open | null = null;
  let lastRig: Open | null = null;
  let heading: Heading | null = null;
  let before: TellingClause | null = null;
  /** clauses that name a thing before anything is said of it */
  let lead: TellingClause[] = [];
  let list: StoreList | null = null;
  let lastVolts = -9;
  /** sentences of talk since the work in hand was spoken of */
  let aside = 0;

  const begin = (kind: Open['kind'], clause: TellingClause, also: readonly TellingClause[] = []): Open => {
    const made: Open = {
      kind,
      clauses: [],
      things: new Set(),
      heading,
      defect: false,
      remedy: false,
      minutes: false,
      dismissed: false,
      followUp: null,
      rig: null,
    };
    found.push(made);
    aside = 0;
    for (const each of [...also, clause]) goOn(made, each);
    return made;
  };

  for (const [at, clause] of told.entries()) {
    const { sense, words } = clause;
    const last: TellingClause | null = before;
    if (filler.test(words)) continue;
    const sameItem = last !== null && last.item === clause.item;
    const sameSentence = sameItem && last.sentence === clause.sentence;
    const inList = clause.listed && sameItem;
    before = clause;
    if (!sameItem) {
      // a line by itself that goes back to what was spoken of
      const more = sense.pronoun || sense.remedy || sense.minutes || sense.detail;
      if (clause.marked || (sense.about && !sense.pronoun) || !more) open = null;
      lead = [];
      if (clause.listed) lastRig = null;
    } else if (!clause.listed && lead.length > 0 && clause.sentence - lead[0]!.sentence > 1) lead = [];
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
      open = null;
      lastRig = null;
      list = null;
      lead = called !== 'elsewhere' && sameSentence && !clause.listed ? [clause] : [];
      continue;
    }
    const place = sameSentence ? null : openingPlace(words, lexicon.zones);
    if (place) heading = place;

    if (alone && doneHeading.test(words)) {
      list = { kind: 'done', headed: true, item: clause.item, sentence: clause.sentence };
      open = null;
      continue;
    }
    const near = told.slice(Math.max(0, at - 1), at + 4).filter(({ sentence }) => sentence === clause.sentence);
    const volts = hasFigure(words)
      ? (voltsTold(near.map((each) => each.words).join(', ')) ?? (last && voltsTold(`${last.words}, ${words}`)))
      : null;
    if (volts) {
      if (at - lastVolts > 3) found.push({ kind: 'reading', clauses: [clause], ...volts });
      lastVolts = at;
      if (!sense.defect) {
        open = null;
        continue;
      }
    }

    // what is to be bought, or is there, told in a list
    const listHead = storeListOf(words);
    if (listHead) {
      list = { kind: listHead, headed: true, item: clause.item, sentence: clause.sentence };
      open = null;
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
      !(sense.minutes || (sense.defect && !store.onHand && !/(?:list|buy|need|out of)/.test(words)))
    ) {
      if (!store.onHand) list = { kind: 'to get', headed: false, item: clause.item, sentence: clause.sentence };
      found.push({ kind: 'store', clauses: [clause], ...store });
      continue;
    }

    const about = sense.about;
    const work = sense.defect || sense.remedy;
    const shared = open !== null && sharesThing(sense.things, open.things) && !otherSide(words, open.clauses);

    // 'I should look at the wiring, but it can wait'; 'it still worked, so I tipped it out'
    if (open && !work && (sameSentence || (sameItem && !about) || shared)) {
      const over =
        sense.leftBe || (!open.remedy && !sense.temporary && (sense.fine || (sense.putRight && !sense.hearsay)));
      if (
        over &&
        !open.minutes &&
        !sense.minutes &&
        open.kind === 'job' &&
        (!about || shared || sense.leftBe || (sense.putRight && sameSentence))
      ) {
        open.dismissed = true;
        open = sense.leftBe || clause.listed ? open : null;
        continue;
      }
    }
    if (sense.temporary) {
      // what is wrong, and was only said so as to tell of the fix, is the reason of it
      const reason: Open | null =
        open?.kind === 'job' && open.defect && !open.minutes && (!open.remedy || !sense.about) ? open : null;
      if (open?.kind === 'jury rig' && sameSentence) goOn(open, clause);
      else if (
        reason &&
        !reason.remedy &&
        (sameSentence || inList || sense.pronoun || !about || clause.sentence - last!.sentence <= 1)
      ) {
        found.splice(found.indexOf(reason), 1);
        open = begin('jury rig', clause, reason.clauses);
      } else {
        const job: Open | null = open;
        const also = clause.listed
          ? told.filter((each) => each.item === clause.item && each.from < clause.from && !inAny(found, each))
          : lead.length > 0 && !about
            ? lead
            : madeBefore(told, at, found);
        open = begin('jury rig', clause, also);
        // the job was told first, and the fix stands in for it
        if (job && job.kind === 'job' && (sense.pronoun || !about || shared || clause.listed)) job.rig = open;
      }
      lastRig = open;
      lead = [];
      continue;
    }

    if (!work) {
      // 'Oh, the drain.'
      if (open && !sameSentence && !clause.listed && isNameAlone(clause) && !shared && !sense.detail) open = null;
      const detail =
        open !== null &&
        (inList || sameSentence || isDetail(clause, open) || (sameItem && !open.remedy && guesses.test(words)));
      if (open && detail) {
        if (sense.fine && about && !shared && !sense.minutes) open = clause.listed ? open : null;
        else if (!(sense.done && about && !shared)) goOn(open, clause);
      } else if (open && !sense.minutes) {
        // a word aside; the talk may come back to it
        if (!sameSentence) aside++;
        const short = words.split(' ').length <= 16 && !(sense.fine && about) && (!sense.subject || sense.parts);
        if (aside > 2 || !(short && (sense.pronoun || !about || sense.parts) && sameItem)) open = null;
      } else if (open && sense.minutes) open = null;
      if (
        !open &&
        sense.minutes &&
        !sense.done &&
        !sense.fine &&
        !sense.leftBe &&
        (clause.listed || sameSentence || about)
      ) {
        // 'outboard service, two hours': a length of time is asked for by work only
        const also = clause.listed || sameSentence ? lead.filter((each) => each.item === clause.item) : [];
        if (also.length > 0 || about) {
          open = begin('job', clause, also);
          lead = [];
          continue;
        }
      }
      if (!open && isNameAlone(clause))
        lead = sameItem && (clause.listed || sameSentence) ? [...lead, clause] : [clause];
      else if (!open && !sameItem && clause.listed && !sense.fine && !sense.done) lead = [clause];
      continue;
    }
    if (
      sense.done &&
      !sense.remedy &&
      (!sense.defect || /\b(?:already|replaced|renewed|fixed|mended|sorted)\b/.test(words))
    ) {
      if (!sameSentence) open = null;
      continue;
    }
    if (
      sense.leftBe &&
      (!sense.remedy || (inList && told.some((each) => each.item === clause.item && each.sense.fine)))
    ) {
      if (open && !open.minutes && sameSentence && !about) open.dismissed = true;
      open = clause.listed ? open : null;
      continue;
    }
    if (sense.fine && !sense.defect && !sense.remedy && !/\b(?:but|not|apart|except)\b/.test(words)) {
      if (!sameSentence || about) open = null;
      continue;
    }

    const ahead = told
      .slice(at, at + 4)
      .some((each) => each.sentence === clause.sentence && /(?<![a-zß-ɏ])(?:it|them)(?![a-zß-ɏ])/.test(each.words));
    if (open && goesOn(open, clause, { sameSentence, sameItem, inList, shared, ahead })) {
      aside = 0;
      goOn(open, clause);
      continue;
    }
    // a defect of no thing, or work on nothing that is known, is talk
    const spokenOf = clause.listed
      ? told.filter(
          (each) =>
            each.item === clause.item &&
            each.from < clause.from &&
            !inAny(found, each) &&
            !(each.sense.fine && !each.sense.defect),
        )
      : lead.length > 0
        ? lead.every((each) => each.sense.parts)
          ? [...spokenBefore(told, told.indexOf(lead[0]!), found, clause.sentence), ...lead]
          : lead
        : last && sameSentence && isNameAlone(last) && !inAny(found, last)
          ? [last]
          : !about || sense.parts
            ? spokenBefore(told, at, found)
            : [];
    const listed = clause.listed && !sameItem;
    if (!about && spokenOf.length === 0 && !listed && lastRig === null && !(sense.remedy && sense.minutes)) continue;
    const rig: Open | null = lastRig;
    const back = sense.things.length === 0 || sense.pronoun || sense.parts || /\bnew\b/.test(words);
    const stoodIn =
      rig !== null && sense.remedy && back
        ? rig.clauses.filter((each) => each.sense.defect && !each.sense.temporary)
        : [];
    open = begin('job', clause, stoodIn.length > 0 ? stoodIn : spokenOf);
    if (rig && sense.remedy && (back || clause.listed || sense.things.some((thing) => rig.things.has(thing))))
      open.rig = rig;
    lastRig = null;
    lead = [];
  }
  return found.filter((each) => each.kind === 'reading' || each.kind === 'store' || isWork(each as Open)) as Found[];
}

/** What a fix was made of, told just before it is said to be one: 'I tied a knot in it, | and it will do | until …'. */
function madeBefore(told: readonly TellingClause[], at: number, found: readonly (Found | Open)[]): TellingClause[] {
  const made: TellingClause[] = [];
  for (let before = at - 1; before >= 0 && before >= at - 3; before--) {
    const clause = told[before]!;
    if (clause.sentence !== told[at]!.sentence || inAny(found, clause)) break;
    const { done, about, fine } = clause.sense;
    if (fine || (about && !done)) break;
    made.unshift(clause);
    if (done) return made;
  }
  return told[at]!.sense.about ? [] : made.slice(-1);
}

/** What a clause that names no thing of its own goes back to: the last that names one, in the two sentences before. */
function spokenBefore(
  told: readonly TellingClause[],
  at: number,
  found: readonly (Found | Open)[],
  sentence = told[at]!.sentence,
): TellingClause[] {
  const clause = told[at]!;
  if (!(clause.sense.pronoun || clause.sense.parts || told[at - 1]?.sentence === sentence)) return [];
  const names: TellingClause[] = [];
  for (let before = at - 1; before >= 0 && before >= at - 5; before--) {
    const spoken = told[before]!;
    if (
      spoken.item !== clause.item ||
      sentence - spoken.sentence > (clause.sense.remedy ? 3 : 2) ||
      inAny(found, spoken)
    )
      break;
    if (spoken.sense.fine || spoken.sense.leftBe) break;
    // 'hairline at the top? Clean it and look': asked of the thing that is then worked on
    if (spoken.sense.hearsay && !(spoken.asked && clause.sense.remedy && spoken.sense.things.length > 0)) break;
    if (!spoken.sense.about) continue;
    names.unshift(spoken);
    if (!spoken.sense.parts) break;
  }
  return names;
}

const hasFigure = (words: string) =>
  /\d[.,]\d|point|(?:ten|eleven|twelve|thirteen|fourteen) (?:oh|one|two|three|four|five|six|seven|eight|nine|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)/.test(
    words,
  );

const inAny = (found: readonly (Found | Open)[], clause: Clause) =>
  found.some(({ clauses }) => (clauses as readonly Clause[]).includes(clause));

const isWork = (open: Open) =>
  open.kind === 'jury rig' || ((open.defect || open.remedy || open.minutes) && !open.dismissed);
