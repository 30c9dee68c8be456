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
    errorsOf(
      {
        subject: 'loads',
        what: 'boards that slide in their case, on the trailer and coming out of the water',
        kind: 'derived twice',
        against: 'the case’s press and rub settled by turns, the plate weighed slice by slice',
        unit: '',
        allowed: 1e-3,
        why: 'slices of a finite thickness',
      },
      sliding(),
    ),
    errorsOf(
      {
        subject: 'loads',
        what: 'a tackle on the fall of another',
        kind: 'derived twice',
        against: 'tensions followed sheave by sheave through both',
        unit: '',
        allowed: 1e-3,
        why: 'none should remain',
      },
      cascades(),
    ),
    errorsOf(
      {
        subject: 'loads',
        what: 'a board on wire, leads, tackle and winch: crank and its turns',
        kind: 'derived twice',
        against: 'tensions followed block by block, line wound turn by turn',
        unit: '',
        allowed: 1e-3,
        why: 'none should remain',
      },
      wholes(),
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
    const errors = [factor, 1 / factor].map(
      (grows, n) => found[n]! / (followed(load, { moving, fixed, atMoving }, grows) * grows ** turning) - 1,
    );
    return Math.max(...errors.map(Math.abs));
  });
}

interface Drawn {
  readonly moving: number;
  readonly fixed: number;
  readonly atMoving: boolean;
}

/** From the rope's fast end: a pull of 1 there, and what each part has more after each sheave. */
function followed(load: number, { moving, fixed, atMoving }: Drawn, grows: number): number {
  let tension = 1;
  let carried = atMoving ? 1 : 0;
  let at = atMoving ? 'fixed' : 'moving';
  for (let sheave = 0; sheave < moving + fixed; sheave++) {
    const before = tension;
    tension *= grows;
    if (at === 'moving') carried += before + tension;
    at = at === 'moving' ? 'fixed' : 'moving';
  }
  return (load / carried) * tension;
}

/** Tackles there can be, one to four sheaves in a block. */
function drawTackle(whole: (below: number) => number): Drawn {
  const moving = 1 + whole(4);
  const atMoving = whole(2) === 1;
  return { moving, fixed: atMoving ? moving + whole(2) : moving - whole(2), atMoving };
}
const asGiven = ({ moving, fixed, atMoving }: Drawn, before = '') => ({
  [`${before}moving-sheaves`]: moving,
  [`${before}fixed-sheaves`]: fixed,
  [`${before}end-at`]: atMoving ? 'moving' : 'fixed',
});

function cascades(): number[] {
  const random = seeded(54);
  const whole = (below: number) => Math.floor(below * random());
  return Array.from({ length: cases }, () => {
    const [first, second] = [drawTackle(whole), drawTackle(whole)];
    const load = 10 + 3000 * random();
    const bearing = ['ball', 'plain', 'old'][whole(3)]!;
    const factor = { ball: 1.04, plain: 1.09, old: 1.15 }[bearing]!;
    const found = figures('loads.cascade', { load, ...asGiven(first), ...asGiven(second, 'second-'), bearing }, [
      'F hoisting',
      'F lowering',
    ]);
    if (found === null) return Number.NaN;
    const errors = [factor, 1 / factor].map(
      (grows, n) => found[n]! / followed(followed(load, first, grows), second, grows) - 1,
    );
    return Math.max(...errors.map(Math.abs));
  });
}

function sliding(): number[] {
  const random = seeded(55);
  const between = (low: number, high: number) => low + (high - low) * random();
  const errors: number[] = [];
  // some drawn boards jam and are refused
  for (let tries = 0; errors.length < cases && tries < 20 * cases; tries++) {
    const long = between(0.6, 1.6);
    const board = {
      length: long,
      breadth: between(0.2, 0.5),
      thickness: between(5, 30),
      density: between(1100, 8000),
      travel: between(0.2, 0.9 * long),
      'top-above-water': between(-0.3, 0.5),
      'off-middle': between(-0.15, 0.15),
      held: between(0.2, 0.6),
      friction: between(0, 0.5),
      water: random() < 0.5 ? 'air' : 'sea',
      gear: 'tackle',
    };
    const found = figures('loads.vertical-board', board, ['T down', 'T up']);
    if (found === null) continue;
    for (const [n, hauled] of [0, board.travel].entries()) {
      const slices = 4000;
      const slice_kg = (board.density * board.length * board.breadth * board.thickness) / 1000 / slices;
      let weight = 0;
      for (let i = 0; i < slices; i++) {
        const above = board['top-above-water'] + hauled - ((i + 0.5) * board.length) / slices;
        const borne = board.water === 'sea' && above < 0 ? (slice_kg * 1025) / board.density : 0;
        weight += weight_N(slice_kg - borne);
      }
      // the pull presses the plate on its case, which rubs, which asks for more pull
      let pull = weight;
      for (let turn = 0; turn < 400; turn++)
        pull = weight + 2 * board.friction * ((pull * Math.abs(board['off-middle'])) / board.held);
      errors.push(found[n]! / pull - 1);
    }
  }
  return errors;
}

function wholes(): number[] {
  const random = seeded(56);
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (below: number) => Math.floor(below * random());
  return Array.from({ length: cases }, () => {
    const tackle = drawTackle(whole);
    const bearing = ['ball', 'plain', 'old'][whole(3)]!;
    const factor = { ball: 1.04, plain: 1.09, old: 1.15 }[bearing]!;
    const leads = whole(4);
    const winch = {
      'winch-gear': between(1, 6),
      handle: between(100, 300),
      drum: between(30, 90),
      wire: between(3, 10),
      width: between(25, 80),
      loss: between(0, 0.3),
    };
    const plate = { length: 1.2, breadth: 0.4, thickness: between(6, 20), density: 7850, held: 0.4, travel: 0.8 };
    const found = figures(
      'loads.vertical-board',
      { ...plate, water: 'air', gear: 'both', leads, bearing, ...asGiven(tackle), ...winch },
      ['F hoisting', 'crank'],
    );
    if (found === null) return Number.NaN;
    const load = weight_N(plate.length * plate.breadth * (plate.thickness / 1000) * plate.density);
    const fall = followed(load * factor ** leads, tackle, factor);
    const parts = 2 * tackle.moving + (tackle.atMoving ? 1 : 0);
    const turnsInLayer = Math.max(1, Math.floor(winch.width / winch.wire));
    let left_mm = 1000 * plate.travel * parts;
    let turns = 0;
    let radius_mm = 0;
    // the longest fall is 7 m: a few hundred turns of the smallest drum at most
    for (let turn = 0; left_mm > 1e-9 && turn < 10_000; turn++) {
      radius_mm = winch.drum / 2 + winch.wire * (Math.floor(turn / turnsInLayer) + 0.5);
      const taken = Math.min(1, left_mm / (2 * Math.PI * radius_mm));
      left_mm -= taken * 2 * Math.PI * radius_mm;
      turns += taken;
    }
    // a torque at the drum, over the gear and what the winch passes on, is a force at the handle
    const crank = (fall * radius_mm) / (winch['winch-gear'] * winch.handle * (1 - winch.loss));
    return Math.max(Math.abs(found[0]! / crank - 1), Math.abs(found[1]! / (turns * winch['winch-gear']) - 1));
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
