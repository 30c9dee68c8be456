import type { MarkedPage } from '../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'shouting over the wind',
    page: `right can you hear me it's blowing old boots out here so short and sweet. bow. navigation light lens is full of water, drain it and seal it, fifteen minutes. pulpit's solid. foredeck. nothing. mast. can't see much with it up but the port upper has a hook in it that caught my sleeve, so there's a broken strand, and that is a new shroud before I go out again, danger. main halyard jams half way, either the sheave's off its pin or there's a knot in it, half an hour with the mast down to look. boom. reef hook bent, hammer it straight, five minutes. cockpit. the self drainer is weeping round the flange, take it out, new sealant, an hour, dry hull needed. winch handle went overboard in march and I still haven't bought one. rudder. top gudgeon bolt is turning, hold it inside, tighten it outside, two people, ten minutes. outboard's off and at home, that's had its service. cabin. smells. battery box strap has perished, new strap, ten minutes. I tied it down with a bit of cord for the minute. lifejackets I took home to weigh the cylinders, they're all right. trailer. mudguard's cracked, whatever. one of the rollers has split so she won't sit straight, new roller twenty minutes on the trailer with her off. that's your lot I'm cold`,
    marks: [
      { kind: 'job', at: 'navigation light lens is full of water', parts: { minutes: 15 } },
      { kind: 'job', at: 'the port upper has a hook in it', parts: { consequence: 'danger' } },
      { kind: 'job', at: 'main halyard jams half way', parts: { minutes: 30, setUps: { mast: 'down' } } },
      { kind: 'job', at: 'reef hook bent', parts: { minutes: 5 } },
      { kind: 'job', at: 'the self drainer is weeping', parts: { zone: 'cockpit', minutes: 60 } },
      { kind: 'store', at: 'winch handle went overboard', parts: {} },
      { kind: 'job', at: 'top gudgeon bolt is turning', parts: { hands: 2, minutes: 10 } },
      { kind: 'job', at: 'battery box strap has perished', parts: { minutes: 10 } },
      { kind: 'jury rig', at: 'I tied it down with a bit of cord', parts: {} },
      { kind: 'job', at: 'one of the rollers has split', parts: { zone: 'trailer', minutes: 20 } },
    ],
  },
  {
    name: 'first year with her',
    page: `I'm new to this so forgive me if I call things by the wrong names. We bought her in the autumn and she's been under a tarpaulin since.

The ropes that go up the mast are green and stiff. I'd like to wash them in the bath, an hour, though my wife may have views.

There's a wobbly bit at the top of the rudder where the tiller goes in. The chap next door says it needs a bush and that it's an hour's work.

When I poured a bucket of water on the deck it came out over the bunk on the left, so something up there leaks, and he thinks it's the plate the wire goes to. He said it has to come off and be bedded again with the mast down. Two hours for me, one for him.

The electrics work, all of them, which I'm told is a miracle. The battery said 12.4 on the meter.

I can't get the board to go down. It's stuck solid. Do I hit it? He says no, soak it with oil and work it with the rope, and it could take a couple of hours over a few days.

The trailer wheels go round and make a grumbling noise. New bearings, he says, before we tow it a yard, and he'll help me do it. Three hours the first time.

One of the windows has a crack in the corner that's been stuck with parcel tape by the previous owner. I shall leave the tape on for now and get a new pane cut in the summer.

There are four lifejackets and I have no idea how old they are. Somebody should look at them before the shakedown sail.

We already changed the mattress covers and scrubbed the cabin and it's lovely now. I need some rope wash, bearing grease and a book.`,
    marks: [
      { kind: 'job', at: "I'd like to wash them in the bath", parts: { minutes: 60 } },
      { kind: 'job', at: "There's a wobbly bit at the top of the rudder", parts: { minutes: 60 } },
      { kind: 'job', at: 'it has to come off and be bedded again', parts: { setUps: { mast: 'down' } } },
      { kind: 'reading', at: 'The battery said 12.4', parts: {} },
      { kind: 'job', at: "It's stuck solid", parts: { minutes: 120 } },
      { kind: 'job', at: 'New bearings, he says', parts: { zone: 'trailer', minutes: 180 } },
      { kind: 'jury rig', at: 'I shall leave the tape on for now', parts: {} },
      { kind: 'job', at: 'get a new pane cut', parts: {} },
      { kind: 'job', at: 'Somebody should look at them', parts: { outing: 'spring' } },
      { kind: 'store', at: 'some rope wash', parts: {} },
      { kind: 'store', at: 'bearing grease', parts: {} },
    ],
  },
  {
    name: 'list with opinions',
    page: `jobs as i see them, most important first

DANGER - gooseneck pin worn nearly through. new pin. 30 min.
trailer: offside light cluster full of water. dry + reseal 20m. not legal as is
starboard plate, rebed (mast dn) 2h
   - and while the headlining is down run the new cable for the cabin fan, 45m
pump: replace joker valve, 25m. bought the valve already
rudder: raise the stop by 5 mm. 20m
hull: nothing, she's fine, stop worrying
deck: 3 stress cracks by the port plate. grind, fill, gel. 2h, dry, >15C. cosmetic
sails: luff tape on genoa chafed 30cm. patch w/ sticky cloth is on there for now, to the sailmaker after the muster
anchor: galvanising gone, regalvanise someday
winch: serviced jan
board: wire ok, sheave ok, hinge bolt ok
batt: 12.71 after 12h rest
engine: gear oil milky -> seals. 2h. no sailing until sorted
cushions: no
need: joker valve (got), self-amalgamating tape, 2 x M8 nyloc, gel coat white`,
    marks: [
      { kind: 'job', at: 'gooseneck pin worn nearly through', parts: { minutes: 30, consequence: 'danger' } },
      { kind: 'job', at: 'offside light cluster full of water', parts: { minutes: 20, consequence: 'unlawful' } },
      { kind: 'job', at: 'starboard plate, rebed', parts: { fitting: 'plate-stbd', minutes: 120 } },
      { kind: 'job', at: 'run the new cable for the cabin fan', parts: { minutes: 45 } },
      { kind: 'job', at: 'replace joker valve', parts: { minutes: 25 } },
      { kind: 'job', at: 'raise the stop by 5 mm', parts: { minutes: 20 } },
      { kind: 'job', at: '3 stress cracks by the port plate', parts: { minutes: 120, consequence: 'comfort' } },
      { kind: 'job', at: 'luff tape on genoa chafed', parts: {} },
      { kind: 'jury rig', at: 'patch w/ sticky cloth is on there for now', parts: {} },
      { kind: 'job', at: 'regalvanise someday', parts: {} },
      { kind: 'reading', at: 'batt: 12.71 after 12h rest', parts: {} },
      { kind: 'job', at: 'gear oil milky', parts: { minutes: 120, consequence: 'stops-sailing' } },
      { kind: 'store', at: 'self-amalgamating tape', parts: {} },
      { kind: 'store', at: '2 x M8 nyloc', parts: {} },
      { kind: 'store', at: 'gel coat white', parts: {} },
    ],
  },
  {
    name: 'on the way home',
    page: `okay driving home so this is going into the phone hands free. note to self about the boat. the main thing is the bow eye. that's what the whole winch pulls on and it moved when I cranked. so take out the locker floor get at the nut and see if the backing's rotten. two hours at least and it's dangerous to winch her till then. second thing. no second thing is actually the tow ball cover never mind. second thing the centre mainsheet cam won't hold. new springs. quarter of an hour. third. I noticed the cover's stitching is going along the ridge. restitch. that's a long job three hours on the machine but only if there's nothing better to do. what else. the jib furler was stiff so I squirted it and it's free now. um the depth thing reads nonsense but it always does. the battery was eleven point nine with the fridge on which is what you'd expect. the boom vang shackle I replaced with a bit of cord temporarily good for a couple of sails. get a proper shackle for that. six millimetre. oh and ring the insurance. and the antifouling. must get that on before the twenty fourth. five hours with the rollers. dry day or two. right turning off now`,
    marks: [
      { kind: 'job', at: 'it moved when I cranked', parts: { minutes: 120, consequence: 'danger' } },
      { kind: 'job', at: "the centre mainsheet cam won't hold", parts: { minutes: 15 } },
      { kind: 'job', at: "the cover's stitching is going", parts: { minutes: 180 } },
      { kind: 'reading', at: 'the battery was eleven point nine', parts: {} },
      { kind: 'jury rig', at: 'the boom vang shackle I replaced with a bit of cord', parts: {} },
      { kind: 'store', at: 'get a proper shackle for that', parts: {} },
      { kind: 'job', at: 'must get that on before the twenty fourth', parts: { minutes: 300 } },
    ],
  },
];
