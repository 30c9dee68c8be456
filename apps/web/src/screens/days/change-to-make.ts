/** How the keeper makes a change that a reason asks for: the named operations, and the words on the button. */
import type { Book, Id, JobDay, OperationFields, OperationName } from '#boat-book';
import { storeOfLine } from '#reckoning';
import { addDays, minuteOfClock } from '#units';
import { addedDay, addedHand, type Plan, type Problem } from '#workplan';
import { capital, dayInWords } from '../../parts/in-words.ts';
import { clockAt, dayAt, weekdayInWords } from './place-time.ts';
import type { ChangeTold } from './plan-report.ts';

/** One named operation with its fields. */
export type Making = {
  [N in OperationName]: { readonly name: N; readonly fields: OperationFields<N> };
}[OperationName];

export interface ChangeToMake {
  /** what the button says */
  readonly label: string;
  /** run in this order; each can be undone */
  readonly making: readonly Making[];
  /** the plan that shows what the change brings, by the names of the book */
  readonly plan: Plan;
}

/**
 * What the keeper would have to do in the book for a change; null where it is none of the keeper's to make (the
 * weather, another place) or can be told only on a form of its own.
 *
 * @param newId  a fresh id for what is added
 */
export function changeToMake(
  { relaxation, plan }: Pick<ChangeTold, 'relaxation' | 'plan'>,
  problem: Problem,
  book: Book,
  newId: Id,
): ChangeToMake | null {
  const made = (label: string, ...making: Making[]): ChangeToMake => ({ label, making, plan: renamed(plan, newId) });
  switch (relaxation.kind) {
    case 'freed':
      return made('Free it from its day', { name: 'holdJob', fields: { job: relaxation.job, day: null } });
    case 'stores by': {
      const expected = dayAt(problem, relaxation.by);
      return made(
        `Put ${relaxation.stores.length === 1 ? 'it' : 'them'} down as coming by ${dayInWords(expected, expected)}`,
        ...relaxation.stores.map(
          (line): Making => ({ name: 'changeStore', fields: { id: storeOfLine(line, book), expected } }),
        ),
      );
    }
    case 'tool': {
      const tool = book.tools[relaxation.tool];
      if (tool === undefined) return null;
      return made(`Add the ${tool.name.toLowerCase()} to the tools`, {
        name: 'changeTool',
        fields: { id: relaxation.tool, count: tool.count + relaxation.more },
      });
    }
    case 'earlier start': {
      const from = clockAt(problem, relaxation.from);
      return sameDay(book.jobDays[relaxation.day], from, null)
        ? made(`Begin ${dayName(relaxation.day, problem)} at ${from}`, {
            name: 'changeJobDay',
            fields: { id: relaxation.day, from },
          })
        : null;
    }
    case 'later end': {
      const to = clockAt(problem, relaxation.to);
      return sameDay(book.jobDays[relaxation.day], null, to)
        ? made(`Let ${dayName(relaxation.day, problem)} go on until ${to}`, {
            name: 'changeJobDay',
            fields: { id: relaxation.day, to },
          })
        : null;
    }
    case 'second hand': {
      const day = book.jobDays[relaxation.day];
      const [from, to] = [clockAt(problem, relaxation.from), clockAt(problem, relaxation.to)];
      if (day === undefined || to <= from) return null;
      return made(`Add a hand to ${dayName(relaxation.day, problem)} from ${from}`, {
        name: 'changeJobDay',
        fields: { id: relaxation.day, hands: [...day.hands, { id: newId, name: 'Second hand', from, to }] },
      });
    }
    case 'without job':
      return made(`Drop '${book.jobs[relaxation.job]?.title ?? relaxation.job}'`, {
        name: 'dropJob',
        fields: { id: relaxation.job },
      });
    case 'later date':
      return laterDate(relaxation, problem, book, made);
    case 'another day':
      return relaxation.needs === null ? anotherDay(relaxation, problem, book, newId, made) : null;
    case 'fit hours':
    case 'under a roof':
    case 'place':
      return null;
  }
}

type Made = (label: string, ...making: Making[]) => ChangeToMake;

/** Of a job's own date and its outing the one that comes first is moved. */
function laterDate(
  { job: id, days }: Extract<ChangeTold['relaxation'], { kind: 'later date' }>,
  problem: Problem,
  book: Book,
  made: Made,
): ChangeToMake | null {
  const job = book.jobs[id];
  const outing = job?.outing == null ? undefined : book.outings[job.outing];
  const deadline = problem.jobs.find((each) => each.id === id)?.deadline;
  if (job === undefined || deadline == null) return null;
  // a date of its own ends with its day, an outing begins on its own
  if (job.due !== null && job.due === dayAt(problem, deadline - 1) && !(outing && outing.date <= job.due)) {
    const due = addDays(job.due, days);
    return made(`Move its date to ${dayInWords(due, due)}`, { name: 'changeJob', fields: { id, due } });
  }
  if (outing === undefined || job.outing === null) return null;
  const date = addDays(outing.date, days);
  return made(`Move '${outing.title}' to ${dayInWords(date, date)}`, {
    name: 'changeOuting',
    fields: { id: job.outing, date },
  });
}

/** A job day like one there is, without its hands; it ends in what all job days end in. */
function anotherDay(
  { like, from, to }: Extract<ChangeTold['relaxation'], { kind: 'another day' }>,
  problem: Problem,
  book: Book,
  newId: Id,
  made: Made,
): ChangeToMake | null {
  const day = book.jobDays[like];
  const [begins, ends] = [clockAt(problem, from), clockAt(problem, to)];
  if (day === undefined || ends <= begins) return null;
  const date = dayAt(problem, from);
  const shared = (end: JobDay['endsIn'][number]) =>
    problem.days.every(({ endsIn }) => endsIn.some(({ aspect, state }) => aspect === end.setUp && state === end.state));
  const last = minuteOfClock(ends) - day.clearUp_min;
  return made(`Add ${dayInWords(date, date)}, ${begins} to ${ends}`, {
    name: 'addJobDay',
    fields: {
      ...day,
      id: newId,
      date,
      from: begins,
      to: ends,
      hands: [],
      breaks: day.breaks.filter((each) => minuteOfClock(each.from) + each.minutes < last),
      endsIn: day.endsIn.filter(shared),
    },
  });
}

/** A job day ends on the day it begins: true where changed hours still do. */
function sameDay(day: JobDay | undefined, from: string | null, to: string | null): boolean {
  return day !== undefined && (from ?? day.from) < (to ?? day.to);
}

function dayName(id: Id, problem: Problem): string {
  const day = problem.days.find((each) => each.id === id);
  if (day === undefined) return 'the day';
  const date = dayAt(problem, day.from);
  const near = day.from - problem.now < 6 * 1440;
  return near ? weekdayInWords(date) : capital(dayInWords(date, date));
}

/** The hand and the day that the reasons add by names of their own, by the names they have in the book. */
function renamed(plan: Plan, newId: Id): Plan {
  const hands = (ids: readonly string[]) => ids.map((id) => (id === addedHand ? newId : id));
  const day = <D extends string | null>(id: D) => (id === addedDay ? newId : id);
  return {
    ...plan,
    steps: plan.steps.map((step) => ({ ...step, hands: hands(step.hands), day: day(step.day) })),
    changes: plan.changes.map((change) => ({ ...change, hands: hands(change.hands), day: day(change.day) as string })),
  };
}
