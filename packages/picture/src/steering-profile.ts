/** Rudder, tiller and outboard, seen from the side. */
import type { HullForm } from './hull-form.ts';
import { at, curved, type Line, type Point, type Run, shape, straight, turned } from './line.ts';

/** Depth of the rudder below the waterline. [m] Our judgement: less than the board, as it must not touch first. */
export function rudderDepth({ sizes, body_m }: HullForm): number {
  return Math.max(0.06 * sizes.length_m, body_m, Math.min(0.145 * sizes.length_m, 0.72 * sizes.draftBoardDown_m));
}

export function rudderLines(form: HullForm): readonly Line[] {
  return form.sizes.rudder === 'on the transom' ? hungOnTransom(form) : underHull(form);
}

function hungOnTransom(form: HullForm): Line[] {
  const { sizes, transomTop, transomFoot } = form;
  const { length_m: length } = sizes;
  const deep = rudderDepth(form);
  const chord = 0.046 * length;
  // the hangings keep it clear of the transom, and it turns about a line along it
  const lean = (transomFoot.x - transomTop.x) / (transomTop.y - transomFoot.y);
  const face = (y: number) => transomTop.x + (transomTop.y - y) * lean + 0.014 * length;
  const top = transomTop.y + 0.055 * length * 0.4 + 0.06;
  const cheek = Math.max(0.02, transomFoot.y * 0.6);
  const pivot = at(face(cheek) + 0.42 * chord, cheek + 0.12 * (top - cheek));
  const stock = shape('rudder stock', [
    [at(face(top), top), at(face(top) + 0.62 * chord, top - 0.015 * length)],
    [
      at(face(top) + 0.62 * chord, top - 0.015 * length),
      at(face(cheek) + 0.98 * chord, pivot.y),
      at(face(cheek) + 0.92 * chord, cheek - 0.02 * length),
    ],
    [at(face(cheek) + 0.92 * chord, cheek - 0.02 * length), at(face(cheek), cheek - 0.02 * length)],
  ]);
  const foot = -deep;
  const blade = shape('rudder', [
    [
      at(face(cheek) + 0.06 * chord, pivot.y),
      at(face(cheek) - 0.02 * chord, cheek * 0.2),
      at(face(cheek) + 0.02 * chord, foot * 0.82),
    ],
    [
      at(face(cheek) + 0.02 * chord, foot * 0.82),
      at(face(cheek) + 0.12 * chord, foot * 0.955),
      at(face(cheek) + 0.42 * chord, foot),
      at(face(cheek) + 0.72 * chord, foot * 0.97),
      at(face(cheek) + 0.86 * chord, foot * 0.86),
    ],
    [
      at(face(cheek) + 0.86 * chord, foot * 0.86),
      at(face(cheek) + 0.98 * chord, foot * 0.3),
      at(face(cheek) + 0.94 * chord, pivot.y),
    ],
  ]);
  const hanging = (y: number): Line =>
    straight(`hanging ${y.toFixed(2)}`, 'thin', [at(face(y) - 0.016 * length, y), at(face(y) + 0.01 * length, y)]);
  const tillerEnd = at(transomTop.x - 0.17 * length, transomTop.y + 0.05 * length);
  return [
    blade,
    stock,
    hanging(transomTop.y * 0.82),
    hanging(cheek + 0.04 * length),
    curved('tiller', 'outline', [
      at(face(top) + 0.5 * chord, top - 0.012 * length),
      at(transomTop.x - 0.03 * length, transomTop.y + 0.042 * length),
      at(transomTop.x - 0.1 * length, transomTop.y + 0.054 * length),
      tillerEnd,
    ]),
  ];
}

function underHull(form: HullForm): Line[] {
  const { sizes, bottom, transomTop } = form;
  const { length_m: length } = sizes;
  const fore = 0.885 * length;
  const chord = 0.075 * length;
  const foot = -rudderDepth(form);
  const root = bottom(fore);
  return [
    shape('rudder', [
      [at(fore, root + 0.02), at(fore + 0.015 * length, foot + 0.04)],
      [at(fore + 0.015 * length, foot + 0.04), at(fore + 0.02 * length, foot + 0.008), at(fore + 0.032 * length, foot)],
      [at(fore + 0.032 * length, foot), at(fore + chord * 0.93, foot + 0.012)],
      [at(fore + chord * 0.93, foot + 0.012), at(fore + chord, bottom(fore + chord) + 0.02)],
    ]),
    curved('tiller', 'outline', [
      at(fore + 0.03 * length, transomTop.y + 0.005 * length),
      at(fore - 0.02 * length, transomTop.y + 0.045 * length),
      at(fore - 0.13 * length, transomTop.y + 0.055 * length),
    ]),
  ];
}

/** The outboard on its bracket; tilted, its foot is out of the water. Sizes of a small one of 3 to 6 kW, about. [m] */
export function outboardLines({ sizes, transomTop }: HullForm, tilted: boolean): readonly Line[] {
  if (sizes.outboard === 'none') return [];
  const clamp = at(transomTop.x + 0.13, Math.max(0.34, Math.min(transomTop.y * 0.86, 0.56)));
  const foot = -0.34;
  const leg = (dx: number, y: number): Point => at(clamp.x + 0.06 + dx, y);
  const plate = foot + 0.2;
  const hood: Run = [
    leg(-0.13, clamp.y + 0.1),
    leg(-0.15, clamp.y + 0.26),
    leg(-0.1, clamp.y + 0.35),
    leg(0.08, clamp.y + 0.37),
    leg(0.24, clamp.y + 0.33),
    leg(0.28, clamp.y + 0.2),
    leg(0.22, clamp.y + 0.1),
  ];
  const drawn: Line[] = [
    shape('outboard leg', [
      [leg(-0.045, clamp.y + 0.12), leg(-0.03, plate)],
      [leg(-0.03, plate), leg(-0.02, foot + 0.06)],
      [leg(-0.02, foot + 0.06), leg(-0.1, foot + 0.075), leg(-0.135, foot + 0.03), leg(-0.08, foot - 0.01)],
      [
        leg(-0.08, foot - 0.01),
        leg(-0.015, foot - 0.005),
        leg(0.0, foot - 0.1),
        leg(0.06, foot - 0.09),
        leg(0.07, foot),
      ],
      [leg(0.07, foot), leg(0.1, foot + 0.05)],
      [leg(0.1, foot + 0.05), leg(0.085, plate)],
      [leg(0.085, plate), leg(0.1, clamp.y + 0.12)],
    ]),
    straight('outboard plate', 'outline', [leg(-0.08, plate), leg(0.22, plate + 0.005)]),
    curved('propeller', 'thin', [
      leg(0.1, foot + 0.03),
      leg(0.13, foot + 0.12),
      leg(0.15, foot + 0.02),
      leg(0.13, foot - 0.08),
      leg(0.1, foot + 0.03),
    ]),
    shape('outboard', [hood, [hood[hood.length - 1]!, hood[0]!]]),
    straight('outboard hood', 'thin', [leg(-0.14, clamp.y + 0.19), leg(0.27, clamp.y + 0.2)]),
  ];
  const pivot = at(clamp.x, clamp.y + 0.04);
  const bracket = straight('outboard bracket', 'outline', [
    at(transomTop.x + 0.005, clamp.y + 0.02),
    at(clamp.x, clamp.y + 0.02),
    at(clamp.x, clamp.y - 0.2),
    at(transomTop.x + 0.01, clamp.y - 0.24),
  ]);
  return [bracket, ...(tilted ? drawn.map((line) => turned(line, pivot, 62)) : drawn)];
}
