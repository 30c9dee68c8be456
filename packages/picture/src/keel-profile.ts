/** What is under her, seen from the side: a board in its case, a lifting keel, bilge keels, a fixed keel. */
import type { HullForm } from './hull-form.ts';
import { at, corners, type Line, type Point, type Run, shape, straight } from './line.ts';

/** How the board stands; 'removed' leaves its case empty. What is fixed stands always. */
export type BoardStance = 'up' | 'down' | 'removed';

/** Where the board or keel is: its fore edge under the hull, its pin where it has one. [m] */
export function boardPin({ sizes: { length_m: length }, body_m }: HullForm): Point {
  return at(0.41 * length, -0.55 * body_m);
}

export function keelLines(form: HullForm, stance: BoardStance): readonly Line[] {
  switch (form.sizes.keel) {
    case 'pivoting':
      return pivoting(form, stance);
    case 'vertical':
      return vertical(form, stance);
    case 'lifting keel':
      return liftingKeel(form, stance);
    case 'bilge keels':
    case 'fixed keel':
      return [fixed(form)];
  }
}

const swung_deg = 68;

function pivoting(form: HullForm, stance: BoardStance): Line[] {
  const { sizes, body_m, bottom } = form;
  const pin = boardPin(form);
  const below = Math.max(0.12, sizes.draftBoardDown_m + pin.y);
  const chord = Math.min(0.075 * sizes.length_m, 0.42 * below + 0.08);
  const head = 0.34 * chord;
  // the plate hangs to her draft with the board down at its lowest corner
  const swing = (swung_deg * Math.PI) / 180;
  const tipSide = 0.12 * chord;
  const reach = (below - tipSide * Math.cos(swing)) / Math.sin(swing);
  const plate = (angle: number): readonly Run[] => {
    // u along the plate from its pin towards the tip, v across it, fore side negative
    const on = (u: number, v: number): Point =>
      at(pin.x + u * Math.cos(angle) + v * Math.sin(angle), pin.y - u * Math.sin(angle) + v * Math.cos(angle));
    const fore = -0.26 * chord;
    const aft = 0.74 * chord;
    return [
      [
        on(reach * 0.9, fore),
        on(0.1 * reach, fore),
        on(-head * 0.55, fore * 0.72),
        on(-head, 0),
        on(-head * 0.5, aft * 0.82),
        on(0.1 * reach, aft),
      ],
      [on(0.1 * reach, aft), on(reach * 0.88, aft * 0.86)],
      [
        on(reach * 0.88, aft * 0.86),
        on(reach * 0.985, aft * 0.55),
        on(reach, -tipSide),
        on(reach * 0.97, fore * 0.7),
        on(reach * 0.9, fore),
      ],
    ];
  };
  const roof = Math.min(pin.y + 0.74 * chord + 0.2 * reach + 0.06, 0.8 * sizes.freeboard_m);
  const fore = pin.x - 0.74 * chord - 0.05;
  const aft = Math.min(pin.x + reach + 0.06, 0.86 * sizes.length_m);
  const lid = Math.max(bottom(aft) + 0.05, pin.y + 0.78 * chord);
  const lines: Line[] = [
    straight('board case', 'hidden', [
      at(fore, bottom(fore)),
      at(fore, roof),
      at(fore + 0.45 * (aft - fore), roof),
      at(aft, lid),
      at(aft, bottom(aft)),
    ]),
  ];
  if (stance !== 'removed') {
    const down = stance === 'down';
    lines.push({
      part: down ? 'board, down' : 'board, up in its case',
      weight: down ? 'outline' : 'hidden',
      runs: plate(down ? swing : -0.02),
      closed: true,
      filled: down,
    });
  }
  lines.push({
    part: 'board pin',
    weight: 'thin',
    runs: [pinRing(pin, Math.min(0.03, body_m * 0.16))],
    closed: true,
    filled: false,
  });
  return lines;
}

function pinRing(centre: Point, radius: number): Run {
  return Array.from({ length: 9 }, (_, i) =>
    at(centre.x + radius * Math.cos((i / 8) * 2 * Math.PI), centre.y + radius * Math.sin((i / 8) * 2 * Math.PI)),
  );
}

function foil(fore: number, chord: number, top: number, foot: number, lean: number): readonly Run[] {
  const low = foot + 0.1 * chord;
  return [
    [at(fore, top), at(fore + lean * 0.9, low)],
    [
      at(fore + lean * 0.9, low),
      at(fore + lean + 0.1 * chord, foot + 0.01 * chord),
      at(fore + lean + 0.3 * chord, foot),
    ],
    [at(fore + lean + 0.3 * chord, foot), at(fore + chord * 0.97, foot + 0.03 * chord)],
    [at(fore + chord * 0.97, foot + 0.03 * chord), at(fore + chord, top)],
  ];
}

function vertical(form: HullForm, stance: BoardStance): Line[] {
  const { sizes, bottom, sheer } = form;
  const { length_m: length } = sizes;
  const chord = 0.085 * length;
  const fore = 0.4 * length;
  const travel = stance === 'down' ? 0 : sizes.draftBoardDown_m - sizes.draft_m;
  const top = 0.86 * sheer(fore);
  const lines: Line[] = [
    straight('board case', 'hidden', [at(fore - 0.02, bottom(fore)), at(fore - 0.02, top)]),
    straight('board case, aft', 'hidden', [
      at(fore + chord + 0.02, bottom(fore + chord)),
      at(fore + chord + 0.02, top),
    ]),
  ];
  if (stance !== 'removed')
    lines.push({
      part: stance === 'down' ? 'board, down' : 'board, up in its case',
      weight: stance === 'down' ? 'outline' : 'hidden',
      runs: foil(fore, chord, top + 0.06 + travel, -sizes.draftBoardDown_m + travel, 0.02 * length),
      closed: true,
      filled: stance === 'down',
    });
  return lines;
}

function liftingKeel(form: HullForm, stance: BoardStance): Line[] {
  const { sizes, bottom, sheer } = form;
  const { length_m: length } = sizes;
  const chord = 0.1 * length;
  const fore = 0.385 * length;
  const travel = stance === 'down' ? 0 : sizes.draftBoardDown_m - sizes.draft_m;
  const top = 0.9 * sheer(fore);
  const foot = -sizes.draftBoardDown_m + travel;
  const thick = Math.max(0.02, Math.min(0.026 * length, (bottom(fore + chord) - foot) * 0.8));
  const nose = fore - 0.025 * length;
  const tail = fore + chord + 0.05 * length;
  const bulb: readonly Run[] = [
    [
      at(tail, foot + thick * 0.62),
      at(fore + chord * 0.8, foot + thick * 0.94),
      at(fore + chord * 0.25, foot + thick),
      at(nose + 0.01 * length, foot + thick * 0.82),
      at(nose, foot + thick * 0.48),
      at(nose + 0.012 * length, foot + thick * 0.14),
      at(fore + chord * 0.3, foot),
      at(fore + chord * 0.85, foot + thick * 0.08),
      at(tail, foot + thick * 0.5),
    ],
  ];
  const case_ = straight('keel case', 'hidden', [
    at(fore - 0.02, bottom(fore)),
    at(fore - 0.02, top),
    at(fore + chord + 0.02, top),
    at(fore + chord + 0.02, bottom(fore + chord)),
  ]);
  if (stance === 'removed') return [case_];
  const down = stance === 'down';
  return [
    case_,
    {
      part: down ? 'keel, down' : 'keel, up',
      weight: down ? 'outline' : 'hidden',
      runs: corners(
        at(fore, top - 0.04 + travel),
        at(fore + 0.012 * length, foot + thick * 0.9),
        at(fore + chord, foot + thick * 0.9),
        at(fore + chord, top - 0.04 + travel),
      ),
      closed: true,
      filled: down,
    },
    { part: 'keel bulb', weight: 'outline', runs: bulb, closed: true, filled: true },
  ];
}

/** A fin under her, or the near one of two bilge keels. It stands behind the hull, which covers its root. */
function fixed({ sizes, body_m, bottom }: HullForm): Line {
  const { length_m: length, draft_m: draft, keel } = sizes;
  const twin = keel === 'bilge keels';
  const fore = (twin ? 0.4 : 0.37) * length;
  const chord = (twin ? 0.17 : 0.24) * length;
  const root = bottom(fore + chord / 2) + 0.5 * body_m;
  const foot = -Math.max(draft, body_m + 0.02);
  const deep = root - foot;
  return shape(twin ? 'bilge keel' : 'keel', [
    [at(fore, root), at(fore + 0.28 * deep, foot + 0.12 * deep)],
    [
      at(fore + 0.28 * deep, foot + 0.12 * deep),
      at(fore + 0.32 * deep + 0.02, foot + 0.02 * deep),
      at(fore + 0.42 * deep + 0.04, foot),
    ],
    [at(fore + 0.42 * deep + 0.04, foot), at(Math.max(fore + chord, fore + 0.6 * deep), foot)],
    [
      at(Math.max(fore + chord, fore + 0.6 * deep), foot),
      at(Math.max(fore + chord, fore + 0.6 * deep) + 0.04 * length, root),
    ],
  ]);
}
