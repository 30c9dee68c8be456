import type { MarkedLine } from '../marked.ts';

export const lines: readonly MarkedLine[] = [
  // a careful voice, in commas
  [
    'gooseneck bolt worn to half, change it, mast down, forty minutes, stops sailing',
    { what: 'gooseneck bolt', zone: 'rig', minutes: 40, setUps: { mast: 'down' }, consequence: 'stops-sailing' },
  ],
  [
    'bow roller, cheek bent, straighten in the vice, half an hour, comfort',
    { what: 'cheek bent', zone: 'bow', fitting: 'roller', minutes: 30, consequence: 'comfort' },
  ],
  [
    'forehatch seal perished, new seal, needs dry, an hour, gets worse',
    { what: 'new seal', zone: 'foredeck', minutes: 60, conditions: { dry: true }, consequence: 'worsens' },
  ],
  [
    'port wheel hub runs hot, strip and grease, on the trailer, 75 minutes, by the end of next week',
    {
      what: 'strip and grease',
      zone: 'trailer',
      fitting: 'hub',
      minutes: 75,
      setUps: { boat: 'trailer' },
      due: '2027-04-18',
    },
  ],
  ['cockpit drain slow, rod it through, quarter of an hour', { what: 'rod it through', zone: 'cockpit', minutes: 15 }],
  [
    'antifouling on the bottom, one coat, propped, above 8 °C, 3 hours, before the muster',
    {
      what: 'antifouling',
      zone: 'bottom',
      minutes: 180,
      setUps: { boat: 'propped' },
      conditions: { air_min_C: 8 },
      outing: 'muster',
    },
  ],
  [
    'topsides, scratch by the rubbing strake, fill and fair, from 15 °C, below 70 % humidity, 50 min',
    { what: 'fill and fair', zone: 'topsides', minutes: 50, conditions: { air_min_C: 15, humidity_max_pct: 70 } },
  ],
  [
    'measure the forestay with the mast up, under 8 knots, 20 min',
    { what: 'measure the forestay', zone: 'rig', minutes: 20, setUps: { mast: 'up' }, conditions: { wind_max_kn: 8 } },
  ],
  // runs on, as a phone writes it down
  [
    'right so the starboard shroud plate is weeping again take it off and rebed it mast down call it ninety minutes and it only gets worse',
    {
      what: 'rebed',
      zone: 'decks',
      fitting: 'plate-stbd',
      minutes: 90,
      setUps: { mast: 'down' },
      consequence: 'worsens',
    },
  ],
  [
    'okay next the tiller has a split at the head end glue and clamp it about half an hour plus the cure',
    { what: 'glue and clamp', zone: 'cockpit', fitting: 'tiller', minutes: 30 },
  ],
  [
    "the outboard won't start from cold so clean the plugs and change the fuel maybe an hour we can't go out without it",
    { what: 'clean the plugs', zone: 'transom', minutes: 60, consequence: 'stops-sailing' },
  ],
  [
    'so I want to oil the cabin woodwork some dry afternoon two hours ish just for looks',
    { what: 'oil the cabin woodwork', zone: 'cabin', minutes: 120, conditions: { dry: true }, consequence: 'comfort' },
  ],
  [
    'I reckon the rudder pintle has worn oval bush it or get a new one an hour and a quarter before the night on the estuary',
    { what: 'pintle', zone: 'transom', minutes: 75, outing: 'estuary' },
  ],
  [
    'the deck by the coaming feels soft drill a test hole I mean just one quarter of an hour and it will get worse if left',
    { what: 'drill a test hole', zone: 'decks', minutes: 15, consequence: 'worsens' },
  ],
  [
    'oh and the winch post bolts on the trailer want nipping up ten minutes',
    { what: 'winch post bolts', zone: 'trailer', minutes: 10 },
  ],
  // short, with abbreviations
  [
    'stbd shroud plate: rebed. mast dn. 90m. worsens',
    {
      what: 'rebed',
      zone: 'decks',
      fitting: 'plate-stbd',
      minutes: 90,
      setUps: { mast: 'down' },
      consequence: 'worsens',
    },
  ],
  ['o/board bracket: grease pivot, 10min', { what: 'grease pivot', zone: 'transom', fitting: 'bracket', minutes: 10 }],
  ['whip reef pennant ends 20m', { what: 'whip reef pennant', minutes: 20 }],
  [
    'fwd hatch: rebed 2h needs dry + >10C',
    { what: 'rebed', zone: 'foredeck', minutes: 120, conditions: { dry: true, air_min_C: 10 } },
  ],
  [
    'flares out of date. replace. illegal. end of april',
    { what: 'replace', consequence: 'unlawful', due: '2027-04-30' },
  ],
  [
    'rudder: fair nick in leading edge, 40 min + cure, >15 C',
    { what: 'fair nick', zone: 'transom', minutes: 40, conditions: { air_min_C: 15 } },
  ],
  // chatty
  [
    "Would you believe the bow roller pin's bent again, so knock it out and turn up a new one, an hour, nothing urgent",
    { what: 'turn up a new one', zone: 'bow', fitting: 'roller', minutes: 60 },
  ],
  [
    "If we get a dry day with no wind I'd like to respray the boom, an hour and a half, purely cosmetic",
    { what: 'respray the boom', zone: 'rig', minutes: 90, conditions: { dry: true }, consequence: 'comfort' },
  ],
  [
    "The mainsail luff slides keep jamming and we couldn't get her down on Sunday, that's dangerous, file the track, 50 minutes, mast down",
    { what: 'file the track', zone: 'rig', minutes: 50, setUps: { mast: 'down' }, consequence: 'danger' },
  ],
  [
    'Sew the corner of the cover before it rips right across, three quarters of an hour, needs a dry bench',
    { what: 'sew the corner', minutes: 45, consequence: 'worsens' },
  ],
  [
    "The cabin light flickers, probably a dirty contact, ten minutes, it can wait but I'd like it by Easter Monday week, no, say the end of the month",
    { what: 'cabin light flickers', zone: 'cabin', minutes: 10, due: '2027-04-30' },
  ],
  [
    "The keel bolts want a proper look, propped up, two of us, an hour or two, it's a safety thing",
    {
      what: 'keel bolts',
      zone: 'bottom',
      minutes: [60, 90, 120],
      hands: 2,
      setUps: { boat: 'propped' },
      consequence: 'danger',
    },
  ],
  // temporary
  [
    'taped the forehatch up for now, good till the end of the month',
    { what: 'forehatch', zone: 'foredeck', temporary: true, due: '2027-04-30' },
  ],
  [
    'cable tie holding the stern light on till I get a new bracket',
    { what: 'cable tie', zone: 'transom', temporary: true },
  ],
  [
    "bodged the bilge pump hose with a rubber sleeve, it'll do for the spring shakedown",
    { what: 'rubber sleeve', zone: 'cabin', fitting: 'pump', temporary: true, outing: 'spring' },
  ],
  [
    'rope strop instead of the forestay fitting shackle for the time being, a week at most',
    { what: 'rope strop', zone: 'bow', fitting: 'forestay', temporary: true, due: '2027-04-15' },
  ],
  [
    'makeshift fuse in the cabin panel, swap for the proper one by tomorrow',
    { what: 'fuse', zone: 'cabin', temporary: true, due: '2027-04-09' },
  ],
  [
    'gaffer tape round the boom end for the time being, 15 knots at the very most',
    { what: 'gaffer tape', zone: 'rig', temporary: true, conditions: { wind_max_kn: 15 } },
  ],
  // dates in words
  [
    'grease the rudder pintles in a fortnight, ten minutes',
    { what: 'grease the rudder pintles', zone: 'transom', minutes: 10, due: '2027-04-22' },
  ],
  [
    'check the winch post strap by this time next month',
    { what: 'check the winch post strap', zone: 'trailer', due: '2027-05-08' },
  ],
  [
    'polish the topsides this weekend, three hours',
    { what: 'polish the topsides', zone: 'topsides', minutes: 180, due: '2027-04-11' },
  ],
  [
    'service the outboard before the end of May, 2 h',
    { what: 'service the outboard', zone: 'transom', minutes: 120, due: '2027-05-30' },
  ],
  ['rig the lazy jacks within three weeks, 40 min', { what: 'lazy jacks', minutes: 40, due: '2027-04-29' }],
  [
    'pump up the tyres tonight, ten minutes',
    { what: 'pump up the tyres', zone: 'trailer', minutes: 10, due: '2027-04-08' },
  ],
  ['have the boom straightened by mid May', { what: 'boom straightened', zone: 'rig', due: '2027-05-15' }],
  ['clear the garage bench next month', { what: 'clear the garage bench', due: '2027-05-31' }],
  // with slips of the finger and of the ear
  [
    'starbord shroud plate weeps, rebed, mast down, 90 minuets',
    { what: 'rebed', zone: 'decks', fitting: 'plate-stbd', minutes: 90, setUps: { mast: 'down' } },
  ],
  ['tempory tape over the cockpit compass', { what: 'tape', zone: 'cockpit', temporary: true }],
  ['gooseneck pin bent, replace, dangerus', { what: 'pin bent', zone: 'rig', consequence: 'danger' }],
  [
    'mast head sheave stiff, wash and dry lube, 15 min, mast down',
    { what: 'stiff', zone: 'rig', fitting: 'sheave', minutes: 15, setUps: { mast: 'down' } },
  ],
  ['trailer wheel baring rumbles, ninty minutes', { what: 'rumbles', zone: 'trailer', minutes: 90 }],
  // said other ways
  [
    'replace lifeline lashings; someone might go over the side if they part; 25 min',
    { what: 'lifeline lashings', minutes: 25, consequence: 'danger' },
  ],
  ['fire extinguisher past its date, swap it, the law wants one', { what: 'swap it', consequence: 'unlawful' }],
  ['cushion covers faded, sew new ones, not important, two evenings', { what: 'sew new ones', consequence: 'comfort' }],
  [
    'Paint cockpit sole. Two coats. 12 °C or warmer. Cover on. 40 min a coat.',
    {
      what: 'paint cockpit sole',
      zone: 'cockpit',
      minutes: 40,
      setUps: { cover: 'on' },
      conditions: { air_min_C: 12 },
    },
  ],
  [
    'never do this one alone: board out of its case, an hour, three people',
    { what: 'board out of its case', zone: 'case', minutes: 60, hands: 3, notAlone: true },
  ],
  [
    'with the board down, scrub inside the case from below, cover off, thirty to forty minutes',
    { what: 'scrub inside the case', zone: 'case', minutes: [30, 35, 40], setUps: { board: 'down', cover: 'off' } },
  ],
  [
    'trim the rudder while afloat, wind under 10, an hour, two up',
    {
      what: 'trim the rudder',
      zone: 'transom',
      minutes: 60,
      hands: 2,
      setUps: { boat: 'afloat' },
      conditions: { wind_max_kn: 10 },
    },
  ],
  [
    'check every split pin aloft, mast down, 25 min, ready for the spring sail',
    { what: 'split pin', zone: 'rig', minutes: 25, setUps: { mast: 'down' }, outing: 'spring' },
  ],
  [
    'new numbers on the trailer board, ten minutes, legal requirement, by Monday',
    { what: 'new numbers', zone: 'trailer', minutes: 10, consequence: 'unlawful', due: '2027-04-12' },
  ],
  [
    'coaming: four screw holes to plug with epoxy, 35 min, between 10 and 25 degrees',
    { what: 'screw holes', zone: 'decks', minutes: 35, conditions: { air_min_C: 10, air_max_C: 25 } },
  ],
  [
    'Berth board split. Glue. 20 min. Comfort only.',
    { what: 'glue', zone: 'cabin', minutes: 20, consequence: 'comfort' },
  ],
  [
    'if left the transom core will rot: dig out round the drain, a couple of hours, dry, cover off',
    {
      what: 'dig out',
      zone: 'transom',
      minutes: 120,
      conditions: { dry: true },
      setUps: { cover: 'off' },
      consequence: 'worsens',
    },
  ],
  [
    'outboard kill cord frayed, new one now, do not run it without, danger to life',
    { what: 'kill cord frayed', zone: 'transom', consequence: 'danger' },
  ],
  [
    'compass light out, solder the joint, 20 minutes with the cover on',
    { what: 'solder the joint', minutes: 20, setUps: { cover: 'on' } },
  ],
  [
    'deck filler cap O-ring, 10 min, water gets in the fuel otherwise',
    { what: 'filler cap', zone: 'decks', minutes: 10 },
  ],
];
