/** Reads files of readings beside the page: a first look, the rows as they would be read, and all of them with progress. */
import { expose, transfer } from 'comlink';
import {
  blockBytes,
  columnsThere,
  type FaultTally,
  type Gap,
  gapsIn,
  lookAtSentences,
  lookAtTable,
  type PlanFaults,
  planFaults,
  type ReadFile,
  type ReadingLimits,
  readSentences,
  readTable,
  rowsOf,
  type SentencePlan,
  type Separator,
  type TableLook,
  type TablePlan,
  type Transducer,
  textOfFile,
} from '#readings';
import type { BlobFields } from '../../../offline/book-world.ts';

export type LookedFile =
  | {
      readonly kind: 'table';
      readonly look: TableLook;
      /** of the head and the first rows, as they stand */
      readonly rows: readonly (readonly string[])[];
      readonly notes: readonly string[];
    }
  | { readonly kind: 'sentences'; readonly transducers: readonly Transducer[]; readonly notes: readonly string[] }
  | { readonly kind: 'refused'; readonly wrong: string; readonly right: string };

/** A row as it would be read. [ms, V, A, °C]; null: not read */
export interface TriedRow {
  readonly at: number;
  readonly volts: number | null;
  readonly current: number | null;
  readonly air: number | null;
}

/** What came of a file. */
export interface FileReport {
  readonly count: number;
  readonly from: number;
  readonly to: number;
  readonly rows: number;
  readonly outOfOrder: number;
  readonly twice: number;
  readonly faults: FaultTally;
  readonly gaps: number;
  readonly longest: Gap | null;
}

/** Rows shown before anything is read. */
const shownRows = 5;

let text = '';
let look: TableLook | null = null;
let read: ReadFile | null = null;

const figure = (values: Float32Array | null, i: number): number | null =>
  values === null || Number.isNaN(values[i]!) ? null : values[i]!;

function reported({ columns, faults, rows, outOfOrder, twice }: ReadFile): FileReport {
  const gaps = gapsIn(columns.at);
  const longest = gaps.reduce<Gap | null>(
    (most, gap) => (most === null || gap.to - gap.from > most.to - most.from ? gap : most),
    null,
  );
  const { at } = columns;
  return {
    count: at.length,
    from: at[0] ?? 0,
    to: at.at(-1) ?? 0,
    rows,
    outOfOrder,
    twice,
    faults,
    gaps: gaps.length,
    longest,
  };
}

const worker = {
  async open(file: Blob, limits: ReadingLimits): Promise<LookedFile> {
    // a larger file is refused by its size, without being taken in
    const head = await file.slice(0, 60_000_001).arrayBuffer();
    const bytes = new Uint8Array(head);
    const found = textOfFile(bytes);
    if (found.kind === 'refused') return found;
    text = found.text;
    read = null;
    if (found.kind === 'table') return worker.look(null, found.notes, limits);
    const looked = lookAtSentences(text);
    return looked.kind === 'refused'
      ? looked
      : { kind: 'sentences', transducers: looked.transducers, notes: found.notes };
  },
  look(separator: Separator | null, notes: readonly string[], limits: ReadingLimits): LookedFile {
    const looked = lookAtTable(text, limits.volts, separator);
    if (looked.kind === 'refused') return looked;
    look = looked.look;
    const rows = rowsOf(text, look.separator, look.headRows + shownRows).slice(Math.max(0, look.headRows - 1));
    return { kind: 'table', look, rows, notes };
  },
  tryOut(
    plan: TablePlan,
    limits: ReadingLimits,
  ): { readonly faults: PlanFaults; readonly rows: readonly TriedRow[]; readonly lost: string | null } {
    if (look === null) return { faults: {}, rows: [], lost: null };
    const ends = /\r\n|\n|\r/g;
    for (let row = 0; row < plan.headRows + shownRows && ends.exec(text) !== null; row++);
    const few = text.slice(0, ends.lastIndex || text.length);
    const { columns, faults } = readTable(few, plan, limits);
    const rows = Array.from(columns.at.subarray(0, shownRows), (at, i) => ({
      at,
      volts: figure(columns.volts, i),
      current: figure(columns.current, i),
      air: figure(columns.air, i),
    }));
    const [first] = faults.told;
    return {
      faults: planFaults(text, look, plan, limits),
      rows,
      lost: first ? `Row ${first.row}: ${first.wrong}; right would be ${first.right}.` : null,
    };
  },
  read(
    plan: { readonly table: TablePlan } | { readonly sentences: SentencePlan },
    limits: ReadingLimits,
    told: (share: number) => void,
  ): FileReport {
    read =
      'table' in plan ? readTable(text, plan.table, limits, told) : readSentences(text, plan.sentences, limits, told);
    return reported(read);
  },
  /** The block to keep, and what the book says of it. */
  block(battery: string, file: string): { readonly block: BlobFields<'keepReadingBlock'>; readonly bytes: Uint8Array } {
    if (read === null || read.columns.at.length === 0) throw new Error('nothing was read');
    const { columns } = read;
    const second = (ms: number) => new Date(ms).toISOString().replace(/\.\d+Z$/, 'Z');
    const bytes = blockBytes(columns);
    const block: BlobFields<'keepReadingBlock'> = {
      battery,
      from: second(Math.floor(columns.at[0]! / 1000) * 1000),
      to: second(Math.ceil(columns.at.at(-1)! / 1000) * 1000),
      count: columns.at.length,
      columns: columnsThere(columns),
      file: file.slice(0, 200),
    };
    return transfer({ block, bytes }, [bytes.buffer]);
  },
};
export type ReadingsWorker = typeof worker;
expose(worker);
