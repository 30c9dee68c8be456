import { address, type PlaceName } from './route.ts';

const shown: readonly { readonly place: PlaceName; readonly name: string; readonly drawing: string }[] = [
  { place: 'work', name: 'Work', drawing: 'M4 20l9-9M14 4a5 5 0 0 0 6 6l-4 4-6-6z' },
  { place: 'days', name: 'Days', drawing: 'M3 6h18v14H3zM3 11h18M8 3v5M16 3v5' },
  { place: 'boat', name: 'Boat', drawing: 'M3 16h18l-2 4H6zM11 3v11M11 4l7 9h-7' },
  { place: 'stores', name: 'Stores', drawing: 'M3 8l9-4 9 4v9l-9 4-9-4zM3 8l9 4 9-4M12 12v9' },
  { place: 'go', name: 'Go', drawing: 'M4 21V4M4 5h13l-3 4 3 4H4' },
];

/** The five places, at the thumb on a phone and along the top where there is room. */
export function PlaceBar({ here }: { readonly here: PlaceName }) {
  return (
    <nav className="shell-bar" aria-label="Places">
      {shown.map(({ place, name, drawing }) => (
        <a key={place} href={address(place)} aria-current={place === here ? 'page' : undefined}>
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d={drawing} />
          </svg>
          {name}
        </a>
      ))}
    </nav>
  );
}
