/** Operations at the end of a job: its proof, what it leaves to be done, and what belongs in the log. */
import { z } from 'zod/mini';
import { type Edit, refuse } from './edit.ts';
import { day, id, list, text, title } from './field-schemas.ts';
import { newJobSchema, putJob } from './job-operations.ts';
import { takeRigOut } from './jury-rig-operations.ts';
import { logged, proofOf } from './log-entry.ts';
import type { Operations } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import { proofKind } from './recipe-schemas.ts';
import type { Id } from './records.ts';

const proofSchema = z.strictObject({ by: proofKind, found: title });

/** Refuses to finish a job whose recipe names a proof that was neither shown nor said to be wanting. */
function refuseUnproved(edit: Edit, jobId: Id): void {
  const step = [...edit.all('steps')].find(([, one]) => one.job === jobId && one.proof !== undefined)?.[1];
  if (step === undefined) return;
  if (proofOf(Object.fromEntries(edit.all('log')), jobId) === null)
    refuse(
      'proof',
      `its proof is owed: ${asGiven(step.title)}`,
      'what the proof showed, with its figure, or why it is not proved',
    );
}

/** What was shown is done: the step that is the proof is ticked with it. Returns that step; null: the job has none. */
function tickProof(edit: Edit, jobId: Id): Id | null {
  const found = [...edit.all('steps')].find(([, one]) => one.job === jobId && one.proof !== undefined);
  if (found === undefined) return null;
  const [id, { progress }] = found;
  if (progress.kind !== 'done') {
    const begun = progress.kind === 'under way' ? progress.started : edit.now;
    // where another device, with a fast clock, started it later than it is here, it is finished no earlier than that
    const finished = Date.parse(begun) > Date.parse(edit.now) ? begun : edit.now;
    edit.set('steps', id, { progress: { kind: 'done', started: begun, finished } });
  }
  return id;
}

export const finishOperations = {
  finishJob: {
    title: 'Finish a job',
    does: 'Says that a job is done, with its proof or why it has none, puts in what follows from it, and writes it to the log.',
    undoes: true,
    fields: z.strictObject({
      id,
      closed: z.exactOptional(day),
      who: z.exactOptional(text),
      proof: z.exactOptional(proofSchema),
      notProved: z.exactOptional(title),
      writtenDown: z.exactOptional(title),
      followUps: z.exactOptional(list(newJobSchema)),
      rigsOut: z.exactOptional(list(id)),
    }),
    run(fields: OperationFields<'finishJob'>, edit) {
      const {
        id: jobId,
        who = '',
        proof,
        notProved,
        writtenDown,
        followUps = [],
        rigsOut = [],
        closed = edit.today,
      } = fields;
      const job = edit.need('jobs', jobId, 'id');
      if (job.state === 'done') refuse('id', `${asGiven(job.title)} is done already`, 'a job that is still open');
      if (closed < job.opened)
        refuse('closed', `${closed} is before it was put in, ${job.opened}`, `${job.opened} or later`);
      if (proof !== undefined && notProved !== undefined)
        refuse('notProved', 'it is said to be proved and not to be', 'one of the two');
      // the job first, so that undo is called by its name
      edit.set('jobs', jobId, { state: 'done', closed });
      if (proof !== undefined) {
        const step = tickProof(edit, jobId);
        logged(edit, { kind: 'proved', job: jobId, step, who, text: `Proved by ${proof.by}: ${proof.found}` });
      } else if (notProved === undefined) refuseUnproved(edit, jobId);
      const unproved = notProved === undefined ? '' : `. Not proved, because ${notProved}`;
      logged(edit, { kind: 'job done', job: jobId, who, text: `${job.title}${unproved}` });
      if (writtenDown !== undefined) logged(edit, { kind: 'note', job: jobId, who, text: writtenDown });
      for (const [n, rig] of rigsOut.entries()) {
        if (edit.need('juryRigs', rig, `rigsOut › ${n + 1}.`).job !== jobId)
          refuse(`rigsOut › ${n + 1}.`, `it does not stand in for ${asGiven(job.title)}`, 'a jury rig of this job');
        takeRigOut(edit, rig, null);
      }
      for (const followUp of followUps) putJob(edit, { ...followUp, followsJob: jobId });
      return null;
    },
  },
  failProof: {
    title: 'It did not hold',
    does: 'Writes to the log that a job did not stand its proof; the job stays open.',
    undoes: true,
    fields: z.strictObject({ id, proof: proofSchema, who: z.exactOptional(text) }),
    run({ id: jobId, proof, who = '' }: OperationFields<'failProof'>, edit) {
      edit.need('jobs', jobId, 'id');
      return logged(edit, {
        kind: 'measured',
        job: jobId,
        who,
        text: `Did not stand its proof by ${proof.by}: ${proof.found}`,
      });
    },
  },
} satisfies Partial<Operations>;
