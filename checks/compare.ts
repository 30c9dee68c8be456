/** How far an answer may lie from the row, in the row's own unit; clock times in seconds. */
export type Tolerance =
  | { readonly kind: 'abs' | 'rel'; readonly value: number }
  | { readonly kind: 'exact' | 'range' | 'text' };

export interface Comparison {
  readonly passed: boolean;
  /** error over what is allowed; 1 is the edge. 0 for an exact or text row that agrees */
  readonly share: number;
  /** both figures, for the report */
  readonly got: string;
  readonly wanted: string;
}

/** Two figures are the ends of a range or a pair; three and more are a row of figures. */
export type Expected = number | string | readonly number[];

/**
 * Compares an answer with the expected value of a row.
 *
 * - clock times ('07:21:55', '16:47'): in seconds, the shorter way round the dial;
 * - `range`: inside, the ends included;
 * - `exact` and two figures or more, or `abs` and three or more: the answer's words name them all, in that order, and none besides;
 * - `exact`: equal as printed (to one part in 10⁹ for numbers);
 * - `text`: the same words, capitals and spaces aside.
 */
export function compare(got: number | string, wanted: Expected, tolerance: Tolerance): Comparison {
  const shown = {
    got: String(got),
    wanted: typeof wanted === 'object' ? wanted.join(wanted.length === 2 ? ' to ' : ', ') : String(wanted),
  };
  const verdict = (passed: boolean, share: number): Comparison => ({ passed, share, ...shown });
  if (typeof wanted === 'object') {
    if (typeof got === 'string' && (tolerance.kind === 'exact' || (tolerance.kind === 'abs' && wanted.length > 2))) {
      const named = got.match(/(?<!\d)-?\d+(\.\d+)?/g)?.map(Number) ?? [];
      const shares = wanted.map((each, i) => {
        // one tolerance for figures of several sizes: of a small one it may be no more than a fiftieth
        const allowed = tolerance.kind === 'abs' ? Math.min(tolerance.value, Math.abs(each) / 50) : 0;
        return ratio(Math.abs(each - (named[i] ?? Number.POSITIVE_INFINITY)), allowed);
      });
      const share = Math.max(...shares);
      return verdict(named.length === wanted.length && share <= 1, share);
    }
    const [low, high] = [wanted[0]!, wanted[1]!];
    if (typeof got !== 'number' || tolerance.kind !== 'range' || wanted.length !== 2)
      return verdict(false, Number.POSITIVE_INFINITY);
    const half = (high - low) / 2;
    const off = Math.abs(got - (low + high) / 2);
    return verdict(got >= low && got <= high, half > 0 ? off / half : off === 0 ? 0 : Number.POSITIVE_INFINITY);
  }
  const seconds = typeof wanted === 'string' ? secondsOfClock(wanted) : null;
  if (seconds !== null && typeof got === 'number') {
    const gotSeconds = got * 3600;
    const apart = Math.abs(((((gotSeconds - seconds + 43_200) % 86_400) + 86_400) % 86_400) - 43_200);
    const allowed = tolerance.kind === 'abs' ? tolerance.value : 0;
    return {
      passed: apart <= allowed,
      share: ratio(apart, allowed),
      got: clockOfSeconds(gotSeconds),
      wanted: shown.wanted,
    };
  }
  if (typeof wanted === 'string' || typeof got === 'string') {
    const same = plain(String(got)) === plain(String(wanted));
    return verdict(same, same ? 0 : Number.POSITIVE_INFINITY);
  }
  const off = Math.abs(got - wanted);
  switch (tolerance.kind) {
    case 'abs':
    case 'rel': {
      const stated = tolerance.value * (tolerance.kind === 'abs' ? 1 : Math.abs(wanted));
      const allowed = Math.max(stated, stated > 0 ? halfOfTenthFigure(wanted) : 0);
      return verdict(off <= allowed, ratio(off, allowed));
    }
    default: {
      const equal = off <= 1e-9 * Math.max(1, Math.abs(wanted));
      return verdict(equal, equal ? 0 : Number.POSITIVE_INFINITY);
    }
  }
}

/** Rows carry ten figures: nothing finer can be asked of them, whatever tolerance they state (a day count has seven before the point). */
const halfOfTenthFigure = (value: number) =>
  value === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value))) - 9);
const ratio = (off: number, allowed: number) =>
  allowed > 0 ? off / allowed : off <= 1e-12 ? 0 : Number.POSITIVE_INFINITY;
const plain = (text: string) => text.trim().toLowerCase().replaceAll(/\s+/g, ' ');

function secondsOfClock(text: string): number | null {
  const found = /^(\d{1,2}):(\d\d)(?::(\d\d))?$/.exec(text.trim());
  return found ? Number(found[1]) * 3600 + Number(found[2]) * 60 + Number(found[3] ?? 0) : null;
}

function clockOfSeconds(seconds: number): string {
  const whole = ((Math.round(seconds) % 86_400) + 86_400) % 86_400;
  const two = (n: number) => String(Math.floor(n)).padStart(2, '0');
  return `${two(whole / 3600)}:${two((whole % 3600) / 60)}:${two(whole % 60)}`;
}
