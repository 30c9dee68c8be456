/** Most octets of a line of the file, its ending left out (RFC 5545 §3.1). */
export const lineOctets = 75;
/** How a line ends. */
export const lineEnd = '\r\n';

/** Octets of one character in UTF-8. Half of a pair, which is no character, is written as U+FFFD: three. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0)!;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/**
 * A line folded by octets, without its ending: no part is longer than 75 octets, and no character is cut.
 * A part after the first begins with a space, which counts.
 */
export function folded(line: string): string {
  const parts: string[] = [];
  let [part, octets] = ['', 0];
  for (const character of line) {
    const more = octetsOf(character);
    if (octets + more > lineOctets) {
      parts.push(part);
      [part, octets] = ['', 1];
    }
    part += character;
    octets += more;
  }
  return [...parts, part].join(`${lineEnd} `);
}

/** Text as a value: backslash, semicolon and comma marked, new lines as `\n`, other control characters left out (§3.3.11). */
export function textValue(text: string): string {
  return (
    text
      .toWellFormed()
      .replaceAll('\\', '\\\\')
      .replaceAll(';', '\\;')
      .replaceAll(',', '\\,')
      .replace(/\r\n|\r|\n/g, '\\n')
      // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
      .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
  );
}
