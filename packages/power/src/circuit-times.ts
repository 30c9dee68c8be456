import { type Light, lightSpans } from '#sky';
import { addDays, type Instant, instantAt, isClock, localAt, type Span, sharedSpan } from '#units';

/** Where the boat lies, for the sun and the clocks. */
export interface PowerPlace {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  /** IANA name */
  readonly zone: string;
}

export const sunMarks = ['sunset', 'sunrise', 'dusk', 'dawn'] as const;
/** Sunset and sunrise, and the end and beginning of the light one can work by (civil twilight). */
export type SunMark = (typeof sunMarks)[number];

/** When a circuit is in use. */
export type CircuitUse =
  | { readonly kind: 'always' }
  /** clock times at the place; to before from runs past midnight */
  | { readonly kind: 'clock'; readonly from: string; readonly to: string }
  /** each end by the sun or by the clock: sunset to sunrise, sunset to 22:30 */
  | { readonly kind: 'sun'; readonly from: SunMark | string; readonly to: SunMark | string }
  /** so many hours a day, nobody says which */
  | { readonly kind: 'hours'; readonly hours_a_day: number };

/** Assumed: hours that nobody gave a clock time for fall between these times. */
export const assumedWaking = { from: '07:00', to: '22:00', hours: 15 } as const;

const lightOf: Readonly<Record<SunMark, Light>> = { sunset: 'sun', sunrise: 'sun', dusk: 'civil', dawn: 'civil' };
const day_ms = 86_400_000;

/**
 * The spans within a stretch of time in which a circuit may be drawing, in order and apart.
 *
 * @throws RangeError for an end that is neither a clock time nor a mark of the sun
 *
 * A circuit by hours is spread over the waking day: its spans are those of the waking hours. Where the sun never sets, what
 * runs from sunset does not run; where it never rises, it runs all the time.
 */
export function circuitSpans(use: CircuitUse, place: PowerPlace, { start, end }: Span): Span[] {
  if (end <= start) return [];
  if (use.kind === 'always') return [{ start, end }];
  const [from, to] = use.kind === 'hours' ? [assumedWaking.from, assumedWaking.to] : [use.from, use.to];
  const wide = { start: start - 2 * day_ms, end: end + day_ms };
  const turns = [
    ...marksWithin(from, place, wide).map((at) => ({ at, on: true })),
    ...marksWithin(to, place, wide).map((at) => ({ at, on: false })),
  ].sort((a, b) => a.at - b.at || Number(a.on) - Number(b.on));
  const spans: Span[] = [];
  let since: Instant | null = turns.length === 0 && isOnWithoutMarks(from, place, wide) ? wide.start : null;
  const add = (until: Instant) => {
    if (since === null) return;
    const within = sharedSpan({ start: since, end: until }, { start, end });
    if (within && within.end > within.start) spans.push(within);
    since = null;
  };
  for (const turn of turns) {
    if (!turn.on) add(turn.at);
    else since ??= turn.at;
  }
  add(wide.end);
  return spans;
}

/**
 * The nights from an instant on, sunset to sunrise, the running one first. Where the sun does not set and rise once a day all
 * through them, 22:00 to 06:00 of the place's clocks. Exactly as many as wanted.
 */
export function nightsAhead(place: PowerPlace, from: Instant, nights: number): Span[] {
  const span = { start: from, end: from + (nights + 3) * day_ms };
  const bySun = circuitSpans({ kind: 'sun', from: 'sunset', to: 'sunrise' }, place, span).slice(0, nights);
  const daily = bySun.every(({ start, end }, n) => end - (n === 0 ? start : bySun[n - 1]!.end) < 1.25 * day_ms);
  if (bySun.length === nights && daily) return bySun;
  return circuitSpans({ kind: 'clock', from: '22:00', to: '06:00' }, place, span).slice(0, nights);
}

function marksWithin(mark: string, place: PowerPlace, { start, end }: Span): Instant[] {
  if (isSunMark(mark)) {
    const edge = mark === 'sunrise' || mark === 'dawn' ? 'start' : 'end';
    return lightSpans(place, lightOf[mark], { start, end })
      .map((span) => span[edge])
      .filter((at) => at > start && at < end);
  }
  if (!isClock(mark))
    throw new RangeError(`a circuit runs from and to a clock time or one of ${sunMarks.join(', ')}; got '${mark}'`);
  const marks: Instant[] = [];
  for (let day = localAt(start, place.zone).day; ; day = addDays(day, 1)) {
    const at = instantAt(day, mark, place.zone);
    if (at >= end) return marks;
    if (at > start) marks.push(at);
  }
}

function isOnWithoutMarks(from: string, place: PowerPlace, span: Span): boolean {
  if (!isSunMark(from)) return false;
  const light = lightSpans(place, lightOf[from], span).length > 0;
  return from === 'sunrise' || from === 'dawn' ? light : !light;
}

const isSunMark = (mark: string): mark is SunMark => (sunMarks as readonly string[]).includes(mark);
