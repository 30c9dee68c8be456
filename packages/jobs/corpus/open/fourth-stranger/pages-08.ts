import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'up the ladder',
    page: `I'm on the ladder so if you hear a scream that was me okay masthead is eye level the light up here is fine the vane is fine there's bird mess on everything which rain will see to the main sheave spins the jib sheave doesn't spin it sort of lurches there's a bit broken out of the rim so that's a new sheave and you want to do that before the mast goes anywhere half an hour there's the old wind cups that never worked I'll leave them they look professional coming down coming down I can see into Mrs Aldous's garden she's got her beans in already spreaders both sides good tape's good I did that tape with my own hands in a wind and it's not budged um lower shrouds good um gooseneck pin that's not a pin that's a bolt with no nut on what's holding that in it's got a bit of chewing gum oh that's disgusting whose is that it's gum and a bit of string around it right so a proper pin with a ring through it for the gooseneck they're pennies I'll get one at the shop Saturday and swap it back on the ground that's better my knees the deck's a bit slippy by the mast I nearly went there it's always the same spot that non slip's worn off I'd like to roll some more on a square metre at most an afternoon with drying the rest of the deck grips like sandpaper I skinned my elbow on it at the muster um my ladder's going back to Len he's been very decent about it I've only had it two years`,
    marks: [
      { kind: 'job', at: "so that's a new sheave", parts: { zone: 'rig', minutes: 30 } },
      { kind: 'jury rig', at: "it's gum and a bit of string around it", parts: { zone: 'rig' } },
      { kind: 'job', at: 'right so a proper pin with a ring through it', parts: { zone: 'rig' } },
      { kind: 'job', at: "I'd like to roll some more on", parts: {} },
    ],
  },
  {
    name: 'two voice notes and a third',
    page: `[first note]
Evening. Ines here. I've been at the boat since four. You won't believe it, the gate was open and a horse was standing next to her. Just standing. I took him back to the lane. So, no damage, he'd licked the bow a bit.

I put the new name on! It's slightly crooked. Nobody say anything.

[second note]
Me again, I forgot the boat part. So: the jib sheets, they're burnt where they go round the winch, glazed, you can feel it like plastic. You can turn them end for end and they'd be good for years, five minutes, I'd do it when the jib's bent on.

The stove gimbal: one of the pivot screws has disappeared. It's hanging on a twist of copper wire just now. I don't want soup in my lap. A screw, M5, and a nut that doesn't shake off. I'll see if my neighbour has one in his thousand jars and put it in.

The bunk cushions I've had at home, aired, beaten, back in place.

Someone asked if we still have the sea anchor. We never had one. We had a bucket.

[third note]
Last one, I promise. I'm in the car. When I was folding the cover I noticed that the shock cord's gone all slack along the hem, it doesn't grip. Eight metres of new shock cord and a bodkin, I can do it in front of the television.

And it was so quiet there tonight. One curlew. I nearly didn't ring you at all.

Oh — the battery. I looked. Twelve point four eight. And there's nothing to do about it. Good night!`,
    marks: [
      { kind: 'job', at: 'You can turn them end for end', parts: { minutes: 5 } },
      { kind: 'jury rig', at: "It's hanging on a twist of copper wire", parts: {} },
      { kind: 'job', at: 'A screw, M5, and a nut', parts: {} },
      { kind: 'job', at: 'Eight metres of new shock cord and a bodkin', parts: {} },
      { kind: 'reading', at: 'Twelve point four eight', parts: {} },
    ],
  },
  {
    name: 'club forum thread',
    page: `**oldbarnacle** wrote: Anyone else's boat grow moss this winter? Mine's like a lawn. Scrubbed it off this morning, took an hour, feel ten years younger.

**tern_and_tide**: Ours is at the bottom of the garden, so yes. Also slugs in the sail locker. Relocated.

**oldbarnacle**: Went on to check the lot while I was there. Topsides polished up fine. Rudder stock fine. Pendant for the board's sawn half through by the edge of the fairlead though, three strands of it just fluff. New pendant, and I'll round that edge off so it doesn't do it again. Say an hour.

**gusty**: You should go to wire.

**oldbarnacle**: Had wire. Took it off. Wire bites.

**gusty**: Fair.

**tern_and_tide**: What did you do about your bow light in the end?

**oldbarnacle**: Bicycle lamp, cable-tied to the pulpit. 4 quid. It got me home.

**tern_and_tide**: That's not legal is it?

**oldbarnacle**: It is not! There's a real one being delivered Tuesday & I'll wire that in before the spring shakedown. Don't tell the commodore.

**commodore**: I can read.

**gusty**: lol

**oldbarnacle**: Hello Commodore. Lovely speech at the supper.

**commodore**: Is your insurance paid?

**oldbarnacle**: Paid in January. Here's one for the engineers: outboard revs away but the boat hardly moves. Prop's on tight. Hub rubber slipping?

**gusty**: Sounds it. Paint a line across hub and blades, give it some welly, see if the line splits.

**oldbarnacle**: Good plan, that's what I'll do. If it's slipping it goes to the shop for a new bush.

**tern_and_tide**: Anyone selling a dinghy trolley?

**gusty**: No but my cousin has a pony trap`,
    marks: [
      { kind: 'job', at: "New pendant, and I'll round that edge off", parts: { zone: 'case', minutes: 60 } },
      { kind: 'jury rig', at: 'Bicycle lamp, cable-tied to the pulpit', parts: { zone: 'bow' } },
      {
        kind: 'job',
        at: "There's a real one being delivered Tuesday & I'll wire that in",
        parts: { outing: 'spring' },
      },
      { kind: 'job', at: 'Paint a line across hub and blades', parts: {} },
    ],
  },
  {
    name: 'without rising from the chair',
    page: `I can see her from here. I don't need to get up. The window's open, the tea's hot, the knee's on a cushion, and I shall do the whole boat from memory, as a blind man does his own stairs.

The bow: nothing. I've thought about the bow and there's nothing.

The foredeck: there's a patch, near the hatch, that gives under the heel. It's been giving since before the wedding. I drilled it, it was dry, I filled the hole, and I've decided the deck is merely tired, like the rest of us.

The mast: one halyard slaps at night and keeps the Porters awake. Tie it off, they ask. I tie it off, it comes loose. A short strop and hook on the shroud would settle it, I'll splice one up this evening, it's ten minutes, and it would be neighbourly.

The cabin: ah. The step. The step has a broken bracket, and a brick is holding it up. Two bricks, to be honest. I'm aware that bricks on a boat are a comedy. Fetch an angle bracket, bolt it through, bricks back to the rockery.

The switch panel: third switch from the top does nothing, it never did.

The cockpit: one of the slats in the seat has gone soft at the end and my grandson's foot found it. Cut a new slat from the teak under the stairs, he can help, we'll call it a lesson.

The stern: fine.

The trailer: I was told by a man in a cap that I'd been overloading it for twenty years. Well, then.

The gulls have got at something on the slip. It's too far to see. The swallows aren't back. My tea has gone cold after all.`,
    marks: [
      { kind: 'job', at: 'A short strop and hook on the shroud would settle it', parts: { zone: 'rig', minutes: 10 } },
      { kind: 'jury rig', at: 'a brick is holding it up', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'Fetch an angle bracket, bolt it through', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'Cut a new slat from the teak', parts: { zone: 'cockpit' } },
    ],
  },
];
