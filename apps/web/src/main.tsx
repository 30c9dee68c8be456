import './look/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { bookClient } from './offline/book-client.ts';
import { loadTheRest } from './parts/on-demand.ts';
import { App } from './shell/app.tsx';
import { routeOf } from './shell/route.ts';
import { placeLoaded } from './shell/screen-here.tsx';
import { startTheme } from './shell/theme.ts';

startTheme();

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id "app"');
// the book is on its way while the first place loads, and the first place is there before anything is drawn
bookClient.subscribe(() => {});
placeLoaded(routeOf(location.hash).place)
  .catch(() => {}) // the place itself says what failed
  .then(() => {
    createRoot(root).render(
      <StrictMode>
        <App />
      </StrictMode>,
    );
    const whenQuiet = globalThis.requestIdleCallback ?? ((then: () => void) => setTimeout(then, 200));
    setTimeout(() => whenQuiet(() => void loadTheRest()), 1500);
  });
