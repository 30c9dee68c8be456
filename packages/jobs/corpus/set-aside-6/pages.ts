import type { MarkedPage } from '../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'waiting for the tide',
    page: `okay is it recording I think so yes I'm sat in the cockpit on the mooring waiting for the tide to do something so I may as well go through her from where I'm sitting the tiller's lovely since you oiled it thank you the mainsheet's stiff as a board but rope gets like that with salt now the cleat here where the jib sheet goes in on the right hand side doesn't bite any more the teeth have gone round and you can pull the rope straight out of it shut so that's a new pair of jaws twenty minutes if the old screws come out behind me the engine went second pull it's sitting crooked though and when I look the left clamp screw has walked itself loose again so I've run a bit of line from its handle round the rail just so we don't lose it and that'll do till somebody drills it and puts a proper bolt through half an hour and on the trailer please not out here over the water going forward the side deck's where Ned slipped there's nothing wrong with it he had his town shoes on the left shroud is slacker than the other one I can push it a good hand's breadth and the other hardly gives so a couple of turns on the bottlescrew and pin it again five minutes the rings are all taped I did that at launching down below now mind your head right there's a smell but that's only the carpet there's a cupful in the bilge and I sponged it dry yesterday and I tasted it and it's salt so it's getting in somewhere and the wood's gone dark round the bottom bolt of the board case so I'd bet on that she'd have to come out and the bolt drawn and new sealant under the washers a couple of hours the little meter says twelve point six five and the sun's not on the panel yet the window on the left I was sure it leaked but that was the kettle the fellow on the next mooring has his whole chafe tube slid down the line and it's nearly through I'll ring him tonight ours had slid as well but I've just this minute pushed it back up and tied it the anchor light I had on all night and it was still burning at six um the forehatch the strut that holds it up lets go without warning it got me on the ear so there's a boathook jammed under it at present and that wants a new strut ten minutes shopping is cleat jaws a hatch strut and a tube of sealant and they do say the harbour's putting the fees up again oh here's the tide`,
    marks: [
      { kind: 'job', at: "that's a new pair of jaws", parts: { zone: 'cockpit', minutes: 20 } },
      { kind: 'jury rig', at: "I've run a bit of line from its handle", parts: {} },
      {
        kind: 'job',
        at: 'till somebody drills it and puts a proper bolt through',
        parts: { minutes: 30, setUps: { boat: 'trailer' } },
      },
      { kind: 'job', at: 'a couple of turns on the bottlescrew and pin it again', parts: { minutes: 5 } },
      { kind: 'job', at: 'the bolt drawn and new sealant under the washers', parts: { zone: 'case', minutes: 120 } },
      { kind: 'reading', at: 'twelve point six five', parts: {} },
      { kind: 'jury rig', at: "there's a boathook jammed under it", parts: {} },
      { kind: 'job', at: 'that wants a new strut', parts: { zone: 'foredeck', minutes: 10 } },
      { kind: 'store', at: 'shopping is cleat jaws', parts: {} },
      { kind: 'store', at: 'a hatch strut', parts: {} },
      { kind: 'store', at: 'a tube of sealant', parts: {} },
    ],
  },
  {
    name: 'in short messages',
    page: `at the boat
cover's off, dry inside, hooray
green slime all up the cockpit drains but it rinsed out
left drain still only dribbles tho. something down there. needs rodding, 15 min
battery 12.39, nothing on
is that ok?? it was the same in march so prob yes
mast crutch wobbles. it always wobbles
omg the rudder
the bottom corner has split, you can see daylight between the layers
like 20 cm of it
needs opening up, epoxy in, clamps overnight. 1 hour + the night. I can do it in your garage sat?
rest of rudder fine, pins fine
tiller fine
ok bow now
roller's fine
the forestay thing at the bottom, the fork, one leg is bent out
dont like it
straighten or new one? I say new one. before the 24th
anchor locker lid: hinge pin came out in my hand. put a nail through for now
will get a proper pin, 2 mins
nav lights work, both, and the white one
oh but the switch for the cabin light you have to hold it down with your finger or it goes out. new switch, 20 min
remember the hatch leak? bone dry since you did it. genius
Mia's boat has the same leak, told her to use your stuff
jib fine. main has that little hole by batten 2 still. sticking a patch on when I get home, already got the patch
5 min
trailer: jockey wheel ok, lights ok
one of the roller things at the back doesn't turn, it's rubbed a black line on her bottom
take it off + clean the spindle + grease. half hr. she has to be off the trailer or lifted a bit I guess
tyre 2.1 bar one side 1.4 the other!!
pumped it just now. 2.1 both
get: switch, hinge pin, epoxy (the slow one), milk
milk is for us
someone's pinched the bucket. or you've got it?
the rudder, I'm serious, dont sail it till that's glued
going home, hands are blue
ps would LOVE a spray hood one day 🙂`,
    marks: [
      { kind: 'job', at: 'needs rodding', parts: { zone: 'cockpit', minutes: 15 } },
      { kind: 'reading', at: 'battery 12.39', parts: {} },
      { kind: 'job', at: 'needs opening up, epoxy in, clamps overnight', parts: { zone: 'transom', minutes: 60 } },
      { kind: 'job', at: 'straighten or new one? I say new one', parts: { fitting: 'forestay', due: '2027-04-24' } },
      { kind: 'jury rig', at: 'put a nail through for now', parts: {} },
      { kind: 'job', at: 'will get a proper pin', parts: { minutes: 2 } },
      { kind: 'job', at: 'new switch, 20 min', parts: { zone: 'cabin', minutes: 20 } },
      { kind: 'job', at: 'sticking a patch on when I get home', parts: { minutes: 5 } },
      { kind: 'job', at: 'take it off + clean the spindle + grease', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'reading', at: 'tyre 2.1 bar one side', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'get: switch', parts: {} },
      { kind: 'store', at: 'switch, hinge pin', parts: {} },
      { kind: 'store', at: 'epoxy (the slow one)', parts: {} },
    ],
  },
  {
    name: 'her first spring',
    page: `Hi, so this is my first time doing the walk round by myself and I've probably got half the names wrong, so please don't laugh. I bought her in November from a very nice man who told me everything was "sound", and I believed him about the cake as well.

Front end. There's a wheel thing that the anchor chain goes over and it spins, so I think that's good. Next to it is a metal loop that the big front wire hooks on to. It looks straight to me. Should it move a tiny bit? It moves a tiny bit.

There's a crack in the top of the deck, by the hatch, about as long as a pencil. My friend Orla, who sails, tapped it with a coin and said it's only in the shiny layer and I can ignore it. So I'm ignoring it.

The hatch itself doesn't lock. The little tongue doesn't reach the slot, it misses by about the thickness of a coin. I suppose you'd move the plate over a bit? That sounds like something even I could manage with a screwdriver, maybe half an hour.

Inside! It smelled musty, but I'd washed all the cushions in March and they're lovely. The pump works, I was so proud, I put a kettle of water in and it came out of the side. The battery said 12.1 and Orla pulled a face. She says it needs to come home and go on the charger for a night. So I'll do that on Friday.

There are two ropes that go to the thing that lifts the board and one of them has gone hairy. Orla says that isn't a crisis but it won't see the summer, so I need a new one and she'll show me how you thread it. I don't know how long that takes. I bought the rope already, in orange.

The nice man had stuck a piece of plastic over the back window with parcel tape. Under it there's a proper crack right across. So the plastic stays on for now, and I've asked a shop to cut me a new pane. It should be ready in about two weeks and then I'm going to screw it in with that black goo.

Oh, and a plank thing on the cockpit seat is loose, it goes clack when you sit down. Two of the screws just turn round and round. Longer screws?

The trailer passed its check in January, I have a piece of paper. The man at the petrol station said the chain on these ought to be thicker, but he also said it would snow.

I'd really like to paint her yellow. Not this year.

So I need to buy: black goo, screws, and a book that explains what everything's called.`,
    marks: [
      { kind: 'job', at: "I suppose you'd move the plate over a bit", parts: { zone: 'foredeck', minutes: 30 } },
      { kind: 'reading', at: 'The battery said 12.1', parts: {} },
      { kind: 'job', at: 'it needs to come home and go on the charger', parts: { due: '2027-04-09' } },
      { kind: 'job', at: "so I need a new one and she'll show me how you thread it", parts: { zone: 'case' } },
      { kind: 'jury rig', at: 'stuck a piece of plastic over the back window', parts: {} },
      { kind: 'job', at: "then I'm going to screw it in with that black goo", parts: {} },
      { kind: 'job', at: 'Two of the screws just turn round and round. Longer screws?', parts: { zone: 'cockpit' } },
      { kind: 'store', at: 'I need to buy: black goo', parts: {} },
      { kind: 'store', at: 'goo, screws', parts: {} },
      { kind: 'store', at: 'a book that explains', parts: {} },
    ],
  },
  {
    name: 'the old hand',
    page: `Fifty-one seasons I've been putting boats away and getting 'em out again, and there's not one spring I've not found something. Right then.

Stem's good. Hard wood, that, I put it in myself in the year of the big frost. Roller's good. Chain's rusty, chain's meant to be rusty.

Give this shroud plate a knock. Hear that? Other side rings, this one clacks. That's port. Nuts have backed off underneath, or the pad's gone soft, one or t'other. Get the lining down and have a look, and nip 'em up if that's all it is. Half hour. If the pad's gone it's another tale.

Rubbing strake's been knocked about but it's there to be knocked about. I'd not touch it.

Mast. Now the young ones never look at the heel. Look here, there's a white bloom and you can get the knife in a good eighth. That's the fastening eating the alloy. Whip that bolt out, clean it back, and put it together with a bit of barrier paste so the two don't touch. Forty minutes, mast laid down. Halyards'll go again. Gooseneck's worn but it's been worn since I were sixty.

Board. Up, down, up, down. Wire's sweet as a nut, new two year back. There's a thump at the bottom though that weren't there in the back end, as if the stop's gone. Rubber block, that's all that is. I'll cut one from an old tyre, and it can go in next time she's propped. Quarter of an hour.

Tiller. Feel that. Slop at the head, up and down like a pump handle. I've a slip of beer mat in there, two thicknesses, and it's done since Whitsun, don't tell the wife. It wants a brass shim. Ten minutes with the snips.

Rudder pins I greased last week. Bilge is dry and it'd better be. The pump's handle has gone walkabout again. Anybody seen it? That's no job, that's a grandson.

Chap in the yard swears by that new paint that's meant to last three years. We'll see. He swore by his last wife.

Trailer. Spin that wheel. Hear it growl? That's port side, that's your bearing gone. Don't you take her down the road on that, it'll come off and pass you. New set in and packed with grease, hour and a half. Starboard runs quiet. Lights work. Ropes and straps are good.

That port hub, mind, I mean it. Do it first.

So it's a set of bearings, a tin of grease, and a scrap of brass sheet. Battery's twelve and a half on the nose, been standing since Sunday. Put the kettle on.`,
    marks: [
      { kind: 'job', at: 'Get the lining down and have a look', parts: { fitting: 'plate-port', minutes: 30 } },
      {
        kind: 'job',
        at: 'Whip that bolt out, clean it back',
        parts: { zone: 'rig', minutes: 40, setUps: { mast: 'down' } },
      },
      {
        kind: 'job',
        at: "I'll cut one from an old tyre, and it can go in",
        parts: { zone: 'case', minutes: 15, setUps: { boat: 'propped' } },
      },
      { kind: 'jury rig', at: "I've a slip of beer mat in there", parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'It wants a brass shim', parts: { fitting: 'tiller', minutes: 10 } },
      { kind: 'job', at: 'New set in and packed with grease', parts: { fitting: 'hub', minutes: 90 } },
      { kind: 'store', at: 'a set of bearings', parts: {} },
      { kind: 'store', at: 'a tin of grease', parts: {} },
      { kind: 'store', at: 'a scrap of brass sheet', parts: {} },
      { kind: 'reading', at: "Battery's twelve and a half", parts: {} },
    ],
  },
  {
    name: 'in the driveway',
    page: `All right, folks, it's Thursday, it's sixty-two degrees in the driveway, I've got coffee, and the kids are at school. Let's see what the winter did to us.

Trailer first, because that's what strands you on the shoulder. Tires look great, I put new ones on in the fall. Right-side taillight has water in it, like, an actual inch of water, you could keep a goldfish. It still lights up. I'll swap the whole unit out, they're cheap, figure thirty minutes, and I want that done before we tow her anywhere. Winch strap, good. Bunks, good. The carpet on the left bunk is coming loose at the back end and I've got a couple of zip ties around it. Those can stay until I can pull the boat off it and staple it down right.

Hull. Waterline's scuzzy, that's just a wash. Oh, man. Okay. There's a ding on the starboard side, yea big, size of a quarter, right where the dock bit us in August. Down to the glass. Grind it out a little, fill it, gelcoat over the top. Call it an hour and a half, and it needs to be over sixty to kick.

Transom. The motor mount. I torqued those bolts last month and they haven't budged. Motor's been winterized and de-winterized. Fuel line has got a primer bulb that's hard as a rock, it won't squeeze, so there's your five-minute fix, new bulb.

Cockpit. Cockpit's fine. Bleached, but fine. My brother-in-law says I ought to put down that fake teak. My brother-in-law doesn't own a boat.

Cabin. Twelve point five five on the battery. The little outlet by the galley is dead. I already swapped the fuse and it blew again, so there's a short in there someplace and I've got to chase it down. Could be twenty minutes, could be all Saturday.

And I see the potty's hold-down is missing one of its feet. Nobody's going to die.

Mast is still on the sawhorses. Masthead sheave has a crack in the plastic, clear through one flange. It'll eat the halyard. New one goes in before she's stepped, twenty minutes, tops. Spreaders are good, wires are good. The wind arrow got flattened in the garage but I bent it back and it'll point.

My neighbor two doors down has the same boat and his whole keel bolt rusted out. So I looked at ours: clean.

Store run. Taillight, primer bulb, a little can of gelcoat, and a box of stainless staples.

Do I do the bottom paint this year? Nah. It's got another season in it. All right, coffee's cold.`,
    marks: [
      { kind: 'job', at: "I'll swap the whole unit out", parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'jury rig', at: "I've got a couple of zip ties around it", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'pull the boat off it and staple it down right', parts: { zone: 'trailer' } },
      {
        kind: 'job',
        at: 'Grind it out a little, fill it, gelcoat over the top',
        parts: { zone: 'topsides', minutes: 90 },
      },
      { kind: 'job', at: "it won't squeeze, so there's your five-minute fix", parts: { minutes: 5 } },
      { kind: 'reading', at: 'Twelve point five five', parts: {} },
      { kind: 'job', at: "I've got to chase it down", parts: { zone: 'cabin' } },
      { kind: 'job', at: "New one goes in before she's stepped", parts: { fitting: 'sheave', minutes: 20 } },
      { kind: 'store', at: 'Store run. Taillight', parts: {} },
      { kind: 'store', at: 'Taillight, primer bulb', parts: {} },
      { kind: 'store', at: 'a little can of gelcoat', parts: {} },
      { kind: 'store', at: 'a box of stainless staples', parts: {} },
    ],
  },
  {
    name: 'which reminds me',
    page: `Now, where to begin. I was going to begin at the bow, but on the way there I passed the winch post and that reminded me of my uncle, who once winched his boat so hard on to the trailer that the whole post folded over and he finished up with the bow in the back seat of the car. A lovely man. Ours is perfectly upright, I'm glad to say, although the rubber snubber on it has split down the middle like a bun, and the stem's been resting on bare iron. A new snubber, then. Two bolts, ten minutes, and my uncle would approve.

The bow. I painted it at Easter and it's a joy.

The forehatch. Ah, the forehatch has a history. We were lying in a creek two summers ago, there was an owl, and in the morning there was a puddle on my sleeping bag. We blamed the owl. In fact the seal's been flattened on the hinge side, you can slip a card under it, and last week's rain came through in just the same place. Fresh strip all round, half an hour, and no more owls.

What was I saying? The mast. The mast is fine. A man came to dinner who knows about masts, he ran his thumb down it and said so, and then he ate all the potatoes. But he did remark that the topping lift is a piece of old clothes line. Which it is. I put it up when the proper one parted off the point, in a lively sea, with my hat gone. It's held since June. I've a length of the right stuff in the shed and really I ought to get it rove, twenty minutes while the mast's still down.

Below decks, the lamp. My grandmother's lamp. I polished it. Nothing needs doing to it.

The berth on the port side, now: when my nephew got in there was a report like a pistol, and one of the slats had gone in two. He's a big lad. He slept on the floor like a gentleman. I'll cut him another from the old bookshelf. Which books was it held, I wonder? All those sea stories.

The battery gauge showed 12.44 at breakfast. I always think of it as a year. Not a good one.

In the cockpit the starboard locker lid has lost its catch, so it flaps. In the storm off the point it flapped like a goose. I mean to put a turnbuckle on it before the estuary night.

The rudder is beyond reproach. The outboard had its service and came home smelling of roses.

I need a yard of hatch seal and a snubber, and somebody must return my good saw. Did I tell you about the goose?`,
    marks: [
      { kind: 'job', at: 'A new snubber, then', parts: { zone: 'trailer', minutes: 10 } },
      { kind: 'job', at: 'Fresh strip all round', parts: { zone: 'foredeck', minutes: 30 } },
      { kind: 'jury rig', at: 'the topping lift is a piece of old clothes line', parts: { zone: 'rig' } },
      { kind: 'job', at: 'I ought to get it rove', parts: { zone: 'rig', minutes: 20, setUps: { mast: 'down' } } },
      { kind: 'job', at: "I'll cut him another from the old bookshelf", parts: { zone: 'cabin' } },
      { kind: 'reading', at: '12.44 at breakfast', parts: {} },
      { kind: 'job', at: 'I mean to put a turnbuckle on it', parts: { zone: 'cockpit', outing: 'estuary' } },
      { kind: 'store', at: 'a yard of hatch seal', parts: {} },
      { kind: 'store', at: 'and a snubber', parts: {} },
    ],
  },
  {
    name: 'the engineer',
    page: `Inspection carried out between 0900 and 1130, boat on the trailer, mast horizontal on two trestles. I will give what was observed, what it means if anything, and what I propose.

Battery terminal voltage 12.61 V after fourteen hours open circuit. Satisfactory. Insulation of the masthead circuit to the mast: 0.4 megohm with the plug wet, above 20 when dried. The connector is therefore the weak point and not the cable. I propose to replace the deck plug with a gland. Estimate 75 minutes.

Bilge pump. Delivers 19 litres in one minute. It delivered 21 when new, so I leave it.

Board lifting wire. Four broken wires counted within one lay length, close to the lower thimble. My discard criterion is three. Replace. Board to be lowered for access, which needs the boat propped, and a second person for ten minutes of the sixty.

Bow roller. Side play one millimetre; immaterial.

Port shroud plate, starboard shroud plate. Both dry. Torque checked, no movement.

Gooseneck pin. Worn from 10.0 to 9.2 on one side only. It could be turned through ninety degrees and run again, and I considered that, but a pin costs less than the time spent considering. New pin, ten minutes.

Outboard bracket. The spring on the starboard arm has fractured. I have fitted a bungee across the arms which lifts the engine adequately in calm water, though I would not call that a repair. The replacement spring has a lead time of three weeks. On arrival it is to be fitted, 25 minutes.

Rudder stock. Within tolerance. Antifouling. Film thickness sufficient for this season. I have no comment on the colour.

Trailer. Coupling head: wear indicator has just entered the red sector. This is not a matter of opinion; it must not go on the road so. New coupling head, 40 minutes, two M12 bolts. Hub temperatures after eight miles, 31 and 33 Celsius; unremarkable. Port tyre pressure 2.4 bar, starboard 2.4.

Cockpit drains. Port drain passes water at half the rate of starboard. I could not see an obstruction with the inspection lamp. The hose may have collapsed internally. To be disconnected and examined, 30 minutes.

A colleague maintains that galvanic loss on these small boats is a myth. I would invite him to look at the boat in the adjoining bay, whose anode has vanished completely.

Required: one pin 10 mm by 38, a cable gland, a coupling head, and two metres of 4 mm wire with thimbles. As regards the coupling I repeat that I regard this as first priority.

I have sometimes thought of a strain gauge on the forestay. Not justified.`,
    marks: [
      { kind: 'reading', at: '12.61 V', parts: {} },
      { kind: 'job', at: 'I propose to replace the deck plug with a gland', parts: { minutes: 75 } },
      {
        kind: 'job',
        at: 'My discard criterion is three. Replace',
        parts: { fitting: 'wire', minutes: 60, setUps: { board: 'down', boat: 'propped' } },
      },
      { kind: 'job', at: 'New pin, ten minutes', parts: { zone: 'rig', minutes: 10 } },
      { kind: 'jury rig', at: 'I have fitted a bungee across the arms', parts: { fitting: 'bracket' } },
      { kind: 'job', at: 'On arrival it is to be fitted', parts: { fitting: 'bracket', minutes: 25 } },
      { kind: 'job', at: 'New coupling head, 40 minutes', parts: { zone: 'trailer', minutes: 40 } },
      { kind: 'reading', at: 'Port tyre pressure 2.4 bar', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'To be disconnected and examined', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'store', at: 'one pin 10 mm by 38', parts: {} },
      { kind: 'store', at: 'a cable gland', parts: {} },
      { kind: 'store', at: 'a coupling head, and', parts: {} },
      { kind: 'store', at: 'two metres of 4 mm wire', parts: {} },
    ],
  },
  {
    name: 'looking back',
    page: `So that's another season and a winter gone, and before I forget I want to say what got done off the old list and what never did.

Done, then. The rudder blade was stripped and sheathed. The starboard shroud plate was rebedded in October and hasn't wept since. All the running rigging went through the washing machine. The bearings were changed. The cabin sole got its two coats. We found the leak over the galley, that was a screw hole, of all things, and it's plugged. I'm pleased with that lot.

Not done. The port window. We meant to take it out in September, then we meant to in October, and it still has the smear of bathroom sealant that I put round it in the lay-by. That's kept the wet out, I grant it. But it needs lifting out and bedding on new tape, and I'd put it at two hours on a dry day.

The tiller extension was on the list as well. It's still got the wrong bolt in it with a wine cork on the end so nobody tears their trousers. I did buy the right bolt. I found it in my coat last week. Five minutes, and I haven't five minutes' worth of excuse.

The varnish on the coamings we started. Port side's had four coats and looks like a piano. Starboard had one and then it rained until Christmas, so that side still needs its other three.

The anchor locker drain we crossed off, because it turned out there's nothing the matter with it.

The new mainsail we didn't buy. The old one has stretched, everyone can see it's stretched, and we're not buying one this year either.

Things that came up since. The steaming light went off halfway home on the last sail and it hasn't come on again; I tried a bulb and it isn't that. It'll have to be traced down the mast, before it goes up. And the pump gave a cough at lay-up and since then it sucks air, you hear it slurping. A diaphragm I expect, half an hour, the kit's about the price of a sandwich.

The trailer had a squeaky brake all last summer and it stopped by itself. Odd, but I'm not going looking.

Jory's boat lost its mast at the muster, in case you hadn't heard. A split pin. So I went round all ours, and every one's in and opened. Well, all bar one: the lower starboard shroud has a bit of bent wire through it where a split pin ought to be. A minute's work. It's got to be done before the shakedown.

Battery, 12.52 on Tuesday evening. I need a pump kit, sealing tape, varnish. And next year, a list half as long.`,
    marks: [
      { kind: 'jury rig', at: 'it still has the smear of bathroom sealant', parts: {} },
      { kind: 'job', at: 'it needs lifting out and bedding on new tape', parts: { minutes: 120 } },
      { kind: 'jury rig', at: "It's still got the wrong bolt in it", parts: { zone: 'cockpit' } },
      {
        kind: 'job',
        at: 'I did buy the right bolt. I found it in my coat last week. Five minutes',
        parts: { minutes: 5 },
      },
      { kind: 'job', at: 'that side still needs its other three', parts: { zone: 'decks' } },
      { kind: 'job', at: "It'll have to be traced down the mast", parts: { zone: 'rig', setUps: { mast: 'down' } } },
      { kind: 'job', at: 'A diaphragm I expect, half an hour', parts: { fitting: 'pump', minutes: 30 } },
      { kind: 'jury rig', at: 'has a bit of bent wire through it', parts: {} },
      { kind: 'job', at: "A minute's work. It's got to be done before the shakedown", parts: { outing: 'spring' } },
      { kind: 'reading', at: '12.52 on Tuesday', parts: {} },
      { kind: 'store', at: 'I need a pump kit', parts: {} },
      { kind: 'store', at: 'sealing tape', parts: {} },
      { kind: 'store', at: 'tape, varnish', parts: {} },
    ],
  },
  {
    name: 'three weekends',
    page: `Right, I've got the calendar on the bonnet of the car and I'm going to try and be clever about the order, because it's always the glue that catches us out.

This weekend we've got both days and the forecast's dry. Saturday morning, first thing, before anything: the split in the cockpit coaming, starboard, the one you can see your finger through. Glue in, clamps on, and then nobody leans on it for twenty-four hours. That's forty minutes of me and a day of the glue. If it isn't in by ten I can't take the clamps off on Sunday.

While that's going off, the things that don't mind. The bow roller's got a burr on the cheek that's been shaving the anchor warp, so file that smooth, ten minutes. Then the foredeck cleat. It isn't loose. I thought it was, but it's the deck that creaks. Leave it.

Sunday, clamps off, and a first coat on the new hatch boards. They're cut and sanded, they only want their paint, three coats, one each Sunday, which is why I'm starting now.

Second weekend. Mast goes up on the seventeenth and I need three people for it, so I've asked Wilf and his daughter. Before they come, anything at the top has to be finished, and there's just the one thing. The main halyard's been jumping off the wheel and jamming down the side of it, because the keeper's gone. New keeper plate on, half an hour. It has to be Friday night really. The spreader boots I did in March.

Once she's up there's the forestay. Last year it was too long by a mile, and I took it up with a shackle that I'm not proud of. That shackle's still in there. I want a proper toggle instead, fifteen minutes, with somebody holding the halyard.

The third weekend's the shakedown, so no jobs, we're sailing. That's the rule. Well, apart from the fenders.

The weekend after that, if she's back on the trailer, the bottom of the board. It's scraped bright along the front edge. That needs priming and two coats and I want it hanging down, so propped.

Shopping, and it's got to be today because they shut at five: slow hardener, a keeper plate, a toggle, and sandpaper, eighty grit. I've got primer. I've got more primer than sense.

Things we aren't doing. We aren't doing the cabin lining. We aren't doing the outboard, that's at the dealer's and comes back Monday. Wilf reckons the trailer springs look tired. They were new two years ago, Wilf.

Volts? 12.5 and a bit. All good.

Have I forgotten anything? Only that coaming. Ten o'clock.`,
    marks: [
      { kind: 'job', at: 'Glue in, clamps on, and then nobody leans on it', parts: { minutes: 40 } },
      { kind: 'job', at: 'so file that smooth', parts: { fitting: 'roller', minutes: 10 } },
      { kind: 'job', at: 'they only want their paint, three coats', parts: {} },
      { kind: 'job', at: 'New keeper plate on, half an hour', parts: { minutes: 30 } },
      { kind: 'jury rig', at: 'I took it up with a shackle', parts: {} },
      { kind: 'job', at: 'I want a proper toggle instead', parts: { minutes: 15 } },
      {
        kind: 'job',
        at: 'That needs priming and two coats',
        parts: { zone: 'case', setUps: { board: 'down', boat: 'propped' } },
      },
      { kind: 'store', at: 'slow hardener', parts: {} },
      { kind: 'store', at: 'a keeper plate, a', parts: {} },
      { kind: 'store', at: 'a toggle, and', parts: {} },
      { kind: 'store', at: 'sandpaper, eighty grit', parts: {} },
      { kind: 'reading', at: '12.5 and a bit', parts: {} },
    ],
  },
  {
    name: 'come and hold this',
    page: `Come and stand here, hold the torch, and I'll show you how I look at a boat. You don't look for what's broken. You look for what's different from last time.

Put your hand on this shroud and pull. Now that one. Same? Good. That's how they should be, and you check it every time you come down. Now run a rag down it. If it snags you've got a broken strand. See, it snagged! Don't touch it with your finger. Just above the swage, starboard upper. One strand out of nineteen, and where there's one there'll be two. So what do we do? We don't tape over it, we have a new one made up, and she doesn't sail until that's on. Write that down.

Next, tap the deck. Tap, tap, tap, hear how it's all one note? When it goes dull, that's wet. Ours is good everywhere. On my old boat you could have drummed out a tune.

This is a shackle and this is how you mouse it. Wire through the eye, round twice, twist. There. That's the one on the anchor done, and you've learnt something. The one at the head of the board tackle hasn't any wire either, so you can do that on your own afterwards, five minutes.

Generally, if a screw's turning and not tightening, the wood behind has gone. Generally you'd plug it with a bit of dowel and glue and drill again. Now look at this hinge on the locker. What do you see? Yes. All three spinning. So that's a dowel job, and while the glue's wet don't let your mother sit on it. Forty-five minutes.

Rope. This jib sheet: feel, it's stiff but sound. You never throw away a rope for being stiff. This lashing on the boom end, though, that's me with a shoelace when the outhaul block let go in April last year, and it's a good lashing, but it isn't a block. We'll get a block. You screw it on, I'll watch.

Now the trailer. Always kneel. People don't kneel. Look up at that spring: there's a leaf with a hairline across it, there, where the rust's bleeding out. Is it dangerous? On the road, yes. A new spring both sides, and I'm not lifting her alone, so it's you and me, two hours.

Some people will tell you to grease the bolts and some will tell you never to. I do. Nothing's fallen off.

Battery: red here, black there. What does it say? Twelve point three eight. With everything off? Good lad. You'd worry under twelve two.

Oh, the rudder pins, I'd normally show you how to grease them, but they're done. We want a small block, some dowel and seizing wire. And chips.`,
    marks: [
      {
        kind: 'job',
        at: "we have a new one made up, and she doesn't sail until that's on",
        parts: { zone: 'rig' },
      },
      { kind: 'job', at: 'so you can do that on your own afterwards', parts: { zone: 'case', minutes: 5 } },
      { kind: 'job', at: "So that's a dowel job", parts: { zone: 'cockpit', minutes: 45 } },
      { kind: 'jury rig', at: "that's me with a shoelace", parts: { zone: 'rig' } },
      { kind: 'job', at: "We'll get a block. You screw it on", parts: { zone: 'rig' } },
      {
        kind: 'job',
        at: 'A new spring both sides',
        parts: { zone: 'trailer', minutes: 120, hands: 2, consequence: 'danger' },
      },
      { kind: 'reading', at: 'Twelve point three eight', parts: {} },
      { kind: 'store', at: 'We want a small block', parts: {} },
      { kind: 'store', at: 'some dowel and', parts: {} },
      { kind: 'store', at: 'seizing wire', parts: {} },
    ],
  },
  {
    name: 'tidily',
    page: `Good afternoon. This is the spring survey of our little boat, and I shall proceed clockwise from the bow.

Bow. The anchor is stowed and its lashing is sound. The pulpit foot on the port side has two hairs of rust beneath it, which I wiped away, and they did not return after hosing. I shall not trouble with it.

Starboard side. The fairlead has come up by about three millimetres at its after end and the jib sheet catches under it. It should be taken off and screwed down again with fresh sealant, allowing thirty minutes. Of the stanchions, all are firm. I noted a bubble in the paint just above the waterline, the size of a thumbnail; on pricking it, water came out that smelled of vinegar. It ought to be opened, dried for a fortnight, and filled. As the drying takes so long I should like it opened this week.

Transom. The drain bung has perished. I have pushed in a wooden peg wrapped in rag, which is tight, and I have ordered the correct bung, which is simply to be pushed in when it comes. The rudder hangs truly. The lower gudgeon was replaced in the autumn and remains excellent.

Cockpit. The compass light does not work, but we never sail at night. The sheet winch on the port side is stiff, as though the old grease had turned to toffee. It should be stripped, washed in paraffin and lightly oiled, for which I allow three quarters of an hour. The starboard winch was done in February and is a pleasure.

Cabin. Dry throughout. The fire extinguisher went out of date last December, and we are obliged to carry one for the muster, so a new one must be bought and hung up before then. The gas locker vent is clear. I found the battery to stand at 12.48 volts, rested.

Mast. It is down. I am told that the rivets on this kind of mast tend to work loose at the spreaders, and I looked with that in mind, and they have not. One of the two screws in the masthead cap is missing altogether, and the cap lifts when one pulls at it. A screw, with some locking compound: five minutes.

Trailer. Everything works. I had the tyres at thirty-four pounds each. The spare wheel carrier rattles, as it has for years.

To be purchased: a fire extinguisher, one small stainless screw, sealant, and paraffin.

I see that our neighbours have fitted a very large solar panel. I express no view. Should we perhaps one day consider a cover for the outboard? I merely ask.`,
    marks: [
      { kind: 'job', at: 'It should be taken off and screwed down again', parts: { minutes: 30 } },
      { kind: 'job', at: 'It ought to be opened, dried for a fortnight, and filled', parts: { zone: 'topsides' } },
      { kind: 'jury rig', at: 'I have pushed in a wooden peg', parts: { zone: 'transom' } },
      { kind: 'job', at: 'simply to be pushed in when it comes', parts: { zone: 'transom' } },
      { kind: 'job', at: 'It should be stripped, washed in paraffin', parts: { zone: 'cockpit', minutes: 45 } },
      { kind: 'job', at: 'a new one must be bought and hung up', parts: { zone: 'cabin', outing: 'muster' } },
      { kind: 'reading', at: '12.48 volts', parts: {} },
      { kind: 'job', at: 'A screw, with some locking compound', parts: { zone: 'rig', minutes: 5 } },
      { kind: 'reading', at: 'thirty-four pounds each', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'To be purchased: a fire extinguisher', parts: {} },
      { kind: 'store', at: 'one small stainless screw', parts: {} },
      { kind: 'store', at: 'screw, sealant', parts: {} },
      { kind: 'store', at: 'and paraffin', parts: {} },
    ],
  },
  {
    name: 'in the lunch hour',
    page: `hiya only got twenty minutes I'm on my lunch I've nipped round the drive so this'll be quick um cover's on the strap at the back has pulled its stitching out I've knotted it to the trailer so it won't blow off it wants sewing my machine won't go through it so it'll be by hand an hour in front of the telly okay lifting it up getting in ow okay cockpit's clean there's a mouse been at the end of the port jib sheet it's chewed right through so that's short by about two foot do we mind I don't think we mind it still reaches the right hand seat you know where the lid goes over the fuel there's a screw sticking up that's ripped my good tights that's a danger to bums so turn that in or saw it off two minutes I'd do it now but I've no screwdriver cabin door sticks but it does that when it's wet it'll be fine by May inside the light came on the radio came on no it didn't no it did the plug's loose in the back of it if you wiggle the wire it goes off again so um that needs soldering or whatever you do Kit's got an iron half an hour maybe and the gauge says twelve point two nine hmm bit low I've just put the charger on it so that's sorted floor's wet under the step it's not much it was there last time and I wiped it and it's back and there's a drip coming off the bolt where the pump hose goes through so tighten the clip I think I've just tried by hand and I can turn it that's a proper loose clip so yes do that five minutes with a screwdriver outside again mast looks fine lying down the spreaders look fine what's that oh it's a nest somebody's making a nest in the end of the boom well we'll leave her be till they've gone the bow's fine the trailer wheel left side has a nail in it an actual nail it's not going down yet but it'll have to go to the tyre place and I'd do it before we move her rear lights I can't test on my own the neighbour says she heard water sloshing in the rudder when we carried it she'd know she's a nurse so maybe drill a hole and see if it drains out I don't know what do you think I'd do it get me some thick thread and a packet of solder please right I'm late`,
    marks: [
      { kind: 'jury rig', at: "I've knotted it to the trailer", parts: {} },
      { kind: 'job', at: 'it wants sewing', parts: { minutes: 60 } },
      { kind: 'job', at: 'turn that in or saw it off', parts: { zone: 'cockpit', minutes: 2 } },
      { kind: 'job', at: 'that needs soldering or whatever you do', parts: { zone: 'cabin', minutes: 30 } },
      { kind: 'reading', at: 'twelve point two nine', parts: {} },
      { kind: 'job', at: 'tighten the clip I think', parts: { minutes: 5 } },
      { kind: 'job', at: "it'll have to go to the tyre place", parts: { zone: 'trailer' } },
      { kind: 'job', at: 'maybe drill a hole and see if it drains out', parts: { zone: 'transom' } },
      { kind: 'store', at: 'some thick thread', parts: {} },
      { kind: 'store', at: 'a packet of solder', parts: {} },
    ],
  },
];
