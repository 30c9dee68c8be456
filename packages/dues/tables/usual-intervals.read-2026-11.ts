/**
 * Usual intervals of upkeep on a small sailing boat: how long between times, or how much may be gone.
 * Source: usual-intervals.read-2026-11.source.md.
 */
export interface UsualRow {
  readonly id: string;
  readonly group: string;
  readonly title: string;
  readonly low: number;
  readonly high: number;
  readonly unit: 'days' | 'weeks' | 'months' | 'years' | '%';
  /** or this many hours of the engine, whichever comes first; null: not by hours */
  readonly engine_h: number | null;
  readonly seen: 'read' | 'read second-hand' | 'recalled' | 'common practice';
  readonly source: string;
  /** the recipe that answers it; null: none */
  readonly recipe: string | null;
  readonly note: string;
}

// biome-ignore format: one printed line, one line here
export const usualRows = [
  { id: 'flares-us', group: 'safety gear', title: 'flares, from the day they were made, by the rule of the United States', low: 42, high: 42, unit: 'months', engine_h: null, seen: 'read', source: '46 CFR 160.036-5(b), US Coast Guard', recipe: 'flares', note: 'At most. The date printed on the flare wins.' },
  { id: 'flares', group: 'safety gear', title: 'flares, from the day they were made, elsewhere', low: 36, high: 48, unit: 'months', engine_h: null, seen: 'common practice', source: 'usually three years, printed on the flare', recipe: 'flares', note: 'The date printed on the flare wins.' },
  { id: 'extinguisher-throwaway', group: 'safety gear', title: 'throw-away extinguisher, from the year it was made', low: 12, high: 12, unit: 'years', engine_h: null, seen: 'read', source: 'US Coast Guard ACN 002/22', recipe: 'extinguisher', note: 'To 31 December of its twelfth year; sooner once used or its gauge is low.' },
  { id: 'extinguisher-look', group: 'safety gear', title: 'extinguisher: gauge, seal, hose and weight', low: 1, high: 1, unit: 'months', engine_h: null, seen: 'read', source: 'a boating course on keeping extinguishers', recipe: 'extinguisher', note: '' },
  { id: 'extinguisher-service', group: 'safety gear', title: 'refillable powder extinguisher: service and test', low: 1, high: 5, unit: 'years', engine_h: null, seen: 'read second-hand', source: 'US Coast Guard answers, yearly by a technician; BS 5306-3, the five years as recalled', recipe: 'extinguisher', note: 'By a technician.' },
  { id: 'lifejacket-cylinder', group: 'safety gear', title: 'lifejacket: cylinder tight', low: 1, high: 1, unit: 'months', engine_h: null, seen: 'read second-hand', source: 'notes on safety gear', recipe: 'lifejacket', note: '' },
  { id: 'lifejacket-corrosion', group: 'safety gear', title: 'lifejacket: cylinder, webbing and stitching', low: 3, high: 3, unit: 'months', engine_h: null, seen: 'read second-hand', source: 'notes on safety gear', recipe: 'lifejacket', note: '' },
  { id: 'lifejacket-inflate', group: 'safety gear', title: 'lifejacket: inflate by hand pump and leave a day', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'read second-hand', source: 'notes on safety gear; a sea-angling paper of April 2019', recipe: 'lifejacket', note: 'Each winter.' },
  { id: 'lifejacket-service', group: 'safety gear', title: 'lifejacket: full service', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'read second-hand', source: 'Royal Yachting Association on looking after a lifejacket, from MCA notes', recipe: 'lifejacket', note: 'Makers mostly say yearly.' },
  { id: 'lifejacket-capsule', group: 'safety gear', title: 'lifejacket: dissolving bobbin or capsule', low: 24, high: 36, unit: 'months', engine_h: null, seen: 'common practice', source: 'the printed date', recipe: 'lifejacket', note: 'The printed date wins.' },
  { id: 'lifejacket-firing-head', group: 'safety gear', title: 'lifejacket: hydrostatic firing head', low: 36, high: 60, unit: 'months', engine_h: null, seen: 'common practice', source: 'the printed date', recipe: 'lifejacket', note: 'The printed date wins.' },
  { id: 'lifejacket-life', group: 'safety gear', title: 'lifejacket, inflatable: its whole life', low: 10, high: 10, unit: 'years', engine_h: null, seen: 'common practice', source: 'trade practice', recipe: 'lifejacket', note: '' },
  { id: 'lifejacket-look', group: 'safety gear', title: 'lifejacket: look it over, on small craft at work', low: 1, high: 1, unit: 'weeks', engine_h: null, seen: 'read second-hand', source: 'Royal Yachting Association on MCA MGN 553', recipe: 'lifejacket', note: 'Private owners: before each trip.' },
  { id: 'harness', group: 'safety gear', title: 'harnesses and tethers: look them over', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'trade practice', recipe: 'harness-lines', note: 'Replaced at about ten years, or after a fall.' },
  { id: 'first-aid', group: 'safety gear', title: 'first-aid kit: what is in it', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'trade practice', recipe: 'first-aid', note: '' },
  { id: 'beacon-battery', group: 'safety gear', title: 'battery of a personal or ship’s beacon', low: 5, high: 7, unit: 'years', engine_h: null, seen: 'common practice', source: 'the printed date', recipe: null, note: 'The printed date wins. Changed by the maker’s agent.' },
  { id: 'gas-hose', group: 'safety gear', title: 'gas hose, from the date on it', low: 5, high: 5, unit: 'years', engine_h: null, seen: 'common practice', source: 'BS 3212 and EN 16436, custom', recipe: 'stove-check', note: 'Some rules give ten years; the regulator ten. Gas work is a fitter’s.' },
  { id: 'gas-leak', group: 'safety gear', title: 'gas: bubble or pressure test', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'practice of ISO 10239', recipe: 'stove-check', note: 'Gas work is a fitter’s.' },
  { id: 'bilge-pump', group: 'safety gear', title: 'bilge pump: run it and clear its strum box', low: 1, high: 1, unit: 'months', engine_h: null, seen: 'common practice', source: 'seamanship', recipe: null, note: '' },
  { id: 'bilge-pump-diaphragm', group: 'safety gear', title: 'hand bilge pump: its diaphragm and valves', low: 24, high: 24, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: null, note: '' },
  { id: 'rig-look', group: 'rig', title: 'standing rigging: look all over it', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'rig-look-over', note: 'With the mast down. A trailed boat can do it each time she is rigged.' },
  { id: 'rig-renew', group: 'rig', title: 'standing rigging of 1x19 stainless: renew', low: 8, high: 15, unit: 'years', engine_h: null, seen: 'common practice', source: 'insurers mostly ask about ten', recipe: 'replace-shroud', note: '' },
  { id: 'rig-pins', group: 'rig', title: 'split pins and their tape', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'rig-look-over', note: '' },
  { id: 'rig-terminals', group: 'rig', title: 'swages and toggles: dye or lens', low: 12, high: 36, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'rig-look-over', note: '' },
  { id: 'chainplates', group: 'rig', title: 'chainplates: draw a bolt and look', low: 5, high: 10, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'rebed-shroud-plate', note: '' },
  { id: 'running-rigging', group: 'rig', title: 'halyards and sheets: turn end for end or renew', low: 3, high: 8, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'reeve-halyard', note: '' },
  { id: 'rope-wash', group: 'rig', title: 'ropes: wash', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'wash-ropes', note: '' },
  { id: 'winch', group: 'rig', title: 'winches: strip and grease lightly', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'strip-winch', note: '' },
  { id: 'blocks', group: 'rig', title: 'blocks: rinse and lubricate dry', low: 6, high: 6, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'rinse-blocks', note: '' },
  { id: 'sails', group: 'rig', title: 'sails: wash, and look over their stitching', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'wash-sails', note: '' },
  { id: 'board-pennant-look', group: 'board and rudder', title: 'lifting line or wire of the board: look it over', low: 6, high: 6, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'board-wire', note: '' },
  { id: 'board-pennant', group: 'board and rudder', title: 'lifting line of the board, of fibre: renew', low: 2, high: 4, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'board-wire', note: '' },
  { id: 'board-wire', group: 'board and rudder', title: 'lifting wire of the board: renew', low: 3, high: 6, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'board-wire', note: '' },
  { id: 'board-pivot', group: 'board and rudder', title: 'pivot pin, its bush and seal: draw and measure', low: 2, high: 4, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'board-pivot', note: '' },
  { id: 'board-case', group: 'board and rudder', title: 'board case and its gasket', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'slot-gasket', note: '' },
  { id: 'rudder', group: 'board and rudder', title: 'pintles, gudgeons and play of the stock', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'rudder-pintles', note: '' },
  { id: 'lifting-gear', group: 'board and rudder', title: 'shackles and slings she is lifted by', low: 6, high: 6, unit: 'months', engine_h: null, seen: 'read second-hand', source: 'a paper on the thorough examination of lifting gear', recipe: null, note: '' },
  { id: 'rode', group: 'ground tackle', title: 'chain and rope: range on deck, look, turn end for end', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'range-the-rode', note: '' },
  { id: 'anchor-shackle', group: 'ground tackle', title: 'anchor shackle: mouse it, look for wear', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'anchor-shackle', note: '' },
  { id: 'chain-wear', group: 'ground tackle', title: 'chain: scrap it at this loss of its diameter', low: 8, high: 10, unit: '%', engine_h: null, seen: 'read second-hand', source: 'a paper on the examination of lifting gear, 8 % for shackles', recipe: 'range-the-rode', note: '10 % is the custom for chain.' },
  { id: 'chain-galvanise', group: 'ground tackle', title: 'chain: galvanise again', low: 3, high: 7, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'range-the-rode', note: '' },
  { id: 'mooring', group: 'ground tackle', title: 'mooring: lift its ground gear', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom of harbours', recipe: null, note: '' },
  { id: 'mooring-lines', group: 'ground tackle', title: 'mooring lines: renew', low: 4, high: 8, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'whip-rope-ends', note: '' },
  { id: 'antifouling', group: 'hull and deck', title: 'antifouling, on a boat kept afloat', low: 12, high: 24, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'antifouling', note: 'A trailed boat has none, or a hard coat.' },
  { id: 'anode-look', group: 'hull and deck', title: 'anodes: look', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: null, note: '' },
  { id: 'anode', group: 'hull and deck', title: 'anodes: renew when so much is gone', low: 50, high: 50, unit: '%', engine_h: null, seen: 'common practice', source: 'custom', recipe: null, note: '' },
  { id: 'polish', group: 'hull and deck', title: 'gelcoat: polish and wax', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'polish-hull', note: '' },
  { id: 'varnish', group: 'hull and deck', title: 'varnish: coats to keep it up', low: 6, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'varnish-maintenance', note: '' },
  { id: 'rebed', group: 'hull and deck', title: 'deck fittings: rebed', low: 8, high: 15, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'rebed-deck-fitting', note: '' },
  { id: 'seacock', group: 'hull and deck', title: 'seacocks: work them', low: 1, high: 1, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'seacock', note: '' },
  { id: 'brass-through-hull', group: 'hull and deck', title: 'through-hulls of plain brass: renew', low: 5, high: 5, unit: 'years', engine_h: null, seen: 'recalled', source: 'EN ISO 9093-1 asks no more than five years of them', recipe: 'through-hull', note: '' },
  { id: 'hoses', group: 'hull and deck', title: 'hoses and their clips', low: 5, high: 10, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'through-hull', note: '' },
  { id: 'window-seals', group: 'hull and deck', title: 'window seals', low: 8, high: 15, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'window-seal', note: '' },
  { id: 'battery-volts', group: 'power and engine', title: 'battery: rested volts', low: 1, high: 1, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: null, note: '' },
  { id: 'battery-acid', group: 'power and engine', title: 'battery in service: strength of its acid', low: 1, high: 1, unit: 'weeks', engine_h: null, seen: 'read', source: 'US Army TM 5-1185', recipe: null, note: '' },
  { id: 'battery-kept-wet', group: 'power and engine', title: 'flooded battery laid by: charge it', low: 30, high: 30, unit: 'days', engine_h: null, seen: 'read', source: 'US Army TM 5-1185', recipe: null, note: '' },
  { id: 'battery-kept-sealed', group: 'power and engine', title: 'AGM or gel battery laid by: charge it', low: 3, high: 6, unit: 'months', engine_h: null, seen: 'recalled', source: 'data sheets', recipe: null, note: '' },
  { id: 'battery-life-sealed', group: 'power and engine', title: 'small AGM or gel battery: its whole life', low: 3, high: 7, unit: 'years', engine_h: null, seen: 'recalled', source: 'data sheets', recipe: 'battery-replace', note: '' },
  { id: 'battery-terminals', group: 'power and engine', title: 'battery terminals: clean and grease', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'battery-terminals', note: '' },
  { id: 'panel', group: 'power and engine', title: 'solar panel: wipe it, look at lead and gland', low: 1, high: 1, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: null, note: '' },
  { id: 'outboard', group: 'power and engine', title: 'outboard: service', low: 12, high: 12, unit: 'months', engine_h: 100, seen: 'common practice', source: 'makers’ handbooks', recipe: 'engine-service', note: 'The maker’s handbook wins.' },
  { id: 'impeller', group: 'power and engine', title: 'outboard: water-pump impeller', low: 12, high: 24, unit: 'months', engine_h: null, seen: 'common practice', source: 'makers’ handbooks', recipe: 'impeller', note: 'The maker’s handbook wins.' },
  { id: 'gear-oil', group: 'power and engine', title: 'outboard: gear oil', low: 12, high: 12, unit: 'months', engine_h: 100, seen: 'common practice', source: 'makers’ handbooks', recipe: 'gear-oil', note: 'The maker’s handbook wins.' },
  { id: 'petrol', group: 'power and engine', title: 'petrol kept with nothing added', low: 1, high: 3, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'fuel-system', note: '' },
  { id: 'wheel-bearings', group: 'trailer', title: 'wheel bearings: clean and grease', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'wheel-bearings', note: 'In salt twice a season.' },
  { id: 'trailer-brakes', group: 'trailer', title: 'trailer brakes and breakaway', low: 12, high: 12, unit: 'months', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'trailer-brakes', note: '' },
  { id: 'trailer-tyres', group: 'trailer', title: 'trailer tyres, by age', low: 5, high: 7, unit: 'years', engine_h: null, seen: 'read second-hand', source: 'an association of tyre makers, quoted', recipe: 'trailer-tyres', note: 'From the week and year on the wall. Sooner by tread or cracks.' },
  { id: 'lashing-straps', group: 'trailer', title: 'lashing straps', low: 3, high: 5, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: null, note: '' },
  { id: 'winch-strap', group: 'trailer', title: 'trailer’s winch strap or wire', low: 2, high: 4, unit: 'years', engine_h: null, seen: 'common practice', source: 'custom', recipe: 'winch-strap', note: '' },
] as const satisfies readonly UsualRow[];
