import type { Book, Id } from '#boat-book';
import {
  batteryCautions,
  batteryNow,
  batteryOfBook,
  comparedInWords,
  drawSumInWords,
  drawsInWords,
  floorInWords,
  furtherReadingInWords,
  howFullInWords,
  loadTestInWords,
  loadTestResults,
  morningInWords,
  nightAheadOf,
  nightsCompared,
  nightsInWords,
  nightsToOuting,
  noBatteryNowInWords,
  outingInWords,
  sunInWords,
  trendInWords,
  whyInWords,
} from '#reckoning';

/**
 * One battery as it is printed: how full and why, the nights ahead as if aboard, the next outing's, what further reading would
 * help, what the circuits take.
 *
 * @param now     epoch ms
 * @param nights  nights looked at from now. 1–7
 */
export function powerLines(book: Book, id: Id, now: number, nights: number): string[] {
  const battery = batteryOfBook(book, id);
  if (battery === null) return [`There is no battery '${id}' in the book.`];
  const { record } = battery;
  const label = `${record.name}: ${record.nominal_Ah} Ah, ${record.nominal_V} V, ${kindInWords[record.chemistry]}`;
  const known = batteryNow(book, battery, now);
  if (typeof known === 'string') return [label, `  ${noBatteryNowInWords[known]}`];
  const ahead = nightAheadOf(book, battery, known, { now, nights, aboard: 'all' });
  const trip = nightsToOuting(book, known.place, now);
  const compared = nightsCompared(book, battery);
  const trend = trendInWords(compared);
  const tests = loadTestResults(book, battery, known.place);
  const part = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
  return [
    label,
    ...howFullInWords(known, battery).map((line) => `  ${line}`),
    ...part('Why', whyInWords(known, battery, now)),
    ...part('The nights ahead, if you are aboard (each chance from 1000 runs)', [
      ...nightsInWords(ahead),
      ...morningInWords(ahead),
      floorInWords(ahead),
      sunInWords(ahead),
    ]),
    ...part(
      'The next outing',
      trip === null
        ? []
        : [
            outingInWords(
              nightAheadOf(book, battery, known, { now, nights: trip.nights, aboard: 'outings' }),
              trip.outing.title,
              trip.outing.nights,
            ),
          ],
    ),
    ...part('What would help', [furtherReadingInWords(known, battery, now)]),
    ...part('What draws', [...drawsInWords(ahead), drawSumInWords(ahead)]),
    ...part('Load tests', tests.map(loadTestInWords)),
    ...part('Nights foretold and read', [
      ...compared.slice(-6).map(comparedInWords),
      ...(trend === null ? [] : [trend]),
    ]),
    ...part('Take care', batteryCautions(battery, book)),
  ];
}

const kindInWords = { flooded: 'flooded lead', agm: 'AGM', gel: 'gel', lifepo4: 'LiFePO4' } as const;
