import { type HeardLine, heardLine, withoutOpening } from './heard-line.ts';
import { type LineText, lineText, titleLeft } from './line-text.ts';
import { readFitting, readOuting, readSetUps, readZone } from './read-boat-words.ts';
import { readConditions } from './read-conditions.ts';
import { readConsequence, readTemporary } from './read-consequence.ts';
import { readDate } from './read-date.ts';
import { readHands, readNotAlone } from './read-hands.ts';
import { readLength } from './read-length.ts';
import type { Lexicon, ReadLine, Understood } from './read-line-parts.ts';
import { misleading, zoneOfThing } from './thing-places.ts';

/**
 * Read one line of plain talk about a piece of work: zone, fitting, minutes, hands, set-ups, conditions, consequence,
 * date, outing, and whether it is a temporary fix. What is understood comes with the very words it was read from;
 * everything else stays in the title. Nothing is guessed: a part not named in the line is null.
 *
 * A zone that is a part of the line by itself ('foredeck, …') counts first, then the zone of the fitting named, with
 * the fitting's words; then the first zone named; then the usual place of the thing named.
 *
 * @param line  as typed or dictated. At most 2,000 characters are read
 * @throws RangeError for a longer line: it is more than one
 *
 * English words. Durations said of curing, drying or soaking are waits, not work, and stay in the title.
 */
export function readLine(line: string, lexicon: Lexicon): ReadLine {
  if (line.length > 2000) throw new RangeError(`a line has at most 2,000 characters, got ${line.length}`);
  const heard = heardLine(line, lexicon);
  return asSaid(readHeard(lineText(heard.text), lexicon), heard, line);
}

/** Parts of words that were heard before, as a stretch of a page was. */
export const readHeardWords = (words: string, lexicon: Lexicon): ReadLine =>
  readHeard(lineText(withoutOpening(words)), lexicon);

/** The same parts with the words of the line that they came from. */
function asSaid(read: ReadLine, { places }: HeardLine, line: string): ReadLine {
  const said = <T>(part: Understood<T>): Understood<T> => {
    const from = places[part.from]!;
    const to = places[part.to - 1]! + 1;
    return { ...part, from, to, words: line.slice(from, to) };
  };
  const saidOrNone = <T>(part: Understood<T> | null) => part && said(part);
  return {
    title: read.title,
    zone: saidOrNone(read.zone),
    fitting: saidOrNone(read.fitting),
    minutes: saidOrNone(read.minutes),
    hands: saidOrNone(read.hands),
    notAlone: saidOrNone(read.notAlone),
    setUps: read.setUps.map(said),
    conditions: read.conditions.map(said),
    consequence: saidOrNone(read.consequence),
    due: saidOrNone(read.due),
    outing: saidOrNone(read.outing),
    temporary: saidOrNone(read.temporary),
  };
}

function readHeard(text: LineText, lexicon: Lexicon): ReadLine {
  // what has figures and units first: 'under 10 knots' must not be read as a set-up, nor '12 June' as a length
  const conditions = readConditions(text);
  const minutes = readLength(text);
  const notAlone = readNotAlone(text);
  const hands = readHands(text);
  // before the set-ups, which in talk without commas are known by what follows them
  const consequence = readConsequence(text);
  const setUps = readSetUps(text, lexicon.setUps);
  const outing = readOuting(text, lexicon);
  const due = readDate(text, lexicon.today);
  const temporary = readTemporary(text);
  const fitting = readFitting(text, lexicon.fittings);
  const zone =
    readZone(text, lexicon.zones, { alone: true }) ??
    zoneOfFitting(fitting, lexicon) ??
    firstOf(
      readZone(text, lexicon.zones, { keep: true, except: misleading(text, lexicon.zones) }),
      zoneOfThing(text, lexicon.zones),
    );
  const parts = { minutes, hands, notAlone, setUps, conditions, consequence, due, outing, temporary };
  const title = titleLeft(text);
  if (title !== '') return { title, zone, fitting, ...parts };
  // nothing but a place was said: then the place is what it is about
  return { title: placeAsTitle(text, fitting ?? zone), zone: kept(zone), fitting: kept(fitting), ...parts };
}

/** A zone named counts before the place of a thing, unless that is named first and by more than one word. */
function firstOf(named: Understood<string> | null, thing: Understood<string> | null): Understood<string> | null {
  if (named === null || thing === null) return named ?? thing;
  return thing.from < named.from && thing.words.includes(' ') ? thing : named;
}

function zoneOfFitting(fitting: Understood<string> | null, { fittings, zones }: Lexicon): Understood<string> | null {
  const zone = fitting && fittings[fitting.value]?.zone;
  return zone && zones[zone] ? { ...fitting, value: zone } : null;
}

function placeAsTitle(text: LineText, place: Understood<string> | null): string {
  if (!place) return '';
  const words = text.line.slice(place.from, place.to).trim();
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const kept = <T>(part: Understood<T> | null) => (part ? { ...part, inTitle: true } : null);
