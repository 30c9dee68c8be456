/** Looks at a file before it is kept as a paper: what cannot be one is refused by name. */
import { mostPaper_bytes, type PaperRecord } from '#boat-book';

export type LookedPaper =
  | { readonly kind: 'paper'; readonly type: PaperRecord['type']; readonly bytes: Uint8Array; readonly file: string }
  | { readonly kind: 'refused'; readonly because: string };

const marks: readonly { readonly type: PaperRecord['type']; readonly starts: readonly number[] }[] = [
  { type: 'application/pdf', starts: [0x25, 0x50, 0x44, 0x46, 0x2d] },
  { type: 'image/jpeg', starts: [0xff, 0xd8, 0xff] },
  { type: 'image/png', starts: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
];

/** @param file  its name, for the sentence that refuses it */
export function lookedPaper(file: string, bytes: Uint8Array): LookedPaper {
  const refused = (because: string): LookedPaper => ({
    kind: 'refused',
    because: `‘${file}’ was not taken: ${because}`,
  });
  if (bytes.length === 0) return refused('it is empty.');
  if (bytes.length > mostPaper_bytes)
    return refused(
      `it has ${Math.ceil(bytes.length / 1e6)} MB, and a paper has at most ${mostPaper_bytes / 1e6} MB. Scan it smaller, or keep the pages that matter.`,
    );
  // by what stands in it: a name says nothing
  const found = marks.find(({ starts }) => starts.every((byte, i) => bytes[i] === byte));
  if (found !== undefined) return { kind: 'paper', type: found.type, bytes, file };
  return isText(bytes)
    ? { kind: 'paper', type: 'text/plain', bytes, file }
    : refused('it is not a PDF, a JPEG or PNG picture, or plain text.');
}

function isText(bytes: Uint8Array): boolean {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return !/[^\P{Cc}\t\r\n\f]/u.test(text) && !/^\s*</.test(text);
  } catch {
    return false;
  }
}
