/**
 * A general constraint solver with proof: MiniZinc with Chuffed inside it, as WebAssembly, in a thread of its own.
 *
 * The `minizinc` package is made for a browser's Worker; under Node its entry looks for a native install. So its
 * worker script is run here as it stands, in a Node thread that looks enough like a browser's: `postMessage`,
 * `addEventListener` and a `require` to read its two files with. No network, nothing to install beyond the package.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Worker } from 'node:worker_threads';

/** What the solver found out about a model with an objective. */
export type SolverAnswer =
  | { readonly kind: 'optimal'; readonly values: Readonly<Record<string, unknown>> }
  | { readonly kind: 'unsatisfiable' }
  | { readonly kind: 'out of time'; readonly values: Readonly<Record<string, unknown>> | null };

export interface SolverOptions {
  /** then the answer is 'out of time'. [ms], > 0 */
  readonly timeLimit_ms: number;
  readonly solver?: 'chuffed' | 'gecode';
}

const find = createRequire(import.meta.url);
const script = find.resolve('minizinc/minizinc-worker.js');
const packageJson = JSON.parse(readFileSync(script.replace(/dist[\\/][^\\/]*$/, 'package.json'), 'utf8')) as {
  version: string;
};

/** Name and version of the solver, for stored answers. */
export const solverName = `Chuffed in the minizinc package ${packageJson.version}`;

/**
 * The browser's Worker, as far as the script uses it. The compiled module is handed in, so threads share it. Each
 * message tells the thread's own processor time where the system says it (Linux), so that it can be timed fairly.
 */
const threadAsBrowserWorker = `
const { parentPort, workerData } = require('node:worker_threads');
const { readFileSync, readlinkSync } = require('node:fs');
let self = null;
try {
  self = '/proc/' + readlinkSync('/proc/thread-self');
} catch {}
const spent_ms = () =>
  self === null ? performance.now() : Number(readFileSync(self + '/schedstat', 'utf8').split(' ')[0]) / 1e6;
const instantiate = WebAssembly.instantiate;
WebAssembly.instantiate = async (_bytes, imports) =>
  ({ module: workerData.module, instance: await instantiate(workerData.module, imports) });
Object.assign(globalThis, {
  require,
  __filename: workerData.script,
  __dirname: require('node:path').dirname(workerData.script),
  self: globalThis,
  postMessage: (message) => parentPort.postMessage({ ...message, spent_ms: spent_ms(), thread: self }),
  addEventListener: (kind, listen) => kind === 'message' && parentPort.on('message', (data) => listen({ data })),
});
const text = readFileSync(workerData.script, 'utf8');
require('node:vm').runInThisContext(text, { filename: workerData.script });
`;

let compiled: Promise<WebAssembly.Module> | null = null;

/** What the script posts, as far as it is read. */
export interface Posted {
  readonly type: string;
  /** processor time of the solver's thread so far; time since it began where the system does not tell. [ms] */
  readonly spent_ms: number;
  /** where the system tells of the thread; null where it does not */
  readonly thread: string | null;
  readonly status?: string;
  readonly output?: { readonly json?: Record<string, unknown> };
  readonly statistics?: Readonly<Record<string, unknown>>;
  readonly what?: string;
  readonly message?: string;
  readonly code?: number;
}

/**
 * Solves one MiniZinc model with `solve minimize` or `solve maximize`.
 *
 * @param model  MiniZinc text
 * @returns      the best values of its variables and whether they are proved best
 * @throws Error where the solver refuses the model or stops without an answer
 */
export async function solveModel(model: string, options: SolverOptions): Promise<SolverAnswer> {
  const thread = await solverThread();
  try {
    return await answerFrom(thread, model, options);
  } finally {
    await thread.terminate();
  }
}

/** A thread with the solver in it, not yet ready: it posts 'ready', then is asked by `askSolver`. End it after use. */
export async function solverThread(): Promise<Worker> {
  compiled ??= WebAssembly.compile(readFileSync(find.resolve('minizinc/minizinc.wasm')));
  const module = await compiled;
  const thread = new Worker(threadAsBrowserWorker, { eval: true, workerData: { script, module } });
  thread.postMessage({
    wasmURL: find.resolve('minizinc/minizinc.wasm'),
    dataURL: find.resolve('minizinc/minizinc.data'),
  });
  return thread;
}

/** Asks a ready thread for the best values of a model; it posts what it finds as it goes, and at last 'exit'. */
export function askSolver(thread: Worker, model: string, flags: readonly string[]): void {
  const args = ['-i', '--output-mode', 'json', ...flags, 'model.mzn'];
  thread.postMessage({ jsonStream: true, files: { 'model.mzn': model }, args });
}

function answerFrom(thread: Worker, model: string, { timeLimit_ms, solver = 'chuffed' }: SolverOptions) {
  return new Promise<SolverAnswer>((resolve, reject) => {
    let values: Record<string, unknown> | null = null;
    let status = '';
    let asked = false;
    const refused: string[] = [];
    const timer = setTimeout(() => resolve({ kind: 'out of time', values }), timeLimit_ms);
    const end = (finish: () => void) => {
      clearTimeout(timer);
      finish();
    };
    thread.on('error', (error) => end(() => reject(error)));
    thread.on('message', (posted: Posted) => {
      if (posted.type === 'ready' && !asked) {
        asked = true;
        askSolver(thread, model, ['--solver', solver]);
      } else if (posted.type === 'solution') values = posted.output?.json ?? null;
      else if (posted.type === 'status') status = posted.status ?? '';
      else if (posted.type === 'error') refused.push(`${posted.what}: ${posted.message}`);
      else if (posted.type === 'exit') {
        const best = values;
        if (status === 'OPTIMAL_SOLUTION' && best !== null) end(() => resolve({ kind: 'optimal', values: best }));
        else if (status === 'UNSATISFIABLE') end(() => resolve({ kind: 'unsatisfiable' }));
        else
          end(() =>
            reject(new Error(`the solver ended with code ${posted.code}, status '${status}': ${refused.join('; ')}`)),
          );
      }
    });
  });
}
