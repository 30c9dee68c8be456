import type { BoardHoistRecord } from '#boat-book';
import {
  bearings,
  type HoistFigures,
  type HoistPoint,
  hoistChanges,
  hoistFigures,
  isWire,
  type LineUnderLoad,
  loadCautions,
  slip,
  type WholeHoist,
} from '#loads';
import { standardGravity_m_s2 } from '#units';
import { figureSaid, sourceInWords } from './circuits-in-words.ts';
import type { WorkingTold } from './circuits-told.ts';
import {
  bearingSaid,
  bendSaid,
  cannotSaid,
  changeSaid,
  endingNames,
  forceSaid,
  gainAndCost,
  inHand,
  lineHoldsSaid,
  lineNames,
  lineSaid,
  placeSaid,
  sentenceOf,
  tackleSaid,
  winchSaid,
} from './hoist-in-words.ts';
import { type HoistedIn, massOf_kg, wholeHoist, withChange } from './hoist-of-book.ts';

/** One figure of a hoist, with how it is worked out. */
export interface HoistFigureTold {
  readonly label: string;
  /** `52 N, 0° below level` */
  readonly figure: string;
  /** what is not as it should be; null: nothing */
  readonly wrong: string | null;
  readonly working: readonly WorkingTold[];
}

/** One thing that could be otherwise, with what it gains and what it costs. */
export interface HoistChangeTold {
  readonly title: string;
  readonly gains: readonly string[];
  readonly costs: readonly string[];
  /** the hoist with it, as it would stand in the book */
  readonly record: BoardHoistRecord;
}

/** All that is told of a board's hoist, in whole sentences. Screens and the command line use the same. */
export type HoistTold =
  | {
      readonly kind: 'told';
      readonly verdict: string;
      /** what is asked is more than a hand gives, or a line bears too little */
      readonly short: readonly ('hand' | 'wire' | 'cord')[];
      readonly hand: 'crank' | 'fall';
      readonly reckoned: HoistFigures;
      readonly points: readonly HoistPoint[];
      readonly figures: readonly HoistFigureTold[];
      /** what holds if clutch, pawl or hand lets go */
      readonly slipped: readonly string[];
      readonly changes: readonly HoistChangeTold[];
      readonly made: readonly string[];
      readonly cautions: readonly string[];
    }
  | {
      readonly kind: 'cannot';
      readonly wrong: string;
      readonly right: string;
      readonly made: readonly string[];
      readonly cautions: readonly string[];
    };

/** A board's hoist, hoisted on the trailer or afloat: its figures, what is wrong, what each change would do. */
export function hoistTold(record: BoardHoistRecord, hoistedIn: HoistedIn): HoistTold {
  const hoist = wholeHoist(record, hoistedIn);
  const figures = hoistFigures(hoist);
  const made = madeOf(record);
  const cautions = [
    loadCautions.under,
    loadCautions.slip,
    loadCautions.winch,
    loadCautions.persons,
    loadCautions.guidance,
  ];
  if (figures.kind !== 'figures') return { kind: 'cannot', ...cannotSaid(figures), made, cautions };
  const hand = inHand(record.winch);
  const short = shortOf(figures);
  return {
    kind: 'told',
    verdict: verdictOf(figures, hand, short),
    short,
    hand,
    reckoned: figures,
    points: figures.travel.points,
    figures: figuresTold(record, hoist, figures),
    slipped: slippedSaid(figures, record),
    changes: hoistChanges(hoist)
      .map(({ change, figures: changed }) => ({
        title: changeSaid(change),
        ...gainAndCost(figures, changed, hand),
        record: withChange(record, change),
      }))
      .filter(({ gains, costs }) => gains.length + costs.length > 0),
    made,
    cautions,
  };
}

/** What is short of what is asked. */
export function shortOf({ hand, handLimit_N, wire, cord }: HoistFigures): ('hand' | 'wire' | 'cord')[] {
  return [
    ...(hand.hoisting.force_N > handLimit_N ? (['hand'] as const) : []),
    ...(wire.holds === false ? (['wire'] as const) : []),
    ...(cord?.holds === false ? (['cord'] as const) : []),
  ];
}

/** What a hand feels, and whether wire and cord bear it, in one sentence or two. */
export function verdictOf(
  { hand, handLimit_N, wire, cord }: HoistFigures,
  inHandIs: 'crank' | 'fall',
  short: readonly string[],
): string {
  const { hoisting } = hand;
  if (hoisting.force_N <= 0)
    return 'Nothing hangs on the wire: the board floats up by itself, and something must hold it down.';
  const felt = `${forceSaid(hoisting.force_N)} on the ${inHandIs} at the hardest, ${placeSaid(hoisting)}; one person is asked for ${forceSaid(handLimit_N)} at most.`;
  const unknown = [wire, cord].filter((line) => line !== null && line.holds === null);
  const lines = short.filter((each) => each !== 'hand');
  const bears =
    lines.length > 0
      ? `The ${lines.join(' and the ')} ${lines.length > 1 ? 'bear' : 'bears'} too little.`
      : unknown.length > 0
        ? `What ${unknown.map((line) => lineSaid(line!.line)).join(' and ')} bears is not known.`
        : cord
          ? 'Wire and cord bear it.'
          : 'The wire bears it.';
  return `${short.includes('hand') ? 'Too much for one: ' : ''}${felt} ${bears}`;
}

/** How it is made, in a line each. */
function madeOf({ plate, moves, wire, leads, tackles, cord, winch }: BoardHoistRecord): string[] {
  const mass_kg = massOf_kg(plate);
  const moved =
    moves.kind === 'turns'
      ? `turns from ${figureSaid(moves.down_deg)}° below level to ${moves.up_deg === 0 ? 'level' : `${figureSaid(moves.up_deg)}°`}`
      : `slides ${figureSaid(moves.travel_m)} m`;
  return [
    `A plate of ${figureSaid(Number(mass_kg.toFixed(1)))} kg${plate.mass.kind === 'weighed' ? '' : ' by its sizes'}, ${figureSaid(plate.length_m)} by ${figureSaid(plate.breadth_m)} m; it ${moved}.`,
    `On ${lineSaid(wire)}${wire.ending ? `, ${endingNames[wire.ending]}` : ', its ending not entered'}, over ${leads.count === 1 ? '1 lead block' : `${leads.count} lead blocks`}${leads.count > 0 ? `, ${bearingSaid(leads.bearing)}${leads.sheave_mm === null ? ', size not measured' : `, ${figureSaid(leads.sheave_mm)} mm`}` : ''}.`,
    ...tackles.map((tackle) => sentenceOf(tackleSaid(tackle))),
    ...(cord && tackles.length > 0
      ? [`Rove with ${lineSaid(cord)}${cord.ending ? `, ${endingNames[cord.ending]}` : ''}.`]
      : []),
    ...(winch ? [sentenceOf(winchSaid(winch))] : ['It comes straight to hand.']),
  ];
}

function slippedSaid(figures: HoistFigures, { winch }: BoardHoistRecord): string[] {
  const { onLine_N, onWire_N, turns, lightHand_N, friction, energy_J } = slip(figures.travel);
  if (onWire_N <= 0) return [];
  return [
    `If ${winch ? 'the clutch slips or the pawl jumps out' : 'the hand lets go'}, ${forceSaid(onLine_N)} come on whatever holds the last line. Friction is not counted on: a wet sheave holds nothing.`,
    `${turns === 1 ? 'One turn' : `${turns} turns`} round a cleat or post hold that with ${forceSaid(lightHand_N)} on the tail (µ ${friction}, our assumption). A pin through the plate, or a strop on it, has ${forceSaid(onWire_N)} to bear.`,
    `If nothing holds, it comes down with ${Math.round(energy_J)} J: as much as ${figureSaid(Number((energy_J / 98.0665).toFixed(1)))} m of fall gives 10 kg.`,
  ];
}

function figuresTold(record: BoardHoistRecord, hoist: WholeHoist, figures: HoistFigures): HoistFigureTold[] {
  const { hand, handLimit_N, travel, wire, cord } = figures;
  const { toPull } = travel;
  const inHandIs = inHand(record.winch);
  const byHand = handWorking(record, hoist, figures);
  const felt = (handling: 'hoisting' | 'holding' | 'lowering', label: string): HoistFigureTold => ({
    label,
    figure: `${forceSaid(hand[handling].force_N)}, ${placeSaid(hand[handling])}`,
    wrong:
      handling === 'hoisting' && hand.hoisting.force_N > handLimit_N
        ? `more than the ${forceSaid(handLimit_N)} one person is asked for`
        : null,
    working: byHand,
  });
  return [
    felt('hoisting', `Most on the ${inHandIs}, hoisting`),
    felt('holding', 'Holding, no friction counted'),
    felt('lowering', 'Let down slowly'),
    lineFigure('wire', wire),
    ...(cord ? [lineFigure('cord', cord)] : []),
    {
      label: toPull.kind === 'crank' ? 'To turn' : 'To pull',
      figure:
        toPull.kind === 'crank'
          ? `${Math.round(toPull.crankTurns)} turns of the crank, ${figureSaid(Number(toPull.line_m.toFixed(2)))} m of line`
          : `${figureSaid(Number(toPull.line_m.toFixed(2)))} m of line`,
      wrong: null,
      working: [
        {
          title: 'How much line',
          lines: [
            `Wire hauled in: ${figureSaid(Number(travel.wire_m.toFixed(3)))} m, from its length between plate and lead all the way down less that all the way up.`,
            `Times the parts of the tackles, ${figures.advantage}: ${figureSaid(Number(toPull.line_m.toFixed(3)))} m.`,
            ...(toPull.kind === 'crank'
              ? [
                  `${figureSaid(Number(toPull.drumTurns.toFixed(1)))} turns of the drum, laid side by side, the last in layer ${toPull.layer}; times the gear, ${figureSaid(record.winch?.gear ?? 1)}.`,
                  'Three turns more stay on the drum and are never let out.',
                ]
              : []),
            ...travel.room_m.map(
              (room_m, n) =>
                `${travel.room_m.length > 1 ? `Tackle ${n + 1}` : 'The tackle'} needs ${figureSaid(Number(room_m.toFixed(2)))} m for its moving block to travel.`,
            ),
          ],
        },
      ],
    },
    ...(record.moves.kind === 'turns'
      ? [
          {
            label: 'Most on the pivot',
            figure: forceSaid(Math.max(...travel.points.map(({ pivot_N }) => pivot_N ?? 0))),
            wrong: null,
            working: [
              {
                title: 'On the pivot',
                lines: ['What is left of the plate’s weight and the wire’s pull, added as forces, at the worst place.'],
              },
            ],
          },
        ]
      : []),
  ];
}

function lineFigure(which: 'wire' | 'cord', under: LineUnderLoad): HoistFigureTold {
  const { line, most_N, strength, holds } = under;
  const bend = bendSaid(under);
  return {
    label: `Most in the ${which}`,
    figure: `${forceSaid(most_N)}${under.times === null ? '' : `; it bears ${forceSaid(strength.kind === 'known' ? strength.breaking_N : 0)}`}`,
    wrong:
      holds === false
        ? `less than ${strength.kind === 'known' ? figureSaid(strength.factor.factor) : ''} times over`
        : strength.kind === 'unknown'
          ? 'what it bears is not known'
          : bend && 'its sheave is small',
    working: [
      {
        title: lineNames[line.of],
        lines: [
          `${sentenceOf(lineSaid(line))} It ${lineHoldsSaid(under)}.`,
          ...(bend ? [bend] : []),
          ...(strength.kind === 'known'
            ? [
                `New and straight ${forceSaid(strength.printed.force_N)}: ${strength.printed.column.source}${strength.printed.seen === 'recalled' ? ' (recalled, not read again)' : ''}.`,
                line.ending
                  ? `Its ${endingNames[line.ending]} leaves ${Math.round(100 * strength.endingShare)} % of that.`
                  : 'Its ending is not entered: nothing is taken off for it.',
                ...(strength.sheaveRatio === null
                  ? ['The sheaves are not measured: nothing is taken off for them.']
                  : isWire(line.of)
                    ? [
                        `Its smallest sheave leaves ${Math.round(100 * strength.bendShare)} %. The worse of the two counts.`,
                      ]
                    : []),
                `Factor ${figureSaid(strength.factor.factor)}: ${sourceInWords(strength.factor.whose)}`,
                'Tables are for new gear: age, sun, rust, chafe and broken strands take from it.',
              ]
            : []),
        ],
      },
    ],
  };
}

function handWorking(record: BoardHoistRecord, hoist: WholeHoist, { hand, travel, wire }: HoistFigures): WorkingTold[] {
  const { leads, tackles, winch, moves } = record;
  const point = travel.points.reduce((most, each) => (each.hand_N.hoisting > most.hand_N.hoisting ? each : most));
  const weight_N = massOf_kg(record.plate) * standardGravity_m_s2;
  return [
    {
      title: 'The wire at the board',
      lines: [
        `The plate weighs ${forceSaid(weight_N)} in air${hoist.water_kg_m3 === null ? '' : `; under water ${figureSaid(Math.round(100 * (1 - hoist.water_kg_m3 / record.plate.density_kg_m3)))} % of that hangs`}.`,
        moves.kind === 'turns'
          ? `Moments about the pivot: weight times its arm is wire times its arm. At the hardest for the hand, ${placeSaid(hand.hoisting)}, the wire pulls ${forceSaid(point.wire_N.hoisting)}.`
          : `It slides: the wire pulls ${forceSaid(point.wire_N.hoisting)} at the hardest${moves.offMiddle_m === 0 ? '' : ', what it rubs in its case for being pulled off its middle counted'}.`,
      ],
    },
    {
      title: 'From there to the hand, hoisting',
      lines: [
        `${leads.count === 1 ? '1 lead block' : `${leads.count} lead blocks`}: the tension grows ${bearings[leads.bearing].factor} times over each, to ${forceSaid(wire.most_N)} at most.`,
        ...tackles.map(
          (tackle) =>
            `${sentenceOf(tackleSaid(tackle))} It grows ${bearings[tackle.bearing].factor} times over each sheave.`,
        ),
        `The last line carries ${forceSaid(point.fall_N.hoisting)} there.`,
        ...(winch ? [`${sentenceOf(winchSaid(winch))} A tenth is lost in it.`] : []),
      ],
    },
    {
      title: 'Holding and lowering',
      lines: [
        'Holding, no friction is counted: it is not a brake. Lowering slowly, friction helps: it takes from the load what it takes from the hand in hoisting.',
      ],
    },
    {
      title: 'From',
      lines: [
        'Sheave factors 1.04 ball, 1.09 plain: beside a block and tackle formula in an engineering collection (recalled). 1.15 stiff: our assumption.',
        'Loss in a winch: as a sailing magazine measured it (read second-hand).',
        'One person, again and again: 200 N on a fall of 8 mm or more, 25 N a millimetre below that, 120 N at a crank. Our assumption.',
        'Not counted: friction at the pivot, water flowing past, a plate that jams, jerks.',
      ],
    },
  ];
}
