import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'shouting over the compressor',
    page: `sorry about the racket that's next door's compressor he's spraying a van so I'll shout, right, I've got her on the props since Monday and the board is down and I can see everything from underneath which you never normally do it's like looking up a cow. board's good. I scraped the barnacles off it and there was metal under them and that's a nice surprise and I've already put the zinc paint on so forget the board. the bolt it swings on though, the head's rusted to about half what it was, so a new bolt, stainless, sixteen mil, and that's two men and a trolley jack an hour and a half at least and if it let go the whole plate's on your foot so nobody puts a foot. I've got a car axle stand under the tip of it meanwhile. my mate Deggsy dropped his through a patio. the rubber strips on the slot I did those two year back with the proper glue and they've not shifted a bit. the hull's dry, the meter man came, he sucked his teeth but that's what you pay him for. the log, you know, the little paddle wheel thing, it don't turn, there's a shell in it. pick it out with a pin, five minutes, from underneath, I just hadn't got a pin on me. now the skin fitting for the sink. there's a wooden plug banged up it from the outside because the valve won't close all the way so that's how it's been since last back end and you can't use the sink. new valve in there please before she's wet, an hour, and a tube of sealant, I've got the valve, I've not got the sealant. he's stopped. I can stop shouting. anyway that's it`,
    marks: [
      {
        kind: 'job',
        at: 'so a new bolt, stainless, sixteen mil',
        parts: { minutes: 90, hands: 2, consequence: 'danger' },
      },
      { kind: 'jury rig', at: "I've got a car axle stand under the tip of it", parts: {} },
      { kind: 'job', at: 'pick it out with a pin', parts: { minutes: 5 } },
      { kind: 'jury rig', at: "there's a wooden plug banged up it", parts: {} },
      { kind: 'job', at: 'new valve in there please before', parts: { minutes: 60 } },
      { kind: 'store', at: "I've not got the sealant", parts: {} },
    ],
  },
  {
    name: 'the terse one again',
    page: `8/4. Fog till ten. Then sun.

Stem: ok.
Roller: ok.
Anchor locker lid: hinge pin walked out. Bit of welding rod there, bent over both ends. Has held since launching day last yr. New pin, 4 mm, peen it. 10 min.
Pulpit: ok.
Forehatch: was leaking. New seal Feb. Ok.

Mast up? No. Down till the 17th.
Masthead: ok. Stays: ok. Boots: ok.
Topping lift: never liked it. Still there.
Jib halyard shackle: gate springy, won't snap shut. Swap for the spare out of the tin. 1 min.

Deck stbd: ok. Deck port: hairlines by the cleat. Had them since '19, no longer no wider.
Fairlead: one screw stripped, goes round. Glue + matchstick, then screw. 15 min + dry overnight.

Cabin: ok, smells of apples. Apples removed.
Batt 12.55.
Gas: sniffed, soaped every joint, no bubbles. Hose in date.
Lamp: ok.
Sole: varnished. Don't walk. Dry by Sat.

Case: ok. Wire: ok, greased.

Cockpit. Tiller ok. Stbd seat slat cracked through. Plank laid over it so nobody goes through. New slat, have the ash, 40 min, oil it after.
Winches: ok, both done in March.
Hiking strap: stitching gone one end. Knotted. Knot's good for ever, leave.

Stern: bracket ok, rudder ok. Ensign socket empty, ensign in the wash.
Engine: plug black. Cleaned. Ran. Ok.

Trailer: 2 wheel nuts not tight!! Torqued. Ok now.
Lights ok. Spare ok.
Jockey clamp: handle sheared. Old wrench clamped on it. Fit the new handle when the post comes. Nb don't tow with the wrench on.

Thought about: teak deck. No. Thought about: selling. No. Thought about: bacon. Yes.

Sum: six hours, say. Two nice days. Plenty of time, for once.

Get: 4 mm pin, ash oil, matchsticks (ha).`,
    marks: [
      { kind: 'jury rig', at: 'Bit of welding rod there, bent over both ends', parts: { zone: 'bow' } },
      { kind: 'job', at: 'New pin, 4 mm, peen it', parts: { minutes: 10 } },
      { kind: 'job', at: 'Swap for the spare out of the tin', parts: { zone: 'rig', minutes: 1 } },
      { kind: 'job', at: 'Glue + matchstick, then screw', parts: { minutes: 15 } },
      { kind: 'reading', at: 'Batt 12.55', parts: {} },
      { kind: 'jury rig', at: 'Plank laid over it', parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'New slat, have the ash', parts: { zone: 'cockpit', minutes: 40 } },
      { kind: 'jury rig', at: 'Old wrench clamped on it', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Fit the new handle when the post comes', parts: {} },
      { kind: 'store', at: 'Get: 4 mm pin', parts: {} },
      { kind: 'store', at: 'ash oil', parts: {} },
    ],
  },
  {
    name: 'learning from the harbour master',
    page: `You learn the most about your own boat from being told about other people's. The harbour master here, whom we all call the Bishop, likes to tell about a couple who kept their rudder on with a dog lead for a whole summer. "And the dog?" someone always says. "The dog was on the rudder line," says the Bishop.

I laughed, and then went to look at ours, and found that the retaining strap I fitted in haste last August is a leather belt. It has a buckle. It's done the job perfectly well and has aged better than I have. Still: a stainless clip, as it should be, two rivets, fifteen minutes. I don't want to be a story.

I checked the rest of the stern on the strength of that. The gudgeon bolts are tight. The drain bung is tight. The traveller horse was loose last year but I put bigger pads behind it, and now it's solid.

The motor well has an old stress crack in one corner, and a line of paint flakes shows that it's moving. That has to be ground out to a vee and glassed. I've done one before, on the far corner, which took me a morning, say three hours; the respirator's the worst of it.

The Bishop also holds that no one should paint on a Friday. I've no opinion.

Inside, I was pleased. The bookshelf fiddle that fell off has been glued and pinned. The barometer's been set. There's a rust spot on the stove top, which is only honest wear.

Somebody has borrowed the boat hook. I asked the Bishop, he asked the boys, the boys looked at their feet. I'm going to get another, a cheap one, and I'll burn my name in it. We sail on the twenty-fourth.`,
    marks: [
      {
        kind: 'jury rig',
        at: 'the retaining strap I fitted in haste last August is a leather belt',
        parts: { zone: 'transom' },
      },
      { kind: 'job', at: 'a stainless clip, as it should be', parts: { minutes: 15 } },
      { kind: 'job', at: 'That has to be ground out to a vee', parts: { zone: 'transom', minutes: 180 } },
      { kind: 'store', at: "I'm going to get another, a cheap one", parts: {} },
    ],
  },
  {
    name: 'the boatman to his new owner',
    page: `Well, sir, madam, she's yours, and I'll go round her with you the once, and then I'll leave you be.

You'll hear it said these boats leak at the board case. This one doesn't. I rebuilt the case in the spring of the high tides, new posts and new logs, and I've had a pencil mark on the inside ever since that the water has never reached.

You'll hear the mast creak. Let it.

What you do want to see to is the forestay fitting. See that toggle? There ought to be two in the set and there's only the one, and a shackle making up the length. That shackle was only to get her down the river for the survey. Two toggles and take the shackle out, before you put a press of sail on her: it'd be half an hour for a man with cold hands. I'd have done it if the chandler opened on Mondays.

The sails are good. I'd not spend a penny on the sails.

Step below. Mind your head. Everyone does that. The joinery's been oiled every year since she was a lass. That one door, under the sink, won't stop shut, so I fold a bit of card in it. There, you see, card. It's a ball catch it wants, and two little screws. I never got round to it in eleven year, so I won't tell you how long.

The engine I had running for you Tuesday. She'll smoke. They smoke.

Now, the wheels. I've towed her to the county show and back with never a murmur, but the bearings I've not looked in since. So have a look in them, this spring, clean and fresh grease. It's an hour a side if you've never done it.

And you'll be wanting rope, but you've got your own ideas on colours, I dare say. My wife will cry when she goes. The boat, I mean.`,
    marks: [
      { kind: 'jury rig', at: 'That shackle was only to get her down the river', parts: { fitting: 'forestay' } },
      { kind: 'job', at: 'Two toggles and take the shackle out', parts: { fitting: 'forestay', minutes: 30 } },
      { kind: 'jury rig', at: 'so I fold a bit of card in it', parts: { zone: 'cabin' } },
      { kind: 'job', at: "It's a ball catch it wants", parts: {} },
      { kind: 'job', at: 'So have a look in them, this spring', parts: { zone: 'trailer' } },
    ],
  },
];
