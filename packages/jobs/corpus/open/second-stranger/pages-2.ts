import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'sorry about the birds',
    page: `yeah g'day so this is the walk round I said I'd do sorry about the birds um start up the pointy end so pulpit's good anchor's good the shackle on the anchor I've wired that no worries the nav light up here on the pulpit the port one the red one the lens is cracked right across and there's water sloshing round in it I could hit it with some silicone and I did that on the green one two years ago and it's still going but nah the lens is that far gone I'll chuck a whole new light on there it's two screws and two wires so twenty minutes righto the forehatch is mint I replaced the acrylic on that one over summer learnt a lot swore a lot um the stays so the rigger bloke went over the lot in January and he was happy with everything except the um the starboard no tell a lie it was port the port lower he reckoned the swage has got a hairline crack in it and he showed me and once you've seen it you can't not see it so he's making up a new one and I've just gotta pick it up and put it on before she goes anywhere you can do it mast up with a halyard tied off but I'm not that brave so mast down an hour tops the winches I stripped last winter lovely listen to that now cockpit locker this is the one that'll get me in the papers the fuel hose the primer bulb's gone hard as a rock and it's got crazing all over it and you get a whiff when the lid's been shut so that whole hose is going in the bin new one with the bulb and the clips already on it ten minutes and I won't run the donk till it's done because I like having eyebrows my mate reckons I should go electric not this year um down below battery says twelve point seven flat but the panel's on it so I wouldn't believe that the true one was last night late twelve four five the carpet stinks that's the dog not the boat the door latch in here is busted I've got an occy strap across it and to be honest I might just leave it like that nah look the missus wants a latch so a latch it is I'll grab one and whack it on at the weekend then round the back pintles good gudgeons good bottom bolt's a bit loose hang on where's my spanner there that's done that's tight trailer bearings done brakes done one of the rollers is split second from the back and it's cutting a line in the gelcoat so that needs a new roller and she's gotta come back a metre to get at it so I'll do it at the ramp next time we launch and the old man can hold the rope that's me`,
    marks: [
      { kind: 'job', at: "I'll chuck a whole new light on there", parts: { zone: 'bow', minutes: 20 } },
      {
        kind: 'job',
        at: "I've just gotta pick it up and put it on",
        parts: { zone: 'rig', minutes: 60, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'that whole hose is going in the bin new one', parts: { minutes: 10 } },
      { kind: 'reading', at: 'twelve four five', parts: {} },
      { kind: 'jury rig', at: "I've got an occy strap across it", parts: { zone: 'cabin' } },
      { kind: 'job', at: "I'll grab one and whack it on", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'so that needs a new roller', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'one coffee cup in a day',
    page: `Hi everybody. I am a little bit cold so I speak fast. In the winter I have made many things already and I am proud. Here is the new floor in the cockpit, with teak, almost teak. So.

Now to what is not made. The first what I will do is the shroud plate, on the babord, I mean port. When we was on the lake in the summer it came in water in the cabin by it, not much, one coffee cup in a day. The old seal mass has gone hard and lets go from the steel. I will screw it loose, clean with spirit, and lay a new mass. I have thought much about which one. The polymer can be put also when it is little wet, and it has skin after one half hour and is hard after two days. The polysulphide is better, but it must have one week, and here is never a week. So polymer. One hour and a half, but the mast must lie.

The other one is dry. I don't touch what is dry.

The mast lies now on the balcony, behind. In the top is the wheel for the rope, the sheave, I have oiled it Sunday and now it has no sound. But the wind arrow has lost his tail. I have made a tail of a milk carton and tape. It shows the wind, more or less, so it may sit until the autumn.

My wife has asked if we can have a toilet. I have said that we have a bucket. This discussion is not finished.

The anchor rope, it is fine, but the splice at the chain I made by myself after a book, and it looks like a bird's nest. I don't trust. I cut it off and splice again, with the book in front of me this time. Half hour.

The electricity. The battery is twelve point four zero. The fuse box has green on it, on three of the screws. I take them out, brush them, and put on this fat which is for poles.

The trailer I have had on the inspection in March and it was approved. But the band on the winch has been in the sun since we bought her, and I can tear threads from it with my fingers. If it breaks on the ramp then goes the boat by herself. I have ordered one with hook, and I change it as soon it is here.

And I buy: two tubes polymer, one box of gloves and one litre spirit.

In May we sail to the estuary over one night, with sausages. Thank you for looking. No, wait! One thing I forgot. The outboard motor. It starts, it goes, but he pees not so good as last year, it comes only drop drop. First I stick in the little hole with a fishing line, and if this helps not then it is the wheel inside. Good. Bye bye.`,
    marks: [
      {
        kind: 'job',
        at: 'I will screw it loose, clean with spirit, and lay a new mass',
        parts: { fitting: 'plate-port', minutes: 90, setUps: { mast: 'down' } },
      },
      { kind: 'jury rig', at: 'I have made a tail of a milk carton and tape', parts: {} },
      { kind: 'job', at: 'I cut it off and splice again', parts: { minutes: 30 } },
      { kind: 'reading', at: 'twelve point four zero', parts: {} },
      { kind: 'job', at: 'I take them out, brush them', parts: {} },
      { kind: 'job', at: 'I change it as soon it is here', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'two tubes polymer', parts: {} },
      { kind: 'store', at: 'one box of gloves', parts: {} },
      { kind: 'store', at: 'one litre spirit', parts: {} },
      { kind: 'job', at: 'First I stick in the little hole with a fishing line', parts: { zone: 'transom' } },
    ],
  },
  {
    name: 'him and her',
    page: `HIM: Right, so this is us, it's the weekend, well it isn't, it's Thursday, we've both got the day off.
HER: And it's dry.
HIM: And it's dry. So we're starting with the thing that's been driving us both mad, which is the hatch. The sliding one. It sticks.
HER: It doesn't stick, it jumps out of the runner on your side.
HIM: It jumps out of the runner, because the runner's lost its screws at the front end. I've got one of them in my pocket. So the holes are stripped, and I'm going to fill them with a bit of thickened epoxy, let it go off overnight and then put the screws back in.
HER: You could just use fatter screws.
HIM: You could, and they'd come through the ceiling. No, epoxy.
HER: Fine. Next.
HIM: Next. The tiller. I love that tiller.
HER: He sanded it every night in February, in front of the telly.
HIM: Eight coats. We needn't say any more about the tiller.
HER: Tell them about the cushions.
HIM: The cushions are your department.
HER: They're done, I just wanted somebody to say so. What about this then. What's this peg for?
HIM: Ah. That's a clothes peg. It's, um, it's keeping the wire on the back of the bilge pump switch. The little spade thing broke.
HER: So when we were out there in that blow the pump was on a clothes peg.
HIM: It was a good clothes peg. I'll crimp a new spade on, it's literally two minutes.
HER: Before the shakedown, please.
HIM: Before the shakedown. And the battery while I'm here, I haven't got my glasses.
HER: Twelve point five four.
HIM: That'll do. Right, the mast. It's got to come down anyway for the, whatsit, the aerial. There's water in the plug, up at the top, so when it's down I want to cut the end off and put a new plug on and wrap it in that tape that sticks to itself. Forty minutes.
HER: And the spreaders? One of them was drooping.
HIM: That was last year. I pinned it. Look, it's level.
HER: It's level-ish.
HIM: Forestay's fine. Oh, the lashing on the guard wire, back here, that's gone all stiff and, yeah, that's broken actually. Look at that, it's broken in my hand. So that wants a new lashing. Five minutes, I'll do it after lunch.
HER: And the bucket lid doesn't clip.
HIM: It's a bucket. You wanted a boat with a bucket.
HER: I wanted a boat with a door.
HIM: Trailer. Hubs I greased. Tyres are a year old. The number plate...
HER: Has got our old car's number on it.
HIM: Has got our old car's number on it. Get one made up and stick it on. It's against the law as it is.
HER: And one day a boat with a door.
HIM: One day a boat with a door. Cut.`,
    marks: [
      { kind: 'job', at: "I'm going to fill them with a bit of thickened epoxy", parts: {} },
      {
        kind: 'jury rig',
        at: "it's keeping the wire on the back of the bilge pump switch",
        parts: { fitting: 'pump' },
      },
      { kind: 'job', at: "I'll crimp a new spade on", parts: { minutes: 2, outing: 'spring' } },
      { kind: 'reading', at: 'Twelve point five four', parts: {} },
      {
        kind: 'job',
        at: 'I want to cut the end off and put a new plug on',
        parts: { zone: 'rig', minutes: 40, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'So that wants a new lashing', parts: { minutes: 5 } },
      { kind: 'job', at: 'Get one made up and stick it on', parts: { zone: 'trailer', consequence: 'unlawful' } },
    ],
  },
  {
    name: 'kindly listen to the end',
    page: `Bosun speaking. I've been over the trailer sailer this morning and this goes to whoever's on the work party, so kindly listen to the end before you ring me up.

Forward. Anchor present, chain present, bitter end made fast, which is more than can be said for last season. The painter is a disgrace, somebody has joined two bits of different rope with a granny knot. That is to be replaced with four metres of ten mil, eye spliced on the one end. Half an hour if you can splice, and if you can't, come and ask.

Foredeck good. Jib was repaired in November by the loft. Good.

Mast. Down, on the rack. The sheave runs free. The gooseneck pin has been swapped for a, I'll be polite, for a coach bolt. It's the wrong metal and the wrong size and it's eating the fitting. I'm told it was put in on the day of the race to get her round the course, very well, these things happen, but it's now April. The right pin is in the bosun's store, left-hand drawer, tobacco tin. Fit that. Ten minutes.

I had a good long look at the shroud plates because of the business with the other boat, where the whole thing pulled out. These are tight and they're dry.

Cabin. Battery twelve point two. Somebody left the lamp on. Put it on charge and leave it there till the weekend. The fire extinguisher went out of date in January. It goes back for exchange, and she's not to leave the slip without one. First aid box, complete. I did think the bilge smelt, but then I've got a cold.

Board. It stops two inches short of all the way up and it has done since she was dropped on the shingle. There'll be a stone in the case. She wants lifting and propping, two people and a bent bit of flat bar, poke about until it drops out. I'd allow an hour and a half.

Stern. Rudder blade's chipped at the tip but that's cosmetic, leave it be. The downhaul has nothing to make fast to, because the cleat came off. I've got it here. Drill afresh half an inch further along, the old holes are past it, with a dab of sealant in the old ones to keep the wet out. Twenty minutes.

Outboard is away at the mechanic's and will be back on Monday.

Trailer. Lights tested. The mudguard was welded in the autumn, thank you to the gentleman concerned. The tie-down, the one that goes over the back, has a ratchet that won't hold a click. New one. Ask the treasurer, gently.

I've been asked about painting her. The committee will discuss it, as it's been discussing it since I had hair.`,
    marks: [
      { kind: 'job', at: 'That is to be replaced with four metres of ten mil', parts: { zone: 'bow', minutes: 30 } },
      { kind: 'jury rig', at: "has been swapped for a, I'll be polite, for a coach bolt", parts: { zone: 'rig' } },
      { kind: 'job', at: 'Fit that. Ten minutes', parts: { minutes: 10 } },
      { kind: 'reading', at: 'Battery twelve point two', parts: {} },
      { kind: 'job', at: 'Put it on charge and leave it there', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'It goes back for exchange', parts: {} },
      {
        kind: 'job',
        at: 'poke about until it drops out',
        parts: { zone: 'case', hands: 2, minutes: 90, setUps: { boat: 'propped' } },
      },
      { kind: 'job', at: 'Drill afresh half an inch further along', parts: { zone: 'transom', minutes: 20 } },
      { kind: 'job', at: "has a ratchet that won't hold a click. New one", parts: { zone: 'trailer' } },
    ],
  },
];
