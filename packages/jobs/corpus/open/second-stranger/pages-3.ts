import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'for grandad',
    page: `okay so hi so this is basically my grandad's boat and he's given it me or like he's lent it me till he's better and he said walk round it and say everything that's wrong with it and then we'll talk so like um the trailer this wheel one of the wheel nuts is missing there's meant to be four and there's three so I need to get one and put it on and I'm not towing it like that obviously well dad's not I can't drive um the lights work I did them with my mate right so up the front the rope on the anchor is proper manky but it's strong grandad says rope's allowed to be ugly um the bow roller thing spins but there's like this split pin that's not split if that makes sense it's just sort of sat in there so bend it over that's like ten seconds but the pliers are in the shed okay so mast that's up because we did it Sunday me and my uncle anyway the flag thing on the top's bent but it still goes round then um this rope the one that pulls the main up the hall yard it goes in the cleat here and it slips because the teeth in the cleat are all worn down grandad's got another cleat like brand new in a bag so unscrew that put that one on with um he said put a bit of sealant in the holes otherwise it rots quarter of an hour he reckons I reckon more um cockpit's fine bit green no actually I did that side and that side's still green so yeah I need to scrub that side with the deck stuff half an hour and then in here mind your head so the battery says eleven point nine which I looked up and that's like basically dead so I'm going to put it on grandad's charger for the night and if it's still rubbish in the morning it needs a new one he said he'd pay um the cushion's ripped and it's got gaffer tape on it and honestly that's been on since before I was born I quite like it but nan wants to sew it so I've got to take it round to hers on Saturday and there'll be cake um so under here you can see daylight no you can't that's my torch okay so no hole good oh that window there it was leaking and I did it with that clear sealant from the pound shop and you've got to leave it twenty four hours and it hasn't leaked since so that's done last thing the rudder so the rope that pulls the blade down is knackered it's like three strings holding hands so new bit of rope bowline and then a stopper ten minutes and I want to sail it to the muster with my mates if I'm allowed so um bye grandad get well soon`,
    marks: [
      { kind: 'job', at: 'so I need to get one and put it on', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'so bend it over', parts: { zone: 'bow' } },
      { kind: 'job', at: 'so unscrew that put that one on with', parts: {} },
      { kind: 'job', at: 'I need to scrub that side with the deck stuff', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'reading', at: 'eleven point nine', parts: {} },
      { kind: 'job', at: "put it on grandad's charger", parts: {} },
      { kind: 'jury rig', at: "it's got gaffer tape on it", parts: {} },
      { kind: 'job', at: "I've got to take it round to hers on Saturday", parts: {} },
      { kind: 'job', at: 'so new bit of rope', parts: { zone: 'transom', minutes: 10 } },
    ],
  },
  {
    name: 'put that in your pipe',
    page: `Well good morning to you. Let me get around to where the sun's behind me. Some folks asked how come I'm always fooling with this boat and never sailing her, and the answer is that I sailed her fifty-one days last year, so put that in your pipe.

What I've been fooling with this week is the stanchion bases. There's three on a side. Did the port side Monday and Tuesday, and I'm real happy with it. You take it off, you take a countersink and just kiss the top of the hole, and then you roll up your butyl like a little snake and wrap it round the bolt. You snug it down, and the next day you snug it down some more, because it squeezes out slow. It doesn't cure, that's the beauty of it. So that's the port side, and the starboard side has got to have the same, and that's another six hours because I'm old, and I need somebody below holding the wrench. Neighbor boy'll do it for a pizza.

Now here. Outboard bracket. Fella I bought it from said stainless. It's not stainless. See the rust weeping out of that bolt? I've been watching that bolt since the fall and I believe I've watched it long enough. I'm going to draw that one out and put in a real one. Fifteen minutes unless it breaks, and if it breaks we'll all learn some new words.

The centerboard hums. Above five knots it'll hum like a choir. Doesn't hurt anything. I kind of like it.

Compass light's out. I don't sail at night.

Now the mast has got to come down before long, and I'm saving two things for that. One's the sheave up top, it's wore a groove in the cheek and the wire wants to jump down in there. It'd be a new sheave and a new pin. The other thing is the anchor light, I want to take that old fixture off and go to an LED, because it'd eat my battery by two in the morning. Half an hour, that one.

Speaking of battery. Twelve point six two this morning, before coffee.

Down below I've been fighting the one portlight. Every time I bed it, it leaks, and every time it leaks it's in a different place. Right now I've got a beer can cut up and bent for a little gutter under there, and it runs off into a coffee can. My daughter says it's art. Come the fall I'll take it out and start all over with the two-part, the polysulfide, and let that cure ten full days in the garage where it's warm.

Trailer. The left bunk has plumb wore through, there's a staple sticking up. That'll scratch her. Well, I can pull that with my pocketknife. There. Got it. But the carpet wants replacing, on that one bunk. She'll have to be off the trailer, so the day we launch.

I heard thunder. Y'all take care.`,
    marks: [
      { kind: 'job', at: 'the starboard side has got to have the same', parts: { hands: 2, minutes: 360 } },
      { kind: 'job', at: 'draw that one out and put in a real one', parts: { fitting: 'bracket', minutes: 15 } },
      { kind: 'job', at: "It'd be a new sheave and a new pin", parts: { fitting: 'sheave', setUps: { mast: 'down' } } },
      {
        kind: 'job',
        at: 'take that old fixture off and go to an LED',
        parts: { minutes: 30, setUps: { mast: 'down' } },
      },
      { kind: 'reading', at: 'Twelve point six two', parts: {} },
      { kind: 'jury rig', at: "I've got a beer can cut up and bent for a little gutter", parts: { zone: 'cabin' } },
      { kind: 'job', at: "I'll take it out and start all over with the two-part", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'the carpet wants replacing', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'before the school run',
    page: `Hiya. Okay. It's me, I have about twenty minutes before the school run so I'm going round her fairly lively. If you hear roaring it's the small one, she's not hurt, she's a dinosaur.

So we've the boat at my mam's because we've no drive. I had her out four times last year, which was three more than the year before. Things that are sorted, so you don't have to ask me: the mooring warps, sorted. Lifejackets, new cylinders in the lot of them, sorted. The main went off to be washed and it's back.

Things that aren't. The tiller extension, the universal on it's perished. I tied it up with a hair bobbin in the last race and I'm fairly sure the hair bobbin is all that's there now. You can buy just the rubber bit, so I'll get that and push it on, it's five minutes of a job and I've been putting it off since August.

The floor in the cockpit, you'd feel it spongy just there. There. My husband says it was always like that. It was not. So I'm going to lift the inspection hatch this evening and have a feel around in there for wet. If it's wet, God knows. If it's not, he was right and we'll never hear the end of it.

The jib cars are grand. The winches are grand, I gave them a drop of oil.

Em. So the forestay. The bottom of the forestay, there's a split ring missing out of the pin. It's a ring! The whole mast is hanging off a ring! I've a cable tie in it this minute, the good kind, but you wouldn't go to sea with it. There's a bag of rings at home, so put a proper one in and tape over it. Two minutes.

Battery. Where did I... twelve point three six. That's after the kids in there with the lights on being pirates, so I'm not surprised, the solar yoke will bring it up by itself.

The name on the back is peeling. The first letter's gone, so she's now an entirely different kind of boat. I was going to leave it, and do you know what, no. I'll order the letters tonight and put them on. You want a warm day, and you wipe it over with spirit, and you don't let a child help. Half an hour.

Oh, and the cover. There's a rip in it by the mast hole, as long as my arm. Somebody said dinghy glue, under a weight for a day. I'd say glue it and then patch it, before it goes any further.

Trailer, dad does the trailer, dad has done the trailer, thank you dad. Only he says the winch handle's after going missing, and without it we'd be lifting her on by prayer. So would somebody look in the boot of the car.

I want a spinnaker. I'm putting that out into the universe. Right. Shoes! Get your shoes on!`,
    marks: [
      { kind: 'jury rig', at: 'I tied it up with a hair bobbin', parts: {} },
      { kind: 'job', at: "so I'll get that and push it on", parts: { minutes: 5 } },
      { kind: 'job', at: "I'm going to lift the inspection hatch this evening", parts: { zone: 'cockpit' } },
      { kind: 'jury rig', at: "I've a cable tie in it this minute", parts: { fitting: 'forestay' } },
      { kind: 'job', at: 'so put a proper one in and tape over it', parts: { minutes: 2 } },
      { kind: 'reading', at: 'twelve point three six', parts: {} },
      { kind: 'job', at: "I'll order the letters tonight and put them on", parts: { zone: 'transom', minutes: 30 } },
      { kind: 'job', at: "I'd say glue it and then patch it", parts: {} },
      { kind: 'job', at: 'So would somebody look in the boot of the car', parts: {} },
    ],
  },
  {
    name: 'with one finger',
    page: `Dear friends, you have asked how it goes with the boat, so here it comes, and I write it on the telephone with one finger, excuse the faults.

It has been a long winter but she stands now in the driveway and the snow is gone since two weeks. Nothing has burst and nothing has moved. The bottom is painted, the mast is washed, the propeller is on.

What I begin with on Saturday is the hatch on the foredeck. The hinges are good, but around the frame is there cracks in the sealing, like a dry lake. It is tempting to only smear more on the top, this did the previous owner, three times, I have counted the layers! I take it up and make it properly from the beginning, with polyurethane, the white one. It shall have five days before one stands on it, says the tube. I reckon two hours for the taking up and one for the putting down.

Then is there the wire to the board. When I ran a cloth along it, the cloth stayed hanging. So, a new wire, and the man in the shop presses the eyes on. To put it in takes one hour, and it needs that she hangs in the strops, therefore I do it the same day as she goes in the water.

The pump I have had apart, it was a hairpin. Nobody in this family will say whose.

The door to the cabin closes not since the wet autumn. One could plane it. Or wait till the summer so shrinks it by itself. I wait.

The sail is fine, but two of the sliders is broken, in the middle. I have tied there with sail thread instead, it goes up heavy but it goes up. New ones I have in the drawer, one must only sew them on, 15 minutes.

Battery: 12.55 before sunrise.

The trailer: here is something stupid. The lamp board has a plug with 7 pins and my new car has 13. Last year I borrowed an adapter from my son, but he has it back. I cut the old plug off and set a new on, half an hour, with the colours from the book.

The wheel on port side stands a little crooked? My wife has looked at it and she says it is I who is crooked. So.

I ask myself if one can sail with the old stays one more year. They are eleven years. There is nothing to see on them. What do you others do?

The rubbing strake has let loose on a length of half a meter and I have a clamp on it now, an orange one, it looks like a carnival. It must be glued, and the glue will not have it under ten degrees, so first in May.

To the shopping: 3 m wire, 1 tube polyurethane, 1 plug 13 pins.

I look forward to the muster. I take with the herring.`,
    marks: [
      { kind: 'job', at: 'I take it up and make it properly from the beginning', parts: { zone: 'foredeck' } },
      { kind: 'job', at: 'So, a new wire, and the man in the shop', parts: { fitting: 'wire', minutes: 60 } },
      { kind: 'jury rig', at: 'I have tied there with sail thread instead', parts: {} },
      { kind: 'job', at: 'one must only sew them on', parts: { minutes: 15 } },
      { kind: 'reading', at: '12.55', parts: {} },
      { kind: 'job', at: 'I cut the old plug off and set a new on', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'jury rig', at: 'I have a clamp on it now', parts: { zone: 'topsides' } },
      { kind: 'job', at: 'It must be glued', parts: { zone: 'topsides' } },
      { kind: 'store', at: '3 m wire', parts: {} },
      { kind: 'store', at: '1 tube polyurethane', parts: {} },
      { kind: 'store', at: '1 plug 13 pins', parts: {} },
    ],
  },
];
