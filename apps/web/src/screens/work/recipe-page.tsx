/** One recipe, readable: when it is needed, its steps with times, waits and cautions, what it takes, and its proof. */
import { Fragment, useState } from 'react';
import { type Recipe, type RecipeStep, recipeFaults } from '#jobs';
import { recipeIdNow, recipesOfBook } from '#reckoning';
import { RefusalLine } from '../../parts/form.tsx';
import { capital, listInWords, minutesInWords } from '../../parts/in-words.ts';
import { consequenceName, Mark } from '../../parts/mark.tsx';
import { onDemand } from '../../parts/on-demand.tsx';
import { useRun } from '../../parts/use-run.ts';
import { conditionsInWords } from '../../reading/step-in-words.ts';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address, goTo } from '../../shell/route.ts';
import { amountInWords, followUpTimeInWords, proofNames, recipeExtent, recipeLawInWords } from './recipe-words.ts';
import './job-page.css';
import './recipe-page.css';

const RecipeSheet = onDemand(() => import('./recipe-sheet.tsx'));
const RecipeStepSheet = onDemand(() => import('./recipe-step-sheet.tsx'));

type Open = { readonly sheet: 'recipe' } | { readonly sheet: 'step'; readonly at: number | 'proof' | 'new' };

export default function RecipePage({ id: named }: { readonly id: string }) {
  const book = useOpenBook();
  const [open, setOpen] = useState<Open | null>(null);
  const { run, refusal } = useRun();
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
  const own = book.recipes[id];
  const from = own?.fromJob == null ? undefined : book.jobs[own.fromJob];
  // two steps may have one title
  const steps = recipe.steps.map((step, index) => ({ step, index, key: `${index} ${step.title}` }));
  const faults = own === undefined ? [] : recipeFaults(own);
  const close = () => setOpen(null);
  return (
    <div className="recipe">
      <p className="job-back no-print">
        <a className="button words" href={address('work', 'recipes')}>
          ‹ Recipes
        </a>
      </p>
      <h1>{recipe.title}</h1>
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
        <StepTold
          key={key}
          recipe={recipe}
          step={step}
          heading={`${index + 1}. ${step.title}`}
          change={`Change step ${index + 1}`}
          onChange={() => setOpen({ sheet: 'step', at: index })}
        />
      ))}
      <h2>Proof: {proofNames[recipe.proof.kind]}</h2>
      <StepTold
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
    </div>
  );
}

function StepTold({
  recipe,
  step,
  heading,
  change,
  onChange,
}: {
  readonly recipe: Recipe;
  readonly step: RecipeStep;
  readonly heading: string;
  readonly change: string;
  readonly onChange: () => void;
}) {
  const { low, likely, high } = step.minutes;
  const asks = [
    step.hands > 1 ? `${step.hands} pairs of hands` : '',
    step.notAlone ? 'not alone' : '',
    ...conditionsInWords(step.needs),
    ...step.setUps.map(({ setUp, state }) => `${setUp} ${state}`),
    ...step.features.map((feature) => (feature === 'level' ? 'level ground' : feature)),
    step.dusty ? 'makes dust' : '',
    step.wet ? 'leaves a wet finish' : '',
  ].filter((each) => each !== '');
  return (
    <section className="recipe-step" aria-label={heading}>
      <h3>{heading}</h3>
      <p className="soft small">
        {low === high ? minutesInWords(likely) : `${low} to ${high} min, likely ${minutesInWords(likely)}`}
        {asks.length > 0 && `. Needs: ${asks.join(', ')}`}
      </p>
      {step.cautions.map((caution) => (
        <p key={caution} className="job-caution">
          {caution}
        </p>
      ))}
      {step.tools.length > 0 && <p className="small">Tools: {listInWords([...step.tools])}.</p>}
      {step.stores.map((store) => (
        <p key={store.name} className="small">
          Takes <b>{store.name}</b>: {amountInWords(store.amount, recipe)}
          {store.pack &&
            `, in ${store.pack.word}s of ${store.pack.holds}${store.amount.unit && ` ${store.amount.unit}`}`}
          .
        </p>
      ))}
      {step.mix && (
        <p className="small">
          Mixed: {step.mix.name}, {step.mix.mixing_min} min to mix, {minutesInWords(step.mix.potLife_min)} in the pot at
          20 °C{step.mix.ratio && `, ${step.mix.ratio.resin} to ${step.mix.ratio.hardener} by ${step.mix.ratio.by}`}.
          Steps with the same mix may share a batch.
        </p>
      )}
      {step.window && (
        <p className="small">
          Within {minutesInWords(step.window.greatest_min)} of the step before
          {step.window.past.kind === 'abrade' ? `; later it is abraded first, ${step.window.past.minutes} min` : ''}.
        </p>
      )}
      {step.waits.map((wait) => (
        <Fragment key={wait.title}>
          <p className="job-wait small">
            <span className="job-hatch" aria-hidden="true" />
            <span>
              Then wait: {wait.title}, {recipeLawInWords(wait.law)}
              {wait.needs.dry && ', stays dry'}
              {wait.needs.air_min_C !== undefined && `, above ${wait.needs.air_min_C} °C`}
              {wait.wet && ', no dust near it'}.
            </span>
          </p>
        </Fragment>
      ))}
      <p className="job-step-acts">
        <button type="button" className="words" onClick={onChange} aria-label={change}>
          Change
        </button>
      </p>
    </section>
  );
}
