/** Makes a recipe of the keeper's own from a job: what the job does not say is asked. */
import type { Book, Id, RecipeRecord } from '#boat-book';
import type { Recipe, RecipeProof } from '#jobs';
import { recipeFromJob, recipeIdNow, recipesOfBook, stepsForRecipe } from '#reckoning';
import { PickField } from '../../parts/choice-fields.tsx';
import { countInWords } from '../../parts/in-words.ts';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { address, goTo } from '../../shell/route.ts';
import { linesOf } from './keep-recipe.ts';
import { groupField, proofField } from './recipe-fields.tsx';

type Field = 'title' | 'group' | 'when' | 'words' | 'kind' | 'proofTitle' | 'proofMinutes';

export default function RecipeFromJobSheet({
  book,
  job: id,
  onClose,
}: {
  readonly book: Book;
  readonly job: Id;
  readonly onClose: () => void;
}) {
  const job = book.jobs[id]!;
  const steps = stepsForRecipe(book, id);
  const last = steps.at(-1)?.[1];
  const from = job.recipe === undefined ? null : recipeIdNow(book, job.recipe);
  const origin = from === null ? undefined : recipesOfBook(book)[from];
  const { draft, set, changed } = useDraft({
    title: job.title,
    group: (origin?.group ?? '') as Recipe['group'] | '',
    when: job.why,
    words: origin?.words.join('\n') ?? '',
    kind: (last?.proof ?? '') as RecipeProof['kind'] | '',
    proof: (steps.length > 1 ? 'last' : 'own') as 'last' | 'own',
    proofTitle: '',
    proofMinutes: '',
  });

  const read = (form: FormReading<Field>): RecipeRecord | null => {
    const words = linesOf(draft.words);
    if (words.length === 0) form.refuse('words', 'There is nothing to find it by. Give what you would say for it.');
    const title = form.words('title', draft.title, 'Say what kind of job it is.');
    const when = form.words('when', draft.when, 'Say what shows that it is needed.');
    const group = form.chosen('group', draft.group, 'Choose what it is about.');
    const kind = form.chosen('kind', draft.kind, 'Choose how it is shown to hold.');
    const own = draft.proof === 'own';
    const shown = own ? form.words('proofTitle', draft.proofTitle, 'Say how it is shown to hold.') : '';
    const minutes = own
      ? form.figure('proofMinutes', draft.proofMinutes, { min: 1, max: 1440, unit: 'min', whole: true })
      : 1;
    if (!form.sound()) return null;
    return recipeFromJob(book, id, {
      title,
      group,
      when,
      words,
      proof: own
        ? { kind, step: { title: shown, minutes: { low: minutes, likely: minutes, high: minutes } } }
        : { kind, step: 'last' },
    });
  };

  return (
    <RecordSheet<Field, RecipeRecord | null>
      title="Make a recipe of this job"
      keep="Make it"
      unsaved={changed}
      read={read}
      onKeep={async (recipe, run) => {
        if (recipe === null)
          return { kind: 'refused', where: 'steps', wrong: 'there is no step besides the proof', right: 'a step more' };
        const outcome = await run('addRecipe', recipe);
        if (outcome.kind === 'done' && outcome.id !== null) goTo(address('work', 'recipe', outcome.id));
        return outcome;
      }}
      onClose={onClose}
    >
      {(faults) => (
        <>
          <p className="soft">
            Its {countInWords(steps.length, 'step')} with what they really took, their waits, tools, stores and cautions
            go in as they are. Everything can be changed on the recipe’s page.
          </p>
          <TextField
            label="What kind of job"
            value={draft.title}
            onChange={(text) => set('title', text)}
            refused={faults.title}
          />
          <TextField
            label="When it is needed"
            rows={2}
            value={draft.when}
            onChange={(text) => set('when', text)}
            refused={faults.when}
          />
          <TextField
            label="Words to find it by"
            note="One to a line, as you would say it."
            rows={3}
            value={draft.words}
            onChange={(text) => set('words', text)}
            refused={faults.words}
          />
          {groupField(draft.group, (group) => set('group', group), faults.group)}
          {steps.length > 1 && (
            <PickField
              label="Its proof"
              value={draft.proof}
              onChange={(proof) => set('proof', proof)}
              options={[
                { value: 'last', name: `the last step: ${last?.title ?? ''}` },
                { value: 'own', name: 'a step of its own' },
              ]}
            />
          )}
          {proofField(draft.kind, (kind) => set('kind', kind), faults.kind)}
          {draft.proof === 'own' && (
            <>
              <TextField
                label="The proof, in words"
                value={draft.proofTitle}
                onChange={(text) => set('proofTitle', text)}
                refused={faults.proofTitle}
              />
              <NumberField
                label="It takes"
                unit="min"
                whole
                value={draft.proofMinutes}
                onChange={(text) => set('proofMinutes', text)}
                refused={faults.proofMinutes}
              />
            </>
          )}
        </>
      )}
    </RecordSheet>
  );
}
