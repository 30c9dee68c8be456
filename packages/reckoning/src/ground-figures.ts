/** The figures of a rode in an anchorage, each in words with how it is worked out. */
import type { AnchorageRecord, Boat, RodeRecord } from '#boat-book';
import { assumedCarried_m, type BoatAtAnchor, usualDragCoefficient, usualSurge, windOfLoad_kn } from '#loads';
import { inBase } from '#units';
import { type Answer, type Asked, figureOf } from '#working';
import { figureSaid, sentence, sourceInWords, workingInWords } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';
import { listInWords } from './when-in-words.ts';

/** A figure of a rode with what there is to know about it, and how it is worked out. */
export interface GroundFigure {
  readonly of: 'load' | 'veer' | 'anchor' | 'bow' | 'strength' | 'holds' | 'sea' | 'circle' | 'under';
  readonly title: string;
  /** `27 m`, `1.05 kN` */
  readonly figure: string;
  readonly note: string;
  readonly working: readonly WorkingTold[];
}

/** What a fibre is called in a sentence. */
export const fibreInWords: Readonly<Record<NonNullable<RodeRecord['rope']>['fibre'], string>> = {
  nylon: 'nylon',
  polyester: 'polyester',
  'polyester-braid': 'double-braid polyester',
  polypropylene: 'polypropylene',
};

/** All of a rode, from the anchor to its inner end. [m] */
export const rodeLength_m = ({ chain, rope }: Pick<RodeRecord, 'chain' | 'rope'>): number =>
  (chain?.length_m ?? 0) + (rope?.length_m ?? 0);

/** A rode in an anchorage, with what was found of it. */
export interface GroundPlaces {
  readonly boat: Boat;
  readonly rode: RodeRecord;
  readonly anchorage: AnchorageRecord;
  readonly is_m: number;
  /** in whole metres; null: all there is is not enough */
  readonly enough_m: number | null;
  /** the pull at the anchor is no steeper than is trusted */
  readonly within: boolean;
  readonly angle_deg: number;
  readonly bearers: readonly Bearer[];
  readonly atBow_N: number;
}

/** Rope or chain that is out, with what it may work at when it is new. */
export interface Bearer {
  readonly what: string;
  readonly working_N: number;
  readonly asked: AnsweredAsk;
}

/** How much of its working load the weaker of rope and chain bears. */
export function strengthFigures({ bearers, atBow_N }: GroundPlaces): readonly GroundFigure[] {
  const weakest = [...bearers].sort((a, b) => a.working_N - b.working_N)[0];
  if (weakest === undefined) return [];
  return [
    {
      of: 'strength',
      title: 'Of its working load',
      figure: `${Math.round((100 * atBow_N) / weakest.working_N)} %`,
      note: `${weakest.what}, is the weaker: ${kN(weakest.working_N)}. Shackles, knots and age take from it: see its load path`,
      working: bearers.flatMap(({ what, asked }) => [
        {
          title: sentence(what).slice(0, -1),
          lines: [...asked.answer.results, ...asked.answer.working].flatMap(lineOf),
        },
        { title: `From, ${what}`, lines: asked.answer.sources.map(sourceInWords) },
      ]),
    },
  ];
}

/** Her sizes that the pull of wind and current is reckoned with, as they are said. */
const pulledSizes = { beam_m: 'beam', draft_m: 'draught' } as const;

/** The sizes nobody gave that the sum uses, as a part of its working; none: all were given. */
function notMeasured(boat: Boat): readonly WorkingTold[] {
  const names = (['beam_m', 'draft_m'] as const).filter((name) => boat.guessed?.includes(name));
  if (names.length === 0) return [];
  const said = listInWords(names.map((name) => `${pulledSizes[name]} ${boat[name]} m`));
  return [
    {
      title: 'Not measured',
      lines: [
        `Guessed from her length, only to draw her by: ${said}. Measure and enter them under her sizes; this figure rests on them.`,
      ],
    },
  ];
}

export function loadFigure(pull: AnsweredAsk, load_N: number, boat: Boat): GroundFigure {
  const table = figureOf(pull.answer, 'F table');
  const drag_N = numberOf(pull.answer, 'F drag');
  const row = figureOf(pull.answer, 'row');
  const byTable = typeof table?.value === 'number' && load_N > drag_N;
  const of =
    typeof row?.value === 'number'
      ? `the table for boats up to ${row.value} ft, ${row.meaning.replace('of the table, ', '')}`
      : '';
  return {
    of: 'load',
    title: 'Level pull at the bow',
    figure: kN(load_N),
    note: byTable
      ? `by ${of}, with the current; by drag it would be ${kN(drag_N)}`
      : of === ''
        ? 'by drag: she is larger than the table'
        : `by drag, sheering about counted; by ${of}, less`,
    working: [
      ...notMeasured(boat),
      ...workingOf(
        pull,
        'The table’s load at this wind with the current on top, or the drag of wind and current times the surge: the greater is taken.',
      ),
    ],
  };
}

export function veerFigure(
  { rode, anchorage, enough_m }: GroundPlaces,
  veer: AnsweredAsk,
  wanted_m: unknown,
): GroundFigure {
  const { chain, rope } = rode;
  const chain_m = Math.min(chain?.length_m ?? 0, enough_m ?? Number.POSITIVE_INFINITY);
  const rope_m = (enough_m ?? rodeLength_m(rode)) - chain_m;
  const parts = [
    chain === null ? null : `${chain_m === chain.length_m ? 'all ' : ''}${figureSaid(chain_m)} m of chain`,
    rope === null || rope_m <= 0 ? null : `${figureSaid(rope_m)} m of rope`,
  ].filter((part) => part !== null);
  const height_m = anchorage.depth_m + anchorage.rise_m + rode.bow_m;
  return {
    of: 'veer',
    title: 'To veer',
    figure:
      enough_m !== null
        ? `${enough_m} m`
        : typeof wanted_m === 'number'
          ? `${Math.ceil(wanted_m)} m`
          : 'no length does',
    note:
      enough_m === null
        ? `there is ${figureSaid(rodeLength_m(rode))} m`
        : `${parts.join(' and ')}, ${(enough_m / height_m).toFixed(1)} times the height of the bow over the seabed at high water`,
    working: workingOf(
      veer,
      `The least length that keeps the pull at the anchor within ${degrees(rode.limit_deg)} at high water, chain first, found by halving; rounded up to whole metres.`,
    ),
  };
}

export function anchorFigure({ rode, angle_deg, within }: GroundPlaces, lying: AnsweredAsk): GroundFigure {
  const grounded_m = numberOf(lying.answer, 'grounded');
  return {
    of: 'anchor',
    title: 'Pull at the anchor',
    figure: angle_deg < 0.05 ? 'level' : `${degrees(angle_deg)} up`,
    note: `${kN(numberOf(lying.answer, 'T anchor'))}; ${
      grounded_m > 0.05
        ? `${figureSaid(grounded_m)} m of it lies on the seabed at high water`
        : within
          ? `all of it is lifted; up to ${degrees(rode.limit_deg)} is trusted`
          : `${degrees(rode.limit_deg)} is as much as you trust it with`
    }`,
    working: workingOf(
      lying,
      'The pull is level all the way but for the weight that hangs: tan α is what is left of it at the anchor over the level pull.',
    ),
  };
}

export function bowFigure({ rode, is_m }: GroundPlaces, lying: AnsweredAsk): GroundFigure {
  const joint = rode.chain !== null && rode.rope !== null && is_m > rode.chain.length_m;
  return {
    of: 'bow',
    title: 'In the rode at the bow',
    figure: kN(numberOf(lying.answer, 'T bow')),
    note: joint
      ? `${kN(numberOf(lying.answer, 'T above the chain'))} where chain and rope meet; it is ${numberOf(lying.answer, 'stretch').toFixed(1)} m longer than at rest`
      : 'what roller, cleat and every link bear',
    working: workingOf(
      lying,
      'The level pull, and the weight of all that hangs below the bow with what lifts at the anchor: √(H² + V²).',
    ),
  };
}

/** The most wind that is looked at. [kn] */
const mostWind_kn = 80;

export function holdsFigure({ boat, rode, anchorage, is_m, bearers }: GroundPlaces, lying: AnsweredAsk): GroundFigure {
  const current_m_s = inBase('speed', anchorage.current_kn, 'kn');
  const windOf = (load_N: number) => windOfLoad_kn(atAnchor(boat, rode), load_N, current_m_s, mostWind_kn);
  const lifts_N = figureOf(lying.answer, 'F lifts')?.value;
  const lifts_kn = typeof lifts_N === 'number' ? windOf(lifts_N) : null;
  const weakest = [...bearers].sort((a, b) => a.working_N - b.working_N)[0];
  const strained_kn = weakest === undefined ? null : windOf(weakest.working_N);
  const byAngle = lifts_kn !== null && (strained_kn === null || lifts_kn <= strained_kn);
  const wind_kn = byAngle ? lifts_kn : strained_kn;
  return {
    of: 'holds',
    title: `${figureSaid(is_m)} m out is good to`,
    figure: wind_kn === null ? `past ${mostWind_kn} kn` : `${Math.floor(wind_kn)} kn`,
    note:
      wind_kn === null
        ? 'by angle and strength; the seabed may give way before'
        : byAngle
          ? `then the pull at the anchor passes ${degrees(rode.limit_deg)}; the seabed may give way before`
          : `then ${weakest!.what}, is at its working load; the seabed may give way before`,
    working: [
      {
        title: 'How',
        lines: [
          typeof lifts_N === 'number'
            ? sentence(
                `A load of ${kN(lifts_N)} brings the pull at the anchor to ${degrees(rode.limit_deg)} at high water`,
              )
            : sentence(`No load that new rope bears brings the pull at the anchor past ${degrees(rode.limit_deg)}`),
          ...(weakest === undefined
            ? []
            : [sentence(`${kN(weakest.working_N)} is the working load of ${weakest.what}`)]),
          sentence(
            `The wind that pulls so hard at her bow, with ${figureSaid(anchorage.current_kn)} kn of current, is found by halving; the lesser counts`,
          ),
        ],
      },
      ...workingOf(lying, '').slice(1),
    ],
  };
}

const atAnchor = (boat: Boat, rode: RodeRecord): BoatAtAnchor => ({
  length_m: boat.length_m,
  beam_m: boat.beam_m,
  kind: 'sail',
  windage_m2: rode.windage_m2,
  coefficient: usualDragCoefficient,
  draught_m: boat.draft_m,
  below_m2: rode.below_m2,
  surge: usualSurge,
});

export function seaFigure(lying: AnsweredAsk): GroundFigure {
  const carried = figureOf(lying.answer, 'F carried')?.value;
  return {
    of: 'sea',
    title: `A sea that carries her back ${assumedCarried_m} m`,
    figure: typeof carried === 'number' ? kN(carried) : 'a snatch',
    note: typeof carried === 'number' ? 'what the rode then pulls, with no time to veer' : (carried ?? ''),
    working: workingOf(
      lying,
      `The load at which the rode reaches ${assumedCarried_m} m farther than it lies, found by halving: it gives by stretching and by lifting, and nothing else is counted.`,
    ),
  };
}

export function circleFigure(lying: AnsweredAsk): GroundFigure {
  return {
    of: 'circle',
    title: 'Swings to',
    figure: `${Math.ceil(numberOf(lying.answer, 'R'))} m`,
    note: `from the anchor to her stern at low water; ${Math.ceil(numberOf(lying.answer, 'R taut'))} m with the rode drawn straight`,
    working: workingOf(
      lying,
      'The rode’s level reach at low water and her length; drawn straight, √(L² − h²) and her length.',
    ),
  };
}

export function underFigure({ boat, anchorage }: GroundPlaces): GroundFigure {
  const water_m = anchorage.depth_m - anchorage.fall_m;
  const [up_m, down_m] = [water_m - boat.draft_m, water_m - boat.draftBoardDown_m];
  return {
    of: 'under',
    title: 'Under her at low water',
    figure: `${figureSaid(up_m)} m`,
    note: down_m > 0 ? `${figureSaid(down_m)} m with the board down` : 'with the board up; lowered it touches',
    working: [
      {
        title: 'How',
        lines: [
          sentence(
            `${figureSaid(anchorage.depth_m)} m now less ${figureSaid(anchorage.fall_m)} m still to fall less her draft of ${figureSaid(boat.draft_m)} m, ${figureSaid(boat.draftBoardDown_m)} m with the board down`,
          ),
          'At the anchor. Sound round the circle she swings in: it may be less there.',
        ],
      },
    ],
  };
}

export type AnsweredAsk = Extract<Asked, { readonly kind: 'answered' }>;

/** How an answer came about, in lines. */
function workingOf({ answer, assumed }: AnsweredAsk, how: string): readonly WorkingTold[] {
  return [
    { title: 'How', lines: [how, ...[...answer.results, ...answer.working].flatMap(lineOf)] },
    ...(assumed.length === 0
      ? []
      : [
          {
            title: 'Taken, because nothing was given',
            lines: assumed.map(({ field, shown, because }) => sentence(`${field} ${shown}: ${because}`)),
          },
        ]),
    { title: 'Not covered', lines: answer.limits },
    { title: 'From', lines: answer.sources.map(sourceInWords) },
  ];
}

function lineOf(figure: Answer['results'][number] | Answer['working'][number]): string[] {
  if ('formula' in figure) return [workingInWords(figure)];
  const { meaning, symbol, value, unit } = figure;
  return [
    sentence(
      `${meaning}: ${symbol} = ${typeof value === 'number' ? `${figureSaid(value)}${unit === '' ? '' : ` ${unit}`}` : value}`,
    ),
  ];
}

export function numberOf(answer: Answer, symbol: string): number {
  const value = figureOf(answer, symbol)?.value;
  if (typeof value !== 'number') throw new RangeError(`the answer has no number ${symbol}`);
  return value;
}

export const kN = (force_N: number) =>
  `${force_N < 9950 ? (force_N / 1000).toFixed(2) : (force_N / 1000).toFixed(1)} kN`;
export const degrees = (angle_deg: number) =>
  `${angle_deg < 9.95 ? Number(angle_deg.toFixed(1)) : Math.round(angle_deg)}°`;
