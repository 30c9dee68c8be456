/** The card of a battery of the book: its volts to percent, at rest and with what is on at anchor, for the print. */
import {
  assumedLoadedResistance_mohm,
  type Band,
  batteryCard,
  cardCondition,
  type RestCharge,
  restSources,
} from '#battery';
import type { Book, CircuitRecord, Id } from '#boat-book';
import { usualVolts } from '#power';
import { localAt, minuteOfClock } from '#units';
import { batteryOfBook } from './power-history.ts';
import { batteryCautions, kindInWords } from './power-in-words.ts';
import { batteryNow } from './power-night.ts';
import { powerPlace } from './power-place.ts';

/** Four columns from a cold morning to a warm one. [°C] */
const temperatures_C = [0, 10, 20, 30] as const;
/** A meter shows two places after the point: a line lies within half a step of every reading. [V] */
const step_V = 0.05;
/** What is on at anchor before sunrise. [clock] Assumed: an hour at which everyone still sleeps. */
const asleep = '04:00';

/** One figure of the card. */
export interface CardFigure {
  /** `72`, `full`, `flat` */
  readonly likely: string;
  /** `60–81`; empty where the figure is a word */
  readonly band: string;
  readonly underFloor: boolean;
}

/** One of the two tables of the card. */
export interface CardTable {
  readonly title: string;
  /** a line of volts, and a figure for each temperature */
  readonly rows: readonly { readonly volts: string; readonly figures: readonly CardFigure[] }[];
  /** what the floor reads at each temperature: `12.07` */
  readonly floor_V: readonly string[];
}

export interface CardTold {
  readonly name: string;
  /** `AGM, 17 Ah, 12 V, read with the hand-held meter` */
  readonly about: string;
  /** the day the battery was made; null: not known */
  readonly made: string | null;
  /** the day of the card */
  readonly cardOf: string;
  readonly condition: string;
  readonly temperatures_C: readonly number[];
  readonly floor_pct: number;
  readonly tables: readonly CardTable[];
  /** how to use it, where the figures come from, what can hurt: whole sentences */
  readonly use: readonly string[];
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
}

/** Circuits that are on at anchor while everyone sleeps: what always draws, and what runs past that hour. */
export function onAtAnchor(circuits: readonly CircuitRecord[]): CircuitRecord[] {
  const night = minuteOfClock(asleep);
  return circuits.filter(({ uses }) => {
    if (uses.kind === 'always') return true;
    if (uses.kind === 'hours') return false;
    const minute = (mark: string, atSun: number) => (mark.includes(':') ? minuteOfClock(mark) : atSun);
    const evening = 20 * 60;
    const morning = 6 * 60;
    const from = minute(uses.from, uses.from === 'sunset' || uses.from === 'dusk' ? evening : morning);
    const to = minute(uses.to, uses.to === 'sunset' || uses.to === 'dusk' ? evening : morning);
    return from <= to ? from <= night && night < to : night >= from || night < to;
  });
}

/**
 * The card of a battery; null: it is not in the book.
 *
 * The load is what is on at anchor at four in the morning. What it takes off the volts is this battery’s own resistance where
 * readings of the last weeks tell it, else that of its kind and size.
 *
 * @param now  epoch ms
 */
export function cardTold(book: Book, id: Id, now: number): CardTold | null {
  const battery = batteryOfBook(book, id);
  if (battery === null) return null;
  const { record } = battery;
  const { chemistry, nominal_V, nominal_Ah } = record;
  const on = onAtAnchor(battery.circuits.map(([, circuit]) => circuit)).filter(({ watts }) => watts > 0);
  const volts = usualVolts(chemistry, nominal_V);
  const load_A = on.reduce((sum, { watts, duty_pct }) => sum + ((watts / volts) * duty_pct) / 100, 0);
  const known = batteryNow(book, battery, now);
  const own = typeof known === 'string' ? null : known.estimate.resistance_mohm;
  const loaded_mohm = own ?? assumedLoadedResistance_mohm(chemistry, nominal_Ah, nominal_V);
  const { floor_pct } = record;
  const card = batteryCard({
    chemistry,
    nominal_V,
    load_A,
    loaded_mohm,
    temperatures_C,
    floor_pct,
    step_V,
  });
  const figure = (read: RestCharge): CardFigure =>
    read.beyond === 'above'
      ? { likely: 'not rested', band: '', underFloor: false }
      : read.beyond === 'below'
        ? { likely: 'flat', band: '', underFloor: true }
        : { likely: pct(read.likely), band: bandOf(read), underFloor: read.likely < floor_pct };
  const table = (title: string, which: 'rested' | 'underLoad'): CardTable => {
    const rows = card.rows.map((row) => ({
      volts: row.volts.toFixed(2),
      figures: row.cells.map((cell) => figure(cell[which])),
    }));
    return { title, rows: between(rows), floor_V: card.floor.map((each) => each[`${which}_V`].likely.toFixed(2)) };
  };
  const lit = on.map(({ name }) => name);
  const zone = powerPlace(book, now, null)?.zone ?? 'UTC';
  return {
    name: record.name,
    about: [
      kindInWords[chemistry],
      `${nominal_Ah} Ah`,
      `${nominal_V} V`,
      ...(record.meter === '' ? [] : [`read with ${record.meter}`]),
    ].join(', '),
    made: record.made,
    cardOf: localAt(now, zone).day,
    condition: cardCondition,
    temperatures_C,
    floor_pct,
    tables: [
      table('All off', 'rested'),
      ...(load_A > 0 ? [table(`With ${listed(lit)} on, ${load_A.toFixed(2)} A`, 'underLoad')] : []),
    ],
    use: [
      `Find the volts at the left and the battery’s temperature at the top. The figure is percent of what this battery holds now, not of its label; in brackets, where it lies in 9 of 10. Under the heavy line it is below its floor of ${pct(floor_pct)} %.`,
      ...(load_A > 0
        ? [
            `The second table is for that load, on for an hour or more: it takes ${sagInWords(card.sag[2]!.volts)} V off at 20 °C. At twice the load it takes twice that.`,
          ]
        : ['Nothing in the book is on at anchor at four in the morning, so there is no table under load.']),
      ...(chemistry === 'lifepo4'
        ? [
            'Between about 20 and 90 % its volts hardly move: there the card tells little. Charge it full and count from there.',
          ]
        : []),
    ],
    sources: [
      ...restSources(chemistry).map(({ title, seen }) => (seen === 'recalled' ? `${title} (from memory)` : title)),
      own === null
        ? `resistance under load by kind and size, ${ohms(loaded_mohm)} mΩ (our assumption)`
        : `resistance under load from its own readings of the last weeks, ${ohms(loaded_mohm)} mΩ`,
    ],
    cautions: batteryCautions(battery, book),
  };
}

const pct = (value: number) => String(Math.round(value));
const bandOf = ({ low, high }: Band) => (pct(low) === pct(high) ? '' : `${pct(low)}–${pct(high)}`);
function sagInWords({ low, high }: Band): string {
  const [from, to] = [low.toFixed(2), high.toFixed(2)];
  return from === to ? `about ${to}` : low < 0.005 ? `up to ${to}` : `${from} to ${to}`;
}
const ohms = ({ low, likely, high }: Band) => `${pct(likely)} (${pct(low)} to ${pct(high)})`;

function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** Lines past the ends say the same all along: one of each is enough. */
function between<T extends { readonly figures: readonly CardFigure[] }>(rows: readonly T[]): T[] {
  const same = (row: T | undefined, word: string) => row?.figures.every(({ likely }) => likely === word) === true;
  return rows.filter(
    (_, i) => !same(rows[i + 1], 'not rested') && !(same(rows[i], 'flat') && same(rows[i - 1], 'flat')),
  );
}
