/** What a file is by its first bytes, and its text; what cannot hold readings is refused by name. */

export type FileText =
  | { readonly kind: 'table' | 'sentences'; readonly text: string; readonly notes: readonly string[] }
  | { readonly kind: 'refused'; readonly wrong: string; readonly right: string };

/** A million rows of a logger and more; what is larger would not fit a phone. [bytes] */
export const mostFile_bytes = 60_000_000;

const wanted = 'a table as text (CSV) with a time and volts in each row, or a file of NMEA 0183 sentences';

/** How a file begins that is no text. */
const begins: readonly (readonly [bytes: readonly number[], is: string, right: string])[] = [
  [
    [0x50, 0x4b, 0x03, 0x04],
    'a packed file (zip), as a spreadsheet or a boat file is',
    'save the sheet as CSV and choose that; a boat file is opened under Boat',
  ],
  [[0xd0, 0xcf, 0x11, 0xe0], 'a spreadsheet or document of an old kind', 'save the sheet as CSV and choose that'],
  [[0x25, 0x50, 0x44, 0x46], 'a PDF', wanted],
  [[0x89, 0x50, 0x4e, 0x47], 'a picture (PNG)', wanted],
  [[0xff, 0xd8, 0xff], 'a picture (JPEG)', wanted],
  [[0x47, 0x49, 0x46, 0x38], 'a picture (GIF)', wanted],
  [[0x1f, 0x8b], 'a packed file (gzip)', 'unpack it and choose what was in it'],
  [[0x53, 0x51, 0x4c, 0x69, 0x74, 0x65], 'a database', `${wanted}, written out of it`],
];

/** The text of a file of readings. Letters are taken as UTF-8, UTF-16 or, where they are neither, Western European. */
export function textOfFile(bytes: Uint8Array): FileText {
  const refused = (wrong: string, right = wanted): FileText => ({ kind: 'refused', wrong, right });
  if (bytes.length === 0) return refused('The file is empty: it has 0 bytes.');
  if (bytes.length > mostFile_bytes)
    return refused(
      `The file has ${Math.round(bytes.length / 1e6)} MB.`,
      `at most ${mostFile_bytes / 1e6} MB; cut it into parts by date and choose them one after another`,
    );
  const known = begins.find(([first]) => first.every((byte, i) => bytes[i] === byte));
  if (known) return refused(`The file is ${known[1]}.`, known[2]);
  const notes: string[] = [];
  const text = lettersOf(bytes, notes);
  if (text === null) return refused('The file is not text: it has bytes in it that no letter has.');
  const start = text.slice(0, 2_000).trimStart();
  if (start === '') return refused('The file holds nothing but empty lines.');
  if (/^<(!doctype|html|\?xml|svg)/i.test(start)) return refused('The file is a web page or XML.');
  if (/^[{[]\s*["[{\d]/.test(start)) return refused('The file is JSON.');
  return { kind: ofSentences(text) ? 'sentences' : 'table', text, notes };
}

/** null: not text. */
function lettersOf(bytes: Uint8Array, notes: string[]): string | null {
  const first = bytes.subarray(0, 4_096);
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return new TextDecoder(bytes[0] === 0xff ? 'utf-16le' : 'utf-16be').decode(bytes);
  let control = 0;
  for (const byte of first) if (byte < 32 && byte !== 9 && byte !== 10 && byte !== 13 && byte !== 12) control++;
  if (control > 0) return null;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    notes.push('Its letters are not UTF-8; they were read as Western European (Windows-1252).');
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** Whether most of the first lines begin as sentences do. */
function ofSentences(text: string): boolean {
  const lines = text
    .slice(0, 20_000)
    .split(/\r\n|\n|\r/, 200)
    .filter((line) => line.trim() !== '');
  const sentences = lines.filter((line) => /^(\\[^\\]*\\)?[$!][A-Z0-9]{5,},/.test(line.trim()));
  return sentences.length * 2 > lines.length;
}
