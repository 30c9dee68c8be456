/** How the log's screens say a kind, a price, a time and what an entry is about. */
import type { Book, Cost, LogEntry, LogKind, PaperRecord } from '#boat-book';
import { localAt } from '#units';
import { minutesInWords } from '../../../parts/in-words.ts';
import { zoneOf } from '../../../reading/today.ts';

export const kindName: Readonly<Record<LogKind, string>> = {
  'step done': 'step done',
  'job done': 'job done',
  proved: 'proved',
  measured: 'measured',
  bedded: 'bedded',
  fitted: 'fitted',
  got: 'got',
  used: 'used',
  'jury rig made': 'jury rig made',
  'jury rig trusted': 'jury rig trusted longer',
  'jury rig removed': 'jury rig gone',
  outing: 'outing',
  note: 'note',
  'taken back': 'taken back',
};

/** Kinds that a keeper writes by hand; the rest is written by what is done in the book. */
export const kindsByHand: readonly LogKind[] = ['note', 'bedded', 'fitted', 'got', 'measured', 'outing'];

export const paperKindName: Readonly<Record<PaperRecord['kind'], string>> = {
  registration: 'registration',
  insurance: 'insurance',
  survey: 'survey',
  manual: 'manual',
  receipt: 'receipt',
  other: 'other paper',
};

/** `12.50 EUR` */
export const costInWords = ({ amount, currency }: Cost): string => `${amount.toFixed(2)} ${currency}`;

/** The day of an entry at the boat's place. */
export const dayOf = (book: Book, { at }: Pick<LogEntry, 'at'>): string => localAt(Date.parse(at), zoneOf(book)).day;

/** What there is to know of an entry besides its text: `bedded · Stem fitting · Rebed the stem · Ida · 25 min`. */
export function entryNote(book: Book, entry: LogEntry): string {
  const fitting = entry.fitting === undefined ? undefined : book.fittings[entry.fitting]?.name;
  const job = entry.job === null ? undefined : book.jobs[entry.job]?.title;
  return [
    kindName[entry.kind],
    fitting ?? (entry.zone === null ? undefined : book.zones[entry.zone]?.name),
    job === entry.text ? undefined : job,
    entry.with && withInWords(entry.with),
    entry.who,
    entry.spent_min === null ? undefined : minutesInWords(entry.spent_min),
    entry.cost && costInWords(entry.cost),
  ]
    .filter(Boolean)
    .join(' · ');
}

/** `with butyl tape, 2 M6 bolts` */
export function withInWords(used: NonNullable<LogEntry['with']>): string {
  return `with ${used
    .map(({ name, amount, unit = '' }) =>
      [amount, unit, name].filter((part) => part !== undefined && part !== '').join(' '),
    )
    .join(', ')}`;
}

/** The currency last written in the log; none yet: empty, and it is asked for. */
export function lastCurrency(book: Book): string {
  let last = '';
  for (const { cost } of Object.values(book.log)) if (cost !== undefined) last = cost.currency;
  return last;
}
