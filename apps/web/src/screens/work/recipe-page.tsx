/** One recipe, readable: when it is needed, its steps with times, waits and cautions, what it takes, and its proof. */
import { useState } from 'react';
import type { Book } from '#boat-book';
import { type Recipe, recipeFaults } from '#jobs';
import { recipeIdNow, recipesOfBook } from '#reckoning';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { RefusalLine } from '../../parts/form.tsx';
import { capital, listInWords } from '../../parts/in-words.ts';
import { consequenceName, Mark } from '../../parts/mark.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { useRun } from '../../parts/use-run.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address, goTo } from '../../shell/route.ts';
import { RecipeStepTold } from './recipe-step-told.tsx';
import { followUpTimeInWords, proofNames, recipeExtent } from './recipe-words.ts';
import './job-page.css';
import './recipe-page.css';

const RecipeSheet = onDemand(() => import('./recipe-sheet.tsx'));
const RecipeStepSheet = onDemand(() => import('./recipe-step-sheet.tsx'));

type Open = { readonly sheet: 'recipe' } | { readonly sheet: 'step'; readonly at: number | 'proof' | 'new' };

export default function RecipePage({ id: named }: { readonly id: string }) {
  const book = useOpenBook();
  const id = recipeIdNow(book, named);
  const recipe = id === null ? undefined : recipesOfBook(book)[id];
  if (id === null || recipe === undefined)
    return (
      <div className="recipe">
        <h1>No such recipe</h1>
        <p>
          It was taken out of the book, or is in another boat’s. <a href={address('work', 'recipes')}>All recipes</a>
        </p>
      </div>
    );
  return (
    <div className="recipe">
      <p className="job-back no-print">
        <a className="button words" href={address('work', 'recipes')}>
          ‹ Recipes
        </a>
      </p>
      <h1>{recipe.title}</h1>
      <BelowHeading>
        <RecipeBelow book={book} id={id} recipe={recipe} />
      </BelowHeading>
    </div>
  );
}

function RecipeBelow({ book, id, recipe }: { readonly book: Book; readonly id: string; readonly recipe: Recipe }) {
  const [open, setOpen] = useState<Open | null>(null);
  const { run, refusal } = useRun();
  const own = book.recipes[id];
  const from = own?.fromJob == null ? undefined : book.jobs[own.fromJob];
  // two steps may have one title
  const steps = recipe.steps.map((step, index) => ({ step, index, key: `${index} ${step.title}` }));
  const faults = own === undefined ? [] : recipeFaults(own);
  const close = () => setOpen(null);
  return (
    <>
      <p className="job-meaning">
        <Mark of={recipe.consequence} /> {capital(consequenceName[recipe.consequence])} if it is left
      </p>
      <p>{recipe.when}</p>
      {recipe.zones.length > 0 && <p>Done at: {listInWords([...recipe.zones], 'or')}.</p>}
      <p className="soft">
        {capital(recipeExtent(recipe))}, {recipe.group}.{' '}
        {own === undefined
          ? 'Minutes are common practice: what steps really take tunes them.'
          : own.standsFor !== null
            ? 'Your own: changed from the one that came with the program, and in its place. Take it out, and that one is back.'
            : 'Your own.'}
        {from && own?.fromJob && (
          <>
            {' '}
            Made from <a href={address('work', 'job', own.fromJob)}>{from.title}</a>.
          </>
        )}
      </p>
      <div className="job-acts">
        <button type="button" onClick={() => setOpen({ sheet: 'recipe' })}>
          Change
        </button>
        <button type="button" onClick={() => setOpen({ sheet: 'step', at: 'new' })}>
          Add a step
        </button>
        {own && (
          <button
            type="button"
            className="words removes"
            onClick={async () => {
              const outcome = await run('removeRecipe', { id });
              if (outcome.kind === 'done')
                goTo(own.standsFor === null ? address('work', 'recipes') : address('work', 'recipe', own.standsFor));
            }}
          >
            Take it out
          </button>
        )}
      </div>
      <RefusalLine refusal={refusal} />
      {faults.length > 0 && (
        <>
          <h2>Look again at</h2>
          <ul className="recipe-facts">
            {faults.map(({ where, wrong, right }) => (
              <li key={`${where} ${wrong}`}>
                {capital(where)}: {wrong}. What would be right: {right}.
              </li>
            ))}
          </ul>
        </>
      )}
      {recipe.asks.length > 0 && (
        <>
          <h2>Measured first</h2>
          <ul className="recipe-facts">
            {recipe.asks.map(({ id: ask, words, unit, low, high }) => (
              <li key={ask}>
                {capital(words)}: {low} to {high}
                {unit && ` ${unit}`}
              </li>
            ))}
          </ul>
        </>
      )}
      <h2>Steps</h2>
      {steps.map(({ step, index, key }) => (
        <RecipeStepTold
          key={key}
          recipe={recipe}
          step={step}
          heading={`${index + 1}. ${step.title}`}
          change={`Change step ${index + 1}`}
          onChange={() => setOpen({ sheet: 'step', at: index })}
        />
      ))}
      <h2>Proof: {proofNames[recipe.proof.kind]}</h2>
      <RecipeStepTold
        recipe={recipe}
        step={recipe.proof.step}
        heading={recipe.proof.step.title}
        change="Change the proof"
        onChange={() => setOpen({ sheet: 'step', at: 'proof' })}
      />
      {recipe.followUps.length > 0 && (
        <>
          <h2>Usually followed by</h2>
          <ul className="recipe-facts">
            {recipe.followUps.map(({ title, because, after }) => (
              <li key={title}>
                <b>{title}</b>, {followUpTimeInWords(after)}. <span className="soft">{because}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {recipe.writeDown.length > 0 && (
        <>
          <h2>What to write down</h2>
          <ul className="recipe-facts">
            {recipe.writeDown.map((each) => (
              <li key={each}>{capital(each)}</li>
            ))}
          </ul>
        </>
      )}
      {open?.sheet === 'recipe' && <RecipeSheet id={id} recipe={recipe} own={own ?? null} onClose={close} />}
      {open?.sheet === 'step' && (
        <RecipeStepSheet book={book} id={id} recipe={recipe} own={own ?? null} at={open.at} onClose={close} />
      )}
    </>
  );
}
