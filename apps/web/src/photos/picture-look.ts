/**
 * What a file is, from its first bytes and its own list of parts, before any of it is decoded: a picture made to do harm
 * states its size there. Forms: JPEG (ITU-T T.81 annex B), PNG (ISO/IEC 15948), WebP and HEIF boxes (RFC 9649,
 * ISO/IEC 14496-12 §4.3).
 */
import { type ExifMarks, exifMarks } from './exif-marks.ts';

export interface PictureLook extends ExifMarks {
  readonly kind: 'jpeg' | 'png' | 'webp' | 'gif' | 'heic' | 'avif' | 'none';
  /** as stored, before it is turned the right way up; null: not stated where it is looked for */
  readonly stated: { readonly width_px: number; readonly height_px: number } | null;
  /** false: it breaks off before its end */
  readonly whole: boolean;
}

const noMarks: ExifMarks = { takenClock: null, offset: null, position: null };

/** What a file is. Reads no further than its own bytes, whatever it says of itself. */
export function pictureLook(bytes: Uint8Array): PictureLook {
  const begins = (...first: readonly number[]) => first.every((byte, i) => bytes[i] === byte);
  if (begins(0xff, 0xd8, 0xff)) return jpegLook(bytes);
  if (begins(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return pngLook(bytes);
  if (letters(bytes, 0, 4) === 'RIFF' && letters(bytes, 8, 4) === 'WEBP') return webpLook(bytes);
  const look = (kind: PictureLook['kind']): PictureLook => ({ kind, stated: null, whole: true, ...noMarks });
  if (letters(bytes, 0, 4) === 'GIF8') {
    const view = viewOf(bytes);
    if (bytes.length < 13) return { ...look('gif'), whole: false };
    return { ...look('gif'), stated: { width_px: view.getUint16(6, true), height_px: view.getUint16(8, true) } };
  }
  if (letters(bytes, 4, 4) === 'ftyp') {
    const brands = letters(bytes, 8, Math.min(56, bytes.length - 8));
    if (/avif|avis/.test(brands)) return look('avif');
    if (/heic|heix|hevc|heim|heis|mif1|msf1/.test(brands)) return look('heic');
  }
  return look('none');
}

/** Goes from part to part; the picture itself begins at the start of its scan and ends at its own end mark. */
function jpegLook(bytes: Uint8Array): PictureLook {
  const view = viewOf(bytes);
  let marks = noMarks;
  let stated: PictureLook['stated'] = null;
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) break;
    const marker = bytes[at + 1]!;
    if (marker === 0xff) {
      at++; // filling between parts
      continue;
    }
    const length = view.getUint16(at + 2);
    const from = at + 4;
    const to = at + 2 + length;
    if (length < 2 || to > bytes.length) break;
    if (marker === 0xe1 && letters(bytes, from, 6) === 'Exif\0\0') marks = exifMarks(bytes.subarray(from + 6, to));
    const frame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (frame && length >= 8) stated = { height_px: view.getUint16(from + 1), width_px: view.getUint16(from + 3) };
    if (marker === 0xda) return { kind: 'jpeg', stated, whole: endsAfter(bytes, to), ...marks };
    at = to;
  }
  return { kind: 'jpeg', stated, whole: false, ...marks };
}

/** Whether the end mark of a JPEG stands after its scan began. Within a scan, FF is followed by 00 or a restart. */
function endsAfter(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.length - 2; at >= from; at--) if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return true;
  return false;
}

function pngLook(bytes: Uint8Array): PictureLook {
  const view = viewOf(bytes);
  const whole = letters(bytes, bytes.length - 8, 4) === 'IEND';
  if (bytes.length < 33 || letters(bytes, 12, 4) !== 'IHDR')
    return { kind: 'png', stated: null, whole: false, ...noMarks };
  return { kind: 'png', stated: { width_px: view.getUint32(16), height_px: view.getUint32(20) }, whole, ...noMarks };
}

function webpLook(bytes: Uint8Array): PictureLook {
  if (bytes.length < 30) return { kind: 'webp', stated: null, whole: false, ...noMarks };
  const view = viewOf(bytes);
  const whole = bytes.length >= view.getUint32(4, true) + 8;
  const part = letters(bytes, 12, 4);
  const threeBytes = (at: number) => view.getUint16(at, true) + (bytes[at + 2]! << 16);
  const stated =
    part === 'VP8X'
      ? { width_px: threeBytes(24) + 1, height_px: threeBytes(27) + 1 }
      : part === 'VP8 '
        ? { width_px: view.getUint16(26, true) & 0x3fff, height_px: view.getUint16(28, true) & 0x3fff }
        : part === 'VP8L'
          ? {
              width_px: (view.getUint32(21, true) & 0x3fff) + 1,
              height_px: ((view.getUint32(21, true) >> 14) & 0x3fff) + 1,
            }
          : null;
  return { kind: 'webp', stated, whole, ...noMarks };
}

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function letters(bytes: Uint8Array, at: number, count: number): string {
  return at < 0 ? '' : String.fromCharCode(...bytes.subarray(at, at + count));
}
