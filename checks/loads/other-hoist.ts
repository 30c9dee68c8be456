import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

const cases = 1000;
const weight_N = (mass_kg: number) => mass_kg * 9.80665;

/**
 * Hoisting by another way: tackles sheave by sheave instead of by the sum's formula, turns round a post by steps along
 * the rope instead of by the exponential, plates by the energy of a small turn instead of by moments.
 */
export function otherHoist(): OtherCheck[] {
  return [
    errorsOf(
      {
        subject: 'loads',
        what: 'tackles of 1 to 9 parts, hoisting and lowering',
        kind: 'derived twice',
        against: 'tensions followed sheave by sheave',
        unit: '',
        allowed: 1e-3,
        why: 'none should remain',
      },
      tackles(),
    ),
    errorsOf(
      {
        subject: 'loads',
        what: 'rope round a post',
        kind: 'derived twice',
        against: 'friction summed along the rope in small steps',
        unit: '',
        allowed: 1e-3,
        why: 'steps of a finite length',
      },
      posts(),
    ),
    errorsOf(
      {
        subject: 'loads',
        what: 'wire of a hinged plate, all the way down and all the way up',
        kind: 'derived twice',
        against: 'energy gained by a small turn over wire hauled in',
        unit: '',
        allowed: 1e-3,
        why: 'turns of a finite size',
      },
      plates(),
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

function tackles(): number[] {
  const random = seeded(51);
  const whole = (below: number) => Math.floor(below * random());
  return Array.from({ length: cases }, () => {
    const moving = whole(5);
    const atMoving = random() < 0.5;
    const fixed = atMoving ? moving + whole(2) : Math.max(0, moving - whole(2));
    const turning = whole(4);
    if (moving + fixed === 0) return 0;
    const load = 10 + 3000 * random();
    const bearing = ['ball', 'plain', 'old'][whole(3)]!;
    const factor = { ball: 1.04, plain: 1.09, old: 1.15 }[bearing]!;
    const found = figures(
      'loads.tackle',
      {
        load,
        'moving-sheaves': moving,
        'fixed-sheaves': fixed,
        'end-at': atMoving ? 'moving' : 'fixed',
        bearing,
        'turning-blocks': turning,
      },
      ['F hoisting', 'F lowering'],
    );
    if (found === null) return Number.NaN;
    // from the fast end: a pull of 1 there, and what each part has more after each sheave
    const errors = [factor, 1 / factor].map((grows, n) => {
      let tension = 1;
      let carried = atMoving ? 1 : 0;
      let at = atMoving ? 'fixed' : 'moving';
      for (let sheave = 0; sheave < moving + fixed; sheave++) {
        const before = tension;
        tension *= grows;
        if (at === 'moving') carried += before + tension;
        at = at === 'moving' ? 'fixed' : 'moving';
      }
      const fall = (load / carried) * tension * grows ** turning;
      return found[n]! / fall - 1;
    });
    return Math.max(...errors.map(Math.abs));
  });
}

function posts(): number[] {
  const random = seeded(52);
  return Array.from({ length: cases }, () => {
    const [pull, turns, friction] = [10 + 5000 * random(), 3 * random(), 0.05 + 0.35 * random()];
    const found = figures('loads.turns-round-a-post', { pull, turns, friction }, ['F']);
    const steps = 4000;
    const angle = (2 * Math.PI * turns) / steps;
    let tension = pull;
    for (let n = 0; n < steps; n++) {
      // the press on the post over a step comes from the mean of the tensions at its ends
      const half = tension - (friction * tension * angle) / 2;
      tension -= friction * half * angle;
    }
    return found === null ? Number.NaN : found[0]! / tension - 1;
  });
}

function plates(): number[] {
  const random = seeded(53);
  const errors: number[] = [];
  // some drawn boards cannot be hoisted and are refused; most can
  for (let tries = 0; errors.length < cases && tries < 20 * cases; tries++) {
    const between = (low: number, high: number) => low + (high - low) * random();
    const plate = {
      mass: between(10, 150),
      density: 7850,
      'mass-along': between(0.2, 0.9),
      'mass-square': between(-0.1, 0.1),
      'attached-along': between(0.3, 1.4),
      'attached-square': between(-0.1, 0.2),
      'lead-aft': between(0.1, 1.6),
      'lead-up': between(0.3, 1.5),
      'down-to': between(40, 90),
      'up-to': between(-5, 20),
      water: 'air',
      gear: 'tackle',
    };
    const found = figures('loads.board-hoist', plate, ['T down', 'T up']);
    if (found === null) continue;
    const at = (along: number, square: number, down_deg: number) => {
      const a = (-down_deg * Math.PI) / 180;
      return [along * Math.cos(a) - square * Math.sin(a), along * Math.sin(a) + square * Math.cos(a)] as const;
    };
    const height = (down: number) => at(plate['mass-along'], plate['mass-square'], down)[1];
    const wire = (down: number) => {
      const [x, y] = at(plate['attached-along'], plate['attached-square'], down);
      return Math.hypot(plate['lead-aft'] - x, plate['lead-up'] - y);
    };
    const turn_deg = 0.01;
    for (const [n, down] of [plate['down-to'], plate['up-to']].entries()) {
      const gained_J = weight_N(plate.mass) * (height(down - turn_deg) - height(down + turn_deg));
      const hauled_m = wire(down + turn_deg) - wire(down - turn_deg);
      const other = Math.max(0, gained_J / hauled_m);
      // where next to nothing hangs on the wire a share says nothing
      errors.push((found[n]! - other) / Math.max(other, 0.01 * weight_N(plate.mass)));
    }
  }
  return errors;
}
