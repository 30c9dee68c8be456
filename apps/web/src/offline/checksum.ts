import { sha256 } from '#boat-book';

/** A checksum against damage: the first 64 bits of a SHA-256 over the parts, each with its kind and length before it. */
export function checksum(parts: readonly (string | Uint8Array | null)[]): string {
  const encoder = new TextEncoder();
  const pieces = parts.flatMap((part) => {
    const bytes = typeof part === 'string' ? encoder.encode(part) : (part ?? new Uint8Array());
    const kind = part === null ? 'none' : typeof part === 'string' ? 'text' : 'bytes';
    return [encoder.encode(`${kind} ${bytes.length}\n`), bytes];
  });
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return sha256(whole).slice(0, 16);
}
