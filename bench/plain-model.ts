/** The plain case as MiniZinc text: one cumulative for each resource, precedences, the finish to be made least. */
import type { Problem } from '#workplan';

/** How the general solver is told to search. */
export interface SearchHint {
  readonly name: string;
  /** the annotation of `solve`; empty for none */
  readonly annotation: string;
  readonly freeSearch: boolean;
  /** annotation of each cumulative; empty for none */
  readonly filtering: string;
}

const bySmallest = ':: int_search(start, smallest, indomain_min, complete)';
const energetic = ':: tt_filt(true) :: ttef_check(true) :: ttef_filt(true)';

/** What was tried before one was settled on; `bestHint` says which. */
export const searchHints: readonly SearchHint[] = [
  { name: 'smallest start, free', annotation: bySmallest, freeSearch: true, filtering: '' },
  { name: 'smallest start', annotation: bySmallest, freeSearch: false, filtering: '' },
  {
    name: 'smallest start, Luby restarts, free',
    annotation: `${bySmallest} :: restart_luby(250)`,
    freeSearch: true,
    filtering: '',
  },
  {
    name: 'dom/wdeg, free',
    annotation: ':: int_search(start, dom_w_deg, indomain_min, complete)',
    freeSearch: true,
    filtering: '',
  },
  {
    name: 'in order, free',
    annotation: ':: int_search(start, input_order, indomain_min, complete)',
    freeSearch: true,
    filtering: '',
  },
  { name: 'none, free', annotation: '', freeSearch: true, filtering: '' },
  { name: 'smallest start, energetic filtering, free', annotation: bySmallest, freeSearch: true, filtering: energetic },
];

/**
 * @param problem  as `readPsplib` gives it
 * @returns        a model whose objective `finish` is the makespan, with starts in `start`
 */
export function plainModel({ steps, tools, precedence, horizon }: Problem, hint: SearchHint): string {
  const place = new Map(steps.map(({ id }, index) => [id, index + 1]));
  const lines = [
    'include "cumulative.mzn";',
    ...(hint.filtering === '' ? [] : ['include "chuffed.mzn";']),
    `array[1..${steps.length}] of var 0..${horizon}: start;`,
    `var 0..${horizon}: finish;`,
    ...steps.map(({ minutes }, index) => `constraint start[${index + 1}] + ${minutes} <= finish;`),
    ...precedence.map(({ before, after }) => {
      const first = place.get(before)!;
      return `constraint start[${first}] + ${steps[first - 1]!.minutes} <= start[${place.get(after)!}];`;
    }),
  ];
  for (const { id, capacity } of tools) {
    const users = steps.flatMap((step) => {
      const count = step.tools.find(({ tool }) => tool === id)?.count ?? 0;
      return count > 0 && step.minutes > 0 ? [{ at: place.get(step.id)!, minutes: step.minutes, count }] : [];
    });
    if (users.length === 0) continue;
    const starts = users.map(({ at }) => `start[${at}]`);
    const [minutes, counts] = [users.map((user) => user.minutes), users.map(({ count }) => count)];
    lines.push(
      `constraint cumulative([${starts}], [${minutes}], [${counts}], ${capacity[0]!.count}) ${hint.filtering};`,
    );
  }
  return [...lines, `solve ${hint.annotation} minimize finish;`, ''].join('\n');
}
