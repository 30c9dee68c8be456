/** One text for one value, whatever order its keys came in; and the hash that fixed records are named by. */
import { sha256 } from './sha256.ts';

/** JSON with the keys of every object in order. Equal values give equal texts on every device. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const fields = Object.keys(value)
      .sort()
      .filter((key) => (value as Record<string, unknown>)[key] !== undefined)
      .map((key) => `${JSON.stringify(key)}:${canonicalJson((value as Record<string, unknown>)[key])}`);
    return `{${fields.join(',')}}`;
  }
  return JSON.stringify(value);
}

/** The id of a fixed record: the first 128 bits of the SHA-256 of its canonical JSON, as 32 hexadecimal figures. */
export function contentId(record: unknown): string {
  return sha256(new TextEncoder().encode(canonicalJson(record))).slice(0, 32);
}

export const sameContent = (a: unknown, b: unknown): boolean => a === b || canonicalJson(a) === canonicalJson(b);
