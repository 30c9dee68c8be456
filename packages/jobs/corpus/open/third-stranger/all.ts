import type { MarkedPage } from '../../marked.ts';
import { pages as pages1 } from './pages-1.ts';
import { pages as pages2 } from './pages-2.ts';
import { pages as pages3 } from './pages-3.ts';
import { pages as pages4 } from './pages-4.ts';
import { pages as pages5 } from './pages-5.ts';
import { pages as pages6 } from './pages-6.ts';

export const thirdStranger: readonly MarkedPage[] = [...pages1, ...pages2, ...pages3, ...pages4, ...pages5, ...pages6];
