import { shackleSizes } from '../../tables/fit.read-2026-11.ts';
import { liftingShackle, stainlessShackle } from '../../tables/shackle.read-2026-11.ts';
import type { Use } from './factor.ts';
import { fitOf, metalOf } from './fit.ts';
import { timesOf } from './load-path.ts';
import type { ShacklePart } from './part.ts';
import { type LoadPart, strengthAt } from './part-strength.ts';
import { sizesIn } from './printed.ts';

/** A shackle of a table that would do in the place of one that does not. */
export interface ShackleThatFits {
  readonly part: LoadPart & ShacklePart;
  readonly working_N: number;
}

const made = {
  lifting: sizesIn(liftingShackle).filter((size) => size in shackleSizes.lifting.pin_mm.read),
  stainless: sizesIn(stainlessShackle),
} as const;

/**
 * Shackles of the tables that go where part `i` is, as it stands between its neighbours: pin, jaw and body all go, and it
 * bears the load. Those of the metal beside it come first, then the smaller.
 *
 * @param force_N  load on the path, of which it bears its times; null: whatever it bears
 */
export function shacklesThatFit(
  parts: readonly LoadPart[],
  i: number,
  use: Use,
  force_N: number | null,
): readonly ShackleThatFits[] {
  const times = timesOf(parts)[i] ?? 1;
  const beside = [parts[i - 1], parts[i + 1]].map((each) => (each === undefined ? null : metalOf(each)));
  const found = (['lifting', 'stainless'] as const).flatMap((make) =>
    made[make].flatMap((size_mm): ShackleThatFits[] => {
      const part = {
        kind: 'shackle',
        make,
        size_mm,
        pin_mm: null,
        jaw_mm: null,
        moused: true,
        marked: null,
        signs: [],
        years: 0,
      } as const;
      const then = parts.with(i, part);
      const fits = fitOf(then).every(({ at, gravity }) => gravity === 'look to it' || !at.includes(i));
      const strength = strengthAt(then, i, use);
      return fits && strength.kind === 'known' && (force_N === null || strength.working_N >= force_N * times)
        ? [{ part, working_N: strength.working_N }]
        : [];
    }),
  );
  const alike = ({ part }: ShackleThatFits) => beside.filter((each) => each === metalOf(part)).length;
  return found.toSorted((a, b) => alike(b) - alike(a) || a.part.size_mm - b.part.size_mm);
}
