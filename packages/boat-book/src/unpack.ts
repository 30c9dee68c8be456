/** Unpacking a zip that may be damaged or made to do harm: nothing is believed, and nothing grows past its limit. */
import { Unzip, UnzipInflate } from 'fflate';

export interface UnpackLimits {
  /** of the file itself. [bytes] */
  readonly packed: number;
  /** of all that is in it, together. [bytes] */
  readonly unpacked: number;
  readonly entries: number;
}

export type Unpacked =
  | { readonly kind: 'unpacked'; readonly files: ReadonlyMap<string, Uint8Array> }
  | { readonly kind: 'refused'; readonly because: string };

class Refused extends Error {}

const megabytes = (bytes: number): string => `${Math.round(bytes / 1e6)} MB`;

/** A name that stays inside the archive: plain parts between single slashes. */
export function nameFault(name: string): string | null {
  if (name === '' || name.length > 200) return 'it is empty or longer than 200 characters';
  if (name.startsWith('/') || /^[A-Za-z]:/.test(name)) return 'it is an absolute path';
  if (name.includes('\\')) return 'it has a backslash in it';
  if (/\p{Cc}/u.test(name)) return 'it has a control character in it';
  const parts = name.split('/');
  if (parts.includes('..') || parts.includes('.')) return 'it leads out of the archive';
  if (parts.slice(0, -1).includes('')) return 'it has an empty part';
  return null;
}

/** Books pack to some tenth of their size; what unpacks to more than this many times its size is made to do harm. */
const mostTimes = 200;
/** Below this, what is packed so tightly is small enough not to matter. [bytes] */
const smallEnough = 20_000_000;

/** Pieces this small keep one step of inflating, at most 1,032 times as much, within some 17 MB. [bytes] */
const piece = 16_384;

/** Every file in a zip, by name. The sizes a zip states are not believed; what comes out is counted while it does. */
export function unpack(bytes: Uint8Array, limits: UnpackLimits): Unpacked {
  if (bytes.length === 0) return { kind: 'refused', because: 'The file is empty: it has 0 bytes.' };
  if (bytes.length > limits.packed) {
    return {
      kind: 'refused',
      because: `The file has ${megabytes(bytes.length)}; a boat file has at most ${megabytes(limits.packed)}.`,
    };
  }
  if (bytes.length < 22 || bytes[0] !== 0x50 || bytes[1] !== 0x4b) {
    return { kind: 'refused', because: 'The file is not a zip archive, which a boat file is.' };
  }
  const stated = entriesStated(bytes);
  if (stated === null) {
    return { kind: 'refused', because: 'The file is cut off: the list of contents at its end is missing.' };
  }
  const tooMuch = (): Refused =>
    new Refused(
      `The file unpacks to more than ${megabytes(limits.unpacked)}, which no boat file does; unpacking was stopped.`,
    );
  const files = new Map<string, Uint8Array>();
  const seen = new Set<string>();
  let entries = 0;
  let total = 0;
  const unzip = new Unzip((file) => {
    entries++;
    if (entries > limits.entries) throw new Refused(`The file holds more than ${limits.entries} entries.`);
    const fault = nameFault(file.name);
    if (fault !== null)
      throw new Refused(`The file holds an entry named ‘${shown(file.name)}’, which is refused: ${fault}.`);
    const alike = file.name.toLowerCase();
    if (seen.has(alike)) throw new Refused(`The file holds two entries named ‘${shown(file.name)}’.`);
    seen.add(alike);
    if (file.compression !== 0 && file.compression !== 8) {
      throw new Refused(
        `The entry ‘${shown(file.name)}’ is packed in a way (${file.compression}) that boat files do not use.`,
      );
    }
    if (file.originalSize !== undefined && file.originalSize > limits.unpacked) throw tooMuch();
    const pieces: Uint8Array[] = [];
    file.ondata = (error, data, final) => {
      if (error) throw error;
      total += data.length;
      if (total > limits.unpacked) throw tooMuch();
      if (total > smallEnough && total > mostTimes * bytes.length) {
        throw new Refused(
          `The file unpacks to more than ${mostTimes} times its size, which no boat file does; unpacking was stopped at ${megabytes(total)}.`,
        );
      }
      if (data.length > 0) pieces.push(data.slice());
      if (final && !file.name.endsWith('/')) files.set(file.name, joined(pieces));
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length; at += piece) {
      unzip.push(bytes.subarray(at, at + piece), at + piece >= bytes.length);
    }
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', because: error.message };
    const detail = error instanceof Error ? error.message : String(error);
    return { kind: 'refused', because: `The file is damaged and cannot be unpacked (${detail}).` };
  }
  if (entries !== stated) {
    return {
      kind: 'refused',
      because: `The file is damaged: its list of contents says ${stated} entries, and there are ${entries}.`,
    };
  }
  return { kind: 'unpacked', files };
}

const shown = (name: string): string => (name.length > 60 ? `${name.slice(0, 60)}…` : name);

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, one) => sum + one.length, 0));
  let at = 0;
  for (const one of pieces) {
    whole.set(one, at);
    at += one.length;
  }
  return whole;
}

/** How many entries the record at the end of a zip states (APPNOTE 6.3, 4.3.16); null where there is none. */
function entriesStated(bytes: Uint8Array): number | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = bytes.length - 22; at >= 0 && at >= bytes.length - 22 - 65_535; at--) {
    if (view.getUint32(at, true) === 0x06054b50 && at + 22 + view.getUint16(at + 20, true) === bytes.length) {
      return view.getUint16(at + 10, true);
    }
  }
  return null;
}
