import type { BatteryEstimate } from '#battery';
import type { Book, ChargerRecord, Outing } from '#boat-book';
import type { Bearing, Finding, NotLooked } from '#fit-to-go';
import { localAt } from '#units';
import type { ReadBlocks } from '../power-blocks.ts';
import { batteryOfBook } from '../power-history.ts';
import { chanceInWords } from '../power-in-words.ts';
import { batteryNow, nightAheadOf, nightsToOuting } from '../power-night.ts';

/** Under these shares of a thousand nights it stops her, or is a condition. Our judgement. */
const enough = { stops: 0.5, sound: 0.9 } as const;

/** Whether each battery lasts the nights of an outing. It takes some tenths of a second: not for the moment of a tap. */
export function powerFindings(
  book: Book,
  outing: Outing,
  now: number,
  blocks: ReadBlocks = new Map(),
): { readonly findings: readonly Finding[]; readonly notLooked: readonly NotLooked[] } {
  const findings: Finding[] = [];
  const notLooked: NotLooked[] = [];
  const cannot = (because: string) =>
    notLooked.push({ subject: 'power', words: 'whether the battery lasts the nights', because });
  if (outing.nights === 0) return { findings, notLooked };
  const batteries = Object.keys(book.batteries);
  if (batteries.length === 0) cannot('no battery is in the book');
  for (const batteryId of batteries) {
    const battery = batteryOfBook(book, batteryId, blocks);
    if (battery === null) continue;
    const known = batteryNow(book, battery, now);
    if (typeof known === 'string') {
      cannot(
        known === 'no reading'
          ? `${battery.record.name}: no reading of its volts is in the book`
          : 'the boat has no place',
      );
      continue;
    }
    const ahead = nightsToOuting(book, known.place, now);
    if (ahead === null || ahead.outing !== outing) {
      cannot('only the next outing with nights aboard is foretold, and no further than a month ahead');
      continue;
    }
    const night = nightAheadOf(book, battery, known, { now, nights: ahead.nights, aboard: 'outings' });
    const last = night.endurance.nights.at(-1)!;
    const share = last.lasts.of / last.lasts.runs;
    const bearing: Bearing = share < enough.stops ? 'stops' : share < enough.sound ? 'condition' : 'sound';
    const newest = battery.readings
      .map(([, { at }]) => at)
      .sort()
      .at(-1);
    findings.push({
      id: `battery.${batteryId}`,
      subject: 'power',
      bearing,
      words: `${battery.record.name}: lasts ${outing.nights === 1 ? 'the night' : `the ${outing.nights} nights`} in ${chanceInWords(last.lasts)}`,
      because: [
        {
          words: `Under ${100 * enough.sound} of 100 it is a condition, under ${100 * enough.stops} of 100 it stops her: our judgement.`,
          from: null,
        },
        {
          words: `On the last morning about ${Math.round(last.morning_pct.likely)} % is left (${Math.round(last.morning_pct.low)} to ${Math.round(last.morning_pct.high)}); its floor is ${night.floor_pct} %.`,
          from: null,
        },
        {
          words: `It has about ${Math.round(known.estimate.soc_pct.likely)} % now, by its readings.`,
          from: newest === undefined ? null : localAt(Date.parse(newest), known.place.zone).day,
        },
        {
          words: `About ${night.draws.sum_Ah.likely.toFixed(1)} Ah a day are drawn with someone aboard${night.sunDay_Ah ? `; the sun brings about ${night.sunDay_Ah.likely.toFixed(1)}` : ''}.`,
          from: null,
        },
      ],
      remedies:
        bearing === 'sound'
          ? []
          : [
              {
                words: `${battery.record.name}: charge it before she goes.`,
                minutes: null,
                waits: chargingInWords(night.chargers, known.estimate),
                inHand: true,
                inTime: null,
                leaves: 'nothing',
                of: { collection: 'batteries', id: batteryId },
              },
              {
                words: `${battery.record.name}: leave on less at night.`,
                minutes: null,
                waits: '',
                inHand: true,
                inTime: null,
                leaves: 'condition',
                of: { collection: 'batteries', id: batteryId },
              },
            ],
      cautions:
        bearing === 'sound'
          ? []
          : ['An anchor light that goes out at night is unlawful and a danger: take a second one.'],
      of: { collection: 'batteries', id: batteryId },
    });
  }
  return { findings, notLooked };
}

/** What is taken in near full is less than a charger gives: a fifth more time. Our judgement. */
const assumedSlow = 1.2;

/** How long the strongest mains charger takes to fill it; empty: there is none. */
function chargingInWords(
  chargers: readonly ChargerRecord[],
  { soc_pct, capacity_Ah }: Pick<BatteryEstimate, 'soc_pct' | 'capacity_Ah'>,
): string {
  const [strongest] = chargers.filter(({ kind }) => kind === 'mains').sort((a, b) => b.amps - a.amps);
  if (strongest === undefined) return '';
  const hours = (assumedSlow * capacity_Ah.likely * (1 - soc_pct.likely / 100)) / strongest.amps;
  return `Then it charges: about ${Math.max(1, Math.ceil(hours))} h to full by ${strongest.name}.`;
}
