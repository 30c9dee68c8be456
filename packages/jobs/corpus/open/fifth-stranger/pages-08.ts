import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'broad and breathless',
    page: `aye so its me again and am doon at the boat wi the wee yin and shes supposed tae be passing me tools but shes passing me shells so anyway the good news is the deck is dry aw the way roon and the stanchion that wis wobblin isnae wobblin any mair because I put the big washers under it in february and the windows are grand as well then the jib furler line is chewed through near enough at the drum youd think a rat had been at it so thats tae come oot and be replaced afore anybody sails ten metre of six mil twenty minutes and while youre there the drum itself is fine spins like a top I gied it a skoosh of fresh water last year and that wis all it needed um whit else the wee cleat on the mast for the flag nae bother the cabin hatch slides the wrang way for a left handed man but thats me no the hatch aye and the port locker has nae latch so its got a fishing weight hung on it wi a bit of twine tae keep it doon and it works that well that ma cousin wants wan but we'll need a right latch on it for goin tae the muster or the committee will be at us ten minutes wi the screwdriver ma cousins boat by the way has mushrooms real wans on a stalk the battery is new so it is the charger is ancient but it does the job then the tiller I whipped it wi tarred twine five year ago and its no moved and if it moves I'll whip it again naw sweetheart thats no a spanner thats a crab pit it doon pit it doon`,
    marks: [
      { kind: 'job', at: 'so thats tae come oot and be replaced', parts: { minutes: 20 } },
      { kind: 'jury rig', at: 'its got a fishing weight hung on it', parts: { zone: 'cockpit' } },
      { kind: 'job', at: "we'll need a right latch on it", parts: { minutes: 10, outing: 'muster' } },
    ],
  },
  {
    name: 'asked and answered',
    page: `Q. Is the boat ready?
A. No. Nor am I.

Q. What's holding you up?
A. - The mainsheet block on the horse. One cheek is cracked and it's bound with whipping twine, many turns, very pretty, and it would be all right for ghosting about.
- A new block, the swivel kind. It's in the post. Five minutes with a spanner and pliers.

Q. Anything structural?
A. - The knee under the port seat has come away from the hull. The glass tabbing split.
- Grind, wet out, three layers of tape, peel ply on top. I'd say two and a half hours, spread over a weekend, it mustn't be under 12 degrees and it mustn't rain.
- The starboard knee? Fine. Did that one for my fiftieth birthday.

Q. Does she leak?
A. A cup a week when afloat. She has leaked a cup a week since my aunt owned her.

Q. Have you thought of a cover with windows in?
A. Yes, for eleven seconds.

Q. Electrics?
A. - 12.48 V at 8 this morning.
- The cabin fan went round backwards. I swapped the wires, now it goes the right way.
- The bow light has water in it. Open, dry, grease the seal, shut. 15 mins.

Q. What about the trailer?
A. - Passed its inspection in February with praise.
- The tail board is fixed on with two luggage straps because the bracket rusted out. No one has ever complained, but I imagine the law would. I'll weld up a bracket. An hour. Must happen before we drive to the estuary.

Q. Have you bought the new anchor rope?
A. Bought, spliced, stowed, admired.

Q. So what's still to buy?
A. - glass tape, 75 mm
- a welding mask that fits a head

Q. Who asks all these questions?
A. My mother.`,
    marks: [
      { kind: 'jury rig', at: "it's bound with whipping twine", parts: {} },
      { kind: 'job', at: 'A new block, the swivel kind', parts: { minutes: 5 } },
      { kind: 'job', at: 'Grind, wet out, three layers of tape', parts: { minutes: 150 } },
      { kind: 'reading', at: '12.48 V', parts: {} },
      { kind: 'job', at: 'Open, dry, grease the seal, shut', parts: { minutes: 15 } },
      { kind: 'jury rig', at: 'The tail board is fixed on with two luggage straps', parts: { zone: 'trailer' } },
      {
        kind: 'job',
        at: "I'll weld up a bracket",
        parts: { minutes: 60, outing: 'estuary', consequence: 'unlawful' },
      },
      { kind: 'store', at: '- glass tape, 75 mm', parts: {} },
      { kind: 'store', at: 'a welding mask', parts: {} },
    ],
  },
  {
    name: 'why the mast stays down',
    page: `My neighbour put his mast up last Saturday and has been looking at me across the fence ever since. Let him. I had mine up early one year, and took it down again in April for a bulb, and again in May for a shackle, and I vowed never more.

It stays down until four things are ticked, and two are ticked. The masthead light has its new holder. The spreader roots have been crack-tested with the dye, and there were no cracks, which cost me fourteen pounds to find out and was worth it.

The third is the sail track. A yard of it has pulled away where the rivets corroded, and when I last went out I'd threaded a bit of wire through two holes and twisted it up tight behind. It got me round the bay. I've been lent the long-nosed riveter; eleven rivets with a dab of barrier paste under each. Forty minutes.

The fourth is the VHF cable, which someone spliced halfway up with a screw connector. That gets replaced entire, deck to masthead, drawn through on the old one. An hour if nothing snags. It's quite possible to make a decent splice in such cable, I was taught it in the service, but this isn't one.

I've polished the whole length as well, though there's no earthly need.

On the subject of mast heel blocks: I'm asked every year whether ours should be packed up a bit to rake her back. She has had a touch of lee helm since the new jib. But I've tried packing, and I've tried letting off the forestay, and I've concluded that I like it.

And then, on the seventeenth, up she goes, with Pomfrey on the tail of the rope. He has the weight for it.`,
    marks: [
      { kind: 'jury rig', at: "I'd threaded a bit of wire through two holes", parts: { zone: 'rig' } },
      {
        kind: 'job',
        at: 'eleven rivets with a dab of barrier paste',
        parts: { minutes: 40, setUps: { mast: 'down' } },
      },
      {
        kind: 'job',
        at: 'That gets replaced entire, deck to masthead',
        parts: { zone: 'rig', minutes: 60, setUps: { mast: 'down' } },
      },
    ],
  },
  {
    name: 'first year, honest account',
    page: `I have owned a boat for seven months and I am still finding out what it's called, the thing I have broken.

This week it was the thing that the boom pushes against. I'm told: kicking strap. The lower tackle has a block, and the block has a wheel, and the wheel has come in two. I tied the strap off straight to the eye with a spare bit of rope. It does nothing clever, but it stops the boom going up in the air. A kind lady in the shop sold me the wheel and says it presses in with a vice. Twenty minutes, she thinks; I've put down forty.

I haven't broken the windows. I'd like that noted.

In the autumn I took a class in glue, of all things. It was four evenings, in a school, on chairs made for infants. I learned that you clean first, that you clean second, that you mix by weight, and that it's the surface underneath which fails and not the glue. I've since stuck back the coaming cap, the shelf, and my son's scooter, and none has come apart.

On the strength of that I'm going to tackle the loose keel bump, sorry, the grounding shoe. It's hanging down at the front by a finger's width. Clean, clean, dry, epoxy, a strap round the hull to pull it up and two days of not looking. I'd guess three hours, lying on my back, and with the boat propped.

There's a draught in the cabin from where an instrument used to be. A jam jar lid covers it, held by tape, and a passing gull admired itself in it for an hour. I rather like the lid.

I've been warned about the bilge, the ballast, the tide, the mud and the man in the green boat. I keep a list. No trouble so far but the man.`,
    marks: [
      { kind: 'jury rig', at: 'I tied the strap off straight to the eye', parts: { zone: 'rig' } },
      { kind: 'job', at: 'it presses in with a vice', parts: {} },
      {
        kind: 'job',
        at: "I'm going to tackle the loose keel bump",
        parts: { zone: 'bottom', minutes: 180, setUps: { boat: 'propped' } },
      },
      { kind: 'jury rig', at: 'A jam jar lid covers it, held by tape', parts: { zone: 'cabin' } },
    ],
  },
];
