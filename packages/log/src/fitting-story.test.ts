import { expect, test } from 'vitest';
import { beginBook, emptyBook } from '#boat-book';
import { fittingStory } from './fitting-story.ts';

test('a fitting’s story has what was done to it and on its jobs, what it cost, its papers and its jury rigs', () => {
  let ids = 0;
  const book = beginBook(
    emptyBook('b', {
      name: 'Dabchick',
      keeper: 'Ilka',
      demo: false,
      length_m: 5.6,
      beam_m: 2.2,
      mastHeight_m: 7,
      mastFromBow_m: 2,
      boom_m: 2.4,
      freeboard_m: 0.6,
      draft_m: 0.25,
      draftBoardDown_m: 1.2,
      cabin: true,
      board: 'pivoting',
    }),
    'birth',
    { session: 5, newId: () => `id${++ids}`, now: () => Date.UTC(2026, 4, 2) + ++ids * 60_000, timeZone: 'UTC' },
  );
  const zone = { words: [], room: 1, inside: false, near: [], along: 0.2, up: 1 };
  book.run('addZone', { ...zone, id: 'z', name: 'Foredeck' });
  for (const id of ['f', 'other'])
    book.run('addFitting', { id, name: `Eye ${id}`, zone: 'z', size: '', beddedWith: '', note: '' });
  book.run('addJob', { id: 'j', title: 'Rebed the eye', consequence: 'worsens', fitting: 'f' });
  book.run('addJob', { id: 'k', title: 'Another', consequence: 'worsens', fitting: 'other' });
  const cost = { amount: 12.5, currency: 'EUR' };
  book.run('writeLog', { kind: 'got', text: 'Tape', job: 'j', cost, spent_min: 20 });
  book.run('writeLog', { kind: 'bedded', text: 'In butyl', fitting: 'f', with: [{ name: 'butyl tape' }] });
  book.run('writeLog', { kind: 'got', text: 'For the other', job: 'k', cost });
  book.run('addJuryRig', {
    title: 'Lashing',
    job: 'j',
    zone: null,
    reason: 'until the tape comes',
    made: '2026-05-02',
    trustedUntil: '2026-06-01',
    wind_max_kn: null,
    sails_max: null,
    notOnRoad: false,
  });
  book.run('finishJob', { id: 'j' });
  const story = fittingStory(book.view(), 'f');
  expect(story?.entries.map(([, { text }]) => text)).toEqual([
    'Rebed the eye',
    'Lashing, trusted until 2026-06-01',
    'In butyl',
    'Tape',
  ]);
  expect(story?.bedded?.with).toBe('butyl tape');
  expect(story).toMatchObject({ costs: [{ currency: 'EUR', amount: 12.5 }], spent_min: 20, papers: [], photos: [] });
  expect(story?.rigs.map(([, { title }]) => title)).toEqual(['Lashing']);
  expect(story?.jobs.map(([id]) => id)).toEqual(['j']);
  expect(fittingStory(book.view(), 'gone')).toBeNull();
});
