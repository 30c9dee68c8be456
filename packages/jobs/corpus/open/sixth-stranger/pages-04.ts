import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'in the driveway with coffee',
    page: `alright so Saturday morning coffee in hand walking around the boat in the driveway starting at the trailer tongue the coupler latch is sticky a little grease and work it back and forth two minutes the safety chains I swapped out last year they're good the winch strap is sun burned but the bow eye end is still strong I'd give it one more season the left trailer fender light has water in it you can see it sloshing so drill a little hole no that's what my dad would do just get a new light and splice it in half an hour okay climbing up the non skid is fine the cleat on the port side spins when you cleat it off so back that up with a plate and new bolts somebody's gotta lie in the quarter berth for that and it won't be me so two people forty five minutes the mast crutch in back is a two by four with a towel stapled to it works great been that way six years the mainsheet is crunchy but soft enough after a wash down below the v berth has a puddle under the cushion and I traced it to the bow eye so pull the nut goop it up and tighten it back down thirty minutes and do it dry the battery's at twelve eight I had the charger on it so that don't count the head I cleaned and that's all I'm saying about it the depth sounder reads eleven feet in the driveway which is pretty good the rudder cheeks are getting loose because the spacer wore down and for now there's a cut up milk jug in there two layers I want to make a real spacer from some plastic cutting board ten minutes with the jigsaw and the motor starts fine the prop has a ding but it's a ding a guy told me you lose two percent well I lose two percent need to get one sealed trailer light a tube of the white goop and a quarter inch backing plate that's the list`,
    marks: [
      { kind: 'job', at: 'a little grease and work it back and forth', parts: { zone: 'trailer', minutes: 2 } },
      { kind: 'job', at: 'just get a new light and splice it in', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'job', at: 'back that up with a plate and new bolts', parts: { minutes: 45, hands: 2 } },
      { kind: 'job', at: 'pull the nut goop it up and tighten it', parts: { minutes: 30 } },
      { kind: 'reading', at: "battery's at twelve eight", parts: {} },
      { kind: 'jury rig', at: "there's a cut up milk jug in there", parts: { zone: 'transom' } },
      { kind: 'job', at: 'I want to make a real spacer', parts: { zone: 'transom', minutes: 10 } },
      { kind: 'store', at: 'one sealed trailer light', parts: {} },
      { kind: 'store', at: 'a tube of the white goop', parts: {} },
      { kind: 'store', at: 'a quarter inch backing plate', parts: {} },
    ],
  },
  {
    name: 'the list of last winter, gone over',
    page: `Last winter's list, gone over with a pencil. Twenty-two lines, of which fifteen are struck through, and I am rather proud of that.

Struck through: both bearings, the bow fender, the new bilge hose, all four hatch hinges, the varnish on the tiller, the name on the stern, the shroud rollers, the jib tack, the sole boards, the gas bottle strap, the log book (started afresh), the cover ties, the two winches.

Not struck through, and why.

The boom end fitting. The rivets have worked loose and I keep saying after the next sail. Drill out and replace with 4.8 mm alloy, no, stainless, 30 minutes. This time it really is before the muster.

The sink seacock. It is stiff. I put it down as "exercise monthly" and exercised it once. Take it apart and grease it when she is on the trailer, 40 minutes.

The cabin ceiling. Half the panels came unstuck in the heat and are held up by two battens wedged across. It looks like a mine. Scrape, fresh contact glue, a whole afternoon, so call it three hours, with the door open.

Reef points. Dropped. We never use the second reef, so I cross it out without having done it.

The trailer's spare wheel carrier. The bolt is seized. Heat, or cut it off and put a new one in; half an hour. I want to be able to use the spare by the side of a road.

Antifouling. Not needed; I scraped a patch and there is plenty on.

The board's pivot. Checked with a feeler, 0.4 mm, nothing to do.

New this year: the port jammer on the coachroof lets the halyard creep. Turn the cam round or fit another, 20 minutes. And the mast foot block has a chipped sheave, which I shall replace while I'm there, ten minutes.

Battery at the end of winter 12.3 V. Moisture of the transom core 19 per cent by the meter, which is a good deal drier than it was.

I did wonder whether all lists aren't just a way of not being on the boat.`,
    marks: [
      { kind: 'job', at: 'Drill out and replace with 4.8 mm', parts: { zone: 'rig', minutes: 30, outing: 'muster' } },
      { kind: 'job', at: 'Take it apart and grease it', parts: { minutes: 40, setUps: { boat: 'trailer' } } },
      { kind: 'jury rig', at: 'are held up by two battens wedged across', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'Scrape, fresh contact glue', parts: { zone: 'cabin', minutes: 180 } },
      { kind: 'job', at: 'Heat, or cut it off and put a new one in', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'job', at: 'Turn the cam round or fit another', parts: { minutes: 20 } },
      { kind: 'job', at: 'which I shall replace while', parts: { minutes: 10 } },
      { kind: 'reading', at: '12.3 V', parts: {} },
      { kind: 'reading', at: '19 per cent by the meter', parts: {} },
    ],
  },
  {
    name: 'with many articles missing',
    page: `I look at boat today, is sunny, finally. I say what is bad and what is good, you write.

Good: hull. Good: rudder, I painted in winter. Good: motor, mechanic had it.

Bad: bow cleat. Screw pulls out from wood, wood is soft there. Need to make hole bigger, fill with epoxy, when hard drill again. One hour and one night.

Window in front, small water inside after rain. Friend says change whole window. I think only silicone is old. Cut out silicone, new silicone, half hour, dry weather.

Mast is down on garage wall. Halyard for jib okay. Halyard for main okay. One spreader has no tip, plastic cap is lost in the water. I put tennis ball on it, looks funny. Order cap and push on, five minutes.

Cabin. Battery I measured, 12,44. Light okay. Floor board too thick, swells and cannot lift it. I must plane it two millimetre, twenty minutes. Mattress okay, wife sewed.

Board goes up, goes down, heavy but goes. My back is heavier.

Cockpit. Drain on left side is slow. Push through with garden hose, five minutes. Traveller car has lost some balls, it rolls like stone. New balls are in small bag from shop, I have to put them in, but over big towel!

Transom. Bracket for motor okay. Motor lock, key is missing, so I use bicycle lock. No problem, bicycle lock is good lock, stays.

Trailer. Wheel bearing okay, new grease in March. Rope for tie down is old but thick. Light cable torn at corner, isolated with tape by previous owner, and again by me. Now it needs new cable from front to back, one hour and half.

In autumn maybe I make new cover, or buy, I don't know, what does it cost?

From shop: silicone, spreader cap, seven core cable eight metres.

Old man next to me has same boat since 1988 and says he never did anything. I see his boat, I believe.`,
    marks: [
      { kind: 'job', at: 'Need to make hole bigger, fill with epoxy', parts: { zone: 'bow', minutes: 60 } },
      { kind: 'job', at: 'Cut out silicone, new silicone', parts: { minutes: 30 } },
      { kind: 'jury rig', at: 'I put tennis ball on it', parts: { zone: 'rig' } },
      { kind: 'job', at: 'Order cap and push on', parts: { zone: 'rig', minutes: 5 } },
      { kind: 'reading', at: '12,44', parts: {} },
      { kind: 'job', at: 'I must plane it two millimetre', parts: { zone: 'cabin', minutes: 20 } },
      { kind: 'job', at: 'Push through with garden hose', parts: { zone: 'cockpit', minutes: 5 } },
      { kind: 'job', at: 'I have to put them in, but over big towel', parts: {} },
      { kind: 'jury rig', at: 'isolated with tape by previous owner', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Now it needs new cable from front to back', parts: { zone: 'trailer', minutes: 90 } },
      { kind: 'store', at: 'From shop: silicone', parts: {} },
      { kind: 'store', at: 'silicone, spreader cap', parts: {} },
      { kind: 'store', at: 'seven core cable', parts: {} },
    ],
  },
  {
    name: 'on the step with a sandwich',
    page: `hello it's me I'm sat on the step with my sandwich so I'll just say what I remember well the cockpit tent went up fine only one of the poles has split at the joint and Mum's wound it round with a hair bobble so I want a sleeve for that or a bit of pipe the right size slide it on ten minutes the seats are good the lockers are good the lid on the left one you know used to trap your fingers but that's sorted the rope for the rudder is good and then I thought the whole rudder was loose but it's only how it's meant to be Dad says in the cabin it's a bit green in the corners so that all wants washing down with vinegar an hour with the radio on and the little hatch thing over the loo has a crack it's only a hair and it doesn't leak so leave it the stove lights first time the water pump on the sink squirts sideways out of the joint when you press it so new washer in there or whatever it is in there five minutes the battery I forgot oh no hang on twelve point five it's on my hand then I went up the front and the rope locker stinks there's a dead crab in it well there was a dead crab in it the anchor's good the pin that holds the roller in has a bent end and catches the rope it's already chewed it so file that smooth quarter of an hour the bit of the rope that was chewed I cut off already and on the trailer one of the straps has gone stiff and the buckle won't lock which I think is dangerous so buy a new strap and don't tow her on that one next I'd go for cushions if I had money but I haven't do you think we'll get to the island this year`,
    marks: [
      { kind: 'jury rig', at: "Mum's wound it round with a hair bobble", parts: {} },
      { kind: 'job', at: 'I want a sleeve for that or a bit of pipe', parts: { minutes: 10 } },
      { kind: 'job', at: 'that all wants washing down with vinegar', parts: { zone: 'cabin', minutes: 60 } },
      { kind: 'job', at: 'so new washer in there or whatever it is', parts: { zone: 'cabin', minutes: 5 } },
      { kind: 'reading', at: 'twelve point five', parts: {} },
      { kind: 'job', at: 'so file that smooth', parts: { minutes: 15 } },
      { kind: 'job', at: "so buy a new strap and don't tow her", parts: { zone: 'trailer', consequence: 'danger' } },
    ],
  },
];
