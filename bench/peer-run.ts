/**
 * One run of ours or of the general solver on one problem, in a process of its own so that it can be timed and ended
 * by itself: reads what to run as JSON from its first argument, prints what came of it as JSON.
 */
import { readFileSync } from 'node:fs';
import { type Problem, readPsplib, startSearch, violations, type Worth, worthOf } from '#workplan';
import { answerAfter, improvingAnswers, spentByThread_ms } from './improving-answers.ts';
import { keeperModel } from './keeper-model.ts';
import { keeperProblem, keeperSizes } from './keeper-problems.ts';
import type { PeerResult, PeerTask } from './peer-task.ts';
import { plainModel, searchHints } from './plain-model.ts';

/** Long enough for the largest of these problems; what takes longer is told as not stated. */
const compileAtMost_s = 120;
const memoryAtMost_MB = 6000;

const task = JSON.parse(process.argv[2] ?? 'null') as PeerTask | null;
if (task) process.stdout.write(JSON.stringify(await run(task)));

async function run(asked: PeerTask): Promise<PeerResult> {
  const problem =
    asked.kind === 'plain'
      ? readPsplib(readFileSync(asked.file, 'utf8')).problem
      : keeperProblem(keeperSizes[asked.size]!, asked.seed);
  return asked.who === 'ours' ? ours(problem, asked) : solver(problem, asked);
}

function ours(problem: Problem, asked: PeerTask): PeerResult {
  const { seconds, notedAt_s } = asked;
  const began_ms = spentByThread_ms();
  const search = startSearch(problem, { seed: 1 });
  const noted: (Worth | null)[] = [];
  let worth: Worth | null = null;
  let finished = false;
  let tries = 1;
  for (;;) {
    const spent_s = (spentByThread_ms() - began_ms) / 1000;
    // what was at hand before this moment counts; a slice that runs past it does not
    while (noted.length < notedAt_s.length && (finished || spent_s >= notedAt_s[noted.length]!)) noted.push(worth);
    if (finished || spent_s >= seconds) break;
    ({ worth, finished } = search.advance(tries));
    // slices of about 10 ms
    const slice_s = (spentByThread_ms() - began_ms) / 1000 - spent_s;
    tries = slice_s < 0.005 ? 2 * tries : slice_s > 0.02 ? Math.ceil(tries / 2) : tries;
  }
  const search_s = (spentByThread_ms() - began_ms) / 1000;
  const { plan, verdict } = search.outcome();
  return {
    noted,
    proved: verdict.kind === 'proved best' && (asked.kind === 'keeper' || verdict.finishToo),
    compile_s: 0,
    search_s,
    memory_MB: process.resourceUsage().maxRSS / 1024,
    violations: violations(plan, problem).length,
    because: null,
  };
}

async function solver(problem: Problem, asked: PeerTask): Promise<PeerResult> {
  const hint = asked.kind === 'plain' ? searchHints[asked.hint]! : null;
  const keeper = asked.kind === 'keeper' ? keeperModel(problem, 'jobs by weight, then soonest start') : null;
  const found = await improvingAnswers(hint ? plainModel(problem, hint) : keeper!.text, {
    solve_s: asked.seconds,
    compileAtMost_s,
    memoryAtMost_MB,
    freeSearch: hint?.freeSearch ?? true,
  });
  let broken = 0;
  const noted = asked.notedAt_s.map((at_s) => {
    const answer = answerAfter(found, at_s);
    if (answer === null) return null;
    if (!keeper) return { missed: 0, weight: 1, setUp_min: 0, lastFinish: Number(answer.values.finish) };
    const plan = keeper.planFrom(answer.values);
    broken += violations(plan, problem).length;
    return worthOf(plan, problem);
  });
  return {
    noted,
    proved: found.kind === 'proved',
    compile_s: found.compile_s,
    search_s: found.solve_s,
    memory_MB: process.resourceUsage().maxRSS / 1024,
    violations: broken,
    because: found.kind === 'not stated' || found.because !== null ? (found.because ?? found.kind) : null,
  };
}
