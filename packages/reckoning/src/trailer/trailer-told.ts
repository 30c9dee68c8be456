/** All that is told of a trailer, in whole sentences. Screens and the command line use the same. */
import type { Book, Id, TrailerRecord } from '#boat-book';
import { ballLimit, ladenOverKerb_pct, trailerCautions, trailerSources } from '#trailer';
import { sourceInWords } from '../circuits-in-words.ts';
import type { WorkingTold } from '../circuits-told.ts';
import { dayInWords, listInWords } from '../when-in-words.ts';
import { assumedReading, type BallLoad, ballLoad, type Weighed } from './ball-load.ts';
import { boardFindings, type LashingTold, lashingFindings, lashingsTold } from './lashing-told.ts';
import { limitFindings } from './limit-findings.ts';
import { ballWanted_kg, mendings, type TrailerMending } from './mendings.ts';
import { ballLimitSaid, paperLimits, tyresCarry_kg } from './paper-limits.ts';
import { type LoadChange, massGive_kg, type Standing, standingOn } from './standing.ts';
import type { TrailerFinding } from './trailer-finding.ts';
import { bandSaid, kgFigure, kgSaid, metresSaid, pctSaid, placeAlong } from './trailer-words.ts';
import { tyreFindings, tyresInWords } from './tyre-findings.ts';

/** A figure that opens its working. */
export interface TrailerFigure {
  readonly of: 'ball' | 'axle' | 'laden' | 'share' | 'train';
  readonly title: string;
  readonly figure: string;
  /** beside it: the limit, or that none was entered */
  readonly note: string;
  readonly working: readonly WorkingTold[];
}

export interface TrailerTold {
  readonly verdict: string;
  /** the ball load and its limit, in a sentence */
  readonly ball: string;
  readonly load: BallLoad;
  /** the lowest of car, bar and coupling; null: none was entered. [kg] */
  readonly ballLimit_kg: number | null;
  readonly wanted: { readonly low_kg: number; readonly high_kg: number };
  readonly figures: readonly TrailerFigure[];
  /** the gravest first */
  readonly findings: readonly TrailerFinding[];
  readonly mendings: readonly TrailerMending[];
  readonly lashings: readonly LashingTold[];
  readonly tyres: readonly string[];
  /** what the last weighing says of the table; none: it was never weighed */
  readonly weighed: readonly string[];
  /** where the hull would have to stand for the table to say what the scale did; null: nothing to put right */
  readonly putRight: {
    readonly weighing: Id;
    readonly carried: Id;
    readonly ahead_m: number;
    readonly words: string;
  } | null;
  readonly cautions: readonly string[];
}

const gravities = ['danger', 'unlawful', 'worsens', 'unknown'] as const;

/** What stands on a trailer of the book, with what was found. @param today YYYY-MM-DD, for the age of its tyres */
export function trailerTold(
  book: Book,
  id: Id,
  record: TrailerRecord,
  today: string,
  change: LoadChange = {},
): TrailerTold {
  const load = ballLoad(book, id, record, standingOn(book, id, record, change));
  const moves = mendings(record, load);
  const lashings = lashingsTold(record, load.standings);
  const findings = [
    ...limitFindings(record, load, moves),
    ...tyreFindings(record, today),
    ...lashingFindings(lashings),
    ...boardFindings(record, book.boat),
  ].sort((a, b) => gravities.indexOf(a.gravity) - gravities.indexOf(b.gravity));
  const limits = paperLimits(record);
  const entered = [limits.carBall_kg, limits.barBall_kg, limits.couplingBall_kg].filter((each) => each !== undefined);
  return {
    verdict: verdictOf(load, findings),
    ball: ballSaid(record, load),
    load,
    ballLimit_kg: entered.length === 0 ? null : Math.min(...entered),
    wanted: ballWanted_kg(record, load),
    figures: figuresOf(record, load),
    findings,
    mendings: moves,
    lashings,
    tyres: tyresInWords(record, today),
    weighed: load.weighed ? weighedSaid(load.weighed) : [],
    putRight: load.weighed ? putRight(record, load, load.weighed) : null,
    cautions: [
      trailerCautions.lashing,
      trailerCautions.level,
      trailerCautions.scale,
      trailerCautions.tyres,
      trailerCautions.web,
      trailerCautions.hull,
      trailerCautions.law,
      trailerCautions.guidance,
    ],
  };
}

function verdictOf({ standings }: BallLoad, findings: readonly TrailerFinding[]): string {
  if (standings.length < 2) return 'Nothing stands on it yet: put in the boat and what is in her.';
  const of = (...some: readonly TrailerFinding['gravity'][]) =>
    findings.filter(({ gravity }) => some.includes(gravity)).length;
  const stops = of('danger', 'unlawful');
  const notLooked = of('unknown');
  const open =
    notLooked === 0 ? '' : ` ${notLooked === 1 ? 'One thing was' : `${notLooked} things were`} not looked at.`;
  if (stops > 0)
    return `Not to be towed so: ${stops === 1 ? 'one thing stands' : `${stops} things stand`} against it.${open}`;
  const wants = of('worsens');
  return wants > 0
    ? `Within what was entered, with ${wants === 1 ? 'one thing' : `${wants} things`} to see to.${open}`
    : `Nothing was found against it in what was entered.${open}`;
}

/** The ball load of every trailer of the book that something stands on, in a sentence, and whether it may carry so much. */
export function ballLoadsSaid(book: Book): readonly { readonly words: string; readonly over: string | null }[] {
  return Object.entries(book.trailers).flatMap(([id, record]) => {
    const load = ballLoad(book, id, record, standingOn(book, id, record, {}));
    const limit = ballLimit(paperLimits(record));
    if (load.standings.length < 2) return [];
    const over =
      !limit || load.ball_kg.high <= limit.kg
        ? null
        : load.ball_kg.likely > limit.kg
          ? 'By the book the ball carries more than it may: not to be towed so. Move weight aft of the axle, or take it off.'
          : 'By the book the ball may carry more than it may: weigh it before she moves.';
    return [{ words: ballSaid(record, load).replace(/\.$/, ''), over }];
  });
}

/** `The ball carries 48 kg (46.7 to 49.3), 5.9 % of 820 kg; at most the tow bar’s 50 kg, …` */
function ballSaid(record: TrailerRecord, { ball_kg, laden_kg }: BallLoad): string {
  const limit = ballLimitSaid(record);
  const share =
    laden_kg.likely > 0 ? `, ${pctSaid((100 * ball_kg.likely) / laden_kg.likely)} of ${kgSaid(laden_kg.likely)}` : '';
  return `The ball carries ${bandSaid(ball_kg)}${share}; ${limit ? `it may carry ${limit}` : 'no limit of car, tow bar or coupling is entered'}.`;
}

/** What a change does, before and after: `The ball goes from 48 to 50.7 kg, the axle from 772 to 799 kg.` */
export function changeSaid(before: TrailerTold, after: TrailerTold): string {
  const from = before.load;
  const to = after.load;
  const gain = to.ball_kg.likely - from.ball_kg.likely;
  const limit = after.ballLimit_kg;
  const against =
    limit === null
      ? ''
      : to.ball_kg.likely > limit
        ? ` That is ${kgSaid(to.ball_kg.likely - limit)} over the limit.`
        : ` That leaves ${kgSaid(limit - to.ball_kg.likely)} to the limit.`;
  if (Math.abs(gain) < 0.05) return `The ball load stays at ${kgSaid(to.ball_kg.likely)}.${against}`;
  return `The ball ${gain > 0 ? 'gains' : 'loses'} ${kgSaid(Math.abs(gain))}: from ${kgFigure(from.ball_kg.likely)} to ${kgSaid(to.ball_kg.likely)}; the axle from ${kgFigure(from.axle_kg)} to ${kgSaid(to.axle_kg)}.${against}`;
}

function figuresOf(record: TrailerRecord, load: BallLoad): TrailerFigure[] {
  const { ball_kg, laden_kg, axle_kg } = load;
  const share = laden_kg.likely > 0 ? (100 * ball_kg.likely) / laden_kg.likely : 0;
  const wanted = ballWanted_kg(record, load);
  const ofAxle = [
    ...(record.axle_kg === null ? [] : [`its plate ${kgSaid(record.axle_kg)}`]),
    ...(tyresCarry_kg(record) === null ? [] : [`the tyres ${kgSaid(tyresCarry_kg(record) ?? 0)}`]),
  ];
  return [
    {
      of: 'ball',
      title: 'On the ball',
      figure: bandSaid(ball_kg),
      note: ballLimitSaid(record) ?? 'no limit is entered',
      working: ballWorking(record, load),
    },
    {
      of: 'share',
      title: 'Share of the ball',
      figure: pctSaid(share),
      note: `wanted: ${kgFigure(wanted.low_kg)} to ${kgSaid(wanted.high_kg)}`,
      working: [
        {
          title: 'What is wanted',
          lines: [
            `${kgSaid(ball_kg.likely)} of ${kgSaid(laden_kg.likely)}.`,
            `${record.advice === 'uk' ? 'Britain and Europe: 5 to 7 %' : 'United States: 10 to 15 %'} is usually advised; under 4 % she wags.`,
            'At the upper end it is kept below the lowest limit by as much as the ball load may be off.',
          ],
        },
        from(record.advice === 'uk' ? trailerSources.adviceUk : trailerSources.adviceUs),
      ],
    },
    {
      of: 'axle',
      title: record.axles === 2 ? 'On the axles' : 'On the axle',
      figure: kgSaid(axle_kg),
      note: ofAxle.length > 0 ? listInWords(ofAxle) : 'no limit is entered',
      working: [
        {
          title: 'What the ball does not carry',
          lines: [`${kgSaid(laden_kg.likely)} in all, less ${kgSaid(ball_kg.likely)} on the ball.`],
        },
        from(trailerSources.moments),
      ],
    },
    {
      of: 'laden',
      title: 'Trailer and load',
      figure: bandSaid(laden_kg),
      note: record.gross_kg === null ? 'gross mass is not entered' : `the plate ${kgSaid(record.gross_kg)}`,
      working: [
        { title: 'Added up', lines: load.standings.map(massSaid) },
        {
          title: 'How far off',
          lines: ['What is not known of each is taken as apart from the rest: the root of the sum of the squares.'],
        },
      ],
    },
    ...trainFigure(record, load),
  ];
}

function trainFigure({ train_kg, carLaden_kg, carKerb_kg }: TrailerRecord, { laden_kg }: BallLoad): TrailerFigure[] {
  if (carLaden_kg === null && carKerb_kg === null) return [];
  const laden = laden_kg.likely;
  return [
    {
      of: 'train',
      title: 'Car and trailer',
      figure:
        carLaden_kg === null ? `${pctSaid((100 * laden) / (carKerb_kg ?? 1))} of the car` : kgSaid(carLaden_kg + laden),
      note:
        carLaden_kg === null
          ? 'the car as laden is not entered'
          : train_kg === null
            ? 'what they may weigh together is not entered'
            : `the papers ${kgSaid(train_kg)}`,
      working: [
        {
          title: 'Together',
          lines: [
            ...(carLaden_kg === null ? [] : [`The car as laden ${kgSaid(carLaden_kg)}, the trailer ${kgSaid(laden)}.`]),
            ...(carKerb_kg === null
              ? []
              : [
                  `The trailer is ${pctSaid((100 * laden) / carKerb_kg)} of the car’s kerb mass of ${kgSaid(carKerb_kg)}; at most ${ladenOverKerb_pct} % is usually advised.`,
                ]),
          ],
        },
        from(trailerSources.ratio),
      ],
    },
  ];
}

const from = (...sources: readonly (typeof trailerSources)[keyof typeof trailerSources][]): WorkingTold => ({
  title: 'From',
  lines: sources.map((source) => `${source.title.charAt(0).toUpperCase()}${sourceInWords(source).slice(1)}`),
});

const massSaid = ({ name, mass, massFrom }: Standing): string =>
  `${name}: ${kgSaid(mass.likely_kg)}${massGive_kg(mass) === 0 ? '' : ` (${kgFigure(mass.low_kg)} to ${kgFigure(mass.high_kg)})`}, ${massFrom === 'guessed' ? 'guessed' : `${massFrom === 'weighed' ? '' : 'by '}${massFrom}`}.`;

function ballWorking(record: TrailerRecord, { standings, balance, weighed, ball_kg }: BallLoad): WorkingTold[] {
  return [
    {
      title: `Moments about the axle, over ${metresSaid(record.ballAhead_m)} to the ball`,
      lines: [
        ...standings.map((each, n) => {
          const { ball_kg: part, give_kg } = balance.shares[n] ?? { ball_kg: 0, give_kg: 0 };
          return `${each.name}: ${kgSaid(each.mass.likely_kg)}, ${placeAlong(each.ahead_m)}: ${kgFigure(part)} ± ${kgSaid(give_kg)}.`;
        }),
        `Together ${bandSaid(balance.ball_kg)}: what is not known of each is taken as apart from the rest.`,
      ],
    },
    ...(weighed
      ? [
          {
            title: 'Put right by the scale',
            lines: [
              ...weighedSaid(weighed),
              ...weighed.since.map(
                ({ name, gain_kg }) =>
                  `Since then, ${name}: ${gain_kg < 0 ? '' : '+'}${kgFigure(gain_kg)} kg by the table.`,
              ),
              `So it carries ${bandSaid(ball_kg)}. What stands as it stood then is in the reading, right or wrong in the table.`,
            ],
          },
        ]
      : []),
    { title: 'Not covered', lines: ['Standing level: brakes, hills and bumps add to it.'] },
    from(trailerSources.moments, ...(weighed ? [trailerSources.lever] : [])),
  ];
}

/** The reading, the lever, and what the table does not explain of it. */
function weighedSaid({ weighing, ball_kg, give_kg, unexplained_kg, tableGive_kg }: Weighed): string[] {
  const off = Math.abs(unexplained_kg);
  const within = off <= tableGive_kg;
  const { scale_kg, arm_mm, beam_mm } = weighing;
  return [
    `Weighed on ${dayInWords(weighing.at.slice(0, 10))} ${weighing.at.slice(0, 4)}: ${kgSaid(scale_kg)} on the scale, ${beam_mm} mm from the block; the coupling ${arm_mm} mm from it. That is ${kgFigure(ball_kg)} ± ${kgSaid(give_kg)} on the ball (scale ± ${assumedReading.scale_kg} kg, tape ± ${assumedReading.arm_mm} mm: our assumption).`,
    off < 0.05
      ? `The table said the same.`
      : `The table said ${kgSaid(weighing.told_kg)}: ${kgSaid(off)} ${unexplained_kg > 0 ? 'too little' : 'too much'}, ${within ? `which is within what it does not know (± ${kgSaid(tableGive_kg)})` : `more than it may be off by (± ${kgSaid(tableGive_kg)}): something is missing from it, or stands elsewhere`}.`,
  ];
}

/** The heaviest thing whose place is least known, put where the scale says it must stand. */
function putRight(
  record: TrailerRecord,
  { standings }: BallLoad,
  { id, weighing, unexplained_kg }: Weighed,
): TrailerTold['putRight'] {
  const unsure = standings
    .filter(
      ({ carried, give_m, ahead_m }) =>
        give_m > 0 &&
        weighing.stood.some((then) => then.carried !== null && then.carried === carried && then.ahead_m === ahead_m),
    )
    .toSorted((a, b) => b.mass.likely_kg * b.give_m - a.mass.likely_kg * a.give_m)[0];
  if (!unsure?.carried || Math.abs(unexplained_kg) < 0.05) return null;
  const shift_m = (unexplained_kg * record.ballAhead_m) / unsure.mass.likely_kg;
  const ahead_m = Number((unsure.ahead_m + shift_m).toFixed(3));
  return {
    weighing: id,
    carried: unsure.carried,
    ahead_m,
    words: `It would say the same with ${unsure.name} ${placeAlong(ahead_m)} and not ${placeAlong(unsure.ahead_m)}: ${Math.abs(shift_m) <= unsure.give_m ? 'no farther off than its place is known' : `farther off than the ${metresSaid(unsure.give_m)} its place may be out`}.`,
  };
}
