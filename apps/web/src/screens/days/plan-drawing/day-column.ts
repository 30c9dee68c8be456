/** Where everything of one job day stands in its column of the drawing. Pure: sizes in, places out. All in px. */
import type { Book, Consequence, Id } from '#boat-book';
import { changeInWords } from '#reckoning';
import type { Minute, Plan, PlannedChange, PlannedStep, Problem, ProblemDay, ProblemStep } from '#workplan';
import { capital, minutesInWords } from '../../../parts/in-words.ts';
import { clockAt, dayAt, minuteOf, weekdayInWords } from '../place-time.ts';
import { insetsOf, nameLine, nameSize, noteLine, noteSize, padding } from './block-size.ts';
import { boxOf, handsOf, type Lane, laneSpans, needsNobody, presence } from './day-lanes.ts';
import { type DayScale, dayScale } from './day-scale.ts';
import { type HourMark, hourBands, hourMarks, hourMinutes, nightBands } from './day-sky.ts';
import { type SetUpStretch, setUpStretches } from './set-up-lines.ts';
import { lineCount, type Measure } from './text-size.ts';
import { placeWaits, type WaitBar, waitsWidth } from './wait-bars.ts';

const stripWidth = 16;
const hoursLeft = 20;
const setUpPitch = 19;

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Block extends Box {
  readonly key: string;
  readonly from: Minute;
  readonly to: Minute;
  readonly what:
    | { readonly kind: 'step'; readonly planned: PlannedStep; readonly step: ProblemStep }
    | { readonly kind: 'change'; readonly planned: PlannedChange }
    /** done, and nothing of the plan hangs on it any more: shown as it is in the book */
    | { readonly kind: 'past'; readonly step: Id; readonly job: Id };
  readonly name: string;
  /** time, minutes and the job, in the lines there is room for */
  readonly note: string;
  /** the note stands on the line of the name, for want of one of its own */
  readonly beside: boolean;
  readonly consequence: Consequence | null;
  readonly state: 'open' | 'under way' | 'done';
  /** the keeper holds it where it is */
  readonly held: boolean;
  /** where it stood before it moved, `11:10` or `Saturday 11:10`; null: it has not */
  readonly moved: string | null;
}

export interface Quiet extends Box {
  readonly name: string;
}

export interface SetUpLine {
  readonly stretch: SetUpStretch;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly dot: boolean;
  readonly ring: boolean;
  readonly arrow: boolean;
  readonly nameTop: number;
}

export interface DayColumn {
  readonly day: ProblemDay;
  readonly from: Minute;
  readonly to: Minute;
  readonly width: number;
  readonly scale: DayScale;
  readonly lanes: readonly Lane[];
  readonly lanesLeft: number;
  readonly lanesWidth: number;
  readonly blocks: readonly Block[];
  readonly quiet: readonly Quiet[];
  readonly setUps: readonly SetUpLine[];
  readonly waits: readonly WaitBar[];
  readonly waitsLeft: number;
  readonly hours: readonly HourMark[];
  readonly rain: readonly { readonly top: number; readonly height: number }[];
  readonly unknown: readonly { readonly top: number; readonly height: number }[];
  readonly night: readonly { readonly top: number; readonly height: number; readonly name: string | null }[];
  /** where now is, if it is in this day */
  readonly nowAt: number | null;
}

export interface ColumnRequest {
  readonly problem: Problem;
  readonly plan: Plan;
  readonly book: Pick<Book, 'jobs' | 'steps'>;
  readonly day: ProblemDay;
  readonly width: number;
  readonly measure: Measure;
  readonly now: Minute | null;
  /** by step: where it stood before it moved */
  readonly movedFrom?: ReadonlyMap<string, Minute>;
  /** where no step asks for more; by the shortest step where it is left out */
  readonly pxPerMinute?: number | undefined;
}

/** Steps and changes of a job day in order of time, those that were done or are under way at its hours among them. */
export function workOfDay(problem: Problem, plan: Plan, day: ProblemDay) {
  const steps = plan.steps.filter((s) => s.start < day.to && s.finish > day.from - 1 && s.start >= day.from - 12 * 60);
  const mine = steps.filter((s) => s.day === day.id || (s.day === null && inDay(problem, day, s)));
  const changes = plan.changes.filter((c) => c.day === day.id);
  return { steps: mine, changes };
}

/** Steps ticked on this day that the plan has no more to do with. */
function pastSteps(problem: Problem, plan: Plan, book: Pick<Book, 'steps'>, day: ProblemDay) {
  const known = new Set(plan.steps.map((s) => s.step));
  return Object.entries(book.steps).flatMap(([id, { progress }]) => {
    if (progress.kind !== 'done' || known.has(id)) return [];
    const start = minuteOf(problem, Date.parse(progress.started));
    const finish = minuteOf(problem, Date.parse(progress.finished));
    return start < day.to && finish > day.from ? [{ id, start: Math.max(start, day.from - 60), finish }] : [];
  });
}

function inDay(problem: Problem, day: ProblemDay, step: PlannedStep): boolean {
  // a step done before the day's hours belongs to the day it was finished in
  const nearest = problem.days.find((d) => step.start < d.to && step.finish > d.from);
  return nearest?.id === day.id;
}

const noMoves: ReadonlyMap<string, Minute> = new Map();
/** the pin beside a name. [px] */
const pin = 14;

export function dayColumn({
  problem,
  plan,
  book,
  day,
  width,
  measure,
  now,
  movedFrom = noMoves,
  pxPerMinute: asked,
}: ColumnRequest): DayColumn {
  const { steps, changes } = workOfDay(problem, plan, day);
  const past = pastSteps(problem, plan, book, day);
  const all = [...steps, ...changes, ...past];
  const from = Math.min(day.from, ...all.map((w) => w.start));
  const to = Math.max(day.to, ...all.map((w) => w.finish));

  const setUps = setUpStretches(problem, plan).filter((s) => !s.resting && s.from < to && s.to > from);
  const aspects = [...new Set(setUps.map((s) => s.aspect))];
  const lanesLeft = hoursLeft + 42 + aspects.length * setUpPitch;

  // the lanes' width hangs on the waits beside them, whose names hang on the height: take the plain height first
  const pxPerMinute = asked ?? plainScale(all);
  const waitRequest = { problem, plan, from, to, measure };
  const handsHere = problem.hands.slice(1).filter((h) => presence(problem, h.id, day.from, day.to).length > 0).length;
  const roomForWaits = Math.max(0, width - lanesLeft - 140 - 60 * handsHere);
  const reserved = waitsWidth({ ...waitRequest, scale: plain(from, to, pxPerMinute), room: roomForWaits });
  const lanesWidth = width - lanesLeft - reserved;
  const spans = laneSpans(problem, day, steps, lanesWidth, lanesLeft, measure);

  const drafts: Draft[] = [];
  for (const planned of steps) {
    const step = problem.steps.find((s) => s.id === planned.step);
    if (!step) continue;
    const job = book.jobs[step.job];
    const consequence = job?.consequence ?? null;
    const box = boxOf(spans, handsOf(problem, planned), needsNobody(problem, planned));
    const marked = consequence === 'danger' ? 16 : 0;
    const ticked = (step.progress.kind === 'done' ? 16 : 0) + (step.held === null ? 0 : pin);
    const was = movedFrom.get(step.id);
    drafts.push({
      key: planned.step,
      from: planned.start,
      to: planned.finish,
      what: { kind: 'step', planned, step },
      name: step.title,
      job: job && job.title !== step.title ? job.title : null,
      consequence,
      state: step.progress.kind,
      held: step.held !== null,
      moved: was === undefined ? null : stoodAt(problem, was, planned.start),
      ...box,
      nameLines: lineCount(step.title, nameSize, box.width - insetsOf(box.width) - marked - ticked, measure),
    });
  }
  for (const planned of changes) {
    const name = capital(changeInWords(planned, problem));
    const box = boxOf(spans, planned.hands, false);
    drafts.push({
      key: `${planned.aspect}-${planned.start}`,
      from: planned.start,
      to: planned.finish,
      what: { kind: 'change', planned },
      name,
      job: null,
      consequence: null,
      state: 'open',
      held: false,
      moved: null,
      ...box,
      nameLines: lineCount(name, nameSize, box.width - insetsOf(box.width), measure),
    });
  }
  for (const { id, start, finish } of past) {
    const step = book.steps[id]!;
    const job = book.jobs[step.job];
    const box = boxOf(spans, step.keeper ? [spans[0]!.id] : spans.slice(1).map((s) => s.id), false);
    drafts.push({
      key: id,
      from: start,
      to: finish,
      what: { kind: 'past', step: id, job: step.job },
      name: step.title,
      job: job && job.title !== step.title ? job.title : null,
      consequence: job?.consequence ?? null,
      state: 'done',
      held: false,
      moved: null,
      ...box,
      nameLines: lineCount(
        step.title,
        nameSize,
        box.width - insetsOf(box.width) - 16 - (job?.consequence === 'danger' ? 16 : 0),
        measure,
      ),
    });
  }
  drafts.sort((a, b) => a.from - b.from || a.left - b.left);

  const quietSpans = [
    { name: 'set out', from: day.from, to: day.from + day.setOut_min, least_px: 18 },
    ...day.breaks.map((b) => ({ name: 'break', from: b.from, to: b.to, least_px: 18 })),
    { name: 'clear up', from: day.to - day.clearUp_min, to: day.to, least_px: 18 },
  ].filter((q) => q.to > q.from);

  const marks = hourMinutes(problem, from, to);
  const scale = dayScale({
    from,
    to,
    pxPerMinute,
    marks,
    stretches: [
      ...drafts.map((d) => ({
        from: d.from,
        to: Math.max(d.to, d.from + 1),
        least_px: d.nameLines * nameLine + padding,
      })),
      ...quietSpans,
    ],
  });

  const blocks = drafts.map((d): Block => {
    const top = scale.y(d.from);
    const height = scale.y(Math.max(d.to, d.from + 1)) - top - 1;
    const time = `${clockAt(problem, d.from)}, ${minutesInWords(d.to - d.from).replaceAll(' ', '\u00a0')}`;
    const lines = Math.floor((height - padding - d.nameLines * nameLine) / noteLine);
    const told = [time, ...(d.moved === null ? [] : [`was ${d.moved}`]), ...(d.held ? ['held'] : [])].join(', ');
    const full = d.job ? `${told} · ${d.job}` : told;
    const fits = (text: string) => lineCount(text, noteSize, d.width - insetsOf(d.width), measure) <= lines;
    const marks = (d.consequence === 'danger' ? 16 : 0) + (d.state === 'done' ? 16 : 0) + (d.held ? pin : 0);
    const oneLine = measure(d.name, nameSize) + measure(time, noteSize) + marks + 12 + insetsOf(d.width) <= d.width;
    const beside = !fits(time) && oneLine;
    return {
      key: d.key,
      from: d.from,
      to: d.to,
      what: d.what,
      name: d.name,
      note: fits(full) ? full : fits(told) ? told : fits(time) || beside ? time : '',
      beside,
      consequence: d.consequence,
      state: d.state,
      held: d.held,
      moved: d.moved,
      left: d.left,
      width: d.width,
      top,
      height,
    };
  });

  return {
    day,
    from,
    to,
    width,
    scale,
    lanes: spans.map((s) => ({
      ...s,
      present: presence(problem, s.id, from, to).map((p) => ({
        top: scale.y(p.from),
        height: scale.y(p.to) - scale.y(p.from),
      })),
    })),
    lanesLeft,
    lanesWidth,
    blocks,
    quiet: quietSpans.map((q) => ({
      name: q.name,
      left: lanesLeft,
      width: lanesWidth,
      top: scale.y(q.from),
      height: scale.y(q.to) - scale.y(q.from),
    })),
    setUps: setUps.map((s) => setUpLine(s, aspects.indexOf(s.aspect), scale, from, to, measure)),
    waits: placeWaits({ ...waitRequest, scale, room: roomForWaits }),
    waitsLeft: width - reserved,
    hours: hourMarks(problem, marks, scale),
    rain: hourBands(problem, from, to, scale, (h) => h.rain && !h.sheltered),
    unknown: hourBands(problem, from, to, scale, (h) => h.basis === 'climate'),
    night: nightBands(problem, from, to, scale),
    nowAt: now !== null && now >= from && now <= to ? scale.y(now) : null,
  };
}

interface Draft {
  readonly key: string;
  readonly from: Minute;
  readonly to: Minute;
  readonly what: Block['what'];
  readonly name: string;
  readonly job: string | null;
  readonly consequence: Consequence | null;
  readonly state: Block['state'];
  readonly held: boolean;
  readonly moved: string | null;
  readonly left: number;
  readonly width: number;
  readonly nameLines: number;
}

/** Where a step stood: the clock time, with the day where it was another. */
function stoodAt(problem: Problem, was: Minute, now: Minute): string {
  const day = dayAt(problem, was);
  return day === dayAt(problem, now) ? clockAt(problem, was) : `${weekdayInWords(day)} ${clockAt(problem, was)}`;
}

/** A scale on which the shortest piece of work has a line, within what a page can bear; shorter ones are drawn out. */
function plainScale(work: readonly { start: Minute; finish: Minute }[]): number {
  const shortest = Math.min(60, ...work.map((w) => w.finish - w.start).filter((m) => m > 0));
  return Math.min(Math.max(22 / shortest, 1.5), 1.9);
}

function plain(from: Minute, to: Minute, pxPerMinute: number): DayScale {
  return dayScale({ from, to, pxPerMinute, marks: [], stretches: [] });
}

function setUpLine(
  stretch: SetUpStretch,
  lane: number,
  scale: DayScale,
  from: Minute,
  to: Minute,
  measure: Measure,
): SetUpLine {
  const top = scale.y(stretch.from);
  const bottom = scale.y(stretch.to);
  const dot = stretch.begins && stretch.from >= from;
  const length = measure(stretch.name, noteSize);
  const wanted = top + (dot ? 10 : 6);
  return {
    stretch,
    x: hoursLeft + 36 + lane * setUpPitch + 5,
    top,
    bottom,
    dot,
    ring: stretch.ends && stretch.to <= to,
    arrow: stretch.to > to,
    nameTop: Math.max(0, Math.min(wanted, scale.height - length - 4)),
  };
}

export { hoursLeft, stripWidth };
