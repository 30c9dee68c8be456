/**
 * Reader of the plain case: one project of the single-mode `.sm` form of PSPLIB, as a plan problem.
 *
 * Source of the form: R. Kolisch, A. Sprecher, "PSPLIB - a project scheduling problem library", European Journal of
 * Operational Research 96 (1996/97), 205-216. One period becomes one minute, a renewable resource a tool, the whole
 * project one job that may not be left out.
 */
import type { PlanHour, Problem, ProblemStep } from './problem.ts';

const calmHour: PlanHour = {
  rain: false,
  wind_kn: 0,
  air_C: 15,
  surface_C: null,
  humidity_pct: 50,
  basis: 'typed',
  sheltered: true,
};

/**
 * The problem that one `.sm` text states, and its critical path.
 *
 * The two dummy activities are left out; the others keep their numbers as ids (`a2`, `a3` …).
 *
 * @param text          the whole file
 * @returns             `problem`, and `criticalPath`, the longest chain of durations. [periods = minutes]
 * @throws RangeError   where the text is not of this form; the message says what and on which line
 */
export function readPsplib(text: string): { problem: Problem; criticalPath: number } {
  const lines = text.split(/\r?\n/);
  const activityCount = headFigure(
    lines,
    /^jobs \(incl\. supersource\/sink \):\s*(\d+)/,
    'jobs (incl. supersource/sink )',
  );
  if (activityCount < 3) throw new RangeError(`the count of jobs must be at least 3, got ${activityCount}`);

  const successors = rowsAfter(lines, 'PRECEDENCE RELATIONS:', 1, activityCount).map(({ numbers, line }) => {
    const [, modes, count, ...after] = numbers;
    if (modes !== 1) throw new RangeError(`line ${line}: one mode is expected, got ${modes}`);
    if (after.length !== count)
      throw new RangeError(`line ${line}: ${count} successors are announced, ${after.length} given`);
    for (const successor of after)
      if (successor < 1 || successor > activityCount)
        throw new RangeError(`line ${line}: successor ${successor} is not from 1 to ${activityCount}`);
    return after;
  });
  const requests = rowsAfter(lines, 'REQUESTS/DURATIONS:', 2, activityCount).map(({ numbers, line }) => {
    const [, , duration, ...uses] = numbers;
    if (duration === undefined || uses.length === 0)
      throw new RangeError(`line ${line}: a duration and uses are expected`);
    return { duration, uses };
  });
  const capacities = rowsAfter(lines, 'RESOURCEAVAILABILITIES:', 1, 1)[0]!.numbers;

  const total = requests.reduce((sum, { duration }) => sum + duration, 0);
  const horizon = Math.max(60, Math.ceil(total / 60) * 60);
  const id = (activity: number) => `a${activity}`;
  const steps: ProblemStep[] = [];
  for (let activity = 2; activity < activityCount; activity++) {
    const { duration, uses } = requests[activity - 1]!;
    if (uses.length !== capacities.length)
      throw new RangeError(`activity ${activity} uses ${uses.length} resources, there are ${capacities.length}`);
    steps.push({
      id: id(activity),
      job: 'project',
      title: `activity ${activity}`,
      minutes: duration,
      hands: 0,
      keeper: false,
      notAlone: false,
      zone: null,
      needs: {},
      features: [],
      tools: uses.flatMap((count, index) => (count > 0 ? [{ tool: `r${index + 1}`, count }] : [])),
      setUps: [],
      stores: [],
      dusty: false,
      wet: false,
      mix: null,
      waits: [],
      held: null,
      progress: { kind: 'open' },
    });
  }
  const problem: Problem = {
    format: 1,
    startsAt: '2000-01-01T00:00:00Z',
    timeZone: 'UTC',
    horizon,
    now: 0,
    days: [
      {
        id: 'day',
        label: 'the whole time',
        from: 0,
        to: horizon,
        setOut_min: 0,
        clearUp_min: 0,
        breaks: [],
        features: [],
        endsIn: [],
      },
    ],
    hands: [{ id: 'keeper', name: 'keeper', present: [{ from: 0, to: horizon }] }],
    tools: capacities.map((count, index) => ({
      id: `r${index + 1}`,
      name: `resource ${index + 1}`,
      capacity: [{ from: 0, to: horizon, count }],
    })),
    zones: [],
    aspects: [],
    mixes: [],
    stores: [],
    hours: Array.from({ length: horizon / 60 }, () => calmHour),
    daylight: [],
    jobs: [{ id: 'project', title: 'project', weight: 1, deadline: null, optional: false }],
    steps,
    precedence: successors.flatMap((after, index) =>
      after
        .filter((successor) => index > 0 && successor < activityCount)
        .map((successor) => ({
          before: id(index + 1),
          wait: null,
          after: id(successor),
          least_min: 0,
          greatest_min: null,
          past: { kind: 'forbidden' } as const,
        })),
    ),
    previous: [],
  };
  return {
    problem,
    criticalPath: longestChain(
      successors,
      requests.map(({ duration }) => duration),
    ),
  };
}

function headFigure(lines: readonly string[], form: RegExp, name: string): number {
  for (const line of lines) {
    const found = form.exec(line.trim());
    if (found) return Number(found[1]);
  }
  throw new RangeError(`no line "${name}: count" in the text`);
}

/** The rows of whole numbers some lines after a section's name. */
function rowsAfter(lines: readonly string[], section: string, headings: number, count: number) {
  const at = lines.findIndex((line) => line.trim() === section);
  if (at < 0) throw new RangeError(`no section "${section}" in the text`);
  return Array.from({ length: count }, (_, index) => {
    const line = at + 1 + headings + index;
    const words = (lines[line] ?? '').trim().split(/\s+/);
    if (!words.every((word) => /^\d+$/.test(word)))
      throw new RangeError(`line ${line + 1}: whole numbers are expected in section "${section}"`);
    return { numbers: words.map(Number), line: line + 1 };
  });
}

function longestChain(successors: readonly (readonly number[])[], durations: readonly number[]): number {
  const finish = new Array<number>(durations.length).fill(-1);
  const open = new Set<number>();
  const chainFrom = (index: number): number => {
    if (finish[index]! >= 0) return finish[index]!;
    if (open.has(index)) throw new RangeError(`activity ${index + 1} waits for itself`);
    open.add(index);
    let longest = 0;
    for (const successor of successors[index]!) longest = Math.max(longest, chainFrom(successor - 1));
    open.delete(index);
    finish[index] = durations[index]! + longest;
    return finish[index]!;
  };
  return chainFrom(0);
}
