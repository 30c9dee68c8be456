/** What a step, a wait and a change of set-up ask for, in words. */
import type { Book, SetUpNeedRecord, Step, WaitRecord } from '#boat-book';
import type { CureLaw } from '#materials';
import { potLifeOfMix, waitsByTin } from '#reckoning';
import type { Conditions } from '#sky';
import { listInWords, minutesInWords } from '../parts/in-words.ts';

export function conditionsInWords(needs: Conditions): readonly string[] {
  const words: string[] = [];
  if (needs.dry) words.push('dry');
  if (needs.daylight) words.push('daylight');
  if (needs.wind_max_kn !== undefined) words.push(`wind up to ${needs.wind_max_kn} knots`);
  if (needs.air_min_C !== undefined && needs.air_max_C !== undefined)
    words.push(`air ${needs.air_min_C} to ${needs.air_max_C} °C`);
  else if (needs.air_min_C !== undefined) words.push(`air from ${needs.air_min_C} °C`);
  else if (needs.air_max_C !== undefined) words.push(`air up to ${needs.air_max_C} °C`);
  if (needs.surface_min_C !== undefined) words.push(`surface from ${needs.surface_min_C} °C`);
  if (needs.humidity_max_pct !== undefined) words.push(`humidity up to ${needs.humidity_max_pct} %`);
  if (needs.dewMargin_min_C !== undefined) words.push(`surface ${needs.dewMargin_min_C} °C over the dew point`);
  return words;
}

export function setUpsInWords(book: Book, needs: readonly SetUpNeedRecord[]): readonly string[] {
  return needs.flatMap(({ setUp, states }) => {
    const known = book.setUps[setUp];
    if (!known) return [];
    const names = known.states.filter((state) => states.includes(state.id)).map((state) => state.name);
    return names.length === 0 ? [] : [`${known.name} ${listInWords(names, 'or')}`];
  });
}

/** How long a wait takes at its reference, and what sets the pace. */
export function lawInWords(law: CureLaw): string {
  switch (law.kind) {
    case 'set time':
      return minutesInWords(law.minutes);
    case 'never cures':
      return 'stays soft, no wait';
    case 'reacts':
      return `${minutesInWords(law.atReference_min)} at ${law.reference_C} °C, twice as fast every ${law.doublesPer_C} °C; nothing below ${law.minimum_C} °C`;
    case 'moisture':
      return `${law.depth_mm} mm deep at ${law.firstDay_mm} mm in the first day (${law.reference_C} °C, ${law.reference_pct} %); nothing below ${law.minimum_C} °C`;
    case 'dries':
      return `${minutesInWords(law.atReference_min)} at ${law.reference_C} °C, not at all from ${law.stopsAt_pct} % humidity or below ${law.minimum_C} °C`;
  }
}

/** Whose figure it goes by: the tin's, named where there is one in the book. */
export function whoseInWords(from: CureLaw['from'], tin: { readonly name: string } | null): string {
  if (tin !== null) return `from the tin of ${tin.name}`;
  return from === 'the tin' ? 'from the tin' : `figure: ${from}`;
}

/** All that one wait is and asks, as parts of a sentence, by its tin where one speaks for it. */
export function waitInWords(book: Book, step: Step, { id }: WaitRecord): readonly string[] {
  const { wait, tin } = waitsByTin(book, step).find((each) => each.wait.id === id)!;
  const needs: string[] = [];
  if (wait.needs.dry) needs.push('stays dry');
  if (wait.needs.air_min_C !== undefined) needs.push(`stays above ${wait.needs.air_min_C} °C`);
  for (const words of setUpsInWords(book, wait.setUps)) needs.push(words);
  for (const id of wait.still) {
    const setUp = book.setUps[id];
    if (setUp) needs.push(`${setUp.name} not moved`);
  }
  if (wait.wet) needs.push('no dust');
  return [lawInWords(wait.law), whoseInWords(wait.law.from, tin?.tin ?? null), ...needs];
}

/** What a step asks for besides its minutes. */
export function stepNeedsInWords(book: Book, step: Step): readonly string[] {
  const words: string[] = [];
  if (step.hands === 0) words.push('no hands');
  if (step.hands > 1) words.push(`${step.hands} pairs of hands`);
  if (step.notAlone) words.push('not alone');
  if (!step.keeper) words.push('a hand can do it without the keeper');
  words.push(...setUpsInWords(book, step.setUps), ...conditionsInWords(step.needs));
  words.push(
    ...step.features.map((feature) => (feature === 'level' || feature === 'slope' ? `${feature} ground` : feature)),
  );
  if (step.dusty) words.push('makes dust');
  if (step.wet) words.push('leaves a wet finish');
  const mix = step.mix === null ? undefined : book.mixes[step.mix];
  const pot = step.mix === null ? null : potLifeOfMix(book, step.mix, step.stores);
  if (mix && pot)
    words.push(
      pot.from === 'the tin'
        ? `mixes ${mix.name}, pot life ${minutesInWords(pot.life.minutes)} at ${pot.life.at_C} °C, ${whoseInWords('the tin', pot.tin?.tin ?? null)}`
        : `mixes ${mix.name}, pot life ${minutesInWords(mix.potLife_min)}`,
    );
  const zone = step.zone === null ? undefined : book.zones[step.zone];
  if (zone) words.push(`at the ${zone.name}`);
  return words;
}
