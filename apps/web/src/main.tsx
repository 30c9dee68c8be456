import './look/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { bookClient } from './offline/book-client.ts';
import { loadTheRest } from './parts/on-demand.tsx';
import { workFromText } from './reading/work-shown.ts';
import { App } from './shell/app.tsx';
import { hearFingerOnce } from './shell/finger.ts';
import { routeOf } from './shell/route.ts';
import { placeLoaded, placeLoads } from './shell/screen-here.tsx';
import { startTheme } from './shell/theme.ts';
import { afterPaint, whenQuiet } from './shell/when.ts';

declare global {
  /** what the list of work shows, as text, on its way since before this script: see index.html */
  var fettleWork: Promise<string | null> | undefined;
}

startTheme();
hearFingerOnce();

const app = document.getElementById('app');
if (!app) throw new Error('index.html has no element with the id "app"');
const root = createRoot(app);

/** The list of work from what was kept of it; the book comes once that is painted. Any other place waits for the book. */
async function begin(): Promise<void> {
  const first = workFromText((await globalThis.fettleWork) ?? null);
  if (first === null) bookClient.open();
  else bookClient.showFirst(first);
  // the first place is there before anything is drawn; the place itself says what failed
  await placeLoaded(routeOf(location.hash).place).catch(() => {});
  root.render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
  afterPaint(() => bookClient.open());
  await bookThere();
  setTimeout(() => whenQuiet(() => void loadTheRest(placeLoads)), 600);
}

/** Resolves when the book is there, or is not to be had. */
function bookThere(): Promise<void> {
  return new Promise((there) => {
    const look = () => {
      if (bookClient.snapshot().state === 'opening') return;
      stop();
      there();
    };
    const stop = bookClient.subscribe(look);
    look();
  });
}

void begin();
