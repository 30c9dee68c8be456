/**
 * Where the names of pinned work stand on the drawing, so that none lies over another and no leader crosses one.
 *
 * Work aft of the mast is flagged up into the sky: its leader rises from the dot and the text runs forward from it, the
 * aftermost highest. Work aloft stands beside the mast. All other work hangs below the keel: the text runs aft from
 * its leader, the foremost lowest. In this order every leader passes clear of every other text.
 */
export interface Pin {
  readonly id: string;
  /** on the drawing, px, y down */
  readonly x: number;
  readonly y: number;
  readonly aloft: boolean;
  readonly lines: readonly string[];
}

export interface PlacedPin {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** where the leader meets the text */
  readonly leader: { readonly x: number; readonly y: number };
  /** the text: its box, its lines as they are broken, and the line of the pin each belongs to */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly lines: readonly { readonly text: string; readonly of: number; readonly first: boolean }[];
}

export interface Sky {
  readonly width: number;
  /** where the mast stands; null: it is down */
  readonly mastX: number | null;
  /** flags fly above this */
  readonly flagsAbove: number;
  /** what hangs stands below this */
  readonly hangsBelow: number;
  /** width of a text as it will be drawn. [px] */
  readonly measure: (text: string) => number;
}

export const lineHeight = 18;
/** room for the mark before a line */
export const markWidth = 18;
const blockGap = 8;
const leaderGap = 12;
/** a text beside the mast wants this much room, or goes to the other side */
const roomAloft = 190;

export function placedPins(pins: readonly Pin[], sky: Sky): readonly PlacedPin[] {
  const { width, mastX } = sky;
  const aloft = mastX === null ? [] : pins.filter((pin) => pin.aloft);
  const rest = pins.filter((pin) => !aloft.includes(pin));
  const roomRight = (pin: Pin) => (mastX === null ? width : mastX - 12) - pin.x;
  const flags = rest.filter((pin) => pin.x < width * 0.5 && roomRight(pin) >= 110);
  const hanging = rest.filter((pin) => !flags.includes(pin));
  const flown = flying(flags, sky);
  return [...flown, ...hung(hanging, sky), ...(mastX === null ? [] : besideMast(aloft, sky, mastX, flown))];
}

function flying(pins: readonly Pin[], sky: Sky): PlacedPin[] {
  const order = spaced([...pins].sort((a, b) => a.x - b.x));
  let bottom = sky.flagsAbove;
  const placed: PlacedPin[] = [];
  // the foremost lowest: built from the right, upwards
  for (const { pin, leaderX } of order.reverse()) {
    const limit = (sky.mastX === null ? sky.width : sky.mastX - 12) - leaderX - 6;
    const lines = broken(pin, limit, sky.measure);
    const height = lines.length * lineHeight;
    const y = bottom - height;
    placed.push({
      id: pin.id,
      x: pin.x,
      y: pin.y,
      leader: { x: leaderX, y: y + 4 },
      box: { x: leaderX + 6, y, width: widthOf(lines, sky.measure), height },
      lines,
    });
    bottom = y - blockGap;
  }
  return placed;
}

function hung(pins: readonly Pin[], sky: Sky): PlacedPin[] {
  const order = spaced([...pins].sort((a, b) => a.x - b.x));
  let top = sky.hangsBelow;
  return order.map(({ pin, leaderX }) => {
    const lines = broken(pin, leaderX - 6, sky.measure);
    const height = lines.length * lineHeight;
    const width = widthOf(lines, sky.measure);
    const y = top;
    top += height + blockGap;
    return {
      id: pin.id,
      x: pin.x,
      y: pin.y,
      leader: { x: leaderX, y: y + height - 4 },
      box: { x: Math.max(0, leaderX - 6 - width), y, width, height },
      lines,
    };
  });
}

/** Forward of the mast where there is room; else aft of it, over the flags. */
function besideMast(pins: readonly Pin[], sky: Sky, mastX: number, flown: readonly PlacedPin[]): PlacedPin[] {
  const forward = sky.width - mastX - 26 >= roomAloft;
  const flagsTop = Math.min(...flown.map(({ box }) => box.y), sky.flagsAbove) - blockGap;
  // from the lowest up, each clear of the one under it
  const order = [...pins].sort((a, b) => b.y - a.y);
  let bottom = forward ? Number.POSITIVE_INFINITY : flagsTop;
  return order.map((pin) => {
    const lines = broken(pin, forward ? sky.width - mastX - 26 : mastX - 26, sky.measure);
    const height = lines.length * lineHeight;
    const width = widthOf(lines, sky.measure);
    const y = Math.min(bottom - height, pin.y - lineHeight / 2);
    bottom = y - blockGap;
    const x = forward ? mastX + 26 : Math.max(0, mastX - 26 - width);
    return {
      id: pin.id,
      x: pin.x,
      y: pin.y,
      leader: { x: forward ? x - 4 : x + width + 4, y: y + lineHeight / 2 },
      box: { x, y, width, height },
      lines,
    };
  });
}

/** Leaders stand apart even where two dots are one above the other. Pins come in order of x. */
function spaced(pins: readonly Pin[]): { pin: Pin; leaderX: number }[] {
  let before = Number.NEGATIVE_INFINITY;
  return pins.map((pin) => {
    before = Math.max(pin.x, before + leaderGap);
    return { pin, leaderX: before };
  });
}

/** The lines of a pin broken to a width, at spaces; a word longer than the width stands alone. */
function broken(pin: Pin, width: number, measure: Sky['measure']): PlacedPin['lines'] {
  return pin.lines.flatMap((text, of) => {
    const lines: string[] = [];
    for (const word of text.split(' ')) {
      const last = lines.at(-1);
      if (last !== undefined && markWidth + measure(`${last} ${word}`) <= width)
        lines[lines.length - 1] = `${last} ${word}`;
      else lines.push(word);
    }
    return lines.map((line, index) => ({ text: line, of, first: index === 0 }));
  });
}

function widthOf(lines: PlacedPin['lines'], measure: Sky['measure']): number {
  return markWidth + Math.max(...lines.map(({ text }) => measure(text)));
}
