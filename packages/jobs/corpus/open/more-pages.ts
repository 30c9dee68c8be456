import type { MarkedPage } from '../marked.ts';

/** Six more voices: a van, a passage told, a list with ticks, the north, an engineer, a message to a friend. */
export const morePages: readonly MarkedPage[] = [
  {
    name: 'in the van',
    page: `right I've just had a good half hour round the boat and I'm sat in the van so before I forget I'll say it all in one go the kids have left crisps everywhere but never mind that so up at the front the anchor locker lid won't stay shut one of the catches has sheared so new catch fifteen minutes or so erm the bow roller I greased that in the autumn so no bother there the foredeck feels a bit spongy by the port cleat not a lot but I don't like it drill a couple of test holes and see if the core's wet say half an hour dry day obviously and it'll only get worse I wouldn't leave it past the end of May the mast is still up and I went up and down the shrouds with a cloth no snags apart from the port cap shroud there's a meat hook about a foot above the swage so that's got to be replaced before anybody sails her again that could have the mast down an hour and a half no hang on two hours with the mast down and I'll want someone with me for that the boom's fine the kicker's fine the mainsheet block squeaks but it's squeaked since I got her I don't care about that then in the cockpit the tiller extension joint's split so I've wound some of that rubber tape round it to be going on with it'll do for a gentle sail not over twelve knots I'd say new joint when it turns up ten minutes to fit er what else the self bailer leaks wants a new gasket twenty minutes she'll need to be on the trailer for that inside oh it stinks in there I think it's just the carpet I'll take that home and wash it battery was eleven nine with the cabin lights on all evening so that tells you nothing the bilge was dry as a bone and the trailer well I was going to do the bearings this weekend but they only had a service in March so they can wait the nearside mudguard's hanging on by one bolt though and it'll have somebody's eye out get a couple of M6 bolts and penny washers ten minutes job and do that before Saturday because I'm towing her to my brother's that's the lot I think yes that's it`,
    marks: [
      { kind: 'job', at: "the anchor locker lid won't stay shut", parts: { zone: 'bow', minutes: 15 } },
      {
        kind: 'job',
        at: 'the foredeck feels a bit spongy by the port cleat',
        parts: { zone: 'foredeck', minutes: 30, consequence: 'worsens' },
      },
      { kind: 'job', at: "there's a meat hook about a foot above the swage", parts: { zone: 'rig', minutes: 120 } },
      { kind: 'jury rig', at: "I've wound some of that rubber tape round it", parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'new joint when it turns up', parts: { minutes: 10 } },
      { kind: 'job', at: 'the self bailer leaks', parts: { minutes: 20 } },
      { kind: 'reading', at: 'battery was eleven nine', parts: {} },
      { kind: 'job', at: "the nearside mudguard's hanging on by one bolt", parts: { zone: 'trailer', minutes: 10 } },
    ],
  },
  {
    name: 'the passage back',
    page: `Sunday. Wind south-west four, gusting five off the point, sun until two and then that thin high cloud.

We slipped at ten to nine and she went like a train. Ben helmed most of the way. Off the second buoy the jib sheet parted with a bang, right at the clew, and I swapped it for the spinnaker sheet. The old one was ten years old, so both of them ought to be renewed: ten metres of eight millimetre each, half an hour with the bowlines.

The reefing line jammed twice. Somebody has led it under the lazy jack, so lead it again as it should be, a quarter of an hour, and I want that right before the estuary trip because it is no fun on your own in a blow.

Did she leak? Not a drop on the way down. On the way back, hard on the wind, there was a puddle on the port berth, and I traced it to the aft end of the cabin window. I have smeared some grease along the edge to keep it out for the time being. Taking that window out and bedding it properly is a morning, three hours, and it must be bone dry and over ten degrees.

The outboard was a saint. It pushed us the last mile into the wind on a cupful of petrol and never missed a beat. I changed its oil at Easter. Ben thinks we should go over to electric, and he may be right, but not this year.

We had a long talk about the bottom paint. Some people scrub every month and never antifoul at all. Mine is good for another season.

Coming up the slip, the winch handle came off in my hand, with the boat half way up the ramp. Nobody was hurt. The grub screw is stripped. Tap it out to the next size and fit a bigger one, forty minutes, and she does not go near a slip again until it is done, it could kill someone.

One of the trailer lights had water in it. It still worked, so I tipped it out and thought no more of it.

At home I hosed everything down, dried the sails on the lawn and put the cushions in the loft. The zip on the sail cover has lost two teeth and will go altogether soon. Sew in a new zip, an hour and a quarter, any wet evening will do. There is one in the sewing box I think.

Supper, and a very early night.`,
    marks: [
      { kind: 'job', at: 'both of them ought to be renewed', parts: { minutes: 30 } },
      { kind: 'job', at: 'The reefing line jammed twice', parts: { minutes: 15, outing: 'estuary' } },
      { kind: 'jury rig', at: 'I have smeared some grease along the edge', parts: {} },
      { kind: 'job', at: 'Taking that window out and bedding it properly', parts: { minutes: 180 } },
      { kind: 'job', at: 'The grub screw is stripped', parts: { minutes: 40, consequence: 'danger' } },
      { kind: 'job', at: 'The zip on the sail cover has lost two teeth', parts: { minutes: 75 } },
    ],
  },
  {
    name: 'ticks',
    page: `BOAT LIST - spring
[x] wash decks
[x] service winches (done 14 March)
[ ] grease rudder pintles 10 min
[ ] pulpit base port: rebed, 2 bolts, 1h, mast stays up, dry
[x] new burgee halyard
[ ] jockey wheel - tyre gone, swap 15 min, before tow
[ ] gas locker drain blocked!! DANGER, clear 20m
[ ] main halyard shackle worn thin, replace, 5 min, stops sailing
[x] flares - replaced, new date 2030
[ ] lifejackets: check bottles + weigh, 30 min
[ ] washboard varnish 2 coats (40 min each), 12C+, in the shed
[x] echo sounder wired
[ ] cabin light stbd - flickers - clean contacts 10m
[ ] toe rail screw missing nr chainplate, put in 1 (have some in toolbox)
~ stove: no fault found
~ dinghy: sold it
~ compass light: not needed, never sail at night
~ curtains - Jo will make new ones
jury: tiller pin = 8 mm bolt till the proper one arrives. max 15 kn
jury: port fairlead lashed on, temporary, not on the road
shopping: 2 x M6x40 bolts, butyl tape, contact cleaner
voltage 12.7 this morning nothing on, panel covered`,
    marks: [
      { kind: 'job', at: 'grease rudder pintles', parts: { zone: 'transom', minutes: 10 } },
      { kind: 'job', at: 'pulpit base port: rebed', parts: { minutes: 60 } },
      { kind: 'job', at: 'jockey wheel - tyre gone', parts: { zone: 'trailer', minutes: 15 } },
      { kind: 'job', at: 'gas locker drain blocked', parts: { minutes: 20, consequence: 'danger' } },
      {
        kind: 'job',
        at: 'main halyard shackle worn thin',
        parts: { zone: 'rig', minutes: 5, consequence: 'stops-sailing' },
      },
      { kind: 'job', at: 'lifejackets: check bottles', parts: { minutes: 30 } },
      { kind: 'job', at: 'washboard varnish 2 coats', parts: { minutes: 40 } },
      { kind: 'job', at: 'cabin light stbd', parts: { zone: 'cabin', minutes: 10 } },
      { kind: 'job', at: 'toe rail screw missing', parts: {} },
      { kind: 'jury rig', at: 'tiller pin = 8 mm bolt till the proper one arrives', parts: {} },
      { kind: 'jury rig', at: 'port fairlead lashed on', parts: {} },
      { kind: 'store', at: 'M6x40 bolts', parts: {} },
      { kind: 'store', at: 'butyl tape', parts: {} },
      { kind: 'store', at: 'contact cleaner', parts: {} },
      { kind: 'reading', at: 'voltage 12.7 this morning', parts: {} },
    ],
  },
  {
    name: 'up north',
    page: `Now then. I'm stood on the drive with a brew and it's brass monkeys, so this'll not take long.

First off that trailer. It's nobbut six year old and the offside bearing's grumbling already. I'll have it apart and see what's what, reckon on an hour, and I'm not towing owt till that's seen to. Brakes is champion. Number plate's cracked reet across but it's still on. The law'll have you for that mind, so fettle up a new 'un, ten minutes.

Next, her back end. Somebody, and I'm naming no names, has backed her into a gatepost and there's a lump out of the transom the size of an egg. It wants filling, and gel coat on top, happen two hours over two days, and it'll need to be a fair bit warmer than this. Rudder's grand. Bracket for the outboard's working loose, I can waggle it wi' one hand. Nip it up, five minutes.

I'd have liked a new outboard an' all but there's no brass for that while Christmas.

Cockpit's mucky but muck never sank a boat. Sheet's gone furry where it goes through the cam cleat. End for end it, ten minutes, job's a good 'un. I says to our kid, is that winch meant to make that noise, and he says they all do that.

Inside there's a reet pong and it's coming from under the port bunk, there's a drop of watter lying in there and I can't fathom where it's getting in. Get the hose on it and find out, best part of an hour, I'd want someone inside wi' a torch while I'm out wi' the hose. Stove lit first match. Battery's at twelve point one, telly was on mind.

Mast. Foot's got a crack in it, about an inch, on the after side. That's not good is that. I've put a big jubilee clip round it as a stopgap, it's not going above a nice breeze like that, but it wants cutting off and a new casting bolting on. Half a day wi' two of us. I'll not sleep else. Spreaders is fine. Burgee stick's snapped, I couldn't give a monkey's.

Keel, I've not been under. Front hatch, I did last back end. Right. That's me brew gone cold.`,
    marks: [
      { kind: 'job', at: "the offside bearing's grumbling already", parts: { zone: 'trailer', minutes: 60 } },
      {
        kind: 'job',
        at: "Number plate's cracked reet across",
        parts: { zone: 'trailer', minutes: 10, consequence: 'unlawful' },
      },
      { kind: 'job', at: "there's a lump out of the transom", parts: { zone: 'transom', minutes: 120 } },
      { kind: 'job', at: "Bracket for the outboard's working loose", parts: { zone: 'transom', minutes: 5 } },
      { kind: 'job', at: "Sheet's gone furry", parts: { zone: 'cockpit', minutes: 10 } },
      { kind: 'job', at: "there's a drop of watter lying in there", parts: { zone: 'cabin', minutes: 60 } },
      { kind: 'reading', at: "Battery's at twelve point one", parts: {} },
      { kind: 'jury rig', at: "I've put a big jubilee clip round it as a stopgap", parts: { zone: 'rig' } },
      { kind: 'job', at: 'it wants cutting off and a new casting bolting on', parts: { hands: 2 } },
    ],
  },
  {
    name: 'the engineer',
    page: `Survey of own vessel, 7 April. Items in order of position, bow to stern.

1. Stem fitting. Two of four fastenings weeping. Withdraw, clean, rebed on butyl. Ninety minutes. Mast must be down. Deteriorating.
2. Anchor and chain. Examined; satisfactory. Galvanising thin on the first two metres but serviceable. No action this season.
3. Forehatch. Hinges satisfactory. Seal satisfactory. Acrylic crazed, cosmetic only; replace pane when convenient, two hours, comfort.
4. Port shroud plate. Hairline crack found at the lower hole with dye. Not to be sailed. Replacement plate to be made and fitted: three hours, two persons, mast down. DANGER.
5. Standing rigging. Age nine years. No broken strands. Recommended life ten years; review next year.
6. Masthead sheave. Rotates freely. Lubricated today.
7. Mast wiring. Steaming light inoperative: corroded connector at mast foot. Cut back and remake, twenty-five minutes. Unlawful after dark.
8. Winches. Serviced February. Satisfactory.
9. Cockpit drains. Starboard hose perished, temporary repair with self-amalgamating tape. Renew hose and both clips, thirty-five minutes, afloat not permitted until done.
10. Bilge pump. Capacity measured at eighteen litres a minute against a rated twenty-five. Suspect strainer. Clean strainer and re-test, twenty minutes.
11. Battery. Open-circuit 12.58 V after twelve hours with panel covered. No action.
12. Fire extinguisher. Gauge in the red. Replace before any further use of the stove. Five minutes.
13. Rudder. Play at lower pintle 2.5 mm; limit 3 mm. Monitor.
14. Outboard. Impeller changed October. Tell-tale weak at idle, flush the cooling passages, half an hour, ashore.
15. Trailer. Tyres dated 2019, tread good, sidewalls cracking: renew the pair before the muster, one hour. Lights tested, correct. Winch strap satisfactory.

Consumables required: one tube polyurethane, two hose clips 20-32, one metre 25 mm hose. On hand: butyl tape, one roll, in the workshop drawer.`,
    marks: [
      { kind: 'job', at: 'Two of four fastenings weeping', parts: { minutes: 90, consequence: 'worsens' } },
      { kind: 'job', at: 'Acrylic crazed', parts: { zone: 'foredeck', minutes: 120, consequence: 'comfort' } },
      {
        kind: 'job',
        at: 'Hairline crack found at the lower hole',
        parts: { fitting: 'plate-port', minutes: 180, hands: 2, consequence: 'danger' },
      },
      {
        kind: 'job',
        at: 'Steaming light inoperative',
        parts: { zone: 'rig', minutes: 25, consequence: 'unlawful' },
      },
      { kind: 'jury rig', at: 'temporary repair with self-amalgamating tape', parts: { zone: 'cockpit' } },
      { kind: 'job', at: 'Renew hose and both clips', parts: { minutes: 35 } },
      { kind: 'job', at: 'Clean strainer and re-test', parts: { minutes: 20 } },
      { kind: 'reading', at: 'Open-circuit 12.58 V', parts: {} },
      { kind: 'job', at: 'Gauge in the red', parts: { minutes: 5 } },
      { kind: 'job', at: 'Tell-tale weak at idle', parts: { minutes: 30 } },
      { kind: 'job', at: 'sidewalls cracking', parts: { zone: 'trailer', minutes: 60, outing: 'muster' } },
      { kind: 'store', at: 'one tube polyurethane', parts: {} },
      { kind: 'store', at: 'two hose clips 20-32', parts: {} },
      { kind: 'store', at: 'one metre 25 mm hose', parts: {} },
      { kind: 'store', at: 'butyl tape, one roll', parts: {} },
    ],
  },
  {
    name: 'to a friend',
    page: `Hiya, you asked what's left to do before we can take her out, so here goes, sorry it's long!!

The good news first. The new sails have come and they're gorgeous, the cabin's been painted, and Mum finally finished the cushions. The engine man came on Tuesday and did the plugs and the gearbox oil and he says it's the cleanest one he's seen all year. So none of that needs worrying about.

Not so good: you remember the leak over your bunk? Well it's back. I think it's the stanchion base and not the window, I poured a jug of water round it and it came straight through. So that's a rebed, I'd guess an hour, and it has to be dry. Would you be able to help, it needs one of us inside holding the nuts? Sunday would suit me.

Also the bilge pump switch. It only comes on if you kick it. I'd love to know who wired it. Could do with a whole new float switch really, 45 mins, they're about twenty quid.

The rope that pulls the rudder up has nearly worn through, I'm going to replace it tonight if I can find some 5mm, ten mins tops.

Oh and don't use the boarding ladder!! The bottom step's loose and Sam nearly went in. I've tied it shut with a bit of shockcord for now so nobody uses it. Two new bolts and some sealant, half an hour.

I was thinking we might get a little awning for the cockpit one day? And I'd love a proper chart table but there's no room, is there.

Dad had a look at the trailer and says the tyres are OK but the handbrake doesn't hold on the hill, which is a bit scary. Needs adjusting, half an hour, must be done before we go to the spring shakedown.

Things to bring: sandwiches, your oilies, the red bucket. I've got loads of varnish left from last year so you needn't buy any. We're nearly out of masking tape though.

If it rains on Saturday I'll do the washboards in the garage, they need a rub down and another coat, an hour.

Love to everyone xx`,
    marks: [
      { kind: 'job', at: "I think it's the stanchion base and not the window", parts: { minutes: 60 } },
      { kind: 'job', at: 'the bilge pump switch', parts: { minutes: 45 } },
      { kind: 'job', at: 'The rope that pulls the rudder up has nearly worn through', parts: { minutes: 10 } },
      { kind: 'jury rig', at: "I've tied it shut with a bit of shockcord for now", parts: {} },
      { kind: 'job', at: 'Two new bolts and some sealant', parts: { minutes: 30 } },
      {
        kind: 'job',
        at: "the handbrake doesn't hold on the hill",
        parts: { zone: 'trailer', minutes: 30, outing: 'spring' },
      },
      { kind: 'store', at: 'loads of varnish left from last year', parts: {} },
      { kind: 'store', at: "We're nearly out of masking tape", parts: {} },
      { kind: 'job', at: "I'll do the washboards in the garage", parts: { minutes: 60 } },
    ],
  },
];
