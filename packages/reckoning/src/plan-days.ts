import type { Book, Id } from '#boat-book';
import { lightSpans } from '#sky';
import { addDays, instantAt } from '#units';
import type { Hand, MinuteSpan, ProblemDay, SetUpAspect } from '#workplan';
import { type DatedJobDay, endInstant } from './job-days-ahead.ts';
import { placeAt } from './plan-hours.ts';
import type { LinkedStep } from './plan-steps.ts';
import { dayInWords } from './when-in-words.ts';

const msInHour = 3_600_000;

export const keeperId = 'keeper';

/** The job days with their breaks, in minutes of the plan. */
export function problemDays(days: readonly DatedJobDay[], minute: (ms: number) => number): ProblemDay[] {
  return days.map(({ id, record, place, from, to }) => ({
    id,
    label: dayInWords(record.date),
    from: minute(from),
    to: minute(to),
    setOut_min: record.setOut_min,
    clearUp_min: record.clearUp_min,
    breaks: joined(
      record.breaks.flatMap((each) => {
        const date = each.from >= record.from ? record.date : addDays(record.date, 1);
        const starts = minute(instantAt(date, each.from, place.timeZone));
        const span = { from: Math.max(starts, minute(from)), to: Math.min(starts + each.minutes, minute(to)) };
        return span.from < span.to ? [span] : [];
      }),
    ),
    features: place.features,
    endsIn: record.endsIn.map((end) => ({ aspect: end.setUp, state: end.state })),
  }));
}

/**
 * The keeper, there all the time, and each hand of the job days for the hours given there; a hand who is busy with
 * a step under way but is down for no hours is named too.
 */
export function handsPresent(
  book: Book,
  days: readonly DatedJobDay[],
  open: readonly LinkedStep[],
  minute: (ms: number) => number,
  horizon: number,
): Hand[] {
  const others = new Map<Id, { name: string; present: MinuteSpan[] }>();
  for (const { record, place } of days)
    for (const hand of record.hands) {
      const from = minute(instantAt(record.date, hand.from, place.timeZone));
      const to = minute(endInstant(record.date, hand.from, hand.to, place.timeZone));
      const known = others.get(hand.id) ?? { name: hand.name, present: [] };
      known.name = hand.name;
      known.present.push({ from, to });
      others.set(hand.id, known);
    }
  for (const { record } of open)
    if (record.progress.kind === 'under way')
      for (const id of record.progress.hands)
        if (id !== keeperId && !others.has(id)) others.set(id, { name: nameOfHand(book, id), present: [] });
  others.delete(keeperId);
  return [
    { id: keeperId, name: book.boat.keeper, present: [{ from: 0, to: horizon }] },
    ...[...others].map(([id, { name, present }]) => ({ id, name, present: joined(clipped(present, horizon)) })),
  ];
}

function nameOfHand(book: Book, id: Id): string {
  for (const day of Object.values(book.jobDays)) for (const hand of day.hands) if (hand.id === id) return hand.name;
  return id;
}

/** The set-ups as they stand. */
export function problemSetUps(book: Book): SetUpAspect[] {
  return Object.entries(book.setUps).map(([id, setUp]) => ({
    id,
    name: setUp.name,
    states: setUp.states,
    initial: setUp.now,
    changes: setUp.changes.map((change) => ({
      from: change.from,
      to: change.to,
      minutes: Math.max(1, Math.round(change.minutes)),
      hands: change.hands,
      needs: change.needs,
      setUps: change.setUps.map((need) => ({ aspect: need.setUp, states: need.states })),
    })),
  }));
}

/** Sunrise to sunset where the boat lies, in whole minutes within both. */
export function daylightSpans(days: readonly DatedJobDay[], startsMs: number, horizon: number): MinuteSpan[] {
  const endsMs = startsMs + horizon * 60_000;
  const spans: MinuteSpan[] = [];
  let from = startsMs;
  while (from < endsMs) {
    const here = placeAt(days, from);
    let to = from + msInHour;
    while (to < endsMs && placeAt(days, to).placeId === here.placeId) to += msInHour;
    for (const light of lightSpans(here.place, 'sun', { start: from, end: Math.min(to, endsMs) }))
      spans.push({
        from: Math.ceil((light.start - startsMs) / 60_000),
        to: Math.floor((light.end - startsMs) / 60_000),
      });
    from = to;
  }
  return joined(clipped(spans, horizon));
}

const clipped = (spans: readonly MinuteSpan[], horizon: number): MinuteSpan[] =>
  spans.flatMap((span) => {
    const clip = { from: Math.max(0, span.from), to: Math.min(horizon, span.to) };
    return clip.from < clip.to ? [clip] : [];
  });

/** Spans in order, those that touch or overlap made one. */
function joined(spans: readonly MinuteSpan[]): MinuteSpan[] {
  const out: { from: number; to: number }[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const before = out.at(-1);
    if (before && span.from <= before.to) before.to = Math.max(before.to, span.to);
    else out.push({ ...span });
  }
  return out;
}
