import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'round her with the phone in a pocket',
    page: `okay is it going yes it's going so starting on the trailer because that's where I'm standing the jockey wheel clamp has lost its handle and I've got a pair of mole grips on it which works but they'll fall off on the road one day so get a new clamp and bolt it on half an hour the tyres I did them this morning thirty five all round so they're fine and the lights were fine when I towed her home going forward the bow roller has a bit of rust on the pin but it turns so whatever the anchor locker lid though the catch is broken and it bangs all night on a mooring I want to put a new catch on that quarter of an hour foredeck is sound I had the moisture meter on it in the autumn and it was nothing to write home about the forehatch leaks on the left front corner not much a teacup I'd say but it goes straight on the bunk so the seal has to come out and a new one glued in that's an hour and then leave it shut overnight mast next the spreaders are good I renewed the boots last year the burgee halyard is a shoelace frankly but a shoelace will do for a burgee the gooseneck pin is bent you can see it's bent so straighten it or turn a new one I'll take it out and see my mate with the vice in the cabin it smells of feet always did there's a loose screw in the step tighten that with a bit of matchstick five minutes oh and the battery twelve point six and the bilge is bone dry somebody at the club said I should fit a second bilge pump but he says that to everybody in the cockpit the tiller's all right I oiled it and the winch on the right clicks like it should right the outboard that I'm not touching it went first pull in October we need hatch seal and contact glue that's all I think`,
    marks: [
      { kind: 'jury rig', at: "I've got a pair of mole grips on it", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'get a new clamp and bolt it on', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'reading', at: 'thirty five all round', parts: {} },
      { kind: 'job', at: 'I want to put a new catch on that', parts: { minutes: 15 } },
      { kind: 'job', at: 'the seal has to come out and a new one glued in', parts: { minutes: 60 } },
      { kind: 'job', at: 'straighten it or turn a new one', parts: {} },
      { kind: 'job', at: 'tighten that with a bit of matchstick', parts: { zone: 'cabin', minutes: 5 } },
      { kind: 'reading', at: 'the battery twelve point six', parts: {} },
      { kind: 'store', at: 'we need hatch seal', parts: {} },
      { kind: 'store', at: 'contact glue', parts: {} },
    ],
  },
  {
    name: 'tidy, by zones',
    page: `Walk-round, 8 April. Cover off at nine, back on by noon.

Bow. Eye bolt for the winch strap: nut has backed off two turns. Tighten and add a lock nut, 10 minutes. Fairleads fine. Paint on the stem chipped, same as every spring, nobody dies of it.

Foredeck. Non-slip worn by the mast step, still better than bare. Ventilator cowl cracked right round; a plastic bag with a rubber band is over it since March. New cowl ordered, screw it down on fresh sealant when it comes, 30 minutes.

Mast. On the trestles. Heel plug rattles, always did. VHF cable chafed to the braid where it leaves the mast foot. Cut out the bad bit, new plug, 45 minutes. Shroud terminals looked at with the glass: no cracks. Cotter rings all replaced in 2026.

Cabin. Battery 12.55 V, rested overnight. Fuse panel labelled at last (did that on Sunday). Starboard bunk board split along the grain. Glue and two battens underneath, 40 minutes, then cramps overnight. Toilet: the less said the better, but it works.

Board case. Pin dry. No weep after the long trip last year. Nothing.

Cockpit. Port jib car, spring gone, so it slides where it likes. Fit the spare from the biscuit tin, 10 minutes. Locker drains clear. Cushion buttons missing: two. Not important.

Transom. Lower gudgeon: one bolt weeping rust inside. Draw it, look at it, and rebed with a new bolt, an hour with one person inside and one out. Outboard bracket stiff but moves.

Trailer. Nearside roller has gone square and marks the hull. Swap for a new one with the boat jacked, 30 minutes. Hubs: regreased in February.

To get: one keel roller, a coax plug, M8 lock nut.

Thinking aloud: would a folding propeller be silly on such a small boat? Yes.`,
    marks: [
      { kind: 'job', at: 'Tighten and add a lock nut', parts: { zone: 'bow', minutes: 10 } },
      { kind: 'jury rig', at: 'a plastic bag with a rubber band is over it', parts: { zone: 'foredeck' } },
      { kind: 'job', at: 'screw it down on fresh sealant when it comes', parts: { minutes: 30 } },
      { kind: 'job', at: 'Cut out the bad bit, new plug', parts: { zone: 'rig', minutes: 45 } },
      { kind: 'reading', at: 'Battery 12.55 V', parts: {} },
      { kind: 'job', at: 'Glue and two battens underneath', parts: { zone: 'cabin', minutes: 40 } },
      { kind: 'job', at: 'Fit the spare from the biscuit tin', parts: { zone: 'cockpit', minutes: 10 } },
      { kind: 'job', at: 'Draw it, look at it, and rebed with a new bolt', parts: { zone: 'transom', minutes: 60 } },
      { kind: 'job', at: 'Swap for a new one with the boat jacked', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'store', at: 'one keel roller', parts: {} },
      { kind: 'store', at: 'a coax plug', parts: {} },
      { kind: 'store', at: 'M8 lock nut', parts: {} },
    ],
  },
  {
    name: 'messages to the other owner',
    page: `Hi, at the boat. Gate code still works.

Cover ok, one eyelet pulled out on the port side. I've put a clothes peg and string through the hem for now. Eyelet kit is at mine, will punch a new one in on Sunday, 10 mins.

You asked about the bilge. Dry. So your repair to the case is good, well done you.

Pump works btw. Float switch sticks though. If you lift it by hand it goes, leave it alone and it doesn't. I say we replace it, 30 mins, they're cheap.

Someone has had the good bucket.

Backstay tensioner: the line is cheese. New bit of 5 mm, can you splice it? Or a bowline, I'm not proud.

Mainsail: looked along all the batten pockets. Third from top is open at the end, batten will shoot out first gybe. Needs hand stitching, half an hour. Rest of sail good for a few seasons, the man at the loft said so too.

Not going to bother with the mildew on the bag.

Compass light dead. We never sail at night. Leave it??

Rudder: uphaul cleat slips. I flipped it open and the cam teeth are round. New cleat, two screws, same holes. 15 mins.

Trailer board: left indicator flashes double speed so bulb's out somewhere. It's the indicator bulb itself, black as your hat. New one goes in before we tow her, it's the law.

Battery read 12.7 when I got here. Solar earning its keep.

Do you want to do the long weekend in May? Tides look ok.

Shopping so far: 5mm line 4 metres, 21 watt bulb, cam cleat. I'll go Saturday.

Oh and the neighbour is selling his, the green one. Asking silly money.

Last thing. The hatch washboard sticks after rain. Plane a shaving off the edge and varnish where I've been. 20 mins. But only when it's dried out properly.`,
    marks: [
      { kind: 'jury rig', at: "I've put a clothes peg and string through the hem", parts: {} },
      { kind: 'job', at: 'will punch a new one in on Sunday', parts: { minutes: 10 } },
      { kind: 'job', at: 'I say we replace it, 30 mins', parts: { minutes: 30 } },
      { kind: 'job', at: 'New bit of 5 mm, can you splice it', parts: {} },
      { kind: 'job', at: 'Needs hand stitching', parts: { minutes: 30 } },
      { kind: 'job', at: 'New cleat, two screws, same holes', parts: { zone: 'transom', minutes: 15 } },
      { kind: 'job', at: 'New one goes in before we tow her', parts: { zone: 'trailer', consequence: 'unlawful' } },
      { kind: 'reading', at: 'Battery read 12.7', parts: {} },
      { kind: 'store', at: '5mm line 4 metres', parts: {} },
      { kind: 'store', at: '21 watt bulb', parts: {} },
      { kind: 'store', at: 'cam cleat. I', parts: {} },
      { kind: 'job', at: 'Plane a shaving off the edge and varnish', parts: { minutes: 20 } },
    ],
  },
  {
    name: 'first spring with a boat',
    page: `Okay, so, new boat owner here, bear with me. I've had her since Thanksgiving and this is the first time I've really crawled over the whole thing with a flashlight.

Front first. There's a metal thing the front wire attaches to, and the pin through it has no ring in it. There's just a twist of coat hanger, I guess the previous guy did that. A proper ring-ding costs fifty cents so I'll put one in, two minutes, before the mast goes up or I'm in trouble.

The deck feels solid. I read you're supposed to tap it with a hammer handle, and I did, and it all sounded the same, so I'm calling that good.

Inside there's a window that has been crying down the wall. I watched a video and it says pull the frame, scrape it, bed it with butyl. Looks like two hours for somebody like me. The other windows are dry.

The battery says 11.9 which the guy at the store told me is bad. So I'm going to put it on the charger tonight in the garage, and then we'll see if it holds. If it doesn't, well, that's another hundred bucks.

I love the little cabin table. The leg wobbles some. I can live with a wobble.

The centerboard cable has a couple of broken strands right by the handle and they bite. My brother-in-law says replace it or lose a finger, so replace it, maybe an hour, he'll help, it takes two.

Should I be worried about hairline cracks around the cleats? Everybody on the dock says gel coat does that.

Engine. I had the shop do the whole tune-up in January. Runs great. The gas hose bulb is stiff as a rock though, so a new hose goes on my list.

Trailer bearings: I have no idea when they were last greased. I'll jack it up and pump some in, both sides, an hour.

Stuff to buy: ring-dings, butyl tape, fuel hose. And a hat.`,
    marks: [
      { kind: 'jury rig', at: "There's just a twist of coat hanger", parts: {} },
      { kind: 'job', at: "A proper ring-ding costs fifty cents so I'll put one in", parts: { minutes: 2 } },
      { kind: 'job', at: 'pull the frame, scrape it, bed it with butyl', parts: { zone: 'cabin', minutes: 120 } },
      { kind: 'reading', at: 'The battery says 11.9', parts: {} },
      { kind: 'job', at: "I'm going to put it on the charger tonight", parts: {} },
      { kind: 'job', at: 'so replace it, maybe an hour', parts: { zone: 'case', minutes: 60, hands: 2 } },
      { kind: 'job', at: 'so a new hose goes on my list', parts: {} },
      { kind: 'job', at: "I'll jack it up and pump some in", parts: { zone: 'trailer', minutes: 60 } },
      { kind: 'store', at: 'Stuff to buy: ring-dings', parts: {} },
      { kind: 'store', at: 'butyl tape, fuel', parts: {} },
      { kind: 'store', at: 'fuel hose', parts: {} },
    ],
  },
];
