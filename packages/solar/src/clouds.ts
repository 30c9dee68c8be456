/**
 * From what is said of the sky to what comes through of a clear day. `covered` is the share of the time, or of the light, that
 * cloud stands before the sun; through it comes `under`, else `open`: clearness = open · (1 − covered) + under · covered.
 */
import { bandAt } from './band.ts';
import { normalMiddles, normalShare } from './normal.ts';
import { assumedMeanClearness, assumedSeason, bend, clearnessAt } from './season-clearness.ts';

/** What a keeper, or a forecast, says of a day's sky. */
export type SkyWord = 'clear' | 'some cloud' | 'broken' | 'mostly cloud' | 'overcast';

/** Each word by the share of the day that the sun is out. [0–1] Ours: fifths, the ends narrower. */
export const skyWords: Readonly<
  Record<SkyWord, { readonly low: number; readonly high: number; readonly means: string }>
> = {
  clear: { low: 0.93, high: 1, means: 'the sun is out nearly all day' },
  'some cloud': { low: 0.7, high: 0.93, means: 'the sun is out most of the day' },
  broken: { low: 0.4, high: 0.7, means: 'sun and cloud by turns' },
  'mostly cloud': { low: 0.1, high: 0.4, means: 'the sun comes out now and then' },
  overcast: { low: 0, high: 0.1, means: 'the sun casts no shadow all day' },
};

export type Clouds =
  /** nobody has said: the season's days */
  | { readonly kind: 'season' }
  | { readonly kind: 'word'; readonly word: SkyWord }
  /**
   * cloud in eighths of the sky by the clock, one figure for the day or one for each hour from midnight; and how far off it
   * mostly is, as a standard deviation
   */
  | { readonly kind: 'oktas'; readonly oktas: readonly number[]; readonly error_oktas: number };

/** Assumed of cloud, ends of 9 in 10 where there are two. */
export const assumedOfClouds = {
  /** share of a clear sky's light that comes through full cloud: a quarter, as Kasten and Czeplak have it; less in rain, more
   * through thin high cloud */
  under: { low: 0.12, likely: 0.25, high: 0.45 },
  /** under the cloud of a changing sky, whose edges are thin and bright */
  underBroken: { low: 0.18, likely: 0.33, high: 0.55 },
  /** their exponent, by this factor either way: eighths of small cloud cover less than eighths of one bank, and a low sun sees
   * cloud from the side */
  exponent: 3.4,
  exponentFactor: 2,
  /** what comes through where no cloud is told of: haze and cloud too thin to tell */
  open: { low: 0.88, likely: 0.985, high: 1.05 },
  /** a word means a share of the day within its ends, or so much beyond. [0–1] */
  wordOff: 0.04,
  /** how far a forecast for tomorrow is mostly off, as a standard deviation. [oktas] */
  error_oktas: 1.2,
} as const;

/**
 * Share of the light that cloud of so many oktas stands before.
 *
 * @param oktas  0–8
 * Source: F. Kasten and G. Czeplak, Solar Energy 24 (1980) 177–189, as carried in the handbook: G/G0 = 1 − 0.75·(N/8)^3.4.
 */
export function coveredShare(oktas: number, exponent: number = assumedOfClouds.exponent): number {
  if (!(oktas >= 0 && oktas <= 8)) throw new RangeError(`cloud is 0 to 8 oktas, got ${oktas}`);
  return (oktas / 8) ** exponent;
}

/** One way a day may be: how much cloud covers by the hour of the clock, what comes through it, and what between. */
export interface DayLight {
  /** 24 shares, or one for the whole day. [0–1] */
  readonly covered: Float64Array;
  /** share of the clear sky's light that comes through cloud */
  readonly under: number;
  /** and where there is none */
  readonly open: number;
}

const ways = 240;
const places = normalMiddles(15);
/** Evenly scattered places of four normal spreads, the same every time: steps of the roots of x⁵ = x + 1 (a Kronecker list). */
const scattered: readonly (readonly [number, number, number, number])[] = (() => {
  const root = 1.1673039782614187;
  const middles = normalMiddles(2 * ways);
  return Array.from({ length: ways }, (_, i) => {
    const at = (k: number) => middles[Math.floor(((0.5 + (i + 1) * root ** -k) % 1) * 2 * ways)]!;
    return [at(1), at(2), at(3), at(4)] as const;
  });
})();

/**
 * Ways a day may be, equally likely, that together stand for all that is known of it.
 *
 * @param dayOfYear  1–366
 * @throws RangeError for oktas or an error out of range, or neither 1 nor 24 of them
 */
export function lightsOf(clouds: Clouds, latitude_deg: number, dayOfYear: number): readonly DayLight[] {
  const { open, wordOff, exponent, exponentFactor } = assumedOfClouds;
  const openAt = (z: number) => bandAt(open, z);
  if (clouds.kind === 'season') {
    const mean = assumedMeanClearness(latitude_deg, dayOfYear);
    const bends = places.map((z) => bend(placeMean(mean, z)));
    return scattered.map(([place, day]) => {
      const gamma = bends[Math.min(places.length - 1, Math.floor(normalShare(place) * places.length))]!;
      return lightOfClearness(clearnessAt(gamma, normalShare(day)));
    });
  }
  if (clouds.kind === 'word') {
    const { low, high } = skyWords[clouds.word];
    const through = clouds.word === 'overcast' ? assumedOfClouds.under : assumedOfClouds.underBroken;
    return scattered.map(([day, under, clear]) => ({
      covered: Float64Array.of(
        1 - Math.min(1, Math.max(0, low - wordOff + normalShare(day) * (high - low + 2 * wordOff))),
      ),
      under: Math.min(0.9, bandAt(through, under)),
      open: openAt(clear),
    }));
  }
  const { oktas, error_oktas } = clouds;
  if (oktas.length !== 1 && oktas.length !== 24)
    throw new RangeError(`cloud is given once for the day or for each of 24 hours, got ${oktas.length} figures`);
  if (!(error_oktas >= 0 && error_oktas <= 4))
    throw new RangeError(`the error of a cloud forecast must be 0 to 4 oktas, got ${error_oktas}`);
  return scattered.map(([day, under, clear, kind]) => ({
    covered: Float64Array.from(oktas, (each) => {
      coveredShare(each);
      const meant = Math.min(8, Math.max(0, each + error_oktas * day));
      return coveredShare(meant, exponent * exponentFactor ** (kind / z90));
    }),
    under: Math.min(0.9, bandAt(assumedOfClouds.under, under)),
    open: openAt(clear),
  }));
}

const z90 = 1.645;

/** A day of a season, by its clearness alone: sun and cloud by turns, or cloud so thick that no sun comes out. */
export function lightOfClearness(clearness: number): DayLight {
  const under = Math.min(assumedOfClouds.underBroken.likely, clearness);
  const open = Math.max(1, clearness);
  return { covered: Float64Array.of((open - clearness) / (open - under)), under, open };
}

/** A place's own mean day. @param z  standard normal: how sunny it is among the places of its latitude */
export const placeMean = (mean: number, z: number) =>
  Math.min(0.95, Math.max(assumedSeason.dullest + 0.1, mean + assumedSeason.placeSpread * z));
