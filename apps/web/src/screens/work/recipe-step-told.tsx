/** One step of a recipe, or its proof: its minutes, what it asks, what hurts, what it takes, and what it waits for. */
import { Fragment } from 'react';
import type { Recipe, RecipeStep } from '#jobs';
import { listInWords, minutesInWords } from '../../parts/in-words.ts';
import { conditionsInWords } from '../../reading/step-in-words.ts';
import { amountInWords, recipeLawInWords } from './recipe-words.ts';

export function RecipeStepTold({
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
