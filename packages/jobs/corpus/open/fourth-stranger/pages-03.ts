import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'driving home',
    page: `right I'm in the car so hands free and everything um just while it's in my head what did we do today we got the bottom scrubbed that's done and the waterline masked and painted that's done too and it looks a million dollars honestly I couldn't stop looking what we didn't do is the log impeller because it was getting dark it's full of weed and baby barnacles so that still has to come out for a scrub there's a car up my backside go round then go round um the other thing Phil noticed was the boom end cap it's just sitting there it's not riveted any more it falls off if you tilt it so two rivets in that ten minutes bring the riveter from the shed the vang's fine the outhaul's fine Phil had a lot to say about my outhaul I listened politely to all of it and I'm changing nothing traffic lights hang on okay the window on the galley side that one I've got cling film and masking tape over it where the pane cracked in the frost it's not pretty and it does keep the wet off I rang the plastics place they're cutting me a pane for Thursday week so it's get that in with new rubber and that's a two hour job I should say with Phil holding the outside um what else the radio works I talked to a lady in a lighthouse well not in a lighthouse you know what I mean she said loud and clear the trailer pulled lovely on the way down there was a time it weaved all over but that was the old tyres anyway I've missed my turning oh for crying out loud`,
    marks: [
      { kind: 'job', at: 'so that still has to come out for a scrub', parts: {} },
      { kind: 'job', at: 'so two rivets in that ten minutes', parts: { minutes: 10 } },
      { kind: 'jury rig', at: "I've got cling film and masking tape over it", parts: {} },
      { kind: 'job', at: "so it's get that in with new rubber", parts: { minutes: 120, hands: 2 } },
    ],
  },
  {
    name: 'a grandmother writes',
    page: `My dear Kit,

You asked how the old girl is, and I take it you mean the boat. I am very well too, thank you.

I went down on the bus with my sandwiches. The yard has put up a fence, so now one has to walk all round by the brambles, and the code for the gate is the year of the flood.

Your grandfather's varnish is holding up better than he did. I ran my palm along the whole coaming and there's not a blister on it. The tiller, on the other hand, has gone grey and furry from being left out, and I'd dearly like it rubbed down and given three coats before you take your young lady to the muster. First impressions, Kit.

The little brass lamp I took home to polish, it is on my mantelpiece and you may have it back in May.

Down below was sweet and dry. A mouse has been at the lee cloth, though, there's a hole big enough for my fist. I have put a safety pin across it, but a child would go straight through. If you'll bring me the cloth I'll patch it on the machine.

I couldn't budge the seacock under the sink. I didn't force it. It must be freed and greased, your uncle always said a stuck seacock is a hole waiting to happen.

The man from the next berth tried to sell me a solar panel. I told him I had seen the sun and was not impressed.

Do you remember when you fell in off the pontoon in your school shoes? I found one of them in the locker.

I gave your battery a look: 12.7, if I had the right glasses on.

All my love, and eat something green,
Gran`,
    marks: [
      {
        kind: 'job',
        at: "I'd dearly like it rubbed down and given three coats",
        parts: { fitting: 'tiller', outing: 'muster' },
      },
      { kind: 'jury rig', at: 'I have put a safety pin across it', parts: {} },
      { kind: 'job', at: "I'll patch it on the machine", parts: {} },
      { kind: 'job', at: 'It must be freed and greased', parts: { zone: 'cabin' } },
      { kind: 'reading', at: '12.7', parts: {} },
    ],
  },
  {
    name: 'in a temper',
    page: `Who. Put. The anchor. Away wet. It wasn't me. It was Gareth. The whole locker stinks and there's a bloom of rust on every link and I only had it galvanised two years ago. Well, it's rinsed now, I rinsed it, I've been here an hour and all I've done is rinse other people's anchors.

And the deck brush is gone. And somebody's eaten the emergency chocolate. Fine.

Calm. Calm down. Cup of tea.

Okay. Proper look. The forehatch won't dog down on the left because the handle's snapped off. There's a bit of broomstick through the loop, that's Gareth's idea, and credit where it's due it does pull the hatch tight. But I want a real handle on there. I'll send off for one tonight and fit it Saturday.

The guardrail wire's gone slack, it droops like a washing line. That's just a turn or two on the tensioner; do it with the mast up so you can feel it against the shrouds.

Cushions are lovely. New covers, my sister's work. They cost me a weekend of listening to her divorce.

Sink: fine. Tap: drips. The tap has dripped since we bought her and I've decided it's a feature.

The lads at the club say the keel bolts — she hasn't got keel bolts. She's got a board. I told them. They nodded.

Echo sounder, fine. Kettle, fine. Clock, stopped at twenty past four, which I quite like, it's always nearly teatime.

The outboard won't stay tilted, it slides down all by itself when you hit a wave. The catch is rounded off. File it square again, quarter of an hour, or if there's not enough metal left get a new catch.

And Gareth owes me a chocolate bar. Put that on the list.`,
    marks: [
      { kind: 'jury rig', at: "There's a bit of broomstick through the loop", parts: { zone: 'foredeck' } },
      { kind: 'job', at: "I'll send off for one tonight and fit it Saturday", parts: { zone: 'foredeck' } },
      { kind: 'job', at: "That's just a turn or two on the tensioner", parts: { setUps: { mast: 'up' } } },
      { kind: 'job', at: 'File it square again', parts: { minutes: 15 } },
    ],
  },
  {
    name: 'phone propped on the hatch',
    page: `is it going it's going alright alright so this is me and the boat day three of the easter holidays and it's um sunny can you believe it I've got my sleeves up the plan is we're off on the estuary on the fifteenth of may with the Hendersons who have never sailed so everything has to work ha okay so yesterday I did the loo don't ask and I put the new fairleads on and they're bedded and they look like they grew there and today I was going to do nothing but I noticed the jib sheet car on the port track it doesn't lock any more you set it and it creeps back it's the plunger it's worn to a nub so I reckon a new plunger or a whole new car let's see what they've got but it wants doing before the Hendersons otherwise I'll be forever hauling it forward and swearing and they're churchgoers um the step on the transom creaks I stood on it and jumped on it and it's only creaking it's been like that since it was built the starboard cave locker has a puddle in it every time it rains and I've chased that leak for two years I finally found it with talcum powder it's the stanchion foot so the thing is lift that stanchion and rebed it an hour and a bit for now I've stuck a yoghurt pot under the drip and I empty it when I remember the stove's good the fire blanket's good the smoke thing beeps when I make toast so that's good um the bow light lens has filled with condensation so pop that open dry it and a lick of silicone ten mins while I'm at it yes anyway here comes the ice cream van`,
    marks: [
      { kind: 'job', at: 'so I reckon a new plunger or a whole new car', parts: { outing: 'estuary' } },
      { kind: 'job', at: 'lift that stanchion and rebed it', parts: {} },
      { kind: 'jury rig', at: "I've stuck a yoghurt pot under the drip", parts: {} },
      { kind: 'job', at: 'so pop that open dry it', parts: { zone: 'bow', minutes: 10 } },
    ],
  },
];
