/** The jobs that circuits bring: a fault to be mended, an outlet to be put in. Their minutes are our guess, the keeper's to change. */
import type { Id, OperationFields } from '#boat-book';
import { type Finding, figureSaid } from './circuits-in-words.ts';
import type { NewOutlet, OutletTold } from './new-outlet.ts';

/** What the job of putting an outlet in asks of the stores: the wire and the fuse, neither on hand. */
export function outletStores(
  { name, oneWay_m, run, insulation_C }: NewOutlet,
  { size, fuse_A }: Extract<OutletTold, { kind: 'found' }>,
): readonly [wire: OperationFields<'addStore'>, fuse: OperationFields<'addStore'>] {
  const length = run === 'singly' ? `two wires of ${figureSaid(oneWay_m)} m` : `${figureSaid(oneWay_m)} m of twin`;
  const toGet = { keptAt: '', onHand: false, expected: null, lead_days: null } as const;
  return [
    {
      ...toGet,
      name: `Cable ${size}, ${length}`,
      note: `For ${name}: stranded, tinned, insulation for ${insulation_C} °C or more. Measure again before you cut.`,
    },
    { ...toGet, name: `Fuse ${figureSaid(fuse_A)} A with its holder`, note: `For ${name}, at the battery.` },
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
 * @param stores  the wire and the fuse as they stand in the stores
 */
export function outletJob(
  { name, engineSpace }: NewOutlet,
  zone: Id | null,
  [wire, fuse]: readonly [Id, Id],
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
        stores: [wire],
        cautions: [
          `Held every 450 mm, clear of edges${engineSpace ? ', and of everything hot at the engine' : ' and of bilge water'}.`,
        ],
      },
      {
        title: 'Fit its fuse at the battery and connect it',
        minutes: { low: 20, likely: 30, high: 60 },
        hands: 1,
        stores: [fuse],
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
