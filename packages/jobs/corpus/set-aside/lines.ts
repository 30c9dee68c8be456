import type { MarkedLine } from '../marked.ts';

export const lines: readonly MarkedLine[] = [
  // a careful voice, in commas
  [
    'port shroud plate, crack at the lower hole, new plate, mast down, 2 hours, danger',
    {
      what: 'new plate',
      zone: 'decks',
      fitting: 'plate-port',
      minutes: 120,
      setUps: { mast: 'down' },
      consequence: 'danger',
    },
  ],
  [
    'Bilge pump does not prime, clean the strainer, 20 to 30 min, before Saturday',
    { what: 'clean the strainer', zone: 'cabin', fitting: 'pump', minutes: [20, 25, 30], due: '2027-04-09' },
  ],
  [
    'board lifting wire has broken strands, renew, boat propped, two hands, an hour and a half, danger',
    {
      what: 'renew',
      zone: 'case',
      fitting: 'wire',
      minutes: 90,
      hands: 2,
      setUps: { boat: 'propped' },
      consequence: 'danger',
    },
  ],
  [
    'masthead sheave cracked, fit a new one, mast down, 45 min, for the spring shakedown',
    { what: 'fit a new one', zone: 'rig', fitting: 'sheave', minutes: 45, setUps: { mast: 'down' }, outing: 'spring' },
  ],
  [
    'varnish the tiller, three coats, from 12 degrees, dry, 25 minutes, comfort',
    {
      what: 'varnish the tiller',
      zone: 'cockpit',
      fitting: 'tiller',
      minutes: 25,
      conditions: { dry: true, air_min_C: 12 },
      consequence: 'comfort',
    },
  ],
  [
    'stern light dead, trace the fault, unlawful, 1 h, not later than the 20th',
    { what: 'trace the fault', zone: 'transom', minutes: 60, consequence: 'unlawful', due: '2027-04-20' },
  ],
  [
    'outboard bracket bolts loose, through-bolt with a plate, 1 h 15, danger, on the trailer',
    {
      what: 'through-bolt',
      zone: 'transom',
      fitting: 'bracket',
      minutes: 75,
      setUps: { boat: 'trailer' },
      consequence: 'danger',
    },
  ],
  [
    'battery terminals green, clean and grease, 15 min, tomorrow',
    { what: 'clean and grease', zone: 'cabin', minutes: 15, due: '2027-04-09' },
  ],
  // runs on, as a phone writes it down
  [
    'um the bilge pump switch sticks needs a new one say forty five minutes',
    { what: 'new one', zone: 'cabin', fitting: 'pump', minutes: 45 },
  ],
  [
    'er the halyard chafes at the masthead whip it or cut the end off twenty minutes no mast up needed',
    { what: 'halyard chafes', zone: 'rig', minutes: 20 },
  ],
  [
    'you know that locker lid in the cockpit the hinge is hanging on by one screw new screws fifteen minutes tops',
    { what: 'new screws', zone: 'cockpit', minutes: 15 },
  ],
  [
    'well the trailer lights have gone again on the near side half an hour it is against the law to tow like that',
    { what: 'trailer lights', zone: 'trailer', minutes: 30, consequence: 'unlawful' },
  ],
  [
    'erm the antifouling is flaking on the keel sand back and touch up cover off two hours wear the mask',
    { what: 'touch up', zone: 'bottom', minutes: 120, setUps: { cover: 'off' } },
  ],
  [
    'get somebody to help lift the mast and swap the masthead sheave an hour under ten knots',
    {
      what: 'swap the masthead sheave',
      zone: 'rig',
      fitting: 'sheave',
      minutes: 60,
      hands: 2,
      conditions: { wind_max_kn: 10 },
    },
  ],
  [
    'let me see reglue the strip on the rubbing strake in the dry forty minutes or so',
    { what: 'reglue the strip', zone: 'topsides', minutes: 40, conditions: { dry: true } },
  ],
  // short, with abbreviations
  [
    'anchor shackle - mouse pin - 5 min - danger',
    { what: 'mouse pin', zone: 'bow', minutes: 5, consequence: 'danger' },
  ],
  ['tyres, check psi + tread, 15m, by fri', { what: 'check psi', zone: 'trailer', minutes: 15, due: '2027-04-09' }],
  ['splice 2 dock lines, 1.5h, before estuary night', { what: 'splice 2 dock lines', minutes: 90, outing: 'estuary' }],
  ['bilge: mop + find leak 30-45min', { what: 'find leak', zone: 'cabin', minutes: [30, 38, 45] }],
  [
    'gas locker vent blocked, clear, 10 min, DANGER',
    { what: 'clear', zone: 'cockpit', minutes: 10, consequence: 'danger' },
  ],
  ['hub seal (port) weeping, 1hr, trailer jacked, axle stands', { what: 'hub seal', zone: 'trailer', minutes: 60 }],
  // chatty
  [
    "My sister's lad put his foot through the locker lid, so that wants a new panel, two and a half hours",
    { what: 'new panel', zone: 'cockpit', minutes: 150 },
  ],
  [
    'Somebody could lose a finger in that board winch pawl, make up a new spring, thirty minutes',
    { what: 'new spring', zone: 'case', minutes: 30, consequence: 'danger' },
  ],
  [
    "Don't forget the registration sticker has to be on before the first of May or it's a fine",
    { what: 'registration sticker', consequence: 'unlawful', due: '2027-04-30' },
  ],
  [
    'I must get the anchor chain end for ended some time, half an hour with another pair of hands',
    { what: 'anchor chain', zone: 'bow', minutes: 30, hands: 2 },
  ],
  [
    'Fit the new log impeller from inside the bilge, quarter hour, she has to be on the trailer',
    { what: 'log impeller', zone: 'cabin', minutes: 15, setUps: { boat: 'trailer' } },
  ],
  [
    'New non-slip on the foredeck, a dry day over 14 degrees, four hours, nice to have before the muster weekend',
    {
      what: 'non-slip',
      zone: 'foredeck',
      minutes: 240,
      conditions: { dry: true, air_min_C: 14 },
      consequence: 'comfort',
      outing: 'muster',
    },
  ],
  // temporary
  [
    'temporary lashing on the tiller, only under 12 knots, until the 24th',
    {
      what: 'lashing',
      zone: 'cockpit',
      fitting: 'tiller',
      temporary: true,
      conditions: { wind_max_kn: 12 },
      due: '2027-04-24',
    },
  ],
  [
    'jury rig, cord in place of the gooseneck split pin, not above 10 knots',
    { what: 'cord in place', zone: 'rig', temporary: true, conditions: { wind_max_kn: 10 } },
  ],
  [
    'I stuck a bit of sail tape over the tear in the jib just to get us home, temporary',
    { what: 'sail tape', temporary: true },
  ],
  [
    'wedge under the mast foot as a stopgap until next Saturday',
    { what: 'wedge', zone: 'rig', temporary: true, due: '2027-04-17' },
  ],
  ['the drain bung is a cut down cork for the moment', { what: 'cork', temporary: true }],
  [
    'patched the side deck with a bit of ply until I can do it properly',
    { what: 'ply', zone: 'decks', temporary: true },
  ],
  // dates in words
  ['wash the cover, a week on Saturday', { what: 'wash the cover', due: '2027-04-17' }],
  [
    'hang the rudder the day after tomorrow, 20 min',
    { what: 'hang the rudder', zone: 'transom', minutes: 20, due: '2027-04-10' },
  ],
  ['renew the jackstays by the first of June', { what: 'renew the jackstays', due: '2027-06-01' }],
  ['stitch the jib luff by Sunday week, an hour', { what: 'stitch the jib luff', minutes: 60, due: '2027-04-18' }],
  ['empty the locker on 20/4', { what: 'empty the locker', zone: 'cockpit', due: '2027-04-20' }],
  [
    'swap the anchor warp, sometime next week, half an hour',
    { what: 'swap the anchor warp', zone: 'bow', minutes: 30, due: '2027-04-18' },
  ],
  [
    'fit the depth sounder by the second weekend in May, two hours',
    { what: 'depth sounder', minutes: 120, due: '2027-05-09' },
  ],
  [
    'touch up the gelcoat in ten days, from ten degrees',
    { what: 'touch up the gelcoat', conditions: { air_min_C: 10 }, due: '2027-04-18' },
  ],
  // with slips of the finger and of the ear
  ['forhatch leaks, new seal, half an our', { what: 'new seal', zone: 'foredeck', minutes: 30 }],
  ['bilge pmup noisy, look at the impeler, 30 min', { what: 'noisy', zone: 'cabin', fitting: 'pump', minutes: 30 }],
  [
    'out board bracket squeaks, grease, ten mins',
    { what: 'squeaks', zone: 'transom', fitting: 'bracket', minutes: 10 },
  ],
  [
    'board case gasket torn, propped, an hour and half, becoming worse',
    { what: 'gasket torn', zone: 'case', minutes: 90, setUps: { boat: 'propped' }, consequence: 'worsens' },
  ],
  [
    'fore deck cleat lose, bed it again, 40 min, by saterday',
    { what: 'bed it again', zone: 'foredeck', minutes: 40, due: '2027-04-10' },
  ],
  // said other ways
  [
    'new reefing line, ours is chafed through, we cannot go sailing until that is done, 30 min',
    { what: 'new reefing line', minutes: 30, consequence: 'stops-sailing' },
  ],
  [
    'hull side gelcoat crazing, spreading a bit more every month, grind out and fill, 3 h',
    { what: 'grind out and fill', zone: 'topsides', minutes: 180, consequence: 'worsens' },
  ],
  [
    'Retension the shrouds, with a helper, wind no more than 6 knots, mast up, 45 min',
    {
      what: 'retension the shrouds',
      zone: 'rig',
      minutes: 45,
      hands: 2,
      setUps: { mast: 'up' },
      conditions: { wind_max_kn: 6 },
    },
  ],
  [
    'look over the keel while she is propped, not on your own, half an hour',
    { what: 'look over the keel', zone: 'bottom', minutes: 30, notAlone: true, setUps: { boat: 'propped' } },
  ],
  [
    'Foredeck: bed the cleat, dry and no colder than 5 degrees, an hour, Sunday',
    {
      what: 'bed the cleat',
      zone: 'foredeck',
      minutes: 60,
      conditions: { dry: true, air_min_C: 5 },
      due: '2027-04-11',
    },
  ],
  [
    'test the nav lights after dark, mast up, quarter of an hour, required by law',
    { what: 'test the nav lights', minutes: 15, setUps: { mast: 'up' }, consequence: 'unlawful' },
  ],
  ['sand and oil the washboards, 1 hour 10, no rain', { what: 'sand and oil', minutes: 70, conditions: { dry: true } }],
  [
    'halyard winch slips, service, 50 min, a real hazard',
    { what: 'winch slips', zone: 'rig', minutes: 50, consequence: 'danger' },
  ],
  [
    'the pendant is chafing on the case lip, file the lip smooth, half an hour, worse every sail',
    { what: 'file the lip', zone: 'case', minutes: 30, consequence: 'worsens' },
  ],
  ['oil the tiller', { what: 'oil the tiller', zone: 'cockpit', fitting: 'tiller' }],
  [
    'new burgee halyard, mast down or a very long ladder, fifteen to twenty minutes, whenever',
    { what: 'burgee halyard', zone: 'rig', minutes: [15, 18, 20], setUps: { mast: 'down' } },
  ],
  [
    'Axle U-bolts rusty. Wire brush and paint. One hour. Before it snows.',
    { what: 'wire brush and paint', zone: 'trailer', minutes: 60 },
  ],
  [
    'fit a second bilge pump, 2 hrs 30 mins, for the estuary night',
    { what: 'second bilge pump', zone: 'cabin', fitting: 'pump', minutes: 150, outing: 'estuary' },
  ],
  [
    'get the spare wheel up to pressure before we tow on Friday, 5 mins',
    { what: 'spare wheel', zone: 'trailer', minutes: 5, due: '2027-04-09' },
  ],
  ['stay tensioner seized, soak it overnight then free it, 20 min', { what: 'seized', zone: 'rig', minutes: 20 }],
];
