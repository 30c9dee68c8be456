/** Papers with a last day, as dues: insurance, registration and whatever else has its end printed on it. */
import type { Book, DueRecord, Id, PaperRecord } from '#boat-book';
import { dueStage, fallsDue } from '#dues';
import { type DueOfBook, duesOfBook } from './due-of-book.ts';

/** Days to renew a paper, from asking for it to having it: our judgement. [d] */
export const assumedToRenew_d = 30;

/** Whether she may hardly go without it; that is for the law of the place, and our judgement. */
export const mustBeAboard = ({ kind }: PaperRecord): boolean => kind === 'registration' || kind === 'insurance';

/** The papers that count: one whose renewal was put in, of the same kind and name with a later last day, is left out. */
export function papersInForce(book: Pick<Book, 'papers'>): readonly (readonly [Id, PaperRecord])[] {
  const papers = Object.entries(book.papers);
  return papers.filter(([id, paper]) => !papers.some(([other, newer]) => other !== id && renews(newer, paper)));
}

const renews = (newer: PaperRecord, paper: PaperRecord) =>
  newer.kind === paper.kind &&
  mustBeAboard(newer) &&
  newer.fitting === paper.fitting &&
  plainName(newer) === plainName(paper) &&
  newer.expires !== null &&
  (paper.expires === null || newer.expires > paper.expires);

/** A paper's name without its year: ‘Insurance 2027’ renews ‘Insurance 2026’. */
const plainName = ({ title }: PaperRecord) =>
  title
    .toLowerCase()
    .replace(/\b(19|20)\d\d([/–-]\d\d(\d\d)?)?\b/g, '')
    .replace(/\s+/g, ' ')
    .trim();

/**
 * All that falls due: what the keeper put in, and the papers in force that have a last day, the first first. A paper is
 * not told beside a due that says the same of the same thing: one with its name, or its fitting, and its printed date.
 */
export function duesAndPapers(book: Book, today: string): readonly DueOfBook[] {
  const dues = duesOfBook(book, today);
  const papers = papersInForce(book).flatMap(([id, paper]) => {
    const { expires, fitting, title } = paper;
    if (expires === null) return [];
    const said = dues.some(
      ({ due }) =>
        due.printed === expires &&
        (due.title.toLowerCase() === title.toLowerCase() || (fitting !== null && due.fitting === fitting)),
    );
    return said ? [] : [paperDue(book, id, { ...paper, expires }, today)];
  });
  return [...dues, ...papers].sort(
    (a, b) =>
      (a.falls.day?.likely ?? '9').localeCompare(b.falls.day?.likely ?? '9') || a.due.title.localeCompare(b.due.title),
  );
}

function paperDue(
  book: Book,
  paper: Id,
  { title, fitting, expires, ...record }: PaperRecord & { readonly expires: string },
  today: string,
): DueOfBook {
  const due: DueRecord = {
    title,
    zone: fitting === null ? null : (book.fittings[fitting]?.zone ?? null),
    fitting,
    consequence: mustBeAboard({ title, fitting, expires, ...record }) ? 'unlawful' : 'worsens',
    printed: expires,
    every: null,
    season: null,
    uses: [],
    condition: null,
    usual: null,
    recipe: null,
    source: 'the paper itself',
    lastDone: null,
    note: '',
  };
  const falls = fallsDue({ rule: due, since: null, today, uses: [], ahead: [], measured: [] });
  return {
    id: `paper.${paper}`,
    paper,
    due,
    falls,
    stage: dueStage(falls, today, assumedToRenew_d),
    since: null,
    lead_d: assumedToRenew_d,
    waitsFor: null,
    job: null,
  };
}
