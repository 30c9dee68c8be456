import type { Finding, NotLooked } from '#fit-to-go';
import { stayInWords } from '../stay-in-words.ts';
import { staysOfBook } from '../stay-told.ts';
import type { Beside } from './beside.ts';
import type { OutingMatter } from './job-remedy.ts';

/** How her stays were last found: one with something to look at is a condition, one nothing was read of is not looked at. */
export function stayFindings({ book, time }: OutingMatter): Beside {
  if (time.byRoad) return { findings: [], notLooked: [] };
  const findings: Finding[] = [];
  const notLooked: NotLooked[] = [];
  for (const stay of staysOfBook(book)) {
    const { id, record, readings } = stay;
    const last = readings.at(-1);
    if (last === undefined) {
      notLooked.push({ subject: 'loads', words: `how taut ${record.name} is`, because: 'nothing was read of it yet' });
      continue;
    }
    const { now, next } = stayInWords(stay);
    const grave = next.filter(({ gravity }) => gravity === 'worsens');
    findings.push({
      id: `stay.${id}`,
      subject: 'loads',
      bearing: grave.length > 0 ? 'condition' : 'sound',
      words: grave.length > 0 ? `${record.name}: look at it before she sails` : `${record.name}: as it was last read`,
      because: [
        ...grave.map(({ words }) => ({ words, from: last.reading.on })),
        { words: now, from: last.reading.on },
        ...next.flatMap(({ words, gravity }) => (gravity === 'worsens' ? [] : [{ words, from: last.reading.on }])),
      ],
      remedies:
        grave.length === 0
          ? []
          : [
              {
                words: `${record.name}: look at it, set it up and read it again.`,
                minutes: null,
                waits: '',
                inHand: true,
                inTime: null,
                leaves: 'nothing',
                of: { collection: 'stays', id },
              },
            ],
      cautions: grave.length === 0 ? [] : last.cautions,
      of: { collection: 'stays', id },
    });
  }
  return { findings, notLooked };
}
