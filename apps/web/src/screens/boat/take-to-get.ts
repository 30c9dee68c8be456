/** Things that a job asks to get, put on the list; what the stores have of that kind and size is taken from there. */
import type { Book } from '#boat-book';
import { storeToGet, type ThingTaken, type ThingToGet, thingInStores, thingTaken } from '#reckoning';
import type { Run } from '../../parts/use-run.ts';

/** @returns what a step takes of each, in their order; null: one was refused, and is told by `run` */
export async function takeToGet(
  book: Book,
  things: readonly ThingToGet[],
  run: Run,
): Promise<readonly ThingTaken[] | null> {
  const taken: ThingTaken[] = [];
  for (const thing of things) {
    const there = thingInStores(book, thing);
    const got = there === null ? await run('addStore', storeToGet(thing)) : { kind: 'done' as const, id: there };
    if (got.kind !== 'done' || got.id === null) return null;
    taken.push(thingTaken(book, thing, got.id));
  }
  return taken;
}
