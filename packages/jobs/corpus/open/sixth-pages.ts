import type { MarkedPage } from '../marked.ts';

/** By another hand, who did not know the reader. */
export const sixthPages: readonly MarkedPage[] = [
  {
    name: 'retired teacher',
    page: `The eighth of April, written up at the kitchen table from notes made aboard.

I have been over the boat twice, once with my spectacles and once without.

The anchor locker gives no cause for concern. Its lid, however, no longer lies flat: the forward corner stands up by the thickness of a coin, and I have twice caught a sheet beneath it. I suspect that the hinge has been bent, and I propose to take it off and straighten it in the vice, which ought not to occupy me for more than half an hour.

The pulpit is sound. I tightened all its nuts in March.

There is a faint smell of petrol whenever the starboard locker has been shut overnight. I traced it with my nose to the short hose between the tank and the bulb, which has fine cracks all along it. That hose must be replaced before anybody lights the stove; I regard it as dangerous.

The bilge held perhaps a cupful, and it was fresh, so I am content. The lamp over the port berth has been cured; the fault was mine, as I had put the bulb in crookedly. The battery stood at 12.61 volts at nine o'clock.

Two hooks have come away from the port curtain, which I have fastened up with a clothes peg. I shall sew on new ones some evening.

On deck, the non-slip beside the mast has worn to a shine, and I very nearly sat down upon it. I intend to sand that patch and give it two coats of deck paint once we have a dry spell.

The starboard handrail is another matter. When one pulls upon it there is a small click, and after rain a bead of water appears on its screw inside the cabin. It should be unscrewed, bedded in fresh sealant and screwed down again: an hour. The port rail was so treated last autumn and has been perfectly dry.

I am asked each year when I shall varnish the tiller. I have varnished it.

A gentleman two berths along tells me that my mast is raked too far aft. I shall take no action.

The burgee halyard has chafed to a few threads where it passes the spreader; a new length is to be rove while the mast is still down.

Lastly the trailer. The clamp of the jockey wheel slips, and at present I have it wedged with a piece of broom handle. Its thread is stripped; a new clamp bolts straight on, in twenty minutes. The tyres are both at 38 pounds.

To be purchased: fuel hose, one metre; curtain hooks; a small tin of grey deck paint.`,
    marks: [
      { kind: 'job', at: 'I propose to take it off and straighten it in the vice', parts: { minutes: 30 } },
      {
        kind: 'job',
        at: 'That hose must be replaced before anybody lights the stove',
        parts: { consequence: 'danger' },
      },
      { kind: 'reading', at: '12.61 volts', parts: {} },
      { kind: 'jury rig', at: 'which I have fastened up with a clothes peg', parts: {} },
      { kind: 'job', at: 'I shall sew on new ones', parts: {} },
      { kind: 'job', at: 'I intend to sand that patch and give it two coats', parts: {} },
      { kind: 'job', at: 'It should be unscrewed, bedded in fresh sealant', parts: { minutes: 60 } },
      { kind: 'job', at: 'a new length is to be rove', parts: { zone: 'rig', setUps: { mast: 'down' } } },
      { kind: 'jury rig', at: 'I have it wedged with a piece of broom handle', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'a new clamp bolts straight on', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'reading', at: 'both at 38 pounds', parts: {} },
      { kind: 'store', at: 'fuel hose, one metre', parts: {} },
      { kind: 'store', at: 'curtain hooks', parts: {} },
      { kind: 'store', at: 'a small tin of grey deck paint', parts: {} },
    ],
  },
  {
    name: 'all in one breath',
    page: `okay so she's on the hard ladder up and over the back and first thing the boarding ladder the bottom rung wobbles the rivet's gone on one side and somebody heavier than me is going to go through it so drill that out and put a bolt through fifteen minutes then the tiller's lovely and the rudder's lovely I did both of them in the winter the mainsheet block down by my feet squeals like anything when you haul in under load it wants taking off and a good soak in hot water and see if that does it ten minutes the port locker's got the fenders in and they smell going forward the window on the right hand side there's a crack running out from one of the screws last time I looked it was half that I've stuck a strip of clear tape over it to keep the rain out and it'll do till summer but it needs a new pane cutting out of that acrylic sheet in the shed and that's a good three hours with the bedding and all um the mast foot's fine the kicker rope has gone all stiff and crusty like a dead snake but it's still strong so leave it next door's got a new cover very posh inside then floor's dry berths dry hooray the tap in the galley you have to give it about thirty goes before anything comes up and then it spits so I reckon there's air getting in at the joint under the sink so redo that with two new clips twenty minutes and the battery's showing twelve point three eight which is a bit low so bring it home and stick the charger on it tonight the compass light works the cabin light works now because I wiggled it the board goes up and down okay there's a clonk when it gets to the bottom but there was always a clonk oh the boarding ladder I said that yes that rung and the front hatch the handle on the inside spins round and round without gripping so you can't shut it from below there's a little grub screw I bet that's dropped out so put a new one in and nip it up five minutes the lettering on the back my daughter's done and it's beautiful the trailer's in the field I know the lighting board has got a wire hanging out of its plug so that has to go back in its terminal before the twenty fourth because we're towing that day and the policeman lives at number nine right shop drill bits an m5 grub screw and some hose clips oh and milk`,
    marks: [
      { kind: 'job', at: 'so drill that out and put a bolt through', parts: { minutes: 15 } },
      { kind: 'job', at: 'it wants taking off and a good soak in hot water', parts: { minutes: 10 } },
      { kind: 'jury rig', at: "I've stuck a strip of clear tape over it", parts: {} },
      { kind: 'job', at: 'it needs a new pane cutting out of that acrylic sheet', parts: { minutes: 180 } },
      { kind: 'job', at: 'so redo that with two new clips', parts: { minutes: 20 } },
      { kind: 'reading', at: 'twelve point three eight', parts: {} },
      { kind: 'job', at: 'so bring it home and stick the charger on it', parts: {} },
      { kind: 'job', at: 'so put a new one in and nip it up', parts: { zone: 'foredeck', minutes: 5 } },
      { kind: 'job', at: 'so that has to go back in its terminal', parts: { zone: 'trailer', due: '2027-04-24' } },
      { kind: 'store', at: 'drill bits', parts: {} },
      { kind: 'store', at: 'an m5 grub screw', parts: {} },
      { kind: 'store', at: 'some hose clips', parts: {} },
    ],
  },
  {
    name: 'misheard by the telephone',
    page: `Boat list Thursday new paragraph. Bowl roller is okay it has been greased. The bottle screw on the four stay has no split ring in it so fit one of those five minutes before the mast goes up.

Side deck stab board side just by the crowd plate there is a soft spot when I put my heal on it. I tried it with the moisture metre and it said 22 percent. Port side is only 12. So the plate has to come off and the wet would gets dug out and filled with a poxy, say four hours.

Main hell yard is fine it is only two years old. The clean for the jib hell yard is loose on the mast, both screws just go round and round. Rivet it instead twenty minutes while it is lying down.

The left hand wins makes a crunching noise. Strip it and grease it half an hour. The other wins I did at crispness and that one purrs.

Bill's pump runs. The float doesn't lift though, so it only comes on by hand. I think there is a bit of weed stuck under it, clean that out ten minutes.

Cabin doors. The bottom washboard has split along the grain and I put dark tape across it on Sunday, that's holding. Wants gluing and clamping overnight when I get it home, fifteen minutes.

Battery twelve point five oh.

Remind me to call my mother. No not now.

Out bored. Starts first pull every time bless it. The water coming out the side is just a dribble, so poke a bit of fishing line up the whole and if that does nothing then change the impaler, an hour.

Pint alls on the rudder hardly any play. Leave them.

Trailer. Mud cards okay. The back rollers have gone flat on one side and she sticks coming off. New rollers two of forty minutes with the boat in the water. The lights I did last week and they work.

The man on the next mooring says replace all the crowds but they are only four years old so no.

By split rings, pop rivets, a poxy and two keel rollers. End note. Stop. Stop listening.`,
    marks: [
      { kind: 'job', at: 'so fit one of those', parts: { minutes: 5 } },
      { kind: 'reading', at: '22 percent', parts: {} },
      { kind: 'reading', at: 'Port side is only 12', parts: {} },
      { kind: 'job', at: 'So the plate has to come off and the wet would gets dug out', parts: { minutes: 240 } },
      { kind: 'job', at: 'Rivet it instead', parts: { zone: 'rig', minutes: 20 } },
      { kind: 'job', at: 'Strip it and grease it', parts: { minutes: 30 } },
      { kind: 'job', at: 'clean that out', parts: { minutes: 10 } },
      { kind: 'jury rig', at: 'I put dark tape across it on Sunday', parts: {} },
      { kind: 'job', at: 'Wants gluing and clamping overnight', parts: { minutes: 15 } },
      { kind: 'reading', at: 'Battery twelve point five oh', parts: {} },
      { kind: 'job', at: 'so poke a bit of fishing line up the whole', parts: { zone: 'transom' } },
      { kind: 'job', at: 'New rollers two of', parts: { zone: 'trailer', minutes: 40, setUps: { boat: 'afloat' } } },
      { kind: 'store', at: 'By split rings', parts: {} },
      { kind: 'store', at: 'pop rivets', parts: {} },
      { kind: 'store', at: ', a poxy', parts: {} },
      { kind: 'store', at: 'two keel rollers', parts: {} },
    ],
  },
  {
    name: 'messages to myself',
    page: `09:12 at the boat. no keys. going back
09:48 ok NOW at the boat
09:50 cover: eyelet ripped out, back left corner. put a new one in, have the kit, 10 min
09:51 actually two eyelets
09:58 batt 12.7 nice
10:03 cabin smells of feet. airing it
10:05 loo seal perished?? no just dirty. cleaned. fine
10:11 gas hose says 2019 on it. thats too old isnt it. yes it is. change it, 15 min, no cooking till then
10:14 (danger, obviously)
10:20 radio: i hear them, they dont hear me. plug at the mast foot is full of green crud. clean + reseal, 30 min
10:21 same in 2025, did exactly that and it worked
10:30 one telltale missing off the jib. who cares
10:34 furling line flat and furry where it goes in the drum. turn it end for end, 20 min
10:40 rubbing strake port, screw sticking out, snagged my jumper. pushed it in with my thumb, it comes out again. fatter screw. 5 min
10:52 tea
10:53 heron on next doors boom. mess everywhere. not my boat
11:05 tiller extension a bit floppy but ok this season
11:10 rudder downhaul snapped in sept, knotted it on the slip and its still knotted. needs a new bit of 4mm, half an hour lying on my back
11:15 bracket bolts tight, did them in march
11:20 outboard cover clip broke. big rubber band round it
11:21 new clip on its way, weds-ish, fit it then
11:30 rain
11:31 under port berth wet AGAIN. dried it sunday
11:36 bucket of water over the deck, runs in down the shroud plate bolt. off, clean, rebed, 1.5 h, mast is down so do it before the 20th
11:40 tyres L 34 psi R 21 psi. pumped R last week so its leaking. take that wheel to the tyre place
11:45 buy: gas hose, 6m of 4mm line, eyelets no have those, butyl tape
11:46 herons back
11:50 that strake screw just got the other sleeve. DO IT`,
    marks: [
      { kind: 'job', at: 'put a new one in, have the kit', parts: { minutes: 10 } },
      { kind: 'reading', at: 'batt 12.7', parts: {} },
      { kind: 'job', at: 'change it, 15 min', parts: { minutes: 15, consequence: 'danger' } },
      { kind: 'job', at: 'clean + reseal', parts: { minutes: 30 } },
      { kind: 'job', at: 'turn it end for end', parts: { minutes: 20 } },
      { kind: 'job', at: 'it comes out again. fatter screw', parts: { zone: 'topsides', minutes: 5 } },
      { kind: 'jury rig', at: 'knotted it on the slip and its still knotted', parts: {} },
      { kind: 'job', at: 'needs a new bit of 4mm', parts: { zone: 'transom', minutes: 30 } },
      { kind: 'jury rig', at: 'big rubber band round it', parts: {} },
      { kind: 'job', at: 'new clip on its way, weds-ish, fit it then', parts: {} },
      {
        kind: 'job',
        at: 'off, clean, rebed, 1.5 h',
        parts: { fitting: 'plate-port', minutes: 90, setUps: { mast: 'down' }, due: '2027-04-20' },
      },
      { kind: 'reading', at: 'tyres L 34 psi', parts: {} },
      { kind: 'reading', at: 'R 21 psi', parts: {} },
      { kind: 'job', at: 'take that wheel to the tyre place', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'buy: gas hose', parts: {} },
      { kind: 'store', at: '6m of 4mm line', parts: {} },
      { kind: 'store', at: 'butyl tape', parts: {} },
    ],
  },
  {
    name: 'dashes and arrows',
    page: `8/4, high water 1040, sunny

Front
- anchor: ok
- roller: pin bent, chain jumps off it every time -> straighten or new pin, 20 min
- forehatch: no leaks since new seal (done Nov)
- sampson post... don't have one, never mind

Rig
- mast on its crutches
- topping lift: chafed half through where it rubs the backstay -> renew, 15 min while I can reach
- spreader ends: taped last week
- radio aerial: whip is wobbly in its base. whipping twine round it at the moment. -> leave for now, base to be swapped in autumn
- boom: end cap loose, was loose when we bought her, stays on

Inside
- bilge: dry
- batt: 12.44, cover on, nothing running
- bilge pump fuse: was blown, replaced, works
- sea toilet: none, bucket
- quarter berth port: black spots on the lining, musty. wipe down w/ vinegar + fit one of those little vents, 1 h in all
- shelf above stove: scorched. (me. bacon.)
- extinguisher: needle in the red -> exchange it at the shop before the muster

Case
- board: 4 turns to lift, same as ever
- case top: weeps when heeled, a few drops -> nip the bolts up, quarter turn each, 10 min
- if still weeps after that: not this year

Cockpit
- tiller bolt: nut not a locking one, backs off. finger tight again today -> locking nut, 5 min
- stbd drain: slow. rodded it through, runs now
- sheet winch stbd: fine
- sheet winch port: fine

Stern
- bracket: stiff but works. was worse
- rudder blade: edge nibbled by something, gelcoat gone as big as a coin, brown wood showing -> dry out, fill, paint. Allow an evening + an evening
- stern light: cracked lens, lets water in, has cling film over it. Lens is on order. fit when here, 5 min

Trailer
- lights ok
- hub stbd: ok
- hub port: grease all over the inside of the wheel, seal's had it I think -> new seal + repack. 1.5 h. not towing before

Ask: what do other people use on teak? Does ours even count as teak?

Get: hub seal, locking nut M8, a vent, vinegar
Don't get: more rope`,
    marks: [
      {
        kind: 'job',
        at: 'chain jumps off it every time -> straighten or new pin',
        parts: { fitting: 'roller', minutes: 20 },
      },
      { kind: 'job', at: 'where it rubs the backstay -> renew', parts: { zone: 'rig', minutes: 15 } },
      { kind: 'jury rig', at: 'whipping twine round it at the moment', parts: {} },
      { kind: 'job', at: 'base to be swapped in autumn', parts: {} },
      { kind: 'reading', at: 'batt: 12.44', parts: {} },
      {
        kind: 'job',
        at: 'wipe down w/ vinegar + fit one of those little vents',
        parts: { zone: 'cabin', minutes: 60 },
      },
      { kind: 'job', at: 'exchange it at the shop', parts: { outing: 'muster' } },
      { kind: 'job', at: 'nip the bolts up', parts: { zone: 'case', minutes: 10 } },
      { kind: 'job', at: 'finger tight again today -> locking nut', parts: { minutes: 5 } },
      { kind: 'job', at: 'dry out, fill, paint', parts: { zone: 'transom' } },
      { kind: 'jury rig', at: 'has cling film over it', parts: {} },
      { kind: 'job', at: 'fit when here', parts: { minutes: 5 } },
      { kind: 'job', at: 'new seal + repack', parts: { fitting: 'hub', minutes: 90 } },
      { kind: 'store', at: 'hub seal', parts: {} },
      { kind: 'store', at: 'locking nut M8', parts: {} },
      { kind: 'store', at: 'a vent', parts: {} },
      { kind: 'store', at: ', vinegar', parts: {} },
    ],
  },
  {
    name: 'in the driveway, American',
    page: `Alright, so she's been sitting in the driveway since Labor Day and today I finally pulled the tarp. Couple raccoons had been thinking about it but nobody moved in.

Hull looks good. Bottom paint's got another season in it for sure. There's a ding on the starboard side up by the bow where my brother-in-law backed her into the mailbox, it's down to the glass, so I'm gonna grind that out and lay a little patch on there, couple hours, soon as we get a weekend over fifty degrees.

Trailer. Winch strap's brand new. Left tail light is out, and I already swapped the bulb, so it's gotta be the ground. I'll chase that down, figure thirty minutes. Can't have her on the road like that, it's flat illegal. Tires I filled to fifty psi. The safety chain is rusted pretty good but it's just the surface.

Up top, the mast is laying on the deck. The wire that comes off the right side, up at the spreader, feels kinda crunchy when you bend it. I'm not messing with that. I'm gonna have the rigger make me up a new one before the shakedown.

Masthead sheave spins like a top.

Cabin. Smells like a gym bag. Battery read 12.2, so I hauled it in the garage and it's on the charger as we speak. Bilge pump kicks on, but the hose popped off the fitting and it just pumps in a circle. My kid jammed it back on and wrapped a zip tie around it. It's fine for the driveway. I want a real hose clamp on there before she goes in. Five minutes.

Cushions are at the upholstery lady's, been there since March, she'll call.

Companionway slide is sticky as all get out. You gotta put your shoulder into it. I figure rub some paraffin on the runners, ten minutes.

Tiller's got some checking in it. Sand it, three coats, I'll do it on the porch with a ball game on.

Outboard I ran in a trash can Sunday. Pees like a racehorse. Changed the lower unit oil while I was there. The fuel line bulb won't get firm, though, it's cracked, so that needs to get swapped out.

Guy across the street wants to know when I'm gonna sell her. Never, pal.

Someday I'd like a bimini. My wife would like a bimini yesterday.

So the hardware store: hose clamps, paraffin, primer bulb, a quart of spar varnish.`,
    marks: [
      { kind: 'job', at: "I'm gonna grind that out and lay a little patch", parts: { zone: 'topsides', minutes: 120 } },
      { kind: 'job', at: "I'll chase that down", parts: { zone: 'trailer', minutes: 30, consequence: 'unlawful' } },
      { kind: 'reading', at: 'fifty psi', parts: {} },
      { kind: 'job', at: "I'm gonna have the rigger make me up a new one", parts: { outing: 'spring' } },
      { kind: 'reading', at: 'Battery read 12.2', parts: {} },
      { kind: 'jury rig', at: 'wrapped a zip tie around it', parts: {} },
      { kind: 'job', at: 'I want a real hose clamp on there', parts: { minutes: 5 } },
      { kind: 'job', at: 'I figure rub some paraffin on the runners', parts: { minutes: 10 } },
      { kind: 'job', at: "Sand it, three coats, I'll do it on the porch", parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'so that needs to get swapped out', parts: {} },
      { kind: 'store', at: 'hose clamps', parts: {} },
      { kind: 'store', at: ', paraffin', parts: {} },
      { kind: 'store', at: 'primer bulb', parts: {} },
      { kind: 'store', at: 'a quart of spar varnish', parts: {} },
    ],
  },
  {
    name: 'home wet',
    page: `Back home. Kids in the bath. I'm saying this now because by tomorrow I'll have forgotten the lot and we'll go out again and it'll all be the same.

So. It rained from the minute we left till the minute we got back, and she sailed well, to be fair to her. Reefing line went in sweet as anything, that's the new block I put on last month.

What didn't. The little one was sat below and got dripped on the whole way. It's coming in round the mast, where the cable goes through the deck, you could watch it run down the wire. I shoved a sock in it. So that gland thing needs taking apart and sealing properly, call it forty minutes.

Jib sheet on the left, the car it goes through kept sliding back on its track. Every gust, clack, and the sail's like a bag of washing. I think the pin doesn't go in its hole any more because the spring's gone. So a new spring in there.

Pump. We took some over the side and I pumped and pumped and, well, it did come out in the end, the battery wasn't flat or anything, it was 12.5 when I looked. It's just a small pump. Leave that.

The floor in the cockpit was like ice. She went down twice, knees. I've said it before. I want those gritty strips stuck down before anyone under ten comes out again, half an hour, needs to be bone dry obviously, ha.

And the tiller. There's a knock in it. You push, nothing, then it goes. I thought it was the bolt so I did that up when we were hove to and it's exactly the same, so it must be further down, the bottom hinge of the rudder. Have a proper look at that when she's on the trailer, and if the pin's worn we put a new one in.

Lifejackets all dried off and hung up. One of them the crotch strap's lost its buckle, I tied it with a reef knot and she couldn't get out of it at the slip, had to laugh. Not funny really. New buckle on that, I'll sew it tonight. No I won't. This week.

Trailer lights worked. A chap at the slip had his whole trailer go in with the car attached, so it could've been worse.

Oh, and the cabin drip, the sock's still in there, if anyone's looking for it.

Stuff to get: gritty strips, one buckle 25 mil, more cocoa. Right, bath.`,
    marks: [
      { kind: 'jury rig', at: 'I shoved a sock in it', parts: {} },
      { kind: 'job', at: 'that gland thing needs taking apart and sealing properly', parts: { minutes: 40 } },
      { kind: 'job', at: 'So a new spring in there', parts: {} },
      { kind: 'reading', at: 'it was 12.5', parts: {} },
      { kind: 'job', at: 'I want those gritty strips stuck down', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'job', at: 'Have a proper look at that', parts: { zone: 'transom', setUps: { boat: 'trailer' } } },
      { kind: 'jury rig', at: 'I tied it with a reef knot', parts: {} },
      { kind: 'job', at: "New buckle on that, I'll sew it", parts: {} },
      { kind: 'store', at: 'get: gritty strips', parts: {} },
      { kind: 'store', at: 'one buckle 25 mil', parts: {} },
    ],
  },
  {
    name: 'the joker',
    page: `Good morning and welcome to another episode of what's fallen off now. Conditions at the yard are brisk. By brisk I mean the tea went cold between the flask and the cup.

Starting at the sharp end. The forestay fitting, splendid, no notes. The cleat beside it is another story, it's leaning like a man outside a pub at midnight. Bolt's loose underneath, so somebody with thin arms has to get up in there and hold the spanner while I turn the top. Two people, ten minutes, and my nephew owes me for the concert tickets.

Next door's boat has a new owner and he's painted it orange. I mean properly orange. Ships will steer for it.

The windows. All tight. I did them in October with my own fair hands and I'm still finding mastic in my hair.

Side deck, right side, there's a spot that goes crick when you tread on it. It doesn't give, it just says crick. I've decided it's a greeting.

The boom. The outhaul's got stuck inside, I pulled it and it went twang and now it doesn't go anywhere at all. I think it has come off the wheel in the end. So that's the end cap off and a fishing expedition with a bit of bent wire. An hour, or an hour and a half with swearing.

It's trying to snow. In April! My grandfather used to say never trust a lambing wind.

Cabin then. The step has come adrift on one side, I've propped it with a tin of chopped tomatoes, which we can't now eat. Two screws and some glue and I get my tomatoes back. Battery, drum roll, 12.63. Thank you, thank you. Bilge has a bit of water but I spilt that myself last week.

The chart light flickers like a disco. Touch the switch and it stops. I suspect the switch, so, new switch, fifteen minutes.

A fellow from the club told me his outboard ran on a mixture of cooking oil and hope for a whole summer. Ours is fine. The recoil rope is down to about three hairs, I'd say it has four pulls left in it, so let's get a new one in there before it takes my teeth out. Half an hour.

Trailer. The left tyre has a bulge like a mouse in a snake. That's not a joke, that's a blowout. It gets changed before she goes anywhere.

Back to that leaning cleat, do not tie anything to it till it's done.

Shopping: two screws, a switch, tomatoes.`,
    marks: [
      { kind: 'job', at: 'hold the spanner while I turn the top', parts: { minutes: 10, hands: 2 } },
      { kind: 'job', at: "So that's the end cap off and a fishing expedition", parts: { zone: 'rig' } },
      { kind: 'jury rig', at: "I've propped it with a tin of chopped tomatoes", parts: {} },
      { kind: 'job', at: 'Two screws and some glue', parts: { zone: 'cabin' } },
      { kind: 'reading', at: '12.63', parts: {} },
      { kind: 'job', at: 'so, new switch, fifteen minutes', parts: { minutes: 15 } },
      {
        kind: 'job',
        at: "let's get a new one in there before it takes my teeth out",
        parts: { zone: 'transom', minutes: 30 },
      },
      { kind: 'job', at: 'It gets changed before she goes anywhere', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'Shopping: two screws', parts: {} },
      { kind: 'store', at: ', a switch', parts: {} },
    ],
  },
  {
    name: 'her first year',
    page: `Hi, so this is my first go at doing one of these. I've had her since August and I still don't know what half of it is called, so bear with me.

At the very front there's the wire thing that holds the mast up, and at the bottom of it a sort of barrel you twist. It won't twist. I think it's got salt in it. The man I bought her from said to soak it in oil overnight and then it'll free off, so I'll try that before we need it.

The roller the anchor sits on is fine I think? It rolls.

Then the flat bit at the front with the lid. When I lift the lid the little prop that holds it up just folds, so it came down on my head. I've been using a wooden spoon to hold it open. I suppose one can buy those props, so I'd like a new one on there, it's only four screws.

The pulley ropes inside the mast, whatever, they all pull.

Inside. It's so cosy. I put up fairy lights! They run on their own little batteries. The big battery said 12.4 on the meter my dad lent me, he says that's okay.

There's a sort of box in the middle that the fin goes up into, and on top of it there's a wooden cover, and the cover's got a split all the way down. Dad says glue and a couple of clamps, twenty minutes. I'll do it at his.

Under where your feet go there was some water. I tasted it (don't tell anyone) and it's not salty, so it must be rain. I think it's coming in by the pole that holds the railing up, on the left, there's a brown streak under it on the inside. Somebody at the club says you undo it and put goo under and do it up again, and it's about an hour. Need someone outside with the screwdriver and me inside with the spanner.

The steering stick is lovely, I oiled it.

At the back, the thing the engine hangs on. It's supposed to lock when it's up and it doesn't, it sort of sinks. I've got a strap round it and over the back rail which does hold. I've no idea how you mend it. I'm going to ask the outboard man to have a look.

Do I need to do anything about the bottom? I honestly don't know. It's blue.

The trailer scares me but the lights work and the tyres are hard.

To buy: goo, wood glue, one lid prop.`,
    marks: [
      { kind: 'job', at: 'soak it in oil overnight', parts: {} },
      { kind: 'jury rig', at: "I've been using a wooden spoon to hold it open", parts: {} },
      { kind: 'job', at: "I'd like a new one on there", parts: { zone: 'foredeck' } },
      { kind: 'reading', at: '12.4', parts: {} },
      { kind: 'job', at: 'glue and a couple of clamps', parts: { zone: 'case', minutes: 20 } },
      { kind: 'job', at: 'you undo it and put goo under and do it up again', parts: { minutes: 60, hands: 2 } },
      { kind: 'jury rig', at: "I've got a strap round it", parts: {} },
      { kind: 'job', at: "I'm going to ask the outboard man", parts: {} },
      { kind: 'store', at: 'To buy: goo', parts: {} },
      { kind: 'store', at: ', wood glue', parts: {} },
      { kind: 'store', at: 'one lid prop', parts: {} },
    ],
  },
  {
    name: 'old hand',
    page: `Went over her from the truck down. Mast on the horses.

Truck: vane gone. Gone two seasons. Don't miss it.
Sheave: good. Pinned it new in '25.
Cap shrouds: good. Port lower, swage weeping rust, barbs at the neck. Condemned. New lower from the loft by the 20th.
Jib halyard: glazed where it lies in the clutch, otherwise sound. Crop a fathom and re-splice. 40 min.
Spreader roots: cracked paint, no more than that. Dye in March, nothing.
Gooseneck: pin worn bright one side. Good for years yet.
Leech line, main: parted. Had a bit of whipping twine in there since the autumn race and it does. Reeve proper stuff, 15 min, sail's on the bed at home anyway.

Ground tackle: galv going on last five metres. End for end it.
Bitter end: made fast. Checked.

Deck: tight. Hatch gasket's taken a set but not a drop under the bucket.
Stanchions: firm.

Below: sweet. Limber holes clear, rodded them. Bilge dry as a biscuit.
Batt 12.6.
Bilge pump: strum box clear. Diaphragm stiff, wants changing before the muster, 20 min. Got the kit.
Lamp: glass sooted. It's a lamp.

Board: hangs plumb. Wire two broken yarns by the ferrule. I'll not trust it. New wire, prop her first, two hours, and a lad to take the weight.
Pivot bolt: tight, dry.

Steering: pintles snug. Cheeks of the stock opening at the lower edge, put a G-cramp on to keep it honest. Thickened resin and three bronze rivets, evening's work.
Tiller: mine, ash, nothing wrong with ash.

Engine: clean spark, clean oil. Anode down to the bolt. Swap, 5 min.

Trailer: hubs cool off the road, packed them at Candlemas. Lamp bracket hanging on tape. Weld it? No, strip of ali and two bolts. 20 min.
Springs: rust, skin deep. Let be.

Young fellow alongside bent his plate on the bar, lifting out Monday. Said I'd hold a rope.

Want: 3 m leech line, anode, bronze rivets, resin.

Should she have a feathering prop? On an outboard? Away with you.`,
    marks: [
      { kind: 'job', at: 'New lower from the loft by the 20th', parts: { zone: 'rig', due: '2027-04-20' } },
      { kind: 'job', at: 'Crop a fathom and re-splice', parts: { minutes: 40 } },
      { kind: 'jury rig', at: 'Had a bit of whipping twine in there', parts: {} },
      { kind: 'job', at: 'Reeve proper stuff', parts: { minutes: 15 } },
      { kind: 'job', at: 'End for end it', parts: { zone: 'bow' } },
      { kind: 'reading', at: 'Batt 12.6', parts: {} },
      { kind: 'job', at: 'Diaphragm stiff, wants changing', parts: { fitting: 'pump', minutes: 20, outing: 'muster' } },
      {
        kind: 'job',
        at: 'New wire, prop her first',
        parts: { fitting: 'wire', minutes: 120, hands: 2, setUps: { boat: 'propped' } },
      },
      { kind: 'jury rig', at: 'put a G-cramp on to keep it honest', parts: { zone: 'transom' } },
      { kind: 'job', at: 'Thickened resin and three bronze rivets', parts: { zone: 'transom' } },
      { kind: 'job', at: 'Swap, 5 min', parts: { minutes: 5 } },
      { kind: 'jury rig', at: 'Lamp bracket hanging on tape', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'strip of ali and two bolts', parts: { zone: 'trailer', minutes: 20 } },
      { kind: 'store', at: '3 m leech line', parts: {} },
      { kind: 'store', at: ', anode', parts: {} },
      { kind: 'store', at: ', bronze rivets', parts: {} },
      { kind: 'store', at: ', resin', parts: {} },
    ],
  },
  {
    name: 'with a gauge in each pocket',
    page: `Survey of sorts, 8 April, dry, 11 degrees, wind too slight to measure.

Tyres: 2.6 bar left, 2.1 right. Both should be 2.6; pump the right one up before the tow and measure it again after a night. I replaced the valve cores in February so I do not suspect those.

Hitch head: 0.4 mm wear on the indicator, within the green band. Fine.

Winch post: the foot has moved back along the drawbar by 35 mm since I scribed the line last year. The U-bolts are at 20 newton metres where the sheet says 45. Slide it forward to the mark and torque them, 25 minutes, with the weight of the boat taken off it first.

Hull, moisture by meter, port topside amidships 9, starboard 9, transom around the bracket 19. I believed the first figure and took it four times. Something is letting water into the core. The two upper bracket bolts lift 0.5 mm under a lever, so that is the way in. Bracket off, holes drilled oversize, filled with resin, drilled again: six hours in total, spread across three days of curing. Until then no more than 40 kg on it.

Mast step: flat within 0.2 mm. No action.

Forestay tension at the last sail was 8 per cent on the gauge. My neighbour reports 15 on his, which I think is optimistic for his beam.

Electrical. Rest voltage 12.56. Drain with all switches off: 42 milliamps. It ought to be nil. I pulled fuses one after another and it dropped when I pulled the radio's. For the moment that fuse lives in my jacket. The radio must be rewired to the switched side, half an hour.

Navigation lights: port 11.9 V at the lamp, starboard 11.8, stern 11.9. Good.

Bilge pump: 14 litres a minute against 22 claimed. The inlet was clean. I measured the outlet hose bore and it has been squashed to an ellipse under the berth board. Reroute, with two P-clips, 45 minutes.

Hatch acrylic: crazed to a depth I cannot measure. It is ugly. It is not leaking.

Board: 6 mm side play in the case, 4 mm when built. The pads can be shimmed and I have the sheet, 3 mm polythene; with her propped, two hours.

Sheet winch: breakaway 3.1 Nm, same as its twin. Serviced at Christmas.

Rudder downhaul cleat: slips at 60 N. The teeth are rounded off. New cleat, same hole centres, 10 minutes.

Stock required: one cam cleat at 27 mm centres, P-clips 25 mm, slow hardener.

It has been suggested I should weigh the boat. I should love to.`,
    marks: [
      { kind: 'reading', at: '2.6 bar left', parts: {} },
      { kind: 'reading', at: '2.1 right', parts: {} },
      { kind: 'job', at: 'pump the right one up before the tow', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Slide it forward to the mark and torque them', parts: { zone: 'trailer', minutes: 25 } },
      { kind: 'reading', at: 'port topside amidships 9', parts: {} },
      { kind: 'reading', at: ', starboard 9', parts: {} },
      { kind: 'reading', at: 'transom around the bracket 19', parts: {} },
      { kind: 'job', at: 'Bracket off, holes drilled oversize', parts: { fitting: 'bracket', minutes: 360 } },
      { kind: 'reading', at: 'Rest voltage 12.56', parts: {} },
      { kind: 'jury rig', at: 'that fuse lives in my jacket', parts: {} },
      { kind: 'job', at: 'The radio must be rewired to the switched side', parts: { minutes: 30 } },
      { kind: 'reading', at: 'port 11.9 V at the lamp', parts: {} },
      { kind: 'reading', at: ', starboard 11.8', parts: {} },
      { kind: 'reading', at: ', stern 11.9', parts: {} },
      { kind: 'job', at: 'Reroute, with two P-clips', parts: { zone: 'cabin', minutes: 45 } },
      {
        kind: 'job',
        at: 'The pads can be shimmed',
        parts: { zone: 'case', minutes: 120, setUps: { boat: 'propped' } },
      },
      { kind: 'job', at: 'New cleat, same hole centres', parts: { minutes: 10 } },
      { kind: 'store', at: 'one cam cleat at 27 mm centres', parts: {} },
      { kind: 'store', at: 'P-clips 25 mm', parts: {} },
      { kind: 'store', at: 'slow hardener', parts: {} },
    ],
  },
  {
    name: 'planning the cruise',
    page: `Thinking out loud about the estuary night, that's the fifteenth of May, and then if it goes well the muster after that, and maybe in August a whole week if work lets me. So what does she need so we can actually sleep on her.

Anchoring first. We'd be lying in the creek, four metres at the top of the tide, so thirty metres of warp does it and we've got forty. The chain has lost all its paint marks so I never know how much is out. Mark it again every five metres, cable ties will do, twenty minutes on the lawn.

An anchor light. The one on the mast works, I tried it at Easter. The bow roller has a sharp edge on one cheek and it chewed the warp last summer, so file that round before we go, ten minutes.

Sleeping. The port berth cushion got soaked in the autumn and it's dried out okay. But the berth board underneath bows in the middle when I lie on it, it's going to go. I want a batten glued across the bottom of it, an hour with the drying. We've had a fender jammed under it, that was my partner's idea and it works better than it should.

Which tide? If we leave at ten we carry the ebb down, and I think we'd be in by two. The swing bridge still opens at weekends, I rang them. And I've booked the slip for the Friday, they only take three boats.

Cooking. Stove's been serviced. The tap on the water can dribbles, it always has, nobody minds.

Battery, twelve six five today, so two nights of lamps and a phone each is no bother. Should we get a solar panel? Perhaps next year.

Mosquitoes! There's a gap above the washboards. A bit of net hemmed to fit would do nicely, my mother's got the sewing machine and said she would run it up if I bring her the size, so I must measure it.

The outboard cut out twice on the way home in September. It turned out to be the breather being shut, so nothing. Spare plug's aboard.

I heard the withies have moved again by the second bend. Somebody always says that.

And the reefing: the second line's been led wrong, it pulls forward instead of down. Lead it again through the outer eye, mast up for that, quarter of an hour.

Get the new chart, cable ties, two metres of net, and gas.`,
    marks: [
      { kind: 'job', at: 'Mark it again every five metres', parts: { zone: 'bow', minutes: 20 } },
      {
        kind: 'job',
        at: 'so file that round before we go',
        parts: { fitting: 'roller', minutes: 10, outing: 'estuary' },
      },
      { kind: 'job', at: 'I want a batten glued across the bottom', parts: { zone: 'cabin', minutes: 60 } },
      { kind: 'jury rig', at: "We've had a fender jammed under it", parts: {} },
      { kind: 'reading', at: 'twelve six five', parts: {} },
      {
        kind: 'job',
        at: "A bit of net hemmed to fit would do nicely, my mother's got the sewing machine and said she would run it up if I bring her the size, so I must measure it",
        parts: {},
      },
      { kind: 'job', at: 'Lead it again through the outer eye', parts: { minutes: 15, setUps: { mast: 'up' } } },
      { kind: 'store', at: 'the new chart', parts: {} },
      { kind: 'store', at: ', cable ties, two', parts: {} },
      { kind: 'store', at: 'two metres of net', parts: {} },
      { kind: 'store', at: ', and gas', parts: {} },
    ],
  },
  {
    name: 'laying her up',
    page: `Last walk round before the cover goes on for good. It's blowing leaves and I've got the wrong hat.

Mast is down and on the trestles, halyards are all off and in the bath at home, soaked, rinsed, drying. Not my favourite bath.

Sails went to the loft on Tuesday so they're not my worry till spring.

Water's out of her, tap left open, and I've tipped the last drop out of the sink bend. Gas bottle off and in the shed.

The battery I've brought home, it read 12.8 after a night on the charger. Somebody remind me it needs topping up once a month over the winter, first Sunday say.

Now, the mast. The bottom foot of the sail track is full of something white and crusty, and that's why the slides stuck all August. Scrape it out and run a bit of candle up it, half an hour, no sense leaving it. The starboard spreader bracket has one rivet that turns under my finger, so drill out and put a new one, ten minutes, while she's flat.

Ropes: mainsheet's fine for another year. The jib sheets have gone like cardboard but that's only salt, they'll wash.

Below. All bunk cushions out. There's a tide mark on the lining behind the starboard berth that I don't remember, and it lines up with the window above. I've had a towel tucked along the bottom of that window since the last sail. In the spring, out it comes, new sealant all round, two hours. Moisture there is 18 on the little meter.

Lockers empty, lids propped with bits of wood for the air, that's how I always do it.

The hatch garage or whatever you call it, the hood over the sliding hatch, is crazed all along the edge. It was crazed when I bought her.

Rudder's in the hall. Pins cleaned, packed in grease. The varnish on the back edge has lifted and there's grey wood under it, so scrape that and get two coats on by the fire, my wife permitting.

Outboard: flushed, fogged, oil out, oil in. The bracket springs are stiff, could've oiled them, forgot. Do that next time I'm down, five minutes.

Trailer wheels should come off the ground. One jack I've got, one I need to borrow, so her next door gets asked for hers. The lamp that got crushed by the gate is held on with a boot lace and a prayer. New lamp before she's next on the road, that's a police matter otherwise.

My friend leaves his in the water all winter. His boat.

Get: rivets, one trailer lamp, sealant. Cover on. Goodnight, old girl.`,
    marks: [
      { kind: 'reading', at: 'it read 12.8', parts: {} },
      { kind: 'job', at: 'it needs topping up once a month', parts: {} },
      { kind: 'job', at: 'Scrape it out and run a bit of candle up it', parts: { zone: 'rig', minutes: 30 } },
      { kind: 'job', at: 'so drill out and put a new one', parts: { zone: 'rig', minutes: 10 } },
      { kind: 'jury rig', at: "I've had a towel tucked along the bottom of that window", parts: {} },
      { kind: 'job', at: 'out it comes, new sealant all round', parts: { minutes: 120 } },
      { kind: 'reading', at: 'Moisture there is 18', parts: {} },
      { kind: 'job', at: 'so scrape that and get two coats on', parts: {} },
      { kind: 'job', at: "Do that next time I'm down", parts: { fitting: 'bracket', minutes: 5 } },
      {
        kind: 'job',
        at: "One jack I've got, one I need to borrow, so her next door gets asked for hers",
        parts: { zone: 'trailer' },
      },
      { kind: 'jury rig', at: 'held on with a boot lace and a prayer', parts: { zone: 'trailer' } },
      {
        kind: 'job',
        at: "New lamp before she's next on the road",
        parts: { zone: 'trailer', consequence: 'unlawful' },
      },
      { kind: 'store', at: 'Get: rivets', parts: {} },
      { kind: 'store', at: ', one trailer lamp', parts: {} },
      { kind: 'store', at: ', sealant', parts: {} },
    ],
  },
  {
    name: 'fitting out',
    page: `Cover off at last, first warm day, bees about. Right, spring list, going clockwise from the bow.

Oh dear, mouse. There's a nest in the anchor locker made out of what used to be the bow fender. Locker scrubbed out already, I couldn't leave it. But they've had the end of the anchor warp too, chewed about a metre of it. That end gets cut off and I'll splice the thimble back in, three quarters of an hour if I can remember how splices go.

Starboard side, lovely. I polished her in March, both sides, never again.

Starboard winch turns like a watch. The cockpit cushion poppers, one missing. Meh.

Locker lid on that side, the gasket foam has crumbled to bits, it comes off on your fingers. New strip round that, and the rest of the roll can do the other lid while I'm about it, so half an hour for the pair.

At the back: the rudder goes on all right, but look, the little spring that stops it lifting off is missing. I've put a loop of cord through for the moment. If it floats off on the water we've no steering. So fit a proper clip, five minutes, before the shakedown.

The outboard was serviced by the man and he said the throttle cable's frayed where it goes into the handle, and he'd not go another season on it. He had none in stock. Ring him, he'll have had it by now. Mind you he also said it would snow at Easter.

Port side. Hmm, a scratch, that's new, that's the neighbour's mast going past. He's owned up and he's seeing to it himself.

Port shroud plate's dry as a bone since I rebedded it. Ten out of ten.

Mast foot: the pin is a bit bent, only a bit, it was a bit bent last year.

Rig tension we do on the day.

Down below there's that wetness again at the front of the case, I mopped it on the first and it's back. You can see a shiny line where the case meets the floor. Rake that seam out and run fresh filler along it, an hour, it'll need to be properly dried first with the heater. Battery says 12.3, charging now.

Trailer next. Brakes: I can't tell, the garage does them on the nineteenth, I've only to take it there. Nose wheel goes flat overnight and it's on its second puncture, so get a solid one and stop messing about.

That seam at the case, put it at the top of the list please.

Shop: foam strip, rudder clip, filler.`,
    marks: [
      {
        kind: 'job',
        at: "That end gets cut off and I'll splice the thimble back in",
        parts: { zone: 'bow', minutes: 45 },
      },
      { kind: 'job', at: 'New strip round that', parts: { zone: 'cockpit', minutes: 30 } },
      { kind: 'jury rig', at: "I've put a loop of cord through for the moment", parts: { zone: 'transom' } },
      { kind: 'job', at: 'So fit a proper clip', parts: { zone: 'transom', minutes: 5, outing: 'spring' } },
      {
        kind: 'job',
        at: "the throttle cable's frayed where it goes into the handle, and he'd not go another season on it. He had none in stock. Ring him",
        parts: { zone: 'transom' },
      },
      { kind: 'job', at: 'Rake that seam out and run fresh filler along it', parts: { zone: 'case', minutes: 60 } },
      { kind: 'reading', at: 'Battery says 12.3', parts: {} },
      {
        kind: 'job',
        at: "the garage does them on the nineteenth, I've only to take it there",
        parts: { zone: 'trailer' },
      },
      { kind: 'job', at: 'so get a solid one', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'Shop: foam strip', parts: {} },
      { kind: 'store', at: ', rudder clip', parts: {} },
      { kind: 'store', at: ', filler', parts: {} },
    ],
  },
  {
    name: 'a friend comes along',
    page: `I went round with my friend from the rowing club, he's had boats for forty years and he has an opinion on every screw, so here goes.

He started by kicking the trailer tyre. Said it was fine. Then he took hold of the wheel at the top and rocked it and it went clunk, Port side. "That's your bearing," he says, "you've got it too slack." Jack it up and take the nut up a flat, he reckons, twenty minutes. I'll do that Saturday.

He doesn't like my fenders. I like my fenders.

On the foredeck he found the hatch catch only holds by one of its two dogs. He says change it, I say take it apart first and see whether the other dog's just stuck with old varnish. So do that, fifteen minutes.

He said I ought to have a second anchor. Everyone says that. No.

The forestay he looked at with a magnifying glass out of his waistcoat, honestly, and passed it.

Then the mast. He shone a torch up the groove and asked how long that crack by the halyard slot had been there. What crack, I said. It's as long as a fingernail. He'd drill a tiny hole at the end of it so it doesn't run, and get a metal man to look at it. So I'll take some photos round to the metal man before we put it up, and she doesn't sail until he's said yes, it could bring the lot down.

In the cabin he sat on the berth and said "damp", and I got the meter out and it was 14, so ha. Battery 12.55. He thinks the cooker's too near the curtain, and there I gave in: the curtain gets shortened by a hand, my sister will do it if I drop it round.

He laughed at my shoelace. It's what holds the cabin door open, the hook broke in July. A new hook's fifty pence, he said, and a man with a boat can afford it. All right. New hook, two screws.

He asked why the board rattles. I said it rattles. He told me about one that fell out of a boat he had in the eighties, and that took us to lunch.

After lunch, rudder. He waggled it and nodded. Tiller, he said somebody varnishes well. Thank you.

Outboard, the clamp screws were barely finger tight! I did them up there and then. But he'd put a safety line on it, a bit of wire from the motor to the ring on the back, and I would as well, ten minutes.

Buy: cabin hook, wire and two ferrules. And a magnifying glass.`,
    marks: [
      { kind: 'job', at: 'Jack it up and take the nut up a flat', parts: { fitting: 'hub', minutes: 20 } },
      {
        kind: 'job',
        at: "I say take it apart first and see whether the other dog's just stuck with old varnish. So do that",
        parts: { zone: 'foredeck', minutes: 15 },
      },
      {
        kind: 'job',
        at: "He'd drill a tiny hole at the end of it so it doesn't run, and get a metal man to look at it. So I'll take some photos round",
        parts: { zone: 'rig', consequence: 'danger' },
      },
      { kind: 'reading', at: 'it was 14', parts: {} },
      { kind: 'reading', at: 'Battery 12.55', parts: {} },
      { kind: 'job', at: 'the curtain gets shortened by a hand', parts: { zone: 'cabin' } },
      { kind: 'jury rig', at: "He laughed at my shoelace. It's what holds the cabin door open", parts: {} },
      { kind: 'job', at: 'New hook, two screws', parts: {} },
      { kind: 'job', at: "he'd put a safety line on it", parts: { zone: 'transom', minutes: 10 } },
      { kind: 'store', at: 'Buy: cabin hook', parts: {} },
      { kind: 'store', at: ', wire and', parts: {} },
      { kind: 'store', at: 'two ferrules', parts: {} },
    ],
  },
  {
    name: 'this year against last',
    page: `I've got last year's sheet in my hand and I'm going down it line by line to see what I did and what I only said I'd do.

One, forehatch hinges. Done, May, new screws, no trouble since.

Two, the stain under the starboard shroud plate. I wrote "watch it". I watched it. It was the size of a coin then and it's the size of a saucer now, and the meter says 20 where it said 15. So no more watching, it comes up, gets cleaned out and goes back on fresh bedding, ninety minutes, with the mast down.

Three, bilge pump. Replaced in June. Works, though it's louder than the old one.

Four, repaint the cockpit sole. Not done, and do you know, nobody's noticed. Cross it off.

Five, the zip on the tent. Done, well, done by the sailmaker.

Six, wobbly tiller. I packed it with a slice of plastic milk bottle last summer and wrote "temporary". It's still in there and still wobbling. Proper bushes, I've had them in the drawer since the autumn, half an hour.

Seven, battery. Last year 12.3, this year 12.6, because I bought a new one. Tick.

Eight, port rubbing strake. Filled and painted. You can't see it unless you know.

Nine, masthead light. I wrote "intermittent". It isn't intermittent now, it's just off. Try the bulb, then go along the cable with the meter, mast down for that as well. An hour I'd say.

Ten, trailer: lights done, mudguards done, hitch greased. The coupling handle sticks down and you've to lift it with your boot, which it didn't do last year. Oil and work it, ten minutes.

Eleven, board pendant. New in April last year, and it's perfect.

New this year, then. The mainsail's top batten pocket has a hole at the end and the batten pokes out. I put sticky sailcloth over it at the muster and it's stayed put. The loft can sew that, take it in before the shakedown. And there's a thing with the drain plug, the rubber's gone hard and it drips on the slip, you can hear it in the car park. New plug, one minute.

My brother-in-law bought a boat off the internet without looking and it has no keel. Worse than mine, then.

Also something I keep forgetting, the washboards swell and jam when it rains. They did last year and the year before. Plane a whisker off the edge, and varnish the bare bit, an hour.

Last year I meant to learn to splice. I still mean to.

Shopping: drain plug, and that's the lot.`,
    marks: [
      { kind: 'reading', at: 'the meter says 20', parts: {} },
      {
        kind: 'job',
        at: 'it comes up, gets cleaned out and goes back',
        parts: { fitting: 'plate-stbd', minutes: 90, setUps: { mast: 'down' } },
      },
      { kind: 'jury rig', at: 'I packed it with a slice of plastic milk bottle', parts: { fitting: 'tiller' } },
      { kind: 'job', at: "Proper bushes, I've had them in the drawer", parts: { fitting: 'tiller', minutes: 30 } },
      { kind: 'reading', at: 'this year 12.6', parts: {} },
      {
        kind: 'job',
        at: 'Try the bulb, then go along the cable',
        parts: { zone: 'rig', minutes: 60, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'Oil and work it', parts: { zone: 'trailer', minutes: 10 } },
      { kind: 'jury rig', at: 'I put sticky sailcloth over it', parts: {} },
      { kind: 'job', at: 'The loft can sew that, take it in', parts: { outing: 'spring' } },
      { kind: 'job', at: 'New plug, one minute', parts: { minutes: 1 } },
      { kind: 'job', at: 'Plane a whisker off the edge', parts: { minutes: 60 } },
      { kind: 'store', at: 'Shopping: drain plug', parts: {} },
    ],
  },
];
