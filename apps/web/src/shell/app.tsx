/** The frame around the five places: where one is, what is saved, undo, and whatever needs saying. */
import { useEffect, useRef, useState } from 'react';
import { bookClient } from '../offline/book-client.ts';
import { useBook } from '../offline/use-book.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { DemoLine } from '../screens/boat/demo-line.tsx';
import { PlaceBar } from './place-bar.tsx';
import { useRoute } from './route.ts';
import { SavedLine } from './saved-line.tsx';
import { ScreenHere } from './screen-here.tsx';
import './shell.css';
import { ThemeChoice } from './theme-choice.tsx';
import { Troubles } from './troubles.tsx';
import { UndoLine } from './undo-line.tsx';
import { afterPaint, whenQuiet } from './when.ts';

const NewVersion = onDemand(() => import('./new-version.tsx'));
const TwoAnswers = onDemand(() => import('./two-answers.tsx'));
const TermsHere = onDemand(() => import('../parts/terms/terms-here.tsx'));
const TimersOver = onDemand(() => import('../timers/timers-over.tsx'));

/** So long after the book is there, what is not needed to use it is looked to. [ms] */
const settled_ms = 1000;

export function App() {
  const { book, first, state, because, undo, redo, troubles, readOnly, questions } = useBook();
  const route = useRoute();
  const main = useRef<HTMLElement>(null);
  const here = [route.place, ...route.rest].join('/');

  const boat = (book ?? first)?.boat;
  const listOnly = book === null && first !== null;
  useEffect(() => {
    if (listOnly && here !== 'work') bookClient.showPicture();
  }, [listOnly, here]);

  const empty = book === null && state !== 'opening' && because === null;
  useEffect(() => {
    if (empty) void bookClient.startBook('demo');
  }, [empty]);

  const [quiet, setQuiet] = useState(false);
  const opening = state === 'opening' || (book === null && because === null);
  useEffect(() => {
    if (opening) return;
    const timer = setTimeout(() => whenQuiet(() => setQuiet(true)), settled_ms);
    return () => clearTimeout(timer);
  }, [opening]);

  const arrived = useRef(here);
  useEffect(() => {
    if (arrived.current === here) return;
    arrived.current = here;
    scrollTo(0, 0);
    return afterPaint(() => {
      // a page that begins with a field to fill in has the focus there already
      if (document.activeElement?.matches('main input, main textarea')) return;
      // a screen reader hears the new screen's title; the page itself stays where it is
      main.current?.focus({ preventScroll: true });
    });
  }, [here]);

  return (
    <div className="shell">
      <a className="shell-skip" href={`#/${here}`} onClick={() => main.current?.focus()}>
        Skip to the page
      </a>
      <header className="shell-head no-print">
        <a className="shell-boat" href="#/boat">
          {boat?.name ?? 'Fettle'}
        </a>
        <div className="shell-places">
          <PlaceBar here={route.place} />
        </div>
        <div className="shell-state">
          <SavedLine state={state} />
          <UndoLine undo={undo} redo={redo} />
          <ThemeChoice />
        </div>
      </header>
      <main className="shell-main" ref={main} tabIndex={-1}>
        <div className="shell-lines no-print">
          {quiet && <NewVersion />}
          {readOnly !== null && (
            <p className="shell-line" role="status">
              To read only: {readOnly}
            </p>
          )}
          {book !== null && questions.length > 0 && <TwoAnswers book={book} questions={questions} />}
          {book !== null && Object.keys(book.timers).length > 0 && <TimersOver book={book} />}
          {boat?.demo && (here === 'work' || here === 'boat') && <DemoLine boat={boat} />}
          <Troubles troubles={because === null ? troubles : [because, ...troubles]} />
        </div>
        {book === null && (first === null || here !== 'work') ? (
          <p className="soft" role="status">
            {because === null ? 'Opening the boat book.' : 'The boat book could not be opened.'}
          </p>
        ) : (
          <ScreenHere at={route} />
        )}
        {quiet && <TermsHere key={here} path={here} />}
      </main>
    </div>
  );
}
