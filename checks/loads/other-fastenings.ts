import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

const cases = 1000;

/**
 * Fastenings by another way: a bolt’s side pull in wood from the pin’s own balance, searched for by halving, instead of by the
 * solved formula.
 */
export function otherFastenings(): OtherCheck[] {
  return [
    errorsOf(
      {
        subject: 'loads',
        what: 'bolts pulled along a wooden deck',
        kind: 'derived twice',
        against: 'the pin in balance, searched along its depth',
        unit: '',
        allowed: 1e-3,
        why: 'none should remain',
      },
      sidePulls(),
    ),
  ];
}

function figures(id: string, given: Readonly<Record<string, unknown>>, symbols: readonly string[]): number[] | null {
  const asked = ask(questions().find((each) => each.id === id)!, given);
  if (asked.kind !== 'answered') return null;
  return symbols.map((symbol) => {
    const value = figureOf(asked.answer, symbol)?.value;
    return typeof value === 'number' ? value : Number.NaN;
  });
}

function sidePulls(): number[] {
  const random = seeded(61);
  const sizes = [4, 5, 6, 8, 10, 12];
  // okoume ply dry, and what it is crushed at along a bolt (EN 1995-1-1, recalled): 0.11·(1 − 0.01·d)·ρ
  return Array.from({ length: cases }, () => {
    const d = sizes[Math.floor(sizes.length * random())]!;
    const depth = 3 + 60 * random();
    const found = figures(
      'loads.fastening',
      { base: 'okoume-ply', by: 'bolt', size: d, thickness: depth, damp: 'no' },
      ['the wood crushes and the fastener tilts', 'the fastener bends in the wood'],
    );
    if (found === null) return Number.NaN;
    const crush = 0.11 * (1 - 0.01 * d) * 450 * d;
    // a stiff pin turns about a point at depth a: the wood pushes one way above it and the other below, and nothing turns it at the plate
    const turning = (a: number) => a ** 2 / 2 - (depth ** 2 - a ** 2) / 2;
    const tilts = crush * (2 * zeroOf(turning, depth) - depth);
    // a pin that bends: the wood pushes one way down to the bend, whose moment the pin gives back there
    const bends = 0.3 * 700 * d ** 2.6;
    const bend = crush * zeroOf((a) => (crush * a ** 2) / 2 - bends, 500);
    return Math.max(Math.abs((1000 * found[0]!) / tilts - 1), Math.abs((1000 * found[1]!) / bend - 1));
  });
}

/** Where something that grows from below nothing gets to nothing, by halving. */
function zeroOf(grows: (x: number) => number, high: number): number {
  let [from, to] = [0, high];
  for (let n = 0; n < 60; n++) {
    const middle = (from + to) / 2;
    if (grows(middle) < 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
