import type { Band } from './balance.ts';

/** Shares of the laden mass on the ball that are usually advised. [%] */
export const advised_pct = {
  uk: { low: 5, high: 7, title: 'Britain and Europe' },
  us: { low: 10, high: 15, title: 'United States' },
} as const;
export type Advice = keyof typeof advised_pct;

/** Least share on the ball of one car’s handbook: under it she wags. [%] */
export const least_pct = 4;
/** Largest share of one handbook. [%] */
export const most_pct = 10;
/** Laden trailer over the car’s kerb mass, advised at most. [%] */
export const ladenOverKerb_pct = 85;
/** Largest trailer without brakes, and its share of the car’s kerb mass in Britain. */
export const unbraked = { most_kg: 750, overKerb_pct: 50 } as const;

/** What the papers and plates allow, in kg. What was not entered is missing, never supposed. */
export interface PaperLimits {
  readonly carBall_kg?: number;
  readonly barBall_kg?: number;
  readonly couplingBall_kg?: number;
  readonly gross_kg?: number;
  readonly axle_kg?: number;
  /** what car and trailer may weigh together */
  readonly train_kg?: number;
  readonly carKerb_kg?: number;
  /** car as laden on the day, for the train */
  readonly carLaden_kg?: number;
  readonly braked: boolean;
  /** what all tyres together may carry */
  readonly tyres_kg?: number;
}

export type LimitKind =
  | 'ball over its limit'
  | 'ball may be over its limit'
  | 'ball load under nothing'
  | 'ball load too small'
  | 'ball load above what is advised'
  | 'ball load below what is advised'
  | 'gross over its limit'
  | 'axle over its limit'
  | 'tyres over their limit'
  | 'train over its limit'
  | 'heavy for the car'
  | 'too heavy without brakes'
  | 'too heavy for the car without brakes';

export interface LimitFinding {
  readonly kind: LimitKind;
  /** `past` breaks a limit of the papers, a plate or the law; `unwise` breaks advice */
  readonly weight: 'past' | 'unwise';
  readonly is: number;
  readonly limit: number;
  readonly unit: 'kg' | '%';
}

/** The ball limit that counts: the lowest of those entered, with whose it is; null where none was. */
export function ballLimit(
  limits: PaperLimits,
): { readonly kg: number; readonly of: 'car' | 'bar' | 'coupling' } | null {
  const entered = (
    [
      ['car', limits.carBall_kg],
      ['bar', limits.barBall_kg],
      ['coupling', limits.couplingBall_kg],
    ] as const
  ).flatMap(([of, kg]) => (kg === undefined ? [] : [{ of, kg }]));
  return entered.reduce<(typeof entered)[number] | null>(
    (least, each) => (!least || each.kg < least.kg ? each : least),
    null,
  );
}

export interface LimitsLooked {
  readonly findings: readonly LimitFinding[];
  /** limits that were not entered, so nothing was said of them */
  readonly missing: readonly (keyof PaperLimits)[];
}

/**
 * The load of a trailer against the papers and the advice.
 *
 * @param load  laden mass, ball load with its band, axle load; all in kg
 */
export function limitsLooked(
  load: { readonly laden_kg: number; readonly ball_kg: Band; readonly axle_kg: number },
  limits: PaperLimits,
  advice: Advice,
): LimitsLooked {
  const findings: LimitFinding[] = [];
  const past = (kind: LimitKind, is: number, limit: number | undefined) => {
    if (limit !== undefined && is > limit) findings.push({ kind, weight: 'past', is, limit, unit: 'kg' });
    return limit !== undefined && is > limit;
  };
  const lowest = ballLimit(limits);
  if (!past('ball over its limit', load.ball_kg.likely, lowest?.kg) && lowest && load.ball_kg.high > lowest.kg)
    findings.push({
      kind: 'ball may be over its limit',
      weight: 'unwise',
      is: load.ball_kg.high,
      limit: lowest.kg,
      unit: 'kg',
    });
  const share = load.laden_kg > 0 ? (100 * load.ball_kg.likely) / load.laden_kg : 0;
  const { low, high } = advised_pct[advice];
  const unwise = (kind: LimitKind, limit: number) =>
    findings.push({ kind, weight: 'unwise', is: share, limit, unit: '%' });
  if (load.laden_kg > 0) {
    if (share < 0) findings.push({ kind: 'ball load under nothing', weight: 'past', is: share, limit: 0, unit: '%' });
    else if (share < least_pct) unwise('ball load too small', least_pct);
    else if (share < low) unwise('ball load below what is advised', low);
    else if (share > high) unwise('ball load above what is advised', high);
  }
  past('gross over its limit', load.laden_kg, limits.gross_kg);
  past('axle over its limit', load.axle_kg, limits.axle_kg);
  past('tyres over their limit', load.axle_kg, limits.tyres_kg);
  if (limits.carLaden_kg !== undefined)
    past('train over its limit', limits.carLaden_kg + load.laden_kg, limits.train_kg);
  if (!limits.braked) {
    past('too heavy without brakes', load.laden_kg, unbraked.most_kg);
    if (limits.carKerb_kg !== undefined)
      past('too heavy for the car without brakes', load.laden_kg, (unbraked.overKerb_pct / 100) * limits.carKerb_kg);
  }
  if (limits.carKerb_kg !== undefined) {
    const over = (100 * load.laden_kg) / limits.carKerb_kg;
    if (over > ladenOverKerb_pct)
      findings.push({ kind: 'heavy for the car', weight: 'unwise', is: over, limit: ladenOverKerb_pct, unit: '%' });
  }
  const asked = [
    'carBall_kg',
    'barBall_kg',
    'couplingBall_kg',
    'gross_kg',
    'axle_kg',
    'tyres_kg',
    'train_kg',
    'carLaden_kg',
    'carKerb_kg',
  ] as const;
  return { findings, missing: asked.filter((each) => limits[each] === undefined) };
}
