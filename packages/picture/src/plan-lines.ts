/** Her plan: seen from above, x aft from the stem, y to port of the centreline. */
import { houseOf } from './deck-profile.ts';
import type { HullForm } from './hull-form.ts';
import { type BoardStance, boardPin } from './keel-profile.ts';
import { at, circle, corners, curved, type Line, type Point, type Run, shape, straight } from './line.ts';
import { chainplate, lyingMast } from './rig-profile.ts';

export function planLines(
  form: HullForm,
  stance: { readonly mastUp: boolean; readonly board: BoardStance; readonly coverOn: boolean },
): readonly Line[] {
  return [
    ...aft(form),
    ...hull(form),
    strake(form),
    ...(houseOf(form) ? cabin(form) : openBoat(form)),
    ...foredeck(form),
    ...below(form, stance.board),
    ...tiller(form),
    ...(stance.mastUp ? rig(form) : []),
    ...(stance.coverOn ? cover(form, stance.mastUp) : []),
    ...(stance.mastUp ? [] : lying(form)),
  ];
}

const shares = [0, 0.006, 0.02, 0.05, 0.1, 0.17, 0.26, 0.36, 0.46, 0.56, 0.66, 0.76, 0.86, 0.94, 1];

/** The outline of the deck, inset by so much all round. */
function sides({ breadth, transomTop }: HullForm, inset: number, from = 0, to = 1): readonly [Run, Run] {
  const port = shares
    .filter((share) => share > from && share < to)
    .concat(to)
    .map((share) => at(share * transomTop.x, Math.max(0, breadth(share * transomTop.x) - inset)));
  const whole = [at(from * transomTop.x, Math.max(0, breadth(from * transomTop.x) - inset)), ...port];
  return [whole, whole.map(({ x, y }) => at(x, -y))];
}

function hull(form: HullForm): Line[] {
  const { transomTop, transomFoot, sizes } = form;
  const length = sizes.length_m;
  const [port, starboard] = sides(form, 0);
  const deck = port[port.length - 1]!;
  // a reversed transom shows from above, narrowing to its foot
  const reversed = transomFoot.x > transomTop.x;
  const last = reversed ? at(length - 0.01 * length, 0.8 * deck.y) : deck;
  const camber = Math.min(0.012 * length, length - last.x);
  const across = [
    last,
    at(last.x + camber * 0.75, last.y * 0.5),
    at(last.x + camber, 0),
    at(last.x + camber * 0.75, -last.y * 0.5),
    at(last.x, -last.y),
  ];
  return [
    shape('hull', [
      port,
      ...(reversed ? [[deck, last]] : []),
      across,
      ...(reversed ? [[at(last.x, -last.y), at(deck.x, -deck.y)]] : []),
      [...starboard].reverse(),
    ]),
    ...(reversed ? [straight('transom, upper edge', 'outline', [deck, at(deck.x, -deck.y)])] : []),
  ];
}

function strake(form: HullForm): Line {
  const inset = 0.035 * form.sizes.beam_m;
  const [port, starboard] = sides(form, inset, 0.02, 0.99);
  return {
    part: 'toe rail',
    weight: 'thin',
    runs: [[...port].reverse(), [...starboard]],
    closed: false,
    filled: false,
  };
}

const mirrored = (points: Run): Run => points.map(({ x, y }) => at(x, -y)).reverse();

/** A shape that is the same to both sides, from its port side given fore to aft. */
function both(part: string, weight: Line['weight'], port: Run, filled = true): Line {
  return {
    part,
    weight,
    runs: [port, [port[port.length - 1]!, at(port[port.length - 1]!.x, -port[port.length - 1]!.y)], mirrored(port)],
    closed: true,
    filled,
  };
}

function box(
  part: string,
  weight: Line['weight'],
  fore: number,
  aft: number,
  half: number,
  soft: number,
  filled = true,
): Line {
  const corner: Run = [at(fore, half - soft), at(fore + soft * 0.3, half - soft * 0.3), at(fore + soft, half)];
  const heel: Run = [at(aft - soft, half), at(aft - soft * 0.3, half - soft * 0.3), at(aft, half - soft)];
  return {
    part,
    weight,
    runs: [
      corner,
      [corner[2]!, heel[0]!],
      heel,
      [heel[2]!, at(aft, -(half - soft))],
      mirrored(heel),
      [at(aft - soft, -half), at(fore + soft, -half)],
      mirrored(corner),
    ],
    closed: true,
    filled,
  };
}

function cabin(form: HullForm): Line[] {
  const { sizes, breadth, transomTop } = form;
  const { length_m: length, beam_m: beam } = sizes;
  const { fore, aft } = houseOf(form)!;
  const side = (x: number) => breadth(x) - 0.155 * beam;
  const foot = [0, 0.05, 0.16, 0.34, 0.55, 0.78, 1].map((share, i) => {
    const x = fore + (aft - fore) * share;
    return at(x, Math.max(0.03 * beam, side(x)) * [0.35, 0.78, 0.96, 1, 1, 1, 1][i]!);
  });
  const roofFore = fore + 0.07 * length;
  const roof = [0, 0.08, 0.24, 0.45, 0.72, 1].map((share, i) => {
    const x = roofFore + (aft - 0.01 * length - roofFore) * share;
    return at(x, (side(x) - 0.045 * beam) * [0.5, 0.86, 0.98, 1, 1, 1][i]!);
  });
  const slide = 0.125 * beam;
  const wellFore = aft + 0.02 * length;
  const wellAft = transomTop.x - 0.03 * length;
  const coaming = (x: number) => breadth(x) - 0.115 * beam;
  const well = 0.15 * beam;
  const seats: Run = [0, 0.3, 0.65, 1].map((share) => {
    const x = wellFore + (wellAft - wellFore) * share;
    return at(x, coaming(x));
  });
  return [
    both(
      'cockpit coaming',
      'outline',
      seats.map(({ x, y }) => at(x, y + 0.028 * beam)),
      false,
    ),
    both('cockpit seats', 'outline', seats),
    box('cockpit well', 'outline', wellFore + 0.004 * length, wellAft - 0.055 * length, well, 0.03 * beam, false),
    ...[1, -1].map(
      (hand): Line =>
        straight(
          hand === 1 ? 'port locker' : 'starboard locker',
          'thin',
          corners(
            at(wellFore + 0.1 * length, hand * (well + 0.05 * beam)),
            at(wellFore + 0.2 * length, hand * (well + 0.05 * beam)),
          )
            .flat()
            .concat([
              at(wellFore + 0.2 * length, hand * (coaming(wellFore + 0.2 * length) - 0.05 * beam)),
              at(wellFore + 0.1 * length, hand * (coaming(wellFore + 0.1 * length) - 0.05 * beam)),
              at(wellFore + 0.1 * length, hand * (well + 0.05 * beam)),
            ]),
        ),
    ),
    both('cabin', 'outline', foot),
    both('cabin top', 'thin', roof, false),
    box('companion hatch', 'outline', aft - 0.13 * length, aft - 0.004 * length, slide, 0.012 * beam, false),
    ...[1, -1].map(
      (hand): Line =>
        curved(
          hand === 1 ? 'port handrail' : 'starboard handrail',
          'thin',
          [0.16, 0.4, 0.66].map((share) => {
            const x = fore + (aft - fore) * (0.2 + share);
            return at(x, hand * (side(x) - 0.1 * beam));
          }),
        ),
    ),
  ];
}

function openBoat(form: HullForm): Line[] {
  const { sizes, breadth, transomTop } = form;
  const { length_m: length, beam_m: beam } = sizes;
  const fore = 0.3 * length;
  const aft = transomTop.x - 0.05 * length;
  const inner: Run = [0, 0.08, 0.25, 0.5, 0.75, 1].map((share) => {
    const x = fore + (aft - fore) * share;
    return at(x, breadth(x) - 0.13 * beam);
  });
  const bench: Run = [0.2, 0.5, 0.8, 1].map((share) => {
    const x = fore + (aft - fore) * share;
    return at(x, breadth(x) - 0.3 * beam);
  });
  const thwart = (part: string, share: number): Line => {
    const x = share * length;
    const half = breadth(x) - 0.13 * beam;
    return {
      ...shape(part, corners(at(x, half), at(x + 0.05 * length, half), at(x + 0.05 * length, -half), at(x, -half))),
    };
  };
  return [
    both('cockpit', 'outline', inner),
    both('side benches', 'thin', bench, false),
    thwart('thwart', 0.46),
    thwart('aft thwart', 0.68),
  ];
}

function foredeck(form: HullForm): Line[] {
  const { length_m: length, beam_m: beam, cabinHeight_m: cabinHeight } = form.sizes;
  const [wellFore, wellAft] = [0.05 * length, 0.11 * length];
  const soft = 0.02 * beam;
  return [
    both(
      'anchor well',
      'thin',
      [at(wellFore, form.breadth(wellFore) * 0.5), at(wellAft, form.breadth(wellAft) * 0.5)],
      false,
    ),
    straight('bow roller', 'outline', [at(0.002 * length, 0), at(0.03 * length, 0)]),
    ...(cabinHeight > 0
      ? [
          box(
            'forehatch',
            'outline',
            0.158 * length,
            0.238 * length,
            Math.min(0.11 * beam, form.breadth(0.158 * length) * 0.6),
            soft,
            false,
          ),
        ]
      : []),
    straight('bow cleat', 'outline', [at(0.135 * length, 0.02 * beam), at(0.135 * length, -0.02 * beam)]),
    ...[1, -1].map((hand): Line => {
      const x = 0.93 * form.transomTop.x;
      const y = hand * (form.breadth(x) - 0.06 * beam);
      return straight(hand === 1 ? 'port stern cleat' : 'starboard stern cleat', 'outline', [
        at(x - 0.012 * length, y),
        at(x + 0.012 * length, y),
      ]);
    }),
  ];
}

function below(form: HullForm, board: BoardStance): Line[] {
  const { sizes, breadth } = form;
  const { length_m: length, keel, beam_m: beam } = sizes;
  const pin = boardPin(form);
  const slot = (part: string, fore: number, aft: number, middle: number, half: number): Line => ({
    part,
    weight: 'hidden',
    runs: corners(
      at(fore, middle + half),
      at(aft, middle + half),
      at(aft, middle - half),
      at(fore, middle - half),
      at(fore, middle + half),
    ),
    closed: false,
    filled: false,
  });
  const half = 0.011 * beam + 0.008;
  switch (keel) {
    case 'pivoting':
      return [
        slot(
          board === 'removed' ? 'board case, empty' : 'board case',
          pin.x - 0.03 * length,
          pin.x + 0.24 * length,
          0,
          half,
        ),
      ];
    case 'vertical':
      return [slot('board case', 0.395 * length, 0.49 * length, 0, half)];
    case 'lifting keel':
      return [slot('keel case', 0.38 * length, 0.49 * length, 0, half * 1.5)];
    case 'bilge keels':
      return [1, -1].map((hand) =>
        slot(
          hand === 1 ? 'port keel' : 'starboard keel',
          0.4 * length,
          0.58 * length,
          hand * 0.5 * breadth(0.5 * length),
          half,
        ),
      );
    case 'fixed keel':
      return [slot('keel', 0.37 * length, 0.62 * length, 0, half * 1.6)];
  }
}

function aft(form: HullForm): Line[] {
  const { sizes, transomTop } = form;
  const { length_m: length } = sizes;
  const lines: Line[] = [];
  if (sizes.rudder === 'on the transom')
    lines.push(
      shape('rudder', [
        [at(length + 0.01 * length, 0.022), at(length + 0.058 * length, 0.008)],
        [at(length + 0.058 * length, 0.008), at(length + 0.058 * length, -0.008)],
        [at(length + 0.058 * length, -0.008), at(length + 0.01 * length, -0.022)],
      ]),
    );
  if (sizes.outboard === 'on the transom') {
    const y = 0.22 * sizes.beam_m;
    const x = transomTop.x + 0.08;
    const hood: Run = [
      at(x, y + 0.06),
      at(x + 0.06, y + 0.14),
      at(x + 0.26, y + 0.15),
      at(x + 0.4, y + 0.08),
      at(x + 0.42, y),
      at(x + 0.4, y - 0.08),
      at(x + 0.26, y - 0.15),
      at(x + 0.06, y - 0.14),
      at(x, y - 0.06),
    ];
    lines.push(shape('outboard', [hood]), straight('outboard bracket', 'outline', [at(transomTop.x, y), at(x, y)]));
  }
  return lines;
}

function tiller({ sizes: { length_m: length, rudder }, transomTop }: HullForm): Line[] {
  const pivot = rudder === 'on the transom' ? at(length + 0.02 * length, 0) : at(0.91 * length, 0);
  const end: Point = at(transomTop.x - 0.17 * length, 0.006 * length);
  return [straight('tiller', 'outline', [pivot, end])];
}

function rig(form: HullForm): Line[] {
  const {
    mastFromBow_m: x,
    boom_m: boom,
    rig: kind,
    mastHeight_m: height,
    beam_m: beam,
    length_m: length,
  } = form.sizes;
  if (height === 0) return [];
  const plateX = chainplate(form);
  const plateY = form.breadth(plateX) - 0.07 * beam;
  const lines: Line[] = [];
  if (boom > 0) lines.push(straight('boom', 'heavy', [at(x, 0), at(x + boom, -0.05 * boom)]));
  if (kind !== 'unstayed') {
    for (const hand of [1, -1]) {
      lines.push(
        straight(hand === 1 ? 'port shroud' : 'starboard shroud', 'thin', [at(x, 0), at(plateX, hand * plateY)]),
      );
      lines.push(
        circle(hand === 1 ? 'port shroud plate' : 'starboard shroud plate', 'thin', at(plateX, hand * plateY), 0.03),
      );
    }
    lines.push(straight('forestay', 'thin', [at(x, 0), at(0.012 * length, 0)]));
  }
  lines.push(circle('mast', 'outline', at(x, 0), Math.min(0.06, 0.011 * length)));
  return lines;
}

function lying(form: HullForm): Line[] {
  const { mastHeight_m: height, length_m: length } = form.sizes;
  if (height === 0) return [];
  const { foot, head } = lyingMast(form);
  const spreader = foot.x + 0.45 * height;
  return [
    straight('mast, lying', 'heavy', [at(foot.x, 0), at(head.x, 0)]),
    straight('spreader', 'outline', [at(spreader, 0.05 * length), at(spreader, -0.05 * length)]),
  ];
}

function cover(form: HullForm, mastUp: boolean): Line[] {
  const { length_m: length } = form.sizes;
  const house = houseOf(form);
  const from = mastUp ? (house ? house.aft - 0.1 * length : form.sizes.mastFromBow_m + 0.05 * length) / length : 0;
  const [port, starboard] = sides(form, mastUp ? 0.02 * length : -0.008 * length, from, 1);
  const ridge = (share: number) => from + (1 - from) * share;
  const first = port[0]!;
  const folds = (mastUp ? [0.3, 0.55, 0.8] : [0.16, 0.3, 0.44, 0.58, 0.72, 0.86]).flatMap((share, i) => {
    const x = ridge(share) * form.transomTop.x;
    const y = Math.max(0, form.breadth(x) - (mastUp ? 0.02 * length : 0));
    return [1, -1].map(
      (hand): Line =>
        curved(`fold ${i + 1}${hand === 1 ? ', port' : ''}`, 'thin', [
          at(x, hand * 0.03 * length),
          at(x + 0.012 * length, hand * y * 0.5),
          at(x, hand * y * 0.98),
        ]),
    );
  });
  return [
    shape('cover', [
      port,
      [port[port.length - 1]!, starboard[starboard.length - 1]!],
      [...starboard].reverse(),
      [at(first.x, -first.y), first],
    ]),
    ...folds,
  ];
}
