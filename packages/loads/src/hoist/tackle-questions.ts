import { inBase } from '#units';
import { assuming, count, force, number, type Question, question } from '#working';
import { cautions } from '../cautions.ts';
import { handLimit_N } from './board-hoist.ts';
import { bearingField, endField, fixedField, loadField, movingField, sources } from './hoist-fields.ts';
import { bearings, fallForce_N, type Reeving, rove, tackleEfficiency } from './tackle.ts';
import { tailForce_N, turnsToHold } from './turns-round-a-post.ts';

/** The questions about tackles and turns of rope. */
export function tackleQuestions(): readonly Question[] {
  return [tackleQuestion(), postQuestion()];
}

/** What is wrong with a reeving, where a question names it. */
export function reevingFault(reeving: Reeving) {
  const way = rove(reeving);
  return way.kind === 'rove' ? null : { where: 'moving-sheaves', wrong: way.wrong, right: way.right };
}

function tackleQuestion() {
  return question({
    id: 'loads.tackle',
    title: 'What does a tackle ask of the hand?',
    fields: {
      load: loadField(),
      'moving-sheaves': movingField(),
      'fixed-sheaves': fixedField(),
      'end-at': endField(),
      bearing: bearingField('how the sheaves run'),
      'turning-blocks': assuming(
        count(0, 6, 'blocks that only turn the fall'),
        0,
        '0',
        'the fall comes straight to hand',
      ),
    },
    conflict: ({ 'moving-sheaves': movingSheaves, 'fixed-sheaves': fixedSheaves, 'end-at': endAt }) =>
      reevingFault({ movingSheaves, fixedSheaves, endAt }),
    answer: ({ load, bearing, ...given }) => {
      const way = rove({
        movingSheaves: given['moving-sheaves'],
        fixedSheaves: given['fixed-sheaves'],
        endAt: given['end-at'],
      });
      if (way.kind !== 'rove') throw new RangeError(way.wrong);
      const { parts } = way;
      const sheaves = way.sheaves + given['turning-blocks'];
      const { factor } = bearings[bearing];
      const hoisting = fallForce_N(load, parts, sheaves, factor, 'hoisting');
      return {
        kind: 'found',
        results: [
          { symbol: 'F hoisting', meaning: 'on the fall, to hoist', value: hoisting, unit: 'N' },
          { symbol: 'F holding', meaning: 'to hold, no friction counted', value: load / parts, unit: 'N' },
          {
            symbol: 'F lowering',
            meaning: 'to let down slowly',
            value: fallForce_N(load, parts, sheaves, factor, 'lowering'),
            unit: 'N',
          },
          { symbol: 'cord', meaning: 'pulled for each metre of hoist', value: parts, unit: 'm' },
          {
            symbol: 'verdict',
            meaning: 'for one person, again and again',
            value: hoisting <= handLimit_N.pull ? 'within a pull of 200 N' : 'more than a pull of 200 N',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'N',
            meaning: 'parts at the moving block: the ideal advantage',
            value: parts,
            unit: '',
            formula: 'rope followed from its end',
          },
          {
            symbol: 'S',
            meaning: 'sheaves it runs over',
            value: sheaves,
            unit: '',
            formula: 'in the tackle and turning',
          },
          {
            symbol: 'from',
            meaning: 'the fall comes off the block that',
            value: way.pulledFrom === 'moving' ? 'moves' : 'stands',
            unit: '',
            formula: 'rope followed from its end',
          },
          { symbol: 'K', meaning: 'tension grows by, a sheave', value: factor, unit: '', formula: 'by bearing' },
          {
            symbol: 'η',
            meaning: 'share of the work that reaches the load',
            value: tackleEfficiency(parts, sheaves, factor),
            unit: '',
            formula: '(K^N − 1)/(K^S·N·(K − 1))',
          },
          {
            symbol: 'advantage',
            meaning: 'load for each newton of pull, hoisting',
            value: tackleEfficiency(parts, sheaves, factor) * parts,
            unit: '× pull',
            formula: 'η·N',
          },
          {
            symbol: 'F of the tenth',
            meaning: 'by the rule of a tenth a sheave, for comparison',
            value: (load * (1 + 0.1 * sheaves)) / parts,
            unit: 'N',
            formula: 'W·(1 + 0.1·S)/N',
          },
        ],
        sources: [sources.sheave, sources.parts, sources.tenth, sources.hand, sources.noBrake],
        limits: [
          'Parts that run alongside each other. Stiff rope on small sheaves, twisted parts and a fall led askew cost more.',
        ],
        cautions: [cautions.under, cautions.slip, cautions.persons, cautions.guidance],
      };
    },
  });
}

function postQuestion() {
  return question({
    id: 'loads.turns-round-a-post',
    title: 'What holds a rope that runs round a post?',
    fields: {
      pull: force('N', 0, 100_000, 'pull on the rope'),
      turns: number('', 0, 10, 'turns round it; three quarters of one is 0.75'),
      friction: assuming(
        number('', 0.01, 0.9, 'friction between rope and post, µ'),
        0.15,
        '0.15',
        'wet rope on smooth metal: our assumption, on the low side',
      ),
      tail: assuming(force('N', 1, 2000, 'what holds the tail'), inBase('force', 50, 'N'), '50 N', 'a light hand'),
    },
    answer: ({ pull, turns, friction, tail }) => {
      const least = tailForce_N(pull, friction, 2 * Math.PI * turns);
      return {
        kind: 'found',
        results: [
          { symbol: 'F', meaning: 'least on the tail that holds', value: least, unit: 'N' },
          {
            symbol: 'turns',
            meaning: 'that hold with that tail',
            value: Math.ceil(turnsToHold(pull, tail, friction) - 1e-9),
            unit: 'turns',
          },
        ],
        working: [
          { symbol: 'α', meaning: 'how far round', value: 2 * Math.PI * turns, unit: 'rad', formula: '2π·turns' },
          {
            symbol: 'ratio',
            meaning: 'pull for each newton of tail',
            value: Math.exp(friction * 2 * Math.PI * turns),
            unit: '',
            formula: 'e^(µα)',
          },
          { symbol: 'F', meaning: 'on the tail', value: least, unit: 'N', formula: 'T·e^(−µα)' },
        ],
        sources: [sources.rope],
        limits: ['Friction of a wet, worn or new rope differs by half: one turn more costs nothing.'],
        cautions: [cautions.slip, cautions.recoil],
      };
    },
  });
}
