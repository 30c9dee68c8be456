import type { Asking, FamilyMapping } from '../mapping.ts';
import type { RowKind } from '../row.ts';

const usual = (of: string): Asking => ({ question: 'dues.usual', fields: { of }, pick: 'every' });
const gone = (of: string): Asking => ({ question: 'dues.usual', fields: { of }, pick: 'gone' });
const atOnce = (seen: string): Asking => ({ question: 'dues.at-once', fields: { seen }, pick: 'when' });
const overhead = (rule: string, pick: string): Asking => ({
  question: 'dues.overhead-lines',
  fields: { rule },
  pick,
});

/** Rows of one figure: our table has it from the same sources. */
const printed: Readonly<Record<string, Asking>> = {
  'flare.us': usual('flares-us'),
  'ext.disposable': usual('extinguisher-throwaway'),
  'ext.disposable.day': { question: 'dues.throw-away-extinguisher', fields: { made: 2014 }, pick: 'rule' },
  'ext.check': usual('extinguisher-look'),
  'lj.cylinder': usual('lifejacket-cylinder'),
  'lj.corrosion': usual('lifejacket-corrosion'),
  'lj.inflate': usual('lifejacket-inflate'),
  'lj.service': usual('lifejacket-service'),
  'lj.life': usual('lifejacket-life'),
  'lj.visual': usual('lifejacket-look'),
  harness: usual('harness'),
  firstaid: usual('first-aid'),
  'gas.hose': usual('gas-hose'),
  'gas.leak': usual('gas-leak'),
  bilge: usual('bilge-pump'),
  'bilge.manual': usual('bilge-pump-diaphragm'),
  'rig.inspect': usual('rig-look'),
  'rig.strand': atOnce('broken-strand'),
  'rig.pins': usual('rig-pins'),
  'rig.wash': usual('rope-wash'),
  'rig.winch': usual('winch'),
  'rig.blocks': usual('blocks'),
  sails: usual('sails'),
  'cb.pennant': usual('board-pennant-look'),
  'cb.case': usual('board-case'),
  rudder: usual('rudder'),
  'lifting.accessories': usual('lifting-gear'),
  'anchor.rode': usual('rode'),
  'anchor.shackle': usual('anchor-shackle'),
  mooring: usual('mooring'),
  'anode.check': usual('anode-look'),
  'anode.replace': gone('anode'),
  polish: usual('polish'),
  skinfit: usual('seacock'),
  'skinfit.brass': usual('brass-through-hull'),
  'bat.voltage': usual('battery-volts'),
  'bat.sg': usual('battery-acid'),
  'bat.recharge.flooded': usual('battery-kept-wet'),
  'bat.terminals': usual('battery-terminals'),
  'panel.clean': usual('panel'),
  lights: atOnce('navigation-lights'),
  'ob.service': usual('outboard'),
  'ob.gearoil': usual('gear-oil'),
  'tr.bearing': usual('wheel-bearings'),
  'tr.brakes': usual('trailer-brakes'),
  'overhead.ni': overhead('northern-ireland', 'd'),
  'overhead.nz': overhead('new-zealand', 'd'),
  'overhead.look': overhead('largest', 'look'),
};

/** Rows with a band: what a keeper begins with lies in it. */
const bands: Readonly<Record<string, Asking>> = {
  'flare.eu': usual('flares'),
  'ext.service': usual('extinguisher-service'),
  'lj.bobbin': usual('lifejacket-capsule'),
  'lj.hydrostatic': usual('lifejacket-firing-head'),
  plb: usual('beacon-battery'),
  'rig.replace': usual('rig-renew'),
  'rig.terminals': usual('rig-terminals'),
  'rig.chainplates': usual('chainplates'),
  'rig.running': usual('running-rigging'),
  'cb.pennant.replace': usual('board-pennant'),
  'cb.wire.replace': usual('board-wire'),
  'cb.pivot': usual('board-pivot'),
  'chain.wear': gone('chain-wear'),
  'chain.galv': usual('chain-galvanise'),
  lines: usual('mooring-lines'),
  antifoul: usual('antifouling'),
  varnish: usual('varnish'),
  rebed: usual('rebed'),
  hoses: usual('hoses'),
  windows: usual('window-seals'),
  'bat.recharge.vrla': usual('battery-kept-sealed'),
  'bat.life.vrla': usual('battery-life-sealed'),
  'ob.impeller': usual('impeller'),
  fuel: usual('petrol'),
  'tr.tyres': usual('trailer-tyres'),
  'tr.straps': usual('lashing-straps'),
  'tr.winch': usual('winch-strap'),
};

const families = (asked: Readonly<Record<string, Asking>>, kind: RowKind): readonly FamilyMapping[] =>
  Object.entries(asked).map(([id, asking]) => ({ family: `upkeep.${id}`, kind, asking: () => asking }));

/** Rows about what falls due. */
export const upkeepMappings: readonly FamilyMapping[] = [
  ...families(printed, 'transcription'),
  ...families(bands, 'default in its band'),
];
