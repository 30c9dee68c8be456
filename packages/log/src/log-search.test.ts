import { expect, test } from 'vitest';
import { type Book, beginBook, emptyBook, type OpenBook, type RecordPatch } from '#boat-book';
import { type LogSearch, logSearch } from './log-search.ts';

const boat = {
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
} as const;
const zone = { words: [], room: 1, inside: false, near: [], along: 0.2, up: 1 };
let ids = 0;
let now = Date.UTC(2026, 4, 2, 9);

/** An open book with two fittings, and a search that is kept up with it by the patches alone. */
function searched(): { book: OpenBook; search: LogSearch; whole: () => Book } {
  const book = beginBook(emptyBook('b', boat), 'birth', {
    session: ++ids,
    newId: () => `id${++ids}`,
    now: () => {
      now += 60_000;
      return now;
    },
    timeZone: 'UTC',
  });
  const search = logSearch(book.view());
  search.build(1);
  book.onChange((_, patches: readonly RecordPatch[]) => search.changed(book.view(), patches));
  book.run('addZone', { ...zone, id: 'foredeck', name: 'Foredeck' });
  book.run('addZone', { ...zone, id: 'cockpit', name: 'Cockpit' });
  book.run('addFitting', { id: 'stem', name: 'Stem fitting', zone: 'foredeck', size: 'M8', beddedWith: '', note: '' });
  book.run('addFitting', { id: 'cleat', name: 'Jib cleat', zone: 'cockpit', size: 'M5', beddedWith: '', note: '' });
  return { book, search, whole: book.view };
}

const texts = (book: Book, search: LogSearch, words: string, more: object = {}): string[] =>
  search.find({ words, ...more }).map(({ collection, id }) => {
    if (collection === 'log') return book.log[id]?.text ?? 'gone';
    return collection === 'jobs' ? (book.jobs[id]?.title ?? 'gone') : `${collection} ${id}`;
  });

test('what was this bedded with? asked on a fitting, the entry that tells it comes first', () => {
  const { book, search, whole } = searched();
  book.run('writeLog', { kind: 'note', text: 'Took it off, core dry', fitting: 'stem' });
  book.run('writeLog', {
    kind: 'step done',
    text: 'Put back in polysulphide',
    with: [{ name: 'polysulphide sealant' }],
    fitting: 'stem',
  });
  book.run('writeLog', { kind: 'bedded', text: 'Jib cleat in butyl tape', fitting: 'cleat' });
  expect(texts(whole(), search, 'What was this bedded with?', { fitting: 'stem' })).toEqual([
    'Put back in polysulphide',
  ]);
  expect(texts(whole(), search, 'what was this bedded with', { fitting: 'cleat' })[0]).toBe('Jib cleat in butyl tape');
  // each of these is said of sealing something down
  for (const words of ['rebedded', 'sealant', 'caulking', 'bedding'])
    expect(texts(whole(), search, words, { fitting: 'cleat' })[0]).toBe('Jib cleat in butyl tape');
});

test('words are found whatever their ending, begun but not finished, or with a letter wrong', () => {
  const { book, search, whole } = searched();
  book.run('writeLog', { kind: 'note', text: 'Greased both rudder pintles', zone: 'cockpit' });
  for (const words of ['greasing', 'pintle', 'rud', 'pintels', 'RUDDER', 'rudders greased'])
    expect(texts(whole(), search, words), words).toEqual(['Greased both rudder pintles']);
  expect(texts(whole(), search, 'keel')).toEqual([]);
});

test('what is meant is found by any word for it, phrases too, and the word itself before its kin', () => {
  const { book, search, whole } = searched();
  const note = (text: string) => book.run('writeLog', { kind: 'note', text });
  note('The motor coughs and dies at idle');
  note('Window weeps along its lower edge');
  note('New warp on the kedge');
  note('Fixed the hatch with two screws');
  const found: readonly (readonly [string, string])[] = [
    ['engine will not start', 'The motor coughs and dies at idle'],
    ['where does the portlight drip', 'Window weeps along its lower edge'],
    ['lets water in', 'Window weeps along its lower edge'],
    ['anchor rope', 'New warp on the kedge'],
    ['repaired', 'Fixed the hatch with two screws'],
    ['hatch bolts', 'Fixed the hatch with two screws'],
  ];
  for (const [words, text] of found) expect(texts(whole(), search, words), words).toEqual([text]);
  note('The hatch leaks at a hinge');
  expect(texts(whole(), search, 'leak')).toEqual(['The hatch leaks at a hinge', 'Window weeps along its lower edge']);
  expect(texts(whole(), search, 'weeping')).toEqual([
    'Window weeps along its lower edge',
    'The hatch leaks at a hinge',
  ]);
  expect(texts(whole(), search, 'trailer')).toEqual([]);
});

test('a fitting, a zone and dates narrow it; no words at all give everything, newest first', () => {
  const { book, search, whole } = searched();
  const note = (text: string, at: string, fitting: string) => book.run('writeLog', { kind: 'note', text, at, fitting });
  note('Looked over', '2024-06-01T10:00:00Z', 'stem');
  note('Looked over again', '2025-06-01T10:00:00Z', 'stem');
  note('Looked over too', '2025-07-01T10:00:00Z', 'cleat');
  expect(texts(whole(), search, 'looked', { fitting: 'stem' })).toHaveLength(2);
  expect(texts(whole(), search, 'looked', { zone: 'cockpit' })).toEqual(['Looked over too']);
  expect(texts(whole(), search, 'looked', { from: '2025-01-01', to: '2025-06-01' })).toEqual(['Looked over again']);
  expect(texts(whole(), search, '', { from: '2024-01-01' })).toEqual([
    'Looked over too',
    'Looked over again',
    'Looked over',
  ]);
});

test('it keeps up: names that change, what is put right, taken back, and put back again', () => {
  const { book, search, whole } = searched();
  const done = book.run('writeLog', { kind: 'note', text: 'Bolts are M6', fitting: 'stem' });
  expect(texts(whole(), search, 'stem m6')).toEqual(['Bolts are M6']);
  book.run('changeFitting', { id: 'stem', name: 'Bow fitting' });
  expect(texts(whole(), search, 'stem')).toEqual([]);
  expect(texts(whole(), search, 'bow m6')).toEqual(['Bolts are M6']);
  const wrong = done.kind === 'done' ? done.id! : '';
  book.run('writeLog', { kind: 'note', text: 'Bolts are M8', fitting: 'stem', corrects: wrong });
  expect(texts(whole(), search, 'bolts')).toEqual(['Bolts are M8']);
  book.run('addJob', { id: 'j', title: 'Varnish the tiller', consequence: 'comfort' });
  book.run('finishJob', { id: 'j' });
  const entries = () => search.find({ words: 'tiller' }).filter(({ collection }) => collection === 'log').length;
  expect(entries()).toBe(1);
  book.undo();
  expect(entries()).toBe(0);
  book.redo();
  expect(entries()).toBe(1);
});

test('kept up change by change it finds what one built afresh finds', () => {
  const { book, search, whole } = searched();
  const words = ['epoxy', 'butyl', 'wood', 'mast', 'hatch'];
  for (let n = 0; n < 60; n++) {
    const text = `${words[n % 5]} and ${words[(n * 3) % 5]} ${n}`;
    book.run('addJob', { id: `job${n}`, title: text, consequence: 'worsens', fitting: n % 2 ? 'stem' : 'cleat' });
    if (n % 3 === 0) book.run('finishJob', { id: `job${n}` });
    if (n % 7 === 0) book.undo();
    if (n % 4 === 0) book.run('changeFitting', { id: 'stem', name: `${words[n % 5]} eye` });
  }
  const afresh = logSearch(whole());
  while (!afresh.build(10));
  expect(search.size()).toBe(afresh.size());
  const sorted = (of: LogSearch, asked: string) =>
    of
      .find({ words: asked })
      .map(({ collection, id }) => `${collection} ${id}`)
      .sort();
  for (const asked of words) expect(sorted(search, asked)).toEqual(sorted(afresh, asked));
});
