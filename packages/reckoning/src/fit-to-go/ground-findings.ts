import type { RodeRecord } from '#boat-book';
import type { Bearing, Finding, NotLooked } from '#fit-to-go';
import { groundTold } from '../ground-told.ts';
import { thingInWords } from '../thing-to-get.ts';
import type { Beside } from './beside.ts';
import type { OutingMatter } from './job-remedy.ts';

/**
 * Each rode under the wind of the outing, in the water it was last looked at in. On an outing with nights aboard one that does
 * not hold stops her unless another does; by day, where it is there for when all else fails, it is a condition.
 */
export function groundFindings(matter: OutingMatter): Beside {
  const { book, outing, time } = matter;
  if (time.byRoad) return { findings: [], notLooked: [] };
  const cannot = (words: string, because: string): NotLooked => ({ subject: 'loads', words, because });
  const rodes = Object.entries(book.rodes);
  if (rodes.length === 0)
    return { findings: [], notLooked: [cannot('whether her anchor holds', 'no rode is in the book')] };
  if (time.wind === null)
    return { findings: [], notLooked: [cannot('whether her anchor holds', 'no wind is written down for this outing')] };
  const wind = time.wind;
  const notLooked: NotLooked[] = [];
  const told = rodes.flatMap(([id, rode]) => {
    if (rode.anchorage === null) {
      notLooked.push(cannot(`whether ${rode.name} holds`, 'no depth to lie in was put in for it'));
      return [];
    }
    const telling = groundTold(book, rode, { ...rode.anchorage, wind_kn: wind.kn }, null);
    if (telling.kind === 'cannot') {
      notLooked.push(cannot(`whether ${rode.name} holds`, `${telling.wrong}; ${telling.right}`));
      return [];
    }
    return [{ id, rode, telling }];
  });
  const oneHolds = told.some(({ telling }) => telling.holds);
  return {
    findings: told.map(({ id, rode, telling }): Finding => {
      const bearing: Bearing = telling.holds ? 'sound' : outing.nights > 0 && !oneHolds ? 'stops' : 'condition';
      return {
        id: `rode.${id}`,
        subject: 'loads',
        bearing,
        words: `${rode.name}: ${telling.holds ? `holds with ${telling.out_m} m out` : 'does not hold'} in ${wind.kn} knots`,
        because: [
          { words: telling.verdict, from: null },
          { words: wind.words, from: wind.from },
          { words: lyingInWords(rode), from: null },
          ...telling.against.map((words) => ({ words, from: null })),
          ...(bearing === 'condition' && outing.nights > 0
            ? [{ words: 'Another rode aboard holds.', from: null }]
            : []),
        ],
        remedies: telling.holds
          ? []
          : [
              ...(telling.toGet === null
                ? []
                : [
                    {
                      words: `${rode.name}: get ${small(thingInWords(telling.toGet))}.`,
                      minutes: null,
                      waits: '',
                      inHand: false,
                      inTime: null,
                      leaves: 'nothing' as const,
                      of: { collection: 'rodes', id },
                    },
                  ]),
              {
                words: `${rode.name}: lie in less water, or where less wind comes, and look again under Ground tackle.`,
                minutes: null,
                waits: '',
                inHand: false,
                inTime: null,
                leaves: 'condition' as const,
                of: { collection: 'rodes', id },
              },
            ],
        cautions: telling.holds ? [] : telling.cautions,
        of: { collection: 'rodes', id },
      };
    }),
    notLooked,
  };
}

function lyingInWords({ anchorage }: RodeRecord): string {
  const { depth_m, rise_m, fall_m } = anchorage!;
  return `Reckoned for the water it was last looked at in: ${depth_m} m, rising ${rise_m} m and falling ${fall_m} m. The ground it lies in is not known.`;
}

/** Inside a sentence. */
const small = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);
