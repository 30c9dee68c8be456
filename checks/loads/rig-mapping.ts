import { type Asking, type FamilyMapping, numberIn, type UnaskedFamily } from '../mapping.ts';
import type { OutsideRow } from '../row.ts';

type Inputs = Readonly<Record<string, unknown>>;

/** A stay of the rows: 1x19 of 4 mm, which the folding rule takes for any. */
const stretched = (pick: string, fields: Readonly<Record<string, string | number>> = { stretch: 1 }): Asking => ({
  question: 'loads.stay-by-stretch',
  fields: { laid: '1x19', size: 4, ...fields },
  pick,
});

/** The rows' mast: raised over a pole that stands on its hinge, the bow fitting at the hinge's height. */
const raised =
  (pick: string, from = 0) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.mast-raising',
    fields: {
      mass: numberIn(row, inputs, 'mast_kg'),
      'mass-at': numberIn(row, inputs, 'cg_m'),
      'line-at': numberIn(row, inputs, 'attach_m'),
      by: 'pole',
      pole: numberIn(row, inputs, 'pole_m'),
      'bow-ahead': numberIn(row, inputs, 'bow_m'),
      from,
    },
    pick,
  });

/** The textbook's strut, one metre long, its line to the far side. */
const strut =
  (pick: string) =>
  (row: OutsideRow, inputs: Inputs): Asking => {
    const g = numberIn(row, inputs, 'g');
    const [up, cable] = [numberIn(row, inputs, 'strut_deg'), numberIn(row, inputs, 'cable_deg')];
    return {
      question: 'loads.hinged-spar',
      fields: {
        weight: g * numberIn(row, inputs, 'strut_kg'),
        'weight-at': 0.5,
        load: g * numberIn(row, inputs, 'load_kg'),
        'load-at': 1,
        'line-at': 1,
        'spar-angle': up,
        'line-angle': up - cable,
      },
      pick,
    };
  };

/** The textbook's mast under wind, whose force and height it prints; the shroud goes from its top. */
const oneShroud =
  (pick: string) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.shroud',
    fields: {
      force: '735.349 kgf',
      'force-at': 4.35123,
      'shroud-at': numberIn(row, inputs, 'mast_m'),
      out: numberIn(row, inputs, 'chainplate_offset_m'),
    },
    pick,
  });

const righting =
  (pick: string) =>
  (row: OutsideRow, inputs: Inputs): Asking => ({
    question: 'loads.righting-moment',
    fields: {
      moment: `${numberIn(row, inputs, 'RM30_lbft')} lbf·ft`,
      'half-beam': `${numberIn(row, inputs, 'half_beam_ft')} ft`,
    },
    pick,
  });

const outside = (family: string, asking: FamilyMapping['asking']): FamilyMapping => ({
  family: `loads.${family}`,
  kind: 'outside answer',
  asking,
});
const byRule = (row: OutsideRow, inputs: Inputs): Asking =>
  stretched('share by rule', {
    stretch: numberIn(row, inputs, 'stretch_mm'),
    measured: numberIn(row, inputs, 'length_mm') / 1000,
  });

export const rigMappings: readonly FamilyMapping[] = [
  { family: 'loads.rig.stretch.1', kind: 'transcription', asking: byRule },
  { family: 'loads.rig.stretch.5', kind: 'transcription', asking: byRule },
  outside('rig.stretch.vigor', (row, inputs) => ({
    question: 'loads.stay-stretch',
    fields: { laid: '1x19', size: 4, share: 50, measured: `${numberIn(row, inputs, 'length_ft')} ft` },
    pick: 'δ by rule',
  })),
  outside('rig.check', () => ({
    question: 'loads.stay-stretch',
    fields: { laid: '1x19', size: 4, share: 5 },
    pick: 'δ by modulus',
  })),
  { family: 'loads.rig.caps', kind: 'transcription', asking: () => stretched('usual caps') },
  { family: 'loads.rig.caps.grp', kind: 'transcription', asking: () => stretched('usual light') },
  { family: 'loads.rig.E.gross', kind: 'transcription', asking: () => stretched('E') },
  outside('mast.moment', raised('M')),
  outside('mast.tackle', raised('T start')),
  outside('mast.stay', raised('S start')),
  outside('mast.pole', raised('C start')),
  outside('mast.45', raised('M', 45)),
  outside('mast.lever', (row, inputs) => ({
    question: 'loads.hinged-spar',
    fields: {
      weight: `${numberIn(row, inputs, 'mast_lb')} lbf`,
      'weight-at': `${numberIn(row, inputs, 'cg_ft')} ft`,
      'line-at': `${numberIn(row, inputs, 'pull_ft')} ft`,
      'spar-angle': 0,
    },
    pick: 'T',
  })),
  outside('statics.strut.T', strut('T')),
  outside('statics.strut.Fx', strut('Fx')),
  outside('statics.boom.guy', (row, inputs) => ({
    question: 'loads.hinged-spar',
    fields: {
      weight: numberIn(row, inputs, 'boom_N'),
      'weight-at': numberIn(row, inputs, 'cg_frac'),
      load: numberIn(row, inputs, 'load_N'),
      'load-at': 1,
      'line-at': 1,
      'spar-angle': numberIn(row, inputs, 'deg'),
      // its guy is level
      'line-angle': numberIn(row, inputs, 'deg'),
    },
    pick: 'T',
  })),
  outside('rig.mast.cc.T', oneShroud('T')),
  outside('rig.mast.cc.Hf', oneShroud('H')),
  outside('rig.rm.comp', righting('C')),
  outside('rig.rm.shroud', righting('S')),
  outside('rig.rm.factor', () => ({
    question: 'loads.righting-moment',
    fields: { moment: 1000, 'half-beam': 1 },
    pick: 'k',
  })),
];

export const rigUnasked: readonly UnaskedFamily[] = [
  {
    family: 'loads.rig.E.gfactor',
    because: 'a wire maker’s stretch factor: 5 % from the modulus we take, and its source carries a trade name',
  },
  { family: 'loads.rig.gfactor', because: 'the same maker’s factors, of two wires; ours are recalled moduli' },
  {
    family: 'loads.rig.mast.cc',
    because: 'the textbook’s own wind load, summed up the mast; we take the force and its height',
  },
  { family: 'loads.rig.rm.curve', because: 'a curve for keel boats that starts far above a trailer boat' },
];
