/** Operations on timers. One step has one timer for each of its waits, and one for what was mixed for it. */
import { z } from 'zod/mini';
import { type Edit, refuse } from './edit.ts';
import { id } from './field-schemas.ts';
import { type Operations, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import type { Id } from './records.ts';
import { timerSchema } from './timer-schemas.ts';

/** Up to 90 days, as the longest wait there is to plan. [ms] */
const longest_ms = 90 * 86_400_000;

/** Takes the timer of a step and a wait away, if there is one: it is done with. */
export function endTimer(edit: Edit, step: Id, wait: Id | null): void {
  for (const [timerId, timer] of [...edit.all('timers')])
    if (timer.step === step && timer.wait === wait) edit.remove('timers', timerId);
}

export const timerOperations = {
  startTimer: {
    title: 'Start a timer',
    does: 'Notes when a pot life or a wait of a step is over; the one there was for it gives way.',
    undoes: true,
    fields: z.strictObject({ ...without(timerSchema, ['started']) }),
    run(fields: OperationFields<'startTimer'>, edit) {
      const step = edit.need('steps', fields.step, 'step');
      if (fields.wait !== null && !step.waits.some(({ id: wait }) => wait === fields.wait))
        refuse('wait', `${asGiven(step.title)} has no wait ${asGiven(fields.wait)}`, 'one of its waits, or null');
      const from_ms = Date.parse(edit.now);
      const ends_ms = Date.parse(fields.ends);
      if (ends_ms <= from_ms || ends_ms > from_ms + longest_ms)
        refuse('ends', `${fields.ends} is not ahead, or more than 90 days`, `after ${edit.now}`);
      endTimer(edit, fields.step, fields.wait);
      return edit.put('timers', { ...fields, started: edit.now });
    },
  },
  stopTimer: {
    title: 'Put a timer away',
    does: 'Takes a timer away: it was heard, or is not wanted.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: timer }: OperationFields<'stopTimer'>, edit) {
      edit.remove('timers', timer);
      return null;
    },
  },
} satisfies Partial<Operations>;
