import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'before the school run',
    page: `okay it is ten to eight I have got about twenty minutes before I have to fetch the kids so this will be quick um the cover came off easy this time because I finally learned the knot and underneath she's dry as toast which is nice after that week of rain the foredeck hatch shuts properly I did that seal in March and it was worth every penny bow roller though it's got a groove in the rubber that you can lay your finger in and the chain jumps sideways when you pull it so a new roller I think it's one pin and it's out quarter of an hour oh there's the heron again he stands on the next pontoon every morning like he's paying rent right rig the mast is down on its crutches I looked at all the little split pins and they're all there and all taped except the one on the forestay which has no tape on it whatsoever and that'll have somebody's sock or the jib so tape on that the gooseneck clonks it has clonked since my dad had her and it'll clonk when I'm gone cabin um the sink pump squeaks I like it it's company the battery says twelve point four four that was before I touched anything the reading lamp on the left side is held up with a bulldog clip because its bracket snapped when Jonah sat up too quick and it'll have to stay on the clip till I can get hold of a bracket and screw it on properly I don't fancy the muster with that dropping on my head no I'm joking what else the trailer jockey wheel won't wind down more than halfway it wants the thread cleaning and a dollop of grease okay they're beeping gotta go`,
    marks: [
      { kind: 'job', at: 'so a new roller I think', parts: { fitting: 'roller', minutes: 15 } },
      { kind: 'job', at: 'so tape on that', parts: {} },
      { kind: 'reading', at: 'twelve point four four', parts: {} },
      { kind: 'jury rig', at: 'is held up with a bulldog clip', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'till I can get hold of a bracket and screw it on properly', parts: {} },
      { kind: 'job', at: 'it wants the thread cleaning and a dollop of grease', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'to the man who shares her',
    page: `Dear Edwin,

I spent Sunday afternoon aboard, mostly sheltering, and promised you an account.

First, the good news, of which there is plenty. The bottom is as smooth as an egg. The rudder, about which we quarrelled so pleasantly in October, hangs without a trace of play, and I concede that your bushes were the right answer. The stove lit at the first match. I made tea and read two chapters.

Now for the rest. The starboard coaming has parted from the deck along a length of perhaps two feet; with a torch one sees daylight. I have run a strip of parcel tape along it, which looks dreadful and keeps the rain out. It ought to be glued and screwed down again before we sail, and I should say two hours, on a dry day.

The mainsheet cam no longer bites. One pulls, lets go, and the boom wanders off. I took the cheeks apart and the springs are simply tired. A pair of new springs is all it asks.

You enquired about the compass. It reads four degrees out on north and always has; I propose to live with it, as we live with your singing.

My neighbour at the dinner table, who owns something very much larger, assured me that our shrouds should be replaced every five years. I thanked him and had some more cheese.

I noticed that one of the trailer's tail lamps has a cracked lens with water sloshing about behind the bulb. We shall be stopped for it sooner or later. Would you see to a new lens? You have the car.

Margaret's hip is mending. She walks to the gate and back.

Yours, with oil on his cuffs,
Aubrey`,
    marks: [
      { kind: 'jury rig', at: 'I have run a strip of parcel tape along it', parts: {} },
      { kind: 'job', at: 'It ought to be glued and screwed down again', parts: { minutes: 120 } },
      { kind: 'job', at: 'A pair of new springs is all it asks', parts: {} },
      { kind: 'job', at: 'Would you see to a new lens', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'on the back of a card',
    page: `Wed eve, half an hour aboard, midges.

- Anchor locker: drained, hole clear. Good.
- Pulpit: one foot loose, turns by hand. Nip up from below, need a small spanner and a small arm. 10 min.
- Forestay: fine. Rigger saw it in Feb.
- Jib furler: drum grates like a pepper mill. Flush w/ fresh water, then see.
- Mast step: bit of green. It's only weather.
- Kicker: borrowed from Ned's dinghy last Aug. Ned says keep it. Ta Ned.
- Burgee halyard: gone. There's garden twine up there instead. Reeve proper line when the mast's next down.
- Cabin: smells of dog. Dog smells of cabin. Even.
- Batt 12.6 at rest.
- Loo bucket: cracked?? Held to the light. Not cracked. Just ugly.
- Companionway step: new tread on it since Sunday, pleased w/ that.
- Port window: had thought of changing it. Looked up the price. No longer think so.
- Board: goes up, comes down, bangs. As ever.
- Bilge pump: strainer full of hair and biscuit. Clean it out, 5 min.
- Outboard bracket: Ned reckons the spring's weak. Tried it w/ and w/o the motor. Ned's weak.
- Fuel hose: bulb has gone hard as a conker, hairline at the neck and a smell of petrol. Not starting her like that, could go up. Whole new hose.
- Rubbing strake: scuffs. Honourable.
- Trailer: bearings greased 2 wks ago. Wheels run true.
- Tyre, offside: sidewall crazed. Hm. Legal. Ask the tyre chap to have a look before the estuary night.

Get: fuel hose w/ bulb, 4 mm line (15 m), midge cream.

Tide was lovely. Should've brought a rod.`,
    marks: [
      { kind: 'job', at: 'Nip up from below', parts: { minutes: 10 } },
      { kind: 'job', at: 'Flush w/ fresh water', parts: {} },
      { kind: 'jury rig', at: "There's garden twine up there instead", parts: { zone: 'rig' } },
      { kind: 'job', at: 'Reeve proper line', parts: { zone: 'rig', setUps: { mast: 'down' } } },
      { kind: 'reading', at: 'Batt 12.6', parts: {} },
      { kind: 'job', at: 'Clean it out, 5 min', parts: { fitting: 'pump', minutes: 5 } },
      { kind: 'job', at: 'Whole new hose', parts: { consequence: 'danger' } },
      { kind: 'job', at: 'Ask the tyre chap to have a look', parts: { zone: 'trailer', outing: 'estuary' } },
      { kind: 'store', at: 'fuel hose w/ bulb', parts: {} },
      { kind: 'store', at: '4 mm line', parts: {} },
    ],
  },
  {
    name: 'her and him',
    page: `"Have you got it running?"

"It's running. The little red thing's on."

"Right. So. Start at the sharp end."

"The sharp end's fine. I polished it."

"You polished the anchor?"

"I polished the anchor. Write that down."

"It's a recorder, it writes itself. What about that cleat?"

"Which, the one that wobbles? It doesn't now. I had it off at Easter, there was a nut missing. Done."

"And this stain?"

"Tea."

"Tea. Lovely. Come back here. Why is there a wine cork in the deck?"

"That's where the old aerial came out. I banged a cork in so it doesn't rain on your pillow."

"And it stays like that, does it?"

"Till I plug it with filler. I've got the filler. It's half an hour, I just need a warm day."

"Hm. The door's swollen again."

"The door is always swollen in April. Come June it'll rattle. Leave the door be."

"My sister says you can plane it."

"Your sister can plane it, then. No, we're leaving it."

"Fine. What's that noise?"

"That's the board. Well, the wire. Listen — there, hear it crackle? It's got broken strands in, I pricked my thumb on them. If that goes with the kids round the case, somebody loses a toe. So I'm ordering a new wire tonight and it goes in before anyone sails."

"Before the shakedown, you mean."

"Before the shakedown."

"I'd love to go round the island this summer."

"There's always somebody would love to go round the island. Mind the lead."

"This one? It's bare."

"Where? Oh. Oh, that's the stern lamp. That's chafed on the hinge. Well spotted. I'll put a sleeve over that, two minutes."

"So I'm useful."

"You're very useful. Is the red thing still on?"`,
    marks: [
      { kind: 'jury rig', at: 'I banged a cork in', parts: {} },
      { kind: 'job', at: 'Till I plug it with filler', parts: { minutes: 30 } },
      {
        kind: 'job',
        at: "I'm ordering a new wire tonight and it goes in",
        parts: { fitting: 'wire' },
      },
      { kind: 'job', at: "I'll put a sleeve over that", parts: { minutes: 2 } },
    ],
  },
];
