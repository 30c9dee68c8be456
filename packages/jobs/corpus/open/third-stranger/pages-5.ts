import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'down under, no breath taken',
    page: `yeah g'day so just having a squiz at her in the yard before it gets too hot the magpie's watching me um she's been sitting since New Year's Day pretty much and she's come up all right the gelcoat's gone a bit chalky on the sunny side I'll hit it with cutting compound one arvo and then wax it that's two beers worth of work the cover did its job no water under it except there's a bloody great gum branch been through it near the mast so there's a hole you could post a cat through I chucked a bit of old banner over it with an ockie strap and that'll keep the rain off but it'll need a patch sewn on proper the bow eye's solid the winch strap's solid I only bought it last year the jockey wheel tyre's flat as a tack but it's solid rubber now hang on no that's the old trailer this one's pumped up so yep it's flat so pump that up and see the left tail light's full of water like a little fish tank drill a hole in the bottom Dave reckons but I reckon new lens they're ten bucks and I've got to be legal on the freeway inside there was a huntsman now there isn't the battery was flat as a pancake nine point eight it said so that's on the charger now and if it won't come up past twelve by the morning she's getting a new one the bilge pump float switch sticks up you push it down and it comes good and then it sticks again so swap that the boom I took home and did the sheaves and the outhaul and it's mint the rego's paid the kids want to go to the sandbar at Easter and if it was up to me we'd go round the top and not come back righto smoko`,
    marks: [
      { kind: 'job', at: "I'll hit it with cutting compound one arvo", parts: { zone: 'topsides' } },
      { kind: 'jury rig', at: 'I chucked a bit of old banner over it', parts: {} },
      { kind: 'job', at: "it'll need a patch sewn on proper", parts: {} },
      { kind: 'job', at: 'so pump that up and see', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'I reckon new lens', parts: { zone: 'trailer', consequence: 'unlawful' } },
      { kind: 'reading', at: 'nine point eight it said', parts: {} },
      { kind: 'job', at: "if it won't come up past twelve by the morning", parts: {} },
      { kind: 'job', at: 'so swap that the boom', parts: {} },
    ],
  },
  {
    name: 'the ward sister does her rounds',
    page: `I do her like a ward round, bed by bed, and nobody gets skipped for looking cheerful.

Bow. Comfortable, eating well. Anchor shackle moused, I did it myself on Sunday.

Foredeck. A soft place beside the cleat, no bigger than a jam jar lid. Pressed it, and it weeps. I don't care for that at all. I've marked round it in pencil, and the man from the boatyard is to drill a small hole and tell me how far it has gone. He's coming Monday at ten.

Mast. Sleeping. It lies along the hedge and has had its wash.

Rigging. The port cap shroud has a kink low down where somebody shut it in the car boot. That somebody has apologised. A kinked wire is never right again; new wire, both sides at once so that they match, before the mast goes up.

Cabin. Temperature nine degrees. Dry. The curtain rail fell on me. Two screws put it back while I was there, so cross that out.

Cooker. The flexible pipe says 2016 on it, and the leaflet says ten years at the outside. It must be changed, and by a person with the ticket for gas, not by my husband.

Fire blanket, present. Extinguisher, needle in the green.

Board. Goes down when told, comes up when told. Discharged.

Cockpit. Splinter in the thwart, starboard. I have put a large sticking plaster over it, which made my colleague laugh, but it has saved two pairs of tights. It needs a proper sanding and a lick of oil, quarter of an hour.

Rudder. The blade has lost its edge, blunt as a ruler and chipped. Fill, fair, paint. A Sunday.

Trailer. Pulse steady, both wheels. Grease nipples done in March.

Batteries: 12.61, rested.

Prognosis good. Next round in a fortnight. If I retire in the spring, as I threaten to, we shall take her to the canals.`,
    marks: [
      { kind: 'job', at: 'the man from the boatyard is to drill a small hole', parts: { zone: 'foredeck' } },
      { kind: 'job', at: 'new wire, both sides at once', parts: { zone: 'rig' } },
      { kind: 'job', at: 'It must be changed, and by a person with the ticket', parts: { zone: 'cabin' } },
      { kind: 'jury rig', at: 'I have put a large sticking plaster over it', parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'It needs a proper sanding and a lick of oil', parts: { zone: 'cockpit', minutes: 15 } },
      { kind: 'job', at: 'Fill, fair, paint', parts: { zone: 'transom' } },
      { kind: 'reading', at: 'Batteries: 12.61', parts: {} },
    ],
  },
  {
    name: 'ticked and not ticked',
    page: `SPRING LIST (third copy, second got wet)

[x] Keel bolts torqued
[x] Antifoul, two coats, the blue
[x] Outboard service. Plugs, oil, anode
[ ] Outboard cowl: latch won't grip, cowl lifts off in a chop. Bend latch or find another. 20 min
[x] Battery on charge. 12.72 off the charger, so don't believe it till tomorrow
[ ] Nav lights: stern one glows like a cigarette end. Clean contacts first, then try the bulb
[x] Rubbing strake varnish. Lovely
[ ] Ditto grab rails. Gone grey. Two coats, next dry spell
[x] Washed sails in bath. Never again
[ ] Genoa: leech line comes out of its cleat, leech drums. New cleat, rivet. Take to Joan's
[-] Spray hood. Dropped. Can't afford
[x] Mast wires checked by Keith, no comments
[ ] Kicker: shackle worn to half. Replace. 2 min, got one in the tin
[-] Cabin lining. Droops. Let it
[x] Mooring rope, new
[ ] Water tank: tastes of pond. Purifying tablets overnight, flush twice
[x] Flares. New. Old ones handed in
[ ] Trailer: nearside mudguard stay, crack you can get a sixpence in. Currently hose clip + bit of angle. Keith to weld it
[x] Tyres
[x] Lights board, rewired with the good plug

BUY: bulb 10 W, tablets, more sandpaper (120)

Notes. Saw the red sloop's owner, he's selling, wants silly money. Our two crossed the bar in 1998 with worse sails than these. Launch booked 24th, HW 1140, Keith driving. Bring sandwiches, bring dry socks, don't bring the cat. Muster is in June. If the weather's foul we go by car.

Things people tell me I should do and I'm not going to: electric pump, folding prop, bigger anchor, roller reefing, lose weight.

Things I've learned this year: tin of grease, rag, and a chair. The chair matters. Never start a job at four o'clock. Label both ends.`,
    marks: [
      { kind: 'job', at: 'Bend latch or find another', parts: { zone: 'transom', minutes: 20 } },
      { kind: 'reading', at: '12.72 off the charger', parts: {} },
      { kind: 'job', at: 'Clean contacts first, then try the bulb', parts: {} },
      { kind: 'job', at: 'Ditto grab rails. Gone grey. Two coats', parts: {} },
      { kind: 'job', at: "New cleat, rivet. Take to Joan's", parts: {} },
      { kind: 'job', at: 'shackle worn to half. Replace', parts: { minutes: 2 } },
      { kind: 'job', at: 'Purifying tablets overnight', parts: {} },
      { kind: 'jury rig', at: 'Currently hose clip + bit of angle', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Keith to weld it', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'bulb 10 W', parts: {} },
      { kind: 'store', at: 'tablets, more', parts: {} },
      { kind: 'store', at: 'more sandpaper (120)', parts: {} },
    ],
  },
  {
    name: 'perishing cold in the shed',
    page: `Och, it's baltic in here. I've two jumpers on and the torch in my teeth so forgive the mumble. Half ten, Saturday.

First the good. The deck paint I did in September's bonded like iron, I cannae get a nail under it. And the windows, I hosed them for ten minutes the day, not a tear. So that's the windows off my conscience.

Now. The chainplate backing pad on the left side, down behind the books. I'd thought it was shadow. It's no shadow, it's black, and my screwdriver goes in like cheese. So it's out with that and a wee slab of fibreglass board in its place, bedded, same bolts. That's a day for one, or a morning if I can get wee Callum on the spanner. Mast stays off till it's done, and no arguments.

The tiller I've had at home by the radiator. Bonnie.

The boom's reefing hook is bent straight. I've been using a lashing through the cringle instead and in all truth I like the lashing better, it stays, hook or no hook.

The heater clicks and clicks and never catches. Gas is on. It'll be the wee electrode with soot on it. Brush that off, ten minutes, and I'd be a happier man to have done it first.

The pump: one stroke in three. There's a split in the diaphragm, I can see light through it. There's a service kit, so that's to be got and put in, it's maybe half an hour and a lot of language.

What else. The berth cushions, they're away at my sister's in the dry. Anchor warp, fine. Fenders, fine. The log's impeller, never worked, never will.

The trailer's handbrake lever flops. It'll no hold on the slip, we chocked her with a fish box last time. Cable wants taking up, or it's stretched past that and wants a new one; find out, before anybody launches anything.

I'm away for soup.`,
    marks: [
      { kind: 'job', at: "So it's out with that and a wee slab of fibreglass board", parts: {} },
      { kind: 'job', at: 'Brush that off, ten minutes', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'job', at: "that's to be got and put in", parts: { fitting: 'pump', minutes: 30 } },
      { kind: 'job', at: 'Cable wants taking up', parts: { zone: 'trailer' } },
    ],
  },
];
