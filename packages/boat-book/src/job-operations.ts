/** Operations on jobs and their steps: putting work in, changing it, and doing it. */
import { z } from 'zod/mini';
import { byOrder, firstRing, waitsOf } from './cycles.ts';
import { type Edit, refuse } from './edit.ts';
import { at, clock, day, id, list, number, text, whole } from './field-schemas.ts';
import { correcting, logged } from './log-entry.ts';
import { type Operations, someOf, withoutId } from './operation.ts';
import type { NewJob, NewStep, OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import type { At, Id, Step } from './records.ts';
import { jobSchema, stepSchema } from './schemas.ts';
import { takeOut, usedStoreSchema } from './store-operations.ts';
import { endTimer } from './timer-operations.ts';

const one = z.strictObject({ id });
const { title, consequence } = jobSchema.shape;
/** What is said of where a job comes from, when it is put in only. */
const jobsOrigin = ['recipe', 'followUps', 'writeDown', 'followsJob', 'fromDue'] as const;
const newStepShape = {
  ...someOf(stepSchema, ['job', 'progress']),
  title: stepSchema.shape.title,
  minutes: stepSchema.shape.minutes,
  hands: stepSchema.shape.hands,
  id: z.exactOptional(id),
};

function wholeStep(job: Id, order: number, step: NewStep): Step {
  return {
    keeper: true,
    notAlone: false,
    zone: null,
    needs: {},
    features: [],
    tools: [],
    setUps: [],
    stores: [],
    dusty: false,
    wet: false,
    mix: null,
    waits: [],
    follows: null,
    cautions: [],
    order,
    ...withoutId(step),
    job,
    progress: { kind: 'open' },
  };
}

const stepsOf = (edit: Edit, job: Id): [Id, Step][] =>
  [...edit.all('steps')].filter(([, step]) => step.job === job).sort(byOrder);

/** Refuses steps or jobs that would wait for each other, or a wait whose id stands twice in a step. */
function checkOrder(edit: Edit): void {
  const jobs = new Map([...edit.all('jobs')].map(([jobId, job]) => [jobId, job.afterJobs] as const));
  const jobRing = firstRing(jobs);
  if (jobRing !== null) {
    const names = jobRing.map((jobId) => asGiven(edit.find('jobs', jobId)?.title ?? jobId));
    refuse('afterJobs', `these jobs would wait for each other: ${names.join(', ')}`, 'jobs that come before it only');
  }
  const ring = firstRing(waitsOf(edit.all('steps'), edit.all('jobs')));
  if (ring !== null) {
    const names = ring.map((stepId) => asGiven(edit.find('steps', stepId)?.title ?? stepId));
    refuse('follows', `these steps would wait for each other: ${names.join(', ')}`, 'steps that come before it only');
  }
}

function checkWaits(step: Step): void {
  const ids = step.waits.map((wait) => wait.id);
  if (new Set(ids).size !== ids.length) refuse('waits', 'two waits have the same id', 'an id of its own for each');
}

/** The amounts of the stores a step still names, where that list is changed and nothing is said of the amounts. */
function takesLeft(edit: Edit, { id: stepId, stores, takes }: OperationFields<'changeStep'>): Pick<Step, 'takes'> {
  if (stores === undefined || takes !== undefined) return {};
  const before = edit.need('steps', stepId, 'id').takes ?? [];
  const left = before.filter(({ store }) => stores.includes(store));
  return left.length === before.length ? {} : { takes: left };
}

/** Refuses where a wait that another step follows would be gone. */
function checkFollowedWaits(edit: Edit, stepId: Id, step: Step): void {
  for (const [, other] of edit.all('steps')) {
    for (const follow of other.follows ?? []) {
      if (follow.step === stepId && follow.wait !== null && !step.waits.some((wait) => wait.id === follow.wait)) {
        refuse('waits', `the step ${asGiven(other.title)} follows a wait that would be gone`, 'change that step first');
      }
    }
  }
}

const minutesLater = (instant: At, minutes: number): At =>
  new Date(Date.parse(instant) + minutes * 60_000).toISOString();

function checkTimes(where: string, earlier: At, later: At): void {
  if (Date.parse(later) < Date.parse(earlier))
    refuse(where, `${later} is before the start, ${earlier}`, `${earlier} or later`);
}

/** What takes away the time a job is held to; nothing to change where there is none. */
const noTime = (edit: Edit, job: Id): { readonly heldAt?: null } =>
  edit.find('jobs', job)?.heldAt == null ? {} : { heldAt: null };

/** Refuses a time that a job is held to without a day, or outside its hours. */
function checkHold(edit: Edit, jobId: Id): void {
  const { heldTo, heldAt } = edit.need('jobs', jobId, 'id');
  if (heldAt === null) return;
  if (heldTo === null) refuse('heldAt', `${heldAt} has no day`, 'a job day to hold it to, or no time');
  const { from, to } = edit.need('jobDays', heldTo, 'heldTo');
  if (heldAt < from || heldAt >= to)
    refuse(
      'heldAt',
      `the job day is from ${from} to ${to}, and ${heldAt} is outside it`,
      `from ${from} and before ${to}`,
    );
}

/** Adds steps in the order given; those without ids get one first, so that each may follow any other. */
function putSteps(edit: Edit, job: Id, steps: readonly NewStep[], firstOrder: number): void {
  steps.forEach((step, i) => {
    const whole = wholeStep(job, firstOrder + i, step);
    checkWaits(whole);
    edit.put('steps', whole, step.id);
  });
}

export const newJobSchema = z.strictObject({
  ...someOf(jobSchema, ['state', 'closed']),
  title,
  consequence,
  id: z.exactOptional(id),
  steps: z.exactOptional(list(z.strictObject(newStepShape))),
});

/** Puts a job in with its steps, in the order they are done. Returns its id. */
export function putJob(edit: Edit, { steps = [], ...job }: NewJob): Id {
  const made = edit.put(
    'jobs',
    {
      why: '',
      zone: null,
      fitting: null,
      opened: edit.today,
      due: null,
      outing: null,
      note: '',
      said: '',
      heldTo: null,
      heldAt: null,
      afterJobs: [],
      ...withoutId(job),
      state: 'open',
      closed: null,
    },
    job.id,
  );
  checkHold(edit, made);
  putSteps(edit, made, steps, 0);
  // a new job that names none before it, in plain order, can close no ring
  if ((job.afterJobs ?? []).length > 0 || steps.some((step) => step.follows)) checkOrder(edit);
  return made;
}

export const jobOperations = {
  addJob: {
    title: 'Put in a job',
    does: 'Puts a job in the book, with its steps in the order they are done.',
    undoes: true,
    fields: newJobSchema,
    run: (fields: OperationFields<'addJob'>, edit) => putJob(edit, fields),
  },
  changeJob: {
    title: 'Change a job',
    does: 'Changes what is said of a job.',
    undoes: true,
    fields: z.strictObject({ ...someOf(jobSchema, ['state', 'closed', ...jobsOrigin]), id }),
    run(fields: OperationFields<'changeJob'>, edit) {
      // a time without its day means nothing
      const alone = fields.heldTo === null && fields.heldAt === undefined ? noTime(edit, fields.id) : {};
      edit.set('jobs', fields.id, { ...withoutId(fields), ...alone });
      if (fields.heldTo !== undefined || fields.heldAt !== undefined) checkHold(edit, fields.id);
      if (fields.afterJobs !== undefined) checkOrder(edit);
      return null;
    },
  },
  dropJob: {
    title: 'Drop a job',
    does: 'Says that a job will not be done; it stays in the book.',
    undoes: true,
    fields: z.strictObject({ id, closed: z.exactOptional(day) }),
    run({ id: jobId, ...given }: OperationFields<'dropJob'>, edit) {
      const { closed = edit.today } = given;
      edit.set('jobs', jobId, { state: 'dropped', closed, heldTo: null, ...noTime(edit, jobId) });
      return null;
    },
  },
  reopenJob: {
    title: 'Open a job again',
    does: 'Says that a job that was done or dropped is open after all.',
    undoes: true,
    fields: one,
    run({ id: jobId }: OperationFields<'reopenJob'>, edit) {
      const job = edit.need('jobs', jobId, 'id');
      if (job.state === 'open') refuse('id', 'this job is open', 'a job that is done or dropped');
      edit.set('jobs', jobId, { state: 'open', closed: null });
      const finished = correcting(edit, (entry) => entry.kind === 'job done' && entry.job === jobId);
      if (job.state === 'done')
        logged(edit, { kind: 'taken back', job: jobId, text: `Not done after all: ${job.title}`, ...finished });
      return null;
    },
  },
  holdJob: {
    title: 'Hold a job',
    does: 'Keeps a job to one job day, or to a time on it, or lets it go again.',
    undoes: true,
    fields: z.strictObject({ job: id, day: z.nullable(id), at: z.exactOptional(z.nullable(clock)) }),
    run({ job, day: jobDay, at: heldAt = null }: OperationFields<'holdJob'>, edit) {
      edit.need('jobs', job, 'job');
      if (jobDay !== null) edit.need('jobDays', jobDay, 'day');
      edit.set('jobs', job, { heldTo: jobDay, ...(heldAt === null ? noTime(edit, job) : { heldAt }) });
      checkHold(edit, job);
      return null;
    },
  },
  addStep: {
    title: 'Put in a step',
    does: 'Puts a step in a job, after its others unless its order says otherwise.',
    undoes: true,
    fields: z.strictObject({ ...newStepShape, job: id }),
    run({ job, ...step }: OperationFields<'addStep'>, edit) {
      edit.need('jobs', job, 'job');
      const last = stepsOf(edit, job).at(-1)?.[1].order;
      const whole = wholeStep(job, last === undefined ? 0 : last + 1, step);
      checkWaits(whole);
      const made = edit.put('steps', whole, step.id);
      if (stepsOf(edit, job).some(([, one]) => one.follows !== null)) checkOrder(edit);
      return made;
    },
  },
  changeStep: {
    title: 'Change a step',
    does: 'Changes what a step needs, takes or leaves behind.',
    undoes: true,
    fields: z.strictObject({ ...someOf(stepSchema, ['job', 'progress', 'proof']), id }),
    run(fields: OperationFields<'changeStep'>, edit) {
      edit.set('steps', fields.id, { ...withoutId(fields), ...takesLeft(edit, fields) });
      const step = edit.need('steps', fields.id, 'id');
      if (fields.waits !== undefined) {
        checkWaits(step);
        checkFollowedWaits(edit, fields.id, step);
      }
      if (fields.follows !== undefined || fields.order !== undefined) checkOrder(edit);
      return null;
    },
  },
  removeStep: {
    title: 'Take out a step',
    does: 'Takes a step out of its job, unless another step follows it by name.',
    undoes: true,
    fields: one,
    run({ id: stepId }: OperationFields<'removeStep'>, edit) {
      edit.remove('steps', stepId);
      return null;
    },
  },
  moveStep: {
    title: 'Move a step',
    does: 'Gives a step another place among the steps of its job.',
    undoes: true,
    fields: z.strictObject({ id, to: whole(0, 1000) }),
    run({ id: stepId, to }: OperationFields<'moveStep'>, edit) {
      const { job } = edit.need('steps', stepId, 'id');
      const others = stepsOf(edit, job).filter(([other]) => other !== stepId);
      if (to > others.length) refuse('to', `${to} is past the last place`, `a place from 0 to ${others.length}`);
      const before = others[to - 1]?.[1].order;
      const after = others[to]?.[1].order;
      const between =
        before === undefined
          ? after === undefined
            ? 0
            : after - 1
          : after === undefined
            ? before + 1
            : (before + after) / 2;
      if (between !== before && between !== after) edit.set('steps', stepId, { order: between });
      else {
        const ids = others.map(([other]) => other);
        ids.splice(to, 0, stepId);
        ids.forEach((other, order) => {
          edit.set('steps', other, { order });
        });
      }
      if (stepsOf(edit, job).some(([, one]) => one.follows !== null)) checkOrder(edit);
      return null;
    },
  },
  startStep: {
    title: 'Start a step',
    does: 'Says that a step is under way, since when, by whom and until when it is expected to take.',
    undoes: true,
    fields: z.strictObject({
      id,
      started: z.exactOptional(at),
      expected: z.exactOptional(at),
      hands: z.exactOptional(list(id)),
    }),
    run({ id: stepId, expected, hands, ...given }: OperationFields<'startStep'>, edit) {
      const { started = edit.now } = given;
      const step = edit.need('steps', stepId, 'id');
      if (step.progress.kind === 'done')
        refuse('id', `${asGiven(step.title)} is done already`, 'a step that is still open');
      const until = expected ?? minutesLater(started, step.minutes.likely);
      checkTimes('expected', started, until);
      edit.set('steps', stepId, {
        progress: { kind: 'under way', started, expected: until, hands: hands ?? ['keeper'] },
      });
      return null;
    },
  },
  stepTookLonger: {
    title: 'Took longer',
    does: 'Says when a step that is under way is now expected to be finished.',
    undoes: true,
    fields: z.strictObject({ id, expected: at }),
    run({ id: stepId, expected }: OperationFields<'stepTookLonger'>, edit) {
      const { progress, title: name } = edit.need('steps', stepId, 'id');
      if (progress.kind !== 'under way') {
        return refuse(
          'id',
          `${asGiven(name)} is ${progress.kind === 'done' ? 'done' : 'not started'}`,
          'a step that is under way',
        );
      }
      checkTimes('expected', progress.started, expected);
      edit.set('steps', stepId, { progress: { ...progress, expected } });
      return null;
    },
  },
  tickStep: {
    title: 'Done',
    does: 'Says that a step is done, with its times and what of the stores it used, and writes it to the log.',
    undoes: true,
    fields: z.strictObject({
      id,
      started: z.exactOptional(at),
      finished: z.exactOptional(at),
      spent_min: z.exactOptional(z.nullable(number(0, 100_000))),
      who: z.exactOptional(text),
      text: z.exactOptional(text),
      used: z.exactOptional(list(usedStoreSchema)),
    }),
    run(fields: OperationFields<'tickStep'>, edit) {
      const { who = '' } = fields;
      const step = edit.need('steps', fields.id, 'id');
      if (step.progress.kind === 'done')
        refuse('id', `${asGiven(step.title)} is done already`, 'a step that is still open');
      const known = fields.started ?? (step.progress.kind === 'under way' ? step.progress.started : null);
      // where another device, with a fast clock, started it later than it is here, it is finished no earlier than that
      const now = known !== null && Date.parse(known) > Date.parse(edit.now) ? known : edit.now;
      const { finished = now } = fields;
      const started = known ?? minutesLater(finished, -(fields.spent_min ?? step.minutes.likely));
      checkTimes('finished', started, finished);
      const between = known === null ? null : Math.round((Date.parse(finished) - Date.parse(started)) / 60_000);
      edit.set('steps', fields.id, { progress: { kind: 'done', started, finished } });
      logged(edit, {
        at: finished,
        kind: 'step done',
        job: step.job,
        step: fields.id,
        zone: step.zone,
        who,
        spent_min: fields.spent_min === undefined ? between : fields.spent_min,
        text: fields.text ?? step.title,
      });
      takeOut(edit, fields.id, fields.used ?? [], who);
      endTimer(edit, fields.id, null);
      return null;
    },
  },
  untickStep: {
    title: 'Not done after all',
    does: 'Says that a step is open again, and notes it in the log.',
    undoes: true,
    fields: one,
    run({ id: stepId }: OperationFields<'untickStep'>, edit) {
      const step = edit.need('steps', stepId, 'id');
      if (step.progress.kind === 'open')
        refuse('id', `${asGiven(step.title)} is open`, 'a step that is done or under way');
      edit.set('steps', stepId, { progress: { kind: 'open' } });
      if (step.progress.kind === 'done') {
        logged(edit, {
          kind: 'taken back',
          job: step.job,
          step: stepId,
          zone: step.zone,
          text: `Not done after all: ${step.title}`,
          ...correcting(edit, (entry) => entry.kind === 'step done' && entry.step === stepId),
        });
      }
      return null;
    },
  },
} satisfies Partial<Operations>;
