/**
 * The standing window: with no job day booked, the next hours in the weather known that would suit a job. The job is
 * planned by itself, with the jobs it comes after, over all the hours in which it could be worked on, by the planner
 * itself, so that what is said here is what the planner would do with those hours.
 */
import type { At, Book, Day, Id, JobDay } from '#boat-book';
import { dewMargin_C } from '#sky';
import { addDays, clockOfMinute, instantAt, localAt, minuteOfClock } from '#units';
import {
  checkProblem,
  type MinuteSpan,
  type Obstacle,
  type Outcome,
  type Plan,
  type Problem,
  startSearch,
} from '#workplan';
import { jobWeight } from './job-weight.ts';
import { storeOfLine } from './plan-stores.ts';
import { problemFrom } from './problem-from.ts';
import { liesAt, type WillingHours, weatherKnownTo, windowDays } from './window-hours.ts';

export interface WindowAsk {
  readonly now: At;
  /** where she would lie; null: where the book tells she lies */
  readonly place: Id | null;
  readonly willing: WillingHours;
}

interface AboutJob {
  readonly job: Id;
  readonly title: string;
  readonly weight: number;
}

export interface FoundWindow extends AboutJob {
  readonly kind: 'window';
  readonly problem: Problem;
  readonly plan: Plan;
  /** titles of the jobs it comes after, which are done in these hours first */
  readonly with: readonly string[];
  /** the spans the weather must suit, in order, at least one: one a day; of all the work where it asks for no weather */
  readonly spans: readonly WindowSpan[];
  /** true: it asks nothing of the weather */
  readonly anyWeather: boolean;
  /** steps and set-up changes that are over before the first span, in order: what to prepare */
  readonly before: readonly { readonly kind: 'step' | 'change'; readonly id: Id; readonly span: MinuteSpan }[];
  /** what is not on hand yet and must be got before: planned behind its delivery, or as if ordered today */
  readonly toGet: readonly {
    readonly store: Id;
    readonly name: string;
    readonly from: number;
    readonly ordered: boolean;
  }[];
  /** times at which a second hand must be there; empty: it can be done alone */
  readonly notAlone: readonly MinuteSpan[];
  /** hands needed at once beside the keeper. 0: none */
  readonly helpers: number;
  /** when the last of its waits is over, or the work where it has none */
  readonly over: number;
  /** a wait runs through hours with no weather known, taken as wet and cool */
  readonly waitAssumed: boolean;
  /** a wait meets hours below the least temperature of its product */
  readonly tooCold: boolean;
  /** its own date, or its outing's, where it is over only after it */
  readonly pastDate: Day | null;
  /** the job days that would hold it, to be booked */
  readonly days: readonly JobDay[];
}

/** Working hours on one day that must suit. */
export interface WindowSpan extends MinuteSpan {
  /** the steps in it that ask something of the weather */
  readonly steps: readonly Id[];
  /** it must stay dry until then: the end of the work, or of a wait that must stay dry */
  readonly dryTo: number | null;
  /** air over the span. [°C] */
  readonly air_C: { readonly least: number; readonly most: number };
  /** least margin of the surface over the dew point in the span. [°C] */
  readonly dewMargin_C: number;
}

export type StandingWindow =
  | FoundWindow
  | (AboutJob & {
      readonly kind: 'none';
      /** the hours looked through; null where no weather is known at all */
      readonly knownTo: { readonly day: Day; readonly hour: number } | null;
      readonly problem: Problem | null;
      readonly because: readonly Obstacle[];
    })
  /** it asks nothing of the weather and none is known: any hours do */
  | (AboutJob & { readonly kind: 'any hours'; readonly minutes: number })
  /** it has no steps, or comes after a job that has none */
  | (AboutJob & { readonly kind: 'cannot be planned'; readonly words: string });

/** so many tries settle where a single job goes; most end long before, proved */
const tries = 120;
const seed = 1;

/** Open jobs that have a step to do, the heaviest first: the order in which windows are shown. */
export function jobsByWeight(book: Book, today: Day): Id[] {
  const withWork = new Set(
    Object.values(book.steps).flatMap((step) => (step.progress.kind === 'done' ? [] : [step.job])),
  );
  return Object.entries(book.jobs)
    .filter(([id, job]) => job.state === 'open' && withWork.has(id))
    .map(([id, job]) => ({ id, job, weight: jobWeight(job, book.weights, today) }))
    .sort((a, b) => b.weight - a.weight || (a.job.title < b.job.title ? -1 : 1))
    .map(({ id }) => id);
}

/**
 * The next hours that would suit a job, what to prepare before, or why there are none.
 *
 * The keeper is taken to be alone; only where the job cannot be done so is a second hand (or as many as a step takes)
 * counted on, and said. Hours without weather are not worked in; waits may run through them, as wet and cool.
 *
 * @throws RangeError  where the book has no such open job, no place, or cannot be read
 */
export function standingWindow(book: Book, id: Id, ask: WindowAsk): StandingWindow {
  const job = book.jobs[id];
  if (job?.state !== 'open') throw new RangeError(`there is no open job '${id}' in the book`);
  const now = Date.parse(ask.now);
  const place = ask.place ?? liesAt(book, now);
  if (place === null || book.places[place] === undefined) throw new RangeError('the book has no place where she lies');
  const zone = book.places[place].timeZone;
  const today = localAt(now, zone).day;
  const about: AboutJob = { job: id, title: job.title, weight: jobWeight(job, book.weights, today) };

  const unit = withJobsBefore(book, id);
  const bookWith = (helpers: number) =>
    bookOf(book, unit, windowDays(book, { now, freeAt: freeAt(book, now), place, willing: ask.willing, helpers }), now);
  const alone = bookWith(0);
  const knownTo = weatherKnownTo(book, place, today);
  if (Object.keys(alone.jobDays).every((day) => book.jobDays[day] !== undefined)) {
    const work = openSteps(book, unit);
    return knownTo === null && !work.some(asksWeather)
      ? { kind: 'any hours', ...about, minutes: work.reduce((sum, step) => sum + step.minutes.likely, 0) }
      : { kind: 'none', ...about, knownTo, problem: null, because: [] };
  }
  const first = planned(alone, ask.now);
  if (first.kind === 'words') return { kind: 'cannot be planned', ...about, words: first.words };
  if (!isIn(first, id)) {
    const helpers = helpersNeeded(book, unit, first.problem);
    const together = helpers === 0 ? first : planned(bookWith(helpers), ask.now);
    if (together.kind === 'planned' && isIn(together, id))
      return found(book, about, unit, together, { now: ask.now, helpers });
    const { outcome, problem } = together.kind === 'planned' ? together : first;
    const own = outcome.obstacles.filter(
      (obstacle) => obstacle.job === id && obstacle.kind !== 'waits for a job left out',
    );
    return { kind: 'none', ...about, knownTo, problem, because: own.length > 0 ? own : outcome.obstacles };
  }
  return found(book, about, unit, first, { now: ask.now, helpers: 0 });
}

interface Planned {
  readonly kind: 'planned';
  /** the book with the jobs and days that could be */
  readonly book: Book;
  readonly problem: Problem;
  readonly outcome: Outcome;
}

function planned(book: Book, now: At): Planned | { readonly kind: 'words'; readonly words: string } {
  const matter = problemFrom(book, { now });
  if (matter.kind === 'nothing to plan')
    return { kind: 'words', words: [...matter.notes.map((note) => note.words), matter.words][0]! };
  const checked = checkProblem(matter.problem);
  if (checked.kind === 'refused') {
    const { where, wrong, right } = checked.faults[0]!;
    throw new RangeError(`${where}: ${wrong}; right would be ${right}`);
  }
  const search = startSearch(checked.problem, { seed });
  for (let n = 0; n < tries; n++) if (search.advance(1).finished) break;
  return { kind: 'planned', book, problem: checked.problem, outcome: search.outcome() };
}

function isIn({ problem, outcome }: Planned, job: Id): boolean {
  return problem.jobs.some(({ id }) => id === job) && !outcome.plan.leftOut.includes(job);
}

/** A job with the open jobs that must be done before it, by its own word or a step's. */
function withJobsBefore(book: Book, id: Id): ReadonlySet<Id> {
  const unit = new Set<Id>();
  const take = (job: Id) => {
    if (unit.has(job) || book.jobs[job]?.state !== 'open') return;
    unit.add(job);
    for (const other of book.jobs[job].afterJobs) take(other);
    for (const step of Object.values(book.steps))
      if (step.job === job) for (const follow of step.follows ?? []) take(book.steps[follow.step]?.job ?? '');
  };
  take(id);
  return unit;
}

const openSteps = (book: Book, unit: ReadonlySet<Id>) =>
  Object.values(book.steps).filter((step) => unit.has(step.job) && step.progress.kind !== 'done');

/** The end of what the keeper has in hand; `now` where that is nothing. */
function freeAt(book: Book, now: number): number {
  return Math.max(
    now,
    ...Object.values(book.steps).flatMap(({ progress, job }) =>
      progress.kind === 'under way' && book.jobs[job]?.state === 'open' ? [Date.parse(progress.expected)] : [],
    ),
  );
}

/**
 * The book with only these jobs to do, free of dates and of days they are held to, and only these job days ahead.
 * Other jobs count as closed, so that what cures of them is still kept to; days gone by say where she lay.
 */
function bookOf(book: Book, unit: ReadonlySet<Id>, days: ReadonlyMap<Id, JobDay>, now: number): Book {
  const past = Object.entries(book.jobDays).filter(([, day]) => {
    const place = book.places[day.place];
    return place !== undefined && instantAt(addDays(day.date, 1), '00:00', place.timeZone) <= now;
  });
  return {
    ...book,
    jobs: Object.fromEntries(
      Object.entries(book.jobs).map(([id, job]) => [
        id,
        unit.has(id)
          ? { ...job, due: null, outing: null, heldTo: null, heldAt: null }
          : job.state === 'open'
            ? { ...job, state: 'done' as const }
            : job,
      ]),
    ),
    jobDays: Object.fromEntries([...past, ...days]),
    plans: {},
  };
}

/** Hands beside the keeper that the steps and the set-up changes they may need take at the most. */
function helpersNeeded(book: Book, unit: ReadonlySet<Id>, problem: Problem): number {
  const steps = openSteps(book, unit).map((step) => Math.max(step.hands - 1, step.notAlone ? 1 : 0));
  const changes = problem.aspects.flatMap(({ changes }) => changes.map(({ hands }) => hands - 1));
  return Math.max(0, ...steps, ...changes);
}

function asksWeather(step: { readonly needs: object; readonly waits: readonly { readonly needs: object }[] }): boolean {
  return Object.keys(step.needs).length > 0 || step.waits.some((wait) => Object.keys(wait.needs).length > 0);
}

function found(
  book: Book,
  about: AboutJob,
  unit: ReadonlySet<Id>,
  planOf: Planned,
  { now, helpers }: { readonly now: At; readonly helpers: number },
): FoundWindow {
  const {
    problem,
    outcome: { plan },
  } = planOf;
  const byId = new Map(problem.steps.map((step) => [step.id, step]));
  const work = plan.steps.filter(({ day }) => day !== null).sort((a, b) => a.start - b.start);
  const asking = work.filter(({ step }) => asksWeather(byId.get(step)!));
  const anyWeather = asking.length === 0;
  const spans = spansByDay(anyWeather ? work : asking, problem, plan);
  const begins = spans[0]!.from;
  const own = new Set(work.map(({ step }) => step));
  const waits = plan.waits.filter(({ step }) => own.has(step));
  const over = Math.max(...work.map(({ finish }) => finish), ...waits.map(({ finish }) => finish));
  const before = [
    ...work.map(({ step, start, finish }) => ({ kind: 'step' as const, id: step, span: { from: start, to: finish } })),
    ...plan.changes.map(({ aspect, start, finish }) => ({
      kind: 'change' as const,
      id: aspect,
      span: { from: start, to: finish },
    })),
  ]
    .filter(({ span }) => span.to <= begins)
    .sort((a, b) => a.span.from - b.span.from);
  const stores = new Set(work.flatMap(({ step }) => byId.get(step)!.stores));
  const keeper = problem.hands[0]!.id;
  const together = [...work, ...plan.changes].filter(
    (piece) =>
      piece.hands.some((hand) => hand !== keeper) || ('step' in piece && byId.get(piece.step)!.notAlone === true),
  );
  return {
    kind: 'window',
    ...about,
    problem,
    plan,
    with: [...unit].filter((id) => id !== about.job).map((id) => book.jobs[id]!.title),
    spans,
    anyWeather,
    before,
    toGet: problem.stores.flatMap(({ id: line, name, from }) => {
      const id = storeOfLine(line, book);
      return stores.has(line) && from !== null && from > problem.now
        ? [{ store: id, name, from, ordered: book.stores[id]?.expected != null }]
        : [];
    }),
    notAlone:
      helpers === 0
        ? []
        : together.map(({ start, finish }) => ({ from: start, to: finish })).sort((a, b) => a.from - b.from),
    helpers,
    over,
    waitAssumed: waits.some(({ start, finish }) => isAssumed(problem, start, finish)),
    tooCold: waits.some(({ tooCold }) => tooCold),
    pastDate: pastDate(book, about.job, problem, over),
    days: daysToBook(planOf, now, about.job),
  };
}

/** The work asked about, a span a job day: from its first minute to its last. */
function spansByDay(work: Plan['steps'], problem: Problem, plan: Plan): WindowSpan[] {
  const byDay = new Map<string, Plan['steps'][number][]>();
  for (const piece of work) byDay.set(piece.day!, [...(byDay.get(piece.day!) ?? []), piece]);
  return [...byDay.values()].map((pieces) => {
    const from = Math.min(...pieces.map(({ start }) => start));
    const to = Math.max(...pieces.map(({ finish }) => finish));
    const steps = pieces.map(({ step }) => step);
    const dry = pieces.flatMap(({ step, finish }) => {
      const source = problem.steps.find(({ id }) => id === step)!;
      const waits = source.waits.flatMap((wait) =>
        wait.needs.dry
          ? plan.waits.filter((each) => each.step === step && each.wait === wait.id).map((each) => each.finish)
          : [],
      );
      return [...(source.needs.dry ? [finish] : []), ...waits];
    });
    const hours = problem.hours.slice(Math.floor(from / 60), Math.ceil(to / 60));
    return {
      from,
      to,
      steps,
      dryTo: dry.length === 0 ? null : Math.max(...dry),
      air_C: { least: Math.min(...hours.map((h) => h.air_C)), most: Math.max(...hours.map((h) => h.air_C)) },
      dewMargin_C: Math.min(...hours.map((hour) => dewMargin_C(hour))),
    };
  });
}

function isAssumed(problem: Problem, from: number, to: number): boolean {
  return problem.hours.slice(Math.floor(from / 60), Math.ceil(to / 60)).some((hour) => hour.basis === 'climate');
}

/** The job's own date or its outing's, whichever is first, where the job is over only after it. */
function pastDate(book: Book, id: Id, problem: Problem, over: number): Day | null {
  const job = book.jobs[id]!;
  const outing = job.outing === null ? undefined : book.outings[job.outing]?.date;
  const ends = localAt(Date.parse(problem.startsAt) + (over - 1) * 60_000, problem.timeZone).day;
  const late = [
    job.due !== null && ends > job.due ? job.due : null,
    outing !== undefined && ends >= outing ? outing : null,
  ];
  return late.filter((day) => day !== null).sort()[0] ?? null;
}

/**
 * Job days that hold the plan: from setting out for the first piece of work to having cleared up after the last.
 * What is only put back before leaving is planned as late as the day goes; the hours end as soon after the work as
 * leaves time for it, if the planner still gets it all in so, and otherwise with the willing hours.
 */
function daysToBook(planOf: Planned, now: At, job: Id): JobDay[] {
  const { book, problem, outcome } = planOf;
  const local = (minute: number) => localAt(Date.parse(problem.startsAt) + minute * 60_000, problem.timeZone);
  const booked = (soon: boolean) =>
    problem.days.flatMap((day) => {
      const record = book.jobDays[day.id]!;
      const steps = outcome.plan.steps.filter((piece) => piece.day === day.id);
      const changes = outcome.plan.changes.filter((piece) => piece.day === day.id);
      const pieces = [...steps, ...changes];
      if (pieces.length === 0) return [];
      const starts = Math.min(...pieces.map(({ start }) => start));
      const lastStep = Math.max(starts, ...steps.map(({ finish }) => finish));
      const putBack = changes.reduce((sum, { start, finish }) => sum + (start >= lastStep ? finish - start : 0), 0);
      const ends = soon ? lastStep + putBack : Math.max(...pieces.map(({ finish }) => finish));
      const from = Math.floor(local(starts - record.setOut_min).minuteOfDay / round_min) * round_min;
      const to = Math.ceil(local(ends + record.clearUp_min).minuteOfDay / round_min) * round_min;
      const hours = {
        from: later(record.from, clockOfMinute(from)),
        to: to >= minuteOfClock(record.to) || to === 0 ? record.to : clockOfMinute(to),
      };
      return [{ ...record, ...hours, hands: record.hands.map((hand) => ({ ...hand, ...hours })) }];
    });
  const tight = booked(true);
  const loose = booked(false);
  if (tight.every(({ to }, n) => to === loose[n]!.to)) return loose;
  const past = Object.entries(book.jobDays).filter(([id]) => !problem.days.some((day) => day.id === id));
  const jobDays = Object.fromEntries([...past, ...tight.map((day) => [`${day.date} ${day.from}`, day] as const)]);
  const again = planned({ ...book, jobDays }, now);
  return again.kind === 'planned' && isIn(again, job) ? tight : loose;
}

/** booked hours begin and end on clock times the keeper would say. [min] */
const round_min = 5;

const later = (a: string, b: string): string => (a > b ? a : b);
