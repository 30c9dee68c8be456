/** What is wrong in a book, in plain words: for `fettle check`, and before anything is built on a book from outside. */
import { addDays, daysBetween, minuteOfClock } from '#units';
import { bookSchema } from './book-schema.ts';
import { byOrder, firstRing, waitsOf } from './cycles.ts';
import { danglingPlaces } from './dangling.ts';
import { jobDayFault, weatherFault } from './day-operations.ts';
import { forecastFault } from './forecast-operations.ts';
import type { Refusal } from './operation-fields.ts';
import { asGiven, faultsOf } from './plain-words.ts';
import type { Book, Id, Job, JobDay, Step } from './records.ts';

export type BookFault = Refusal;

/**
 * Everything wrong in a book, at most 50 of each kind; an empty list: it is sound. A book with faults can still be
 * opened if its form is right (faults of form come alone). A jury rig past its trust is not a fault of the book.
 */
export function checkBook(value: unknown): readonly BookFault[] {
  const read = bookSchema.safeParse(value);
  if (!read.success) return faultsOf(read.error.issues, value);
  const book: Book = read.data;
  return [
    ...danglingPlaces(book).map(({ where, names }) => ({
      where,
      wrong: `it names ${names}, which is not in the book`,
      right: 'one that is there, or nothing',
    })),
    ...ringFaults(book),
    ...setUpFaults(book),
    ...dayFaults(book),
    ...stepFaults(book),
    ...dateFaults(book),
  ];
}

const named = (word: string, title: string, id: Id): string => `${word} ${asGiven(title)} (${id})`;

function ringFaults(book: Book): BookFault[] {
  const faults: BookFault[] = [];
  const jobs = Object.entries(book.jobs);
  const jobRing = firstRing(new Map(jobs.map(([id, job]) => [id, job.afterJobs])));
  if (jobRing !== null) {
    const names = jobRing.map((id) => asGiven(book.jobs[id]?.title ?? id)).join(', then ');
    faults.push({
      where: 'jobs › afterJobs',
      wrong: `these wait for each other round in a ring: ${names}`,
      right: 'an order that begins somewhere',
    });
  } else {
    const ring = firstRing(waitsOf(Object.entries(book.steps), jobs));
    if (ring !== null) {
      const names = ring.map((id) => asGiven(book.steps[id]?.title ?? id)).join(', then ');
      faults.push({
        where: 'steps › follows',
        wrong: `these wait for each other round in a ring: ${names}`,
        right: 'an order that begins somewhere',
      });
    }
  }
  for (const [id, step] of Object.entries(book.steps)) {
    const waits = step.waits.map((wait) => wait.id);
    if (new Set(waits).size !== waits.length) {
      faults.push({
        where: named('step', step.title, id),
        wrong: 'two of its waits have the same id',
        right: 'an id of its own for each',
      });
    }
    for (const follow of step.follows ?? []) {
      if (follow.greatest_min !== null && follow.greatest_min < follow.least_min) {
        faults.push({
          where: named('step', step.title, id),
          wrong: `it may follow no sooner than ${follow.least_min} minutes and no later than ${follow.greatest_min}`,
          right: 'a latest time that is not before the earliest',
        });
      }
    }
  }
  return faults.slice(0, 50);
}

function setUpFaults(book: Book): BookFault[] {
  const faults: BookFault[] = [];
  for (const [id, setUp] of Object.entries(book.setUps)) {
    const where = named('set-up', setUp.name, id);
    const states = setUp.states.map((state) => state.id);
    if (new Set(states).size !== states.length) {
      faults.push({ where, wrong: 'two of its states have the same id', right: 'an id of its own for each' });
    }
    const unknown = [setUp.now, ...setUp.changes.flatMap((change) => [change.from, change.to])].find(
      (state) => !states.includes(state),
    );
    if (unknown !== undefined)
      faults.push({ where, wrong: `it has no state ${asGiven(unknown)}`, right: states.map(asGiven).join(', ') });
  }
  return faults.slice(0, 50);
}

function dayFaults(book: Book): BookFault[] {
  const faults: BookFault[] = [];
  const days = Object.entries(book.jobDays).sort(([, a], [, b]) => (a.date + a.from < b.date + b.from ? -1 : 1));
  days.forEach(([id, jobDay], i) => {
    const where = `job day ${jobDay.date} (${id})`;
    const fault = jobDayFault(jobDay);
    if (fault !== null) faults.push({ ...fault, where: `${where} › ${fault.where}` });
    const before = days[i - 1]?.[1];
    if (before !== undefined && before.date === jobDay.date && jobDay.from < before.to) {
      faults.push({
        where,
        wrong: `it begins at ${jobDay.from}, while another job day lasts until ${before.to}`,
        right: 'job days that do not overlap',
      });
    }
  });
  for (const [id, entry] of Object.entries(book.weather)) {
    const fault = weatherFault(entry);
    if (fault !== null) faults.push({ ...fault, where: `weather ${entry.date} (${id}) › ${fault.where}` });
    if (!Object.hasOwn(book.places, entry.place)) {
      faults.push({
        where: `weather ${entry.date} (${id}) › place`,
        wrong: `it is for the place ${asGiven(entry.place)}, which is not in the book`,
        right: 'a place that is there',
      });
    }
  }
  for (const [id, forecast] of Object.entries(book.forecasts)) {
    const fault = forecastFault(forecast);
    if (fault !== null) faults.push({ ...fault, where: `forecast of ${forecast.taken} (${id}) › ${fault.where}` });
  }
  for (const [id, rig] of Object.entries(book.juryRigs)) {
    if (rig.trustedUntil < rig.made) {
      faults.push({
        where: named('jury rig', rig.title, id),
        wrong: `it is trusted until ${rig.trustedUntil}, before it was made on ${rig.made}`,
        right: `${rig.made} or later`,
      });
    }
  }
  return faults.slice(0, 50);
}

/** The longest stretch of a job day without a break in it. [min] */
function longestStretch(jobDay: JobDay): number {
  const end = minuteOfClock(jobDay.to) - jobDay.clearUp_min;
  let start = minuteOfClock(jobDay.from) + jobDay.setOut_min;
  let longest = 0;
  for (const rest of [...jobDay.breaks].sort((a, b) => (a.from < b.from ? -1 : 1))) {
    longest = Math.max(longest, minuteOfClock(rest.from) - start);
    start = minuteOfClock(rest.from) + rest.minutes;
  }
  return Math.max(longest, end - start);
}

function stepFaults(book: Book): BookFault[] {
  const faults: BookFault[] = [];
  const days = Object.values(book.jobDays).filter((jobDay) => jobDayFault(jobDay) === null);
  const longest = Math.max(0, ...days.map(longestStretch));
  for (const [id, step] of Object.entries(book.steps)) {
    const job = book.jobs[step.job];
    if (step.progress.kind !== 'open' || job?.state !== 'open') continue;
    const where = named('step', step.title, id);
    if (days.length > 0 && step.minutes.likely > longest) {
      faults.push({
        where,
        wrong: `it takes ${step.minutes.likely} minutes, and no job day has more than ${longest} without a break`,
        right: 'a longer day, or the step in two parts',
      });
    }
    for (const { tool, count } of step.tools) {
      const there = book.tools[tool];
      if (there !== undefined && count > there.count) {
        faults.push({
          where,
          wrong: `it needs ${count} of ${asGiven(there.name)}, and there are ${there.count}`,
          right: `at most ${there.count}`,
        });
      }
    }
    const zone = book.zones[step.zone ?? job.zone ?? ''];
    if (zone !== undefined && step.hands > zone.room) {
      faults.push({
        where,
        wrong: `it needs ${step.hands} hands in ${asGiven(zone.name)}, where ${zone.room} find room`,
        right: `at most ${zone.room} hands`,
      });
    }
  }
  return faults.slice(0, 50);
}

/** The day a job must be done by: its own date, or the day of its outing. */
function doneBy(book: Book, job: Job): string | null {
  const outing = job.outing === null ? undefined : book.outings[job.outing];
  const dates = [job.due, outing?.date ?? null].filter((date) => date !== null).sort();
  return dates[0] ?? null;
}

function dateFaults(book: Book): BookFault[] {
  const faults: BookFault[] = [];
  const days = Object.values(book.jobDays).sort((a, b) => (a.date < b.date ? -1 : 1));
  for (const [id, job] of Object.entries(book.jobs)) {
    const where = named('job', job.title, id);
    if (job.closed !== null && job.closed < job.opened) {
      faults.push({
        where,
        wrong: `it was closed on ${job.closed}, before it was put in on ${job.opened}`,
        right: `${job.opened} or later`,
      });
    }
    if (job.state !== 'open') continue;
    if (job.due !== null && job.due < job.opened) {
      faults.push({
        where,
        wrong: `it was due on ${job.due}, before it was put in on ${job.opened}`,
        right: `${job.opened} or later`,
      });
      continue;
    }
    const by = doneBy(book, job);
    const first = days[0];
    if (by === null || first === undefined) continue;
    const steps = Object.entries(book.steps).filter(([, step]) => step.job === id && step.progress.kind === 'open');
    if (steps.length === 0) continue;
    const inTime = days.filter((jobDay) => jobDay.date <= by);
    if (inTime.length === 0) {
      faults.push({
        where,
        wrong: `it must be done by ${by}, and the first job day is ${first.date}`,
        right: `a job day by ${by}, or a later date`,
      });
      continue;
    }
    const least = leastMinutes(steps);
    const there = daysBetween(first.date, addDays(by, 1)) * 24 * 60 - minuteOfClock(first.from);
    const work = steps.reduce((sum, [, step]) => sum + (step.hands > 0 ? step.minutes.likely : 0), 0);
    const hours = inTime.reduce((sum, jobDay) => sum + workMinutes(jobDay), 0);
    if (work > hours && steps.every(([, step]) => step.keeper)) {
      faults.push({
        where,
        wrong: `it must be done by ${by}: it takes the keeper ${work} minutes, and the job days until then have ${hours}`,
        right: 'more or longer job days, or a later date',
      });
    } else if (least > there) {
      faults.push({
        where,
        wrong: `it must be done by ${by}: its steps and waits take ${least} minutes one after the other, and there are ${there} from the first job day`,
        right: 'an earlier job day, or a later date',
      });
    }
  }
  return faults.slice(0, 50);
}

const workMinutes = (jobDay: JobDay): number =>
  minuteOfClock(jobDay.to) -
  minuteOfClock(jobDay.from) -
  jobDay.setOut_min -
  jobDay.clearUp_min -
  jobDay.breaks.reduce((sum, rest) => sum + rest.minutes, 0);

/** The least time a job's open steps and their waits of a set time take, one after the other as they must. [min] */
function leastMinutes(steps: readonly (readonly [Id, Step])[]): number {
  const list = [...steps].sort(byOrder);
  const ends = new Map<Id, { readonly step: number; readonly all: number; readonly waits: ReadonlyMap<Id, number> }>();
  // a ring was reported already; the bound on rounds keeps it from going round here
  for (let round = 0; round < list.length && ends.size < list.length; round++) {
    list.forEach(([id, step], i) => {
      const before = step.follows ?? (i === 0 ? [] : [{ step: list[i - 1]![0], wait: undefined, least_min: 0 }]);
      const inJob = before.filter((follow) => list.some(([other]) => other === follow.step));
      if (ends.has(id) || !inJob.every((follow) => ends.has(follow.step))) return;
      const start = Math.max(
        0,
        ...inJob.map((follow) => {
          const end = ends.get(follow.step)!;
          const from =
            follow.wait === undefined
              ? end.all
              : follow.wait === null
                ? end.step
                : (end.waits.get(follow.wait) ?? end.step);
          return from + follow.least_min;
        }),
      );
      const finish = start + step.minutes.likely;
      const waits = new Map(
        step.waits.map((wait) => [wait.id, finish + (wait.law.kind === 'set time' ? wait.law.minutes : 0)]),
      );
      ends.set(id, { step: finish, all: Math.max(finish, ...waits.values()), waits });
    });
  }
  return Math.max(0, ...[...ends.values()].map((end) => end.all));
}
