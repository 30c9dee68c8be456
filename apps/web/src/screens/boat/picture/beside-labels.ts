/** Names beside their marks when the picture is looked at near: to the right, else to the left, under or over it, else none. */
export interface Beside {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

export interface PlacedBeside extends Beside {
  readonly left: number;
  /** of the name, from the top */
  readonly middle: number;
}

const high = 18;
const off = 13;
/** between names on a line */
const apart = 5;

/** Those that lie over no other name or mark, the first given first; the rest are left to their marks. */
export function besideLabels(
  marks: readonly Beside[],
  width: number,
  measure: (text: string) => number,
): readonly PlacedBeside[] {
  const taken = marks.map(({ x, y }) => ({ left: x - 8, right: x + 8, top: y - 8, bottom: y + 8 }));
  return marks.flatMap((mark, i) => {
    const wide = measure(mark.text);
    for (const [left, middle] of [
      [mark.x + off, mark.y],
      [mark.x - off - wide, mark.y],
      [mark.x - wide / 2, mark.y + high],
      [mark.x - wide / 2, mark.y - high],
    ] as const) {
      const box = { left, right: left + wide, top: middle - high / 2, bottom: middle + high / 2 };
      if (left < 2 || box.right > width - 2) continue;
      const clear = taken.every(
        (other, n) =>
          n === i ||
          other.right + apart < box.left ||
          other.left - apart > box.right ||
          other.bottom < box.top ||
          other.top > box.bottom,
      );
      if (!clear) continue;
      taken.push(box);
      return [{ ...mark, left, middle }];
    }
    return [];
  });
}
