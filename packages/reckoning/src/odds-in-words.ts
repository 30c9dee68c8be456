import type { Chance } from '#workplan';

/**
 * A chance as people say it: `83 of 100`. Never quite certain unless every run had it: `over 99 of 100`, `under 1 of
 * 100`.
 *
 * @param chance  with its runs
 */
export function oddsInWords({ times, runs, share }: Pick<Chance, 'times' | 'runs' | 'share'>): string {
  if (times === runs) return '100 of 100';
  if (times === 0) return '0 of 100';
  const of100 = Math.round(100 * share);
  if (of100 >= 100) return 'over 99 of 100';
  if (of100 <= 0) return 'under 1 of 100';
  return `${of100} of 100`;
}

/** How far counting so few runs may be off: `80 to 86 of 100, from 1000 runs`. What the model leaves out is not in it. */
export function oddsBandInWords({ low, high, runs }: Chance): string {
  const [from, to] = [Math.floor(100 * low), Math.ceil(100 * high)];
  return `${from === to ? from : `${from} to ${to}`} of 100, from ${runs} ${runs === 1 ? 'run' : 'runs'}`;
}
