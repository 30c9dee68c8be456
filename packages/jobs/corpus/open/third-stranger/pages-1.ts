import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'the retired teacher on the drive',
    page: `A dull, still afternoon, and I have the drive to myself, so I shall go round her once and say what I see.

The stem first. The bow roller turns under one finger, as it ought. I had it apart in February and there is nothing more to be said about it. The stainless strip beneath it, however, is a different story: there is daylight between it and the wood for the length of my hand, and one can rattle it. A longer screw top and bottom and a bed of mastic will bring it home. I allow half an hour.

The foredeck paint has gone chalky, and comes off on one's trousers, but it is sound underneath and I rather like it.

Coming aft along the port side, the rubbing strake took a knock from the gatepost in 2019, which was scarfed at the time and has never moved. My late wife was at the wheel and would wish it known that I was giving the directions.

The cockpit. The starboard locker lid is held shut at present with a loop of shock cord, since the catch broke off in my fingers. I have meant to replace that catch since last summer and I dare say it will be this weekend or never. The winch clicks nicely. The tiller has lost its shine where the hand goes; three coats before she goes back in, weather permitting.

Below, all is as dry as a biscuit. The bilge pump gurgles and delivers, which is all one asks.

The trailer has one sulky lamp, on the nearside, which comes on when kicked. I shall have to take it down and clean the contacts, for I can hardly kick it on the bypass.

People ask whether I would have a newer boat. I would not. If the mast ever came down I might think again.`,
    marks: [
      { kind: 'job', at: 'A longer screw top and bottom and a bed of mastic', parts: { zone: 'bow', minutes: 30 } },
      { kind: 'jury rig', at: 'held shut at present with a loop of shock cord', parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'I have meant to replace that catch', parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'three coats before she goes back in', parts: { fitting: 'tiller' } },
      { kind: 'job', at: 'I shall have to take it down and clean the contacts', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'on the pontoon with no stops',
    page: `now then is it on it is grand so I'm down on the pontoon and there's a lovely bit of sun and your man in the big white yoke beside us has his music going again but never mind him the lines are all right the spring has a bit of a flat in it where it lies in the fairlead I'll turn it end for end when I'm done here and that'll see out the year the fenders are black I don't care the headsail furler now I gave it a pull coming in last night and you can hear it grind like a bag of gravel so that wants flushing out with fresh water and a drop of something the dry stuff not grease twenty minutes the forestay pin has its ring in it I checked that first thing because of what happened to poor Declan's mast years back a terrible bang it made you could hear it in the pub okay the windows the port one weeps at the bottom corner not a lot just a tear running down onto the books and I had a wipe of putty on the outside of it since Easter that's doing the job for the minute but it'll need taking out and bedding right come the autumn the starboard one is bone dry the sink empties the tap spins and spins and never shuts off so a new washer or a new tap whichever is the cheaper the gas I had looked at in January and there's a sticker to prove it the engine started on the second pull good girl it pees like a horse the fuel hose though is gone stiff as a poker and there's a smell off it that gets replaced before anyone lights a cigarette next to it my brother says I should go electric and my brother can buy it so he can the batteries I make that twelve point four nine now what else the flag's in ribbons but it's the flag of a county that lost so it can stay that way till September`,
    marks: [
      { kind: 'job', at: "I'll turn it end for end", parts: {} },
      { kind: 'job', at: 'that wants flushing out with fresh water', parts: { minutes: 20 } },
      { kind: 'jury rig', at: 'I had a wipe of putty on the outside of it', parts: {} },
      { kind: 'job', at: "it'll need taking out and bedding right", parts: {} },
      { kind: 'job', at: 'so a new washer or a new tap', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'that gets replaced before anyone lights a cigarette', parts: {} },
      { kind: 'reading', at: 'twelve point four nine', parts: {} },
    ],
  },
  {
    name: 'messages from the ramp',
    page: `Kel: you there mate
Kel: back at the ramp, she's on the trailer, I'm having a pie
Jono: how'd she go
Kel: beautiful. 15 knots and flat. saw a seal
Kel: few bits but
Jono: go on
Kel: centreboard won't stay down. pops up the second you look at it
Jono: thats the friction pad eh. lost its grip
Kel: yeah reckon. I'll pull the bolt Sunday arvo and shove a new one in
Jono: need a hand for that, its heavy
Kel: you're the hand
Jono: ha
Kel: also the jib cleat on the left doesn't bite. sheet just walks out through it
Jono: teeth are stuffed. they were stuffed when Dad had it
Kel: so new cleat
Jono: so new cleat. I've got one in the shed, brand new, still in the packet. bring it round when I come
Kel: legend
Jono: what about the rudder, you said it was sloppy
Kel: nah tightened that at Christmas, good as gold
Jono: and the mainsail
Kel: sail's fine. bottom batten's trying to escape, the pocket's let go at the end. I stuck a bit of duct tape over it and it got us home
Jono: lol classy
Kel: Mum can run a stitch down it, I'll drop it at hers tomoz
Jono: she'll want feeding
Kel: trailer though. left tyre's got wires showing on the inside edge. didn't see it till I was under there
Jono: mate. do NOT drive home on that
Kel: putting the spare on now. after the pie
Jono: and then you've got no spare
Kel: and then two new ones, yeah yeah, before the long weekend
Jono: they're like 90 bucks each at the place on the highway
Kel: cheaper than a coffin
Jono: did you ever think about a bigger outboard
Kel: every time I use this one
Kel: pie's gone. talk later`,
    marks: [
      { kind: 'job', at: "I'll pull the bolt Sunday arvo and shove a new one in", parts: { zone: 'case' } },
      { kind: 'job', at: "the jib cleat on the left doesn't bite", parts: {} },
      { kind: 'jury rig', at: 'I stuck a bit of duct tape over it', parts: {} },
      { kind: 'job', at: "Mum can run a stitch down it, I'll drop it at hers", parts: {} },
      { kind: 'job', at: 'putting the spare on now', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'and then two new ones', parts: { zone: 'trailer' } },
    ],
  },
  {
    name: 'club hard, bullets',
    page: `Club hard, Weds evening, wind SW, everyone else's boat in the way as usual

- Mast step: ok
- Port shroud plate: two bolts finger loose, brown tide mark under. Lift, clean, rebed. Mast has to be down. 1.5 hr, needs two of us
- Stbd plate: did it in '25, still dry
- Halyards: main ok. Jib halyard flat and hairy where it sits in the sheave. Cut a foot off, re-splice. 30 min
- Sheave itself spins
- Boom end fitting: rivets ok (re-did all six last May)
- Reefing line: too short by about a yard. Has been since new. We manage
- Tiller: check screw backing out again. Bit of threadlock, 5 min
- Rudder head: fine
- Outboard bracket: spring's gone soft, leg drops with a thump. Bungee on it meanwhile
- New spring when the parts man gets one in
- Outboard: not looked at, Phil has it
- Locker drain: blocked with leaves. Poked it through while I was there
- Hatch: seal gone hard, lets a cupful in over the bunk when we take one green. New strip, glue, 40 min
- Washboards: swollen, stick in wet weather. That's what wood does
- Echo sounder: reads 4 ft on concrete. Funny but no
- Battery 12.55, nothing on
- Trailer jockey wheel: clamp slips. You wind it up and it slides back down by itself. One for the list, before muster weekend
- Lights: all good

Get: hatch strip 3 m, threadlock, whipping twine

Not us: club crane is out till the 20th. Somebody's left a cradle by the tap. The blue sloop next door has a shroud hanging by a thread, have told them twice.

Plan: estuary in May, tide's at 0920, back for Sunday dinner.

If the mooring fees go up again I'd sooner trail her everywhere.`,
    marks: [
      {
        kind: 'job',
        at: 'Lift, clean, rebed',
        parts: { fitting: 'plate-port', minutes: 90, hands: 2, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'Cut a foot off, re-splice', parts: { zone: 'rig', minutes: 30 } },
      { kind: 'job', at: 'Bit of threadlock, 5 min', parts: { fitting: 'tiller', minutes: 5 } },
      { kind: 'jury rig', at: 'Bungee on it meanwhile', parts: { fitting: 'bracket' } },
      { kind: 'job', at: 'New spring when the parts man gets one in', parts: {} },
      { kind: 'job', at: 'New strip, glue, 40 min', parts: { minutes: 40 } },
      { kind: 'reading', at: 'Battery 12.55', parts: {} },
      { kind: 'job', at: 'One for the list, before muster weekend', parts: { zone: 'trailer', outing: 'muster' } },
      { kind: 'store', at: 'hatch strip 3 m', parts: {} },
      { kind: 'store', at: 'threadlock, whipping', parts: {} },
      { kind: 'store', at: 'whipping twine', parts: {} },
    ],
  },
];
