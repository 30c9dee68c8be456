import { restVolts } from '#battery';
import type { Book, Id } from '#boat-book';
import { circuitSpans } from '#power';
import type { Span } from '#units';
import { type LoadTestTrend, loadTestTrend } from './load-test-trend.ts';
import { furtherReadingInWords } from './next-reading-in-words.ts';
import type { ReadBlocks } from './power-blocks.ts';
import { chargingHelp } from './power-charging.ts';
import { batteryOfBook } from './power-history.ts';
import {
  batteryCautions,
  chargersInWords,
  chargingHelpInWords,
  comparedInWords,
  drawSumInWords,
  drawsInWords,
  floorInWords,
  howFullInWords,
  kindInWords,
  loadTestChangeInWords,
  loadTestsInWords,
  morningInWords,
  nightsInWords,
  noBatteryNowInWords,
  outingInWords,
  sunInWords,
  trendInWords,
  usualHeat_C,
  whyInWords,
} from './power-in-words.ts';
import {
  batteryNow,
  type NightCompared,
  type NightForetold,
  nightAheadOf,
  nightForetold,
  nightsCompared,
  nightsToOuting,
} from './power-night.ts';
import { powerPlace } from './power-place.ts';
import { powerWorking } from './power-working.ts';
import type { FigureWorking, ToldLine } from './told-line.ts';

/** All that is told of one battery, in whole sentences. Screens, prints and the command line use the same. */
export interface PowerTold {
  /** `House battery: 17 Ah, 12 V, AGM` */
  readonly label: string;
  /** how full it is; or why that is not known */
  readonly full: readonly ToldLine[];
  /** the rest under its titles, none of them empty */
  readonly parts: readonly PowerPart[];
  readonly cautions: readonly string[];
  /** how each kind of figure is worked out */
  readonly working: readonly FigureWorking[];
  /** for the drawing of the nights; null: nothing is known of the charge */
  readonly course: PowerCourse | null;
  /** null: the book has no place, so what flowed cannot be worked out */
  readonly loadTests: LoadTestTrend | null;
  /** what becomes of the battery over its load tests; null: they do not say */
  readonly loadTestsChange: ToldLine | null;
  /** what the floor reads rested, at a mild air: a load test stops there. [V] */
  readonly stop_V: number;
  /** of the night that comes, to be kept; null: too late, or nothing is known */
  readonly foretold: NightForetold | null;
  /** nights foretold whose morning was read, oldest first */
  readonly compared: readonly NightCompared[];
}

/** One part of what is told: a drawing or a list may stand in its place on a screen. */
export interface PowerPart {
  readonly of: 'why' | 'nights' | 'outing' | 'help' | 'draws' | 'load tests' | 'foretold';
  readonly title: string;
  readonly lines: readonly ToldLine[];
}

/** Charge over the nights ahead. [ms, %] */
export interface PowerCourse {
  readonly at: readonly number[];
  readonly low: readonly number[];
  readonly likely: readonly number[];
  readonly high: readonly number[];
  readonly floor_pct: number;
  /** from sunset to sunrise */
  readonly nights: readonly Span[];
  readonly zone: string;
}

/**
 * How full a battery is and why, the nights ahead as if aboard, the next outing's, what further reading would help, what the
 * circuits take; null: it is not in the book.
 *
 * @param now     epoch ms
 * @param nights  nights looked at from now. 1–7
 * @param blocks  readings from files, those that are on this device
 */
export function powerTold(
  book: Book,
  id: Id,
  now: number,
  nights: number,
  blocks: ReadBlocks = new Map(),
): PowerTold | null {
  const battery = batteryOfBook(book, id, blocks);
  if (battery === null) return null;
  const { record } = battery;
  const label = `${record.name}: ${record.nominal_Ah} Ah, ${record.nominal_V} V, ${kindInWords[record.chemistry]}`;
  const cautions = batteryCautions(battery, book);
  const stop_V = restVolts(record.chemistry, record.floor_pct, usualHeat_C, record.nominal_V).likely;
  const place = powerPlace(book, now, null);
  const loadTests = place === null ? null : loadTestTrend(book, battery, place);
  const part = (of: PowerPart['of'], title: string, lines: readonly ToldLine[]): PowerPart[] =>
    lines.length === 0 ? [] : [{ of, title, lines }];
  const testsPart = loadTests === null ? [] : part('load tests', 'Load tests', loadTestsInWords(loadTests));
  const loadTestsChange = loadTests === null ? null : loadTestChangeInWords(loadTests);
  const tested = { loadTests, loadTestsChange, stop_V };
  const compared = nightsCompared(book, battery);
  const known = batteryNow(book, battery, now);
  if (typeof known === 'string') {
    const full = [noBatteryNowInWords[known]];
    return {
      label,
      full,
      parts: testsPart,
      cautions,
      working: powerWorking(battery, null, null),
      course: null,
      ...tested,
      foretold: null,
      compared,
    };
  }
  const ahead = nightAheadOf(book, battery, known, { now, nights, aboard: 'all' });
  const trip = nightsToOuting(book, known.place, now);
  const trend = trendInWords(compared);
  const { course } = ahead.endurance;
  return {
    label,
    full: howFullInWords(known, battery),
    parts: [
      ...part('why', 'Why', whyInWords(known, battery, now)),
      ...part('nights', 'The nights ahead, if you are aboard (each chance from 1000 runs)', [
        ...nightsInWords(ahead),
        ...morningInWords(ahead),
        floorInWords(ahead),
        sunInWords(ahead),
        ...chargersInWords(ahead),
      ]),
      ...part(
        'outing',
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
      ...part('help', 'What would help', [
        ...chargingHelp(ahead.chargers, ahead.endurance, known.place, ahead.withMore).map((help) =>
          chargingHelpInWords(help, now, known.place.zone),
        ),
        furtherReadingInWords(known, battery, stop_V),
      ]),
      ...part('draws', 'What draws', [...drawsInWords(ahead), drawSumInWords(ahead)]),
      ...testsPart,
      ...part('foretold', 'Nights foretold and read', [
        ...compared.slice(-6).map(comparedInWords),
        ...(trend === null ? [] : [trend]),
      ]),
    ],
    cautions,
    working: powerWorking(battery, known, ahead),
    ...tested,
    foretold: nightForetold(book, battery, known, now),
    compared,
    course: {
      at: [...course.at],
      low: [...course.low],
      likely: [...course.likely],
      high: [...course.high],
      floor_pct: ahead.floor_pct,
      nights: circuitSpans({ kind: 'sun', from: 'sunset', to: 'sunrise' }, known.place, {
        start: course.at[0]!,
        end: course.at.at(-1)!,
      }),
      zone: known.place.zone,
    },
  };
}
