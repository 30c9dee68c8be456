/** The Worker that makes a photograph small enough to keep, the right way up, and silent about where it was taken. */
import { expose } from 'comlink';
import type { Position } from './exif-marks.ts';
import { mostKept_bytes } from './photo-size.ts';
import { type PictureLook, pictureLook } from './picture-look.ts';

export interface SmallPhoto {
  readonly kind: 'photo';
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly width_px: number;
  readonly height_px: number;
  /** as the camera wrote it, at the clock of this device where it wrote no offset; null: it wrote none. [ms] */
  readonly taken: number | null;
  /** where it says it was taken: left out of `bytes` */
  readonly position: Position | null;
}

export type MadeSmall = SmallPhoto | { readonly kind: 'refused'; readonly why: string };

export interface PhotoWorker {
  smallPhoto(file: File): Promise<MadeSmall>;
}

/** The long edge a photograph is kept with: a thread or a part number can still be read. [px] */
const longEdge_px = 1600;
const firstQuality = 0.8;
/** Larger than any camera writes for one picture. [bytes] */
const mostFile_bytes = 60_000_000;
/** Some 240 MB while it is decoded: more, and a phone may close the page. */
const mostPixels = 60_000_000;

const refused = (why: string): MadeSmall => ({ kind: 'refused', why });

async function smallPhoto(file: File): Promise<MadeSmall> {
  if (file.size === 0) return refused('it has 0 bytes: nothing was stored in it. Take it again, or choose another.');
  if (file.size > mostFile_bytes)
    return refused(
      `it has ${Math.round(file.size / 1e6)} MB, and a photograph at most ${mostFile_bytes / 1e6} MB. Take it at a smaller size.`,
    );
  const look = pictureLook(new Uint8Array(await file.arrayBuffer()));
  if (look.kind === 'none') return refused('it is not a picture. JPEG, PNG, WebP and GIF can be read.');
  if (look.stated !== null && look.stated.width_px * look.stated.height_px > mostPixels)
    return refused(
      `it has ${look.stated.width_px} × ${look.stated.height_px} pixels, and at most ${mostPixels / 1e6} million can be opened here. Take it at a smaller size.`,
    );
  if (!look.whole)
    return refused('it breaks off before its end: it was not stored in full. Copy it again, or take it again.');
  if (typeof OffscreenCanvas === 'undefined')
    return refused('this browser cannot make photographs smaller. A newer one can.');
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return refused(unread(look.kind));
  }
  try {
    return { ...(await withinBounds(picture)), taken: takenAt(look), position: look.position };
  } finally {
    picture.close();
  }
}

function unread(kind: PictureLook['kind']): string {
  if (kind === 'heic' || kind === 'avif')
    return `it is a ${kind.toUpperCase()} picture, which this browser cannot read. Set the camera to store JPEG, or share the picture to this device as JPEG, and choose that.`;
  return `it begins as a ${kind.toUpperCase()} picture but cannot be read: it is damaged. Copy it again, or take it again.`;
}

/** Made smaller, then coarser, then smaller again, until it is within what is kept. */
async function withinBounds(picture: ImageBitmap): Promise<Omit<SmallPhoto, 'taken' | 'position'>> {
  const long = Math.max(picture.width, picture.height);
  for (let edge = Math.min(longEdge_px, long); ; edge = Math.round(edge * 0.75)) {
    const scale = edge / long;
    const canvas = new OffscreenCanvas(
      Math.max(1, Math.round(picture.width * scale)),
      Math.max(1, Math.round(picture.height * scale)),
    );
    const pen = canvas.getContext('2d', { alpha: false });
    if (pen === null) throw new Error('it gave no canvas');
    pen.fillStyle = 'white'; // what shows through a clear picture
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    for (const quality of [firstQuality, 0.7, 0.6]) {
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality });
      if (blob.size > mostKept_bytes) continue;
      const bytes = new Uint8Array(await blob.arrayBuffer());
      return { kind: 'photo', bytes, width_px: canvas.width, height_px: canvas.height };
    }
  }
}

function takenAt({ takenClock, offset }: PictureLook): number | null {
  if (takenClock === null) return null;
  const taken = Date.parse(`${takenClock}${offset ?? ''}`);
  return Number.isFinite(taken) ? taken : null;
}

expose({ smallPhoto } satisfies PhotoWorker);
