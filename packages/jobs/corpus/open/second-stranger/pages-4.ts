import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'both been filled and painted',
    page: `So what you're looking at, is the old girl. Herself. On the drive. I'm seventy nine, and I've had her since I was fifty, and we've both been filled and painted. Now the thing I want to show you. Is this shrewd. The cap shrewd on the. Hold on, port side. No. I'm standing at the back, so that's starboard, starboard side. The bottle screw, has got a bend in it. You see that, not much. But a bottle screw ought to be straight and that one has been trodden on, I know by whom. He was a big lad. So there's a new one wanted, half inch no. Not half inch, five sixteenths thread. It goes on in ten minutes once you've the mast slack.

I'm often asked what I use, in the way of sealant, and the answer is whatever's not set solid in the tube. No but seriously. Below the water it's polyurethane and above the water it's butyl, and on plastic windows neither of them. You want a silicone made for it. And don't touch it for two days, that's the bit nobody does.

The jeb hall yard. Has a good shekel on it. Brass. Forty years old that shekel and it came off another boat altogether.

Now the build pump, here. You work the handle, and the handle's fine. And nothing whatever comes up. I had the hose off and there's my answer, it's gone soft and it just sucks itself flat. It needs the proper kind with the wire in it, a metre and a half. I'll get that on Saturday when I'm in town and put it in. It's an awkward wee corner so say an hour.

The rudder. It's the original rudder. There was a bit of rot in the top of the stock. I dug that out, in March and let in a piece of iroko. It's had two coats of varnish since and I want another three on it, two days between each, so that's most of a week but only a half hour at a time.

My grandson tells me I should have a rolling jeb. I tell him I've a rolling grandson.

The floor boards. Fine. The cooker, fine. I had the gas man. There's a strip of, what is it, draught excluder round the hatch. It was leaking on my bunk and I stuck that on at the New Year. Stops most of it. It's not the right stuff at all. There's a rubber section you can get, and I've sent away for it, so when it arrives that all comes off and the new goes on. An hour.

Battery. Eleven. No I tell a lie. Twelve point four.

The winch post on the trailer, has a wobble. It's two bolts, and one of them's stripped its nut, so that's a new nut and a spring washer and tighten the pair of them. Before I take her anywhere at all, mind.

That'll do, it's trying to snow.`,
    marks: [
      { kind: 'job', at: "So there's a new one wanted, half inch no", parts: { zone: 'rig', minutes: 10 } },
      { kind: 'job', at: "I'll get that on Saturday when I'm in town and put it in", parts: { minutes: 60 } },
      { kind: 'job', at: 'I want another three on it', parts: { zone: 'transom' } },
      { kind: 'jury rig', at: 'I stuck that on at the New Year', parts: {} },
      { kind: 'job', at: 'that all comes off and the new goes on', parts: { minutes: 60 } },
      { kind: 'reading', at: 'Twelve point four', parts: {} },
      {
        kind: 'job',
        at: "so that's a new nut and a spring washer",
        parts: { zone: 'trailer' },
      },
    ],
  },
  {
    name: 'okay, rolling',
    page: `- Okay, rolling.
- Hi. So, we're back, it's the driveway again, it's always the driveway.
- Someday it'll be the ocean.
- Someday it'll be the lake. So, update. The thing we were scared of, the soft spot by the mast step, turned out to be nothing, it was just the paint lifting. I sanded it back, two coats of primer, done.
- She cried.
- I got epoxy dust in my eye. So today. I'm looking at this chainplate cover, zoom in, the shroud plate thing on the port side, and I think it's our leak. We did the hose test and it came in, like, in under a minute. Drip drip drip on the settee. And there's two ways you can go. You can dig out the caulk around the top and put in new caulk, which is like thirty minutes, or you can pull the whole plate.
- And we're not pulling the whole plate with the mast up.
- No. So for now I ran a bead of the clear stuff around it Sunday,
- And it's better.
- It's better, it's not fixed. So when the mast comes down we pull it, and we look at the bolts, and we bed it right. That's two hours, two people, one in and one out.
- Show them the cushions.
- Nobody wants the cushions. Okay, so, the motor.
- The motor's my thing. So it's been idling real rough, and I put new plugs in, that didn't do it, new fuel, that didn't do it. So I'm gonna pull the carb and soak it and blow it out, I watched like four videos.
- He's gonna have a part left over.
- I'm gonna have zero parts left over.
- And the steering. The tiller. There's slop in it where it goes on the rudder head, you can wiggle it like an inch before anything happens. The bolt hole's gone oval. I'm thinking drill it out and sleeve it with a piece of bronze tube.
- Or a bigger bolt.
- No, because then the bigger bolt makes a bigger hole. Sleeve. Epoxy it in, give it twenty-four hours to cure. Forty-five minutes?
- Sure, plus the twenty-four hours.
- The bow roller squeaks. I like it, it's like a doorbell.
- Battery's good, it's 12.7, I mean, 12.67.
- Oh, the bottom. It's a trailer boat so we decided we're just gonna wax it. Did we wax it?
- We waxed half of it. Starboard half still needs doing, that's my Sunday.
- And, trailer. Right, so the coupler, the latch doesn't snap down on its own. You gotta hit it with a hammer. And I looked it up, and you're not supposed to have to hit it with a hammer.
- No.
- So new coupler, it's two bolts. Half hour. That's before we go anywhere.
- And we need bronze tube, carb cleaner, butyl tape.
- Beer.
- Beer's not for the boat.`,
    marks: [
      { kind: 'jury rig', at: 'I ran a bead of the clear stuff around it', parts: { fitting: 'plate-port' } },
      {
        kind: 'job',
        at: 'we pull it, and we look at the bolts, and we bed it right',
        parts: { minutes: 120, hands: 2, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: "So I'm gonna pull the carb and soak it", parts: {} },
      { kind: 'job', at: 'drill it out and sleeve it', parts: { fitting: 'tiller', minutes: 45 } },
      { kind: 'reading', at: '12.67', parts: {} },
      { kind: 'job', at: 'Starboard half still needs doing', parts: {} },
      { kind: 'job', at: "So new coupler, it's two bolts", parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'store', at: 'And we need bronze tube', parts: {} },
      { kind: 'store', at: 'carb cleaner', parts: {} },
      { kind: 'store', at: 'butyl tape', parts: {} },
    ],
  },
  {
    name: 'with a headlamp on',
    page: `Hey, it's me, and it's raining? So I'm inside the boat, inside the garage, with a headlamp on. Glamour. So I figured I'd do the talk from in here for once, and then crawl out.

Behind this panel is what I call the spaghetti. The guy before me used lamp cord. Lamp cord! I've been pulling it out circuit by circuit. Cabin lights, redone. Nav lights, redone? What's left is the bilge pump, and the pump's kind of the one that matters. So that's this weekend, tinned wire, new fuse holder. And I'm going to run it up high this time so it isn't sitting in the wet. Three hours, knowing me. It tests twelve point four eight at the battery so at least that end's good.

Stove's fine. Gimbals are fine.

So there's a drip over the quarter berth, it's been dripping on my pillow since I bought her. I've got a sponge stuck up there with duct tape, and I'd love to tell you it doesn't work. What I think is happening is the screws in the rub rail go clear through the hull. So pull those screws one at a time, I'm only talking five or six of them, squirt polyurethane in, drive 'em back. I want two dry days before that. And it takes like five to cure all the way. So that's a July kind of thing.

Forward hatch. One of the handles turned to chalk and snapped off in my hand. I ordered a pair, so when those show up they go on. Ten minutes and a screwdriver.

Okay. Crawling out. Ow. Okay.

I sail alone so I think about falling in a lot? I've got jacklines, they're new. But the swim ladder here on the transom, it folds up where I can't reach it from the water. I tried it in August, at the dock, on purpose. And I hung there like laundry. So I'm going to rig a trip line, just a line with a float on it that you can yank. Twenty minutes, and I don't know why I haven't done it. Before the shakedown, period.

People always ask how I get the mast up. With a gin pole, alone, and the whole parking lot comes to watch. The hinge pin at the bottom's worn to like a waist, though. I don't need it failing with an audience. So that gets a new pin next time the stick's down, quarter inch. No wait. Three eighths.

Trailer. The shop did the bearings, it cost me a paycheck. But when I turn hard left there's this thunk? I don't know what that is. My brother says springs, my brother sells shoes. I'm going to get under there Sunday with a flashlight and find out.

And I don't need a bigger boat. Everybody at the ramp tells me I need a bigger boat. Where would I put it. Okay, bye.`,
    marks: [
      { kind: 'job', at: "tinned wire, new fuse holder. And I'm going to run it up high", parts: { minutes: 180 } },
      { kind: 'reading', at: 'twelve point four eight', parts: {} },
      { kind: 'jury rig', at: "I've got a sponge stuck up there with duct tape", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'So pull those screws one at a time', parts: {} },
      { kind: 'job', at: 'when those show up they go on', parts: { zone: 'foredeck', minutes: 10 } },
      {
        kind: 'job',
        at: "I'm going to rig a trip line",
        parts: { zone: 'transom', minutes: 20, outing: 'spring' },
      },
      {
        kind: 'job',
        at: 'So that gets a new pin next time',
        parts: { zone: 'rig', setUps: { mast: 'down' } },
      },
      { kind: 'job', at: "I'm going to get under there Sunday with a flashlight", parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'for the working bee',
    page: `Testing. Righto. For whoever's rostered on the working bee, this is the run-through of the training boat. I'll go backwards because I'm standing at the back.

Rudder, the gudgeons are solid. The tiller's fine, it's the bolt through it that works loose, I've done it up four times this season. So this time it comes out, degrease it, thread locker, the blue one, and back in. Ten minutes, and then twenty-four hours before anyone waggles it.

Outboard. It got run dry at the last regatta, and yes, it was my son, thank you, I know. New impeller's in, it pumps like a fire hose, we're square.

Cockpit. The mainsheet block's lost half its balls, they're rolling round in the bilge like mints. I've put an old jib block on there to keep us sailing. A proper ratchet's been ordered, and whoever gets the parcel can bolt it on. Quarter of an hour.

Side decks. Somebody asked if they're soft. No. I weigh what I weigh, and I've bounced.

Starboard shroud plate's got a stain. I pulled that in February, I looked at every bolt with a glass, new washers, all bedded down again, back together. So when you see the stain, that's history.

Mast's up. Main halyard, the splice at the shackle end is pulling, I can see about three mil of core. Cut that off and resplice it, or tie a halyard knot, I don't care which, but the main doesn't go up on it till then. Half an hour. The forestay's good. The burgee's upside down, which I'm told is a distress signal, so fair enough.

Now the forehatch. When it rains, remember rain, it comes in on the berth. I thought it was the seal, and I put a new seal on at Christmas, and it still comes in. So it's not the seal, it's the hinges, they're just screwed down on nothing. They need to come off and go back on with polyurethane under them. An hour, and then it's left shut for a week.

Inside. Battery, twelve point six five. Fire blanket present. Two of the flares are out of date next month. Swap those for new ones, the fire station takes the old.

Anchor. Chain's fine. The rope's been cut by something, oyster I'd say, ten metres up from the chain. We can lose ten metres, for where we go, so chop it there and splice it back on to the chain.

Trailer. Brakes were done by the mechanic. Rust on the drawbar, only surface, but give it a wire brush and a coat of cold gal. Hub caps all there, for once.

I need from the chandlery a tube of polyurethane, a bottle of blue thread locker and a can of cold gal. And whoever's got my good rivet gun, I know where you live.`,
    marks: [
      { kind: 'job', at: 'So this time it comes out, degrease it', parts: { fitting: 'tiller', minutes: 10 } },
      { kind: 'jury rig', at: "I've put an old jib block on there", parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'whoever gets the parcel can bolt it on', parts: { minutes: 15 } },
      { kind: 'job', at: 'Cut that off and resplice it', parts: { zone: 'rig', minutes: 30 } },
      { kind: 'job', at: 'They need to come off and go back on', parts: { zone: 'foredeck', minutes: 60 } },
      { kind: 'reading', at: 'twelve point six five', parts: {} },
      { kind: 'job', at: 'Swap those for new ones', parts: {} },
      { kind: 'job', at: 'so chop it there and splice it back on', parts: { zone: 'bow' } },
      { kind: 'job', at: 'give it a wire brush and a coat of', parts: { zone: 'trailer' } },
      { kind: 'store', at: 'a tube of polyurethane', parts: {} },
      { kind: 'store', at: 'a bottle of blue thread locker', parts: {} },
      { kind: 'store', at: 'and a can of cold gal', parts: {} },
    ],
  },
];
