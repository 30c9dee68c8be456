/**
 * The boat's profile from her own sizes, as lines in metres: x from the stem (0) to the transom (length), y up from
 * the waterline. What her sizes do not say (sheer, rocker, rudder) is drawn as is usual on a boat of her length.
 */
import type { Boat } from '#boat-book';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** heavy: cut or carries; outline: medium; rigging: thin; hidden: dashed, inside or behind */
export type Weight = 'heavy' | 'outline' | 'rigging' | 'hidden';

export interface Line {
  readonly weight: Weight;
  /** an SVG path in metres, y up */
  readonly d: string;
  readonly filled: boolean;
  readonly part: string;
}

export interface Stance {
  readonly mastUp: boolean;
  readonly boardDown: boolean;
}

export interface Profile {
  readonly lines: readonly Line[];
  /** what the drawing spans, in metres */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly boomHeight: number;
}

/** Height of the sheer line over the waterline: highest at the stem, lowest two thirds aft. [m] */
export function sheer(boat: Boat, x: number): number {
  const share = x / boat.length_m;
  return boat.freeboard_m * (1.28 - 0.72 * share + 0.46 * share * share);
}

/** Height of the mast's foot: on the cabin top where there is a cabin. [m] */
export function mastFoot(boat: Boat): number {
  return boat.cabin ? cabinTop(boat) : sheer(boat, boat.mastFromBow_m);
}

const cabinTop = (boat: Boat) => sheer(boat, boat.length_m * 0.5) + boat.freeboard_m * 0.55;

export function boatProfile(boat: Boat, stance: Stance): Profile {
  const foot = mastFoot(boat);
  const head = foot + boat.mastHeight_m;
  const lines = [
    ...board(boat, stance.boardDown),
    ...rudder(boat),
    ...hull(boat),
    ...(boat.cabin ? cabin(boat) : []),
    ...(stance.mastUp ? rig(boat, foot, head) : mastLowered(boat)),
  ];
  const lying = lyingMast(boat);
  return {
    lines,
    left: stance.mastUp ? 0 : Math.min(0, lying.foot.x),
    right: Math.max(boat.length_m * 1.08, stance.mastUp ? 0 : lying.head.x),
    top: stance.mastUp ? head : Math.max(foot, lying.head.y) + 0.1,
    bottom: -Math.max(stance.boardDown ? boat.draftBoardDown_m : boat.draft_m, rudderDepth(boat)),
    boomHeight: stance.mastUp ? gooseneck(boat).y : Math.max(foot, lying.foot.y, lying.head.y),
  };
}

/** Where a thing at `along` and `up` (hull heights) is, with the mast as it stands: up the mast, or along it lying. */
export function placeOf(boat: Boat, zone: { readonly along: number; readonly up: number }, stance: Stance): Point {
  const point = { x: zone.along * boat.length_m, y: zone.up * boat.freeboard_m };
  const foot = mastFoot(boat);
  if (stance.mastUp || !isAloft(boat, zone)) return point;
  const share = Math.min(1, (point.y - foot) / boat.mastHeight_m);
  const lying = lyingMast(boat);
  return {
    x: lying.foot.x + (lying.head.x - lying.foot.x) * share,
    y: lying.foot.y + (lying.head.y - lying.foot.y) * share,
  };
}

/** True for what is up the mast: higher over its foot than a person reaches from the deck. */
export function isAloft(boat: Boat, zone: { readonly along: number; readonly up: number }): boolean {
  const nearMast = Math.abs(zone.along * boat.length_m - boat.mastFromBow_m) < 0.2 * boat.length_m;
  return nearMast && zone.up * boat.freeboard_m > mastFoot(boat) + 0.4;
}

function hull(boat: Boat): Line[] {
  const { length_m: length, draft_m: draft } = boat;
  const top: Point[] = [];
  for (let i = 0; i <= 24; i++) top.push({ x: (length * i) / 24, y: sheer(boat, (length * i) / 24) });
  const stern = sheer(boat, length);
  const d =
    `${path(top)}L${p(length * 0.985, 0.03)}` +
    `C${p(length * 0.8, -draft * 0.75)} ${p(length * 0.62, -draft * 1.02)} ${p(length * 0.45, -draft)}` +
    `C${p(length * 0.28, -draft * 0.95)} ${p(length * 0.13, -draft * 0.55)} ${p(length * 0.09, 0)}` +
    `C${p(length * 0.05, sheer(boat, 0) * 0.35)} ${p(length * 0.015, sheer(boat, 0) * 0.75)} ${p(0, sheer(boat, 0))}Z`;
  const rubbing = top.slice(1, 24).map(({ x, y }) => ({ x, y: y - boat.freeboard_m * 0.16 }));
  return [
    { weight: 'outline', d, filled: true, part: 'hull' },
    { weight: 'rigging', d: path(rubbing), filled: false, part: 'rubbing strake' },
    {
      weight: 'outline',
      d: `M${p(length * 0.72, sheer(boat, length * 0.72))}C${p(length * 0.8, stern + 0.13)} ${p(length * 0.9, stern + 0.12)} ${p(length * 0.985, stern)}`,
      filled: false,
      part: 'coaming',
    },
  ];
}

function cabin(boat: Boat): Line[] {
  const { length_m: length, freeboard_m: freeboard } = boat;
  const top = cabinTop(boat);
  const fore = length * 0.24;
  const aft = length * 0.68;
  const house =
    `M${p(fore, sheer(boat, fore))}C${p(length * 0.3, top - freeboard * 0.12)} ${p(length * 0.38, top)} ${p(length * 0.46, top)}` +
    `L${p(aft - length * 0.02, top - freeboard * 0.06)}L${p(aft, sheer(boat, aft))}`;
  const sill = top - freeboard * 0.38;
  const light =
    `M${p(length * 0.42, top - freeboard * 0.17)}L${p(length * 0.62, top - freeboard * 0.18)}` +
    `L${p(length * 0.61, sill)}L${p(length * 0.39, sill)}Z`;
  return [
    { weight: 'outline', d: house, filled: true, part: 'cabin' },
    { weight: 'rigging', d: light, filled: false, part: 'cabin light' },
  ];
}

const gooseneck = (boat: Boat): Point => ({ x: boat.mastFromBow_m, y: mastFoot(boat) + boat.mastHeight_m * 0.1 });

function rig(boat: Boat, foot: number, head: number): Line[] {
  const x = boat.mastFromBow_m;
  const { length_m: length } = boat;
  const neck = gooseneck(boat);
  const end = { x: x + boat.boom_m, y: neck.y - boat.boom_m * 0.03 };
  const hounds = foot + boat.mastHeight_m * 0.88;
  const rake = boat.mastHeight_m * 0.012;
  return [
    {
      weight: 'heavy',
      d: path([
        { x, y: foot },
        { x: x + rake, y: head },
      ]),
      filled: false,
      part: 'mast',
    },
    { weight: 'heavy', d: path([neck, end]), filled: false, part: 'boom' },
    {
      weight: 'rigging',
      d: path([
        { x: x + rake, y: hounds },
        { x: length * 0.01, y: sheer(boat, 0) },
      ]),
      filled: false,
      part: 'forestay',
    },
    {
      weight: 'rigging',
      d: path([
        { x: x + rake, y: hounds },
        { x: x + length * 0.05, y: sheer(boat, x) - 0.05 },
      ]),
      filled: false,
      part: 'shroud',
    },
    {
      weight: 'rigging',
      d: path([
        { x: x + rake, y: head },
        { x: length * 0.99, y: sheer(boat, length) },
      ]),
      filled: false,
      part: 'backstay',
    },
    { weight: 'hidden', d: path([{ x: x + rake, y: head }, end]), filled: false, part: 'topping lift' },
    {
      weight: 'rigging',
      d: path([
        { x, y: foot + 0.08 },
        { x: x + boat.boom_m * 0.38, y: neck.y - boat.boom_m * 0.012 },
      ]),
      filled: false,
      part: 'vang',
    },
  ];
}

/** Where the mast lies when it is down: its foot over the bow, its head aft past the crutch at the transom. */
export function lyingMast(boat: Boat): { readonly foot: Point; readonly head: Point } {
  const over = boat.length_m * 0.04;
  const y = (boat.cabin ? cabinTop(boat) : sheer(boat, boat.length_m)) + 0.28;
  return { foot: { x: -over, y }, head: { x: -over + boat.mastHeight_m, y: y + 0.06 } };
}

function mastLowered(boat: Boat): Line[] {
  const { foot, head } = lyingMast(boat);
  const { length_m: length } = boat;
  const along = (x: number) => foot.y + ((head.y - foot.y) * (x - foot.x)) / (head.x - foot.x);
  const crutch = Math.min(length * 0.97, head.x - 0.1);
  return [
    { weight: 'heavy', d: path([foot, head]), filled: false, part: 'mast, lying' },
    {
      weight: 'outline',
      d: path([
        { x: length * 0.05, y: sheer(boat, 0) - 0.03 },
        { x: length * 0.04, y: along(length * 0.04) },
      ]),
      filled: false,
      part: 'bow rest',
    },
    {
      weight: 'outline',
      d: path([
        { x: crutch, y: sheer(boat, length) },
        { x: crutch, y: along(crutch) },
      ]),
      filled: false,
      part: 'crutch',
    },
  ];
}

function board(boat: Boat, down: boolean): Line[] {
  const { length_m: length, draft_m: draft, draftBoardDown_m: deep } = boat;
  const hinge = length * 0.42;
  const chord = length * 0.075;
  if (boat.board === 'pivoting') {
    const reach = Math.max(0.2, deep - draft) / Math.sin((65 * Math.PI) / 180) + draft * 0.4;
    const angle = ((down ? 65 : 4) * Math.PI) / 180;
    const y0 = -draft * 0.6;
    // u along the plate from its pin, v across it
    const at = (u: number, v: number): Point => ({
      x: hinge + u * Math.cos(angle) + v * Math.sin(angle),
      y: y0 - u * Math.sin(angle) + v * Math.cos(angle),
    });
    const half = chord * 0.55;
    const plate = `${path([at(-0.08, half), at(-0.08, -half), at(reach * 0.94, -half), at(reach, -half * 0.3), at(reach * 0.97, half)])}Z`;
    const caseTop = draft * 0.2 + chord;
    return [
      {
        weight: down ? 'outline' : 'hidden',
        d: plate,
        filled: down,
        part: down ? 'board, down' : 'board, up in its case',
      },
      {
        weight: 'hidden',
        d: path([
          { x: hinge - 0.12, y: -draft },
          { x: hinge - 0.12, y: caseTop },
          { x: hinge + reach + 0.1, y: caseTop * 0.8 },
          { x: hinge + reach + 0.1, y: -draft * 0.9 },
        ]),
        filled: false,
        part: 'board case',
      },
    ];
  }
  const wide = boat.board === 'keel' ? chord * 2.2 : chord * 1.4;
  const travel = down ? 0 : Math.max(0, deep - draft);
  const foot = -deep + travel;
  const topY = boat.freeboard_m * 0.7 + travel;
  const side = boat.board === 'keel' ? wide * 0.12 : 0;
  const fin = `${path([
    { x: hinge, y: topY },
    { x: hinge + side, y: foot },
    { x: hinge + wide, y: foot },
    { x: hinge + wide, y: topY },
  ])}Z`;
  return [{ weight: down ? 'outline' : 'hidden', d: fin, filled: down, part: down ? 'board, down' : 'board, up' }];
}

const rudderDepth = (boat: Boat) => Math.max(0.3, boat.draftBoardDown_m * 0.6);

function rudder(boat: Boat): Line[] {
  const x = boat.length_m;
  const top = sheer(boat, x) + 0.12;
  const chord = boat.length_m * 0.045;
  return [
    {
      weight: 'outline',
      d: `${path([
        { x: x - 0.01, y: top },
        { x: x + chord * 0.8, y: top - 0.02 },
        { x: x + chord * 1.15, y: -0.05 },
        { x: x + chord, y: -rudderDepth(boat) },
        { x: x + chord * 0.1, y: -rudderDepth(boat) * 0.97 },
        { x: x - 0.06, y: 0 },
      ])}Z`,
      filled: true,
      part: 'rudder',
    },
    {
      weight: 'outline',
      d: path([
        { x: x + chord * 0.3, y: top - 0.03 },
        { x: x - boat.length_m * 0.16, y: top + 0.1 },
      ]),
      filled: false,
      part: 'tiller',
    },
  ];
}

const p = (x: number, y: number) => `${round(x)} ${round(y)}`;
const round = (value: number) => Math.round(value * 1000) / 1000;
function path(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${p(x, y)}`).join('');
}
