/** Every trailer of the book looked at, for what rests on it: whether she is fit to go. */
import type { Book, Id } from '#boat-book';
import type { TrailerFinding, TrailerSubject } from './trailer-finding.ts';
import { trailerTold } from './trailer-told.ts';
import { bandSaid, kgSaid } from './trailer-words.ts';

export interface TrailerLooked {
  readonly id: Id;
  readonly name: string;
  /** the gravest first */
  readonly findings: readonly TrailerFinding[];
  /** what was looked at and has nothing against it: a whole sentence with its numbers, and the day they are from */
  readonly sound: readonly { readonly subject: TrailerSubject; readonly words: string; readonly from: string | null }[];
  readonly cautions: readonly string[];
}

/** @param today YYYY-MM-DD, for the age of the tyres */
export function trailersLooked(book: Book, today: string): TrailerLooked[] {
  return Object.entries(book.trailers).map(([id, record]) => {
    const told = trailerTold(book, id, record, today);
    const { findings, load } = told;
    const found = (subject: TrailerSubject) =>
      findings.some((each) => each.subject === subject && (subject === 'tyres' || each.gravity !== 'unknown'));
    const gross = record.gross_kg;
    return {
      id,
      name: record.name,
      findings,
      sound: [
        ...(found('ball load') || told.ballLimit_kg === null
          ? []
          : [
              {
                subject: 'ball load' as const,
                words: told.ball,
                from: load.weighed?.weighing.at.slice(0, 10) ?? record.limitsRead,
              },
            ]),
        ...(gross === null || found('masses')
          ? []
          : [
              {
                subject: 'masses' as const,
                words: `Trailer and load weigh ${bandSaid(load.laden_kg)}; the plate allows ${kgSaid(gross)}.`,
                from: record.limitsRead,
              },
            ]),
        ...(record.tyres === null || found('tyres')
          ? []
          : [{ subject: 'tyres' as const, words: told.tyres.join(' '), from: record.tyres.readOn }]),
        ...told.lashings
          .filter(({ verdict }) => verdict === 'held')
          .map(({ words }) => ({ subject: 'lashings' as const, words, from: null })),
        ...(record.boardRests === true
          ? [{ subject: 'board' as const, words: 'The board rests on the trailer on the road.', from: null }]
          : []),
      ],
      cautions: told.cautions,
    };
  });
}
