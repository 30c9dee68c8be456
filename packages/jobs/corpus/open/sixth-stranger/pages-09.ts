import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'end of the winter, tidy hand',
    page: `Winter work, state on the eighth of April.

DONE
Rudder stripped and revarnished. Hatch seal. Both winches. Trailer bearings. Tiller extension joint. Bilge painted. Lifejackets weighed. Two new mooring warps spliced.

HALF DONE
Saloon table. Top is glued, edges still to be lipped with ash and the whole oiled. 2 h.
Jib: washed. The foot seam is unpicked over 30 cm and pinned. I'll run it up on the machine, 20 min.
Wiring diagram. Drawn as far as the mast. The rest when I feel like it, i.e. never.

NOT STARTED
Starboard cleat on the foredeck: hairlines in a star around it. No backing plate. Make one of 6 mm ply, epoxy it under, longer bolts, 1 h, somebody outside with the screwdriver.
Water tank breather: has come off its spigot, so filling the tank floods the bunk. For the present I fill it by the cup. Push on and clip, 5 min.
Masthead fly: sticks. Was sticking when I was a boy. Leave.
Trailer mudguard stay, nearside: broken off; wired to the frame with fence wire in November and not come adrift since. New stay from 5 mm flat, drill and bolt, 45 min.

LOOKED AT AND LEFT
Gelcoat on the coaming. Chainplates (dry, meter 12 per cent). Fuel hose, dated 2025. Gas. Kicker. Mast step. The window with the scratch.

BATTERY 12.49 on the shelf, 12.47 in January. Marvellous.

TO GET
Ash lipping 3 m. Hose clip 16 mm. Flat bar 5 x 25.

NEXT
Mast goes up on the 18th if there are three of us; last year there were two and a dent. First sail on the 24th. I'd like a second reef in the new main but it costs as much as the trailer did, so that's an idea and no more.

Club has asked for help with the jetty on the 11th. I've said yes and shall regret it.`,
    marks: [
      { kind: 'job', at: 'edges still to be lipped with ash', parts: { zone: 'cabin', minutes: 120 } },
      { kind: 'job', at: "I'll run it up on the machine", parts: { minutes: 20 } },
      { kind: 'job', at: 'Make one of 6 mm ply, epoxy it under', parts: { zone: 'foredeck', minutes: 60, hands: 2 } },
      { kind: 'job', at: 'Push on and clip', parts: { minutes: 5 } },
      { kind: 'jury rig', at: 'wired to the frame with fence wire', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'New stay from 5 mm flat', parts: { zone: 'trailer', minutes: 45 } },
      { kind: 'reading', at: 'dry, meter 12 per cent', parts: {} },
      { kind: 'reading', at: 'BATTERY 12.49 on the shelf', parts: {} },
      { kind: 'store', at: 'Ash lipping 3 m', parts: {} },
      { kind: 'store', at: 'Hose clip 16 mm', parts: {} },
      { kind: 'store', at: 'Flat bar 5 x 25', parts: {} },
    ],
  },
  {
    name: 'driving home from the mooring',
    page: `okay driving home hands free talking to myself like a lunatic what did we see today right the good news first she sailed like a witch and the new jib sets better than the old one ever did the bad news well the centreboard hums at five knots but they all do that it's a feature the kicker cleat kept popping open and my sister was holding it by hand in the end there's a bit of shock cord over it now so the cleat wants its springs renewed they're tiny a tenner for the kit fifteen minutes the mainsheet's a metre too long who cares the tiller extension clip broke when I sat on it so new clip two screws five minutes going about the port locker let in water again not loads a pint and it's the hinge side so bed down the hinges with sealant half an hour when it's dried out the outboard was grand the fuel tank strap though has perished and the tank was sliding all over the cockpit floor so put a new strap on it ten minutes and I did think for a second about what if it had gone over the anchor didn't get used the compass reads ten degrees out but it's always done that by the loo window coming up the slip the trailer I noticed the winch handle skips a tooth under load now that could drop the lot back down the slip on somebody so that winch gets replaced before she comes out again forty minutes four bolts that's top of the list really the lights were fine I did them Friday the rollers are good somebody on the slip was going on about ceramic antifoul at three hundred quid a tin no thanks battery said twelve point four four when we packed up which after six hours of plotter is all right I'll need a cam cleat kit a strap and a trailer winch nine hundred pound one and we said we'd do the muster didn't we yeah let's do the muster`,
    marks: [
      { kind: 'jury rig', at: "there's a bit of shock cord over it now", parts: {} },
      { kind: 'job', at: 'the cleat wants its springs renewed', parts: { minutes: 15 } },
      { kind: 'job', at: 'so new clip two screws', parts: { minutes: 5 } },
      { kind: 'job', at: 'so bed down the hinges with sealant', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'job', at: 'so put a new strap on it', parts: { minutes: 10 } },
      {
        kind: 'job',
        at: 'so that winch gets replaced before she comes out again',
        parts: { zone: 'trailer', minutes: 40, consequence: 'danger' },
      },
      { kind: 'reading', at: 'battery said twelve point four four', parts: {} },
      { kind: 'store', at: 'a cam cleat kit', parts: {} },
      { kind: 'store', at: 'kit a strap and', parts: {} },
      { kind: 'store', at: 'a trailer winch nine hundred', parts: {} },
    ],
  },
  {
    name: 'the mechanic, translated by himself',
    page: `I am mechanic for agricultural machines, so boat is for me small machine with big humidity. I tell in order.

Trailer first, because trailer I understand. Hub right: I opened, grease was white like milk. So seal is finished. New seal, new grease, both sides same day, one hour and half. Brake shoes I changed in autumn, they are good. Tyre pressure I found 2.2 and 2.3, book says 2.5, okay for standing in barn.

Lights: they burn.

Winch: I make oil. Finished, no problem there.

Hull: somebody before me has repaired hole on the left side with wrong filler, for cars. One sees it, but it holds. When it falls out, then I do it.

Mast foot: the pin is too short, it sticks out only on one side and has no ring possible. I hammered in a nail through. Next week I turn correct pin from stainless on the lathe, half hour.

Cable in the mast: isolation is hard and breaks. All cable new, I pull with the old one, two hours, now when mast is down. My son holds.

Cabin: nice. Battery 12.7, I charge with tractor charger.

Pump: there was a cigarette in it. I took it out. Now is good pump.

Board wire: clamp has eaten the wire, two strands broken. New wire 5 millimetre with pressed terminal, I have press at work. One hour. Before that nobody stands under it!

Rudder blade: little play. In tractor I would laugh.

Cockpit: on the floor is always water because drain lies higher than floor. Constructor was sleeping. I drill new drain at lowest point and glue a tube in, one hour. Glue must stay one day.

Other people polish. I ask them: does it go faster?

To bring from work: two seals, wire 5 mm three metres, stainless bar 12.

In summer I want to sleep one night on it with my son. He says yes if there is fish.`,
    marks: [
      { kind: 'job', at: 'New seal, new grease, both sides', parts: { zone: 'trailer', minutes: 90 } },
      { kind: 'reading', at: '2.2 and 2.3', parts: {} },
      { kind: 'jury rig', at: 'I hammered in a nail through', parts: { zone: 'rig' } },
      { kind: 'job', at: 'Next week I turn correct pin', parts: { zone: 'rig', minutes: 30 } },
      {
        kind: 'job',
        at: 'All cable new, I pull with the old one',
        parts: { zone: 'rig', minutes: 120, setUps: { mast: 'down' } },
      },
      { kind: 'reading', at: 'Battery 12.7', parts: {} },
      { kind: 'job', at: 'New wire 5 millimetre with pressed terminal', parts: { fitting: 'wire', minutes: 60 } },
      { kind: 'job', at: 'I drill new drain at lowest point', parts: { zone: 'cockpit', minutes: 60 } },
      { kind: 'store', at: 'two seals', parts: {} },
      { kind: 'store', at: 'wire 5 mm three metres', parts: {} },
      { kind: 'store', at: 'stainless bar 12', parts: {} },
    ],
  },
  {
    name: 'notes for whoever has her next',
    page: `For whoever has her after me this fortnight. She's in good heart. A few things you ought to know, and a few I'd be grateful for.

You ought to know: the outboard likes half choke. The forehatch opens from the left. The board goes down with a bang, which is only the stop. The clock is wrong.

The gaiter on the rudder stock has a tear. I've wound cling film round it and it's keeping most of the spray off. There's a new gaiter in the locker, which I'd have fitted but I'd no large screwdriver, so please fit it, fifteen minutes.

The port lazy jack has parted and hangs down like a bell rope. Knot it up out of the way, or better, splice in a new piece, half an hour with the boom on the crutch. I'd say better.

Somebody has put the wrong bulbs in the cabin lamps and they're like an operating theatre. I've grown used to it.

The bunk slats: number four is broken. I sleep on the other side. If you want to, cut a new one, there's a length of pine under the cover; ten minutes.

Please don't touch the shrouds. I tuned them with a gauge on Sunday and I'm vain about it.

The bow fender needs its lanyard spliced again, it's through to the last strand. I can do that at home if you leave it in the porch. I'll do it, then: fender to the porch, lanyard by me.

Battery on leaving 12.56. Bilge sponged out, there was about an egg cup.

On the trailer, one thing that matters: the breakaway cable is frayed where it goes through the ring, and the law wants one that works. A new one is eight pounds at any motor shop, and clips on in a minute.

The committee is talking about a new boat. I've said what I think about that.

Get: breakaway cable, three-strand 8 mm (2 m). I've left a fiver in the kettle.`,
    marks: [
      { kind: 'jury rig', at: "I've wound cling film round it", parts: {} },
      { kind: 'job', at: 'so please fit it, fifteen minutes', parts: { minutes: 15 } },
      { kind: 'job', at: 'splice in a new piece', parts: { minutes: 30 } },
      { kind: 'job', at: 'cut a new one, there', parts: { minutes: 10 } },
      { kind: 'job', at: 'The bow fender needs its lanyard spliced again', parts: {} },
      { kind: 'reading', at: 'Battery on leaving 12.56', parts: {} },
      { kind: 'job', at: 'A new one is eight pounds', parts: { zone: 'trailer', minutes: 1, consequence: 'unlawful' } },
      { kind: 'store', at: 'Get: breakaway cable', parts: {} },
      { kind: 'store', at: 'three-strand 8 mm', parts: {} },
    ],
  },
];
