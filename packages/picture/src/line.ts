/** What a drawing is made of: lines in metres, each a row of runs, straight or smooth. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Points joined by one smooth curve through all of them; two points: a straight line. */
export type Run = readonly Point[];

/** heavy: carries; outline: what is; thin: rigging and marks; hidden: dashed, inside or behind; glass: a window */
export type LineWeight = 'heavy' | 'outline' | 'thin' | 'hidden' | 'glass';

export interface Line {
  readonly part: string;
  readonly weight: LineWeight;
  /** one after the other; where one ends and the next begins there is a corner */
  readonly runs: readonly Run[];
  readonly closed: boolean;
  /** what lies behind it does not show through */
  readonly filled: boolean;
}

export const at = (x: number, y: number): Point => ({ x, y });

/** A line through corners. */
export function straight(part: string, weight: LineWeight, points: readonly Point[], of: Partial<Line> = {}): Line {
  const runs = points.slice(1).map((point, i): Run => [points[i]!, point]);
  return { part, weight, runs, closed: false, filled: false, ...of };
}

/** One smooth curve. */
export function curved(part: string, weight: LineWeight, points: Run, of: Partial<Line> = {}): Line {
  return { part, weight, runs: [points], closed: false, filled: false, ...of };
}

/** A closed shape that hides what lies behind it. */
export function shape(part: string, runs: readonly Run[], weight: LineWeight = 'outline'): Line {
  return { part, weight, runs, closed: true, filled: true };
}

/** Corners of a closed shape as runs. */
export function corners(...points: readonly Point[]): readonly Run[] {
  return points.slice(1).map((point, i): Run => [points[i]!, point]);
}

export function circle(part: string, weight: LineWeight, centre: Point, radius: number, filled = true): Line {
  const points = Array.from({ length: 17 }, (_, i) => {
    const turn = (i / 16) * 2 * Math.PI;
    return at(centre.x + radius * Math.cos(turn), centre.y + radius * Math.sin(turn));
  });
  return { part, weight, runs: [points], closed: true, filled };
}

/** The two points that bend a curve between two others, so that it goes smoothly through a run. [m] */
function bends(before: Point, from: Point, to: Point, after: Point): readonly [Point, Point] {
  // centripetal: the curve neither loops nor overshoots where points lie unevenly (Yuksel, Schaefer and Keyser 2011)
  const [d1, d2, d3] = [reach(before, from), reach(from, to), reach(to, after)];
  const one = (a: number, b: number, p: number, q: number, r: number) =>
    a === 0 ? q : (a * a * r - b * b * p + (2 * a * a + 3 * a * b + b * b) * q) / (3 * a * (a + b));
  return [
    at(one(d1, d2, before.x, from.x, to.x), one(d1, d2, before.y, from.y, to.y)),
    at(one(d3, d2, after.x, to.x, from.x), one(d3, d2, after.y, to.y, from.y)),
  ];
}
const reach = (a: Point, b: Point) => Math.sqrt(Math.hypot(b.x - a.x, b.y - a.y));

interface Piece {
  readonly from: Point;
  readonly to: Point;
  /** null: straight */
  readonly bends: readonly [Point, Point] | null;
}

function piecesOf(run: Run): readonly Piece[] {
  if (run.length < 3) return run.slice(1).map((to, i) => ({ from: run[i]!, to, bends: null }));
  const first = run[0]!;
  const last = run[run.length - 1]!;
  const round = Math.hypot(last.x - first.x, last.y - first.y) < 1e-9;
  return run.slice(1).map((to, i) => {
    const from = run[i]!;
    const before = run[i - 1] ?? (round ? run[run.length - 2]! : from);
    const after = run[i + 2] ?? (round ? run[1]! : to);
    return { from, to, bends: bends(before, from, to, after) };
  });
}

/** The line as the `d` of an SVG path, in metres, y up. */
export function pathOf({ runs, closed }: Line): string {
  let end: Point | null = null;
  let d = '';
  for (const run of runs) {
    const first = run[0];
    if (!first) continue;
    if (end === null) d += `M${said(first)}`;
    else if (Math.hypot(first.x - end.x, first.y - end.y) > 1e-6) d += `L${said(first)}`;
    for (const { to, bends } of piecesOf(run))
      d += bends === null ? `L${said(to)}` : `C${said(bends[0])} ${said(bends[1])} ${said(to)}`;
    end = run[run.length - 1]!;
  }
  return closed ? `${d}Z` : d;
}

/** Points along a line, close enough to measure it by. [m] */
export function alongLine({ runs }: Line): readonly Point[] {
  return runs.flatMap((run) =>
    piecesOf(run).flatMap(({ from, to, bends }) =>
      bends === null
        ? [from, to]
        : Array.from({ length: 9 }, (_, i) => {
            const t = i / 8;
            const u = 1 - t;
            const on = (a: number, b: number, c: number, d: number) =>
              u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
            return at(on(from.x, bends[0].x, bends[1].x, to.x), on(from.y, bends[0].y, bends[1].y, to.y));
          }),
    ),
  );
}

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What lines span. [m] */
export function extentOf(lines: readonly Line[]): Extent {
  let [left, right, top, bottom] = [Infinity, -Infinity, -Infinity, Infinity];
  for (const line of lines)
    for (const { x, y } of alongLine(line)) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.max(top, y);
      bottom = Math.min(bottom, y);
    }
  return { left, right, top, bottom };
}

/** Lines turned about a point and moved: a rudder swung up, a cover folded. Turned by a right-handed angle. */
export function turned(line: Line, about: Point, angle_deg: number): Line {
  const [c, s] = [Math.cos((angle_deg * Math.PI) / 180), Math.sin((angle_deg * Math.PI) / 180)];
  const turn = ({ x, y }: Point) =>
    at(about.x + (x - about.x) * c - (y - about.y) * s, about.y + (x - about.x) * s + (y - about.y) * c);
  return { ...line, runs: line.runs.map((run) => run.map(turn)) };
}

const said = ({ x, y }: Point) => `${round(x)} ${round(y)}`;
const round = (value: number) => Math.round(value * 1000) / 1000;
