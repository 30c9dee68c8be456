/** What stands on her hull, seen from the side: cabin, coaming, cockpit, hatches, pulpit. */
import type { HullForm } from './hull-form.ts';
import { at, corners, curved, type Line, type Point, shape, straight } from './line.ts';

export interface House {
  /** where it rises from the deck, and where it ends at the cockpit. [m] from the stem */
  readonly fore: number;
  readonly aft: number;
  /** height of the roof over the waterline. [m] */
  readonly roof: (x: number) => number;
}

/** The cabin: null where she is open. */
export function houseOf({ sizes, sheer }: HullForm): House | null {
  const { length_m: length, cabinHeight_m: height } = sizes;
  if (height <= 0) return null;
  const fore = 0.245 * length;
  const aft = 0.63 * length;
  // a little lower ahead than aft, and crowned
  const top = sheer(0.5 * (fore + aft)) + height;
  const roof = (x: number) => {
    const share = (x - fore) / (aft - fore);
    return top - 0.06 * height * (1 - share) - 0.05 * height * (2 * share - 1) ** 2;
  };
  return { fore, aft, roof };
}

/** Height of what one stands on: the cabin top, the deck, or the cockpit's seats. [m] over the waterline */
export function deckHeight(form: HullForm, x: number): number {
  const house = houseOf(form);
  if (house && x > house.fore + 0.08 * form.sizes.length_m && x <= house.aft) return house.roof(x);
  return form.sheer(x);
}

export function deckLines(form: HullForm): readonly Line[] {
  const house = houseOf(form);
  return house ? [...houseLines(form, house), ...coamingLines(form, house.aft), ...pulpit(form)] : openLines(form);
}

function houseLines({ sizes: { length_m: length, cabinHeight_m: height }, sheer }: HullForm, house: House): Line[] {
  const { fore, aft, roof } = house;
  const brow = fore + 0.1 * length;
  const ahead = [
    at(fore, sheer(fore)),
    at(fore + 0.03 * length, sheer(fore) + 0.3 * height),
    at(fore + 0.062 * length, roof(brow) - 0.17 * height),
    at(brow, roof(brow)),
  ];
  const along = [0.2, 0.4, 0.6, 0.8, 0.965].map((share) => {
    const x = brow + (aft - brow) * share;
    return at(x, roof(x));
  });
  const edge = at(aft + 0.004 * length, roof(aft) - 0.1 * height);
  const heel = at(aft + 0.028 * length, sheer(aft + 0.028 * length));
  const glassTop = (x: number) => roof(x) - 0.25 * height;
  const glassFoot = (x: number) => sheer(x) + 0.3 * height;
  const pane = (part: string, from: number, to: number, lean: number): Line => {
    const soft = 0.008 * length;
    return shape(
      part,
      [
        [at(from + lean + soft, glassTop(from)), at(to - soft, glassTop(to))],
        [
          at(to - soft, glassTop(to)),
          at(to, glassTop(to) - soft * 0.6),
          at(to, glassFoot(to) + soft * 0.6),
          at(to - soft, glassFoot(to)),
        ],
        [at(to - soft, glassFoot(to)), at(from + soft, glassFoot(from))],
        [
          at(from + soft, glassFoot(from)),
          at(from - soft * 0.2, glassFoot(from) + soft * 0.5),
          at(from + lean * 0.7, glassTop(from) - soft * 0.7),
          at(from + lean + soft, glassTop(from)),
        ],
      ],
      'glass',
    );
  };
  const garage = aft - 0.13 * length;
  const lift = 0.085 * height;
  const rail = [brow + 0.055 * length, aft - 0.15 * length] as const;
  return [
    shape('cabin', [
      [...ahead, ...along],
      [along[along.length - 1]!, edge],
      [edge, heel],
    ]),
    pane('cabin window, fore', fore + 0.095 * length, fore + 0.18 * length, 0.03 * length),
    pane('cabin window', fore + 0.205 * length, aft - 0.035 * length, 0.012 * length),
    straight('companion hatch', 'outline', [
      at(garage, roof(garage)),
      at(garage + 0.012 * length, roof(garage) + lift),
      at(aft - 0.004 * length, roof(aft) + lift * 0.9),
      at(aft - 0.004 * length, roof(aft) - 0.02 * height),
    ]),
    curved('handrail', 'thin', [
      at(rail[0], roof(rail[0])),
      at(rail[0] + 0.02 * length, roof(rail[0] + 0.02 * length) + 0.1 * height),
      at(rail[1] - 0.02 * length, roof(rail[1] - 0.02 * length) + 0.1 * height),
      at(rail[1], roof(rail[1])),
    ]),
    straight('forehatch', 'thin', [
      at(0.165 * length, sheer(0.165 * length)),
      at(0.17 * length, sheer(0.17 * length) + 0.045),
      at(0.235 * length, sheer(0.235 * length) + 0.04),
      at(0.24 * length, sheer(0.24 * length)),
    ]),
  ];
}

function coamingLines(
  { sizes: { length_m: length, freeboard_m: freeboard, cabinHeight_m: height }, sheer, transomTop }: HullForm,
  aft: number,
): Line[] {
  const high = Math.max(0.12, 0.42 * height);
  const top = (x: number) => {
    const share = (x - aft) / (transomTop.x - aft);
    return sheer(x) + high * (1 - share) ** 1.15 + 0.035 * (1 - share ** 6);
  };
  const end = transomTop.x - 0.012 * length;
  const xs = [0.05, 0.2, 0.4, 0.6, 0.8, 0.95].map((share) => aft + (end - aft) * share);
  const sole = 0.22 * freeboard;
  const seat = 0.72 * freeboard;
  const foreEnd = aft + 0.02 * length;
  const aftEnd = transomTop.x - 0.03 * length;
  return [
    shape('coaming', [
      [...xs.map((x) => at(x, top(x))), at(end, sheer(end) + 0.012)],
      [at(end, sheer(end) + 0.012), at(end, sheer(end))],
      [...[...xs].reverse().map((x) => at(x, sheer(x)))],
    ]),
    straight('cockpit, inside', 'hidden', [at(foreEnd, sole), at(aftEnd, sole + 0.03), at(aftEnd, seat)]),
  ];
}

function pulpit({ sizes: { length_m: length }, sheer }: HullForm): Line[] {
  const high = Math.min(0.55, 0.08 * length);
  const foot = 0.125 * length;
  const post = 0.055 * length;
  const nose = at(-0.006 * length, sheer(0) + high * 0.98);
  return [
    curved('pulpit', 'thin', [
      at(foot, sheer(foot)),
      at(foot - 0.012 * length, sheer(foot) + high * 0.8),
      at(foot - 0.035 * length, sheer(foot) + high),
      at(0.03 * length, sheer(0.03 * length) + high),
      nose,
      at(0.004 * length, sheer(0) + high * 0.72),
      at(0.02 * length, sheer(0.02 * length)),
    ]),
    straight('pulpit post', 'thin', [at(post, sheer(post)), at(post - 0.008 * length, sheer(post) + high)]),
  ];
}

function openLines({ sizes: { length_m: length, freeboard_m: freeboard }, sheer, transomTop }: HullForm): Line[] {
  const fore = 0.3 * length;
  const aft = transomTop.x - 0.05 * length;
  const guard = 0.07 * freeboard;
  const coaming: Point[] = [0, 0.06, 0.3, 0.6, 0.9, 1].map((share) => {
    const x = fore + (aft - fore) * share;
    return at(x, sheer(x) + guard * (share === 0 || share === 1 ? 0 : 1));
  });
  return [
    curved('coaming', 'outline', coaming),
    straight('cockpit, inside', 'hidden', [
      at(fore, sheer(fore) - 0.05),
      at(fore, 0.16 * freeboard),
      at(aft, 0.2 * freeboard),
      at(aft, sheer(aft) - 0.05),
    ]),
    ...[0.46, 0.68].map((share, i): Line => {
      const x = share * length;
      return {
        part: i === 0 ? 'thwart' : 'aft thwart',
        weight: 'hidden',
        runs: corners(
          at(x, 0.6 * freeboard),
          at(x + 0.05 * length, 0.6 * freeboard),
          at(x + 0.05 * length, 0.52 * freeboard),
          at(x, 0.52 * freeboard),
        ),
        closed: true,
        filled: false,
      };
    }),
  ];
}
