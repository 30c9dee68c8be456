/** The load against plates, papers and advice, in sentences. */
import type { TrailerRecord } from '#boat-book';
import { advised_pct, ballLimit, type LimitFinding, least_pct, limitsLooked, type PaperLimits } from '#trailer';
import { listInWords } from '../when-in-words.ts';
import type { BallLoad } from './ball-load.ts';
import type { TrailerMending } from './mendings.ts';
import { ballLimitSaid, paperLimits } from './paper-limits.ts';
import type { TrailerFinding } from './trailer-finding.ts';
import { bandSaid, kgFigure, kgSaid, pctSaid } from './trailer-words.ts';

/** Every limit passed or left unentered. */
export function limitFindings(
  record: TrailerRecord,
  load: BallLoad,
  mendings: readonly TrailerMending[],
): TrailerFinding[] {
  const limits = paperLimits(record);
  const { findings, missing } = limitsLooked(
    { laden_kg: load.laden_kg.likely, ball_kg: load.ball_kg, axle_kg: load.axle_kg },
    limits,
    record.advice,
  );
  const weighedOn = load.weighed?.weighing.at.slice(0, 10) ?? null;
  const said = findings.map((finding): TrailerFinding => {
    const ofBall = finding.kind.startsWith('ball');
    return {
      id: finding.kind.replaceAll(' ', '-'),
      subject: ofBall ? 'ball load' : finding.kind.startsWith('tyres') ? 'tyres' : 'masses',
      gravity: gravityOf(finding),
      ...wordsOf(finding, record, load),
      because: ofBall ? ballBecause(record, load) : massesBecause(load),
      from: ofBall ? (weighedOn ?? record.limitsRead) : record.limitsRead,
      ...(ofBall && finding.kind !== 'ball may be over its limit' ? mended(mendings) : mendOf(finding)),
    };
  });
  return [...said, ...grossMayBeOver(record, load), ...notEntered(record, missing)];
}

function gravityOf({ kind, weight }: LimitFinding): TrailerFinding['gravity'] {
  if (kind === 'ball load under nothing' || kind === 'ball load too small' || kind === 'tyres over their limit')
    return 'danger';
  return weight === 'past' ? 'unlawful' : 'worsens';
}

/** How it can be mended by moving something, in the words of the sentence and as a job. */
function mended(mendings: readonly TrailerMending[]): Pick<TrailerFinding, 'right' | 'mend'> {
  const [first, second] = mendings.filter(({ enough }) => enough);
  const nearest = first ?? mendings[0];
  if (!nearest)
    return { right: 'Nothing in the book is marked as movable: say of each thing how far it can go.', mend: null };
  return {
    right: first
      ? `${first.words}${second ? ` Or: ${second.words.charAt(0).toLowerCase()}${second.words.slice(1)}` : ''}`
      : `Nothing alone is enough. ${nearest.words}`,
    mend: nearest.mend,
  };
}

const mendOf = (finding: LimitFinding): { readonly mend: TrailerFinding['mend'] } => ({
  mend:
    finding.kind === 'ball may be over its limit'
      ? {
          kind: 'steps',
          title: 'Weigh the ball load',
          steps: [
            {
              title: 'Coupling on a beam over a block and a bathroom scale, trailer level, laden as for the road',
              minutes: { low: 15, likely: 25, high: 45 },
              cautions: ['Wheels chocked. Feet from under the coupling; a beam can kick out sideways.'],
            },
          ],
        }
      : null,
});

function wordsOf(
  { kind, is, limit }: LimitFinding,
  record: TrailerRecord,
  load: BallLoad,
): Pick<TrailerFinding, 'wrong' | 'right'> {
  const ball = bandSaid(load.ball_kg);
  const { low, high, title } = advised_pct[record.advice];
  const advice = `${low} to ${high} % is usually advised in ${title === 'United States' ? 'the United States' : title}`;
  const takeOff = 'Leave something at home, or have the limit looked at by whoever set it.';
  switch (kind) {
    case 'ball over its limit':
      return { wrong: `The ball carries ${ball}: more than ${ballLimitSaid(record)}.`, right: null };
    case 'ball may be over its limit':
      return {
        wrong: `The ball carries ${ball}: it may be more than ${ballLimitSaid(record)}.`,
        right: 'Weigh it with a bathroom scale: that narrows it at once.',
      };
    case 'ball load under nothing':
      return {
        wrong: `The trailer lifts the ball with ${kgSaid(-load.ball_kg.likely)}: she would tip and wag.`,
        right: null,
      };
    case 'ball load too small':
      return {
        wrong: `The ball carries ${ball}, ${pctSaid(is)} of all: under ${least_pct} % a trailer wags and can take the car with it.`,
        right: null,
      };
    case 'ball load below what is advised':
      return { wrong: `The ball carries ${ball}, ${pctSaid(is)} of all: ${advice}.`, right: null };
    case 'ball load above what is advised':
      return { wrong: `The ball carries ${ball}, ${pctSaid(is)} of all: ${advice}.`, right: null };
    case 'gross over its limit':
      return { wrong: `Trailer and load weigh ${kgSaid(is)}: the plate allows ${kgSaid(limit)}.`, right: takeOff };
    case 'axle over its limit':
      return { wrong: `${kgSaid(is)} on the axle: its plate allows ${kgSaid(limit)}.`, right: takeOff };
    case 'tyres over their limit':
      return {
        wrong: `${kgSaid(is)} on the tyres: by their index they carry ${kgSaid(limit)} together.`,
        right: 'Tyres of a higher load index, as far as wheel and axle allow, or less on the trailer.',
      };
    case 'train over its limit':
      return {
        wrong: `Car and trailer weigh ${kgSaid(is)} together: the papers allow ${kgSaid(limit)}.`,
        right: takeOff,
      };
    case 'heavy for the car':
      return {
        wrong: `The trailer weighs ${pctSaid(is)} of the car’s kerb mass: at most ${limit} % is usually advised.`,
        right: 'Slower, and by a driver who knows her; or a heavier car.',
      };
    case 'too heavy without brakes':
      return {
        wrong: `${kgSaid(is)} without brakes: in Europe at most ${kgSaid(limit)}.`,
        right: 'A trailer with brakes.',
      };
    case 'too heavy for the car without brakes':
      return {
        wrong: `${kgSaid(is)} without brakes: in Britain at most half the car’s kerb mass, ${kgSaid(limit)}.`,
        right: 'A trailer with brakes, or a heavier car.',
      };
  }
}

function ballBecause({ ballAhead_m }: TrailerRecord, { balance, weighed, ball_kg }: BallLoad): string[] {
  return [
    `By the table ${bandSaid(balance.ball_kg)}: moments about the axle, ${ballAhead_m} m from the ball.`,
    ...(weighed
      ? [
          `By the scale ${kgFigure(weighed.ball_kg)} ± ${kgFigure(weighed.give_kg)} kg; with what was changed since, ${bandSaid(ball_kg)}.`,
        ]
      : ['The ball was never weighed.']),
  ];
}

const massesBecause = ({ laden_kg, axle_kg, ball_kg }: BallLoad): string[] => [
  `All together ${bandSaid(laden_kg)}, by the table.`,
  `Of that ${kgSaid(ball_kg.likely)} press on the ball and ${kgSaid(axle_kg)} on the axle.`,
];

function grossMayBeOver({ gross_kg, limitsRead }: TrailerRecord, load: BallLoad): TrailerFinding[] {
  if (gross_kg === null || load.laden_kg.likely > gross_kg || load.laden_kg.high <= gross_kg) return [];
  return [
    {
      id: 'gross-may-be-over',
      subject: 'masses',
      gravity: 'worsens',
      wrong: `Trailer and load weigh ${bandSaid(load.laden_kg)}: it may be more than the plate’s ${kgSaid(gross_kg)}.`,
      right: 'Put her over a weighbridge, or weigh what is known least.',
      because: massesBecause(load),
      from: limitsRead,
      mend: null,
    },
  ];
}

const limitWords: Readonly<Partial<Record<keyof PaperLimits, string>>> = {
  carBall_kg: 'the ball limit in the car’s papers',
  barBall_kg: 'the ball limit on the tow bar',
  couplingBall_kg: 'the ball limit on the coupling',
  gross_kg: 'the trailer’s gross mass',
  axle_kg: 'the axle’s plate',
  train_kg: 'what car and trailer may weigh together',
  carLaden_kg: 'the car as laden',
  carKerb_kg: 'the car’s kerb mass',
};

function notEntered(record: TrailerRecord, missing: readonly (keyof PaperLimits)[]): TrailerFinding[] {
  const said = missing.flatMap((each) => limitWords[each] ?? []);
  if (said.length === 0) return [];
  const none = ballLimit(paperLimits(record)) === null;
  return [
    {
      id: 'limits-not-entered',
      subject: none ? 'ball load' : 'masses',
      gravity: 'unknown',
      wrong: `Not entered, so nothing is said of it: ${listInWords(said)}.`,
      right: 'Read them off the plates and the papers; the lowest counts.',
      because: none ? ['No limit of the ball load is in the book: whether it is within one is not known.'] : [],
      from: null,
      mend: null,
    },
  ];
}
