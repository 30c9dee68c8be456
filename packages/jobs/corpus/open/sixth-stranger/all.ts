import type { MarkedPage } from '../../marked.ts';
import { pages as pages1 } from './pages-01.ts';
import { pages as pages2 } from './pages-02.ts';
import { pages as pages3 } from './pages-03.ts';
import { pages as pages4 } from './pages-04.ts';
import { pages as pages5 } from './pages-05.ts';
import { pages as pages6 } from './pages-06.ts';
import { pages as pages7 } from './pages-07.ts';
import { pages as pages8 } from './pages-08.ts';
import { pages as pages9 } from './pages-09.ts';
import { pages as pages10 } from './pages-10.ts';

export const sixthStranger: readonly MarkedPage[] = [
  ...pages1,
  ...pages2,
  ...pages3,
  ...pages4,
  ...pages5,
  ...pages6,
  ...pages7,
  ...pages8,
  ...pages9,
  ...pages10,
];
