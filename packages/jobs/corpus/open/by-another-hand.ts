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
  {
    name: 'two of them talking',
    page: `I'll read it out and you write it down. Bow first. Bow fender's perished, chuck it, we've a spare at home. The stemhead bolts are tight. The anchor well lid has a broken catch. A new catch, twenty minutes.

Did you look at the chain? Yes, it's rusty for the last two metres, I'd cut those off and put a new shackle on, half an hour.

Is the forestay all right? Seems so. The clevis pin has no ring in it though! That's a ring, two minutes, and it's the most dangerous thing on the boat.

Mast: one spreader's bent down a touch, it ought to be level or the rig won't stand. Straighten it with the mast down, forty minutes, two people.

Right, hull. Is that a new scratch? No, that's the old one, leave it. There's a row of blisters near the keel on the port side the size of peas, they want opening and drying out this winter, not now.

Well, what about now then? Now you want to do the board. It won't come up past half way. There's a stone in the slot I expect. Flush it from above with the hose and if it doesn't shift prop her up and poke it, an hour.

Cockpit: the tiller extension joint is cracked. I've bound it with tape till the new one comes in the post. Fit the new one when it comes, ten minutes.

Inside. The bilge pump's good, I ran it. Cooker's good. The shelf over the port berth has come away at one end, screw it back, ten minutes, comfort.

Trailer. Port brake is binding, you can smell it. That has to be stripped and adjusted before we tow her anywhere, two hours. Number plate's cracked and the police won't like it, get a new one made.

Anything to buy? Brake shoes if they're worn, a catch for the lid, and stainless rings.`,
    marks: [
      { kind: 'job', at: 'The anchor well lid has a broken catch', parts: { minutes: 20 } },
      { kind: 'job', at: "it's rusty for the last two metres", parts: { minutes: 30 } },
      { kind: 'job', at: 'The clevis pin has no ring', parts: { minutes: 2, consequence: 'danger' } },
      { kind: 'job', at: "one spreader's bent down", parts: { zone: 'rig', minutes: 40, hands: 2 } },
      { kind: 'job', at: 'a row of blisters near the keel', parts: {} },
      { kind: 'job', at: "It won't come up past half way", parts: { minutes: 60 } },
      { kind: 'jury rig', at: "I've bound it with tape till the new one comes", parts: {} },
      { kind: 'job', at: 'Fit the new one when it comes', parts: { minutes: 10 } },
      {
        kind: 'job',
        at: 'The shelf over the port berth has come away',
        parts: { minutes: 10, consequence: 'comfort' },
      },
      { kind: 'job', at: 'Port brake is binding', parts: { zone: 'trailer', minutes: 120 } },
      { kind: 'job', at: "Number plate's cracked", parts: { consequence: 'unlawful' } },
      { kind: 'store', at: "Brake shoes if they're worn", parts: {} },
      { kind: 'store', at: 'a catch for the lid', parts: {} },
      { kind: 'store', at: 'stainless rings', parts: {} },
    ],
  },
  {
    name: 'careful',
    page: `Condition of the boat on 8 April, as found.

1. Ground tackle. Satisfactory. Bitter end is not made fast to anything; make it fast with a lashing, 10 minutes.
2. Foredeck. Non-slip worn through in front of the hatch. Two coats of deck paint, 90 minutes in all, above 10 degrees, dry. Not urgent.
3. Standing rigging. Port shroud plate: sealant has lifted along its aft edge and the deck below sounds dull. Remove, dry out, rebed. Three hours, mast down. Will get worse.
4. Running rigging. Mainsheet: serviceable. Jib sheets: serviceable. Topping lift: chafed at the masthead, replace, 30 minutes.
5. Board and case. Lifting wire renewed last year and in good order. Board bolt weeping slightly: renew both seals, 2 hours, propped.
6. Rudder. No play. Blade uphaul cord is frayed. New cord, 15 minutes.
7. Hull. Antifouling thin at the waterline. One coat before launching, three hours.
8. Electrics. Battery 12.58 V at rest. Bilge pump float switch does not lift; free it or change it, 45 minutes. Steaming light inoperative: bulb, 10 minutes, mast down.
9. Outboard. Ran satisfactorily. Spare shear pins: none aboard, buy three.
10. Safety. Lifejackets in date. Flares expired in March. Replace before the estuary trip.
11. Trailer. Jockey wheel bearing dry, grease, 10 minutes. Tyres 3 mm, satisfactory. Left indicator intermittent, earth suspected, half an hour, unlawful to tow with.
12. Cover. Two eyelets torn out on the port side. Held with a clothes peg for the time being. New eyelets, 20 minutes.`,
    marks: [
      { kind: 'job', at: 'Bitter end is not made fast', parts: { minutes: 10 } },
      { kind: 'job', at: 'Non-slip worn through', parts: { zone: 'foredeck', minutes: 90 } },
      {
        kind: 'job',
        at: 'sealant has lifted along its aft edge',
        parts: { fitting: 'plate-port', minutes: 180, setUps: { mast: 'down' }, consequence: 'worsens' },
      },
      { kind: 'job', at: 'chafed at the masthead', parts: { minutes: 30 } },
      { kind: 'job', at: 'Board bolt weeping slightly', parts: { zone: 'case', minutes: 120 } },
      { kind: 'job', at: 'Blade uphaul cord is frayed', parts: { minutes: 15 } },
      { kind: 'job', at: 'Antifouling thin at the waterline', parts: { zone: 'bottom', minutes: 180 } },
      { kind: 'reading', at: 'Battery 12.58 V at rest', parts: {} },
      { kind: 'job', at: 'Bilge pump float switch does not lift', parts: { minutes: 45 } },
      { kind: 'job', at: 'Steaming light inoperative', parts: { minutes: 10, setUps: { mast: 'down' } } },
      { kind: 'store', at: 'Spare shear pins', parts: {} },
      { kind: 'job', at: 'Flares expired in March', parts: { outing: 'estuary' } },
      { kind: 'job', at: 'Jockey wheel bearing dry', parts: { zone: 'trailer', minutes: 10 } },
      { kind: 'job', at: 'Left indicator intermittent', parts: { minutes: 30, consequence: 'unlawful' } },
      { kind: 'jury rig', at: 'Held with a clothes peg', parts: {} },
      { kind: 'job', at: 'New eyelets, 20 minutes', parts: { minutes: 20 } },
    ],
  },
  {
    name: 'half asleep',
    page: `can't sleep so I might as well get the boat out of my head. the thing that worries me is the keel bolt nut that spun when I put a spanner on it. that has to come out and be looked at before she goes in the water, call it half a day, and I don't want to do it alone under there. then there's the mast step, it has worn a dent in the deck, I could put a plate under it, an hour with the mast down. the hatch I've done, thank heavens. the gas I've done. I keep meaning to fix the drawer that falls out when we heel. a turn button would do it, ten minutes. what did he say about the outboard? that it wanted new plugs, I think, or was it the lead. have it looked at. the trailer board is in the shed and that's got a smashed lens which I've covered with red tape for now, it'll get me to the slip. lens, five minutes, I must order one. oh and the tiller. no, the tiller's fine, it was the rudder head that had the crack. epoxy and a clamp, half an hour, somewhere warm. I could do with more epoxy and those little brushes. should I sell her? no. the sail wants a wash. my sister has the sewing machine so she could do the cover. maybe in may. okay. sleep.`,
    marks: [
      { kind: 'job', at: 'the keel bolt nut that spun', parts: { notAlone: true } },
      { kind: 'job', at: 'it has worn a dent in the deck', parts: { minutes: 60, setUps: { mast: 'down' } } },
      { kind: 'job', at: 'fix the drawer that falls out', parts: { minutes: 10 } },
      { kind: 'job', at: 'have it looked at', parts: {} },
      { kind: 'jury rig', at: "which I've covered with red tape for now", parts: {} },
      { kind: 'job', at: 'lens, five minutes', parts: { minutes: 5 } },
      { kind: 'job', at: 'it was the rudder head that had the crack', parts: { minutes: 30 } },
      { kind: 'store', at: 'I could do with more epoxy', parts: {} },
      { kind: 'store', at: 'those little brushes', parts: {} },
      { kind: 'job', at: 'the sail wants a wash', parts: {} },
    ],
  },
  {
    name: 'to a friend',
    page: `Thanks for lending a hand on Saturday, here's what I think we're up against so you can bring the right tools.

The big one is the starboard shroud plate. You hold the nut below while I turn the bolt on deck, so it needs the two of us, and the mast will be down already. Allow two hours. Don't let me talk you into doing the port one, that was done in the autumn and it's bone dry.

While the mast is down I'd like to get the new masthead light wired, an hour, and grease the sheave, five minutes. If it rains we'll do the cabin instead: the light over the chart table needs a new switch (twenty minutes) and the berth lid hinge is hanging by one screw (ten).

I'd leave the varnish till May. It's scruffy but it isn't coming off.

The outboard won't idle. I've had the carburettor off once and made it worse. If you fancy looking at it I'd be grateful, I've no idea how long, and until it runs we don't sail, obviously.

There's also a hole in the cockpit floor where the old compass was. It's got a champagne cork in it at present, which works surprisingly well, but I'd like to glass it over properly one dry day over 15 degrees; an hour and a bit.

Can you bring your crimping tool? I've run out of the red ring terminals too so if you're passing a chandler get a dozen. Lunch is on me.`,
    marks: [
      {
        kind: 'job',
        at: 'The big one is the starboard shroud plate',
        parts: { fitting: 'plate-stbd', minutes: 120, hands: 2 },
      },
      { kind: 'job', at: 'get the new masthead light wired', parts: { minutes: 60 } },
      { kind: 'job', at: 'grease the sheave, five minutes', parts: { minutes: 5 } },
      { kind: 'job', at: 'the light over the chart table needs a new switch', parts: { minutes: 20 } },
      { kind: 'job', at: 'the berth lid hinge is hanging by one screw', parts: { minutes: 10 } },
      { kind: 'job', at: "The outboard won't idle", parts: { zone: 'transom', consequence: 'stops-sailing' } },
      { kind: 'jury rig', at: "It's got a champagne cork in it at present", parts: {} },
      { kind: 'job', at: "I'd like to glass it over properly", parts: { conditions: { dry: true, air_min_C: 15 } } },
      { kind: 'store', at: 'the red ring terminals', parts: {} },
    ],
  },
];
