/** Where a thing is kept, in words: the places it is in, the nearest first, and what is more to say of it. */
import type { Book, Id } from '#boat-book';

export function keptAtInWords(
  book: Book,
  { stowage, keptAt }: { readonly stowage?: Id | null; readonly keptAt: string },
): string {
  const places: string[] = [];
  const seen = new Set<Id>();
  for (let id = stowage ?? null; id !== null && !seen.has(id); ) {
    seen.add(id);
    const place = book.stowages[id];
    if (place === undefined) break;
    places.push(place.name);
    id = place.within;
  }
  return [...places, keptAt].filter((part) => part !== '').join(', ') || 'place not noted';
}
