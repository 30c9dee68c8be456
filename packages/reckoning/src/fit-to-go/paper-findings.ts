import type { Bearing, Finding, NotLooked } from '#fit-to-go';
import { mustBeAboard, papersInForce } from '../paper-dues.ts';
import { dayInWords } from '../when-in-words.ts';
import type { Beside } from './beside.ts';
import type { OutingMatter } from './job-remedy.ts';

/**
 * Papers that run out before the outing is over. Registration and insurance stop her: in most places she may not go without.
 * Whether she may here is not known to us, so that is our judgement; others are conditions.
 */
export function paperFindings({ book, time }: OutingMatter): Beside {
  const papers = Object.entries(book.papers).filter(([, { kind }]) => kind !== 'receipt' && kind !== 'manual');
  const cannot = (words: string, because: string): NotLooked => ({ subject: 'papers', words, because });
  const inForce = papersInForce({ papers: Object.fromEntries(papers) });
  return {
    findings: inForce
      .filter(([, { expires }]) => expires !== null)
      .map(([id, paper]): Finding => {
        const out = paper.expires! < time.last;
        const bearing: Bearing = !out ? 'sound' : mustBeAboard(paper) ? 'stops' : 'condition';
        return {
          id: `paper.${id}`,
          subject: 'papers',
          bearing,
          words: paper.title,
          because: [
            {
              words: `It is good until ${dayInWords(paper.expires!)} ${paper.expires!.slice(0, 4)}${out ? ', and the outing is over only later' : ''}.`,
              from: paper.added.slice(0, 10),
            },
            ...(bearing === 'stops'
              ? [
                  {
                    words: 'Whether she may go without it is for the law of the place: we count it against going.',
                    from: null,
                  },
                ]
              : []),
          ],
          remedies: !out
            ? []
            : [
                {
                  words: `${paper.title}: renew it, and put the new one in with its date.`,
                  minutes: null,
                  waits: '',
                  inHand: true,
                  inTime: null,
                  leaves: 'nothing',
                  of: { collection: 'papers', id },
                },
              ],
          cautions: [],
          of: { collection: 'papers', id },
        };
      }),
    notLooked: [
      ...(['registration', 'insurance'] as const).flatMap((kind) =>
        papers.some(([, paper]) => paper.kind === kind) ? [] : [cannot(`her ${kind}`, 'no such paper is in the book')],
      ),
      ...inForce
        .filter(([, paper]) => paper.expires === null && mustBeAboard(paper))
        .map(([, { title }]) => cannot(title, 'its last day is not written down')),
    ],
  };
}
