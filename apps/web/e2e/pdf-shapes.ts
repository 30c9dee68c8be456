/**
 * Shapes of a printed page, in millimetres of paper from its lower left corner, read from the page's own drawing orders. A PDF
 * counts in 1/72 inch (ISO 32000-1, 8.3.2.3), whatever printed it: so this tells how big the ink will be.
 */
import { inflateSync } from 'node:zlib';

const mmInUnit = 25.4 / 72;

export interface PdfShape {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
  readonly filled: boolean;
}

export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly PdfShape[];
}

/** The one page of a PDF. @throws Error when it has another number of pages */
export function onePage(pdf: Uint8Array): PdfPage {
  const text = Buffer.from(pdf).toString('latin1');
  const pages = [...text.matchAll(/\/Type\s*\/Page(?!s)\b[\s\S]*?>>\s*endobj/g)].map(([page]) => page);
  const [page] = pages;
  if (page === undefined || pages.length > 1) throw new Error(`the PDF has ${pages.length} pages`);
  const box = /\/MediaBox\s*\[([^\]]*)\]/.exec(page)?.[1]?.trim().split(/\s+/).map(Number);
  const contents = /\/Contents\s+(\d+) 0 R/.exec(page)?.[1];
  const written = new RegExp(`(?:^|\\n)${contents} 0 obj\\s*<<([\\s\\S]*?)>>\\s*stream\\r?\\n`).exec(text);
  if (!box || !written) throw new Error('the page has no MediaBox or no contents');
  const start = written.index + written[0].length;
  const length = Number(/\/Length (\d+)/.exec(written[1]!)?.[1]);
  const stream = Buffer.from(pdf).subarray(start, start + length);
  const orders = (/FlateDecode/.test(written[1]!) ? inflateSync(stream) : stream).toString('latin1');
  return { width: box[2]! * mmInUnit, height: box[3]! * mmInUnit, shapes: shapesOf(orders) };
}

type Matrix = readonly [number, number, number, number, number, number];
const within = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

/** Every part of a path that is painted, by its bounds: what is drawn with one move of the pen is one shape. */
function shapesOf(orders: string): PdfShape[] {
  const shapes: PdfShape[] = [];
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let strokes: (readonly [number, number])[][] = [];
  let given: number[] = [];
  const at = (x: number, y: number) => {
    const [a, b, c, d, e, f] = matrix;
    return [(a * x + c * y + e) * mmInUnit, (b * x + d * y + f) * mmInUnit] as const;
  };
  const paint = (filled: boolean) => {
    for (const points of strokes) {
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      shapes.push({
        left: Math.min(...xs),
        right: Math.max(...xs),
        low: Math.min(...ys),
        high: Math.max(...ys),
        filled,
      });
    }
    strokes = [];
  };
  // strings hold what looks like orders: they are taken out first
  for (const word of orders.replace(/\((?:\\.|[^\\)])*\)|<[0-9A-Fa-f\s]*>/g, ' ').split(/\s+/)) {
    if (/^[-+.\d]/.test(word)) {
      given.push(Number(word));
      continue;
    }
    const [a = 0, b = 0, c = 0, d = 0] = given;
    const pen = strokes.at(-1);
    if (word === 'q') kept.push(matrix);
    else if (word === 'Q') matrix = kept.pop() ?? matrix;
    else if (word === 'cm') matrix = within(given as unknown as Matrix, matrix);
    else if (word === 'm') strokes.push([at(a, b)]);
    else if (word === 'l') pen?.push(at(a, b));
    // an arc stays inside the corners of its curve: the ends are on it
    else if (word === 'c') pen?.push(at(given[4]!, given[5]!));
    else if (word === 'v' || word === 'y') pen?.push(at(c, d));
    else if (word === 're') strokes.push([at(a, b), at(a + c, b + d)]);
    else if (/^(f|F|f\*|B|B\*|b|b\*)$/.test(word)) paint(true);
    else if (/^[Ss]$/.test(word)) paint(false);
    else if (word === 'n') strokes = [];
    given = [];
  }
  return shapes;
}
