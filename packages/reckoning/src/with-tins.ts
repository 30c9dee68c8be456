/** The book as its tins have it: every wait by its tin's law, every recoat window and pot life as the tin gives it. */
import type { Book, Follow, Id, MixRecord, Step } from '#boat-book';
import { potLife_min } from '#materials';
import { lawOfWait, potLifeOfMix, type TinOfBook } from './product-tin.ts';
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
  const byWait = new Map<string, TinOfBook>();
  const steps: Record<Id, Step> = {};
  for (const [id, step] of Object.entries(book.steps)) {
    const waits = step.waits.map((wait) => {
      const { law, tin } = lawOfWait(book, step, wait);
      if (tin === null) return wait;
      byWait.set(`${id} ${wait.id}`, tin);
      return { ...wait, law };
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

function windowOfTin(follow: Follow, book: Book, byWait: ReadonlyMap<string, TinOfBook>): Follow {
  const tin = follow.wait === null ? undefined : byWait.get(`${follow.step} ${follow.wait}`)?.tin;
  if (!tin?.nextCoat || tin.latestCoat_h === null || follow.greatest_min === null || !book.steps[follow.step]?.wet)
    return follow;
  return { ...follow, greatest_min: Math.round((tin.latestCoat_h - tin.nextCoat.hours) * 60) };
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
