/**
 * The general solver's answers to one model as it finds them, each with the processor time at which it came, so that
 * one run tells how good it is after any number of seconds.
 */
import { existsSync, readFileSync } from 'node:fs';
import { askSolver, type Posted, solverThread } from '../checks/workplan/general-solver.ts';

export interface ImprovingAnswer {
  /** processor time of solving, compiling left aside. [s] */
  readonly at_s: number;
  readonly values: Readonly<Record<string, unknown>>;
}

export interface SolverRun {
  /** 'not stated': it was still compiling at the end of its time for that, or ran out of memory */
  readonly kind: 'proved' | 'unsatisfiable' | 'out of time' | 'not stated';
  readonly because: string | null;
  /** from text to solver's own form. [s] of processor time */
  readonly compile_s: number;
  /** [s] of processor time */
  readonly solve_s: number;
  readonly answers: readonly ImprovingAnswer[];
}

export interface SolverRunOptions {
  readonly solve_s: number;
  readonly compileAtMost_s: number;
  readonly memoryAtMost_MB: number;
  readonly freeSearch: boolean;
}

/** How long a time on the clock may be, for one second of processor time, before a run is given up. */
const assumedCrowding = 12;

/**
 * Runs Chuffed on a model until it has proved its answer or its time is out.
 *
 * @param model  MiniZinc text with an objective
 * @throws Error where the solver refuses the model
 */
export async function improvingAnswers(model: string, options: SolverRunOptions): Promise<SolverRun> {
  const thread = await solverThread();
  const began = performance.now();
  let place: string | null = null;
  const answers: ImprovingAnswer[] = [];
  let asked_ms = 0;
  let compiled_ms: number | null = null;
  let watch: NodeJS.Timeout | undefined;
  try {
    return await new Promise<SolverRun>((resolve, reject) => {
      const refused: string[] = [];
      let status = '';
      const end = (kind: SolverRun['kind'], spent_ms: number, because: string | null = null) =>
        resolve({
          kind,
          because,
          compile_s: ((compiled_ms ?? spent_ms) - asked_ms) / 1000,
          solve_s: compiled_ms === null ? 0 : (spent_ms - compiled_ms) / 1000,
          answers,
        });
      watch = setInterval(() => {
        const clock_s = (performance.now() - began) / 1000;
        const spent_ms = place === null ? 1000 * clock_s : scheduled_ms(place);
        const { compileAtMost_s, solve_s, memoryAtMost_MB } = options;
        if (process.memoryUsage().rss / 2 ** 20 > memoryAtMost_MB)
          end(compiled_ms === null ? 'not stated' : 'out of time', spent_ms, `over ${memoryAtMost_MB} MB`);
        else if (compiled_ms === null && spent_ms - asked_ms > 1000 * compileAtMost_s)
          end('not stated', spent_ms, `not compiled in ${compileAtMost_s} s`);
        else if (compiled_ms !== null && spent_ms - compiled_ms > 1000 * solve_s) end('out of time', spent_ms);
        else if (clock_s > assumedCrowding * (compileAtMost_s + solve_s)) end('out of time', spent_ms, 'by the clock');
      }, 50);
      thread.on('error', (error) =>
        /memory|abort|unreachable/i.test(error.message)
          ? end(compiled_ms === null ? 'not stated' : 'out of time', asked_ms, error.message)
          : reject(error),
      );
      thread.on('message', (posted: Posted) => {
        const { type, spent_ms } = posted;
        if (type === 'ready') {
          asked_ms = spent_ms;
          place = posted.thread;
          askSolver(thread, model, ['-s', '--solver', 'chuffed', ...(options.freeSearch ? ['-f'] : [])]);
        } else if (type === 'statistics' && compiled_ms === null && posted.statistics?.flatTime !== undefined)
          compiled_ms = spent_ms;
        else if (type === 'solution' && posted.output?.json)
          answers.push({ at_s: (spent_ms - (compiled_ms ?? asked_ms)) / 1000, values: posted.output.json });
        else if (type === 'status') status = posted.status ?? '';
        else if (type === 'error') refused.push(`${posted.what}: ${posted.message}`);
        else if (type === 'exit') {
          if (status === 'OPTIMAL_SOLUTION') end('proved', spent_ms);
          else if (status === 'UNSATISFIABLE') end('unsatisfiable', spent_ms);
          else if (refused.some((line) => /memory/i.test(line))) end('not stated', spent_ms, refused.join('; '));
          else reject(new Error(`the solver ended with code ${posted.code}, '${status}': ${refused.join('; ')}`));
        }
      });
    });
  } finally {
    clearInterval(watch);
    await thread.terminate();
  }
}

/** The answer at hand after so many seconds of solving; null where there was none yet. */
export function answerAfter(run: SolverRun, seconds: number): ImprovingAnswer | null {
  return run.answers.filter(({ at_s }) => at_s <= seconds).at(-1) ?? null;
}

/** Processor time of this thread so far; the clock where the system does not tell. [ms] */
export function spentByThread_ms(): number {
  return existsSync('/proc/thread-self') ? scheduled_ms('/proc/thread-self') : performance.now();
}

const scheduled_ms = (place: string): number => Number(readFileSync(`${place}/schedstat`, 'utf8').split(' ')[0]) / 1e6;
