/** Operations on jury rigs: made, looked at anew, and taken out. */
import { z } from 'zod/mini';
import { type Edit, refuse } from './edit.ts';
import { day, id, title } from './field-schemas.ts';
import { juryRigSchema, trustFields } from './jury-rig-schemas.ts';
import { logged, proofOf } from './log-entry.ts';
import { type Operations, someOf, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import type { Id, JuryRig } from './records.ts';

function checkJuryRig(rig: JuryRig): void {
  if (rig.trustedUntil < rig.made) {
    refuse('trustedUntil', `${rig.trustedUntil} is before it was made, ${rig.made}`, `${rig.made} or later`);
  }
}

/** Keeps how far a rig is trusted from a day on, with why. */
function keepTrust(edit: Edit, rig: Id, on: string, reason: string, entered = edit.now): void {
  const { trustedUntil, wind_max_kn, sails_max, notOnRoad } = edit.need('juryRigs', rig, 'id');
  edit.fix('rigTrusts', { rig, on, trustedUntil, wind_max_kn, sails_max, notOnRoad, reason, entered });
}

function standing(edit: Edit, rig: Id): JuryRig {
  const found = edit.need('juryRigs', rig, 'id');
  if (found.state === 'removed') refuse('id', `${asGiven(found.title)} is gone already`, 'one that still stands');
  return found;
}

/**
 * Takes a jury rig off the boat. What it stood in for must be done and proved, or it is told why it is out.
 * @param because  null: the proof of its job speaks for it
 */
export function takeRigOut(edit: Edit, id: Id, because: string | null): void {
  const rig = standing(edit, id);
  const job = rig.job === null ? null : edit.find('jobs', rig.job);
  const proof =
    rig.job !== null && job?.state === 'done' ? proofOf(Object.fromEntries(edit.all('log')), rig.job) : null;
  if (because === null && proof === null)
    refuse(
      'because',
      job === null
        ? `${asGiven(rig.title)} stands in for no job whose proof could speak for it`
        : job.state === 'open'
          ? `what it stands in for is not done: ${asGiven(job.title)}`
          : `its job was closed without proof: ${asGiven(job.title)}`,
      'why it is out, and what holds now',
    );
  edit.set('juryRigs', id, { state: 'removed' });
  logRig(edit, id, rig, 'jury rig removed', `${rig.title}: out, because ${because ?? `its job is done. ${proof}`}`);
}

export const juryRigOperations = {
  addJuryRig: {
    title: 'Put in a jury rig',
    does: 'Puts a temporary fix in the book, with how long and within what it is trusted, and writes it to the log.',
    undoes: true,
    fields: z.strictObject({
      ...without(juryRigSchema, ['state']),
      id: z.exactOptional(id),
      trustedBecause: z.exactOptional(title),
    }),
    run({ id: given, trustedBecause, ...fields }: OperationFields<'addJuryRig'>, edit) {
      const rig: JuryRig = { ...fields, state: 'standing' };
      checkJuryRig(rig);
      const made = edit.put('juryRigs', rig, given);
      keepTrust(edit, made, rig.made, trustedBecause ?? 'as it was made');
      logRig(edit, made, rig, 'jury rig made', `${rig.title}, trusted until ${rig.trustedUntil}`);
      return made;
    },
  },
  changeJuryRig: {
    title: 'Change a jury rig',
    does: 'Changes what is said of a jury rig, but not how far it is trusted.',
    undoes: true,
    fields: z.strictObject({
      ...someOf(juryRigSchema, ['state', 'trustedUntil', 'wind_max_kn', 'sails_max', 'notOnRoad']),
      id,
    }),
    run({ id: rig, ...fields }: OperationFields<'changeJuryRig'>, edit) {
      edit.set('juryRigs', rig, fields);
      checkJuryRig(edit.need('juryRigs', rig, 'id'));
      return null;
    },
  },
  trustJuryRig: {
    title: 'Trust a jury rig anew',
    does: 'Gives a jury rig another date that it is trusted until, and other limits, with the reason; what was said before is kept.',
    undoes: true,
    fields: z.strictObject({ id, ...someOf(z.strictObject(trustFields)), trustedUntil: day, reason: title }),
    run({ id: rigId, reason, ...trust }: OperationFields<'trustJuryRig'>, edit) {
      const before = standing(edit, rigId);
      // of a rig from before its trust was kept, what it was trusted to until now is kept first
      if (![...edit.all('rigTrusts')].some(([, one]) => one.rig === rigId))
        keepTrust(edit, rigId, before.made, 'as it was made', `${before.made}T12:00:00Z`);
      edit.set('juryRigs', rigId, trust);
      const rig = edit.need('juryRigs', rigId, 'id');
      checkJuryRig(rig);
      keepTrust(edit, rigId, edit.today, reason);
      logRig(
        edit,
        rigId,
        rig,
        'jury rig trusted',
        `${rig.title}: trusted until ${rig.trustedUntil}, because ${reason}`,
      );
      return null;
    },
  },
  removeJuryRig: {
    title: 'Jury rig is out',
    does: 'Says that a jury rig was taken off the boat, with its job’s proof or the reason, and writes it to the log.',
    undoes: true,
    fields: z.strictObject({ id, because: z.exactOptional(title) }),
    run({ id: rig, because }: OperationFields<'removeJuryRig'>, edit) {
      takeRigOut(edit, rig, because ?? null);
      return null;
    },
  },
} satisfies Partial<Operations>;

function logRig(
  edit: Edit,
  id: Id,
  { job, zone }: JuryRig,
  kind: 'jury rig made' | 'jury rig trusted' | 'jury rig removed',
  words: string,
): void {
  logged(edit, { kind, job, zone, of: { collection: 'juryRigs', id }, text: words });
}
