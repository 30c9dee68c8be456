import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../../examples/demo-book.ts';
import { rigOfJob } from './rig-of-job.ts';

const book = demoBook('2026-05-09');
const about = (title: string, zone: string | null, id = 'none') =>
  rigOfJob(book, { id, job: { title, zone } }).map(({ name }) => name);

describe('the rig that a job is about', () => {
  it('is the stays it names, wherever it is', () => {
    expect(about('Find what gives: Cap shroud, starboard', null)).toEqual(['Cap shroud, starboard']);
  });

  it('is, where it is, the stays it says most words of', () => {
    expect(about('Rebed the starboard shroud plate', 'side-deck')).toEqual([
      'Cap shroud, starboard',
      'Lower shroud, starboard',
    ]);
    expect(about('Rebed the starboard shroud plate', 'cabin')).toEqual([]);
    expect(about('Scrub the deck', 'side-deck')).toEqual([]);
  });

  it('is the mast where an open step wants it otherwise than it stands', () => {
    const [id, job] = Object.entries(book.jobs).find(([, { title }]) => title === 'Renew the masthead sheave')!;
    expect(about(job.title, job.zone, id)).toEqual(['Mast up and down']);
    const steps = Object.fromEntries(Object.entries(book.steps).map(([step, each]) => [step, { ...each, setUps: [] }]));
    expect(rigOfJob({ ...book, steps }, { id, job })).toEqual([]);
  });
});
