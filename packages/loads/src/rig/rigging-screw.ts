/**
 * Threads of rigging screws: what one turn moves along the thread. [mm]
 * Inch threads are unified fine (ASME B1.1), metric ones the coarse of ISO 261; recalled.
 */
export const threadPitch_mm = {
  'unf-1-4': 25.4 / 28,
  'unf-5-16': 25.4 / 24,
  'unf-3-8': 25.4 / 24,
  'unf-7-16': 25.4 / 20,
  'unf-1-2': 25.4 / 20,
  'unf-5-8': 25.4 / 18,
  m5: 0.8,
  m6: 1,
  m8: 1.25,
  m10: 1.5,
  m12: 1.75,
} as const;
export type ScrewThread = keyof typeof threadPitch_mm;

export const screwThreadTitles: Readonly<Record<ScrewThread, string>> = {
  'unf-1-4': '1/4 in fine, 28 to the inch',
  'unf-5-16': '5/16 in fine, 24 to the inch',
  'unf-3-8': '3/8 in fine, 24 to the inch',
  'unf-7-16': '7/16 in fine, 20 to the inch',
  'unf-1-2': '1/2 in fine, 20 to the inch',
  'unf-5-8': '5/8 in fine, 18 to the inch',
  m5: 'M5, 0.8 mm',
  m6: 'M6, 1 mm',
  m8: 'M8, 1.25 mm',
  m10: 'M10, 1.5 mm',
  m12: 'M12, 1.75 mm',
};

/** A rigging screw: its thread, and whether its body runs on a thread at both ends or at one. */
export interface RiggingScrew {
  readonly thread: ScrewThread;
  readonly ends: 'both' | 'one';
}

/** What one whole turn of the body takes up. [mm] */
export function takenUpByTurn_mm({ thread, ends }: RiggingScrew): number {
  return threadPitch_mm[thread] * (ends === 'both' ? 2 : 1);
}
