/** The Worker that reads files, and what it is held to. */
import { type Remote, wrap } from 'comlink';
import type { BatteryRecord } from '#boat-book';
import type { ReadingLimits } from '#readings';
import type { ReadingsWorker } from './readings-worker.ts';

export interface FileReader {
  readonly worker: Remote<ReadingsWorker>;
  /** Stops it, whatever it is at. */
  stop(): void;
}

export function beginReading(): FileReader {
  const made = new Worker(new URL('./readings-worker.ts', import.meta.url), { type: 'module', name: 'readings' });
  return { worker: wrap<ReadingsWorker>(made), stop: () => made.terminate() };
}

/** What no battery of its volts shows is a slip, a sensor that is off, or another column: as for readings by hand. */
export function limitsOf({ nominal_V }: BatteryRecord): ReadingLimits {
  const scale = nominal_V / 12;
  return { volts: [8 * scale, 16.5 * scale], now: Date.now() };
}
