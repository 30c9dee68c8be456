export { type Endurance, type EnduranceCase, endurance } from './endurance.ts';
