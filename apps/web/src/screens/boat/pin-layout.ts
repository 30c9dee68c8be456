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
}

export const lineHeight = 18;
/** room for the mark before a line */
export const markWidth = 18;
const blockGap = 8;
const leaderGap = 12;
/** mean width of a letter at 14 px, on the wide side */
const letter = 7.4;

export function placedPins(pins: readonly Pin[], sky: Sky): readonly PlacedPin[] {
  const { width, mastX } = sky;
  const aloft = mastX === null ? [] : pins.filter((pin) => pin.aloft);
  const rest = pins.filter((pin) => !aloft.includes(pin));
  const roomRight = (pin: Pin) => (mastX === null ? width : mastX - 12) - pin.x;
  const flags = rest.filter((pin) => pin.x < width * 0.5 && roomRight(pin) >= 110);
  const hanging = rest.filter((pin) => !flags.includes(pin));
  return [...flying(flags, sky), ...hung(hanging, sky), ...(mastX === null ? [] : besideMast(aloft, sky, mastX))];
}

function flying(pins: readonly Pin[], sky: Sky): PlacedPin[] {
  const order = spaced([...pins].sort((a, b) => a.x - b.x));
  let bottom = sky.flagsAbove;
  const placed: PlacedPin[] = [];
  // the foremost lowest: built from the right, upwards
  for (const { pin, leaderX } of order.reverse()) {
    const limit = (sky.mastX === null ? sky.width : sky.mastX - 12) - leaderX - 6;
    const lines = broken(pin, limit);
    const height = lines.length * lineHeight;
    const y = bottom - height;
    placed.push({
      id: pin.id,
      x: pin.x,
      y: pin.y,
      leader: { x: leaderX, y: y + 4 },
      box: { x: leaderX + 6, y, width: widthOf(lines), height },
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
    const lines = broken(pin, leaderX - 6);
    const height = lines.length * lineHeight;
    const width = widthOf(lines);
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

function besideMast(pins: readonly Pin[], sky: Sky, mastX: number): PlacedPin[] {
  const left = mastX + 26;
  const order = [...pins].sort((a, b) => a.y - b.y);
  let top = Number.NEGATIVE_INFINITY;
  return order.map((pin) => {
    const lines = broken(pin, sky.width - left);
    const height = lines.length * lineHeight;
    const y = Math.max(top, pin.y - lineHeight / 2);
    top = y + height + blockGap;
    return {
      id: pin.id,
      x: pin.x,
      y: pin.y,
      leader: { x: left - 4, y: y + lineHeight / 2 },
      box: { x: left, y, width: widthOf(lines), height },
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
function broken(pin: Pin, width: number): PlacedPin['lines'] {
  const letters = Math.max(8, Math.floor((width - markWidth) / letter));
  return pin.lines.flatMap((text, of) => {
    const lines: string[] = [];
    for (const word of text.split(' ')) {
      const last = lines.at(-1);
      if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
      else lines.push(word);
    }
    return lines.map((line, index) => ({ text: line, of, first: index === 0 }));
  });
}

function widthOf(lines: PlacedPin['lines']): number {
  return markWidth + Math.max(...lines.map(({ text }) => text.length)) * letter;
}
