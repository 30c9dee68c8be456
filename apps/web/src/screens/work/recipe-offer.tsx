/** Recipes that a line may want: one is taken for this boat, with its sizes, stores and tools, before the job goes in. */
import { useEffect, useMemo, useState } from 'react';
import type { OperationFields } from '#boat-book';
import { type Recipe, recipesFor } from '#jobs';
import { keptInWords, recipesOfBook, recipeTaken, zoneOfRecipe } from '#reckoning';
import { ChoiceField } from '../../parts/choice-fields.tsx';
import { type Faults, formReading } from '../../parts/read-form.ts';
import { NumberField } from '../../parts/text-fields.tsx';
import type { Run } from '../../parts/use-run.ts';
import type { useOpenBook } from '../../reading/use-open-book.ts';
import { recipeExtent } from './recipe-words.ts';
import './recipe-offer.css';

type Job = OperationFields<'addJob'>;

/** Puts a job in by the recipe chosen; null where a size could not be read. */
export type PutInByRecipe = (job: Job, run: Run) => Promise<Awaited<ReturnType<Run>> | null>;

/** What a recipe says of a job that the line did not. */
export type SaidByRecipe = Pick<Recipe, 'title' | 'consequence'> & { readonly zone: string | null };

const newId = () => {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `r${Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')}`;
};

export default function RecipeOffer({
  book,
  said,
  onChoose,
  onTake,
}: {
  readonly book: ReturnType<typeof useOpenBook>;
  readonly said: string;
  readonly onChoose: (said: SaidByRecipe | null) => void;
  /** the way to put the job in by the recipe; null: none is chosen */
  readonly onTake: (take: PutInByRecipe | null) => void;
}) {
  const [chosen, setChosen] = useState('');
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [faults, setFaults] = useState<Faults<string>>({});
  const byId = recipesOfBook(book);
  const found = useMemo(() => recipesFor(said, byId), [said, byId]);
  const options = useMemo(
    () =>
      Object.entries(byId)
        .map(([value, { title }]) => ({ value, name: title }))
        .sort((a, b) => a.name.localeCompare(b.name)),
    [byId],
  );
  const recipe = chosen === '' ? undefined : byId[chosen];

  const { sizes, faults: wrong } = useMemo(() => readSizes(recipe, typed), [recipe, typed]);
  useEffect(() => {
    if (!recipe) {
      onTake(null);
      return;
    }
    onTake(async (job, run) => {
      setFaults(wrong);
      if (Object.keys(wrong).length > 0) return null;
      const { steps: _, ...rest } = job;
      const said = { ...rest, zone: job.zone ?? null, recipe: chosen };
      return run('takeRecipe', recipeTaken(recipe, book, { job: said, sizes, newId }).take);
    });
    return () => onTake(null);
  }, [recipe, chosen, book, sizes, wrong, onTake]);

  const choose = (id: string) => {
    const next = id === '' ? undefined : byId[id];
    setChosen(id);
    setTyped({});
    setFaults({});
    onChoose(next ? { title: next.title, consequence: next.consequence, zone: zoneOfRecipe(next, book) } : null);
  };

  return (
    <section aria-labelledby="recipe-offer" className="recipe-offer">
      <h2 id="recipe-offer">Steps from a recipe</h2>
      {!recipe && (
        <>
          {found.map((id) => (
            <button key={id} type="button" className="recipe-found" onClick={() => choose(id)}>
              <b>{byId[id]!.title}</b>
              <span className="soft small">{recipeExtent(byId[id]!)}</span>
            </button>
          ))}
          <ChoiceField
            label={found.length === 0 ? 'A recipe' : 'Another recipe'}
            value={chosen}
            onChange={choose}
            none="none: as it is written above"
            options={options}
          />
        </>
      )}
      {recipe && (
        <Chosen
          recipe={recipe}
          book={book}
          typed={typed}
          sizes={sizes}
          faults={faults}
          onTyped={(id, text) => {
            const { [id]: _, ...others } = faults;
            setFaults(others);
            setTyped({ ...typed, [id]: text });
          }}
          onLeave={() => choose('')}
        />
      )}
    </section>
  );
}

function readSizes(recipe: Recipe | undefined, typed: Readonly<Record<string, string>>) {
  const form = formReading<string>();
  const sizes: Record<string, number> = {};
  for (const { id, unit, low, high, whole } of recipe?.asks ?? []) {
    const figure = form.figureOrNone(id, typed[id] ?? '', { min: low, max: high, unit, whole });
    if (figure !== null && !Number.isNaN(figure)) sizes[id] = figure;
  }
  return { sizes, faults: form.faults };
}

function Chosen({
  recipe,
  book,
  typed,
  sizes,
  faults,
  onTyped,
  onLeave,
}: {
  readonly recipe: Recipe;
  readonly book: ReturnType<typeof useOpenBook>;
  readonly typed: Readonly<Record<string, string>>;
  readonly sizes: Readonly<Record<string, number>>;
  readonly faults: Faults<string>;
  readonly onTyped: (id: string, text: string) => void;
  readonly onLeave: () => void;
}) {
  const { stores, tools, notes } = useMemo(() => {
    let made = 0;
    const job = { title: recipe.title, consequence: recipe.consequence, zone: null };
    return recipeTaken(recipe, book, { job, sizes, newId: () => `shown-${++made}` });
  }, [recipe, book, sizes]);
  const keptIn = (store: string) => {
    const words = keptInWords(book.stowages, book.stores[store]!);
    return words === null ? '' : `, ${words}`;
  };
  return (
    <>
      <p>
        <b>{recipe.title}</b>, {recipeExtent(recipe)}. <span className="soft">{recipe.when}</span>
      </p>
      {recipe.asks.length > 0 && (
        <fieldset className="field">
          <legend>Measured on her, for the amounts</legend>
          {recipe.asks.map(({ id, words, unit, low, high, whole }) => (
            <NumberField
              key={id}
              label={words.charAt(0).toUpperCase() + words.slice(1)}
              unit={`${low} to ${high}${unit && ` ${unit}`}`}
              whole={whole}
              value={typed[id] ?? ''}
              onChange={(text) => onTyped(id, text)}
              refused={faults[id]}
            />
          ))}
        </fieldset>
      )}
      <ol className="recipe-steps">
        {[...recipe.steps, recipe.proof.step].map((step, index) => (
          <li key={step.title}>
            {index === recipe.steps.length && <b>Proof: </b>}
            {step.title} <span className="soft small">{step.minutes.likely} min</span>
            {step.waits.map(({ title }) => (
              <span key={title} className="recipe-wait small">
                then wait: {title}
              </span>
            ))}
          </li>
        ))}
      </ol>
      {stores.length > 0 && (
        <>
          <h3>It takes</h3>
          <ul className="recipe-stores">
            {stores.map(({ name, amount, store }) => (
              <li key={name}>
                {name}, {amount.kind === 'known' ? amount.words : amount.because}.{' '}
                <span className="soft">
                  {store === null
                    ? 'Goes on the list to get.'
                    : `${book.stores[store]!.onHand ? 'In stores' : 'On the list to get already'}: ${book.stores[store]!.name}${keptIn(store)}. See that it is the size and enough.`}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      {tools.length > 0 && (
        <p className="small">
          Not among the tools yet, and goes there as one of each: {tools.join(', ')}. Take out under Stores what you do
          not have.
        </p>
      )}
      {notes.map((note) => (
        <p key={note} className="small">
          {note}
        </p>
      ))}
      <p className="soft small">
        Minutes are common practice: what steps really take tunes them. Each step can be changed once the job is in.
      </p>
      <button type="button" onClick={onLeave}>
        Leave this recipe
      </button>
    </>
  );
}
