import type { Book, Outing } from '#boat-book';
import type { Bearing, Finding, NotLooked } from '#fit-to-go';
import { type LoadPathTold, loadPathsTold } from '../load-path-told.ts';
import type { OutingTime } from './outing-time.ts';

/** Load paths under the wind of the outing: what does not hold stops her, what is unknown is a condition. */
export function loadFindings(
  book: Book,
  outing: Outing,
  { today }: OutingTime,
): { readonly findings: readonly Finding[]; readonly notLooked: readonly NotLooked[] } {
  const paths = loadPathsTold(book, today);
  const cannot = (words: string, because: string): NotLooked => ({ subject: 'loads', words, because });
  return {
    findings: paths.map((path) => findingOf(path, outing)),
    notLooked: [
      ...(paths.length === 0 ? [cannot('what her gear bears', 'no load path is in the book')] : []),
      ...(outing.wind_kn === null && paths.length > 0
        ? [cannot('her gear under the wind of that day', 'no wind is written down for this outing')]
        : []),
    ],
  };
}

function findingOf(path: LoadPathTold, { wind_kn }: Outing): Finding {
  const tooMuch = path.cases.filter(({ goodTo_kn }) => wind_kn !== null && goodTo_kn !== null && goodTo_kn < wind_kn);
  const bearing: Bearing =
    path.verdict === 'does not hold' || tooMuch.length > 0
      ? 'stops'
      : path.verdict === 'unknown'
        ? 'condition'
        : 'sound';
  const held = { stops: 'does not hold', condition: 'whether it holds is not known', sound: 'holds' }[bearing];
  return {
    id: `load-path.${path.id}`,
    subject: 'loads',
    bearing,
    words: `${path.name}: ${path.verdict === 'no load' && bearing === 'sound' ? 'no load is written down, and nothing is known to be wrong' : held}`,
    because: [
      ...tooMuch.map(({ name, goodTo_kn }) => ({
        words: `${name}: good to ${Math.floor(goodTo_kn!)} knots; ${wind_kn} are expected.`,
        from: null,
      })),
      ...path.cases.flatMap(({ lines }) => lines.map((words) => ({ words, from: null }))),
      ...path.findings.map(({ wrong, right }) => ({ words: `${wrong} ${right}`, from: null })),
      ...path.lines.map((words) => ({ words, from: null })),
    ],
    remedies:
      bearing === 'sound'
        ? []
        : [
            {
              words:
                bearing === 'stops'
                  ? `Change what is first in ${path.name}, or go in less wind.`
                  : `Find out what the unknown parts of ${path.name} are.`,
              minutes: null,
              inHand: true,
            },
          ],
    cautions: path.cautions,
    of: { collection: 'loadPaths', id: path.id },
  };
}
