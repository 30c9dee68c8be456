import { inBase } from '#units';
import { type Answer, angle, assuming, length, question, type WorkingLine } from '#working';
import type { rodeFibres } from '../../tables/rode-gear.read-2026-11.ts';
import { cautions } from '../cautions.ts';
import { groundCautions, groundLimits, heightsOf, piecesOf, rodeFault, rodeFields, sources } from './ground-fields.ts';
import { lengthOf, type RodeLying, type RodePiece, rodeLying } from './rode.ts';
import { type RopeSize, stiffestCell } from './rode-gear.ts';
import {
  assumedCarried_m,
  loadThatLifts_N,
  loadWhenCarried_N,
  rodeToVeer,
  swingingCircle,
  usualHoldingAngle_deg,
} from './veer.ts';

const limitField = () =>
  assuming(
    angle('°', 0, 30, 'the steepest pull you trust the anchor with, above level'),
    inBase('angle', usualHoldingAngle_deg, '°'),
    `${usualHoldingAngle_deg}°`,
    'as far as most writers go; 0° keeps every link at the anchor down',
  );
const boatField = () => length('m', 2, 15, 'boat over all, for the circle she swings in');

/** Rope is looked at up to what new rope of the tables breaks at, chain alone up to this. [N] */
const chainLookedTo_N = 100_000;

export function rodeQuestion() {
  return question({
    id: 'loads.rode',
    title: 'How does this rode lie, and what comes on its ends?',
    fields: {
      ...rodeFields(),
      boat: boatField(),
      limit: limitField(),
      carried: assuming(
        length('m', 0, 3, 'how far a sea carries the bow astern before the rode stops it'),
        inBase('length', assumedCarried_m, 'm'),
        `${assumedCarried_m} m`,
        'a short chop; our assumption',
      ),
    },
    conflict: rodeFault,
    answer: (given): Answer => {
      const pieces = piecesOf(given);
      const { high_m, low_m } = heightsOf(given);
      const high = { pieces, load_N: given.load, height_m: high_m };
      const lying = rodeLying(high);
      if (lying.kind !== 'lies') return floats(given);
      const lowWater = { ...high, height_m: low_m };
      const atLow = rodeLying(lowWater);
      if (atLow.kind !== 'lies') return floats(given);
      const circle = swingingCircle(lowWater, atLow, given.boat);
      const roped = given.rope !== 'none' && given['rope-length'] > 0;
      const most_N =
        given.rope !== 'none' && roped
          ? stiffestCell(given.rope, Number(given['rope-size']) as RopeSize).force_N
          : chainLookedTo_N;
      const lifts_N = loadThatLifts_N(high, given.limit, most_N);
      const carried_N = loadWhenCarried_N(high, given.carried, most_N);
      const past = roped
        ? 'more than new rope of the tables breaks at'
        : 'past 100 kN: chain drawn straight gives nothing';
      return {
        kind: 'found',
        results: [
          {
            symbol: 'α',
            meaning: 'the pull at the anchor above level, at high water',
            value: lying.angle_deg,
            unit: '°',
          },
          { symbol: 'T bow', meaning: 'in the rode at the bow', value: lying.atBow_N, unit: 'N' },
          { symbol: 'T anchor', meaning: 'at the anchor', value: lying.atAnchor_N, unit: 'N' },
          { symbol: 'grounded', meaning: 'left lying on the seabed', value: lying.grounded_m, unit: 'm' },
          {
            symbol: 'R',
            meaning: 'circle to the stern at low water, with this load',
            value: circle.lying_m,
            unit: 'm',
          },
          { symbol: 'R taut', meaning: 'the same with the rode drawn straight', value: circle.taut_m, unit: 'm' },
          lifts_N === null
            ? {
                symbol: 'F lifts',
                meaning: `load that pulls more than ${given.limit}° up`,
                value: roped ? 'none that new rope bears' : 'none up to 100 kN',
                unit: '',
              }
            : { symbol: 'F lifts', meaning: `load that pulls more than ${given.limit}° up`, value: lifts_N, unit: 'N' },
          carried_N === null
            ? {
                symbol: 'F carried',
                meaning: 'when a sea carries her back',
                value: past,
                unit: '',
              }
            : { symbol: 'F carried', meaning: 'when a sea carries her back', value: carried_N, unit: 'N' },
          {
            symbol: 'verdict',
            meaning: `against ${given.limit}°`,
            value: lying.angle_deg <= given.limit ? 'within it' : 'steeper than that',
            unit: '',
          },
        ],
        working: workingOf(pieces, high_m, lying),
        ...shown(given),
      };
    },
  });
}

export function rodeToVeerQuestion() {
  return question({
    id: 'loads.rode-to-veer',
    title: 'How much rode is to be veered?',
    fields: { ...rodeFields(), boat: boatField(), limit: limitField() },
    conflict: rodeFault,
    answer: (given): Answer => {
      const pieces = piecesOf(given);
      const { high_m, low_m } = heightsOf(given);
      const veer = rodeToVeer({ pieces, load_N: given.load, height_m: high_m }, given.limit);
      if (veer.kind === 'too short' || veer.kind === 'floats') return floats(given);
      const { out, lying } = veer;
      const lowWater = { ...out, height_m: low_m };
      const atLow = rodeLying(lowWater);
      if (atLow.kind !== 'lies') return floats(given);
      const circle = swingingCircle(lowWater, atLow, given.boat);
      const results = [
        {
          symbol: 'scope',
          meaning: 'rode over height of the bow at high water',
          value: lengthOf(out.pieces) / high_m,
          unit: '',
        },
        { symbol: 'α', meaning: 'the pull at the anchor above level', value: lying.angle_deg, unit: '°' },
        { symbol: 'T bow', meaning: 'in the rode at the bow', value: lying.atBow_N, unit: 'N' },
        { symbol: 'R', meaning: 'circle to the stern at low water, with this load', value: circle.lying_m, unit: 'm' },
        { symbol: 'R taut', meaning: 'the same with the rode drawn straight', value: circle.taut_m, unit: 'm' },
      ];
      const all = {
        working: [
          ...workingOf(out.pieces, high_m, lying),
          {
            symbol: 'α limit',
            meaning: 'as steep as the pull may be',
            value: given.limit,
            unit: '°',
            formula: 'given, or as most writers say',
          },
        ],
        ...shown(given),
      };
      if (veer.kind === 'not enough')
        return {
          kind: 'truth',
          statement: 'There is not enough rode on board for that',
          because:
            veer.wanted_m === null
              ? `no length up to 1000 m keeps the pull within ${given.limit}°`
              : `it takes ${Math.ceil(veer.wanted_m)} m, and there is ${Math.round(lengthOf(pieces) * 10) / 10} m`,
          results: [
            ...results,
            veer.wanted_m === null
              ? { symbol: 'L wanted', meaning: 'it takes', value: 'more than 1000 m', unit: '' }
              : { symbol: 'L wanted', meaning: 'it takes', value: veer.wanted_m, unit: 'm' },
          ],
          ...all,
        };
      return {
        kind: 'found',
        results: [
          { symbol: 'L', meaning: 'to veer, from the anchor to the bow', value: veer.length_m, unit: 'm' },
          ...results,
        ],
        ...all,
      };
    },
  });
}

function workingOf(pieces: readonly RodePiece[], height_m: number, lying: RodeLying): readonly WorkingLine[] {
  return [
    {
      symbol: 'h',
      meaning: 'from the seabed to the bow at high water',
      value: height_m,
      unit: 'm',
      formula: 'depth + rise + bow',
    },
    ...pieces.flatMap(({ length_m, weight_N_per_m, stretch_per_N }, n): WorkingLine[] => {
      const which = stretch_per_N === 0 ? 'chain' : 'rope';
      return [
        { symbol: `L ${which}`, meaning: 'of it out', value: length_m, unit: 'm', formula: 'at rest' },
        {
          symbol: `w ${which}`,
          meaning: weight_N_per_m < 0 ? 'a metre under water: it floats' : 'a metre under water',
          value: weight_N_per_m,
          unit: 'N/m',
          formula: 'm·g·(1 − ρ water/ρ)',
        },
        {
          symbol: `T above the ${which}`,
          meaning: 'the pull at its upper end',
          value: lying.atEnds_N[n]!,
          unit: 'N',
          formula: '√(H² + V²)',
        },
      ];
    }),
    { symbol: 'stretch', meaning: 'longer than at rest', value: lying.stretched_m, unit: 'm', formula: 'Σ T·c·l' },
    {
      symbol: 'reach',
      meaning: 'level from anchor to bow',
      value: lying.reach_m,
      unit: 'm',
      formula: 'H/w·(asinh V₂/H − asinh V₁/H) + cHl',
    },
  ];
}

function shown({ chain, rope }: { readonly chain: string; readonly rope: 'none' | keyof typeof rodeFibres }) {
  return {
    sources: [
      sources.catenary,
      sources.method,
      sources.lead,
      ...(chain === 'none' ? [] : [sources.chain, sources.steel]),
      ...(rope === 'none' ? [] : [sources.fibres, rope === 'nylon' ? sources.nylon : sources.stretch]),
    ],
    limits: [
      ...groundLimits,
      ...(rope === 'none'
        ? []
        : [
            'Rope is taken to stretch in proportion to its pull, as new rope does about its working load; old rope gives less and pulls harder.',
          ]),
    ],
    cautions: [groundCautions.hands, groundCautions.watch, cautions.recoil, cautions.guidance],
  };
}

function floats(given: { readonly chain: string; readonly rope: 'none' | keyof typeof rodeFibres }): Answer {
  return {
    kind: 'truth',
    statement: 'The rope floats up to the surface at so light a pull',
    because: 'it is lighter than water: slack, it lies on top where a propeller or another boat can cut it',
    results: [{ symbol: 'α', meaning: 'the pull at the anchor', value: 'not known while it floats', unit: '' }],
    working: [],
    ...shown(given),
  };
}
