/** The jobs that circuits bring: a fault to be mended, an outlet to be put in. Their minutes are our guess, the keeper's to change. */
import type { Id, OperationFields } from '#boat-book';
import { type Finding, figureSaid } from './circuits-in-words.ts';
import type { NewOutlet, OutletTold } from './new-outlet.ts';
import { stepTaking, type ThingTaken, type ThingToGet } from './thing-to-get.ts';

/** What the job of putting an outlet in asks to get: the wire, there and back, and the fuse. */
export function outletToGet(
  { name, oneWay_m, run, insulation_C }: NewOutlet,
  { size, fuse_A }: Extract<OutletTold, { kind: 'found' }>,
): readonly [wire: ThingToGet, fuse: ThingToGet] {
  const singly = run === 'singly';
  return [
    {
      name: `${singly ? 'Single-core' : 'Twin'} cable, ${size}`,
      amount: singly ? 2 * oneWay_m : oneWay_m,
      unit: 'm',
      note: `For ${name}: stranded, tinned, insulation for ${insulation_C} °C or more. Measure again before you cut.`,
    },
    { name: `Fuse with holder, ${figureSaid(fuse_A)} A`, amount: 1, unit: '', note: `For ${name}, at the battery.` },
  ];
}

/** What is done with everything dead, said at the step. */
const dead = 'Loads off, isolator off, negative lead off first and on last. Rings and watch off.';
const spanner = 'A spanner across the terminals glows in a second: tape its handle.';

/**
 * The job of mending a fault of a circuit. Its minutes are our guess, for the keeper to change.
 *
 * @param name  of the circuit, or of the battery
 */
export function mendJob(
  name: string,
  { gravity, wrong, right, mend }: Finding,
  zone: Id | null,
): OperationFields<'addJob'> {
  const title = `${mend ?? 'Look at it'}: ${name}`;
  return {
    title,
    why: right === null ? wrong : `${wrong} ${right}`,
    consequence: gravity === 'danger' ? 'danger' : 'worsens',
    zone,
    steps: [
      { title: mend ?? 'Look at it', minutes: { low: 20, likely: 45, high: 90 }, hands: 1, cautions: [dead, spanner] },
    ],
  };
}

/**
 * The job of putting an outlet in. Its minutes are our guess, for the keeper to change.
 *
 * @param things  the wire and the fuse as they are taken out of the stores
 */
export function outletJob(
  { name, engineSpace }: NewOutlet,
  zone: Id | null,
  [wire, fuse]: readonly ThingTaken[],
): OperationFields<'addJob'> {
  return {
    title: `Wire ${name}`,
    why: 'A new outlet: its wire and fuse are worked out under Boat, Circuits.',
    consequence: 'comfort',
    zone,
    steps: [
      {
        title: 'Run the wire',
        minutes: { low: 30, likely: 60, high: 120 },
        hands: 1,
        ...stepTaking(wire === undefined ? [] : [wire]),
        cautions: [
          `Held every 450 mm, clear of edges${engineSpace ? ', and of everything hot at the engine' : ' and of bilge water'}.`,
        ],
      },
      {
        title: 'Fit its fuse at the battery and connect it',
        minutes: { low: 20, likely: 30, high: 60 },
        hands: 1,
        ...stepTaking(fuse === undefined ? [] : [fuse]),
        cautions: [dead, spanner],
      },
      {
        title: 'Switch it on and read the volts at the device',
        minutes: { low: 5, likely: 10, high: 20 },
        hands: 1,
      },
    ],
  };
}
