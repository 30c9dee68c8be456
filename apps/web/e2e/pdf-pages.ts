/**
 * The pages of a PDF with the text on them: how many, how big the smallest letters are on paper, and whether any stand
 * outside the page. A PDF counts in 1/72 inch, which is a point (ISO 32000-1, 8.3.2.3 and 9.4); what a page draws may be
 * in forms that it calls (8.10), and fonts and colours are set as they go.
 */
import { inflateSync } from 'node:zlib';

export interface PrintedText {
  /** height of the letters' body on paper. [pt] */
  readonly size_pt: number;
  /** where the line begins, from the lower left corner. [pt] */
  readonly x: number;
  readonly y: number;
  /** how light the ink is: 0 black, 1 white */
  readonly light: number;
}

export interface PrintedPage {
  readonly width_pt: number;
  readonly height_pt: number;
  readonly texts: readonly PrintedText[];
}

type Matrix = readonly [number, number, number, number, number, number];
const still: Matrix = [1, 0, 0, 1, 0, 0];
const within = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

interface PdfObject {
  readonly head: string;
  readonly orders: string | null;
}

/** Every object of the file by its number, with its stream unpacked. */
function objectsOf(pdf: Uint8Array): ReadonlyMap<string, PdfObject> {
  const bytes = Buffer.from(pdf);
  const text = bytes.toString('latin1');
  const objects = new Map<string, PdfObject>();
  for (const found of text.matchAll(/(?:^|\n)(\d+) 0 obj\b/g)) {
    const from = found.index + found[0].length;
    const ends = text.indexOf('endobj', from);
    const streams = text.slice(from, ends).search(/stream\r?\n/);
    if (streams < 0) {
      objects.set(found[1]!, { head: text.slice(from, ends), orders: null });
      continue;
    }
    const head = text.slice(from, from + streams);
    const start = from + streams + /stream\r?\n/.exec(text.slice(from + streams))![0].length;
    const length = Number(/\/Length (\d+)/.exec(head)?.[1]);
    const drawn = !/\/Subtype\s*\/(Image|Type1C|CIDFontType0C|OpenType)|\/Length1/.test(head);
    const stream = bytes.subarray(start, start + length);
    objects.set(found[1]!, {
      head,
      orders: drawn ? (/FlateDecode/.test(head) ? inflateSync(stream) : stream).toString('latin1') : null,
    });
  }
  return objects;
}

/** What the names of a page's or form's XObjects stand for. */
function formsOf(head: string, objects: ReadonlyMap<string, PdfObject>): ReadonlyMap<string, PdfObject> {
  const resources = /\/Resources\s+(\d+) 0 R/.exec(head)?.[1];
  const told = resources === undefined ? head : (objects.get(resources)?.head ?? head);
  const named = /\/XObject\s*<<([^>]*)>>/.exec(told)?.[1] ?? '';
  return new Map(
    [...named.matchAll(/\/(\w+)\s+(\d+) 0 R/g)].flatMap(([, name, number]) => {
      const object = objects.get(number!);
      return object === undefined ? [] : [[name!, object] as const];
    }),
  );
}

/** The pages of a PDF as Chromium prints them, in their order. */
export function printedPages(pdf: Uint8Array): PrintedPage[] {
  const objects = objectsOf(pdf);
  return [...objects.values()]
    .filter(({ head }) => /\/Type\s*\/Page(?!s)\b/.test(head))
    .map(({ head }) => {
      const box = /\/MediaBox\s*\[([^\]]*)\]/.exec(head)![1]!.trim().split(/\s+/).map(Number);
      const contents = objects.get(/\/Contents\s+(\d+) 0 R/.exec(head)![1]!)!;
      const texts: PrintedText[] = [];
      follow(contents.orders ?? '', formsOf(head, objects), objects, still, texts, 0);
      return { width_pt: box[2]!, height_pt: box[3]!, texts };
    });
}

function follow(
  orders: string,
  forms: ReadonlyMap<string, PdfObject>,
  objects: ReadonlyMap<string, PdfObject>,
  from: Matrix,
  texts: PrintedText[],
  depth: number,
): void {
  if (depth > 8) throw new Error('forms within forms without end');
  let state = { matrix: from, font: 0, light: 0 };
  const kept: (typeof state)[] = [];
  let line = still;
  let given: string[] = [];
  // strings become a mark that something is shown; what looks like orders in them is gone
  for (const word of orders.replace(/\((?:\\.|[^\\)])*\)|<[0-9A-Fa-f\s]*>/g, ' () ').split(/\s+/)) {
    if (/^[-+.\d/[\]()]/.test(word)) {
      given.push(word);
      continue;
    }
    const figures = given.map(Number);
    if (word === 'q') kept.push(state);
    else if (word === 'Q') state = kept.pop() ?? state;
    else if (word === 'cm') state = { ...state, matrix: within(figures.slice(-6) as unknown as Matrix, state.matrix) };
    else if (word === 'rg') state = { ...state, light: lightOf(figures.slice(-3)) };
    else if (word === 'g') state = { ...state, light: figures.at(-1)! };
    else if (word === 'BT') line = still;
    else if (word === 'Tf') state = { ...state, font: figures.at(-1)! };
    else if (word === 'Tm') line = figures.slice(-6) as unknown as Matrix;
    else if (word === 'Td' || word === 'TD') line = within([1, 0, 0, 1, figures.at(-2)!, figures.at(-1)!], line);
    else if (word === 'Tj' || word === 'TJ') {
      const [, , c, d, x, y] = within(line, state.matrix);
      texts.push({ size_pt: state.font * Math.hypot(c, d), x, y, light: state.light });
    } else if (word === 'Do') {
      const form = forms.get(given.at(-1)!.slice(1));
      if (form?.orders && /\/Subtype\s*\/Form/.test(form.head)) {
        const own = /\/Matrix\s*\[([^\]]*)\]/.exec(form.head)?.[1]?.trim().split(/\s+/).map(Number);
        const matrix = own ? within(own as unknown as Matrix, state.matrix) : state.matrix;
        follow(form.orders, formsOf(form.head, objects), objects, matrix, texts, depth + 1);
      }
    }
    given = [];
  }
}

/** Relative luminance is not asked for: the mean of the three tells black from grey. */
function lightOf(rgb: readonly number[]): number {
  return rgb.reduce((sum, part) => sum + part, 0) / rgb.length;
}
