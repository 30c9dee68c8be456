/** Changes what is said of a recipe as a whole: its name, when it is needed, how it is found, what follows. */
import { useState } from 'react';
import type { FollowUpTime, RecipeFollowUp } from '#jobs';
import { PickField } from '../../parts/choice-fields.tsx';
import { consequenceName } from '../../parts/mark.tsx';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { consequences } from '../../reading/open-work.ts';
import { keepRecipe, linesOf, type RecipeKept } from './keep-recipe.ts';
import { groupField, ownIfHouse } from './recipe-fields.tsx';

interface FollowDraft {
  readonly key: string;
  readonly title: string;
  readonly because: string;
  readonly likely: string;
  readonly kind: FollowUpTime['kind'];
  readonly least: string;
  readonly most: string;
  /** as it was; null: a new one */
  readonly was: RecipeFollowUp | null;
}
type FollowField = 'title' | 'because' | 'likely' | 'least' | 'most';
type Field = 'title' | 'when' | 'words' | `${number} ${FollowField}`;

const draftOf = (was: RecipeFollowUp): FollowDraft => ({
  key: crypto.randomUUID(),
  title: was.title,
  because: was.because,
  likely: String(was.minutes.likely),
  kind: was.after.kind,
  least: was.after.kind === 'days' ? String(was.after.least_days) : '',
  most: String(was.after.kind === 'days' ? was.after.most_days : was.after.else_days),
  was,
});

export default function RecipeSheet({ onClose, ...kept }: RecipeKept & { readonly onClose: () => void }) {
  const { recipe } = kept;
  const { draft, set, changed } = useDraft({
    title: recipe.title,
    group: recipe.group,
    when: recipe.when,
    words: recipe.words.join('\n'),
    zones: recipe.zones.join('\n'),
    consequence: recipe.consequence,
    writeDown: recipe.writeDown.join('\n'),
  });
  const [follows, setFollows] = useState<readonly FollowDraft[]>(() => recipe.followUps.map(draftOf));
  const [touched, setTouched] = useState(false);
  const setFollow = (index: number, parts: Partial<FollowDraft>) => {
    setTouched(true);
    setFollows(follows.map((each, i) => (i === index ? { ...each, ...parts } : each)));
  };
  const read = (form: FormReading<Field>) => {
    const words = linesOf(draft.words);
    if (words.length === 0) form.refuse('words', 'There is nothing to find it by. Give what you would say for it.');
    return {
      title: form.words('title', draft.title, 'Say what kind of job it is.'),
      group: draft.group,
      when: form.words('when', draft.when, 'Say what shows that it is needed.'),
      words,
      consequence: draft.consequence,
      zones: linesOf(draft.zones),
      writeDown: linesOf(draft.writeDown),
      followUps: follows.map((each, index) => readFollow(each, index, form, draft.consequence)),
    };
  };
  return (
    <RecordSheet<Field, ReturnType<typeof read>>
      title="Change the recipe"
      keep="Keep"
      unsaved={changed || touched}
      read={read}
      onKeep={(parts, run) => keepRecipe(kept, parts, run)}
      onClose={onClose}
    >
      {(faults) => (
        <>
          {ownIfHouse(kept)}
          <TextField
            label="What kind of job"
            value={draft.title}
            onChange={(text) => set('title', text)}
            refused={faults.title}
          />
          <TextField
            label="When it is needed"
            rows={3}
            value={draft.when}
            onChange={(text) => set('when', text)}
            refused={faults.when}
          />
          <TextField
            label="Words to find it by"
            note="One to a line, as you would say it: ‘jib winch’, ‘winch slips’."
            rows={4}
            value={draft.words}
            onChange={(text) => set('words', text)}
            refused={faults.words}
          />
          <TextField
            label="Where it is done"
            note="One to a line, the likeliest first, by the names of zones: ‘foredeck’, ‘mast’. A job goes into the first this boat has."
            rows={2}
            value={draft.zones}
            onChange={(text) => set('zones', text)}
          />
          {groupField(draft.group, (group) => set('group', group))}
          <PickField
            label="If it is left"
            value={draft.consequence}
            onChange={(value) => set('consequence', value)}
            options={consequences.map((value) => ({ value, name: consequenceName[value] }))}
          />
          {follows.map((each, index) => (
            <fieldset key={each.key} className="field step-wait">
              <legend>Followed by</legend>
              <TextField
                label="What"
                value={each.title}
                onChange={(title) => setFollow(index, { title })}
                refused={faults[`${index} title`]}
              />
              <TextField
                label="Why"
                value={each.because}
                onChange={(because) => setFollow(index, { because })}
                refused={faults[`${index} because`]}
              />
              <NumberField
                label="Likely minutes"
                unit="min"
                whole
                value={each.likely}
                onChange={(likely) => setFollow(index, { likely })}
                refused={faults[`${index} likely`]}
              />
              <PickField
                label="When"
                value={each.kind}
                onChange={(kind) => setFollow(index, { kind })}
                options={[
                  { value: 'days', name: 'in some days' },
                  { value: 'next outing', name: 'after the next outing' },
                ]}
              />
              {each.kind === 'days' && (
                <NumberField
                  label="No sooner than"
                  unit="days"
                  whole
                  value={each.least}
                  onChange={(least) => setFollow(index, { least })}
                  refused={faults[`${index} least`]}
                />
              )}
              <NumberField
                label={each.kind === 'days' ? 'No later than' : 'Without an outing, after'}
                unit="days"
                whole
                value={each.most}
                onChange={(most) => setFollow(index, { most })}
                refused={faults[`${index} most`]}
              />
              <button
                type="button"
                className="words removes"
                onClick={() => {
                  setTouched(true);
                  setFollows(follows.filter((_, i) => i !== index));
                }}
              >
                Take this one out
              </button>
            </fieldset>
          ))}
          <p>
            <button
              type="button"
              className="words"
              onClick={() => {
                setTouched(true);
                setFollows([
                  ...follows,
                  {
                    key: crypto.randomUUID(),
                    title: '',
                    because: '',
                    likely: '',
                    kind: 'days',
                    least: '',
                    most: '',
                    was: null,
                  },
                ]);
              }}
            >
              Add what it is followed by
            </button>
          </p>
          <TextField
            label="What to write down when it is done"
            note="One to a line."
            rows={3}
            value={draft.writeDown}
            onChange={(text) => set('writeDown', text)}
          />
        </>
      )}
    </RecordSheet>
  );
}

function readFollow(
  { title, because, likely, kind, least, most, was }: FollowDraft,
  index: number,
  form: FormReading<Field>,
  consequence: RecipeFollowUp['consequence'],
): RecipeFollowUp {
  const days = { min: 0, max: 400, unit: 'days', whole: true };
  const minutes = form.figure(`${index} likely`, likely, { min: 1, max: 1440, unit: 'min', whole: true });
  const most_days = form.figure(`${index} most`, most, { ...days, min: kind === 'days' ? 0 : 1 });
  const least_days = kind === 'days' ? form.figure(`${index} least`, least, days) : 0;
  if (least_days > most_days)
    form.refuse(`${index} most`, `That is sooner than the ${least_days} days it waits at least.`);
  return {
    title: form.words(`${index} title`, title, 'Say what is done then.'),
    because: form.words(`${index} because`, because, 'Say why it is done then.'),
    minutes:
      was !== null && was.minutes.likely === minutes ? was.minutes : { low: minutes, likely: minutes, high: minutes },
    consequence: was?.consequence ?? consequence,
    after: kind === 'days' ? { kind, least_days, most_days } : { kind, else_days: most_days },
  };
}
