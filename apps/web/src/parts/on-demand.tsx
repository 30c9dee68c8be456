/**
 * Components that are loaded when they are first shown, or before, in quiet moments. One that is there already is shown in
 * the same frame, and one that is not as soon as it has come. React's own means for this (`lazy` in a `Suspense`) holds
 * back what had to be waited for, be it a moment, until a third of a second has gone by, so that a page does not flicker in
 * piece by piece: a sheet that was tapped for too soon then took 400 ms where it need have taken 100.
 */
import { type ComponentType, type ReactNode, useEffect, useState } from 'react';
import { whenQuiet } from '../shell/when.ts';
import { type Load, LoadsAhead } from './loads-ahead.ts';

interface Module<Props> {
  readonly default: ComponentType<Props>;
}

/** What loads a component, and loads it once. */
export interface OnDemand<Props> {
  readonly Component: ComponentType<Props>;
  load(): Promise<unknown>;
}

const ahead = new LoadsAhead();
/** the rest being loaded, once it has been asked for: what a page brings along later is loaded ahead too */
let rest: Promise<void> | null = null;
let loadingTheRest = false;

/**
 * A component from a module of its own, and the means to have it loaded before it is shown. A fetch that fails is thrown
 * where the component stands, and made again when it is shown again.
 *
 * @param meanwhile what stands in its place until it is there
 */
export function onDemandWithLoad<Props extends object>(
  fetch: () => Promise<Module<Props>>,
  meanwhile: ReactNode = null,
): OnDemand<Props> {
  let there: ComponentType<Props> | null = null;
  let coming: Promise<void> | null = null;
  const load = () => {
    if (coming !== null) return coming;
    const came = ahead.begin(load);
    coming = fetch().then(
      (module) => {
        there = module.default;
        came();
      },
      (error: unknown) => {
        coming = null; // asked for again, it is fetched again
        throw error;
      },
    );
    return coming;
  };
  ahead.add(load);
  if (rest !== null) void loadTheRest();
  const one: Wanted<Props> = {
    now: () => there,
    load,
    shown: () => ahead.shown(load),
    meanwhile,
  };
  // biome-ignore lint/correctness/noComponentHookFactories: made once for a module, as the program is loaded
  const Component = (props: Props) => <OnceThere of={one} props={props} />;
  return { Component, load };
}

interface Wanted<Props> {
  now(): ComponentType<Props> | null;
  load(): Promise<void>;
  /** it stands on the page */
  shown(): void;
  readonly meanwhile: ReactNode;
}

function OnceThere<Props extends object>({ of, props }: { readonly of: Wanted<Props>; readonly props: Props }) {
  const [failed, setFailed] = useState<{ readonly because: unknown } | null>(null);
  const [, setCame] = useState(false);
  useEffect(() => {
    const here = () => {
      of.shown();
      setCame(true);
    };
    if (of.now() !== null) of.shown();
    else of.load().then(here, (because: unknown) => setFailed({ because }));
  }, [of]);
  if (failed !== null) throw failed.because;
  const There = of.now();
  return There === null ? of.meanwhile : <There {...props} />;
}

/** A component from a module of its own. */
export function onDemand<Props extends object>(
  fetch: () => Promise<Module<Props>>,
  meanwhile?: ReactNode,
): ComponentType<Props> {
  return onDemandWithLoad(fetch, meanwhile).Component;
}

/**
 * Loads, one after another and each in a quiet moment, what has not been asked for yet: a tap waits for one of them at most.
 * What the pages that are shown brought along comes first. What cannot be had now is had when it is shown.
 *
 * @param first  comes before all else
 */
export function loadTheRest(first: readonly Load[] = []): Promise<void> {
  ahead.first(first);
  if (rest === null || !loadingTheRest) rest = oneByOne();
  return rest;
}

async function oneByOne(): Promise<void> {
  loadingTheRest = true;
  while (!ahead.isEmpty) {
    await new Promise<void>(whenQuiet);
    const began = performance.now();
    const next = ahead.next();
    if (next === null) break;
    await next.load().catch(() => {});
    if (next.soon) continue;
    // of what is not likely next, half of the time is left free: a finger seldom comes down on a piece of it
    const pause_ms = performance.now() - began;
    await new Promise((later) => setTimeout(later, pause_ms));
  }
  loadingTheRest = false;
}
