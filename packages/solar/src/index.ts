export { clearLight, dayOfYear } from './clear-day.ts';
export { type Clouds, coveredShare, lightsOf, type SkyWord, skyWords } from './clouds.ts';
export { type PanelDay, panelDay } from './panel-day.ts';
export type { SolarPanel } from './solar-panel.ts';
export { solarQuestions } from './solar-questions.ts';
export { type SolarPlace, sunPathAt } from './sun-path.ts';
