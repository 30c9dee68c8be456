import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

const cases = 1000;
const gravity = 9.80665;

/**
 * The rig by another way: the mast on its way up by virtual work instead of by the balance of forces, the vang likewise,
 * and a stay pulled sideways forwards, from its tension to how far it comes aside.
 */
export function otherRig(): OtherCheck[] {
  const stated = { subject: 'loads', kind: 'derived twice', unit: '', allowed: 1e-3 } as const;
  const small = 'moves of a finite size';
  return [
    errorsOf(
      {
        ...stated,
        what: 'mast raising: tackle, forestay and pole, at start and end',
        against: 'energy gained over what tackle, line or pole moves',
        why: small,
      },
      raisings(),
    ),
    errorsOf(
      { ...stated, what: 'vang', against: 'work of the leech over what the vang lengthens', why: small },
      vangs(),
    ),
    errorsOf(
      {
        ...stated,
        what: 'stay pulled sideways',
        against: 'its stretched parts held in balance from the tension at rest',
        why: 'none should remain',
      },
      stays(),
    ),
  ];
}

function figures(
  id: string,
  given: Readonly<Record<string, unknown>>,
  symbols: readonly string[],
): readonly number[] | null {
  const asked = ask(questions().find((each) => each.id === id)!, given);
  if (asked.kind !== 'answered') return null;
  return symbols.map((symbol) => {
    const value = figureOf(asked.answer, symbol)?.value;
    return typeof value === 'number' ? value : Number.NaN;
  });
}

/** Where a falling or rising function is zero, by halving. */
function root(of: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const rising = of(high) > of(low);
  for (let n = 0; n < 80; n++) {
    const middle = (low + high) / 2;
    if (of(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

type Point = readonly [ahead: number, up: number];
const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
const rad = (deg: number) => (deg * Math.PI) / 180;

function raisings(): number[] {
  const random = seeded(71);
  const between = (low: number, high: number) => low + (high - low) * random();
  const errors: number[] = [];
  // some drawn poles raise nothing and are refused
  for (let tries = 0; errors.length < cases && tries < 20 * cases; tries++) {
    const pole = between(0.8, 2.5);
    const given = {
      mass: between(8, 90),
      'mass-at': between(1.5, 5),
      'line-at': between(3, 9),
      by: 'pole',
      pole,
      'heel-ahead': between(-0.1, 0.5),
      'heel-up': between(-0.2, 0.3),
      lean: between(-10, 40),
      'bow-ahead': pole + between(0.4, 2.5),
      'bow-up': between(-0.5, 0.3),
      from: between(-5, 40),
      to: between(50, 88),
    };
    const found = figures('loads.mast-raising', given, ['T start', 'S start', 'C start', 'T end', 'S end', 'C end']);
    if (found === null) continue;
    const heel: Point = [given['heel-ahead'], given['heel-up']];
    const bow: Point = [given['bow-ahead'], given['bow-up']];
    const hold = (deg: number): Point => [
      -given['line-at'] * Math.cos(rad(deg)),
      given['line-at'] * Math.sin(rad(deg)),
    ];
    const tipBy = (lean_deg: number): Point => [
      heel[0] + pole * Math.sin(rad(lean_deg)),
      heel[1] + pole * Math.cos(rad(lean_deg)),
    ];
    const energy = (deg: number) => given.mass * gravity * given['mass-at'] * Math.sin(rad(deg));
    const line = apart(tipBy(given.lean), hold(given.from));
    const move = 1e-4;
    // the pole leans ahead as the mast goes up: found from where it would lie back along the line
    const leanAt = (deg: number): number => {
      const back = (Math.atan2(hold(deg)[0] - heel[0], hold(deg)[1] - heel[1]) * 180) / Math.PI;
      return root((lean) => apart(tipBy(lean), hold(deg)) - line, back, back + 180);
    };
    const worst = [given.from, given.to].flatMap((deg, n) => {
      const tip = tipBy(leanAt(deg));
      const gained = energy(deg + move) - energy(deg - move);
      const tackle = gained / (apart(tipBy(leanAt(deg - move)), bow) - apart(tipBy(leanAt(deg + move)), bow));
      // the tip held still: the mast hangs on the line alone
      const stay = gained / (apart(hold(deg - move), tip) - apart(hold(deg + move), tip));
      // tackle and line keep their length, and the pole grows by a little
      const reach = apart(tip, bow);
      const angle = Math.atan2(tip[1] - bow[1], tip[0] - bow[0]);
      const grown = [angle - 1e-6, angle + 1e-6].map((each) => {
        const moved: Point = [bow[0] + reach * Math.cos(each), bow[1] + reach * Math.sin(each)];
        const mast = root((d) => apart(hold(d), moved) - line, deg - 0.5, deg + 0.5);
        return { pole: apart(moved, heel), energy: energy(mast) };
      });
      const pole_N = (grown[1]!.energy - grown[0]!.energy) / (grown[1]!.pole - grown[0]!.pole);
      // where the pole bears next to nothing, or the tip hardly moves it, a share says nothing
      const scale = Math.max(Math.abs(pole_N), 0.1 * tackle);
      const mine = found.slice(3 * n, 3 * n + 3);
      return [mine[0]! / tackle - 1, mine[1]! / stay - 1, (mine[2]! - pole_N) / scale];
    });
    errors.push(Math.max(...worst.map(Math.abs)));
  }
  return errors;
}

function vangs(): number[] {
  const random = seeded(72);
  const between = (low: number, high: number) => low + (high - low) * random();
  const errors: number[] = [];
  for (let tries = 0; errors.length < cases && tries < 20 * cases; tries++) {
    const given = {
      lift: between(50, 3000),
      'lift-at': between(1, 4),
      along: between(0.3, 2),
      below: between(0.15, 1.2),
      aft: between(-0.2, 0.5),
      'boom-up': between(-10, 30),
    };
    const found = figures('loads.vang', given, ['T']);
    if (found === null) continue;
    const length = (up_deg: number) =>
      Math.hypot(given.along * Math.cos(rad(up_deg)) - given.aft, given.along * Math.sin(rad(up_deg)) + given.below);
    const turn = 1e-3;
    const work_J = given.lift * given['lift-at'] * rad(2 * turn);
    const other = work_J / (length(given['boom-up'] + turn) - length(given['boom-up'] - turn));
    errors.push(found[0]! / other - 1);
  }
  return errors;
}

function stays(): number[] {
  const random = seeded(73);
  const between = (low: number, high: number) => low + (high - low) * random();
  const errors: number[] = [];
  for (let tries = 0; errors.length < cases && tries < 20 * cases; tries++) {
    // sizes are read to a thousandth of a millimetre
    const [size, length] = [Math.round(between(20, 80)) / 10, between(3, 12)];
    const [at, rest_N, pull] = [between(0.3, 0.5) * length, between(200, 4000), between(20, 150)];
    const stiffness_N = 107_500 * Math.PI * (size / 2) ** 2;
    const unstretched = length / (1 + rest_N / stiffness_N);
    const held = (aside: number) => {
      const [a, b] = [Math.hypot(at, aside), Math.hypot(length - at, aside)];
      const tension = stiffness_N * ((a + b) / unstretched - 1);
      return tension * (aside / a + aside / b) - pull;
    };
    const aside = root(held, 0, length / 4);
    const given = { laid: '1x19', size, length, 'pulled-at': at, pull, aside: 1000 * aside };
    const found = figures('loads.stay-by-pull', given, ['T']);
    if (found !== null) errors.push(found[0]! / rest_N - 1);
  }
  return errors;
}
