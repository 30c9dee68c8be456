/**
 * `npx tsx scripts/learn-talk-weights.ts`: what the judge of a page is worth on a hand it did not learn from, each hand left
 * out in turn; with `--write`, the weights from all of them. With `--hands NAME[,NAME]` only those are left out.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { boat } from '../packages/jobs/corpus/boat.ts';
import { examplesOf } from '../packages/jobs/corpus/examples-of.ts';
import { hands } from '../packages/jobs/corpus/hands.ts';
import { type Example, learn, weightLines } from '../packages/jobs/corpus/learn.ts';
import { scorePages } from '../packages/jobs/corpus/score.ts';
import { readWalkRound } from '../packages/jobs/src/read-walk-round.ts';

/** How much one example weighs against the smallness of the weights. */
const trust = { job: 0.1, rig: 0.3 };

const { values } = parseArgs({ options: { write: { type: 'boolean' }, hands: { type: 'string' } } });
const examples = Object.entries(hands).map(([hand, pages]) => ({ hand, ...examplesOf(pages) }));
const learned = (without: string | null) => {
  const some = (kind: 'job' | 'rig'): Example[] =>
    examples.flatMap((each) => (each.hand === without ? [] : each[kind]));
  return { job: learn(some('job'), trust.job), rig: learn(some('rig'), trust.rig) };
};

if (values.write) {
  const { job, rig } = learned(null);
  const text = (name: string, lines: string) => `export const ${name} =\n  ${JSON.stringify(lines)};\n`;
  writeFileSync(
    new URL('../packages/jobs/src/judged/weights.ts', import.meta.url),
    `// written by scripts/learn-talk-weights.ts: a feature, a tab, its weight in hundredths\n${text('jobWeights', weightLines(job))}${text('rigWeights', weightLines(rig))}`,
  );
}

console.log('| hand left out | pages | jobs found | jury rigs found | all found | false, of what was proposed |');
console.log('| --- | ---: | ---: | ---: | ---: | ---: |');
for (const [hand, pages] of Object.entries(hands)) {
  if (values.hands !== undefined && !values.hands.split(',').includes(hand)) continue;
  const judges = learned(hand);
  const { work, falseWork, proposedWork } = scorePages(pages, (page) => readWalkRound(page, boat, judges));
  const rigs = pages.flatMap(({ marks }) => marks.filter(({ kind }) => kind === 'jury rig')).length;
  const rigsMissed = work.wrong.filter((each) => each.includes(': jury rig ')).length;
  const jobs = work.of - rigs;
  console.log(
    `| ${hand} | ${pages.length} | ${work.right - (rigs - rigsMissed)} of ${jobs} | ${rigs - rigsMissed} of ${rigs} | ${work.right} of ${work.of} | ${falseWork.length} of ${proposedWork} |`,
  );
}
