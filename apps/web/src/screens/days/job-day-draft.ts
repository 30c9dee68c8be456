/** A job day while it is filled in, and what it stands for once it can be read. */
import type { Book, Id, JobDay } from '#boat-book';
import { minuteOfClock } from '#units';
import { type Faults, formReading } from '../../parts/read-form.ts';

export interface JobDayDraft {
  readonly date: string;
  readonly from: string;
  readonly to: string;
  readonly place: Id | '';
  readonly setOut: string;
  readonly clearUp: string;
  readonly breaks: readonly { readonly key: string; readonly from: string; readonly minutes: string }[];
  readonly hands: readonly {
    readonly key: string;
    readonly name: string;
    readonly from: string;
    readonly to: string;
  }[];
  readonly endsIn: Readonly<Record<Id, Id | ''>>;
}

/** The day as it is; for a new one the hours and place of the last one added, to be changed, and no date. */
export function draftOf(book: Book, id: Id | null): JobDayDraft {
  const last = Object.values(book.jobDays)
    .sort((a, b) => a.date.localeCompare(b.date))
    .at(-1);
  const day = id === null ? last : book.jobDays[id];
  const places = Object.keys(book.places);
  const onlyPlace = places.length === 1 ? places[0]! : '';
  const key = () => crypto.randomUUID();
  return {
    date: id === null ? '' : (day?.date ?? ''),
    from: day?.from ?? '',
    to: day?.to ?? '',
    place: day?.place ?? onlyPlace,
    setOut: day ? String(day.setOut_min) : '',
    clearUp: day ? String(day.clearUp_min) : '',
    breaks: (day?.breaks ?? []).map((b) => ({ key: key(), from: b.from, minutes: String(b.minutes) })),
    hands: id === null ? [] : (day?.hands ?? []).map((h) => ({ key: h.id, name: h.name, from: h.from, to: h.to })),
    endsIn: Object.fromEntries((day?.endsIn ?? []).map(({ setUp, state }) => [setUp, state])),
  };
}

/** The day a form stands for, or what is wrong with it, by field. */
export function readDay(
  draft: JobDayDraft,
  book: Book,
): { readonly day: JobDay | null; readonly faults: Faults<string> } {
  const form = formReading<string>();
  const minutes = { min: 0, max: 600, unit: 'min', whole: true };
  const day: JobDay = {
    date: form.day('date', draft.date),
    from: form.clock('from', draft.from),
    to: form.clock('to', draft.to),
    place: form.chosen('place', draft.place, 'Choose where she lies that day, or add the place.'),
    setOut_min: form.figure('setOut', draft.setOut, minutes),
    clearUp_min: form.figure('clearUp', draft.clearUp, minutes),
    hands: draft.hands.map((hand) => ({
      id: hand.key,
      name: form.words(`hand-${hand.key}`, hand.name, 'Say who it is.'),
      from: form.clock(`hand-from-${hand.key}`, hand.from),
      to: form.clock(`hand-to-${hand.key}`, hand.to),
    })),
    breaks: draft.breaks
      .map((each) => ({
        from: form.clock(`break-from-${each.key}`, each.from),
        minutes: form.figure(`break-${each.key}`, each.minutes, { ...minutes, min: 1 }),
      }))
      .sort((a, b) => a.from.localeCompare(b.from)),
    endsIn: Object.entries(draft.endsIn).flatMap(([setUp, state]) =>
      state !== '' && book.setUps[setUp] ? [{ setUp, state }] : [],
    ),
  };
  if (form.sound()) refuseHoursThatCannotBe(day, draft, form.refuse);
  return { day: form.sound() ? day : null, faults: form.faults };
}

function refuseHoursThatCannotBe(day: JobDay, draft: JobDayDraft, refuse: (field: string, why: string) => void): void {
  const from = minuteOfClock(day.from);
  const to = minuteOfClock(day.to);
  if (to <= from) {
    refuse('to', `${day.to} is not after ${day.from}. A job day ends on the day it begins.`);
    return;
  }
  if (day.setOut_min + day.clearUp_min >= to - from)
    refuse(
      'clearUp',
      `Setting out and clearing up take ${day.setOut_min + day.clearUp_min} min of a day of ${to - from}. Leave time for work.`,
    );
  for (const hand of draft.hands)
    if (hand.to <= hand.from) refuse(`hand-to-${hand.key}`, `${hand.to} is not after ${hand.from}.`);
  for (const each of draft.breaks) {
    const start = minuteOfClock(each.from);
    if (start < from || start + Number(each.minutes) > to)
      refuse(`break-from-${each.key}`, `The break is not within ${day.from} to ${day.to}.`);
  }
}
