import { type Book, type Id, type Step, standingLog } from '#boat-book';

export interface Minutes {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** One step that was done: what was thought, and what it really took. [min], > 0 */
export interface TimeSpent {
  readonly likely: number;
  readonly spent: number;
}

export interface TunedMinutes {
  readonly before: Minutes;
  readonly after: Minutes;
  /** what the times are multiplied by */
  readonly factor: number;
  /** steps it was learnt from */
  readonly from: number;
  /** the working, line by line */
  readonly working: readonly string[];
}

/** Steps of one kind that must speak as loudly as what was thought beforehand. Our assumption. */
const assumedPriorWeight = 4;
/** A step left running by mistake, or ticked at once, would teach nonsense: it counts for no more. Our assumption. */
const assumedMostRatio = 4;

/**
 * What steps of a kind really took tunes what the next is thought to take.
 *
 *   r = ln(spent / likely), at most ln 4 either way;  z = n / (n + 4);  factor = exp(z · mean of r)
 *
 * The weight z is that of credibility: the mean of n steps drawn in towards 'as thought', the more the fewer they
 * are. 4 is the spread between steps of a kind against the spread between kinds (variances of ln spent/likely of 0.16
 * and 0.04; our assumption). low, likely and high go by the same factor, in whole minutes, at least 1.
 *
 * @param before   the minutes as written. low ≤ likely ≤ high, > 0
 * @param entries  steps of that kind that were done; none leaves the minutes as they are
 * @throws RangeError  on minutes that are not more than 0
 *
 * Source: H. Bühlmann, Experience rating and credibility, ASTIN Bulletin 4 (1967) 199–207; from memory.
 */
export function tunedMinutes(before: Minutes, entries: readonly TimeSpent[]): TunedMinutes {
  for (const { likely, spent } of entries)
    if (!(likely > 0 && spent > 0)) throw new RangeError(`minutes must be more than 0, got ${likely} and ${spent}`);
  const n = entries.length;
  if (n === 0)
    return { before, after: before, factor: 1, from: 0, working: ['No step of this kind has its time written yet.'] };
  const most = Math.log(assumedMostRatio);
  const ratios = entries.map(({ likely, spent }) => Math.min(most, Math.max(-most, Math.log(spent / likely))));
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / n;
  const z = n / (n + assumedPriorWeight);
  const factor = Math.exp(z * mean);
  const tuned = (minutes: number) => Math.max(1, Math.round(minutes * factor));
  const after = { low: tuned(before.low), likely: tuned(before.likely), high: tuned(before.high) };
  const two = (value: number) => value.toFixed(2);
  return {
    before,
    after,
    factor,
    from: n,
    working: [
      `${n} ${n === 1 ? 'step' : 'steps'} of this kind took ${two(Math.exp(mean))} times as long as thought, on the whole.`,
      `So few count for ${n} / (${n} + ${assumedPriorWeight}) = ${two(z)}: ${two(Math.exp(mean))} to the power ${two(z)} = ${two(factor)}.`,
      `${before.low}, ${before.likely}, ${before.high} min become ${after.low}, ${after.likely}, ${after.high} min.`,
    ],
  };
}

/** The kind of a step, as far as its title tells: the first word of it (`Sand the chips back`: sand). */
export function kindOfStep(title: string): string {
  return (/[\p{L}-]+/u.exec(title)?.[0] ?? '').toLowerCase();
}

/** What each finished step really took, as the log has it: by the entry known last. [min], > 0 */
export function minutesSpent(book: Book): ReadonlyMap<Id, number> {
  const spent = new Map<Id, { readonly minutes: number; readonly order: number }>();
  for (const { kind: what, step, spent_min, order = 0 } of standingLog(book.log).values()) {
    if (what !== 'step done' || step === null || spent_min === null || !(spent_min > 0)) continue;
    if ((spent.get(step)?.order ?? -1) <= order) spent.set(step, { minutes: spent_min, order });
  }
  return new Map([...spent].map(([id, { minutes }]) => [id, minutes]));
}

/** What the log of a boat book says about finished steps, by kind. */
export function timesSpentByKind(book: Book): ReadonlyMap<string, readonly TimeSpent[]> {
  const byKind = new Map<string, TimeSpent[]>();
  for (const [id, minutes] of minutesSpent(book)) {
    const step = book.steps[id];
    if (step === undefined || step.progress.kind !== 'done' || !(step.minutes.likely > 0)) continue;
    const kind = kindOfStep(step.title);
    byKind.set(kind, [...(byKind.get(kind) ?? []), { likely: step.minutes.likely, spent: minutes }]);
  }
  return byKind;
}

/** Tunes the minutes of any step of a book; a step that goes on by itself is left as it is written. */
export function tunerOf(book: Book): (step: Pick<Step, 'title' | 'minutes' | 'hands'>) => TunedMinutes {
  const byKind = timesSpentByKind(book);
  return ({ title, minutes, hands }) => tunedMinutes(minutes, hands > 0 ? (byKind.get(kindOfStep(title)) ?? []) : []);
}

/** `Counted as 24, 36 and 54 min: what 3 steps like it ('sand') really took.`; null: as it is written */
export function tunedInWords(title: string, { before, after, from }: TunedMinutes): string | null {
  if (after.low === before.low && after.likely === before.likely && after.high === before.high) return null;
  const many = from === 1 ? 'what one step like it' : `what ${from} steps like it`;
  return `Counted as ${after.low}, ${after.likely} and ${after.high} min: ${many} ('${kindOfStep(title)}') really took.`;
}
