import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'the man with the hose',
    page: `Right, so, good morning, it's Thursday, it's stopped raining, and as you can see she's on the driveway with the cover rolled back. And today what I want to have a go at, finally, is this window. Starboard side, the aft one. Now if I just, can you see that? There's a line of green along the bottom edge there, and that is where the water comes in. I know it does because I sat inside last September with a torch, like an idiot, while my wife stood out here with the hose. So what I think I'll do is take the whole frame out, get all the old muck off with a plastic scraper, not a metal one, I've learnt that lesson, and then bed it down again on butyl. I did think about polyurethane. The trouble with polyurethane is you've got to leave it, what is it, seven days before it's gone off properly, and it sticks so well that the next person to take it out will hate you, and the next person is me. So butyl. Call it two hours. I did the port one the year before last and it hasn't let in a drop since.

Now, moving forward, mind the hose. Bow roller, that's nice, I put a new bush in that over Christmas. What isn't so clever is this cleat. Look, it rocks. There's no pad under it, just two little washers. Bit of ply underneath, some bigger washers, half an hour, if I can persuade my arm to go round that corner.

The mast's up at the moment, I put it up on Sunday to see if I still could. So the steaming light will have to wait until it's down again. That's not worked since, ooh, last summer some time. I've a feeling it's a broken wire inside. It could be the bulb. I bought a bulb anyway. One for when the mast's down, find out which it is and mend it.

And the forestay, people keep asking me about the forestay, it's two seasons old, there's nothing wrong with it.

Cockpit. This bit of blue rope round the tiller is, well, it's holding the two halves together, if I'm honest. It split last summer and I whipped it up there and then and it got us home. I really ought to glue it. Epoxy with a bit of thickener, clamps, leave it overnight, two nights if it's like this. No, hang on, I'd have to get the varnish off first. So say an hour of doing and then the waiting.

Down below, battery, twelve point six one with nothing drawing. Happy with that. Bilge pump, happy with that. I had the headlining off in the winter and stuck it all back up, and from here it looks all right.

Last thing, trailer. The jockey wheel clamp slips. You wind it up tight and she still goes down overnight. I could grind a flat on it, I don't know, but a new clamp's not dear, so I'll just get one and fit it. Before the shakedown. Right. That's coffee.`,
    marks: [
      { kind: 'job', at: 'take the whole frame out, get all the old muck off', parts: { minutes: 120 } },
      { kind: 'job', at: 'Bit of ply underneath, some bigger washers', parts: { minutes: 30 } },
      {
        kind: 'job',
        at: "One for when the mast's down, find out which it is and mend it",
        parts: { zone: 'rig', setUps: { mast: 'down' } },
      },
      { kind: 'jury rig', at: 'This bit of blue rope round the tiller', parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'I really ought to glue it', parts: { minutes: 60 } },
      { kind: 'reading', at: 'twelve point six one', parts: {} },
      { kind: 'job', at: "I'll just get one and fit it", parts: { zone: 'trailer', outing: 'spring' } },
    ],
  },
  {
    name: 'it is like ninety degrees',
    page: `okay so hey. we are out here in the driveway and it is. like ninety degrees already. in April. so I'm gonna keep this short, I'm not gonna keep this short. um. so I got the boat two years ago off a guy at the lake and. she's a great little boat. a lot of you. well both of you. asked what's the plan this spring so here's the plan.

first thing is the rub rail no what do they call it the rubbing strake, on the starboard side, it got crunched at the dock. that was not me. that was a pontoon boat full of people with a cooler. so about this much, I'd say two feet, is split. what I'm gonna do is I'm gonna cut out just the bad part and scarf a new piece in, my grandpa showed me how you do that, eight to one. it's probably a Saturday. call it four hours with the glue up and then you leave the clamps on til the next day.

uh what else. so the hall yard. the main hall yard. the cover's kinda fuzzy but it's fine it's fuzzy all over. the jib hall yard though has that shekel on it the snap shekel and the spring in the pin is shot. it opened up on me once. in the middle of the lake. and the jib just. came down. so that gets swapped out, five minutes, I got one in the truck I just keep forgetting about it.

the pump works. let me. hear that? works great.

okay so this is gross. in here, in the floor, there's a hole where the old depth thing was and the guy before me stuffed it with a wine cork and goop. and honestly? it's held. for two years. but I don't love it. so I'm gonna grind a bevel around it and glass it over. both sides. with epoxy, not polyester, poly doesn't stick that good to old stuff. two hours and then it cures a day.

the battery, so it's, uh, twelve point three three. I was kinda hoping for more. gonna throw the charger on it tonight and see if it comes up.

my buddy says I should put a bowsprit on her. no. my buddy has a pontoon boat.

lights on the trailer I redid all of that last fall with heat shrink and everything. love em. the port hub is warm tho. when we drove back from storage it was way hotter than the other one, like you couldn't keep your hand on there hot. so that's a bearing and I have to do that before I tow it anywhere, because if that goes on the freeway, you know. I've never done one. I watched a guy do it.

and I wanna. someday. paint her red. that's it, stay hydrated. oh I need to buy the bearing kit, a tub of grease, and some glass mat. okay how do I`,
    marks: [
      {
        kind: 'job',
        at: 'cut out just the bad part and scarf a new piece in',
        parts: { zone: 'topsides', minutes: 240 },
      },
      { kind: 'job', at: 'so that gets swapped out', parts: { zone: 'rig', minutes: 5 } },
      { kind: 'jury rig', at: 'stuffed it with a wine cork and goop', parts: {} },
      { kind: 'job', at: 'grind a bevel around it and glass it over', parts: { minutes: 120 } },
      { kind: 'reading', at: 'twelve point three three', parts: {} },
      { kind: 'job', at: 'gonna throw the charger on it tonight', parts: { zone: 'cabin' } },
      { kind: 'job', at: "so that's a bearing and I have to do that", parts: { fitting: 'hub' } },
      { kind: 'store', at: 'the bearing kit', parts: {} },
      { kind: 'store', at: 'a tub of grease', parts: {} },
      { kind: 'store', at: 'some glass mat', parts: {} },
    ],
  },
  {
    name: 'the good bread board',
    page: `Now. Is it going? It is, there's a red yoke lit. Grand. So this is herself, out in front of the house, and you'll have to excuse the state of the drive, the oil man was here.

I'll tell you where I'm at. I've the cover off since Tuesday and I've a good bit done already. The rudder's varnished, four coats, hanging in the shed like a ham. The anchor well is scrubbed out. I'd the two hatches off and they're bedded down again with polysulphide, that's the grey stuff, and I left it the full ten days before I let a drop of water near it, which was a job in itself in this country.

So what's left. Well the big one is the mast step, there on the deck. You put your eye down along here and you'll see there's a bit of a dip in her, and if you tap it, hear that, that's a dull kind of a knock. Over here it's sharp. There. Dull. I'd say the core is wet in under it. Now there's lads'll tell you to drill holes and inject it, and I did that on the last boat and all I had was a wet core with dear glue on top. No. It'll have to be cut open from above and the bad stuff dug out and new ply laid in with epoxy. That's a weekend, with the mast down of course, and a week of dry weather that I don't see coming.

What have I there now? Oh God, don't look. That's a bread board, the wife's good bread board, bolted in under the deckhead to take the load while I'm thinking about it. She thinks it's lost.

The shroud plates are perfect. I'd one of them off to look at it and 'twas like new, so I left the other alone.

Cockpit drains, one of them's slow. It's leaves. I'll run the hose back up it, that's five minutes. And the scupper flap on the, on the left, no, I'm facing backwards, the starboard one, has gone missing entirely. I thought about a bit of old wetsuit. Then I thought, a flap is four euro. So get the flap and screw it on.

The engine I won't go near. The brother-in-law is after doing it, new impeller and all.

The lad who had her before me raced her, if you don't mind, she won a cup in nineteen eighty something. You wouldn't think it to look at me.

Below, so. Battery is twelve point five even. The cooker tap is stiff and gas is gas, so that cooker's being taken out altogether and I'll bring the camping one. The bunk board had a crack in it and I screwed a batten along it, and it's better than it was new.

And the main wants two battens. I broke one and the other went overboard at its own request. I'll cut them out of the long bit of glass rod I have, it's twenty minutes.

If I'm spared we'll go round the islands in July. Here's the rain now, you could set your watch.`,
    marks: [
      { kind: 'job', at: "It'll have to be cut open from above", parts: { setUps: { mast: 'down' } } },
      { kind: 'jury rig', at: 'bolted in under the deckhead to take the load', parts: {} },
      { kind: 'job', at: "I'll run the hose back up it", parts: { zone: 'cockpit', minutes: 5 } },
      { kind: 'job', at: 'So get the flap and screw it on', parts: {} },
      { kind: 'reading', at: 'twelve point five even', parts: {} },
      { kind: 'job', at: "that cooker's being taken out altogether", parts: { zone: 'cabin' } },
      { kind: 'job', at: "I'll cut them out of the long bit of glass rod", parts: { minutes: 20 } },
    ],
  },
  {
    name: 'just me as ever',
    page: `Hello. It's just me, as ever, and I've got the phone propped on the wheelie bin, so if it falls over, that's why.

I single-hand her, so everything I do on this boat is really about not having to leave the tiller. Last year I led the reefing line back, with a couple of blocks from the boat jumble, and it's been a revelation. And what I want to do next is the same with the main halyard. It's a turning block at the foot of the mast and a jammer on the cabin top. I've bought the jammer already. I reckon three hours, because of the holes. You drill it oversize, you fill it with epoxy, you wait a day and then you drill it again the right size, so the core never sees water. I know people don't. I do.

Um, the lazyjacks are good. The topping lift is good. There's a nick in the jib furling line, about here, where it's been chafing on the fairlead, so I'm going to cut it there and turn it end for end, it's plenty long enough, ten minutes. And actually it's the fairlead that did it, it's got a sharp lip, so that needs rubbing down with a bit of fine paper or it'll only do it again.

Now my knees. I'm sixty-two, and the step down into the cabin is a stupid height. A friend at the club said he'd knock me up a box. He's said so three years running. I'm not holding my breath, I'm going to make it myself out of the old wardrobe door, with a lid, so the flares can live in it. Afternoon's work.

I've looked at the keel, well, the board. It goes up and down sweetly and the wire was new in twenty twenty-five. The bottom I scrubbed in October. I don't antifoul any more, she lives on a trailer, what's the point.

What was I... oh yes. The outboard bracket. When I lower it it drops with a great bang because one of the springs is broken. I've got a bungee on there, a doubled one, which takes half the weight and my shoulder takes the rest. New springs come as a pair, eleven pounds I'm told, so order those and put them on, and it isn't something I can do alone because somebody has to hold the motor. My nephew's coming at Easter, no, Easter's gone, he's coming on the seventeenth, so it'll have to be then.

The radio's fine, I did a check. Battery at breakfast was twelve point five eight.

And the little blue pot is only for tea bags. I'm going up the estuary for the night in May, if the weather will have me, and I'd want the anchor light going by then. It's in the locker. It's got a new bulb in, it just hasn't got a plug on the end. Quarter of an hour with a soldering iron. Goodness, is that hail?`,
    marks: [
      { kind: 'job', at: 'what I want to do next is the same with the main halyard', parts: { minutes: 180 } },
      { kind: 'job', at: 'cut it there and turn it end for end', parts: { minutes: 10 } },
      { kind: 'job', at: 'that needs rubbing down with a bit of fine paper', parts: {} },
      { kind: 'job', at: "I'm going to make it myself out of the old wardrobe door", parts: { zone: 'cabin' } },
      { kind: 'jury rig', at: "I've got a bungee on there, a doubled one", parts: { fitting: 'bracket' } },
      {
        kind: 'job',
        at: 'so order those and put them on',
        parts: { fitting: 'bracket', notAlone: true, due: '2027-04-17' },
      },
      { kind: 'reading', at: 'twelve point five eight', parts: {} },
      {
        kind: 'job',
        at: "it just hasn't got a plug on the end. Quarter of an hour",
        parts: { minutes: 15, outing: 'estuary' },
      },
    ],
  },
];
