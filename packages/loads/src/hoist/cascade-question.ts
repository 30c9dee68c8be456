import { question } from '#working';
import { cautions } from '../cautions.ts';
import { handLimit_N } from './board-hoist.ts';
import { bearingField, endField, fixedField, loadField, movingField, sources } from './hoist-fields.ts';
import { bearings, fallForce_N, type Handling, rove, type Tackle } from './tackle.ts';
import { reevingFault } from './tackle-questions.ts';

interface TwoGiven {
  readonly 'moving-sheaves': number;
  readonly 'fixed-sheaves': number;
  readonly 'end-at': 'moving' | 'fixed';
  readonly 'second-moving-sheaves': number;
  readonly 'second-fixed-sheaves': number;
  readonly 'second-end-at': 'moving' | 'fixed';
}
const reevings = (given: TwoGiven) =>
  [
    {
      movingSheaves: given['moving-sheaves'],
      fixedSheaves: given['fixed-sheaves'],
      endAt: given['end-at'],
    },
    {
      movingSheaves: given['second-moving-sheaves'],
      fixedSheaves: given['second-fixed-sheaves'],
      endAt: given['second-end-at'],
    },
  ] as const;

export function cascadeQuestion() {
  return question({
    id: 'loads.cascade',
    title: 'What does a tackle on the fall of another ask of the hand?',
    fields: {
      load: loadField(),
      'moving-sheaves': movingField(),
      'fixed-sheaves': fixedField(),
      'end-at': endField(),
      'second-moving-sheaves': movingField(),
      'second-fixed-sheaves': fixedField(),
      'second-end-at': endField(),
      bearing: bearingField('how the sheaves of both run'),
    },
    conflict: (given) => {
      const [first, second] = reevings(given);
      const fault = reevingFault(second);
      return reevingFault(first) ?? (fault && { ...fault, where: `second-${fault.where}` });
    },
    answer: ({ load, bearing, ...given }) => {
      const { factor } = bearings[bearing];
      const [first, second] = reevings(given).map((reeving): Tackle => {
        const way = rove(reeving);
        if (way.kind !== 'rove') throw new RangeError(way.wrong);
        return { parts: way.parts, sheaves: way.sheaves, factor };
      }) as [Tackle, Tackle];
      const between = (handling: Handling) => fallForce_N(load, first.parts, first.sheaves, factor, handling);
      const fall = (handling: Handling) =>
        fallForce_N(between(handling), second.parts, second.sheaves, factor, handling);
      const hoisting = fall('hoisting');
      const ratio = first.parts * second.parts;
      return {
        kind: 'found',
        results: [
          { symbol: 'F hoisting', meaning: 'on the second fall, to hoist', value: hoisting, unit: 'N' },
          { symbol: 'F holding', meaning: 'to hold, no friction counted', value: fall('holding'), unit: 'N' },
          { symbol: 'F lowering', meaning: 'to let down slowly', value: fall('lowering'), unit: 'N' },
          { symbol: 'cord', meaning: 'pulled for each metre of hoist', value: ratio, unit: 'm' },
          {
            symbol: 'room',
            meaning: 'that the second moving block needs for each metre of hoist',
            value: first.parts,
            unit: 'm',
          },
          {
            symbol: 'verdict',
            meaning: 'for one person, again and again',
            value: hoisting <= handLimit_N.pull ? 'within a pull of 200 N' : 'more than a pull of 200 N',
            unit: '',
          },
        ],
        working: [
          { symbol: 'N', meaning: 'parts of both, multiplied', value: ratio, unit: '', formula: 'N1·N2' },
          {
            symbol: 'F1',
            meaning: 'on the first fall, which the second works on',
            value: between('hoisting'),
            unit: 'N',
            formula: 'W·K^S·(K − 1)/(K^N − 1)',
          },
          { symbol: 'K', meaning: 'tension grows by, a sheave', value: factor, unit: '', formula: 'by bearing' },
          {
            symbol: 'η',
            meaning: 'share of the work that reaches the load',
            value: 1 / (ratio * fallShare(first, second)),
            unit: '',
            formula: 'W/(N·F), for any W',
          },
        ],
        sources: [sources.sheave, sources.parts, sources.hand, sources.noBrake],
        limits: [
          'Parts that run alongside each other. The second tackle has no more hoist than its blocks have room between them.',
        ],
        cautions: [cautions.under, cautions.slip, cautions.persons, cautions.guidance],
      };
    },
  });
}

/** Force on the second fall for one on the load, hoisting. */
const fallShare = (first: Tackle, second: Tackle): number =>
  fallForce_N(
    fallForce_N(1, first.parts, first.sheaves, first.factor, 'hoisting'),
    second.parts,
    second.sheaves,
    second.factor,
    'hoisting',
  );
