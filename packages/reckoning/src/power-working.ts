/** How each figure of a battery is worked out: what goes in, how, from where, how far it may be off, what can hurt. */
import { assumedOfBatteries, type BatteryEstimate, restSources } from '#battery';
import { assumedMisstated, assumedSeenFor_min, assumedTaper_h } from '#power';
import { showNumber } from '#units';
import { assumedMeter } from './power-blocks.ts';
import { assumedChargingFrom_h } from './power-charging.ts';
import type { BatteryOfBook } from './power-history.ts';
import type { BatteryNow, NightAheadOf } from './power-night.ts';
import { sunWorking } from './sun-working.ts';
import type { FigureOf, FigureWorking, WorkingRow } from './told-line.ts';

const percent = (share: number) => `${Math.round(100 * share)} %`;
const number = showNumber;

const row =
  (kind: WorkingRow['kind']) =>
  (words: string): WorkingRow => ({ kind, words });
const goesIn = row('goes in');
const how = row('how');
const from = row('from');
const margin = row('margin');
const care = row('take care');

const ensemble = 'ensemble smoother, Emerick and Reynolds 2013, then a Markov chain, ter Braak 2006; both from memory';
const terminals = 'A spanner across the terminals glows in a second: rings and watch off before the meter is put on.';
const unknown =
  'A dead cell, a battery warmer than the air, more than one thing left on at once: it does not know of these. Where it decides something, read the volts before sunrise with the panel dark; the maker’s data goes before ours.';

/**
 * The workings of all figures that can be told of a battery.
 *
 * @param known  null with `ahead`: nothing is known of its charge, and only its load tests and nights foretold are told
 */
export function powerWorking(
  battery: BatteryOfBook,
  known: BatteryNow | null,
  ahead: NightAheadOf | null,
): FigureWorking[] {
  const later = [loadTestWorking(battery), foretoldWorking()];
  return known === null || ahead === null
    ? later
    : [...estimateWorkings(battery, known), ...nightWorkings(battery, known, ahead), ...later];
}

const working = (of: FigureOf, title: string, ...rows: readonly WorkingRow[]): FigureWorking => ({ of, title, rows });

/** What is assumed of a battery before it is read. */
function assumedOf({ record }: BatteryOfBook): WorkingRow {
  const loss = assumedOfBatteries.lossPerYear[record.chemistry === 'lifepo4' ? 'lifepo4' : 'lead'];
  return from(
    `That it gives ${percent(assumedOfBatteries.overLabel)} over its label when new and ${number(100 * loss, 1)} % less each year, and that a meter is mostly within ${number(assumedOfBatteries.meter_V, 3)} V, are our assumptions.`,
  );
}

/** What is assumed of what nobody wrote down. */
function unwritten({ record }: BatteryOfBook): WorkingRow {
  const { unloggedDrain, lostCharge, unloggedCharge } = assumedOfBatteries;
  return from(
    `A log is never whole. That something draws from the start in ${percent(unloggedDrain.already)} of histories and is left on once in ${unloggedDrain.apart_days} days, mostly about ${number(record.nominal_Ah * unloggedDrain.ofLabel_1_h, 2)} A; that the panel or charger brings less than it should once in ${lostCharge.apart_days} days; and that it was charged unwritten once in ${unloggedCharge.apart_days} days, are our assumptions, and unknowns of the estimate: so the band widens from the last reading on, and a sound reading narrows it again.`,
  );
}

/** The tables that rested volts are read by. */
const tablesOf = ({ record }: BatteryOfBook): WorkingRow =>
  from(
    `Rested volts against charge: ${restSources(record.chemistry)
      .map(({ title, seen }) => (seen === 'recalled' ? `${title} (from memory)` : title))
      .join('; ')}. They are counted to one end, and the spread between them goes into the band.`,
  );

/**
 * How the charge over a block of readings is worked out.
 *
 * @param counted   readings of volts taken from it
 * @param measured  the share of the time in which the current was measured, 0–1
 */
export function courseWorking(
  battery: BatteryOfBook,
  { draws, cutOff_V }: BatteryEstimate,
  counted: number,
  measured: number,
): FigureWorking {
  const { record } = battery;
  const flowed =
    measured > 0
      ? `the current as it was measured, ${percent(measured)} of the time, and otherwise what the circuits drew while someone was aboard and what the panel may have brought`
      : 'what the circuits drew while someone was aboard, and what the panel may have brought: no current was measured';
  return working(
    'charge',
    'The charge over the readings',
    goesIn(
      `${counted} readings of volts, evenly taken from those of this time; ${flowed}; the label (${number(record.nominal_Ah, 1)} Ah), its kind, ${record.made === null ? 'its age not known' : `made ${record.made}`}.`,
    ),
    how(
      `Some ${draws.count} batteries that may be this one are run through all that; those that would have read what was read are kept (${ensemble}). The band is where nine in ten of them lie.`,
    ),
    how(`Percent is of what this battery itself gives at its 20-hour current down to ${number(cutOff_V, 1)} V.`),
    from(
      `That a measured current is within ${percent(assumedMeter.share)} and ${number(assumedMeter.amps, 2)} A of the true one is our assumption.`,
    ),
    tablesOf(battery),
    assumedOf(battery),
    unwritten(battery),
    margin(unknown),
    care(terminals),
  );
}

function estimateWorkings(battery: BatteryOfBook, { counted, estimate }: BatteryNow): FigureWorking[] {
  const { record } = battery;
  const { soc_pct, capacity_Ah, resistance_mohm, draws } = estimate;
  const read = `${counted} ${counted === 1 ? 'reading' : 'readings'}`;
  const believed = how(
    `Some ${draws.count} batteries that may be this one are run through all that; those that would have read what was read are kept (${ensemble}). ‘In 9 of 10’ is where nine in ten of them lie.`,
  );
  const held = margin(
    'Held against measured batteries, and against owners of another model of a battery: checks/battery.',
  );
  return [
    working(
      'charge',
      'How full it is',
      goesIn(
        `${read}, the label (${number(record.nominal_Ah, 1)} Ah), its kind, ${record.made === null ? 'its age not known' : `made ${record.made}`}, what the circuits drew while someone was aboard, and what the panel may have brought.`,
      ),
      believed,
      how(
        `Percent is of what this battery itself gives at its 20-hour current down to ${number(estimate.cutOff_V, 1)} V, not of its label.`,
      ),
      tablesOf(battery),
      assumedOf(battery),
      unwritten(battery),
      from(
        `What was on at a reading is taken to have been on for ${assumedSeenFor_min.on} min before it; a rested reading means nothing was on, and the panel dark, for ${assumedSeenFor_min.rested} min: our assumption.`,
      ),
      margin(`${number(soc_pct.low, 0)} to ${number(soc_pct.high, 0)} % in 9 of 10.`),
      held,
      margin(unknown),
      care(terminals),
    ),
    working(
      'over floor',
      'What stands over the floor',
      goesIn(
        `Charge ${number(soc_pct.likely, 0)} %, floor ${number(record.floor_pct, 0)} %, and what it holds, ${number(capacity_Ah.likely, 1)} Ah.`,
      ),
      how(
        `(charge − floor) ÷ 100 × what it holds = (${number(soc_pct.likely, 0)} − ${number(record.floor_pct, 0)}) ÷ 100 × ${number(capacity_Ah.likely, 1)} = ${number(Math.max(0, ((soc_pct.likely - record.floor_pct) / 100) * capacity_Ah.likely), 1)} Ah.`,
      ),
      from('A floor of 50 % for lead and 20 % for LiFePO4 is trade practice; yours is the one in the book.'),
      margin('The low ends of both taken together, and the high ends: wider than nine in ten.'),
    ),
    working(
      'capacity',
      'What it holds when full',
      goesIn(`The same ${read} and the label, ${number(record.nominal_Ah, 1)} Ah.`),
      believed,
      assumedOf(battery),
      how(
        `What it shows under load is found with it: ${number(resistance_mohm.likely, 0)} mΩ (${number(resistance_mohm.low, 0)} to ${number(resistance_mohm.high, 0)}).`,
      ),
      margin(
        `${number(capacity_Ah.low, 1)} to ${number(capacity_Ah.high, 1)} Ah in 9 of 10, at the 20-hour current and 25 °C. A load test narrows it.`,
      ),
      held,
    ),
    working(
      'next reading',
      'What a further reading would bring',
      goesIn(`The ${draws.count} batteries that may be this one, and what each would show when it is read so.`),
      how(
        'Readings are taken as they might come, from those batteries; each battery then counts as it goes with the reading, and the nine in ten of the ampere-hours left are taken again. The figure is the mean width over such readings, for a rested one, one under a lamp, a load test from now and from full, and a full charge. Of those as good as the best to a sixteenth, the least trouble is told.',
      ),
      from('Preposterior analysis, Raiffa and Schlaifer 1961, from memory.'),
      from(
        'That a rested reading lies within 0.02 V of even the right battery (LiFePO4 0.05 V) and the lamp’s watts are known to 7 % are our assumptions.',
      ),
      margin('What flows until it is read is not counted, so the band will come out somewhat wider.'),
    ),
  ];
}

function nightWorkings(battery: BatteryOfBook, { estimate }: BatteryNow, ahead: NightAheadOf): FigureWorking[] {
  const { record, panels } = battery;
  const { endurance } = ahead;
  const sun = sunWorking(panels, ahead);
  const first = endurance.nights[0]!;
  const taper = assumedTaper_h[record.chemistry];
  const nine = `${String(assumedChargingFrom_h).padStart(2, '0')}:00`;
  const { resistance_mohm } = estimate;
  const runs = how(
    `${endurance.runs} runs: each takes one of the batteries that this one may be, lamps that draw more or less than they say, and its own weather.`,
  );
  const takes = from(
    `Near full it takes at most what it lacks in ${number(taper.likely, 1)} h (${number(taper.low, 1)} to ${number(taper.high, 1)}): our assumption. A charger counts for the hours a day aboard that are said of it, from ${nine} (our assumption).`,
  );
  const aboard = goesIn(
    'The charge now with its band, the circuits as if someone were aboard from now on, the panels and the chargers.',
  );
  const sag = how(
    `What is on takes I × R off: ${ahead.nightLoad_A.toFixed(2)} A × ${number(resistance_mohm.likely, 0)} mΩ (${number(resistance_mohm.low, 0)} to ${number(resistance_mohm.high, 0)}) = ${number((ahead.nightLoad_A * resistance_mohm.likely) / 1000, 3)} V.`,
  );
  return [
    working(
      'chance',
      'The chance of lasting the nights',
      aboard,
      runs,
      how(
        `A night is lasted when the charge never fell under the floor of ${number(record.floor_pct, 0)} % up to its sunrise. The chance is the share of runs that lasted.`,
      ),
      takes,
      margin(
        `So few runs are off by ${number((100 * 1.96) / Math.sqrt(4 * endurance.runs), 0)} of 100 at most in 19 of 20 counts; what the model leaves out comes on top.`,
      ),
      margin(unknown),
    ),
    working(
      'floor reached',
      'When the floor is reached',
      aboard,
      runs,
      how(
        'The first minute in each run at which the charge is under the floor; the middle of the runs, and the ends that one in twenty lie beyond.',
      ),
      margin(`Looked at for ${number(endurance.lookedAt_h, 0)} h.`),
    ),
    working(
      'night draw',
      'What the night takes',
      goesIn('Every circuit that is on between now or sunset and sunrise.'),
      how(`Ah = watts ÷ ${number(endurance.usual_V, 2)} V × duty × hours, in each run with lamps misstated anew.`),
      margin(`${number(first.drawn_Ah.low, 1)} to ${number(first.drawn_Ah.high, 1)} Ah in 9 of 10 runs.`),
      misstated(),
    ),
    working(
      'morning charge',
      'The charge in the evening and at sunrise',
      aboard,
      runs,
      how('The charge at sunset or at sunrise in each run: the middle, and where nine in ten of them lie.'),
      takes,
    ),
    working(
      'morning volts',
      'What the meter should show at sunrise',
      goesIn(
        `The charge at sunrise, ${number(first.morning_pct.likely, 0)} %, air of ${ahead.morning_C} °C by the plain climate of the place, and ${ahead.nightLoad_A.toFixed(2)} A on.`,
      ),
      how('Rested volts of that charge at that temperature.'),
      sag,
      tablesOf(battery),
      margin(
        'The spread of the charge and that of the tables, as two that know nothing of each other. Before the panel brings anything.',
      ),
    ),
    working(
      'floor volts',
      'What the floor reads',
      goesIn(`The floor of ${number(ahead.floor_pct, 0)} % and air of ${ahead.morning_C} °C.`),
      how('Rested volts of that charge at that temperature; under load, less what the load takes off.'),
      sag,
      tablesOf(battery),
      margin('From the lowest table to the highest, and how far one battery lies off them (our assumption).'),
      care(
        record.chemistry === 'lifepo4'
          ? 'At the floor charge it, but never below 0 °C.'
          : 'Lead left under its floor ages fast: charge it the same day, locker open, for it gives off hydrogen.',
      ),
    ),
    ...(sun === null ? [] : [sun]),
    ...(ahead.chargers.length === 0 ? [] : [chargerWorking(ahead, nine, takes)]),
    working(
      'draw',
      'What draws in a day aboard',
      goesIn('Watts, duty and use of each circuit; sunset and sunrise of the place.'),
      how(
        `Ah a day = watts ÷ ${number(endurance.usual_V, 2)} V (rested at 70 %, 15 °C) × duty × hours. Sunset and sunrise are worked out for the place.`,
      ),
      misstated(),
    ),
  ];
}

const misstated = () =>
  margin(
    `What is drawn lies within ${percent(assumedMisstated.label)} of its label in 9 of 10, what is told by hours a day within ${percent(assumedMisstated.hours)}: our assumption. Measure it once, and put the watts right.`,
  );

function chargerWorking({ chargers }: NightAheadOf, nine: string, takes: WorkingRow): FigureWorking {
  return working(
    'charger',
    'What a charger would change',
    goesIn(chargers.map(({ name, amps }) => `${name}, ${number(amps, 1)} A`).join('; ')),
    how(
      `The same runs over again: a mains charger on from now until the middle of them is at 95 %; an outboard an hour a day from ${nine}.`,
    ),
    takes,
    margin('Amps as entered; an outboard at low revs gives less.'),
    care(
      chargers.some(({ kind }) => kind === 'mains')
        ? 'Shore power and its wiring are for a licensed person. A lead battery on charge gives off hydrogen: locker open, no flame.'
        : 'Run an engine only in the open. A lead battery on charge gives off hydrogen: locker open, no flame.',
    ),
  );
}

function loadTestWorking(battery: BatteryOfBook): FigureWorking {
  return working(
    'load test',
    'What a load test says',
    goesIn('The volts read in it, the watts that drew, the three days before it and the nine hours after.'),
    how(
      `The same estimate as of the charge, from those days alone and without its age (${ensemble}). Ah drawn = watts ÷ the usual volts × hours.`,
    ),
    tablesOf(battery),
    margin(
      `The lamp is taken to draw within 10 % of what is said (our assumption). A test that stops far above the floor says little of what lies below.`,
    ),
    care(
      battery.record.chemistry === 'lifepo4'
        ? 'Stop at the floor, and never charge below 0 °C.'
        : 'Stop at the floor and charge it the same day: locker open, for it gives off hydrogen.',
    ),
  );
}

const foretoldWorking = () =>
  working(
    'foretold',
    'Nights foretold and read',
    goesIn('What this page foretold of a night, the last time it did so six hours or more before sunrise.'),
    how(
      'The reading nearest to that sunrise, within two hours, not on charge and with the panel dark. Off = read − foretold. The trend is the mean of the last six.',
    ),
    margin(
      'A mean within 0.04 V is taken as nothing: our assumption. The air of the morning is the plain climate’s, not the measured.',
    ),
  );
