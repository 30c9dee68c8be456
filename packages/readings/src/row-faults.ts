/** What was left out of a file, row by row, and why. */

export interface RowFault {
  /** in the file, counted from 1, headings counted too */
  readonly row: number;
  /** the whole row, or one figure of it */
  readonly lost: 'row' | 'figure';
  readonly wrong: string;
  readonly right: string;
}

export interface FaultTally {
  /** the first of them in the order of the file, at most `mostTold` */
  readonly told: readonly RowFault[];
  readonly rows: number;
  readonly figures: number;
  /** all of them by what would be right: how often, and in which rows (`5, 17, 203–260`) */
  readonly kinds: readonly { readonly right: string; readonly count: number; readonly rows: string }[];
}

/** Faults told one by one; of the others their number and their rows are. */
export const mostTold = 500;
/** Runs of rows written out of one kind. */
const mostRuns = 40;

export interface FaultList {
  add(fault: RowFault): void;
  tally(): FaultTally;
}

/** A list that grows with the faults of a file and stays small with a million of them. */
export function faultList(): FaultList {
  const told: RowFault[] = [];
  const kinds = new Map<string, { count: number; runs: [first: number, last: number][]; more: boolean }>();
  let rows = 0;
  let figures = 0;
  return {
    add(fault) {
      if (fault.lost === 'row') rows++;
      else figures++;
      if (told.length < mostTold) told.push(fault);
      let kind = kinds.get(fault.right);
      if (!kind) {
        kind = { count: 0, runs: [], more: false };
        kinds.set(fault.right, kind);
      }
      kind.count++;
      const run = kind.runs.at(-1);
      if (run && (fault.row === run[1] || fault.row === run[1] + 1)) run[1] = fault.row;
      else if (kind.runs.length < mostRuns) kind.runs.push([fault.row, fault.row]);
      else kind.more = true;
    },
    tally: () => ({
      told: told.toSorted((a, b) => a.row - b.row),
      rows,
      figures,
      kinds: [...kinds].map(([right, { count, runs, more }]) => ({
        right,
        count,
        rows:
          runs.map(([first, last]) => (first === last ? `${first}` : `${first}–${last}`)).join(', ') +
          (more ? ' and more' : ''),
      })),
    }),
  };
}
