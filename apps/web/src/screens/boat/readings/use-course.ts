/** What is believed of the charge over what is seen of a block, worked out beside the page when the view stands still. */
import { wrap } from 'comlink';
import { useEffect, useState } from 'react';
import type { Book, Id } from '#boat-book';
import type { NoCourse, ReadingsCourse } from '#reckoning';
import type { BatteryWorker } from '../battery/battery-worker.ts';
import { blocksHere } from './blocks-here.ts';
import type { View } from './plot.ts';

const worker = wrap<BatteryWorker>(
  new Worker(new URL('../battery/battery-worker.ts', import.meta.url), { type: 'module' }),
);
/** The view has stood still for so long. [ms] */
const still_ms = 350;
/** What lies before the view tells how full it was when the view begins. [ms] */
const before_ms = 2 * 86_400_000;

export type Course =
  | { readonly state: 'working out' }
  | { readonly state: 'told'; readonly course: ReadingsCourse }
  | { readonly state: 'not told'; readonly because: string };

const because: Readonly<Record<NoCourse, string>> = {
  'no place': 'The book has no place for the boat: with one, the charge is worked out from these readings.',
  'no volts': 'There are no volts in what is seen: nothing is said of the charge.',
  'not here': 'These readings are not on this device.',
};

/** @param view  null: all of the block */
export function useCourse(book: Book, block: Id, view: View | null): Course {
  const [course, setCourse] = useState<Course>({ state: 'working out' });
  const from = view?.from ?? null;
  const to = view?.to ?? null;
  useEffect(() => {
    let live = true;
    const record = book.readingBlocks[block];
    if (record === undefined) return;
    const within = {
      start: from === null ? 0 : from - before_ms,
      end: to ?? Date.parse(record.to) + 1000,
    };
    const ask = async () => {
      try {
        const blocks = await blocksHere(book, record.battery, Date.parse(record.from));
        const found = await worker.course(
          book,
          block,
          new Map([...blocks].filter(([hash]) => hash === record.blob)),
          within,
        );
        if (!live) return;
        setCourse(
          typeof found === 'string' ? { state: 'not told', because: because[found] } : { state: 'told', course: found },
        );
      } catch (cause) {
        const why = cause instanceof Error ? cause.message : String(cause);
        if (live) setCourse({ state: 'not told', because: `The charge could not be worked out: ${why}` });
      }
    };
    const soon = setTimeout(() => void ask(), from === null ? 0 : still_ms);
    return () => {
      live = false;
      clearTimeout(soon);
    };
  }, [book, block, from, to]);
  return course;
}
