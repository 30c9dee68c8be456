/** Where the questions about amounts have their figures from, and what none of them counts. */
import type { Source } from '#working';

export const geometry: Source = { title: 'geometry', seen: 'our derivation' };
export const shelf: Source = { title: 'coverage, tins on the shelf', seen: 'common practice' };
export const more = 'Without waste: what stays in pot, roller, brush and mixing cup comes on top.';
