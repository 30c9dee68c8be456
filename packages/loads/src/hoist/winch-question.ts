import { inBase, inUnit } from '#units';
import { assuming, force, length, question } from '#working';
import { cautions } from '../cautions.ts';
import { handLimit_N } from './board-hoist.ts';
import { drumField, gearField, handleField, lossField, sources, wireField } from './hoist-fields.ts';
import { bareDrumRatio, powerRatio, usualWinchLoss, wound } from './winch.ts';

export function winchQuestion() {
  return question({
    id: 'loads.winch',
    title: 'What does a small winch ask of the hand?',
    fields: {
      pull: assuming(force('N', 0, 20_000, 'pull on the wire'), inBase('force', 500, 'N'), '500 N', 'a middling board'),
      gear: gearField(),
      handle: handleField(),
      drum: drumField(),
      wire: wireField(),
      width: assuming(
        length('mm', 5, 300, 'drum between its cheeks'),
        inBase('length', 50, 'mm'),
        '50 mm',
        'a small winch',
      ),
      wound: assuming(
        length('m', 0, 50, 'wire on the drum'),
        inBase('length', 1, 'm'),
        '1 m',
        'most of the travel hauled',
      ),
      loss: lossField(usualWinchLoss),
    },
    answer: ({ pull, gear, handle, drum, wire, width, wound: onDrum, loss }) => {
      const winch = {
        gear,
        handle_mm: inUnit('length', handle, 'mm'),
        drum_mm: inUnit('length', drum, 'mm'),
        width_mm: inUnit('length', width, 'mm'),
        wire_mm: inUnit('length', wire, 'mm'),
        loss,
      };
      const { layer, turns } = wound(winch, onDrum);
      const ratio = powerRatio(winch, layer);
      const hoisting = pull / ratio / (1 - loss);
      return {
        kind: 'found',
        results: [
          { symbol: 'F hoisting', meaning: 'at the crank, to hoist', value: hoisting, unit: 'N' },
          { symbol: 'F holding', meaning: 'at the crank if the pawl is off', value: pull / ratio, unit: 'N' },
          {
            symbol: 'F lowering',
            meaning: 'at the crank, to let down slowly',
            value: (pull / ratio) * (1 - loss),
            unit: 'N',
          },
          {
            symbol: 'verdict',
            meaning: 'for one person, again and again',
            value: hoisting <= handLimit_N.crank ? 'within 120 N at a crank' : 'more than 120 N at a crank',
            unit: '',
          },
        ],
        working: [
          {
            symbol: 'layer',
            meaning: 'that the last of the wire lies in',
            value: layer,
            unit: '',
            formula: 'width ÷ wire to a layer',
          },
          {
            symbol: 'turns',
            meaning: 'of the drum to wind it',
            value: turns,
            unit: 'turns',
            formula: 'length ÷ circle of each layer',
          },
          {
            symbol: 'ratio',
            meaning: 'pull for each newton at the hand, nothing lost',
            value: ratio,
            unit: '',
            formula: 'gear·2·handle/(drum + (2·layer − 1)·wire)',
          },
          {
            symbol: 'ratio of the bare drum',
            meaning: 'as lectures and catalogues reckon it',
            value: bareDrumRatio(gear, winch.handle_mm, winch.drum_mm),
            unit: '',
            formula: 'gear·2·handle/drum',
          },
          { symbol: 'loss', meaning: 'share lost in the winch', value: loss, unit: '', formula: 'given' },
        ],
        sources: [sources.winch, sources.hand, sources.noBrake],
        limits: [
          'Wire laid side by side with nothing lost between turns; three turns stay on the drum and are not in the sum.',
        ],
        cautions: [cautions.under, cautions.slip, cautions.winch, cautions.persons, cautions.guidance],
      };
    },
  });
}
