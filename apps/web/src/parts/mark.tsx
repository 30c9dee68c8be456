/** Meanings, each with a shape and its word; colour only repeats them. */
import type { Consequence } from '#boat-book';
import './mark.css';

export type Meaning = Consequence | 'jury rig' | 'go' | 'wait';

export const markShapes: Readonly<Record<Meaning, string>> = {
  danger: 'M8 1.5L15 14.5H1z',
  unlawful: 'M8 2.5L14.2 13.8H1.8z',
  'stops-sailing': 'M3 3h10v10H3z',
  worsens: 'M8 3.5a4.5 4.5 0 1 0 0 9a4.5 4.5 0 1 0 0-9z',
  comfort: 'M3.5 8h9',
  'jury rig': 'M8 1.5L14.5 8 8 14.5 1.5 8z',
  go: 'M2.5 8.5l3.8 4L13.5 4',
  wait: 'M2 4h12v8H2zM2 9l5-5M5 12l8-8M10 12l4-4',
};

export const consequenceName: Readonly<Record<Consequence, string>> = {
  danger: 'danger to people',
  unlawful: 'unlawful',
  'stops-sailing': 'stops sailing',
  worsens: 'gets worse',
  comfort: 'comfort',
};

export const meaningName: Readonly<Record<Meaning, string>> = {
  ...consequenceName,
  'jury rig': 'jury rig',
  go: 'in order',
  wait: 'wait',
};

/** The shape alone; the word stands beside it, or is given here for screen readers. */
export function Mark({ of, said }: { readonly of: Meaning; readonly said?: string }) {
  return (
    <svg
      className={`mark mark-${of.replace(' ', '-')}`}
      viewBox="0 0 16 16"
      role={said ? 'img' : undefined}
      aria-label={said}
      aria-hidden={said ? undefined : true}
    >
      <path d={markShapes[of]} />
    </svg>
  );
}
