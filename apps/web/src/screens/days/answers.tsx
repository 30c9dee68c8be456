/** The three answers on the day: done, took longer, rain. Each is written to the book; the rest is planned again from now. */
import { useState } from 'react';
import { localAt } from '#units';
import { askOfBook } from '../../parts/ask-of-book.ts';
import { Refused } from '../../parts/field.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { minutesInWords } from '../../parts/in-words.ts';
import { readFigure } from '../../parts/read-form.ts';
import { NumberField } from '../../parts/text-fields.tsx';
import { useRun } from '../../parts/use-run.ts';
import { expectedUse, type UsedDraft, UsedStores, usedOf } from '../work/used-stores.tsx';
import type { InHandProps, Item } from './in-hand.ts';
import { atOf, clockAt, dayAt, minuteOf } from './place-time.ts';
import { sameWeather, type WeatherEntries } from './weather-known.ts';

type PanelProps = InHandProps & { readonly onClose: () => void };

const spentLimits = { min: 1, max: 1440, unit: 'min', whole: true } as const;

/** Done: a step is ticked with the minutes it really took, a set-up change sets how she stands. */
export function DonePanel({ item, book, problem, onClose }: PanelProps) {
  const since = minuteOf(problem, Date.now()) - item.planned.start;
  const planned = item.planned.finish - item.planned.start;
  const begun = item.kind === 'step' && item.step.progress.kind === 'under way';
  const [spent, setSpent] = useState(
    String(begun || (since > 0 && since < 3 * planned) ? Math.max(1, since) : planned),
  );
  const record = item.kind === 'step' ? book.steps[item.step.id] : undefined;
  const [used, setUsed] = useState<UsedDraft>(() => (record === undefined ? {} : expectedUse(book, record)));
  const [unread, setUnread] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState<string | null>(null);
  const { run, refusal } = useRun();
  const keep = async () => {
    if (item.kind === 'change') {
      const outcome = await run('setUpStands', { setUp: item.planned.aspect, state: item.planned.to });
      if (outcome.kind === 'done') onClose();
      return;
    }
    const read = readFigure(spent, spentLimits);
    setRefused(read.kind === 'refused' ? read.why : null);
    const taken = usedOf(book, used);
    setUnread(taken.faults);
    if (read.kind === 'refused' || Object.keys(taken.faults).length > 0) return;
    const finished = new Date();
    const outcome = await run('tickStep', {
      id: item.planned.step,
      ...(begun ? {} : { started: new Date(finished.getTime() - read.value * 60_000).toISOString() }),
      finished: finished.toISOString(),
      spent_min: read.value,
      used: taken.used,
    });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <div className="days-panel" data-asks="">
      {item.kind === 'step' ? (
        <NumberField
          label="Minutes really spent"
          unit="min"
          whole
          note={
            begun
              ? `since ${clockAt(problem, item.planned.start)}`
              : 'as planned, or since it was due; change it if it was otherwise'
          }
          value={spent}
          onChange={setSpent}
          refused={refused}
        />
      ) : (
        <p>She then stands so in the book, and the rest is planned from that.</p>
      )}
      {record && <UsedStores book={book} step={record} draft={used} faults={unread} onChange={setUsed} />}
      <RefusalLine refusal={refusal} />
      <button type="button" className="main" onClick={(event) => void askOfBook(event.currentTarget, keep)}>
        {item.kind === 'step' ? 'Tick it, plan the rest' : 'It is done, plan the rest'}
      </button>
    </div>
  );
}

/** Took longer: how many minutes more from now; the step keeps its hands until then. */
export function LongerPanel({
  item,
  problem,
  now,
  onClose,
}: PanelProps & { readonly item: Extract<Item, { kind: 'step' }> }) {
  const [more, setMore] = useState('');
  const [refused, setRefused] = useState<string | null>(null);
  const { run, refusal } = useRun();
  const keep = async (text: string) => {
    const read = readFigure(text, spentLimits);
    setRefused(read.kind === 'refused' ? read.why : null);
    if (read.kind === 'refused') return;
    const expected = new Date(Date.now() + read.value * 60_000).toISOString();
    const outcome =
      item.step.progress.kind === 'under way'
        ? await run('stepTookLonger', { id: item.planned.step, expected })
        : await run('startStep', {
            id: item.planned.step,
            started: atOf(problem, Math.min(item.planned.start, now)),
            expected,
            hands: item.planned.hands,
          });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <div className="days-panel" data-asks="">
      <fieldset className="days-chips">
        <legend>How much more, from now?</legend>
        {[10, 20, 30, 45, 60, 90].map((minutes) => (
          <button
            key={minutes}
            type="button"
            onClick={(event) => void askOfBook(event.currentTarget, () => keep(String(minutes)))}
          >
            {minutesInWords(minutes)}
          </button>
        ))}
      </fieldset>
      <NumberField label="Or" unit="min" whole value={more} onChange={setMore} refused={refused} />
      <RefusalLine refusal={refusal} />
      <button type="button" onClick={(event) => void askOfBook(event.currentTarget, () => keep(more))}>
        Plan the rest
      </button>
    </div>
  );
}

/** Rain, or dry again: from this hour until a chosen one; wind, warmth and humidity stay as they were expected. */
export function SkyPanel({ problem, book, now, rain, onClose }: PanelProps & { readonly rain: boolean }) {
  const [refused, setRefused] = useState<string | null>(null);
  const { run, refusal } = useRun();
  const thisHour = Math.floor(now / 60);
  const today = dayAt(problem, now);
  // whole hours ahead to an hour past the job day, and the end of the day
  const ends: number[] = [];
  const jobDay = problem.days.find((day) => day.to > now && dayAt(problem, day.from) === today);
  for (let hour = thisHour + 1; hour <= thisHour + 24; hour++) {
    const over = dayAt(problem, hour * 60) !== today;
    if (over || jobDay === undefined || hour * 60 <= jobDay.to + 60) ends.push(hour * 60);
    if (over) break;
  }
  const place = placeOf({ problem, book, now });
  const keep = async (until: number) => {
    if (place === null) {
      setRefused('No job day is near, so there is no place to enter it for. Enter it on the job day.');
      return;
    }
    const outcome = await run('enterWeather', { entries: skyEntries({ problem, place, thisHour, until, rain }) });
    if (outcome.kind === 'done') onClose();
  };
  return (
    <div className="days-panel" data-asks="">
      <fieldset className="days-chips">
        <legend>{rain ? 'Rain until' : 'Dry until'}</legend>
        {ends.map((minute, i) => (
          <button
            key={minute}
            type="button"
            onClick={(event) => void askOfBook(event.currentTarget, () => keep(minute))}
          >
            {i === ends.length - 1 ? 'the end of the day' : clockAt(problem, minute)}
          </button>
        ))}
      </fieldset>
      <p className="small soft">Wind, warmth and humidity of these hours stay as they were expected.</p>
      <Refused text={refused} />
      <RefusalLine refusal={refusal} />
    </div>
  );
}

function placeOf({ problem, book, now }: Pick<InHandProps, 'problem' | 'book' | 'now'>): string | null {
  const day = problem.days.find((d) => d.to > now) ?? problem.days.at(-1);
  return (day && book.jobDays[day.id]?.place) ?? null;
}

function skyEntries({
  problem,
  place,
  thisHour,
  until,
  rain,
}: {
  readonly problem: InHandProps['problem'];
  readonly place: string;
  readonly thisHour: number;
  readonly until: number;
  readonly rain: boolean;
}): WeatherEntries {
  const entries: WeatherEntries[number][] = [];
  for (let i = thisHour; i * 60 < until; i++) {
    const hour = problem.hours[i];
    if (!hour) break;
    const { day, minuteOfDay } = localAt(Date.parse(problem.startsAt) + i * 3_600_000, problem.timeZone);
    const from = Math.floor(minuteOfDay / 60);
    const entry = {
      place,
      date: day,
      fromHour: from,
      toHour: from + 1,
      rain,
      rainOdds_pct: null,
      wind_kn: hour.wind_kn,
      air_C: hour.air_C,
      surface_C: hour.surface_C,
      humidity_pct: hour.humidity_pct,
      basis: 'typed' as const,
    };
    const last = entries.at(-1);
    if (
      last &&
      last.date === day &&
      last.toHour === from &&
      last.surface_C === entry.surface_C &&
      sameWeather(last, entry)
    )
      entries[entries.length - 1] = { ...last, toHour: from + 1 };
    else entries.push(entry);
  }
  return entries;
}
