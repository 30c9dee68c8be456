/**
 * Readings from a file of NMEA 0183 sentences: what transducers measured (XDR), at the time that the sentence of time before
 * it (ZDA or RMC) says. From memory of the standard: type U is voltage in V, I current in A, C temperature in °C.
 */
import { readSentence } from './nmea-sentence.ts';
import { gather, type ReadingLimits } from './ordered-readings.ts';
import type { ReadFile } from './read-table.ts';
import type { ReadColumn } from './reading-columns.ts';
import { faultList } from './row-faults.ts';
import { shown } from './time-text.ts';

/** What one transducer measures. */
export interface Transducer {
  readonly of: ReadColumn;
  /** as the sentences name it; may be empty */
  readonly name: string;
  readonly count: number;
  readonly least: number;
  readonly most: number;
}

export type LookedSentences =
  | {
      readonly kind: 'sentences';
      readonly transducers: readonly Transducer[];
      /** sentences that say the time */
      readonly times: number;
      readonly sentences: number;
    }
  | { readonly kind: 'refused'; readonly wrong: string; readonly right: string };

/** Which transducers are read; null: none. */
export interface SentencePlan {
  readonly volts: string;
  readonly current: { readonly name: string; readonly positive: 'out of the battery' | 'into the battery' } | null;
  readonly air: string | null;
}

const columnOfType: Readonly<Record<string, ReadColumn | undefined>> = { U: 'volts', I: 'current', C: 'air' };
const unitOfColumn = { volts: 'V', current: 'A', air: 'C' } as const;

interface Measured {
  readonly of: ReadColumn;
  readonly name: string;
  /** null: what stands there is no figure */
  readonly value: number | null;
  readonly text: string;
}

/** What an XDR sentence measured of volts, current and temperature. */
function measuredIn(fields: readonly string[]): Measured[] {
  const found: Measured[] = [];
  for (let i = 0; i + 2 < fields.length; i += 4) {
    const of = columnOfType[fields[i]!];
    const unit = fields[i + 2]!;
    if (of === undefined || (unit !== '' && unit !== unitOfColumn[of])) continue;
    const text = fields[i + 1]!.trim();
    if (text === '') continue;
    const value = /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : null;
    found.push({ of, name: fields[i + 3] ?? '', value, text });
  }
  return found;
}

/** Two-figure years from here on are of the last century. */
const pivot = 80;

/** The time a ZDA or RMC sentence says, UTC; null: none, as before a fix. [ms] */
export function timeOf(type: string, fields: readonly string[]): number | null {
  const clock = /^(\d{2})(\d{2})(\d{2})(\.\d+)?$/.exec(fields[0] ?? '');
  if (!clock) return null;
  const date =
    type === 'ZDA'
      ? [Number(fields[3]), Number(fields[2]), Number(fields[1])]
      : fields[1] === 'A'
        ? dateOfRmc(fields[8] ?? '')
        : null;
  if (date === null) return null;
  const [year, month, day] = date as [number, number, number];
  const midnight = Date.UTC(year, month - 1, day);
  const made = new Date(midnight);
  if (!(made.getUTCMonth() === month - 1 && made.getUTCDate() === day)) return null;
  const [, h, m, s, fraction] = clock;
  if (Number(h) > 23 || Number(m) > 59 || Number(s) > 60) return null;
  return (
    midnight + ((Number(h) * 60 + Number(m)) * 60 + Number(s)) * 1000 + Math.round(Number(`0${fraction ?? ''}`) * 1000)
  );
}

function dateOfRmc(text: string): [year: number, month: number, day: number] | null {
  const parts = /^(\d{2})(\d{2})(\d{2})$/.exec(text);
  if (!parts) return null;
  const year = Number(parts[3]);
  return [year >= pivot ? 1900 + year : 2000 + year, Number(parts[2]), Number(parts[1])];
}

/** Lines looked at before the keeper is asked which transducer is which. */
const mostLooked = 20_000;

/** What transducers there are in a file of sentences. */
export function lookAtSentences(text: string): LookedSentences {
  const found = new Map<string, { of: ReadColumn; name: string; count: number; least: number; most: number }>();
  let times = 0;
  let sentences = 0;
  eachLine(text, (line, row) => {
    const sentence = readSentence(line);
    if (sentence.kind === 'sentence') {
      sentences++;
      const { type, fields } = sentence;
      if ((type === 'ZDA' || type === 'RMC') && timeOf(type, fields) !== null) times++;
      for (const { of, name, value } of type === 'XDR' ? measuredIn(fields) : []) {
        const key = `${of} ${name}`;
        const one = found.get(key) ?? {
          of,
          name,
          count: 0,
          least: Number.POSITIVE_INFINITY,
          most: Number.NEGATIVE_INFINITY,
        };
        if (value !== null) {
          one.count++;
          one.least = Math.min(one.least, value);
          one.most = Math.max(one.most, value);
        }
        found.set(key, one);
      }
    }
    return row < mostLooked;
  });
  const refused = (wrong: string, right: string): LookedSentences => ({ kind: 'refused', wrong, right });
  if (sentences === 0)
    return refused('No sentence in the file has a right checksum.', 'sentences that end with * and their checksum');
  const transducers = [...found.values()].filter(({ count }) => count > 0);
  if (!transducers.some(({ of }) => of === 'volts'))
    return refused(
      `Of ${sentences} sentences none measures volts.`,
      'sentences of transducers (XDR) of type U, such as $IIXDR,U,12.54,V,HOUSE*25',
    );
  if (times === 0)
    return refused(
      `Of ${sentences} sentences none says the date and time.`,
      'ZDA or RMC sentences among the others; an RMC before the first fix says no time',
    );
  return { kind: 'sentences', transducers, times, sentences };
}

/** Calls with each line that is not empty, and its number from 1, until it answers false. */
function eachLine(text: string, call: (line: string, row: number, end: number) => boolean): void {
  let row = 0;
  for (let from = 0; from < text.length; ) {
    let to = text.indexOf('\n', from);
    if (to < 0) to = text.length;
    row++;
    const line = text.slice(from, to).trim();
    from = to + 1;
    if (line !== '' && !call(line, row, from)) return;
  }
}

/** Reads all sentences of a file. @param told  called now and then with the share that is read, 0–1 */
export function readSentences(
  text: string,
  plan: SentencePlan,
  limits: ReadingLimits,
  told: (share: number) => void = () => {},
): ReadFile {
  const faults = faultList();
  const there: ReadColumn[] = [
    'volts',
    ...(plan.current === null ? [] : (['current'] as const)),
    ...(plan.air === null ? [] : (['air'] as const)),
  ];
  const readings = gather(there, limits, faults);
  let time: number | null = null;
  let rows = 0;
  let row = 0;
  /** what was measured at the time said last: volts, current and air of one moment may come in sentences of their own */
  let open: { row: number; at: number; volts: number; current: number; air: number } | null = null;
  const put = () => {
    if (open !== null) readings.add(open.row, open.at, open.volts, open.current, open.air);
    open = null;
  };
  const wanted = ({ of, name }: Measured) =>
    of === 'volts' ? name === plan.volts : of === 'current' ? name === plan.current?.name : name === plan.air;
  eachLine(text, (line, n, end) => {
    row = n;
    if (row % 20_000 === 0) told(end / text.length);
    const sentence = readSentence(line);
    if (sentence.kind === 'refused') {
      rows++;
      faults.add({ row, lost: 'row', wrong: sentence.wrong, right: sentence.right });
      return true;
    }
    const { type, fields } = sentence;
    if (type === 'ZDA' || type === 'RMC') {
      const said = timeOf(type, fields);
      if (said !== null) time = said;
      return true;
    }
    if (type !== 'XDR') return true;
    const measured = measuredIn(fields).filter(wanted);
    if (measured.length === 0) return true;
    rows++;
    if (time === null) {
      faults.add({
        row,
        lost: 'row',
        wrong: 'no time was said before it',
        right: 'a ZDA or RMC sentence before the first',
      });
      return true;
    }
    for (const { of, value, text: given } of measured) {
      if (value === null) {
        faults.add({
          row,
          lost: 'figure',
          wrong: `the ${of} ‘${shown(given)}’ is no figure`,
          right: 'a figure such as 12.45',
        });
        continue;
      }
      const figure = of === 'current' && plan.current?.positive === 'into the battery' ? -value : value;
      if (open !== null && (open.at !== time || !Number.isNaN(open[of]))) put();
      open ??= { row, at: time, volts: Number.NaN, current: Number.NaN, air: Number.NaN };
      open[of] = figure;
    }
    return true;
  });
  put();
  told(1);
  return { ...readings.inOrder(), faults: faults.tally(), rows };
}
