import type { Chemistry } from '../chemistry.ts';
import type { Ensemble } from './ensemble.ts';

/** Terminal volts that no 12 V battery of the kind shows, at rest, under load or on charge. [V] */
const possible_V: Readonly<Record<Chemistry, readonly [number, number]>> = {
  flooded: [8, 16.5],
  agm: [8, 15.5],
  gel: [8, 15],
  lifepo4: [8, 14.8],
};

/** So many times its own spread a reading lies off a battery that would not have shown it. */
const oddFrom = 3.5;
/** Fewer of those batteries that may be this one than this share would have shown it: it does not go with the rest. */
const fewest = 0.1;

/** Why no 12 V battery of the kind shows these volts; null: one may. */
export function whyImpossible(chemistry: Chemistry, volts: number): string | null {
  const [least, most] = possible_V[chemistry];
  if (volts >= least && volts <= most) return null;
  return `no 12 V battery of this kind shows less than ${least} or more than ${most} V`;
}

/** Which of the readings fitted do not go with the rest, and why; by their place among them. Volts are those of a 12 V battery. */
export function oddReadings({ fitting, members }: Ensemble): { reading: number; because: string }[] {
  const { size, shown, error } = members;
  const { readings } = fitting.history;
  const odd: { reading: number; because: string }[] = [];
  readings.forEach(({ volts }, reading) => {
    const of = (values: Float64Array, n: number) => values[n * readings.length + reading]!;
    let near = 0;
    for (let n = 0; n < size; n++) if (Math.abs(volts - of(shown, n)) < oddFrom * of(error, n)) near++;
    if (near >= fewest * size) return;
    const middle = Float64Array.from({ length: size }, (_, n) => of(shown, n)).sort()[size >> 1]!;
    const off = volts - middle;
    const side = off > 0 ? 'more' : 'less';
    odd.push({
      reading,
      because: `${Math.abs(off).toFixed(2)} V ${side} than goes with the other readings and what was said to flow: a slip, a load or charge not written down, or a fault`,
    });
  });
  return odd;
}
