import type { Bearing, Finding } from '#fit-to-go';
import { pullsTold } from '../hoist-pulls.ts';
import { hoistTold } from '../hoist-told.ts';
import type { OutingMatter } from './job-remedy.ts';

/** The board’s hoist, afloat: a line that bears too little stops her; more than a hand gives, or turning harder, is a condition. */
export function hoistFindings({ book, time }: OutingMatter): readonly Finding[] {
  if (time.byRoad) return [];
  return Object.entries(book.boardHoists).map(([id, record]): Finding => {
    const told = hoistTold(record, 'sea');
    const pulls = pullsTold(book, id, time.zone);
    const seen = pulls.pulls.at(-1)?.day ?? null;
    const short = told.kind === 'told' ? told.short : [];
    const weak = told.kind === 'cannot' || short.includes('wire') || short.includes('cord');
    const bearing: Bearing = weak ? 'stops' : short.length > 0 || pulls.stiffer ? 'condition' : 'sound';
    return {
      id: `hoist.${id}`,
      subject: 'loads',
      bearing,
      words: `${record.name}: ${weak ? 'it cannot be hoisted safely' : bearing === 'sound' ? 'it can be hoisted' : short.length > 0 ? 'more than a hand gives' : 'it turns harder than it did'}`,
      because: [
        // what turned it is told first
        ...(pulls.stiffer && !weak ? pulls.lines.map((words) => ({ words, from: seen })) : []),
        { words: told.kind === 'told' ? told.verdict : `${told.wrong} ${told.right}`, from: null },
        ...(told.kind === 'told'
          ? told.figures.flatMap(({ label, wrong }) =>
              wrong === null ? [] : [{ words: `${label}: ${wrong}.`, from: null }],
            )
          : []),
        ...(pulls.stiffer && !weak ? [] : pulls.lines.map((words) => ({ words, from: seen }))),
      ],
      remedies:
        bearing === 'sound'
          ? []
          : [
              {
                words: `${record.name}: see under Board hoist what would do, and change it.`,
                minutes: null,
                waits: '',
                inHand: true,
                inTime: null,
                leaves: 'nothing',
                of: { collection: 'boardHoists', id },
              },
            ],
      cautions: bearing === 'sound' ? [] : told.cautions,
      of: { collection: 'boardHoists', id },
    };
  });
}
