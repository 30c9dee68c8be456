/** The wire and fuse for an outlet that is not there yet. */
import type { BatteryRecord, CircuitRecord } from '#boat-book';
import {
  type ConductorSize,
  circuitWorking,
  copperArea_mm2,
  dropLimit_pct,
  fuseKinds,
  fuseReach_m,
  fuseThatBreaks,
  sizeInWords,
  sizesOf,
  voltDrop_V,
  voltsAtDevice,
  type WiredCircuit,
  wireFor,
} from '#wiring';
import {
  bladeInWords,
  bothSizesInWords,
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
      /** what can burn as it is asked */
      readonly warnings: readonly string[];
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
  const reasons = reasonsOf(found);
  const bySize = sentence(reasons.map(({ by, size: each }) => `by ${by} ${sizeSaid(each)}`).join(', '));
  if (found.size === null || found.fuse?.kind !== 'fits' || found.drop_V === null)
    return {
      kind: 'none',
      lines: [
        `No wire of the table does it for ${figureSaid(outlet.current_A)} A. ${run}`,
        bySize,
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
  const limit_pct = dropLimit_pct[outlet.needs];
  const allowed_V = (wired.nominal_V * limit_pct) / 100;
  const governs = reasons.filter((reason) => reason.size !== null && same(reason.size, size)).map(({ by }) => by);
  const arrives_V = voltsAtDevice(circuit, wired.nominal_V, wired.nominal_V);
  const sizes = sizesOf(outlet.soldBy);
  const next = sizes[sizes.findIndex((each) => same(each, size)) + 1];
  const working = circuitWorking(wired, circuit);
  const blade = bladeInWords(fuse.rating_A);
  const place = fusePlaceInWords(outlet);
  return {
    kind: 'found',
    size: bothSizesInWords(size),
    fuse_A: fuse.rating_A,
    lines: [
      `Take ${sizeSaid(size)}${other.size ? `, or ${sizeSaid(other.size)} where it is sold in ${other.size.kind === 'gauge' ? 'AWG' : 'mm²'}` : ''}. ${run}`,
      `${bySize} The largest counts, here by ${governs.length < 2 ? governs.join('') : `${governs.slice(0, -1).join(', ')} and ${governs.at(-1)}`}.`,
      `It loses ${drop_V.toFixed(2)} V, ${((100 * drop_V) / wired.nominal_V).toFixed(1)} %; ${limit_pct} % may be, ${figureSaid(allowed_V)} V.${next ? ` The next size up, ${bothSizesInWords(next)}, loses ${voltDrop_V(next, lengthThereAndBack_m, outlet.current_A).toFixed(2)} V.` : ''}`,
      ...(arrives_V === null
        ? []
        : [
            `When the battery gives ${wired.nominal_V.toFixed(1)} V under load, ${arrives_V.toFixed(1)} V arrive, with fuse, switch and joints counted.`,
          ]),
      `Fuse ${figureSaid(fuse.rating_A)} A${blade ? `, ${blade} as a blade` : ''}: the next standard one over 1.25 × ${figureSaid(outlet.current_A)} A, and not above what the wire may carry.`,
      ...(place.far ? [] : [place.words]),
      breaksInWords(battery),
    ],
    warnings: place.far ? [place.words] : [],
    working: [
      {
        title: 'The size',
        lines: [
          sentence(`Volts that may be lost: ${limit_pct} % of ${wired.nominal_V} V = ${figureSaid(allowed_V)} V`),
          ...reasons.map(({ by, size: each }) => sentence(`Smallest by ${by}: ${sizeSaid(each)}`)),
        ],
      },
      ...working.parts.map(({ title, lines }) => ({ title, lines: lines.map(workingInWords) })),
      { title: 'Not covered', lines: working.limits },
      { title: 'From', lines: [...new Set(working.sources.map(sourceInWords))] },
    ],
    fields: {
      watts: Number((outlet.current_A * wired.nominal_V).toPrecision(6)),
      fuse_A: fuse.rating_A,
      fuseAt_m: outlet.fuseAt_m,
      fuseKind: fuseThatBreaks(faultOf(wired)) === 'blade' ? 'blade' : null,
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

/** The smallest size for each reason alone. */
const reasonsOf = (found: ReturnType<typeof wireFor>) => [
  { by: 'volts lost', size: found.forDrop },
  { by: 'current', size: found.forCurrent },
  { by: 'fuse', size: found.forFuse },
  { by: 'strength', size: found.least },
];

/** What the fuse must break, and which does. */
function breaksInWords(battery: BatteryRecord): string {
  const fault_A = faultOf(wiredBattery(battery));
  const short = `${100 * Math.ceil(fault_A / 100)} A this battery may give into a short (${battery.fault_A == null ? 'our assumption' : 'its maker’s sheet'})`;
  const main = battery.mainFuseKind ?? null;
  if (main !== null && main !== 'none' && fuseKinds[main].breaks_A >= fault_A)
    return `The main fuse, ${fuseKinds[main].title}, breaks the ${short}: ${fuseKinds[main].breaks_A} A, recalled; its maker’s sheet decides.`;
  const breaks = fuseThatBreaks(fault_A);
  if (breaks === null) return `No fuse of our list breaks the ${short}: ask its maker.`;
  const which =
    breaks === 'blade'
      ? 'a blade fuse does'
      : `a main fuse of the kind ‘${fuseKinds[breaks].title}’ at the battery, ahead of this one`;
  return `It must break the ${short}: ${which} (${fuseKinds[breaks].breaks_A} A, recalled: its maker’s sheet decides).`;
}

/** Where the fuse stands, and whether that is too far. */
function fusePlaceInWords({ fuseAt_m, sheathed }: NewOutlet): { readonly far: boolean; readonly words: string } {
  const reach_m = sheathed ? fuseReach_m.sheathed : fuseReach_m.open;
  const mm = (metres: number) => `${Math.round(1000 * metres)} mm`;
  const far = fuseAt_m > reach_m + 1e-9;
  return {
    far,
    words: far
      ? `${mm(fuseAt_m)} from the battery is too far for the fuse: ${mm(reach_m)} may be${sheathed ? ' even in a sheath' : `, or ${mm(fuseReach_m.sheathed)} in a sheath all the way`}. The wire before it has nothing to stop it.`
      : `The fuse stands ${mm(fuseAt_m)} from the battery along the lead; ${mm(reach_m)} may be${sheathed ? ', in a sheath all the way' : ''}.`,
  };
}

const sizeSaid = (size: ConductorSize | null) => (size === null ? 'none of the table' : sizeInWords(size));
const same = (a: ConductorSize, b: ConductorSize) => sizeInWords(a) === sizeInWords(b);
