/** The wire and fuse for an outlet that is not there yet, and the job that puts it in. */
import type { BatteryRecord, CircuitRecord, Id, OperationFields } from '#boat-book';
import {
  type ConductorSize,
  circuitWorking,
  copperArea_mm2,
  dropLimit_pct,
  fuseKinds,
  fuseReach_m,
  fuseThatBreaks,
  sizesOf,
  voltDrop_V,
  voltsAtDevice,
  type WiredCircuit,
  wireFor,
} from '#wiring';
import {
  bladeInWords,
  bothSizesInWords,
  type Finding,
  figureSaid,
  sentence,
  sourceInWords,
  workingInWords,
} from './circuits-in-words.ts';
import { faultOf, wiredBattery } from './circuits-of-book.ts';
import type { WorkingTold } from './circuits-told.ts';

/** An outlet as it is asked about. */
export interface NewOutlet {
  readonly name: string;
  readonly current_A: number;
  /** from the battery to the outlet along the way the wire will lie */
  readonly oneWay_m: number;
  readonly needs: CircuitRecord['needs'];
  readonly insulation_C: NonNullable<CircuitRecord['conductor']>['insulation_C'];
  /** conductors that carry current in its bundle, its own two among them */
  readonly bundled: number;
  readonly engineSpace: boolean;
  readonly run: WiredCircuit['run'];
  /** where the fuse will stand, from the battery along the lead */
  readonly fuseAt_m: number;
  /** in a sheath or conduit from the battery to the fuse */
  readonly sheathed: boolean;
  readonly soldBy: ConductorSize['kind'];
}

/** The wire and fuse found, in sentences with their numbers; or why there is none. */
export type OutletTold =
  | {
      readonly kind: 'found';
      /** `1.5 mm² (16 AWG)` */
      readonly size: string;
      readonly fuse_A: number;
      /** the first is the answer */
      readonly lines: readonly string[];
      readonly working: readonly WorkingTold[];
      /** the wire and the fuse as they go in the book */
      readonly fields: Required<
        Pick<CircuitRecord, 'watts' | 'fuse_A' | 'fuseAt_m' | 'fuseKind' | 'sheathed' | 'needs'>
      > & {
        readonly conductor: NonNullable<CircuitRecord['conductor']>;
      };
    }
  | { readonly kind: 'none'; readonly lines: readonly string[] };

/**
 * The smallest standard wire that loses few enough volts, carries the current and lets a standard fuse protect it, with that fuse,
 * its place and what it must break, and the volts at the device.
 */
export function newOutletTold(battery: BatteryRecord, outlet: NewOutlet): OutletTold {
  const wired = wiredBattery(battery);
  const lengthThereAndBack_m = 2 * outlet.oneWay_m;
  const laid = { ...outlet, lengthThereAndBack_m };
  const found = wireFor(wired, outlet, laid, outlet.soldBy);
  const other = wireFor(wired, outlet, laid, outlet.soldBy === 'metric' ? 'gauge' : 'metric');
  const run = `${figureSaid(outlet.oneWay_m)} m one way is ${figureSaid(lengthThereAndBack_m)} m there and back, and that is what counts.`;
  if (found.size === null || found.fuse?.kind !== 'fits' || found.drop_V === null)
    return {
      kind: 'none',
      lines: [
        `No wire of the table does it for ${figureSaid(outlet.current_A)} A. ${run}`,
        'Shorten the run, split the load over two circuits, take insulation for more heat, or lead it away from the engine and out of the bundle.',
      ],
    };
  const { size, fuse, drop_V } = found;
  const circuit: WiredCircuit = {
    ...outlet,
    end: 'load',
    fuse_A: fuse.rating_A,
    fuseKind: null,
    conductor: { ...laid, size },
  };
  const fault_A = faultOf(wired);
  const breaks = fuseThatBreaks(fault_A);
  const fuseKind = breaks === 'blade' ? breaks : null;
  const allowed_V = (wired.nominal_V * dropLimit_pct[outlet.needs]) / 100;
  const reasons = [
    { by: 'volts lost', size: found.forDrop },
    { by: 'current', size: found.forCurrent },
    { by: 'fuse', size: found.forFuse },
    { by: 'strength', size: found.least },
  ];
  const governs = reasons.filter((reason) => reason.size !== null && same(reason.size, size)).map(({ by }) => by);
  const arrives_V = voltsAtDevice(circuit, wired.nominal_V, wired.nominal_V);
  const sizes = sizesOf(outlet.soldBy);
  const next = sizes[sizes.findIndex((each) => same(each, size)) + 1];
  const working = circuitWorking(wired, circuit);
  const blade = bladeInWords(fuse.rating_A);
  return {
    kind: 'found',
    size: bothSizesInWords(size),
    fuse_A: fuse.rating_A,
    lines: [
      `Take ${said(size)}${other.size ? `, or ${said(other.size)} where it is sold in ${other.size.kind === 'gauge' ? 'AWG' : 'mm²'}` : ''}. ${run}`,
      `${sentence(reasons.map(({ by, size: each }) => `by ${by} ${each ? said(each) : 'none of the table'}`).join(', '))} The largest counts, here by ${governs.length < 2 ? governs.join('') : `${governs.slice(0, -1).join(', ')} and ${governs.at(-1)}`}.`,
      `It loses ${drop_V.toFixed(2)} V, ${((100 * drop_V) / wired.nominal_V).toFixed(1)} %; ${dropLimit_pct[outlet.needs]} % may be, ${figureSaid(allowed_V)} V.${next ? ` The next size up, ${bothSizesInWords(next)}, loses ${voltDrop_V(next, lengthThereAndBack_m, outlet.current_A).toFixed(2)} V.` : ''}`,
      ...(arrives_V === null
        ? []
        : [
            `When the battery gives ${wired.nominal_V.toFixed(1)} V under load, ${arrives_V.toFixed(1)} V arrive, with fuse, switch and joints counted.`,
          ]),
      `Fuse ${figureSaid(fuse.rating_A)} A${blade ? `, ${blade} as a blade` : ''}: the next standard one over 1.25 × ${figureSaid(outlet.current_A)} A, and not above what the wire may carry.`,
      ...fusePlaceInWords(outlet),
      breaks === null
        ? `No fuse of our list breaks the ${rounded(fault_A)} A this battery may give into a short: ask its maker.`
        : `It must break the ${rounded(fault_A)} A this battery may give into a short (${battery.fault_A == null ? 'our assumption' : 'its maker’s sheet'}): ${breaks === 'blade' ? 'a blade fuse does' : `a main fuse of the kind ‘${fuseKinds[breaks].title}’ at the battery, ahead of this one`} (${fuseKinds[breaks].breaks_A} A, recalled: its maker’s sheet decides).`,
    ],
    working: [
      {
        title: 'The size',
        lines: [
          sentence(
            `Volts that may be lost: ${dropLimit_pct[outlet.needs]} % of ${wired.nominal_V} V = ${figureSaid(allowed_V)} V`,
          ),
          ...reasons.map(({ by, size: each }) =>
            sentence(`Smallest by ${by}: ${each ? said(each) : 'none of the table'}`),
          ),
        ],
      },
      ...working.parts.map(({ title, lines }) => ({ title, lines: lines.map(workingInWords) })),
      { title: 'Not covered', lines: working.limits },
      { title: 'From', lines: [...new Set(working.sources.map(sourceInWords))] },
    ],
    fields: {
      watts: rounded6(outlet.current_A * wired.nominal_V),
      fuse_A: fuse.rating_A,
      fuseAt_m: outlet.fuseAt_m,
      fuseKind,
      sheathed: outlet.sheathed,
      needs: outlet.needs,
      conductor: {
        area_mm2: Number(copperArea_mm2(size).toFixed(3)),
        insulation_C: outlet.insulation_C,
        lengthThereAndBack_m,
        bundled: outlet.bundled,
        engineSpace: outlet.engineSpace,
      },
    },
  };
}

function fusePlaceInWords({ fuseAt_m, sheathed }: NewOutlet): string[] {
  const reach_m = sheathed ? fuseReach_m.sheathed : fuseReach_m.open;
  const mm = (metres: number) => `${Math.round(1000 * metres)} mm`;
  return fuseAt_m <= reach_m + 1e-9
    ? [
        `It stands ${mm(fuseAt_m)} from the battery along the lead; ${mm(reach_m)} may be${sheathed ? ', in a sheath all the way' : ''}.`,
      ]
    : [
        `${mm(fuseAt_m)} from the battery is too far for the fuse: ${mm(reach_m)} may be${sheathed ? ' even in a sheath' : `, or ${mm(fuseReach_m.sheathed)} in a sheath all the way`}. The wire before it has nothing to stop it.`,
      ];
}

const said = (size: ConductorSize) => (size.kind === 'metric' ? `${size.area_mm2} mm²` : `${size.awg} AWG`);
const same = (a: ConductorSize, b: ConductorSize) => said(a) === said(b);
const rounded = (amps: number) => 100 * Math.ceil(amps / 100);
const rounded6 = (value: number) => Number(value.toPrecision(6));

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
