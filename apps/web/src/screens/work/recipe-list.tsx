/** All recipes, the house's and the keeper's own: found by words, else by what they are about. */
import { useMemo, useState } from 'react';
import type { Book } from '#boat-book';
import { type Recipe, recipesFor } from '#jobs';
import { recipesOfBook } from '#reckoning';
import { BelowHeading } from '../../parts/below-heading.tsx';
import { countInWords } from '../../parts/in-words.ts';
import { MarkedLine } from '../../parts/marked-line.tsx';
import { TextField } from '../../parts/text-fields.tsx';
import { useOpenBook } from '../../reading/use-open-book.ts';
import { address } from '../../shell/route.ts';
import { recipeExtent } from './recipe-words.ts';
import './recipe-page.css';

type Named = readonly [id: string, recipe: Recipe];

export default function RecipeList() {
  const book = useOpenBook();
  return (
    <div className="recipes">
      <p className="job-back no-print">
        <a className="button words" href={address('work')}>
          ‹ Work
        </a>
      </p>
      <h1>Recipes</h1>
      <BelowHeading>
        <RecipesBelow book={book} />
      </BelowHeading>
    </div>
  );
}

function RecipesBelow({ book }: { readonly book: Book }) {
  const [words, setWords] = useState('');
  const all = recipesOfBook(book);
  const found = useMemo(() => foundBy(words, all), [words, all]);
  const groups = useMemo(() => byGroup(Object.entries(all)), [all]);
  const own = Object.entries(book.recipes);
  return (
    <>
      <p className="soft">
        {countInWords(Object.keys(all).length, 'kind')} of job written down once
        {own.length > 0 && `, ${own.length} of them your own`}. One is taken when a job is put in; one of your own is
        made on the page of a job that is done.
      </p>
      <search className="no-print">
        <TextField
          label="What is to be done, or what is wrong"
          note="‘The jib winch lets go’ finds as well as ‘winch’."
          value={words}
          onChange={setWords}
        />
      </search>
      {words.trim() !== '' && (
        <section aria-labelledby="recipes-found" aria-live="polite">
          <h2 id="recipes-found">
            {found.length === 0 ? 'No recipe speaks of that' : `Found: ${countInWords(found.length, 'recipe')}`}
          </h2>
          <RecipeLines named={found} own={book.recipes} />
        </section>
      )}
      {own.length > 0 && (
        <section aria-labelledby="recipes-own">
          <h2 id="recipes-own">Your own</h2>
          <RecipeLines named={own} own={book.recipes} />
        </section>
      )}
      {groups.map(({ group, named }) => (
        <section key={group} aria-labelledby={`recipes-${group}`}>
          <h2 id={`recipes-${group}`}>
            {group.charAt(0).toUpperCase() + group.slice(1)}
            <span className="soft small"> {named.length}</span>
          </h2>
          <RecipeLines named={named} own={book.recipes} />
        </section>
      ))}
    </>
  );
}

function RecipeLines({ named, own }: { readonly named: readonly Named[]; readonly own: object }) {
  return (
    <ul>
      {named.map(([id, recipe]) => (
        <MarkedLine
          key={id}
          href={address('work', 'recipe', id)}
          title={recipe.title}
          note={`${recipeExtent(recipe)}${Object.hasOwn(own, id) ? ' · your own' : ''}`}
        />
      ))}
    </ul>
  );
}

/** By meaning first, then those whose title or words have the very letters typed. */
function foundBy(words: string, all: Readonly<Record<string, Recipe>>): Named[] {
  const typed = words.trim().toLowerCase();
  if (typed === '') return [];
  const meant = recipesFor(words, all);
  const lettered = Object.entries(all)
    .filter(
      ([id, recipe]) =>
        !meant.includes(id) && [recipe.title, ...recipe.words].some((each) => each.toLowerCase().includes(typed)),
    )
    .map(([id]) => id);
  return [...meant, ...lettered].slice(0, 8).map((id) => [id, all[id]!]);
}

function byGroup(all: readonly Named[]) {
  const groups = new Map<string, Named[]>();
  for (const each of all) groups.set(each[1].group, [...(groups.get(each[1].group) ?? []), each]);
  return [...groups].map(([group, named]) => ({
    group,
    named: named.sort(([, a], [, b]) => a.title.localeCompare(b.title)),
  }));
}
