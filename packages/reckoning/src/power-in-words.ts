/** A battery, its night and its readings in sentences with their numbers. Shared by the screen and `fettle power`. */
import { type Band, type OddReading, restCharge } from '#battery';
import type { Book } from '#boat-book';
import type { Chance, Endurance } from '#power';
import { clockOfMinute, localAt, showNumber } from '#units';
import type { LoadTestResult, LoadTestTrend } from './load-test-trend.ts';
import { oddsInWords } from './odds-in-words.ts';
import { voltsIn, voltsRead } from './power-blocks.ts';
import type { ChargingHelp } from './power-charging.ts';
import type { BatteryOfBook } from './power-history.ts';
import type { BatteryNow, NightAheadOf, NightCompared } from './power-night.ts';
import { figureOf, type ToldLine, told } from './told-line.ts';
import { dayInWords } from './when-in-words.ts';

export const volts = (value: number) => value.toFixed(2);
export const Ah = (value: number) => showNumber(value, value < 10 ? 1 : 0);
const pct = (value: number) => String(Math.round(value));
const hour = 3_600_000;
const charge = figureOf('charge');
const over = figureOf('over floor');
const capacity = figureOf('capacity');
const chance = figureOf('chance');
const reached = figureOf('floor reached');
const nightDraw = figureOf('night draw');
const morningCharge = figureOf('morning charge');
const morningVolts = figureOf('morning volts');
const floorVolts = figureOf('floor volts');
const sun = figureOf('sun');
const charger = figureOf('charger');
const draw = figureOf('draw');
const tested = figureOf('load test');
const foretold = figureOf('foretold');
export const kindInWords = { flooded: 'flooded lead', agm: 'AGM', gel: 'gel', lifepo4: 'LiFePO4' } as const;

/** Where the air was not written down. Assumed. [°C] */
export const usualHeat_C = 18;

/** `62 to 78` or one figure where both round to the same. */
export function bandInWords({ low, high }: Pick<Band, 'low' | 'high'>, shown: (value: number) => string): string {
  const [from, to] = [shown(low), shown(high)];
  return from === to ? from : `${from} to ${to}`;
}

export const chanceInWords = ({ of, runs }: Chance) => oddsInWords({ times: of, runs, share: of / runs });

/** `today 05:00`, `Wed 25 Nov 05:00` */
export function momentInWords(at: number, now: number, zone: string): string {
  const { day, minuteOfDay } = localAt(at, zone);
  const today = localAt(now, zone).day;
  return `${day === today ? 'today' : dayInWords(day)} ${clockOfMinute(minuteOfDay)}`;
}

/** A last reading that the rest speak against is not passed over: it may be the rest that is out of date. */
function lastIsOddInWords(
  { reading, because, impossible }: OddReading,
  { chemistry, nominal_V }: BatteryOfBook['record'],
): ToldLine {
  const said = `The last reading, ${volts(reading.volts)} V,`;
  if (impossible) return `${said} cannot be right: ${because}. Without it:`;
  const rested = restCharge(chemistry, reading.volts, usualHeat_C, nominal_V);
  return told`${said} does not go with the rest. If it is right, and rested, it means ${charge(`${bandInWords(rested, pct)} %`)}: read again, and look for what was left on. Without it:`;
}

/** How full it is now, what that is in ampere-hours, and what it holds when full. The first is the answer. */
export function howFullInWords({ estimate }: BatteryNow, { record, readings }: BatteryOfBook): ToldLine[] {
  const { soc_pct, capacity_Ah } = estimate;
  const overFloor = (band: Band): Band => ({
    low: Math.max(0, ((band.low - record.floor_pct) / 100) * capacity_Ah.low),
    likely: Math.max(0, ((band.likely - record.floor_pct) / 100) * capacity_Ah.likely),
    high: Math.max(0, ((band.high - record.floor_pct) / 100) * capacity_Ah.high),
  });
  const left = overFloor(soc_pct);
  const last = Math.max(...readings.map(([, { at }]) => Date.parse(at)));
  const odd = estimate.odd.find(({ reading }) => reading.at === last);
  return [
    ...(odd === undefined ? [] : [lastIsOddInWords(odd, record)]),
    soc_pct.low > 99.5
      ? told`${charge('Full')}, as far as the readings tell.`
      : told`About ${charge(`${pct(soc_pct.likely)} %`)} full: ${charge(`${bandInWords(soc_pct, pct)} %`)} in 9 of 10.`,
    left.likely > 0
      ? told`About ${over(`${Ah(left.likely)} Ah`)} stand over the floor of ${pct(record.floor_pct)} % ${over(`(${bandInWords(left, Ah)})`)}.`
      : `It is under its floor of ${pct(record.floor_pct)} %.`,
    told`When full it holds about ${capacity(`${Ah(capacity_Ah.likely)} Ah`)} ${capacity(`(${bandInWords(capacity_Ah, Ah)})`)}; its label says ${Ah(record.nominal_Ah)}.`,
  ];
}

/** Readings that do not go with the rest, told one by one. */
const oddTold = 4;

/** Why it is believed to be so full: what was read, and how long ago. */
export function whyInWords(known: BatteryNow, battery: BatteryOfBook, now: number): string[] {
  const { zone } = known.place;
  const inSpan = battery.readings.filter(([, { at }]) => Date.parse(at) >= known.span.start && Date.parse(at) <= now);
  const rested = inSpan.filter(([, { circumstance }]) => circumstance === 'rested').at(-1)?.[1];
  const last = inSpan.at(-1)?.[1];
  const lines = [
    `From ${known.counted} ${known.counted === 1 ? 'reading' : 'readings'} since ${dayInWords(localAt(known.span.start + 12 * hour, zone).day)}, and what drew and what the sun may have brought between them.`,
  ];
  if (rested)
    lines.push(
      `Last read rested ${momentInWords(Date.parse(rested.at), now, zone)}: ${volts(rested.volts)} V${rested.air_C === null ? '' : ` at ${Math.round(rested.air_C)} °C`}.`,
    );
  else
    lines.push(
      'It was never read rested in that time, so the charge is inferred from readings under load or on charge.',
    );
  if (last && last !== rested)
    lines.push(
      `Since then ${momentInWords(Date.parse(last.at), now, zone)}, ${last.circumstance === 'not said' ? 'nobody said how' : last.circumstance}: ${volts(last.volts)} V.`,
    );
  const ofFiles = voltsIn(battery.blocks, { start: known.span.start, end: now });
  const lastOfFiles = voltsRead(battery.blocks, { start: known.span.start, end: now }, battery.record.meter).at(-1);
  if (lastOfFiles)
    lines.push(
      `Of the readings ${ofFiles} ${ofFiles === 1 ? 'is' : 'are'} from files, the last of ${momentInWords(lastOfFiles.at, now, zone)}: ${volts(lastOfFiles.volts)} V.`,
    );
  const { odd } = known.estimate;
  // files may bring hundreds that do not go with the rest: the newest are told
  for (const { reading, because } of odd.slice(-oddTold))
    lines.push(`Left out: ${volts(reading.volts)} V of ${momentInWords(reading.at, now, zone)}, for ${because}.`);
  if (odd.length > oddTold) lines.push(`Left out besides: ${odd.length - oddTold} older readings, for the like.`);
  return lines;
}

/** The chances of the nights looked at, and when the floor may be reached. The first is the answer. */
export function nightsInWords({ endurance, place }: NightAheadOf): ToldLine[] {
  const lines = endurance.nights.map(
    ({ lasts }, n): ToldLine =>
      n === 0
        ? told`Lasts the night in ${chance(chanceInWords(lasts))}.`
        : told`${countInWords(n + 1)} nights, with the sun between, in ${chance(chanceInWords(lasts))}.`,
  );
  return [...lines, floorReachedInWords(endurance, place.zone)];
}

function floorReachedInWords({ hoursLeft, course, lookedAt_h }: Endurance, zone: string): ToldLine {
  const from = course.at[0]!;
  const until = (hours: number) => momentInWords(from + hours * hour, from, zone);
  const { low, likely, high } = hoursLeft;
  if (likely === 0) return 'It is under its floor already.';
  if (low === null)
    return told`In 19 of 20 the floor is not reached within ${reached(`${Math.round(lookedAt_h)} hours`)}.`;
  if (likely === null)
    return told`The floor is reached by ${reached(until(low))} in 1 of 20; more likely not at all within ${String(Math.round(lookedAt_h))} hours.`;
  return told`The floor is most likely reached about ${reached(until(likely))}: not before ${reached(until(low))} in 19 of 20, ${high === null ? 'perhaps not at all' : `and by ${until(high)} in 19 of 20`}.`;
}

/** What the night takes, what stands in the morning, and what the meter should then show. */
export function morningInWords(night: NightAheadOf): ToldLine[] {
  const first = night.endurance.nights[0]!;
  const { zone } = night.place;
  const clock = (at: number) => clockOfMinute(localAt(at, zone).minuteOfDay);
  return [
    told`From ${clock(Math.max(first.start, night.from))} to sunrise ${clock(first.end)} it gives about ${nightDraw(`${Ah(first.drawn_Ah.likely)} Ah`)} ${nightDraw(`(${bandInWords(first.drawn_Ah, Ah)})`)}.`,
    told`At sunrise about ${morningCharge(`${pct(first.morning_pct.likely)} %`)} ${morningCharge(`(${bandInWords(first.morning_pct, pct)})`)}. The meter should then show ${morningVolts(`${volts(night.morning_V.likely)} V`)} ${morningVolts(`(${bandInWords(night.morning_V, volts)})`)} with ${night.nightLoad_A.toFixed(2)} A on.`,
  ];
}

/** The floor as volts, at the morning's air. */
export function floorInWords(night: NightAheadOf): ToldLine {
  return told`The floor of ${pct(night.floor_pct)} % reads ${floorVolts(`${volts(night.floor_V.likely)} V`)} rested ${floorVolts(`(${bandInWords(night.floor_V, volts)})`)}, ${floorVolts(`${volts(night.floorUnderLoad_V.likely)} V`)} with ${night.nightLoad_A.toFixed(2)} A on, at ${String(night.morning_C)} °C.`;
}

/** What the sun may bring, or that nothing does. */
export function sunInWords({ sunDay_Ah }: NightAheadOf): ToldLine {
  return sunDay_Ah === null
    ? 'No panel is in the book: nothing is counted to come in.'
    : told`The panel may bring ${sun(`${Ah(sunDay_Ah.likely)} Ah`)} on a usual day, ${sun(Ah(sunDay_Ah.low))} on a dull and ${sun(Ah(sunDay_Ah.high))} on a fair one; near full the battery takes less of it.`;
}

/** Which chargers are counted in the nights ahead, and which are not. */
export function chargersInWords({ chargers }: NightAheadOf): string[] {
  return chargers.map(({ name, amps, hours_a_day }) =>
    hours_a_day === undefined || hours_a_day === null
      ? `${name} (${showNumber(amps, 1)} A) is not counted: it is not said how long it runs on a day aboard.`
      : `${name} is counted: ${showNumber(amps, 1)} A for ${showNumber(hours_a_day, 1)} h a day aboard; near full the battery takes less.`,
  );
}

/** What a charger would change of the nights ahead. */
export const chargingHelpInWords = (
  { charger: { name, amps }, until, reached_pct, nights, without, with: changed }: ChargingHelp,
  now: number,
  zone: string,
): ToldLine => {
  const all = nights === 1 ? 'the night' : `${countInWords(nights).toLowerCase()} nights`;
  const [then, before] = [charger(chanceInWords(changed)), chance(chanceInWords(without))];
  const helps = changed.of > without.of;
  const runs = `${name} (${showNumber(amps, 1)} A)`;
  if (until === null)
    return helps
      ? told`With an hour a day of ${runs} it lasts ${all} in ${then}, instead of ${before}.`
      : told`An hour a day of ${runs} does not help: ${all} in ${before} still.`;
  const brings = [charger(momentInWords(until, now, zone)), charger(`${pct(reached_pct)} %`)] as const;
  return helps
    ? told`${runs} put on now until ${brings[0]} brings it to about ${brings[1]}. It then lasts ${all} in ${then}, instead of ${before}.`
    : told`${runs} put on now until ${brings[0]} brings it to about ${brings[1]}. A night counts as lasted only where it was over its floor all the way from now.`;
};

/** Nights to an outing: whether the battery is over its floor through all of them. */
export function outingInWords({ endurance }: NightAheadOf, title: string, outingNights: number): ToldLine {
  const last = endurance.nights.at(-1)!;
  const first = endurance.nights.at(-outingNights) ?? last;
  return told`${title}: ${outingNights === 1 ? 'the night' : outingNights === 2 ? 'both nights' : `all ${countInWords(outingNights).toLowerCase()} nights`} in ${chance(chanceInWords(last.lasts))}. It sets out into the first with about ${morningCharge(`${pct(first.evening_pct.likely)} %`)} ${morningCharge(`(${bandInWords(first.evening_pct, pct)})`)} and ends at ${morningCharge(`${pct(last.morning_pct.likely)} %`)} ${morningCharge(`(${bandInWords(last.morning_pct, pct)})`)}.`;
}

/** A night foretold beside the morning's reading. */
export const comparedInWords = ({ morning, foretold_V, read_V, off_V, within }: NightCompared): ToldLine =>
  told`${dayInWords(morning)}: foretold ${foretold(`${volts(foretold_V.likely)} V`)} ${foretold(`(${bandInWords(foretold_V, volts)})`)}, read ${volts(read_V)} V: ${Math.abs(off_V) < 0.005 ? 'as foretold' : `${volts(Math.abs(off_V))} V ${off_V < 0 ? 'under' : 'over'}`}${within ? '' : ', outside the band'}.`;

/** The run of such nights: whether they fall below what is foretold. */
export function trendInWords(nights: readonly NightCompared[]): ToldLine | null {
  const recent = nights.slice(-6);
  if (recent.length < 3) return null;
  const mean = recent.reduce((sum, { off_V }) => sum + off_V, 0) / recent.length;
  if (Math.abs(mean) < 0.04)
    return told`The last ${String(recent.length)} mornings read as foretold, within ${foretold(`${volts(Math.abs(mean))} V`)} on the mean.`;
  return mean < 0
    ? told`The last ${String(recent.length)} mornings read ${foretold(`${volts(-mean)} V`)} under what was foretold: it tires, or something draws that is not in the list.`
    : told`The last ${String(recent.length)} mornings read ${foretold(`${volts(mean)} V`)} over what was foretold: it is better, or less draws, than the list says.`;
}

/** A line a load test, and what becomes of the battery over them. */
export function loadTestsInWords(trend: LoadTestTrend): ToldLine[] {
  const change = loadTestChangeInWords(trend);
  return [
    ...trend.tests.map(
      ({ day, capacity_Ah, resistance_mohm, drawn_Ah, hours, readings }: LoadTestResult) =>
        told`${dayOfYear(day)}: ${tested(`${Ah(capacity_Ah.likely)} Ah`)} ${tested(`(${bandInWords(capacity_Ah, Ah)})`)} and ${tested(`${pct(resistance_mohm.likely)} mΩ`)} ${tested(`(${bandInWords(resistance_mohm, pct)})`)}, from ${Ah(drawn_Ah)} Ah drawn in ${showNumber(hours, 1)} h and ${String(readings)} readings.`,
    ),
    ...(change === null ? [] : [change]),
  ];
}

/** What one load test says, at once and in full: what it gave, what is left, what it is worth. The first is the answer. */
export function loadTestInWords(
  { capacity_Ah, resistance_mohm, left_pct, drawn_Ah, hours }: LoadTestResult,
  { nominal_Ah, floor_pct }: BatteryOfBook['record'],
): ToldLine[] {
  const amps = drawn_Ah / hours;
  const share = (capacity: number) => pct((100 * capacity) / nominal_Ah);
  const wide = (capacity_Ah.high - capacity_Ah.low) / capacity_Ah.likely > 0.3;
  const sag = (mohm: number) => volts((amps * mohm) / 1000);
  return [
    told`From full it holds about ${tested(`${Ah(capacity_Ah.likely)} Ah`)} ${tested(`(${bandInWords(capacity_Ah, Ah)})`)}: ${tested(`${share(capacity_Ah.likely)} %`)} of the ${Ah(nominal_Ah)} on its label ${tested(`(${share(capacity_Ah.low)} to ${share(capacity_Ah.high)})`)}.`,
    told`It gave ${tested(`${Ah(drawn_Ah)} Ah`)} in ${showNumber(hours, 1)} h, at about ${amps.toFixed(2)} A.`,
    told`When it was over about ${tested(`${pct(left_pct.likely)} %`)} was left ${tested(`(${bandInWords(left_pct, pct)})`)}: about ${tested(`${Ah((left_pct.likely * capacity_Ah.likely) / 100)} Ah`)}. Its floor is ${pct(floor_pct)} %.`,
    told`Its resistance under load is about ${tested(`${pct(resistance_mohm.likely)} mΩ`)} ${tested(`(${bandInWords(resistance_mohm, pct)})`)}: such a load takes ${tested(`${sag(resistance_mohm.likely)} V`)} off.`,
    ...(wide
      ? [
          `The band is wide: ${left_pct.likely > floor_pct + 15 ? 'it stopped far above the floor, and a longer test says more' : 'a rested reading next morning, before the panel wakes, narrows it'}.`,
        ]
      : []),
  ];
}

const dayOfYear = (day: string) => `${dayInWords(day)} ${day.slice(0, 4)}`;

/** What becomes of the battery from test to test; null: the tests do not lie far enough apart to say. */
export function loadTestChangeInWords({ tests, capacityChange_pct_year: change }: LoadTestTrend): ToldLine | null {
  if (change === null) return null;
  const whole = (value: number) => String(Math.round(Math.abs(value)));
  const [first, last] = [tests[0]!.capacity_Ah, tests.at(-1)!.capacity_Ah];
  const span = `From ${dayOfYear(tests[0]!.day)} to ${dayOfYear(tests.at(-1)!.day)}, ${Ah(first.likely)} to ${Ah(last.likely)} Ah:`;
  if (change.high < 0)
    return told`${span} it loses ${tested(`${bandInWords({ low: -change.high, high: -change.low }, whole)} %`)} a year.`;
  if (change.low > 0)
    return `${span} it seems to gain, which a battery does not: a load was misstated in one of the tests.`;
  return told`${span} ${tested(`${whole(change.likely)} %`)} ${change.likely < 0 ? 'less' : 'more'} a year, but the tests are too uncertain to say that it changes.`;
}

/** What each circuit takes in 24 hours aboard. */
export const drawsInWords = ({ draws }: NightAheadOf): ToldLine[] =>
  draws.circuits.map(
    ({ name, amps, hours, perDay_Ah }) =>
      told`${name}: ${draw(`${Ah(perDay_Ah.likely)} Ah`)} a day ${draw(`(${bandInWords(perDay_Ah, Ah)})`)}; ${amps < 0.1 ? amps.toFixed(3) : amps.toFixed(2)} A for ${lengthOfUse(hours)}.`,
  );

const lengthOfUse = (hours: number) => (hours < 1 ? `${showNumber(60 * hours, 0)} min` : `${showNumber(hours, 1)} h`);

export const drawSumInWords = ({ draws: { sum_Ah } }: NightAheadOf): ToldLine =>
  told`All together about ${draw(`${Ah(sum_Ah.likely)} Ah`)} a day aboard ${draw(`(${bandInWords(sum_Ah, Ah)})`)}.`;

/** What stands where nothing can be said yet. */
export const noBatteryNowInWords = {
  'no reading':
    'There is no reading of the last three weeks, so how full it is cannot be said. Read the volts before sunrise with the panel dark.',
  'no place': 'The book has no place, so neither sun nor night can be worked out. Put in where the boat lies.',
} as const;

const countInWords = (n: number): string => ['', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven'][n] ?? String(n);

/** What can hurt at this battery. */
export function batteryCautions({ id, record }: BatteryOfBook, book: Pick<Book, 'chargers'>): string[] {
  const mains = Object.values(book.chargers).some(({ battery, kind }) => battery === id && kind === 'mains');
  return [
    record.chemistry === 'lifepo4'
      ? 'Never charge LiFePO4 below 0 °C: it is damaged inside and can fail later without a sign.'
      : 'A lead battery on charge gives off hydrogen: open the locker, no flame and no spark near it. Its acid burns skin and eyes.',
    'A spanner across the terminals glows in a second: rings and watch off, the negative lead off first and on last.',
    'A fuse stands at the battery in each lead that leaves it.',
    ...(mains ? ['Shore power and its wiring are for a licensed person.'] : []),
  ];
}
