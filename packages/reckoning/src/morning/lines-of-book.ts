/** Lines of a morning list that are in no list of the house: jury rigs that are trusted with her, and what falls due. */
import type { Book, Id, Outing } from '#boat-book';
import type { LineFailing, MorningListName, OrderRule } from '#morning';
import { addDays } from '#units';
import { duesOfBook } from '../due-of-book.ts';
import { dueWhen } from '../dues-told.ts';
import { dayInWords } from '../when-in-words.ts';

/** A line as it goes on the list, of the house or of the book. */
export interface BookLine {
  readonly id: string;
  readonly text: string;
  readonly about: string;
  readonly cautions: readonly string[];
  readonly from: string;
  readonly fails: LineFailing;
  readonly juryRig: boolean;
  /** the due a job of it answers; null: none */
  readonly due: Id | null;
  /** of the house, after which it stands, and before which it always does */
  readonly near: { readonly after: string; readonly before: string; readonly because: string };
}

/** Where in a list what the book adds is looked at: right before she is trusted with it. */
const places: Readonly<Partial<Record<MorningListName, BookLine['near']>>> = {
  pack: { after: 'first-aid', before: 'loose', because: 'What is stowed is hard to get at.' },
  tow: { after: 'bearings', before: 'chocks', because: 'It is looked at before she moves.' },
  launch: { after: 'ramp', before: 'back-down', because: 'It is looked at before she is wet.' },
};

export function linesOfBook(book: Book, outing: Outing, list: MorningListName, today: string): readonly BookLine[] {
  const near = places[list];
  if (near === undefined) return [];
  return [...juryRigLines(book, outing, list, near), ...dueLines(book, outing, list, near, today)];
}

/** The rules that come with them. */
export const rulesOfBook = (lines: readonly BookLine[]): readonly OrderRule[] =>
  lines.map(({ id, near: { before, because } }) => ({ before: id, after: before, because, holds: 'usual' }));

function juryRigLines(book: Book, outing: Outing, list: MorningListName, near: BookLine['near']): readonly BookLine[] {
  // looked at where it is first asked to hold: on the road, and again before she floats
  if (list !== 'tow' && list !== 'launch') return [];
  return Object.entries(book.juryRigs)
    .filter(([, { state }]) => state === 'standing')
    .map(([id, rig]) => ({
      id: `rig.${id}`,
      text: `Jury rig looked at, and it holds: ${rig.title}`,
      about: `trusted until ${dayInWords(rig.trustedUntil)}${rig.wind_max_kn === null ? '' : `, to ${rig.wind_max_kn} knots`}`,
      cautions: [
        ...(list === 'tow' && rig.notOnRoad
          ? ['It is not for the road: off, or something better, before she moves.']
          : []),
        ...(list === 'launch' && rig.sails_max === 0 ? ['It is not to be sailed with.'] : []),
        ...(rig.trustedUntil < addDays(outing.date, outing.nights) ? ['Its trust ends before the outing does.'] : []),
        ...(list === 'launch' && rig.wind_max_kn !== null && (outing.gust_kn ?? outing.wind_kn ?? 0) > rig.wind_max_kn
          ? [`More than its ${rig.wind_max_kn} knots is expected.`]
          : []),
      ],
      from: 'your jury rig',
      fails: { title: `Replace the jury rig: ${rig.title}`, consequence: 'stops-sailing' },
      juryRig: true,
      due: null,
      near,
    }));
}

/** What falls due before the outing is over: the trailer's before she is towed, the rest as she is packed. */
function dueLines(
  book: Book,
  outing: Outing,
  list: MorningListName,
  near: BookLine['near'],
  today: string,
): readonly BookLine[] {
  if (list !== 'tow' && list !== 'pack') return [];
  const last = addDays(outing.date, outing.nights);
  return duesOfBook(book, today)
    .filter(({ falls, due }) => {
      const ofTrailer = due.zone !== null && /trailer/i.test(book.zones[due.zone]?.name ?? '');
      return falls.day !== null && falls.day.likely <= last && ofTrailer === (list === 'tow');
    })
    .map((dueOf) => ({
      id: `due.${dueOf.id}`,
      text: `Due, and looked at: ${dueOf.due.title}`,
      about: dueWhen(dueOf, today).replace(/\.$/, ''),
      cautions: dueOf.due.consequence === 'danger' ? ['Past its day it is not to be counted on.'] : [],
      from: dueOf.due.source === '' ? 'your dues' : `your dues: ${dueOf.due.source}`,
      fails: {
        title: dueOf.due.title,
        consequence: dueOf.due.consequence,
        ...(dueOf.due.recipe !== null && { recipe: dueOf.due.recipe }),
      },
      juryRig: false,
      due: dueOf.id,
      near,
    }));
}
