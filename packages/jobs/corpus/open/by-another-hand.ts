/** Talk and marks by another hand than the reader's, who did not know its words. */
import type { MarkedLine, MarkedPage } from '../marked.ts';

export const linesByAnother: readonly MarkedLine[] = [
  [
    'anchor shackle rusted through replace it ten minutes dangerous',
    { what: 'anchor shackle', zone: 'bow', minutes: 10, consequence: 'danger' },
  ],
  [
    'scrub the bottom and touch up the antifouling about three hours propped up',
    { what: 'scrub', zone: 'bottom', minutes: 180, setUps: { boat: 'propped' } },
  ],
  ['whip the end of the jib halyard 10 min', { what: 'whip', zone: 'rig', minutes: 10 }],
  [
    'masthead sheave sqeals - grease it next time mast is down, 15min',
    { what: 'grease', zone: 'rig', fitting: 'sheave', minutes: 15, setUps: { mast: 'down' } },
  ],
  [
    'trailer lights dead nearside. 1h. unlawful',
    { what: 'lights', zone: 'trailer', minutes: 60, consequence: 'unlawful' },
  ],
  [
    "well the outboard bracket's bolts have come loose again so I suppose I should put new lock nuts on, half an hour, and we can't sail till it's done",
    { what: 'lock nuts', zone: 'transom', fitting: 'bracket', minutes: 30, consequence: 'stops-sailing' },
  ],
  [
    'there is a bit of a leak round the cabin window when it rains hard, take the window out and rebed it, two to three hours, some dry day',
    { what: 'window', zone: 'cabin', minutes: [120, 150, 180], conditions: { dry: true } },
  ],
  [
    'the rudder rattles, probably the pintle, shim it, say twenty five minutes',
    { what: 'rudder rattles', zone: 'transom', minutes: 25 },
  ],
  [
    'Grease bow roller pin. Five minutes. No tools.',
    { what: 'grease bow roller', zone: 'bow', fitting: 'roller', minutes: 5 },
  ],
  ['Reseal stern light, one hour, by 1 May', { what: 'reseal', zone: 'transom', minutes: 60, due: '2027-05-01' }],
  [
    'cable tie on the gooseneck pin for now until I get a proper ring',
    { what: 'cable tie', zone: 'rig', temporary: true },
  ],
  ['stuffed a rag in the cockpit drain just to get home', { what: 'rag', zone: 'cockpit', temporary: true }],
  [
    'danger! crack in the winch post weld, have it welded, on the trailer',
    { what: 'winch post', zone: 'trailer', setUps: { boat: 'trailer' }, consequence: 'danger' },
  ],
  [
    'worsens: gelcoat crack by the stem, grind and fill, 1.5 h',
    { what: 'grind', zone: 'bow', minutes: 90, consequence: 'worsens' },
  ],
  [
    'put a new impeller in the outboard it takes me an hour usually no more than that',
    { what: 'impeller', zone: 'transom', minutes: 60 },
  ],
  [
    'tomorrow morning check the battery terminals and grease them twenty minutes',
    { what: 'terminals', zone: 'cabin', minutes: 20, due: '2027-04-09' },
  ],
  [
    'locker lid rubs, plane a bit off the edge, quarter hour, when it is dry',
    { what: 'locker lid', zone: 'cockpit', minutes: 15, conditions: { dry: true } },
  ],
  [
    'reeve the new main halyard with the mast up, no wind to speak of, under 10 knots, half an hour',
    { what: 'halyard', zone: 'rig', minutes: 30, setUps: { mast: 'up' }, conditions: { wind_max_kn: 10 } },
  ],
  [
    'axle U-bolts rusty, wire brush, paint, 50 mins, by the 20th of May',
    { what: 'u-bolts', zone: 'trailer', minutes: 50, due: '2027-05-20' },
  ],
  [
    'sew the torn cover corner, 30 to 45 min, cover off',
    { what: 'cover', minutes: [30, 38, 45], setUps: { cover: 'off' } },
  ],
];

export const pagesByAnother: readonly MarkedPage[] = [
  {
    name: 'telephone',
    page: `Hello, it's me, I said I'd ring when I'd had a look at her so here goes, have you got a pencil. She's dry inside, which is more than I expected after that winter. The cover did its job. I had the cushions home so they're fine.

First thing, the hatch on the foredeck. One of the hinges has snapped clean off, so that needs a new hinge, half an hour I'd say. The rest of the foredeck is sound, I jumped up and down on it.

The mast. Well, you remember we thought the sheave at the top was going? It isn't, it spins like new, it was only the halyard binding. The halyard wants replacing though, it's gone hard as a stick, twenty minutes to reeve a new one. And there's a stranded wire on the starboard lower shroud, three wires gone at the swage, and I'm not going out with that. We'd lose the mast. I don't know how long, the rigger makes them, I'd just have to hang it.

I did the winch while I was there. Stripped it, cleaned it, greased it, all back together, so you can cross that off.

What else. The rudder. The lower pintle has got loose in its wood, the screws have pulled, so they need plugging and screwing again, an hour and a half and it's going to get worse. I've put a wedge in for the moment so it doesn't flap about on the road.

The trailer's the bad news. Both tyres are cracked in the walls, they're eight years old, so two new tyres before the spring shakedown. Somebody at the tyre place can fit them while I wait. The lights I tested and they all come on.

Do you still want to sell the old outboard? I saw one like it go for next to nothing. Anyway the new one ran for ten minutes in the bin and pumped water nicely.

Oh, and we're out of seizing wire and I used the last of the white spirit. I'll ring you on Sunday.`,
    marks: [
      { kind: 'job', at: 'One of the hinges has snapped clean off', parts: { zone: 'foredeck', minutes: 30 } },
      { kind: 'job', at: 'The halyard wants replacing', parts: { zone: 'rig', minutes: 20 } },
      { kind: 'job', at: "there's a stranded wire on the starboard lower shroud", parts: { zone: 'rig' } },
      {
        kind: 'job',
        at: 'The lower pintle has got loose',
        parts: { zone: 'transom', minutes: 90, consequence: 'worsens' },
      },
      { kind: 'jury rig', at: "I've put a wedge in for the moment", parts: {} },
      { kind: 'job', at: 'Both tyres are cracked in the walls', parts: { zone: 'trailer', outing: 'spring' } },
      { kind: 'store', at: "we're out of seizing wire", parts: {} },
      { kind: 'store', at: 'I used the last of the white spirit', parts: {} },
    ],
  },
  {
    name: 'back of an envelope',
    page: `TO DO (boat)

* forestay fitting - 2 of 4 screws turning. Bigger screws / bolts. 1 hr. DANGER
* port wheel hub grease - done Sat
* new split rings everywhere (15 min)
* look at: stain under stbd shroud plate
* outboard service (plugs, gear oil, impeller) 2 hrs, before Night on the estuary
* reefing line - swap for thinner? ask P.
* cover: patch torn corner, 40 min. Duct tape on it at present
* topsides - polish if time, 3 hrs, just looks
* bilge pump switch sticks. Clean or replace. 30 min

TO GET
gear oil, 1 litre
6 stainless bolts M6 x 50
split rings, 12 mm

DONE
- tiller varnished
- anchor chain washed
- rudder stock greased`,
    marks: [
      {
        kind: 'job',
        at: 'forestay fitting - 2 of 4 screws turning',
        parts: { zone: 'bow', fitting: 'forestay', minutes: 60, consequence: 'danger' },
      },
      { kind: 'job', at: 'new split rings everywhere', parts: { minutes: 15 } },
      { kind: 'job', at: 'look at: stain under stbd shroud plate', parts: { fitting: 'plate-stbd' } },
      { kind: 'job', at: 'outboard service', parts: { zone: 'transom', minutes: 120, outing: 'estuary' } },
      { kind: 'job', at: 'cover: patch torn corner', parts: { minutes: 40 } },
      { kind: 'jury rig', at: 'Duct tape on it at present', parts: {} },
      {
        kind: 'job',
        at: 'topsides - polish if time',
        parts: { zone: 'topsides', minutes: 180, consequence: 'comfort' },
      },
      { kind: 'job', at: 'bilge pump switch sticks', parts: { zone: 'cabin', minutes: 30 } },
      { kind: 'store', at: 'gear oil, 1 litre', parts: {} },
      { kind: 'store', at: '6 stainless bolts M6 x 50', parts: {} },
      { kind: 'store', at: 'split rings, 12 mm', parts: {} },
    ],
  },
  {
    name: 'an uncle who knows',
    page: `Now then. In my day you'd never have put sealant on a shroud plate with the mast up, you'd have had it off and cleaned the lot. But never mind. I've been over her for you while you were at work and here is what I would do.

Starboard shroud plate wants lifting and rebedding. Mast down, two hours if you don't rush it. Use butyl and you'll thank me. Port one I'd leave alone till it complains.

Your bow roller is seized. Penetrating oil overnight and a new pin, an hour.

There's nothing wrong with that anchor except that it's too small, but that's your money.

Your gas bottle is stood loose in the locker. That's how people get killed. Strap it down, a quarter of an hour, do it first.

I wouldn't touch the gelcoat. Everybody wants it shiny and then they've polished through it.

The board pendant is nearly through where it goes over the sheave. A new pendant before you go anywhere, half an hour, the board has to be down and her propped. I've tied a stopper on the old one for the time being and it'll do for getting her off the trailer, not for sailing.

I repacked the hubs for you, both sides, so don't do them again. You could do with a spare set of bearings. And buy a decent torch.

Somebody has used a brass screw on the stainless bracket for the outboard. One screw. It'll be green by August. Change it for a proper one, five minutes.

If you are passing on Sunday I'll show you how to whip a rope.`,
    marks: [
      {
        kind: 'job',
        at: 'Starboard shroud plate wants lifting',
        parts: { zone: 'decks', fitting: 'plate-stbd', minutes: 120, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'Your bow roller is seized', parts: { zone: 'bow', fitting: 'roller', minutes: 60 } },
      { kind: 'job', at: 'Your gas bottle is stood loose', parts: { zone: 'cockpit', minutes: 15 } },
      { kind: 'job', at: 'The board pendant is nearly through', parts: { zone: 'case', minutes: 30 } },
      { kind: 'jury rig', at: "I've tied a stopper on the old one", parts: {} },
      { kind: 'store', at: 'a spare set of bearings', parts: {} },
      { kind: 'store', at: 'buy a decent torch', parts: {} },
      { kind: 'job', at: 'a brass screw on the stainless bracket', parts: { minutes: 5 } },
    ],
  },
];
