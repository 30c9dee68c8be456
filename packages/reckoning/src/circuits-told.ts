import type { Book, Id } from '#boat-book';
import { copperArea_mm2, circuitWorking as workingOf } from '#wiring';
import {
  arrivesWhenInWords,
  bothSizesInWords,
  type CircuitWords,
  circuitCautions,
  circuitInWords,
  circuitsVerdictInWords,
  type Finding,
  faultCurrentInWords,
  findingsOf,
  isolatorInWords,
  sourceInWords,
  workingInWords,
} from './circuits-in-words.ts';
import { type CircuitPlace, circuitsOfBook, type LookedAtBattery, type LookedAtCircuit } from './circuits-of-book.ts';
import { kindInWords } from './power-in-words.ts';

/** Titled lines of how a figure came about. */
export interface WorkingTold {
  readonly title: string;
  readonly lines: readonly string[];
}

/** One circuit as it is told and drawn. */
export interface CircuitTold {
  readonly place: CircuitPlace;
  readonly name: string;
  readonly words: CircuitWords;
  readonly findings: readonly Finding[];
  readonly working: readonly WorkingTold[];
  readonly drawn: CircuitDrawn;
}

/** What a drawing needs to know of a circuit besides its words. */
export interface CircuitDrawn {
  readonly end: 'load' | 'panel' | 'charger';
  /** null: not known */
  readonly lengthThereAndBack_m: number | null;
  readonly area_mm2: number | null;
  /** `1.5 mm² (16 AWG)` */
  readonly size: string | null;
  /** `not said`: of a lead whose fuse nobody was asked about */
  readonly fuse_A: number | null | 'not said';
  /** `fuse too far`: what stands before it has nothing to stop it */
  readonly marks: readonly ('no fuse' | 'fuse too far' | 'fuse' | 'wire')[];
}

/** A battery with its circuits, in the order of the book. */
export interface BatteryCircuitsTold {
  readonly id: Id;
  readonly name: string;
  /** `17 Ah, 12 V, AGM` */
  readonly label: string;
  readonly lines: readonly string[];
  readonly findings: readonly Finding[];
  readonly circuits: readonly CircuitTold[];
}

/** All that is told of the boat's circuits, in whole sentences. Screens, prints and the command line use the same. */
export interface CircuitsTold {
  readonly verdict: string;
  readonly batteries: readonly BatteryCircuitsTold[];
  readonly cautions: readonly string[];
}

/** Every circuit, panel and charger of the book with its figures, what is wrong with it and how that is worked out. */
export function circuitsTold(book: Book): CircuitsTold {
  const batteries = circuitsOfBook(book);
  return {
    verdict: circuitsVerdictInWords(batteries),
    batteries: batteries.map((battery) => ({
      id: battery.id,
      name: battery.record.name,
      label: `${battery.record.nominal_Ah} Ah, ${battery.record.nominal_V} V, ${kindInWords[battery.record.chemistry]}`,
      lines: [arrivesWhenInWords(battery), faultCurrentInWords(battery), isolatorInWords(battery)],
      findings: findingsOf(battery),
      circuits: battery.circuits.map((circuit) => circuitTold(battery, circuit)),
    })),
    cautions: circuitCautions(batteries),
  };
}

function circuitTold(battery: LookedAtBattery, circuit: LookedAtCircuit): CircuitTold {
  const { wired, checked, place } = circuit;
  const working = workingOf(battery.wired, wired);
  const kinds = checked.faults.map(({ kind }) => kind);
  const unsaid = checked.gaps.some(({ missing }) => missing === 'fuse');
  const mark = (as: CircuitDrawn['marks'][number], of: readonly (typeof kinds)[number][]) =>
    kinds.some((kind) => of.includes(kind)) ? [as] : [];
  return {
    place,
    name: wired.name,
    words: circuitInWords(circuit, battery.wired.nominal_V),
    findings: findingsOf(checked),
    working: [
      ...working.parts.map(({ title, lines }) => ({ title, lines: lines.map(workingInWords) })),
      { title: 'Not covered', lines: working.limits },
      { title: 'From', lines: [...new Set(working.sources.map(sourceInWords))] },
    ],
    drawn: {
      end: wired.end,
      lengthThereAndBack_m: wired.conductor?.lengthThereAndBack_m ?? null,
      area_mm2: wired.conductor && copperArea_mm2(wired.conductor.size),
      size: wired.conductor && bothSizesInWords(wired.conductor.size),
      fuse_A: unsaid ? 'not said' : wired.fuse_A,
      marks: [
        ...mark('no fuse', ['no fuse']),
        ...mark('fuse too far', ['fuse too far']),
        ...mark('fuse', ['fuse above the wire', 'fuse below the load', 'fuse cannot break']),
        ...mark('wire', ['drop too great', 'conductor too thin', 'conductor too weak', 'no figure']),
      ],
    },
  };
}
