import { oddsBandInWords, oddsInWords } from '../odds-in-words.ts';
import { listInWords } from '../when-in-words.ts';
import type { Beside } from './beside.ts';
import { jobsOfOuting } from './job-findings.ts';
import type { OutingMatter } from './job-remedy.ts';

/** From this share of the runs on the plan is sound for an outing; under it, it is a condition. Our judgement. */
const enough = 0.9;

/** How likely it is that all jobs that stand before an outing are done when it begins, if the plan is followed. */
export function planFindings({ book, id, outing, knows }: OutingMatter): Beside {
  const none = { findings: [], notLooked: [] };
  const needed = jobsOfOuting(book, id, outing);
  if (needed.length === 0 || knows === null) return none;
  const cannot = (because: string) => ({
    findings: [],
    notLooked: [{ subject: 'plan', words: 'how likely its jobs are done in time', because } as const],
  });
  if (knows.nothing !== null) return cannot(knows.nothing);
  const { odds } = knows;
  if (odds === null) return none;
  const counted = needed.filter(([job]) => odds.jobs[job] !== undefined);
  const chance = odds.outings[id];
  if (chance === undefined || counted.length === 0)
    return cannot('none of them has steps that a plan could take in, or it has begun');
  const titles = (jobs: typeof needed) => listInWords(jobs.map(([, { title }]) => `‘${title}’`));
  const uncounted = needed.filter((each) => !counted.includes(each));
  const sound = chance.share >= enough && uncounted.length === 0;
  const them = counted.length === 1 ? 'its job is' : `its ${counted.length} jobs are all`;
  return {
    findings: [
      {
        id: 'plan.odds',
        subject: 'plan',
        bearing: sound ? 'sound' : 'condition',
        words: `The plan: ${them} done before it in ${oddsInWords(chance)} tries of the weather and the clock`,
        because: [
          { words: `Counting so few tries leaves open ${oddsBandInWords(chance)}.`, from: null },
          ...(uncounted.length === 0
            ? []
            : [{ words: `Not counted, for no plan can take it in: ${titles(uncounted)}.`, from: null }]),
          ...counted.map(([job, { title }]) => ({ words: `${title}: ${odds.jobs[job]!.words}.`, from: null })),
          {
            words: `Under ${100 * enough} of 100 it is a condition: our judgement. How it is worked out stands under Days.`,
            from: null,
          },
        ],
        remedies: [],
        cautions: [],
        of: { collection: 'jobDays', id: '' },
      },
    ],
    notLooked: [],
  };
}
