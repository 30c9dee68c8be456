/** What one circuit takes out of its battery in a day aboard, with how that is worked out. */
import type { Book, Id } from '#boat-book';
import { assumedMisstated, dailyDraw, usualVolts } from '#power';
import { figureSaid, sentence, usesInWords } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';
import { circuitDraw } from './power-history.ts';
import { powerPlace } from './power-place.ts';

const day_ms = 86_400_000;

/**
 * Ampere-hours a day of a circuit, as `What draws` of its battery counts them; null: it is not in the book, or the book has no
 * place for the sun and the clocks.
 *
 * @param now  epoch ms; the 24 hours from then are looked at
 */
export function circuitDrawTold(book: Book, id: Id, now: number): WorkingTold | null {
  const circuit = book.circuits[id];
  const battery = circuit && book.batteries[circuit.battery];
  const place = powerPlace(book, now, null);
  if (!circuit || !battery || place === null) return null;
  const volts = usualVolts(battery.chemistry, battery.nominal_V);
  const [row] = dailyDraw([circuitDraw(circuit)], place, { start: now, end: now + day_ms }, volts).circuits;
  if (row === undefined) return null;
  const { low, likely, high } = row.perDay_Ah;
  const label = circuit.uses.kind === 'hours' ? assumedMisstated.hours : assumedMisstated.label;
  return {
    title: 'What it takes in a day aboard',
    lines: [
      sentence(
        `current while it runs: I = watts ÷ volts = ${figureSaid(circuit.watts)} W ÷ ${figureSaid(volts)} V = ${figureSaid(circuit.watts / volts)} A; the volts are those of the battery rested at 70 % and 15 °C`,
      ),
      sentence(`share of the time it runs: d = ${figureSaid(circuit.duty_pct)} %`),
      sentence(`hours on, ${usesInWords(circuit.uses)}, in the 24 hours from now: h = ${figureSaid(row.hours)} h`),
      sentence(
        `a day: I·d·h = ${figureSaid(likely)} Ah, ${figureSaid(low)} to ${figureSaid(high)} Ah in 9 of 10; that it draws within ${Math.round(100 * label)} % of what is written is our assumption`,
      ),
    ],
  };
}
