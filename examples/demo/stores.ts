/** What the invented boat's keeper has: where things are kept, tools, and stores with their amounts and dates. */
import type { Book, Day, StoreRecord } from '#boat-book';

const place = (name: string, within: string | null = null, aboard = false) => ({ name, within, aboard });

export const demoStowages: Book['stowages'] = {
  'port-locker': place('port locker', null, true),
  'forward-locker': place('forward locker', null, true),
  shed: place('shed'),
  'shed-shelf': place('shelf', 'shed'),
  'bench-drawer-1': place('bench drawer 1'),
  'bench-drawer-2': place('bench drawer 2'),
  'paint-box': place('paint box'),
  'rigging-box': place('rigging box'),
  'electrics-box': place('electrics box'),
  'fastenings-tray': place('fastenings tray'),
  loft: place('loft'),
};

export const demoTools: Book['tools'] = {
  drill: { name: 'cordless drill', count: 1, keptAt: '', stowage: 'bench-drawer-2' },
  sander: { name: 'sander and vacuum', count: 1, keptAt: '', stowage: 'shed-shelf' },
  'seal-gun': { name: 'sealant gun', count: 1, keptAt: '', stowage: 'paint-box' },
  crimper: { name: 'crimping pliers', count: 1, keptAt: '', stowage: 'electrics-box' },
  meter: { name: 'meter', count: 1, keptAt: '', stowage: 'electrics-box' },
  'swage-tool': { name: 'hand swager', count: 1, keptAt: '', stowage: 'rigging-box' },
  gauge: { name: 'rig tension gauge', count: 1, keptAt: '', stowage: 'rigging-box' },
  jack: { name: 'trolley jack', count: 1, keptAt: 'floor', stowage: 'shed' },
  sockets: { name: 'socket set', count: 1, keptAt: '', stowage: 'bench-drawer-1' },
  hose: { name: 'hose', count: 1, keptAt: 'on the wall', stowage: 'shed' },
};

const here = (name: string, stowage: string, parts: Partial<StoreRecord> = {}): StoreRecord => ({
  name,
  keptAt: '',
  stowage,
  onHand: true,
  expected: null,
  lead_days: null,
  note: '',
  ...parts,
});

export const demoStores = (day: (n: number) => Day): Book['stores'] => ({
  'epoxy-kit': here('Epoxy, fast hardener', 'paint-box', {
    amount: 500,
    unit: 'g',
    opened: day(-60),
    pack: { word: 'kit', holds: 500 },
    price: 38,
    from: 'the boatyard shop',
  }),
  filler: here('Filler powder for epoxy', 'paint-box'),
  sealant: here('Polyurethane sealant', 'paint-box', {
    amount: 290,
    unit: 'ml',
    got: day(-40),
    pack: { word: 'tube', holds: 290 },
    price: 24,
    from: 'the boatyard shop',
  }),
  'bolts-m8': here('M8 × 60 bolts and nuts', 'fastenings-tray', { amount: 4, unit: '' }),
  sheave: here('Halyard sheave 45 mm with pin', 'rigging-box'),
  'mast-cable': here('Tinned twin cable', 'electrics-box', { amount: 10, unit: 'm' }),
  terminals: here('Sealed crimp terminals', 'electrics-box', { amount: 40, unit: '' }),
  fuse: here('Battery fuse 60 A and holder', 'electrics-box'),
  'seizing-wire': here('Seizing wire', 'rigging-box', { amount: 12, unit: 'm' }),
  'anchor-shackle-new': here('Shackle 8 mm, galvanised', 'rigging-box'),
  thimble: here('Thimble for 12 mm rope', 'rigging-box'),
  grease: here('Wheel bearing grease', 'shed-shelf'),
  'split-pins': here('Split pins', 'fastenings-tray', { amount: 2, unit: '' }),
  varnish: here('Two-pot varnish', 'paint-box', { amount: 375, unit: 'ml', expires: day(240) }),
  'reef-cord': {
    name: '6 mm cord',
    keptAt: '',
    stowage: 'rigging-box',
    onHand: false,
    expected: null,
    lead_days: 1,
    note: '',
    unit: 'm',
    price: 1.8,
    from: 'the shop by the road',
  },
  'grip-paint': here('Deck paint with grit, 1 l', 'paint-box'),
  lining: here('Foam-backed lining, 2 m', 'loft'),
  'board-wire-new': {
    name: '4 mm lifting wire, 3 m, with ferrules',
    keptAt: '',
    onHand: false,
    expected: day(2),
    lead_days: null,
    note: 'Ordered by post.',
  },
  'hatch-seal': {
    name: 'Forehatch seal, 1.9 m',
    keptAt: '',
    onHand: false,
    expected: null,
    lead_days: null,
    note: 'Not ordered yet.',
  },
  'window-gasket': {
    name: 'Window gasket, 3 m',
    keptAt: '',
    onHand: false,
    expected: day(13),
    lead_days: null,
    note: 'Being cut to size.',
  },
  // nothing planned wants it: it shows what a date gone by looks like
  'contact-adhesive': here('Contact adhesive', 'paint-box', { amount: 0.2, unit: 'l', opened: day(-427) }),
});
