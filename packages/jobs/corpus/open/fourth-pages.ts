import type { MarkedPage } from '../marked.ts';

/** Eight voices more, written and marked before the reader was tried on them; it is tuned on these. */
export const fourthPages: readonly MarkedPage[] = [
  {
    name: 'one thing after another',
    page: `Went over her this morning with a mug of tea.

The washboard is split. It has been coming for years, right down the grain. I shall glue and screw it, and that is three quarters of an hour with the clamps.

The pulpit rail rocks. You can hear it from the pontoon when somebody steps aboard. Two of the three bolts have no nuts on them at all. New nuts with locking washers, ten minutes.

I had the cushions out. They are dry.

The halyard winch has lost its click on one side. Nobody has had it apart since I bought her. It wants a strip down and a smear of grease, half an hour, and I would sooner do it before the Spring shakedown sail.

The starboard shroud plate: I looked for the stain below it and there is one. So it leaks. That will be the bedding gone hard. Off it comes with the mast down, two hours.

There is a hole in the mainsail cover the size of a plate. The sun did that. My sister gave me some canvas at Christmas and I can patch it on her machine in an hour.

The tiller I varnished in February and it came up a treat.

The drain in the cockpit locker is slow. I poked a stick down and it ran a bit better, but there is something in there. The hose has to come off. Twenty minutes.

I bought a new torch. The old one went over the side.

The nearside trailer lamp does not light. I changed the bulb and it still does not light. It must be the earth. Fifteen minutes with a wire brush, and the police would stop me as it is.`,
    marks: [
      { kind: 'job', at: 'The washboard is split', parts: { minutes: 45 } },
      { kind: 'job', at: 'The pulpit rail rocks', parts: { minutes: 10 } },
      { kind: 'job', at: 'The halyard winch has lost its click', parts: { minutes: 30, outing: 'spring' } },
      {
        kind: 'job',
        at: 'The starboard shroud plate',
        parts: { fitting: 'plate-stbd', minutes: 120, setUps: { mast: 'down' } },
      },
      { kind: 'job', at: 'There is a hole in the mainsail cover', parts: { minutes: 60 } },
      { kind: 'job', at: 'The drain in the cockpit locker is slow', parts: { zone: 'cockpit', minutes: 20 } },
      {
        kind: 'job',
        at: 'The nearside trailer lamp does not light',
        parts: { zone: 'trailer', minutes: 15, consequence: 'unlawful' },
      },
    ],
  },
  {
    name: 'tells a story',
    page: `You'll laugh. Last Sunday I took my nephew out to show him the boat, and he put his foot straight through the cabin sole by the mast. It's rotten underneath, has been since the year of the flood I expect. I've laid an old locker lid across for now so nobody breaks an ankle. What it needs is a new piece of ply cut and epoxied round, call it three hours, in the dry.

Years ago I had a rudder come off on me in the mouth of the river, and ever since I look at the pintles first. They're good. The lower gudgeon though, I can get my thumbnail behind it. I'll take the screws out and bed it down again, forty minutes.

The man I bought her from swore the outboard had been rebuilt. Well. It starts on the eleventh pull. I put in a plug last month and it made no odds. So it'll be the carburettor, take it off and clean it, an hour and a half.

My old friend had a saying about halyards, which I can't repeat. The jib halyard is fluffy where it goes over the sheave. I'd not trust it in a blow. I've twelve metres of the right stuff at home and it's twenty minutes to reeve it.

We used to keep a stove aboard but it went to the scouts.

Then on the way home, what do you know, a clatter, and it was the mudguard trailing. I tied it up with a bootlace. It wants two bolts, that's all, five minutes.

I nearly forgot. The compass has a bubble as big as a grape. I sent it away once before and it came back the same, so I'm leaving it.

The anchor? Don't talk to me about the anchor. It's at the bottom of the bay. I shall have to buy another.`,
    marks: [
      { kind: 'jury rig', at: "I've laid an old locker lid across for now", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'What it needs is a new piece of ply', parts: { minutes: 180 } },
      { kind: 'job', at: 'The lower gudgeon though', parts: { zone: 'transom', minutes: 40 } },
      { kind: 'job', at: 'It starts on the eleventh pull', parts: { minutes: 90 } },
      { kind: 'job', at: 'The jib halyard is fluffy', parts: { zone: 'rig', minutes: 20 } },
      { kind: 'jury rig', at: 'I tied it up with a bootlace', parts: {} },
      { kind: 'job', at: 'It wants two bolts', parts: { minutes: 5 } },
    ],
  },
  {
    name: 'into the phone, walking',
    page: `so i'm starting at the back today just to be different rudder feels a bit heavy but that's weed i think yep it's weed scraped it off with my boot outboard bracket one of the springs has snapped so it doesn't hold up any more you have to lift it by hand new spring quarter of an hour if i can find one the fuel hose is fine i changed that cockpit now the seat on the port side has a crack across the corner about as long as my hand and it creaks when you sit on it so that wants grinding out and a couple of layers of glass underneath three hours maybe when it's warm the mainsheet block squeals i gave it some spray and it still squeals so i'll change it ten minutes then the cabin oh it smells lovely actually i left the vents open the light over the chart table flickers it's the switch five minutes to swap and the water tank tastes of plastic so flush it through with bicarb half an hour battery says twelve point five nothing on and it's been dark since four what else the forehatch doesn't shut properly somebody's stood on it and bent the hinge straighten it or get a new hinge twenty minutes the foredeck cleat's solid the anchor chain is rusty at the last metre so cut that off and put the shackle back on fifteen minutes oh and the forestay has got a loose strand sticking out near the bottom i wrapped some tape round so it doesn't rip the jib but it's really got to be replaced i'm not sailing with that it could bring the mast down so get one made up and an hour to fit with two of us trailer's all good for once`,
    marks: [
      { kind: 'job', at: 'one of the springs has snapped', parts: { zone: 'transom', minutes: 15 } },
      {
        kind: 'job',
        at: 'the seat on the port side has a crack',
        parts: { zone: 'cockpit', minutes: 180 },
      },
      { kind: 'job', at: 'the mainsheet block squeals', parts: { minutes: 10 } },
      { kind: 'job', at: 'the light over the chart table flickers', parts: { minutes: 5 } },
      { kind: 'job', at: 'the water tank tastes of plastic', parts: { minutes: 30 } },
      { kind: 'reading', at: 'battery says twelve point five', parts: {} },
      { kind: 'job', at: "the forehatch doesn't shut properly", parts: { zone: 'foredeck', minutes: 20 } },
      { kind: 'job', at: 'the anchor chain is rusty at the last metre', parts: { minutes: 15 } },
      { kind: 'jury rig', at: 'i wrapped some tape round', parts: {} },
      { kind: 'job', at: "it's really got to be replaced", parts: { minutes: 60, hands: 2 } },
    ],
  },
  {
    name: 'not my first language',
    page: `Hello, I write here what I have seen on the boat so I do not forget.

The cover of the main sail is broken on one place, I must sew it. Perhaps one hour. The rope for to lift the centre board is very thin now, it is dangerous because when it breaks the board falls. I will put a new one, it takes thirty minutes and the boat must be on the trailer.

In the cabin is everything dry, I am very happy with this. Only the little lamp over my bed is not functioning. I have looked and the cable is broken inside. I must solder it, ten minutes.

The paint on the rudder is coming off in big pieces. I think one must sand it and paint it two times. This is for two evenings, and it is not allowed to be cold, more than twelve degrees.

My neighbour has said that the tyre on the left is too old. He has right, there are cracks in the side. I will buy a new one and change it before the club muster, twenty minutes.

The motor: I made the oil new in October, and the candle also. It runs. But the handle for the gas is sticking. I put some grease, then it goes. Good.

The door of the cabin does not close, because the wood has grown from the rain. I have to plane it on the under side, half an hour, in dry weather.

On the mast the little wheel for the halyard turns not any more. For this the mast must go down. One clears it with oil or makes a new, I say one hour.

The bilge pump is working. The battery shows 12,6.

I need still: sail thread, solder, one litre of the white paint.`,
    marks: [
      { kind: 'job', at: 'The cover of the main sail is broken', parts: { minutes: 60 } },
      {
        kind: 'job',
        at: 'The rope for to lift the centre board',
        parts: { minutes: 30, consequence: 'danger', setUps: { boat: 'trailer' } },
      },
      { kind: 'job', at: 'the little lamp over my bed', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'job', at: 'The paint on the rudder is coming off', parts: { zone: 'transom' } },
      { kind: 'job', at: 'I will buy a new one and change it', parts: { minutes: 20, outing: 'muster' } },
      { kind: 'job', at: 'The door of the cabin does not close', parts: { zone: 'cabin', minutes: 30 } },
      {
        kind: 'job',
        at: 'the little wheel for the halyard turns not any more',
        parts: { zone: 'rig', minutes: 60, setUps: { mast: 'down' } },
      },
      { kind: 'reading', at: 'The battery shows 12,6', parts: {} },
      { kind: 'store', at: 'sail thread', parts: {} },
      { kind: 'store', at: 'one litre of the white paint', parts: {} },
    ],
  },
  {
    name: 'the two of them',
    page: `Her: Start with the thing that nearly took my eye out.
Him: The boom. Right. The topping lift shackle has opened up, so the boom drops when you let go of the main. New shackle, five minutes. Dangerous, I'll give you that.
Her: And the window.
Him: I fixed the window.
Her: The other window.
Him: Oh. The one over the galley. Yes, that drips on the cooker. It wants resealing, an hour, when it's dry.
Her: What did the man say about the keel?
Him: He said it's fine. He wanted money for it too.
Her: I can't get the lid off the anchor locker.
Him: That's the hinge gone rusty. I'll drill the rivets out and fit a brass one, half an hour.
Her: The bunk is too short for your mother.
Him: The bunk stays as it is.
Her: And the toilet seat?
Him: The toilet seat is cracked, I know, I've put tape on it for the moment. I'll get a new one, two minutes to fit.
Her: Did you look at the tyres?
Him: I pumped them up. The spare's bald though. That has to be changed, it's not legal, fifteen minutes at the tyre place.
Her: The life jackets are out of date.
Him: One is. I'll send it off for a service.
Her: I thought we might have new curtains.
Him: We might.
Her: The tiller extension comes off in my hand.
Him: The rubber joint's perished. I'll do that Saturday, ten minutes.
Her: And we're out of gas.
Him: Put it on the list. Get some more of those clips as well.`,
    marks: [
      { kind: 'job', at: 'The topping lift shackle has opened up', parts: { minutes: 5, consequence: 'danger' } },
      { kind: 'job', at: 'It wants resealing', parts: { minutes: 60 } },
      { kind: 'job', at: "That's the hinge gone rusty", parts: { minutes: 30 } },
      { kind: 'jury rig', at: "I've put tape on it for the moment", parts: {} },
      { kind: 'job', at: "I'll get a new one, two minutes to fit", parts: { minutes: 2 } },
      { kind: 'job', at: "The spare's bald though", parts: { minutes: 15, consequence: 'unlawful' } },
      { kind: 'job', at: 'The life jackets are out of date', parts: {} },
      { kind: 'job', at: 'The tiller extension comes off in my hand', parts: { minutes: 10 } },
      { kind: 'store', at: "we're out of gas", parts: {} },
      { kind: 'store', at: 'some more of those clips', parts: {} },
    ],
  },
  {
    name: 'place by place',
    page: `FORWARD. The bow roller doesn't roll. Squirted it last week, no better. Pin out, clean it up, grease, put back. 20 mins. Pulpit good, navigation light good.

FOREDECK. Non-slip is worn away round the hatch. It's lethal in the wet. Mask it off and paint two coats of deck paint, an hour and a half all told, dry and no dew. The hatch itself I resealed at Easter and not a drop since.

MAST. Up, so not much to see. Burgee halyard gone. The spreader end on the port side has lost its boot and is rubbing the genoa. Reach it from the ladder, new boot, 15 min, somebody to hold the ladder.

SIDE DECKS. The port stanchion leans out. Base is cracked. I have lashed it to the next one with cord until I can get a new base. When it comes: four bolts, 40 min, needs someone below.

COCKPIT. Starboard winch grinds. Needs stripping. 45 min. Sole OK. Locker lid OK. The mainsheet is a bit hairy but it'll last the season.

BELOW. Bilge pump runs but nothing comes out. It's the strainer as usual, or the impeller. Look at both, 30 min, must be done before we launch. The fire extinguisher's needle is in the red. Replace. The stove leaks paraffin from the valve stem. New packing, 20 min. Not to be lit until then.

STERN. Ladder: one of the treads is missing. I have the wood cut, just needs screwing on, 10 min. Outboard: at the dealer's.

TRAILER. Haven't looked. Check the bearings, an hour, before Friday week.`,
    marks: [
      { kind: 'job', at: "The bow roller doesn't roll", parts: { fitting: 'roller', minutes: 20 } },
      { kind: 'job', at: 'Non-slip is worn away round the hatch', parts: { zone: 'foredeck', minutes: 90 } },
      { kind: 'job', at: 'Burgee halyard gone', parts: {} },
      {
        kind: 'job',
        at: 'The spreader end on the port side',
        parts: { zone: 'rig', minutes: 15, hands: 2 },
      },
      { kind: 'jury rig', at: 'I have lashed it to the next one with cord', parts: { zone: 'decks' } },
      { kind: 'job', at: 'four bolts, 40 min', parts: { minutes: 40 } },
      { kind: 'job', at: 'Starboard winch grinds', parts: { zone: 'cockpit', minutes: 45 } },
      { kind: 'job', at: 'Bilge pump runs but nothing comes out', parts: { fitting: 'pump', minutes: 30 } },
      { kind: 'job', at: "The fire extinguisher's needle is in the red", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'The stove leaks paraffin', parts: { minutes: 20 } },
      { kind: 'job', at: 'one of the treads is missing', parts: { minutes: 10 } },
      { kind: 'job', at: 'Check the bearings', parts: { zone: 'trailer', minutes: 60 } },
    ],
  },
  {
    name: 'planned by the day',
    page: `Right, three days off work and a boat to get ready. Here is how I see it.

Friday is for anything that has to dry. First the coaming, where the varnish has lifted along the top edge. Scrape it back and get two coats on, two hours and then leave it be. While that is going off I can fill the gouge in the rudder, which I did myself on the slip last August. Half an hour for that.

Saturday Rob is coming. He is good for heavy work, so that is when the mast comes down. With it down we do the masthead sheave, which has a flat on it, forty minutes, and the wire for the steaming light, which has chafed through where it goes into the mast. Another forty. I'd also have a look at the spreader roots while it is on the trestles. Ten minutes. Rob reckons we should change all the shrouds but they are only four years old.

Sunday morning I'm on my own. The gas hose is dated 2019 and I don't like it. A new one is in the cupboard at home. Ten minutes and then test it with soapy water, not with a match. After that the floorboards. They were all oiled in the winter, so it's only a matter of putting them back.

Sunday afternoon, with luck, we go sailing. If not, I shall clean out the lockers, which are a disgrace.

Not this time: the upholstery, the hull polish, the new plotter that I keep dreaming about.

Must not forget to pick up masking tape and a pot of filler.`,
    marks: [
      { kind: 'job', at: 'First the coaming', parts: { zone: 'decks', minutes: 120 } },
      { kind: 'job', at: 'fill the gouge in the rudder', parts: { zone: 'transom', minutes: 30 } },
      { kind: 'job', at: 'we do the masthead sheave', parts: { fitting: 'sheave', minutes: 40 } },
      { kind: 'job', at: 'the wire for the steaming light', parts: { minutes: 40 } },
      { kind: 'job', at: 'a look at the spreader roots', parts: { minutes: 10 } },
      { kind: 'job', at: 'The gas hose is dated 2019', parts: { minutes: 10 } },
      { kind: 'job', at: 'I shall clean out the lockers', parts: {} },
      { kind: 'store', at: 'pick up masking tape', parts: {} },
      { kind: 'store', at: 'a pot of filler', parts: {} },
    ],
  },
  {
    name: 'short list, bad speller',
    page: `bow shackel siezed - hacksaw it off, new one 10min
fwd hatch seel flat, leeks. new seel 40m dry
mast ok
boom: reefing line frayd, swop 15
jib sheet's fine
stbd winch - no
port winch clicks but slips, new pawl spring 30m
cockpit tent zip bust. mum
tiller bolt lose, nip up
rudder blade sticks up, plane a bit off 20m
pump OK now
batt 12.2 - charge it
cabin lite no 2 ded, bulb?
cushon covers washed
lifejakets 2 need new gas bottels
ply for bunk front got it just needs cuting an screwing 1hr
trailer lites both working!!
n/s hub hot after the run, grese gone? strip + regrese 1hr b4 next tow
o/s mudgard crakd, duct tape on for now
winch strap OK till next yr
get: split pins, grese, wd40 type stuff`,
    marks: [
      { kind: 'job', at: 'bow shackel siezed', parts: { minutes: 10 } },
      { kind: 'job', at: 'fwd hatch seel flat', parts: { minutes: 40 } },
      { kind: 'job', at: 'reefing line frayd', parts: {} },
      { kind: 'job', at: 'port winch clicks but slips', parts: { minutes: 30 } },
      { kind: 'job', at: 'tiller bolt lose', parts: {} },
      { kind: 'job', at: 'rudder blade sticks up', parts: { minutes: 20 } },
      { kind: 'reading', at: 'batt 12.2', parts: {} },
      { kind: 'job', at: 'cabin lite no 2 ded', parts: {} },
      { kind: 'job', at: 'lifejakets 2 need new gas bottels', parts: {} },
      { kind: 'job', at: 'ply for bunk front', parts: { minutes: 60 } },
      { kind: 'job', at: 'n/s hub hot after the run', parts: { minutes: 60 } },
      { kind: 'jury rig', at: 'duct tape on for now', parts: {} },
      { kind: 'store', at: 'split pins', parts: {} },
    ],
  },
];
