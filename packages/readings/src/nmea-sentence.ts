/** A sentence of NMEA 0183: taken apart, its checksum checked. */

export type Sentence =
  | {
      readonly kind: 'sentence';
      /** who speaks, such as GP; and what of, such as RMC */
      readonly talker: string;
      readonly type: string;
      readonly fields: readonly string[];
    }
  | { readonly kind: 'refused'; readonly wrong: string; readonly right: string };

/** The bytes between `$` or `!` and `*`, each with each by exclusive or, as two hexadecimal figures. */
export function checksumOf(body: string): string {
  let sum = 0;
  for (let i = 0; i < body.length; i++) sum ^= body.charCodeAt(i);
  return (sum & 0xff).toString(16).toUpperCase().padStart(2, '0');
}

/**
 * Takes a line apart. A tag block before the sentence (`\…\`) is passed over; capitals or small letters in the checksum
 * are the same. Longer lines than the standard's 82 characters are read: makers write them.
 */
export function readSentence(line: string): Sentence {
  const refused = (wrong: string, right: string): Sentence => ({ kind: 'refused', wrong, right });
  const parts = /^(?:\\[^\\]*\\)?[$!]([^*]*)(?:\*(.*))?$/.exec(line.trim());
  const given = line.trim().length > 40 ? `${line.trim().slice(0, 40)}…` : line.trim();
  if (!parts) return refused(`‘${given}’ is no sentence`, 'a line that begins with $ or !');
  const [, body, written] = parts;
  const sum = checksumOf(body!);
  if (written === undefined || written.trim() === '')
    return refused('the sentence has no checksum', 'a sentence that ends with * and its checksum');
  if (written.trim().toUpperCase() !== sum)
    return refused(
      `the checksum says ${shownSum(written)}, and the sentence adds up to ${sum}`,
      'a checksum that is right: the sentence was damaged on its way',
    );
  const [address, ...fields] = body!.split(',');
  if (!/^[A-Z0-9]{3,}$/.test(address!))
    return refused(`‘${given}’ names no sentence`, 'a name such as GPRMC after the $');
  // what a maker names (P…) has no talker
  const own = address!.startsWith('P');
  return {
    kind: 'sentence',
    talker: own ? 'P' : address!.slice(0, -3),
    type: own ? address!.slice(1) : address!.slice(-3),
    fields,
  };
}

const shownSum = (written: string): string =>
  written.trim().length > 4 ? `${written.trim().slice(0, 4)}…` : written.trim();
