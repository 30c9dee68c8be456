/**
 * Readings as the bytes they are kept and carried in, all little-endian: 8 letters `READINGS`, then as 32-bit whole
 * numbers the version (1), the count, which columns there are (1 volts, 2 current, 4 air, added) and 0; then the times as
 * 64-bit floats, ms from 1970, then each column as 32-bit floats. The same readings give the same bytes.
 */
import { columnsThere, type ReadColumn, type ReadingColumns, readColumns } from './reading-columns.ts';

const mark = 'READINGS';
const version = 1;
const head_bytes = 24;
const flag: Readonly<Record<ReadColumn, number>> = { volts: 1, current: 2, air: 4 };

export type ReadBlock =
  | { readonly kind: 'block'; readonly columns: ReadingColumns }
  | { readonly kind: 'refused'; readonly because: string };

/** The bytes of a block. @throws RangeError where a column is not as long as the times */
export function blockBytes(columns: ReadingColumns): Uint8Array {
  const there = columnsThere(columns);
  const count = columns.at.length;
  for (const name of there)
    if (columns[name]!.length !== count)
      throw new RangeError(`the column ${name} has ${columns[name]!.length} readings, and there are ${count} times`);
  const bytes = new Uint8Array(head_bytes + count * (8 + 4 * there.length));
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < mark.length; i++) bytes[i] = mark.charCodeAt(i);
  view.setUint32(8, version, true);
  view.setUint32(12, count, true);
  view.setUint32(
    16,
    there.reduce((sum, name) => sum + flag[name], 0),
    true,
  );
  let to = head_bytes;
  for (const at of columns.at) {
    view.setFloat64(to, at, true);
    to += 8;
  }
  for (const name of there)
    for (const value of columns[name]!) {
      // one NaN of the many there are, so that the same readings give the same bytes
      if (Number.isNaN(value)) view.setUint32(to, 0x7fc00000, true);
      else view.setFloat32(to, value, true);
      to += 4;
    }
  return bytes;
}

/** A block read from its bytes, which may have come from anywhere. */
export function readBlock(bytes: Uint8Array): ReadBlock {
  const refused = (because: string): ReadBlock => ({ kind: 'refused', because });
  if (bytes.length < head_bytes || [...mark].some((letter, i) => bytes[i] !== letter.charCodeAt(0)))
    return refused(`it is no block of readings, which begins with ‘${mark}’`);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(8, true) !== version)
    return refused(`it is of version ${view.getUint32(8, true)}, and this program reads version ${version}`);
  const count = view.getUint32(12, true);
  const flags = view.getUint32(16, true);
  const there = readColumns.filter((name) => (flags & flag[name]) !== 0);
  const wanted = head_bytes + count * (8 + 4 * there.length);
  if (bytes.length !== wanted) return refused(`it has ${bytes.length} bytes where ${count} readings take ${wanted}`);
  const at = new Float64Array(count);
  let from = head_bytes;
  for (let i = 0; i < count; i++, from += 8) {
    at[i] = view.getFloat64(from, true);
    if (!(Number.isFinite(at[i]!) && (i === 0 || at[i]! > at[i - 1]!)))
      return refused(`its ${i + 1}. time is not later than the one before`);
  }
  const column = (name: ReadColumn): Float32Array | null => {
    if (!there.includes(name)) return null;
    const values = new Float32Array(count);
    for (let i = 0; i < count; i++, from += 4) values[i] = view.getFloat32(from, true);
    return values;
  };
  const columns = { at, volts: column('volts'), current: column('current'), air: column('air') };
  const endless = there.find((name) => columns[name]!.some((value) => Math.abs(value) === Number.POSITIVE_INFINITY));
  if (endless !== undefined) return refused(`its ${endless} are not all figures`);
  return { kind: 'block', columns };
}
