/** Operations on job days, weather, kept plans and the log; and on open questions. */
import { z } from 'zod/mini';
import { minuteOfClock } from '#units';
import { plainThree } from './boat-operations.ts';
import { sameContent } from './canonical.ts';
import { refuse } from './edit.ts';
import { at, id, title } from './field-schemas.ts';
import { logged } from './log-entry.ts';
import { logSchema } from './log-schemas.ts';
import { type Operations, someOf, without } from './operation.ts';
import type { CollectionName, Json, OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import { keptPlanSchema } from './plan-schemas.ts';
import type { JobDay, WeatherEntry } from './records.ts';
import { recordSchemas, weatherSchema } from './schemas.ts';

/** Faults of a job day that no single field shows. */
export function jobDayFault(jobDay: JobDay): { where: string; wrong: string; right: string } | null {
  const from = minuteOfClock(jobDay.from);
  const to = minuteOfClock(jobDay.to);
  if (to <= from)
    return { where: 'to', wrong: `${jobDay.to} is not after ${jobDay.from}`, right: 'a later time the same day' };
  const least = jobDay.setOut_min + jobDay.clearUp_min;
  if (least >= to - from) {
    return {
      where: 'setOut_min',
      wrong: `setting out and clearing up take ${least} minutes of ${to - from}`,
      right: 'less than the day is long',
    };
  }
  let last = from;
  for (const [i, rest] of [...jobDay.breaks].sort((a, b) => (a.from < b.from ? -1 : 1)).entries()) {
    const start = minuteOfClock(rest.from);
    const where = `breaks › ${i + 1}.`;
    if (start < last) {
      return {
        where,
        wrong: `it begins at ${rest.from}`,
        right: i === 0 ? `${jobDay.from} or later` : 'after the break before it',
      };
    }
    last = start + rest.minutes;
    if (last > to) return { where, wrong: `it ends after the day does, ${jobDay.to}`, right: `an end by ${jobDay.to}` };
  }
  const hands = new Set(['keeper']);
  for (const [i, hand] of jobDay.hands.entries()) {
    const where = `hands › ${i + 1}.`;
    if (hands.has(hand.id))
      return { where, wrong: `the id ${asGiven(hand.id)} stands twice`, right: 'an id of its own' };
    hands.add(hand.id);
    if (hand.to <= hand.from)
      return { where, wrong: `${hand.to} is not after ${hand.from}`, right: 'a later time the same day' };
  }
  return null;
}

function checkJobDay(record: unknown): void {
  const parts = recordSchemas.jobDays.safeParse(record);
  if (!parts.success) return; // the record's own check says what is wrong
  const fault = jobDayFault(parts.data);
  if (fault !== null) refuse(fault.where, fault.wrong, fault.right);
}

/** What one session may still choose: the answer must be one that stands. */
function chosen(fields: OperationFields<'chooseAnswer'>, answers: readonly Json[]): Json {
  const found = answers.find((answer) => sameContent(answer, fields.answer));
  return (
    found ?? refuse('answer', `${asGiven(fields.answer)} is not one of the answers`, answers.map(asGiven).join(' or '))
  );
}

/** A plan can be made again from the book; so many are enough to see what changed. */
const plansKept = 12;

const oneSchema = z.strictObject({ id });
const [addJobDay, changeJobDay] = plainThree<'addJobDay', 'changeJobDay', 'removeJobDay'>('jobDays', checkJobDay);

export const dayOperations = {
  addJobDay,
  changeJobDay,
  removeJobDay: {
    title: 'Take out a job day',
    does: 'Takes a job day out of the book; jobs that were held to it are free again.',
    undoes: true,
    fields: oneSchema,
    run(fields: OperationFields<'removeJobDay'>, edit) {
      for (const [jobId, job] of [...edit.all('jobs')]) {
        if (job.heldTo === fields.id)
          edit.set('jobs', jobId, { heldTo: null, ...(job.heldAt === null ? {} : { heldAt: null }) });
      }
      edit.remove('jobDays', fields.id);
      return null;
    },
  },
  bookHours: {
    title: 'Book hours',
    does: 'Makes job days of hours that would suit a job; undo takes them back together.',
    undoes: true,
    fields: z.strictObject({ days: z.array(recordSchemas.jobDays).check(z.minLength(1), z.maxLength(31)) }),
    run({ days }: OperationFields<'bookHours'>, edit) {
      const ids = days.map((each) => {
        checkJobDay(each);
        return edit.put('jobDays', each);
      });
      return ids[0] ?? null;
    },
  },
  enterWeather: {
    title: 'Enter weather',
    does: 'Enters what weather is expected for some hours; a later entry for the same hours is used instead.',
    undoes: true,
    fields: z.strictObject({
      entries: z
        .array(z.strictObject(without(weatherSchema, ['entered', 'order'])))
        .check(z.minLength(1), z.maxLength(2000)),
    }),
    run({ entries }: OperationFields<'enterWeather'>, edit) {
      entries.forEach((entry, i) => {
        const where = `entries › ${i + 1}.`;
        edit.need('places', entry.place, `${where} › place`);
        const fault = weatherFault(entry);
        if (fault !== null) refuse(`${where} › ${fault.where}`, fault.wrong, fault.right);
        edit.fix('weather', { ...entry, entered: edit.now });
      });
      return null;
    },
  },
  keepPlan: {
    title: 'Keep a plan',
    does: 'Keeps a plan as it was made, and the 11 before it; of two made apart, both are kept.',
    // a plan follows from the book by itself: undo is for what the keeper did
    undoes: false,
    fields: z.strictObject(without(keptPlanSchema, ['made', 'order'])),
    run(fields: OperationFields<'keepPlan'>, edit) {
      const made = edit.fix('plans', { ...fields, made: edit.now });
      const others = [...edit.all('plans')].filter(([planId]) => planId !== made);
      others.sort(([, a], [, b]) => (a.order ?? 0) - (b.order ?? 0));
      for (const [planId] of others.slice(0, -(plansKept - 1))) edit.unfix('plans', planId);
      return made;
    },
  },
  writeLog: {
    title: 'Write in the log',
    does: 'Writes what was done, seen or measured in the log, for good.',
    undoes: false,
    fields: z.strictObject({
      ...someOf(logSchema, ['order']),
      kind: logSchema.shape.kind,
      text: title,
      at: z.exactOptional(at),
    }),
    run(fields: OperationFields<'writeLog'>, edit) {
      if (fields.corrects !== undefined) edit.need('log', fields.corrects, 'corrects');
      return logged(edit, fields);
    },
  },
  chooseAnswer: {
    title: 'Choose an answer',
    does: 'Settles what was answered differently on two devices.',
    undoes: true,
    fields: z.strictObject({
      collection: z.enum(Object.keys(recordSchemas) as [CollectionName, ...CollectionName[]]),
      id,
      field: title,
      answer: z.custom<Json>(() => true),
    }),
    run(fields: OperationFields<'chooseAnswer'>, edit) {
      const answers = edit.answersTo(fields.collection, fields.id, fields.field);
      if (answers.length === 0) refuse('field', 'there is nothing to choose here', 'a field with more than one answer');
      const answer = chosen(fields, answers);
      if (fields.field !== 'removed') edit.settle(fields.collection, fields.id, fields.field, answer);
      else if (answer === 'remove') edit.remove(fields.collection, fields.id);
      else edit.settleRemoval(fields.collection, fields.id);
      return null;
    },
  },
} satisfies Partial<Operations>;

/** Faults of a weather entry that no single field shows. */
export function weatherFault(
  entry: Pick<WeatherEntry, 'fromHour' | 'toHour'>,
): { where: string; wrong: string; right: string } | null {
  return entry.toHour > entry.fromHour
    ? null
    : {
        where: 'toHour',
        wrong: `${entry.toHour} is not after ${entry.fromHour}`,
        right: `from ${entry.fromHour + 1} to 24`,
      };
}
