import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'night shift',
    page: `just come off nights so if I stop making sense it's that um it's half six in the morning and the light's gorgeous it's all pink on the mud and there's nobody about except a chap with a metal detector so quick look round her before bed the cover's fine the straps are fine I'm walking down the left side it's got that long scratch which I know about and which I've decided is a racing stripe the rubbing strake's got an end hanging off by the transom where the screws rusted away so I'll be wanting three brass screws in that and some goo say twenty minutes rudder's on rudder's good I gave the blade a wobble and nothing the uphaul on the rudder is a bootlace you did hear me right it's a bootlace off my work boots because the rope snapped at the muster and I've got proper line in the van somewhere I'll thread that through when I'm awake what's next cockpit the self bailer I took that to bits in Feb new flap it's brilliant the winch handle's gone over the side that was me last July two hundred and something feet of water well six feet of water but mud so a winch handle's on the list I suppose and cabin oh it's nice in here I could just lie down no I mustn't the lamp works the radio works the bilge has got a cupful in it and it tastes fresh yes I tasted it so it's rain and it's coming down the cable gland by the mast I can see the track of it so fresh sealant round that gland on a dry day and that should be that my wife'll wonder where I am`,
    marks: [
      { kind: 'job', at: "so I'll be wanting three brass screws in that and some goo", parts: { minutes: 20 } },
      { kind: 'jury rig', at: "it's a bootlace off my work boots", parts: { zone: 'transom' } },
      { kind: 'job', at: "I'll thread that through when I'm awake", parts: {} },
      { kind: 'store', at: "so a winch handle's on the list", parts: {} },
      { kind: 'job', at: 'so fresh sealant round that gland', parts: {} },
    ],
  },
  {
    name: 'what the surveyor said',
    page: `I had a proper surveyor in, more for the insurance than for any worry of mine, and he was at it from nine until one with his little hammer. I followed him about with a notebook. What follows is partly his and partly mine.

Hull: "remarkably good for her age." He said it twice. I'd have paid the fee for that alone.

He didn't care for the gas locker having no drain. I explained that we carry no gas, we cook on spirit. He crossed it out.

He put his thumb on the forestay fitting and felt it rock. Two of the bolts under the deck have lost their grip, so those are to be tightened with fresh washers behind, and he'd like it done "before another sail is hoisted," in that voice they have. I've put it down for Saturday.

He recommended that we fit a second bilge pump. I thought about that over the weekend, and no. We have a bucket and a frightened crew.

He asked about the wooden wedge in the case. I said that's what keeps the board from clattering since the rubber packing dropped out. He said it was as good a wedge as he'd seen. All the same it'll swell in the wet, so new rubber wants gluing in up there while she's propped.

He liked the engine. He liked my wife's fruit cake more.

The extinguisher has been out of date since the summer before last. Guilty. I'm to swap it, five minutes' work and thirty pounds.

On the rig he had no remarks, on the sails none, on the trailer a single one: the safety chain is too short to reach the car. I'll get a longer one and shackle it on.

His car wouldn't start. I lent him my battery. It showed 12.8.`,
    marks: [
      { kind: 'job', at: 'so those are to be tightened with fresh washers behind', parts: { fitting: 'forestay' } },
      { kind: 'jury rig', at: 'He asked about the wooden wedge in the case', parts: { zone: 'case' } },
      {
        kind: 'job',
        at: 'so new rubber wants gluing in up there',
        parts: { zone: 'case', setUps: { boat: 'propped' } },
      },
      { kind: 'job', at: "I'm to swap it", parts: { minutes: 5 } },
      { kind: 'job', at: "I'll get a longer one and shackle it on", parts: { zone: 'trailer' } },
      { kind: 'reading', at: 'It showed 12.8', parts: {} },
    ],
  },
  {
    name: 'bullets from the ferry',
    page: `Typing this on the ferry so I don't forget what I saw. Thumbs cold.

* Mooring lines – chafe gear on, good as new
* Bow roller – spins. No play
* Chain – first three metres thin at the links; swap it end for end, 20 mins, needs two as it's heavy
* Deck paint – flaking by the mast. It's been flaking since the old king died. Not losing sleep
* Mast up, rig tight, sang to me in the breeze
* Spinnaker pole – one jaw sticks open. Shut for now w/ a rubber band. Squirt it, work it, if no joy new spring
* Hatch garage – previous owner's repair, ugly, solid
* Chart table – don't have one. Would like one. Would like a butler as well
* Cabin sole – lifted, swept, put back
* Battery – 12.38 after a week with nobody aboard. Seems ok?
* Bilge switch – doesn't trip when you lift the float. Pump itself runs fine off the manual button. So a new float switch, half an hour, mind the crimps
* Port berth – comfy. Fell asleep. Missed first ferry
* Outboard – flushed, no drips, plug's a nice biscuit colour
* Tiller extension – I thought it was cracked, it's a pencil line. My pencil line
* Transom – gudgeon bolts weeping a bit of brown inside. Want drawing and rebedding when she's next ashore, 1.5 h
* Ensign – staff's gone missing. Suspect the Pooles' boy
* Sunset – twelve out of ten

Somebody at the next table has just been sick. Force 6 now. Glad I didn't sail over.

To buy: float switch, bedding compound.`,
    marks: [
      { kind: 'job', at: 'swap it end for end', parts: { minutes: 20, hands: 2 } },
      { kind: 'jury rig', at: 'Shut for now w/ a rubber band', parts: {} },
      { kind: 'job', at: 'Squirt it, work it', parts: {} },
      { kind: 'reading', at: '12.38 after a week', parts: {} },
      { kind: 'job', at: 'So a new float switch', parts: { minutes: 30 } },
      { kind: 'job', at: 'Want drawing and rebedding', parts: { zone: 'transom', minutes: 90 } },
      { kind: 'store', at: 'To buy: float switch', parts: {} },
      { kind: 'store', at: 'bedding compound', parts: {} },
    ],
  },
  {
    name: 'the apprentice',
    page: `Uncle Bram let me do the round on my own today. He said talk into the thing and tell it what you see, and if you don't know the word, say what it looks like.

At the front there's a metal loop that the rope goes through, and it's sharp. There's a burr on it like a fish hook. I cut my knuckle. I think you'd just file it smooth, that's five minutes, I can do it if he lends me the file.

The big pole is up and the wires are all tight. They hum. He says humming's good.

There's a plastic milk carton cut in half and tied over the thing where the wires come out on the roof. It looks daft but Bram put it there himself, because the cover cracked and the rain was getting in the plug. He's got the new cover on order and when it lands I'm to screw it on. He said I'm to!

The seats are fine. I sat on all of them.

The orange ring has a rope round it. The rope is orange too. Nothing wrong there.

In the back corner the drain hole has a sock in it. I took the sock out. So that's done, I suppose. It wasn't my sock.

Then I pulled the stick that steers and it's good, it goes left and right, and underneath there's a rope that lifts the paddle part, and that one has gone all hairy in the middle. He told me hairy means change it. So change it.

He learnt on a boat with brown sails and no engine and a dog called Major. He tells me that every single time.

On the trailer one nut is missing off the wheel. There's meant to be four and there's three. I'm sure that's bad. It has to have a nut put on before it goes anywhere.`,
    marks: [
      { kind: 'job', at: "I think you'd just file it smooth", parts: { zone: 'bow', minutes: 5 } },
      { kind: 'jury rig', at: "There's a plastic milk carton cut in half and tied over", parts: {} },
      { kind: 'job', at: "when it lands I'm to screw it on", parts: {} },
      { kind: 'job', at: 'He told me hairy means change it', parts: { zone: 'transom' } },
      { kind: 'job', at: 'It has to have a nut put on', parts: { zone: 'trailer' } },
    ],
  },
];
