import './look/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './shell/app.tsx';
import { startTheme } from './shell/theme.ts';

startTheme();

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id "app"');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
