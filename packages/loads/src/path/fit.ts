/**
 * What of a load path goes through what, and over what: pins through eyes, jaws over links, lines in sheaves. Sizes that
 * were measured are used; for the rest a table stands in, and where it has none the fit is not known.
 */
import { boatMetalThatGoes } from '#materials';
import { leastSheave } from '../../tables/endings.read-2026-11.ts';
import {
  chainInside_mm,
  earOverPin,
  type SizeColumn,
  shackleSizes,
  thimbleSizes,
} from '../../tables/fit.read-2026-11.ts';
import type { Metal, PartOfPath, ShacklePart } from './part.ts';

/** What is wrong between parts, or at one. */
export interface Misfit {
  /** the parts it is about, in the order of the path */
  readonly at: readonly number[];
  readonly gravity: 'does not go together' | 'not known' | 'look to it';
  readonly what: string;
  /** what would be right */
  readonly right: string;
}

/** A size and whether it was measured; null where no table has one either. */
export interface Sized {
  readonly mm: number;
  readonly from: 'measured' | 'read second-hand' | 'recalled';
}

/** The size a column has for a part that is called by another size, if any. */
export function tabled(column: SizeColumn, called_mm: number): Sized | null {
  for (const [from, cells] of [
    ['read second-hand', column.read],
    ['recalled', column.recalled],
  ] as const) {
    const found = Object.entries(cells).find(([size]) => Math.abs(Number(size) - called_mm) <= 0.05);
    if (found) return { mm: found[1], from };
  }
  return null;
}

const sized = (measured_mm: number | null, column: SizeColumn | null, called_mm: number): Sized | null =>
  measured_mm !== null ? { mm: measured_mm, from: 'measured' } : column === null ? null : tabled(column, called_mm);

/** A closed eye that a pin goes through, and how thick it is between the cheeks of a jaw. */
interface Eye {
  readonly name: string;
  readonly opening: Sized | null;
  readonly thickness: Sized | null;
}

/** A pin that goes through an eye, and the jaw that goes over it; the ear is what must pass where a body goes through. */
interface Pin {
  readonly name: string;
  readonly pin: Sized | null;
  readonly jaw: Sized | null;
}

/** The eye a part shows to its neighbours, or null where it has none. */
function eyeOf(part: PartOfPath): Eye | null {
  switch (part.kind) {
    case 'chain':
      return {
        name: 'the end link of the chain',
        opening: sized(part.inside_mm, chainInside_mm, part.size_mm),
        thickness: { mm: part.size_mm, from: 'measured' },
      };
    case 'thimble':
      return {
        name: 'the thimble',
        opening: sized(part.opening_mm, thimbleSizes.opening_mm, part.size_mm),
        thickness: tabled(thimbleSizes.width_mm, part.size_mm),
      };
    case 'fitting':
      if (part.what === 'cleat' || part.what === 'post' || part.what === 'hook') return null;
      return {
        name: part.what === 'other' ? 'the fitting' : `the eye of the ${part.what}`,
        opening: sized(part.eye_mm, null, 0),
        thickness: sized(part.thickness_mm, null, 0),
      };
    default:
      return null;
  }
}

const makeOf = (part: ShacklePart) => (part.make === 'galvanised' ? null : shackleSizes[part.make]);

/** Pin and jaw of a part that has them. */
export function pinOf(part: PartOfPath): Pin | null {
  switch (part.kind) {
    case 'shackle':
      return {
        name: 'the pin of the shackle',
        pin: sized(part.pin_mm, makeOf(part)?.pin_mm ?? null, part.size_mm),
        jaw: sized(part.jaw_mm, makeOf(part)?.jaw_mm ?? null, part.size_mm),
      };
    case 'rigging screw':
      return {
        name: 'the pin of the rigging screw',
        pin: sized(part.pin_mm, null, 0),
        jaw: sized(part.jaw_mm, null, 0),
      };
    case 'pin':
      return { name: 'the pin', pin: { mm: part.size_mm, from: 'measured' }, jaw: null };
    default:
      return null;
  }
}

type Finding = Omit<Misfit, 'at'>;
const mm = (value: number) => `${Math.round(value * 10) / 10} mm`;
const asSized = ({ mm: value, from }: Sized) => `${mm(value)}${from === 'measured' ? '' : ` by a table, ${from}`}`;

/** Room that a pin wants in its eye: dirt, zinc and out of round. Our assumption. */
const room_mm = 0.3;

/** What is wrong where a bar must go through an eye; null: it goes. */
function through(bar: Sized | null, eye: Eye, what: string): Finding | null {
  if (bar === null || eye.opening === null)
    return {
      gravity: 'not known',
      what: `it is not known whether ${what} goes through ${eye.name}`,
      right: bar === null ? `the thickness of ${what}` : `the clear width of ${eye.name}`,
    };
  const spare = eye.opening.mm - bar.mm;
  const said = `${what} is ${asSized(bar)}, and ${eye.name} is open ${asSized(eye.opening)}`;
  if (spare < 0)
    return {
      gravity: 'does not go together',
      what: `${said}: it does not go through`,
      right: `at most ${mm(eye.opening.mm - room_mm)} through it, or an eye of ${mm(bar.mm + room_mm)} or more`,
    };
  if (spare < room_mm - 1e-9)
    return {
      gravity: 'not known',
      what: `${said}: it may not go through`,
      right: 'try it, or measure both with a calliper',
    };
  return null;
}

/** What is wrong where a jaw must go over what its pin goes through; null: it goes. */
function over(jaw: Sized | null, eye: Eye, name: string): Finding | null {
  if (jaw === null || eye.thickness === null)
    return {
      gravity: 'not known',
      what: `it is not known whether the jaw of ${name} goes over ${eye.name}`,
      right: jaw === null ? `the clear width of the jaw of ${name}` : `how thick ${eye.name} is`,
    };
  if (jaw.mm < eye.thickness.mm)
    return {
      gravity: 'does not go together',
      what: `the jaw of ${name} is ${asSized(jaw)}, and ${eye.name} is ${asSized(eye.thickness)} thick: it does not go over`,
      right: `a jaw of ${mm(eye.thickness.mm)} or more`,
    };
  return null;
}

const all = (...found: readonly (Finding | null)[]): readonly Finding[] => found.filter((each) => each !== null);

/** Pin side and body side of a shackle in the eyes before and after it. */
function byPin(shackle: ShacklePart, eye: Eye): readonly Finding[] {
  const { pin, jaw } = pinOf(shackle)!;
  return all(through(pin, eye, 'the pin of the shackle'), over(jaw, eye, 'the shackle'));
}
function byBody(shackle: ShacklePart, eye: Eye): readonly Finding[] {
  const { pin } = pinOf(shackle)!;
  const ear =
    makeOf(shackle) === null || shackle.pin_mm !== null ? null : tabled(makeOf(shackle)!.ear_mm, shackle.size_mm);
  const body = through({ mm: shackle.size_mm, from: 'measured' }, eye, 'the body of the shackle');
  if (body !== null || eye.opening === null) return all(body);
  const ear_mm = ear?.mm ?? earOverPin * (pin?.mm ?? shackle.size_mm);
  return eye.opening.mm >= ear_mm
    ? []
    : [
        {
          gravity: 'not known',
          what: `${eye.name} is open ${asSized(eye.opening)}, and the ear of the shackle’s body, about twice its pin, may not go through`,
          right: `try it, or an eye of ${mm(ear_mm)} or more`,
        },
      ];
}

const weight = (found: readonly Finding[]): number =>
  found.reduce((sum, { gravity }) => sum + (gravity === 'does not go together' ? 1000 : 1), 0);

/** A shackle between two eyes: its pin goes through one, its body through the other, whichever way round does. */
function atShackle(parts: readonly PartOfPath[], i: number): readonly Misfit[] {
  const shackle = parts[i] as ShacklePart;
  const before = i > 0 ? eyeOf(parts[i - 1]!) : null;
  const after = i < parts.length - 1 ? eyeOf(parts[i + 1]!) : null;
  const ways = [
    [before ? byPin(shackle, before) : [], after ? byBody(shackle, after) : []],
    [before ? byBody(shackle, before) : [], after ? byPin(shackle, after) : []],
  ] as const;
  const best = weight(ways[1].flat()) < weight(ways[0].flat()) ? ways[1] : ways[0];
  // where neither pin nor body goes, it is the pin that is told of
  const told = (found: readonly Finding[], eye: Eye | null): readonly Finding[] => {
    const pin = eye === null || found.length === 0 ? [] : byPin(shackle, eye);
    return pin.length > 0 ? pin : found;
  };
  return [
    ...told(best[0], before).map((found) => ({ ...found, at: [i - 1, i] })),
    ...told(best[1], after).map((found) => ({ ...found, at: [i, i + 1] })),
  ];
}

/** A pin or rigging screw in the eyes beside it. */
function atPin(parts: readonly PartOfPath[], i: number): readonly Misfit[] {
  const { name, pin, jaw } = pinOf(parts[i]!)!;
  const isBare = parts[i]!.kind === 'pin';
  return [-1, 1].flatMap((way) => {
    const near = parts[i + way];
    const eye = near === undefined ? null : eyeOf(near);
    if (eye === null) return [];
    const at = way < 0 ? [i - 1, i] : [i, i + 1];
    return all(through(pin, eye, name), isBare ? null : over(jaw, eye, name.replace('the pin of ', ''))).map(
      (found) => ({
        ...found,
        at,
      }),
    );
  });
}

/** Two closed eyes beside each other have nothing through both. */
function eyesApart(parts: readonly PartOfPath[], i: number): readonly Misfit[] {
  const [a, b] = [eyeOf(parts[i]!), parts[i + 1] === undefined ? null : eyeOf(parts[i + 1]!)];
  if (a === null || b === null) return [];
  return [
    {
      at: [i, i + 1],
      gravity: 'not known',
      what: `nothing is said of what joins ${a.name} and ${b.name}`,
      right: 'the shackle or pin between them',
    },
  ];
}

const lineOf = (part: PartOfPath | undefined) =>
  part?.kind === 'rope' || part?.kind === 'wire' ? { size_mm: part.size_mm, wire: part.kind === 'wire' } : null;

/** A line in a groove that is too narrow, or over a sheave that is too small for it. */
function atBlock(parts: readonly PartOfPath[], i: number): readonly Misfit[] {
  const block = parts[i]!;
  if (block.kind !== 'block') return [];
  return [-1, 1].flatMap((way): Misfit[] => {
    const line = lineOf(parts[i + way]);
    if (line === null) return [];
    const at = way < 0 ? [i - 1, i] : [i, i + 1];
    const least = (line.wire ? leastSheave.wire : leastSheave.rope) * line.size_mm;
    const what = line.wire ? 'wire' : 'rope';
    return [
      ...(block.line_mm !== null && block.line_mm < line.size_mm
        ? [
            {
              at,
              gravity: 'does not go together' as const,
              what: `the groove takes ${mm(block.line_mm)}, and the ${what} is ${mm(line.size_mm)}`,
              right: `a groove for ${mm(line.size_mm)} or more`,
            },
          ]
        : []),
      ...(block.sheave_mm !== null && block.sheave_mm < least
        ? [
            {
              at,
              gravity: 'look to it' as const,
              what: `the sheave is ${mm(block.sheave_mm)} across, ${(block.sheave_mm / line.size_mm).toFixed(0)} times the ${what}: it wears it`,
              right: `${mm(least)} or more for this ${what}`,
            },
          ]
        : []),
    ];
  });
}

/** A thimble that is not the size of the rope or wire that lies in it. */
function atThimble(parts: readonly PartOfPath[], i: number): readonly Misfit[] {
  const thimble = parts[i]!;
  if (thimble.kind !== 'thimble') return [];
  return [-1, 1].flatMap((way): Misfit[] => {
    const near = parts[i + way]?.kind === 'ending' ? i + 2 * way : i + way;
    const line = lineOf(parts[near]);
    if (line === null || line.size_mm <= thimble.size_mm + 0.05) return [];
    return [
      {
        at: near < i ? [near, i] : [i, near],
        gravity: 'does not go together',
        what: `the thimble is for ${mm(thimble.size_mm)}, and the ${line.wire ? 'wire' : 'rope'} in it is ${mm(line.size_mm)}`,
        right: `a thimble for ${mm(line.size_mm)}`,
      },
    ];
  });
}

/** What is not secured against coming undone. */
function unsecured(parts: readonly PartOfPath[], i: number): readonly Misfit[] {
  const part = parts[i]!;
  const loose = (what: string, right: string): Misfit[] => [{ at: [i], gravity: 'look to it', what, right }];
  if (part.kind === 'shackle' && part.moused !== true)
    return loose(
      part.moused === null
        ? 'nobody said whether the pin of the shackle is moused'
        : 'the pin of the shackle is not moused',
      'seizing wire through its eye and round the body; it comes undone by itself',
    );
  if (part.kind === 'pin' && part.secured !== true)
    return loose(
      part.secured === null ? 'nobody said whether the pin is secured' : 'the pin is not secured',
      'a split pin, its legs opened, and taped over',
    );
  if (part.kind === 'rigging screw' && part.locked !== true)
    return loose(
      part.locked === null ? 'nobody said whether the rigging screw is locked' : 'the rigging screw is not locked',
      'split pins or wire through it, against turning',
    );
  return [];
}

/** The metal a part shows to the one beside it. */
export const metalOf = (part: PartOfPath): Metal | null => {
  switch (part.kind) {
    case 'wire':
      return 'stainless';
    case 'shackle':
      return part.make === 'stainless' ? 'stainless' : 'galvanised';
    case 'chain':
    case 'thimble':
    case 'block':
    case 'fitting':
    case 'pin':
    case 'rigging screw':
    case 'fastenings':
      return part.metal;
    default:
      return null;
  }
};

function mixedMetals(parts: readonly PartOfPath[], i: number): readonly Misfit[] {
  const [a, b] = [metalOf(parts[i]!), parts[i + 1] === undefined ? null : metalOf(parts[i + 1]!)];
  if (a === null || b === null || a === 'plastic' || b === 'plastic') return [];
  const goes = boatMetalThatGoes(a, b);
  if (goes === null) return [];
  const stays = goes === a ? b : a;
  return [
    {
      at: [i, i + 1],
      gravity: 'look to it',
      what: `${goes} against ${stays}: wet with salt, the ${goes === 'galvanised' ? 'zinc, then the steel under it,' : goes} goes first`,
      right:
        goes === 'galvanised'
          ? `both galvanised, or both ${stays}; looked at every month till then`
          : 'the same metal, or plastic between the two',
    },
  ];
}

/**
 * What does not fit what in a path, what cannot be told for want of a size, and what wants looking to.
 *
 * Not covered: bends and shapes, a shackle pulled aside, whether there is room to put a pin in.
 */
export function fitOf(parts: readonly PartOfPath[]): readonly Misfit[] {
  return parts.flatMap((part, i) => [
    ...(part.kind === 'shackle' ? atShackle(parts, i) : []),
    ...(part.kind === 'pin' || part.kind === 'rigging screw' ? atPin(parts, i) : []),
    ...atBlock(parts, i),
    ...atThimble(parts, i),
    ...eyesApart(parts, i),
    ...unsecured(parts, i),
    ...mixedMetals(parts, i),
  ]);
}
