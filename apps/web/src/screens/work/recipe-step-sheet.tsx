/** Changes one step of a recipe, or its proof: minutes, what it needs and takes, its waits and cautions. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import { asksOf, type Recipe, type RecipeProof, type RecipeStep, type RecipeStore } from '#jobs';
import { waitInBook, waitOf } from '#reckoning';
import { ChoiceField, ManyField, TickField } from '../../parts/choice-fields.tsx';
import {
  type ConditionsFault,
  ConditionsFields,
  conditionsDraft,
  conditionsOf,
} from '../../parts/conditions-fields.tsx';
import { capital } from '../../parts/in-words.ts';
import type { FormReading } from '../../parts/read-form.ts';
import { RecordSheet } from '../../parts/record-sheet.tsx';
import { NumberField, TextField } from '../../parts/text-fields.tsx';
import { useDraft } from '../../parts/use-draft.ts';
import { keepRecipe, linesOf, type RecipeKept } from './keep-recipe.ts';
import { featureName } from './needs-fields.tsx';
import { ownIfHouse, proofField } from './recipe-fields.tsx';
import {
  type RecipeMixFault,
  RecipeMixFields,
  readRecipeMix,
  recipeMixDraft,
  sharedMix,
} from './recipe-mix-fields.tsx';
import { RecipeSetUpsField } from './recipe-set-ups-field.tsx';
import {
  type RecipeWindowFault,
  RecipeWindowFields,
  readRecipeWindow,
  recipeWindowDraft,
} from './recipe-window-fields.tsx';
import { amountInWords } from './recipe-words.ts';
import { emptyWait, readWait, type WaitDraft, type WaitFault, waitDraft } from './wait-draft.ts';
import { WaitFields } from './wait-fields.tsx';

interface StoreDraft {
  readonly key: string;
  readonly name: string;
  readonly amount: string;
  readonly unit: string;
  /** as it was; null: a new one */
  readonly was: RecipeStore | null;
}

type Field =
  | 'title'
  | 'low'
  | 'likely'
  | 'high'
  | 'hands'
  | ConditionsFault
  | RecipeMixFault
  | RecipeWindowFault
  | `store ${number} ${'name' | 'amount'}`
  | `wait ${number} ${WaitFault}`;

const units = ['', 'mm', 'm', 'm²', 'ml', 'l', 'g', 'kg', 'pair', 'set', 'pack', 'roll', 'tube', 'tin'];

const bare: RecipeStep = {
  title: '',
  minutes: { low: 1, likely: 1, high: 1 },
  hands: 1,
  notAlone: false,
  needs: {},
  features: [],
  tools: [],
  setUps: [],
  stores: [],
  dusty: false,
  wet: false,
  mix: null,
  waits: [],
  window: null,
  cautions: [],
};

export default function RecipeStepSheet({
  book,
  at,
  onClose,
  ...kept
}: RecipeKept & {
  readonly book: Book;
  /** its place among the steps */
  readonly at: number | 'proof' | 'new';
  readonly onClose: () => void;
}) {
  const { recipe } = kept;
  const step = at === 'proof' ? recipe.proof.step : at === 'new' ? null : (recipe.steps[at] ?? null);
  const first = at === 0;
  const { draft, set, changed } = useDraft({
    title: step?.title ?? '',
    low: step ? String(step.minutes.low) : '',
    likely: step ? String(step.minutes.likely) : '',
    high: step ? String(step.minutes.high) : '',
    hands: String(step?.hands ?? 1),
    notAlone: step?.notAlone ?? false,
    needs: conditionsDraft(step?.needs ?? {}),
    tools: step?.tools.join('\n') ?? '',
    dusty: step?.dusty ?? false,
    wet: step?.wet ?? false,
    cautions: step?.cautions.join('\n') ?? '',
    proof: recipe.proof.kind as RecipeProof['kind'],
    setUps: (step?.setUps ?? []) as RecipeStep['setUps'],
    features: (step?.features ?? []) as RecipeStep['features'],
    mix: recipeMixDraft(step?.mix ?? null),
    window: recipeWindowDraft(step?.window ?? null),
    stores: (step?.stores ?? []).map(
      (was): StoreDraft => ({
        key: crypto.randomUUID(),
        name: was.name,
        amount: was.amount.kind === 'set' ? String(was.amount.amount) : '',
        unit: was.amount.unit,
        was,
      }),
    ) as readonly StoreDraft[],
    waits: (step?.waits ?? []).map((wait, n) =>
      waitDraft(waitInBook(book, wait, `wait-${n + 1}`)),
    ) as readonly WaitDraft[],
  });
  const [made, setMade] = useState(draft.waits.length);

  const read = (form: FormReading<Field>): Partial<Recipe> => {
    const minutes = { min: 1, max: 1440, unit: 'min', whole: true };
    const title = form.words('title', draft.title, 'Say what is done.');
    const likely = form.figure('likely', draft.likely, minutes);
    const low = form.figureOrNone('low', draft.low, minutes) ?? likely;
    const high = form.figureOrNone('high', draft.high, minutes) ?? likely;
    if (low > likely) form.refuse('low', `That is more than the likely ${likely} min.`);
    if (high < likely) form.refuse('high', `That is less than the likely ${likely} min.`);
    const hands = form.figure('hands', draft.hands, { min: 0, max: 8, unit: '', whole: true });
    const needs = conditionsOf<Field>(draft.needs, form);
    const stores = draft.stores.flatMap((each, index) => readStore(each, index, form));
    const waits = draft.waits.flatMap((each, index) => {
      const wait = readWait(each);
      if (wait.kind === 'wait') {
        const was = step?.waits[Number(each.id.slice(5)) - 1];
        const now = waitOf(book, { title: recipe.title }, wait.wait);
        // untouched, it keeps its own words, and set-ups this boat does not have
        return [was && sameWait(book, was, each) ? was : now];
      }
      for (const [field, why] of Object.entries(wait.faults)) form.refuse(`wait ${index} ${field as WaitFault}`, why);
      return [];
    });
    const next: RecipeStep = {
      ...(step ?? bare),
      title,
      minutes: { low, likely, high },
      hands,
      notAlone: draft.notAlone,
      needs,
      tools: linesOf(draft.tools),
      dusty: draft.dusty,
      wet: draft.wet,
      cautions: linesOf(draft.cautions),
      stores,
      waits,
      setUps: draft.setUps,
      features: draft.features,
      mix: readRecipeMix(
        draft.mix,
        stores.map(({ name }) => name),
        form,
      ),
      window: first ? null : readRecipeWindow(draft.window, form),
    };
    const shares = (each: RecipeStep): RecipeStep => ({
      ...each,
      mix: sharedMix(next.mix, each.mix, step?.mix?.name),
    });
    const others = recipe.steps.map(shares);
    if (at === 'proof') return withAsks(recipe, { steps: others, proof: { kind: draft.proof, step: next } });
    const steps = at === 'new' ? [...others, next] : others.map((each, i) => (i === at ? next : each));
    return withAsks(recipe, { steps, proof: { ...recipe.proof, step: shares(recipe.proof.step) } });
  };
  const last = recipe.steps.length === 1;
  const taken = draft.stores.map(({ name }) => name.trim()).filter((name) => name !== '');
  const mixesKnown = [
    ...[...recipe.steps, recipe.proof.step].flatMap(({ mix }) => mix?.name ?? []),
    ...Object.values(book.mixes).map(({ name }) => name),
  ];
  const setStore = (index: number, parts: Partial<StoreDraft>) =>
    set(
      'stores',
      draft.stores.map((each, i) => (i === index ? { ...each, ...parts } : each)),
    );

  return (
    <RecordSheet<Field, Partial<Recipe>>
      title={at === 'proof' ? 'Change the proof' : step ? `Change step ${(at as number) + 1}` : 'A new step'}
      keep={step ? 'Keep' : 'Put it in'}
      unsaved={changed}
      read={read}
      onKeep={(parts, run) => keepRecipe(kept, parts, run)}
      onRemove={
        typeof at === 'number' && !last
          ? (run) => keepRecipe(kept, withAsks(recipe, { steps: recipe.steps.filter((_, i) => i !== at) }), run)
          : null
      }
      onClose={onClose}
    >
      {(faults) => (
        <>
          {ownIfHouse(kept)}
          {at === 'proof' && proofField(draft.proof, (kind) => set('proof', kind))}
          <TextField
            label="What is done"
            rows={2}
            value={draft.title}
            onChange={(text) => set('title', text)}
            refused={faults.title}
          />
          <fieldset className="field">
            <legend>Hands-on minutes</legend>
            <div className="field-thirds">
              {(['low', 'likely', 'high'] as const).map((end) => (
                <NumberField
                  key={end}
                  label={capital(end)}
                  unit="min"
                  whole
                  value={draft[end]}
                  onChange={(text) => set(end, text)}
                  refused={faults[end]}
                />
              ))}
            </div>
          </fieldset>
          <NumberField
            label="Pairs of hands"
            unit="0 to 8"
            whole
            value={draft.hands}
            onChange={(text) => set('hands', text)}
            refused={faults.hands}
          />
          <TickField label="Not to be done alone" value={draft.notAlone} onChange={(on) => set('notAlone', on)} />
          <TickField label="It makes dust" value={draft.dusty} onChange={(on) => set('dusty', on)} />
          <TickField
            label="It leaves a wet finish"
            note="Dust then keeps away."
            value={draft.wet}
            onChange={(on) => set('wet', on)}
          />
          <TextField
            label="What can hurt someone here"
            note="One to a line. Shown at the step and on the day sheet."
            rows={3}
            value={draft.cautions}
            onChange={(text) => set('cautions', text)}
          />
          <TextField
            label="Tools"
            note="One to a line."
            rows={3}
            value={draft.tools}
            onChange={(text) => set('tools', text)}
          />
          {draft.stores.map((each, index) => (
            <fieldset key={each.key} className="field step-wait">
              <legend>It takes</legend>
              <TextField
                label="What"
                value={each.name}
                onChange={(name) => setStore(index, { name })}
                refused={faults[`store ${index} name`]}
              />
              <NumberField
                label="How much"
                unit={each.unit || 'by the piece'}
                note={
                  each.was && each.was.amount.kind !== 'set'
                    ? `Empty: ${amountInWords(each.was.amount, recipe)}.`
                    : undefined
                }
                value={each.amount}
                onChange={(amount) => setStore(index, { amount })}
                refused={faults[`store ${index} amount`]}
              />
              {each.was === null && (
                <ChoiceField
                  label="Counted in"
                  value={each.unit}
                  onChange={(unit) => setStore(index, { unit })}
                  none="by the piece"
                  options={units.filter((unit) => unit !== '').map((unit) => ({ value: unit, name: unit }))}
                />
              )}
              <button
                type="button"
                className="words removes"
                onClick={() =>
                  set(
                    'stores',
                    draft.stores.filter((_, i) => i !== index),
                  )
                }
              >
                Take this one out
              </button>
            </fieldset>
          ))}
          <p>
            <button
              type="button"
              className="words"
              onClick={() =>
                set('stores', [
                  ...draft.stores,
                  { key: crypto.randomUUID(), name: '', amount: '', unit: '', was: null },
                ])
              }
            >
              Add something it takes
            </button>
          </p>
          <RecipeMixFields
            draft={draft.mix}
            taken={taken}
            known={[...new Set(mixesKnown)]}
            faults={faults}
            onChange={(mix) => set('mix', mix)}
          />
          {!first && (
            <RecipeWindowFields draft={draft.window} faults={faults} onChange={(window) => set('window', window)} />
          )}
          {draft.waits.map((wait, index) => (
            <WaitFields
              key={wait.id}
              book={book}
              draft={wait}
              faults={waitFaults(faults, index)}
              onChange={(next) =>
                set(
                  'waits',
                  draft.waits.map((other) => (other.id === next.id ? next : other)),
                )
              }
              onRemove={() =>
                set(
                  'waits',
                  draft.waits.filter((other) => other.id !== wait.id),
                )
              }
            />
          ))}
          <p>
            <button
              type="button"
              className="words"
              onClick={() => {
                setMade(made + 1);
                set('waits', [...draft.waits, emptyWait(`wait-${made + 1}`)]);
              }}
            >
              Add a wait after it
            </button>
          </p>
          <RecipeSetUpsField
            book={book}
            label="How she must stand"
            setUps={draft.setUps}
            onChange={(setUps) => set('setUps', setUps)}
          />
          <ManyField
            label="What the place must have"
            values={draft.features}
            onChange={(features) => set('features', features)}
            options={(Object.keys(featureName) as RecipeStep['features'][number][]).map((value) => ({
              value,
              name: featureName[value],
            }))}
            empty=""
          />
          <ConditionsFields draft={draft.needs} onChange={(needs) => set('needs', needs)} faults={faults} />
        </>
      )}
    </RecordSheet>
  );
}

function readStore({ name, amount, unit, was }: StoreDraft, index: number, form: FormReading<Field>): RecipeStore[] {
  const called = form.words(`store ${index} name`, name, 'Say what it is.');
  const words =
    was !== null && was.name === called ? was.words : (called.match(/[\p{L}\p{N}]+/gu)?.slice(0, 2) ?? [called]);
  const keepsRule =
    was !== null && (was.amount.kind === 'set' ? String(was.amount.amount) === amount : amount.trim() === '');
  if (keepsRule) return [{ ...was, name: called, words }];
  const figure = form.figure(`store ${index} amount`, amount, { min: 0.001, max: 10_000, unit });
  const rule = { kind: 'set', amount: figure, unit, because: 'as you wrote it' } as const;
  return [{ name: called, words, amount: rule, size: was?.size ?? null, pack: was?.pack ?? null }];
}

/** Only the sizes that something still hangs on are asked for. */
function withAsks(recipe: Recipe, parts: Pick<Partial<Recipe>, 'steps' | 'proof'>): Partial<Recipe> {
  const { steps, proof } = { ...recipe, ...parts };
  const used = new Set([...steps, proof.step].flatMap((step) => step.stores.flatMap(asksOf)));
  return { ...parts, asks: recipe.asks.filter(({ id }) => used.has(id)) };
}

const sameWait = (book: Book, was: RecipeStep['waits'][number], draft: WaitDraft) =>
  JSON.stringify(waitDraft(waitInBook(book, was, draft.id))) === JSON.stringify(draft);

function waitFaults(faults: Partial<Readonly<Record<Field, string>>>, index: number) {
  const found: Partial<Record<WaitFault, string>> = {};
  for (const [field, why] of Object.entries(faults)) {
    const [, number, name] = /^wait (\d+) (\w+)$/.exec(field) ?? [];
    if (number !== undefined && Number(number) === index && why !== undefined) found[name as WaitFault] = why;
  }
  return found;
}
