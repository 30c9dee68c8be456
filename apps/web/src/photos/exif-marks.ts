/**
 * What a camera wrote beside a picture: when and where it was taken. Only that is read; all of it is left out of the
 * photograph that is kept. Form: Exif 2.3 (CIPA DC-008-2012), §4.6: TIFF directories of 12-byte entries.
 */

export interface Position {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
}

export interface ExifMarks {
  /** clock time where it was taken, `2026-05-02T09:41:07`; null: not written, or no clock time */
  readonly takenClock: string | null;
  /** of that clock from UTC, `+01:00`; null: not written */
  readonly offset: string | null;
  readonly position: Position | null;
}

const tag = {
  dateTime: 0x0132,
  exif: 0x8769,
  gps: 0x8825,
  dateTimeOriginal: 0x9003,
  offsetTimeOriginal: 0x9011,
  latitudeRef: 1,
  latitude: 2,
  longitudeRef: 3,
  longitude: 4,
} as const;

const ascii = 2;
const rational = 5;
const pointer = 4;
/** A camera writes some dozens; more is no directory. */
const mostEntries = 512;

interface Entry {
  readonly type: number;
  readonly count: number;
  /** where its value, or the offset of it, stands */
  readonly at: number;
}

/** The marks in an Exif block, from its TIFF head on. What is damaged or out of bounds counts as not written. */
export function exifMarks(tiff: Uint8Array): ExifMarks {
  const none: ExifMarks = { takenClock: null, offset: null, position: null };
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  if (tiff.length < 8) return none;
  const order = view.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return none;
  const little = order === 0x4949;
  const first = directory(view, view.getUint32(4, little), little);
  const exif = directory(view, pointed(view, first.get(tag.exif), little), little);
  const gps = directory(view, pointed(view, first.get(tag.gps), little), little);
  return {
    takenClock: clockOf(
      words(view, exif.get(tag.dateTimeOriginal), little) ?? words(view, first.get(tag.dateTime), little),
    ),
    offset: offsetOf(words(view, exif.get(tag.offsetTimeOriginal), little)),
    position: positionOf(
      degrees(view, gps.get(tag.latitude), words(view, gps.get(tag.latitudeRef), little), little, 90),
      degrees(view, gps.get(tag.longitude), words(view, gps.get(tag.longitudeRef), little), little, 180),
    ),
  };
}

function directory(view: DataView, at: number, little: boolean): ReadonlyMap<number, Entry> {
  const entries = new Map<number, Entry>();
  if (at < 8 || at + 2 > view.byteLength) return entries;
  const count = Math.min(view.getUint16(at, little), mostEntries);
  for (let i = 0; i < count; i++) {
    const entry = at + 2 + 12 * i;
    if (entry + 12 > view.byteLength) break;
    entries.set(view.getUint16(entry, little), {
      type: view.getUint16(entry + 2, little),
      count: view.getUint32(entry + 4, little),
      at: entry + 8,
    });
  }
  return entries;
}

/** Where another directory stands; 0, where none can, if the entry says none. */
function pointed(view: DataView, entry: Entry | undefined, little: boolean): number {
  return entry?.type === pointer && entry.count === 1 ? view.getUint32(entry.at, little) : 0;
}

function words(view: DataView, entry: Entry | undefined, little: boolean): string | null {
  if (entry?.type !== ascii || entry.count === 0 || entry.count > 64) return null;
  const from = entry.count <= 4 ? entry.at : view.getUint32(entry.at, little);
  if (from + entry.count > view.byteLength) return null;
  let text = '';
  for (let i = 0; i < entry.count; i++) {
    const letter = view.getUint8(from + i);
    if (letter === 0) break;
    text += String.fromCharCode(letter);
  }
  return text;
}

/** Degrees, minutes and seconds as three fractions, with N, S, E or W. */
function degrees(
  view: DataView,
  entry: Entry | undefined,
  side: string | null,
  little: boolean,
  most: number,
): number | null {
  if (entry?.type !== rational || entry.count !== 3 || side === null) return null;
  const from = view.getUint32(entry.at, little);
  if (from + 24 > view.byteLength) return null;
  let sum = 0;
  for (const [i, share] of [1, 60, 3600].entries()) {
    const over = view.getUint32(from + 8 * i + 4, little);
    if (over === 0) return null;
    sum += view.getUint32(from + 8 * i, little) / over / share;
  }
  if (sum > most || !/^[NSEW]/.test(side)) return null;
  return /^[SW]/.test(side) ? -sum : sum;
}

function positionOf(latitude: number | null, longitude: number | null): Position | null {
  if (latitude === null || longitude === null) return null;
  // some hundred millimetres: more figures would say nothing
  const rounded = (value: number) => Math.round(value * 1e6) / 1e6;
  return { latitude_deg: rounded(latitude), longitude_deg: rounded(longitude) };
}

function clockOf(text: string | null): string | null {
  const [, year, month, day, time] = /^(\d{4}):(\d{2}):(\d{2}) (\d{2}:\d{2}:\d{2})$/.exec(text ?? '') ?? [];
  const clock = `${year}-${month}-${day}T${time}`;
  // a camera whose clock was never set writes noughts
  return year === undefined || !Number.isFinite(Date.parse(`${clock}Z`)) ? null : clock;
}

function offsetOf(text: string | null): string | null {
  return text !== null && /^[+-](0\d|1[0-4]):[0-5]\d$/.test(text) ? text : null;
}
