export type SavedState = 'opening' | 'saved' | 'saving' | 'not saved';

const words: Readonly<Record<SavedState, string>> = {
  opening: 'opening',
  saved: 'saved on this device',
  saving: 'saving',
  'not saved': 'not saved',
};

/** A quiet line, not a gate: work goes on while it is written. */
export function SavedLine({ state }: { readonly state: SavedState }) {
  return (
    <span className="shell-saved" data-state={state} role={state === 'not saved' ? 'alert' : undefined}>
      {state === 'not saved' ? '▲ ' : ''}
      {words[state]}
    </span>
  );
}
