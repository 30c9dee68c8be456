/** Operations on the morning lists: what a keeper changes of them, and what is ticked, fails and is done. */
import { z } from 'zod/mini';
import { contentId } from './canonical.ts';
import { type Edit, refuse } from './edit.ts';
import { id, list, text, title } from './field-schemas.ts';
import { juryRigOperations } from './jury-rig-operations.ts';
import { juryRigSchema } from './jury-rig-schemas.ts';
import { logged } from './log-entry.ts';
import type { MorningLineRecord, MorningTick } from './morning-records.ts';
import { lineNamed, morningLineSchema, morningTickSchema } from './morning-schemas.ts';
import { type Operations, someOf, without } from './operation.ts';
import type { OperationFields } from './operation-fields.ts';
import { asGiven } from './plain-words.ts';
import { putTaken, takenFields } from './recipe-operations.ts';
import type { Id } from './records.ts';

const { list: listName, place } = morningLineSchema.shape;
const ofTick = without(morningTickSchema, ['line', 'came', 'job', 'at', 'order', 'text']);
const ofLine = { ...ofTick, line: lineNamed, text: title };

/** Refuses a tick of a line that has one in this round, or of a list that is done. */
function refuseTicked(
  edit: Edit,
  said: Pick<MorningTick, 'outing' | 'list' | 'round' | 'text'>,
  of: string | null,
): void {
  edit.need('outings', said.outing, 'outing');
  for (const [, tick] of edit.all('morningTicks')) {
    if (tick.outing !== said.outing || tick.list !== said.list || tick.round !== said.round) continue;
    if (tick.line === null) refuse('round', 'this list is done already', 'the next time round, or undo');
    if (tick.line === of) refuse('line', `${asGiven(said.text)} is ticked already`, 'a line that is not ticked');
  }
}

/** A house line's change has one id on every device, so that two that change it change the same one. */
const lineId = (of: Pick<MorningLineRecord, 'list' | 'outing' | 'of'>): Id => contentId({ ...of });

export const morningOperations = {
  addMorningLine: {
    title: 'Put in a line',
    does: 'Puts a line of the keeper’s own in a morning list, of one outing or of all.',
    undoes: true,
    fields: z.strictObject({ list: listName, outing: z.nullable(id), place, text: title }),
    run(fields: OperationFields<'addMorningLine'>, edit) {
      return edit.put('morningLines', { ...fields, of: null, out: null, setAside: [] });
    },
  },
  changeMorningLines: {
    title: 'Change a morning list',
    does: 'Changes the words, place or order of lines of a morning list, takes them out or puts them back.',
    undoes: true,
    fields: z.strictObject({
      list: listName,
      lines: list(
        z.strictObject({
          ...someOf(morningLineSchema, ['list', 'outing', 'of']),
          of: lineNamed,
          outing: z.nullable(id),
        }),
      ).check(z.minLength(1)),
    }),
    run({ list: which, lines }: OperationFields<'changeMorningLines'>, edit) {
      for (const { of, outing, ...change } of lines) {
        // a line of the keeper's own is changed itself where it is of the same list and outing
        const own = edit.find('morningLines', of);
        if (own !== null && own.of === null && own.list === which && own.outing === outing) {
          if (change.text === null) refuse('text', 'a line of your own has no other words', 'some words');
          edit.set('morningLines', of, change);
          continue;
        }
        const key = { list: which, outing, of };
        const record = lineId(key);
        if (edit.find('morningLines', record) === null)
          edit.put('morningLines', { ...key, text: null, out: null, place: null, setAside: [], ...change }, record);
        else edit.set('morningLines', record, change);
      }
      return null;
    },
  },
  tickMorningLine: {
    title: 'Tick',
    does: 'Ticks one line of a morning list, with the time.',
    undoes: true,
    fields: z.strictObject(ofLine),
    run(fields: OperationFields<'tickMorningLine'>, edit) {
      refuseTicked(edit, fields, fields.line);
      return edit.fix('morningTicks', { ...fields, came: 'good', job: null, at: edit.now });
    },
  },
  untickMorningLine: {
    title: 'Not done after all',
    does: 'Opens one line of a morning list again; a job that was made of it stays.',
    undoes: true,
    fields: z.strictObject({ id }),
    run({ id: tick }: OperationFields<'untickMorningLine'>, edit) {
      const { line: of } = edit.need('morningTicks', tick, 'id');
      if (of === null) refuse('id', 'this is the whole list, not a line of it', 'undo, or the list again');
      edit.unfix('morningTicks', tick);
      return null;
    },
  },
  failMorningLine: {
    title: 'Not right',
    does: 'Ticks a line of a morning list as not right and makes the job of it, with what its recipe takes, and the jury rig that stands in for it where it is mended for now.',
    undoes: true,
    fields: z.strictObject({
      ...ofLine,
      ...takenFields,
      juryRig: z.nullable(z.strictObject(without(juryRigSchema, ['state', 'job']))),
    }),
    run({ job, tools, mixes, stores, juryRig, ...fields }: OperationFields<'failMorningLine'>, edit) {
      refuseTicked(edit, fields, fields.line);
      const made = putTaken(edit, { job, tools, mixes, stores });
      if (juryRig !== null) juryRigOperations.addJuryRig.run({ ...juryRig, job: made }, edit);
      edit.fix('morningTicks', { ...fields, came: 'failed', job: made, at: edit.now });
      return made;
    },
  },
  finishMorningList: {
    title: 'The list is done',
    does: 'Says that a morning list is done, and writes what was ticked, failed and left to the log.',
    undoes: true,
    fields: z.strictObject({ ...ofTick, text }),
    run(fields: OperationFields<'finishMorningList'>, edit) {
      refuseTicked(edit, fields, null);
      const { text: words, ...tick } = fields;
      const { outing, who } = tick;
      logged(edit, { kind: 'outing', of: { collection: 'outings', id: outing }, who, text: words });
      return edit.fix('morningTicks', { ...tick, text: '', line: null, came: 'list done', job: null, at: edit.now });
    },
  },
} satisfies Partial<Operations>;
