/** Operations on what falls due, on what she was used for, and on the lists of the seasons. */
import { z } from 'zod/mini';
import { addMonths, daysBetween } from '#units';
import { plainThree } from './boat-operations.ts';
import type { DueRecord } from './due-records.ts';
import { dueMeasureSchema, seasonTickSchema, useSchema } from './due-schemas.ts';
import { type Edit, refuse } from './edit.ts';
import { day, id, list, text } from './field-schemas.ts';
import { correcting, logged } from './log-entry.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import { putTaken, takenFields } from './recipe-operations.ts';

/** Refuses a due that nothing ever makes fall due, or one whose days lie past the years that days are known of. */
function checkDue(due: DueRecord): void {
  const { printed, every, season, uses, condition } = due;
  if (printed === null && every === null && season === null && uses.length === 0 && condition === null)
    refuse('every', 'nothing says when it falls due', 'a date, an interval, a season, a use or a condition');
  if (new Set(uses.map(({ use }) => use)).size !== uses.length)
    refuse('uses', 'one kind of use stands in it twice', 'each kind once');
  if (every?.unit === 'years' && every.count > 100) refuse('every', `${every.count} years`, 'at most 100 years');
}

const [addDue, changeDue, removeDue] = plainThree<'addDue', 'changeDue', 'removeDue'>('dues', (record) =>
  checkDue(record as DueRecord),
);

/** Refuses a day that is not past and not today: what has not been cannot have been done. */
function refuseAhead(where: string, on: string, today: string): void {
  if (on > today) refuse(where, `${on} is not yet`, `${today} or before`);
  if (daysBetween(on, today) > daysBetween(addMonths(today, -600), today))
    refuse(where, `${on} is more than 50 years ago`, 'a day of this boat');
}

function putJobOfDue(edit: Edit, { due, ...taken }: OperationFields<'makeJobOfDue'>): string {
  const { title } = edit.need('dues', due, 'due');
  for (const [, job] of edit.all('jobs'))
    if (job.fromDue === due && job.state === 'open')
      refuse('due', `the job ${asGiven(job.title)} of ${asGiven(title)} is open already`, 'do or drop that one first');
  return putTaken(edit, { ...taken, job: { ...taken.job, fromDue: due } });
}

export const dueOperations = {
  addDue,
  changeDue,
  removeDue,
  dueWasDone: {
    title: 'Done',
    does: 'Says on which day a due was done, and writes it to the log.',
    undoes: true,
    fields: z.strictObject({ id, on: day, who: z.exactOptional(text) }),
    run({ id: due, on, who = '' }: OperationFields<'dueWasDone'>, edit) {
      const { title, zone, fitting, lastDone } = edit.need('dues', due, 'id');
      refuseAhead('on', on, edit.today);
      if (lastDone !== null && on < lastDone)
        refuse('on', `${on} is before it was last done, ${lastDone}`, `${lastDone} or later`);
      edit.set('dues', due, { lastDone: on });
      logged(edit, {
        kind: 'note',
        zone,
        ...(fitting === null ? {} : { fitting }),
        who,
        at: edit.momentOn(on),
        text: `Done: ${title}`,
      });
      return null;
    },
  },
  makeJobOfDue: {
    title: 'Make a job of a due',
    does: 'Puts in the job that a due asks for, with what its recipe takes; never a second one while that is open.',
    undoes: true,
    fields: z.strictObject({ due: id, ...takenFields }),
    run: (fields: OperationFields<'makeJobOfDue'>, edit) => putJobOfDue(edit, fields),
  },
  makeJobsOfDues: {
    title: 'Make the jobs of dues',
    does: 'Puts in the jobs that several dues ask for; undo takes them back together.',
    undoes: true,
    fields: z.strictObject({
      jobs: list(z.strictObject({ due: id, ...takenFields })).check(z.minLength(1)),
    }),
    run({ jobs }: OperationFields<'makeJobsOfDues'>, edit) {
      for (const one of jobs) putJobOfDue(edit, one);
      return null;
    },
  },
  enterUses: {
    title: 'Enter a use',
    does: 'Enters what she was used for on a day: sailed, towed, launched, nights, hours, kilometres.',
    undoes: true,
    fields: z.strictObject({
      uses: list(z.strictObject(without(useSchema, ['entered', 'order']))).check(z.minLength(1)),
    }),
    run({ uses }: OperationFields<'enterUses'>, edit) {
      let made: string | null = null;
      for (const [n, use] of uses.entries()) {
        refuseAhead(`uses › ${n + 1}. › on`, use.on, edit.today);
        made = edit.fix('uses', { ...use, entered: edit.now });
      }
      return made;
    },
  },
  removeUse: {
    title: 'Take out a use',
    does: 'Takes a use of the boat out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: use }: OperationFields<'removeUse'>, edit) {
      edit.unfix('uses', use);
      return null;
    },
  },
  enterDueMeasure: {
    title: 'Enter a measure',
    does: 'Enters what a due’s condition was measured at.',
    undoes: true,
    fields: z.strictObject(without(dueMeasureSchema, ['entered', 'order'])),
    run(fields: OperationFields<'enterDueMeasure'>, edit) {
      const { title, condition, zone } = edit.need('dues', fields.due, 'due');
      if (condition === null) return refuse('due', `${asGiven(title)} is not due by a condition`, 'a due that is');
      refuseAhead('on', fields.on, edit.today);
      logged(edit, {
        kind: 'measured',
        zone,
        at: edit.momentOn(fields.on),
        text: `${title}: ${condition.measure} ${fields.value}${condition.unit === '' ? '' : ` ${condition.unit}`}`,
      });
      return edit.fix('dueMeasures', { ...fields, entered: edit.now });
    },
  },
  removeDueMeasure: {
    title: 'Take out a measure',
    does: 'Takes what a due’s condition was measured at out of the book.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: measure }: OperationFields<'removeDueMeasure'>, edit) {
      edit.unfix('dueMeasures', measure);
      return null;
    },
  },
  tickSeason: {
    title: 'Tick',
    does: 'Ticks one line of a season’s list, and writes it to the log.',
    undoes: true,
    fields: z.strictObject({ ...without(seasonTickSchema, ['at', 'order']), text }),
    run({ text: words, ...fields }: OperationFields<'tickSeason'>, edit) {
      for (const [, tick] of edit.all('seasonTicks'))
        if (tick.list === fields.list && tick.year === fields.year && tick.item === fields.item)
          refuse('item', `${asGiven(words)} is ticked already`, 'a line that is not ticked');
      logged(edit, { kind: 'note', who: fields.who, text: seasonWords(fields, words) });
      return edit.fix('seasonTicks', { ...fields, at: edit.now });
    },
  },
  untickSeason: {
    title: 'Not done after all',
    does: 'Opens one line of a season’s list again, and notes it in the log.',
    undoes: true,
    fields: z.strictObject({ id, text }),
    run({ id: tickId, text: words }: OperationFields<'untickSeason'>, edit) {
      const tick = edit.need('seasonTicks', tickId, 'id');
      edit.unfix('seasonTicks', tickId);
      const said = seasonWords(tick, words);
      logged(edit, {
        kind: 'taken back',
        text: `Not done after all: ${said}`,
        ...correcting(edit, (entry) => entry.kind === 'note' && entry.text === said),
      });
      return null;
    },
  },
} satisfies Partial<Operations>;

const seasonWords = ({ list: which, year }: { readonly list: string; readonly year: number }, words: string) =>
  `${which === 'lay-up' ? 'Lay-up' : 'Fit-out'} ${year}: ${words}`;
