/** What a tin says, in sentences, and what in the book goes by it. */
import type { Book, Id, TinRecord } from '#boat-book';
import { showNumber } from '#units';
import { lawOfWait, potLifeOfMix } from './product-tin.ts';

/** All that a tin says, one sentence each; empty where it says nothing. */
export function tinInWords(tin: TinRecord): string[] {
  const lines: string[] = [];
  const { nextCoat, latestCoat_h, worked, full, firstDay_mm, minimum_C, humidity_max_pct, potLife, ratio } = tin;
  if (nextCoat)
    lines.push(
      `Next coat from ${hours(nextCoat.hours)} at ${degrees(nextCoat.at_C)}${latestCoat_h === null ? '' : `; past ${hours(latestCoat_h)}, abrade first`}.`,
    );
  if (worked) lines.push(`To be sanded, or clamps off, from ${hours(worked.hours)} at ${degrees(worked.at_C)}.`);
  if (full) lines.push(`Full strength after ${hours(full.hours)} at ${degrees(full.at_C)}.`);
  if (firstDay_mm !== null) lines.push(`Cures ${number(firstDay_mm)} mm in the first day.`);
  if (minimum_C !== null) lines.push(`Not below ${degrees(minimum_C)}.`);
  if (humidity_max_pct !== null) lines.push(`Not in air damper than ${number(humidity_max_pct)} %.`);
  if (potLife)
    lines.push(
      `Pot life ${number(potLife.minutes)} min at ${degrees(potLife.at_C)}${potLife.of_g === null ? '' : ` for ${number(potLife.of_g)} g`}.`,
    );
  if (ratio?.kind === 'parts') lines.push(`Mixed ${number(ratio.resin)} to ${number(ratio.hardener)} by ${ratio.by}.`);
  if (ratio?.kind === 'catalyst')
    lines.push(
      `Catalyst ${ratio.low_pct === ratio.high_pct ? '' : `${number(ratio.low_pct)} to `}${number(ratio.high_pct)} % by weight.`,
    );
  if (tin.strokePair_g !== null) lines.push(`One stroke of each pump gives ${number(tin.strokePair_g)} g.`);
  if (tin.spread_m2_l !== null) lines.push(`A litre covers ${number(tin.spread_m2_l)} m² in one coat.`);
  return lines;
}

/** The titles of open steps that go by a tin, for a wait of theirs or for their mix; in the book's order, each once. */
export function tinUses(book: Book, tin: Id): string[] {
  const titles = Object.values(book.steps).flatMap((step) => {
    if (step.progress.kind === 'done' || book.jobs[step.job]?.state !== 'open') return [];
    const waits = step.waits.some((wait) => lawOfWait(book, step, wait).tin?.id === tin);
    const mixed = step.mix !== null && potLifeOfMix(book, step.mix, step.stores)?.tin?.id === tin;
    return waits || mixed ? [step.title] : [];
  });
  return [...new Set(titles)];
}

const number = (value: number) => showNumber(value, 2).replace(/\.?0+$/, '');
const degrees = (value: number) => `${number(value)} °C`;
const hours = (value: number) => (value >= 72 && value % 24 === 0 ? `${value / 24} days` : `${number(value)} h`);
