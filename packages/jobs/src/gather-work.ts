/** Clauses that speak of one piece of work, gathered; readings and stores between them taken out. */
import type { Lexicon } from './read-line-parts.ts';
import type { Clause } from './walk-clauses.ts';
import { headingOf, openingPlace } from './walk-headings.ts';
import type { ProposedReading, ProposedStore } from './walk-round.ts';
import { type Sense, senseOf } from './walk-sense.ts';
import { storeTold } from './walk-stores.ts';
import { voltsTold } from './walk-volts.ts';

export interface TellingClause extends Clause {
  readonly sense: Sense;
}

type Heading = { readonly zone: string; readonly words: string };

/** One piece of work, or a fix that stands in for it. */
export interface Gathered {
  readonly kind: 'job' | 'jury rig';
  readonly clauses: readonly TellingClause[];
  readonly heading: Heading | null;
  readonly followUp: string | null;
  /** the fix that stands in for it */
  readonly rig: Gathered | null;
}

export type Found =
  | Gathered
  | ({ readonly kind: 'reading'; readonly clauses: readonly Clause[] } & Pick<
      ProposedReading,
      'volts' | 'circumstance' | 'panelDark'
    >)
  | ({ readonly kind: 'store'; readonly clauses: readonly Clause[] } & Pick<
      ProposedStore,
      'name' | 'onHand' | 'keptAt'
    >);

interface Open {
  readonly kind: 'job' | 'jury rig';
  readonly clauses: TellingClause[];
  readonly things: Set<string>;
  readonly heading: Heading | null;
  defect: boolean;
  remedy: boolean;
  minutes: boolean;
  followUp: string | null;
  rig: Open | null;
}

/** Work going on from a fix that was told of: 'it wants a proper seal', 'new catch once it comes'. */
const followUpWords =
  /(?<![\p{L}])(?:still to (?:do|be done|go on)|still (?:needs?|wants?)|to be done|next (?:week|month|time|weekend|year)|not (?:finished|done) yet|half (?:done|finished)|second coat|yet to|left to do|later on)(?![\p{L}])/u;
/** A second length that puts the first right. */
const putsRight = /^(?:no|sorry|actually|rather|call it|make that|or rather|no more like|i mean|well)(?![\p{L}])/u;

export function gatherWork(clauses: readonly Clause[], lexicon: Lexicon): Found[] {
  const told = clauses.map((clause): TellingClause => ({ ...clause, sense: senseOf(clause.words) }));
  const found: (Found | Open)[] = [];
  let open: Open | null = null;
  let lastRig: Open | null = null;
  let heading: Heading | null = null;
  let before: TellingClause | null = null;
  let listing = -1;
  let lastVolts = -9;

  const begin = (kind: Open['kind'], clause: TellingClause, also: readonly TellingClause[] = []): Open => {
    const made: Open = {
      kind,
      clauses: [...also],
      things: new Set(also.flatMap(({ sense }) => sense.things)),
      heading,
      defect: also.some(({ sense }) => sense.defect),
      remedy: false,
      minutes: false,
      followUp: null,
      rig: null,
    };
    found.push(made);
    goOn(made, clause);
    return made;
  };
  const goOn = (work: Open, clause: TellingClause) => {
    work.clauses.push(clause);
    for (const thing of clause.sense.things) work.things.add(thing);
    work.defect ||= clause.sense.defect;
    work.remedy ||= clause.sense.remedy;
    work.minutes ||= clause.sense.minutes;
    work.followUp ??= followUpWords.exec(clause.words)?.[0] ?? null;
  };

  for (const [at, clause] of told.entries()) {
    const { sense, words } = clause;
    const last: TellingClause | null = before;
    const sameSentence = last !== null && last.sentence === clause.sentence;
    before = clause;

    const called =
      sameSentence && !/^(?:okay|right|now|then|next|climbing|down|moving)/.test(words)
        ? null
        : headingOf(words, lexicon.zones);
    if (called !== null) {
      heading = called === 'elsewhere' ? null : { zone: called, words };
      open = null;
      lastRig = null;
      continue;
    }
    const place = sameSentence ? null : openingPlace(words, lexicon.zones);
    if (place) heading = place;

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

    if (/^(?:to (?:buy|get|order)|shopping(?: list)?|buy|get|needed|spares?|in stock)$/.test(words)) {
      if (!/spare|stock/.test(words)) listing = clause.sentence;
      open = null;
      continue;
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
    const store = storeTold(words, { listed: listing === clause.sentence });
    if (
      store &&
      !/\b(?:proper|on there|on it|fit)\b/.test(words) &&
      !(
        sense.minutes ||
        (sense.defect && !store.onHand && listing !== clause.sentence && !/(?:list|buy|need)/.test(words))
      )
    ) {
      listing = store.onHand ? -1 : clause.sentence;
      found.push({ kind: 'store', clauses: [clause], ...store });
      continue;
    }

    const begun: Open | null = open;
    if (sense.leftBe && sameSentence && begun && !begun.minutes && begun.clauses[0]?.sentence === clause.sentence) {
      // 'I should look at the wiring, but it can wait'
      found.splice(found.indexOf(begun), 1);
      open = null;
      continue;
    }
    if (sense.temporary) {
      // what is wrong, and was only said so as to tell of the fix, is the reason of it
      const reason: Open | null = open?.kind === 'job' && open.defect && !open.remedy && !open.minutes ? open : null;
      if (open?.kind === 'jury rig' && sameSentence) goOn(open, clause);
      else {
        if (reason && last && (sameSentence || sense.pronoun || clause.sentence - last.sentence <= 1)) {
          found.splice(found.indexOf(reason), 1);
          open = begin('jury rig', clause, reason.clauses);
        } else
          open = begin(
            'jury rig',
            clause,
            last && sameSentence && !inAny(found, last) && (last.sense.done || (sense.things.length === 0 && !open))
              ? [last]
              : [],
          );
        lastRig = open;
        // the fix and the job told in one clause: 'taped for now, needs a new seal' is two, split at the comma
      }
      continue;
    }

    const work = sense.defect || sense.remedy;
    const about = sense.things.length > 0;
    const shared = open !== null && sense.things.some((thing) => open!.things.has(thing));

    if (!work) {
      if (open && (sameSentence || isDetail(clause, open))) {
        if (sense.fine && about && !shared && !sense.minutes) open = null;
        else if (!(sense.done && about && !shared)) goOn(open, clause);
      } else if (open && !sense.minutes) {
        if (!isDetail(clause, open) && !(sense.pronoun && !about && words.split(' ').length <= 8)) open = null;
      }
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
      (sense.leftBe || (sense.fine && !sense.defect)) &&
      !sense.remedy &&
      !/\b(?:but|not|apart|except)\b/.test(words)
    ) {
      if (!sameSentence || about) open = null;
      continue;
    }

    const ahead = told
      .slice(at, at + 4)
      .some((each) => each.sentence === clause.sentence && /(?<![\p{L}])(?:it|them)(?![\p{L}])/u.test(each.words));
    const joins = open !== null && goesOn(open, clause, { sameSentence, shared, ahead });
    if (joins && open) {
      goOn(open, clause);
      continue;
    }
    // a defect of no thing, or work on nothing that is known, is talk
    const named = last !== null && sameSentence && isNameAlone(last) && !inAny(found, last);
    const spokenOf =
      named && last
        ? [last]
        : last && !about && (sense.pronoun || sameSentence) && last.sense.things.length > 0 && !inAny(found, last)
          ? [last]
          : [];
    const listed = /^\S/.test(words) && heading !== null && !sameSentence;
    if (!about && spokenOf.length === 0 && !listed && lastRig === null && !(sense.remedy && sense.minutes)) continue;
    const rig: Open | null = lastRig;
    const stoodIn =
      lastRig !== null && sense.remedy && (sense.things.length === 0 || sense.pronoun || /\bnew\b/.test(words))
        ? lastRig.clauses.filter((each) => each.sense.defect && !each.sense.temporary)
        : [];
    open = begin('job', clause, stoodIn.length > 0 ? stoodIn : spokenOf);
    if (
      rig &&
      sense.remedy &&
      (sense.things.length === 0 ||
        sense.pronoun ||
        sense.things.some((thing) => rig.things.has(thing)) ||
        /\bnew\b/.test(words))
    )
      open.rig = rig;
    lastRig = null;
  }
  return found.filter((each) => each.kind === 'reading' || each.kind === 'store' || isWork(each as Open)) as Found[];
}

/** More of the work in hand: its length, weather, date, what if it is left. */
function isDetail({ words, sense }: TellingClause, open: Open): boolean {
  if (sense.minutes) return !open.minutes || putsRight.test(words);
  return (
    /(?<![\p{L}])(?:danger\w*|unsafe|safe|hurt|law|legal\w*|sailing|illegal|unlawful|fine|sails?|worse|rot|spread|before|by|until|for the|dry|knots|degrees|mast (?:up|down)|cover|propped|trailer|hand|alone|help|not urgent|no hurry|looks|comfort\w*|risk|priority|urgent|today|tomorrow|week\w*|month|monday|tuesday|wednesday|thursday|friday|saturday|sunday|not on the road)(?![\p{L}])/u.test(
      words,
    ) &&
    words.split(' ').length <= 14 &&
    (sense.things.length === 0 || sense.things.some((thing) => open.things.has(thing)))
  );
}

function goesOn(
  open: Open,
  { words, sense }: TellingClause,
  {
    sameSentence,
    shared,
    ahead,
  }: {
    readonly sameSentence: boolean;
    readonly shared: boolean;
    /** the rest of the sentence goes back to what was spoken of */
    readonly ahead: boolean;
  },
): boolean {
  if (open.kind === 'jury rig') return sameSentence && !sense.remedy && (sense.things.length === 0 || shared);
  const isNew = /(?<![\p{L}])(?:new|longer|stronger|bigger|thicker|stouter|fresh|heavier)(?![\p{L}])/u.test(words);
  const secondLength = sense.minutes && open.minutes && !putsRight.test(words);
  if (secondLength && !(sense.pronoun && !sense.subject && sameSentence)) return false;
  if (secondLength) return sense.things.length === 0 || shared;
  const backToIt = sense.pronoun || sense.things.length === 0 || shared;
  if (!sameSentence && open.minutes && sense.subject && !shared) return false;
  if (sense.remedy && !open.remedy) {
    // 'it has seized. Take the cap off, free it and grease it.'
    if (!sameSentence && ahead && !sense.defect && !open.minutes) return true;
    if (sameSentence) return backToIt || isNew || !sense.subject || !sense.defect;
    return backToIt || isNew;
  }
  if (sense.remedy) {
    if (open.minutes && !sameSentence) return sense.things.length === 0 && sense.pronoun && !sense.minutes;
    if (sameSentence) return backToIt || !sense.subject;
    return sense.things.length === 0 || (sense.pronoun && !sense.subject) || (shared && !open.minutes);
  }
  // something more that is wrong
  if (open.remedy && (open.minutes || !sameSentence))
    return sameSentence ? sense.things.length === 0 && sense.pronoun : shared && sense.pronoun;
  return sameSentence
    ? backToIt || /^(?:and|with|so)(?![\p{L}])/u.test(words)
    : (backToIt && !sense.subject) || /^(?:there's|there is|its|it|they|two of|one of)(?![\p{L}])/u.test(words);
}

/** A thing by itself, before what is said of it: 'lower shroud starboard, …'. */
const isNameAlone = ({ words, sense }: TellingClause) =>
  sense.things.length > 0 &&
  !(sense.defect || sense.remedy || sense.fine || sense.done || sense.temporary || sense.minutes) &&
  words.split(' ').length <= 6;

const hasFigure = (words: string) =>
  /\d[.,]\d|point|(?:ten|eleven|twelve|thirteen|fourteen) (?:oh|one|two|three|four|five|six|seven|eight|nine|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)/u.test(
    words,
  );

const inAny = (found: readonly (Found | Open)[], clause: Clause) =>
  found.some(({ clauses }) => (clauses as readonly Clause[]).includes(clause));

const isWork = (open: Open) => open.kind === 'jury rig' || open.defect || open.remedy;
