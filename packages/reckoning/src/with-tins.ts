/** The book as its tins have it: every wait by its tin's law, every recoat window and pot life as the tin gives it. */
import type { Book, Follow, Id, MixRecord, Step, WaitRecord } from '#boat-book';
import { potLife_min, type TinFigures } from '#materials';
import { familyOfWait, lawOfWait, potLifeOfMix, type TinOfBook } from './product-tin.ts';
import { weatherInForce } from './weather/weather-in-force.ts';

/**
 * The book with the tins' own figures in place of ours, for the planner; the book itself where no tin is in it. What is
 * stored stays as it was written: a tin changed or taken out changes the next plan.
 *
 * A recoat window after a wait that is by the tin lasts from the tin's earliest to its latest time, in hours of the clock.
 * A pot life is taken at the warmest hour of weather known for a job day, where a batch lasts least.
 */
export function withTins(book: Book): Book {
  if (Object.keys(book.tins).length === 0) return book;
  const byWait = new Map<string, TinFigures>();
  const steps: Record<Id, Step> = {};
  for (const [id, step] of Object.entries(book.steps)) {
    const waits = step.waits.map((wait) => {
      const { law, tin } = lawOfWait(book, step, wait);
      if (tin === null) return wait;
      byWait.set(`${id} ${wait.id}`, tin.tin);
      return { ...wait, law, family: familyOfWait(wait) };
    });
    steps[id] = { ...step, waits };
  }
  for (const [id, step] of Object.entries(steps))
    if (step.follows)
      steps[id] = {
        ...step,
        follows: step.follows.map((follow) => windowOfTin(follow, book, byWait)),
      };
  return { ...book, steps, mixes: mixesOfTins(book) };
}

function windowOfTin(follow: Follow, book: Book, byWait: ReadonlyMap<string, TinFigures>): Follow {
  const tin = follow.wait === null ? undefined : byWait.get(`${follow.step} ${follow.wait}`);
  const window_min = tin === undefined ? null : windowSaid(follow, book, tin);
  return window_min === null ? follow : { ...follow, greatest_min: window_min };
}

/** From the tin's earliest to its latest time for the next coat; null where it says none, or there is no window. [min] */
function windowSaid(follow: Follow, book: Pick<Book, 'steps'>, tin: TinFigures): number | null {
  if (!tin.nextCoat || tin.latestCoat_h === null || follow.greatest_min === null || !book.steps[follow.step]?.wet)
    return null;
  return Math.round((tin.latestCoat_h - tin.nextCoat.hours) * 60);
}

/** Of something in the book, with the tin its figure is from; null: none, it is as it was written. */
export type ByTin<T> = T & { readonly tin: TinOfBook | null };

/** The waits of a step, each by its tin's law where one speaks for it. */
export const waitsByTin = (book: Pick<Book, 'tins'>, step: Step): readonly ByTin<{ readonly wait: WaitRecord }>[] =>
  step.waits.map((wait) => {
    const { law, tin } = lawOfWait(book, step, wait);
    return { wait: tin === null ? wait : { ...wait, law }, tin };
  });

/** One thing a step comes after, its window by the tin of the coat below where that says one. */
export function followByTin(
  book: Pick<Book, 'tins' | 'steps'>,
  follow: Follow,
): ByTin<{ readonly follow: Follow; readonly wait: WaitRecord | null }> {
  const before = book.steps[follow.step];
  const found = before && waitsByTin(book, before).find(({ wait }) => wait.id === follow.wait);
  const window_min = found?.tin ? windowSaid(follow, book, found.tin.tin) : null;
  if (window_min === null) return { follow, wait: found?.wait ?? null, tin: null };
  return { follow: { ...follow, greatest_min: window_min }, wait: found!.wait, tin: found!.tin };
}

function mixesOfTins(book: Book): Book['mixes'] {
  const days = new Set(Object.values(book.jobDays).map(({ date }) => date));
  const known = weatherInForce(book).filter(({ date }) => days.has(date));
  const mixes: Record<Id, MixRecord> = {};
  for (const [id, mix] of Object.entries(book.mixes)) {
    const stores = Object.values(book.steps).flatMap((step) => (step.mix === id ? step.stores : []));
    const pot = potLifeOfMix(book, id, stores);
    if (pot?.from !== 'the tin') {
      mixes[id] = mix;
      continue;
    }
    const warmest_C = known.length === 0 ? pot.life.at_C : Math.max(...known.map(({ air_C }) => air_C));
    const minutes = potLife_min(pot.life, warmest_C, pot.life.of_g ?? 1);
    mixes[id] = { ...mix, potLife_min: Math.max(1, Math.floor(minutes)) };
  }
  return mixes;
}
