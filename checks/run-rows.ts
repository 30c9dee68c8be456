import { inBase, inUnit, type Kind, kinds, unitWritten } from '#units';
import { ask, type Figure, figureOf, type Question } from '#working';
import { type Comparison, compare, type Expected } from './compare.ts';
import { type Asking, expectedOf, type FamilyMapping, familyOf, type UnaskedFamily } from './mapping.ts';
import type { CheckRow, OutsideRow } from './row.ts';

export interface RowResult {
  readonly row: CheckRow;
  readonly comparison: Comparison;
}

/** What came of a set of rows of the handbook's form. */
export interface OutsideRun {
  readonly results: readonly RowResult[];
  /** rows of families that stand in the list of what nothing asks, by family, with the reason */
  readonly unasked: readonly { readonly family: string; readonly because: string; readonly rows: number }[];
  /** rows of a mapped family that could not be put as a question, with the reason */
  readonly unmapped: readonly { readonly id: string; readonly because: string }[];
  /** families that are neither mapped nor listed */
  readonly unknown: readonly { readonly family: string; readonly rows: number }[];
}

/** Puts rows of the handbook's form as questions and compares. Every row lands in one of the four lists. */
export function runOutsideRows(
  rows: readonly OutsideRow[],
  questions: readonly Question[],
  { mappings, unasked }: { readonly mappings: readonly FamilyMapping[]; readonly unasked: readonly UnaskedFamily[] },
): OutsideRun {
  const results: RowResult[] = [];
  const unmapped: { id: string; because: string }[] = [];
  const left = new Map<string, { because: string; rows: number }>();
  const unknown = new Map<string, number>();
  for (const row of rows) {
    const known = familyOf<FamilyMapping | UnaskedFamily>([...mappings, ...unasked], row.id);
    if (!known) {
      const family = row.id.split('.').slice(0, 2).join('.');
      unknown.set(family, (unknown.get(family) ?? 0) + 1);
    } else if ('because' in known) {
      left.set(known.family, { because: known.because, rows: (left.get(known.family)?.rows ?? 0) + 1 });
    } else {
      const mapped = asCheckRow(row, known);
      if ('unmapped' in mapped) unmapped.push({ id: row.id, because: mapped.unmapped });
      else results.push({ row: mapped, comparison: runRow(mapped, questions) });
    }
  }
  return {
    results,
    unmapped,
    unasked: [...left].map(([family, each]) => ({ family, ...each })),
    unknown: [...unknown].map(([family, count]) => ({ family, rows: count })),
  };
}

/** A row of the handbook's form as a row that a question answers, or why not. */
export function asCheckRow(row: OutsideRow, mapping: FamilyMapping): CheckRow | { readonly unmapped: string } {
  let asking: Asking;
  let expected: Expected;
  try {
    asking = mapping.asking(row, typeof row.inputs === 'string' ? {} : row.inputs);
    expected = expectedOf(row);
  } catch (cause) {
    // rows come from files: one that lacks what its family has is named, and does not stop the others
    return { unmapped: cause instanceof Error ? cause.message : String(cause) };
  }
  if ('unmapped' in asking) return asking;
  return {
    id: row.id,
    question: asking.question,
    inputs: asking.fields,
    pick: asking.pick,
    expected: typeof expected === 'object' ? [...expected] : expected,
    unit: row.unit,
    tolerance: row.tolerance,
    source: row.source,
    provenance: row.provenance,
    basis: row.basis,
    kind: mapping.kind,
  };
}

/** Asks the row's question and compares the figure it picks. A refusal or a missing figure is a failure. */
export function runRow(row: CheckRow, questions: readonly Question[]): Comparison {
  const failed = (got: string): Comparison => ({
    passed: false,
    share: Number.POSITIVE_INFINITY,
    got,
    wanted: typeof row.expected === 'object' ? row.expected.join(' to ') : String(row.expected),
  });
  const question = questions.find((each) => each.id === row.question);
  if (!question) return failed(`there is no question ${row.question}`);
  const asked = ask(question, row.inputs);
  if (asked.kind === 'refused') return failed(asked.faults.map((fault) => `${fault.where}: ${fault.wrong}`).join('; '));
  const figure = figureOf(asked.answer, row.pick);
  if (!figure)
    return failed(asked.answer.kind === 'truth' ? asked.answer.statement : `the answer has no figure ${row.pick}`);
  const value = inRowUnit(figure, row);
  return typeof value === 'object' ? failed(value.wrong) : compare(value, row.expected, row.tolerance);
}

/** The units of rows, and the unit of ours that means the same. */
const sameUnit: Readonly<Record<string, string>> = {
  '-': '',
  AU: 'au',
  deg: '°',
  arcsec: '″',
  'mm/24 h': 'mm',
  days: 'd',
  'm²/L': 'm²/l',
  'm²/L per coat': 'm²/l',
  // asked for one square metre
  'kg/m²': 'kg',
  'kg/L': 'kg/l',
  '± %': '%',
  '% by mass': '%',
  'same unit as t0': 'min',
  'h (at least)': 'h',
  '% of 25 °C': '%',
  '% of breaking load': '%',
  // hours stand beside, in a figure of their own
  'months or 100 h': 'months',
  'm at least': 'm',
  '% of laden trailer': '%',
  '% of width': '%',
};

/** Units of outside tables that no quantity of ours is written in: how many of which unit one is. */
const countedIn: Readonly<Record<string, readonly [factor: number, unit: string]>> = {
  Pa: [0.01, 'hPa'],
  'N/mm²': [10, 'bar'],
  MPa: [10, 'bar'],
  'kN/mm²': [10_000, 'bar'],
  'lbf/ft²': [1 / 144, 'psi'],
  lbf·in: [1 / 12, 'lbf·ft'],
  kgf·m: [9.80665, 'N·m'],
};

/** A load given as a mass stands for its weight, where the figure is a force. */
const weighedIn: Readonly<Record<string, readonly [factor: number, unit: string]>> = {
  kg: [1, 'kgf'],
  t: [1000, 'kgf'],
  lb: [1, 'lbf'],
};

/** A figure in the unit of the row; a row in a unit that the figure cannot be turned into is named. */
function inRowUnit(figure: Figure, row: CheckRow): number | string | { readonly wrong: string } {
  const wanted = sameUnit[row.unit] ?? row.unit;
  if (typeof figure.value === 'string') return figure.value;
  const clock = typeof row.expected === 'string' && /^\d{1,2}:\d\d/.test(row.expected);
  if (wanted === figure.unit || (clock && figure.unit === 'h')) return figure.value;
  return (
    inOtherUnit(figure.value, figure.unit, wanted) ?? {
      wrong: `the answer is in '${figure.unit}', the row in '${row.unit}'`,
    }
  );
}

/** A number of one unit as a number of another of the same kind; null where they are of no one kind. */
export function inOtherUnit(value: number, from: string, to: string): number | null {
  const [factor, unit] = countedIn[from] ?? [1, from];
  const isForce = unitWritten('force', unit) !== undefined;
  const [rowFactor, rowUnit] = countedIn[to] ?? (isForce ? weighedIn[to] : undefined) ?? [1, to];
  const kind = (Object.keys(kinds) as Kind[]).find((each) => unitWritten(each, unit) && unitWritten(each, rowUnit));
  return kind ? inUnit(kind, inBase(kind, value * factor, unit), rowUnit) / rowFactor : null;
}
