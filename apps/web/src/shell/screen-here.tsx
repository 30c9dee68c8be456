import { Component, type ComponentType, memo, type ReactNode } from 'react';
import { type OnDemand, onDemandWithLoad } from '../parts/on-demand.tsx';
import WorkScreen from '../screens/work/work-screen.tsx';
import { OnePage } from './one-page.tsx';
import type { PlaceName, ScreenProps } from './route.ts';

/**
 * Work is where one arrives, and comes with the program; each other place is loaded when it is first gone to: the service
 * worker has it on the device by then.
 */
const found = import.meta.glob<{ default: ComponentType<ScreenProps> }>([
  '../screens/*/*-screen.tsx',
  '!../screens/work/*',
]);
const screens: Partial<Record<string, OnDemand<ScreenProps>>> = {
  work: { Component: WorkScreen, load: async () => {} },
};
for (const [file, load] of Object.entries(found)) {
  const [, place, name] = /\/screens\/([^/]+)\/([^/]+)-screen\.tsx$/.exec(file) ?? [];
  if (place !== undefined && place === name)
    screens[place] = onDemandWithLoad(load, <p className="unseen">Opening {place}.</p>);
}

/** What loads each place. */
export const placeLoads = Object.values(screens).flatMap((screen) => screen?.load ?? []);

/** Resolves when a place can be shown at once. */
export async function placeLoaded(place: PlaceName): Promise<void> {
  await screens[place]?.load();
}

/** What the frame around it tells anew, such as that a change is saved, is not the place's affair. */
export const ScreenHere = memo(function ScreenHere({ at }: ScreenProps) {
  const Screen = screens[at.place]?.Component;
  if (!Screen) return null;
  return (
    <OnePage>
      <ScreenFault key={at.place} at={at}>
        <Screen at={at} />
      </ScreenFault>
    </OnePage>
  );
});

/** A fault on one page leaves the others usable, and says that the book is safe. */
class ScreenFault extends Component<
  ScreenProps & { readonly children: ReactNode },
  { readonly fault: string | null; readonly at: ScreenProps['at'] }
> {
  override state = { fault: null, at: this.props.at };

  /** Gone to another page of the place, that one is shown. */
  static getDerivedStateFromProps({ at }: ScreenProps, state: { readonly at: ScreenProps['at'] }) {
    return at === state.at ? null : { at, fault: null };
  }

  static getDerivedStateFromError(error: unknown) {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    if (this.state.fault === null) return this.props.children;
    return (
      <div role="alert">
        <h1>This place could not be shown</h1>
        <p>What is in the boat book is safe: nothing was written. The fault was: {this.state.fault}</p>
        <p>
          <button type="button" onClick={() => this.setState({ fault: null })}>
            Try it again
          </button>
        </p>
      </div>
    );
  }
}
