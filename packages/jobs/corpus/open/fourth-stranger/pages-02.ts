import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'with a cold',
    page: `So I've god a cold, excuse the voice. Excuse the sniffing as well. I'm only out here because if I'd stayed in I'd have had to talk to the man about the boiler.

Anyway. She looks all right, doesn't she. Bit of green along the gunwale, that'll come off with a wet rag whenever anybody can be bothered, and I can't.

The stern rail. You'll remember I reversed it into the gatepost. Well, the weld's cracked clean across on the left-hand side and I've lashed it to the pushpit leg with sail tie, which is not going to impress anyone. Bloke behind the bakery does stainless. I'm going to take it off and run it over to him, it's four bolts.

Outboard's fine. Started third pull, coughed, same as me.

Inside — oh, it's warm in here. I could live in here. Locker doors, all shut. Lamps, all light. Somebody's left half a packet of biscuits and they're not even soft. The gas, now, I turned the tap off last September and I've never turned it on since because I'm not sure the hose isn't out of date, hang on, let me see... twenty-one. It says twenty-one. Right, no, that's had its day, that's a new gas hose before there's any more bacon. Gas in a bilge isn't funny.

My brother-in-law thinks I should go electric. My brother-in-law thinks a lot of things.

Battery, twelve point three, nothing on.

Mainsail's in the bag in the spare room, been valeted, looks a treat. The jib hasn't. There's two hanks won't close and I keep squeezing them with pliers; I might as well replace the pair of them properly, ten minutes with the right punch.

Atishoo. That's your lot. Trailer I'll do when I can breathe.`,
    marks: [
      { kind: 'jury rig', at: "I've lashed it to the pushpit leg", parts: {} },
      { kind: 'job', at: 'take it off and run it over to him', parts: {} },
      { kind: 'job', at: "that's a new gas hose", parts: { zone: 'cabin', consequence: 'danger' } },
      { kind: 'reading', at: 'Battery, twelve point three', parts: {} },
      { kind: 'job', at: 'I might as well replace the pair of them properly', parts: { minutes: 10 } },
    ],
  },
  {
    name: 'talking to himself in the yard',
    page: `now then now then what have we here hello girl you've wintered well haven't you better than me um chainplates dry left dry right I put a smear of paint round the bolts last back end to see if they'd move and it hasn't cracked so they haven't moved clever me the wooden grab rail on the cabin top though lifts at the front you can hear it go tick when you lean on it the screw's pulled through so plug that and a longer screw half an hour with the waiting the rest of the rail is grand now that hatch that slides it does slide it slides like a coffin lid always did my old boat had one that you could open with one finger and she sank so there you go what was I right yes the mast's lying there good as gold except the sheave at the top I can't shift it with my thumb it's stuck fast and a rope'll just saw through it so I'll have the pin out clean it and a bit of grease while she's down forty minutes um cockpit drain gurgles that's good gurgling is good it's when it doesn't gurgle you worry the depth thing is dead it's been dead since before the flood I use a stick and I shall go on using a stick the bung in the stern now that's perished it's all cracks it'd fill the boat up would that so get a new bung and put it in and don't launch without it oh and the winch on the post is running on one pawl with an elastic band for a spring it's comical it does hold till the new spring gets here and then it's in with it that's a five minute do and I'm off for a pie`,
    marks: [
      { kind: 'job', at: 'so plug that and a longer screw', parts: { minutes: 30 } },
      {
        kind: 'job',
        at: "so I'll have the pin out clean it",
        parts: { fitting: 'sheave', minutes: 40, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'so get a new bung and put it in', parts: { zone: 'transom' } },
      { kind: 'jury rig', at: 'with an elastic band for a spring', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'till the new spring gets here', parts: { minutes: 5 } },
    ],
  },
  {
    name: 'family chat',
    page: `Mum 09:12 anyone been to the boat??
Mum 09:12 it blew all night
Ollie 09:20 I'm stood next to it. Still a boat
Mum 09:21 very funny. Cover?
Ollie 09:22 cover's on. One corner's flapping, the eyelet ripped out. I've hitched it down with my dressing gown cord
Dad 09:25 why do you have your dressing gown
Ollie 09:25 long story
Mum 09:26 I can punch a new eyelet in. Bring it Sunday
Dad 09:31 check mast crutch pls
Ollie 09:33 crutch is fine, you rebuilt it in January remember, it's like a cathedral
Dad 09:34 it IS like a cathedral
Ollie 09:37 there's water in the cockpit tho, up to the grating
Dad 09:38 leaves in the drain
Ollie 09:41 yep. leaves. Cleared it, gone down
Dad 09:42 good lad. Battery while you're there
Ollie 09:45 12.51
Dad 09:45 lovely
Bea 09:50 can we go to the muster this year
Mum 09:51 if somebody fixes my lifejacket. The crotch strap buckle has gone and I'm not going without
Dad 09:53 I'll get a buckle and sew it on
Mum 09:53 you'll get me one. Aunt Jo can sew it
Dad 09:54 fair
Ollie 10:02 the tiller wobbles side to side now, like a finger's width. Didn't do that in Oct
Dad 10:04 pivot bolt. Just needs nipping up, 5 mins, 13 mm spanner, it can wait till I'm there
Bea 10:06 next door's boat has fairy lights can we have fairy lights
Dad 10:06 no
Ollie 10:11 antifouling looks ok, I was promised I didn't have to do it this year
Dad 10:12 you don't. It's good for another season
Ollie 10:12 screenshot taken
Dad 10:15 what does the gauge say on the trailer spare
Ollie 10:19 18
Dad 10:20 should be 35! Blow it up, foot pump's in the port locker
Ollie 10:21 later. I'm in a dressing gown`,
    marks: [
      { kind: 'jury rig', at: "I've hitched it down with my dressing gown cord", parts: {} },
      { kind: 'job', at: 'I can punch a new eyelet in', parts: {} },
      { kind: 'reading', at: '12.51', parts: {} },
      { kind: 'job', at: "I'll get a buckle and sew it on", parts: {} },
      { kind: 'job', at: 'Just needs nipping up', parts: { minutes: 5 } },
      { kind: 'job', at: 'Blow it up', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'the retired teacher',
    page: `Good afternoon. For those of you who will inherit this boat, and you know who you are, I shall explain as I go.

This is the stemhead. It takes the whole pull of the rig, and if it ever moves you go home. It does not move. I tested it with a bar this morning.

This is a bottlescrew. A bottlescrew must have a pin at either end and a locking wire through the middle. Observe that the starboard one has no locking wire. That is my own omission and it will be wired before the mast goes up; two minutes.

Here we have the ventilator. It used to leak. People will tell you to take it apart; I did, in the autumn, and now it does not leak, and you need never think of it again.

Step down. Mind the third step, which is not the same height as the others, for reasons known only to the builder.

The bilge pump. Twenty strokes and it should throw a bucketful. I had scarcely a cupful today, and one can hear it sucking air, so the diaphragm will have split. There is a spare diaphragm in the tin marked "buttons". Someone with younger knees may fit it: three quarters of an hour.

What would you do if the board jammed down? You would not hit it. You would sail into deep water and rock her. It has happened once in nineteen years.

Now the washboards. The upper one has delaminated at its edge like puff pastry, and a hose clip, opened out and tightened round it, keeps it in one piece. I mean to run epoxy into it and clamp it overnight.

Finally the rudder. Upper pintle: snug. Lower pintle: the nut is only finger-tight, so tighten it and put a drop of thread lock on. There. Any questions? No. There never were.`,
    marks: [
      { kind: 'job', at: 'it will be wired before the mast goes up', parts: { minutes: 2 } },
      { kind: 'job', at: 'Someone with younger knees may fit it', parts: { fitting: 'pump', minutes: 45 } },
      { kind: 'jury rig', at: 'a hose clip, opened out and tightened round it', parts: {} },
      { kind: 'job', at: 'I mean to run epoxy into it and clamp it', parts: {} },
      { kind: 'job', at: 'so tighten it and put a drop of thread lock on', parts: { zone: 'transom' } },
    ],
  },
];
