/** The estimate as it is put to the test: the same for measured runs and for owners of the other battery. */
import { type Band, type BatteryHistory, estimateBattery } from '#battery';
import type { Quantity } from './calibration.ts';

/** Seeded choices of readings for each measured run. */
export const choicesARun = 24;

/** What is still to come at the current that flows, down to the cut-off. [Ah] */
export const stillToCome = (history: BatteryHistory, seed: number, load_A: number): Band =>
  estimateBattery(history, { seed, load_A }).left_Ah;

export const asEstimated = (history: BatteryHistory, seed: number): Readonly<Record<Quantity, Band>> =>
  estimateBattery(history, { seed });
