/**
 * Components that are loaded when they are first shown, or before, in quiet moments. One that is there already is
 * shown in the same frame: a component that has to be waited for, be it a moment, is held back a third of a second by
 * React, so that places do not flicker in piece by piece.
 */
import { type ComponentType, lazy } from 'react';
import { whenQuiet } from '../shell/when.ts';

interface Module<Props> {
  readonly default: ComponentType<Props>;
}

/** loaders of what has not been asked for yet */
const waiting = new Set<() => Promise<unknown>>();

/** What loads a component, and loads it once. */
export interface OnDemand<Props> {
  readonly Component: ComponentType<Props>;
  load(): Promise<unknown>;
}

/** A component from a module of its own, and the means to have it loaded before it is shown. */
export function onDemandWithLoad<Props>(fetch: () => Promise<Module<Props>>): OnDemand<Props> {
  let there: Module<Props> | null = null;
  let coming: Promise<Module<Props>> | null = null;
  const load = () => {
    waiting.delete(load);
    coming ??= fetch().then(
      (module) => {
        there = module;
        return module;
      },
      (error: unknown) => {
        coming = null; // asked for again, it is fetched again
        throw error;
      },
    );
    return coming;
  };
  waiting.add(load);
  const Component = lazy(() => (there === null ? load() : alreadyThere(there)));
  return { Component, load };
}

/** A component from a module of its own. */
export function onDemand<Props>(fetch: () => Promise<Module<Props>>): ComponentType<Props> {
  return onDemandWithLoad(fetch).Component;
}

/**
 * Loads, one after another and each in a quiet moment, what has not been asked for yet: a tap waits for one of them at most.
 * What cannot be had now is had when it is shown.
 */
export async function loadTheRest(): Promise<void> {
  for (const load of waiting) {
    await new Promise<void>(whenQuiet);
    await load().catch(() => {});
  }
}

/** A promise that answers in the same breath, which a real one never does. */
function alreadyThere<T>(value: T): Promise<T> {
  const answer = {
    // biome-ignore lint/suspicious/noThenProperty: being thenable is what it is for
    then(resolve: (value: T) => void) {
      resolve(value);
      return answer;
    },
  };
  return answer as unknown as Promise<T>;
}
