import type { MarkedPage } from '../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'tidy, at the pontoon',
    page: `Walk-round, tied up at the pontoon, bright and breezy. I'll take her from the pointed end.

The pulpit is solid; I hung my whole weight on it. The furling drum is stiff for the first turn and then runs. It's packed with salt, I can see the crust. A kettle of fresh water through it and a drop of dry lubricant, ten minutes. The furling line itself I replaced in the autumn.

Foredeck. The hatch has crazed so badly that you can't see through it, but it keeps the rain out, and I never wanted to see through it. The mooring cleat, though, moves when I stamp beside it. It isn't the screws, they're tight; the pad underneath has gone to porridge. A new pad of hardwood, bedded properly, an hour and a half, and it takes two of us, one above and one below.

Mast. The rigger looked it over in March and passed everything. The topping lift is a bit of thin cord at the moment, since the old one parted; it'll hold the boom up at rest and nothing besides. A proper one gets reeved next time the mast is down.

Starboard side deck. The grabrail has lost three of its plugs, and water sits in the holes. New plugs, set in varnish, half an hour. The port one is intact.

Below. Dry bilge. 12.7 volts at eight o'clock, before I'd switched anything on. The curtain wire had come adrift and I hooked it back just now. There's a stain beneath the port window; I ran the hose over it for ten minutes and nothing came in, so it's an old stain. The depth sounder goes blank whenever I press the button on the radio. I'm told people clip ferrite rings on the cable for that. I'll try it, twenty minutes.

Cockpit. Both sheet winches turn well. The mainsheet is fuzzy but sound. The locker under the helmsman's seat has two inches of water in it after every shower, because the channel round the lid is bunged up with leaves. Poke it clear with a piece of wire, five minutes.

Stern. The bottom rung of the ladder has been swinging on one bolt since August. New bolt and a locking nut, please, before the children come for the muster. I have mentioned the foredeck cleat; of all these it's what I'd do first, as she lies to it.

Shopping: ferrite rings, an M8 bolt with its nut, a small tin of varnish. Not for now: teak in this cockpit, when my ship comes in.`,
    marks: [
      { kind: 'job', at: 'A kettle of fresh water through it', parts: { minutes: 10 } },
      { kind: 'job', at: 'A new pad of hardwood, bedded properly', parts: { zone: 'foredeck', minutes: 90, hands: 2 } },
      { kind: 'jury rig', at: 'The topping lift is a bit of thin cord at the moment', parts: {} },
      { kind: 'job', at: 'A proper one gets reeved', parts: { setUps: { mast: 'down' } } },
      { kind: 'job', at: 'New plugs, set in varnish', parts: { minutes: 30 } },
      { kind: 'reading', at: '12.7 volts', parts: {} },
      { kind: 'job', at: "people clip ferrite rings on the cable for that. I'll try it", parts: { minutes: 20 } },
      { kind: 'job', at: 'Poke it clear with a piece of wire', parts: { zone: 'cockpit', minutes: 5 } },
      { kind: 'job', at: 'New bolt and a locking nut', parts: { zone: 'transom', outing: 'muster' } },
      { kind: 'store', at: 'Shopping: ferrite rings', parts: {} },
      { kind: 'store', at: 'an M8 bolt', parts: {} },
      { kind: 'store', at: 'a small tin of varnish', parts: {} },
    ],
  },
  {
    name: 'rowed out, in one breath',
    page: `okay is it going yes the little red thing's on so I've rowed out and I'm on board and it's flat calm first off the mooring bridle um where it goes through the fairlead on the right it's chafed a third of the way through I turned it end for end two years ago so that trick's used up make up a new one with hose over it I can splice that at home in front of the telly say an hour and a half the anchor well was full of weed but I've just chucked that out so that's that then the forehatch the knob that you turn to shut it spins and doesn't bite there's a bungee from the handle down to the bunk leg that's been there since the winter and it'll do for sitting on a mooring but it wants a new knob they had one at the jumble only it was the wrong size mast looks straight from here the burgee's gone I suppose the gulls had it who cares the lazy jack on the left has come down it's lying on the cabin top the little block's let go up by the spreaders and I'm not climbing so tie it back on with a new block once the mast's down quarter of an hour the cabin top's a bit chalky I gave it a polish last year and it lasted till june so no not again oh the vent the mushroom one it's lost its cap so the rain goes straight on the cooker I've jammed a yoghurt pot in it and it works a treat actually the cap's on order pop it on when I get it going below now smells all right carpet's dry the battery says twelve point two that's a bit low but the panel had gull all over it and I've wiped that so it ought to come up by itself the gas ran out at Easter I swapped the bottle already the pump I gave it forty strokes and it came up every time radio's fine I got an answer off the harbour office um what else the tiller the hole for the pin has gone oval so there's a good inch of wag before the rudder does anything drill it out and put a bush in an hour tops outboard tank's half full the rubber bulb though is cracked and it weeps petrol on my hand and that's dangerous that is with a kettle going new bulb before anybody starts it ten minutes and there's barnacles along the waterline I'll give them a good scrape next time she dries out half an hour the bloke two moorings up has lost his rudder altogether apparently and they're saying the dues are going up right shopping three strand twelve mil four metres bit of clear hose and a fuel bulb the boom's been dented since I bought her okay I'm off the tide's going`,
    marks: [
      { kind: 'job', at: 'make up a new one with hose over it', parts: { minutes: 90 } },
      { kind: 'jury rig', at: "there's a bungee from the handle down to the bunk leg", parts: {} },
      { kind: 'job', at: 'it wants a new knob', parts: { zone: 'foredeck' } },
      {
        kind: 'job',
        at: 'tie it back on with a new block',
        parts: { zone: 'rig', minutes: 15, setUps: { mast: 'down' } },
      },
      { kind: 'jury rig', at: "I've jammed a yoghurt pot in it", parts: {} },
      { kind: 'job', at: "the cap's on order pop it on when I get it", parts: {} },
      { kind: 'reading', at: 'twelve point two', parts: {} },
      { kind: 'job', at: 'drill it out and put a bush in', parts: { fitting: 'tiller', minutes: 60 } },
      { kind: 'job', at: 'new bulb before anybody starts it', parts: { minutes: 10, consequence: 'danger' } },
      { kind: 'job', at: "I'll give them a good scrape", parts: { minutes: 30 } },
      { kind: 'store', at: 'three strand twelve mil', parts: {} },
      { kind: 'store', at: 'bit of clear hose', parts: {} },
      { kind: 'store', at: 'a fuel bulb', parts: {} },
    ],
  },
  {
    name: 'in messages',
    page: `hi. at the boat. will send as I go

cover off. no puddles. good

winch strap fine (we changed it in feb remember)

trailer. right hand tyre has a bulge on the inner wall like half a tomato. not towing on that. new tyre, place on the ring road does them while you wait. 1 hr all in

lights tested with the car. brakes yes indicators yes. number plate is hanging on with cable ties cos the bracket snapped

ok round the lanes. but bolt a new bracket on before the estuary pls. 20 min

mast: happy on its crutches

actually no. kicker block, wheel has split in half. swap it, 5 min, there's a spare in the blue box

shroud adjusters ok. one split ring missing port side!! had one in my pocket, put it in. done

who left a banana in the side pocket

was it you

it was you

jib ok. window in it has gone yellow. can live with that

main: batten two, pocket torn open at the outer end. my aunt has the machine. will drop it round hers tues

toe straps. stbd one sags, elastic has had it. new elastic, 5 min

self bailer sticks, wont go down without a kick. strip and grease, half hour. has to be propped to get at it

crack in the floor by the mast foot??? sent you photo

ok you say scratch. good. forget that

12.4 in the battery box, nothing on

port buoyancy tank had a cup of water in it, sponged that out. its bung has gone sticky like toffee. new bung

rudder uphaul fine. pintles greased last month

grip on the tiller extension worn smooth, dont care, we wear gloves

neighbour came by. says his has got blisters. ours hasnt

is it normal that the board hums at 5 knots?

remind me about the tyre. seriously

to get: 2 m shock cord, a rubber bung, plate bracket

home. cold. you owe me a banana`,
    marks: [
      { kind: 'job', at: 'new tyre, place on the ring road', parts: { zone: 'trailer', minutes: 60 } },
      { kind: 'jury rig', at: 'number plate is hanging on with cable ties', parts: {} },
      { kind: 'job', at: 'bolt a new bracket on', parts: { minutes: 20, outing: 'estuary' } },
      { kind: 'job', at: 'wheel has split in half. swap it', parts: { minutes: 5 } },
      { kind: 'job', at: 'will drop it round hers tues', parts: {} },
      { kind: 'job', at: 'new elastic, 5 min', parts: { minutes: 5 } },
      { kind: 'job', at: 'strip and grease, half hour', parts: { minutes: 30, setUps: { boat: 'propped' } } },
      { kind: 'reading', at: '12.4 in the battery box', parts: {} },
      { kind: 'job', at: 'its bung has gone sticky like toffee. new bung', parts: {} },
      { kind: 'store', at: '2 m shock cord', parts: {} },
      { kind: 'store', at: 'a rubber bung', parts: {} },
      { kind: 'store', at: 'plate bracket', parts: {} },
    ],
  },
  {
    name: 'first boat',
    page: `Hi, so I've had her for three weeks and I've watched, like, loads of videos, and I'm going to say everything I see and then somebody at the club can tell me which of it matters.

The front. There's a wire from the front up to the top of the mast, and where it joins on there's a bolt that ought to have a little split ring in it, only there's some garden wire twisted through instead. I'm guessing that's wrong?? The man in the shop laughed and gave me a proper ring for nothing. It's in my pocket and I've still not put it in. Two minutes!

Then the flat bit where you stand to do the anchor. It's like soap when it's wet, I've gone over once already. The last owner left a roll of that gritty tape so I'm going to stick strips of that down. An hour maybe. Does it have to be warm?

There are brown streaks under one of the metal things on the edge that the wires come down to, the left one. I wiped it and it came back. Could be nothing, could be awful. Someone who knows should look at it before I put any sail up.

The mast I've had up once with four people and it was terrifying but fine.

Inside. It smelled of wet dog, so I aired it all weekend and it's loads better. There was a mouse nest in the sail bag, ew, gone now, and no holes, I checked. I bought a meter! The battery said 11.9. I think that means it's empty? So it has to come home and go on the charger overnight. The tap just coughs but I've got bottles, I don't need the tap.

The board in the middle goes down okay but it jams halfway coming up. There are stones in the slot, I can see them with a torch. If we had her propped up high enough I could rake them out from underneath.

The engine's been to the shop, it came back yesterday with a bill as long as my arm, and it starts first pull. The bottom hinge of the rudder, I can turn the bolts with my fingers. So tighten those, with that glue for threads? Fifteen minutes.

On the trailer one of the lights is smashed on the corner, I may have backed into the bin. I've stuck red tape across it, which apparently is all right for a week or two. New lens, they cost about the same as a sandwich.

And I keep reading that you should change all the wires every ten years? I don't know how old they are. That's a question, not a job, I hope.

To get: thread glue, a red lens and possibly courage.`,
    marks: [
      { kind: 'jury rig', at: "there's some garden wire twisted through", parts: {} },
      { kind: 'job', at: "It's in my pocket and I've still not put it in", parts: { minutes: 2 } },
      { kind: 'job', at: "I'm going to stick strips of that down", parts: { minutes: 60 } },
      { kind: 'job', at: 'Someone who knows should look at it', parts: {} },
      { kind: 'reading', at: 'The battery said 11.9', parts: {} },
      { kind: 'job', at: 'it has to come home and go on the charger', parts: {} },
      {
        kind: 'job',
        at: 'I could rake them out from underneath',
        parts: { zone: 'case', setUps: { boat: 'propped' } },
      },
      { kind: 'job', at: 'So tighten those', parts: { zone: 'transom', minutes: 15 } },
      { kind: 'jury rig', at: "I've stuck red tape across it", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'New lens, they cost about the same', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'thread glue', parts: {} },
      { kind: 'store', at: 'a red lens', parts: {} },
    ],
  },
  {
    name: 'old hand',
    page: `Forty-one years I've had boats in this creek, so don't expect me to get worked up.

Stem fitting's as good as the day I made it. I ran a rag down the forestay and it never snagged. Anchor warp I cut back last autumn; the rotten fathom's tying up beans now.

Mast's in the shed. There's a hairline in the port spreader root, you want the light just so to see it. My late pal would have said it'll see us out. It won't. It goes to the welder on Friday, he owes me.

Gooseneck has got a nail in it where there should be a split pin. That nail's been there since July, I know, I know. Split pin, a minute's work.

Halyards good. One's gone green. Green never broke a rope.

Starboard side deck gives underfoot, just abaft the shroud, about a dinner plate of it. Put the spike in and it came out wet. That's the ply gone. Cut it out, scarf a fresh bit in, glass over. That's two days of my life and I'll not start till there's a dry spell in May.

Coamings had their oil at Easter.

Cabin. Cupful in the bilge, sweet, so it's rain. It tracks down the mast step bolt, always did. Dollop of bedding under the washer, quarter of an hour. The rail off the berth front I've glued up at home already, and it's only to be pinned back on.

Compass reads wrong if you put your knife beside it. So don't.

Board drops well and lifts hard. My back, some say. I say the tail block wants oil. Five minutes. The case weeps for a week till the wood takes up. Leave it be.

Tiller I turned out of ash two winters back, lovely thing.

Outboard. The pull cord's down to three or four strands by the handle. When it goes you'll be on a lee shore, they always wait for that. New cord, half an hour, and mind the spring.

Trailer's been hosed and greased. Jockey wheel clamp slips, so there's a joiner's cramp on it to stop it dropping. The lad said get a new clamp. Lad's right for once. Twenty minutes.

They tell me the bottom paint you get now isn't a patch on the old stuff. Nor is it. Hers will do this year. Young fellow alongside has scrubbed his to the bare boards, more fool him.

I want a split pin, half a sheet of six mil ply, glass tape and a starter cord. And that soft deck, tell the lad to step over it, not on it.`,
    marks: [
      { kind: 'job', at: 'It goes to the welder on Friday', parts: { zone: 'rig' } },
      { kind: 'jury rig', at: 'Gooseneck has got a nail in it', parts: { zone: 'rig' } },
      { kind: 'job', at: "Split pin, a minute's work", parts: { minutes: 1 } },
      { kind: 'job', at: 'Cut it out, scarf a fresh bit in', parts: { zone: 'decks' } },
      { kind: 'job', at: 'Dollop of bedding under the washer', parts: { minutes: 15 } },
      { kind: 'job', at: "it's only to be pinned back on", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'the tail block wants oil', parts: { zone: 'case', minutes: 5 } },
      { kind: 'job', at: 'New cord, half an hour', parts: { zone: 'transom', minutes: 30 } },
      { kind: 'jury rig', at: "there's a joiner's cramp on it", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'get a new clamp', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'store', at: 'I want a split pin', parts: {} },
      { kind: 'store', at: 'half a sheet of six mil ply', parts: {} },
      { kind: 'store', at: 'glass tape', parts: {} },
      { kind: 'store', at: 'a starter cord', parts: {} },
    ],
  },
  {
    name: 'in the driveway, American',
    page: `Alright, so she's in the driveway, the dog's asleep under the trailer, and I've got about an hour of daylight. Let me just walk around her and talk.

Up front. Bow light, I flipped the switch and nothing. Wiggled the plug, came on. Wiggled it again, off. So there's crud in that connector, and I'm gonna cut it out and put a new waterproof one in. Figure half an hour.

Bow stop on the trailer, the rubber V thing, it's split down the middle and the bolt head's starting to rub on her nose. I wedged a chunk of old carpet in there. I'll grab a new one next time I'm in town and bolt it on, ten minutes.

Deck hardware, I rebedded all of that over the winter, y'all heard me complain about it. Not a drop since.

The stanchion by the port gate wobbles. It's cracked at the weld. Nobody leans on that one, okay? It needs to come off and go see the fabricator out by the county road. Coming off is like twenty minutes, then he keeps it a week.

Sail cover's missing maybe three snaps. Hangs there fine.

Okay, cabin. Fan works. Head, I rebuilt that in March, never again. Battery, twelve eight resting. Bilge pump: I lifted the float with my finger and it doesn't kick on. Flip it to manual, runs like a champ. So it's the float switch. Swap it out, forty-five minutes, and till that's done don't leave her in the water by herself.

The companionway slide drags on the right. My father-in-law says plane it. Honestly I think just wax it, five minutes.

Cockpit. The seat latch busted last fall and I replaced it. The tiller, the finish is shot, it's down to gray wood on top. Sand it and lay on four coats, I could do that on the kitchen counter if my wife's out of town. Buddy of mine across the lake had his snap clean off in like fifteen knots. Not ours. Ours is solid wood.

Outboard's peeing kind of a dribble. Could be just a bug nest. Run some trimmer line up the hole first, and if that doesn't do it then we're into the impeller.

Trailer. Bunks got new carpet. Tires have plenty of tread. Port hub was warm after the drive and the other one stone cold, so pull that hub, check the bearing and repack it, an hour, before the shakedown.

Hardware store: waterproof connectors, sandpaper, a can of spar varnish. Float switch is already in the mail. Oh, and that bow light, I know I said it, but it's not legal to be out after dark without it, so don't let me skip it. Someday, a dodger.`,
    marks: [
      {
        kind: 'job',
        at: "I'm gonna cut it out and put a new waterproof one in",
        parts: { minutes: 30, consequence: 'unlawful' },
      },
      { kind: 'jury rig', at: 'I wedged a chunk of old carpet in there', parts: {} },
      {
        kind: 'job',
        at: "I'll grab a new one next time I'm in town and bolt it on",
        parts: { zone: 'trailer', minutes: 10 },
      },
      { kind: 'job', at: 'It needs to come off and go see the fabricator', parts: { minutes: 20 } },
      { kind: 'reading', at: 'twelve eight resting', parts: {} },
      { kind: 'job', at: 'Swap it out, forty-five minutes', parts: { zone: 'cabin', minutes: 45 } },
      { kind: 'job', at: 'I think just wax it', parts: { minutes: 5 } },
      { kind: 'job', at: 'Sand it and lay on four coats', parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'Run some trimmer line up the hole first', parts: { zone: 'transom' } },
      {
        kind: 'job',
        at: 'pull that hub, check the bearing and repack it',
        parts: { fitting: 'hub', minutes: 60, outing: 'spring' },
      },
      { kind: 'store', at: 'waterproof connectors', parts: {} },
      { kind: 'store', at: 'sandpaper', parts: {} },
      { kind: 'store', at: 'a can of spar varnish', parts: {} },
    ],
  },
  {
    name: 'and then there was the heron',
    page: `Well. You can't tell about the boat without the heron, because he's why there's a hole in the spray hood. Stands there of a morning as if he'd paid the mooring fee. I shouted, and up he went and put a toe through the clear panel. I've got half a freezer bag taped over it, and you'd be surprised, that saw out all the weather in March. But it's yellowing, and I shall have to have a real panel sewn in. There's a woman at the harbour does awnings, I'll take it up to her.

Where was I. The front. My uncle had a boat where the whole front came off, in a lock, with the keeper watching. Ours is firmly on. The roller squeaked, and I rubbed a bit of candle on it and it stopped.

The mast, now. We had it down on the lawn and the postman fell over it. While he sat there I noticed that where the aerial wire comes out at the foot, the edge is like a tin lid and it's sawn half into the cable. A rubber grommet wants putting in there, ten minutes, and best done before the mast goes back up.

That was the day of the wedding. Not mine. At mine it rained so hard that the organist rowed home. Which reminds me, rain. It comes in over the cooker, down a screw of the handrail, hangs on the end of it and falls in the soup. I ate the soup. But out with that screw, some goo in the hole and back with it. Twenty minutes, and it must be dry, which round here means August.

The battery I had home and back in the wheelbarrow, all charged, and it's thirteen or near enough. Twelve nine, if you want to be a schoolmaster about it.

The man I had her from said she was built by two brothers who weren't speaking, one did the left half and one the right. On the right there's three blisters just above the water, as if from a hot pan. I pricked one and it was only water, so there's no hurry. I'll grind those out and fill them at the end of the season. Put it down or I'll forget.

The boarding ladder's got a bootlace for a hinge pin. How we lost the pin I won't tell. I've some rod in the shed, so cut a length off and peen the ends over. Quarter of an hour.

My neighbour bought a new rudder and it floats, so now he can't keep it on.

The last roller on the trailer has gone flat on one side like an old cheese, so she comes on with a thump. I bought one in the sales. It's got as far as the porch. Half an hour to fit.

I did tell you about the soup? The handrail. Not another summer of that. So I need goo and a grommet.`,
    marks: [
      { kind: 'jury rig', at: "I've got half a freezer bag taped over it", parts: {} },
      { kind: 'job', at: 'I shall have to have a real panel sewn in', parts: {} },
      { kind: 'job', at: 'A rubber grommet wants putting in there', parts: { minutes: 10, setUps: { mast: 'down' } } },
      { kind: 'job', at: 'out with that screw, some goo in the hole', parts: { minutes: 20 } },
      { kind: 'reading', at: 'Twelve nine', parts: {} },
      { kind: 'job', at: "I'll grind those out and fill them", parts: {} },
      { kind: 'jury rig', at: "The boarding ladder's got a bootlace for a hinge pin", parts: {} },
      { kind: 'job', at: 'cut a length off and peen the ends over', parts: { minutes: 15 } },
      {
        kind: 'job',
        at: "I bought one in the sales. It's got as far as the porch. Half an hour to fit",
        parts: { zone: 'trailer', minutes: 30 },
      },
      { kind: 'store', at: 'I need goo', parts: {} },
      { kind: 'store', at: 'and a grommet', parts: {} },
    ],
  },
  {
    name: 'engineer, by what fails first',
    page: `Inspection, dictated, boat on the trailer on level ground. I'm sorting by what fails first rather than by where it is.

Top of my list is the lower gudgeon on the transom. Of four bolts one turns in its hole and one has lost its nut altogether. The load is now carried by two, diagonally, and any prying will have those as well. Replace all four with longer ones and large washers, sealed. Fifty minutes, and a second person has to be inside on the nuts.

Second, the mainsheet traveller. The car runs well now that I've rinsed it. The port end stop has cracked across, so the car could leave the track. I have put a hose clip round the track as a stop, adequate in shear but ugly. New stops, both ends: ten minutes.

Third, electrical. Open circuit voltage 12.62 with the battery at rest. Under load it sags hardly at all, which is what I'd expect at that age. The solar regulator claims to be charging, however, and yet nothing flows. The fuse is intact. Hence an open joint somewhere between regulator and battery, most probably the fuse holder, which is green inside. Replace the holder, twenty minutes.

Fourth, the board. With it down I can move the tip sideways by three times what I'd call clearance; the cheek pieces in the slot have worn. I propose two strips of plastic, screwed and bonded in from below, with her propped, and left overnight for the epoxy.

Fifth. The starboard cockpit drain swallows a bucket in 25 seconds and the port one takes 90. So the port hose is either furred up or has collapsed. I'd start with a bottle brush, five minutes, and only cut into it if that fails.

Examined and passed: chainplates, forestay, masthead sheave (which I lubricated), bilge pump, winch strap, coupling, navigation lights. Brakes were adjusted in March. The cabin leak has not shown itself since I resealed the window last autumn; I poured dyed water at the mast foot as well and none of it appeared. I regard that as closed.

Sixth, the catch of the outboard cowl lets go at full throttle. It's bent. Straighten it in the vice, fifteen minutes.

Seventh, the nearside suspension arm sits a finger's width lower than the other. It may be the rubber ageing, it may always have been so. I need to measure both, loaded and empty, before I form a view. A quarter of an hour.

A colleague claims that galvanised shackles and stainless chain eat one another. Possibly; we have neither.

On the gudgeon once more: there's a red tag on the tiller so that nobody takes her out.

Purchases: M6 bolts, penny washers, one fuse holder, a pair of track stops, epoxy resin. In the long run I'd enjoy designing her a lifting rudder. Nobody needs one.`,
    marks: [
      {
        kind: 'job',
        at: 'Replace all four with longer ones and large washers',
        parts: { zone: 'transom', minutes: 50, hands: 2 },
      },
      { kind: 'jury rig', at: 'I have put a hose clip round the track as a stop', parts: {} },
      { kind: 'job', at: 'New stops, both ends', parts: { minutes: 10 } },
      { kind: 'reading', at: 'Open circuit voltage 12.62', parts: {} },
      { kind: 'job', at: 'Replace the holder', parts: { minutes: 20 } },
      {
        kind: 'job',
        at: 'I propose two strips of plastic, screwed and bonded in',
        parts: { zone: 'case', setUps: { boat: 'propped' } },
      },
      { kind: 'job', at: "I'd start with a bottle brush", parts: { zone: 'cockpit', minutes: 5 } },
      { kind: 'job', at: 'Straighten it in the vice', parts: { zone: 'transom', minutes: 15 } },
      { kind: 'job', at: 'I need to measure both, loaded and empty', parts: { minutes: 15 } },
      { kind: 'store', at: 'M6 bolts', parts: {} },
      { kind: 'store', at: 'penny washers', parts: {} },
      { kind: 'store', at: 'one fuse holder', parts: {} },
      { kind: 'store', at: 'a pair of track stops', parts: {} },
      { kind: 'store', at: 'epoxy resin', parts: {} },
    ],
  },
  {
    name: 'how the season went',
    page: `I ought to have said all this in October when she came out, but here it is now, off the back of an envelope.

I set out last spring with eleven things. Did: new jib sheets, the cushions, the washboards, the trailer bearings, the hatch seal. Half did: the toe rail. I got as far as the shrouds on the port side and then it was July. The rest of it's still to be stripped and oiled, four hours I'd guess.

Didn't do: the log. It never counted a mile all year. The paddle's gummed up with weed and old paint, so pull it out from inside and clean it, ten minutes. I just forgot every single time.

Didn't do and won't: the second reef. We never once wanted it.

Then what came up. In June the outhaul jammed at the boom end, and ever since then I've sailed with the clew lashed on with a sail tie. You get home like that but you can't flatten anything. The sheave's probably come off its pin. Have the end cap off and see, half an hour.

In July we touched. I'm not saying who was steering. There's a bruise on the keel as long as my hand, where you can see the weave. It's had all winter to dry, so it can be filled now, hour and a half with the sanding.

In August the stove blew out in every gust till we moved the windbreak, and it's been a lamb since. Same month the heads door fell off. I screwed that back the same evening.

September, up the river, the engine cut out twice. Both times the tank vent was shut, i.e. me.

By then the radio had gone deaf. A friend reckons it's the aerial plug at the mast foot, and I reckon he's right, it's full of verdigris. Cut it off and solder a new one on while the mast's down; forty minutes and some swearing.

And when we hauled out, the pawl on the trailer winch let go, and it does that about one time in five. That's dangerous, the handle comes round like a bat. A new winch, no tinkering, before she goes in for the shakedown.

Over the winter the sails went to the loft and came back clean. Seacock greased. Lifejackets weighed and in date. Battery lived in the scullery and was 12.6 yesterday when I put it back.

The damp over the quarter berth that I kept on about? Still there. I've hosed it, I've talcumed it, I haven't a notion. My friend's boat had the same and it was only breath.

Two of the four fenders go flat within a day. So, to buy: two fenders, a trailer winch, an aerial plug and toe-rail oil. Speaking of which. The toe rail. Not July this time.`,
    marks: [
      { kind: 'job', at: "The rest of it's still to be stripped and oiled", parts: { minutes: 240 } },
      { kind: 'job', at: 'pull it out from inside and clean it', parts: { minutes: 10 } },
      { kind: 'jury rig', at: "I've sailed with the clew lashed on with a sail tie", parts: {} },
      { kind: 'job', at: 'Have the end cap off and see', parts: { zone: 'rig', minutes: 30 } },
      { kind: 'job', at: 'so it can be filled now', parts: { zone: 'bottom', minutes: 90 } },
      { kind: 'job', at: 'Cut it off and solder a new one on', parts: { minutes: 40, setUps: { mast: 'down' } } },
      {
        kind: 'job',
        at: 'A new winch, no tinkering',
        parts: { zone: 'trailer', consequence: 'danger', outing: 'spring' },
      },
      { kind: 'reading', at: 'was 12.6 yesterday', parts: {} },
      { kind: 'store', at: 'two fenders', parts: {} },
      { kind: 'store', at: 'a trailer winch', parts: {} },
      { kind: 'store', at: 'an aerial plug', parts: {} },
      { kind: 'store', at: 'toe-rail oil', parts: {} },
    ],
  },
  {
    name: 'two weekends left',
    page: `Right, two weekends left, and I want the order right this time, because last year I had wet glue and the mast crew standing there looking at it.

So what has to dry goes first. Friday night, then: the washboard's split along the grain, that gets glued and clamped on the kitchen table. Twenty minutes, and then it stays in the clamps till Sunday and nobody leans on it.

Saturday early, if it's dry. Two of the mast step screws just go round and round. Drill those out, fill the holes with thickened epoxy, redrill when it's hard. With nights like these I'd give it forty-eight hours before any weight comes on it, so if it's poured on Saturday the mast could be stood on it from Monday.

While that sets I keep off the roof and do the trailer. Mudguard stay on the right has rusted through, I've got it held with fencing wire and it hums at forty. Over the hedge there's a man with a welder, all I have to do is unbolt it and hand it across, half an hour. Tyres I did at new year. Lights checked, all working.

Shopping. The shop shuts at four on Saturdays, and the epoxy I need before that, so call in Friday dinnertime: epoxy and filler powder, a shackle, half a dozen rivets, a roll of rigging tape.

Sunday, washboard comes out of the clamps and that's that one finished. Then the rig, on the lawn. I've been down the shrouds with a cloth already. On the boom the kicker eye has popped one rivet out of four, so new rivets, quarter of an hour with the borrowed gun. The jib halyard shackle's bent like a banana, swap that, two minutes. And the spreader ends have gone bare and they'll have the sail, so tape round those, ten minutes. All of it while she's lying down because nobody is going up.

Second weekend is the mast. That takes three of us and hardly a breath of wind, and my cousin can do the Saturday but not the Sunday. Once it's up I can see why the boom knocks on the spray hood. I bet the topping lift's stretched. Shorten it by a hand, five minutes, and look again.

Sunday the eighteenth she gets her bilge scrubbed, there's something greasy down there since the autumn and it stinks. An hour and rubber gloves.

Battery read twelve five on Tuesday and it's back in its box. Engine was at the yard in February. The chap in the next street is still waiting for his, ha.

What I'm not doing is the non-slip. Everyone says she ought to have some. She's managed.

And those screws in the mast step, don't let me put them off, since everything else hangs on that being hard in time.`,
    marks: [
      { kind: 'job', at: 'that gets glued and clamped', parts: { minutes: 20 } },
      { kind: 'job', at: 'Drill those out, fill the holes with thickened epoxy', parts: { setUps: { mast: 'down' } } },
      { kind: 'jury rig', at: "I've got it held with fencing wire", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'unbolt it and hand it across', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'store', at: 'dinnertime: epoxy', parts: {} },
      { kind: 'store', at: 'filler powder', parts: {} },
      { kind: 'store', at: 'a shackle', parts: {} },
      { kind: 'store', at: 'half a dozen rivets', parts: {} },
      { kind: 'store', at: 'a roll of rigging tape', parts: {} },
      {
        kind: 'job',
        at: 'so new rivets, quarter of an hour',
        parts: { zone: 'rig', minutes: 15, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'swap that, two minutes', parts: { minutes: 2, setUps: { mast: 'down' } } },
      { kind: 'job', at: 'so tape round those', parts: { zone: 'rig', minutes: 10, setUps: { mast: 'down' } } },
      { kind: 'job', at: 'Shorten it by a hand', parts: { minutes: 5, setUps: { mast: 'up' } } },
      { kind: 'job', at: 'she gets her bilge scrubbed', parts: { zone: 'cabin', minutes: 60 } },
      { kind: 'reading', at: 'twelve five on Tuesday', parts: {} },
    ],
  },
];
