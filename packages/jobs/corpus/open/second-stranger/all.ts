import type { MarkedPage } from '../../marked.ts';
import { pages as pages1 } from './pages-1.ts';
import { pages as pages2 } from './pages-2.ts';
import { pages as pages3 } from './pages-3.ts';
import { pages as pages4 } from './pages-4.ts';

export const secondStranger: readonly MarkedPage[] = [...pages1, ...pages2, ...pages3, ...pages4];
