import { gatherWork, topicsIn } from './gather-work.ts';
import { heardLine } from './heard-line.ts';
import type { Judges } from './judged/judge.ts';
import { readHeardWords } from './read-line.ts';
import type { Lexicon, ReadLine } from './read-line-parts.ts';
import { type Clause, clausesOf } from './walk-clauses.ts';
import type { Proposal, WalkRound } from './walk-round.ts';
import type { Gathered } from './work-in-hand.ts';

/** Most of a page that is read at once. */
export const longestPage = 60_000;

/**
 * Read a page of plain talk, a walk round the boat: the jobs and jury rigs in it, the battery's volts, things to get and
 * things on hand, each with the words it came from. What is said to be well, or done, or is no work at all, proposes
 * nothing.
 *
 * The page is parted into what it speaks of, a thing at a time, and each becomes one piece of work: what is wrong, what is
 * to be done about it, how long, what if not; a fix that holds for now apart. A heading ('Foredeck.') gives its place to the work under it
 * that names none.
 *
 * @param page  as pasted or dictated, with or without stops. At most 60,000 characters
 * @throws RangeError for a longer page
 *
 * English. What two sentences far apart say of one thing becomes two proposals.
 */
export function readWalkRound(page: string, lexicon: Lexicon, judges?: Judges): WalkRound {
  if (page.length > longestPage)
    throw new RangeError(`a page has at most ${longestPage} characters, got ${page.length}`);
  const heard = heardLine(page, lexicon);
  const found = gatherWork(clausesOf(heard.text), lexicon, judges);
  const proposals = found.map((each): Proposal => {
    const spans = spansOf(each.clauses, heard.places, page);
    const said = { spans, said: spans.map(({ from, to }) => page.slice(from, to)).join(' … ') };
    if (each.kind === 'reading') {
      const { volts, circumstance, panelDark } = each;
      return { kind: 'reading', ...said, volts, circumstance, panelDark };
    }
    if (each.kind === 'store') {
      const { name, onHand, keptAt } = each;
      return { kind: 'store', ...said, name, onHand, keptAt };
    }
    const read = partsOf(each, heard.text, lexicon);
    const under = read.zone === null ? each.heading : null;
    const placed = under
      ? { ...read, zone: { value: under.zone, from: 0, to: 0, words: under.words, inTitle: false } }
      : read;
    if (each.kind === 'jury rig') {
      const notOnRoad = each.clauses.some(({ words }) => offTheRoad.test(words));
      return { kind: 'jury rig', ...said, read: placed, under: under?.words ?? null, notOnRoad };
    }
    const rig = each.rig ? found.indexOf(each.rig) : -1;
    return {
      kind: 'job',
      ...said,
      read: placed,
      under: under?.words ?? null,
      rig: rig < 0 ? null : rig,
      followUp: each.followUp,
    };
  });
  return { proposals };
}

/** A page in its topics, and where on the page a clause stands: what is learned from. */
export function topicsOfPage(page: string, lexicon: Lexicon) {
  const { text, places } = heardLine(page, lexicon);
  return {
    topics: topicsIn(clausesOf(text), lexicon),
    spanOf: ({ from, to }: Clause) => ({ from: places[from]!, to: places[to - 1]! + 1 }),
  };
}

const offTheRoad =
  /(?<![a-zß-ɏ])(?:not (?:on the road|for (?:towing|the road)|to be towed)|no (?:towing|road)|don't tow|do not tow)(?![a-zß-ɏ])/;

/** The parts of a line that its clauses make together; the title from those that say what is wrong or to be done. */
function partsOf({ clauses, kind }: Gathered, text: string, lexicon: Lexicon): ReadLine {
  const line = (some: readonly Clause[]) =>
    some
      .map(({ from, to }, at) => (at === 0 ? text.slice(from, to) : goingOn(text.slice(from, to))))
      .join(', ')
      .slice(0, 2000);
  const all = readHeardWords(line(clauses), lexicon);
  const telling = clauses.filter(
    ({ sense }) => sense.defect || sense.remedy || (kind === 'jury rig' && sense.temporary),
  );
  const short = telling.slice(0, 3);
  const title = (short.length < clauses.length && readHeardWords(line(short), lexicon).title) || all.title;
  return { ...all, title: title.length > 160 ? `${title.slice(0, 157).replace(/\s+\S*$/, '')} …` : title };
}

/** A sentence that goes on after a comma. Not `I`, nor what is written in capitals. */
const goingOn = (words: string) =>
  words.replace(/^[A-ZÀ-Þ](?=[a-zß-ɏ]|[' ][a-zß-ɏ])/, (letter) =>
    /^I[' ]/.test(words) ? letter : letter.toLowerCase(),
  );

function spansOf(clauses: readonly Clause[], places: readonly number[], page: string) {
  const spans: { from: number; to: number }[] = [];
  for (const { from, to } of clauses) {
    const span = { from: places[from]!, to: places[to - 1]! + 1 };
    const last = spans.at(-1);
    if (last && !/[a-zß-ɏ0-9]/.test(page.slice(last.to, span.from))) last.to = span.to;
    else spans.push(span);
  }
  return spans;
}
