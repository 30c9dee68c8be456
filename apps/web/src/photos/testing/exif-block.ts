/** A camera's Exif block, written by hand for tests: orientation, time and position (Exif 2.3, CIPA DC-008-2012, §4.6). */

export interface CameraMarks {
  readonly orientation: number;
  /** `2026:05:02 09:41:07` */
  readonly taken?: string;
  /** degrees, minutes and hundredths of seconds, with their sides */
  readonly gps?: {
    readonly latitude: readonly [number, number, number, 'N' | 'S'];
    readonly longitude: readonly [number, number, number, 'E' | 'W'];
  };
}

/** The block as an APP1 part of a JPEG. */
export function exifPart(marks: CameraMarks, little: boolean): Uint8Array {
  const tiff = tiffOf(marks, little);
  const part = new Uint8Array(10 + tiff.length);
  part.set([0xff, 0xe1, (tiff.length + 8) >> 8, (tiff.length + 8) & 255]);
  part.set(new TextEncoder().encode('Exif\0\0'), 4);
  part.set(tiff, 10);
  return part;
}

/** A JPEG with the block as its first part. */
export function withExif(jpeg: Uint8Array, marks: CameraMarks, little = false): Uint8Array {
  const part = exifPart(marks, little);
  const made = new Uint8Array(jpeg.length + part.length);
  made.set(jpeg.subarray(0, 2));
  made.set(part, 2);
  made.set(jpeg.subarray(2), 2 + part.length);
  return made;
}

/** Three directories one after another (the picture's, the camera's, the position's), then what does not fit in them. */
function tiffOf({ orientation, taken, gps }: CameraMarks, little: boolean): Uint8Array {
  const bytes = new Uint8Array(512);
  const view = new DataView(bytes.buffer);
  let free = 300;
  const [first, camera, position] = [8, 80, 140];
  const directory = (at: number, count: number) => {
    view.setUint16(at, count, little);
    let next = at + 2;
    return (tag: number, type: number, of: number, value: (at: number) => void) => {
      view.setUint16(next, tag, little);
      view.setUint16(next + 2, type, little);
      view.setUint32(next + 4, of, little);
      value(next + 8);
      next += 12;
    };
  };
  const ascii = (text: string) => (at: number) => {
    const letters = new TextEncoder().encode(`${text}\0`);
    if (letters.length <= 4) return bytes.set(letters, at);
    view.setUint32(at, free, little);
    bytes.set(letters, free);
    free += letters.length;
  };
  const fractions = (three: readonly number[]) => (at: number) => {
    view.setUint32(at, free, little);
    for (const [i, over] of [1, 1, 100].entries()) {
      view.setUint32(free + 8 * i, three[i]!, little);
      view.setUint32(free + 8 * i + 4, over, little);
    }
    free += 24;
  };
  bytes.set(new TextEncoder().encode(little ? 'II' : 'MM'));
  view.setUint16(2, 42, little);
  view.setUint32(4, first, little);
  const inFirst = directory(first, 1 + Number(taken !== undefined) + Number(gps !== undefined));
  inFirst(0x0112, 3, 1, (at) => view.setUint16(at, orientation, little));
  if (taken !== undefined) {
    inFirst(0x8769, 4, 1, (at) => view.setUint32(at, camera, little));
    directory(camera, 1)(0x9003, 2, taken.length + 1, ascii(taken));
  }
  if (gps !== undefined) {
    inFirst(0x8825, 4, 1, (at) => view.setUint32(at, position, little));
    const inPosition = directory(position, 4);
    inPosition(1, 2, 2, ascii(gps.latitude[3]));
    inPosition(2, 5, 3, fractions(gps.latitude.slice(0, 3) as number[]));
    inPosition(3, 2, 2, ascii(gps.longitude[3]));
    inPosition(4, 5, 3, fractions(gps.longitude.slice(0, 3) as number[]));
  }
  return bytes.subarray(0, free);
}
