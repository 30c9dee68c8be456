import type { MarkedLine } from '../marked.ts';

export const lines: readonly MarkedLine[] = [
  [
    'rebed the port shroud plate mast down two hours gets worse every week',
    {
      what: 'rebed',
      zone: 'decks',
      fitting: 'plate-port',
      minutes: 120,
      setUps: { mast: 'down' },
      consequence: 'worsens',
    },
  ],
  ['tighten the tiller bolt five minutes', { what: 'tighten', zone: 'cockpit', fitting: 'tiller', minutes: 5 }],
  ['bilge pump wont prime, take apart & clean, 45mins', { what: 'clean', zone: 'cabin', fitting: 'pump', minutes: 45 }],
  [
    'varnish rubbing strake 2h dry >12°C',
    { what: 'varnish', zone: 'topsides', minutes: 120, conditions: { dry: true, air_min_C: 12 } },
  ],
  [
    'new washers for forehatch hinge 20 min comfort',
    { what: 'washers', zone: 'foredeck', minutes: 20, consequence: 'comfort' },
  ],
  [
    'I think somebody ought to hold the other end while I lower the mast to look at the forestay fitting, needs two of us, an hour',
    { what: 'forestay fitting', zone: 'bow', fitting: 'forestay', minutes: 60, hands: 2, setUps: { mast: 'down' } },
  ],
  [
    'must not forget to repack the port hub before the muster, an hour and a half',
    { what: 'repack', zone: 'trailer', fitting: 'hub', minutes: 90, outing: 'muster' },
  ],
  [
    'Please replace the board lifting wire; board down, boat propped, two people, 2 hrs; danger if it parts.',
    {
      what: 'lifting wire',
      zone: 'case',
      fitting: 'wire',
      minutes: 120,
      hands: 2,
      setUps: { board: 'down', boat: 'propped' },
      consequence: 'danger',
    },
  ],
  [
    'Fill the screw holes in the coaming, above ten degrees, wind under 15 knots, 40 minutes',
    { what: 'screw holes', zone: 'decks', minutes: 40, conditions: { air_min_C: 10, wind_max_kn: 15 } },
  ],
  [
    'Check all split pins aloft with the mast down: quarter of an hour, before the spring shakedown',
    { what: 'split pins', zone: 'rig', minutes: 15, setUps: { mast: 'down' }, outing: 'spring' },
  ],
  [
    'temporary patch on the cover on the foredeck, till the end of April',
    { what: 'patch', zone: 'foredeck', temporary: true, due: '2027-04-30' },
  ],
  [
    '90 minutes: new pendant block in the case, wants doing by Friday',
    { what: 'pendant block', zone: 'case', minutes: 90, due: '2027-04-09' },
  ],
  [
    'before the night on the estuary: wire in a second cabin light, 1 h 15',
    { what: 'cabin light', zone: 'cabin', minutes: 75, outing: 'estuary' },
  ],
  [
    'um the starboard no the port shroud plate nuts want tightening uh ten minutes',
    { what: 'tightening', zone: 'decks', fitting: 'plate-port', minutes: 10 },
  ],
  [
    'so yeah the boom end cap fell off glue it back on fifteen minutes purely cosmetic',
    { what: 'glue it back', zone: 'rig', minutes: 15, consequence: 'comfort' },
  ],
  [
    'saw off the old stanchion bolt at the side deck with the grinder not on my own half an hour',
    { what: 'stanchion bolt', zone: 'decks', minutes: 30, notAlone: true },
  ],
  ['replace fuel hose, one hour, illegal as it is', { what: 'fuel hose', minutes: 60, consequence: 'unlawful' }],
  [
    'sand and oil the tiller, forty minutes or so, for looks',
    { what: 'oil', zone: 'cockpit', fitting: 'tiller', minutes: 40, consequence: 'comfort' },
  ],
  [
    'find out where the water in the bilge comes from, an hour',
    { what: 'water in the bilge', zone: 'cabin', minutes: 60 },
  ],
  [
    'antifoul the keel slot with the board down in the slings, 1 hour',
    { what: 'keel slot', zone: 'bottom', minutes: 60, setUps: { board: 'down' } },
  ],
];
